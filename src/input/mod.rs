//! Reads files into a [`Job`]. Every error message points at the text that caused it.
//!
//! A job is read once and checked at the same time: every key must be known, every number must be in the range given by
//! [`crate::fields`], and the parts must fit each other. All errors are reported together, in file order, each with its
//! line, its column and what to write instead. What the reader assumed is listed in [`Job::notes`].

mod centre;
mod cutting;
mod edges;
pub mod edit;
mod end_work;
mod family;
mod features;
mod file;
mod job;
mod language;
mod lengths;
mod limits;
mod machine;
mod machine_from;
mod material;
mod measure;
mod node;
mod number;
mod order;
mod reader;
mod readings;
mod render;
mod scatter;
mod section;
mod shaft;
pub mod shop;
mod slips;
mod stock;
mod tolerance;
mod tool_list;
mod tools;
pub mod tree;
mod units;
mod vary;
mod wishes;

use std::path::{Path, PathBuf};

use std::sync::Arc;

use crate::diag::Diag;
use crate::job::readings::Readings;
use crate::job::shop::Shop;
use crate::job::{Collet, Job, Machine};

pub use family::Family;
use machine_from::MachineFrom;
use shop::ShopFrom;

pub use render::render;

/// An example job with comments and a machine, for users to start from.
pub const TEMPLATE: &str = include_str!("template.yaml");

/// Whether a key is allowed at the top level of a job.
pub fn is_job_key(key: &str) -> bool {
    job::KEYS.contains(&key)
}

/// Files that the call names beside the job.
#[derive(Debug, Clone, Copy, Default)]
pub struct Beside<'a> {
    /// The machine file, or the name of a machine of the shop, to be used instead of the machine of the job.
    pub machine: Option<&'a Path>,
    /// The shop's file. None: the one that the job names, else the nearest upwards from the job.
    pub shop: Option<&'a Path>,
}

/// Reads a job file. A path in it is relative to the folder of the job file.
///
/// # Errors
/// All errors in the shop's file; else all errors in the job file, in file order, then all errors in the machine file.
pub fn read_job(path: &Path) -> Result<Job, Vec<Diag>> {
    read_job_with(path, Beside::default())
}

/// Reads a job file with the files that the call names.
///
/// # Errors
/// As [`read_job`].
pub fn read_job_with(path: &Path, beside: Beside<'_>) -> Result<Job, Vec<Diag>> {
    let source = file::source_at(path).map_err(|diag| vec![diag])?;
    let folder = path.parent().unwrap_or(Path::new(""));
    job::read(&source, MachineFrom::files(folder, beside.machine), ShopFrom::Files(folder, beside.shop))
}

/// Reads a job from its text. Messages show `name` as its file name. A path in it is relative to `base_dir`. A shop's file counts only if
/// the job names it.
///
/// ```
/// let job = spanhold::input::read_job_text("job.yaml", spanhold::input::TEMPLATE, ".".as_ref()).unwrap();
/// assert!(job.shaft.length_mm() > 0.0);
/// ```
///
/// # Errors
/// All errors in the job, in file order, then all errors in the machine file.
pub fn read_job_text(name: &str, text: &str, base_dir: &Path) -> Result<Job, Vec<Diag>> {
    let source = file::source_of(name, text).map_err(|diag| vec![diag])?;
    job::read(&source, MachineFrom::Folder(base_dir), ShopFrom::Named(base_dir))
}

/// A text and its name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    /// The name, as shown in messages.
    pub name: String,
    /// The text.
    pub text: String,
}

/// Reads a job from its text. If the job names a machine file, `machine` is the text of that file. Opens no file.
///
/// # Errors
/// All errors in the job, in file order, then all errors in the machine.
pub fn read_texts(job: &Named, machine: Option<&Named>, shop: Option<Arc<Shop>>) -> Result<Job, Vec<Diag>> {
    let source = file::source_of(&job.name, &job.text).map_err(|diag| vec![diag])?;
    job::read(&source, MachineFrom::Text(machine), ShopFrom::Ready(shop))
}

/// Reads a machine from the text of its file. None: the text has errors.
pub fn read_machine_text(file: &Named) -> Option<Machine> {
    machine_from::in_clean_file(&file::source_of(&file.name, file.text.as_str()).ok()?)
}

/// The texts of a job file and of the machine file that it names. Their contents are not checked here. A machine file
/// that cannot be read is left out.
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

/// The shop of a job file. None: there is none. `given`: the shop's file that the call names.
///
/// # Errors
/// The shop's file cannot be read. A job that cannot be read has no shop.
pub fn shop_of(job: &Path, given: Option<&Path>) -> Result<Option<Arc<Shop>>, Vec<Diag>> {
    let tree = file::source_at(job).ok().and_then(|source| node::parse(&source).ok());
    let from = ShopFrom::Files(job.parent().unwrap_or(Path::new("")), given);
    tree.map_or(Ok(None), |tree| from.of(&tree))
}

/// The shop of a folder: the given file, else the nearest one upwards.
///
/// # Errors
/// The shop's file cannot be read.
pub fn shop_near(folder: &Path, given: Option<&Path>) -> Result<Option<Shop>, Vec<Diag>> {
    let file = given.map(Path::to_owned).or_else(|| shop::found(folder));
    file.map(|file| shop::read_shop(&file)).transpose()
}

/// The paths of the files that planning a job reads: the job file, its machine file, the shop's files. What cannot be read is left out.
pub fn files_of(path: &Path, beside: Beside<'_>) -> Vec<PathBuf> {
    let machine = file::read_text(path).ok().and_then(|text| machine_named(path, &text));
    let shop = shop_of(path, beside.shop).ok().flatten();
    let of_shop = shop.iter().flat_map(|shop| shop.files());
    let named = machine.map(|(machine, _)| machine).into_iter().chain(beside.machine.map(Path::to_owned));
    std::iter::once(path.to_owned()).chain(named).chain(of_shop).collect()
}

/// The path of the machine file that a job names, and the path as it is written in the job.
fn machine_named(job: &Path, text: &str) -> Option<(PathBuf, String)> {
    let root = tree::tree("", text).ok()?;
    let entry = root.at(&[tree::Step::Key("machine".into())])?;
    let path = job.parent().unwrap_or(Path::new("")).join(&entry.text);
    (entry.kind == tree::Kind::Scalar).then(|| (path, entry.text.clone()))
}

/// Reads a readings file. If `machine` is given, that machine file is used instead of the one that the readings name.
///
/// # Errors
/// All errors in the readings file, in file order, then all errors in the machine file.
pub fn read_readings(path: &Path, machine: Option<&Path>) -> Result<Readings, Vec<Diag>> {
    let source = file::source_at(path).map_err(|diag| vec![diag])?;
    readings::read(&source, path.parent().unwrap_or(Path::new("")), machine)
}

/// Reads readings from their text. Messages show `name` as the file name. A machine path is relative to `base_dir`.
///
/// # Errors
/// All errors in the readings, in file order, then all errors in the machine file.
pub fn read_readings_text(name: &str, text: &str, base_dir: &Path) -> Result<Readings, Vec<Diag>> {
    let source = file::source_of(name, text).map_err(|diag| vec![diag])?;
    readings::read(&source, base_dir, None)
}

/// Names of collets with their ranges, for messages.
fn machine_names(collets: &[Collet]) -> String {
    let one = |c: &Collet| format!("{} ({} to {} mm)", c.name, c.smallest_mm, c.largest_mm);
    collets.iter().map(one).collect::<Vec<_>>().join(", ")
}
