//! Whether the part may be cut off with its front free, so that it falls into the tray.

use super::rig::Rig;
use crate::job::Tray;
use crate::lang::Measure;
use crate::say;

/// What keeps a part from falling: it needs a grip at part-off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoFall {
    /// Its rear end is worked on after part-off, and only a grip can hold it there.
    RearWork,
    /// It is too large for the tray.
    TooLarge(Tray),
}

impl Rig<'_> {
    /// What keeps the part of this job from falling, whatever collet there is. None: it may fall. On a machine without a
    /// counter-spindle whose file does not give a tray, any part falls.
    pub fn no_fall(&self) -> Option<NoFall> {
        let tray = self.job.machine.tray()?;
        if !self.back.is_empty() {
            return Some(NoFall::RearWork);
        }
        (!self.job.small_enough_to_fall()).then_some(NoFall::TooLarge(tray))
    }

    /// Whether the part falls at part-off: no collet is used, and nothing keeps it from falling.
    pub fn falls(&self) -> bool {
        self.collet.is_none() && self.no_fall().is_none()
    }

    /// Why nothing takes the part at part-off, in words.
    pub fn not_held(&self) -> String {
        match (self.no_fall(), self.collet) {
            (None, _) | (Some(NoFall::RearWork), Some(_)) => say!("part-off-not-held"),
            (Some(NoFall::RearWork), None) => say!("part-off-rear-work"),
            (Some(NoFall::TooLarge(tray)), _) => self.too_large(tray),
        }
    }

    fn too_large(&self, tray: Tray) -> String {
        let shaft = &self.job.shaft;
        let (length, diameter) = (Measure::Place.number(shaft.length_mm()), Measure::Size.number(shaft.largest_mm()));
        let (most_length, most_diameter) =
            (Measure::Place.number(tray.max_length_mm), Measure::Size.number(tray.max_diameter_mm));
        if self.job.machine.part_off.tray.is_some() {
            say!(
                "part-off-too-large",
                length = length,
                diameter = diameter,
                most_length = most_length,
                most_diameter = most_diameter
            )
        } else {
            say!(
                "part-off-too-large-default",
                length = length,
                diameter = diameter,
                most_length = most_length,
                most_diameter = most_diameter
            )
        }
    }
}
