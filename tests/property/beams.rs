//! Facts of any beam on springs.

use crate::cases;
use proptest::prelude::*;
use spanhold::mechanics::beam::{Beam, Elastic, Spring};
use spanhold::mechanics::modes::lowest_mode;

const STEEL: Elastic = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
/// Answers of two meshes or orders of elimination of the same beam.
const SAME: f64 = 1e-7;

/// A stepped bar: lengths and diameters of its steps, springs as place (share of the length) and stiffness.
#[derive(Debug, Clone)]
struct Bar {
    steps: Vec<(f64, f64)>,
    springs: Vec<(f64, f64)>,
}

impl Bar {
    fn length(&self) -> f64 {
        self.steps.iter().map(|s| s.0).sum()
    }

    fn diameter(&self, x: f64) -> f64 {
        let mut to = 0.0;
        for (length, d) in &self.steps {
            to += length;
            if x < to {
                return *d;
            }
        }
        self.steps.last().map_or(0.0, |s| s.1)
    }

    fn places(&self) -> Vec<f64> {
        let mut places = vec![0.0];
        for (length, _) in &self.steps {
            places.push(places[places.len() - 1] + length);
        }
        places.extend(self.springs.iter().map(|(at, _)| at * self.length()));
        places
    }

    fn springs(&self) -> Vec<Spring> {
        self.springs.iter().map(|(at, k)| Spring { at_mm: at * self.length(), n_per_mm: *k }).collect()
    }

    fn beam(&self, material: &Elastic, extra: &[f64]) -> Beam {
        let mut places = self.places();
        places.extend_from_slice(extra);
        Beam::new(material, &mut places, |x| self.diameter(x), &self.springs())
    }

    fn mirrored(&self) -> Bar {
        Bar {
            steps: self.steps.iter().rev().copied().collect(),
            springs: self.springs.iter().map(|(at, k)| (1.0 - at, *k)).collect(),
        }
    }
}

/// Bars held at two places well apart at least.
fn bars() -> impl Strategy<Value = Bar> {
    let steps = prop::collection::vec((3.0..120.0, 4.0..30.0), 1..6);
    let springs = prop::collection::vec((0.0..1.0, 1e3..2e5), 0..4);
    (steps, springs, (0.0..0.3, 1e3..2e5), (0.6..1.0, 1e3..2e5)).prop_map(|(steps, mut springs, a, b)| {
        springs.extend([a, b]);
        Bar { steps, springs }
    })
}

fn flexibility(beam: &Beam, x: f64) -> f64 {
    let factor = beam.factor().expect("held");
    let node = beam.node(x);
    beam.under_force(&factor, node, 1.0)[node][0]
}

/// Work of the weight: `wᵀ K⁻¹ w`.
fn weight_work(beam: &Beam) -> f64 {
    let factor = beam.factor().expect("held");
    let sag = beam.sag(&factor);
    sag.iter().zip(&beam.weight).map(|(u, w)| u[0] * w[0] + u[1] * w[1]).sum()
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn a_mirrored_bar_mirrors_its_deflection(bar in bars(), at in 0.0..1.0) {
        let (length, x) = (bar.length(), at * bar.length());
        let (one, other) = (bar.beam(&STEEL, &[x]), bar.mirrored().beam(&STEEL, &[length - x]));
        let (f, g) = (one.factor().expect("held"), other.factor().expect("held"));
        let (u, v) = (one.under_force(&f, one.node(x), 10.0), other.under_force(&g, other.node(length - x), 10.0));
        let (s, w) = (one.sag(&f), other.sag(&g));
        for (a, b) in [(&u, &v), (&s, &w)] {
            let scale = a.iter().map(|p| p[0].abs()).fold(0.0, f64::max);
            for (i, place) in one.x_mm.iter().enumerate() {
                let j = other.node(length - place);
                prop_assert!((a[i][0] - b[j][0]).abs() <= SAME * scale, "{} {} at {place}", a[i][0], b[j][0]);
                prop_assert!((a[i][1] + b[j][1]).abs() <= SAME * scale, "slopes {} {} at {place}", a[i][1], b[j][1]);
            }
        }
        let (f1, f2) = (lowest_mode(&one, &f).omega, lowest_mode(&other, &g).omega);
        prop_assert!((f1 - f2).abs() <= 1e-5 * f1, "{f1} {f2}");
    }

    /// A stiffer spring changes the flexibility at any place `i` under its own load by `-k u_ij²/(1 + k u_jj) <= 0`
    /// (Sherman & Morrison), and the work of the weight likewise: both are loads with their own deflection. The sag at one
    /// place under the weight of the whole bar is not: a support in one bay may lift or drop the next.
    #[test]
    fn more_stiffness_never_gives_way_more(bar in bars(), which in 0..2usize, more in 1.0..10.0, at in 0.0..1.0) {
        let mut stiffer = bar.clone();
        stiffer.springs[which].1 *= more;
        let x = at * bar.length();
        let (soft, stiff) = (bar.beam(&STEEL, &[x]), stiffer.beam(&STEEL, &[x]));
        let (a, b) = (flexibility(&soft, x), flexibility(&stiff, x));
        prop_assert!(b <= a * (1.0 + SAME), "{a} {b}");
        prop_assert!(weight_work(&stiff) <= weight_work(&soft) * (1.0 + SAME));
        let low = lowest_mode(&soft, &soft.factor().expect("held")).omega;
        let high = lowest_mode(&stiff, &stiff.factor().expect("held")).omega;
        prop_assert!(high >= low * (1.0 - 1e-5), "{low} {high}");
    }

    /// A stiffer material adds a positive semidefinite matrix to the stiffness, so the same holds.
    #[test]
    fn stiffer_steel_never_gives_way_more(bar in bars(), more in 1.0..3.0, at in 0.0..1.0) {
        let x = at * bar.length();
        let harder = Elastic { e_n_per_mm2: STEEL.e_n_per_mm2 * more, ..STEEL };
        let (soft, stiff) = (bar.beam(&STEEL, &[x]), bar.beam(&harder, &[x]));
        prop_assert!(flexibility(&stiff, x) <= flexibility(&soft, x) * (1.0 + SAME));
        prop_assert!(weight_work(&stiff) <= weight_work(&soft) * (1.0 + SAME));
    }

    #[test]
    fn splitting_a_slice_changes_nothing(bar in bars(), cuts in prop::collection::vec(0.0..1.0f64, 1..12), at in 0.0..1.0) {
        let x = at * bar.length();
        let cuts: Vec<f64> = cuts.iter().map(|c| c * bar.length()).collect();
        let whole = bar.beam(&STEEL, &[x]);
        let split = bar.beam(&STEEL, &[&[x], cuts.as_slice()].concat());
        let (a, b) = (flexibility(&whole, x), flexibility(&split, x));
        prop_assert!((a - b).abs() <= SAME * a, "{a} {b}");
        let (f, g) = (whole.factor().expect("held"), split.factor().expect("held"));
        let (u, v) = (whole.sag(&f), split.sag(&g));
        let scale = v.iter().map(|p| p[0].abs()).fold(0.0, f64::max);
        for (i, place) in whole.x_mm.iter().enumerate() {
            prop_assert!((u[i][0] - v[split.node(*place)][0]).abs() <= SAME * scale, "at {place}");
        }
        // Work-equivalent mass: more nodes can only lower the frequency (Rayleigh's principle).
        let (low, high) = (lowest_mode(&split, &g).omega, lowest_mode(&whole, &f).omega);
        prop_assert!(low <= high * (1.0 + 1e-5), "{low} {high}");
    }
}
