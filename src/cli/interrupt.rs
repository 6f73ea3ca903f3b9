//! Signals. On Ctrl-C the program first finishes what it is writing into a file. Then it prints one line and exits with
//! the status that shells use.

use super::out;
use crate::say;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// 128 and the number of the signal.
const STATUS: i32 = 130;

/// Held while a file is written, so that an interruption comes before or after it, not in the middle.
static WRITING: Mutex<()> = Mutex::new(());

/// The text that the message about an interruption ends with.
static LEAVES: Mutex<String> = Mutex::new(String::new());

fn open<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Holds off an interruption until the guard is dropped. Never hold it while writing to a pipe, whose reader could
/// block it for ever.
pub fn held_off() -> MutexGuard<'static, ()> {
    open(&WRITING)
}

/// Sets the text that the message about an interruption ends with.
pub fn leaves(what: String) {
    *open(&LEAVES) = what;
}

/// From now on a file that would grow past the limit of the system (`ulimit -f`) is a write error, as on a full disk,
/// and does not end the program without a message: its signal is blocked. Call this before other threads start, so that
/// it holds for all of them.
pub fn no_end_by_size() {
    #[cfg(unix)]
    {
        use nix::sys::signal::{SigSet, Signal};
        let mut waiting = SigSet::empty();
        waiting.add(Signal::SIGXFSZ);
        // If the signal cannot be blocked, it ends the program as before.
        let _ = waiting.thread_block();
    }
}

/// Handles Ctrl-C from now on.
#[expect(clippy::exit, reason = "the signal is answered beside the work, which nothing else would end")]
pub fn listen() {
    // If the signal is ignored, as in a background job of a script, it stays ignored.
    let _ = ctrlc::try_set_handler(|| {
        let _none_half_written = held_off();
        let leaves = open(&LEAVES);
        let said = say!("interrupted");
        out::say(&if leaves.is_empty() { format!("{said}\n") } else { format!("{said} {leaves}\n") });
        std::process::exit(STATUS);
    });
}
