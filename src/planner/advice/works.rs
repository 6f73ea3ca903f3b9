//! Single changes of work other than turning: a place for a tool, a socket that is shaved instead of punched, a finer
//! stroke.

use crate::job::{FeatureKind, Forming, Job, Place};
use crate::planner::advice::candidate::{Candidate, Ease, number, once};
use crate::process::Rig;
use crate::say;
use serde_json::json;

/// The finest step of a shaving tool that is worth trying, mm.
const FINEST_STEP_MM: f64 = 0.01;

/// Changes worth trying.
pub fn all(job: &Job) -> Vec<Candidate> {
    let mut list = places(job);
    for (i, feature) in job.shaft.features.iter().enumerate() {
        match feature.kind {
            FeatureKind::HexSocket { forming: Forming::Punched, across_flats_mm, .. } => {
                let says = say!("change-forming", size = across_flats_mm.to_string());
                list.push(once("forming", Ease::Setting, json!("punch"), json!("shave"), says, move |j| {
                    if let FeatureKind::HexSocket { forming, .. } = &mut j.shaft.features[i].kind {
                        *forming = Forming::Shaved;
                    }
                }));
            }
            FeatureKind::HexSocket { step_mm, .. } | FeatureKind::Keyway { step_mm, .. } => list.push(number(
                "step",
                Ease::Setting,
                (step_mm, FINEST_STEP_MM),
                0.005,
                |v| say!("change-step", step = format!("{v:.3}")),
                move |j, v| {
                    if let FeatureKind::HexSocket { step_mm, .. } | FeatureKind::Keyway { step_mm, .. } =
                        &mut j.shaft.features[i].kind
                    {
                        *step_mm = v;
                    }
                },
            )),
            _ => {}
        }
    }
    list
}

/// More places for tools, of each kind that has too few.
fn places(job: &Job) -> Vec<Candidate> {
    let rig = Rig::new(job, None);
    let fit = rig.segments().ok().and_then(|segments| rig.tool_fit(&segments)).filter(|fit| !fit.fits());
    let short = fit.into_iter().flat_map(|fit| fit.rooms).filter(|room| room.short > 0);
    let candidate = |room: crate::process::tooling::Room| {
        let place = room.place;
        let index = Place::ALL.iter().position(|p| *p == room.place).unwrap_or(0);
        let range = (room.places as f64, (room.places + room.short) as f64);
        number(
            &format!("tools.{}", room.place.key()),
            Ease::Machine,
            range,
            1.0,
            move |n| say!("change-tool-places", number = n.round() as usize, place = place.in_words()),
            move |j, n| {
                if let Some(tools) = &mut j.machine.tools {
                    tools.places[index] = n as usize;
                }
            },
        )
    };
    short.map(candidate).collect()
}
