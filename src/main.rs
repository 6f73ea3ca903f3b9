//! The door: parse the call, run it, exit with its status.

#![forbid(unsafe_code)]

use std::process::ExitCode;

fn main() -> ExitCode {
    spanhold::cli::run(std::env::args_os())
}
