//! Numbers at the ends of what may be written: the answer is proven, or says why not; never a panic, never a defect.

use crate::read;
use spanhold::answer::advised;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof;

/// A job of one bar size: sections as YAML, everything of the machine in the measure of the bar.
struct Sized {
    stock_mm: f64,
    sections: String,
    limits: String,
    pitch_mm: f64,
    supports_n_per_um: f64,
}

impl Sized {
    fn new(stock_mm: f64, sections: impl Into<String>) -> Sized {
        let limits = "stiffness_min: 0.0001, whirl_ratio: 0.7".into();
        Sized { stock_mm, sections: sections.into(), limits, pitch_mm: 40.0, supports_n_per_um: 60.0 }
    }

    fn text(&self) -> String {
        let d = self.stock_mm;
        let k = self.supports_n_per_um;
        let within = |v: f64, low: f64, high: f64| v.clamp(low, high);
        format!(
            "shaft: {{material: C45, sections: [{}]}}
stock: {{diameter: {d}, bar_length: 12000}}
machine:
  bush: {{max_bar: {}, land: {}, gap: {}, stiffness: {k}}}
  headstock: {{nearest: {}, stroke: {}, hold: {}, stiffness: {k}, max_rpm: 12000, regrip_s: 4}}
  counter_spindle:
    {{nearest: {}, farthest: {}, bore: {}, bore_depth: 6000, stiffness: {k}, max_rpm: 12000, hand_over_s: 3, collets: [
      {{name: A, range: [{}, {d}], hold: {}, passes: {}, clamp_force: 20000}}]}}
  cross_tool_reach: 10
  part_off: {{width: 1, time_s: 4}}
cutting: {{vc: 60, feed: 0.02, ap_max: {}, ap_finish: 0.05, speed_floor: 0.05}}
limits: {{{}}}
planning: {{station_pitch: {}}}
",
            self.sections,
            within(1.2 * d, 1.0, 200.0),
            within(1.5 * d, 1.0, 200.0),
            within(0.05 * d, 0.1, 20.0),
            within(2.0 * d, 5.0, 300.0),
            within(20.0 * d, 20.0, 2000.0),
            within(2.0 * d, 2.0, 300.0),
            within(0.5 * d, 0.5, 300.0),
            within(30.0 * d, 10.0, 5000.0),
            within(1.5 * d, d + 6.0, 300.0),
            within(0.5 * d, 0.1, 200.0),
            within(1.0 * d, 1.0, 200.0),
            within(1.2 * d, 0.2, 300.0),
            within(0.2 * d, 0.05, 20.0),
            self.limits,
            self.pitch_mm,
        )
    }

    /// The answer: refused with words, or a plan, proven where there is one.
    fn answer(&self) -> Result<Plan, String> {
        let text = self.text();
        let job = match spanhold::input::read_job_text("edge.yaml", &text, ".".as_ref()) {
            Ok(job) => job,
            Err(told) => {
                assert!(told.iter().all(|d| !d.what.is_empty()) && !told.is_empty(), "{text}");
                return Err(told.iter().map(|d| d.to_string()).collect::<Vec<_>>().join("\n"));
            }
        };
        let plan = advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}"));
        match plan.verdict {
            Verdict::Feasible | Verdict::AtRisk => assert!(proof::prove(&plan, &job).holds(), "{text}"),
            Verdict::Infeasible => {
                let told = plan.shortfall.as_ref().is_some_and(|s| !s.text.is_empty() && s.farthest_mm.is_finite());
                assert!(told, "no reason\n{text}");
            }
        }
        let printed = serde_json::to_string(&plan).expect("plain data");
        assert!(!printed.contains("null,null,null,null"), "numbers that are none\n{text}");
        Ok(plan)
    }

    fn made(&self) -> Plan {
        let plan = self.answer().unwrap_or_else(|told| panic!("{told}\n{}", self.text()));
        assert_eq!(plan.verdict, Verdict::Feasible, "{:?}\n{}", plan.shortfall, self.text());
        plan
    }
}

/// From a wire to a tree: the same shaft in the measure of its bar.
#[test]
fn bars_of_every_size_are_planned() {
    for stock in [1.0, 2.5, 8.0, 30.0, 120.0] {
        let (d, l) = (0.9 * stock, 3.0 * stock);
        let sections = format!("{{length: {l}, diameter: {d}}}, {{length: {l}, diameter: {d}}}");
        Sized::new(stock, sections).made();
    }
    // Thinner than any collet or tool is made for: an answer all the same.
    for stock in [0.1, 0.11, 0.3] {
        let sections = format!(
            "{{length: 1, diameter: 0.1, tolerance: [-0.01, 0]}}, {{length: 3, diameter: {stock}, tolerance: [-0.01, 0]}}"
        );
        let _ = Sized::new(stock, sections).answer();
    }
}

#[test]
fn lengths_from_a_millimetre_to_six_metres_are_answered() {
    for length in [0.01, 0.5, 1.0, 10.0] {
        let _ = Sized::new(12.0, format!("{{length: {length}, diameter: 11}}")).answer();
    }
    let mut long = Sized::new(60.0, "{length: 5980, diameter: 58}, {length: 20, diameter: 50}");
    long.limits = "stiffness_min: 0.0001".into();
    long.pitch_mm = 100.0;
    let plan = long.answer().expect("a job");
    assert!((plan.length_mm - 6000.0).abs() < 1e-9);
    let told = Sized::new(60.0, "{length: 6000, diameter: 58}, {length: 0.01, diameter: 50}").answer();
    assert!(told.expect_err("too long").contains("6000"), "the shaft is longer than it may be");
}

/// Supports that hardly hold or hardly give: numbers may get large, answers stay answers.
#[test]
fn supports_that_hardly_hold_or_hardly_give_are_answered() {
    for k in [0.1, 1.0, 10_000.0] {
        let mut job = Sized::new(12.0, "{length: 60, diameter: 11}, {length: 60, diameter: 10}");
        job.supports_n_per_um = k;
        job.limits = "stiffness_min: 0.0001, whirl_ratio: 0.9, sag: 5, whip: 5".into();
        job.pitch_mm = 30.0;
        let plan = job.answer().expect("a job");
        if k >= 1e4 {
            assert_eq!(plan.verdict, Verdict::Feasible, "{:?}", plan.shortfall);
        }
    }
}

#[test]
fn grooves_of_a_hair_and_of_the_whole_shaft_are_planned() {
    for width in [0.05, 0.3, 3.0, 3.000_001, 60.0] {
        let sections = format!(
            "{{length: 30, diameter: 11}}, {{length: {width}, diameter: 9, kind: groove}}, {{length: 30, diameter: 11}}"
        );
        let plan = Sized::new(12.0, sections).made();
        let cut: f64 = plan.segments.iter().filter(|s| s.section == 2).map(|s| s.to_mm - s.from_mm).sum();
        assert!((cut - width).abs() < 1e-9, "{cut} of a groove of {width}");
    }
}

/// A row of sections of one diameter is one surface cut in pieces: no stop falls elsewhere for it, and it costs the same cutting.
#[test]
fn sections_of_one_diameter_in_a_row_cut_as_one() {
    let whole = Sized::new(12.0, "{length: 90, diameter: 11}").made();
    let row = ["{length: 30, diameter: 11}"; 3].join(", ");
    let parts = Sized::new(12.0, row).made();
    assert!(
        (whole.time_s.cutting - parts.time_s.cutting).abs() < 1e-6,
        "{} {}",
        whole.time_s.cutting,
        parts.time_s.cutting
    );
    assert_eq!(parts.segments.iter().map(|s| s.section).max(), Some(3));
    // A collet takes hold of one section only: where each is shorter than its hold, that is said.
    let short = Sized::new(12.0, ["{length: 9, diameter: 11}"; 10].join(", ")).answer().expect("a job");
    assert!(short.shortfall.is_some_and(|s| s.text.contains("no clear length of 12 mm")), "what is missing");
}

#[test]
fn a_bar_of_the_finished_size_is_not_cut() {
    let plan = Sized::new(12.0, "{length: 40, diameter: 12}, {length: 40, diameter: 11}").made();
    assert!(plan.segments.iter().filter(|s| s.section == 1).all(|s| s.work == "as_drawn" && s.time_s == 0.0));
    let all = Sized::new(12.0, "{length: 40, diameter: 12}").answer().expect("a job");
    assert!(all.segments.iter().all(|s| s.work == "as_drawn"));
    // A hair above the finished size is cut, a hair below is refused.
    let _ = Sized::new(12.0, "{length: 40, diameter: 11.999999}").made();
    let told = Sized::new(12.0, "{length: 40, diameter: 12.000001}").answer();
    assert!(told.expect_err("thicker than the bar").contains("too thin"));
}

/// Shoulders, ends of grooves, moments of holes and stations of the even grid at one place, or a rounding apart.
#[test]
fn places_that_coincide_are_one_place() {
    let pitch = 40.0;
    for off in [0.0, 1e-9, 1e-7, 1e-6, 1e-5, -1e-6] {
        let first = pitch + off;
        let mut text = Sized::new(
            12.0,
            format!("{{length: {first}, diameter: 11}}, {{length: 40, diameter: 10.5}}, {{length: 40, diameter: 11}}"),
        )
        .text();
        // Under its tool, 10 mm behind the place of the hole, when the shoulder is.
        text = text.replace(
            "]}\nstock",
            "], features: [{cross_hole: 2, at: 30}, {cross_hole: 1, at: 30}, {cross_hole: 1, at: 70}]}\nstock",
        );
        let job = read(&text).unwrap_or_else(|| panic!("refused\n{text}"));
        let plan = advised(&job, Advice::None).unwrap_or_else(|d| panic!("{off}: {d}\n{text}"));
        assert_eq!(plan.verdict, Verdict::Feasible, "{:?}\n{text}", plan.shortfall);
        assert!(proof::prove(&plan, &job).holds(), "{off}");
    }
}
