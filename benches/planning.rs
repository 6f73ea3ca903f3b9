//! How long the parts of planning take: states, arcs, the sequence program, placing, the proof, whole jobs, and how time grows with
//! sections, station pitch and cores. See benches/README.md for how to read the numbers.

use divan::{Bencher, black_box};
use spanhold::job::Job;
use spanhold::planner::{Advice, Lessons, steps};
use spanhold::process::span::{Front, Inside, Rear};
use spanhold::process::{Counter, Guide, Rig, State};
use spanhold::{answer, input, planner, proof, spread};
use std::fmt::Write;
use std::sync::Arc;

const JOBS: [&str; 8] = [
    "bobbin-spindle",
    "collared-rod",
    "drive-hub",
    "feed-roller-shaft",
    "metering-spindle",
    "platen-shaft",
    "probe-needle",
    "scanner-rail",
];
/// The jobs with a plan to prove.
fn feasible() -> impl Iterator<Item = &'static str> {
    JOBS.into_iter().filter(|name| *name != "collared-rod")
}
/// Those planned next to a bush.
const GUIDED: [&str; 4] = ["bobbin-spindle", "feed-roller-shaft", "probe-needle", "scanner-rail"];

fn main() {
    divan::main();
}

fn job(name: &str) -> Job {
    let path = format!("{}/demo/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
    input::read_job(path.as_ref()).expect("the demo jobs are right")
}

/// Text to job, the machine's file with it.
#[divan::bench(args = JOBS)]
fn read(name: &str) -> Job {
    job(name)
}

/// Job to proven plan; of a job that cannot be made, the sets of changes that help.
#[divan::bench(args = JOBS, sample_count = 5)]
fn plan(bencher: Bencher, name: &str) {
    let job = job(name);
    bencher.bench(|| spanhold::answer::advised(black_box(&job), Advice::Wanted).expect("no defect"));
}

#[divan::bench(args = feasible(), sample_count = 5)]
fn prove(bencher: Bencher, name: &str) {
    let job = job(name);
    let plan = planner::plan(&job, &Lessons::default()).expect("no defect");
    bencher.bench(|| proof::prove(black_box(&plan), black_box(&job)));
}

/// One state in the last stage of the feed roller.
const STATE: State =
    State { turned_mm: 800.0, counter: Counter::Holds { nose_mm: 544.5 }, guide: Guide::Bush { headstock_mm: 242.0 } };

fn roller() -> Job {
    job("feed-roller-shaft")
}

fn rig(job: &Job) -> Rig<'_> {
    let counter = job.machine.counter_spindle.as_ref().expect("the demo machine has one");
    Rig::new(job, counter.collets.first())
}

/// All answers of a state, by the whole beam: what the proof does.
#[divan::bench]
fn state_as_a_whole_beam(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    bencher.bench(|| rig.answers(black_box(&STATE)).expect("held"));
}

/// The same without the critical speed, and whether it lies above a speed: what settling and the proof ask of most states.
#[divan::bench]
fn state_and_one_count(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    bencher.bench(|| rig.posed(black_box(&STATE)).expect("held").swings_above(2000.0));
}

/// The receptance at the tool, mode by mode: what `chatter` asks where its bound does not settle it.
#[divan::bench]
fn state_receptance(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    bencher.bench(|| rig.least_real_above(black_box(&STATE), STATE.turned_mm, 0.0).expect("held"));
}

/// The answers that do not depend on speed, in parts, for three places of the headstock: what the planner does.
#[divan::bench]
fn state_in_parts_for_three_headstocks(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    let rears: Vec<Rear> = [100.0, 200.0, 300.0].iter().filter_map(|h| Rear::new(&rig, *h)).collect();
    let rears: Vec<&Rear> = rears.iter().collect();
    bencher.bench(|| {
        let front = Front::new(&rig, black_box(STATE.turned_mm), black_box(STATE.counter));
        (front.at_rest(&rears), front.swings_above(200.0, &rears))
    });
}

/// The sequence program of the feed roller with one collet: the network of all plans within a share of the least time,
/// and the best way through it. States are looked at once, before the clock runs.
#[divan::bench(args = [0.001, 0.005], sample_count = 10)]
fn sequence_within(bencher: Bencher, share: f64) {
    let job = roller();
    let timed = steps::of(&rig(&job), |steps| bencher.bench_local(|| steps.best_within(black_box(share))));
    timed.expect("it can be cut");
}

/// Everything that is known of the arcs of the feed roller with one collet: the looks at its states, and the least cost from everywhere.
#[divan::bench(sample_count = 5)]
fn edges(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    bencher.bench_local(|| steps::of(black_box(&rig), |steps| steps.least_s()).expect("it can be cut"));
}

/// The placing program of the feed roller, from its best way on the grid.
#[divan::bench(sample_count = 5)]
fn place(bencher: Bencher) {
    let job = roller();
    let timed = steps::of(&rig(&job), |steps| {
        let stops = steps.best_within(0.001).expect("no defect").expect("there is a way");
        bencher.bench_local(|| steps.placed(black_box(&stops), 4.0).expect("no defect"));
    });
    timed.expect("it can be cut");
}

/// What a plan cannot do without: every state that the sequences of its collets look at, once, and every state that settling looks at,
/// once. Compare with `plan`.
#[divan::bench(args = GUIDED, sample_count = 5)]
fn states_of_a_plan_once(bencher: Bencher, name: &str) {
    let job = job(name);
    let plan = planner::plan(&job, &Lessons::default()).expect("no defect");
    let counter = job.machine.counter_spindle.as_ref().expect("the demo machine has one");
    let rigs: Vec<Rig> = counter.collets.iter().map(|c| Rig::new(&job, Some(c))).collect();
    let mut cells: Vec<(usize, Counter, f64)> = Vec::new();
    let mut settled: Vec<State> = Vec::new();
    for (index, rig) in rigs.iter().enumerate() {
        let chosen = plan.collet.as_ref() == rig.collet.map(|c| &c.name) || plan.collet.is_none();
        let looked = steps::of(rig, |steps| {
            if chosen && settled.is_empty() {
                let within = [0.001, 0.02, 0.1, 0.5, f64::INFINITY];
                let stops = within.iter().find_map(|share| steps.best_within(*share).expect("no defect"));
                settled = stops.map_or(Vec::new(), |stops| steps.settled(&stops, 1.0));
            }
            steps.looked_at()
        });
        let looked = looked.expect("it can be cut");
        cells.extend(looked.into_iter().map(|(counter, turned_mm)| (index, counter, turned_mm)));
    }
    let headstock = &job.machine.headstock;
    let ends = [headstock.nearest_mm, headstock.farthest_mm()];
    bencher.bench_local(|| {
        let rears: Vec<Rear> = ends.iter().filter_map(|h| Rear::new(&rigs[0], *h)).collect();
        let rears: Vec<&Rear> = rears.iter().collect();
        let mut inside: Option<(usize, Counter, Option<Arc<Inside>>)> = None;
        let mut passed = 0;
        for (index, counter, turned_mm) in &cells {
            let rig = &rigs[*index];
            // Cells come grip by grip.
            if inside.as_ref().is_none_or(|(i, c, _)| i != index || c != counter) {
                inside = Some((*index, *counter, Inside::new(rig, *counter)));
            }
            let within = inside.as_ref().and_then(|(_, _, i)| i.clone());
            let front = Front::with(rig, *turned_mm, *counter, within);
            passed += front.at_rest(&rears).len() + front.swings_above(200.0, &rears).len();
        }
        for state in &settled {
            passed += usize::from(rigs[0].posed(state).is_ok_and(|p| p.swings_above(2000.0)));
        }
        passed
    });
}

/// Planned and proven, as the command does it.
#[divan::bench(args = feasible(), sample_count = 5)]
fn planned_and_proven(bencher: Bencher, name: &str) {
    let job = job(name);
    bencher.bench(|| answer::advised(black_box(&job), Advice::Wanted).expect("no defect"));
}

/// The sampled parts of a plan, on all cores.
#[divan::bench(args = feasible(), sample_count = 10)]
fn sampled_parts(bencher: Bencher, name: &str) {
    let job = job(name);
    let plan = answer::advised(&job, Advice::None).expect("no defect");
    bencher.bench(|| proof::scatter(black_box(&plan), &job));
}

/// A metre with so many sections: five seats to hold it by, and between them sections of two diameters.
fn sections(count: usize) -> Job {
    let mut text = String::from("shaft:\n  material: C45\n  sections:\n");
    let between = (count - 5) / 5;
    for _ in 0..5 {
        text.push_str("    - {length: 60, diameter: 18, tolerance: h11}\n");
        for i in 0..between {
            let diameter = if i % 2 == 0 { 17.5 } else { 17.0 };
            let _ = writeln!(text, "    - {{length: {}, diameter: {diameter}}}", 140.0 / between as f64);
        }
    }
    text.push_str("  straightness: 0.3\nstock: {diameter: 25, tolerance: h8, bar_length: 3000}\n");
    text.push_str("machine: machines/long-bed-32.yaml\n");
    text.push_str("cutting: {tools: single, vc: 140, feed: 0.12, ap_max: 7, ap_finish: 0.25, speed_floor: 0.6}\n");
    let demo = format!("{}/demo", env!("CARGO_MANIFEST_DIR"));
    let job = input::read_job_text("sections.yaml", &text, demo.as_ref());
    job.unwrap_or_else(|diags| panic!("{}", input::render(&diags)))
}

#[divan::bench(args = [10, 30, 100, 300, 1000], sample_count = 2)]
fn grows_with_sections(bencher: Bencher, count: usize) {
    let job = sections(count);
    bencher.bench(|| answer::advised(black_box(&job), Advice::None).expect("no defect"));
}

#[divan::bench(args = [10, 5, 2, 1], sample_count = 2)]
fn grows_with_pitch(bencher: Bencher, pitch_mm: u32) {
    let mut job = roller();
    job.planning.station_pitch_mm = f64::from(pitch_mm);
    bencher.bench(|| answer::advised(black_box(&job), Advice::Wanted).expect("no defect"));
}

/// Sixteen feed rollers of slightly different station pitch, each planned and proven, on so many cores.
#[divan::bench(args = [1, 2], sample_count = 2)]
fn batch_on_cores(bencher: Bencher, cores: usize) {
    let jobs: Vec<Job> = (0..16)
        .map(|i| {
            let mut job = roller();
            job.planning.station_pitch_mm += 0.01 * f64::from(i);
            job
        })
        .collect();
    bencher
        .bench(|| spread::spread_on(cores, &jobs, |job, _| answer::advised(job, Advice::Wanted).expect("no defect")));
}
