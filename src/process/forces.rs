//! Forces of one travel: one tool, an opposed pair whose radial forces balance except for a small rest, or a tandem.

use super::cutter::Cutter;
use super::rig::Rig;
use crate::job::{Side, Tools};
use crate::mechanics::cutting::{Cut, cut};

/// The cuts of one travel, the leading tool first.
#[derive(Debug, Clone, PartialEq)]
pub struct TravelForces {
    /// One cut, or two.
    pub cuts: Vec<Cut>,
    /// Net radial force on the bar, N.
    pub net_radial_n: f64,
    /// Sum of the main forces, N. It stands for the torque about the axis as a force at the surface.
    pub main_n: f64,
}

impl Rig<'_> {
    /// Forces of a travel with the given depths of cut (mm, leading tool first), their tools, and the feed (mm/rev).
    ///
    /// The net radial force of two tools on opposite sides is `|Fp lead - Fp trail|`, but at least the job's `unbalance` times the larger
    /// of both. On the same side it is the sum. With one tool it is the passive force of the tool. Derived here; that a pair never
    /// balances fully is common practice, no source.
    pub fn travel_forces(&self, depths_mm: &[f64], cutters: &[Cutter], feed_mm: f64) -> TravelForces {
        let tandem = self.job.cutting.tools == Tools::Tandem;
        let cuts = cutters.iter().zip(depths_mm).map(|(tool, ap)| cut(&self.resistance, &tool.edge, *ap, feed_mm));
        let cuts: Vec<Cut> = cuts.collect();
        let net_radial_n = match cuts.as_slice() {
            [lead, trail] if tandem && self.job.cutting.finisher.side == Side::Same => lead.passive_n + trail.passive_n,
            [lead, trail] => {
                let larger = lead.passive_n.max(trail.passive_n);
                (lead.passive_n - trail.passive_n).abs().max(self.job.cutting.unbalance * larger)
            }
            [only] => only.passive_n,
            _ => 0.0,
        };
        TravelForces { net_radial_n, main_n: cuts.iter().map(|c| c.main_n).sum(), cuts }
    }
}
