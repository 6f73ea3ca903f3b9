//! Plans stay what they were: the essentials of all demo jobs' plans and of 620 random jobs' answers, 120 of them without a bush, against a
//! table that was written before the planner was made faster.
//!
//! The tables are `tests/data/unchanged.txt` and `tests/data/unchanged_no_bush.txt`, a line a job. Times, places and shares were written
//! with ten significant digits and must agree within `SAME`; words and numbers of things to the letter. A change of the model changes the table: renew it with
//! `SPANHOLD_BLESS=1 cargo test --test unchanged`, read every line that changed, and say why in the change log.

use spanhold::job::Job;
use spanhold::job::plan::{Plan, Stage, Verdict};
use spanhold::planner::Advice;
use spanhold::{answer, input};
use std::fmt::Write;
use std::path::Path;

#[path = "jobs/mod.rs"]
mod jobs;

/// Numbers agree within this share, or this much of a tenth where they are smaller: the rounding of ten digits and of sums in another
/// order. When the critical speed was settled further, none moved by more than 4e-9.
const SAME: f64 = 1e-7;
/// What a slowed piece uses of the limit that slows it.
const SLOWED: f64 = 0.9999;
/// Random jobs that are read.
const RANDOM: usize = 500;
const FIRST_SEED: u64 = 500_000;
/// Random jobs that are turned without a bush.
const NO_BUSH: usize = 120;
const FIRST_NO_BUSH_SEED: u64 = 600_000;

fn table(name: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data").join(name)
}

/// One line: what was decided, without what is worked out from it.
fn essentials(plan: &Plan) -> String {
    let mut line = String::new();
    if plan.verdict == Verdict::Infeasible {
        let s = plan.shortfall.as_ref().expect("an answer of no has a reason");
        let _ = write!(line, "no {:.9e} {}", s.farthest_mm, s.blocked_names());
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
    lines.extend(answers(texts, RANDOM));
    lines
}

/// A random job without a bush, thick for its length: every third bounds the hand-overs, some seek another thing than a short time.
fn without_bush(seed: u64) -> String {
    let r = &mut jobs::Random::new(seed);
    let mut text = String::from("shaft:\n  material: C45\n  sections:\n");
    let mut length = 0.0;
    for _ in 0..r.pick(&[2, 3, 3, 4]) {
        let own = r.between(10.0, 40.0, 15);
        let diameter = r.pick(&[24.0, 28.0, 30.0, 30.0]);
        let more = r.pick(&[
            "",
            ", interrupt: free",
            ", interrupt: free",
            ", interrupt: avoid",
            ", tolerance: h9",
            ", ra: 1.6",
        ]);
        let _ = writeln!(text, "    - {{length: {own}, diameter: {diameter}{more}}}");
        length += own;
    }
    if r.chance(0.4) {
        let at = r.between(0.2 * length, 0.9 * length, 20);
        let _ =
            writeln!(text, "  features:\n    - {{cross_hole: 4, at: {at:.1}, thrust: {}}}", r.pick(&[50, 300, 900]));
    }
    let gap = r.pick(&[3, 8, 15]);
    let _ = writeln!(text, "stock: {{diameter: 32, bar_length: 3000}}\nholding: no_bush\nmachine:");
    let _ = writeln!(text, "  bush: {{max_bar: 38, land: 30, gap: 2, stiffness: 150}}");
    let _ = writeln!(text, "  no_bush: {{max_bar: 42, collet_gap: {gap}}}");
    let stroke = r.pick(&[40, 60, 90, 160]);
    let stiffness = r.pick(&[60, 120, 250]);
    let _ = writeln!(
        text,
        "  headstock: {{nearest: 60, stroke: {stroke}, hold: 30, stiffness: {stiffness}, max_rpm: 6000, regrip_s: 4}}"
    );
    let (far, sags) = (r.pick(&[90, 140, 260]), r.pick(&[40, 120]));
    let _ = writeln!(
        text,
        "  counter_spindle:\n    {{nearest: 8, farthest: {far}, bore: 34, bore_depth: 200, stiffness: {sags}, max_rpm: 6000,"
    );
    let clamp = r.pick(&[9000, 25000, 25000]);
    let collet =
        |d: f64| format!("{{name: {d}, range: [{}, {}], hold: 9, passes: 33, clamp_force: {clamp}}}", d - 0.3, d + 0.1);
    let _ = writeln!(text, "     hand_over_s: {}, collets: [{}, {}]}}", r.pick(&[2, 7]), collet(30.0), collet(24.0));
    let _ = writeln!(text, "  part_off: {{width: 3, time_s: 6}}");
    let floor = r.pick(&[1.0, 0.6, 0.2]);
    let _ = writeln!(text, "cutting: {{vc: {}, feed: 0.1, ap_max: 3, speed_floor: {floor}}}", r.pick(&[120, 200]));
    let stiffness = r.spread(1.0, 12.0, 12);
    let _ = writeln!(text, "planning: {{station_pitch: {}}}", r.pick(&[7, 10]));
    let _ = writeln!(text, "limits: {{stiffness_min: {stiffness:.3},");
    let _ = writeln!(text, "  whirl_ratio: {:.3}, sag: {:.5},", r.spread(0.02, 0.5, 12), r.spread(0.001, 0.02, 12));
    let _ = writeln!(text, "  damping_ratio: {}}}", r.pick(&[0.01, 0.03, 0.06]));
    if seed % 3 == 2 {
        let _ = writeln!(text, "wishes: {{at_most_hand_overs: {}}}", 1 + seed % 2);
    }
    match seed % 8 {
        3 => text + "objective: fewest_hand_overs\n",
        7 => text + "objective: margin\n",
        _ => text,
    }
}

/// Lines of the first so many jobs that are read. The answer without advice: what would help is asked of the demo jobs alone, and takes as
/// long as everything else here.
fn answers(texts: impl Iterator<Item = (u64, String)>, most: usize) -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let read = texts.filter_map(|(seed, text)| Some((seed, input::read_job_text("random.yaml", &text, root).ok()?)));
    let list: Vec<(u64, Job)> = read.take(most).collect();
    spanhold::spread::spread(&list, |(seed, job), _| format!("{seed}: {}", line(job, Advice::None)))
}

/// Whether two words are the same word, or numbers that agree.
fn agree(old: &str, new: &str) -> bool {
    match (old.parse::<f64>(), new.parse::<f64>()) {
        (Ok(a), Ok(b)) => (a - b).abs() <= SAME * a.abs().max(0.1),
        _ => old == new,
    }
}

/// Compares with a stored table, of which so many lines at least have a plan and so many have none; or writes it.
fn compare(name: &str, lines: &[String], [some, none]: [usize; 2]) {
    if std::env::var_os("SPANHOLD_BLESS").is_some() {
        std::fs::write(table(name), lines.join("\n") + "\n").expect("written");
        return;
    }
    let stored = std::fs::read_to_string(table(name)).expect("the table is there");
    let stored: Vec<&str> = stored.lines().collect();
    assert_eq!(stored.len(), lines.len());
    let yes = stored.iter().filter(|l| l.contains(": yes ")).count();
    assert!(yes >= some && stored.len() - yes >= none, "{yes} of {} have a plan", stored.len());
    let differ: Vec<String> = stored
        .iter()
        .zip(lines)
        .filter(|(old, new)| {
            let (old, new): (Vec<&str>, Vec<&str>) = (old.split(' ').collect(), new.split(' ').collect());
            old.len() != new.len() || !old.iter().zip(&new).all(|(a, b)| agree(a, b))
        })
        .map(|(old, new)| format!("- {old}\n+ {new}"))
        .collect();
    assert!(differ.is_empty(), "{} of {} plans differ:\n{}", differ.len(), lines.len(), differ.join("\n"));
}

#[test]
fn plans_are_what_they_were() {
    compare("unchanged.txt", &all(), [130, 100]);
}

#[test]
fn plans_without_a_bush_are_what_they_were() {
    let texts = (FIRST_NO_BUSH_SEED..).map(|seed| (seed, without_bush(seed)));
    compare("unchanged_no_bush.txt", &answers(texts, NO_BUSH), [80, 20]);
}
