//! Plans stay what they were: the essentials of all demo jobs' plans and of 500 random jobs' answers, against a table that was
//! written before the planner was made faster.
//!
//! The table is `tests/data/unchanged.txt`, a line a job. Times, places and shares were written with ten significant digits and must agree
//! within `SAME`; words and numbers of things to the letter. A change of the model changes the table: renew it with
//! `SPANHOLD_BLESS=1 cargo test --test unchanged`, read every line that changed, and say why in the change log.

use spanhold::job::Job;
use spanhold::job::plan::{Plan, Stage, Verdict};
use spanhold::planner::Advice;
use spanhold::{answer, input};
use std::fmt::Write;
use std::path::Path;

#[path = "oracle/jobs.rs"]
#[allow(dead_code)]
mod jobs;

/// Numbers agree within this share, or this much of a tenth where they are smaller: the rounding of ten digits and of sums in another
/// order. When the critical speed was settled further, none moved by more than 4e-9.
const SAME: f64 = 1e-7;
/// What a slowed piece uses of the limit that slows it.
const SLOWED: f64 = 0.9999;
/// Random jobs that are read.
const RANDOM: usize = 500;
const FIRST_SEED: u64 = 500_000;

fn table() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/unchanged.txt")
}

/// One line: what was decided, without what is worked out from it.
fn essentials(plan: &Plan) -> String {
    let mut line = String::new();
    if plan.verdict == Verdict::Infeasible {
        let s = plan.shortfall.as_ref().expect("an answer of no has a reason");
        let _ = write!(line, "no {:.9e} {}", s.farthest_mm, s.blocked_by);
        for c in &s.changes {
            let _ =
                write!(line, " | {} {} {}", c.change, c.to, c.extra_time_s.map_or("-".into(), |t| format!("{t:.9e}")));
        }
        return line;
    }
    let _ =
        write!(line, "yes {} {:.9e}", plan.collet.as_deref().unwrap_or("-"), plan.time_s.total + plan.time_s.penalties);
    let _ = write!(line, " {:.9e} {:.6} {}", plan.margin.unwrap_or(1.0), plan.optimality.gap, plan.optimality.stations);
    for s in &plan.stages {
        let _ = write!(line, " | {:.9e} {:.9e}", s.to_mm, s.grip.as_ref().map_or(-1.0, |g| g.nose_mm));
        for t in &s.regrips_mm {
            let _ = write!(line, " r {t:.9e}");
        }
        let _ = write!(line, " n {:.9e} {:.9e}", s.rpm_min, s.rpm_max);
        if let Some(c) = Stage::governing(s) {
            let _ = write!(line, " {} {:.9e}", c.check, c.utilisation);
            // Several pieces slowed down to one and the same share of a limit: which of them is first in the last digit says nothing.
            if (c.utilisation - SLOWED).abs() > 1e-8 {
                let _ = write!(line, " {:.9e}", c.turned_mm);
            }
        }
    }
    line
}

fn line(job: &Job, advice: Advice) -> String {
    match answer::advised(job, advice) {
        Ok(plan) => essentials(&plan),
        Err(defect) => format!("defect {defect}"),
    }
}

/// All lines: name and essentials.
fn all() -> Vec<String> {
    let mut lines = Vec::new();
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut demos: Vec<_> =
        std::fs::read_dir(root.join("demo")).expect("there").map(|e| e.expect("readable").path()).collect();
    demos.retain(|p| p.extension().is_some_and(|e| e == "yaml"));
    demos.sort();
    for path in demos {
        let job = input::read_job(&path).expect("the demo jobs are right");
        let name = path.file_stem().map(|s| s.to_string_lossy().into_owned()).unwrap_or_default();
        lines.push(format!("{name}: {}", line(&job, Advice::Wanted)));
    }
    let texts = (FIRST_SEED..).map(|seed| {
        let text = if seed % 5 == 4 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
        // Every sixth with so little damping that the modes of the whole bar decide about chatter.
        (seed, if seed % 6 == 1 { format!("{text}  damping_ratio: 0.003\n") } else { text })
    });
    let read = texts.filter_map(|(seed, text)| Some((seed, input::read_job_text("random.yaml", &text, root).ok()?)));
    let list: Vec<(u64, Job)> = read.take(RANDOM).collect();
    // The answer without advice: what would help is asked of the demo jobs alone, and takes as long as everything else here.
    lines.extend(spanhold::spread::spread(&list, |(seed, job), _| format!("{seed}: {}", line(job, Advice::None))));
    lines
}

/// Whether two words are the same word, or numbers that agree.
fn agree(old: &str, new: &str) -> bool {
    match (old.parse::<f64>(), new.parse::<f64>()) {
        (Ok(a), Ok(b)) => (a - b).abs() <= SAME * a.abs().max(0.1),
        _ => old == new,
    }
}

#[test]
fn plans_are_what_they_were() {
    let lines = all();
    if std::env::var_os("SPANHOLD_BLESS").is_some() {
        std::fs::write(table(), lines.join("\n") + "\n").expect("written");
        return;
    }
    let stored = std::fs::read_to_string(table()).expect("the table is there");
    let stored: Vec<&str> = stored.lines().collect();
    assert_eq!(stored.len(), lines.len());
    let yes = stored.iter().filter(|l| l.contains(": yes ")).count();
    assert!(yes >= 150 && stored.len() - yes >= 100, "{yes} of {} have a plan", stored.len());
    let differ: Vec<String> = stored
        .iter()
        .zip(&lines)
        .filter(|(old, new)| {
            let (old, new): (Vec<&str>, Vec<&str>) = (old.split(' ').collect(), new.split(' ').collect());
            old.len() != new.len() || !old.iter().zip(&new).all(|(a, b)| agree(a, b))
        })
        .map(|(old, new)| format!("- {old}\n+ {new}"))
        .collect();
    assert!(differ.is_empty(), "{} of {} plans differ:\n{}", differ.len(), lines.len(), differ.join("\n"));
}
