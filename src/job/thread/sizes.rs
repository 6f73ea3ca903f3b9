//! Sizes of the standards. Written from memory of the standards, not re-read; compared with reproductions of their tables
//! (see the ledger).

use super::Series;

/// Major diameter and coarse pitch, mm: ISO 261.
pub(super) const COARSE_MM: [(f64, f64); 40] = [
    (1.0, 0.25),
    (1.1, 0.25),
    (1.2, 0.25),
    (1.4, 0.3),
    (1.6, 0.35),
    (1.8, 0.35),
    (2.0, 0.4),
    (2.2, 0.45),
    (2.5, 0.45),
    (3.0, 0.5),
    (3.5, 0.6),
    (4.0, 0.7),
    (4.5, 0.75),
    (5.0, 0.8),
    (6.0, 1.0),
    (7.0, 1.0),
    (8.0, 1.25),
    (9.0, 1.25),
    (10.0, 1.5),
    (11.0, 1.5),
    (12.0, 1.75),
    (14.0, 2.0),
    (16.0, 2.0),
    (18.0, 2.5),
    (20.0, 2.5),
    (22.0, 2.5),
    (24.0, 3.0),
    (27.0, 3.0),
    (30.0, 3.5),
    (33.0, 3.5),
    (36.0, 4.0),
    (39.0, 4.0),
    (42.0, 4.5),
    (45.0, 4.5),
    (48.0, 5.0),
    (52.0, 5.0),
    (56.0, 5.5),
    (60.0, 5.5),
    (64.0, 6.0),
    (68.0, 6.0),
];

/// Fine pitches and the major diameters that have them, mm: ISO 261, up to 64 mm.
pub(super) const FINE_MM: [(f64, &[f64]); 11] = [
    (0.2, &[1.0, 1.1, 1.2, 1.4, 1.6, 1.8]),
    (0.25, &[2.0, 2.2]),
    (0.35, &[2.5, 3.0, 3.5]),
    (0.5, &[4.0, 4.5, 5.0, 5.5]),
    (0.75, &[6.0, 7.0, 8.0, 9.0, 10.0, 11.0]),
    (1.0, &[8.0, 9.0, 10.0, 11.0, 12.0, 14.0, 15.0, 16.0, 17.0, 18.0, 20.0, 22.0, 24.0, 25.0, 27.0, 28.0, 30.0]),
    (1.25, &[10.0, 12.0, 14.0]),
    (
        1.5,
        &[
            12.0, 14.0, 15.0, 16.0, 17.0, 18.0, 20.0, 22.0, 24.0, 25.0, 26.0, 27.0, 28.0, 30.0, 32.0, 33.0, 35.0, 36.0,
            38.0, 39.0, 40.0, 42.0, 45.0, 48.0, 50.0, 52.0, 55.0, 56.0, 58.0, 60.0, 62.0, 64.0,
        ],
    ),
    (
        2.0,
        &[
            18.0, 20.0, 22.0, 24.0, 25.0, 27.0, 28.0, 30.0, 32.0, 33.0, 36.0, 39.0, 40.0, 42.0, 45.0, 48.0, 50.0, 52.0,
            55.0, 56.0, 58.0, 60.0, 62.0, 64.0,
        ],
    ),
    (3.0, &[30.0, 33.0, 36.0, 39.0, 40.0, 42.0, 45.0, 48.0, 50.0, 52.0, 55.0, 56.0, 58.0, 60.0, 62.0, 64.0]),
    (4.0, &[42.0, 45.0, 48.0, 52.0, 55.0, 56.0, 58.0, 60.0, 62.0, 64.0]),
];

/// The table of metric pitches is complete up to this diameter, mm.
const METRIC_TO_MM: f64 = 64.0;

/// Coarse pitch of a metric major diameter in mm, if ISO 261 has one.
pub fn coarse_pitch_mm(major_mm: f64) -> Option<f64> {
    COARSE_MM.iter().find(|(major, _)| *major == major_mm).map(|(_, pitch)| *pitch)
}

/// All pitches that ISO 261 has for a metric diameter, mm.
pub(super) fn metric_pitches_mm(major_mm: f64) -> Vec<f64> {
    let fine = FINE_MM.iter().filter(|(_, majors)| majors.contains(&major_mm)).map(|(pitch, _)| *pitch);
    fine.chain(coarse_pitch_mm(major_mm)).collect()
}

pub(super) fn metric_has(major_mm: f64, pitch_mm: f64) -> bool {
    major_mm > METRIC_TO_MM || metric_pitches_mm(major_mm).contains(&pitch_mm)
}

/// Largest number that is a size of a unified thread.
pub(super) const NUMBER_MAX: u32 = 12;

/// Size of a unified thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Size {
    /// A number: the diameter is `0.060 + 0.013 n` inches.
    Number(u32),
    /// Sixty-fourths of an inch.
    Inch(u32),
}

impl Size {
    pub(super) fn inches(self) -> f64 {
        match self {
            Size::Number(n) => (60.0 + 13.0 * f64::from(n)) / 1000.0,
            Size::Inch(n) => f64::from(n) / 64.0,
        }
    }

    /// As in a designation: `10`, `1 1/8`.
    pub(super) fn label(self) -> String {
        match self {
            Size::Number(n) => n.to_string(),
            Size::Inch(n) => fraction(n),
        }
    }
}

/// Sixty-fourths as a mixed number.
pub(super) fn fraction(sixty_fourths: u32) -> String {
    let (whole, mut over, mut under) = (sixty_fourths / 64, sixty_fourths % 64, 64);
    while over > 0 && over % 2 == 0 {
        (over, under) = (over / 2, under / 2);
    }
    match (whole, over) {
        (_, 0) => whole.to_string(),
        (0, _) => format!("{over}/{under}"),
        _ => format!("{whole} {over}/{under}"),
    }
}

/// Sizes with their threads per inch as UNC, UNF and UNEF (0: the series has no such size): ASME B1.1.
pub(super) const UNIFIED: [(Size, [u32; 3]); 32] = [
    (Size::Number(0), [0, 80, 0]),
    (Size::Number(1), [64, 72, 0]),
    (Size::Number(2), [56, 64, 0]),
    (Size::Number(3), [48, 56, 0]),
    (Size::Number(4), [40, 48, 0]),
    (Size::Number(5), [40, 44, 0]),
    (Size::Number(6), [32, 40, 0]),
    (Size::Number(8), [32, 36, 0]),
    (Size::Number(10), [24, 32, 0]),
    (Size::Number(12), [24, 28, 32]),
    (Size::Inch(16), [20, 28, 32]),
    (Size::Inch(20), [18, 24, 32]),
    (Size::Inch(24), [16, 24, 32]),
    (Size::Inch(28), [14, 20, 28]),
    (Size::Inch(32), [13, 20, 28]),
    (Size::Inch(36), [12, 18, 24]),
    (Size::Inch(40), [11, 18, 24]),
    (Size::Inch(44), [0, 0, 24]),
    (Size::Inch(48), [10, 16, 20]),
    (Size::Inch(52), [0, 0, 20]),
    (Size::Inch(56), [9, 14, 20]),
    (Size::Inch(60), [0, 0, 20]),
    (Size::Inch(64), [8, 12, 20]),
    (Size::Inch(68), [0, 0, 18]),
    (Size::Inch(72), [7, 12, 18]),
    (Size::Inch(76), [0, 0, 18]),
    (Size::Inch(80), [7, 12, 18]),
    (Size::Inch(84), [0, 0, 18]),
    (Size::Inch(88), [6, 12, 18]),
    (Size::Inch(92), [0, 0, 18]),
    (Size::Inch(96), [6, 12, 18]),
    (Size::Inch(100), [0, 0, 18]),
];

/// The series of [`UNIFIED`], in order.
pub(super) const SERIES: [Series; 3] = [Series::Unc, Series::Unf, Series::Unef];

/// The series of a size with their threads per inch.
pub(super) fn series_of(size: Size) -> impl Iterator<Item = (Series, u32)> {
    let row = UNIFIED.iter().find(|(s, _)| *s == size).map_or([0; 3], |(_, tpi)| *tpi);
    SERIES.into_iter().zip(row).filter(|(_, tpi)| *tpi > 0)
}

/// Pipe threads: size in sixty-fourths of an inch, threads per inch, major diameter in mm: ISO 228-1.
pub(super) const PIPE: [(u32, u32, f64); 14] = [
    (4, 28, 7.723),
    (8, 28, 9.728),
    (16, 19, 13.157),
    (24, 19, 16.662),
    (32, 14, 20.955),
    (40, 14, 22.911),
    (48, 14, 26.441),
    (56, 14, 30.201),
    (64, 11, 33.249),
    (72, 11, 37.897),
    (80, 11, 41.910),
    (96, 11, 47.803),
    (112, 11, 53.746),
    (128, 11, 59.614),
];

/// Trapezoidal threads: diameter and its pitches, the preferred one first, mm: ISO 2902, from 8 to 60 mm.
pub(super) const TRAPEZOIDAL: [(f64, &[f64]); 27] = [
    (8.0, &[1.5]),
    (9.0, &[2.0, 1.5]),
    (10.0, &[2.0, 1.5]),
    (11.0, &[2.0, 3.0]),
    (12.0, &[3.0, 2.0]),
    (14.0, &[3.0, 2.0]),
    (16.0, &[4.0, 2.0]),
    (18.0, &[4.0, 2.0]),
    (20.0, &[4.0, 2.0]),
    (22.0, &[5.0, 3.0, 8.0]),
    (24.0, &[5.0, 3.0, 8.0]),
    (26.0, &[5.0, 3.0, 8.0]),
    (28.0, &[5.0, 3.0, 8.0]),
    (30.0, &[6.0, 3.0, 10.0]),
    (32.0, &[6.0, 3.0, 10.0]),
    (34.0, &[6.0, 3.0, 10.0]),
    (36.0, &[6.0, 3.0, 10.0]),
    (38.0, &[7.0, 3.0, 10.0]),
    (40.0, &[7.0, 3.0, 10.0]),
    (42.0, &[7.0, 3.0, 10.0]),
    (44.0, &[7.0, 3.0, 12.0]),
    (46.0, &[8.0, 3.0, 12.0]),
    (48.0, &[8.0, 3.0, 12.0]),
    (50.0, &[8.0, 3.0, 12.0]),
    (52.0, &[8.0, 3.0, 12.0]),
    (55.0, &[9.0, 3.0, 14.0]),
    (60.0, &[9.0, 3.0, 14.0]),
];

pub(super) fn trapezoidal_has(major_mm: f64, pitch_mm: f64) -> bool {
    let [.., (last_mm, _)] = TRAPEZOIDAL;
    let row = TRAPEZOIDAL.iter().find(|(d, _)| *d == major_mm);
    major_mm > last_mm || row.is_some_and(|(_, pitches)| pitches.contains(&pitch_mm))
}

/// Crest clearance `ac` of a trapezoidal thread, mm: ISO 2904.
pub(super) fn crest_clearance_mm(pitch_mm: f64) -> f64 {
    match pitch_mm {
        p if p < 2.0 => 0.15,
        p if p < 6.0 => 0.25,
        p if p < 14.0 => 0.5,
        _ => 1.0,
    }
}

/// The item whose value is nearest.
pub(super) fn nearest<T: Copy>(items: impl Iterator<Item = T>, value: f64, of: impl Fn(T) -> f64) -> Option<T> {
    items.min_by(|a, b| (of(*a) - value).abs().total_cmp(&(of(*b) - value).abs()))
}
