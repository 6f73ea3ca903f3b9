//! `at`: the mechanics at one moment.

use super::plan::read;
use super::{Ending, Format, out};
use crate::diag::Diag;
use crate::job::plan::CheckResult;
use crate::job::{Collet, Holding, Interrupt, Job};
use crate::planner::assemble::result;
use crate::process::moment::{Moment, headstock_mm, headstock_places_mm, moment};
use crate::process::segments::{Segment, segment_at};
use crate::process::{Counter, Guide, Rig, State};
use crate::report;
use serde::Serialize;
use std::path::PathBuf;

/// What `at` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    /// Turned length, mm.
    #[arg(long, value_name = "T")]
    turned: f64,
    /// Nose of the counter-spindle's collet, mm from the front face; left out: the front is free.
    #[arg(long, value_name = "G")]
    grip: Option<f64>,
    /// Name of the collet; left out: the first that holds the diameter there.
    #[arg(long, value_name = "NAME")]
    collet: Option<String>,
    /// Distance of the headstock's nose from the bush face, mm; left out: the worst of nine places.
    #[arg(long, value_name = "H")]
    headstock: Option<f64>,
    /// Without a bush: where the stage ends, mm; left out: at the turned length.
    #[arg(long, value_name = "B")]
    stage_end: Option<f64>,
    /// Speed, rev/min; left out: that of the segment in cut.
    #[arg(long, value_name = "N")]
    rpm: Option<f64>,
    /// Another machine file in place of the job's.
    #[arg(long, value_name = "FILE")]
    machine: Option<PathBuf>,
    /// How stdout is written.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

#[derive(Debug, Serialize)]
struct Printed {
    turned_mm: f64,
    grip_nose_mm: Option<f64>,
    collet: Option<String>,
    headstock_mm: Option<f64>,
    rpm: f64,
    unsupported_mm: f64,
    n_crit_rpm: f64,
    frequencies_hz: Vec<f64>,
    stiffness_n_per_um: f64,
    stiffness_at_mm: f64,
    sag_um: f64,
    whip_mm: f64,
    cut_deflection_um: f64,
    cut_diameter_change_um: f64,
    passive_force_n: f64,
    net_radial_force_n: f64,
    main_force_n: f64,
    chatter_depth_limit_mm: Option<f64>,
    section: usize,
    work: String,
    checks: Vec<CheckResult>,
}

/// A number of the call that is out of range.
fn ask(what: String, help: String) -> Ending {
    out::wrong_input(&[Diag::new(what).help(help)])
}

fn outside(name: &str, value: f64, low: f64, high: f64) -> Option<Ending> {
    let fine = value.is_finite() && value >= low && value <= high;
    (!fine).then(|| ask(format!("--{name} is {value}"), format!("`--{name}` takes {low} to {high}")))
}

fn choose<'a>(job: &'a Job, args: &Args) -> Result<Option<&'a Collet>, Ending> {
    let (Some(grip), Some(counter)) = (args.grip, &job.machine.counter_spindle) else {
        return match args.grip {
            Some(_) => Err(ask("the machine has no counter-spindle".into(), "leave `--grip` out".into())),
            None => Ok(None),
        };
    };
    let names = counter.collets.iter().map(|c| c.name.as_str()).collect::<Vec<_>>().join(", ");
    let shaft = &job.shaft;
    let diameter = shaft.sections[shaft.section_at(grip)].largest_mm();
    let found = match &args.collet {
        Some(name) => counter.collets.iter().find(|c| c.name == *name),
        None => counter.collets.iter().find(|c| diameter >= c.smallest_mm && diameter <= c.largest_mm),
    };
    found.map(Some).ok_or_else(|| match &args.collet {
        Some(name) => ask(format!("the machine has no collet {name}"), format!("its collets are: {names}")),
        None => ask(
            format!("no collet of the machine holds {diameter} mm, the diameter at {grip} mm"),
            format!("move `--grip`, or name one to reckon with by `--collet`: {names}"),
        ),
    })
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let job = match read(&args.job, args.machine.as_deref()) {
        Ok(job) => job,
        Err(ending) => return ending,
    };
    match printed(&job, args) {
        Ok(found) => match args.format {
            Format::Json => out::json(&found),
            Format::Text => {
                out::result(&text(&found));
                Ending::Done
            }
        },
        Err(ending) => ending,
    }
}

fn printed(job: &Job, args: &Args) -> Result<Printed, Ending> {
    let refuse = |e: Option<Ending>| e.map_or(Ok(()), Err);
    refuse(outside("turned", args.turned, 0.0, job.parted_at_mm()))?;
    let head = &job.machine.headstock;
    if let Some(h) = args.headstock {
        refuse(outside("headstock", h, head.nearest_mm, head.farthest_mm()))?;
    }
    if let Some(n) = args.rpm {
        refuse(outside("rpm", n, 0.0, 1e6))?;
    }
    let collet = choose(job, args)?;
    if let (Some(g), Some(c)) = (args.grip, collet) {
        refuse(outside("grip", g, c.hold_mm, args.turned.min(job.shaft.length_mm())))?;
    }
    let rig = Rig::new(job, collet);
    let segments = segments_anyway(job, collet)?;
    let index = segment_at(&segments, args.turned);
    let segment = &segments[index];
    let guides: Vec<Guide> = match (job.holding, args.headstock, args.stage_end) {
        (Holding::Bush, Some(headstock_mm), None) => vec![Guide::Bush { headstock_mm }],
        (Holding::Bush, None, None) => {
            headstock_places_mm(&rig).into_iter().map(|headstock_mm| Guide::Bush { headstock_mm }).collect()
        }
        (Holding::NoBush, None, end) => {
            let stage_end_mm = end.unwrap_or(args.turned);
            refuse(outside("stage-end", stage_end_mm, args.turned, job.parted_at_mm()))?;
            vec![Guide::Collet { stage_end_mm }]
        }
        (Holding::Bush, _, Some(_)) => {
            return Err(ask("--stage-end goes with work without a bush".into(), "leave it out".into()));
        }
        (Holding::NoBush, Some(_), _) => {
            let help = "give `--stage-end`: the headstock's collet is set for the end of the stage";
            return Err(ask("--headstock goes with a guide bush".into(), help.into()));
        }
    };
    let counter = Counter::of(args.grip);
    let states: Vec<State> = guides.into_iter().map(|guide| State { turned_mm: args.turned, counter, guide }).collect();
    let rpm = args.rpm.unwrap_or_else(|| rig.segment_rpm(segment, args.grip.is_some()));
    let found = moment(&rig, segment, &states, rpm).ok().flatten();
    let Some(found) = found else {
        return Err(ask("nothing holds the bar in this state".into(), "check the machine's stiffnesses".into()));
    };
    Ok(print(&found, args, collet, segment.section + 1, segment.work.key()))
}

/// The segments of a job; a section that must not be interrupted but needs several of them is told and cut all the same,
/// for the mechanics of a moment do not depend on it.
fn segments_anyway(job: &Job, collet: Option<&Collet>) -> Result<Vec<Segment>, Ending> {
    let mut eased = job.clone();
    loop {
        let refused = match Rig::new(&eased, collet).segments() {
            Ok(segments) => return Ok(segments),
            Err(refused) => refused,
        };
        let section = &mut eased.shaft.sections[refused.section];
        if section.interrupt != Interrupt::Never {
            return Err(ask(refused.text, "ask `check` what would help".into()));
        }
        section.interrupt = Interrupt::Avoid;
        out::say(&format!("note: {}; reckoned with all the same\n", refused.text));
    }
}

fn print(m: &Moment, args: &Args, collet: Option<&Collet>, section: usize, work: &str) -> Printed {
    Printed {
        turned_mm: args.turned,
        grip_nose_mm: args.grip,
        collet: collet.map(|c| c.name.clone()),
        headstock_mm: headstock_mm(&m.state),
        rpm: m.rpm,
        unsupported_mm: m.unsupported_mm,
        n_crit_rpm: m.critical_rpm,
        frequencies_hz: m.frequencies_hz.clone(),
        stiffness_n_per_um: m.stiffness_n_per_um,
        stiffness_at_mm: m.stiffness_at_mm,
        sag_um: m.sag_um,
        whip_mm: m.whip_mm,
        cut_deflection_um: m.cut_deflection_um,
        cut_diameter_change_um: m.cut_diameter_change_um,
        passive_force_n: m.passive_force_n,
        net_radial_force_n: m.net_radial_force_n,
        main_force_n: m.main_force_n,
        chatter_depth_limit_mm: m.chatter_depth_limit_mm,
        section,
        work: work.into(),
        checks: m.checks.iter().map(|f| result(f, args.turned)).collect(),
    }
}

fn text(p: &Printed) -> String {
    use report::numbers::{depth_limit, fixed, mm, percent, rpm, value};
    let mut rows: Vec<(&str, String)> = vec![
        ("turned length", format!("{} mm, section {} ({})", mm(p.turned_mm), p.section, p.work)),
        (
            "front",
            match (p.grip_nose_mm, &p.collet) {
                (Some(g), Some(c)) => format!("held by collet {c}, nose at {} mm", mm(g)),
                _ => "free".into(),
            },
        ),
        ("headstock", p.headstock_mm.map_or("-".into(), |h| format!("{} mm from the bush face", mm(h)))),
        ("speed", format!("{} rev/min", rpm(p.rpm))),
        ("unsupported", format!("{} mm", mm(p.unsupported_mm))),
        ("critical speed", format!("{} rev/min", rpm(p.n_crit_rpm))),
        ("natural frequencies", p.frequencies_hz.iter().map(|f| fixed(*f, 2)).collect::<Vec<_>>().join(", ") + " Hz"),
        ("least stiffness", format!("{} N/µm at {} mm", value(p.stiffness_n_per_um), mm(p.stiffness_at_mm))),
        ("sag", format!("{} µm", value(p.sag_um))),
        ("bow under rotation", format!("{} mm", value(p.whip_mm))),
        ("main force", format!("{} N", value(p.main_force_n))),
        ("passive force", format!("{} N, net on the bar {} N", value(p.passive_force_n), value(p.net_radial_force_n))),
        (
            "deflection at the tool",
            format!(
                "{} µm; the diameter changes by {} µm along the travel",
                value(p.cut_deflection_um),
                value(p.cut_diameter_change_um)
            ),
        ),
    ];
    if let Some(limit) = p.chatter_depth_limit_mm {
        rows.push(("chatter limit", format!("{} mm deep", depth_limit(limit))));
    }
    let mut text = String::new();
    for (name, value) in rows {
        text += &format!("{name:<24}{value}\n");
    }
    let heads = [
        report::table::words("check"),
        report::table::number("found"),
        report::table::number("limit"),
        report::table::words("unit"),
        report::table::number("used"),
        report::table::number("worst at mm"),
    ];
    let cells: Vec<Vec<String>> = p
        .checks
        .iter()
        .map(|c| {
            let limit = if c.check == "chatter" { depth_limit(c.limit) } else { value(c.limit) };
            vec![c.check.clone(), value(c.demand), limit, c.unit.clone(), percent(c.utilisation), mm(c.at_mm)]
        })
        .collect();
    text.push('\n');
    text += &report::table::render(&heads, &cells, 100);
    if !text.ends_with('\n') {
        text.push('\n');
    }
    text
}
