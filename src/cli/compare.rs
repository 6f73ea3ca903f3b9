//! `compare`: bush or not, one tool or a pair, on every machine given, side by side.

use super::plan::read;
use super::progress::spread_counting;
use super::{Ending, Format, out};
use crate::answer::advised;
use crate::job::plan::{Plan, Verdict};
use crate::job::{Holding, Job, Tools};
use crate::planner::{Advice, Defect};
use crate::report::table::{self, Head};
use crate::report::{cautions, numbers, words};
use serde::Serialize;
use std::path::PathBuf;

/// Width of the table.
const COLUMNS: usize = 100;

/// What `compare` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    /// A machine file in place of the job's; may be given several times.
    #[arg(long, value_name = "FILE")]
    machine: Vec<PathBuf>,
    /// How stdout is written.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// One way of making it.
#[derive(Debug, Clone, Serialize)]
struct Way {
    machine: String,
    holding: &'static str,
    tools: &'static str,
    verdict: Verdict,
    stages: usize,
    hand_overs: usize,
    headstock_regrips: usize,
    witness_lines: usize,
    margin: Option<f64>,
    margin_check: Option<String>,
    time_s: Option<f64>,
    pieces_per_bar: usize,
    farthest_mm: Option<f64>,
    blocked_by: Option<String>,
    /// Why it is out, or nothing.
    reason: Option<String>,
}

#[derive(Debug, Serialize)]
struct Compared<'a> {
    job: &'a str,
    ways: &'a [Way],
}

fn way(job: &Job, plan: &Plan) -> Way {
    let feasible = plan.verdict == Verdict::Feasible;
    let shortfall = plan.shortfall.as_ref();
    Way {
        machine: job.machine.name.clone(),
        holding: job.holding.key(),
        tools: job.cutting.tools.key(),
        verdict: plan.verdict,
        stages: if feasible { plan.stages.len() } else { 0 },
        hand_overs: if feasible { plan.hand_overs_mm.len() } else { 0 },
        headstock_regrips: plan.headstock_regrips_mm.len(),
        witness_lines: plan.witnesses.len(),
        margin: plan.margin,
        margin_check: plan.margin_at.as_ref().map(|c| c.check.clone()),
        time_s: feasible.then(|| plan.charged_s()),
        pieces_per_bar: plan.quote.pieces_per_bar,
        farthest_mm: shortfall.map(|s| s.farthest_mm),
        blocked_by: shortfall.map(|s| s.blocked_by.clone()),
        reason: shortfall.map(|s| s.text.clone()),
    }
}

/// A machine that is not made for a way of holding.
fn cannot(job: &Job, reason: &str) -> Way {
    Way {
        machine: job.machine.name.clone(),
        holding: job.holding.key(),
        tools: job.cutting.tools.key(),
        verdict: Verdict::Infeasible,
        stages: 0,
        hand_overs: 0,
        headstock_regrips: 0,
        witness_lines: 0,
        margin: None,
        margin_check: None,
        time_s: None,
        pieces_per_bar: 0,
        farthest_mm: None,
        blocked_by: Some("machine".into()),
        reason: Some(reason.into()),
    }
}

fn planned(job: &Job) -> Result<Way, Defect> {
    match job.holding {
        Holding::Bush if job.machine.bush.is_none() => Ok(cannot(job, "the machine has no guide bush")),
        Holding::NoBush if job.machine.no_bush.is_none() => {
            Ok(cannot(job, "the machine does not work without its bush"))
        }
        _ => advised(job, Advice::None).map(|plan| way(job, &plan)),
    }
}

/// Runs it. Done when at least one way is feasible.
pub fn run(args: &Args) -> Ending {
    let machines: Vec<Option<&std::path::Path>> =
        if args.machine.is_empty() { vec![None] } else { args.machine.iter().map(|m| Some(m.as_path())).collect() };
    let mut jobs = Vec::new();
    for machine in machines {
        let job = match read(&args.job, machine) {
            Ok(job) => job,
            Err(ending) => return ending,
        };
        for holding in [Holding::Bush, Holding::NoBush] {
            for tools in [Tools::Single, Tools::Opposed] {
                let mut way = job.clone();
                way.holding = holding;
                way.cutting.tools = tools;
                jobs.push(way);
            }
        }
    }
    let planned = spread_counting("ways", &jobs, planned);
    let mut ways = match planned.into_iter().collect::<Result<Vec<Way>, Defect>>() {
        Ok(ways) => ways,
        Err(defect) => return out::defect(&defect),
    };
    // Feasible ones by time, then the others by how far they get; equals stay in the order of the call.
    ways.sort_by(|a, b| {
        let time = |w: &Way| w.time_s.unwrap_or(f64::INFINITY);
        let far = |w: &Way| w.farthest_mm.unwrap_or(-1.0);
        time(a).total_cmp(&time(b)).then(far(b).total_cmp(&far(a)))
    });
    let name = jobs.first().map_or("", |j| j.shaft.name.as_str());
    match args.format {
        Format::Json => {
            let ended = out::json(&Compared { job: name, ways: &ways });
            if ended != Ending::Done {
                return ended;
            }
        }
        Format::Text => out::result(&text(name, &ways)),
    }
    if ways.iter().any(|w| w.verdict == Verdict::Feasible) { Ending::Done } else { Ending::NotFeasible }
}

fn text(name: &str, ways: &[Way]) -> String {
    let feasible = ways.iter().filter(|w| w.verdict == Verdict::Feasible).count();
    let verdict = match (ways.first(), feasible) {
        (Some(best), 1..) => format!(
            "{feasible} of {} ways are feasible; best: {}, {}, {} a part on {}",
            ways.len(),
            words::holding(best.holding),
            words::tools(best.tools),
            numbers::seconds(best.time_s.unwrap_or(0.0)) + " s",
            best.machine,
        ),
        _ => format!("none of {} ways is feasible", ways.len()),
    };
    let mut text = table::wrap(&format!("{name}: "), &verdict, COLUMNS).trim_end().to_string() + "\n\n";
    let heads = [
        table::words("machine"),
        table::words("held by"),
        table::words("tools"),
        table::words("verdict"),
        table::number("stages"),
        table::number("hand-overs"),
        table::number("lines"),
        Head { may_shrink: false, ..table::words("tightest") },
        table::number("s a part"),
        table::number("pieces"),
    ];
    let rows: Vec<Vec<String>> = ways
        .iter()
        .map(|w| {
            let yes = w.verdict == Verdict::Feasible;
            let some = |s: String| if yes { s } else { "-".into() };
            let used = w.margin.map(|m| numbers::utilisation(1.0 - m)).unwrap_or_default();
            let tightest = match (&w.margin_check, w.farthest_mm) {
                (Some(check), _) => format!("{} {used}", words::key(check)),
                (None, Some(far)) => format!("to {} mm", numbers::mm(far)),
                (None, None) => String::new(),
            };
            vec![
                w.machine.clone(),
                if w.holding == "bush" { "bush" } else { "collet" }.into(),
                w.tools.into(),
                if yes { "feasible" } else { "not" }.into(),
                some(w.stages.to_string()),
                some(w.hand_overs.to_string()),
                some(w.witness_lines.to_string()),
                tightest,
                w.time_s.map_or("-".into(), numbers::seconds),
                some(w.pieces_per_bar.to_string()),
            ]
        })
        .collect();
    text += &table::render(&heads, &rows, COLUMNS);
    let out_of: Vec<&Way> = ways.iter().filter(|w| w.reason.is_some()).collect();
    if !out_of.is_empty() {
        text += "\nWhy not\n";
    }
    // One tool and a pair are often out for the same reason.
    let mut told: Vec<(String, Vec<&str>, &str)> = Vec::new();
    for w in out_of {
        let place = format!("{}, {}", w.machine, if w.holding == "bush" { "bush" } else { "no bush" });
        let reason = w.reason.as_deref().unwrap_or_default();
        match told.iter_mut().find(|(p, _, r)| *p == place && *r == reason) {
            Some((_, tools, _)) => tools.push(w.tools),
            None => told.push((place, vec![w.tools], reason)),
        }
    }
    for (place, tools, reason) in told {
        text += &table::wrap("  ", &format!("{place}, {}:", tools.join(" or ")), COLUMNS);
        text += &table::wrap("    ", reason, COLUMNS);
    }
    text += &format!("\n{}\n", cautions::ESTIMATE);
    text
}
