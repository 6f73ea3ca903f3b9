//! The placing program. The sequence is fixed; hand-overs, grips and re-grips move within their bounds so that the
//! smallest margin becomes as large as possible.
//!
//! The utilisations are linearised at the current places, and a linear program moves all places at once within a trust
//! region (successive linear programming, Griffith & Stewart 1961). The region shrinks where the linear model promised
//! a margin that the states do not have. The work ends when no place moves by more than 0.1 mm. The time may not grow
//! by more than the allowance of the sequence program.

use crate::defect::Defect;
use crate::planner::places::grips::Land;
use crate::planner::places::ground::Ground;
use crate::planner::plan::draft::Draft;
use crate::process::State;
use crate::process::checks::{self, Event, View};
use crate::process::segments::segment_at;
use crate::process::stops::{SAME_MM, Stop};
use crate::spread::spread;
use good_lp::{Expression, ProblemVariables, Solution, SolverModel, microlp, variable};

/// The work ends when all moves are below this, mm.
const SETTLED_MM: f64 = 0.1;
/// First size of the trust region, mm.
const FIRST_REACH_MM: f64 = 20.0;
/// Step of the difference quotients, mm.
const STEP_MM: f64 = 0.05;
/// Number of evenly spaced states of a stage that are linearised.
const STATES: usize = 9;
/// Largest number of rounds.
const ROUNDS: usize = 30;
/// A margin must grow by at least this for a move to be kept.
const BETTER: f64 = 1e-6;
/// Least distance of two stops, mm; closer together they would be one stop.
const APART_MM: f64 = 0.5;
/// Least distance of a movable stop from a shoulder, mm; a closer stop would be at the shoulder.
const OFF_SHOULDER_MM: f64 = 0.5;

/// A number of the draft that may move.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Place {
    /// The hand-over at the end of stage `.0`.
    HandOver(usize),
    /// The nose of stage `.0`.
    Nose(usize),
    /// Re-grip `.1` inside stage `.0`.
    Regrip(usize, usize),
}

fn read(draft: &Draft, place: Place) -> f64 {
    match place {
        Place::HandOver(k) => draft.stages[k].to_mm,
        Place::Nose(k) => draft.stages[k].nose_mm.unwrap_or(0.0),
        Place::Regrip(k, i) => draft.stages[k].regrips_mm[i],
    }
}

fn write(draft: &mut Draft, place: Place, value: f64) {
    match place {
        Place::HandOver(k) => {
            draft.stages[k].to_mm = value;
            let next = &mut draft.stages[k + 1];
            // A re-grip that shares the stop moves with it.
            if next.regrips_mm.first().is_some_and(|m| (m - next.from_mm).abs() < SAME_MM) {
                next.regrips_mm[0] = value;
            }
            next.from_mm = value;
        }
        Place::Nose(k) => draft.stages[k].nose_mm = Some(value),
        Place::Regrip(k, i) => draft.stages[k].regrips_mm[i] = value,
    }
}

/// A linear rule on the moves of the places: `Σ factor · move <= bound`.
struct Rule {
    terms: Vec<(usize, f64)>,
    bound: f64,
}

/// Moves the places of a draft. `settle_mm` is the largest distance of the states that decide whether a move is better,
/// and `most_s` the longest time that the runs may take.
///
/// # Errors
/// [`Defect`] where the solver fails. A program without a solution is no defect.
pub fn place(ground: &Ground<'_>, lands: &[Land], draft: Draft, settle_mm: f64, most_s: f64) -> Result<Draft, Defect> {
    let places = movable(ground, &draft, lands);
    if places.is_empty() {
        return Ok(draft);
    }
    let names: Vec<Place> = places.iter().map(|p| p.0).collect();
    let mut best = draft;
    let judged = ground.judge(&best, settle_mm);
    let (mut margin, mut tightest) = (judged.margin(), judged.tightest());
    let mut reach = FIRST_REACH_MM;
    let mut linear = None;
    for _ in 0..ROUNDS {
        let shares = linear.get_or_insert_with(|| linearised(ground, &best, &places));
        let Some(moved) = step(ground, &best, &places, shares, reach)? else { break };
        let farthest = names.iter().map(|p| (read(&moved, *p) - read(&best, *p)).abs()).fold(0.0, f64::max);
        if farthest < SETTLED_MM {
            break;
        }
        match ground.safer(&moved, settle_mm, margin + BETTER, tightest).filter(|s| s.run_s <= most_s) {
            Some(settled) => {
                (margin, tightest) = (settled.margin(), settled.tightest());
                (best, linear) = (moved, None);
            }
            None => reach = 0.4 * farthest.min(reach),
        }
    }
    Ok(best)
}

/// The places that may move, each with its lower and upper bound.
fn movable(ground: &Ground<'_>, draft: &Draft, lands: &[Land]) -> Vec<(Place, f64, f64)> {
    let mut places = Vec::new();
    let wishes = &ground.rig.job.wishes;
    let shaft = &ground.rig.job.shaft;
    let stretch = |t: f64| {
        let section = &shaft.sections[shaft.section_at(t)];
        let (mut low, mut high) = (section.from_mm + OFF_SHOULDER_MM, section.to_mm - OFF_SHOULDER_MM);
        // A task stays in the stage in which it is done.
        for (_, moment) in ground.moments {
            if *moment <= t - SAME_MM {
                low = low.max(moment + SAME_MM);
            } else {
                high = high.min(moment - 2.0 * SAME_MM);
            }
        }
        (low.min(t), high.max(t))
    };
    let loose = |t: f64| matches!(ground.rig.stop_at(ground.segments, t), Stop::Free | Stop::Avoid);
    for (k, stage) in draft.stages.iter().enumerate() {
        if k + 1 < draft.stages.len() && loose(stage.to_mm) && wishes.hand_over_at(stage.to_mm).is_none() {
            let (low, high) = stretch(stage.to_mm);
            places.push((Place::HandOver(k), low, high));
        }
        if let Some(nose) = stage.nose_mm {
            let land = lands.iter().find(|l| nose >= l.nose_from_mm - SAME_MM && nose <= l.nose_to_mm + SAME_MM);
            let fixed = wishes.hand_over_at(stage.from_mm).is_some_and(|w| w.nose_mm.is_some());
            if let Some(land) = land.filter(|_| !fixed) {
                places.push((Place::Nose(k), land.nose_from_mm, land.nose_to_mm));
            }
        }
        for (i, m) in stage.regrips_mm.iter().enumerate() {
            if (m - stage.from_mm).abs() > SAME_MM && loose(*m) {
                let (low, high) = stretch(*m);
                places.push((Place::Regrip(k, i), low, high));
            }
        }
    }
    places
}

/// One linear program. None: it has no solution.
fn step(
    ground: &Ground<'_>,
    draft: &Draft,
    places: &[(Place, f64, f64)],
    linear: &[Linear],
    reach: f64,
) -> Result<Option<Draft>, Defect> {
    let mut problem = ProblemVariables::new();
    let moves: Vec<_> = places
        .iter()
        .map(|(place, low, high)| {
            let at = read(draft, *place);
            problem.add(variable().min((low - at).clamp(-reach, 0.0)).max((high - at).clamp(0.0, reach)))
        })
        .collect();
    let margin = problem.add(variable().max(1.0));
    let mut model = problem.maximise(margin).using(microlp);
    for (shares, slopes) in linear {
        for (i, share) in shares.iter().enumerate() {
            let grown: Expression = slopes.iter().map(|(v, s)| s[i] * moves[*v]).sum();
            model = model.with((grown + *share + margin).leq(1.0));
        }
    }
    for rule in rules(ground, draft, places) {
        let sum: Expression = rule.terms.iter().map(|(v, f)| *f * moves[*v]).sum();
        model = model.with(sum.leq(rule.bound));
    }
    let solution = match model.solve() {
        Ok(s) => s,
        Err(good_lp::ResolutionError::Infeasible) => return Ok(None),
        Err(e) => return Err(Defect(format!("the placing program failed: {e}"))),
    };
    let mut moved = draft.clone();
    for ((place, low, high), v) in places.iter().zip(&moves) {
        let at = read(draft, *place);
        write(&mut moved, *place, (at + solution.value(*v)).clamp(low.min(at), high.max(at)));
    }
    Ok(Some(moved))
}

/// Utilisation of every check at some states of a stage, and its slopes over the places that can change the stage.
type Linear = (Vec<f64>, Vec<(usize, Vec<f64>)>);

fn linearised(ground: &Ground<'_>, draft: &Draft, places: &[(Place, f64, f64)]) -> Vec<Linear> {
    // Every stage unchanged, and with each place that can change it moved by a small step.
    let mut drafts: Vec<(usize, Option<(usize, f64)>)> = Vec::new();
    for k in 0..draft.stages.len() {
        drafts.push((k, None));
        for (v, (place, low, high)) in places.iter().enumerate() {
            let at = read(draft, *place);
            let step = if at + STEP_MM <= *high { STEP_MM } else { -STEP_MM };
            if at + step >= *low && matters(*place, k) {
                drafts.push((k, Some((v, step))));
            }
        }
    }
    let shares = spread(&drafts, |(k, moved), _| match moved {
        None => stage_shares(ground, draft, *k),
        Some((v, step)) => {
            let (place, mut near) = (places[*v].0, draft.clone());
            write(&mut near, place, read(draft, place) + step);
            stage_shares(ground, &near, *k)
        }
    });
    let mut all: Vec<Linear> = Vec::new();
    for ((_, moved), there) in drafts.into_iter().zip(shares) {
        match (moved, all.last_mut()) {
            (Some((v, step)), Some((here, slopes))) if there.len() == here.len() => {
                slopes.push((v, there.iter().zip(&*here).map(|(b, a)| (b - a) / step).collect()));
            }
            (Some(_), _) => {}
            (None, _) => all.push((there, Vec::new())),
        }
    }
    all
}

/// Whether a place can change the states of a stage: a place of the stage, the hand-over at its start, and hand-overs
/// and re-grips before it.
fn matters(place: Place, stage: usize) -> bool {
    match place {
        Place::HandOver(k) => k <= stage,
        Place::Nose(k) => k == stage,
        Place::Regrip(k, _) => k <= stage,
    }
}

fn stage_shares(ground: &Ground<'_>, draft: &Draft, index: usize) -> Vec<f64> {
    let (rig, stage) = (ground.rig, &draft.stages[index]);
    let state = |t: f64, last: f64| State {
        turned_mm: t,
        counter: rig.counter(stage.nose_mm, t),
        guide: rig.guide(t, last, draft.piece_end(index, t)),
    };
    let mut shares = Vec::new();
    for i in 0..STATES {
        crate::spread::checkpoint();
        let t = stage.from_mm + (stage.to_mm - stage.from_mm) * i as f64 / (STATES - 1) as f64;
        let s = state(t, draft.last_regrip_at(index, t));
        // The first state of a stage uses the segment behind it.
        let at = if i == 0 { t + 10.0 * SAME_MM } else { t };
        let segment = &ground.segments[segment_at(ground.segments, at)];
        let Ok(answers) = rig.answers(&s) else { return Vec::new() };
        let wanted = rig.segment_rpm(segment, stage.nose_mm.is_some());
        let rpm = wanted.min(rig.allowed_rpm(&s, &answers).rpm.max(rig.job.cutting.speed_floor * wanted));
        let view = View { rig, state: &s, answers: &answers, segment, rpm };
        let found: Vec<_> = checks::all(&view).collect();
        for check in &checks::CHECKS {
            shares.push(found.iter().find(|f| f.check == check.name).map_or(0.0, |f| f.utilisation));
        }
    }
    if index + 1 < draft.stages.len() {
        let last = if stage.regrip_at_end { stage.to_mm } else { draft.last_regrip_at(index, stage.to_mm) };
        for found in checks::at_event(rig, &state(stage.to_mm, last), Event::LetsGo) {
            shares.push(found.map_or(checks::MOST_SHARE, |f| f.utilisation));
        }
    }
    shares
}

/// The travel of counter-spindle and headstock, as rules on the moves.
fn rules(ground: &Ground<'_>, draft: &Draft, places: &[(Place, f64, f64)]) -> Vec<Rule> {
    let mut rules = Vec::new();
    let find = |p: Place| places.iter().position(|(q, ..)| *q == p);
    // Adds the rule `Σ factor · (current value + move) <= bound`; a part without a place does not move.
    let mut add = |parts: &[(f64, f64, Option<usize>)], bound: f64| {
        let now: f64 = parts.iter().map(|(f, v, _)| f * v).sum();
        let terms = parts.iter().filter_map(|(f, _, p)| p.map(|p| (p, *f))).collect();
        // Never negative: a place that is exactly at its bound must not make the program infeasible by rounding.
        rules.push(Rule { terms, bound: (bound - now).max(0.0) });
    };
    let rig = ground.rig;
    // A moved stop must not come nearer to the end of the stroke than the run-out of a tandem needs.
    let lag = ground.segments.iter().filter_map(|s| s.lag_mm).fold(0.0, f64::max);
    let (gap, stroke) = (rig.gap_mm(), rig.job.machine.headstock.stroke_mm - lag);
    let start = |k: usize| (draft.stages[k].from_mm, if k > 0 { find(Place::HandOver(k - 1)) } else { None });
    let end = |k: usize| (draft.stages[k].to_mm, find(Place::HandOver(k)));
    // How far bar is fed on behind the part-off for the tasks there.
    let fed_on = draft.fed_to_mm - rig.job.parted_at_mm();
    let mut last = (0.0, None);
    for (k, stage) in draft.stages.iter().enumerate() {
        if let (Some(nose), Some(counter)) = (stage.nose_mm, &rig.job.machine.counter_spindle) {
            let grip = find(Place::Nose(k));
            let ((a, pa), (b, pb)) = (start(k), end(k));
            add(&[(1.0, nose, grip), (-1.0, a, pa)], (gap - counter.nearest_mm).min(0.0));
            let on = if k + 1 == draft.stages.len() { fed_on } else { 0.0 };
            add(&[(1.0, b, pb), (-1.0, nose, grip)], counter.farthest_mm - lag - gap - on);
        }
        for (i, m) in stage.regrips_mm.iter().enumerate() {
            let shared = (m - stage.from_mm).abs() < SAME_MM;
            let place = if shared { start(k).1 } else { find(Place::Regrip(k, i)) };
            if !shared {
                // A re-grip inside a stage stays inside it.
                let ((a, pa), (b, pb)) = (start(k), end(k));
                add(&[(1.0, a, pa), (-1.0, *m, place)], -APART_MM);
                add(&[(1.0, *m, place), (-1.0, b, pb)], -APART_MM);
            }
            add(&[(1.0, *m, place), (-1.0, last.0, last.1)], stroke);
            add(&[(1.0, last.0, last.1), (-1.0, *m, place)], 0.0);
            last = (*m, place);
        }
        let (b, pb) = end(k);
        let on = if k + 1 == draft.stages.len() { fed_on } else { 0.0 };
        add(&[(1.0, b, pb), (-1.0, last.0, last.1)], stroke - on);
        add(&[(-1.0, b, pb), (1.0, stage.from_mm, start(k).1)], -APART_MM);
        if stage.regrip_at_end {
            last = (b, pb);
        }
    }
    rules
}
