//! How far the bar comes without a bush: stations that are reached, under which grips, and by how few hand-overs.
//!
//! Whether there is a plan asks less than which plan is best. A piece holds most easily where it is shortest, so the pieces that end at a
//! station are looked at from the shortest on, and the first that holds and that a way leads to is enough. The network, which asks for all
//! of them and for what is left of their limits, is grown only where a way leads to the end.

use super::{Knows, Unguided};
use crate::spread::spread;
use std::ops::Range;

/// Grips tried at once where that which led on last does not.
const AT_ONCE: usize = 16;

/// Where the bar ends that does not come to the part-off.
pub struct Came {
    /// The farthest station that is reached.
    pub far: usize,
    /// What holds there: a grip's number and one, or 0 where none does.
    pub held: Vec<usize>,
    /// Station and grip of the pieces that end there.
    pub by: Vec<(usize, usize)>,
    /// Whether any piece is turned under a grip.
    pub gripped: bool,
}

/// What holds at the stations that are reached, with the least number of hand-overs to it.
struct Reached {
    knows: Knows,
    /// For each station: with nothing held, or what holds let go.
    open: Vec<Option<usize>>,
    /// For each grip: the stations that are reached under it, ascending, but for those at which what holds is of no use.
    held: Vec<Vec<(usize, usize)>>,
}

impl Reached {
    fn held(&self, grip: usize, station: usize) -> Option<usize> {
        let stations = self.held.get(grip)?;
        let at = stations.binary_search_by_key(&station, |s| s.0).ok()?;
        Some(stations[at].1)
    }

    /// Takes in a piece under a grip that ends at a station; whether any other grip may take hold there by no more hand-overs.
    fn take(&mut self, all: &Unguided<'_>, grip: usize, station: usize, made: usize) -> bool {
        if let Some(stations) = self.held.get_mut(grip) {
            stations.push((station, made));
        }
        let fewer = self.open[station].is_none_or(|least| made < least);
        let opens = fewer && (grip >= all.noses.len() || all.lets_go(grip, station));
        if opens {
            self.open[station] = Some(made);
        }
        opens
    }
}

impl Came {
    /// Where the bar ends by what is known of its pieces; none where it comes to the part-off.
    pub fn of(all: &Unguided<'_>, knows: Knows) -> Option<Came> {
        let (last, free) = (all.grid.last(), all.noses.len());
        let mut reached = Reached { knows, open: vec![None; all.grid.len()], held: vec![Vec::new(); free] };
        reached.open[0] = Some(0);
        let (mut far, mut gripped) = (0, false);
        // What led on last is tried first.
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
                // What holds there besides leads nowhere else, but for the count of hand-overs.
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

    /// The first station at which a piece that ends at a station may begin, as far as stops and stroke tell.
    fn first_start(&self, j: usize) -> usize {
        let stops = |i: &usize| !self.feeds(*i, j) || *i + 1 < j && self.grid.stations[i + 1].wished;
        (0..j).rev().find(stops).map_or(0, |i| i + 1)
    }

    /// Least number of hand-overs with which a piece under a grip begins at a station, where it may.
    fn begun(&self, reached: &Reached, grip: usize, i: usize) -> Option<usize> {
        let Some(nose_mm) = self.noses.get(grip) else { return (i == 0).then_some(0) };
        let wishes = &self.ground.rig.job.wishes;
        let open = reached.open[i].filter(|_| i > 0 && wishes.allow_nose(self.grid.at(i), *nose_mm));
        let taken = open.map(|made| made + 1).filter(|made| self.most().is_none_or(|most| *made <= most));
        let held = reached.held(grip, i).filter(|_| !self.grid.stations[i].wished);
        held.into_iter().chain(taken).min()
    }

    /// Stations from which a piece under a grip holds to the station behind them, the nearest first, each with the least number of hand-overs made
    /// by then; the nearest alone where one is enough.
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

    /// Whether a piece under a grip leads to a station.
    fn leads(&self, reached: &Reached, grip: usize, j: usize) -> bool {
        grip < self.noses.len() && !self.by(reached, grip, self.first_start(j)..j, true).is_empty()
    }

    /// All that leads to the farthest station, in the order of the network.
    fn there(&self, reached: &Reached, far: usize, gripped: bool) -> Came {
        if far == 0 {
            return Came { far, held: vec![0], by: Vec::new(), gripped };
        }
        let (free, first) = (self.noses.len(), self.first_start(far));
        let mut by: Vec<(usize, usize)> = Vec::new();
        for grip in 0..=free {
            by.extend(self.by(reached, grip, first..far, false).into_iter().map(|(i, _)| (i, grip)));
        }
        // Of one station first the grips that were held there.
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
