//! `new`: a commented job or shop's file to start from.

use super::{Ending, files, out};
use crate::input::{TEMPLATE, shop};
use crate::say;
use std::path::{Path, PathBuf};

/// What `new` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// `shop` for a shop's file, and then the file to write; else the job file to write. Default: a job, to stdout. An existing file is
    /// not overwritten.
    #[arg(value_name = "shop|FILE")]
    what: Option<PathBuf>,
    /// File to write, after `shop`.
    file: Option<PathBuf>,
}

/// Runs it. A file that exists is never overwritten.
pub fn run(args: &Args) -> Ending {
    let of_shop = args.what.as_deref() == Some(Path::new("shop"));
    let (text, path) = match (of_shop, &args.what, &args.file) {
        (true, _, file) => (shop::TEMPLATE, file.as_ref()),
        (false, file, None) => (TEMPLATE, file.as_ref()),
        (false, _, Some(second)) => {
            let diag = crate::diag::Diag::new(say!("new-two-files", file = second.display().to_string()));
            return out::wrong_input(&[diag.help(say!("new-two-files-help"))]);
        }
    };
    let Some(path) = path else {
        out::result(text);
        return Ending::Done;
    };
    match files::must_be_new(path).and_then(|()| files::write_one(path, text)) {
        Ok(()) => {
            let file = path.display().to_string();
            let told = if of_shop { say!("new-shop-written", file = file) } else { say!("new-written", file = file) };
            out::say(&format!("{told}\n"));
            Ending::Done
        }
        Err(diag) => out::wrong_input(&[diag]),
    }
}
