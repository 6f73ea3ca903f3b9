//! `chatter::least_real` against the whole receptance, worked out densely: all modes of the mesh, each with the same
//! damping ratio, scanned over frequency. The dense eigenvectors share the beam's matrices but no code of `modes`.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use nalgebra::{DMatrix, SymmetricEigen};
use spanhold::mechanics::banded::BlockTri;
use spanhold::mechanics::beam::{Beam, Elastic, Spring};
use spanhold::mechanics::{chatter, modes};

/// Golden-section search and modes left out against a scan with steps of 1e-4: largest share of difference.
const NEAR: f64 = 0.001;
/// Modes handed to `least_real`; those above enter by their static flexibility.
const MODES: usize = 12;
/// Modes with which none of weight is left out.
const MOST_MODES: usize = 60;
/// Steps of the scan are this share of the frequency. Re G has a width of ζ, so its least is hit within (1e-4/2ζ)²/2.
const STEP: f64 = 1e-4;

fn dense(m: &BlockTri) -> DMatrix<f64> {
    let n = m.len();
    let mut d = DMatrix::zeros(2 * n, 2 * n);
    for (i, s) in m.diag.iter().enumerate() {
        d[(2 * i, 2 * i)] = s.a;
        d[(2 * i, 2 * i + 1)] = s.b;
        d[(2 * i + 1, 2 * i)] = s.b;
        d[(2 * i + 1, 2 * i + 1)] = s.c;
    }
    for (i, e) in m.upper.iter().enumerate() {
        for (j, v) in e.iter().enumerate() {
            let (r, c) = (2 * i + j / 2, 2 * i + 2 + j % 2);
            d[(r, c)] = *v;
            d[(c, r)] = *v;
        }
    }
    d
}

/// `(ω², φ²)` of every mode at a node's deflection. With `K = L Lᵀ` the pencil `M x = (1/ω²) K x` becomes the symmetric
/// `L⁻¹ M L⁻ᵀ`; its largest eigenvalues are the lowest modes, so these come out most exactly.
fn all_modes(beam: &Beam, node: usize) -> Vec<(f64, f64)> {
    let l = dense(&beam.stiffness).cholesky().expect("held").l();
    let half = l.solve_lower_triangular(&dense(&beam.mass)).expect("regular");
    let symmetric = l.solve_lower_triangular(&half.transpose()).expect("regular");
    let eigen = SymmetricEigen::new(0.5 * (&symmetric + symmetric.transpose()));
    let shapes = l.transpose().solve_upper_triangular(&eigen.eigenvectors).expect("regular");
    // x = L⁻ᵀ y has xᵀKx = 1, so its modal mass is 1/ω² and the unit-mass amplitude is ω x.
    let one = |i: usize| {
        let squared = 1.0 / eigen.eigenvalues[i];
        (squared, squared * shapes[(2 * node, i)].powi(2))
    };
    (0..eigen.eigenvalues.len()).filter(|i| eigen.eigenvalues[*i] > 0.0).map(one).collect()
}

fn real(all: &[(f64, f64)], omega: f64, damping: f64) -> f64 {
    all.iter()
        .map(|(squared, phi)| {
            let (d, s) = (squared - omega * omega, 2.0 * damping * squared.sqrt() * omega);
            phi * d / (d * d + s * s)
        })
        .sum()
}

fn least_by_scan(all: &[(f64, f64)], damping: f64) -> f64 {
    let first = all.iter().map(|m| m.0).fold(f64::INFINITY, f64::min).sqrt();
    let mut omega = 0.5 * first;
    let mut least: f64 = 0.0;
    let last = all.iter().map(|m| m.0).fold(0.0, f64::max).sqrt();
    while omega < 1.2 * last {
        least = least.min(real(all, omega, damping));
        omega *= 1.0 + STEP;
    }
    -least
}

struct Setup {
    steps: &'static [(f64, f64)],
    springs: &'static [(f64, f64)],
    tool: f64,
    damping: f64,
}

const SETUPS: [Setup; 5] = [
    // A free front on bush and collet, the tool next to the bush and at the front.
    Setup {
        steps: &[(60.0, 12.0), (160.0, 20.0)],
        springs: &[(66.0, 2.5e4), (96.0, 2.5e4), (200.0, 5e4)],
        tool: 65.0,
        damping: 0.02,
    },
    Setup {
        steps: &[(60.0, 12.0), (160.0, 20.0)],
        springs: &[(66.0, 2.5e4), (96.0, 2.5e4), (200.0, 5e4)],
        tool: 0.0,
        damping: 0.02,
    },
    // A long span between counter-spindle and bush.
    Setup {
        steps: &[(250.0, 16.0), (250.0, 25.0)],
        springs: &[(0.0, 4e4), (25.0, 4e4), (405.0, 3e4), (440.0, 3e4)],
        tool: 250.0,
        damping: 0.01,
    },
    // Two like overhangs about a stiff middle: pairs of modes close together.
    Setup {
        steps: &[(150.0, 10.0), (60.0, 20.0), (151.0, 10.0)],
        springs: &[(155.0, 4e4), (205.0, 4e4)],
        tool: 0.0,
        damping: 0.02,
    },
    Setup {
        steps: &[(150.0, 10.0), (60.0, 20.0), (151.0, 10.0)],
        springs: &[(155.0, 4e4), (205.0, 4e4)],
        tool: 150.0,
        damping: 0.05,
    },
];

/// A thin front so long that its own modes come first, the tool next to the bush where they hardly move: free, and held
/// by a sleeve.
const LONG_FRONTS: [Setup; 2] = [
    Setup {
        steps: &[(500.0, 8.0), (120.0, 20.0)],
        springs: &[(505.0, 2.5e4), (535.0, 2.5e4), (610.0, 5e4)],
        tool: 500.0,
        damping: 0.03,
    },
    Setup {
        steps: &[(1000.0, 8.0), (120.0, 20.0)],
        springs: &[(500.0, 5e3), (750.0, 5e3), (1005.0, 2.5e4), (1035.0, 2.5e4), (1110.0, 5e4)],
        tool: 1000.0,
        damping: 0.02,
    },
];

fn beam_of(s: &Setup) -> Beam {
    let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
    let springs: Vec<Spring> =
        s.springs.iter().map(|(at_mm, n_per_mm)| Spring { at_mm: *at_mm, n_per_mm: *n_per_mm }).collect();
    let mut edges = vec![];
    let mut x = 0.0;
    for (l, d) in s.steps {
        x += l;
        edges.push((x, *d));
    }
    let mut points: Vec<f64> = (0..=40).map(|i| x * f64::from(i) / 40.0).collect();
    points.extend(edges.iter().map(|e| e.0));
    points.extend(springs.iter().map(|s| s.at_mm));
    points.push(s.tool);
    let diameter = |x: f64| edges.iter().find(|e| x < e.0).map_or(0.0, |e| e.1);
    Beam::new(&steel, &mut points, diameter, &springs)
}

/// Ours, and by the scan; and the scan is never above the bound from the static flexibility.
fn with_modes(s: &Setup, count: usize) -> chatter::LeastReal {
    let beam = beam_of(s);
    let node = beam.node(s.tool);
    let flexibility = beam.under_force(&beam.factor().expect("held"), node, 1.0)[node][0];
    let lowest = modes::lowest_modes(&beam, count).expect("held");
    chatter::least_real(&lowest, node, flexibility, s.damping)
}

fn both(s: &Setup) -> (chatter::LeastReal, f64) {
    let beam = beam_of(s);
    let node = beam.node(s.tool);
    let scanned = least_by_scan(&all_modes(&beam, node), s.damping);
    let flexibility = beam.under_force(&beam.factor().expect("held"), node, 1.0)[node][0];
    let bound = chatter::least_real_bound(flexibility, s.damping);
    assert!(scanned > 0.0 && scanned <= bound * (1.0 + 1e-9), "scan {scanned:e}, bound {bound:e} mm/N");
    (with_modes(s, MODES), scanned)
}

const SCAN: &str = "whole receptance of the same mesh";
const DENSE: Standing =
    Standing::Computed("dense eigenvalues of a general linear-algebra library and a scan over frequency");

/// With enough modes it is the value of the scan and little more than what the rest is given; with twelve it is at most
/// a tenth above, on the safe side.
fn least_real() -> Vec<Row> {
    let mut twelve = Table::new(SCAN, DENSE, Agreement::Share(0.1));
    let mut all = Vec::new();
    for (i, s) in SETUPS.iter().enumerate() {
        let (ours, scanned) = both(s);
        let printed = format!("{scanned:e}");
        let name =
            |count: usize| format!("bar on springs {}, tool at {} mm, {count} modes: -min Re G, mm/N", i + 1, s.tool);
        twelve.printed(name(MODES), &printed, ours.mm_per_n);
        let most = with_modes(s, MOST_MODES);
        let mut sixty = Table::new(SCAN, DENSE, Agreement::Share(NEAR + 1.2 * most.left_out));
        sixty.printed(name(MOST_MODES), &printed, most.mm_per_n);
        // Never too small beyond the scan's own step.
        for value in [ours, most] {
            assert!(value.mm_per_n >= (1.0 - NEAR) * scanned, "setup {i}: {value:?}, scan {scanned:e} mm/N");
        }
        all.extend(sixty.done());
    }
    [twelve.done(), all].concat()
}

fn frequencies() -> Vec<Row> {
    let mut t = Table::new("dense matrices of the same mesh", DENSE, Agreement::Share(1e-6));
    let mut entries = Vec::new();
    for (i, s) in SETUPS.iter().enumerate() {
        let beam = beam_of(s);
        let mut all: Vec<f64> = all_modes(&beam, 0).iter().map(|m| m.0.sqrt()).collect();
        all.sort_by(f64::total_cmp);
        for (n, (mode, omega)) in modes::lowest_modes(&beam, MODES).expect("held").iter().zip(all).enumerate() {
            entries.push((format!("bar {}, mode {}", i + 1, n + 1), format!("{omega:e}"), mode.omega));
        }
    }
    t.worst_of("frequencies of five bars on springs, rad/s", entries);
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [least_real(), frequencies()].concat()
}

#[test]
fn val_least_real_part_is_that_of_the_whole_receptance() {
    assert_agree(&least_real());
}

/// A long thin front has many low modes that hardly move a tool next to the bush. Counting the modes left out as stiff
/// once gave a limit four times too high here, or none at all.
#[test]
fn regress_modes_left_out_never_make_the_cut_look_safer() {
    for (i, s) in LONG_FRONTS.iter().enumerate() {
        let (ours, scanned) = both(s);
        assert!(ours.mm_per_n >= (1.0 - NEAR) * scanned, "long front {i}: {ours:?}, scan {scanned:e} mm/N");
    }
}

#[test]
fn val_frequencies_are_those_of_the_dense_matrices() {
    assert_agree(&frequencies());
}
