//! `plan`: the whole plan, on stdout and as a folder.

use super::progress::Progress;
use super::{Ending, Format, files, out};
use crate::answer::{answer, with_costs};
use crate::defect::Defect;
use crate::input;
use crate::job::Job;
use crate::job::plan::{Plan, Verdict};
use crate::proof;
use crate::report;
use crate::shown;
use std::path::PathBuf;

/// What `plan` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    /// Machine file to use instead of the machine of the job.
    #[arg(long, value_name = "FILE")]
    machine: Option<PathBuf>,
    /// Folder for plan.json, stages.csv, plan.xlsx, plan.svg, sheet.html (and sheet.pdf with the feature `pdf`).
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,
    /// Shows the time that each limit costs. The program plans again without each limit, which takes many times longer.
    #[arg(long)]
    costs: bool,
    /// Checks the plan with scattered inputs (`scatter` in the job) and shows how often each check fails.
    #[arg(long)]
    scatter: bool,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// Reads a job.
///
/// # Errors
/// The job cannot be read; what is wrong has been printed.
pub fn read(job: &std::path::Path, machine: Option<&std::path::Path>) -> Result<Job, Ending> {
    input::read_job_with(job, machine).map_err(|diags| out::wrong_input(&diags))
}

/// Reads and plans a job. With `costs` the plan says what each limit costs.
///
/// # Errors
/// The job cannot be read, or planning meets a defect; what is wrong has been printed.
pub fn planned(job: &std::path::Path, machine: Option<&std::path::Path>, costs: bool) -> Result<(Job, Plan), Ending> {
    let job = read(job, machine)?;
    let answered = Progress::telling("planning", || if costs { with_costs(&job) } else { answer(&job) });
    match answered {
        Ok(plan) => Ok((job, plan)),
        Err(defect) => Err(out::defect(&defect)),
    }
}

/// The ending of a command that has made this plan.
pub fn ending(plan: &Plan) -> Ending {
    match plan.verdict {
        Verdict::Feasible => Ending::Done,
        Verdict::Infeasible => Ending::NotFeasible,
    }
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let (job, mut plan) = match planned(&args.job, args.machine.as_deref(), args.costs) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    if args.scatter && plan.verdict == Verdict::Feasible {
        let progress = Progress::counting("sampled parts", job.scatter.samples);
        plan.scatter = Some(proof::scatter(&plan, &job, &|| progress.done_one()));
    }
    if let Some(dir) = &args.out {
        let files = match folder(&plan) {
            Ok(files) => files,
            Err(defect) => return out::defect(&defect),
        };
        let read: Vec<PathBuf> = input::files_of(&args.job).into_iter().chain(args.machine.clone()).collect();
        let paths: Vec<PathBuf> = files.iter().map(|(name, _)| dir.join(name)).collect();
        let written = files::not_over(&read, paths.iter().map(PathBuf::as_path));
        if let Err(diag) = written.and_then(|()| files::write_all(dir, &files)) {
            return out::wrong_input(&[diag]);
        }
    }
    match args.format {
        Format::Text => out::result(&with_newline(report::plan_text(&plan))),
        Format::Json => {
            let ended = out::json(&plan);
            if ended != Ending::Done {
                return ended;
            }
        }
    }
    ending(&plan)
}

/// The text with a newline at its end.
pub fn with_newline(mut text: String) -> String {
    if !text.ends_with('\n') {
        text.push('\n');
    }
    text
}

/// The files of a plan's folder.
///
/// # Errors
/// [`Defect`] if the plan cannot be written as JSON or drawn.
pub fn folder(plan: &Plan) -> Result<Vec<(&'static str, Vec<u8>)>, Defect> {
    let json =
        serde_json::to_string_pretty(plan).map_err(|e| Defect(format!("the plan cannot be written as JSON: {e}")))?;
    let drawn = |e: report::ReportError| Defect(format!("the plan cannot be drawn: {e}"));
    #[cfg_attr(not(feature = "pdf"), expect(unused_mut))]
    let mut files = vec![
        ("plan.json", (shown::lines(&json).into_owned() + "\n").into_bytes()),
        ("stages.csv", report::stages_csv(plan).into_bytes()),
        ("plan.xlsx", report::plan_xlsx(plan).map_err(drawn)?),
        ("plan.svg", with_newline(report::plan_svg(plan).map_err(drawn)?).into_bytes()),
        ("sheet.html", with_newline(report::sheet_html(plan).map_err(drawn)?).into_bytes()),
    ];
    #[cfg(feature = "pdf")]
    files.push(("sheet.pdf", report::sheet_pdf(plan).map_err(drawn)?));
    Ok(files)
}
