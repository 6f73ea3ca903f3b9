//! How far the bar gets when there is no plan: stages one after the other, few and each as far as it goes.
//!
//! Which states hold is asked of the same looks as for a plan. But costs say nothing here, so a station is entered once, by the first way that
//! comes to it, and what leads to no new station is left alone.

use super::frontier::{self, Blocked, End, Reason, bent, broken, failing};
use super::hold;
use super::outlook::{Looker, Side};
use super::wishes;
use crate::process::checks::{self, PASSES_UP_TO};
use crate::process::stops::SAME_MM;
use std::collections::BTreeMap;

/// Pieces looked at, at most, so that an answer comes in any case: those of some hundred stages as long as a bar. What was found by then is
/// told.
const MOST_PIECES: usize = 60_000;

/// A station where a stage may begin, and how the bar came there.
struct Reached {
    station: usize,
    /// Station of the last re-grip.
    last: usize,
    hand_overs: usize,
    /// Where the stage that ends here began, and its grip.
    from: Option<(usize, usize)>,
}

/// What stops the bar where it comes farthest, and the stage that comes there.
struct Stopped {
    end: End,
    from: usize,
    grip: usize,
}

struct Search<'l, 'a> {
    looker: &'l Looker<'a>,
    reached: Vec<Reached>,
    /// By station: whether the bar came there.
    known: Vec<bool>,
    /// What is still to be gone on from: fewest hand-overs first, then the farthest.
    open: BTreeMap<(usize, std::cmp::Reverse<usize>), usize>,
    best: Option<Stopped>,
    through: bool,
    pieces_left: usize,
}

/// What comes of a walk with one grip.
pub(super) enum Walk {
    /// The stage cannot begin: another grip, or none, brought the bar here.
    NotBegun,
    /// Something stops it.
    Ends(End),
    /// Nothing does: the part comes off.
    Through,
}

/// Finds the farthest turned length, and what stops the bar there; none where it comes through.
///
/// A stage begins with a re-grip, or goes on with the headstock where the first way found left it. A plan may leave it elsewhere, so that
/// now and then there is one all the same.
pub fn find(looker: &Looker<'_>) -> Option<Blocked> {
    let search = Search::of(looker);
    (!search.through).then(|| search.told())
}

/// Whether the bar comes through, where nobody asks what stops it else.
pub fn comes_through(looker: &Looker<'_>) -> bool {
    Search::of(looker).through
}

impl<'l, 'a> Search<'l, 'a> {
    /// Goes as far as the bar comes.
    fn of(looker: &'l Looker<'a>) -> Search<'l, 'a> {
        let start = Reached { station: 0, last: 0, hand_overs: 0, from: None };
        let mut search = Search {
            looker,
            reached: vec![start],
            known: vec![false; looker.grid.len()],
            open: BTreeMap::from([((0, std::cmp::Reverse(0)), 0)]),
            best: None,
            through: false,
            pieces_left: MOST_PIECES,
        };
        search.known[0] = true;
        let most = looker.rig.job.wishes.at_most_hand_overs.unwrap_or(usize::MAX);
        while let Some((_, from)) = search.open.pop_first() {
            let (station, hand_overs) = (search.reached[from].station, search.reached[from].hand_overs);
            if station == 0 {
                search.go_on(from, looker.free(), 0);
            } else if hand_overs < most {
                // The nearest to the bush reaches farthest as a rule.
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

    /// Goes on with a grip where that may lead to a new station, or may tell more of the place where the bar stops.
    fn try_grip(&mut self, from: usize, grip: usize) {
        let Reached { station, last, .. } = self.reached[from];
        let l = self.looker;
        let next = (station + 1..l.grid.len()).find(|k| !self.known[*k] && l.grid.borders(*k));
        let may_come_to = |k: usize| {
            l.grid.fed_to(k) <= l.limit_mm(grip) + SAME_MM && (station..k).rev().all(|k| !l.piece(grip, k).dead)
        };
        let new = next.is_some_and(may_come_to);
        // Farther says more; then a single reason more than several, and a grip that comes as far as the free front more than that.
        let says_more = || {
            let best = self.best.as_ref().map(|b| (b.end.station, b.end.is_single() && l.grips(b.grip)));
            best.is_none_or(|(far, clear)| may_come_to((far + usize::from(clear)).clamp(station + 1, l.grid.last())))
        };
        if !new && !says_more() {
            return;
        }
        self.go_on(from, grip, station);
        if last != station && new {
            // As the stage before left the headstock, without a re-grip at the start.
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
        let Some(Stopped { end, from, grip }) = self.best else { return frontier::no_collets() };
        let farthest = grid.at(end.station);
        let mut stages = vec![(grid.at(self.reached[from].station), farthest, l.noses.get(grip).copied())];
        let mut at = &self.reached[from];
        while let Some((before, grip)) = at.from {
            let to = grid.at(at.station);
            at = &self.reached[before];
            stages.insert(0, (grid.at(at.station), to, l.noses.get(grip).copied()));
        }
        let no_hold = stages.iter().all(|s| s.2.is_none()) && job.machine.counter_spindle.is_some();
        let no_hold = no_hold.then(|| {
            if l.noses.is_empty() {
                return hold::nowhere(l.rig);
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

/// Walks on with one grip that may take hold at a station, the last re-grip at another, until something stops it; `passed` hears of each station come to, with
/// the last re-grip then.
pub(super) fn walk(
    looker: &Looker<'_>,
    from: usize,
    grip: usize,
    mut last: usize,
    mut passed: impl FnMut(usize, usize),
) -> Walk {
    let (rig, grid) = (looker.rig, looker.grid);
    let machine = &rig.job.machine;
    let nose = looker.noses.get(grip).copied();
    let stroke = machine.headstock.stroke_mm;
    let gripped = nose.is_some();
    let begins =
        || looker.outlook(grip, from, Side::Start).sure || looker.exact(grip, from, Side::Start, last).is_some();
    if gripped && !begins() {
        return Walk::NotBegun;
    }
    for k in from..grid.last() {
        crate::spread::breathe();
        if k > from && grid.stations[k].wished {
            let text = format!("no grip goes on from the hand-over wished at {} mm", grid.at(k));
            return Walk::Ends(End::by(k, wishes::NAME, text));
        }
        let t = grid.fed_to(k + 1);
        let mut reasons = Vec::new();
        if let (Some(g), Some(counter)) = (nose, &machine.counter_spindle)
            && t + rig.gap_mm() - g > counter.farthest_mm + SAME_MM
        {
            let text = format!(
                "the counter-spindle that holds at {g:.1} mm is at the end of its travel of {} mm",
                counter.farthest_mm
            );
            reasons.push(Reason { by: "counter_spindle_travel".into(), text });
        }
        if t - grid.at(last) > stroke + SAME_MM {
            let inside = (last + 1..=k).rev().find(|m| grid.stations[*m].stop.allowed());
            match inside.filter(|_| gripped) {
                Some(m) => last = m,
                None => {
                    let why = if gripped {
                        "and no surface on the way may be interrupted"
                    } else {
                        "and it must not re-grip while the front is free"
                    };
                    let text = format!("the headstock is at the end of its stroke of {stroke} mm, {why}");
                    reasons.push(Reason { by: "stroke".into(), text });
                    // What else stops the bar is looked at with the headstock as near the bush as it comes.
                    last = (last..k).find(|m| t - grid.at(*m) <= stroke + SAME_MM).unwrap_or(k);
                }
            }
        }
        for (station, side) in [(k, Side::Start), (k + 1, Side::End)] {
            if looker.outlook(grip, station, side).sure || looker.exact(grip, station, side, last).is_some() {
                continue;
            }
            reasons.extend(broken(looker, (grip, station), side, grid.at(last)));
        }
        let drill = looker.drill(grip, k + 1, Some(last))[1];
        if drill > PASSES_UP_TO {
            let (by, text) = bent(looker, grip, k + 1, grid.at(last));
            reasons.push(Reason { by: by.into(), text });
        }
        if !reasons.is_empty() {
            return Walk::Ends(End::new(k, reasons));
        }
        passed(k + 1, last);
    }
    match (gripped, machine.counter_spindle.is_some()) {
        (false, true) => Walk::Ends(End::by(grid.last(), "collet", "nothing holds the part at part-off".into())),
        (true, _) if looker.last_grip(grip) > PASSES_UP_TO => {
            let nose_mm = nose.unwrap_or(0.0);
            let found = checks::of_last_grip(rig, nose_mm, rig.held_mm(nose_mm)).flatten();
            let told = |f: &checks::Finding| Reason { by: f.check.into(), text: frontier::last_grip(rig, f) };
            let reasons: Vec<Reason> = failing(found).iter().map(told).collect();
            if reasons.is_empty() {
                let text = "the last grip does not hold the part after part-off".into();
                return Walk::Ends(End::by(grid.last(), "support", text));
            }
            Walk::Ends(End::new(grid.last(), reasons))
        }
        _ => Walk::Through,
    }
}
