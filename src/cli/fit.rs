//! `fit`: stiffnesses from readings on the machine.

use super::{Ending, Format, files, out};
use crate::fit::fit;
use crate::input;
use crate::report;
use std::path::PathBuf;

/// What `fit` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The readings file.
    readings: PathBuf,
    /// Machine file to use instead of the machine in the readings file.
    #[arg(long, value_name = "FILE")]
    machine: Option<PathBuf>,
    /// File for the lines of the machine file. Default: stdout. An existing file is not overwritten.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

/// Runs it. Readings that do not determine what is to be fitted are wrong input.
pub fn run(args: &Args) -> Ending {
    if let Err(diag) = args.out.as_deref().map_or(Ok(()), files::must_be_new) {
        return out::wrong_input(&[diag]);
    }
    let readings = match input::read_readings(&args.readings, args.machine.as_deref()) {
        Ok(readings) => readings,
        Err(diags) => return out::wrong_input(&diags),
    };
    let fitted = match fit(&readings) {
        Ok(fitted) => fitted,
        Err(diag) => return out::wrong_input(&[diag]),
    };
    let fragment = report::fitted_yaml(&fitted);
    if let Some(path) = &args.out
        && let Err(diag) = files::write_one(path, &fragment)
    {
        return out::wrong_input(&[diag]);
    }
    match (args.format, &args.out) {
        (Format::Json, _) => return out::json(&fitted),
        (Format::Text, Some(_)) => out::result(&report::fitted_text(&fitted)),
        (Format::Text, None) => out::result(&fragment),
    }
    Ending::Done
}
