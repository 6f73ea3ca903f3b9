//! Writes sequence programs of random jobs with our optimum, for another solver to solve.
//!
//! `cargo test --lib planner::tests::export`, then `python .ci/highs.py target/sequence_programs`: it solves the same programs
//! and compares the optima. Each program is a free MPS file; our least time stands in its first comment, and in the
//! list `index.json` beside the files.

use super::{jobs, read};
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::sequence::network::{Builder, Network, Weights};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Runs;
use crate::planner::sequence::way::cheapest_way;
use crate::planner::states::outlook::Looker;
use crate::process::Rig;
use std::fmt::Write;
use std::path::Path;

const PROGRAMS: usize = 36;
/// Programs with fewer edges say little.
const FEWEST_ARCS: usize = 60;

/// The flow program of a network: one column an arc, one row a node; the goal's row follows from the others.
fn free_mps(net: &Network, goal: usize, name: &str, least_s: f64) -> String {
    let mut text = format!("* least time {least_s:?} s\nNAME {name}\nROWS\n N seconds\n");
    let rows = (0..net.nodes.len()).filter(|n| *n != goal);
    for node in rows {
        let _ = writeln!(text, " E n{node}");
    }
    text.push_str("COLUMNS\n");
    for (a, arc) in net.edges.iter().enumerate() {
        // Seventeen digits: the very number we reckon with.
        let _ = writeln!(text, " x{a} seconds {:?}", arc.cost.s);
        for (node, sign) in [(arc.from, 1), (arc.to, -1)] {
            if node != goal {
                let _ = writeln!(text, " x{a} n{node} {sign}");
            }
        }
    }
    text.push_str("RHS\n rhs n0 1\nENDATA\n");
    text
}

/// The program of a job's first collet, and our optimum; none where there is no plan or too small a network.
fn program(text: &str, name: &str) -> Option<(String, f64, usize)> {
    let job = read(text)?;
    let rig = Rig::new(&job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
    let (segments, tasks) = (rig.segments().ok()?, rig.tasks());
    let grid = Grid::new(&rig, &segments, &moments(&rig, job.machine.cross_tool_reach_mm[0]), &Lessons::default());
    let looker = Looker::new(&rig, &segments, &grid, &tasks);
    let runs = Runs::new(&looker);
    let net = Builder::new(&runs, Weights::default()).within(Price::NO_WAY);
    let goal = net.goal.filter(|_| net.edges.len() >= FEWEST_ARCS)?;
    let way = cheapest_way(&net, |_| true).unwrap_or_else(|d| panic!("{d}\n{text}"))?;
    let least_s: f64 = way.iter().map(|a| net.edges[*a].cost.s).sum();
    Some((free_mps(&net, goal, name, least_s), least_s, net.edges.len()))
}

#[test]
fn write_sequence_programs() {
    // Beside `tmp`, wherever the target directory is.
    let target = std::env::var_os("CARGO_TARGET_DIR").unwrap_or_else(|| "target".into());
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(target).join("sequence_programs");
    if folder.exists() {
        std::fs::remove_dir_all(&folder).expect("a folder of our own");
    }
    std::fs::create_dir_all(&folder).expect("target is writable");
    let mut list = Vec::new();
    for seed in 80_000.. {
        if list.len() == PROGRAMS {
            break;
        }
        assert!(seed < 80_600, "only {} programs", list.len());
        let name = format!("sequence_{seed}");
        let Some((mps, least_s, edges)) = program(&jobs::small_job(seed), &name) else { continue };
        std::fs::write(folder.join(format!("{name}.mps")), mps).expect("written");
        list.push(serde_json::json!({ "file": format!("{name}.mps"), "least_s": least_s, "edges": edges }));
    }
    let index = serde_json::to_string_pretty(&list).expect("plain data");
    std::fs::write(folder.join("index.json"), index).expect("written");
}
