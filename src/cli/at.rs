//! `at`: the mechanics at one moment.

use super::beside::Files;
use super::plan::read;
use super::{Ending, Format, out};
use crate::answer::at::{Asked, At, at};
use crate::lang;
use crate::report;
use crate::say;
use std::path::PathBuf;

/// What `at` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    /// Turned length, mm.
    #[arg(long, value_name = "T")]
    turned: f64,
    /// Nose of the counter-spindle collet, mm from the front face. Default: the front end is free.
    #[arg(long, value_name = "G")]
    grip: Option<f64>,
    /// Name of the collet. Default: the first collet that holds the diameter there.
    #[arg(long, value_name = "NAME")]
    collet: Option<String>,
    /// Distance of the headstock's nose from the bush face, mm. Default: the worst of nine positions.
    #[arg(long, value_name = "H")]
    headstock: Option<f64>,
    /// Without a bush: turned length at the end of the stage, mm. Default: the given turned length.
    #[arg(long, value_name = "B")]
    stage_end: Option<f64>,
    /// Speed, rev/min. Default: the speed of the segment that is turned.
    #[arg(long, value_name = "N")]
    rpm: Option<f64>,
    #[command(flatten)]
    files: Files,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let job = match read(&args.job, args.files.beside()) {
        Ok(job) => job,
        Err(ending) => return ending,
    };
    let asked = Asked {
        turned_mm: args.turned,
        grip_mm: args.grip,
        collet: args.collet.clone(),
        headstock_mm: args.headstock,
        stage_end_mm: args.stage_end,
        rpm: args.rpm,
    };
    let mut found = match at(&job, &asked) {
        Ok(found) => found,
        Err(diag) => return out::wrong_input(&[diag]),
    };
    for note in found.notes.drain(..) {
        out::say(&format!("{}\n", say!("at-note", note = note)));
    }
    match args.format {
        Format::Json => out::json(&found),
        Format::Text => {
            out::result(&text(&found));
            Ending::Done
        }
    }
}

fn text(p: &At) -> String {
    use lang::Measure;
    use report::numbers::{depth_limit, fixed, mm, percent, rpm, value, value_of};
    let told = |value: f64, unit: &str| {
        format!("{} {}", report::numbers::value(lang::told(value, unit)), lang::unit_told(unit))
    };
    let frequencies = p.frequencies_hz.iter().map(|f| fixed(*f, 2)).collect::<Vec<_>>().join(", ");
    let mut rows: Vec<(&str, String)> = vec![
        (lang::text("at-turned"), say!("at-turned-is", turned = mm(p.turned_mm), section = p.section, work = p.work)),
        (
            lang::text("at-front"),
            match (p.grip_nose_mm, &p.collet) {
                (Some(g), Some(c)) => say!("at-front-is-held", collet = c, nose = mm(g)),
                _ if p.on_centre => say!("at-front-is-on-centre"),
                _ => say!("at-front-is-free"),
            },
        ),
        (lang::text("at-headstock"), p.headstock_mm.map_or("-".into(), |h| say!("at-headstock-is", at = mm(h)))),
        (lang::text("at-speed"), format!("{} {}", rpm(p.rpm), lang::text("unit-rpm"))),
        (
            lang::text("at-unsupported"),
            say!("at-unsupported-is", length = mm(p.unsupported_mm), ratio = fixed(p.l_over_d, 1)),
        ),
        (lang::text("at-critical-speed"), format!("{} {}", rpm(p.n_crit_rpm), lang::text("unit-rpm"))),
        (lang::text("at-frequencies"), frequencies + " Hz"),
        (lang::text("at-stiffness"), told(p.stiffness_n_per_um, "N/µm")),
        (lang::text("at-sag"), told(p.sag_um, "µm")),
        (lang::text("at-bow"), told(p.whip_mm, "mm")),
        (lang::text("at-main-force"), told(p.main_force_n, "N")),
        (
            lang::text("at-passive-force"),
            say!(
                "at-passive-force-is",
                force = value_of(Measure::Force, p.passive_force_n),
                net = value_of(Measure::Force, p.net_radial_force_n)
            ),
        ),
        (
            lang::text("at-deflection"),
            say!(
                "at-deflection-is",
                deflection = value_of(Measure::Micro, p.cut_deflection_um),
                change = value_of(Measure::Micro, p.cut_diameter_change_um)
            ),
        ),
    ];
    if let Some(at) = p.finisher_at_mm {
        rows.push((lang::text("at-finisher"), say!("at-finisher-is", at = mm(at))));
    }
    if let (Some(least), Some(at)) = (p.span_stiffness_n_per_um, p.span_stiffness_at_mm) {
        let is = say!("at-span-stiffness-is", stiffness = value(least), at = mm(at));
        rows.push((lang::text("at-span-stiffness"), is));
    }
    if let Some(limit) = p.chatter_depth_limit_mm {
        rows.push((lang::text("at-chatter-limit"), say!("at-chatter-limit-is", depth = depth_limit(limit))));
    }
    let mut text = String::new();
    for (name, value) in rows {
        text += &format!("{name:<24}{value}\n");
    }
    let heads = [
        report::table::words(lang::text("at-head-check")),
        report::table::number(lang::text("at-head-found")),
        report::table::number(lang::text("at-head-limit")),
        report::table::words(lang::text("at-head-unit")),
        report::table::number(lang::text("at-head-used")),
        report::table::number(lang::text("at-head-place")),
    ];
    let cells: Vec<Vec<String>> = p
        .checks
        .iter()
        .map(|c| {
            let [demand, limit] = [c.demand, c.limit].map(|v| value(lang::told(v, &c.unit)));
            let limit = if c.check == "chatter" { depth_limit(c.limit) } else { limit };
            let unit = lang::unit_told(&c.unit).to_owned();
            vec![c.check.clone(), demand, limit, unit, percent(c.utilisation), mm(c.at_mm)]
        })
        .collect();
    text.push('\n');
    text += &report::table::render(&heads, &cells, 100);
    if !text.ends_with('\n') {
        text.push('\n');
    }
    text
}
