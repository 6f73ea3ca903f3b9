//! Finds only the cheapest way, without the network of all ways that are nearly as cheap. It serves where the safest of
//! these is not needed, and to find how large that network must be.

use super::{Builder, Edge, Node, Pattern};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::way::Way;
use std::cmp::Ordering;
use std::collections::{BinaryHeap, HashMap};

/// A node, and the layer of the hand-overs made up to it.
type Place = (Node, usize);

/// An entry of the open list, with the lower bound on the cost of a plan through it.
struct Open {
    least: Price,
    /// The station of the node, or the station at which the stage ends.
    station: usize,
    /// Number of the entry: of equal entries the first found comes first.
    number: usize,
    what: What,
}

enum What {
    /// A node, and the cost of the way to it.
    Node(Place, Price),
    /// A stage whose states in doubt are not worked out yet, the cost of the way to its start, and a lower bound on the
    /// cost of the way with it.
    Stage { from: Place, reached: Price, run: Price, pattern: Pattern },
}

/// The cheapest way found to a node: its cost, and its last stage with the node where that begins.
struct Came {
    cost: Price,
    by: Option<(Place, Edge)>,
}

/// The state of a search.
struct Search<'b, 'a> {
    builder: &'b Builder<'a>,
    open: BinaryHeap<Open>,
    pushed: usize,
    came: HashMap<Place, Came>,
}

impl Builder<'_> {
    /// The cheapest way. None: there is no plan.
    ///
    /// An A* search: the entry with the least lower bound goes first (Hart, Nilsson & Raphael 1968), of equals the
    /// entry nearest to the part-off. A stage is worked out only when it goes first and leads to a node at less cost
    /// than any way before. So where many plans cost the same, only one is worked out.
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

    /// Whether a cost is less than that of any way found to this node.
    fn is_cheaper(&self, place: Place, cost: Price) -> bool {
        self.came.get(&place).is_none_or(|came| cost < came.cost)
    }

    /// Whether a stage may give the cheapest way to one of its ends.
    fn leads_on(&self, from: Place, takes: usize, j: usize, run: Price, pattern: &Pattern) -> bool {
        let ends = self.builder.ends(j, *pattern.regrips.last().unwrap_or(&from.0.1), from.0.0);
        let mut ends = ends.into_iter().flatten();
        ends.any(|(end, s)| self.is_cheaper((end, self.builder.layer(j, takes)), run.plus_s(s)))
    }

    /// Puts all stages from a node that may give a cheaper way into the open list.
    fn leave(&mut self, from: Place, reached: Price) {
        // A cheaper way to this node may have been found since.
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

    /// Works out a stage, and enters its end nodes.
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
                // The lower bound is kept from falling along a way.
                self.push(if on < least { least } else { on }, j, What::Node(place, cost));
            }
        }
    }

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
    /// Reversed order: a binary heap returns its greatest entry first.
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
