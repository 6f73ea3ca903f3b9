//! What stops the bar when there is no plan, and the words for it.

use crate::job::{BackWork, Holding, Job, Tools};
use crate::lang::Measure;
use crate::lang::lists;
use crate::planner::states::outlook::{Looker, Side};
use crate::planner::why_not::blocked::{Blocked, Reason};
use crate::process::checks::{self, Event, View};
use crate::process::segments::Segment;
use crate::process::stops::SAME_MM;
use crate::process::{Counter, Rig, State};
use crate::say;

/// The reason, where the bar is too thick for the guide bush or the headstock's collet.
pub fn bar_does_not_fit(job: &Job) -> Option<Blocked> {
    let d = job.stock.diameter_mm;
    let machine = &job.machine;
    let without_bush = machine.no_bush.as_ref().map(|n| n.max_bar_mm);
    let (most, by) = match job.holding {
        Holding::Bush => (machine.bush.as_ref()?.max_bar_mm, "bush_size"),
        Holding::NoBush => (without_bush?, "collet_size"),
    };
    if d <= most {
        return None;
    }
    let (bar, most) = (Measure::Size.number(d), Measure::Size.number(most));
    let text = match (job.holding, without_bush) {
        (Holding::NoBush, _) => say!("bar-too-thick-for-collet", bar = bar, most = most),
        (Holding::Bush, None) => say!("bar-too-thick-for-bush", bar = bar, most = most),
        (Holding::Bush, Some(n)) if d <= n => {
            say!("bar-too-thick-for-bush-only", bar = bar, most = most, collet = Measure::Size.number(n))
        }
        (Holding::Bush, Some(n)) => {
            say!("bar-too-thick-for-both", bar = bar, most = most, collet = Measure::Size.number(n))
        }
    };
    Some(Blocked::found(0.0, by, text, 0))
}

/// What no plan can change: a tool without a place, or work on the front end that pushes harder than the headstock
/// holds or the bar stands.
pub fn work_does_not_fit(rig: &Rig<'_>, segments: &[Segment]) -> Option<Blocked> {
    if let Some(fit) = rig.tool_fit(segments).filter(|f| !f.fits()) {
        let mut reasons: Vec<String> = Vec::new();
        if fit.no_pair {
            let tandem = rig.job.cutting.tools == Tools::Tandem;
            reasons.push(if tandem { say!("tools-no-tandem") } else { say!("tools-no-pair") });
        }
        for room in fit.rooms.iter().filter(|r| r.short > 0) {
            let names: Vec<&str> = room.tools.iter().map(|t| t.name.as_str()).collect();
            let (place, needed, names) = (room.place.in_words(), room.tools.len(), lists::commas(&names));
            let places = room.places;
            reasons.push(match room.elsewhere {
                0 => say!("tools-room", place = place, needed = needed, names = names, places = places),
                elsewhere => say!(
                    "tools-room-elsewhere",
                    place = place,
                    needed = needed,
                    names = names,
                    places = places,
                    elsewhere = elsewhere
                ),
            });
        }
        let text = say!("tools-no-place", missing = lists::semicolons(&reasons));
        return Some(Blocked::found(0.0, "tool_places", text, 0));
    }
    if let Some(refused) = rig.not_driven(segments) {
        return Some(Blocked::from(refused));
    }
    if let Some(pressed) = checks::buckling::front(rig).filter(|f| !f.passes()) {
        let text = say!("reason-front-work-presses", finding = pressed.told());
        return Some(Blocked::found(0.0, checks::buckling::NAME, text, 0));
    }
    if let Some(off) = checks::pick_up::by_centre(rig).and_then(Result::ok).filter(|f| !f.passes()) {
        let text = say!("reason-centre-comes", finding = off.told());
        return Some(Blocked::found(0.0, checks::pick_up::NAME, text, 0));
    }
    let push = checks::push::front(rig).filter(|f| !f.passes())?;
    let work = checks::push::heaviest_in_front(rig).map_or(String::new(), |(work, _)| work);
    let text = say!("reason-front-work", work = work, finding = push.told(), margin = margin(rig));
    Some(Blocked::found(0.0, checks::push::NAME, text, 0))
}

/// The margin that a demand includes.
fn margin(rig: &Rig<'_>) -> String {
    rig.job.limits.torque_margin.to_string()
}

/// Where one walk ended, and everything that stops it there. It would go on only if all of these reasons were lifted.
pub(super) struct End {
    pub(super) station: usize,
    reasons: Vec<Reason>,
}

impl End {
    /// Keeps the first reason of each check or rule.
    pub(super) fn new(station: usize, all: Vec<Reason>) -> End {
        let mut reasons: Vec<Reason> = Vec::new();
        for reason in all {
            if reasons.iter().all(|known| known.by != reason.by) {
                reasons.push(reason);
            }
        }
        End { station, reasons }
    }

    pub(super) fn by(station: usize, by: &str, text: String) -> End {
        End::new(station, vec![Reason { by: by.into(), text }])
    }

    /// Names of the reasons.
    pub(super) fn names(&self) -> Vec<String> {
        self.reasons.iter().map(|r| r.by.clone()).collect()
    }

    /// Whether there is only one reason.
    pub(super) fn is_single(&self) -> bool {
        self.reasons.len() == 1
    }

    /// The rank of an end: the farthest is highest, then one with a single reason, because lifting that one is enough.
    pub(super) fn rank(&self) -> (usize, bool) {
        (self.station, self.is_single())
    }

    /// What stops the bar there, at a turned length (mm) on a section.
    pub(super) fn blocked(self, farthest_mm: f64, section: usize) -> Blocked {
        let by = self.reasons.first().map_or(String::new(), |r| r.by.clone());
        let found = Blocked::found(farthest_mm, &by, self.told(), section);
        Blocked { together: if self.reasons.len() > 1 { self.reasons } else { Vec::new() }, ..found }
    }

    /// All that must be lifted, in words.
    pub(super) fn told(&self) -> String {
        let texts: Vec<&str> = self.reasons.iter().map(|r| r.text.as_str()).collect();
        match &texts[..] {
            [one] => (*one).to_owned(),
            all => say!("stopped-together", reasons = lists::semicolons(all)),
        }
    }
}

/// The findings that fail, the worst first.
pub(super) fn failing(found: impl Iterator<Item = checks::Finding>) -> Vec<checks::Finding> {
    let mut failing: Vec<checks::Finding> = found.filter(|f| !f.passes()).collect();
    failing.sort_by(|a, b| b.utilisation.total_cmp(&a.utilisation));
    failing
}

/// What the last grip does not hold, in words.
pub(super) fn last_grip(rig: &Rig<'_>, found: &checks::Finding) -> String {
    match found.check {
        checks::back::NAME => {
            let work = hardest(rig, |w| w.radial_force_n / w.tolerance_mm);
            say!("reason-last-grip-back", work = work, finding = found.told())
        }
        checks::buckling::NAME => {
            let work = hardest(rig, |w| w.axial_force_n);
            say!("reason-last-grip-back", work = work, finding = found.told())
        }
        checks::push::NAME => {
            let held_mm = rig.held_mm(found.at_mm);
            let work = hardest(rig, |w| w.axial_force_n.hypot(2000.0 * w.torque_nm / held_mm));
            say!("reason-last-grip-push", work = work, finding = found.told(), margin = margin(rig))
        }
        _ => match rig.share_untold(found.at_mm) {
            Some(share) => {
                let percent = format!("{:.0}", 100.0 * share);
                say!("reason-last-grip-torque-share", finding = found.told(), margin = margin(rig), percent = percent)
            }
            None => say!("reason-last-grip-torque", finding = found.told(), margin = margin(rig)),
        },
    }
}

/// The work on the rear end that loads the grip most, in words.
fn hardest(rig: &Rig<'_>, load: impl Fn(&BackWork) -> f64) -> String {
    let works = rig.back.iter().map(|b| &b.work).filter(|w| load(w) > 0.0);
    let most = works.max_by(|a, b| load(a).total_cmp(&load(b)));
    most.map_or_else(|| say!("reason-part-off"), |w| w.name.clone())
}

/// What breaks when a driven tool works, by name and in words: the tool bends the bar too far, or bar that is fed on
/// for it does not hold.
pub(super) fn bent(looker: &Looker<'_>, grip: usize, station: usize, last_mm: f64) -> (&'static str, String) {
    let (rig, grid) = (looker.rig, looker.grid);
    let nose = looker.noses.get(grip).copied();
    let found = grid.due(station).filter_map(|(i, t)| {
        let task = &looker.tasks[i];
        let state = State { turned_mm: t, counter: rig.counter(nose, t), guide: rig.guide(t, last_mm, t) };
        let on = if t > grid.at(station) + SAME_MM { checks::fed_on(rig, looker.segments, &state).ok()? } else { None };
        let works = checks::at_event(rig, &state, Event::Works(task)).flatten();
        Some((checks::worst(works.chain(on))?, &task.text, t))
    });
    let worst = found.max_by(|a, b| a.0.utilisation.total_cmp(&b.0.utilisation));
    worst.map_or_else(
        || (checks::drill::NAME, say!("drill-fails")),
        |(f, work, t)| {
            (f.check, say!("reason-under-tool", work = work, turned = Measure::Place.fixed(t, 1), finding = f.told()))
        },
    )
}

/// The checks that fail in a state even at the lowest speed allowed, the worst first.
pub(super) fn broken(looker: &Looker<'_>, (grip, station): (usize, usize), side: Side, last_mm: f64) -> Vec<Reason> {
    let rig = looker.rig;
    let t = looker.grid.at(station);
    let nose = looker.noses.get(grip).copied();
    let state = State { turned_mm: t, counter: looker.counter(grip, station), guide: rig.guide(t, last_mm, t) };
    let one = |by: &str, text: String| vec![Reason { by: by.into(), text }];
    let Ok(answers) = rig.answers(&state) else {
        return one("support", say!("support-fails"));
    };
    let piece = if side == Side::End { station - 1 } else { station };
    let segment = &looker.segments[looker.grid.segment[piece]];
    let rpm = rig.segment_rpm(segment, looker.grips(grip));
    let floor = rig.job.cutting.speed_floor * rpm;
    let rpm = rpm.min(rig.allowed_rpm(&state, &answers).rpm.max(floor));
    let view = View { rig, state: &state, answers: &answers, segment, rpm };
    let mut found = failing(checks::all(&view));
    if found.is_empty() {
        // An earlier proof found that this state breaks, but the checks here let it pass: tell the check nearest to its
        // limit.
        found.extend(checks::worst(checks::all(&view)));
    }
    if found.is_empty() {
        return one("check", say!("check-fails"));
    }
    let turned = Measure::Place.fixed(t, 1);
    let told = |f: &checks::Finding| Reason {
        by: f.check.into(),
        text: match nose {
            None if state.counter == Counter::Centre => say!("reason-on-centre", turned = turned, finding = f.told()),
            None => say!("reason-front-free", turned = turned, finding = f.told()),
            Some(g) => say!("reason-gripped", nose = Measure::Place.fixed(g, 1), turned = turned, finding = f.told()),
        },
    };
    found.iter().map(told).collect()
}
