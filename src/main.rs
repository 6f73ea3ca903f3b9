//! The program: reads the command line, runs the command and exits with its status.

#![forbid(unsafe_code)]
#![warn(clippy::expect_used, clippy::indexing_slicing, clippy::panic, clippy::unreachable, clippy::unwrap_used)]

use std::process::ExitCode;

fn main() -> ExitCode {
    // Shells on Windows do not expand `jobs/*.yaml`, so the program does it.
    #[cfg(windows)]
    let call = wild::args_os();
    #[cfg(not(windows))]
    let call = std::env::args_os();
    spanhold::cli::run(call)
}
