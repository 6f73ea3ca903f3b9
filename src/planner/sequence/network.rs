//! The network of the sequence program: its nodes, its edges, and the bounds that keep useless edges out.
//!
//! A node is a station where a stage may begin, together with the station of the last headstock re-grip. An edge is a
//! stage with its best grip and its re-grips. A stage may have no re-grip, or one at its start, which shares the stop
//! with the hand-over, or one at its end before the hand-over, where the counter-spindle could not let go of the front
//! otherwise. Re-grips inside a stage stand where stroke and interrupts make them cheapest, and there as late as
//! possible. The cost of every edge is known beforehand, so the program is a pure flow.
//!
//! Only edges that can be part of a plan within the cost `bound` enter. A backward pass (`back`) gives each node a
//! lower bound on its cost to the part-off. A state is in doubt where samples over the places of the headstock prove
//! neither that it passes at full speed nor that it fails. It is worked out only where cost so far plus lower bound
//! stay within `bound`.

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

/// Costs that differ by less than this count as equal.
const SAME_COST: f64 = 1e-9;

/// One stage as an edge.
#[derive(Debug, Clone, Default)]
pub struct Edge {
    /// Index of the node it leaves.
    pub from: usize,
    /// Index of the node it enters.
    pub to: usize,
    /// Its share of the objective.
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

/// Says whether an edge to this end node at this cost can be no part of a plan within the bound.
type Out<'o> = dyn Fn(Node, Price) -> bool + 'o;

/// Nodes and edges that can be part of a plan within a bound.
#[derive(Debug, Clone, Default)]
pub struct Network {
    /// The nodes; the first is the start.
    pub nodes: Vec<Node>,
    /// The edges.
    pub edges: Vec<Edge>,
    /// Least cost from the start to each node.
    pub reached: Vec<Price>,
    /// The node of the part-off, where it is reached.
    pub goal: Option<usize>,
}

/// One choice of the re-grips at the start of a stage and inside it: their stations, and what they cost.
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
    /// Largest number of hand-overs that the job allows; none: any number.
    most: Option<usize>,
    /// Lower bounds on the cost from each node to the part-off. The index is the number of hand-overs left; the last
    /// entry holds for all larger numbers.
    passes: Vec<Back>,
    /// By station: the cost of a re-grip there inside a stage without the re-grip itself, s. It is the charge for the
    /// witness line and the overhead of a travel cut in two.
    split_s: Vec<f64>,
    /// By station of a re-grip: the stations that the next re-grip may have, the latest first.
    late: Vec<Vec<usize>>,
}

impl<'a> Builder<'a> {
    /// A builder. It computes the lower bounds of all nodes.
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

    /// Lower bound on the cost of any plan; not finite when there is surely no plan.
    pub fn least(&self) -> Price {
        self.back(0).of((0, 0))
    }

    /// The cost of a re-grip at a station inside a stage, without the re-grip itself, s.
    fn split_s(&self, m: usize) -> f64 {
        if m == 0 || m >= self.grid.last() {
            return 0.0;
        }
        let full = |i, j| self.runs.full_s(i, j);
        self.grid.stations[m].penalty_s + (full(m - 1, m) + full(m, m + 1) - full(m - 1, m + 1)).max(0.0)
    }

    /// The end nodes of a stage from `i` to `j`, each with the cost of the re-grip at that end, s: first without such a
    /// re-grip, then with it.
    fn ends(&self, j: usize, regrip: usize, i: usize) -> [Option<(Node, f64)>; 2] {
        if j == self.grid.last() {
            // The part-off has one node for all places of the last re-grip.
            return [Some(((j, 0), 0.0)), None];
        }
        [Some(((j, regrip), 0.0)), (i > 0).then_some(((j, j), self.shared_s))]
    }

    /// The cost of a stage without its run and its re-grips: the hand-over at its start, and the charge for the witness
    /// line at its end.
    fn stage(&self, i: usize, j: usize) -> Price {
        let line_s = if j < self.grid.last() { self.grid.stations[j].penalty_s } else { 0.0 };
        let takes_hold = if i > 0 { self.weights.hand_over(self.hand_over_s) } else { Price::default() };
        takes_hold.plus_s(line_s)
    }

    /// Seconds that the first stage adds to its cuts; 0 for every other stage.
    fn first_s(&self, i: usize, j: usize, run_s: f64) -> f64 {
        if i == 0 { self.weights.first.beyond_s(j, run_s) } else { 0.0 }
    }

    /// Lower bound on the run time of a stage over all grips, s. A run that must slow down may go faster in parts when
    /// it stops inside, so there the bound is the time at full speed.
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

    /// All choices of re-grips for a stage from a node to station `j`.
    fn patterns(&self, (i, l): Node, j: usize) -> Vec<Pattern> {
        let mut patterns = Vec::new();
        if i == 0 {
            // Nothing holds the front yet, so the headstock may not open.
            if self.grid.carried_to(j) <= self.stroke_mm + SAME_MM {
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

    /// Continues `so_far` by re-grips inside the stage until the stroke reaches `j`, and adds each complete choice to
    /// `all`.
    fn late_regrips(&self, i: usize, j: usize, last: usize, so_far: Pattern, all: &mut Vec<Pattern>) {
        if self.grid.carried_to(j) <= self.reach_mm(last) {
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

    /// The turned length up to which the stroke feeds the bar after a re-grip at a station, mm.
    fn reach_mm(&self, regrip: usize) -> f64 {
        self.grid.at(regrip) + self.stroke_mm + SAME_MM
    }

    /// The stations that the next re-grip after one at station `last` may have, within the stroke. First comes the
    /// latest one, then an earlier one only where it costs less (witness line, overhead of a travel cut in two). The
    /// part-off is left out: bar may be fed on beyond it.
    fn late(&self, last: usize) -> Vec<usize> {
        let reach = self.reach_mm(last);
        let within = self.grid.carried_within(reach).min(self.grid.last());
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

    /// The layer of the nodes at a station after some hand-overs. The part-off has one layer. Where the number of
    /// hand-overs is not bounded, all stations have one layer.
    fn layer(&self, station: usize, hand_overs: usize) -> usize {
        if self.most.is_none() || station == self.grid.last() { 0 } else { hand_overs }
    }

    /// Number of hand-overs made after the next stage from a station. Every stage but the first begins with a
    /// hand-over. None: the number would be larger than wished.
    fn takes(&self, station: usize, made: usize) -> Option<usize> {
        let takes = made + usize::from(station > 0);
        self.most.is_none_or(|most| takes <= most).then_some(takes)
    }

    /// Calls `each` for every end station and pattern of re-grips of a stage from a node. `each` gets two lower bounds:
    /// on the cost of this stage, and on the cost from this node to the part-off through this stage. A stage is left
    /// out where `hopeless` is true of its lower bound.
    fn hopeful(
        &self,
        node: Node,
        onward: &Back,
        hopeless: impl Fn(Price) -> bool,
        mut each: impl FnMut(usize, Pattern, Price, Price),
    ) {
        let i = node.0;
        for (j, pair) in self.runs.from(i) {
            // No re-grip at all is the cheapest choice, so this bound holds for every pattern.
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

    /// Grows the network from the start. Where the number of hand-overs is bounded, each number of hand-overs made has
    /// its own layer of nodes, because a single edge cannot hold such a bound. `stages` gives the edges of one pattern
    /// from a node, without those that its last argument rules out.
    fn grown(
        &self,
        bound: Price,
        stages: impl Fn(usize, Node, usize, &Pattern, &Out<'_>) -> Vec<(Node, Edge)>,
    ) -> Network {
        // Even without a bound, nodes that surely do not lead to the part-off stay out.
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

    /// The edges of one pattern: with the sure grip where there is one, else with the best of the grips in doubt.
    /// States in doubt are worked out neither for a grip that cannot be the best nor for an edge that `out` rules out.
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
        // The best edge for each end of the stage. First: the front is let go with the headstock where it stands.
        // Second: the headstock re-grips there before.
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
            // With a stop inside, the parts of a run may go faster than the whole run.
            let least_s = if stops_inside { self.full_s(i, j, pattern) } else { least_s };
            let least = edge(least_s, extra_s, grip, f64::INFINITY, slot == 1).cost;
            // Where the safer of two equally fast grips is not needed, the first one found stays.
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

    /// Time and margin of a stage with its re-grips, for the exact places of the headstock. None: a state fails.
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
