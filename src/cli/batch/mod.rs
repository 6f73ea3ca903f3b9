//! `batch`: many jobs on all cores, one JSON line each, in input order. It does not work out what would help a job that
//! cannot be made, because that takes many plans: `check` does it.
//!
//! Only a limited number of lines that wait for an earlier one are in memory, so the number of jobs does not matter.

mod documents;
mod id;
mod line;
mod map;
mod sink;
mod summary;
mod tasks;

use super::beside::InShop;
use super::progress::Progress;
use super::{Ending, files, interrupt, out};
use crate::diag::Diag;
use crate::input;
use crate::lang;
use crate::say;
use crate::spread::stream;
use std::io::BufReader;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// What `batch` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job files. `-` reads from stdin: one path per line, or job documents.
    #[arg(required = true, value_name = "JOB")]
    jobs: Vec<PathBuf>,
    /// Machine to use instead of the machines of the jobs: a file, or a name from the shop's file. Repeat it to plan every job on each machine.
    #[arg(long, value_name = "FILE")]
    machine: Vec<PathBuf>,
    #[command(flatten)]
    shop: InShop,
    /// File for the lines. Default: stdout.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Continues an interrupted call with the same jobs and the same `--out` file.
    #[arg(long, requires = "out")]
    resume: bool,
    /// Draws the family of parts (`vary` in the job): hand-overs by length and diameter, or time by one of them.
    #[arg(long, value_name = "FILE.svg")]
    map: Option<PathBuf>,
}

/// The name of stdin in a call.
const STDIN: &str = "-";

/// Runs it. A bad job gives one line and never stops the rest. The ending is that of the worst line: a defect, a wrong
/// input, or done.
pub fn run(args: &Args) -> Ending {
    if args.jobs.iter().filter(|j| j.as_os_str() == STDIN).count() > 1 {
        return out::wrong_input(&[Diag::new(say!("batch-stdin-twice")).help(say!("batch-stdin-twice-help"))]);
    }
    if let Err(diag) = places(args) {
        return out::wrong_input(&[diag]);
    }
    let mut drawn = match &args.map {
        None => None,
        Some(_) => match lang::apart(|| map::of(&args.jobs, &args.machine, &args.shop)) {
            Ok(map) => Some(map),
            Err(diags) => return out::wrong_input(&diags),
        },
    };
    let mut summary = summary::Summary::new();
    let progress = Arc::new(Progress::counting(lang::text("progress-jobs"), 0));
    let counted = Arc::clone(&progress);
    let mut tasks = tasks::tasks(
        args.jobs.clone(),
        (args.machine.clone(), args.shop.clone()),
        BufReader::new(std::io::stdin()),
        move |n| counted.more(n),
    );
    let before = |head: &line::Head| {
        summary.before(head);
        if let Some(map) = &mut drawn {
            map.add(head);
        }
        progress.done_one();
    };
    let mut sink = match lang::apart(|| sink::Sink::open(args.out.as_deref(), args.resume, &mut tasks, before)) {
        Ok(sink) => sink,
        Err(diag) => return out::wrong_input(&[diag]),
    };
    if let Some(path) = &args.out {
        interrupt::leaves(say!("batch-interrupted", file = path.display().to_string()));
    }
    let mut failed = None;
    stream(tasks, line::planned, |planned| {
        summary.add(&planned);
        if let Some(map) = &mut drawn {
            map.add(&planned.head);
        }
        progress.done_one();
        match sink.write(&planned.text) {
            Ok(flow) => flow,
            Err(diag) => {
                failed = Some(diag);
                ControlFlow::Break(())
            }
        }
    });
    progress.clear();
    if let Some(diag) = failed {
        return out::wrong_input(&[diag]);
    }
    out::say(&summary.text());
    if let (Some(path), Some(map)) = (&args.map, &drawn)
        && let Some(ended) = draw(path, map)
    {
        return ended;
    }
    summary.ending()
}

/// How a drawing begins.
const DRAWING_BEGINS: [&[u8]; 2] = [b"<?xml", b"<svg"];

/// Makes sure that the places of lines and map can be used: two different files, neither of them one that is read, the
/// map at a place where a file can be. Otherwise a bad place for the map would show only at the end. The files that
/// jobs on stdin name are not known yet; they are safe, because only files that hold lines or a drawing are
/// overwritten.
///
/// # Errors
/// A place cannot be used.
fn places(args: &Args) -> Result<(), Diag> {
    let (out, map) = (args.out.as_deref(), args.map.as_deref());
    if out.is_none() && map.is_none() {
        return Ok(());
    }
    if let (Some(out), Some(map)) = (out, map)
        && files::same(out, map)
    {
        let what = say!("batch-same-file", file = map.display().to_string());
        return Err(Diag::new(what).help(say!("batch-same-file-help")));
    }
    let jobs = args.jobs.iter().filter(|job| job.as_os_str() != STDIN);
    let read: Vec<PathBuf> =
        jobs.flat_map(|job| input::files_of(job, args.shop.beside(None))).chain(args.machine.iter().cloned()).collect();
    files::not_over(&read, out.into_iter().chain(map))?;
    if let Some(out) = out.filter(|_| !args.resume) {
        files::is_ours(out, &[sink::LINE_BEGINS], |file| say!("batch-file-without-lines", file = file))?;
    }
    let Some(map) = map else { return Ok(()) };
    files::takes_a_name(map)?;
    files::is_ours(map, &DRAWING_BEGINS, |file| say!("batch-file-without-drawing", file = file))
}

/// Writes the map. Some: this failed, and the command ends so.
fn draw(path: &Path, map: &map::Map) -> Option<Ending> {
    match map.svg() {
        Ok(svg) => files::write_one(path, &svg).err().map(|diag| out::wrong_input(&[diag])),
        Err(defect) => Some(out::defect(&defect)),
    }
}
