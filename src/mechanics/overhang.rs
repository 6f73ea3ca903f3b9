//! Deflection of a round bar on two springs with an overhang, in closed form: the bar next to a guide bush.

use super::beam::Elastic;

/// A bar of one diameter on two equal springs, with an end that stands out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Overhang {
    /// Diameter, mm.
    pub diameter_mm: f64,
    /// Length that stands out in front of the first spring, mm.
    pub overhang_mm: f64,
    /// Distance of the springs, mm.
    pub span_mm: f64,
    /// Stiffness of each spring, N/mm.
    pub spring_n_per_mm: f64,
}

/// Bending stiffness `EI`, N mm², and shear stiffness `κGA`, N, of a diameter.
fn stiffness(material: &Elastic, diameter_mm: f64) -> [f64; 2] {
    let shear = material.shear_coefficient(diameter_mm) * material.shear_modulus() * material.area_mm2(diameter_mm);
    [material.e_n_per_mm2 * material.inertia_mm4(diameter_mm), shear]
}

impl Overhang {
    /// Deflection in mm at the end of the overhang `c` under 1 N there, with the springs at a distance `a`:
    /// `((a+c)/a)²/k + (c/a)²/k + c²(a+c)/(3EI) + (c + c²/a)/(κGA)`.
    ///
    /// Source: beam tables (simple beam with overhang, Roark). The shear terms and the spring terms (statics of a rigid body on two
    /// springs) are derived here.
    pub fn tip_mm_per_n(&self, material: &Elastic) -> f64 {
        let (a, c) = (self.span_mm, self.overhang_mm);
        let [ei, shear] = stiffness(material, self.diameter_mm);
        let settle = (((a + c) / a).powi(2) + (c / a).powi(2)) / self.spring_n_per_mm;
        settle + c * c * (a + c) / (3.0 * ei) + (c + c * c / a) / shear
    }

    /// Slope of the end under 1 N there, and so also the deflection of the end under 1 N mm (Maxwell):
    /// `(a+2c)/(a²k) + ac/(3EI) + c²/(2EI) + (c/a)/(κGA)`. Source as above.
    pub fn slope_per_n(&self, material: &Elastic) -> f64 {
        let (a, c) = (self.span_mm, self.overhang_mm);
        let [ei, shear] = stiffness(material, self.diameter_mm);
        (a + 2.0 * c) / (a * a * self.spring_n_per_mm) + c * (a / 3.0 + 0.5 * c) / ei + c / a / shear
    }

    /// Slope of the end under 1 N mm there: `2/(a²k) + a/(3EI) + c/(EI) + (1/a)/(κGA)`. Source as above.
    fn slope_per_nmm(&self, material: &Elastic) -> f64 {
        let (a, c) = (self.span_mm, self.overhang_mm);
        let [ei, shear] = stiffness(material, self.diameter_mm);
        2.0 / (a * a * self.spring_n_per_mm) + (a / 3.0 + c) / ei + 1.0 / a / shear
    }
}

/// Deflection in mm under 1 N at the end of a piece of the length `l` and another diameter, in front of the end of the overhang: the
/// deflection of that end with the lever `l`, and `l³/(3EI) + l/(κGA)` of the piece itself.
pub fn farther_mm_per_n(material: &Elastic, overhang: &Overhang, length_mm: f64, diameter_mm: f64) -> f64 {
    let l = length_mm;
    let [ei, shear] = stiffness(material, diameter_mm);
    let carried = l * (2.0 * overhang.slope_per_n(material) + l * overhang.slope_per_nmm(material));
    overhang.tip_mm_per_n(material) + carried + l * l * l / (3.0 * ei) + l / shear
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mechanics::beam::{Beam, Spring};

    #[test]
    fn the_closed_form_is_the_beam() {
        let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
        let springs = [Spring { at_mm: 5.0, n_per_mm: 25_000.0 }, Spring { at_mm: 35.0, n_per_mm: 25_000.0 }];
        let beam = Beam::new(&steel, &mut vec![0.0, 5.0, 35.0], |_| 20.0, &springs);
        let f = beam.factor().expect("held");
        let bent = beam.under_force(&f, 0, 1.0);
        let bar = Overhang { diameter_mm: 20.0, overhang_mm: 5.0, span_mm: 30.0, spring_n_per_mm: 25_000.0 };
        same(bent[0][0], bar.tip_mm_per_n(&steel));
        // In front of the force the bar is straight, so 3 mm farther it moves by its slope too.
        let springs = springs.map(|s| Spring { at_mm: s.at_mm + 3.0, ..s });
        let thinner = |x: f64| if x < 3.0 { 12.0 } else { 20.0 };
        let beam = Beam::new(&steel, &mut vec![0.0, 3.0, 8.0, 38.0], thinner, &springs);
        let f = beam.factor().expect("held");
        same(beam.under_force(&f, 1, 1.0)[0][0], bar.tip_mm_per_n(&steel) + 3.0 * bar.slope_per_n(&steel));
        same(beam.under_force(&f, 0, 1.0)[0][0], farther_mm_per_n(&steel, &bar, 3.0, 12.0));
    }

    #[track_caller]
    fn same(beam: f64, closed: f64) {
        assert!((beam - closed).abs() < 1e-9 * closed, "{beam} {closed}");
    }
}
