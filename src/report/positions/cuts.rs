//! The cuts of a segment: each travel, and each pass of a thread.

use super::walk::{SAME_MM, Walk, tool};
use crate::job::plan::{Done, Plan, Position, Segment};
use crate::report::words;
use crate::say;
use std::iter::Peekable;
use std::vec::IntoIter;

/// More travels or passes than this stand only in a plan file that was edited by hand.
const MOST: usize = 1000;

/// What all rows of one travel or pass have in common.
struct Cut<'a> {
    segment: &'a Segment,
    event: &'a str,
    what: String,
    /// How far the diameter stands above that of the section, mm.
    above_mm: f64,
    /// How far the leading one of two tools stands above the other, mm.
    leads_mm: Option<f64>,
    rpm: f64,
    feed_mm: f64,
    tool: String,
}

impl Cut<'_> {
    /// Diameter of the tool at a turned length, mm. What a travel before the last leaves of a taper never reaches beyond the bar.
    fn diameter_mm(&self, plan: &Plan, at_mm: f64) -> f64 {
        (along_mm(plan, self.segment, at_mm) + self.above_mm).min(plan.shaft.stock_diameter_mm)
    }
}

/// Finished diameter of a segment at a turned length, mm: on a taper it changes.
fn along_mm(plan: &Plan, segment: &Segment, at_mm: f64) -> f64 {
    let section = plan.shaft.sections.iter().find(|s| s.number == segment.section && s.kind == "taper");
    section.filter(|s| s.to_mm > s.from_mm).map_or(segment.diameter_mm, |s| s.diameter_at_mm(at_mm))
}

/// Depths of cut of each travel, mm. Empty: the plan does not tell them one by one.
fn depths(segment: &Segment) -> Vec<Vec<f64>> {
    if !segment.cuts.is_empty() {
        return segment.cuts.iter().map(|c| c.depths_mm.clone()).collect();
    }
    let one_by_one = segment.depths_mm.len() == segment.travels;
    segment.depths_mm.iter().filter(|_| one_by_one).map(|d| vec![*d]).collect()
}

impl Walk<'_> {
    /// Cuts a segment, with the works at stops inside it.
    pub(super) fn segment(&mut self, segment: &Segment, stops: &mut Peekable<IntoIter<Done>>) {
        if segment.work == "as_drawn" {
            while let Some(stop) = stops.next_if(|s| s.turned_mm < segment.to_mm - SAME_MM) {
                self.stop(&stop);
            }
            return self.feed_to(segment.to_mm);
        }
        let depths = depths(segment);
        for index in 0..segment.travels.min(MOST) {
            let cut = self.travel(segment, index, &depths);
            self.approach(&cut, segment.from_mm);
            // A stop for a work is in the last travel: the rest of the segment is cut with its last tool.
            let due = |s: &Done| index + 1 == segment.travels && s.turned_mm < segment.to_mm - SAME_MM;
            while let Some(stop) = stops.next_if(due) {
                self.cut_to(&cut, stop.turned_mm);
                self.stop(&stop);
                while let Some(more) = stops.next_if(|s| s.turned_mm <= stop.turned_mm + SAME_MM) {
                    self.stop(&more);
                }
                self.approach(&cut, stop.turned_mm);
            }
            self.cut_to(&cut, segment.to_mm);
            self.run_out(&cut, index);
        }
        self.passes(segment);
    }

    fn travel<'s>(&self, segment: &'s Segment, index: usize, depths: &[Vec<f64>]) -> Cut<'s> {
        let own = segment.cuts.get(index);
        let name = |name: &String| self.plan.listed(name).map_or_else(|| words::plain(name), tool);
        let tools: Vec<String> = own.iter().flat_map(|cut| &cut.tools).map(name).collect();
        // A thread is turned before its passes.
        let event = if segment.work == "thread" { "turn" } else { segment.work.as_str() };
        let (work, section) = (words::work(event), words::section(self.plan, segment.section));
        let (travel, travels) = (index + 1, segment.travels);
        let what = match travels {
            1 => say!("moves-cut", work = work, section = section),
            _ => say!("moves-travel", work = work, section = section, travel = travel, travels = travels),
        };
        let leads = depths.get(index).and_then(|of_tools| of_tools.get(1));
        Cut {
            segment,
            event,
            what,
            above_mm: 2.0 * depths.iter().skip(index + 1).flatten().sum::<f64>(),
            leads_mm: leads.map(|depth| 2.0 * depth),
            rpm: own.map_or(segment.rpm, |cut| cut.rpm),
            feed_mm: own.map_or(segment.feed_mm, |cut| cut.feed_mm),
            tool: tools.join(", "),
        }
    }

    /// The tool comes to where the cut begins or goes on; the bar goes there first.
    fn approach(&mut self, cut: &Cut<'_>, from_mm: f64) {
        self.feed_to(from_mm);
        self.begin();
        let section = self.plan.shaft.sections.iter().find(|s| s.number == cut.segment.section);
        let name = section.map_or("", |s| s.name.as_str());
        let start_s = self.clock.cut_begins_s(&cut.segment.work, cut.segment.stage, name);
        // A tool that plunges comes from outside, and the plan does not tell from where.
        let diameter_mm = (cut.event != "plunge").then(|| cut.diameter_mm(self.plan, from_mm));
        let row = Position {
            start_s,
            diameter_mm,
            leading_diameter_mm: diameter_mm.zip(cut.leads_mm).map(|(d, leads)| d + leads),
            lag_mm: cut.leads_mm.and(cut.segment.lag_mm),
            tool: cut.tool.clone(),
            ..self.row("tool", "approach", say!("moves-approach", cut = cut.what))
        };
        self.rows.push(row);
    }

    fn cut_to(&mut self, cut: &Cut<'_>, turned_mm: f64) {
        self.go_to(turned_mm);
        self.cut_row(cut, cut.event, cut.what.clone(), turned_mm);
    }

    fn cut_row(&mut self, cut: &Cut<'_>, event: &str, what: String, at_mm: f64) {
        let diameter_mm = cut.diameter_mm(self.plan, at_mm);
        let row = Position {
            diameter_mm: Some(diameter_mm),
            leading_diameter_mm: cut.leads_mm.map(|leads| diameter_mm + leads),
            lag_mm: cut.leads_mm.and(cut.segment.lag_mm),
            headstock_rpm: Some(cut.rpm),
            counter_spindle_rpm: self.synchronous(cut.rpm),
            feed_mm: Some(cut.feed_mm),
            tool: cut.tool.clone(),
            ..self.row("tool", event, what)
        };
        self.rows.push(row);
    }

    /// The run-out of a tandem: at the end of a segment the roughing tool lifts, and the bar is fed on until the finishing tool is
    /// there. At a stop inside a section both tools stop and go on.
    fn run_out(&mut self, cut: &Cut<'_>, index: usize) {
        let segment = cut.segment;
        let section = self.plan.shaft.sections.iter().find(|s| s.number == segment.section);
        let ends = segment.travels > 1 || section.is_some_and(|s| (s.to_mm - segment.to_mm).abs() <= SAME_MM);
        let last = index + 1 == segment.travels && ends;
        if let Some(lag_mm) = segment.lag_mm.filter(|_| last && cut.leads_mm.is_some()) {
            self.go_to(segment.to_mm + lag_mm);
            self.cut_row(cut, "run_out", say!("moves-run-out"), segment.to_mm);
        }
    }

    /// The passes of a single-point thread, start by start.
    fn passes(&mut self, segment: &Segment) {
        let Some(threading) = &segment.threading else { return };
        for pass in 1..=threading.passes.min(MOST) {
            let each = segment.infeeds_mm.len().max(1);
            let infeed_mm: f64 = segment.infeeds_mm.iter().take((pass - 1) % each + 1).sum();
            let section = words::section(self.plan, segment.section);
            let cut = Cut {
                segment,
                event: "thread",
                what: say!("moves-pass", section = section, pass = pass, passes = threading.passes),
                above_mm: -2.0 * infeed_mm,
                leads_mm: None,
                rpm: threading.rpm,
                feed_mm: threading.pitch_mm,
                tool: String::new(),
            };
            self.approach(&cut, segment.from_mm);
            self.cut_to(&cut, segment.to_mm);
        }
    }
}
