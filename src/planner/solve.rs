//! From a job to its best plan: the sequence program for every collet, then the placing program for the best ways
//! found.

use crate::defect::Defect;
use crate::job::plan::{Optimality, Plan};
use crate::job::{Collet, Hold, Holding, Job, Objective};
use crate::lang::Measure;
use crate::planner::places::grips::{self, lands};
use crate::planner::places::ground::Ground;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::plan::assemble;
use crate::planner::plan::draft::Draft;
use crate::planner::plan::placing;
use crate::planner::plan::settle::Settled;
use crate::planner::sequence::network::{Builder, FirstStage, Network, Weights};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Runs;
use crate::planner::sequence::unguided::{Came, Knows, Unguided};
use crate::planner::sequence::way::{AGREE_S, EQUALLY_FAST, Way, best_way};
use crate::planner::states::outlook::Looker;
use crate::planner::why_not::blocked::{self, Blocked};
use crate::planner::why_not::farthest;
use crate::planner::why_not::{frontier, wished};
use crate::process::Rig;
use crate::process::features::Task;
use crate::process::segments::Segment;
use crate::say;

/// Largest distance of the states that decide whether a draft holds, mm.
const SETTLE_STEP_MM: f64 = 1.0;
/// Largest distance of the states that decide whether a move of the placing program is better, mm.
const PLACE_STEP_MM: f64 = 4.0;
/// The pitch of the stations is halved at least down to the first number before the answer "no plan", and never below
/// the second, mm.
const PITCH_OF_A_NO_MM: [f64; 2] = [2.5, 0.5];

/// A plan slower than the least time by up to this share is found by growing the network at once, without a search for
/// the cheapest way first.
const NEAR: f64 = 0.02;

/// How much the answer must contain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effort {
    /// The best plan, placed for the largest margin.
    Best,
    /// Only whether there is a plan, and its time.
    Feasible,
    /// Where there is no plan: also how far the bar comes, and what stops it.
    Explain,
}

/// A plan, or what stands in its way.
#[derive(Debug, Clone)]
pub enum Answer {
    /// A plan, not yet proven.
    Found(Box<Plan>),
    /// No plan.
    Blocked(Blocked),
}

/// A way with one collet and one reach of the cross tools.
struct Candidate<'a> {
    collet: Option<&'a Collet>,
    draft: Draft,
    cost: Price,
    least_s: f64,
    allowance_s: f64,
    optimality: Optimality,
    moments: Vec<(usize, f64)>,
    settled: Settled,
    look_at_mm: Vec<f64>,
    /// Whether the placing program may move stops and grips off the stations.
    moves: bool,
}

/// The least cost of the candidates found, and how much more time counts as equally good. A later collet must compete
/// with this.
#[derive(Clone, Copy)]
struct Beat {
    cost: Price,
    allowance_s: f64,
}

impl Beat {
    fn of(found: &[Candidate<'_>]) -> Option<Beat> {
        let least = found.iter().reduce(|least, c| if c.cost < least.cost { c } else { least })?;
        Some(Beat { cost: least.cost, allowance_s: least.allowance_s })
    }

    /// Whether a cost counts as equally good.
    fn as_good(self, cost: Price) -> bool {
        self.allowance_s.is_infinite() || cost <= self.cost.plus_s(self.allowance_s + AGREE_S)
    }
}

/// Finds the best plan of a job. The pitch of the stations is a resolution, not a limit of the machine. So before the
/// best effort says no, the pitch is halved until verdict, reason and farthest place stay the same.
///
/// # Errors
/// [`Defect`] when a linear program fails, or when its result contradicts the states it was built from. This is never
/// the user's fault.
pub fn solve(job: &Job, effort: Effort, lessons: &Lessons) -> Result<Answer, Defect> {
    let answer = at_pitch(job, effort, lessons)?;
    let Answer::Blocked(mut blocked) = answer else { return Ok(answer) };
    if effort != Effort::Best || !blocked.depends_on_stations() {
        return Ok(Answer::Blocked(blocked));
    }
    let mut job = job.clone();
    loop {
        let coarse_mm = job.planning.station_pitch_mm;
        let fine_mm = (0.5 * coarse_mm).max(PITCH_OF_A_NO_MM[1]);
        if fine_mm >= coarse_mm {
            return Ok(Answer::Blocked(blocked));
        }
        crate::spread::tell(|| {
            say!(
                "progress-finer-stops",
                coarse = Measure::Place.number(coarse_mm),
                fine = Measure::Place.number(fine_mm)
            )
        });
        job.planning.station_pitch_mm = fine_mm;
        match at_pitch(&job, effort, lessons)? {
            Answer::Blocked(finer) => {
                let stands = finer.by == blocked.by && (finer.farthest_mm - blocked.farthest_mm).abs() <= coarse_mm;
                blocked = Blocked { pitch_mm: Some(fine_mm), ..finer };
                if stands && fine_mm <= PITCH_OF_A_NO_MM[0] {
                    return Ok(Answer::Blocked(blocked));
                }
            }
            found => return Ok(found),
        }
    }
}

/// The reaches to try. A plan uses one reach for all cross tools. Without cross work all reaches give the same plan.
pub fn reaches<'j>(job: &'j Job, tasks: &[Task]) -> &'j [f64] {
    let all = &job.machine.cross_tool_reach_mm;
    let several = if tasks.iter().any(|t| t.cross) { all.len() } else { 1 };
    all.get(..several).unwrap_or(all)
}

/// How ways are weighed for the objective of the job.
pub fn weights(ground: &Ground<'_>, grid: &Grid) -> Weights {
    let objective = ground.rig.job.objective;
    Weights {
        counts_hand_overs: objective == Objective::FewestHandOvers,
        safest: objective == Objective::Margin,
        first: FirstStage::new(ground, grid),
    }
}

/// What may hold the front: each collet of the counter-spindle, or nothing up to part-off (none) where there is no
/// counter-spindle or where the part may fall. On a centre nothing else holds it.
pub fn ways_to_hold(job: &Job) -> Vec<Option<&Collet>> {
    if job.hold == Hold::Centre {
        return vec![None];
    }
    let collets = job.machine.counter_spindle.iter().flat_map(|c| &c.collets).map(Some);
    let falls = job.machine.counter_spindle.is_none() || Rig::new(job, None).falls();
    falls.then_some(None).into_iter().chain(collets).collect()
}

/// The best plan with the station pitch of the job.
fn at_pitch(job: &Job, effort: Effort, lessons: &Lessons) -> Result<Answer, Defect> {
    if let Some(blocked) = frontier::bar_does_not_fit(job) {
        return Ok(Answer::Blocked(blocked));
    }
    let mut found: Vec<Candidate<'_>> = Vec::new();
    let mut blocked: Option<Blocked> = None;
    let mut others: Vec<Blocked> = Vec::new();
    for collet in ways_to_hold(job) {
        match try_collet(job, collet, effort, lessons, Beat::of(&found))? {
            Ok(more) => found.extend(more),
            // The free front comes no farther without a collet than with one, and the collet has more to tell.
            Err(_) if collet.is_none() && job.machine.counter_spindle.is_some() && job.hold == Hold::Collet => {}
            Err(b) => {
                others.push(b.clone());
                if blocked.as_ref().is_none_or(|known| b.rank() > known.rank()) {
                    blocked = Some(b);
                }
            }
        }
    }
    match (found.is_empty(), blocked) {
        (false, _) => best_placed(job, found, effort).map(|plan| Answer::Found(Box::new(plan))),
        // To find what stands in the way takes longer than to find that there is no plan, so it is a second search.
        (true, Some(blocked)) if effort == Effort::Best && blocked == blocked::unknown() => {
            at_pitch(job, Effort::Explain, lessons)
        }
        (true, Some(blocked)) => Ok(Answer::Blocked(blocked.beside(job, &others))),
        (true, None) => Ok(Answer::Blocked(blocked::no_collets())),
    }
}

/// The best of the candidates found. All that are as good as the cheapest are placed before one is chosen, because
/// placing may give another one the larger margin. Equal margins are decided by time, then by the name of the collet,
/// so that the order of the collets in the file has no effect.
fn best_placed(job: &Job, mut found: Vec<Candidate<'_>>, effort: Effort) -> Result<Plan, Defect> {
    let Some(least) = Beat::of(&found) else { return Err(Defect("no plan to choose from".into())) };
    if effort == Effort::Best {
        found.retain(|c| least.as_good(c.cost));
    } else {
        found.retain(|c| c.cost == least.cost);
        found.truncate(1);
    }
    let mut best: Option<Plan> = None;
    for candidate in found {
        let plan = finish(job, candidate, effort)?;
        let margin = |p: &Plan| p.margin.unwrap_or(f64::NEG_INFINITY);
        let order = |p: &Plan, q: &Plan| {
            let safer = margin(p).total_cmp(&margin(q));
            safer.then(q.pace_s().total_cmp(&p.pace_s())).then(q.collet.cmp(&p.collet))
        };
        if best.as_ref().is_none_or(|known| order(&plan, known).is_gt()) {
            best = Some(plan);
        }
    }
    best.ok_or_else(|| Defect("no plan to choose from".into()))
}

/// The result for one collet or one reach: what was found, or why there is no plan.
type Tried<T> = Result<T, Blocked>;

fn try_collet<'a>(
    job: &'a Job,
    collet: Option<&'a Collet>,
    effort: Effort,
    lessons: &Lessons,
    beat: Option<Beat>,
) -> Result<Tried<Vec<Candidate<'a>>>, Defect> {
    let rig = Rig::new(job, collet);
    let segments = match rig.segments() {
        Ok(s) => s,
        Err(refused) => return Ok(Err(Blocked::from(refused))),
    };
    if let Some(blocked) = frontier::work_does_not_fit(&rig, &segments) {
        return Ok(Err(blocked));
    }
    let tasks = rig.tasks();
    let mut blocked: Option<Blocked> = None;
    let mut found: Vec<Candidate<'a>> = Vec::new();
    for reach in reaches(job, &tasks) {
        match try_reach(&rig, &segments, &tasks, *reach, effort, lessons, beat)? {
            Ok(candidate) => found.push(candidate),
            Err(b) => {
                if blocked.as_ref().is_none_or(|known| b.rank() > known.rank()) {
                    blocked = Some(b);
                }
            }
        }
    }
    Ok(if found.is_empty() { Err(blocked.unwrap_or_else(blocked::no_collets)) } else { Ok(found) })
}

#[allow(clippy::too_many_arguments)]
fn try_reach<'a>(
    rig: &Rig<'a>,
    segments: &[Segment],
    tasks: &[Task],
    reach_mm: f64,
    effort: Effort,
    lessons: &Lessons,
    beat: Option<Beat>,
) -> Result<Tried<Candidate<'a>>, Defect> {
    let moments = moments(rig, reach_mm);
    if let Some(blocked) = wished::impossible(rig, segments, &lands(rig)) {
        return Ok(Err(blocked));
    }
    let mut lessons = lessons.clone();
    loop {
        let ground = Ground { rig, segments, tasks, moments: &moments, look_at_mm: &lessons.look_at_mm };
        let fixed_s = assemble::fixed_s(&ground);
        let grid = Grid::new(rig, segments, &moments, &lessons);
        let weights = weights(&ground, &grid);
        let found = match rig.job.holding {
            Holding::Bush => guided(&ground, &grid, weights, fixed_s, effort, beat)?,
            Holding::NoBush => unguided(&ground, &grid, weights, fixed_s, effort)?,
        };
        let (edges, way, draft, allowance_s) = match found {
            Ok(found) => found,
            Err(blocked) => return Ok(Err(blocked)),
        };
        let settled = ground.judge(&draft, SETTLE_STEP_MM);
        let broken = settled.broken();
        if broken.is_empty() {
            return Ok(Ok(Candidate {
                collet: rig.collet,
                cost: way.cost,
                least_s: way.least.s + fixed_s,
                allowance_s,
                optimality: Optimality { gap: 0.0, stations: grid.len(), arcs: edges },
                draft,
                moments,
                settled,
                look_at_mm: lessons.look_at_mm,
                moves: !lessons.stay,
            }));
        }
        // States between stations broke: plan again and look at them too. `Lessons` says why this loop ends.
        if !lessons.learn_all(broken) {
            return Err(Defect("the plan runs through a state that is shut".into()));
        }
    }
}

/// Number of edges, the way, its draft, and how much more time counts as equally fast, s.
type Sequenced = (usize, Way, Draft, f64);

/// The sequence program with a guide bush.
fn guided(
    ground: &Ground<'_>,
    grid: &Grid,
    weights: Weights,
    fixed_s: f64,
    effort: Effort,
    beat: Option<Beat>,
) -> Result<Tried<Sequenced>, Defect> {
    let looker = Looker::ranking(ground.rig, ground.segments, grid, ground.tasks, effort == Effort::Best);
    let objective = ground.rig.job.objective;
    let by = |runs: &Runs<'_>| guided_by(runs, weights.clone(), fixed_s, objective, effort, beat);
    // The best effort tries every way. The other efforts use the quick walks of `farthest`, which miss a plan only
    // rarely.
    let blocked = match effort {
        Effort::Best => (!looker.may_come_through()).then(blocked::unknown),
        Effort::Feasible => (!looker.may_come_through() || !farthest::comes_through(&looker)).then(blocked::unknown),
        Effort::Explain => farthest::find(&looker),
    };
    if let Some(blocked) = blocked {
        return Ok(Err(blocked));
    }
    let runs = Runs::sampled(&looker);
    let mut found = by(&runs)?;
    if runs.mistaken() {
        found = by(&Runs::new(&looker))?;
    }
    Ok(found.ok_or_else(blocked::unknown))
}

fn guided_by(
    runs: &Runs<'_>,
    weights: Weights,
    fixed_s: f64,
    objective: Objective,
    effort: Effort,
    beat: Option<Beat>,
) -> Result<Option<Sequenced>, Defect> {
    let builder = Builder::new(runs, weights);
    // A collet that is slower than another by more than the allowance is never chosen, however safe it is.
    if beat.is_some_and(|known| !known.as_good(builder.least())) {
        return Ok(None);
    }
    let found = search(&builder, objective, fixed_s, effort)?;
    Ok(found.map(|(edges, way, allowance_s)| {
        let draft = Draft::of(&way, runs.looker);
        (edges, way, draft, allowance_s)
    }))
}

/// The sequence program without a bush.
fn unguided(
    ground: &Ground<'_>,
    grid: &Grid,
    weights: Weights,
    fixed_s: f64,
    effort: Effort,
) -> Result<Tried<Sequenced>, Defect> {
    let noses = grips::noses(ground.rig, grid, &lands(ground.rig));
    let builder = Unguided::new(ground, grid, noses, weights);
    if let Some(came) = Came::of(&builder, Knows::WhatHolds) {
        return Ok(Err(builder.blocked(&came)));
    }
    let knows = if effort == Effort::Best { Knows::Margins } else { Knows::WhatHolds };
    let net = builder.network(knows);
    let no_way = || Defect("a way is known that the network does not have".into());
    let Some(goal) = net.goal else {
        // The bound on chatter from a few modes may pass a state that is just outside the limit by more modes.
        let came = Came::of(&builder, knows).ok_or_else(no_way)?;
        return Ok(Err(builder.blocked(&came)));
    };
    let allowance_s = allowance_s(ground.rig.job.objective, net.reached[goal].s, fixed_s);
    let wanted_s = if effort == Effort::Best { allowance_s } else { 0.0 };
    let way = best_way(&net, wanted_s)?.ok_or_else(no_way)?;
    let draft = Draft::without_bush(&way, &builder);
    Ok(Ok((net.edges.len(), way, draft, allowance_s)))
}

/// How much more time counts as equally fast, s. Infinite where the safest plan is sought.
fn allowance_s(objective: Objective, way_s: f64, fixed_s: f64) -> f64 {
    match objective {
        Objective::Margin => f64::INFINITY,
        Objective::Time | Objective::FewestHandOvers => EQUALLY_FAST * (way_s + fixed_s),
    }
}

/// The number of edges to choose from, the best way, and how much more time counts as equally fast, s. Only where the
/// safest of the nearly cheapest plans is sought, the network around the cheapest is grown; so states in doubt are
/// worked out only near the best plan.
fn search(
    builder: &Builder<'_>,
    objective: Objective,
    fixed_s: f64,
    effort: Effort,
) -> Result<Option<(usize, Way, f64)>, Defect> {
    let least = builder.least();
    if !least.is_finite() {
        return Ok(None);
    }
    let allowance_s = |way_s: f64| allowance_s(objective, way_s, fixed_s);
    if effort != Effort::Best {
        return Ok(builder.cheapest().map(|way| {
            let allowance_s = allowance_s(way.cost.s);
            (way.edges.len(), way, allowance_s)
        }));
    }
    let up_to = |price: Price, more_s: f64| if more_s.is_finite() { price.plus_s(more_s) } else { Price::NO_WAY };
    let chosen = |net: &Network, found: Price| -> Result<Option<(usize, Way, f64)>, Defect> {
        let allowance_s = allowance_s(found.s);
        Ok(best_way(net, allowance_s)?.map(|way| (net.edges.len(), way, allowance_s)))
    };
    // Most plans cost little more than the lower bound, so a network of plans that cost little more finds them.
    let first_s = allowance_s(least.s);
    for extra_s in [first_s, NEAR * (least.s + fixed_s)].into_iter().filter(|e| *e >= first_s) {
        let bound = up_to(least, extra_s);
        let net = builder.within(bound);
        let Some(goal) = net.goal else { continue };
        let found = net.reached[goal];
        let wanted = up_to(found, allowance_s(found.s));
        return if wanted > bound { chosen(&builder.within(wanted), found) } else { chosen(&net, found) };
    }
    // An infinite allowance had no bound: the network above was complete, and it has no way.
    let Some(way) = (if first_s.is_finite() { builder.cheapest() } else { None }) else { return Ok(None) };
    chosen(&builder.within(up_to(way.cost, allowance_s(way.cost.s))), way.cost)
}

fn finish(job: &Job, found: Candidate<'_>, effort: Effort) -> Result<Plan, Defect> {
    let rig = Rig::new(job, found.collet);
    let segments = rig.segments().map_err(|r| Defect(r.text))?;
    let tasks = rig.tasks();
    let ground = Ground {
        rig: &rig,
        segments: &segments,
        tasks: &tasks,
        moments: &found.moments,
        look_at_mm: &found.look_at_mm,
    };
    let before = found.settled;
    let mut best: Option<(Draft, Settled)> = None;
    if effort == Effort::Best && found.moves {
        let most_s = before.run_s + found.allowance_s;
        let placed = placing::place(&ground, &lands(&rig), found.draft.clone(), PLACE_STEP_MM, most_s)?;
        // When the first hand-over moves, the first stage may hide less of the work on the rear end.
        if placed != found.draft {
            let settled = ground.settle(&placed, SETTLE_STEP_MM);
            let most_s = assemble::objective_s(&ground, &found.draft, &before) + found.allowance_s;
            let fast = assemble::objective_s(&ground, &placed, &settled) <= most_s;
            let better = settled.broken().is_empty() && settled.margin() >= before.margin() && fast;
            best = better.then_some((placed, settled));
        }
    }
    let best = best.unwrap_or_else(|| {
        let settled = ground.settle(&found.draft, SETTLE_STEP_MM);
        (found.draft, settled)
    });
    let total = assemble::objective_s(&ground, &best.0, &best.1);
    // A plan may be slower than the least time by the allowance, and because it slows down between stations.
    let gap = ((total - found.least_s) / total).max(0.0);
    let gap = if gap < 1e-9 { 0.0 } else { gap };
    Ok(assemble::plan(&ground, &best.0, &best.1, Optimality { gap, ..found.optimality }))
}
