//! Files to a [`Job`], every message pointing at what was written.
//!
//! A job is read once and checked on the way: every key known, every number in the range of [`crate::fields`], the
//! parts fitting each other. What is wrong is told all together, in file order, each with its line and column and what
//! to write instead. What was assumed stands in [`Job::notes`].

mod cutting;
pub mod edit;
mod end_work;
mod family;
mod features;
mod file;
mod job;
mod lengths;
mod limits;
mod machine;
mod material;
mod node;
mod order;
mod reader;
mod readings;
mod render;
mod section;
mod shaft;
mod tools;
pub mod tree;
mod vary;
mod wishes;

use std::path::{Path, PathBuf};

use crate::diag::Diag;
use crate::job::readings::Readings;
use crate::job::{Collet, Job};

pub use family::Family;
use job::MachineFrom;

pub use render::render;

/// A commented job with its machine, to start from.
pub const TEMPLATE: &str = include_str!("template.yaml");

/// Whether a key may stand in a job, at its top.
pub fn is_job_key(key: &str) -> bool {
    job::KEYS.contains(&key)
}

/// Reads a job file. A machine named in it by a path counts from the file's folder.
///
/// # Errors
/// Everything that is wrong with the job file and the machine file, in file order.
pub fn read_job(path: &Path) -> Result<Job, Vec<Diag>> {
    read_job_with(path, None)
}

/// Reads a job file, with another machine file in place of the job's where one is given.
///
/// # Errors
/// Everything that is wrong with the job file and the machine file, in file order.
pub fn read_job_with(path: &Path, machine: Option<&Path>) -> Result<Job, Vec<Diag>> {
    let source = file::source_at(path).map_err(|diag| vec![diag])?;
    let from = MachineFrom::files(path.parent().unwrap_or(Path::new("")), machine);
    job::read(&source, from)
}

/// Reads a job from its text. `name` stands in messages; a machine named by a path counts from `base_dir`.
///
/// ```
/// let job = spanhold::input::read_job_text("job.yaml", spanhold::input::TEMPLATE, ".".as_ref()).unwrap();
/// assert!(job.shaft.length_mm() > 0.0);
/// ```
///
/// # Errors
/// Everything that is wrong, in file order.
pub fn read_job_text(name: &str, text: &str, base_dir: &Path) -> Result<Job, Vec<Diag>> {
    let source = file::source_of(name, text).map_err(|diag| vec![diag])?;
    job::read(&source, MachineFrom::Folder(base_dir))
}

/// A text and the name it goes by.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    /// The name, as it stands in messages.
    pub name: String,
    /// The text.
    pub text: String,
}

/// Reads a job whose machine file, where it names one, is given as text too. Opens no file.
///
/// # Errors
/// Everything that is wrong with the job and the machine, in the order of the texts.
pub fn read_texts(job: &Named, machine: Option<&Named>) -> Result<Job, Vec<Diag>> {
    let source = file::source_of(&job.name, &job.text).map_err(|diag| vec![diag])?;
    job::read(&source, MachineFrom::Text(machine))
}

/// A job file and the machine file it names, as texts. What is wrong in them is not asked here; a machine file that cannot
/// be read is left out.
///
/// # Errors
/// The job file cannot be read.
pub fn texts_of(path: &Path) -> Result<(Named, Option<Named>), Diag> {
    let text = file::read_text(path)?;
    let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
    let machine = machine_named(path, &text).and_then(|(machine, name)| {
        let text = file::read_text(&machine).ok()?;
        Some(Named { name, text })
    });
    Ok((Named { name, text }, machine))
}

/// The file and the machine file it names, which are read where it is planned. One that cannot be read names none.
pub fn files_of(path: &Path) -> Vec<PathBuf> {
    let machine = file::read_text(path).ok().and_then(|text| machine_named(path, &text));
    std::iter::once(path.to_owned()).chain(machine.map(|(machine, _)| machine)).collect()
}

/// The path of the machine file that a job names, and as it is written there.
fn machine_named(job: &Path, text: &str) -> Option<(PathBuf, String)> {
    let root = tree::tree("", text).ok()?;
    let entry = root.at(&[tree::Step::Key("machine".into())])?;
    let path = job.parent().unwrap_or(Path::new("")).join(&entry.text);
    (entry.kind == tree::Kind::Scalar).then(|| (path, entry.text.clone()))
}

/// Reads a readings file, with another machine file in place of its own where one is given.
///
/// # Errors
/// Everything that is wrong with the readings and the machine file, in file order.
pub fn read_readings(path: &Path, machine: Option<&Path>) -> Result<Readings, Vec<Diag>> {
    let source = file::source_at(path).map_err(|diag| vec![diag])?;
    readings::read(&source, path.parent().unwrap_or(Path::new("")), machine)
}

/// Reads readings from their text. `name` stands in messages; a machine named by a path counts from `base_dir`.
///
/// # Errors
/// Everything that is wrong, in file order.
pub fn read_readings_text(name: &str, text: &str, base_dir: &Path) -> Result<Readings, Vec<Diag>> {
    let source = file::source_of(name, text).map_err(|diag| vec![diag])?;
    readings::read(&source, base_dir, None)
}

/// Names of collets with their ranges, for messages.
fn machine_names(collets: &[Collet]) -> String {
    let one = |c: &Collet| format!("{} ({} to {} mm)", c.name, c.smallest_mm, c.largest_mm);
    collets.iter().map(one).collect::<Vec<_>>().join(", ")
}
