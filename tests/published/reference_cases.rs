//! Random stepped shafts on springs with our answers, written to `target/reference_cases.json` for `.ci/reference.py`,
//! which solves the same shafts with two general libraries. Always written, always the same: fixed seed, own generator.
//!
//! Units in the file: as each key says. Places are from the left end; deflections are positive downwards.

use serde_json::{Value, json};
use spanhold::mechanics::beam::{Beam, Elastic, Spring};
use spanhold::mechanics::{chatter, modes};
use std::path::Path;

const CASES: usize = 40;
const SEED: u64 = 20_260_101;
/// Our elements are no longer than this share of the shaft; the libraries use the same nodes or finer.
const ELEMENT_SHARE: f64 = 1.0 / 80.0;
/// Places where stiffness and sag are asked for.
const POINTS: usize = 4;

/// Name, N/mm², Poisson's ratio, kg/m³: ordinary handbook values.
const MATERIALS: [(&str, f64, f64, f64); 3] =
    [("steel", 206_000.0, 0.3, 7850.0), ("titanium", 114_000.0, 0.34, 4430.0), ("aluminium", 70_000.0, 0.33, 2700.0)];

/// Knuth's 64-bit linear congruential generator; the upper bits make the number.
struct Lcg(u64);

impl Lcg {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    fn pick(&mut self, low: usize, high: usize) -> usize {
        low + (self.unit() * (high - low + 1) as f64) as usize
    }

    /// Evenly over decades.
    fn scale(&mut self, low: f64, high: f64) -> f64 {
        self.between(low.ln(), high.ln()).exp()
    }
}

/// To 0.001: short numbers that every reader takes in alike.
fn short(x: f64) -> f64 {
    (x * 1000.0).round() / 1000.0
}

struct Case {
    material: (&'static str, f64, f64, f64),
    steps: Vec<(f64, f64)>,
    springs: Vec<Spring>,
    places: Vec<f64>,
}

fn random_case(random: &mut Lcg) -> Case {
    let material = MATERIALS[random.pick(0, 2)];
    let count = random.pick(3, 12);
    let steps: Vec<(f64, f64)> =
        (0..count).map(|_| (short(random.between(5.0, 120.0)), short(random.scale(2.0, 32.0)))).collect();
    let length: f64 = steps.iter().map(|s| s.0).sum();
    let springs = random.pick(2, 6);
    // One spring in each equal part of the shaft, so that two never fall together and the beam is held.
    let part = length / springs as f64;
    let springs = (0..springs)
        .map(|i| Spring {
            at_mm: short(part * (i as f64 + random.between(0.05, 0.95))),
            n_per_mm: short(random.scale(1e3, 2e5)),
        })
        .collect();
    let places = (0..POINTS).map(|_| short(random.between(0.0, length))).collect();
    Case { material, steps, springs, places }
}

fn mesh(case: &Case) -> Vec<f64> {
    let length: f64 = case.steps.iter().map(|s| s.0).sum();
    let mut fixed = vec![0.0];
    for (l, _) in &case.steps {
        fixed.push(fixed[fixed.len() - 1] + l);
    }
    fixed.extend(case.springs.iter().map(|s| s.at_mm));
    fixed.extend(&case.places);
    fixed.sort_by(f64::total_cmp);
    fixed.dedup_by(|b, a| *b - *a < 1e-3);
    let mut nodes = vec![0.0];
    for pair in fixed.windows(2) {
        let pieces = ((pair[1] - pair[0]) / (ELEMENT_SHARE * length)).ceil().max(1.0);
        nodes.extend((1..=pieces as usize).map(|i| pair[0] + (pair[1] - pair[0]) * i as f64 / pieces));
    }
    nodes
}

fn solved(index: usize, case: &Case) -> Value {
    let (name, e, poisson, density) = case.material;
    let elastic = Elastic { e_n_per_mm2: e, poisson, density_t_per_mm3: density * 1e-12, bore_mm: 0.0 };
    let mut edges = vec![];
    let mut x = 0.0;
    for (l, d) in &case.steps {
        x += l;
        edges.push((x, *d));
    }
    let diameter = |x: f64| edges.iter().find(|e| x < e.0).map_or(0.0, |e| e.1);
    let mut nodes = mesh(case);
    let diameters: Vec<f64> = nodes.windows(2).map(|p| diameter(0.5 * (p[0] + p[1]))).collect();
    let beam = Beam::new(&elastic, &mut nodes, diameter, &case.springs);
    assert_eq!(nodes.len(), diameters.len() + 1, "no node was merged");
    let factor = beam.factor().expect("two springs or more hold the beam");
    let at: Vec<usize> = case.places.iter().map(|x| beam.node(*x)).collect();
    let sag = beam.sag(&factor);
    let stiffness: Vec<f64> = at.iter().map(|i| 1.0 / beam.under_force(&factor, *i, 1.0)[*i][0]).collect();
    let hz: Vec<f64> =
        modes::lowest_modes(&beam, 3).expect("held").iter().map(|m| m.omega / (2.0 * std::f64::consts::PI)).collect();
    assert!(stiffness.iter().all(|k| *k > 0.0) && hz.windows(2).all(|f| f[0] < f[1]), "case {index}");
    json!({
        "name": format!("case {index}"),
        "material": { "name": name, "e_n_per_mm2": e, "poisson": poisson, "density_kg_per_m3": density },
        "gravity_mm_per_s2": 9810.0,
        "nodes_mm": nodes,
        "diameters_mm": diameters,
        "springs": case.springs.iter().map(|s| json!({ "at_mm": s.at_mm, "n_per_mm": s.n_per_mm })).collect::<Vec<_>>(),
        "places_mm": at.iter().map(|i| beam.x_mm[*i]).collect::<Vec<_>>(),
        "ours": {
            "stiffness_n_per_mm": stiffness,
            "sag_mm": at.iter().map(|i| sag[*i][0]).collect::<Vec<_>>(),
            "largest_sag_mm": sag.iter().fold(0.0, |a: f64, v| a.max(v[0].abs())),
            "frequencies_hz": hz,
        },
    })
}

/// One mode each: stiffness, damping ratio, frequency, cutting stiffness, and our limit of the depth of cut.
fn chatter_cases() -> Vec<Value> {
    [(20_000.0, 0.03, 150.0), (5_000.0, 0.02, 90.0), (50_000.0, 0.05, 400.0)]
        .into_iter()
        .map(|(k, damping, hz): (f64, f64, f64)| {
            let omega = 2.0 * std::f64::consts::PI * hz;
            let mode = modes::Mode { omega, shape: vec![[omega / k.sqrt(), 0.0]] };
            let least = chatter::least_real(&[mode], 0, 1.0 / k, damping);
            json!({
                "stiffness_n_per_mm": k,
                "damping": damping,
                "frequency_hz": hz,
                "cutting_n_per_mm2": 1500.0,
                "ours": { "depth_limit_mm": chatter::depth_limit_mm(1500.0, least.mm_per_n) },
            })
        })
        .collect()
}

#[test]
fn random_shafts_are_written_for_the_reference_libraries() {
    let mut random = Lcg(SEED);
    let cases: Vec<Case> = (0..CASES).map(|_| random_case(&mut random)).collect();
    let count = |part: fn(&Case) -> usize| {
        let all = cases.iter().map(part);
        (all.clone().min(), all.max())
    };
    assert_eq!(count(|c| c.springs.len()), (Some(2), Some(6)), "the cases span the numbers of springs");
    assert_eq!(count(|c| c.steps.len()), (Some(3), Some(12)), "the cases span the numbers of steps");
    for (name, ..) in MATERIALS {
        assert!(cases.iter().any(|c| c.material.0 == name), "no case of {name}");
    }
    let shafts: Vec<Value> = cases.iter().enumerate().map(|(i, c)| solved(i, c)).collect();
    let text = serde_json::to_string_pretty(&json!({ "shafts": shafts, "chatter": chatter_cases() })).expect("json");
    let target = Path::new(env!("CARGO_TARGET_TMPDIR")).parent().expect("the target directory");
    std::fs::write(target.join("reference_cases.json"), text).expect("the cases can be written");
}
