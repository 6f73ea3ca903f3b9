//! Without a bush all pieces that end at a station under a grip are told by one walk. Here each is worked out alone, from all its states
//! and all their checks.

use crate::input::read_job_text;
use crate::job::Job;
use crate::planner::places::grips::{lands, noses};
use crate::planner::places::ground::Ground;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, divisible, moments};
use crate::planner::sequence::network::Weights;
use crate::planner::sequence::unguided::{Came, Knows, Unguided};
use crate::process::checks::{self, PASSES_UP_TO, View};
use crate::process::stops::SAME_MM;
use crate::process::{Counter, Rig, State, Work};

const JOB: &str = "shaft:
  material: C45
  sections:
    - {length: 21, diameter: 7.5, interrupt: free}
    - {length: 5, thread: M6}
    - {length: 34, diameter: 8.6, interrupt: free, tolerance: h9}
    - {length: 2, diameter: 7, kind: groove}
    - {length: 40, taper: [8, 8.6], interrupt: free}
  features:
    - {cross_hole: 1.5, at: 47, thrust: 20}
stock: {diameter: 9, bar_length: 3000}
holding: no_bush
machine:
  no_bush: {max_bar: 12, collet_gap: 6}
  bush: {max_bar: 12, land: 12, gap: 1, stiffness: 60}
  headstock: {nearest: 32, stroke: 50, hold: 15, stiffness: 60, max_rpm: 12000, regrip_s: 4}
  counter_spindle:
    nearest: 3
    farthest: 90
    bore: 14
    bore_depth: 120
    stiffness: 30
    max_rpm: 12000
    hand_over_s: 3
    collets: [{name: A, range: [8.4, 8.7], hold: 6, passes: 8.8, clamp_force: 9000}]
  cross_tool_reach: 10
  part_off: {width: 2, time_s: 4}
cutting: {tools: single, vc: 150, feed: 0.08, ap_max: 2, ap_finish: 0.1, speed_floor: FLOOR}
limits: {stiffness_min: STIFF, whirl_ratio: WHIRL, whip: 0.05, sag: 0.005, release: 0.02, damping_ratio: DAMPING}
planning: {station_pitch: 6}
";

fn job([stiff, whirl, damping, floor]: [&str; 4]) -> Job {
    let text = JOB.replace("STIFF", stiff).replace("WHIRL", whirl).replace("DAMPING", damping).replace("FLOOR", floor);
    read_job_text("job.yaml", &text, ".".as_ref()).expect("a job")
}

/// The state of a station under a grip, with the bar fed out for a piece.
fn state(ground: &Ground<'_>, grid: &Grid, nose_mm: Option<f64>, station: usize, end: usize) -> State {
    let turned_mm = grid.at(station);
    State { turned_mm, counter: Counter::of(nose_mm), guide: ground.rig.guide(turned_mm, turned_mm, grid.fed_to(end)) }
}

/// Time and margin of one piece; none where it does not pass.
fn alone(ground: &Ground<'_>, grid: &Grid, nose_mm: Option<f64>, [i, j]: [usize; 2]) -> Option<(f64, f64)> {
    let (rig, gripped) = (ground.rig, nose_mm.is_some());
    let (mut time_s, mut share, mut k) = (0.0, 0.0f64, i);
    while k < j {
        let to = (k..j).take_while(|n| grid.segment[*n] == grid.segment[k]).last()? + 1;
        let segment = &ground.segments[grid.segment[k]];
        let seen = (k..=to).map(|n| state(ground, grid, nose_mm, n, j));
        let seen = seen.map(|s| Some((s, rig.answers(&s).ok()?))).collect::<Option<Vec<_>>>()?;
        let wanted = rig.segment_rpm(segment, gripped);
        let allowed = seen.iter().map(|(s, answers)| rig.allowed_rpm(s, answers).rpm).fold(f64::INFINITY, f64::min);
        let rpm = wanted.min(allowed.max(rig.job.cutting.speed_floor * wanted));
        for (n, (state, answers)) in (k..).zip(&seen) {
            let view = View { rig, state, answers, segment, rpm };
            share = checks::all(&view).map(|f| f.utilisation).fold(share, f64::max);
            for task in grid.stations[n].tasks.iter().filter(|_| n > i) {
                let task = &ground.tasks[*task];
                let found = checks::drill::find(rig, state, task.at_mm, task.thrust_n?).ok()?;
                share = share.max(found.utilisation);
            }
        }
        let flexibilities: Vec<f64> = seen.iter().map(|(_, answers)| answers.tool_mm_per_n).collect();
        share = checks::cut::along(rig, segment, &flexibilities).map_or(share, |f| share.max(f.utilisation));
        if segment.work != Work::PartOff && (divisible(segment) || grid.at(to) >= segment.to_mm - SAME_MM) {
            let cap_rpm = if rpm < wanted { rpm } else { f64::INFINITY };
            time_s += rig.piece_time(segment, grid.at(to) - grid.at(k), gripped, cap_rpm).total_s();
        }
        k = to;
    }
    (share <= PASSES_UP_TO).then_some((time_s, 1.0 - share))
}

#[test]
fn a_row_tells_of_each_piece_what_the_piece_alone_tells() {
    let (mut pass, mut fail, mut slow) = (0, 0, 0);
    for limits in [
        ["0.05", "0.3", "0.03", "0.5"],
        ["0.5", "0.3", "0.03", "0.5"],
        ["0.05", "0.03", "0.03", "0.2"],
        ["0.05", "0.3", "0.003", "0.5"],
        ["0.02", "0.1", "0.001", "0.3"],
    ] {
        let job = job(limits);
        let rig = Rig::new(&job, job.machine.collet("A"));
        let (segments, tasks) = (rig.segments().expect("they can be turned"), rig.tasks());
        let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
        let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
        let grid = Grid::new(&rig, &segments, &moments, &Lessons::default());
        assert!(grid.stations.iter().any(|s| !s.tasks.is_empty()));
        let noses = noses(&rig, &grid, &lands(&rig));
        let all = Unguided::new(&ground, &grid, noses.clone(), Weights::default());
        for (grip, j) in (0..=noses.len()).flat_map(|g| (1..=grid.last()).map(move |j| (g, j))) {
            let row = all.row(grip, j, 0, Knows::Margins);
            for i in (0..j).filter(|i| all.ends(*i, grip).any(|end| end == j)) {
                match (row.get(j - 1 - i), alone(&ground, &grid, noses.get(grip).copied(), [i, j])) {
                    (Some(a), Some(b)) => {
                        let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * b.abs().max(1.0);
                        assert!(near(a.0, b.0) && near(a.1, b.1), "{grip}, {i} to {j}: {a:?}, alone {b:?}");
                        pass += 1;
                        slow += usize::from(a.1 < 1e-3);
                    }
                    (None, None) => fail += 1,
                    (row, alone) => panic!("{grip}, {i} to {j}: {row:?}, alone {alone:?}"),
                }
            }
        }
    }
    assert!(pass > 200 && fail > 200 && slow > 20, "{pass} pass, {slow} of them slowed down, {fail} fail");
}

#[test]
fn no_row_runs_through_a_state_that_is_shut() {
    let job = job(["0.02", "0.3", "0.03", "0.5"]);
    let rig = Rig::new(&job, job.machine.collet("A"));
    let (segments, tasks) = (rig.segments().expect("they can be turned"), rig.tasks());
    let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
    let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
    let mut grid = Grid::new(&rig, &segments, &moments, &Lessons::default());
    let noses = noses(&rig, &grid, &lands(&rig));
    let all = Unguided::new(&ground, &grid, noses.clone(), Weights::default());
    let mut pairs = (0..=noses.len()).flat_map(|g| (3..=grid.last()).map(move |j| (g, j)));
    let (grip, j) =
        pairs.find(|(g, j)| all.row(*g, *j, 0, Knows::Margins).len() >= 3).expect("a piece over three stations");
    let shut = state(&ground, &grid, noses.get(grip).copied(), j - 2, j);
    grid.shut.push(shut);
    // From the end to the station behind the shut one.
    assert_eq!(Unguided::new(&ground, &grid, noses, Weights::default()).row(grip, j, 0, Knows::Margins).len(), 1);
}

/// A longer part, for which the counter-spindle takes hold several times.
const LONG: &str = "shaft:
  material: 16MnCr5
  sections:
    - {length: 70, diameter: 30, tolerance: h9, interrupt: free}
    - {length: 2, diameter: 28.5, kind: groove}
    - {length: BODY, diameter: 36, tolerance: h9, interrupt: free}
    - {length: 12, diameter: 40}
    - {length: 25, diameter: 34}
  features:
    - {cross_hole: 6, at: 90}
stock: {diameter: 42, bar_length: 3000}
holding: no_bush
machine:
  no_bush: {max_bar: 42, collet_gap: 10}
  bush: {max_bar: 38, land: 40, gap: 2, stiffness: 180}
  headstock: {nearest: 70, stroke: 200, hold: 45, stiffness: 200, max_rpm: 6000, regrip_s: 6}
  counter_spindle:
    nearest: 30
    farthest: 1400
    bore: 40
    bore_depth: 1000
    stiffness: 140
    max_rpm: 6000
    hand_over_s: 7
    collets: [{name: A, range: [29.6, 30.1], hold: 20, passes: 30.5, clamp_force: 22000}]
  cross_tool_reach: 12
  part_off: {width: 4, time_s: 10}
cutting: {tools: single, vc: 160, feed: 0.15, ap_max: 3, ap_finish: 0.2, speed_floor: 0.5}
limits: {whip: WHIP, damping_ratio: DAMPING}
planning: {station_pitch: 7}
";

/// Where the bar comes is found without the network; here it is held against all that the network has.
#[test]
fn the_bar_comes_as_far_as_the_network_leads() {
    let (mut whole, mut ended, mut far_and_gripped) = (0, 0, 0);
    for (body, whip, damping) in [
        ("60", "0.1", "0.03"),
        ("250", "0.1", "0.03"),
        ("250", "0.02", "0.03"),
        ("420", "0.1", "0.03"),
        ("420", "0.1", "0.01"),
        ("420", "0.02", "0.03"),
        ("830", "0.1", "0.03"),
        ("830", "0.2", "0.02"),
    ] {
        let text = LONG.replace("BODY", body).replace("WHIP", whip).replace("DAMPING", damping);
        for wishes in [
            "",
            "wishes: {at_most_hand_overs: 0}",
            "wishes: {at_most_hand_overs: 1}",
            "wishes: {at_most_hand_overs: 2}",
            "wishes: {hand_over_at: [49]}",
        ] {
            let job = read_job_text("job.yaml", &format!("{text}{wishes}"), ".".as_ref()).expect("a job");
            let rig = Rig::new(&job, job.machine.collet("A"));
            let (segments, tasks) = (rig.segments().expect("they can be turned"), rig.tasks());
            let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
            let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
            let grid = Grid::new(&rig, &segments, &moments, &Lessons::default());
            let noses = noses(&rig, &grid, &lands(&rig));
            let all = Unguided::new(&ground, &grid, noses.clone(), Weights::default());
            let net = all.network(Knows::WhatHolds);
            let told = format!("{body} {whip} {damping} {wishes}");
            let Some(came) = Came::of(&all, Knows::WhatHolds) else {
                assert!(net.goal.is_some(), "{told}");
                whole += 1;
                continue;
            };
            assert!(net.goal.is_none(), "{told}");
            let far = net.nodes.iter().map(|n| n.0).max().expect("a start");
            let sorted = |list: &mut dyn Iterator<Item = (usize, usize)>| {
                let mut list: Vec<(usize, usize)> = list.collect();
                list.sort_unstable();
                list.dedup();
                list
            };
            let held = sorted(&mut net.nodes.iter().filter(|n| n.0 == far).copied());
            assert_eq!(sorted(&mut came.held.iter().map(|h| (came.far, *h))), held, "{told}");
            let ends = net.edges.iter().filter(|a| net.nodes[a.to].0 == far && a.grip <= noses.len());
            let ends = sorted(&mut ends.map(|a| (net.nodes[a.from].0, a.grip)));
            assert_eq!(sorted(&mut came.by.iter().copied()), ends, "{told}");
            let gripped = net.edges.iter().any(|a| a.grip < noses.len());
            assert_eq!(came.gripped, gripped, "{told}");
            ended += 1;
            far_and_gripped += usize::from(gripped);
        }
    }
    let counts = format!("{whole} come to the part-off, {ended} do not, {far_and_gripped} of them after a grip");
    assert!(whole >= 8 && ended >= 8 && far_and_gripped >= 4, "{counts}");
}
