//! The largest utilisation of `chatter` in each stage, with the modes worked out.
//!
//! For most moments a bound shows that they pass, but not how near they are to the limit. So the modes are worked out
//! where this bound is largest in each piece, at the ends of pieces, and at moments spread over the stage; then between
//! the worst of these and its neighbours. The proof works out the worst of the whole plan from all its states.

use crate::planner::places::ground::Ground;
use crate::planner::plan::settle::{Look, Settled};
use crate::process::answers::{FEW_STEPS, MORE_STEPS};
use crate::process::checks::{Finding, chatter};
use crate::spread::{free_cores, spread};
use std::collections::BTreeMap;

/// Number of moments spread over a stage.
const CHATTER_MOMENTS: usize = 16;

/// A moment at which `chatter` may be at its worst, with an upper bound on its utilisation.
#[derive(Clone, Copy)]
struct Hopeful<'a> {
    /// Index among the looks of the stage.
    place: usize,
    /// Upper bound on the utilisation.
    most: f64,
    /// Whether more than a few modes gave this bound.
    closer: bool,
    look: &'a Look,
}

/// The looks of a stage in which `chatter` applies: its utilisation by the static bound, and the look.
type Bounded<'a> = Vec<(f64, &'a Look)>;

/// The largest utilisation of each stage, and the look in which it occurs.
pub fn worst_chatter<'a>(
    ground: &Ground<'_>,
    settled: &Settled,
    stages: &[Vec<&'a Look>],
) -> Vec<Option<(Finding, &'a Look)>> {
    let segment = |look: &Look| Some(&ground.segments[settled.pieces[look.piece?].segment]);
    let about = |look: &Look, steps: usize| {
        crate::spread::checkpoint();
        Some(chatter::about(ground.rig, &look.state, segment(look)?, steps)?.utilisation)
    };
    let bound = |look: &Look| look.findings.iter().find(|f| f.check == chatter::NAME).map(|f| f.utilisation);
    let stages: Vec<Bounded<'a>> =
        stages.iter().map(|looks| looks.iter().filter_map(|l| Some((bound(l)?, *l))).collect()).collect();
    // A few modes show where the worst may be, some more modes narrow it down, and all modes are worked out only there.
    let first: Vec<(usize, usize)> =
        stages.iter().enumerate().flat_map(|(stage, all)| some(all).into_iter().map(move |i| (stage, i))).collect();
    let few = spread(&first, |(stage, i), _| about(stages[*stage][*i].1, FEW_STEPS));
    let mut known: Vec<BTreeMap<usize, f64>> = vec![BTreeMap::new(); stages.len()];
    for ((stage, i), most) in first.into_iter().zip(few) {
        known[stage].extend(most.map(|most| (i, most)));
    }
    let open: Vec<(&Bounded<'a>, BTreeMap<usize, f64>)> = stages.iter().zip(known).collect();
    let mut open: Vec<Open<'a>> = spread(&open, |(all, known), _| {
        let known = climbed(known, |i| about(all[i].1, FEW_STEPS));
        let hopeful =
            known.into_iter().map(|(place, most)| Hopeful { place, most, closer: false, look: all[place].1 }).collect();
        Open { hopeful, worst: None }
    });
    // Stages that are still open share the cores. The last stages come first, because a stiffer bar needs more modes.
    loop {
        let left = open.iter_mut().map(|stage| usize::from(stage.left())).sum::<usize>();
        let at_once = (free_cores() / left.max(1)).max(1);
        let next: Vec<(usize, Hopeful<'a>, f64)> = open
            .iter_mut()
            .enumerate()
            .rev()
            .flat_map(|(i, stage)| {
                let share = stage.share();
                stage.next(at_once).into_iter().map(move |hopeful| (i, hopeful, share))
            })
            .collect();
        if next.is_empty() {
            break;
        }
        let looked = spread(&next, |(_, hopeful, share), _| {
            if !hopeful.closer {
                return Looked::Closer(about(hopeful.look, MORE_STEPS));
            }
            let exact = |piece| chatter::exact_above(ground.rig, &hopeful.look.state, piece, *share);
            Looked::Exact(segment(hopeful.look).and_then(exact))
        });
        for ((i, hopeful, _), looked) in next.into_iter().zip(looked) {
            open[i].learn(hopeful, looked);
        }
    }
    open.into_iter().map(|stage| stage.worst).collect()
}

/// What one look at a moment gave.
enum Looked {
    /// A closer bound; none: `chatter` does not apply.
    Closer(Option<f64>),
    /// The utilisation with all modes; none: it is not above the worst known.
    Exact(Option<Finding>),
}

/// The moments of a stage that may be its worst, and the worst known.
struct Open<'a> {
    hopeful: Vec<Hopeful<'a>>,
    worst: Option<(Finding, &'a Look)>,
}

impl<'a> Open<'a> {
    fn share(&self) -> f64 {
        self.worst.map_or(0.0, |(found, _)| found.utilisation)
    }

    /// Whether a moment may still be worse than the worst known. The others are dropped.
    fn left(&mut self) -> bool {
        let share = self.share();
        self.hopeful.retain(|h| h.most > share);
        !self.hopeful.is_empty()
    }

    /// Takes out the moments with the largest upper bounds; of equals the first.
    fn next(&mut self, count: usize) -> Vec<Hopeful<'a>> {
        self.hopeful.sort_by(|a, b| b.most.total_cmp(&a.most).then(a.place.cmp(&b.place)));
        self.hopeful.drain(..count.min(self.hopeful.len())).collect()
    }

    fn learn(&mut self, hopeful: Hopeful<'a>, looked: Looked) {
        match looked {
            Looked::Closer(most) => self.hopeful.extend(most.map(|most| Hopeful { most, closer: true, ..hopeful })),
            Looked::Exact(Some(found)) if found.utilisation > self.share() => self.worst = Some((found, hopeful.look)),
            Looked::Exact(_) => {}
        }
    }
}

/// The looks to start with: the ends of every piece, its worst by the bound, and moments spread over the stage.
fn some(all: &Bounded<'_>) -> Vec<usize> {
    let mut places: Vec<usize> = (0..all.len()).step_by(all.len().div_ceil(CHATTER_MOMENTS).max(1)).collect();
    let mut from = 0;
    for piece in all.chunk_by(|a, b| a.1.piece == b.1.piece) {
        let to = from + piece.len() - 1;
        // The first of equals.
        let worst = (from..=to).reduce(|worst, i| if all[i].0 > all[worst].0 { i } else { worst });
        places.extend([from, to].into_iter().chain(worst));
        from = to + 1;
    }
    places.sort_unstable();
    places.dedup();
    places
}

/// Searches from the worst place known, each time halfway to both neighbours, until no place is left between. Returns
/// all places known then.
fn climbed(known: &BTreeMap<usize, f64>, about: impl Fn(usize) -> Option<f64>) -> BTreeMap<usize, f64> {
    let mut known = known.clone();
    while let Some((top, _)) = known.iter().reduce(|a, b| if b.1 > a.1 { b } else { a }) {
        let top = *top;
        let before = known.range(..top).next_back().map_or(top, |(i, _)| *i);
        let after = known.range(top + 1..).next().map_or(top, |(i, _)| *i);
        let between = [top - (top - before) / 2, top + (after - top) / 2];
        let new: Vec<usize> = between.into_iter().filter(|i| !known.contains_key(i)).collect();
        if new.is_empty() {
            break;
        }
        for i in new {
            // Where `chatter` does not apply, the place counts as 0.
            known.insert(i, about(i).unwrap_or(0.0));
        }
    }
    known
}

#[cfg(test)]
mod tests {
    use super::climbed;
    use std::cell::Cell;
    use std::collections::BTreeMap;

    #[test]
    fn a_top_between_two_known_places_is_found_in_a_few_looks() {
        let height = |i: usize| 100.0 - (i as f64 - 37.0).abs();
        let known = BTreeMap::from([0, 20, 30, 60, 99].map(|i| (i, height(i))));
        let looks = Cell::new(0);
        let all = climbed(&known, |i| {
            looks.set(looks.get() + 1);
            Some(height(i))
        });
        assert_eq!(all.get(&37), Some(&100.0));
        assert!(looks.get() <= 12, "{}", looks.get());
        assert_eq!(climbed(&BTreeMap::new(), |_| None), BTreeMap::new());
    }
}
