//! The door: parse the call, run it, exit with its status.

#![forbid(unsafe_code)]
#![warn(clippy::expect_used, clippy::indexing_slicing, clippy::panic, clippy::unreachable, clippy::unwrap_used)]

use std::process::ExitCode;

fn main() -> ExitCode {
    // On Windows no shell finds the files of `jobs/*.yaml`.
    #[cfg(windows)]
    let call = wild::args_os();
    #[cfg(not(windows))]
    let call = std::env::args_os();
    spanhold::cli::run(call)
}
