//! The cautions that are printed with every plan.
//!
//! General rules of safe turning, common practice, no source. The user's own risk assessment comes first.

use super::{numbers, verdict, words};
use crate::job::plan::{Plan, Verdict};

/// The line under every printed result: who is responsible for it.
pub const ESTIMATE: &str = "An estimate: the machine's manual, the local rules and a qualified setter decide.";

/// The cautions for a plan, most general last. Takes what it needs from the plan and does not read its `cautions`.
pub fn cautions(plan: &Plan) -> Vec<String> {
    let mut list: Vec<String> = Vec::new();
    if !verdict::is_feasible(plan) {
        list.push(
            "This is not a plan to run: the stages only show how far the work would get within its limits.".to_string(),
        );
    }
    list.push(
        "This is an estimate. Cutting forces are within ± 25 % at best, and stiffnesses are as good as the values given \
         for the machine."
            .to_string(),
    );
    list.push(
        "The machine's manual, the local rules and a qualified setter decide. Where they differ from this plan, they hold."
            .to_string(),
    );
    list.push(
        "Prove the first piece at reduced speed and feed, block by block, doors closed. Measure it before going faster."
            .to_string(),
    );
    list.push(
        "Never exceed the limits of a stage: its turned length, its unsupported length, its speed. The limits of the \
         machine, the collets and the bar feed hold as well; the lowest counts."
            .to_string(),
    );
    list.push(
        "No unsupported bar behind the headstock spindle: above a certain speed it bends out and strikes. Guide it over \
         its full length, or cut the bar shorter."
            .to_string(),
    );
    if let Some(text) = free_front(plan) {
        list.push(text);
    }
    if plan.stages.iter().any(|s| s.grip.is_some()) {
        list.push(
            "The part in the counter-spindle: check collet, clamping and synchronisation before the headstock opens, and \
             again before part-off. If clamping or synchronisation fails, both spindles must stop together."
                .to_string(),
        );
    }
    let feasible = plan.verdict == Verdict::Feasible;
    if feasible && plan.stages.last().is_some_and(|s| s.grip.is_none()) {
        list.push(
            "Nothing holds the part at part-off: it comes loose while it turns. Part off slowly, catch it, and keep out of \
             its way."
                .to_string(),
        );
    }
    if !words::has_bush(plan) {
        list.push(
            "Without the guide bush the bar is held by the headstock collet alone: keep to the lengths shown."
                .to_string(),
        );
    }
    let has = |kinds: &[&str]| plan.shaft.features.iter().any(|f| kinds.contains(&f.kind.as_str()));
    let bored = has(&["axial_hole", "tapped_hole", "hex_socket", "keyway"]);
    if bored || has(&["cross_hole", "keyseat"]) {
        let what = if bored { "Holes, sockets and keyways" } else { "Cross holes and keyseats" };
        list.push(format!("{what} are neglected in stiffness: the shaft is softer there than computed."));
    }
    if plan.cycle.as_ref().is_some_and(|c| feasible && c.overlap == "aside" && c.hidden_s > 0.0) {
        list.push(
            "While the rear end of a part is worked on, the next part's front already turns: see that counter-spindle, \
             part and tools keep clear of it in every position, and try it without a part first."
                .to_string(),
        );
    }
    if plan.features.iter().any(|f| f.text.contains("shaved") || f.text.contains("punched")) {
        list.push(
            "Shaving and punching tools do not turn: the spindle must stand still, be held at its angle and be locked \
             against starting while they stroke. The force comes along the axis: check the clamping first."
                .to_string(),
        );
    }
    list.extend(feature_lines_on_never_surfaces(plan));
    list.push(
        "Long chips wind round slender work: stop the machine to clear them, never by hand while it turns.".to_string(),
    );
    list
}

fn free_front(plan: &Plan) -> Option<String> {
    let free: Vec<String> = plan.stages.iter().filter(|s| s.grip.is_none()).map(|s| s.number.to_string()).collect();
    let word = if free.len() == 1 { "stage" } else { "stages" };
    (!free.is_empty()).then(|| {
        format!(
            "In {word} {} the front of the part turns free: stay out of its plane, and raise the speed in steps.",
            free.join(", ")
        )
    })
}

fn feature_lines_on_never_surfaces(plan: &Plan) -> Option<String> {
    let places: Vec<String> = plan
        .witnesses
        .iter()
        .filter(|w| w.cause == "feature" && w.interrupt == "never")
        .map(|w| format!("{} mm on {}", numbers::mm(w.at_mm), words::section(plan, w.section)))
        .collect();
    (!places.is_empty()).then(|| {
        format!(
            "The feed stops for a feature on a surface marked \"never\" and leaves a line there: {}. Agree it with the \
             drawing, or cut the feature elsewhere.",
            words::enumeration(&places)
        )
    })
}

/// The cautions to print: those stored in the plan, or new ones if it has none, so that no plan is printed without
/// cautions.
pub(super) fn to_print(plan: &Plan) -> Vec<String> {
    if plan.cautions.is_empty() { cautions(plan) } else { plan.cautions.iter().map(|c| words::plain(c)).collect() }
}
