//! The door: parse the call, run it, exit with its status.

use std::process::ExitCode;

fn main() -> ExitCode {
    spanhold::cli::run(std::env::args_os())
}
