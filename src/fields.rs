//! Every input quantity, defined once: key, meaning, unit, allowed range, default.
//!
//! The reader checks values and writes its messages from this table. The reference page lists it, and the property
//! tests draw values from it. The ranges are wide. They keep out slips of the pen (a wrong unit, a lost decimal point)
//! and what the mechanics cannot compute, but not what is unusual. Ranges and defaults are common practice, no source.

mod edges;
mod machine;
mod prices;
pub mod readings;
mod scatter;
mod shop;
mod tool_list;
mod units;
mod wishes;
mod words;
mod work;

use schemars::JsonSchema;
use serde::Serialize;

use crate::diag::Diag;
use crate::lang::{self, Units};

pub use edges::*;
pub use machine::*;
pub use prices::*;
pub use scatter::*;
pub use shop::*;
pub use tool_list::*;
pub use units::Unit;
pub use wishes::*;
pub use words::nearest;
pub use work::*;

/// One quantity of a job or machine file.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
#[serde(into = "Told")]
#[schemars(with = "Told")]
pub struct Field {
    /// Path of the key in the file, such as `limits.whip`. Items of a list have no number: `shaft.sections.length`.
    pub path: &'static str,
    /// Unit. Empty: a ratio.
    pub unit: &'static str,
    /// Smallest allowed value.
    pub min: f64,
    /// Largest allowed value.
    pub max: f64,
    /// Value if the file gives none. None: the file must give it, may leave it out, or the program calculates it.
    pub default: Option<f64>,
}

/// A quantity with its meaning, as JSON has it.
#[derive(Serialize, JsonSchema)]
#[schemars(rename = "Field")]
struct Told {
    /// Path of the key in the file. Items of a list have no number.
    path: &'static str,
    /// Its meaning.
    what: &'static str,
    /// Unit. Empty: a ratio.
    unit: &'static str,
    /// Unit of a number alone in a file in inches. Empty: a ratio.
    unit_inch: &'static str,
    /// Smallest allowed value.
    min: f64,
    /// Largest allowed value.
    max: f64,
    /// Value if the file gives none.
    default: Option<f64>,
}

impl From<Field> for Told {
    fn from(field: Field) -> Told {
        let Field { path, unit, min, max, default } = field;
        let unit_inch = field.unit_in(Units::Inch).map_or("", |unit| unit.name);
        Told { path, what: field.what(), unit, unit_inch, min, max, default }
    }
}

impl Field {
    /// The key itself, the last part of the path.
    pub fn key(&self) -> &'static str {
        self.path.rsplit('.').next().unwrap_or(self.path)
    }

    /// Its meaning: a phrase that fits after "the". It stands in the tables of texts under `field-` and the path, with `-` for each dot.
    pub fn what(&self) -> &'static str {
        let key = format!("field-{}", self.path.replace('.', "-"));
        lang::known(&key).unwrap_or(self.path)
    }

    /// The value itself, if it is finite and in range.
    ///
    /// # Errors
    /// As [`Field::check_written`].
    pub fn check(&self, value: f64) -> Result<f64, Diag> {
        self.check_written(value, &format!("{value}{}", spaced(self.unit)), Units::Metric)
    }
}

fn spaced(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}

const fn required(path: &'static str, unit: &'static str, min: f64, max: f64) -> Field {
    Field { path, unit, min, max, default: None }
}

const fn optional(path: &'static str, unit: &'static str, min: f64, max: f64, default: f64) -> Field {
    Field { path, unit, min, max, default: Some(default) }
}

/// Longest shaft, all sections together, mm.
pub const SHAFT_LENGTH_MAX_MM: f64 = 6000.0;
/// Most sections of a shaft.
pub const SECTIONS_MAX: usize = 1000;
/// Most features of a shaft.
pub const FEATURES_MAX: usize = 1000;
/// Most collets of a counter-spindle.
pub const COLLETS_MAX: usize = 200;
/// Most entries of back-end work.
pub const BACK_WORK_MAX: usize = 100;
/// Most places of cross-driven tools.
pub const REACHES_MAX: usize = 50;
/// Most wishes of a kind.
pub const WISHES_MAX: usize = 100;
/// Largest file, bytes.
pub const FILE_MAX_BYTES: u64 = 4 * 1024 * 1024;

/// Length of a section.
pub const LENGTH: Field = required("shaft.sections.length", "mm", 0.01, SHAFT_LENGTH_MAX_MM);
/// Diameter of a section.
pub const DIAMETER: Field = required("shaft.sections.diameter", "mm", 0.1, 120.0);
/// One end of a taper.
pub const TAPER: Field = required("shaft.sections.taper", "mm", 0.1, 120.0);
/// Major diameter of a thread that the file gives by its designation. No file has this number.
pub const THREAD: Field = Field { path: "shaft.sections.thread", ..DIAMETER };
/// Diameter across the corners of flats. No file has this number.
pub const CORNERS: Field = Field { path: "shaft.sections.corners", ..DIAMETER };
/// Flats.
pub const ACROSS_FLATS: Field = required("shaft.sections.across_flats", "mm", 0.1, 120.0);
/// Number of flats.
pub const SIDES: Field = required("shaft.sections.sides", "", 2.0, 8.0);
/// Roughness.
pub const RA: Field = required("shaft.sections.ra", "µm", 0.01, 100.0);
/// Run-out of a section.
pub const RUN_OUT: Field = required("shaft.sections.run_out", "mm", 0.0005, 5.0);
/// A limit of a tolerance given in mm.
pub const TOLERANCE: Field = required("shaft.sections.tolerance", "mm", -5.0, 5.0);
/// Bow of the turned shaft.
pub const STRAIGHTNESS: Field = optional("shaft.straightness", "mm per m", 0.0, 20.0, 0.3);

/// Cross hole.
pub const CROSS_HOLE: Field = required("shaft.features.cross_hole", "mm", 0.1, 100.0);
/// Place of a cross hole.
pub const AT: Field = required("shaft.features.at", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// Thrust of a cross hole's drill.
pub const THRUST: Field = required("shaft.features.thrust", "N", 0.0, 50_000.0);
/// Width and depth of a keyseat.
pub const KEYSEAT: Field = required("shaft.features.keyseat", "mm", 0.1, 100.0);
/// Front end of a keyseat.
pub const KEYSEAT_FROM: Field = required("shaft.features.from", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// Rear end of a keyseat.
pub const KEYSEAT_TO: Field = required("shaft.features.to", "mm", 0.0, SHAFT_LENGTH_MAX_MM);

/// Radial force of back-end work.
pub const BACK_RADIAL_FORCE: Field = optional("shaft.back_work.radial_force", "N", 0.0, 50_000.0, 0.0);
/// Torque of back-end work.
pub const BACK_TORQUE: Field = optional("shaft.back_work.torque", "N·m", 0.0, 5000.0, 0.0);
/// Time of back-end work.
pub const BACK_TIME: Field = required("shaft.back_work.time_s", "s", 0.0, 3600.0);
/// Tolerance of back-end work.
pub const BACK_TOLERANCE: Field = optional("shaft.back_work.tolerance", "mm", 0.001, 5.0, 0.1);

/// Bar diameter.
pub const STOCK_DIAMETER: Field = required("stock.diameter", "mm", 0.1, 120.0);
/// Bar length.
pub const BAR_LENGTH: Field = optional("stock.bar_length", "mm", 50.0, 12_000.0, 3000.0);

/// Young's modulus.
pub const E_GPA: Field = required("shaft.material.e_gpa", "GPa", 0.5, 1000.0);
/// Density.
pub const DENSITY: Field = required("shaft.material.density", "kg/m³", 500.0, 25_000.0);
/// Specific cutting force.
pub const KC11: Field = required("shaft.material.kc11", "N/mm²", 10.0, 10_000.0);
/// Exponent of the chip thickness.
pub const MC: Field = required("shaft.material.mc", "", 0.0, 0.9);
/// Poisson's ratio.
pub const POISSON: Field = optional("shaft.material.poisson", "", 0.0, 0.49, 0.3);
/// One end of a material's usual cutting speeds.
pub const MATERIAL_VC: Field = required("shaft.material.vc", "m/min", 1.0, 2000.0);

/// Classes of materials that are drilled, tapped and milled alike.
#[rustfmt::skip]
pub const MATERIAL_CLASSES: [&str; 18] = [
    "free_cutting_steel", "structural_steel", "carbon_steel", "alloy_steel", "tool_steel", "free_cutting_stainless",
    "ferritic_stainless", "austenitic_stainless", "duplex_stainless", "heat_resistant_steel", "pure_titanium",
    "titanium_alloy", "cobalt_chromium", "nickel_alloy", "free_cutting_copper", "copper_alloy", "aluminium", "plastic",
];

/// Cutting speed.
pub const VC: Field = required("cutting.vc", "m/min", 1.0, 2000.0);
/// Feed.
pub const FEED: Field = required("cutting.feed", "mm/rev", 0.001, 2.0);
/// Nose radius.
pub const NOSE_RADIUS: Field = optional("cutting.nose_radius", "mm", 0.01, 10.0, 0.4);
/// Approach angle.
pub const APPROACH_ANGLE: Field = optional("cutting.approach_angle", "degrees", 30.0, 110.0, 93.0);
/// Depth of a roughing travel.
pub const AP_MAX: Field = optional("cutting.ap_max", "mm", 0.01, 20.0, 1.5);
/// Depth of the last pass. Without a value, it is never more than `ap_max`.
pub const AP_FINISH: Field = optional("cutting.ap_finish", "mm", 0.005, 5.0, 0.25);
/// How far the speed may be lowered.
pub const SPEED_FLOOR: Field = optional("cutting.speed_floor", "", 0.01, 1.0, 0.5);
/// Lag of the finishing tool.
pub const LAG: Field = optional("cutting.lag", "mm", 0.0, 20.0, 1.0);
/// Nose radius of the finishing tool of a tandem. Without a value, it is that of the roughing tool.
pub const FINISHER_NOSE_RADIUS: Field = required("cutting.finisher.nose_radius", "mm", 0.01, 10.0);
/// Approach angle of the finishing tool of a tandem. Without a value, it is that of the roughing tool.
pub const FINISHER_APPROACH_ANGLE: Field = required("cutting.finisher.approach_angle", "degrees", 30.0, 110.0);
/// Unbalance of a pair.
pub const UNBALANCE: Field = optional("cutting.unbalance", "", 0.0, 1.0, 0.10);
/// In-plane share.
pub const IN_PLANE_SHARE: Field = optional("cutting.in_plane_share", "", 0.01, 2.0, 0.55);
/// Least passive force.
pub const PASSIVE_FLOOR: Field = optional("cutting.passive_floor", "", 0.0, 1.0, 0.15);
/// Real roughness beside the ideal one.
pub const RA_FACTOR: Field = optional("cutting.ra_factor", "", 0.1, 10.0, 1.5);
/// Finest roughness.
pub const RA_FLOOR: Field = optional("cutting.ra_floor", "µm", 0.0, 10.0, 0.2);

/// Least stiffness. Without a value, it is `STIFFNESS_PER_MM` times the stock diameter.
pub const STIFFNESS_MIN: Field = required("limits.stiffness_min", "N/µm", 0.0001, 10_000.0);
/// Least stiffness per mm of stock diameter, N/µm.
pub const STIFFNESS_PER_MM: f64 = 0.05;
/// Least stiffness of a gripped span. Without a value, it is `STIFFNESS_PER_MM` times the stock diameter.
pub const SPAN_STIFFNESS_MIN: Field = required("limits.span_stiffness_min", "N/µm", 0.0, 10_000.0);
/// Length over diameter of a free front.
pub const FREE_RATIO: Field = required("limits.free_ratio", "", 0.1, 1000.0);
/// Whirl.
pub const WHIRL_RATIO: Field = optional("limits.whirl_ratio", "", 0.01, 0.95, 0.7);
/// Whip. Without a value, it is `WHIP_PER_MM` times the stock diameter.
pub const WHIP: Field = required("limits.whip", "mm", 0.0001, 10.0);
/// Largest bow under rotation per mm of stock diameter, mm.
pub const WHIP_PER_MM: f64 = 0.01;
/// Sag.
pub const SAG: Field = optional("limits.sag", "mm", 0.0001, 10.0, 0.05);
/// Pick-up.
pub const PICK_UP: Field = optional("limits.pick_up", "mm", 0.0001, 10.0, 0.25);
/// Release.
pub const RELEASE: Field = optional("limits.release", "mm", 0.0001, 10.0, 0.25);
/// Share of a tolerance.
pub const TOLERANCE_SHARE: Field = optional("limits.tolerance_share", "", 0.001, 1.0, 0.25);
/// Drill.
pub const DRILL: Field = optional("limits.drill", "mm", 0.0001, 10.0, 0.02);
/// Station pitch.
pub const STATION_PITCH: Field = optional("planning.station_pitch", "mm", 0.5, 100.0, 5.0);
/// Damping.
pub const DAMPING_RATIO: Field = optional("limits.damping_ratio", "", 0.0001, 0.5, 0.02);
/// Bore clearance.
pub const BORE_CLEARANCE: Field = optional("limits.bore_clearance", "mm", 0.0, 20.0, 1.0);
/// Torque margin.
pub const TORQUE_MARGIN: Field = optional("limits.torque_margin", "", 1.0, 10.0, 1.5);
/// Share of the buckling load.
pub const BUCKLING_SHARE: Field = optional("limits.buckling_share", "", 0.01, 0.9, 0.2);
/// Penalty of an `avoid` witness.
pub const AVOID_PENALTY_S: Field = optional("limits.avoid_penalty_s", "s", 0.0, 3600.0, 5.0);

/// Machine rate.
pub const MACHINE_PER_HOUR: Field = required("rates.machine_per_hour", "", 0.0, 1e6);
/// Material rate.
pub const MATERIAL_PER_KG: Field = required("rates.material_per_kg", "", 0.0, 1e6);

/// Most parts of a family.
pub const FAMILY_MAX: usize = 10_000;

/// All fields, in the order of the files.
#[rustfmt::skip]
pub const ALL: &[Field] = &[
    LENGTH, DIAMETER, TAPER, ACROSS_FLATS, SIDES, RA, RUN_OUT, CHAMFER, CHAMFER_FRONT, CHAMFER_REAR, RADIUS, RADIUS_FRONT,
    RADIUS_REAR, GRIND, TURNED_RA, TOLERANCE, STRAIGHTNESS, CROSS_HOLE, AT, THRUST, KEYSEAT,
    KEYSEAT_FROM, KEYSEAT_TO, BACK_RADIAL_FORCE, BACK_TORQUE, BACK_TIME, BACK_TOLERANCE, E_GPA, DENSITY, KC11, MC,
    POISSON, MATERIAL_VC, STOCK_DIAMETER, STOCK_BORE, BAR_LENGTH, BUSH_MAX_BAR, BUSH_LAND, BUSH_GAP, BUSH_STIFFNESS,
    ENGAGEMENT_MIN, NO_BUSH_MAX_BAR, COLLET_GAP, HEADSTOCK_NEAREST, STROKE, HEADSTOCK_HOLD, HEADSTOCK_STIFFNESS,
    HEADSTOCK_MAX_RPM, REGRIP_S, BAR_FEED_MAX_RPM, COUNTER_NEAREST, COUNTER_FARTHEST, BORE, BORE_DEPTH,
    COUNTER_STIFFNESS, COUNTER_MAX_RPM, HAND_OVER_S, FRICTION, COUNTER_AXIAL_LOAD, TORSIONAL_STIFFNESS, PHASE_ERROR,
    CENTRE_FORCE, CENTRE_STIFFNESS, CENTRE_STANDS_OUT, SLEEVE_PITCH, SLEEVE_STIFFNESS,
    COLLET_RANGE, COLLET_HOLD, PASSES, CLAMP_FORCE, COLLET_RUN_OUT,
    DRIVEN_MAX_RPM, SHARED_STOP_SAVING_S, CROSS_TOOL_REACH, SEGMENT_OVERHEAD_S, PART_OFF_WIDTH, PART_OFF_TIME_S, TRAY_MAX_LENGTH,
    TRAY_MAX_DIAMETER, BAR_END,
    FACING, VC, FEED, NOSE_RADIUS, APPROACH_ANGLE, AP_MAX, AP_FINISH, SPEED_FLOOR, LAG, FINISHER_NOSE_RADIUS, FINISHER_APPROACH_ANGLE, UNBALANCE, IN_PLANE_SHARE,
    PASSIVE_FLOOR, RA_FACTOR, RA_FLOOR, STIFFNESS_MIN, SPAN_STIFFNESS_MIN, FREE_RATIO, WHIRL_RATIO, WHIP, SAG, PICK_UP, RELEASE,
    TOLERANCE_SHARE, DRILL, STATION_PITCH, DAMPING_RATIO, BORE_CLEARANCE, TORQUE_MARGIN, BUCKLING_SHARE,
    AVOID_PENALTY_S, WISH_HAND_OVER, WISH_AT, WISH_NOSE, WISH_NEVER_GRIP, WISH_AT_MOST,
    MACHINE_PER_HOUR, MATERIAL_PER_KG, CONFIDENCE, CONFIDENCE_WARN, SCATTER_SAMPLES, SCATTER_SEED, SCATTER_STRAIGHTNESS,
    CHANGE_PRICES[0], CHANGE_PRICES[1], CHANGE_PRICES[2], CHANGE_PRICES[3], CHANGE_PRICES[4], CHANGE_PRICES[5],
    CHANGE_PRICES[6], CHANGE_PRICES[7], CHANGE_PRICES[8], CHANGE_PRICES[9], CHANGE_PRICES[10], CHANGE_PRICES[11],
    CHANGE_PRICES[12], CHANGE_PRICES[13], CHANGE_PRICES[14], CHANGE_PRICES[15], CHANGE_PRICES[16], CHANGE_PRICES[17],
    SCATTER_SUPPORTS, SCATTER_BUSH, SCATTER_HEADSTOCK, SCATTER_COUNTER_SPINDLE, SCATTER_CENTRE, SCATTER_SLEEVE, SCATTER_KC,
    SCATTER_PASSIVE, SCATTER_E, SCATTER_DAMPING, SCATTER_RA, SCATTER_RUN_OUT, SCATTER_BAR, MACHINE_SCATTER_BUSH,
    MACHINE_SCATTER_HEADSTOCK, MACHINE_SCATTER_COUNTER_SPINDLE, MACHINE_SCATTER_CENTRE, MACHINE_SCATTER_SLEEVE,
    MACHINE_SCATTER_DAMPING, MACHINE_SCATTER_RUN_OUT, MATERIAL_SCATTER_KC, MATERIAL_SCATTER_E, BAR_SCATTER_STRAIGHTNESS,
    BAR_SCATTER_BAR, VARY_LENGTH_FROM, VARY_LENGTH_TO,
    VARY_LENGTH_STEP, VARY_DIAMETER_FROM, VARY_DIAMETER_TO, VARY_DIAMETER_STEP,
    FACE_OFF, AXIAL_HOLE, WORK_DEPTH, DRILL_DEPTH, HEX_SOCKET, KEYWAY, KEYWAY_LENGTH, SHAVING_STEP, LETTER_HEIGHT,
    BACK_AXIAL_FORCE, HEADSTOCK_CLAMP_FORCE, HEADSTOCK_FRICTION, HEADSTOCK_POWER, HEADSTOCK_EFFICIENCY, HEADSTOCK_TORQUE,
    HEADSTOCK_FEED_FORCE, COUNTER_TORQUE, UNLOAD_S, TOOL_CHANGE_S, BAR_CHANGE_S, RAPID,
    TURNING_PLACES, CROSS_PLACES, FRONT_FIXED, FRONT_DRIVEN, BACK_FIXED, BACK_DRIVEN, WHIRLING_PLACES, TURRET_STATIONS, TURRET_TOOLS,
    ORDER_PIECES, SET_UP_H, SHIFT_H, RUNNING_SHARE,
    TOOL_NOSE_RADIUS, TOOL_APPROACH_ANGLE, TOOL_AP_MAX, TOOL_WIDTH, TOOL_VC, TOOL_FEED,
    SHOP_PER_HOUR, SHOP_PRICE, SHOP_BAR_DIAMETER, SHOP_BAR_LENGTH, SHOP_BAR_PRICE,
    readings::DIAMETER, readings::FRONT, readings::HEADSTOCK, readings::GRIP, readings::FREQUENCY, readings::LOAD,
    readings::AT, readings::READ_AT, readings::DEFLECTION, readings::DIAL_ERROR, readings::LOAD_ERROR,
    readings::TAP_ERROR,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_field_has_a_sound_range_and_its_default_inside() {
        for f in ALL {
            assert!(f.min < f.max, "{}", f.path);
            if let Some(d) = f.default {
                assert!(f.check(d).is_ok(), "{}", f.path);
            }
            assert!(f.check(f64::NAN).is_err() && f.check(f64::INFINITY).is_err(), "{}", f.path);
        }
    }

    #[test]
    fn every_field_has_its_meaning_and_every_meaning_its_field() {
        let told: std::collections::BTreeSet<&str> = lang::texts_of("field-").into_values().collect();
        assert!(ALL.iter().chain([&THREAD, &CORNERS]).all(|f| told.contains(f.what())));
        assert_eq!(lang::texts_of("field-").len(), ALL.len() + 2);
    }

    #[test]
    fn no_path_stands_twice() {
        let mut paths: Vec<_> = ALL.iter().map(|f| f.path).collect();
        paths.sort_unstable();
        paths.dedup();
        assert_eq!(paths.len(), ALL.len());
    }

    #[test]
    fn a_message_names_value_range_unit_and_meaning() {
        let d = LENGTH.check(-5.0).expect_err("negative");
        assert_eq!(d.what, "-5 mm is too small");
        let help = "Write a number from 0.01 to 6000, in mm (length of the section)";
        assert_eq!(d.help.as_deref(), Some(help));
        assert_eq!(
            SIDES.check(9.0).map_err(|d| d.to_string()),
            Err("9 is too large. Write a number from 2 to 8 (number of flats).".into())
        );
    }
}
