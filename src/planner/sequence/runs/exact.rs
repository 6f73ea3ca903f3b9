//! Runs for the exact place of the headstock. The verdict on a state depends on the grip, its station and the last
//! re-grip. So runs from several stations share the states that they have in common.

use super::Runs;
use super::under_way::Clock;
use crate::planner::states::outlook::Side;
use crate::process::checks::PASSES_UP_TO;
use crate::spread::lock;
use std::collections::HashMap;
use std::sync::{Arc, Mutex};

/// Largest number of states that are kept: some ten megabytes.
const STATES_KEPT: usize = 2_000_000;

/// What is known of one side of a state.
#[derive(Clone, Copy)]
enum Known {
    Nothing,
    /// Passes at full speed, with this margin.
    Sure(f64),
    /// Lower bound on its highest speed over all places of the headstock, rev/min; and the margin of the work done
    /// there.
    Doubtful(f64, f64),
    /// The highest speed at which it passes, rev/min, and its margin at that speed.
    Exact(f64, f64),
    Fails,
}

/// The states behind a re-grip under a grip, two for each piece: at its start and at its end.
type Row = Arc<Mutex<Vec<Known>>>;

/// Rows by grip and station of the last re-grip, and the number of states in all of them.
#[derive(Default)]
pub(super) struct Rows {
    states: usize,
    kept: HashMap<(usize, usize), Row>,
}

impl Runs<'_> {
    /// Time and margin of a run for the exact place of the headstock. None: a state fails.
    ///
    /// A segment is cut at the speed of its slowest state. So a doubtful state is worked out only where it may be
    /// slower than the slowest so far, or may lower the margin. A slowed state has no margin left, so from there on no
    /// state can lower it.
    pub fn exact(&self, i: usize, j: usize, grip: usize, regrip: usize) -> Option<(f64, f64)> {
        let (l, segment) = (self.looker, &self.looker.grid.segment);
        let row = self.row_of(grip, regrip, j);
        let mut row = lock(&row);
        let mut margin = f64::INFINITY;
        let mut caps = vec![f64::INFINITY; segment[j - 1] + 1 - segment[i]];
        let mut doubtful: Vec<(f64, usize, f64)> = Vec::new();
        for n in 2 * (i - regrip)..2 * (j - regrip) {
            if let Known::Nothing = row[n] {
                row[n] = self.looked_at(grip, regrip, n);
            }
            let cap = &mut caps[segment[regrip + n / 2] - segment[i]];
            match row[n] {
                Known::Nothing | Known::Fails => return None,
                Known::Sure(own) => margin = margin.min(own),
                Known::Exact(allowed, own) => (*cap, margin) = (cap.min(allowed), margin.min(own)),
                Known::Doubtful(careful_rpm, own) => {
                    doubtful.push((careful_rpm, n, own));
                    margin = margin.min(own);
                }
            }
        }
        doubtful.sort_by(|a, b| a.0.total_cmp(&b.0));
        for (careful_rpm, n, own) in doubtful {
            let k = regrip + n / 2;
            let cap = &mut caps[segment[k] - segment[i]];
            if careful_rpm >= *cap && (margin <= 0.0 || !l.ranks) {
                continue;
            }
            let (station, side) = side_of(k, n);
            let Some((allowed, share)) = l.exact(grip, station, side, regrip) else {
                row[n] = Known::Fails;
                return None;
            };
            row[n] = Known::Exact(allowed, own.min(1.0 - share));
            *cap = cap.min(allowed);
            margin = margin.min(1.0 - share);
        }
        let mut clock = Clock::new(l, i, l.grips(grip));
        (i..j).for_each(|k| clock.advance(k, caps[segment[k] - segment[i]]));
        Some((clock.total_s(), margin))
    }

    /// One side of a state, as far as a look at all places of the headstock decides it.
    fn looked_at(&self, grip: usize, regrip: usize, n: usize) -> Known {
        crate::spread::checkpoint();
        let l = self.looker;
        let (station, side) = side_of(regrip + n / 2, n);
        let mut margin = f64::INFINITY;
        if side == Side::End {
            let share = l.drill(grip, station, Some(regrip))[1];
            if share > PASSES_UP_TO {
                return Known::Fails;
            }
            margin = 1.0 - share;
        }
        let seen = l.outlook(grip, station, side);
        if seen.sure { Known::Sure(margin.min(seen.margin)) } else { Known::Doubtful(seen.careful_rpm, margin) }
    }

    /// The row of a grip and a re-grip, at least up to station `to`.
    fn row_of(&self, grip: usize, regrip: usize, to: usize) -> Row {
        let rows = &mut *lock(&self.exact_rows);
        if rows.states > STATES_KEPT {
            *rows = Rows::default();
        }
        let row = rows.kept.entry((grip, regrip)).or_default().clone();
        let mut states = lock(&row);
        let length = 2 * (to - regrip);
        if states.len() < length {
            rows.states += length - states.len();
            states.resize(length, Known::Nothing);
        }
        drop(states);
        row
    }
}

/// Station and side of the `n`th state of a row, which belongs to this piece: even numbers are starts, odd ones ends.
fn side_of(piece: usize, n: usize) -> (usize, Side) {
    if n.is_multiple_of(2) { (piece, Side::Start) } else { (piece + 1, Side::End) }
}
