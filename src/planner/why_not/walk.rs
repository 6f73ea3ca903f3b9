//! One stage, as far as it goes, and what stops it.

use crate::lang::Measure;
use crate::planner::states::outlook::{Looker, Side};
use crate::planner::why_not::blocked::Reason;
use crate::planner::why_not::frontier::{self, End, bent, broken, failing};
use crate::planner::why_not::wished;
use crate::process::Rig;
use crate::process::checks::{self, PASSES_UP_TO};
use crate::process::stops::SAME_MM;
use crate::say;

/// The result of a walk with one grip.
pub(super) enum Walk {
    /// The stage cannot begin with this grip.
    NotBegun,
    /// Something stops it.
    Ends(End),
    /// Nothing stops it, and the part comes off.
    Through,
}

/// Name of the rule that keeps a part with a free front from coming off.
pub(super) fn fall_rule(rig: &Rig<'_>) -> &'static str {
    if rig.job.machine.counter_spindle.is_some() { "collet" } else { "tray" }
}

/// The end of the counter-spindle's travel as told.
pub(super) fn farthest_mm(rig: &Rig<'_>) -> String {
    rig.job.machine.counter_spindle.as_ref().map_or(String::new(), |c| Measure::Place.number(c.farthest_mm))
}

/// Walks on with a grip that takes hold at station `from`, with the last re-grip at station `last`, until something
/// stops it. `passed` gets each station reached, with the last re-grip at that time.
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
        crate::spread::checkpoint();
        if k > from && grid.stations[k].wished {
            let text = say!("wish-no-grip-goes-on", at = Measure::Place.number(grid.at(k)));
            return Walk::Ends(End::by(k, wished::NAME, text));
        }
        let t = grid.carried_to(k + 1);
        let mut reasons = Vec::new();
        if let (Some(g), Some(counter)) = (nose, &machine.counter_spindle)
            && t + rig.gap_mm() - g > counter.farthest_mm + SAME_MM
        {
            let text = say!(
                "travel-end",
                nose = Measure::Place.fixed(g, 1),
                farthest = Measure::Place.number(counter.farthest_mm)
            );
            reasons.push(Reason { by: "counter_spindle_travel".into(), text });
        }
        if t > rig.centre_to_mm() + SAME_MM {
            let text = say!("travel-end-centre", farthest = farthest_mm(rig));
            reasons.push(Reason { by: "counter_spindle_travel".into(), text });
        }
        if t - grid.at(last) > stroke + SAME_MM {
            let inside = (last + 1..=k).rev().find(|m| grid.stations[*m].stop.allowed());
            match inside.filter(|_| gripped) {
                Some(m) => last = m,
                None => {
                    let text = if gripped {
                        say!("stroke-end-no-stop", stroke = Measure::Place.number(stroke))
                    } else if rig.centre().is_some() {
                        say!("stroke-end-centre", stroke = Measure::Place.number(stroke))
                    } else {
                        say!("stroke-end-front-free", stroke = Measure::Place.number(stroke))
                    };
                    reasons.push(Reason { by: "stroke".into(), text });
                    // Other reasons are looked for with the headstock as near the bush as the stroke allows.
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
    match gripped {
        false if !rig.falls() => Walk::Ends(End::by(grid.last(), fall_rule(rig), rig.not_held())),
        true if looker.last_grip(grip) > PASSES_UP_TO => {
            let nose_mm = nose.unwrap_or(0.0);
            let found = checks::of_last_grip(rig, nose_mm, rig.held_mm(nose_mm)).flatten();
            let told = |f: &checks::Finding| Reason { by: f.check.into(), text: frontier::last_grip(rig, f) };
            let reasons: Vec<Reason> = failing(found).iter().map(told).collect();
            if reasons.is_empty() {
                let text = say!("support-fails-last-grip");
                return Walk::Ends(End::by(grid.last(), "support", text));
            }
            Walk::Ends(End::new(grid.last(), reasons))
        }
        _ => Walk::Through,
    }
}
