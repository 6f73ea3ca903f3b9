//! Planning ends within a bound that does not depend on what the numbers of a job are. Work is counted, not timed: looks at states,
//! nodes of the network and moves take one step each.

use super::{jobs, read};
use crate::job::Job;
use crate::planner::Advice;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::process::Rig;
use crate::spread::Halt;

/// Steps for each pair of stations of a collet, as fine as stations are before a no is told. No source: the most that any of the jobs
/// below needs is a quarter of the bound.
const FOR_EACH_PAIR: f64 = 150.0;
/// Breaths of what does not grow with the pairs: settling and proving, a state a mm or less, some ten times.
const FOR_EACH_MM: f64 = 1000.0;
/// The finest pitch of stations, mm.
const FINEST_MM: f64 = 0.5;

/// Breaths of planning and proving a job, and the bound.
fn work(job: &Job) -> (f64, f64) {
    let halt = Halt::default();
    let ended = halt.until(|| crate::answer::advised(job, Advice::None));
    ended.expect("nobody stops it").expect("no defect");
    let mut job = job.clone();
    job.planning.station_pitch_mm = FINEST_MM;
    let job = &job;
    let collets = job.machine.counter_spindle.as_ref().map_or(0, |c| c.collets.len()).max(1) as f64;
    let rig = Rig::new(job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
    let stations = match rig.segments() {
        Ok(segments) => {
            Grid::new(&rig, &segments, &moments(&rig, job.machine.cross_tool_reach_mm[0]), &Lessons::default()).len()
                as f64
        }
        Err(_) => 0.0,
    };
    let reaches = job.machine.cross_tool_reach_mm.len() as f64;
    let bound = collets * reaches * (FOR_EACH_PAIR * stations * stations + FOR_EACH_MM * job.parted_at_mm() + 100.0);
    (halt.steps() as f64, bound)
}

#[test]
fn planning_ends_within_a_bound() {
    let (mut nearest, mut planned) = (0.0f64, 0);
    for seed in 80_000..80_200 {
        let text = if seed % 3 == 0 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
        let Some(job) = read(&text) else { continue };
        let (steps, bound) = work(&job);
        assert!(steps <= bound, "{steps} steps, bound {bound}\n{text}");
        nearest = nearest.max(steps / bound);
        planned += 1;
    }
    println!("{planned} jobs, nearest to the bound: {nearest}");
    assert!(nearest > 0.01 && planned >= 100, "the bound says nothing: {nearest}, {planned} jobs");
}
