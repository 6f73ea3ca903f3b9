//! The cheapest way alone, without the network of all that are nearly as cheap: where the safest of them is not asked for, and to know how much
//! of the network the best needs.

use super::{Builder, Edge, Node, Pattern};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::way::Way;
use std::cmp::Ordering;
use std::collections::{BinaryHeap, HashMap};

/// A node and the hand-overs made up to it.
type Place = (Node, usize);

/// Something to go on from, with the least that a plan through it costs.
struct Open {
    least: Price,
    /// The station it is at, or leads to.
    station: usize,
    /// Counts up, so that of equals the first found comes first.
    number: usize,
    what: What,
}

enum What {
    /// A node, and what the way to it costs.
    Node(Place, Price),
    /// A stage from a node that is not worked out yet, and what the way with it costs at least.
    Stage { from: Place, reached: Price, run: Price, pattern: Pattern },
}

/// The cheapest way to a node so far: its cost, and the last stage with the node it leaves.
struct Came {
    cost: Price,
    by: Option<(Place, Edge)>,
}

/// A search under way.
struct Search<'b, 'a> {
    builder: &'b Builder<'a>,
    open: BinaryHeap<Open>,
    pushed: usize,
    came: HashMap<Place, Came>,
}

impl Builder<'_> {
    /// The cheapest way; none where there is no plan.
    ///
    /// The most hopeful goes first (Hart, Nilsson & Raphael 1968), of equals what is nearest to the part-off. A stage is worked out only when
    /// it is the most hopeful of all, and leads to a node cheaper than any way before. So where many plans cost the same, one is enough.
    pub fn cheapest(&self) -> Option<Way> {
        let start = ((0, 0), 0);
        let mut search = Search { builder: self, open: BinaryHeap::new(), pushed: 0, came: HashMap::new() };
        search.came.insert(start, Came { cost: Price::default(), by: None });
        search.push(self.least(), 0, What::Node(start, Price::default()));
        while let Some(Open { least, what, station, .. }) = search.open.pop() {
            crate::spread::checkpoint();
            match what {
                What::Node(place, _) if station == self.grid.last() => return search.way(place),
                What::Node(place, reached) => search.leave(place, reached),
                What::Stage { from, reached, run, pattern } => search.go(from, reached, station, run, &pattern, least),
            }
        }
        None
    }
}

impl Search<'_, '_> {
    fn push(&mut self, least: Price, station: usize, what: What) {
        self.pushed += 1;
        self.open.push(Open { least, station, number: self.pushed, what });
    }

    /// Whether a way that costs so much is cheaper to a node than any before.
    fn is_cheaper(&self, place: Place, cost: Price) -> bool {
        self.came.get(&place).is_none_or(|came| cost < came.cost)
    }

    /// Whether a stage may be the cheapest way to one of its ends.
    fn leads_on(&self, from: Place, takes: usize, j: usize, run: Price, pattern: &Pattern) -> bool {
        let ends = self.builder.ends(j, *pattern.regrips.last().unwrap_or(&from.0.1), from.0.0);
        let mut ends = ends.into_iter().flatten();
        ends.any(|(end, s)| self.is_cheaper((end, self.builder.layer(j, takes)), run.plus_s(s)))
    }

    /// Puts all stages from a node that lead on among what is open.
    fn leave(&mut self, from: Place, reached: Price) {
        // A cheaper way there may have been found since.
        if self.came.get(&from).is_none_or(|came| came.cost != reached) {
            return;
        }
        let Some(takes) = self.builder.takes(from.0.0, from.1) else { return };
        let mut stages: Vec<(Price, usize, What)> = Vec::new();
        let hopeless = |least: Price| !least.is_finite();
        self.builder.hopeful(from.0, self.builder.back(takes), hopeless, |j, pattern, run, least| {
            let run = reached + run;
            if self.leads_on(from, takes, j, run, &pattern) {
                stages.push((reached + least, j, What::Stage { from, reached, run, pattern }));
            }
        });
        for (least, j, stage) in stages {
            self.push(least, j, stage);
        }
    }

    /// Works out a stage, and enters its ends.
    fn go(&mut self, from: Place, reached: Price, j: usize, run: Price, pattern: &Pattern, least: Price) {
        let takes = self.builder.takes(from.0.0, from.1);
        let Some(takes) = takes.filter(|takes| self.leads_on(from, *takes, j, run, pattern)) else { return };
        let (builder, layer) = (self.builder, self.builder.layer(j, takes));
        let onward = builder.back(takes);
        let out = |end: Node, cost: Price| {
            let cost = reached + cost;
            !(cost + onward.from(end)).is_finite() || !self.is_cheaper((end, layer), cost)
        };
        for (end, edge) in builder.stages(0, from.0, j, pattern, &out) {
            let (place, cost) = ((end, layer), reached + edge.cost);
            let on = cost + onward.from(end);
            if on.is_finite() && self.is_cheaper(place, cost) {
                self.came.insert(place, Came { cost, by: Some((from, edge)) });
                // What is known never makes a way look cheaper than it did.
                self.push(if on < least { least } else { on }, j, What::Node(place, cost));
            }
        }
    }

    /// The way to a node.
    fn way(&self, goal: Place) -> Option<Way> {
        let cost = self.came.get(&goal)?.cost;
        let mut way = Way { edges: Vec::new(), stations: vec![goal.0.0], cost, least: cost, margin: f64::INFINITY };
        let mut at = goal;
        while let Some((from, edge)) = &self.came.get(&at)?.by {
            way.edges.insert(0, edge.clone());
            way.stations.insert(0, from.0.0);
            way.margin = way.margin.min(edge.margin);
            at = *from;
        }
        Some(way)
    }
}

impl Ord for Open {
    /// The least is the greatest, for a heap gives the greatest first.
    fn cmp(&self, other: &Open) -> Ordering {
        let by = |a: &Open, b: &Open| a.least.partial_cmp(&b.least).unwrap_or(Ordering::Equal);
        by(other, self).then(self.station.cmp(&other.station)).then(other.number.cmp(&self.number))
    }
}

impl PartialOrd for Open {
    fn partial_cmp(&self, other: &Open) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Open {
    fn eq(&self, other: &Open) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Open {}
