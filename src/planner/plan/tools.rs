//! The tools of a plan with the cuts that they take.

use crate::job::plan::{Plan, ToolUse};
use crate::process::rig::Rig;
use crate::process::segments::{Segment, Work};

/// The tools in the order in which they are first used; empty without a tool list.
pub fn used(rig: &Rig<'_>, plan: &Plan, segments: &[Segment]) -> Vec<ToolUse> {
    let mut all: Vec<ToolUse> = Vec::new();
    if rig.job.tool_list.is_empty() {
        return all;
    }
    for segment in &plan.segments {
        for cut in &segment.cuts {
            for (i, tool) in cut.tools.iter().enumerate() {
                let depth_mm = cut.depths_mm.get(i).copied();
                count(&mut all, rig, tool, segment.section, (depth_mm, cut.feed_mm, cut.rpm));
            }
        }
        if let Some(t) = &segment.threading {
            let cut = segments.iter().find(|cut| cut.section + 1 == segment.section && cut.work == Work::Thread);
            if let Some(tool) = cut.and_then(|cut| rig.segment_tools(cut).pop()) {
                count(&mut all, rig, &tool.name, segment.section, (None, t.pitch_mm, t.rpm));
            }
        }
    }
    let off = segments.iter().find(|s| s.work == Work::PartOff);
    if let (Some(off), Some(rpm)) = (off, plan.part_off_rpm) {
        for cut in rig.told_cuts(off, true, rpm) {
            cut.tools.iter().for_each(|tool| count(&mut all, rig, tool, 0, (None, cut.feed_mm, rpm)));
        }
    }
    all
}

/// Counts a cut of a tool. Section 0 stands for the part-off.
fn count(
    all: &mut Vec<ToolUse>,
    rig: &Rig<'_>,
    tool: &str,
    section: usize,
    (depth_mm, feed_mm, rpm): (Option<f64>, f64, f64),
) {
    let wider = |range: [f64; 2], value: f64| [range[0].min(value), range[1].max(value)];
    let sections: Vec<usize> = Some(section).filter(|s| *s > 0).into_iter().collect();
    if let Some(known) = all.iter_mut().find(|known| known.tool == tool) {
        known.depth_mm = match (known.depth_mm, depth_mm) {
            (Some(range), Some(depth)) => Some(wider(range, depth)),
            (range, depth) => range.or(depth.map(|depth| [depth; 2])),
        };
        known.feed_mm = wider(known.feed_mm, feed_mm);
        known.rpm = wider(known.rpm, rpm);
        known.sections.extend(sections.iter().filter(|s| !known.sections.contains(s)).copied().collect::<Vec<_>>());
        return;
    }
    let listed = rig.job.tool_list.iter().find(|listed| listed.name == tool);
    all.push(ToolUse {
        tool: tool.to_owned(),
        station: listed.and_then(|listed| listed.station.clone()),
        insert: listed.and_then(|listed| listed.insert.clone()),
        nose_radius_mm: depth_mm
            .map(|_| listed.and_then(|listed| listed.nose_radius_mm).unwrap_or(rig.job.cutting.nose_radius_mm)),
        listed: listed.is_some(),
        sections,
        depth_mm: depth_mm.map(|depth| [depth; 2]),
        feed_mm: [feed_mm; 2],
        rpm: [rpm; 2],
    });
}
