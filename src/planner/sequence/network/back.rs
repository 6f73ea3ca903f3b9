//! Lower bounds on the cost from every node to the part-off: one backward pass over lower bounds on the times of the
//! stages.

use super::{Builder, Node};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Pair;
use std::cmp::Ordering;
use std::collections::BTreeMap;

/// With fewer hand-overs left than this, each number left has its own pass. Larger numbers count as any number.
const LAYERS: usize = 6;

/// Lower bounds on the cost from each node to the part-off, for some number of hand-overs left.
pub(super) struct Back {
    /// By station, and by the station of the last re-grip.
    least: Vec<Vec<Price>>,
    /// The least of all nodes of each station.
    pub(super) least_at: Vec<Price>,
}

/// A station for the last re-grip inside a stage.
struct Inside {
    at: usize,
    so_far_s: f64,
    /// Turned length up to which the stroke reaches after this re-grip, and up to which it reached before, mm. The
    /// stage ends between the two.
    reach_mm: f64,
    beyond_mm: f64,
}

/// The part of a stage's cost that does not depend on the last re-grip.
struct Onward {
    j: usize,
    fed_to_mm: f64,
    /// Lower bound on the cost of the stage without a re-grip inside.
    run: Price,
    /// Lower bound on the cost from the start of this stage to the part-off.
    hope: Price,
}

impl Back {
    /// Lower bound from a node.
    pub(super) fn of(&self, (i, l): Node) -> Price {
        self.least[i].get(l).copied().unwrap_or(Price::NO_WAY)
    }

    /// Lower bound from a node. From the part-off it is 0, wherever the last re-grip was.
    pub(super) fn from(&self, node: Node) -> Price {
        if node.0 + 1 == self.least.len() { Price::default() } else { self.of(node) }
    }
}

impl Builder<'_> {
    /// One pass for each number of hand-overs that may be left.
    pub(super) fn look_back(&self) -> Vec<Back> {
        let Some(most) = self.most else { return vec![self.pass(None, true)] };
        let mut passes: Vec<Back> = Vec::new();
        for _ in 0..=most.min(LAYERS - 1) {
            passes.push(self.pass(passes.last(), false));
        }
        if most >= LAYERS {
            passes.push(self.pass(None, true));
        }
        passes
    }

    /// The pass for the hand-overs left after `made` hand-overs.
    pub(super) fn back(&self, made: usize) -> &Back {
        let left = self.most.map_or(0, |most| most.saturating_sub(made));
        &self.passes[left.min(self.passes.len() - 1)]
    }

    /// One pass. `fewer` is the pass with one hand-over less left; none: no hand-over is left. With `any`, hand-overs
    /// are not counted.
    fn pass(&self, fewer: Option<&Back>, any: bool) -> Back {
        let last = self.grid.last();
        let mut own = Back { least: vec![Vec::new(); self.grid.len()], least_at: vec![Price::NO_WAY; self.grid.len()] };
        own.least_at[last] = Price::default();
        for i in (0..last).rev().filter(|i| self.grid.borders(*i)) {
            crate::spread::checkpoint();
            // Every stage but the first begins with a hand-over.
            let onward = match (i, any, fewer) {
                (0, _, _) | (_, true, _) => &own,
                (_, false, Some(fewer)) => fewer,
                (_, false, None) => continue,
            };
            let regrips: Vec<usize> = match i {
                0 => vec![0],
                _ => (0..=i).filter(|l| self.grid.borders(*l) && self.grid.at(i) <= self.reach_mm(*l)).collect(),
            };
            let mut stages: Vec<Onward> =
                self.runs.from(i).map(|(j, pair)| self.onward(i, j, pair, onward.least_at[j])).collect();
            stages.retain(|on| on.hope.is_finite());
            if stages.is_empty() {
                continue;
            }
            stages.sort_by(|a, b| a.hope.partial_cmp(&b.hope).unwrap_or(Ordering::Equal));
            // With a re-grip at its start, the cost of a stage does not depend on the re-grip before.
            let begun = if i > 0 { self.least_stage(i, i, &stages, Price::NO_WAY, onward) } else { Price::NO_WAY };
            let shared = begun.plus_s(self.shared_s);
            let mut row = vec![Price::NO_WAY; i + 1];
            for l in regrips {
                row[l] = if l == i && i > 0 { begun } else { self.least_stage(i, l, &stages, shared, onward) };
            }
            own.least_at[i] = row.iter().copied().fold(Price::NO_WAY, Price::min);
            own.least[i] = row;
        }
        own
    }

    fn onward(&self, i: usize, j: usize, pair: &Pair, beyond: Price) -> Onward {
        let full_s = self.runs.full_s(i, j);
        let cut_s = if pair.sure { full_s } else { pair.doubtful_s };
        let stage = self.stage(i, j);
        let run = stage.plus_s(cut_s + self.first_s(i, j, cut_s));
        let hope = stage.plus_s(full_s).min(run) + beyond;
        Onward { j, fed_to_mm: self.grid.carried_to(j), run, hope }
    }

    /// Lower bound from station `i` to the part-off when the last re-grip was at `l`; `known` where the bound is not
    /// below it.
    fn least_stage(&self, i: usize, l: usize, stages: &[Onward], known: Price, onward: &Back) -> Price {
        let mut best = known;
        let reach = self.reach_mm(l);
        let mut inside: Option<Vec<Inside>> = None;
        for on in stages {
            // Stages are sorted by `hope`, so no later one is cheaper.
            if on.hope > best.plus_s(1e-6) {
                break;
            }
            if on.fed_to_mm <= reach {
                for (end, extra) in self.ends(on.j, l, i).into_iter().flatten() {
                    best = best.min(on.run.plus_s(extra) + onward.from(end));
                }
                continue;
            }
            // In the first stage nothing holds the front, so the headstock may not open. In later stages a re-grip
            // inside costs at least its own time.
            if i == 0 || on.hope.plus_s(self.regrip_s) > best.plus_s(1e-6) {
                continue;
            }
            let stage = self.stage(i, on.j);
            let inside = inside.get_or_insert_with(|| self.inside(i, l));
            for last in inside.iter().filter(|m| m.beyond_mm < on.fed_to_mm && on.fed_to_mm <= m.reach_mm) {
                // A run that must slow down may go faster in parts when it stops inside, so the bound is the time at
                // full speed.
                let stage = stage.plus_s(last.so_far_s + self.runs.full_s(last.at, on.j));
                for (end, extra) in self.ends(on.j, last.at, i).into_iter().flatten() {
                    best = best.min(stage.plus_s(extra) + onward.from(end));
                }
            }
        }
        best
    }

    /// All stations for the last re-grip inside a stage from station `i`, when the re-grip before the stage was at `l`.
    /// One station may occur several times, for the re-grips that lead to it. The re-grips are as late as the stroke
    /// allows, or earlier where that costs less.
    fn inside(&self, i: usize, l: usize) -> Vec<Inside> {
        let mut found = Vec::new();
        // Least seconds up to each re-grip. All re-grips that lead to one lie before it, so they are taken out first.
        let mut up_to = BTreeMap::from([(l, 0.0)]);
        while let Some((before, so_far_s)) = up_to.pop_first() {
            let run_from = before.max(i);
            for m in self.late[before].iter().copied().take_while(|m| *m > i) {
                let costs_s = self.runs.full_s(run_from, m) + self.regrip_s + self.grid.stations[m].penalty_s;
                let so_far_s = so_far_s + costs_s;
                found.push(Inside { at: m, so_far_s, reach_mm: self.reach_mm(m), beyond_mm: self.reach_mm(before) });
                up_to.entry(m).and_modify(|s: &mut f64| *s = s.min(so_far_s)).or_insert(so_far_s);
            }
        }
        found
    }
}
