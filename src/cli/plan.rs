//! `plan`: the whole plan, on stdout and as a folder.

use super::beside::Files;
use super::progress::Progress;
use super::{Ending, Format, files as paths, interrupt, out};
use crate::answer::{answer, with_costs, with_input_times};
use crate::defect::Defect;
#[cfg(feature = "pdf")]
use crate::diag::Diag;
use crate::fields;
use crate::input::{self, Beside};
use crate::job::Job;
use crate::job::plan::{Plan, Verdict};
#[cfg(feature = "pdf")]
use crate::lang;
use crate::report;
use crate::report::table::columns;
use crate::report::text::WIDTH;
use crate::say;
use crate::shown;
use std::path::{Path, PathBuf};

/// What `plan` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file.
    job: PathBuf,
    #[command(flatten)]
    files: Files,
    /// Folder for plan.json, stages.csv, positions.csv, positions.json, plan.xlsx, plan.svg, plan.dxf, sheet.html (and sheet.pdf with the
    /// feature `pdf`).
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,
    /// Shows the time that each limit costs. The program plans again without each limit, which takes many times longer.
    #[arg(long)]
    costs: bool,
    /// Plans again with each uncertain input lower and higher (`scatter` in the job), and shows what it changes in time.
    #[arg(long)]
    scatter: bool,
    /// Makes the fastest plan it finds that holds in this share of sampled parts, 0.5 to 0.999, whatever the job says.
    #[arg(long, value_name = "SHARE", value_parser = confidence)]
    confidence: Option<f64>,
    /// Prints everything: positions, stops, segments, times, order, notes, cautions.
    #[arg(long)]
    full: bool,
    /// Font file (TTF or OTF) for sheet.pdf, for letters that its own fonts lack, such as Japanese ones.
    #[cfg(feature = "pdf")]
    #[arg(long, value_name = "FILE", requires = "out")]
    font: Option<PathBuf>,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// A confidence as the option takes it.
pub fn confidence(text: &str) -> Result<f64, String> {
    let field = &fields::CONFIDENCE;
    let share = text.parse::<f64>().ok().filter(|share| field.check(*share).is_ok());
    share.ok_or_else(|| say!("plan-confidence-range", range = field.range(crate::lang::Units::Metric)))
}

/// Reads a job.
///
/// # Errors
/// The job cannot be read; what is wrong has been printed.
pub fn read(job: &Path, beside: Beside<'_>) -> Result<Job, Ending> {
    input::read_job_with(job, beside).map_err(|diags| out::wrong_input(&diags))
}

/// Reads and plans a job. With `costs` the plan says what each limit costs.
///
/// # Errors
/// The job cannot be read, or planning meets a defect; what is wrong has been printed.
pub fn planned(job: &Path, beside: Beside<'_>, costs: bool, confidence: Option<f64>) -> Result<(Job, Plan), Ending> {
    let mut job = read(job, beside)?;
    job.scatter.confidence = confidence.or(job.scatter.confidence);
    let work = || if costs { with_costs(&job) } else { answer(&job) };
    match Progress::telling("planning", || interrupt::heeding(work)) {
        Some(Ok(plan)) => Ok((job, plan)),
        Some(Err(defect)) => Err(out::defect(&defect)),
        None => {
            out::say(&format!("{}\n", say!("interrupted")));
            Err(Ending::Interrupted)
        }
    }
}

/// The ending of a command that has made this plan.
pub fn ending(plan: &Plan) -> Ending {
    if interrupt::asked() {
        return Ending::Interrupted;
    }
    match plan.verdict {
        Verdict::Feasible | Verdict::AtRisk => Ending::Done,
        Verdict::Infeasible => Ending::NotFeasible,
    }
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let (job, mut plan) = match planned(&args.job, args.files.beside(), args.costs, args.confidence) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    if args.scatter
        && let Err(defect) = Progress::telling("planning", || with_input_times(&mut plan, &job))
    {
        return out::defect(&defect);
    }
    if let Some(dir) = &args.out {
        #[cfg_attr(not(feature = "pdf"), expect(unused_mut))]
        let mut files = match folder(&plan) {
            Ok(files) => files,
            Err(defect) => return out::defect(&defect),
        };
        #[cfg(feature = "pdf")]
        match pdf(&plan, args.font.as_deref()) {
            Ok(pdf) => files.extend(pdf),
            Err(ending) => return ending,
        }
        let read = input::files_of(&args.job, args.files.beside());
        let places: Vec<PathBuf> = files.iter().map(|(name, _)| dir.join(name)).collect();
        let written = paths::not_over(&read, places.iter().map(PathBuf::as_path));
        if let Err(diag) = written.and_then(|()| paths::write_all(dir, &files)) {
            return out::wrong_input(&[diag]);
        }
    }
    match args.format {
        Format::Text if args.full => out::styled(&report::plan_full(&plan)),
        Format::Text => out::styled(&report::plan_summary(&plan, &next(args))),
        Format::Json => {
            let ended = out::json(&plan);
            if ended != Ending::Done {
                return ended;
            }
        }
    }
    ending(&plan)
}

/// What can be done next, as the last lines of the short answer.
fn next(args: &Args) -> Vec<String> {
    let mut lines = match &args.out {
        Some(dir) => vec![say!("plan-written", folder = shown::line(&dir.display().to_string()))],
        None => {
            let command = command(args).unwrap_or_else(|| "spanhold plan JOB --out FOLDER".to_owned());
            let line = say!("plan-to-write-with", command = command);
            if columns(&line) <= WIDTH { vec![line] } else { vec![say!("plan-to-write"), format!("  {command}")] }
        }
    };
    lines.push(say!("plan-full"));
    lines
}

/// The call that writes the files of this plan. None: a path in it would need more than quotes in some shell, or the
/// call is longer than a line.
fn command(args: &Args) -> Option<String> {
    let mut words = vec!["spanhold plan".to_owned(), quoted(&args.job)?];
    for (option, file) in [("--machine", &args.files.machine), ("--shop", &args.files.shop.file)] {
        if let Some(file) = file {
            words.extend([option.to_owned(), quoted(file)?]);
        }
    }
    words.extend(args.costs.then(|| "--costs".to_owned()));
    words.extend(args.scatter.then(|| "--scatter".to_owned()));
    words.extend(args.confidence.iter().flat_map(|share| ["--confidence".to_owned(), share.to_string()]));
    words.extend(["--out".to_owned(), quoted(&Path::new("plans").join(args.job.file_stem()?))?]);
    let command = words.join(" ");
    (columns(&command) + 2 <= WIDTH).then_some(command)
}

/// A path as every shell takes it.
fn quoted(path: &Path) -> Option<String> {
    let text = path.to_str()?;
    let is_plain =
        |c: char| c.is_alphanumeric() || matches!(c, '/' | '.' | '-' | '_' | ':') || (cfg!(windows) && c == '\\');
    let is_safe = |c: char| is_plain(c) || matches!(c, ' ' | '(' | ')' | ',' | '+' | '=' | '@' | '#' | '&');
    match text {
        _ if text.starts_with('-') || text.is_empty() || !text.chars().all(is_safe) => None,
        _ if text.chars().all(is_plain) => Some(text.to_owned()),
        _ => Some(format!("\"{text}\"")),
    }
}

/// The text with a newline at its end.
fn with_newline(mut text: String) -> String {
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
    let unwritten = |e| Defect(format!("the plan cannot be written as JSON: {e}"));
    let json = |text: String| (shown::lines(&text).into_owned() + "\n").into_bytes();
    Ok(vec![
        ("plan.json", json(serde_json::to_string_pretty(plan).map_err(unwritten)?)),
        ("stages.csv", report::stages_csv(plan).into_bytes()),
        ("positions.csv", report::positions_csv(plan).into_bytes()),
        ("positions.json", json(report::positions_json(plan).map_err(unwritten)?)),
        ("plan.xlsx", report::plan_xlsx(plan).map_err(undrawn)?),
        ("plan.svg", with_newline(report::plan_svg(plan).map_err(undrawn)?).into_bytes()),
        ("plan.dxf", report::plan_dxf(plan).map_err(undrawn)?.into_bytes()),
        ("sheet.html", with_newline(report::sheet_html(plan).map_err(undrawn)?).into_bytes()),
    ])
}

fn undrawn(error: report::ReportError) -> Defect {
    Defect(format!("the plan cannot be drawn: {error}"))
}

/// The sheet as a PDF, with the name of its file. None: its fonts lack the letters of the language, which has been said.
#[cfg(feature = "pdf")]
fn pdf(plan: &Plan, font: Option<&Path>) -> Result<Option<(&'static str, Vec<u8>)>, Ending> {
    const FONT_MAX_MIB: u64 = 64;
    let own = font.map(|path| paths::read(path, FONT_MAX_MIB, lang::text("font-help"))).transpose();
    let own = own.map_err(|diag| out::wrong_input(&[diag]))?;
    let writes = report::can_write(own.as_deref()).map_err(|e| {
        let file = font.map_or(String::new(), |path| path.display().to_string());
        out::wrong_input(&[
            Diag::new(say!("font-unreadable", file = file, reason = e.to_string())).help(say!("font-help"))
        ])
    })?;
    if !writes {
        out::say(&format!("{}\n", say!("font-wanted")));
        return Ok(None);
    }
    let pdf = report::sheet_pdf(plan, own.as_deref()).map_err(|e| out::defect(&undrawn(e)))?;
    Ok(Some(("sheet.pdf", pdf)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use clap::Parser;

    #[derive(Parser)]
    struct Call {
        #[command(flatten)]
        args: Args,
    }

    fn told(args: &[&str]) -> Option<String> {
        command(&Call::parse_from([&["plan"], args].concat()).args)
    }

    #[test]
    fn the_call_that_writes_the_files_is_the_users_own_with_a_folder() {
        let call = |args: &[&str]| told(args).unwrap_or_default();
        assert_eq!(call(&["demo/x.yaml"]), "spanhold plan demo/x.yaml --out plans/x");
        assert_eq!(
            call(&["a b.yaml", "--scatter", "--machine", "m.yaml"]),
            "spanhold plan \"a b.yaml\" --machine m.yaml --scatter --out \"plans/a b\""
        );
        for path in ["a\u{1b}b.yaml", "$HOME.yaml", "a`b`.yaml", "a\"b.yaml", &"x".repeat(90)] {
            assert_eq!(told(&[path]), None, "{path}");
        }
    }
}
