//! `check`: the verdict alone.

use super::beside::Files;
use super::plan::{confidence, ending, planned};
use super::{Ending, Format, out};
use crate::job::plan::{CheckResult, LimitCost, Quote, ScatterReport, Shortfall, Times, Verdict};
use crate::report;
use serde::Serialize;
use std::path::PathBuf;

/// What `check` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    #[command(flatten)]
    files: Files,
    /// Shows the time that each limit costs. The program plans again without each limit, which takes many times longer.
    #[arg(long)]
    costs: bool,
    /// Asks for a plan that holds in this share of sampled parts, 0.5 to 0.999, whatever the job says.
    #[arg(long, value_name = "SHARE", value_parser = confidence)]
    confidence: Option<f64>,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// The verdict as JSON: the keys mean what they mean in a plan.
#[derive(Debug, Serialize)]
struct Brief<'a> {
    verdict: Verdict,
    job: &'a str,
    length_mm: f64,
    holding: &'a str,
    tools: &'a str,
    machine: &'a str,
    collet: Option<&'a str>,
    stages: usize,
    hand_overs: usize,
    headstock_regrips: usize,
    witness_lines: usize,
    time_s: &'a Times,
    margin: Option<f64>,
    margin_at: Option<&'a CheckResult>,
    scatter: Option<&'a ScatterReport>,
    quote: &'a Quote,
    shortfall: Option<&'a Shortfall>,
    limit_costs: &'a [LimitCost],
    input_digest: &'a str,
    cautions: &'a [String],
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let (_, plan) = match planned(&args.job, args.files.beside(), args.costs, args.confidence) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    match args.format {
        Format::Text => out::styled(&report::check_summary(&plan)),
        Format::Json => {
            let ended = out::json(&Brief {
                verdict: plan.verdict,
                job: &plan.job,
                length_mm: plan.length_mm,
                holding: &plan.holding,
                tools: &plan.tools,
                machine: &plan.machine,
                collet: plan.collet.as_deref(),
                stages: plan.stages.len(),
                hand_overs: plan.hand_overs_mm.len(),
                headstock_regrips: plan.headstock_regrips_mm.len(),
                witness_lines: plan.witnesses.len(),
                time_s: &plan.time_s,
                margin: plan.margin,
                margin_at: plan.margin_at.as_ref(),
                scatter: plan.scatter.as_ref(),
                quote: &plan.quote,
                shortfall: plan.shortfall.as_ref(),
                limit_costs: &plan.limit_costs,
                input_digest: &plan.input_digest,
                cautions: &plan.cautions,
            });
            if ended != Ending::Done {
                return ended;
            }
        }
    }
    ending(&plan)
}
