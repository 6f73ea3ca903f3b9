//! Proves the wishes of the job: hand-overs that must be made, stretches never to grip, the largest number of hand-overs.

use super::{Case, SAME_MM};
use crate::lang::Measure;
use crate::say;

impl Case<'_> {
    pub(super) fn wishes(&mut self) {
        let (plan, wishes) = (self.plan, &self.rig.job.wishes);
        let handed = plan.stages.iter().skip(1);
        for wish in &wishes.hand_overs {
            let stage = handed.clone().find(|s| (s.from_mm - wish.at_mm).abs() <= SAME_MM);
            let nose = stage.and_then(|s| s.grip.as_ref()).map(|g| g.nose_mm);
            let kept = match (nose, wish.nose_mm) {
                (Some(nose), Some(wished)) => (nose - wished).abs() <= SAME_MM,
                (nose, _) => nose.is_some(),
            };
            if !kept {
                self.breach(stage.map(|s| s.number), "wish", say!("proof-wish", wish = wish.told()));
            }
        }
        for (stage, grip) in plan.stages.iter().filter_map(|s| s.grip.as_ref().map(|g| (s, g))) {
            let hold_mm = self.rig.collet.map_or(0.0, |c| c.hold_mm);
            let (from, to) = (grip.nose_mm - hold_mm, grip.nose_mm);
            for never in wishes.never_grip.iter().filter(|n| n.from_mm < to - SAME_MM && n.to_mm > from + SAME_MM) {
                let (from, to) = (Measure::Place.number(from), Measure::Place.number(to));
                let text = say!("proof-wish-grip", from = from, to = to, name = never.name);
                self.breach(Some(stage.number), "wish", text);
            }
        }
        let made = handed.count();
        if let Some(most) = wishes.at_most_hand_overs.filter(|most| made > *most) {
            self.breach(None, "wish", say!("proof-wish-hand-overs", number = made, most = most));
        }
    }
}
