//! The network of the sequence program: nodes, edges, and what never needs to enter.
//!
//! A node is a station where a stage may begin, together with the station of the last headstock re-grip. An edge is a
//! stage with its best grip and the re-grips made during it: none; at its start, sharing the stop with the hand-over; at
//! its end before the hand-over, where the front could not be let go otherwise; or inside, where stroke and
//! interrupts let it cost least, and there as late as they allow. Everything an edge costs is known, so the program is a pure flow.
//!
//! Only edges that can lie on a plan within `bound` enter: a backward pass over times that cannot be beaten says how much
//! any node still costs at least, and states in doubt are worked out only where that leaves hope.

mod ahead;
mod back;
mod cheapest;
mod weights;

use crate::planner::places::stations::Grid;
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::{Grips, Pair, Runs};
use crate::process::checks::PASSES_UP_TO;
use crate::process::stops::SAME_MM;
use back::Back;
use std::collections::HashMap;
pub use weights::{FirstStage, Weights};

/// Costs that differ by less are the same.
const SAME_COST: f64 = 1e-9;

/// One stage as an edge.
#[derive(Debug, Clone, Default)]
pub struct Edge {
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

/// Whether an edge to a node at a cost cannot lie on a plan within the bound.
type Out<'o> = dyn Fn(Node, Price) -> bool + 'o;

/// Nodes and edges that can lie on a plan within a bound.
#[derive(Debug, Clone, Default)]
pub struct Network {
    /// The nodes; the first is the start.
    pub nodes: Vec<Node>,
    /// The edges.
    pub edges: Vec<Edge>,
    /// Cheapest way to each node, where there is one.
    pub reached: Vec<Price>,
    /// The node of the part-off, where it is reached.
    pub goal: Option<usize>,
}

/// A way to make the re-grips of a stage: where, what they cost, and whether they need the stage to end beyond them.
struct Pattern {
    regrips: Vec<usize>,
    cost_s: f64,
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
    /// The most hand-overs wished, where that is bounded.
    most: Option<usize>,
    /// What nodes still cost, by hand-overs left; the last holds for any number.
    passes: Vec<Back>,
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
            most: runs.looker.rig.job.wishes.at_most_hand_overs,
            passes: Vec::new(),
            split_s: Vec::new(),
            late: Vec::new(),
        };
        builder.split_s = (0..builder.grid.len()).map(|m| builder.split_s(m)).collect();
        builder.late = (0..builder.grid.len()).map(|last| builder.late(last)).collect();
        builder.passes = builder.look_back();
        builder
    }

    /// Least cost of any plan, as far as known; not finite when there is surely none.
    pub fn least(&self) -> Price {
        self.back(0).of((0, 0))
    }

    /// What a re-grip inside a stage costs at a station besides itself, s.
    fn split_s(&self, m: usize) -> f64 {
        if m == 0 || m >= self.grid.last() {
            return 0.0;
        }
        let full = |i, j| self.runs.full_s(i, j);
        self.grid.stations[m].penalty_s + (full(m - 1, m) + full(m, m + 1) - full(m - 1, m + 1)).max(0.0)
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
        if self.grid.fed_to(j) <= self.reach_mm(last) {
            all.push(so_far);
            return;
        }
        for m in self.late[last].iter().copied().take_while(|m| *m > i) {
            let mut regrips = so_far.regrips.clone();
            regrips.push(m);
            let cost_s = so_far.cost_s + self.regrip_s + self.grid.stations[m].penalty_s;
            self.late_regrips(i, j, m, Pattern { regrips, cost_s }, all);
        }
    }

    /// How far the stroke lets the bar go after a re-grip at a station, mm.
    fn reach_mm(&self, regrip: usize) -> f64 {
        self.grid.at(regrip) + self.stroke_mm + SAME_MM
    }

    /// Places for the next re-grip after one at a station, as far as the stroke reaches: the latest, then earlier ones only where they cost
    /// less: a line on a surface, or the overhead of a travel cut in two. None at the part-off, for which bar may be fed on beyond it.
    fn late(&self, last: usize) -> Vec<usize> {
        let reach = self.reach_mm(last);
        let within = self.grid.stations.partition_point(|s| s.turned_mm <= reach).min(self.grid.last());
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
        self.grown(bound, stages)
    }

    /// Layer of the nodes at a station after so many hand-overs: one for the part-off, and where they are not bounded for all.
    fn layer(&self, station: usize, hand_overs: usize) -> usize {
        if self.most.is_none() || station == self.grid.last() { 0 } else { hand_overs }
    }

    /// Hand-overs made after the next stage from a station, for every stage but the first begins with one; none: no more are wished.
    fn takes(&self, station: usize, made: usize) -> Option<usize> {
        let takes = made + usize::from(station > 0);
        self.most.is_none_or(|most| takes <= most).then_some(takes)
    }

    /// The ends and patterns of stages that a node may be left by, each with the least that it takes, and that it and all behind it take; but
    /// for those that leave no hope.
    fn hopeful(
        &self,
        node: Node,
        onward: &Back,
        hopeless: impl Fn(Price) -> bool,
        mut each: impl FnMut(usize, Pattern, Price, Price),
    ) {
        let i = node.0;
        for (j, pair) in self.runs.from(i) {
            // No way to make the re-grips is cheaper than to have none.
            let stage = self.stage(i, j);
            if hopeless((stage.plus_s(self.runs.full_s(i, j)) + onward.least_at[j]).plus_s(-1e-6)) {
                continue;
            }
            for pattern in self.patterns(node, j) {
                let regrip = *pattern.regrips.last().unwrap_or(&node.1);
                let ends = self.ends(j, regrip, i).into_iter().flatten();
                let beyond = ends.map(|(end, s)| onward.from(end).plus_s(s)).fold(Price::NO_WAY, Price::min);
                let run_s = self.least_run_s(i, j, pair, &pattern);
                let run = stage.plus_s(pattern.cost_s + run_s + self.first_s(i, j, run_s));
                let least = run + beyond;
                if !hopeless(least) {
                    each(j, pattern, run, least);
                }
            }
        }
    }

    /// Grows the network from the start, with a layer of nodes for each number of hand-overs made where that is bounded: a
    /// bound is no matter of an edge. `stages` gives the edges of one pattern from a node, but for those that are out to their end at a cost.
    fn grown(
        &self,
        bound: Price,
        stages: impl Fn(usize, Node, usize, &Pattern, &Out<'_>) -> Vec<(Node, Edge)>,
    ) -> Network {
        // With no bound at all, places that surely lead nowhere still stay out.
        let hopeless = |cost: Price| cost > bound || !cost.is_finite();
        let last = self.grid.last();
        let mut net = Network { nodes: vec![(0, 0)], reached: vec![Price::default()], ..Network::default() };
        let mut made: Vec<usize> = vec![0];
        let mut index: HashMap<(Node, usize), usize> = HashMap::from([(((0, 0), 0), 0)]);
        let mut at_station: Vec<Vec<usize>> = vec![Vec::new(); self.grid.len()];
        at_station[0].push(0);
        for i in 0..last {
            for from in std::mem::take(&mut at_station[i]) {
                crate::spread::checkpoint();
                let (node, reached) = (net.nodes[from], net.reached[from]);
                let Some(takes) = self.takes(i, made[from]) else { continue };
                if hopeless(reached + self.back(made[from]).from(node)) {
                    continue;
                }
                let onward = self.back(takes);
                let out = |end: Node, cost: Price| hopeless(reached + cost + onward.from(end));
                self.hopeful(
                    node,
                    onward,
                    |least| hopeless(reached + least),
                    |j, pattern, _, _| {
                        for (end, edge) in stages(from, node, j, &pattern, &out) {
                            if out(end, edge.cost) {
                                continue;
                            }
                            let layer = self.layer(j, takes);
                            let to = *index.entry((end, layer)).or_insert_with(|| {
                                net.nodes.push(end);
                                net.reached.push(Price::NO_WAY);
                                made.push(layer);
                                at_station[end.0].push(net.nodes.len() - 1);
                                net.nodes.len() - 1
                            });
                            net.reached[to] = net.reached[to].min(reached + edge.cost);
                            net.edges.push(Edge { to, ..edge });
                        }
                    },
                );
            }
        }
        net.goal = index.get(&((last, 0), 0)).copied();
        net
    }

    /// The edges of one pattern: with the sure grip where there is one, else with the best of the doubtful ones. States in doubt are not worked
    /// out for a grip that cannot be the best, nor for an edge that is `out` to its node at a cost.
    fn stages(&self, from: usize, (i, l): Node, j: usize, pattern: &Pattern, out: &Out<'_>) -> Vec<(Node, Edge)> {
        let base = self.stage(i, j).plus_s(pattern.cost_s);
        let regrip = *pattern.regrips.last().unwrap_or(&l);
        let edge = |run_s: f64, extra_s: f64, grip: usize, margin: f64, at_end: bool| Edge {
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
                let whole = edge(self.full_s(i, j, pattern), 0.0, *grip, *margin, false);
                return vec![(plain_end, whole)];
            }
            Grips::Doubtful(grips) => grips,
        };
        // Best by time for each way to end: letting go as the headstock stands, or after a re-grip there.
        let mut best: [Option<(Node, Edge)>; 2] = [None, None];
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
            let least = edge(least_s, extra_s, grip, f64::INFINITY, slot == 1).cost;
            // Where nobody asks for the safer of equals, the first is as good as any.
            let by = if self.runs.looker.ranks { SAME_COST } else { -SAME_COST };
            let beaten = |a: &(Node, Edge)| !self.weights.safest && a.1.cost.plus_s(by) < least;
            if best[slot].as_ref().is_some_and(beaten) || out(end, least) {
                continue;
            }
            let Some((run_s, margin)) = self.exact_stage((i, l), j, grip, pattern) else { continue };
            let new = edge(run_s, extra_s, grip, margin.min(1.0 - release), slot == 1);
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
