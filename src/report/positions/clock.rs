//! When the events of a part begin, from the timeline of the plan.

use crate::job::plan::{Operation, Plan};

/// The timeline, told from its beginning on.
pub(super) struct Clock<'a> {
    operations: Vec<&'a Operation>,
    next: usize,
    /// The cut that was told last: stage, work, name of the section.
    cut: Option<(usize, String, String)>,
}

impl<'a> Clock<'a> {
    pub(super) fn new(plan: &'a Plan) -> Self {
        let of_headstock = |o: &&Operation| o.side != "counter_spindle";
        let operations = plan.cycle.iter().flat_map(|c| &c.operations).filter(of_headstock).collect();
        Clock { operations, next: 0, cut: None }
    }

    /// When the next such work of a stage begins, s. None: the timeline does not have it.
    pub(super) fn begins_s(&mut self, work: &str, stage: usize, text: Option<&str>) -> Option<f64> {
        self.cut = None;
        let is_it = |o: &&Operation| o.work == work && o.stage == Some(stage) && text.is_none_or(|t| o.text == t);
        let ahead = self.operations.iter().skip(self.next);
        let (index, found) = ahead.enumerate().find(|(_, o)| is_it(o))?;
        self.next += index + 1;
        Some(found.from_s)
    }

    /// The same of a cut. Cuts in a row on one section are one work of the timeline, which begins with the first of them.
    pub(super) fn cut_begins_s(&mut self, work: &str, stage: usize, section: &str) -> Option<f64> {
        let cut = (stage, work.to_owned(), section.to_owned());
        if self.cut.as_ref() == Some(&cut) {
            return None;
        }
        let begins = self.begins_s(work, stage, Some(section));
        self.cut = Some(cut);
        begins
    }
}
