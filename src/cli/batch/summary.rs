//! The summary of a batch, for stderr.

use super::super::Ending;
use super::line::{Head, Planned};
use crate::lang;
use crate::report::text::WIDTH;
use crate::report::{numbers, table};
use crate::say;
use std::time::{Duration, Instant};

/// Kinds of lines that are counted.
const KINDS: usize = 5;
/// The count of plans at risk.
const AT_RISK: usize = 4;
/// The kinds in the order of the columns.
const COLUMNS: [usize; KINDS] = [0, AT_RISK, 1, 2, 3];

#[derive(Debug, Default)]
struct Row {
    machine: String,
    /// Number of feasible and infeasible jobs, wrong inputs and defects. The index is the exit status. The last: plans at risk.
    counts: [usize; KINDS],
    took: Duration,
}

/// Counts lines by machine.
#[derive(Debug)]
pub struct Summary {
    began: Instant,
    rows: Vec<Row>,
    before: usize,
}

impl Summary {
    /// Starts the clock.
    pub fn new() -> Self {
        Summary { began: Instant::now(), rows: Vec::new(), before: 0 }
    }

    /// Counts a line that an interrupted call has written.
    pub fn before(&mut self, head: &Head) {
        self.before += 1;
        self.count(head, Duration::ZERO);
    }

    /// Counts a new line.
    pub fn add(&mut self, planned: &Planned) {
        self.count(&planned.head, planned.took);
    }

    fn count(&mut self, head: &Head, took: Duration) {
        let machine = head.id.machine.as_deref().unwrap_or(lang::text("batch-machine-of-job"));
        let at = self.rows.iter().position(|r| r.machine == machine).unwrap_or_else(|| {
            self.rows.push(Row { machine: machine.to_owned(), ..Row::default() });
            self.rows.len() - 1
        });
        let Some(row) = self.rows.get_mut(at) else { return };
        let at_risk = head.made.is_some_and(|made| made.at_risk);
        let kind = if at_risk { AT_RISK } else { usize::from(head.ending.status()) };
        if let Some(count) = row.counts.get_mut(kind) {
            *count += 1;
        }
        row.took += took;
    }

    /// How the command ends: a defect, a wrong input, or done.
    pub fn ending(&self) -> Ending {
        let some = |ending: Ending| {
            self.rows.iter().any(|r| r.counts.get(usize::from(ending.status())).is_some_and(|n| *n > 0))
        };
        [Ending::Defect, Ending::WrongInput].into_iter().find(|e| some(*e)).unwrap_or(Ending::Done)
    }

    /// The table.
    pub fn text(&self) -> String {
        let heads = [
            table::words(lang::text("batch-head-machine")),
            table::number(lang::text("batch-head-feasible")),
            table::number(lang::text("batch-head-at-risk")),
            table::number(lang::text("batch-head-infeasible")),
            table::number(lang::text("batch-head-wrong")),
            table::number(lang::text("batch-head-defects")),
            table::number(lang::text("batch-head-time")),
        ];
        let row = |name: &str, counts: [usize; KINDS], took: Duration| {
            let mut cells = vec![name.to_owned()];
            cells.extend(COLUMNS.iter().filter_map(|kind| counts.get(*kind)).map(usize::to_string));
            cells.push(numbers::seconds(took.as_secs_f64()));
            cells
        };
        let mut rows: Vec<Vec<String>> = self.rows.iter().map(|r| row(&r.machine, r.counts, r.took)).collect();
        let mut all = [0; KINDS];
        for row in &self.rows {
            all.iter_mut().zip(row.counts).for_each(|(sum, count)| *sum += count);
        }
        if self.rows.len() != 1 {
            rows.push(row(lang::text("batch-row-all"), all, self.rows.iter().map(|r| r.took).sum()));
        }
        let lines: usize = all.iter().sum();
        let took = numbers::seconds(self.began.elapsed().as_secs_f64());
        let said = match self.before {
            0 => say!("batch-lines", lines = lines, time = took),
            before => say!("batch-lines-resumed", lines = lines, before = before, time = took),
        };
        format!("{said}\n{}", table::render(&heads, &rows, WIDTH))
    }
}
