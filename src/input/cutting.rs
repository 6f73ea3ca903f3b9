//! `cutting`: tools, speeds and feeds. The whole map may be left out.

use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields;
use crate::job::{Cutting, Finisher, Material, Side, Tools};
use crate::lang::Measure;
use crate::say;

const KEYS: [&str; 15] = [
    "tools",
    "finisher",
    "vc",
    "feed",
    "nose_radius",
    "approach_angle",
    "ap_max",
    "ap_finish",
    "speed_floor",
    "lag",
    "unbalance",
    "in_plane_share",
    "passive_floor",
    "ra_factor",
    "ra_floor",
];

/// Reads how the part is cut. The material gives the cutting speed if the job does not. Assumptions go to the notes.
pub(super) fn read(r: &mut Reader, job: &Map, material: Option<&Material>, notes: &mut Vec<String>) -> Option<Cutting> {
    let empty = Map::empty(job.at);
    let map = match r.optional(job, "cutting")? {
        Some(node) => r.map(node, &KEYS)?,
        None => empty,
    };
    let ways = [("single", Tools::Single), ("opposed", Tools::Opposed), ("tandem", Tools::Tandem)];
    let tools = r.choice(&map, "tools", &ways, Some(Tools::Single));
    let vc = speed(r, &map, material, notes);
    let feed = r.number_maybe(&map, &fields::FEED);
    let nose_radius = r.number_or(&map, &fields::NOSE_RADIUS, None);
    let approach = r.number_or(&map, &fields::APPROACH_ANGLE, None);
    let ap_max = r.number_or(&map, &fields::AP_MAX, None);
    let shallow = ap_max.zip(fields::AP_FINISH.default).map(|(ap_max, usual)| ap_max.min(usual));
    let ap_finish = r.number_or(&map, &fields::AP_FINISH, shallow);
    let speed_floor = r.number_or(&map, &fields::SPEED_FLOOR, None);
    let lag = r.number_or(&map, &fields::LAG, None);
    let unbalance = r.number_or(&map, &fields::UNBALANCE, None);
    let in_plane = r.number_or(&map, &fields::IN_PLANE_SHARE, None);
    let floor = r.number_or(&map, &fields::PASSIVE_FLOOR, None);
    let ra_factor = r.number_or(&map, &fields::RA_FACTOR, None);
    let ra_floor = r.number_or(&map, &fields::RA_FLOOR, None);
    let finisher = finisher(r, &map, tools, [nose_radius, approach]);
    let beside = tools == Some(Tools::Tandem) && lag.is_some_and(|lag| lag <= 0.0);
    if beside {
        r.complain(&map.place("lag"), Diag::new(say!("cutting-no-lag")).help(say!("cutting-no-lag-help")));
    }
    let (ap_max_mm, mut ap_finish_mm) = (ap_max?, ap_finish?);
    // The house's last pass is no deeper than what the job allows.
    if !map.tried("ap_finish") {
        ap_finish_mm = ap_finish_mm.min(ap_max_mm);
    }
    if ap_finish_mm > ap_max_mm {
        let diag = Diag::new(say!("cutting-last-pass", depth = ap_finish_mm.to_string()))
            .help(say!("cutting-last-pass-help", most = ap_max_mm.to_string()));
        r.complain(&map.place("ap_finish"), diag);
        return None;
    }
    Some(Cutting {
        tools: tools?,
        finisher: finisher?,
        vc_m_per_min: vc?,
        feed_mm: feed?,
        nose_radius_mm: nose_radius?,
        approach_deg: approach?,
        ap_max_mm,
        ap_finish_mm,
        speed_floor: speed_floor?,
        lag_mm: lag.filter(|_| !beside)?,
        unbalance: unbalance?,
        in_plane_share: in_plane?,
        passive_floor: floor?,
        ra_factor: ra_factor?,
        ra_floor_um: ra_floor?,
    })
}

/// The finishing tool of a tandem. What is left out is as with the roughing tool, given as nose radius and approach angle.
fn finisher(
    r: &mut Reader,
    cutting: &Map,
    tools: Option<Tools>,
    [nose, approach]: [Option<f64>; 2],
) -> Option<Finisher> {
    let Some(node) = r.optional(cutting, "finisher")? else {
        return Some(Finisher { side: Side::Same, nose_radius_mm: nose?, approach_deg: approach? });
    };
    let map = r.map(node, &["side", "nose_radius", "approach_angle"])?;
    if let Some(tools) = tools.filter(|t| *t != Tools::Tandem) {
        let diag = Diag::new(say!("cutting-finisher-alone", tools = tools.key()));
        r.complain(&cutting.place("finisher"), diag.help(say!("cutting-finisher-alone-help")));
        return None;
    }
    let side = r.choice(&map, "side", &[("same", Side::Same), ("opposite", Side::Opposite)], Some(Side::Same));
    let nose_radius = r.number_maybe(&map, &fields::FINISHER_NOSE_RADIUS);
    let approach_angle = r.number_maybe(&map, &fields::FINISHER_APPROACH_ANGLE);
    Some(Finisher { side: side?, nose_radius_mm: nose_radius?.or(nose)?, approach_deg: approach_angle?.or(approach)? })
}

fn speed(r: &mut Reader, map: &Map, material: Option<&Material>, notes: &mut Vec<String>) -> Option<f64> {
    let given = r.number_maybe(map, &fields::VC)?;
    // Without a material an error is reported already, and there is no usual speed.
    let material = material?;
    match (given, material.vc_m_per_min) {
        (Some(vc), Some((low, high))) => {
            if vc < low || vc > high {
                notes.push(say!(
                    "note-speed-unusual",
                    speed = Measure::Speed.number(vc),
                    low = Measure::Speed.number(low),
                    high = Measure::Speed.number(high),
                    material = material.name
                ));
            }
            Some(vc)
        }
        (Some(vc), None) => Some(vc),
        (None, Some((low, high))) => {
            let vc = (low + high) / 2.0;
            notes.push(say!(
                "note-speed-assumed",
                speed = Measure::Speed.number(vc),
                low = Measure::Speed.number(low),
                high = Measure::Speed.number(high),
                material = material.name
            ));
            Some(vc)
        }
        (None, None) => {
            let diag =
                Diag::new(say!("cutting-no-speed", material = material.name)).help(say!("cutting-no-speed-help"));
            r.complain(&map.at, diag);
            None
        }
    }
}
