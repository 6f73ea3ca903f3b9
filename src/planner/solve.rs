//! From a job to a settled draft: for every collet the sequence program, then the placing program for the best.

use super::assemble;
use super::draft::Draft;
use super::frontier::{self, Blocked};
use super::grips::{self, lands};
use super::network::{Builder, FirstStage, Network, Weights};
use super::outlook::Looker;
use super::placing;
use super::runs::Runs;
use super::sequence::{AGREE_S, Defect, EQUALLY_FAST, Way, best_way};
use super::settle::{Ground, Settled};
use super::stations::{Grid, moments};
use super::unguided::Unguided;
use super::wishes;
use crate::job::plan::{Optimality, Plan};
use crate::job::{Collet, FeatureKind, Holding, Job, Objective, SectionKind};
use crate::process::Rig;
use crate::process::features::Task;
use crate::process::segments::{DEFAULT_FEED_MM, Segment};

/// States that decide whether a draft holds are no further apart than this, mm.
const SETTLE_STEP_MM: f64 = 1.0;
/// States of the placing program's moves, mm.
const PLACE_STEP_MM: f64 = 4.0;
/// Rounds of adding a state that broke between stations.
const REPAIRS: usize = 8;
/// Weight of a hand-over in seconds where their number comes first: more than any plan takes.
const FIRST_OF_ALL_S: f64 = 1e6;

/// How much is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effort {
    /// The best plan, placed for the largest margin.
    Best,
    /// Whether there is one, and its time.
    Feasible,
    /// Where it ends when there is none.
    Explain,
}

/// A found plan, or what stands in the way.
#[derive(Debug, Clone)]
pub enum Answer {
    /// A plan, not yet proven.
    Found(Box<Plan>),
    /// None.
    Blocked(Blocked),
}

/// A way with one collet.
struct Candidate<'a> {
    collet: Option<&'a Collet>,
    draft: Draft,
    cost: f64,
    margin: f64,
    least_s: f64,
    allowance_s: f64,
    optimality: Optimality,
    moments: Vec<(usize, f64)>,
    settled: Settled,
}

/// Finds the best plan of a job; `look_at_mm` are turned lengths to look at besides the stations.
///
/// - **Errors**: [`Defect`] when a program fails: never the user's fault.
pub fn solve(job: &Job, effort: Effort, look_at_mm: &[f64]) -> Result<Answer, Defect> {
    if let Some(blocked) = frontier::bar_does_not_fit(job) {
        return Ok(Answer::Blocked(blocked));
    }
    let collets: Vec<Option<&Collet>> = match &job.machine.counter_spindle {
        Some(c) => c.collets.iter().map(Some).collect(),
        None => vec![None],
    };
    let mut best: Option<Candidate<'_>> = None;
    let mut blocked: Option<Blocked> = None;
    let mut others: Vec<Blocked> = Vec::new();
    for collet in collets {
        let beat = best.as_ref().map(|b| (b.cost, b.allowance_s));
        match try_collet(job, collet, effort, look_at_mm, beat)? {
            Ok(found) => {
                let better = best.as_ref().is_none_or(|b| better(&found, b, job.objective));
                if better {
                    best = Some(found);
                }
            }
            Err(b) => {
                others.push(b.clone());
                if blocked.as_ref().is_none_or(|known| b.rank() > known.rank()) {
                    blocked = Some(b);
                }
            }
        }
    }
    match (best, blocked) {
        (Some(found), _) => finish(job, found, effort).map(|p| Answer::Found(Box::new(p))),
        // Finding out what stands in the way takes longer than finding that something does.
        (None, Some(blocked)) if effort == Effort::Best && blocked == frontier::unknown() => {
            solve(job, Effort::Explain, look_at_mm)
        }
        (None, Some(blocked)) => Ok(Answer::Blocked(blocked.beside(job, &others))),
        (None, None) => Ok(Answer::Blocked(frontier::no_collets())),
    }
}

fn better(new: &Candidate<'_>, old: &Candidate<'_>, objective: Objective) -> bool {
    if objective == Objective::Margin {
        return (new.margin, -new.cost) > (old.margin, -old.cost);
    }
    let equal = (new.cost - old.cost).abs() <= old.allowance_s;
    if equal { new.margin > old.margin } else { new.cost < old.cost }
}

type Tried<'a> = Result<Candidate<'a>, Blocked>;

fn try_collet<'a>(
    job: &'a Job,
    collet: Option<&'a Collet>,
    effort: Effort,
    look_at_mm: &[f64],
    beat: Option<(f64, f64)>,
) -> Result<Tried<'a>, Defect> {
    let rig = Rig::new(job, collet);
    let segments = match rig.segments() {
        Ok(s) => s,
        Err(refused) => return Ok(Err(Blocked::from(refused))),
    };
    if let Some(blocked) = frontier::work_does_not_fit(&rig, &segments) {
        return Ok(Err(blocked));
    }
    let tasks = rig.tasks();
    let reaches = &job.machine.cross_tool_reach_mm;
    let mut blocked: Option<Blocked> = None;
    let mut best: Option<Candidate<'a>> = None;
    // One reach serves all cross tools of a plan; without cross work they are all the same.
    let several = if tasks.iter().any(|t| t.cross) { reaches.len() } else { 1 };
    for reach in reaches.iter().take(several) {
        match try_reach(&rig, &segments, &tasks, *reach, effort, look_at_mm, beat)? {
            Ok(found) => {
                if best.as_ref().is_none_or(|b| better(&found, b, job.objective)) {
                    best = Some(Candidate { collet, ..found });
                }
            }
            Err(b) => {
                if blocked.as_ref().is_none_or(|known| b.rank() > known.rank()) {
                    blocked = Some(b);
                }
            }
        }
    }
    Ok(best.ok_or_else(|| blocked.unwrap_or_else(frontier::no_collets)))
}

#[allow(clippy::too_many_arguments)]
fn try_reach<'a>(
    rig: &Rig<'a>,
    segments: &[Segment],
    tasks: &[Task],
    reach_mm: f64,
    effort: Effort,
    look_at_mm: &[f64],
    beat: Option<(f64, f64)>,
) -> Result<Tried<'a>, Defect> {
    let moments = moments(rig, reach_mm);
    let ground = Ground { rig, segments, tasks, moments: &moments };
    let fixed_s = assemble::fixed_s(&ground);
    if let Some(blocked) = wishes::impossible(rig, segments, &lands(rig)) {
        return Ok(Err(blocked));
    }
    let mut extra = look_at_mm.to_vec();
    for _ in 0..REPAIRS {
        let grid = Grid::new(rig, segments, &moments, &extra);
        let objective = rig.job.objective;
        let hand_over = if objective == Objective::FewestHandOvers { FIRST_OF_ALL_S } else { 0.0 };
        let weights = Weights { hand_over, first: FirstStage::new(&ground, &grid) };
        let found = match rig.job.holding {
            Holding::Bush => guided(&ground, &grid, weights, fixed_s, effort, beat)?,
            Holding::NoBush => unguided(&ground, &grid, weights, fixed_s, effort)?,
        };
        let (arcs, way, draft, allowance_s) = match found {
            Ok(found) => found,
            Err(blocked) => return Ok(Err(blocked)),
        };
        let settled = ground.judge(&draft, SETTLE_STEP_MM);
        match settled.first_breach_mm() {
            // A state between stations broke: look at that one too, and plan anew.
            Some(t) if !extra.iter().any(|e: &f64| (e - t).abs() < 1e-6) => extra.push(t),
            Some(t) => return Err(Defect(format!("the plan breaks at a turned length of {t} mm that was looked at"))),
            None => {
                let least_s = way.least - hand_over * hand_over_count(&draft);
                let optimality = Optimality { gap: 0.0, stations: grid.len(), arcs };
                return Ok(Ok(Candidate {
                    collet: None,
                    cost: way.cost,
                    margin: way.margin,
                    least_s: least_s + fixed_s,
                    allowance_s,
                    optimality,
                    draft,
                    moments,
                    settled,
                }));
            }
        }
    }
    Err(Defect("the plan keeps breaking between its stations".into()))
}

/// Number of arcs, the way, its draft, and what counts as equally fast, s.
type Sequenced = (usize, Way, Draft, f64);

/// The sequence program next to a guide bush.
fn guided(
    ground: &Ground<'_>,
    grid: &Grid,
    weights: Weights,
    fixed_s: f64,
    effort: Effort,
    beat: Option<(f64, f64)>,
) -> Result<Result<Sequenced, Blocked>, Defect> {
    let ranks = effort == Effort::Best;
    let looker = Looker::ranking(ground.rig, ground.segments, grid, ground.tasks, ranks);
    let found = |runs: &Runs<'_>| guided_by(runs, weights.clone(), fixed_s, ground.rig.job.objective, effort, beat);
    // Why there is no plan is told from every state.
    if effort != Effort::Explain {
        let runs = Runs::sampled(&looker);
        let found = found(&runs)?;
        if !runs.mistaken() {
            return Ok(found);
        }
    }
    found(&Runs::new(&looker))
}

#[allow(clippy::too_many_arguments)]
fn guided_by(
    runs: &Runs<'_>,
    weights: Weights,
    fixed_s: f64,
    objective: Objective,
    effort: Effort,
    beat: Option<(f64, f64)>,
) -> Result<Result<Sequenced, Blocked>, Defect> {
    let builder = Builder::new(runs, weights);
    // A collet that is slower than another beyond what counts as equally fast is not chosen, however safe.
    let loses = |cost: f64| beat.is_some_and(|(least, allowance_s)| cost - least > allowance_s + AGREE_S);
    if loses(builder.least_s()) {
        return Ok(Err(frontier::unknown()));
    }
    let Some((net, way, allowance_s)) = search(&builder, objective, fixed_s, effort)? else {
        let explain = effort == Effort::Explain;
        return Ok(Err(if explain { frontier::find(&builder, runs) } else { frontier::unknown() }));
    };
    let draft = Draft::of(&way, runs.looker);
    Ok(Ok((net.arcs.len(), way, draft, allowance_s)))
}

/// The sequence program without a bush.
fn unguided(
    ground: &Ground<'_>,
    grid: &Grid,
    weights: Weights,
    fixed_s: f64,
    effort: Effort,
) -> Result<Result<Sequenced, Blocked>, Defect> {
    let noses = grips::noses(ground.rig, grid, &lands(ground.rig));
    let builder = Unguided::new(ground, grid, noses, weights);
    let net = builder.network();
    let Some(goal) = net.goal else { return Ok(Err(builder.blocked(&net))) };
    let allowance_s = allowance(ground.rig.job.objective, net.reached[goal], fixed_s);
    let wanted = if effort == Effort::Best { allowance_s } else { 0.0 };
    match best_way(&net, wanted)? {
        Some(way) => {
            let draft = builder.draft(&way);
            Ok(Ok((net.arcs.len(), way, draft, allowance_s)))
        }
        None => Ok(Err(builder.blocked(&net))),
    }
}

/// What counts as equally fast, s.
fn allowance(objective: Objective, cost: f64, fixed_s: f64) -> f64 {
    match objective {
        Objective::Margin => f64::INFINITY,
        Objective::Time => EQUALLY_FAST * (cost + fixed_s),
        Objective::FewestHandOvers => EQUALLY_FAST * ((cost % FIRST_OF_ALL_S) + fixed_s),
    }
}

fn hand_over_count(draft: &Draft) -> f64 {
    draft.stages.len() as f64 - 1.0
}

/// Searches with bounds that grow until a plan lies within, so that states in doubt are worked out only near the best.
fn search(
    builder: &Builder<'_>,
    objective: Objective,
    fixed_s: f64,
    effort: Effort,
) -> Result<Option<(Network, Way, f64)>, Defect> {
    let least = builder.least_s();
    if !least.is_finite() {
        return Ok(None);
    }
    let allowance = |cost: f64| allowance(objective, cost, fixed_s);
    let first = allowance(least);
    let room = (least % FIRST_OF_ALL_S) + fixed_s;
    let bounds = [first, 0.02 * room, 0.1 * room, 0.5 * room, f64::INFINITY];
    for extra in bounds.into_iter().filter(|e| *e >= first) {
        let net = builder.within(least + extra);
        let Some(goal) = net.goal else { continue };
        let found = net.reached[goal];
        let wanted = if effort == Effort::Best { allowance(found) } else { 0.0 };
        let net = if found + wanted > least + extra { builder.within(found + wanted) } else { net };
        return Ok(best_way(&net, wanted)?.map(|way| (net, way, allowance(found))));
    }
    Ok(None)
}

fn finish(job: &Job, found: Candidate<'_>, effort: Effort) -> Result<Plan, Defect> {
    let rig = Rig::new(job, found.collet);
    let segments = rig.segments().map_err(|r| Defect(r.text))?;
    let tasks = rig.tasks();
    let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &found.moments };
    let before = found.settled;
    let mut best: Option<(Draft, Settled)> = None;
    if effort == Effort::Best {
        let most_s = before.run_s + found.allowance_s.min(EQUALLY_FAST * found.least_s);
        let placed = placing::place(&ground, &lands(&rig), found.draft.clone(), PLACE_STEP_MM, most_s)?;
        // Moving the first hand-over may hide less of the work on the rear end.
        if placed != found.draft {
            let settled = ground.settle(&placed, SETTLE_STEP_MM);
            let most_s = assemble::objective_s(&ground, &found.draft, &before) + found.allowance_s;
            let fast = assemble::objective_s(&ground, &placed, &settled) <= most_s;
            let better = settled.first_breach_mm().is_none() && settled.margin() >= before.margin() && fast;
            best = better.then_some((placed, settled));
        }
    }
    let best = best.unwrap_or_else(|| {
        let settled = ground.settle(&found.draft, SETTLE_STEP_MM);
        (found.draft, settled)
    });
    let total = assemble::objective_s(&ground, &best.0, &best.1);
    // A plan may be slower than the least by what "equally fast" allows, and by slowing between stations.
    let gap = ((total - found.least_s) / total).max(0.0);
    let gap = if gap < 1e-9 { 0.0 } else { gap };
    Ok(assemble::plan(&ground, &best.0, &best.1, Optimality { gap, ..found.optimality }))
}

/// Notes on what was assumed or lowered while planning.
pub fn notes(job: &Job, plan: &Plan) -> Vec<String> {
    let mut notes = job.notes.clone();
    if job.holding == Holding::Bush && plan.segments.iter().any(|s| s.work == "whirl") {
        notes.push("a thread too long to be pulled back for single-point passes is whirled in one travel".into());
    }
    notes.extend(unusual_threads(job));
    let given = job.cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM);
    for (i, section) in job.shaft.sections.iter().enumerate() {
        let lowered = plan.segments.iter().find(|s| s.section == i + 1 && s.work == "turn" && s.feed_mm < given - 1e-9);
        if let (Some(s), Some(_), Some(ra)) = (lowered, job.cutting.feed_mm, section.ra_um) {
            notes.push(format!(
                "{}: feed lowered from {given} to {:.3} mm/rev for Ra {ra} µm",
                section.label(i),
                s.feed_mm
            ));
        }
    }
    notes
}

/// Threads whose pitch ISO 261 does not have, each once: tools for them are made to order.
fn unusual_threads(job: &Job) -> Vec<String> {
    let turned = job.shaft.sections.iter().filter_map(|s| match &s.kind {
        SectionKind::Thread(t) => Some(t),
        _ => None,
    });
    let tapped = job.shaft.features.iter().filter_map(|f| match &f.kind {
        FeatureKind::TappedHole { thread, .. } => Some(thread),
        _ => None,
    });
    let mut notes: Vec<String> = Vec::new();
    // Above 60 mm the table ends.
    for thread in turned.chain(tapped).filter(|t| t.major_mm <= 60.0 && t.pitch_mm <= 2.0 && !t.is_usual()) {
        let note = format!(
            "{}: ISO 261 has no pitch of {} mm for it; see that there is a tool",
            thread.designation, thread.pitch_mm
        );
        if !notes.contains(&note) {
            notes.push(note);
        }
    }
    notes
}
