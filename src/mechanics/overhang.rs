//! Deflection of a round bar on two springs with an overhang, in closed form: the bar next to a guide bush.

use super::beam::{Elastic, area_mm2, inertia_mm4};

/// Deflection in mm at the end of an overhang `c` under 1 N. The bar has one diameter and two equal springs at a distance `a`:
/// `((a+c)/a)²/k + (c/a)²/k + c²(a+c)/(3EI) + (c + c²/a)/(κGA)`.
///
/// Source: beam tables (simple beam with overhang, Roark). The shear terms and the spring terms (statics of a rigid body on two
/// springs) are derived here.
pub fn tip_mm_per_n(material: &Elastic, diameter_mm: f64, overhang_mm: f64, span_mm: f64, spring_n_per_mm: f64) -> f64 {
    let (a, c) = (span_mm, overhang_mm);
    let ei = material.e_n_per_mm2 * inertia_mm4(diameter_mm);
    let shear = material.shear_coefficient() * material.shear_modulus() * area_mm2(diameter_mm);
    let settle = (((a + c) / a).powi(2) + (c / a).powi(2)) / spring_n_per_mm;
    settle + c * c * (a + c) / (3.0 * ei) + (c + c * c / a) / shear
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mechanics::beam::{Beam, Spring};

    #[test]
    fn the_closed_form_is_the_beam() {
        let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9 };
        let springs = [Spring { at_mm: 5.0, n_per_mm: 25_000.0 }, Spring { at_mm: 35.0, n_per_mm: 25_000.0 }];
        let beam = Beam::new(&steel, &mut vec![0.0, 5.0, 35.0], |_| 20.0, &springs);
        let f = beam.factor().expect("held");
        let tip = beam.under_force(&f, 0, 1.0)[0][0];
        let closed = tip_mm_per_n(&steel, 20.0, 5.0, 30.0, 25_000.0);
        assert!((tip - closed).abs() < 1e-9 * closed, "{tip} {closed}");
    }
}
