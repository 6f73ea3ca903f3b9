//! The guide rod that the tests of reasons and of advice change one thing of.

/// An invented guide rod of a textile machine on a short machine.
pub fn text(sections: &str, rest: &str) -> String {
    format!(
        "shaft:
  name: guide rod
  material: C45
  straightness: 0.1
  sections:
{sections}
stock: {{diameter: 12}}
machine:
  name: short 16
  bush: {{max_bar: 16, land: 14, gap: 1, stiffness: 80}}
  headstock: {{nearest: 24, stroke: 160, hold: 20, stiffness: 80, max_rpm: 9000, regrip_s: 5, clamp_force: 9000}}
  counter_spindle:
    nearest: 6
    farthest: 110
    bore: 18
    bore_depth: 400
    stiffness: 60
    max_rpm: 9000
    hand_over_s: 4
    collets:
      - {{name: '11', range: [10.8, 11.1], hold: 12, passes: 11.4, clamp_force: 5000}}
cutting: {{vc: 100, feed: 0.1, ap_max: 1.5, speed_floor: 1}}
{rest}"
    )
}

/// Its sections.
pub const ROD: &str = "    - {length: 6, diameter: 10, tolerance: h11, name: front}
    - {length: 194, diameter: 11, tolerance: h11, name: rod}";
/// Its limits.
pub const LIMITS: &str = "limits: {stiffness_min: 0.1, sag: 0.5, whip: 0.5}\nplanning: {station_pitch: 10}";
