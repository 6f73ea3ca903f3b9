//! How sure an answer is: the share of sampled parts in which a plan holds, and plans made to hold in a share that the job asks for.

use super::advised;
use crate::defect::Defect;
use crate::fit::reading_of;
use crate::job::plan::{Confidence, Plan, ScatterReport, Tightened, Verdict, cautions};
use crate::job::readings::Support;
use crate::job::{Job, Reserve, Uncertain};
use crate::lang::Measure;
use crate::planner::Advice;
use crate::process::checks::{span_stiffness, stiffness};
use crate::proof::{self, Course};
use crate::say;
use crate::spread::{spread, tell};
use std::collections::BTreeMap;

/// Limits are tightened in steps of this many standard deviations of the share that a check uses, then in finer steps.
const STEP: f64 = 0.5;
const FINE: usize = 8;
/// Most standard deviations by which limits are tightened.
const MOST: f64 = 4.0;
/// Fewest parts for a share that may be missed: this many times the mean number of parts until one fails.
const PARTS_PER_FAILURE: f64 = 10.0;
/// Confidences up to which one number of sampled parts serves. A higher confidence is first brought to these, so that asking for more never
/// gives a faster plan, whatever the samples are.
const LEVELS: [f64; 3] = [0.975, 0.99, 0.999];
/// How finely the diameter of a bar is measured for its modulus, mm. Common practice, no source.
const FINE_MM: f64 = 0.02;
/// Added to the seed of the job for the second count of a search, and once more for the final one.
const FRESH: u64 = 0x5EED;

/// A proven plan with its share of good parts; made to hold if the job asks for it.
pub(super) fn sure(plan: Plan, job: &Job) -> Result<Plan, Defect> {
    if !plan.verdict.has_plan() {
        return Ok(plan);
    }
    let mut plan = match job.scatter.confidence {
        None => with_scatter(plan, job),
        Some(asked) => confident(plan, job, asked)?,
    };
    let missed = |s: &ScatterReport| s.confidence.as_ref().is_some_and(|c| !c.reached);
    if plan.scatter.as_ref().is_some_and(|s| s.good_share < job.scatter.confidence_warn || missed(s)) {
        plan.verdict = Verdict::AtRisk;
        plan.cautions = cautions(&plan);
    }
    Ok(plan)
}

fn with_scatter(mut plan: Plan, job: &Job) -> Plan {
    let mut scatter = proof::scatter(&plan, job);
    for told in scatter.inputs.iter_mut().filter(|told| told.gain > 0.0) {
        told.advice = advice(job, &told.input).unwrap_or_default();
    }
    plan.scatter = Some(scatter);
    plan
}

/// How to measure an uncertain input, in words.
fn advice(job: &Job, input: &str) -> Option<String> {
    let by_dial = |support: Support| {
        let bar_mm = job.stock.diameter_mm;
        let reading = reading_of(&job.machine, &job.shaft.material, job.holding, bar_mm, support)?;
        Some(say!("measure-support", reading = reading))
    };
    Some(match Uncertain::ALL.into_iter().find(|known| known.key() == input)? {
        Uncertain::Bush => by_dial(Support::Bush)?,
        Uncertain::Headstock => by_dial(Support::Headstock)?,
        Uncertain::CounterSpindle => {
            by_dial(Support::CounterSpindle).unwrap_or_else(|| say!("measure-counter-spindle"))
        }
        Uncertain::Centre => say!("measure-centre"),
        Uncertain::Sleeve => say!("measure-sleeve"),
        Uncertain::Kc => say!("measure-kc"),
        Uncertain::Passive => say!("measure-passive"),
        Uncertain::E => say!("measure-e", fine = Measure::Size.number(FINE_MM)),
        Uncertain::Damping => say!("measure-damping"),
        Uncertain::Ra => say!("measure-ra"),
        Uncertain::Straightness => say!("measure-straightness"),
        Uncertain::Bar => say!("measure-bar"),
        Uncertain::RunOut => say!("measure-run-out"),
    })
}

/// Adds the time of a part planned for each input one standard deviation lower and higher.
pub(super) fn with_times(plan: &mut Plan, job: &Job) -> Result<(), Defect> {
    let Some(scatter) = &mut plan.scatter else { return Ok(()) };
    let of = |key: &str, z: f64| -> Result<Option<f64>, Defect> {
        let Some(input) = Uncertain::ALL.into_iter().find(|known| known.key() == key) else { return Ok(None) };
        let mut draw = [0.0; Uncertain::COUNT];
        if let Some(own) = draw.get_mut(input as usize) {
            *own = z;
        }
        let planned = advised(&job.drawn(&draw), Advice::None)?;
        Ok(planned.verdict.has_plan().then(|| planned.pace_s()))
    };
    let keys: Vec<String> = scatter.inputs.iter().map(|told| told.input.clone()).collect();
    let times = spread(&keys, |key, _| Ok([of(key, -1.0)?, of(key, 1.0)?]));
    for (told, times) in scatter.inputs.iter_mut().zip(times) {
        [told.time_low_s, told.time_high_s] = times?;
    }
    Ok(())
}

/// The fastest plan found that holds in a share of parts; if none does, the one that holds in most.
fn confident(fastest: Plan, job: &Job, asked: f64) -> Result<Plan, Defect> {
    let spreads = proof::spread_of_checks(&Course::new(&fastest, job));
    let fastest_s = fastest.pace_s();
    let fastest_good_share = proof::counted(&fastest, job, job.scatter.seed, job.scatter.samples).good_share;
    let mut search = Search { job, spreads, tried: BTreeMap::from([(0, Some(fastest))]) };
    let mut step = 0;
    let mut reached = true;
    for share in LEVELS.into_iter().filter(|level| *level < asked).chain([asked]) {
        tell(|| say!("progress-confidence", share = share.to_string()));
        (step, reached) = search.first_that_holds(step, share)?;
        if !reached {
            break;
        }
    }
    let reserve = search.reserve(step);
    let Some(plan) = search.tried.remove(&step).flatten() else { return Err(Defect(say!("proof-no-plan"))) };
    // The final count is of parts that no plan was chosen by. Without a plan that holds, nothing was chosen, and the parts are those of the
    // job, so that the same plan has the same share with and without a confidence.
    let mut count = job.clone();
    if reached {
        count.scatter.samples = samples(job, asked);
        count.scatter.seed = job.scatter.seed.wrapping_add(2 * FRESH);
    }
    let mut plan = with_scatter(plan, &count);
    let costs_s = plan.pace_s() - fastest_s;
    if let Some(scatter) = &mut plan.scatter {
        let tightened = reserve.0.iter().filter(|(_, factor)| *factor > 1.0);
        let tightened =
            tightened.map(|(check, factor)| Tightened { check: (*check).into(), factor: *factor }).collect();
        scatter.confidence = Some(Confidence { asked, reached, fastest_s, costs_s, fastest_good_share, tightened });
    }
    Ok(plan)
}

/// The search for the fastest plan that holds in a share of parts.
///
/// The limit of each check is tightened by `exp(z s)`, where `s` is the standard deviation of the logarithm of what the check uses in the
/// fastest plan, and `z` is the same for all checks. The steps of `z` go up from 0, first coarse, then fine, and the first plan that holds
/// counts. So a higher confidence never ends at a smaller `z`. Derived here.
struct Search<'a> {
    job: &'a Job,
    spreads: Vec<(&'static str, f64)>,
    /// The plans by their step; none where there is no plan.
    tried: BTreeMap<usize, Option<Plan>>,
}

impl Search<'_> {
    fn reserve(&self, step: usize) -> Reserve {
        let z = STEP * step as f64 / FINE as f64;
        Reserve(self.spreads.iter().map(|(check, s)| (*check, (z * s).exp())).collect())
    }

    /// The plan for the limits of a step; none if there is none.
    fn plan(&mut self, step: usize) -> Result<Option<&Plan>, Defect> {
        if !self.tried.contains_key(&step) {
            let mut job = self.job.clone();
            job.limits.reserve = self.reserve(step);
            let plan = advised(&job, Advice::None)?;
            let made = plan.verdict.has_plan().then(|| loosened(plan, &job.limits.reserve));
            self.tried.insert(step, made);
        }
        Ok(self.tried.get(&step).and_then(Option::as_ref))
    }

    /// Whether the plan of a step holds in a share of parts: in those of the search and in fresh ones. None: there is no plan.
    fn holds(&mut self, step: usize, share: f64) -> Result<Option<bool>, Defect> {
        let (job, samples) = (self.job, samples(self.job, share));
        let seeds = [job.scatter.seed, job.scatter.seed.wrapping_add(FRESH)];
        let course = self.plan(step)?.map(|plan| Course::new(plan, job));
        Ok(course.map(|course| seeds.iter().all(|seed| proof::reaches(&course, *seed, samples, share))))
    }

    /// The first step from `from` on whose plan holds, and true; else the step whose plan holds in most parts, and false.
    fn first_that_holds(&mut self, from: usize, share: f64) -> Result<(usize, bool), Defect> {
        let mut fine = from;
        for coarse in
            (from.div_ceil(FINE)..).map(|c| c * FINE).take_while(|step| STEP * *step as f64 / FINE as f64 <= MOST)
        {
            let holds = self.holds(coarse, share)?;
            if holds == Some(false) {
                fine = coarse + 1;
                continue;
            }
            for step in fine..coarse {
                match self.holds(step, share)? {
                    Some(true) => return Ok((step, true)),
                    Some(false) => {}
                    // Tighter limits leave no plan either.
                    None => break,
                }
            }
            if holds.is_some() {
                return Ok((coarse, true));
            }
            break;
        }
        let (job, samples) = (self.job, samples(self.job, share));
        let shares = self.tried.iter().filter_map(|(step, plan)| {
            let plan = plan.as_ref()?;
            Some((*step, proof::counted(plan, job, job.scatter.seed, samples).good_share))
        });
        let best = shares.max_by(|a, b| a.1.total_cmp(&b.1).then(b.0.cmp(&a.0)));
        Ok((best.map_or(0, |(step, _)| step), false))
    }
}

/// Number of sampled parts for a confidence.
fn samples(job: &Job, confidence: f64) -> usize {
    let level = LEVELS.into_iter().find(|level| confidence <= *level).unwrap_or(confidence);
    job.scatter.samples.max((PARTS_PER_FAILURE / (1.0 - level)).round() as usize)
}

/// The plan with the limits of the job instead of tightened ones.
fn loosened(mut plan: Plan, reserve: &Reserve) -> Plan {
    for stage in &mut plan.stages {
        for told in &mut stage.checks {
            let factor = reserve.of(&told.check);
            told.utilisation /= factor;
            let is_least = [stiffness::NAME, span_stiffness::NAME].contains(&told.check.as_str());
            told.limit *= if is_least { factor.recip() } else { factor };
        }
    }
    for point in &mut plan.trace {
        point.all.iter_mut().for_each(|(check, used)| *used /= reserve.of(check));
        if let Some((check, used)) = point.all.iter().max_by(|a, b| a.1.total_cmp(&b.1)) {
            (point.check, point.utilisation) = (check.clone(), *used);
        }
    }
    plan.tell_margin();
    plan
}
