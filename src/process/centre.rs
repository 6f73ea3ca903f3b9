//! A centre in the counter-spindle that supports the front face while the whole part is turned.
//!
//! The front end is faced and its centre hole drilled first. Then the centre comes in and presses with a constant force, follows the bar
//! as it is fed, and leaves when the shaft is turned: pressing on, it would close the slot of the part-off on the blade. So the part-off
//! is done with the front free, and the part falls. Common practice, no source.
//!
//! The centre is one radial spring at the front face. It holds no slope and carries no torque.

use super::rig::Rig;
use super::state::Counter;
use super::stops::SAME_MM;
use crate::job::{Centre, Hold};

impl Rig<'_> {
    /// The centre, if the job holds the front with it.
    pub fn centre(&self) -> Option<&Centre> {
        if self.job.hold != Hold::Centre {
            return None;
        }
        self.job.machine.counter_spindle.as_ref()?.centre.as_ref()
    }

    /// What holds the front at a turned length (mm) in a stage with a grip at `nose_mm`, or without a grip.
    pub fn counter(&self, nose_mm: Option<f64>, turned_mm: f64) -> Counter {
        match nose_mm {
            Some(nose_mm) => Counter::Holds { nose_mm },
            None if self.centre().is_some() && turned_mm <= self.job.shaft.length_mm() + SAME_MM => Counter::Centre,
            None => Counter::Away,
        }
    }

    /// Turned length up to which the travel of the counter-spindle carries the centre, mm; infinite without a centre. If the file does
    /// not give how far the centre stands out, its tip counts as at the nose.
    pub fn centre_to_mm(&self) -> f64 {
        match (self.centre(), &self.job.machine.counter_spindle) {
            (Some(centre), Some(spindle)) => spindle.farthest_mm - self.gap_mm() - centre.stands_out_mm.unwrap_or(0.0),
            _ => f64::INFINITY,
        }
    }

    /// Time in which the centre comes and leaves, s: that of one hand-over, as long as nothing else is known. 0 without a centre.
    pub fn centre_s(&self) -> f64 {
        self.centre().map_or(0.0, |_| self.job.machine.hand_over_s())
    }
}
