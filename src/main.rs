//! The door: parse the call, run it, exit with its status.

#![forbid(unsafe_code)]
#![warn(clippy::expect_used, clippy::indexing_slicing, clippy::panic, clippy::unreachable, clippy::unwrap_used)]

use std::process::ExitCode;

fn main() -> ExitCode {
    spanhold::cli::run(std::env::args_os())
}
