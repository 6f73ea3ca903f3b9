//! Shear: the coefficient of a solid and of a hollow circle, and what it adds to a short cantilever.
//!
//! Sources: Cowper, The shear coefficient in Timoshenko's beam theory, J. Appl. Mech. 33 (1966): title and purpose
//! verified, the formula from memory. Shares: arithmetic worked out for this project. Tolerance: printed digits.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use crate::shaft::{Hold, STEEL, Shaft};
use spanhold::mechanics::beam::Elastic;

fn coefficient() -> Vec<Row> {
    let mut t = Table::new("Cowper, J. Appl. Mech. 33 (1966)", Standing::Memory, Agreement::Printed);
    for (poisson, printed) in [(0.0, "0.8571"), (0.3, "0.88636"), (0.33, "0.88864"), (0.5, "0.9")] {
        let ours = Elastic { poisson, ..STEEL }.shear_coefficient(20.0);
        t.printed(format!("shear coefficient of a solid circle, ν {poisson}"), printed, ours);
    }
    // A bore of half the diameter, and a wall of nothing: 2(1+ν)/(4+3ν).
    for (share, printed) in [(0.5, "0.62023"), (0.999_999, "0.53061")] {
        let ours = Elastic { bore_mm: 20.0 * share, ..STEEL }.shear_coefficient(20.0);
        t.printed(format!("shear coefficient of a circle with a bore of {share} of it, ν 0.3"), printed, ours);
    }
    t.done()
}

fn share() -> Vec<Row> {
    let mut t = Table::new("worked out for this project, κ 0.88636, ν 0.3", Standing::Derived, Agreement::Printed);
    for (ratio, printed) in [(1.0, "55"), (2.0, "13.75"), (3.0, "6.11"), (4.0, "3.44"), (5.0, "2.2"), (10.0, "0.55")] {
        let l = 10.0 * ratio;
        let bar = Shaft::uniform(l, 10.0, &[Hold::ClampLeft]);
        let bending = bar.deflection(l, 1.0, l);
        let both = bar.of(STEEL).deflection(l, 1.0, l);
        t.printed(
            format!("round cantilever, L/d {ratio}, shear over bending at tip, %"),
            printed,
            100.0 * (both / bending - 1.0),
        );
    }
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [coefficient(), share()].concat()
}

#[test]
fn val_shear_coefficient() {
    assert_agree(&coefficient());
}

#[test]
fn val_shear_share_of_a_cantilever() {
    assert_agree(&share());
}
