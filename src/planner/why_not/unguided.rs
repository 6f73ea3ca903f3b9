//! What stops the bar without a bush where no way leads on, in words: each piece is looked at state by state.

use crate::lang::Measure;
use crate::planner::sequence::unguided::{Came, POSE, Unguided};
use crate::planner::why_not::blocked::Blocked;
use crate::planner::why_not::walk::{fall_rule, farthest_mm};
use crate::planner::why_not::{frontier, no_hold};
use crate::process::checks::{self, Event, Finding, PASSES_UP_TO, View};
use crate::process::stops::SAME_MM;
use crate::process::{Answers, Guide, State};
use crate::say;

/// A state of a piece, with its answers.
struct StateAt {
    station: usize,
    state: State,
    answers: Answers,
}

/// Why a piece cannot be turned.
struct Stopped {
    rule: String,
    text: String,
}

impl Unguided<'_> {
    /// What stops the bar at the farthest station.
    pub fn blocked(&self, came: &Came) -> Blocked {
        let (grid, far) = (self.grid, came.far);
        let section = self.ground.rig.job.shaft.section_at(grid.at(far));
        let next = (far + 1..=grid.last()).find(|j| grid.borders(*j)).unwrap_or(grid.last());
        let held = came.held.iter().flat_map(|held| {
            let grips: Vec<usize> = match (*held, far) {
                (0, 0) => vec![self.noses.len()],
                (0, _) => self.allowed(far).filter(|g| self.noses[*g] <= grid.at(far)).collect(),
                (held, _) => vec![held - 1],
            };
            grips.into_iter().filter_map(|grip| self.stops(far, next, grip).and_then(|()| self.comes_off(grip)).err())
        });
        // The grips that came so far also stop here: their pieces cannot go on.
        let by = came.by.iter().filter_map(|(from, grip)| self.stops(*from, next, *grip).err());
        // A failing check says more than a travel at its end, which another grip might not have. Of several checks the
        // first is told.
        let mut stopped: Option<Stopped> = None;
        for found in held.chain(by) {
            let travel = found.rule == "counter_spindle_travel";
            stopped = Some(found);
            if !travel {
                break;
            }
        }
        let rig = self.ground.rig;
        let free = !came.gripped && rig.job.machine.counter_spindle.is_some() && rig.centre().is_none();
        let no_hold = free.then(|| no_hold::too_early(rig, &self.noses, grid.at(far))).flatten();
        let stopped = stopped.unwrap_or_else(|| Stopped { rule: "collet".into(), text: say!("front-not-gripped") });
        let collet = rig.collet.map(|c| c.name.clone());
        Blocked { no_hold, collet, ..Blocked::found(grid.at(far), &stopped.rule, stopped.text, section) }
    }

    /// An error where a grip does not hold the part at part-off.
    fn comes_off(&self, grip: usize) -> Result<(), Stopped> {
        let stopped = |found: Option<Finding>| match found {
            None => Stopped { rule: fall_rule(self.ground.rig).into(), text: self.ground.rig.not_held() },
            Some(f) => Stopped { rule: f.check.into(), text: frontier::last_grip(self.ground.rig, &f) },
        };
        self.parted(grip).map(|_| ()).map_err(stopped)
    }

    /// States of a grip from the end of a piece back to a station, as long as the supports hold the bar.
    fn column(&self, grip: usize, end: usize, down_to: usize) -> Vec<StateAt> {
        let seen = |station: usize| {
            let state = self.state(station, grip, end);
            crate::spread::checkpoint_worth(POSE);
            let answers = self.ground.rig.answers(&state).ok()?;
            Some(StateAt { station, state, answers })
        };
        (down_to..=end).rev().map_while(seen).collect()
    }

    /// An error with what stops a piece from one station to another, in the order of turning.
    fn stops(&self, i: usize, j: usize, grip: usize) -> Result<(), Stopped> {
        let (rig, grid) = (self.ground.rig, self.grid);
        let gripped = grip < self.noses.len();
        if !self.travels(i, j, grip) {
            let text = match self.noses.get(grip) {
                Some(nose) => say!("travel-too-short", nose = Measure::Place.fixed(*nose, 1)),
                None => say!("travel-end-centre", farthest = farthest_mm(rig)),
            };
            return Err(Stopped { rule: "counter_spindle_travel".into(), text });
        }
        let shut = |k: usize| grid.is_shut(&self.state(k, grip, j));
        if !grid.shut.is_empty() && (i..=j).any(shut) {
            return Err(Stopped { rule: "support".into(), text: say!("proof-found-limit") });
        }
        // The end first: most pieces that fail do so there.
        self.passes(j - 1, &self.column(grip, j, j), gripped)?;
        let column = self.column(grip, j, i);
        let mut k = i;
        while k < j {
            let index = grid.segment[k];
            let last = (k..j).take_while(|n| grid.segment[*n] == index).last().unwrap_or(k);
            self.passes(k, &column[(j - last - 1)..=(j - k)], gripped)?;
            k = last + 1;
        }
        let here = column.iter().filter(|s| s.station > i);
        let here = here.flat_map(|seen| grid.stations[seen.station].tasks.iter().map(|t| (*t, seen.state)));
        let behind = grid.beyond.iter().filter(|_| j == grid.last()).map(|(t, mm)| (*t, self.fed_on(grip, *mm)));
        for (task, state) in here.chain(behind).map(|(t, state)| (&self.ground.tasks[t], state)) {
            let turned = Measure::Place.fixed(state.turned_mm, 1);
            let work = &task.text;
            if state.turned_mm > grid.at(j) + SAME_MM {
                match checks::fed_on(rig, self.ground.segments, &state) {
                    Ok(Some(f)) if !f.passes() => {
                        return Err(told(&f, say!("reason-fed-on", turned = turned, work = work, finding = f.told())));
                    }
                    Ok(_) => {}
                    Err(_) => return Err(Stopped { rule: "support".into(), text: say!("support-fails") }),
                }
            }
            for found in checks::at_event(rig, &state, Event::Works(task)) {
                match found {
                    Ok(f) if f.passes() => {}
                    Ok(f) => {
                        return Err(told(
                            &f,
                            say!("reason-under-tool", work = work, turned = turned, finding = f.told()),
                        ));
                    }
                    Err(_) => return Err(Stopped { rule: "support".into(), text: say!("support-fails") }),
                }
            }
        }
        Ok(())
    }

    /// Checks consecutive states of one segment. An error names the check that fails.
    fn passes(&self, piece: usize, seen: &[StateAt], gripped: bool) -> Result<(), Stopped> {
        let rig = self.ground.rig;
        let segment = &self.ground.segments[self.grid.segment[piece]];
        let wanted = rig.segment_rpm(segment, gripped);
        let floor = rig.job.cutting.speed_floor * wanted;
        let allowed = seen.iter().map(|s| rig.allowed_rpm(&s.state, &s.answers).rpm).fold(f64::INFINITY, f64::min);
        let rpm = wanted.min(allowed.max(floor));
        for s in seen {
            let view = View { rig, state: &s.state, answers: &s.answers, segment, rpm };
            for f in checks::all(&view) {
                if f.utilisation > PASSES_UP_TO {
                    let turned = Measure::Place.fixed(s.state.turned_mm, 1);
                    let text = match s.state.guide {
                        Guide::Collet { stage_end_mm } => {
                            let end = Measure::Place.fixed(stage_end_mm, 1);
                            say!("reason-bar-fed-out", turned = turned, end = end, finding = f.told())
                        }
                        _ => say!("reason-turned", turned = turned, finding = f.told()),
                    };
                    return Err(told(&f, text));
                }
            }
        }
        let flexibilities: Vec<f64> = seen.iter().map(|s| s.answers.tool_mm_per_n).collect();
        if let Some(f) = checks::cut::along(rig, segment, &flexibilities)
            && !f.passes()
        {
            let end = seen.first().map_or(0.0, |s| s.state.turned_mm);
            return Err(told(&f, say!("reason-along-cut", end = Measure::Place.fixed(end, 1), finding = f.told())));
        }
        Ok(())
    }
}

fn told(f: &Finding, text: String) -> Stopped {
    Stopped { rule: f.check.into(), text }
}
