//! Properties that hold for any job, on random ones. Seeds are fixed: the same cases every time.

mod alike;
mod beams;
mod centre;
mod edges;
mod free;
mod halves;
mod held;
mod inch;
#[path = "../jobs/mod.rs"]
mod jobs;
mod limits;
mod orders;
mod plans;
mod reasons;
mod second_look;
mod sets;
mod sure;
mod tampering;
mod tandem;
mod threads;
mod told;
mod tool_list;
mod trays;
mod wild;

use proptest::test_runner::{Config, RngSeed};
use spanhold::job::Job;

/// As many cases as asked for, always the same ones.
fn cases(cases: u32) -> Config {
    Config { cases, rng_seed: RngSeed::Fixed(20), failure_persistence: None, max_shrink_iters: 0, ..Config::default() }
}

fn read(text: &str) -> Option<Job> {
    spanhold::input::read_job_text("random.yaml", text, ".".as_ref()).ok()
}
