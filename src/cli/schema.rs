//! `schema`: the JSON Schema of a file.

use super::{Ending, out};
use crate::schema::{File, schema};
use clap::ValueEnum;

/// What `schema` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Kind of file.
    #[arg(value_enum)]
    file: Which,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Which {
    /// The job file.
    Job,
    /// The machine file.
    Machine,
    /// The shop's file.
    Shop,
    /// The readings file of `fit`.
    Readings,
    /// The plan file.
    Plan,
    /// The table of positions of a plan.
    Positions,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    out::json(&schema(match args.file {
        Which::Job => File::Job,
        Which::Machine => File::Machine,
        Which::Shop => File::Shop,
        Which::Readings => File::Readings,
        Which::Plan => File::Plan,
        Which::Positions => File::Positions,
    }))
}
