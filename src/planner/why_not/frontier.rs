//! What stops the bar when there is no plan, and the words for it.

use crate::job::{Holding, Job};
use crate::planner::states::outlook::{Looker, Side};
use crate::planner::why_not::blocked::{Blocked, Reason};
use crate::process::checks::{self, Event, View};
use crate::process::segments::Segment;
use crate::process::stops::SAME_MM;
use crate::process::{Counter, Rig, State};

/// The reason, where the bar is too thick for the guide bush or the headstock's collet.
pub fn bar_does_not_fit(job: &Job) -> Option<Blocked> {
    let d = job.stock.diameter_mm;
    let machine = &job.machine;
    let (most, what, by) = match job.holding {
        Holding::Bush => (machine.bush.as_ref()?.max_bar_mm, "the guide bush", "bush_size"),
        Holding::NoBush => (machine.no_bush.as_ref()?.max_bar_mm, "the headstock's collet", "collet_size"),
    };
    if d <= most {
        return None;
    }
    let mut text = format!("the bar of {d} mm does not pass {what}, which takes {most} mm");
    if let (Holding::Bush, Some(n)) = (job.holding, machine.no_bush.as_ref()) {
        text += &if d <= n.max_bar_mm {
            format!("; without the bush the machine takes {} mm, for short parts", n.max_bar_mm)
        } else {
            format!(", nor the headstock's collet without it, which takes {} mm", n.max_bar_mm)
        };
    }
    Some(Blocked::found(0.0, by, text, 0))
}

/// What no plan can change: a tool without a place, or work on the front end that pushes harder than the headstock
/// holds.
pub fn work_does_not_fit(rig: &Rig<'_>, segments: &[Segment]) -> Option<Blocked> {
    if let Some(fit) = rig.tool_fit(segments).filter(|f| !f.fits()) {
        let mut reasons: Vec<String> = Vec::new();
        let count = |n: usize, what: &str| format!("{n} {what}{}", if n == 1 { "" } else { "s" });
        if fit.no_pair {
            reasons.push("the turning tools all stand on one side, so no pair can cut at once".into());
        }
        for room in fit.rooms.iter().filter(|r| r.short > 0) {
            let names: Vec<&str> = room.tools.iter().map(|t| t.name.as_str()).collect();
            let kind = room.place.key().replace('_', " ");
            reasons.push(format!(
                "{kind}: {} ({}), {}{}",
                count(room.tools.len(), "tool"),
                names.join(", "),
                count(room.places, "place"),
                if room.elsewhere > 0 { format!(" and {} elsewhere", room.elsewhere) } else { String::new() }
            ));
        }
        let text = format!("the machine has no place for every tool: {}", reasons.join("; "));
        return Some(Blocked::found(0.0, "tool_places", text, 0));
    }
    let push = checks::push::front(rig).filter(|f| !f.passes())?;
    let heaviest = checks::push::heaviest_in_front(rig).map_or(String::new(), |(task, _)| format!(" ({})", task.text));
    let place = format!("of work on the front end{heaviest} on the headstock's collet, {}", with_margin(rig));
    let text = push.told(&place);
    Some(Blocked::found(0.0, checks::push::NAME, text, 0))
}

/// The margin that a demand includes, in words.
fn with_margin(rig: &Rig<'_>) -> String {
    format!("its margin of {} in it,", rig.job.limits.torque_margin)
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
            [one, other] => format!("both stop it: {one}; and {other}"),
            all => format!("together stop it: {}", all.join("; and ")),
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
        checks::back::NAME => found.told("of the rear end under the work after part-off"),
        checks::push::NAME => found.told(&format!("of work on the rear end on the last grip, {}", with_margin(rig))),
        _ => found.told(&format!("of part-off or of work on the rear end on the last grip, {}", with_margin(rig))),
    }
}

/// What breaks when a driven tool works, by name and in words: the tool bends the bar too far, or bar that is fed on
/// for it does not hold.
pub(super) fn bent(looker: &Looker<'_>, grip: usize, station: usize, last_mm: f64) -> (&'static str, String) {
    let (rig, grid) = (looker.rig, looker.grid);
    let counter = Counter::of(looker.noses.get(grip).copied());
    let found = grid.due(station).filter_map(|(i, t)| {
        let task = &looker.tasks[i];
        let state = State { turned_mm: t, counter, guide: rig.guide(t, last_mm, t) };
        let on = if t > grid.at(station) + SAME_MM { checks::fed_on(rig, looker.segments, &state).ok()? } else { None };
        let works = checks::at_event(rig, &state, Event::Works(task)).flatten();
        Some((checks::worst(works.chain(on))?, &task.text, t))
    });
    let worst = found.max_by(|a, b| a.0.utilisation.total_cmp(&b.0.utilisation));
    worst.map_or_else(
        || (checks::drill::NAME, "a driven tool would bend the bar away more than allowed".into()),
        |(f, text, t)| (f.check, f.told(&format!("under the tool for {text}, at a turned length of {t:.1} mm,"))),
    )
}

/// The checks that fail in a state even at the lowest speed allowed, the worst first.
pub(super) fn broken(looker: &Looker<'_>, (grip, station): (usize, usize), side: Side, last_mm: f64) -> Vec<Reason> {
    let rig = looker.rig;
    let t = looker.grid.at(station);
    let nose = looker.noses.get(grip).copied();
    let state = State { turned_mm: t, counter: Counter::of(nose), guide: rig.guide(t, last_mm, t) };
    let one = |by: &str, text: &str| vec![Reason { by: by.into(), text: text.into() }];
    let Ok(answers) = rig.answers(&state) else {
        return one("support", "the supports leave the bar free to move");
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
        return one("check", "a check fails");
    }
    let held = nose.map_or("with the front free".to_string(), |g| format!("held at {g:.1} mm"));
    let told = |f: &checks::Finding| Reason {
        by: f.check.into(),
        text: format!("{held}, {}", f.told(&format!("at a turned length of {t:.1} mm"))),
    };
    found.iter().map(told).collect()
}
