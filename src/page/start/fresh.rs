//! The first job of a new shaft: one plain section. What is assumed is marked in its text.

use axum::http::StatusCode;
use schemars::JsonSchema;
use serde::Deserialize;

use super::super::Start;
use super::super::answers::{Refused, unusable};
use super::super::wire::{Problem, Text, Texts, Told};
use super::examples::MACHINES;
use crate::drawings::{BAR_CLASS, bar_length_mm, usual_bar_mm};
use crate::input::edit::{Edit, edited};
use crate::input::tree::Step;
use crate::input::{Named, read_machine_text};
use crate::job::{Collet, iso2768, shop};
use crate::lang;
use crate::say;

/// What is known of a new shaft.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct NewAsked {
    /// Length of the shaft.
    length_mm: f64,
    /// Its largest diameter.
    diameter_mm: f64,
    /// Name or number of its material.
    material: String,
}

/// The job of a new shaft, with an example machine that takes its bar.
///
/// # Errors
/// All values that cannot be used, each with its key.
pub fn texts(asked: &NewAsked, start: &Start) -> Result<Texts, Refused> {
    let mut errors = Vec::new();
    let mut wrong = |key: &str, what: String, help: String| {
        let printed = what.clone();
        let way = vec![Step::Key(key.into())];
        errors.push(Told { file: None, what, help: Some(help), line: None, column: None, way, printed });
    };
    let within = |value: f64, low: f64, high: f64| value.is_finite() && value >= low && value <= high;
    let range = |low: f64, high: f64| say!("page-new-range-help", low = lang::number(low), high = lang::number(high));
    if !within(asked.length_mm, SHORTEST_MM, LONGEST_MM) {
        wrong(
            "length_mm",
            say!("page-new-length", length = lang::number(asked.length_mm)),
            range(SHORTEST_MM, LONGEST_MM),
        );
    }
    let (thinnest, thickest) = (iso2768::FROM_MM, largest_mm());
    if !within(asked.diameter_mm, thinnest, thickest) {
        let what = say!("page-new-diameter", diameter = lang::number(asked.diameter_mm));
        wrong("diameter_mm", what, range(thinnest, thickest));
    }
    let grades = start.shop.as_ref().map_or(&[][..], |shop| &shop.grades);
    if let Err(diag) = shop::find(grades, &asked.material) {
        wrong("material", diag.what, lang::text("page-new-material-help").into());
    }
    if !errors.is_empty() {
        let problem = Problem::new(lang::text("page-input-wrong"), lang::text("page-input-wrong-help"));
        return Err((StatusCode::UNPROCESSABLE_ENTITY, Problem { errors, ..problem }));
    }
    let bar_mm = usual_bar_mm(asked.diameter_mm);
    let machine = machine_for(asked.diameter_mm, bar_mm)?;
    Ok(Texts {
        job: Text { name: lang::text("page-new-file").into(), text: job(asked, bar_mm, &machine.name) },
        machine: Some(machine),
    })
}

/// Shortest and longest shaft, mm: between a pin and what the bar feeder of a common machine takes.
const SHORTEST_MM: f64 = 5.0;
const LONGEST_MM: f64 = 3500.0;

/// The example machines with a guide bush, by their largest bar.
fn by_bar() -> Vec<(f64, Named, Vec<Collet>)> {
    let read = |(name, text): &(&str, &str)| {
        let file = Named { name: (*name).into(), text: (*text).into() };
        let machine = read_machine_text(&file)?;
        Some((machine.bush?.max_bar_mm, file, machine.counter_spindle?.collets))
    };
    let mut all: Vec<_> = MACHINES.iter().filter_map(read).collect();
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    all
}

/// Largest diameter whose bar an example machine takes, mm.
fn largest_mm() -> f64 {
    let most = by_bar().last().map_or(0.0, |(bar, ..)| *bar);
    let step = 0.5;
    let mut mm = most;
    while mm > step && usual_bar_mm(mm) > most {
        mm -= step;
    }
    mm
}

/// The smallest example machine that takes a bar. It gets a collet for the shaft if it has none.
fn machine_for(diameter_mm: f64, bar_mm: f64) -> Result<Text, Refused> {
    let Some((_, file, collets)) = by_bar().into_iter().find(|(most, ..)| *most >= bar_mm) else {
        return Err(unusable(crate::diag::Diag::new(say!("page-new-diameter", diameter = lang::number(diameter_mm)))));
    };
    if collets.iter().any(|c| c.smallest_mm <= diameter_mm && diameter_mm <= c.largest_mm) {
        return Ok(file.into());
    }
    let hold = collets.first().map_or(20.0, |c| c.hold_mm);
    // As wide as the collets of the example machines; the force grows with the diameter as theirs does.
    let below = (0.05 * diameter_mm).min(0.4);
    let round = |x: f64| (x * 1000.0).round() / 1000.0;
    let (low, high, passes) =
        (round(diameter_mm - below), round(diameter_mm + below / 4.0), round(diameter_mm + below));
    let force = (FORCE_PER_MM * diameter_mm / 100.0).ceil() * 100.0;
    let item = format!(
        "{{name: \"{diameter_mm}\", range: [{low}, {high}], hold: {hold}, passes: {passes}, clamp_force: {force}}}"
    );
    let way = ["counter_spindle", "collets"].map(|key| Step::Key(key.into())).to_vec();
    let text = edited(&file.name, &file.text, &Edit::Insert { way, index: 0, item }).map_err(unusable)?;
    Ok(Text { name: file.name, text })
}

/// Clamping force of a collet for its diameter, N/mm. Of the usual size of the example machines, no source.
const FORCE_PER_MM: f64 = 700.0;

/// The text of the job.
fn job(asked: &NewAsked, bar_mm: f64, machine: &str) -> String {
    let NewAsked { length_mm, diameter_mm, material } = asked;
    let material = serde_json::to_string(material.trim()).unwrap_or_default();
    let bar_length = bar_length_mm(*length_mm);
    format!(
        "# {head}\n# {lengths}\n\nshaft:\n  name: {name}\n  material: {material}\n  sections:\n    \
         - {{length: {length_mm}, diameter: {diameter_mm}}}   # {section}\n  # straightness: 0.3           # {straight}\n\n\
         stock: {{diameter: {bar_mm}, tolerance: {BAR_CLASS}, bar_length: {bar_length}}}   # {bar}\n\n\
         machine: {machine}   # {example}\n\ncutting:   # {cutting}\n  tools: single                 # single | opposed | tandem\n  \
         # vc: ...                     # {speed}\n  # feed: ...                   # {feed}\n  \
         ap_max: 1.5\n  ap_finish: 0.25\n  speed_floor: 0.6\n",
        head = lang::text("page-new-head"),
        lengths = lang::text("draft-head-lengths"),
        name = serde_json::to_string(lang::text("page-new-name")).unwrap_or_default(),
        section = lang::text("page-new-section"),
        straight = lang::text("draft-straightness"),
        bar = lang::text("page-new-bar"),
        example = lang::text("page-new-machine"),
        cutting = lang::text("draft-placeholder-cutting"),
        speed = lang::text("draft-default-speed"),
        feed = lang::text("draft-default-feed"),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::read_texts;
    use crate::planner::Advice;

    fn start() -> Start {
        Start { job: Named { name: String::new(), text: String::new() }, machine: None, shop: None, given: false }
    }

    #[test]
    fn a_new_shaft_of_any_usual_size_is_a_job_without_errors() {
        for (length_mm, diameter_mm) in
            [(5.0, 0.5), (60.0, 3.0), (300.0, 10.0), (620.0, 13.5), (1000.0, 20.0), (3500.0, largest_mm())]
        {
            let texts = texts(&NewAsked { length_mm, diameter_mm, material: "1.4305".into() }, &start())
                .map_err(|(_, p)| p.what);
            let texts = texts.expect("texts");
            let read = read_texts(&Named::from(&texts.job), texts.machine.as_ref().map(Named::from).as_ref(), None);
            assert!(read.is_ok(), "{length_mm} × {diameter_mm}: {read:?}");
        }
    }

    #[test]
    fn a_common_shaft_has_a_plan_at_once() {
        let texts = texts(&NewAsked { length_mm: 300.0, diameter_mm: 12.0, material: "C45".into() }, &start());
        let texts = texts.map_err(|(_, p)| p.what).expect("texts");
        let job = read_texts(&Named::from(&texts.job), texts.machine.as_ref().map(Named::from).as_ref(), None)
            .expect("a job");
        let plan = crate::answer::advised(&job, Advice::None).expect("a plan");
        assert_ne!(plan.verdict, crate::job::plan::Verdict::Infeasible);
    }

    #[test]
    fn every_value_that_cannot_be_used_is_named() {
        let asked = NewAsked { length_mm: -1.0, diameter_mm: 1e9, material: "cheese".into() };
        let (_, problem) = texts(&asked, &start()).expect_err("three errors");
        let keys: Vec<String> = problem.errors.iter().map(|e| format!("{:?}", e.way)).collect();
        assert_eq!(keys.len(), 3, "{keys:?}");
    }
}
