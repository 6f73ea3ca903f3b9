//! `hold: centre`: what the rest of the job and the machine must have for it.

use serde_saphyr::Location;

use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::job::{Holding, Machine, Shaft, Wishes};
use crate::say;

/// Checks that the machine has a centre which comes to the front face, that the front face has a hole for it, and that no hand-over is
/// wished.
pub(super) fn fits(
    r: &mut Reader,
    map: &Map,
    shaft: &Shaft,
    machine: &Machine,
    wishes: &Wishes,
    holding: Holding,
) -> Option<()> {
    let at: Location = map.place("hold");
    let Some((spindle, centre)) = machine.counter_spindle.as_ref().and_then(|c| Some((c, c.centre?))) else {
        let help = if machine.counter_spindle.is_some() {
            say!("centre-not-there-help")
        } else {
            say!("centre-no-counter-spindle-help")
        };
        r.complain(&at, Diag::new(say!("centre-not-there", machine = machine.name)).help(help));
        return None;
    };
    if !shaft.has_front_centre_hole() {
        r.complain(&at, Diag::new(say!("centre-no-hole")).help(say!("centre-no-hole-help")));
        return None;
    }
    if !wishes.hand_overs.is_empty() {
        let place = map.inner_place("wishes", "hand_over_at");
        r.complain(&place, Diag::new(say!("centre-hand-over")).help(say!("centre-hand-over-help")));
        return None;
    }
    if let (Some(bush), Some(stands_out_mm)) = (&machine.bush, centre.stands_out_mm)
        && !machine.centre_comes(holding)
    {
        let (out, nearest) = (stands_out_mm.to_string(), spindle.nearest_mm.to_string());
        let least = format!("{:.1}", spindle.nearest_mm - bush.gap_mm);
        let diag = Diag::new(say!("centre-too-short", out = out, nearest = nearest))
            .help(say!("centre-too-short-help", least = least));
        r.complain(&at, diag);
        return None;
    }
    Some(())
}
