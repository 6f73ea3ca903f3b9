//! What every node still costs at least on its way to the part-off, by a pass from there to the start over times that cannot be beaten.

use super::{Builder, Node};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Pair;
use std::cmp::Ordering;
use std::collections::BTreeMap;

/// Bounds on hand-overs up to this many have a pass of their own for each number left; a larger number left counts as any.
const LAYERS: usize = 6;

/// What nodes still cost at least, with some number of hand-overs left.
pub(super) struct Back {
    /// By station, and by the station of the last re-grip.
    least: Vec<Vec<Price>>,
    /// The least of each station.
    pub(super) least_at: Vec<Price>,
}

/// The last re-grip inside a stage, after the least that those before it and the runs up to it take.
struct Inside {
    at: usize,
    so_far_s: f64,
    /// How far the stroke reaches after it, and how far it did before, mm: between them the stage ends.
    reach_mm: f64,
    beyond_mm: f64,
}

/// A stage from a station to another as far as it does not depend on the last re-grip.
struct Onward {
    j: usize,
    fed_to_mm: f64,
    /// Least cost of a stage without a re-grip inside, with what the first adds.
    run: Price,
    /// No plan through it costs less from here on.
    hope: Price,
}

impl Back {
    /// Least cost from a node.
    pub(super) fn of(&self, (i, l): Node) -> Price {
        self.least[i].get(l).copied().unwrap_or(Price::NO_WAY)
    }

    /// The same; nothing from the part-off, wherever the last re-grip was.
    pub(super) fn from(&self, node: Node) -> Price {
        if node.0 + 1 == self.least.len() { Price::default() } else { self.of(node) }
    }
}

impl Builder<'_> {
    /// The passes for all numbers of hand-overs that may be left.
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

    /// The pass that holds for a number of hand-overs made already.
    pub(super) fn back(&self, made: usize) -> &Back {
        let left = self.most.map_or(0, |most| most.saturating_sub(made));
        &self.passes[left.min(self.passes.len() - 1)]
    }

    /// One pass: `fewer` is that with one hand-over less left; none: there is none less, or with `any`, they do not count.
    fn pass(&self, fewer: Option<&Back>, any: bool) -> Back {
        let last = self.grid.last();
        let mut own = Back { least: vec![Vec::new(); self.grid.len()], least_at: vec![Price::NO_WAY; self.grid.len()] };
        own.least_at[last] = Price::default();
        for i in (0..last).rev().filter(|i| self.grid.borders(*i)) {
            crate::spread::checkpoint();
            // Every stage but the first takes a hand-over.
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
            // A stage that begins with a re-grip costs the same wherever the last one was.
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
        Onward { j, fed_to_mm: self.grid.fed_to(j), run, hope }
    }

    /// Least cost from station `i` to the part-off when the next stage begins with the last re-grip at `l`, where it is below `known`;
    /// else that.
    fn least_stage(&self, i: usize, l: usize, stages: &[Onward], known: Price, onward: &Back) -> Price {
        let mut best = known;
        let reach = self.reach_mm(l);
        let mut inside: Option<Vec<Inside>> = None;
        for on in stages {
            // The most hopeful come first.
            if on.hope > best.plus_s(1e-6) {
                break;
            }
            if on.fed_to_mm <= reach {
                for (end, extra) in self.ends(on.j, l, i).into_iter().flatten() {
                    best = best.min(on.run.plus_s(extra) + onward.from(end));
                }
                continue;
            }
            // Nothing holds the front at first, so the headstock may not open; later a re-grip inside costs at least itself.
            if i == 0 || on.hope.plus_s(self.regrip_s) > best.plus_s(1e-6) {
                continue;
            }
            let stage = self.stage(i, on.j);
            let inside = inside.get_or_insert_with(|| self.inside(i, l));
            for last in inside.iter().filter(|m| m.beyond_mm < on.fed_to_mm && on.fed_to_mm <= m.reach_mm) {
                // Stops inside a run that must slow down may let its parts run faster, so there the time at full speed stands.
                let stage = stage.plus_s(last.so_far_s + self.runs.full_s(last.at, on.j));
                for (end, extra) in self.ends(on.j, last.at, i).into_iter().flatten() {
                    best = best.min(stage.plus_s(extra) + onward.from(end));
                }
            }
        }
        best
    }

    /// All places for the last re-grip inside a stage from a station when the one before the stage was at `l`, in the order of their way
    /// there. Each is as late as the stroke allows, or earlier where that costs less.
    fn inside(&self, i: usize, l: usize) -> Vec<Inside> {
        let mut found = Vec::new();
        // Least seconds up to each re-grip; all that lead there lie before it, and come first.
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
