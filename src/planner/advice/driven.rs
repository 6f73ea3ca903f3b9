//! Single changes for what the spindle cannot drive or the headstock cannot feed: less in one cut, or a stronger machine.

use crate::job::{ChangeKind, Job};
use crate::lang::{self, Measure};
use crate::planner::advice::candidate::{Candidate, Role, number};
use crate::process::Rig;
use crate::process::cutter::DEFAULT_FEED_MM;
use crate::process::drive::{COUNTER_TORQUE, FEED_FORCE, POWER, TORQUE};
use crate::say;

/// The smallest depth and feed that are worth trying, mm and mm/rev.
const LEAST_DEPTH_MM: f64 = 0.2;
const LEAST_FEED_MM: f64 = 0.02;
/// A stronger machine is tried up to this many times its value.
const STRONGER_TIMES: f64 = 10.0;

/// Names of the changes that may lift a rule of the drive; none for any other rule.
pub fn lifted_by(rule: &str) -> Option<&'static [&'static str]> {
    match rule {
        POWER => Some(&["smaller_ap_max", "smaller_feed", "speed_floor", "rpm", "headstock.power"]),
        TORQUE => Some(&["smaller_ap_max", "smaller_feed", "headstock.torque", "bar"]),
        FEED_FORCE => Some(&["smaller_ap_max", "smaller_feed", "headstock.feed_force"]),
        COUNTER_TORQUE => Some(&["counter_spindle.torque", "smaller_feed"]),
        _ => None,
    }
}

/// Lighter cuts.
pub fn lighter(job: &Job) -> Vec<Candidate> {
    let (ap, feed) = (job.cutting.ap_max_mm, job.cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM));
    let least = job.cutting.ap_finish_mm.max(LEAST_DEPTH_MM);
    let role = Role::Change(ChangeKind::Cut);
    let depth = number(
        "smaller_ap_max",
        role,
        (ap, least.min(ap)),
        0.1,
        |ap| say!("change-smaller-ap-max", depth = Measure::Size.fixed(ap, 1)),
        |j, ap| j.cutting.ap_max_mm = ap,
    );
    let feed = number(
        "smaller_feed",
        role,
        (feed, LEAST_FEED_MM.min(feed)),
        0.01,
        |f| say!("change-smaller-feed", feed = Measure::Feed.fixed(f, 2)),
        |j, f| j.cutting.feed_mm = Some(f),
    );
    vec![depth.at_key("job", "cutting.ap_max").in_group("depth"), feed.at_key("job", "cutting.feed").in_group("feed")]
}

/// Stronger machines, if something cannot be driven.
pub fn all(job: &Job) -> Vec<Candidate> {
    let rig = Rig::new(job, None);
    if rig.segments().ok().and_then(|segments| rig.not_driven(&segments)).is_none() {
        return Vec::new();
    }
    let mut list = Vec::new();
    let mut stronger = |name: &'static str, now: Option<f64>, step, says: fn(f64) -> String, set: fn(&mut Job, f64)| {
        let role = Role::Change(ChangeKind::Machine);
        let change = |v: f64| number(name, role, (v, STRONGER_TIMES * v), step, says, set).at_key("machine", name);
        list.extend(now.map(change));
    };
    let head = &job.machine.headstock;
    let counter_nm = job.machine.counter_spindle.as_ref().and_then(|c| c.torque_nm);
    stronger(
        "headstock.power",
        head.power_kw,
        0.5,
        |v| say!("change-power", power = lang::fixed(v, 1)),
        |j, v| {
            j.machine.headstock.power_kw = Some(v);
        },
    );
    stronger(
        "headstock.torque",
        head.torque_nm,
        1.0,
        |v| say!("change-torque", torque = format!("{v:.0}")),
        |j, v| {
            j.machine.headstock.torque_nm = Some(v);
        },
    );
    stronger(
        "headstock.feed_force",
        head.feed_force_n,
        100.0,
        |v| say!("change-feed-force", force = Measure::Force.fixed(v, 0)),
        |j, v| j.machine.headstock.feed_force_n = Some(v),
    );
    stronger(
        "counter_spindle.torque",
        counter_nm,
        1.0,
        |v| say!("change-counter-torque", torque = format!("{v:.0}")),
        |j, v| {
            if let Some(c) = &mut j.machine.counter_spindle {
                c.torque_nm = Some(v);
            }
        },
    );
    list
}
