//! The finished profile as a row of cylinders, and the largest diameter in front of a place, which a collet must let pass.

use crate::job::{SectionKind, Shaft};

/// A taper is divided into slices; over each slice the diameter changes by at most this share.
const TAPER_STEP: f64 = 0.05;

/// One cylinder of the profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slice {
    /// Front end, mm.
    pub from_mm: f64,
    /// Rear end, mm.
    pub to_mm: f64,
    /// Diameter that carries bending, mm.
    pub diameter_mm: f64,
}

/// The finished profile.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Cylinders from the front face to the part-off face.
    pub slices: Vec<Slice>,
    /// Rear end of each section, and the largest diameter from the front face to this end, mm.
    largest: Vec<(f64, f64)>,
}

impl Profile {
    /// The profile of a shaft. A taper becomes cylinders with the diameter at their middle; over each the taper changes by at most 5 %.
    pub fn new(shaft: &Shaft) -> Profile {
        let mut slices = Vec::with_capacity(shaft.sections.len());
        let mut largest = Vec::with_capacity(shaft.sections.len());
        let mut so_far: f64 = 0.0;
        for section in &shaft.sections {
            let pieces = match section.kind {
                SectionKind::Taper { front_mm, rear_mm } => {
                    ((rear_mm / front_mm).ln().abs() / (1.0 + TAPER_STEP).ln()).ceil().max(1.0) as usize
                }
                _ => 1,
            };
            let step = section.length_mm() / pieces as f64;
            for i in 0..pieces {
                let from_mm = section.from_mm + step * i as f64;
                let to_mm = if i + 1 == pieces { section.to_mm } else { from_mm + step };
                slices.push(Slice { from_mm, to_mm, diameter_mm: section.bending_mm(0.5 * (from_mm + to_mm)) });
            }
            so_far = so_far.max(section.largest_mm());
            largest.push((section.to_mm, so_far));
        }
        Profile { slices, largest }
    }

    /// Mean diameter between two places, weighted by length, mm; none if there is no length between them.
    pub fn mean_mm(&self, from_mm: f64, to_mm: f64) -> Option<f64> {
        let (mut length_mm, mut sum) = (0.0, 0.0);
        let first = self.slices.partition_point(|s| s.to_mm <= from_mm);
        for slice in self.slices.iter().skip(first).take_while(|s| s.from_mm < to_mm) {
            let part_mm = slice.to_mm.min(to_mm) - slice.from_mm.max(from_mm);
            length_mm += part_mm;
            sum += part_mm * slice.diameter_mm;
        }
        (length_mm > 0.0).then(|| sum / length_mm)
    }

    /// Largest finished diameter in front of `s`, including the section at `s`, mm. An open collet with its nose there must let it pass.
    pub fn largest_in_front_mm(&self, s_mm: f64) -> f64 {
        let i = self.largest.partition_point(|(to, _)| *to < s_mm);
        self.largest.get(i).or(self.largest.last()).map_or(0.0, |(_, d)| *d)
    }
}
