//! The cost of the cheapest plan, found before its network is grown: so that no more of it is grown than the best needs.

use super::{Arc, Builder, Node, Pattern};
use crate::planner::price::Price;
use std::cmp::Ordering;
use std::collections::{BinaryHeap, HashMap};

/// Something to go on from, with the least that a plan through it costs.
struct Open {
    least: Price,
    /// Counts up, so that of equals the first found comes first.
    number: usize,
    what: What,
}

enum What {
    /// A node, the hand-overs made up to it, and what the way to it costs.
    Node(Node, usize, Price),
    /// A stage from a node to a station that is not worked out yet.
    Stage { from: Node, made: usize, reached: Price, j: usize, pattern: Pattern },
}

impl Builder<'_> {
    /// What the cheapest plan costs; none where there is no plan.
    ///
    /// The most hopeful goes first (Hart, Nilsson & Raphael 1968), and a stage is worked out only when it is the most hopeful of all. So none
    /// is that could not lie on a cheapest plan by what was known before.
    pub fn cheapest(&self) -> Option<Price> {
        let last = self.grid.last();
        let mut number = 0;
        let mut open = BinaryHeap::new();
        let mut known: HashMap<(Node, usize), Price> = HashMap::new();
        open.push(Open { least: self.least(), number, what: What::Node((0, 0), 0, Price::default()) });
        let mut push = |open: &mut BinaryHeap<Open>, least: Price, what: What| {
            number += 1;
            open.push(Open { least, number, what });
        };
        while let Some(Open { least, what, .. }) = open.pop() {
            crate::spread::breathe();
            match what {
                What::Node((station, _), _, reached) if station == last => return Some(reached),
                What::Node(node, made, reached) => {
                    let takes = made + usize::from(node.0 > 0);
                    if self.most.is_some_and(|most| takes > most)
                        || known.get(&(node, made)).is_some_and(|known| *known < reached)
                    {
                        continue;
                    }
                    let hopeless = |least: Price| !least.is_finite();
                    self.hopeful(node, self.back(takes), hopeless, |j, pattern, least| {
                        let stage = What::Stage { from: node, made, reached, j, pattern };
                        push(&mut open, reached + least, stage);
                    });
                }
                What::Stage { from, made, reached, j, pattern } => {
                    let takes = made + usize::from(from.0 > 0);
                    let onward = self.back(takes);
                    let out = |end: Node, cost: Price| !(reached + cost + onward.from(end)).is_finite();
                    for (end, Arc { cost, .. }) in self.stages(0, from, j, &pattern, &out) {
                        let cost = reached + cost;
                        let key = (end, self.layer(j, takes));
                        let better = known.get(&key).is_none_or(|known| cost < *known);
                        if better && (cost + onward.from(end)).is_finite() {
                            known.insert(key, cost);
                            // What is known never makes a way look cheaper than it did.
                            let least = if cost + onward.from(end) < least { least } else { cost + onward.from(end) };
                            push(&mut open, least, What::Node(end, key.1, cost));
                        }
                    }
                }
            }
        }
        None
    }
}

impl Ord for Open {
    /// The least is the greatest, for a heap gives the greatest first.
    fn cmp(&self, other: &Open) -> Ordering {
        let by = |a: &Open, b: &Open| a.least.partial_cmp(&b.least).unwrap_or(Ordering::Equal);
        by(other, self).then(other.number.cmp(&self.number))
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
