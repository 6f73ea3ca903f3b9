//! Features: the moment at which they can be cut, their forces, tools and times.
//!
//! A cross-driven tool stands `reach` in front of the turning tool. So a feature at `z` comes under it at the turned length
//! `t = z + reach`. Work on the front end (`ends`) is done in the order of the job before turning begins, while the bar stands out by
//! no more than the gap. Work on the rear end is done after part-off.
//!
//! Speeds and feeds of drills, taps and cutters are those of the material's class (`job/materials/speeds.rs`), with driven tools no faster
//! than the machine drives them. Times besides: a hole 4 s; a centre hole 4 s in all; flats and keyseats 2 s to index or to plunge, by a
//! cutter as wide as the slot (two teeth) or the flat (four teeth); a knurl rolled at 0.2 mm per turn and half the turning speed. Common
//! practice, no source. A thread is rolled in 20 turns at 40 m/min.

mod chips;
mod ends;

use super::rig::Rig;
use super::tool::{BackTask, Tool};
use crate::job::materials::{Speeds, fz_mm};
use crate::job::plan::{FeatureMoment, Plan};
use crate::job::{BackWork, End, Engraved, FeatureKind, Place, SectionKind, Tapped, ThreadBy};
use crate::lang::Measure;
use crate::mechanics::{drilling, milling};
use crate::say;
use crate::units::spindle_rpm;

pub use chips::{ToolChip, ToolKind, turning_chips};

/// Two places closer than this are the same place of a stored plan, mm.
pub const SAME_MM: f64 = 1e-4;
const DRILL_EXTRA_S: f64 = 4.0;
const CENTRE_S: f64 = 4.0;
const MILL_EXTRA_S: f64 = 2.0;
/// Teeth of a slot cutter, and below it of a cutter for flats.
const SLOT_TEETH: f64 = 2.0;
const FLAT_TEETH: f64 = 4.0;
const KNURL_FEED_MM: f64 = 0.2;
const KNURL_SPEED_SHARE: f64 = 0.5;
/// Rolling of a thread from both sides: surface speed, and turns of the bar for each start until the profile is full.
const ROLL_M_PER_MIN: f64 = 40.0;
const ROLL_TURNS: f64 = 20.0;

/// A piece of work that is not turning.
#[derive(Debug, Clone, PartialEq)]
pub struct Task {
    /// Kind, as printed.
    pub kind: &'static str,
    /// What it is, in words.
    pub text: String,
    /// Place: the middle of a hole, or the rear end of other cross work, mm; 0 for work on the front end.
    pub at_mm: f64,
    /// Whether the task is done when its place comes under the cross-driven tools; else it is done before turning begins.
    pub cross: bool,
    /// Force across the bar that the `drill` check looks at: thrust of a drill, cutting force of a cutter, N.
    pub thrust_n: Option<f64>,
    /// Force along the axis, of work on the front end, N.
    pub axial_n: f64,
    /// Torque about the axis, of work on the front end, N·m.
    pub torque_nm: f64,
    /// The tool.
    pub tool: Tool,
    /// Time, s.
    pub time_s: f64,
}

impl Task {
    /// Turned length at which the task is done, for a reach of the cross-driven tools, mm.
    pub fn moment_mm(&self, reach_mm: f64) -> f64 {
        if self.cross { self.at_mm + reach_mm } else { 0.0 }
    }

    /// The entry of this task in a plan.
    pub fn told<'p>(&self, plan: &'p Plan) -> Option<&'p FeatureMoment> {
        let same = |f: &&FeatureMoment| {
            f.feature == self.kind && f.text == self.text && (f.at_mm - self.at_mm).abs() < SAME_MM
        };
        plan.features.iter().find(same)
    }
}

/// Moments of the tasks in a plan: index and turned length, mm. Tasks that are not in the plan are left out.
pub fn moments_told(plan: &Plan, tasks: &[Task]) -> Vec<(usize, f64)> {
    tasks.iter().enumerate().filter_map(|(i, task)| Some((i, task.told(plan)?.turned_mm?))).collect()
}

/// Diameter of the hole for a thread, `d - P`, mm (ISO 2306, from memory, not re-read; the standard rounds to available drills).
pub fn tap_drill_mm(thread: &crate::job::thread::Thread) -> f64 {
    thread.major_mm - thread.pitch_mm
}

/// A task of a cross-driven tool or of another tool beside the bar.
fn cross(kind: &'static str, text: String, at_mm: f64, tool: Tool, time_s: f64) -> Task {
    Task { kind, text, at_mm, cross: true, thrust_n: None, axial_n: 0.0, torque_nm: 0.0, tool, time_s }
}

/// How a milling cutter runs.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Milling {
    rpm: f64,
    per_tooth_mm: f64,
    teeth: f64,
}

impl Milling {
    fn mm_per_min(self) -> f64 {
        self.rpm * self.per_tooth_mm * self.teeth
    }

    /// Time along a length and, before it, into the metal: there the feed of a tooth is that of a turn (the brochure of the feeds), s.
    fn time_s(self, length_mm: f64, depth_mm: f64) -> f64 {
        60.0 * (length_mm / self.mm_per_min() + depth_mm / (self.rpm * self.per_tooth_mm)) + MILL_EXTRA_S
    }
}

impl Rig<'_> {
    /// All works before part-off that are not turning, in the order of their places on the shaft.
    pub fn tasks(&self) -> Vec<Task> {
        let shaft = &self.job.shaft;
        let mut tasks: Vec<Task> = shaft.features.iter().flat_map(|f| self.feature_tasks(&f.kind)).collect();
        for (i, section) in shaft.sections.iter().enumerate() {
            let length = section.length_mm();
            match section.kind {
                SectionKind::Thread(ref thread) if section.thread_by == Some(ThreadBy::Rolling) => {
                    let rpm = spindle_rpm(ROLL_M_PER_MIN, thread.major_mm).min(self.machine_rpm(true));
                    let turns = ROLL_TURNS * f64::from(thread.starts);
                    tasks.push(cross(
                        "thread_rolling",
                        say!("work-rolling", thread = thread.designation, section = section.label(i)),
                        section.to_mm,
                        Tool::new(Place::Turning, say!("tool-rolls", thread = thread.designation)),
                        60.0 * turns / rpm + MILL_EXTRA_S,
                    ));
                }
                SectionKind::Flats { sides, across_flats_mm, circle_mm } => {
                    let flat = milling::flat(circle_mm, across_flats_mm / 2.0);
                    // The reader of the job has checked that the flats lie in the circle.
                    let width_mm = flat.map_or(circle_mm, |(width_mm, _)| width_mm);
                    let thrust_n = flat.map(|(_, area_mm2)| self.mill_n(area_mm2, width_mm, FLAT_TEETH));
                    let flats = cross(
                        "flats",
                        say!(
                            "work-flats",
                            sides = sides,
                            across = Measure::Size.number(across_flats_mm),
                            section = section.label(i)
                        ),
                        section.to_mm,
                        Tool::new(Place::CrossDriven, say!("tool-flats")),
                        f64::from(sides) * self.milling(width_mm, FLAT_TEETH).time_s(length, 0.0),
                    );
                    tasks.push(Task { thrust_n, ..flats });
                }
                SectionKind::Knurl { diameter_mm } => {
                    let rpm = KNURL_SPEED_SHARE * spindle_rpm(self.job.cutting.vc_m_per_min, diameter_mm);
                    let rpm = rpm.min(self.machine_rpm(true));
                    tasks.push(cross(
                        "knurl",
                        say!("work-knurl", section = section.label(i)),
                        section.to_mm,
                        Tool::new(Place::Turning, say!("tool-knurling")),
                        60.0 * length / (KNURL_FEED_MM * rpm) + MILL_EXTRA_S,
                    ));
                }
                _ => {}
            }
        }
        tasks.sort_by(|a, b| a.moment_mm(0.0).total_cmp(&b.moment_mm(0.0)));
        tasks
    }

    fn feature_tasks(&self, kind: &FeatureKind) -> Vec<Task> {
        match kind {
            FeatureKind::CrossHole { diameter_mm, at_mm, thrust_n } => {
                vec![self.cross_hole(
                    say!("work-cross-hole", diameter = Measure::Size.number(*diameter_mm)),
                    *diameter_mm,
                    *at_mm,
                    *thrust_n,
                )]
            }
            FeatureKind::Keyseat { width_mm, depth_mm, from_mm, to_mm } => {
                let keyseat = cross(
                    "keyseat",
                    say!(
                        "work-keyseat",
                        width = Measure::Size.number(*width_mm),
                        depth = Measure::Size.number(*depth_mm),
                        from = Measure::Size.number(*from_mm),
                        to = Measure::Size.number(*to_mm)
                    ),
                    *to_mm,
                    Tool::new(Place::CrossDriven, say!("tool-slot", width = Measure::Size.number(*width_mm))),
                    self.milling(*width_mm, SLOT_TEETH).time_s(to_mm - from_mm, *depth_mm),
                );
                vec![Task { thrust_n: Some(self.mill_n(width_mm * depth_mm, *width_mm, SLOT_TEETH)), ..keyseat }]
            }
            FeatureKind::TappedHole { thread, place: Tapped::Across { at_mm } } => {
                let drill_mm = tap_drill_mm(thread);
                let name = &thread.designation;
                let hole =
                    say!("work-hole-across-for-thread", diameter = Measure::Size.fixed(drill_mm, 2), thread = name);
                let mut drill = self.cross_hole(hole, drill_mm, *at_mm, None);
                drill.kind = "tapped_hole";
                let depth = self.across_mm(*at_mm);
                let tap = cross(
                    "tapped_hole",
                    say!("work-tap-across", thread = name),
                    *at_mm,
                    Tool::new(Place::CrossDriven, say!("tool-tap", thread = name)),
                    ends::tapping_s(thread, depth, self.speeds().tap_m_per_min, self.job.machine.driven_max_rpm),
                );
                vec![drill, tap]
            }
            FeatureKind::Engraving { text, height_mm, place: Engraved::Along { to_mm, .. }, .. } => vec![cross(
                "engraving",
                say!("work-engraving", text = text, height = Measure::Size.number(*height_mm)),
                *to_mm,
                Tool::new(Place::CrossDriven, say!("tool-engraver")),
                ends::engraving_s(text, *height_mm),
            )],
            other => {
                let front = |w: ends::EndWork| Task {
                    kind: w.kind,
                    text: say!("work-front", work = w.text),
                    at_mm: 0.0,
                    cross: false,
                    thrust_n: None,
                    axial_n: w.axial_n,
                    torque_nm: w.torque_nm,
                    tool: w.tool,
                    time_s: w.time_s,
                };
                self.end_works(other, End::Front).into_iter().map(front).collect()
            }
        }
    }

    /// A feature in words, and the time of all its work, s.
    pub fn feature_work(&self, kind: &FeatureKind) -> (String, f64) {
        let tasks = self.feature_tasks(kind).into_iter().map(|t| (t.text, t.time_s));
        let rear = self.end_works(kind, End::Back).into_iter().map(|w| (say!("work-back", work = w.text), w.time_s));
        let all: Vec<(String, f64)> = tasks.chain(rear).collect();
        (all.first().map_or(String::new(), |(text, _)| text.clone()), all.iter().map(|(_, s)| s).sum())
    }

    /// All works on the rear end after part-off: first the works given as such, then the features on this end.
    pub fn back_tasks(&self) -> Vec<BackTask> {
        let shaft = &self.job.shaft;
        let given = shaft
            .back_work
            .iter()
            .map(|w| BackTask { work: w.clone(), tool: Tool::new(Place::BackFixed, w.name.clone()) });
        let features = shaft.features.iter().flat_map(|f| self.end_works(&f.kind, End::Back)).map(|w| BackTask {
            work: BackWork {
                name: w.text,
                radial_force_n: w.radial_n,
                axial_force_n: w.axial_n,
                torque_nm: w.torque_nm,
                time_s: w.time_s,
                tolerance_mm: BackWork::USUAL_TOLERANCE_MM,
            },
            tool: w.tool,
        });
        given.chain(features).collect()
    }

    /// Time of all work on the rear end, s.
    pub fn back_work_s(&self) -> f64 {
        self.back.iter().map(|b| b.work.time_s).sum()
    }

    /// Thickness of the shaft at a place, mm: the length of a hole across it.
    fn across_mm(&self, at_mm: f64) -> f64 {
        let shaft = &self.job.shaft;
        shaft.sections.get(shaft.section_at(at_mm)).map_or(0.0, |s| s.bending_mm(at_mm))
    }

    fn cross_hole(&self, text: String, diameter_mm: f64, at_mm: f64, thrust_n: Option<f64>) -> Task {
        let rpm = self.driven_rpm(self.speeds().drill_m_per_min, diameter_mm);
        let feed_mm = self.drill_feed_mm(diameter_mm);
        let time_s = 60.0 * self.across_mm(at_mm) / (feed_mm * rpm) + DRILL_EXTRA_S;
        let tool = Tool::new(Place::CrossDriven, say!("tool-drill", diameter = Measure::Size.fixed(diameter_mm, 2)));
        let thrust_n = Some(thrust_n.unwrap_or_else(|| drilling::thrust_n(&self.resistance, diameter_mm, feed_mm)));
        Task { thrust_n, ..cross("cross_hole", text, at_mm, tool, time_s) }
    }

    /// Force across the shaft of a cutter as wide as its slot or flat, N: the whole mean tangential force.
    fn mill_n(&self, area_mm2: f64, width_mm: f64, teeth: f64) -> f64 {
        let milling = self.milling(width_mm, teeth);
        let vc_m_per_min = std::f64::consts::PI * width_mm * milling.rpm / 1000.0;
        milling::mean_n(&self.resistance, area_mm2, width_mm, teeth, milling.mm_per_min(), vc_m_per_min)
    }

    /// Speeds and feeds of the material's class.
    fn speeds(&self) -> Speeds {
        self.job.shaft.material.class.speeds()
    }

    /// Feed of a drill, mm/rev.
    fn drill_feed_mm(&self, diameter_mm: f64) -> f64 {
        self.speeds().drill_feed_share * diameter_mm
    }

    /// Speed of a driven tool, rev/min.
    fn driven_rpm(&self, vc_m_per_min: f64, diameter_mm: f64) -> f64 {
        spindle_rpm(vc_m_per_min, diameter_mm).min(self.job.machine.driven_max_rpm)
    }

    fn milling(&self, cutter_mm: f64, teeth: f64) -> Milling {
        let speeds = self.speeds();
        let rpm = self.driven_rpm(speeds.mill_m_per_min, cutter_mm);
        Milling { rpm, per_tooth_mm: fz_mm(speeds.tooth_feed, cutter_mm), teeth }
    }

    /// Stretches of the shaft that a grip must keep clear of, mm: cross holes, keyseats and engraved texts.
    pub fn no_grip_stretches(&self) -> Vec<(f64, f64)> {
        let features = self.job.shaft.features.iter();
        let around = |at: f64, diameter: f64| Some((at - diameter / 2.0, at + diameter / 2.0));
        features
            .filter_map(|f| match &f.kind {
                FeatureKind::CrossHole { diameter_mm, at_mm, .. } => around(*at_mm, *diameter_mm),
                FeatureKind::TappedHole { thread, place: Tapped::Across { at_mm } } => around(*at_mm, thread.major_mm),
                FeatureKind::Keyseat { from_mm, to_mm, .. } => Some((*from_mm, *to_mm)),
                FeatureKind::Engraving { place: Engraved::Along { from_mm, to_mm }, .. } => Some((*from_mm, *to_mm)),
                _ => None,
            })
            .collect()
    }
}
