//! `compare`: compares work with and without the guide bush, with one tool and with a pair, on every machine given.

use super::beside::InShop;
use super::plan::read;
use super::progress::spread_counting;
use super::{Ending, Format, out};
use crate::answer::sampled;
use crate::defect::Defect;
use crate::job::plan::{Plan, Verdict, estimate};
use crate::job::{Holding, Job, Side, Tools};
use crate::lang;
use crate::planner::Advice;
use crate::report::sure::of_100;
use crate::report::table::{self, Head};
use crate::report::text::WIDTH;
use crate::report::{numbers, words};
use crate::say;
use serde::Serialize;
use std::path::PathBuf;

/// What `compare` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    /// Machine to use instead of the machine of the job: a file, or a name from the shop's file. Repeat it for more machines.
    #[arg(long, value_name = "FILE")]
    machine: Vec<PathBuf>,
    #[command(flatten)]
    shop: InShop,
    /// Format of the output.
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
    /// Share of sampled parts that meet all checks.
    good_share: Option<f64>,
    time_s: Option<f64>,
    pieces_per_bar: usize,
    farthest_mm: Option<f64>,
    blocked_by: Option<String>,
    /// Why it is out, or nothing.
    reason: Option<String>,
    #[serde(skip)]
    length_mm: f64,
}

#[derive(Debug, Serialize)]
struct Compared<'a> {
    job: &'a str,
    ways: &'a [Way],
}

fn way(job: &Job, plan: &Plan) -> Way {
    let feasible = plan.verdict.has_plan();
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
        good_share: plan.scatter.as_ref().map(|s| s.good_share),
        time_s: feasible.then(|| plan.pace_s()),
        pieces_per_bar: plan.quote.pieces_per_bar,
        farthest_mm: shortfall.map(|s| s.farthest_mm),
        blocked_by: shortfall.map(|s| s.blocked_by.clone()),
        reason: shortfall.map(|s| s.text.clone()),
        length_mm: job.shaft.length_mm(),
    }
}

/// The row of a machine that cannot hold the bar this way.
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
        good_share: None,
        time_s: None,
        pieces_per_bar: 0,
        farthest_mm: None,
        blocked_by: Some("machine".into()),
        reason: Some(reason.into()),
        length_mm: job.shaft.length_mm(),
    }
}

fn planned(job: &Job) -> Result<Way, Defect> {
    match job.holding {
        Holding::Bush if job.machine.bush.is_none() => Ok(cannot(job, lang::text("compare-no-bush"))),
        Holding::NoBush if job.machine.no_bush.is_none() => Ok(cannot(job, lang::text("compare-only-bush"))),
        _ => sampled(job, Advice::None).map(|plan| way(job, &plan)),
    }
}

/// Runs it. Done when at least one way is feasible.
pub fn run(args: &Args) -> Ending {
    let machines: Vec<Option<&std::path::Path>> =
        if args.machine.is_empty() { vec![None] } else { args.machine.iter().map(|m| Some(m.as_path())).collect() };
    let mut jobs = Vec::new();
    for machine in machines {
        let job = match read(&args.job, args.shop.beside(machine)) {
            Ok(job) => job,
            Err(ending) => return ending,
        };
        for holding in [Holding::Bush, Holding::NoBush] {
            for tools in [Tools::Single, Tools::Opposed, Tools::Tandem] {
                // Without a bush a tandem cuts as one tool does.
                if holding == Holding::NoBush && tools == Tools::Tandem {
                    continue;
                }
                let mut way = job.clone();
                if job.cutting.tools != Tools::Tandem {
                    way.cutting.finisher.side = way.machine.tandem_side().unwrap_or(Side::Same);
                }
                way.holding = holding;
                way.cutting.tools = tools;
                jobs.push(way);
            }
        }
    }
    let planned = spread_counting(lang::text("progress-ways"), &jobs, planned);
    let mut ways = match planned.into_iter().collect::<Result<Vec<Way>, Defect>>() {
        Ok(ways) => ways,
        Err(defect) => return out::defect(&defect),
    };
    // Feasible ways come first, then those at risk, by time, then the others by the length they reach. Equal ones stay in the order of the
    // call.
    ways.sort_by(|a, b| {
        let time = |w: &Way| w.time_s.unwrap_or(f64::INFINITY);
        let far = |w: &Way| w.farthest_mm.unwrap_or(-1.0);
        let risk = |w: &Way| match w.verdict {
            Verdict::Feasible => 0,
            Verdict::AtRisk => 1,
            Verdict::Infeasible => 2,
        };
        risk(a).cmp(&risk(b)).then(time(a).total_cmp(&time(b))).then(far(b).total_cmp(&far(a)))
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
    if ways.iter().any(|w| w.verdict.has_plan()) { Ending::Done } else { Ending::NotFeasible }
}

/// The machines, each once.
fn machines(ways: &[Way]) -> String {
    let mut names: Vec<&str> = ways.iter().map(|w| w.machine.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    names.join(", ")
}

fn held_by(way: &Way) -> &'static str {
    if way.holding == Holding::Bush.key() { lang::text("compare-bush") } else { lang::text("compare-no-bush-short") }
}

fn tools(way: &Way) -> &'static str {
    match way.tools {
        "opposed" => lang::text("compare-opposed"),
        "tandem" => lang::text("compare-tandem"),
        _ => lang::text("compare-single"),
    }
}

fn text(name: &str, ways: &[Way]) -> String {
    let feasible = ways.iter().filter(|w| w.verdict.has_plan()).count();
    let verdict = match (ways.first(), feasible) {
        (Some(best), 1..) => say!(
            "compare-best",
            feasible = feasible,
            ways = ways.len(),
            at_risk = ways.iter().filter(|w| w.verdict == Verdict::AtRisk).count(),
            holding = words::holding(best.holding),
            tools = words::tools(best.tools),
            time = numbers::seconds(best.time_s.unwrap_or(0.0)),
            machine = best.machine
        ),
        _ => say!("compare-none", ways = ways.len(), machines = machines(ways)),
    };
    let mut text = table::wrap(&format!("{name}: "), &verdict, WIDTH).trim_end().to_string() + "\n";
    // If the table is too wide, the names of machines are cut first.
    let fixed = |head: Head| Head { may_shrink: false, ..head };
    let several = ways.iter().any(|w| Some(&w.machine) != ways.first().map(|f| &f.machine));
    let made = |w: &&Way| w.verdict.has_plan();
    if feasible > 0 {
        let heads = [
            table::words(lang::text("compare-head-machine")),
            fixed(table::words(lang::text("compare-head-holding"))),
            fixed(table::words(lang::text("compare-head-tools"))),
            table::number(lang::text("compare-head-stages")),
            table::number(lang::text("compare-head-hand-overs")),
            table::number(lang::text("compare-head-lines")),
            fixed(table::words(lang::text("compare-head-check"))),
            table::number(lang::text("compare-head-good")),
            table::number(lang::text("compare-head-time")),
            table::number(lang::text("compare-head-pieces")),
        ];
        let from = usize::from(!several);
        // If there is only one machine, the first line of the text names it, and the column is left out.
        let row = |w: &Way| {
            let used = w.margin.map(|m| numbers::utilisation(1.0 - m)).unwrap_or_default();
            let row = vec![
                w.machine.clone(),
                held_by(w).into(),
                tools(w).into(),
                w.stages.to_string(),
                w.hand_overs.to_string(),
                w.witness_lines.to_string(),
                w.margin_check
                    .as_ref()
                    .map_or_else(String::new, |check| format!("{} {used}", words::check_name(check))),
                w.good_share.map_or("-".into(), of_100),
                w.time_s.map_or("-".into(), numbers::seconds),
                w.pieces_per_bar.to_string(),
            ];
            row.into_iter().skip(from).collect()
        };
        let rows: Vec<Vec<String>> = ways.iter().filter(made).map(row).collect();
        text += &format!("\n{}\n", lang::text("compare-feasible"));
        text += &table::render(heads.get(from..).unwrap_or_default(), &rows, WIDTH);
    }
    // One tool and a pair often fail for the same reason. They then share one entry.
    let mut told: Vec<(String, &Way, Vec<&str>)> = Vec::new();
    for w in ways.iter().filter(|w| !made(w)) {
        let place = if several { format!("{}, {}", w.machine, held_by(w)) } else { held_by(w).to_string() };
        match told.iter_mut().find(|(p, first, _)| *p == place && first.reason == w.reason) {
            Some((.., names)) => names.push(tools(w)),
            None => told.push((place, w, vec![tools(w)])),
        }
    }
    if !told.is_empty() {
        text += &format!("\n{}\n", lang::text("compare-infeasible"));
    }
    for (place, first, names) in told {
        let tools = names.join(", ");
        let head = match first.farthest_mm {
            Some(mm) if mm >= first.length_mm => say!("compare-way-full-length", way = place, tools = tools),
            Some(mm) if mm > 0.0 => {
                let (turned, length) = (numbers::mm(mm), numbers::mm(first.length_mm));
                say!("compare-way-reaches", way = place, tools = tools, turned = turned, length = length)
            }
            _ => say!("compare-way", way = place, tools = tools),
        };
        text += &table::wrap("  ", &head, WIDTH);
        let reason = first.reason.as_deref().unwrap_or_default();
        text += &table::wrap("    ", &words::sentence(reason), WIDTH);
    }
    text += &format!("\n{}\n", estimate());
    text
}
