//! Features: when they can be cut, with which force, and how long they take.
//!
//! A cross-driven tool stands `reach` in front of the cutting tool, so what lies at `z` comes under it when
//! `t = z + reach`. Times: a hole at `f = 0.02 d`, 25 m/min, plus 4 s; a centre hole 4 s; flats and keyseats milled at
//! 150 mm/min, with 2 s to index or to dip in; a knurl rolled at 0.2 mm a turn and half the speed. Common practice, no
//! source.

use super::rig::Rig;
use crate::job::{End, FeatureKind, SectionKind};
use crate::mechanics::drilling;
use crate::units::spindle_rpm;

const DRILL_VC_M_PER_MIN: f64 = 25.0;
const DRILL_EXTRA_S: f64 = 4.0;
const CENTRE_S: f64 = 4.0;
const MILL_MM_PER_MIN: f64 = 150.0;
const MILL_EXTRA_S: f64 = 2.0;
const KNURL_FEED_MM: f64 = 0.2;
const KNURL_SPEED_SHARE: f64 = 0.5;

/// A piece of work that is not turning.
#[derive(Debug, Clone, PartialEq)]
pub struct Task {
    /// Kind, as printed.
    pub kind: &'static str,
    /// What it is, in words.
    pub text: String,
    /// Place: the middle of a hole, the rear end of what is milled, mm.
    pub at_mm: f64,
    /// Whether a cross-driven tool cuts it at its reach; else at the very start.
    pub cross: bool,
    /// Radial thrust on the bar that the `drill` check looks at, N.
    pub thrust_n: Option<f64>,
    /// Time, s.
    pub time_s: f64,
}

impl Task {
    /// Turned length at which it is done, for a reach of the cross-driven tools, mm.
    pub fn moment_mm(&self, reach_mm: f64) -> f64 {
        if self.cross { self.at_mm + reach_mm } else { 0.0 }
    }
}

impl Rig<'_> {
    /// Everything to do before part-off that is not turning, in the order of the shaft.
    pub fn tasks(&self) -> Vec<Task> {
        let shaft = &self.job.shaft;
        let mut tasks: Vec<Task> = shaft.features.iter().filter_map(|f| self.feature_task(&f.kind)).collect();
        for (i, section) in shaft.sections.iter().enumerate() {
            let length = section.length_mm();
            match section.kind {
                SectionKind::Flats { sides, across_flats_mm, .. } => tasks.push(Task {
                    kind: "flats",
                    text: format!("{sides} flats, {across_flats_mm} across, on {}", section.label(i)),
                    at_mm: section.to_mm,
                    cross: true,
                    thrust_n: None,
                    time_s: f64::from(sides) * (60.0 * length / MILL_MM_PER_MIN + MILL_EXTRA_S),
                }),
                SectionKind::Knurl { diameter_mm } => {
                    let rpm = KNURL_SPEED_SHARE * spindle_rpm(self.job.cutting.vc_m_per_min, diameter_mm);
                    let rpm = rpm.min(self.machine_rpm(true));
                    tasks.push(Task {
                        kind: "knurl",
                        text: format!("knurl on {}", section.label(i)),
                        at_mm: section.to_mm,
                        cross: true,
                        thrust_n: None,
                        time_s: 60.0 * length / (KNURL_FEED_MM * rpm) + MILL_EXTRA_S,
                    });
                }
                _ => {}
            }
        }
        tasks.sort_by(|a, b| a.moment_mm(0.0).total_cmp(&b.moment_mm(0.0)));
        tasks
    }

    fn feature_task(&self, kind: &FeatureKind) -> Option<Task> {
        let shaft = &self.job.shaft;
        match kind {
            FeatureKind::CrossHole { diameter_mm, at_mm, thrust_n } => {
                let depth = shaft.sections.get(shaft.section_at(*at_mm)).map_or(0.0, |s| s.bending_mm(*at_mm));
                let rpm = spindle_rpm(DRILL_VC_M_PER_MIN, *diameter_mm);
                Some(Task {
                    kind: "cross_hole",
                    text: format!("cross hole Ø{diameter_mm}"),
                    at_mm: *at_mm,
                    cross: true,
                    thrust_n: Some(thrust_n.unwrap_or_else(|| drilling::thrust_n(&self.resistance, *diameter_mm))),
                    time_s: 60.0 * depth / (drilling::feed_mm(*diameter_mm) * rpm) + DRILL_EXTRA_S,
                })
            }
            FeatureKind::Keyseat { width_mm, depth_mm, from_mm, to_mm } => Some(Task {
                kind: "keyseat",
                text: format!("keyseat {width_mm} × {depth_mm}, {from_mm} to {to_mm}"),
                at_mm: *to_mm,
                cross: true,
                thrust_n: None,
                time_s: 60.0 * (to_mm - from_mm + depth_mm) / MILL_MM_PER_MIN + MILL_EXTRA_S,
            }),
            FeatureKind::CentreHole { designation, end: End::Front, .. } => Some(Task {
                kind: "centre_hole",
                text: format!("centre hole {designation}, front"),
                at_mm: 0.0,
                cross: false,
                thrust_n: None,
                time_s: CENTRE_S,
            }),
            FeatureKind::CentreHole { end: End::Back, .. } => None,
        }
    }

    /// Stretches of the shaft that a grip must keep clear of, mm: cross holes and keyseats.
    pub fn no_grip_stretches(&self) -> Vec<(f64, f64)> {
        let features = self.job.shaft.features.iter();
        features
            .filter_map(|f| match f.kind {
                FeatureKind::CrossHole { diameter_mm, at_mm, .. } => {
                    Some((at_mm - diameter_mm / 2.0, at_mm + diameter_mm / 2.0))
                }
                FeatureKind::Keyseat { from_mm, to_mm, .. } => Some((from_mm, to_mm)),
                FeatureKind::CentreHole { .. } => None,
            })
            .collect()
    }
}
