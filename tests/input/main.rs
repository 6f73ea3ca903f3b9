//! The reader: every bad input gets its message at its place, no input makes it panic, and what is good arrives whole.
//! The tests run in the crate's root, so that paths in messages are the same everywhere.

mod cases;
mod files;
mod hostile;
mod schema;
mod units;
mod values;

use std::path::Path;

use spanhold::diag::Diag;
use spanhold::input::{read_job_text, render};
use spanhold::job::Job;

/// The errors of a text, which must be bad.
fn errors(text: &str) -> Vec<Diag> {
    read_job_text("job.yaml", text, Path::new("tests/cases")).expect_err("bad input")
}

/// The one error of a text or file.
fn only(diags: Vec<Diag>) -> String {
    assert_eq!(diags.len(), 1, "{diags:?}");
    assert!(diags[0].help.is_some(), "no advice: {}", diags[0]);
    diags[0].to_string()
}

fn job(text: &str) -> Job {
    read_job_text("job.yaml", text, Path::new("tests/cases")).unwrap_or_else(|diags| panic!("{}", render(&diags)))
}

const REST: &str = "stock: {diameter: 16}\nmachine: machines/small.yaml\n";

/// A job of these sections (and features), one a line, on the small machine.
fn job_of(shaft: &str) -> String {
    format!("shaft:\n  material: C45\n{shaft}\n{REST}")
}
