//! The order of works and their tools, and how the work on the rear end of one part overlaps in time with the free first stage of the
//! next part.
//!
//! From the first hand-over to part-off both spindles hold the same part. Before the first hand-over the headstock works alone. After
//! part-off the counter-spindle works alone, on the rear end. If this work is done aside, the free stage of the next part is turned at
//! the same time, and the spindle that is ready first waits. `H` is the time the headstock needs for a part, `S` the part of `H`
//! in the free stage, and `B` the time the counter-spindle needs after part-off. The time from part to part is
//! `H + max(0, B - S)` if the works overlap, else `H + B` (derived here). `S` depends only on the end of the free stage, so the
//! time from part to part is a sum over stages, with the waiting time counted in the first stage.

use super::features::Task;
use super::rig::Rig;
use super::segments::{Segment, Work};
use super::stops::SAME_MM;
use super::tool::Tool;
use crate::job::BackPlace;

/// One step of the works on the headstock side.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Turned length at which the step begins, mm.
    pub at_mm: f64,
    /// Turned length at which the step ends or is interrupted, mm.
    pub to_mm: f64,
    /// The work of the step.
    pub what: What,
    /// Its tools, in order.
    pub tools: Vec<Tool>,
    /// Tool changes before and within the step.
    pub changes: usize,
}

/// What a step does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum What {
    /// Cuts a segment (index), or continues it.
    Cut(usize),
    /// Does a task (index).
    Task(usize),
    /// Parts off.
    PartOff,
}

/// Times of both spindles that do not depend on the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pace {
    /// Work on the rear end, its tool changes, and unloading, s.
    pub counter_s: f64,
    /// Whether the free stage of the next part is turned at the same time.
    pub overlaps: bool,
    /// Loading a bar, s.
    pub bar_change_s: f64,
    /// Parts from one bar, at least one.
    pub pieces_per_bar: f64,
}

impl Pace {
    /// Time per part beyond the works of the headstock, s: the wait for the counter-spindle (or all of its work if it does not overlap),
    /// and a share of the bar change. `first_s` is the time of all works in the free stage.
    ///
    /// The sum of `first_s` and this time never falls as `first_s` grows.
    pub fn beyond_s(&self, first_s: f64) -> f64 {
        if !self.overlaps {
            return self.counter_s + self.bar_change_s / self.pieces_per_bar;
        }
        let wait = |first: f64| (self.counter_s - first).max(0.0);
        // For a part that begins with a new bar, the counter-spindle can work during loading too.
        let loading = self.bar_change_s + wait(first_s + self.bar_change_s);
        ((self.pieces_per_bar - 1.0) * wait(first_s) + loading) / self.pieces_per_bar
    }
}

impl Rig<'_> {
    /// The pace of the job.
    pub fn pace(&self) -> Pace {
        let machine = &self.job.machine;
        // A part that falls is not unloaded by the counter-spindle.
        let counter = machine.counter_spindle.as_ref().filter(|_| self.collet.is_some());
        let tools: Vec<&Tool> = self.back.iter().map(|b| &b.tool).collect();
        let changes = changes_around(&tools) as f64;
        let work = self.back_work_s() + changes * machine.tool_change_s;
        Pace {
            counter_s: work + counter.map_or(0.0, |c| c.unload_s),
            overlaps: counter.is_some_and(|c| c.back_place == BackPlace::Aside),
            bar_change_s: machine.bar_change_s,
            pieces_per_bar: (self.job.pieces_per_bar() as f64).max(1.0),
        }
    }

    /// The works of the headstock side in order. `moments` are the tasks (index) with the turned lengths at which they are done, mm.
    /// After a task in the middle of a segment the rest of the segment follows; part-off comes last.
    pub fn steps(&self, segments: &[Segment], tasks: &[Task], moments: &[(usize, f64)]) -> Vec<Step> {
        let mut due: Vec<(usize, f64)> = moments.to_vec();
        due.sort_by(|a, b| a.1.total_cmp(&b.1));
        let mut due = due.into_iter().peekable();
        let mut steps: Vec<Step> = Vec::new();
        let task = |(index, at_mm): (usize, f64)| Step {
            at_mm,
            to_mm: at_mm,
            what: What::Task(index),
            tools: vec![tasks[index].tool.clone()],
            changes: 0,
        };
        for (index, segment) in segments.iter().enumerate().filter(|(_, s)| s.work != Work::PartOff) {
            while let Some(t) = due.next_if(|t| t.1 <= segment.from_mm + SAME_MM) {
                steps.push(task(t));
            }
            let (mut at_mm, mut tools) = (segment.from_mm, self.segment_tools(segment));
            loop {
                let stop = due.peek().map(|t| t.1).filter(|t| *t < segment.to_mm - SAME_MM);
                let to_mm = stop.unwrap_or(segment.to_mm);
                steps.push(Step { at_mm, to_mm, what: What::Cut(index), tools: tools.clone(), changes: 0 });
                let Some(stop) = stop else { break };
                while let Some(t) = due.next_if(|t| t.1 <= stop + SAME_MM) {
                    steps.push(task(t));
                }
                // The rest of an interrupted segment is cut with its last tool.
                tools.drain(..tools.len().saturating_sub(1));
                at_mm = stop;
            }
        }
        steps.extend(due.map(task));
        if let Some(last) = segments.last() {
            let tools = self.segment_tools(last);
            steps.push(Step { at_mm: last.from_mm, to_mm: last.to_mm, what: What::PartOff, tools, changes: 0 });
        }
        // The first tool of a part follows the last of the part before.
        let mut last = steps.iter().rev().find_map(|s| s.tools.last()).cloned();
        for step in &mut steps {
            for tool in &step.tools {
                step.changes += usize::from(last.as_ref() != Some(tool));
                last = Some(tool.clone());
            }
        }
        steps
    }

    /// Time of the tasks and tool changes of the headstock side up to the end of a stage at `turned_mm`, s.
    pub fn besides_s(&self, steps: &[Step], tasks: &[Task], turned_mm: f64) -> f64 {
        let change_s = self.job.machine.tool_change_s;
        let here = |s: &&Step| match s.what {
            What::Task(_) => s.at_mm <= turned_mm + SAME_MM,
            What::Cut(_) => s.at_mm < turned_mm - SAME_MM,
            What::PartOff => false,
        };
        let own = |s: &Step| match s.what {
            What::Task(i) => tasks[i].time_s,
            _ => 0.0,
        };
        steps.iter().filter(here).map(|s| own(s) + s.changes as f64 * change_s).sum()
    }

    /// Time of the tool changes of the headstock side, s per part.
    pub fn changes_s(&self, steps: &[Step]) -> f64 {
        steps.iter().map(|s| s.changes as f64).sum::<f64>() * self.job.machine.tool_change_s
    }
}

/// Number of tool changes per part: the first tool follows the last tool of the part before.
fn changes_around(tools: &[&Tool]) -> usize {
    let before = tools.last().into_iter().chain(tools);
    before.zip(tools).filter(|(a, b)| a != b).count()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::Place;

    const PACE: Pace = Pace { counter_s: 30.0, overlaps: true, bar_change_s: 20.0, pieces_per_bar: 5.0 };

    #[test]
    fn what_overlaps_costs_only_the_wait() {
        // The free stage is longer than the work on the rear end: only the bar change counts.
        assert_eq!(PACE.beyond_s(40.0), 4.0);
        // The free stage is 18 s too short; with a new bar it is long enough.
        assert!((PACE.beyond_s(12.0) - (4.0 * 18.0 + 20.0) / 5.0).abs() < 1e-12);
        // The free stage is 25 s too short, with a new bar still 5 s: 25, 25, 25, 25 and 20 + 5.
        assert_eq!(PACE.beyond_s(5.0), 25.0);
        assert_eq!(Pace { overlaps: false, ..PACE }.beyond_s(40.0), 34.0);
        let sums: Vec<f64> = (0..60).map(|s| PACE.beyond_s(f64::from(s)) + f64::from(s)).collect();
        assert!(sums.windows(2).all(|w| w[1] >= w[0]), "{sums:?}");
    }

    #[test]
    fn changes_go_round() {
        let tool = |name: &str| Tool::new(Place::BackFixed, name);
        let (a, b) = (tool("a"), tool("b"));
        assert_eq!(changes_around(&[&a]), 0);
        assert_eq!(changes_around(&[&a, &b]), 2);
        assert_eq!(changes_around(&[&a, &a, &b]), 2);
        assert_eq!(changes_around(&[]), 0);
    }
}
