//! How long the parts of planning take: whole jobs, their proof, one state as a whole beam and in two halves, and the
//! sequence program. See benches/README.md for how to read the numbers.

use divan::{Bencher, black_box};
use spanhold::job::Job;
use spanhold::planner::Advice;
use spanhold::planner::network::{Builder, Weights};
use spanhold::planner::outlook::Looker;
use spanhold::planner::runs::Runs;
use spanhold::planner::sequence::best_way;
use spanhold::planner::stations::{Grid, moments};
use spanhold::process::span::{Front, Rear};
use spanhold::process::{Counter, Guide, Rig, State};
use spanhold::{input, planner, proof};

const JOBS: [&str; 6] =
    ["bobbin-spindle", "collared-rod", "drive-hub", "feed-roller-shaft", "probe-needle", "scanner-rail"];
/// The jobs with a plan to prove.
const FEASIBLE: [&str; 5] = ["bobbin-spindle", "drive-hub", "feed-roller-shaft", "probe-needle", "scanner-rail"];

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

/// Job to plan; of a job that cannot be made, all the changes tried.
#[divan::bench(args = JOBS, sample_count = 5)]
fn plan(bencher: Bencher, name: &str) {
    let job = job(name);
    bencher.bench(|| planner::plan(black_box(&job), Advice::Wanted, &[]).expect("no defect"));
}

#[divan::bench(args = FEASIBLE, sample_count = 5)]
fn prove(bencher: Bencher, name: &str) {
    let job = job(name);
    let plan = planner::plan(&job, Advice::None, &[]).expect("no defect");
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

/// The answers that do not depend on speed, in two halves, for three places of the headstock: what the planner does.
#[divan::bench]
fn state_in_two_halves_for_three_headstocks(bencher: Bencher) {
    let job = roller();
    let rig = rig(&job);
    let rears: Vec<Rear> = [100.0, 200.0, 300.0].iter().filter_map(|h| Rear::new(&rig, *h)).collect();
    let rears: Vec<&Rear> = rears.iter().collect();
    bencher.bench(|| {
        let front = Front::new(&rig, black_box(STATE.turned_mm), black_box(STATE.counter));
        (front.still(&rears), front.swings_above(200.0, &rears))
    });
}

/// The sequence program of the feed roller with one collet: the network of all plans within a share of the least time,
/// and the best way through it. States are looked at once, before the clock runs.
#[divan::bench(args = [0.001, 0.005], sample_count = 10)]
fn sequence_within(bencher: Bencher, share: f64) {
    let job = roller();
    let rig = rig(&job);
    let segments = rig.segments().expect("it can be cut");
    let tasks = rig.tasks();
    let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
    let grid = Grid::new(&rig, &segments, &moments, &[]);
    let looker = Looker::new(&rig, &segments, &grid, &tasks);
    let runs = Runs::new(&looker);
    let builder = Builder::new(&runs, Weights::default());
    let bound = builder.least_s() * (1.0 + share);
    bencher.bench_local(|| {
        let net = builder.within(black_box(bound));
        best_way(&net, bound - builder.least_s()).expect("no defect")
    });
}
