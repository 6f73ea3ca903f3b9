//! How far the bar comes without a bush: which stations are reached, under which grips, and by how few hand-overs.
//!
//! It is less work to find whether there is a plan than which plan is best. A short piece holds more easily than a long
//! one. So the pieces that end at a station are looked at from the shortest on, and the first one that holds and that a
//! way leads to is enough. The network needs all pieces and their margins, so it is grown only where a way leads to the
//! part-off.

use super::{Knows, Unguided};
use crate::spread::spread;
use std::ops::Range;

/// Number of grips tried at once where the grip that led on last does not.
const AT_ONCE: usize = 16;

/// Where the bar stops when it does not come to the part-off.
pub struct Came {
    /// The farthest station that is reached.
    pub far: usize,
    /// The grips that hold there: index of the grip plus one, or 0 for none.
    pub held: Vec<usize>,
    /// Station and grip of the pieces that end there.
    pub by: Vec<(usize, usize)>,
    /// Whether any piece is turned under a grip.
    pub gripped: bool,
}

/// The grips that hold at the stations reached, with the least number of hand-overs for each.
struct Reached {
    knows: Knows,
    /// By station: least number of hand-overs with no grip held there (front free, or collet open).
    open: Vec<Option<usize>>,
    /// By grip: the stations reached under it, ascending, with the least number of hand-overs. Stations at which a held
    /// grip is of no use are left out.
    held: Vec<Vec<(usize, usize)>>,
}

impl Reached {
    fn held(&self, grip: usize, station: usize) -> Option<usize> {
        let stations = self.held.get(grip)?;
        let at = stations.binary_search_by_key(&station, |s| s.0).ok()?;
        Some(stations[at].1)
    }

    /// Adds a piece under a grip that ends at a station. True: another grip may take hold there, with fewer hand-overs
    /// than known before.
    fn take(&mut self, all: &Unguided<'_>, grip: usize, station: usize, made: usize) -> bool {
        if let Some(stations) = self.held.get_mut(grip) {
            stations.push((station, made));
        }
        let fewer = self.open[station].is_none_or(|least| made < least);
        let opens = fewer && all.lets_go(grip, station);
        if opens {
            self.open[station] = Some(made);
        }
        opens
    }
}

impl Came {
    /// Where the bar stops. None: it comes to the part-off.
    pub fn of(all: &Unguided<'_>, knows: Knows) -> Option<Came> {
        let (last, free) = (all.grid.last(), all.noses.len());
        let mut reached = Reached { knows, open: vec![None; all.grid.len()], held: vec![Vec::new(); free] };
        reached.open[0] = Some(0);
        let (mut far, mut gripped) = (0, false);
        // The grip that led on last is tried first.
        let mut grips: Vec<usize> = (0..=free).rev().collect();
        for j in (1..=last).filter(|j| all.grid.borders(*j)) {
            let first = all.first_start(j);
            let mut opened_by = None;
            let (hopeful, others) = grips.split_at(1);
            for now in std::iter::once(hopeful).chain(others.chunks(AT_ONCE)) {
                let by = spread(now, |grip, _| all.by(&reached, *grip, first..j, all.most().is_none()));
                let made = by.iter().map(|by| by.iter().map(|(_, made)| *made).min());
                for (grip, made) in now.iter().zip(made).filter_map(|(grip, made)| Some((*grip, made?))) {
                    if j == last && all.parted(grip).is_ok() {
                        return None;
                    }
                    if j < last {
                        far = j;
                        gripped |= grip < free;
                        opened_by = reached.take(all, grip, j, made).then_some(grip).or(opened_by);
                    }
                }
                // Other grips that hold there lead to no other stations; only the number of hand-overs could differ.
                if opened_by.is_some() && all.most().is_none() {
                    break;
                }
            }
            if let Some(at) = opened_by.and_then(|grip| grips.iter().position(|g| *g == grip)) {
                grips[..=at].rotate_right(1);
            }
        }
        let piece = |j: usize| (0..free).any(|grip| all.leads(&reached, grip, j));
        gripped = gripped || (1..=far).filter(|j| all.grid.borders(*j)).any(piece);
        Some(all.there(&reached, far, gripped))
    }
}

impl Unguided<'_> {
    fn most(&self) -> Option<usize> {
        self.ground.rig.job.wishes.at_most_hand_overs
    }

    /// The first station at which a piece that ends at station `j` may begin, by stops and stroke alone.
    fn first_start(&self, j: usize) -> usize {
        let stops = |i: &usize| !self.feeds(*i, j) || *i + 1 < j && self.grid.stations[i + 1].wished;
        (0..j).rev().find(stops).map_or(0, |i| i + 1)
    }

    /// Least number of hand-overs with which a piece under a grip begins at station `i`. None: it cannot begin there.
    fn begun(&self, reached: &Reached, grip: usize, i: usize) -> Option<usize> {
        let Some(nose_mm) = self.noses.get(grip) else { return (i == 0).then_some(0) };
        let wishes = &self.ground.rig.job.wishes;
        let open = reached.open[i].filter(|_| i > 0 && wishes.allow_nose(self.grid.at(i), *nose_mm));
        let taken = open.map(|made| made + 1).filter(|made| self.most().is_none_or(|most| *made <= most));
        let held = reached.held(grip, i).filter(|_| !self.grid.stations[i].wished);
        held.into_iter().chain(taken).min()
    }

    /// Stations from which a piece under a grip holds up to station `starts.end`, the nearest first, each with the
    /// least number of hand-overs made by then. With `one`, only the nearest.
    fn by(&self, reached: &Reached, grip: usize, starts: Range<usize>, one: bool) -> Vec<(usize, usize)> {
        let j = starts.end;
        let begun = |i: usize| self.travels(i, j, grip).then(|| self.begun(reached, grip, i)).flatten();
        let mut by = Vec::new();
        let Some(down_to) = starts.clone().find(|i| begun(*i).is_some()) else { return by };
        let _ = self.walk(grip, j, down_to, reached.knows, |i, _| {
            by.extend(begun(i).map(|made| (i, made)));
            !one || by.is_empty()
        });
        by
    }

    /// Whether a piece under a grip ends at station `j`.
    fn leads(&self, reached: &Reached, grip: usize, j: usize) -> bool {
        grip < self.noses.len() && !self.by(reached, grip, self.first_start(j)..j, true).is_empty()
    }

    /// Everything that leads to the farthest station, in the order of the network.
    fn there(&self, reached: &Reached, far: usize, gripped: bool) -> Came {
        if far == 0 {
            return Came { far, held: vec![0], by: Vec::new(), gripped };
        }
        let (free, first) = (self.noses.len(), self.first_start(far));
        let mut by: Vec<(usize, usize)> = Vec::new();
        for grip in 0..=free {
            by.extend(self.by(reached, grip, first..far, false).into_iter().map(|(i, _)| (i, grip)));
        }
        // At one station, the grips that were already held there come first.
        by.sort_by_cached_key(|(i, grip)| match !self.grid.stations[*i].wished && self.leads(reached, *grip, *i) {
            true => (*i, 0, free - grip),
            false => (*i, 1, *grip),
        });
        let mut held: Vec<usize> = Vec::new();
        for (_, grip) in &by {
            let tag = if *grip < free { grip + 1 } else { 0 };
            if !held.contains(&tag) {
                held.push(tag);
            }
        }
        if reached.open[far].is_some() && !held.contains(&0) {
            held.push(0);
        }
        Came { far, held, by, gripped }
    }
}
