//! `--map`: collects the results of a family of parts for the drawing.

use super::super::Ending;
use super::STDIN;
use super::line::Head;
use crate::cli::beside::InShop;
use crate::defect::Defect;
use crate::diag::Diag;
use crate::input::Family;
use crate::job::{Range, Varied};
use crate::lang::{self, Spoken};
use crate::report::family::{Axis, Cell, Drawn, Outcome, family_svg};
use crate::say;
use std::path::PathBuf;

/// The results collected so far, and what the job asks to be spoken.
#[derive(Debug)]
pub struct Map(Drawn, Spoken);

/// The empty map of the one job of the call.
///
/// # Errors
/// More than one job or machine, a job without `vary`, or one that cannot be read.
pub fn of(jobs: &[PathBuf], machines: &[PathBuf], shop: &InShop) -> Result<Map, Vec<Diag>> {
    let ([job], [] | [_]) = (jobs, machines) else {
        return Err(vec![Diag::new(say!("batch-map-of-one")).help(say!("batch-map-of-one-help"))]);
    };
    if job.as_os_str() == STDIN {
        return Err(vec![Diag::new(say!("batch-map-stdin")).help(say!("batch-map-stdin-help"))]);
    }
    let machine = machines.first().map(PathBuf::as_path);
    let family = Family::read(job, shop.beside(machine))?;
    let axis = |varied: Varied| {
        let range: Option<&Range> = family.ranges().iter().find(|r| r.varied == varied);
        range.map(|r| Axis {
            title: say!("batch-map-axis", key = varied.key(), section = r.label),
            values_mm: r.values_mm(),
        })
    };
    if family.ranges().is_empty() {
        return Err(vec![
            Diag::new(say!("batch-map-no-family", file = job.display().to_string()))
                .help(say!("batch-map-no-family-help")),
        ]);
    }
    let nominal = family.part(0).ok();
    let name = nominal.as_ref().map_or_else(|| job.display().to_string(), |j| j.shaft.name.clone());
    let machine = nominal.map(|j| j.machine.name);
    let (length, diameter) = (axis(Varied::Length), axis(Varied::Diameter));
    Ok(Map(Drawn { name, machine, length, diameter, cells: Vec::new() }, lang::spoken()))
}

impl Map {
    /// Adds a part of the family.
    pub fn add(&mut self, head: &Head) {
        let outcome = match (&head.made, head.ending) {
            (Some(made), _) => Outcome::Made { hand_overs: made.hand_overs, time_s: made.time_s },
            (None, Ending::NotFeasible) => Outcome::NotFeasible { stopped_by: head.stopped_by.clone() },
            (None, _) => Outcome::NoJob,
        };
        if let Some(sizes) = &head.id.vary {
            self.0.cells.push(Cell { length_mm: sizes.length_mm, diameter_mm: sizes.diameter_mm, outcome });
        }
    }

    /// The drawing.
    ///
    /// # Errors
    /// The chart library fails: a defect.
    pub fn svg(&self) -> Result<String, Defect> {
        lang::speaking(self.1, || family_svg(&self.0)).map_err(|e| Defect(e.to_string()))
    }
}
