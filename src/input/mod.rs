//! Files to a [`Job`], every message pointing at what was written.
//!
//! A job is read once and checked on the way: every key known, every number in the range of [`crate::fields`], the
//! parts fitting each other. What is wrong is told all together, in file order, each with its line and column and what
//! to write instead. What was assumed stands in [`Job::notes`].

mod cutting;
mod end_work;
mod family;
mod features;
mod file;
mod job;
mod limits;
mod machine;
mod material;
mod node;
mod order;
mod reader;
mod render;
mod section;
mod shaft;
mod tools;
mod vary;
mod wishes;

use std::path::Path;
use std::sync::Arc;

use crate::diag::{Diag, Source};
use crate::job::Job;

pub use family::Family;
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
    let text = file::read_text(path).map_err(|diag| vec![diag])?;
    let source = Arc::new(Source { path: path.to_owned(), text });
    job::read(&source, path.parent().unwrap_or(Path::new("")), machine)
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
    if text.len() as u64 > crate::fields::FILE_MAX_BYTES {
        return Err(vec![file::too_large(Path::new(name))]);
    }
    let source = Arc::new(Source { path: name.into(), text: text.to_owned() });
    job::read(&source, base_dir, None)
}
