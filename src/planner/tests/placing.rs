//! The placing program against a search over a fine grid of places.
//!
//! The search moves the same places (hand-overs inside a surface, noses inside their lands, re-grips inside a stage) and
//! judges each draft by the same settling of speeds and checks: what is compared is how well the program places, not
//! what a check says. It goes over a coarse grid first and then closer and closer around the best places found.

use super::row::{Agreement, Standing, Table};
use super::{jobs, read};
use crate::planner::places::grips;
use crate::planner::places::ground::Ground;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::plan::draft::Draft;
use crate::planner::plan::placing::place;
use crate::planner::sequence::network::{Builder, Weights};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Runs;
use crate::planner::sequence::way::{EQUALLY_FAST, best_way};
use crate::planner::states::outlook::Looker;
use crate::process::Rig;
use crate::process::stops::Stop;

/// Placing must come this close to the best margin the search finds.
const WITHIN: f64 = 0.005;
/// States of a draft that is judged are no further apart than this, mm: coarse, so that the search may try many.
const STEP_MM: f64 = 6.0;
/// A stop keeps this distance from a shoulder it does not stand at, as the placing program does, mm.
const OFF_SHOULDER_MM: f64 = 0.5;
/// Grid points over each place in each round, by the number of places; rounds, each about half a grid step around the
/// best.
const POINTS: [usize; 3] = [33, 17, 9];
const ROUNDS: usize = 5;

/// One thing that moves: writes its value into a draft.
type Mover = (Box<dyn Fn(&mut Draft, f64)>, f64, f64);

fn movers(ground: &Ground<'_>, draft: &Draft) -> Vec<Mover> {
    let (rig, shaft) = (ground.rig, &ground.rig.job.shaft);
    let within = |t: f64| {
        let section = &shaft.sections[shaft.section_at(t)];
        let (mut low, mut high) = (section.from_mm + OFF_SHOULDER_MM, section.to_mm - OFF_SHOULDER_MM);
        for (_, moment) in ground.moments {
            if *moment < t {
                low = low.max(moment + 1e-5);
            } else {
                high = high.min(moment - 1e-5);
            }
        }
        (low.min(t), high.max(t))
    };
    let loose = |t: f64| matches!(rig.stop_at(ground.segments, t), Stop::Free | Stop::Avoid);
    let mut all: Vec<Mover> = Vec::new();
    for (k, stage) in draft.stages.iter().enumerate() {
        let to = stage.to_mm;
        if k + 1 < draft.stages.len() && loose(to) {
            let (low, high) = within(to);
            let put = move |d: &mut Draft, t: f64| {
                let shared = d.stages[k + 1].regrips_mm.first() == Some(&d.stages[k + 1].from_mm);
                d.stages[k].to_mm = t;
                d.stages[k + 1].from_mm = t;
                if shared {
                    d.stages[k + 1].regrips_mm[0] = t;
                }
            };
            all.push((Box::new(put), low, high));
        }
        if let Some(nose) = stage.nose_mm {
            let lands = grips::lands(rig);
            let land = lands.iter().find(|l| nose > l.nose_from_mm - 1e-6 && nose < l.nose_to_mm + 1e-6);
            let land = land.expect("a grip on a land");
            let put = move |d: &mut Draft, g: f64| d.stages[k].nose_mm = Some(g);
            all.push((Box::new(put), land.nose_from_mm, land.nose_to_mm));
        }
        for (i, m) in stage.regrips_mm.iter().enumerate() {
            if *m > stage.from_mm + 1e-6 && loose(*m) {
                let (low, high) = within(*m);
                all.push((Box::new(move |d: &mut Draft, t: f64| d.stages[k].regrips_mm[i] = t), low, high));
            }
        }
    }
    all
}

/// Travel of counter-spindle and headstock, and the order of the stops.
fn reaches(rig: &Rig<'_>, draft: &Draft) -> bool {
    let stroke = rig.job.machine.headstock.stroke_mm + 1e-6;
    let mut last = 0.0;
    draft.stages.iter().all(|stage| {
        let held = match (stage.nose_mm, &rig.job.machine.counter_spindle) {
            (Some(g), Some(counter)) => {
                let x = |t: f64| t + rig.gap_mm() - g;
                let in_travel = |t: f64| x(t) > counter.nearest_mm - 1e-6 && x(t) < counter.farthest_mm + 1e-6;
                g < stage.from_mm + 1e-6 && in_travel(stage.from_mm) && in_travel(stage.to_mm)
            }
            _ => true,
        };
        let mut fed = true;
        for m in &stage.regrips_mm {
            fed &= *m >= last - 1e-6 && *m - last <= stroke && *m >= stage.from_mm - 1e-6 && *m <= stage.to_mm + 1e-6;
            last = *m;
        }
        fed &= stage.to_mm - last <= stroke && stage.to_mm > stage.from_mm;
        if stage.regrip_at_end {
            last = stage.to_mm;
        }
        held && fed
    })
}

/// The largest smallest margin over the grids.
fn searched(ground: &Ground<'_>, start: &Draft, movers: &[Mover], most_s: f64) -> f64 {
    let points = POINTS[movers.len() - 1];
    let mut windows: Vec<(f64, f64)> = movers.iter().map(|m| (m.1, m.2)).collect();
    let mut best = (ground.settle(start, STEP_MM).margin(), None);
    for _ in 0..ROUNDS {
        for n in 0..points.pow(movers.len() as u32) {
            let (mut draft, mut rest, mut at) = (start.clone(), n, Vec::new());
            for ((put, ..), (low, high)) in movers.iter().zip(&windows) {
                at.push(low + (high - low) * (rest % points) as f64 / (points - 1) as f64);
                put(&mut draft, at[at.len() - 1]);
                rest /= points;
            }
            if !reaches(ground.rig, &draft) {
                continue;
            }
            let settled = ground.settle(&draft, STEP_MM);
            if settled.run_s <= most_s && settled.margin() > best.0 {
                best = (settled.margin(), Some(at));
            }
        }
        let Some(at) = &best.1 else { break };
        for (((_, low, high), window), at) in movers.iter().zip(&mut windows).zip(at) {
            let half = 0.3 * (window.1 - window.0);
            *window = ((at - half).max(*low), (at + half).min(*high));
        }
    }
    best.0
}

#[test]
fn placing_comes_close_to_the_best_places() {
    let mut by_places = [0; 3];
    let (mut moved, mut short, mut entries) = (0, Vec::new(), Vec::new());
    for seed in 0..400 {
        let text = jobs::small_job(seed);
        let Some(job) = read(&text) else { continue };
        let rig = Rig::new(&job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
        let (Ok(segments), tasks) = (rig.segments(), rig.tasks()) else { continue };
        let at = moments(&rig, job.machine.cross_tool_reach_mm[0]);
        let grid = Grid::new(&rig, &segments, &at, &Lessons::default());
        let looker = Looker::new(&rig, &segments, &grid, &tasks);
        let runs = Runs::new(&looker);
        let builder = Builder::new(&runs, Weights::default());
        let least = builder.within(Price::NO_WAY);
        let Some(goal) = least.goal else { continue };
        let allowance = EQUALLY_FAST * least.reached[goal].s;
        let way = best_way(&least, allowance).unwrap_or_else(|d| panic!("{d}\n{text}")).expect("a goal is reached");
        let draft = Draft::of(&way, &looker);
        let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &at, look_at_mm: &[] };
        let movers = movers(&ground, &draft);
        if movers.is_empty() || movers.len() > 3 || by_places[movers.len() - 1] >= [12, 12, 4][movers.len() - 1] {
            continue;
        }
        by_places[movers.len() - 1] += 1;
        let before = ground.settle(&draft, STEP_MM);
        let most_s = before.run_s + allowance;
        let placed = place(&ground, &grips::lands(&rig), draft.clone(), STEP_MM, most_s);
        let placed = placed.unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
        assert!(reaches(&rig, &placed), "seed {seed}: {placed:?}\n{text}");
        let after = ground.settle(&placed, STEP_MM);
        assert!(after.margin() >= before.margin(), "seed {seed}: worse than the start\n{text}");
        assert!(after.run_s <= most_s * (1.0 + 1e-9), "seed {seed}: slower than allowed\n{text}");
        moved += usize::from(after.margin() > before.margin() + 1e-3);
        let best = searched(&ground, &draft, &movers, most_s);
        entries.push((format!("job {seed}, {} places", movers.len()), format!("{best:.4}"), after.margin()));
        if after.margin() < best - WITHIN {
            short.push((seed, movers.len(), before.margin(), after.margin(), best));
        }
    }
    println!("{by_places:?}, {moved} moved, {short:?}");
    assert!(by_places.iter().zip([8, 8, 3]).all(|(n, least)| *n >= least), "{by_places:?}");
    assert!(moved >= 5, "{moved}");
    assert!(short.is_empty(), "seed, places, margins before, after and best: {short:?}");
    // A margin above the best of the search is as good, so a table counts it as equal.
    let best = |printed: &str| printed.parse::<f64>().unwrap_or(f64::NAN);
    let entries = entries.into_iter().map(|(name, printed, ours): (String, String, f64)| {
        let ours = ours.min(best(&printed));
        (name, printed, ours)
    });
    let standing = Standing::Computed("that search");
    let source = "fine grid search over the same places, closing in five times";
    let mut t = Table::new(source, standing, Agreement::Within(WITHIN));
    t.worst_of_at_least(19, "placing: smallest margin", entries.collect());
    super::row::keep("placing", &[("planner", t.done())]);
}
