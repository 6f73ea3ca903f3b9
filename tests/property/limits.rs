//! What a sheet allows is proven, and told in the order that is proven.

use crate::jobs;
use crate::plans::answer;
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::process::checks::chatter;
use spanhold::process::{Counter, Rig, State};
use spanhold::proof;
use spanhold::report::content::{Block, blocks};

/// How far under its worst `chatter` of a stage is told, as a share of its limit. All stages but one are within half of it.
const CHATTER_NEAR: f64 = 0.1;

fn plans(seeds: std::ops::Range<u64>) -> impl Iterator<Item = (u64, Job, Plan)> {
    let text = |seed: u64| if seed.is_multiple_of(2) { jobs::rich_job(seed) } else { jobs::small_job(seed) };
    let found = seeds.filter_map(move |seed| answer(&text(seed)).map(|(job, plan)| (seed, job, plan)));
    found.filter(|(_, _, plan)| plan.verdict == Verdict::Feasible)
}

fn limits(plan: &Plan) -> Vec<String> {
    let boxed = blocks(plan).into_iter().find_map(|b| match b {
        Block::List { boxed: true, items, .. } => Some(items),
        _ => None,
    });
    boxed.expect("limits")
}

/// The number between two words.
fn between(text: &str, before: &str, after: &str) -> Option<f64> {
    let rest = &text[text.find(before)? + before.len()..];
    rest[..rest.find(after)?].parse().ok()
}

/// The speed that the limits of a stage allow at a turned length.
fn allowed_rpm(items: &[String], stage: usize, turned_mm: f64) -> f64 {
    let of_stage = |item: &&String| {
        item.starts_with(&format!("Stage {stage}:")) || item.starts_with(&format!("Stage {stage}, turned length "))
    };
    let here = |item: &&String| {
        let stretch = between(item, ", turned length ", " to ").zip(between(item, " to ", " mm: never"));
        stretch.is_none_or(|(from, to)| turned_mm > from - 0.01 && turned_mm < to + 0.01)
    };
    let speeds = items.iter().filter(of_stage).filter(here).filter_map(|i| between(i, "never above ", " rev/min"));
    speeds.fold(0.0, f64::max)
}

#[test]
fn every_speed_that_the_limits_allow_is_proven_where_they_allow_it() {
    let (mut plans_seen, mut changing) = (0, 0);
    for (seed, job, plan) in plans(21_000..21_160) {
        plans_seen += 1;
        let items = limits(&plan);
        changing += usize::from(items.iter().any(|i| i.contains("mm: never above")));
        let mut allowed = plan.clone();
        for piece in &mut allowed.segments {
            let rpm = allowed_rpm(&items, piece.stage, 0.5 * (piece.from_mm + piece.to_mm));
            assert!(rpm > 0.0 && rpm <= piece.rpm * (1.0 + 1e-8), "seed {seed}: {rpm} {} {items:?}", piece.rpm);
            piece.rpm = rpm;
        }
        let last = plan.stages.last().expect("stages");
        allowed.part_off_rpm = Some(allowed_rpm(&items, last.number, 0.5 * (plan.length_mm + last.to_mm)));
        let broken: Vec<_> =
            proof::prove(&allowed, &job).breaches.into_iter().filter(|b| b.utilisation.is_some()).collect();
        assert!(broken.is_empty(), "seed {seed}: {broken:?} {items:?}");
    }
    assert!(plans_seen >= 40 && changing >= 10, "{plans_seen} {changing}");
}

#[test]
fn a_timeline_in_another_order_than_the_proven_one_is_refused() {
    let mut refused = 0;
    for (seed, job, mut plan) in plans(21_000..21_100) {
        let operations = &mut plan.cycle.as_mut().expect("timeline").operations;
        let feature = operations.iter().position(|o| o.work == "feature");
        let stop = operations.iter().position(|o| o.work == "hand_over" || o.work == "regrip");
        let (Some(a), Some(b)) = (feature, stop) else { continue };
        let (from_s, to_s) = (operations[a].from_s, operations[a].to_s);
        (operations[a].from_s, operations[a].to_s) = (operations[b].from_s, operations[b].to_s);
        (operations[b].from_s, operations[b].to_s) = (from_s, to_s);
        let verified = proof::prove(&plan, &job);
        assert!(verified.breaches.iter().any(|b| b.rule == "order"), "seed {seed}: {verified:?}");
        refused += 1;
    }
    assert!(refused >= 5, "{refused}");
}

#[test]
fn a_broken_rule_does_not_hide_a_broken_check_and_a_safer_plan_is_proven() {
    let (mut margins, mut both) = (0, 0);
    for (seed, job, plan) in plans(21_000..21_060) {
        let verified = proof::prove(&plan, &job);
        let told = |margin: f64| {
            let mut plan = plan.clone();
            plan.margin = Some(margin);
            plan.margin_at.as_mut().expect("told").utilisation = 1.0 - margin;
            proof::described(&plan, &job, &verified).iter().filter(|b| b.rule == "margin").count()
        };
        let proven = 1.0 - verified.utilisation;
        assert_eq!((told(proven - 0.05), told(proven + 0.05)), (0, 1), "seed {seed}");
        margins += 1;

        let mut worse = plan.clone();
        worse.segments.iter_mut().for_each(|s| s.rpm *= 50.0);
        let Some(grip) = worse.stages.iter_mut().find_map(|s| s.grip.as_mut()) else { continue };
        grip.diameter_mm += 1.0;
        let breaches = proof::prove(&worse, &job).breaches;
        assert!(breaches.iter().any(|b| b.rule == "grip"), "seed {seed}: {breaches:?}");
        assert!(breaches.iter().any(|b| b.utilisation.is_some()), "seed {seed}: {breaches:?}");
        both += 1;
    }
    assert!(margins >= 10 && both >= 5, "{margins} {both}");
}

/// The plan's `chatter` of a stage comes from some of its moments. Here its modes are worked out at every millimetre.
#[test]
fn chatter_told_of_a_stage_is_near_its_worst() {
    let mut shares = Vec::new();
    for (seed, job, plan) in plans(21_000..21_080) {
        let rig = Rig::new(&job, plan.collet.as_deref().and_then(|name| job.machine.collet(name)));
        let segments = rig.segments().expect("a plan has been made");
        for stage in &plan.stages {
            let Some(told) = stage.checks.iter().find(|c| c.check == "chatter") else { continue };
            let mut worst = 0.0f64;
            for piece in plan.segments.iter().filter(|p| p.stage == stage.number) {
                let segment =
                    segments.iter().find(|s| s.from_mm < piece.to_mm - 1e-6 && s.to_mm > piece.from_mm + 1e-6);
                let regrips = plan.headstock_regrips_mm.iter().filter(|t| **t < piece.from_mm + 1e-6);
                let last_mm = regrips.fold(0.0, |a, t| t.max(a));
                let steps = (piece.to_mm - piece.from_mm).ceil() as usize;
                for t in (0..=steps).map(|i| piece.from_mm + (piece.to_mm - piece.from_mm) * i as f64 / steps as f64) {
                    let counter = Counter::of(stage.grip.as_ref().map(|g| g.nose_mm));
                    let state = State { turned_mm: t, counter, guide: rig.guide(t, last_mm, t) };
                    let found = chatter::exact_above(&rig, &state, segment.expect("its segment"), worst);
                    worst = found.map_or(worst, |f| f.utilisation);
                }
            }
            shares.push((worst - told.utilisation, worst, seed, stage.number));
        }
    }
    shares.sort_by(|a, b| b.0.total_cmp(&a.0));
    println!("{} stages, the farthest: {:?}", shares.len(), &shares[..5]);
    assert!(shares.len() >= 40 && shares[0].0 <= CHATTER_NEAR, "{:?}", shares[0]);
}
