//! Signals. Ctrl-C: what is being written into a file is finished first, then one line says so, and the status is the one that
//! shells give.

use super::out;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// 128 and the number of the signal.
const STATUS: i32 = 130;

/// Held while a file is written, so that an interruption falls before or behind it.
static WRITING: Mutex<()> = Mutex::new(());

/// What there is after an interruption.
static LEAVES: Mutex<String> = Mutex::new(String::new());

fn open<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Keeps an interruption off until it is dropped. Never held where the other end of a pipe may keep it for ever.
pub fn held_off() -> MutexGuard<'static, ()> {
    open(&WRITING)
}

/// What is said of an interruption from now on.
pub fn leaves(what: String) {
    *open(&LEAVES) = what;
}

/// A file that would grow past the limit of the system (`ulimit -f`) is an error of writing from now on, as a full disk is, and
/// no end without a word: its signal waits. Asked before there are other threads, it is so of all.
pub fn no_end_by_size() {
    #[cfg(unix)]
    {
        use nix::sys::signal::{SigSet, Signal};
        let mut waiting = SigSet::empty();
        waiting.add(Signal::SIGXFSZ);
        // Where it cannot be had it ends as it did.
        let _ = waiting.thread_block();
    }
}

/// Listens from now on.
#[expect(clippy::exit, reason = "the signal is answered beside the work, which nothing else would end")]
pub fn listen() {
    // Where it is ignored, as of a job in the background of a script, it stays so.
    let _ = ctrlc::try_set_handler(|| {
        let _none_half_written = held_off();
        let leaves = open(&LEAVES);
        out::say(&if leaves.is_empty() { "interrupted\n".to_owned() } else { format!("interrupted: {leaves}\n") });
        std::process::exit(STATUS);
    });
}
