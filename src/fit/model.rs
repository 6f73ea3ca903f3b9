//! What would be measured on the machine with given stiffnesses: deflections and the first frequency of a bar.

use crate::job::Machine;
use crate::job::readings::Residual;
use crate::job::readings::{Dial, Readings, SetUp, Support};
use crate::mechanics::beam::{Beam, Elastic};
use crate::mechanics::modes::lowest_mode;
use crate::process::supports::{self, springs};
use crate::process::{Counter, Guide};
use crate::say;
use crate::units::{hz, um};

/// Elements of the bar in front of the bush and behind it. They give the first frequency within 0.1 %.
const ELEMENTS: [usize; 2] = [40, 16];

/// Readings and their machine.
pub(super) struct Model<'a> {
    pub(super) readings: &'a Readings,
    elastic: Elastic,
}

/// The machine file's stiffness of a support, N/µm.
pub(super) fn stiffness(machine: &Machine, support: Support) -> f64 {
    match support {
        Support::Bush => machine.bush.as_ref().map_or(1.0, |b| b.stiffness_n_per_um),
        Support::Headstock => machine.headstock.stiffness_n_per_um,
        Support::CounterSpindle => machine.counter_spindle.as_ref().map_or(1.0, |c| c.stiffness_n_per_um),
    }
}

/// Whether the machine has a support.
pub(super) fn has(machine: &Machine, support: Support) -> bool {
    match support {
        Support::Bush => machine.bush.is_some(),
        Support::Headstock => true,
        Support::CounterSpindle => machine.counter_spindle.is_some(),
    }
}

impl<'a> Model<'a> {
    pub(super) fn new(readings: &'a Readings) -> Model<'a> {
        Model { readings, elastic: supports::elastic(&readings.material, 0.0) }
    }

    /// The machine with stiffnesses `exp(p)`, N/µm.
    fn machine(&self, p: &[f64]) -> Machine {
        let mut machine = self.readings.machine.clone();
        for (support, p) in self.readings.fit.iter().zip(p) {
            let k = p.exp();
            match support {
                Support::Bush => machine.bush.iter_mut().for_each(|b| b.stiffness_n_per_um = k),
                Support::Headstock => machine.headstock.stiffness_n_per_um = k,
                Support::CounterSpindle => machine.counter_spindle.iter_mut().for_each(|c| c.stiffness_n_per_um = k),
            }
        }
        machine
    }

    /// The deflections (µm) of dial readings and, if `tapped`, the first frequency (Hz). None: nothing holds the bar.
    pub(super) fn answers(
        &self,
        p: &[f64],
        set_up: &SetUp,
        dial: &[Dial],
        tapped: bool,
    ) -> Option<(Vec<f64>, Option<f64>)> {
        let machine = self.machine(p);
        // Places along the beam are measured from the front end of the bar towards its rear end.
        let s = |from_face_mm: f64| set_up.front_mm - from_face_mm;
        let face = s(0.0);
        let guide = match set_up.headstock_mm {
            Some(headstock_mm) => Guide::Bush { headstock_mm },
            None => Guide::Collet { stage_end_mm: face },
        };
        let counter = Counter::of(set_up.grip.map(|g| s(g.nose_mm)));
        let springs = springs(&machine, set_up.grip.map_or(0.0, |g| g.hold_mm), face, guide, counter);
        let rear = springs.iter().map(|spring| spring.at_mm).fold(face, f64::max);
        let mut points: Vec<f64> = springs.iter().map(|spring| spring.at_mm).collect();
        points.extend(dial.iter().flat_map(|d| [s(d.at_mm), s(d.read_at_mm)]));
        for (from, to, pieces) in [(0.0, face, ELEMENTS[0]), (face, rear, ELEMENTS[1])] {
            points.extend((0..=pieces).map(|i| from + (to - from) * i as f64 / pieces as f64));
        }
        let beam = Beam::new(&self.elastic, &mut points, |_| self.readings.diameter_mm, &springs);
        let factor = beam.factor().ok()?;
        #[expect(clippy::indexing_slicing, reason = "the beam tells a place's node among its own")]
        let deflections = dial.iter().map(|d| {
            let all = beam.under_force(&factor, beam.node(s(d.at_mm)), d.load_n);
            um(all[beam.node(s(d.read_at_mm))][0])
        });
        let deflections: Vec<f64> = deflections.collect();
        let frequency = tapped.then(|| hz(lowest_mode(&beam, &factor).omega));
        Some((deflections, frequency))
    }

    /// The error of a dial reading, µm: the root of the sum of two squared errors (common practice, no source).
    pub(super) fn dial_error_um(&self, deflection_um: f64) -> f64 {
        let errors = &self.readings.errors;
        errors.dial_um.hypot(errors.load_share * deflection_um)
    }

    /// Every reading compared with the machine with stiffnesses `exp(p)`.
    pub(super) fn readings(&self, p: &[f64]) -> Vec<Residual> {
        let mut rows = Vec::new();
        for set_up in &self.readings.set_ups {
            let Some((deflections, frequency)) = self.answers(p, set_up, &set_up.dial, set_up.frequency_hz.is_some())
            else {
                continue;
            };
            for (i, (d, fitted)) in set_up.dial.iter().zip(deflections).enumerate() {
                rows.push(Residual {
                    set_up: set_up.name.clone(),
                    reading: say!("fit-dial-reading", number = i + 1),
                    unit: "µm",
                    measured: d.deflection_um,
                    fitted,
                    off: (fitted - d.deflection_um) / self.dial_error_um(d.deflection_um),
                });
            }
            if let (Some(measured), Some(fitted)) = (set_up.frequency_hz, frequency) {
                let off = (fitted - measured) / (self.readings.errors.tap_share * measured);
                let (set_up, reading) = (set_up.name.clone(), say!("fit-tap"));
                rows.push(Residual { set_up, reading, unit: "Hz", measured, fitted, off });
            }
        }
        rows
    }

    /// The residuals alone. None: in some set-up nothing holds the bar.
    pub(super) fn residuals(&self, p: &[f64]) -> Option<Vec<f64>> {
        let wanted: usize =
            self.readings.set_ups.iter().map(|s| s.dial.len() + usize::from(s.frequency_hz.is_some())).sum();
        let off: Vec<f64> = self.readings(p).into_iter().map(|r| r.off).collect();
        (off.len() == wanted && off.iter().all(|o| o.is_finite())).then_some(off)
    }
}
