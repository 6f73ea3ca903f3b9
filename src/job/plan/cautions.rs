//! The cautions that belong to every plan.
//!
//! General rules of safe turning, common practice, no source. The user's own risk assessment comes first.

use super::super::SAME_MM;
use super::super::iso286::it_width_mm;
use super::{Plan, Verdict};
use crate::lang::{self, Measure, lists};
use crate::say;

/// From this L/d on a free front gets a caution of its own: rules of part makers call a bar of ten diameters "like a spring".
const LONG_FREE_RATIO: f64 = 10.0;
/// Places of lines named in one caution. The whole list is in the plan.
const PLACES_NAMED: usize = 8;

/// A collet may crush a wall below this share of the diameter that it holds. Common practice, no source.
const THIN_WALL_SHARE: f64 = 0.15;

/// Coarsest tolerance grades of the bar for a bush that stands still and for one that turns with the bar; see [`bar_in_bush`].
const FIXED_BUSH_GRADE: u32 = 7;
const FOLLOWING_BUSH_GRADE: u32 = 9;
/// Clearance that a fixed bush needs on each side, mm; see [`bar_in_bush`].
const FIXED_BUSH_CLEARANCE_MM: [f64; 2] = [0.005, 0.015];

/// The line under every printed result: who is responsible for it.
pub fn estimate() -> &'static str {
    lang::text("estimate")
}

/// The cautions for a plan, most general last. Takes what it needs from the plan and does not read its `cautions`. In a language whose
/// cautions no tradesman has read they stand in English too.
pub fn cautions(plan: &Plan) -> Vec<String> {
    twice(|| told(plan))
}

/// What stands under the limits on the first page of a sheet.
pub fn read_first() -> String {
    twice(|| vec![say!("caution-read-first")]).concat()
}

/// The caution on coordinates of a plan: they are not a program.
pub fn not_a_program() -> String {
    twice(|| vec![say!("caution-not-a-program")]).concat()
}

/// Cautions, in a language in which no tradesman has read them also in English.
fn twice(told: impl Fn() -> Vec<String>) -> Vec<String> {
    let own = told();
    if lang::text("cautions-read") == "yes" {
        return own;
    }
    let english = lang::in_english(told);
    own.iter().zip(&english).map(|(own, english)| say!("caution-twice", own = own, english = english)).collect()
}

fn told(plan: &Plan) -> Vec<String> {
    let feasible = plan.verdict.has_plan();
    let has = |kinds: &[&str]| plan.shaft.features.iter().any(|f| kinds.contains(&f.kind.as_str()));
    let mut list: Vec<String> = Vec::new();
    if !feasible {
        list.push(say!("caution-not-a-plan"));
    }
    list.push(say!("caution-estimate"));
    list.push(say!("caution-who-decides"));
    list.push(say!("caution-first-piece"));
    list.push(say!("caution-limits"));
    if let Some(scatter) = plan.scatter.as_ref().filter(|_| plan.verdict == Verdict::AtRisk) {
        list.push(say!("caution-at-risk", good = format!("{:.0}", (100.0 * scatter.good_share).floor())));
    }
    list.push(say!("caution-bar-behind"));
    match &plan.centre {
        Some(_) => list.push(say!("caution-centre")),
        None => {
            list.extend(front_free(plan));
            list.extend(front_long(plan));
        }
    }
    if plan.stages.iter().any(|s| s.grip.is_some()) {
        list.push(say!("caution-counter-spindle"));
    }
    if feasible && plan.stages.last().is_some_and(|s| s.grip.is_none()) {
        list.push(match plan.tray_mm() {
            Some(_) => say!("caution-part-falls"),
            None => say!("caution-part-off-not-held"),
        });
    }
    if plan.layout.bush_land_mm.is_none() {
        list.push(say!("caution-no-bush"));
    }
    list.extend(bar_in_bush(plan));
    list.extend(thin_wall(plan));
    if has(&["axial_hole", "tapped_hole", "hex_socket", "keyway"]) {
        list.push(say!("caution-bored"));
    } else if has(&["cross_hole", "keyseat"]) {
        list.push(say!("caution-cross-work"));
    }
    if plan.cycle.as_ref().is_some_and(|c| feasible && c.overlap == "aside" && c.hidden_s > 0.0) {
        list.push(say!("caution-work-aside"));
    }
    // Every socket and every keyway is shaved or punched. Without a plan no work is listed.
    if !plan.features.is_empty() && has(&["hex_socket", "keyway"]) {
        list.push(say!("caution-shaving"));
    }
    list.extend(never_line(plan));
    list.push(say!("caution-chips"));
    list
}

/// A bar whose diameter varies more than its guide bush takes, or by an unknown amount.
///
/// A fixed bush needs a clearance of 0.005 to 0.015 mm on each side and ground bar of h6 or h7 (a manufacturer's article on bush and tool
/// layout, 2020s). Drawn and turned bar is h9 to h12 (classes of EN 10278). A bush that turns with the bar takes bar up to about h9
/// (common practice, no source). Bar beyond the tables of ISO 286 is not looked at.
fn bar_in_bush(plan: &Plan) -> Option<String> {
    plan.layout.bush_land_mm?;
    let (fixed, grade) = match plan.layout.bush_kind.as_deref()? {
        "fixed" => (true, FIXED_BUSH_GRADE),
        "following" => (false, FOLLOWING_BUSH_GRADE),
        _ => return None,
    };
    let most_mm = it_width_mm(grade, plan.shaft.stock_diameter_mm).ok()?;
    let told = |mm: f64| Measure::Size.fixed(mm, 3);
    let (most, clearance) = (told(most_mm), FIXED_BUSH_CLEARANCE_MM.map(told));
    let Some(width_mm) = plan.shaft.stock_tolerance_mm else {
        return Some(if fixed {
            let [least, widest] = clearance;
            say!("caution-fixed-bush-unknown", least = least, widest = widest, most = most)
        } else {
            say!("caution-following-bush-unknown", most = most)
        });
    };
    if width_mm <= most_mm + SAME_MM {
        return None;
    }
    let (bar, width, side) = (&plan.shaft.stock_label, told(width_mm), told(width_mm / 2.0));
    Some(if fixed {
        let [least, widest] = clearance;
        say!("caution-fixed-bush", bar = bar, width = width, side = side, least = least, widest = widest, most = most)
    } else {
        say!("caution-following-bush", bar = bar, width = width, most = most)
    })
}

/// A hollow bar or part whose wall is thin where a collet holds it.
fn thin_wall(plan: &Plan) -> Option<String> {
    let bore_mm = plan.shaft.stock_bore_mm?;
    let grips = plan.stages.iter().filter_map(|s| s.grip.as_ref()).map(|g| g.diameter_mm);
    let least_mm = grips.fold(plan.shaft.stock_diameter_mm, f64::min);
    let wall_mm = (least_mm - bore_mm) / 2.0;
    (wall_mm < THIN_WALL_SHARE * least_mm).then(|| {
        let (held, wall) = (Measure::Size.number(least_mm), Measure::Size.fixed(wall_mm, 2));
        say!("caution-thin-wall", held = held, wall = wall)
    })
}

fn front_free(plan: &Plan) -> Option<String> {
    let free: Vec<String> = plan.stages.iter().filter(|s| s.grip.is_none()).map(|s| s.number.to_string()).collect();
    let stages = lists::commas(&free);
    (!free.is_empty()).then(|| say!("caution-front-free", number = free.len(), stages = stages))
}

/// A long free front: how long it gets, in diameters.
fn front_long(plan: &Plan) -> Option<String> {
    let free = plan.stages.iter().filter(|s| s.grip.is_none());
    let longest = free.filter_map(|s| s.l_over_d_max).max_by(f64::total_cmp)?;
    (longest >= LONG_FREE_RATIO).then(|| say!("caution-front-long", ratio = format!("{longest:.0}")))
}

fn never_line(plan: &Plan) -> Option<String> {
    let at = |mm: f64| Measure::Place.at_most(mm, 2);
    let lines = plan.witnesses.iter().filter(|w| w.cause == "feature" && w.interrupt == "never");
    let place = |number: usize, mm: f64| say!("caution-never-line-place", at = at(mm), section = section(plan, number));
    let places: Vec<String> = lines.map(|w| place(w.section, w.at_mm)).collect();
    let told = lists::at_most(PLACES_NAMED, &places);
    (!places.is_empty()).then(|| say!("caution-never-line", places = told))
}

/// A section with its name, where it has one.
fn section(plan: &Plan, number: usize) -> String {
    let plain = say!("caution-section", number = number);
    let name = plan.shaft.sections.iter().find(|s| s.number == number).map(|s| s.name.trim());
    match name.filter(|n| !n.is_empty() && *n != plain) {
        Some(name) => say!("caution-section-named", number = number, name = name),
        None => plain,
    }
}
