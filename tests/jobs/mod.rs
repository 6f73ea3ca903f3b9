//! Small random jobs as text: thin bar, short strokes, tight limits, so that stages, re-grips, shared stops, penalties
//! and dead ends all occur within a few stations. The same seed gives the same text. Tests of the planner beside its code and those of
//! `tests/` share them.

#![allow(dead_code, reason = "not everyone who includes this file uses all of it")]

use std::fmt::Write;

/// A small linear congruential generator (Knuth, The Art of Computer Programming, vol. 2, section 3.3.4, from memory):
/// the tests must not change with the version of a library.
pub struct Random(u64);

impl Random {
    /// A generator for a seed.
    pub fn new(seed: u64) -> Random {
        let mut random = Random(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0xD1B5_4A32_D192_ED03);
        for _ in 0..4 {
            random.unit();
        }
        random
    }

    /// A number from 0 to 1.
    pub fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A number between two ends, in `steps` equal steps: few digits make a failing job readable.
    pub fn between(&mut self, low: f64, high: f64, steps: usize) -> f64 {
        let i = (self.unit() * (steps + 1) as f64).floor().min(steps as f64);
        let value = low + (high - low) * i / steps as f64;
        (value * 1e6).round() / 1e6
    }

    /// Like `between`, evenly over the orders of magnitude.
    pub fn spread(&mut self, low: f64, high: f64, steps: usize) -> f64 {
        let value = low * (high / low).powf(self.between(0.0, 1.0, steps));
        let digits = 10f64.powf(3.0 - value.log10().ceil());
        (value * digits).round() / digits
    }

    /// One of some things.
    pub fn pick<T: Copy>(&mut self, things: &[T]) -> T {
        things[((self.unit() * things.len() as f64) as usize).min(things.len() - 1)]
    }

    /// Whether something of this probability happens.
    pub fn chance(&mut self, probability: f64) -> bool {
        self.unit() < probability
    }
}

/// The text of a small job. Some are refused by the reader; the caller skips those.
///
/// Every fourth job is one plain cylinder after another on a counter-spindle of short travel, with a tight limit on how
/// far the front drops when it is let go: there the headstock may have to re-grip before a hand-over, since the bar
/// behind the bush sags and lifts the front.
pub fn small_job(seed: u64) -> String {
    let r = &mut Random::new(seed);
    let drops = seed % 4 == 3;
    let stock = r.between(5.0, if drops { 6.5 } else { 9.0 }, 6);
    let thick = stock - 0.4;
    let thin = if drops { thick } else { stock - r.pick(&[1.0, 1.5, 2.0]) };
    let mut text = String::from("shaft:\n  material: C45\n  sections:\n");
    let mut length = 0.0;
    for _ in 0..if drops { 3 } else { r.pick(&[1, 2, 2, 3, 3, 4, 5]) } {
        length += section(r, drops, [stock, thick, thin], &mut text);
    }
    if r.chance(0.25) {
        let at = r.between(0.2 * length, 0.9 * length, 20);
        let thrust = r.pick(&[", thrust: 5", ", thrust: 20", ", thrust: 60"]);
        let _ = writeln!(text, "  features:\n    - {{cross_hole: 1.5, at: {at:.1}{thrust}}}");
    }
    let _ = writeln!(text, "  straightness: {}", r.pick(&[0.1, 0.1, 0.3]));
    let _ = writeln!(text, "stock: {{diameter: {stock}, bar_length: 3000}}");
    machine(r, drops, [thick, thin], &mut text);
    cutting(r, drops, &mut text);
    text
}

/// Writes one section (and perhaps a groove behind it); its length, mm.
fn section(r: &mut Random, drops: bool, [stock, thick, thin]: [f64; 3], text: &mut String) -> f64 {
    let length = if drops { r.between(28.0, 42.0, 14) } else { r.between(14.0, 56.0, 14) };
    let diameter = if r.chance(0.5) { thick } else { thin };
    let extras = [
        r.pick(&[
            "",
            "",
            ", interrupt: free",
            ", interrupt: free",
            ", interrupt: free",
            ", interrupt: avoid",
            ", interrupt: never",
        ]),
        r.pick(&["", "", "", ", tolerance: h9", ", tolerance: h9", ", tolerance: h7", ", ra: 1.6"]),
        if r.chance(0.12) { ", grip: false" } else { "" },
        if r.chance(0.1) { ", finish_pass: true" } else { "" },
    ];
    let _ = match r.pick(&[0, 0, 0, 0, 0, 0, 0, 1, 2, 3]) {
        1 if thin < thick => writeln!(text, "    - {{length: {length}, taper: [{thin}, {thick}]}}"),
        2 if stock >= 6.0 => writeln!(text, "    - {{length: {}, thread: M5}}", length / 4.0),
        _ => writeln!(text, "    - {{length: {length}, diameter: {diameter}{}}}", extras.concat()),
    };
    if r.chance(0.2) {
        let _ = writeln!(text, "    - {{length: 2, diameter: {}, kind: groove}}", thin - 0.5);
    }
    length
}

fn machine(r: &mut Random, drops: bool, [thick, thin]: [f64; 2], text: &mut String) {
    let land = r.between(8.0, 16.0, 4);
    text.push_str("machine:\n");
    let _ = writeln!(
        text,
        "  bush: {{max_bar: 12, land: {land}, gap: {}, stiffness: {}}}",
        r.pick(&[0.5, 1.0, 1.5]),
        r.pick(&[30, 60, 120])
    );
    let _ = writeln!(
        text,
        "  headstock: {{nearest: {}, stroke: {}, hold: 15, stiffness: {}, max_rpm: 12000, regrip_s: {}}}",
        land + r.pick(&[2.0, 20.0]),
        if drops { r.pick(&[76.0, 84.0, 92.0]) } else { r.pick(&[26.0, 32.0, 40.0, 50.0, 64.0, 80.0, 110.0]) },
        r.pick(&[30, 60, 120]),
        r.pick(&[2, 4, 6])
    );
    if r.chance(0.95) {
        let _ = writeln!(
            text,
            "  counter_spindle:\n    nearest: {}\n    farthest: {}\n    bore: 14\n    bore_depth: {}",
            r.pick(&[3.0, 6.0, 10.0]),
            r.between(36.0, if drops { 60.0 } else { 116.0 }, 16),
            r.pick(&[60, 120, 200, 200, 200])
        );
        let _ = writeln!(
            text,
            "    stiffness: {}\n    max_rpm: {}\n    hand_over_s: {}",
            r.pick(&[10, 30, 60]),
            r.pick(&[4000, 12000]),
            r.pick(&[1, 3, 6])
        );
        if r.chance(0.4) {
            let _ = writeln!(text, "    sleeve: {{pitch: {}, stiffness: {}}}", r.pick(&[20, 35]), r.pick(&[0.3, 2.0]));
        }
        text.push_str("    collets:\n");
        let first = drops || r.chance(0.75);
        let both = !drops && r.chance(0.25);
        for (name, d) in [("A", thick), ("B", thin)] {
            if both || first == (name == "A") {
                let _ = writeln!(
                    text,
                    "      - {{name: {name}, range: [{:.2}, {:.2}], hold: {}, passes: {:.2}, clamp_force: {}}}",
                    d - 0.2,
                    d + 0.1,
                    r.pick(&[4, 8]),
                    d + 0.2,
                    r.pick(&[2500, 9000, 9000, 9000])
                );
            }
        }
    }
    let _ = writeln!(text, "  shared_stop_saving_s: {}", r.pick(&[0, 1, 2, 3]));
    let _ = writeln!(text, "  cross_tool_reach: {}", r.pick(&["10", "[6, 14]"]));
    let _ = writeln!(text, "  part_off: {{width: {}, time_s: 4}}", r.pick(&[1, 2]));
}

fn cutting(r: &mut Random, drops: bool, text: &mut String) {
    let _ = writeln!(
        text,
        "cutting: {{tools: {}, vc: {}, feed: {}, ap_max: {}, ap_finish: 0.1, speed_floor: {}}}",
        r.pick(&["single", "opposed"]),
        r.between(60.0, 240.0, 10),
        r.pick(&[0.04, 0.08, 0.12]),
        r.pick(&[0.8, 2.0, 2.0]),
        r.pick(&[1.0, 0.7, 0.3, 0.2])
    );
    let before = text.len();
    text.push_str("limits:\n");
    let span = r.spread(0.01, if drops { 0.05 } else { 0.25 }, 12);
    let stiffness = text.len();
    let _ = writeln!(text, "  whirl_ratio: {}", r.spread(if drops { 0.2 } else { 0.05 }, 0.6, 12));
    let _ = writeln!(text, "  whip: {}", r.spread(0.004, 0.2, 12));
    let _ = writeln!(text, "  sag: {}", r.spread(0.0001, 0.005, 12));
    let _ =
        writeln!(text, "  release: {}", if drops { r.spread(0.0001, 0.0008, 30) } else { r.spread(0.0001, 0.03, 14) });
    // Limits of the tool and of a free front, so that not every stage ends where its speed does.
    let at_tool = if r.chance(0.25) { r.spread(2.0, 40.0, 12) } else { span };
    let span = if r.chance(0.3) { r.spread(0.5, 20.0, 12) } else { span };
    text.insert_str(stiffness, &format!("  stiffness_min: {at_tool}\n  span_stiffness_min: {span}\n"));
    if r.chance(if drops { 0.8 } else { 0.3 }) {
        let _ = writeln!(text, "  free_ratio: {}", r.spread(2.0, if drops { 8.0 } else { 16.0 }, 12));
    }
    if r.chance(0.3) {
        let _ = writeln!(text, "  pick_up: {}", r.spread(0.0005, 0.05, 12));
    }
    text.insert_str(before, &format!("planning: {{station_pitch: {}}}\n", r.pick(&[9, 12, 16])));
}

/// A small job with other kinds of sections, features and work on the rear end put in.
pub fn rich_job(seed: u64) -> String {
    let r = &mut Random::new(seed ^ 0x5eed);
    let text = small_job(seed);
    let mut lines: Vec<String> = text.lines().map(String::from).collect();
    let sections: Vec<usize> = (0..lines.len()).filter(|i| lines[*i].starts_with("    - {length")).collect();
    for _ in 0..r.pick(&[1, 2]) {
        let kinds = [
            "{length: 10, across_flats: 3.2, sides: 6}",
            "{length: 8, diameter: 4.5, across_flats: 3.5, sides: 2}",
            "{length: 9, diameter: 4.4, kind: knurl}",
            "{length: 22, thread: M4}",
            "{length: 0.4, diameter: 4}",
            "{length: 7, diameter: 4.2, tolerance: h6, finish_pass: true}",
        ];
        lines.insert(r.pick(&sections), format!("    - {}", r.pick(&kinds)));
    }
    let mut extra = String::new();
    if !text.contains("features:") {
        let features = [
            "{centre_hole: A1, end: front}",
            "{centre_hole: A1, end: back}",
            "{keyseat: [1, 0.5], from: 20, to: 26}",
            "{cross_hole: 1, at: 13, thrust: 10}",
        ];
        extra += &format!("  features:\n    - {}\n", r.pick(&features));
    }
    if r.chance(0.3) {
        extra += "  back_work:\n    - {name: bore the end, radial_force: 2, torque: 0.05, time_s: 5}\n";
    }
    lines.join("\n").replace("  straightness", &format!("{extra}  straightness")) + "\n"
}

/// The text with the number behind a key replaced by another made from it; none where the key is not there.
pub fn with(text: &str, key: &str, change: impl Fn(f64) -> f64) -> Option<String> {
    let from = text.find(&format!("{key}: "))? + key.len() + 2;
    let rest = &text[from..];
    let to = from + rest.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(rest.len());
    let value: f64 = text[from..to].parse().ok()?;
    Some(format!("{}{:.6}{}", &text[..from], change(value), &text[to..]))
}

/// A small job, every third a rich one, whose machine has a tray for parts up to some length and diameter about those of the part. Every
/// fourth machine has no counter-spindle.
pub fn tray_job(seed: u64) -> String {
    let r = &mut Random::new(seed ^ 0x7ea1);
    let text = if seed % 3 == 2 { rich_job(seed) } else { small_job(seed) };
    let text = if seed % 4 == 2 { without_counter_spindle(&text) } else { text };
    let (length, diameter) = (r.between(10.0, 160.0, 15), r.pick(&[4.0, 6.0, 9.0, 9.0, 9.0]));
    with_tray(&text, length, diameter)
}

/// The text with a tray for parts up to a length and a diameter, mm.
pub fn with_tray(text: &str, length: f64, diameter: f64) -> String {
    text.replace(", time_s: 4}", &format!(", time_s: 4, tray: {{max_length: {length}, max_diameter: {diameter}}}}}"))
}

fn without_counter_spindle(text: &str) -> String {
    let Some((before, rest)) = text.split_once("  counter_spindle:\n") else { return text.into() };
    let after = rest.find("  shared_stop_saving_s").map_or("", |at| &rest[at..]);
    format!("{before}{after}")
}
