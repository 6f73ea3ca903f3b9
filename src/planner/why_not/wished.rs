//! Wishes that no plan can meet.
//!
//! A wished hand-over ends every stage that comes to it, and begins a stage with the wished nose. Stretches that must
//! never be gripped are left out of the lands. So both kinds of wishes only remove ways.

use crate::planner::places::grips::Land;
use crate::planner::why_not::blocked::Blocked;
use crate::process::Rig;
use crate::process::segments::Segment;
use crate::process::stops::SAME_MM;
use crate::say;

/// Name of the rule that stops the bar where a wish cannot be met, or where no stage goes on from a wished hand-over.
pub const NAME: &str = "wish";

/// A wish that no plan with this collet can meet.
pub fn impossible(rig: &Rig<'_>, segments: &[Segment], lands: &[Land]) -> Option<Blocked> {
    let shaft = &rig.job.shaft;
    for wish in &rig.job.wishes.hand_overs {
        let section = shaft.section_at(wish.at_mm);
        let name = shaft.sections[section].label(section);
        let told = wish.told();
        let text = match (&rig.collet, wish.nose_mm) {
            (None, _) => say!("wish-impossible-no-counter-spindle", wish = told),
            _ if !rig.stop_at(segments, wish.at_mm).allowed() => {
                say!("wish-impossible-no-stop", wish = told, section = name)
            }
            (Some(collet), Some(nose)) if !on_a_land(lands, nose) => {
                say!("wish-impossible-no-grip", wish = told, collet = collet.name)
            }
            _ => continue,
        };
        return Some(Blocked::found(wish.at_mm, NAME, text, section));
    }
    None
}

fn on_a_land(lands: &[Land], nose_mm: f64) -> bool {
    lands.iter().any(|l| nose_mm >= l.nose_from_mm - SAME_MM && nose_mm <= l.nose_to_mm + SAME_MM)
}
