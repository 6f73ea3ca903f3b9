//! `new`: a commented job to start from.

use super::{Ending, files, out};
use crate::input::TEMPLATE;
use crate::say;
use std::path::PathBuf;

/// What `new` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// File to write. Default: stdout. An existing file is not overwritten.
    file: Option<PathBuf>,
}

/// Runs it. A file that exists is never overwritten.
pub fn run(args: &Args) -> Ending {
    let Some(path) = &args.file else {
        out::result(TEMPLATE);
        return Ending::Done;
    };
    match files::must_be_new(path).and_then(|()| files::write_one(path, TEMPLATE)) {
        Ok(()) => {
            out::say(&format!("{}\n", say!("new-written", file = path.display().to_string())));
            Ending::Done
        }
        Err(diag) => out::wrong_input(&[diag]),
    }
}
