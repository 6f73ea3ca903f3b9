//! How far the bar comes when there is no plan. The search uses few stages, each as long as possible.
//!
//! It uses the same looks at states as the search for a plan. Cost does not matter here, so a station is entered only
//! once, by the first way that reaches it. A stage that leads to no new station is not followed.

use crate::planner::states::outlook::{Looker, Side};
use crate::planner::why_not::blocked::{self, Blocked};
use crate::planner::why_not::frontier::{self, End};
use crate::planner::why_not::walk::{self, Walk, walk};
use crate::planner::why_not::{hold, no_hold};
use crate::process::checks::{self, PASSES_UP_TO};
use crate::process::stops::SAME_MM;
use std::collections::BTreeMap;

/// Grips that are asked why they do not hold.
const GRIPS_ASKED: usize = 6;
/// Largest number of pieces looked at, so that an answer always comes: about the pieces of some hundred stages as long
/// as a bar. The answer is then what was found so far.
const MOST_PIECES: usize = 60_000;

/// A station where a stage may begin, and how the bar came there.
struct Reached {
    station: usize,
    /// Station of the last re-grip.
    last: usize,
    hand_overs: usize,
    /// Index (in `reached`) of the place where the stage that ends here began, and its grip.
    from: Option<(usize, usize)>,
}

/// What stops the bar where it comes farthest, and the stage that leads there.
struct Stopped {
    end: End,
    from: usize,
    grip: usize,
}

struct Search<'l, 'a> {
    looker: &'l Looker<'a>,
    reached: Vec<Reached>,
    /// By station: whether the bar reached it.
    known: Vec<bool>,
    /// The open list: fewest hand-overs first, then the farthest.
    open: BTreeMap<(usize, std::cmp::Reverse<usize>), usize>,
    best: Option<Stopped>,
    through: bool,
    explains: bool,
    pieces_left: usize,
}

/// Finds the farthest turned length, and what stops the bar there. None: the bar comes to the part-off.
///
/// A stage begins with a re-grip, or with the headstock where the first way found left it. A plan may leave the
/// headstock elsewhere, so in rare cases there is a plan although this search finds none.
pub fn find(looker: &Looker<'_>) -> Option<Blocked> {
    let search = Search::of(looker, true);
    (!search.through).then(|| search.told())
}

/// Whether the bar comes to the part-off.
pub fn comes_through(looker: &Looker<'_>) -> bool {
    Search::of(looker, false).through
}

/// Names of what stops the bar: at a piece that no grip may hold, else where it comes farthest. This is no full look for reasons.
pub fn names(looker: &Looker<'_>) -> Vec<String> {
    let Some(shut) = looker.shut_piece() else {
        return Search::of(looker, false).best.map(|stopped| stopped.end.names()).unwrap_or_default();
    };
    let (rig, grid, mut names) = (looker.rig, looker.grid, Vec::new());
    let grips = (0..=looker.noses.len()).step_by((looker.noses.len() / GRIPS_ASKED).max(1)).chain([looker.free()]);
    for grip in grips {
        let nose = looker.noses.get(grip).copied();
        if shut + 1 == grid.last() {
            names.extend(match nose {
                Some(nose) => {
                    let found = frontier::failing(checks::of_last_grip(rig, nose, rig.held_mm(nose)).flatten());
                    found.iter().map(|f| f.check.to_owned()).collect()
                }
                None if rig.falls() => Vec::new(),
                None => vec![walk::fall_rule(rig).to_owned()],
            });
        }
        if looker.piece(grip, shut).dead {
            let state = (grip, shut + 1);
            names.extend(frontier::broken(looker, state, Side::End, grid.at(shut)).into_iter().map(|r| r.by));
        }
        if grid.carried_to(shut + 1) > looker.limit_mm(grip) + SAME_MM {
            names.extend(["counter_spindle_travel", "stroke", "collet"].map(str::to_owned));
        }
    }
    names
}

impl<'l, 'a> Search<'l, 'a> {
    /// Searches as far as the bar comes. `explains`: also walks that lead to no new station, because they may say more about what stops it.
    fn of(looker: &'l Looker<'a>, explains: bool) -> Search<'l, 'a> {
        let start = Reached { station: 0, last: 0, hand_overs: 0, from: None };
        let mut search = Search {
            looker,
            reached: vec![start],
            known: vec![false; looker.grid.len()],
            open: BTreeMap::from([((0, std::cmp::Reverse(0)), 0)]),
            best: None,
            through: false,
            explains,
            pieces_left: MOST_PIECES,
        };
        search.known[0] = true;
        let most = looker.rig.job.wishes.at_most_hand_overs.unwrap_or(usize::MAX);
        while let Some((_, from)) = search.open.pop_first() {
            let (station, hand_overs) = (search.reached[from].station, search.reached[from].hand_overs);
            if station == 0 {
                search.go_on(from, looker.free(), 0);
            } else if hand_overs < most {
                // The nose nearest to the bush usually reaches farthest.
                for grip in looker.noses_at(station).rev() {
                    search.try_grip(from, grip);
                }
            }
            if search.through || search.pieces_left == 0 {
                break;
            }
        }
        search
    }

    /// Goes on with a grip where this may lead to a new station, or may say more about what stops the bar.
    fn try_grip(&mut self, from: usize, grip: usize) {
        let Reached { station, last, .. } = self.reached[from];
        let l = self.looker;
        let next = (station + 1..l.grid.len()).find(|k| !self.known[*k] && l.grid.borders(*k));
        let may_come_to = |k: usize| {
            l.grid.carried_to(k) <= l.limit_mm(grip) + SAME_MM && (station..k).rev().all(|k| !l.piece(grip, k).dead)
        };
        let new = next.is_some_and(may_come_to);
        // A farther place says more; at the same place a single reason says more than several, and a grip more than the
        // free front.
        let says_more = || {
            let best = self.best.as_ref().map(|b| (b.end.station, b.end.is_single() && l.grips(b.grip)));
            best.is_none_or(|(far, clear)| may_come_to((far + usize::from(clear)).clamp(station + 1, l.grid.last())))
        };
        if !(new || self.explains && says_more()) {
            return;
        }
        self.go_on(from, grip, station);
        if last != station && new {
            // Without a re-grip at the start: the headstock is where the stage before left it.
            self.go_on(from, grip, last);
        }
    }

    fn go_on(&mut self, from: usize, grip: usize, last: usize) {
        let (l, grid) = (self.looker, self.looker.grid);
        let Reached { station, hand_overs, .. } = self.reached[from];
        let takes = hand_overs + usize::from(station > 0);
        let mut passed: Vec<(usize, usize)> = Vec::new();
        let walked = walk(l, station, grip, last, |k, last| passed.push((k, last)));
        self.pieces_left = self.pieces_left.saturating_sub(passed.len() + 1);
        for (k, last) in passed {
            if self.known[k] || !grid.borders(k) || k == grid.last() {
                continue;
            }
            let lets_go = |last: usize| l.release(grip, k, Some(last))[1] <= PASSES_UP_TO;
            let last = if lets_go(last) {
                last
            } else if station > 0 && lets_go(k) {
                k
            } else {
                continue;
            };
            self.known[k] = true;
            self.open.insert((takes, std::cmp::Reverse(k)), self.reached.len());
            self.reached.push(Reached { station: k, last, hand_overs: takes, from: Some((from, grip)) });
        }
        let end = match walked {
            Walk::NotBegun => return,
            Walk::Through => {
                self.through = true;
                return;
            }
            Walk::Ends(end) => end,
        };
        let rank = |end: &End, grip: usize| (end.rank(), l.grips(grip));
        if self.best.as_ref().is_none_or(|b| rank(&end, grip) > rank(&b.end, b.grip)) {
            self.best = Some(Stopped { end, from, grip });
        }
    }

    fn told(self) -> Blocked {
        let (l, grid, job) = (self.looker, self.looker.grid, self.looker.rig.job);
        let Some(Stopped { end, from, grip }) = self.best else { return blocked::no_collets() };
        let farthest = grid.at(end.station);
        let mut stages = vec![(grid.at(self.reached[from].station), farthest, l.noses.get(grip).copied())];
        let mut at = &self.reached[from];
        while let Some((before, grip)) = at.from {
            let to = grid.at(at.station);
            at = &self.reached[before];
            stages.insert(0, (grid.at(at.station), to, l.noses.get(grip).copied()));
        }
        let free = stages.iter().all(|s| s.2.is_none()) && l.rig.centre().is_none();
        let no_hold = free && job.machine.counter_spindle.is_some();
        let no_hold = no_hold.then(|| {
            if l.noses.is_empty() {
                return no_hold::nowhere(l.rig);
            }
            let mut stops: Vec<usize> = self.reached.iter().map(|r| r.station).collect();
            stops.sort_unstable();
            hold::not_in_time(l, &stops, farthest)
        });
        Blocked {
            stages,
            no_hold,
            collet: l.rig.collet.map(|c| c.name.clone()),
            ..end.blocked(farthest, job.shaft.section_at(farthest))
        }
    }
}
