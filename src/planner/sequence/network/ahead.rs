//! Works out grips on all cores, before the network needs them one by one.

use super::{Builder, Edge, Node, Out, Pattern, Price};
use crate::spread::spread;
use std::cell::RefCell;
use std::collections::BTreeSet;

impl Builder<'_> {
    /// Works out the grips of the sure pairs that the network within a bound needs. To find these pairs, it grows the
    /// network once with the lower bound on the time of each stage. For a sure pair this bound is the true time.
    ///
    /// Pairs in doubt are left out: whether the network needs them depends on the true times of the stages before.
    pub(super) fn look_ahead(&self, bound: Price) {
        let pairs = RefCell::new(BTreeSet::new());
        let stages = |from, (i, l): Node, j, pattern: &Pattern, _: &Out<'_>| {
            let Some(pair) = self.runs.pair(i, j) else { return Vec::new() };
            let run_s = self.least_run_s(i, j, pair, pattern);
            let cost = self.stage(i, j).plus_s(pattern.cost_s + run_s + self.first_s(i, j, run_s));
            let regrip = *pattern.regrips.last().unwrap_or(&l);
            if pair.sure {
                pairs.borrow_mut().insert((i, j));
            }
            // A sure grip may let go at any place of the headstock. A grip in doubt may need a re-grip at the end.
            let ends = self.ends(j, regrip, i).into_iter().flatten().take(if pair.sure { 1 } else { 2 });
            ends.map(|(end, extra_s)| (end, Edge { from, cost: cost.plus_s(extra_s), ..Edge::default() })).collect()
        };
        self.grown(bound, stages);
        let pairs: Vec<(usize, usize)> = pairs.into_inner().into_iter().collect();
        spread(&pairs, |(i, j), _| self.runs.grips(*i, *j));
    }
}
