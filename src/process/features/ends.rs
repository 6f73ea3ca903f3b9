//! Work on an end of the shaft: facing, centre holes, holes on the axis, taps, sockets, keyways, texts on the face.
//!
//! Drills work as for cross holes, and retract once for every diameter of depth beyond three. Taps run in and out at the speed of the
//! material's class. Shaving is done at 6 m/min with a rapid return, with the spindle indexed and held. Texts are engraved at
//! 200 mm/min, with a lift between strokes. Common practice, no source.

use super::super::cutter::DEFAULT_FEED_MM;
use super::super::rig::Rig;
use super::super::tool::Tool;
use super::{CENTRE_S, DRILL_EXTRA_S, tap_drill_mm};
use crate::job::thread::Thread;
use crate::job::{End, Engraved, FeatureKind, Forming, Place, Tapped, engraving};
use crate::lang::Measure;
use crate::mechanics::{cutting, drilling, shaving};
use crate::say;
use crate::units::spindle_rpm;

/// Depth a drill goes without a retraction, in diameters, and below it the time of one retraction, s.
const PECK_FROM: f64 = 3.0;
const PECK_S: f64 = 1.0;
/// Length of a drill's point (118°), in diameters.
const POINT_SHARE: f64 = 0.3;
/// Radial force of a drill on the axis as a share of its thrust. Common practice, no source.
const AXIAL_DRILL_RADIAL_SHARE: f64 = 0.10;
/// Run-in of a tap, in pitches, and below it its approach, s.
const TAP_RUN_IN: f64 = 3.0;
const TAP_EXTRA_S: f64 = 2.0;
const SHAVE_M_PER_MIN: f64 = 6.0;
/// Run-in of a shaving tool in front of the face, mm, and below it the time of reversing twice, s.
const SHAVE_RUN_IN_MM: f64 = 1.0;
const SHAVE_REVERSAL_S: f64 = 0.2;
/// Time to index the spindle and hold it, s.
const INDEX_S: f64 = 0.5;
/// Time of punching: approach, blow and return, s.
const PUNCH_S: f64 = 3.0;
const ENGRAVE_MM_PER_MIN: f64 = 200.0;
/// Time to lift the engraving cutter and move to the next stroke, s, and below it its approach, s.
const ENGRAVE_LIFT_S: f64 = 0.3;
const ENGRAVE_EXTRA_S: f64 = 2.0;

/// A piece of work on an end.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct EndWork {
    pub kind: &'static str,
    pub text: String,
    pub axial_n: f64,
    pub radial_n: f64,
    pub torque_nm: f64,
    pub time_s: f64,
    pub tool: Tool,
}

/// Time of tapping to a depth and out again, at a cutting speed and at most `most_rpm`, s.
pub(super) fn tapping_s(thread: &Thread, depth_mm: f64, vc_m_per_min: f64, most_rpm: f64) -> f64 {
    let rpm = spindle_rpm(vc_m_per_min, thread.major_mm).min(most_rpm);
    2.0 * 60.0 * (depth_mm + TAP_RUN_IN * thread.pitch_mm) / (thread.lead_mm() * rpm) + TAP_EXTRA_S
}

/// Time of engraving a text, s. The reader of the job has checked that every letter is known.
pub(super) fn engraving_s(text: &str, height_mm: f64) -> f64 {
    let path = engraving::path(text, height_mm).ok();
    path.map_or(0.0, |p| 60.0 * p.length_mm / ENGRAVE_MM_PER_MIN + p.strokes as f64 * ENGRAVE_LIFT_S) + ENGRAVE_EXTRA_S
}

/// Time of facing from a diameter to the axis at a constant cutting speed, with the spindle limited to `most_rpm`, s.
///
/// - **Source**: any machining text: `t = π d²/(4000 vc f)` min without a limit of the speed. With it, derived here.
fn facing_s(diameter_mm: f64, vc_m_per_min: f64, feed_mm: f64, most_rpm: f64) -> f64 {
    let capped_mm = spindle_rpm(vc_m_per_min, 1.0) / most_rpm;
    let at_most = capped_mm.min(diameter_mm);
    let outside = std::f64::consts::PI * (diameter_mm.powi(2) - at_most.powi(2)) / (4000.0 * vc_m_per_min * feed_mm);
    60.0 * (outside + at_most / 2.0 / (feed_mm * most_rpm))
}

impl Rig<'_> {
    /// The works of a feature on an end; empty if the feature is not on this end.
    pub(super) fn end_works(&self, kind: &FeatureKind, end: End) -> Vec<EndWork> {
        let fixed = if end == End::Front { Place::FrontFixed } else { Place::BackFixed };
        let driven = if end == End::Front { Place::FrontDriven } else { Place::BackDriven };
        let work = |kind, text: String, tool: Tool, time_s| EndWork {
            kind,
            text,
            axial_n: 0.0,
            radial_n: 0.0,
            torque_nm: 0.0,
            time_s,
            tool,
        };
        match kind {
            FeatureKind::CentreHole { designation, pilot_mm, end: e, .. } if *e == end => {
                let tool = Tool::new(fixed, say!("tool-centre-drill", hole = designation));
                let centre = work("centre_hole", say!("work-centre-hole", hole = designation), tool, CENTRE_S);
                vec![self.drilled(centre, *pilot_mm)]
            }
            FeatureKind::Facing { depth_mm, end: e } if *e == end => vec![self.facing(*depth_mm, end)],
            FeatureKind::AxialHole { diameter_mm, depth_mm, end: e } if *e == end => {
                let mut hole = self.axial_hole(*diameter_mm, *depth_mm, end, fixed);
                hole.text = say!(
                    "work-hole",
                    diameter = Measure::Size.number(*diameter_mm),
                    depth = Measure::Size.number(*depth_mm)
                );
                vec![hole]
            }
            FeatureKind::TappedHole { thread, place: Tapped::InEnd { depth_mm, drill_depth_mm, end: e } }
                if *e == end =>
            {
                let name = &thread.designation;
                let mut works = Vec::new();
                if !self.is_drilled(tap_drill_mm(thread), *drill_depth_mm, end) {
                    let mut hole = self.axial_hole(tap_drill_mm(thread), *drill_depth_mm, end, fixed);
                    hole.text = say!("work-hole-for-thread", hole = hole.text, thread = name);
                    works.push(hole);
                }
                let torque = drilling::tapping_torque_nmm(&self.resistance, thread.major_mm, thread.pitch_mm);
                let tool = Tool::new(fixed, say!("tool-tap", thread = name));
                let time_s = tapping_s(thread, *depth_mm, self.speeds().tap_m_per_min, self.end_rpm(end));
                let tap = work(
                    "tapped_hole",
                    say!("work-tap", thread = name, depth = Measure::Size.number(*depth_mm)),
                    tool,
                    time_s,
                );
                works.push(EndWork { torque_nm: torque / 1000.0, ..tap });
                works
            }
            FeatureKind::HexSocket { across_flats_mm: s, depth_mm, step_mm, forming, end: e } if *e == end => {
                let mut works = Vec::new();
                if !self.is_drilled(*s, *depth_mm, end) {
                    let mut hole = self.axial_hole(*s, *depth_mm, end, fixed);
                    hole.text = say!("work-hole-for-socket", hole = hole.text);
                    works.push(hole);
                }
                works.push(match forming {
                    Forming::Shaved => {
                        let shaved = shaving::hexagon(&self.resistance, *s, *step_mm);
                        let text = say!(
                            "work-socket-shaved",
                            size = Measure::Size.number(*s),
                            depth = Measure::Size.number(*depth_mm),
                            strokes = shaved.each
                        );
                        let tool = Tool::new(fixed, say!("tool-shaving-hexagon", size = Measure::Size.number(*s)));
                        let time_s = self.strokes_s(shaved.strokes, *depth_mm) + shaving::CORNERS as f64 * INDEX_S;
                        EndWork { axial_n: shaved.force_n, ..work("hex_socket", text, tool, time_s) }
                    }
                    Forming::Punched => {
                        let text = say!(
                            "work-socket-punched",
                            size = Measure::Size.number(*s),
                            depth = Measure::Size.number(*depth_mm)
                        );
                        let tool = Tool::new(fixed, say!("tool-punch", size = Measure::Size.number(*s)));
                        let axial_n = shaving::punch_n(&self.resistance, *s);
                        EndWork { axial_n, ..work("hex_socket", text, tool, PUNCH_S + INDEX_S) }
                    }
                });
                works
            }
            FeatureKind::Keyway { width_mm, depth_mm, length_mm, step_mm, end: e } if *e == end => {
                let shaved = shaving::keyway(&self.resistance, *width_mm, *depth_mm, *step_mm);
                let text = say!(
                    "work-keyway",
                    width = Measure::Size.number(*width_mm),
                    depth = Measure::Size.number(*depth_mm),
                    length = Measure::Size.number(*length_mm),
                    strokes = shaved.strokes
                );
                let tool = Tool::new(fixed, say!("tool-shaving-keyway", width = Measure::Size.number(*width_mm)));
                let time_s = self.strokes_s(shaved.strokes, *length_mm) + INDEX_S;
                vec![EndWork { axial_n: shaved.force_n, ..work("keyway", text, tool, time_s) }]
            }
            FeatureKind::Engraving { text, height_mm, place: Engraved::Face { end: e }, .. } if *e == end => {
                let time_s = engraving_s(text, *height_mm) + INDEX_S;
                vec![work(
                    "engraving",
                    say!("work-engraving", text = text, height = Measure::Size.number(*height_mm)),
                    Tool::new(driven, say!("tool-engraver")),
                    time_s,
                )]
            }
            _ => Vec::new(),
        }
    }

    /// Highest speed of the spindle that holds the bar or the part during work on an end, rev/min.
    fn end_rpm(&self, end: End) -> f64 {
        let machine = &self.job.machine;
        match (end, &machine.counter_spindle) {
            (End::Back, Some(counter)) => counter.max_rpm,
            _ => machine.headstock_rpm(),
        }
    }

    /// Whether the job has a hole of this diameter on the axis that is at least as deep.
    fn is_drilled(&self, diameter: f64, depth: f64, at: End) -> bool {
        self.job.shaft.features.iter().any(|f| match f.kind {
            FeatureKind::AxialHole { diameter_mm, depth_mm, end } => {
                end == at && (diameter_mm - diameter).abs() < 1e-6 && depth_mm >= depth
            }
            _ => false,
        })
    }

    fn drilled(&self, work: EndWork, diameter_mm: f64) -> EndWork {
        let feed_mm = self.drill_feed_mm(diameter_mm);
        let thrust = drilling::thrust_n(&self.resistance, diameter_mm, feed_mm);
        EndWork {
            axial_n: thrust,
            radial_n: AXIAL_DRILL_RADIAL_SHARE * thrust,
            torque_nm: drilling::torque_nmm(&self.resistance, diameter_mm, feed_mm) / 1000.0,
            ..work
        }
    }

    fn axial_hole(&self, diameter_mm: f64, depth_mm: f64, end: End, place: Place) -> EndWork {
        let rpm = spindle_rpm(self.speeds().drill_m_per_min, diameter_mm).min(self.end_rpm(end));
        let way_mm = depth_mm + POINT_SHARE * diameter_mm;
        let pecks = (depth_mm / diameter_mm - PECK_FROM).ceil().max(0.0);
        let time_s = 60.0 * way_mm / (self.drill_feed_mm(diameter_mm) * rpm) + pecks * PECK_S + DRILL_EXTRA_S;
        let hole = EndWork {
            kind: "axial_hole",
            text: say!(
                "work-hole",
                diameter = Measure::Size.fixed(diameter_mm, 2),
                depth = Measure::Size.number(depth_mm)
            ),
            axial_n: 0.0,
            radial_n: 0.0,
            torque_nm: 0.0,
            time_s,
            tool: Tool::new(place, say!("tool-drill", diameter = Measure::Size.fixed(diameter_mm, 2))),
        };
        self.drilled(hole, diameter_mm)
    }

    /// Facing takes a depth off along the axis with a feed across the axis. So the passive force acts along the axis and the feed force
    /// acts radially.
    fn facing(&self, depth_mm: f64, end: End) -> EndWork {
        let (job, cutting) = (self.job, &self.job.cutting);
        let diameter_mm = match end {
            End::Front => job.stock.diameter_mm,
            End::Back => job.shaft.sections.last().map_or(0.0, |s| s.largest_mm()),
        };
        let passes = (depth_mm / cutting.ap_max_mm - 1e-9).ceil().max(1.0);
        let feed_mm = cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM);
        let each_s = facing_s(diameter_mm, cutting.vc_m_per_min, feed_mm, self.end_rpm(end));
        let cut = cutting::cut(&self.resistance, &self.edge, depth_mm / passes, feed_mm);
        let tool = match end {
            End::Front => Tool::turning(job.cutting.tools),
            End::Back => Tool::new(Place::BackFixed, say!("tool-facing")),
        };
        EndWork {
            kind: "facing",
            text: say!("work-facing", depth = Measure::Size.number(depth_mm)),
            axial_n: cut.passive_n,
            radial_n: cut.feed_n,
            torque_nm: cut.main_n * diameter_mm / 2000.0,
            time_s: passes * (each_s + job.machine.segment_overhead_s),
            tool,
        }
    }

    /// Time of strokes of a length, s: in at the shaving speed, back at rapid speed.
    fn strokes_s(&self, strokes: usize, length_mm: f64) -> f64 {
        let way_m = (length_mm + SHAVE_RUN_IN_MM) / 1000.0;
        let there_and_back = 60.0 * way_m * (1.0 / SHAVE_M_PER_MIN + 1.0 / self.job.machine.rapid_m_per_min);
        strokes as f64 * (there_and_back + SHAVE_REVERSAL_S)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand with `t = π d²/(4000 vc f)`: diameter 20 mm to the axis at 150 m/min and 0.1 mm takes 1.257 s.
    #[test]
    fn facing_takes_what_the_texts_say_and_a_cap_makes_it_longer() {
        assert!((facing_s(20.0, 150.0, 0.1, 1e9) - 1.257).abs() < 5e-4);
        // The speed is limited from the start: 10 mm of radius at 0.1 mm and 1000 rev/min.
        assert!((facing_s(20.0, 150.0, 0.1, 1000.0) - 6.0).abs() < 1e-9);
        let between = facing_s(20.0, 150.0, 0.1, 6000.0);
        assert!(between > 1.257 && between < 6.0, "{between}");
    }
}
