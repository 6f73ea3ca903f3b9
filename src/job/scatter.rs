//! Inputs that are not known exactly: their spreads, and a job with other values of them.

use super::{Job, Tolerance};

/// How inputs scatter. A spread is a standard deviation as a share of the value. The values are log-normal, so that none becomes negative.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Scatter {
    /// Sampled parts.
    pub samples: usize,
    /// Seed of the samples.
    pub seed: u64,
    /// Spreads of all inputs, in the order of [`Uncertain::ALL`]. That of the bar's diameter is in mm.
    pub spreads: [f64; Uncertain::COUNT],
    /// Whether the bar's diameter is even over its tolerance, because no spread of it is given.
    pub bar_even: bool,
    /// Share of sampled parts that a plan must hold in, if the job asks for one.
    pub confidence: Option<f64>,
    /// Below this share of sampled parts a plan is at risk.
    pub confidence_warn: f64,
}

/// Spreads that a machine, a material or a kind of bar has of its own: (input, spread).
pub type Spreads = Vec<(Uncertain, f64)>;

/// An input that is not known exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Uncertain {
    /// Specific cutting force.
    Kc,
    /// Passive and feed force beside the main force.
    Passive,
    /// Young's modulus.
    E,
    /// Damping ratio of the bar's modes.
    Damping,
    /// Stiffness of the guide bush.
    Bush,
    /// Stiffness of the headstock.
    Headstock,
    /// Stiffness of the counter-spindle.
    CounterSpindle,
    /// Stiffness of its centre.
    Centre,
    /// Stiffness of the supports in its bore.
    Sleeve,
    /// Roughness as a multiple of the ideal one.
    Ra,
    /// Bow of the turned shaft.
    Straightness,
    /// Diameter of the bar.
    Bar,
    /// Run-out of the counter-spindle's collet.
    RunOut,
}

/// Whether an input is the same for all parts of a run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Varies {
    /// Unknown, but the same for all parts of a run: machine, material, edge.
    BetweenRuns,
    /// From part to part.
    BetweenParts,
}

impl Uncertain {
    /// Number of inputs.
    pub const COUNT: usize = 13;
    /// All of them. The number drawn for an input keeps its place when others are added at the end of its kind.
    pub const ALL: [Uncertain; Uncertain::COUNT] = [
        Uncertain::Kc,
        Uncertain::Passive,
        Uncertain::E,
        Uncertain::Damping,
        Uncertain::Bush,
        Uncertain::Headstock,
        Uncertain::CounterSpindle,
        Uncertain::Centre,
        Uncertain::Sleeve,
        Uncertain::Ra,
        Uncertain::Straightness,
        Uncertain::Bar,
        Uncertain::RunOut,
    ];

    /// Its key under `scatter`.
    pub fn key(self) -> &'static str {
        match self {
            Uncertain::Kc => "kc",
            Uncertain::Passive => "passive",
            Uncertain::E => "e",
            Uncertain::Damping => "damping",
            Uncertain::Bush => "bush",
            Uncertain::Headstock => "headstock",
            Uncertain::CounterSpindle => "counter_spindle",
            Uncertain::Centre => "centre",
            Uncertain::Sleeve => "sleeve",
            Uncertain::Ra => "ra",
            Uncertain::Straightness => "straightness",
            Uncertain::Bar => "bar",
            Uncertain::RunOut => "run_out",
        }
    }

    /// Unit of its value; empty for a factor.
    pub fn unit(self) -> &'static str {
        match self {
            Uncertain::Kc => "N/mm²",
            Uncertain::E => "GPa",
            Uncertain::Bush
            | Uncertain::Headstock
            | Uncertain::CounterSpindle
            | Uncertain::Centre
            | Uncertain::Sleeve => "N/µm",
            Uncertain::Straightness => "mm/m",
            Uncertain::Bar | Uncertain::RunOut => "mm",
            Uncertain::Passive | Uncertain::Damping | Uncertain::Ra => "",
        }
    }

    /// Whether it is the same for all parts of a run. A soft bush is soft for the whole run; the bow is another one in each part.
    pub fn varies(self) -> Varies {
        match self {
            Uncertain::Straightness | Uncertain::Bar => Varies::BetweenParts,
            _ => Varies::BetweenRuns,
        }
    }

    /// Whether a check of the plan depends on it. The roughness is no check: the first part shows it, and the feed is lowered.
    pub fn is_checked(self) -> bool {
        self != Uncertain::Ra
    }

    /// The spread that is left after it was measured with means of a shop. Common practice, no source.
    pub fn measured_spread(self) -> f64 {
        match self {
            // A weight and a dial tell it no better than the table does.
            Uncertain::E => 0.02,
            Uncertain::Bush | Uncertain::Headstock | Uncertain::CounterSpindle => 0.05,
            Uncertain::Centre | Uncertain::Sleeve => 0.1,
            Uncertain::Kc | Uncertain::Passive | Uncertain::RunOut => 0.1,
            Uncertain::Damping | Uncertain::Ra => 0.15,
            // Parts differ, so their mean is measured and some spread stays.
            Uncertain::Straightness => 0.2,
            // What a micrometer leaves, mm.
            Uncertain::Bar => 0.003,
        }
    }

    /// Its median, in its unit; that of a factor is 1. None: the job has no such thing.
    pub fn median(self, job: &Job) -> Option<f64> {
        let counter = job.machine.counter_spindle.as_ref();
        match self {
            Uncertain::Kc => Some(job.shaft.material.kc11_n_per_mm2),
            Uncertain::Passive => Some(1.0),
            Uncertain::E => Some(job.shaft.material.e_gpa),
            Uncertain::Damping => Some(job.limits.damping_ratio),
            Uncertain::Bush => {
                let bush = job.machine.bush.as_ref().filter(|_| job.holding == super::Holding::Bush);
                bush.map(|b| b.stiffness_n_per_um)
            }
            Uncertain::Headstock => Some(job.machine.headstock.stiffness_n_per_um),
            Uncertain::CounterSpindle => counter.map(|c| c.stiffness_n_per_um),
            Uncertain::Centre => {
                let centre = counter.and_then(|c| c.centre.as_ref()).filter(|_| job.hold == super::Hold::Centre);
                centre.map(|c| c.stiffness_n_per_um)
            }
            Uncertain::Sleeve => counter.and_then(|c| c.sleeve.as_ref()).map(|s| s.stiffness_n_per_um),
            Uncertain::Ra => job.shaft.sections.iter().any(|s| s.ra_um.is_some()).then_some(job.cutting.ra_factor),
            Uncertain::Straightness => Some(job.shaft.bow_mm_per_m),
            Uncertain::Bar => match (&job.stock.tolerance, job.scatter.bar_even) {
                (Some(t), true) => Some(job.stock.diameter_mm + t.lower_mm + 0.5 * t.width_mm()),
                _ => Some(job.stock.diameter_mm),
            },
            Uncertain::RunOut => {
                let limited = job.shaft.sections.iter().any(|s| s.run_out_mm.is_some());
                let known = counter?.collets.iter().filter_map(|c| c.run_out_mm);
                known.fold(None, |most, mm| Some(mm.max(most.unwrap_or(0.0)))).filter(|_| limited)
            }
        }
    }

    /// Its spread in a job; 0 if the job has no such thing.
    pub fn spread(self, job: &Job) -> f64 {
        match (self.median(job), self, &job.stock.tolerance) {
            (None, ..) => 0.0,
            (_, Uncertain::Bar, Some(t)) if job.scatter.bar_even => t.width_mm() / 12.0_f64.sqrt(),
            _ => job.scatter.spreads[self as usize],
        }
    }

    /// Its value `z` standard deviations above its median, in its unit. None: the job has no such thing.
    ///
    /// A factor with median 1 and a relative spread `s` is `exp(σ z)` with `σ² = ln(1 + s²)` (log-normal; any text on statistics, from
    /// memory).
    pub fn value(self, job: &Job, z: f64) -> Option<f64> {
        let median = self.median(job)?;
        Some(match (self, &job.stock.tolerance) {
            (Uncertain::Bar, Some(t)) if job.scatter.bar_even => even(&job.stock, t, z),
            // A bar cannot be thinner than half of its size.
            (Uncertain::Bar, _) => (median + self.spread(job) * z).max(0.5 * median),
            _ => median * factor(self.spread(job), z),
        })
    }

    /// Gives it in a job the value that is `z` standard deviations above its median in the `given` one.
    fn put(self, job: &mut Job, given: &Job, z: f64) {
        let Some(value) = self.value(given, z) else { return };
        let times = factor(self.spread(given), z);
        let counter = job.machine.counter_spindle.as_mut();
        match self {
            Uncertain::Kc => job.shaft.material.kc11_n_per_mm2 = value,
            Uncertain::Passive => {
                // The floor stands for what nobody has measured, so it scatters with the rest of the passive force.
                job.cutting.in_plane_share *= value;
                job.cutting.passive_floor *= value;
            }
            Uncertain::E => job.shaft.material.e_gpa = value,
            Uncertain::Damping => job.limits.damping_ratio = value,
            Uncertain::Bush => job.machine.bush.iter_mut().for_each(|b| b.stiffness_n_per_um = value),
            Uncertain::Headstock => job.machine.headstock.stiffness_n_per_um = value,
            Uncertain::CounterSpindle => counter.into_iter().for_each(|c| c.stiffness_n_per_um = value),
            Uncertain::Centre => {
                counter.and_then(|c| c.centre.as_mut()).into_iter().for_each(|c| c.stiffness_n_per_um = value);
            }
            Uncertain::Sleeve => {
                counter.and_then(|c| c.sleeve.as_mut()).into_iter().for_each(|s| s.stiffness_n_per_um = value);
            }
            Uncertain::Ra => job.cutting.ra_factor = value,
            Uncertain::Straightness => job.shaft.bow_mm_per_m = value,
            Uncertain::Bar => job.stock.diameter_mm = value,
            Uncertain::RunOut => {
                let collets = counter.into_iter().flat_map(|c| &mut c.collets);
                collets.filter_map(|c| c.run_out_mm.as_mut()).for_each(|mm| *mm *= times);
            }
        }
    }
}

/// Standard deviations by which each input is above its median, in the order of [`Uncertain::ALL`].
pub type Draw = [f64; Uncertain::COUNT];

impl Job {
    /// The job with other values of its uncertain inputs.
    pub fn drawn(&self, draw: &Draw) -> Job {
        let mut job = self.clone();
        for input in Uncertain::ALL {
            let z = draw[input as usize];
            // From the job as given, so that no value depends on another that was changed before.
            if z != 0.0 && input.spread(self) > 0.0 {
                input.put(&mut job, self, z);
            }
        }
        job
    }

    /// The factor on the radial forces of planned cuts in that job.
    pub fn force_drawn(&self, draw: &Draw) -> f64 {
        let times = |input: Uncertain| factor(input.spread(self), draw[input as usize]);
        times(Uncertain::Kc) * times(Uncertain::Passive)
    }
}

/// The log-normal factor with median 1 and a relative spread, `z` standard deviations of its logarithm above the median.
fn factor(spread: f64, z: f64) -> f64 {
    ((1.0 + spread * spread).ln().sqrt() * z).exp()
}

/// A diameter even over a tolerance: the one that as many are below as values below `z` in a normal distribution.
fn even(stock: &super::Stock, tolerance: &Tolerance, z: f64) -> f64 {
    stock.diameter_mm + tolerance.lower_mm + tolerance.width_mm() * normal_share(z)
}

/// Share of a normal distribution below `z` standard deviations: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.17
/// (from memory; error below 1e-7, tested against known values).
pub fn normal_share(z: f64) -> f64 {
    const B: [f64; 5] = [0.319_381_530, -0.356_563_782, 1.781_477_937, -1.821_255_978, 1.330_274_429];
    let t = 1.0 / (1.0 + 0.231_641_9 * z.abs());
    let tail = (-0.5 * z * z).exp() / (2.0 * std::f64::consts::PI).sqrt();
    let above = tail * B.iter().rev().fold(0.0, |sum, b| t * (b + sum));
    if z >= 0.0 { 1.0 - above } else { above }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shares_of_the_normal_distribution_are_those_of_the_tables() {
        for (z, share) in [(0.0, 0.5), (1.0, 0.841_344_7), (1.644_854, 0.95), (2.326_348, 0.99), (-1.0, 0.158_655_3)] {
            assert!((normal_share(z) - share).abs() < 2e-7, "{z}");
        }
    }

    #[test]
    fn a_factor_has_its_median_and_its_spread() {
        // Mean and variance of a log-normal quantity, summed over even shares of the normal distribution.
        let spread = 0.4;
        let (mut sum, mut squares, mut weight) = (0.0, 0.0, 0.0);
        for i in -6000..=6000 {
            let z = f64::from(i) / 1000.0;
            let w = (-0.5 * z * z).exp();
            let x = factor(spread, z);
            (sum, squares, weight) = (sum + w * x, squares + w * x * x, weight + w);
        }
        let (mean, square) = (sum / weight, squares / weight);
        assert!(((square - mean * mean).sqrt() / mean - spread).abs() < 1e-4);
        assert_eq!(factor(spread, 0.0), 1.0);
    }

    #[test]
    fn every_input_stands_at_its_place() {
        for (i, input) in Uncertain::ALL.into_iter().enumerate() {
            assert_eq!(input as usize, i, "{input:?}");
        }
    }
}
