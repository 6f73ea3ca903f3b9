//! The network of the sequence program: nodes, arcs, and what never needs to enter.
//!
//! A node is a station where a stage may begin, together with the station of the last headstock re-grip. An arc is a
//! stage with its best grip and the re-grips made during it: none; at its start, sharing the stop with the hand-over; at
//! its end before the hand-over, where the front could not be let go otherwise; or inside, where stroke and
//! interrupts let it cost least, and there as late as they allow. Everything an arc costs is known, so the program is a pure flow.
//!
//! Only arcs that can lie on a plan within `bound` enter: a backward pass over times that cannot be beaten says how much
//! any node still costs at least, and states in doubt are worked out only where that leaves hope.

mod ahead;

use super::price::Price;
use super::runs::{Grips, Pair, Runs};
use super::settle::Ground;
use super::stations::Grid;
use super::wishes;
use crate::process::checks::PASSES_UP_TO;
use crate::process::pace::Pace;
use crate::process::stops::SAME_MM;
use std::cmp::Ordering;
use std::collections::HashMap;

/// Costs that differ by less are the same.
const SAME_COST: f64 = 1e-9;

/// One stage as an arc.
#[derive(Debug, Clone, Default)]
pub struct Arc {
    /// Index of the node it leaves.
    pub from: usize,
    /// Index of the node it enters.
    pub to: usize,
    /// What it adds to the objective.
    pub cost: Price,
    /// Grip index; the free index for the first stage.
    pub grip: usize,
    /// Stations of the re-grips inside or at the start of the stage.
    pub regrips: Vec<usize>,
    /// Whether the headstock re-grips at the end, before the hand-over.
    pub regrip_at_end: bool,
    /// Smallest margin.
    pub margin: f64,
}

/// A node: station, and station of the last re-grip.
pub type Node = (usize, usize);

/// Whether an arc to a node at a cost cannot lie on a plan within the bound.
type Out<'o> = dyn Fn(Node, Price) -> bool + 'o;

/// Nodes and arcs that can lie on a plan within a bound.
#[derive(Debug, Clone, Default)]
pub struct Network {
    /// The nodes; the first is the start.
    pub nodes: Vec<Node>,
    /// The arcs.
    pub arcs: Vec<Arc>,
    /// Cheapest way to each node, where there is one.
    pub reached: Vec<Price>,
    /// The node of the part-off, where it is reached.
    pub goal: Option<usize>,
}

/// What an objective adds to the seconds of a stage.
#[derive(Debug, Clone, Default)]
pub struct Weights {
    /// Whether hand-overs come first and time after.
    pub counts_hand_overs: bool,
    /// Whether the safest plan is sought, whatever it costs: of several grips the safest is taken then, not the fastest.
    pub safest: bool,
    /// Work on the rear end, that the first stage may hide.
    pub first: FirstStage,
}

/// What the first, free stage adds besides its cuts (see `process::pace`): work on the rear end of the part before that it
/// does not hide, and a share of the bar change. The default adds nothing.
#[derive(Debug, Clone, Default)]
pub struct FirstStage {
    pace: Option<Pace>,
    /// Tasks and tool changes of the stage where it ends at a station, s.
    besides_s: Vec<f64>,
}

impl Weights {
    /// What a hand-over costs that takes so long, s.
    pub fn hand_over(&self, takes_s: f64) -> Price {
        Price { hand_overs: if self.counts_hand_overs { 1.0 } else { 0.0 }, s: takes_s }
    }
}

impl FirstStage {
    /// For the works of a ground and its stations.
    pub fn new(ground: &Ground<'_>, grid: &Grid) -> FirstStage {
        let (rig, tasks) = (ground.rig, ground.tasks);
        let steps = rig.steps(ground.segments, tasks, ground.moments);
        let besides_s = (0..grid.len()).map(|k| rig.besides_s(&steps, tasks, grid.at(k))).collect();
        FirstStage { pace: Some(rig.pace()), besides_s }
    }

    /// What it adds when it ends at a station and its cuts take so long, s. Cuts and this together never fall as the cuts
    /// get longer, so a time that no grip beats stays one.
    pub fn beyond_s(&self, station: usize, run_s: f64) -> f64 {
        self.pace.map_or(0.0, |pace| pace.beyond_s(run_s + self.besides_s[station]))
    }
}

/// A way to make the re-grips of a stage: where, what they cost, and whether they need the stage to end beyond them.
struct Pattern {
    regrips: Vec<usize>,
    cost_s: f64,
}

/// A stage from a station to another as far as it does not depend on the last re-grip.
struct Onward {
    j: usize,
    fed_to_mm: f64,
    /// Least cost of a stage without a re-grip inside, with what the first adds.
    run: Price,
    /// No plan through it costs less from here on.
    hope: Price,
    pair: Pair,
}

/// Builds networks over the runs of one collet.
pub struct Builder<'a> {
    runs: &'a Runs<'a>,
    grid: &'a Grid,
    weights: Weights,
    regrip_s: f64,
    shared_s: f64,
    hand_over_s: f64,
    stroke_mm: f64,
    /// Least cost from a node to the part-off, as far as known without working out states in doubt.
    least: Vec<Vec<Price>>,
    /// The least of each row.
    least_at: Vec<Price>,
    /// What a re-grip inside at a station costs besides itself: its line, and the overhead of a travel cut in two, s.
    split_s: Vec<f64>,
    /// Places for the next re-grip after one at each station, the latest first.
    late: Vec<Vec<usize>>,
}

impl<'a> Builder<'a> {
    /// A builder; works out what every node costs at least.
    pub fn new(runs: &'a Runs<'a>, weights: Weights) -> Builder<'a> {
        let machine = &runs.looker.rig.job.machine;
        let regrip_s = machine.headstock.regrip_s;
        let hand_over_s = machine.hand_over_s();
        let mut builder = Builder {
            runs,
            grid: runs.looker.grid,
            weights,
            regrip_s,
            shared_s: machine.shared_regrip_s(),
            hand_over_s,
            stroke_mm: machine.headstock.stroke_mm,
            least: vec![Vec::new(); runs.looker.grid.len()],
            least_at: vec![Price::NO_WAY; runs.looker.grid.len()],
            split_s: Vec::new(),
            late: Vec::new(),
        };
        builder.split_s = (0..builder.grid.len()).map(|m| builder.split_s(m)).collect();
        builder.late = (0..builder.grid.len()).map(|last| builder.late(last, builder.grid.len())).collect();
        builder.look_back();
        builder
    }

    /// Least cost of any plan, as far as known; not finite when there is surely none.
    pub fn least(&self) -> Price {
        self.least_of((0, 0))
    }

    fn look_back(&mut self) {
        let last = self.grid.last();
        self.least_at[last] = Price::default();
        for i in (0..last).rev().filter(|i| self.grid.borders(*i)) {
            crate::spread::breathe();
            let regrips: Vec<usize> = match i {
                0 => vec![0],
                _ => (0..=i)
                    .filter(|l| self.grid.borders(*l) && self.grid.at(i) - self.grid.at(*l) <= self.stroke_mm + SAME_MM)
                    .collect(),
            };
            let mut stages: Vec<Onward> = self.runs.from(i).map(|(j, pair)| self.onward(i, j, pair)).collect();
            stages.sort_by(|a, b| a.hope.partial_cmp(&b.hope).unwrap_or(Ordering::Equal));
            // A stage that begins with a re-grip costs the same wherever the last one was.
            let own = if i > 0 { self.least_stage(i, i, &stages, Price::NO_WAY) } else { Price::NO_WAY };
            let shared = own.plus_s(self.shared_s);
            let mut row = vec![Price::NO_WAY; i + 1];
            for l in regrips {
                row[l] = if l == i && i > 0 { own } else { self.least_stage(i, l, &stages, shared) };
            }
            self.least_at[i] = row.iter().copied().fold(Price::NO_WAY, Price::min);
            self.least[i] = row;
        }
    }

    fn onward(&self, i: usize, j: usize, pair: &Pair) -> Onward {
        let plain = Pattern { regrips: Vec::new(), cost_s: 0.0 };
        let cut_s = self.least_run_s(i, j, pair, &plain);
        let stage = self.stage(i, j);
        let run = stage.plus_s(cut_s + self.first_s(i, j, cut_s));
        let hope = stage.plus_s(self.runs.full_s(i, j)).min(run) + self.least_at[j];
        Onward { j, fed_to_mm: self.grid.fed_to(j), run, hope, pair: *pair }
    }

    /// Least cost from station `i` to the part-off when the next stage begins with the last re-grip at `l`, where it is below `known`;
    /// else that.
    fn least_stage(&self, i: usize, l: usize, stages: &[Onward], known: Price) -> Price {
        let mut best = known;
        let reach = self.grid.at(l) + self.stroke_mm + SAME_MM;
        let mut patterns = Vec::new();
        for on in stages {
            // The most hopeful come first.
            if on.hope > best.plus_s(1e-6) {
                break;
            }
            if on.fed_to_mm <= reach {
                for (end, extra) in self.ends(on.j, l, i).into_iter().flatten() {
                    best = best.min(on.run.plus_s(extra) + self.least_from(end));
                }
                continue;
            }
            // Nothing holds the front at first, so the headstock may not open; later a re-grip inside costs at least itself.
            if i == 0 || on.hope.plus_s(self.regrip_s) > best.plus_s(1e-6) {
                continue;
            }
            self.late_regrips(i, on.j, l, Pattern { regrips: Vec::new(), cost_s: 0.0 }, &mut patterns);
            for pattern in patterns.drain(..) {
                let stage = self.stage(i, on.j).plus_s(pattern.cost_s + self.least_run_s(i, on.j, &on.pair, &pattern));
                for (end, extra) in self.ends(on.j, *pattern.regrips.last().unwrap_or(&l), i).into_iter().flatten() {
                    best = best.min(stage.plus_s(extra) + self.least_from(end));
                }
            }
        }
        best
    }

    fn least_of(&self, (i, l): Node) -> Price {
        self.least[i].get(l).copied().unwrap_or(Price::NO_WAY)
    }

    /// What a re-grip inside a stage costs at a station besides itself, s.
    fn split_s(&self, m: usize) -> f64 {
        if m == 0 || m >= self.grid.last() {
            return 0.0;
        }
        let full = |i, j| self.runs.full_s(i, j);
        self.grid.stations[m].penalty_s + (full(m - 1, m) + full(m, m + 1) - full(m - 1, m + 1)).max(0.0)
    }

    fn least_from(&self, node: Node) -> Price {
        if node.0 == self.grid.last() { Price::default() } else { self.least_of(node) }
    }

    /// Nodes a stage that ends at `j` may lead to, with what the re-grip at the end costs.
    fn ends(&self, j: usize, regrip: usize, i: usize) -> [Option<(Node, f64)>; 2] {
        if j == self.grid.last() {
            // One node for the part-off, wherever the last re-grip was.
            return [Some(((j, 0), 0.0)), None];
        }
        [Some(((j, regrip), 0.0)), (i > 0).then_some(((j, j), self.shared_s))]
    }

    /// What a stage costs besides its run and re-grips: the hand-over it begins with, and the line its end leaves.
    fn stage(&self, i: usize, j: usize) -> Price {
        let line_s = if j < self.grid.last() { self.grid.stations[j].penalty_s } else { 0.0 };
        let takes_hold = if i > 0 { self.weights.hand_over(self.hand_over_s) } else { Price::default() };
        takes_hold.plus_s(line_s)
    }

    /// What the first stage adds besides its cuts; nothing for the others.
    fn first_s(&self, i: usize, j: usize, run_s: f64) -> f64 {
        if i == 0 { self.weights.first.beyond_s(j, run_s) } else { 0.0 }
    }

    /// A time no grip beats. Stops inside a run that must slow down may let its parts run faster, so there the time at
    /// full speed stands.
    fn least_run_s(&self, i: usize, j: usize, pair: &Pair, pattern: &Pattern) -> f64 {
        let full = self.full_s(i, j, pattern);
        if pair.sure || self.inner(i, pattern).next().is_some() { full } else { pair.doubtful_s }
    }

    fn inner<'p>(&self, i: usize, pattern: &'p Pattern) -> impl Iterator<Item = usize> + 'p {
        pattern.regrips.iter().copied().filter(move |m| *m != i)
    }

    /// Full-speed time of a stage with its inner stops, s.
    fn full_s(&self, i: usize, j: usize, pattern: &Pattern) -> f64 {
        let mut from = i;
        let mut sum = 0.0;
        for m in self.inner(i, pattern) {
            sum += self.runs.full_s(from, m);
            from = m;
        }
        sum + self.runs.full_s(from, j)
    }

    /// The ways to make the re-grips of a stage from a node to station `j`.
    fn patterns(&self, (i, l): Node, j: usize) -> Vec<Pattern> {
        let mut patterns = Vec::new();
        if i == 0 {
            // Nothing holds the front yet, so the headstock may not open.
            if self.grid.fed_to(j) <= self.stroke_mm + SAME_MM {
                patterns.push(Pattern { regrips: Vec::new(), cost_s: 0.0 });
            }
            return patterns;
        }
        let starts = [(l, Vec::new(), 0.0), (i, vec![i], self.shared_s)];
        for (first, regrips, cost_s) in starts.into_iter().take(if l == i { 1 } else { 2 }) {
            self.late_regrips(i, j, first, Pattern { regrips, cost_s }, &mut patterns);
        }
        patterns
    }

    /// Adds re-grips inside, each as late as the stroke allows, until the stroke reaches `j`.
    fn late_regrips(&self, i: usize, j: usize, last: usize, so_far: Pattern, all: &mut Vec<Pattern>) {
        let reach = self.grid.at(last) + self.stroke_mm + SAME_MM;
        if self.grid.fed_to(j) <= reach {
            all.push(so_far);
            return;
        }
        // Bar fed on behind the end may ask for more than the end itself, so that a place may lie behind it.
        let own = if self.grid.at(j) <= reach { Some(self.late(last, j)) } else { None };
        for m in own.as_deref().unwrap_or(&self.late[last]).iter().copied().take_while(|m| *m > i) {
            let mut regrips = so_far.regrips.clone();
            regrips.push(m);
            let cost_s = so_far.cost_s + self.regrip_s + self.grid.stations[m].penalty_s;
            self.late_regrips(i, j, m, Pattern { regrips, cost_s }, all);
        }
    }

    /// Places for the next re-grip after one at a station and before another, as far as the stroke reaches: the latest, then earlier ones
    /// only where they cost less: a line on a surface, or the overhead of a travel cut in two.
    fn late(&self, last: usize, before: usize) -> Vec<usize> {
        let reach = self.grid.at(last) + self.stroke_mm + SAME_MM;
        let within = self.grid.stations.partition_point(|s| s.turned_mm <= reach).min(before);
        let (mut cheapest, mut places) = (f64::INFINITY, Vec::new());
        for m in (last + 1..within).rev() {
            let costs_s = self.split_s[m];
            if !self.grid.stations[m].stop.allowed() || costs_s >= cheapest - 1e-9 {
                continue;
            }
            cheapest = costs_s;
            places.push(m);
            if costs_s <= 1e-9 {
                break;
            }
        }
        places
    }

    /// The network of all plans that cost at most `bound`.
    pub fn within(&self, bound: Price) -> Network {
        if bound.is_finite() {
            self.look_ahead(bound);
        }
        let stages = |from, node, j, pattern: &Pattern, out: &Out<'_>| self.stages(from, node, j, pattern, out);
        self.grown(bound, |node| self.least_from(node), |j| self.least_at[j], stages).0
    }

    /// Grows the network from the start; `ahead` is what a node still costs at least, and `stages` gives the arcs of one pattern from a node,
    /// but for those that are out to their end at a cost.
    fn grown(
        &self,
        bound: Price,
        ahead: impl Fn(Node) -> Price,
        least_at: impl Fn(usize) -> Price,
        stages: impl Fn(usize, Node, usize, &Pattern, &Out<'_>) -> Vec<(Node, Arc)>,
    ) -> (Network, Vec<usize>) {
        // With no bound at all, places that surely lead nowhere still stay out.
        let hopeless = |cost: Price| cost > bound || !cost.is_finite();
        let mut net = Network { nodes: vec![(0, 0)], reached: vec![Price::default()], ..Network::default() };
        let mut index: HashMap<Node, usize> = HashMap::from([((0, 0), 0)]);
        let mut at_station: Vec<Vec<usize>> = vec![Vec::new(); self.grid.len()];
        at_station[0].push(0);
        for i in 0..self.grid.last() {
            for from in std::mem::take(&mut at_station[i]) {
                crate::spread::breathe();
                let (node, reached) = (net.nodes[from], net.reached[from]);
                if hopeless(reached + ahead(node)) {
                    continue;
                }
                for (j, pair) in self.runs.from(i) {
                    // No way to make the re-grips is cheaper than to have none.
                    let stage = reached + self.stage(i, j);
                    if stage.plus_s(self.runs.full_s(i, j)) + least_at(j) > bound.plus_s(1e-6) {
                        continue;
                    }
                    for pattern in self.patterns(node, j) {
                        let regrip = *pattern.regrips.last().unwrap_or(&node.1);
                        let hope = self.ends(j, regrip, i).into_iter().flatten().map(|(end, s)| ahead(end).plus_s(s));
                        let hope = hope.fold(Price::NO_WAY, Price::min);
                        let run_s = self.least_run_s(i, j, pair, &pattern);
                        if hopeless(stage.plus_s(pattern.cost_s + run_s + self.first_s(i, j, run_s)) + hope) {
                            continue;
                        }
                        let out = |end: Node, cost: Price| hopeless(reached + cost + ahead(end));
                        for (end, arc) in stages(from, node, j, &pattern, &out) {
                            if out(end, arc.cost) {
                                continue;
                            }
                            let to = *index.entry(end).or_insert_with(|| {
                                net.nodes.push(end);
                                net.reached.push(Price::NO_WAY);
                                at_station[end.0].push(net.nodes.len() - 1);
                                net.nodes.len() - 1
                            });
                            net.reached[to] = net.reached[to].min(reached + arc.cost);
                            net.arcs.push(Arc { to, ..arc });
                        }
                    }
                }
            }
        }
        net.goal = index.get(&(self.grid.last(), 0)).copied();
        let most = self.runs.looker.rig.job.wishes.at_most_hand_overs;
        // Next to a bush every stage but the first begins with a hand-over.
        wishes::layered(net, most, |(station, _), _| station > 0)
    }

    /// Everything the start can reach, whether or not it leads to the part-off, with the hand-overs made up to each node
    /// where their number is bounded.
    pub fn within_reach(&self) -> (Network, Vec<usize>) {
        let stages = |from, node, j, pattern: &Pattern, out: &Out<'_>| self.stages(from, node, j, pattern, out);
        self.grown(Price::NO_WAY, |_| Price::default(), |_| Price::default(), stages)
    }

    /// The arcs of one pattern: with the sure grip where there is one, else with the best of the doubtful ones. States in doubt are not worked
    /// out for a grip that cannot be the best, nor for an arc that is `out` to its node at a cost.
    fn stages(&self, from: usize, (i, l): Node, j: usize, pattern: &Pattern, out: &Out<'_>) -> Vec<(Node, Arc)> {
        let base = self.stage(i, j).plus_s(pattern.cost_s);
        let regrip = *pattern.regrips.last().unwrap_or(&l);
        let arc = |run_s: f64, extra_s: f64, grip: usize, margin: f64, at_end: bool| Arc {
            from,
            to: usize::MAX,
            cost: base.plus_s(run_s + self.first_s(i, j, run_s) + extra_s),
            grip,
            regrips: pattern.regrips.clone(),
            regrip_at_end: at_end,
            margin,
        };
        let plain_end = if j == self.grid.last() { (j, 0) } else { (j, regrip) };
        let grips = self.runs.grips(i, j);
        let doubtful = match &*grips {
            Grips::Sure(grip, margin) => {
                let whole = arc(self.full_s(i, j, pattern), 0.0, *grip, *margin, false);
                return vec![(plain_end, whole)];
            }
            Grips::Doubtful(grips) => grips,
        };
        // Best by time for each way to end: letting go as the headstock stands, or after a re-grip there.
        let mut best: [Option<(Node, Arc)>; 2] = [None, None];
        let stops_inside = self.inner(i, pattern).next().is_some();
        for (least_s, grip) in doubtful.iter().copied() {
            let share =
                |regrip| if j == self.grid.last() { 0.0 } else { self.runs.looker.release(grip, j, Some(regrip))[1] };
            let now = share(regrip);
            let (slot, end, extra_s, release) = if now <= PASSES_UP_TO {
                (0, plain_end, 0.0, now)
            } else if i > 0 && share(j) <= PASSES_UP_TO {
                (1, (j, j), self.shared_s, share(j))
            } else {
                continue;
            };
            // Parts of a run that is stopped inside may run faster than the whole.
            let least_s = if stops_inside { self.full_s(i, j, pattern) } else { least_s };
            let least = arc(least_s, extra_s, grip, f64::INFINITY, slot == 1).cost;
            let beaten = |a: &(Node, Arc)| !self.weights.safest && a.1.cost.plus_s(SAME_COST) < least;
            if best[slot].as_ref().is_some_and(beaten) || out(end, least) {
                continue;
            }
            let Some((run_s, margin)) = self.exact_stage((i, l), j, grip, pattern) else { continue };
            let new = arc(run_s, extra_s, grip, margin.min(1.0 - release), slot == 1);
            let better = best[slot].as_ref().is_none_or(|(_, old)| {
                let (faster, slower) = (new.cost.plus_s(SAME_COST) < old.cost, old.cost.plus_s(SAME_COST) < new.cost);
                let (safer, less_safe) = (new.margin > old.margin, new.margin < old.margin);
                let by_number = grip < old.grip;
                match self.weights.safest {
                    true => safer || !less_safe && (faster || !slower && by_number),
                    false => faster || !slower && (safer || !less_safe && by_number),
                }
            });
            if better {
                best[slot] = Some((end, new));
            }
        }
        best.into_iter().flatten().collect()
    }

    /// Time and margin of a stage with its re-grips for the very places of the headstock.
    fn exact_stage(&self, (i, l): Node, j: usize, grip: usize, pattern: &Pattern) -> Option<(f64, f64)> {
        let mut regrip = if pattern.regrips.first() == Some(&i) { i } else { l };
        let mut from = i;
        let (mut sum, mut margin) = (0.0, f64::INFINITY);
        for stop in self.inner(i, pattern).chain([j]) {
            let (run_s, run_margin) = self.runs.exact(from, stop, grip, regrip)?;
            sum += run_s;
            margin = margin.min(run_margin);
            (from, regrip) = (stop, stop);
        }
        if j == self.grid.last() {
            margin = margin.min(1.0 - self.runs.looker.last_grip(grip));
        }
        Some((sum, margin))
    }
}
