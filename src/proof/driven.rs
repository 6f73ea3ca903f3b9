//! Proves from the depths, feeds and speeds that a plan prints that the headstock can drive and feed them, and what the plan tells of it.

use super::{Case, mm};
use crate::job::plan::Segment;
use crate::lang::{self, Measure};
use crate::mechanics::cutting::{Edge, cut};
use crate::process::cutter::DEFAULT_FEED_MM;
use crate::process::drive::{FEED_FORCE, POWER, TORQUE, power_kw};
use crate::process::segments::PLUNGE_WIDTH_MM;
use crate::say;
use crate::units::spindle_rpm;

/// Slack for rounding, as a share.
const SLACK: f64 = 1.0 + 1e-6;

/// What one travel needs: torque in N·m, feed force in N, and its speed in rev/min.
struct Needs {
    torque_nm: f64,
    feed_n: f64,
    rpm: f64,
}

impl Case<'_> {
    pub(super) fn driven(&mut self) {
        let machine = &self.rig.job.machine;
        let head = &machine.headstock;
        let mut most = [0.0f64; 3];
        let mut found: Vec<(String, String, Vec<Needs>)> = Vec::new();
        for s in &self.plan.segments {
            found.push((mm(s.from_mm), mm(s.to_mm), self.needs(s)));
        }
        if let (Some(rpm), Some(feed_mm)) = (self.plan.part_off_rpm, self.segments.last().and_then(|s| s.finishing())) {
            let needs = self.plunge(feed_mm.feed_mm, machine.part_off.width_mm, rpm);
            found.push((mm(self.plan.length_mm), mm(self.rig.job.parted_at_mm()), vec![needs]));
        }
        for (from, to, needs) in found {
            for Needs { torque_nm, feed_n, rpm } in needs {
                let each = [power_kw(torque_nm, rpm) / head.efficiency, torque_nm, feed_n];
                let has = [
                    (POWER, head.power_kw, "kW"),
                    (TORQUE, head.torque_nm, "N·m"),
                    (FEED_FORCE, head.feed_force_n, "N"),
                ];
                for (needed, (rule, limit, unit)) in each.into_iter().zip(has) {
                    if let Some(limit) = limit.filter(|limit| needed > limit * SLACK) {
                        let told = lang::unit_told(unit);
                        let (needed, limit) = (
                            format!("{} {told}", lang::fixed(lang::told(needed, unit), 2)),
                            format!("{} {told}", lang::number(lang::told(limit, unit))),
                        );
                        let (from, to) = (from.clone(), to.clone());
                        self.breach(
                            None,
                            rule,
                            say!("proof-driven", from = from, to = to, needed = needed, limit = limit),
                        );
                    }
                }
                most.iter_mut().zip(each).for_each(|(most, needed)| *most = most.max(needed));
            }
        }
        for refused in [self.rig.front_work_not_driven(), self.rig.rear_work_not_driven()].into_iter().flatten() {
            self.breach(None, refused.rule, refused.text);
        }
        let told = self.plan.drive.map(|d| [d.power_kw, d.torque_nm, d.feed_force_n]);
        let same = |told: [f64; 3]| told.iter().zip(most).all(|(told, is)| (told - is).abs() <= (SLACK - 1.0) * is);
        if !told.is_some_and(same) {
            let [power, torque, force] = most;
            let (power, torque) = (lang::fixed(power, 2), lang::fixed(torque, 2));
            let force = Measure::Force.fixed(force, 2);
            self.breach(None, "drive", say!("proof-drive", power = power, torque = torque, force = force));
        }
    }

    /// The edge of a tool that a plan names; `second`: it is the finishing tool of a tandem, if the list does not have it.
    fn edge(&self, name: &str, second: bool) -> Edge {
        let usual = if second { self.rig.finishing_edge() } else { self.rig.edge };
        let listed = self.rig.job.tool_list.iter().find(|tool| tool.name == name);
        listed.map_or(usual, |tool| Edge {
            nose_radius_mm: tool.nose_radius_mm.unwrap_or(self.rig.edge.nose_radius_mm),
            approach_rad: tool.approach_deg.map_or(self.rig.edge.approach_rad, f64::to_radians),
        })
    }

    /// The travels of a segment as the plan prints them: depths, feeds, speeds and tools. A plan of an older version has the feed of the
    /// last travel only.
    fn needs(&self, s: &Segment) -> Vec<Needs> {
        let (rig, job) = (self.rig, self.rig.job);
        if s.work == "plunge" {
            return vec![self.plunge(s.feed_mm, (s.to_mm - s.from_mm).min(PLUNGE_WIDTH_MM), s.rpm)];
        }
        if !["turn", "thread"].contains(&s.work.as_str()) {
            return Vec::new();
        }
        let mut before_mm = job.stock.diameter_mm;
        let mut all = Vec::new();
        for cut_told in &s.cuts {
            let tools = cut_told.tools.iter().zip(&cut_told.depths_mm).enumerate();
            let cuts: Vec<_> = tools
                .map(|(i, (name, ap))| cut(&rig.resistance, &self.edge(name, i > 0), *ap, cut_told.feed_mm))
                .collect();
            all.push(Needs {
                torque_nm: cuts.iter().map(|c| c.main_n).sum::<f64>() * before_mm / 2000.0,
                feed_n: cuts.iter().map(|c| c.feed_n).sum(),
                rpm: cut_told.rpm,
            });
            before_mm -= 2.0 * cut_told.depths_mm.iter().sum::<f64>();
        }
        if !s.cuts.is_empty() {
            return all;
        }
        for i in 0..s.travels {
            let last = i + 1 == s.travels;
            let depths = s.depths_mm.get(i..if last { s.depths_mm.len() } else { i + 1 }).unwrap_or_default();
            let feed_mm = if last { s.feed_mm } else { job.cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM) };
            let cuts: Vec<_> = depths.iter().map(|ap| cut(&rig.resistance, &rig.edge, *ap, feed_mm)).collect();
            let asked = spindle_rpm(job.cutting.vc_m_per_min, before_mm).min(s.rpm);
            all.push(Needs {
                torque_nm: cuts.iter().map(|c| c.main_n).sum::<f64>() * before_mm / 2000.0,
                feed_n: cuts.iter().map(|c| c.feed_n).sum(),
                rpm: asked,
            });
            before_mm -= 2.0 * depths.iter().sum::<f64>();
        }
        all
    }

    /// A plunge of a width at the surface of the bar.
    fn plunge(&self, feed_mm: f64, width_mm: f64, rpm: f64) -> Needs {
        let force_n = self.rig.resistance.specific_n_per_mm2(feed_mm) * feed_mm * width_mm;
        Needs { torque_nm: force_n * self.rig.job.stock.diameter_mm / 2000.0, feed_n: 0.0, rpm }
    }
}
