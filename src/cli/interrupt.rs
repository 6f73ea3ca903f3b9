//! Signals. On Ctrl-C the program first finishes what it is writing into a file. Then it prints one line and exits with
//! the status that shells use. Work that can tell what it has so far is asked to stop first; a second Ctrl-C ends it at once.

use super::out;
use crate::say;
use crate::spread::Halt;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// 128 and the number of the signal.
pub const STATUS: u8 = 130;

/// Held while a file is written, so that an interruption comes before or after it, not in the middle.
static WRITING: Mutex<()> = Mutex::new(());

/// The text that the message about an interruption ends with.
static LEAVES: Mutex<String> = Mutex::new(String::new());

/// The work that Ctrl-C asks to stop.
static WORK: Mutex<Option<Halt>> = Mutex::new(None);

/// Whether Ctrl-C has asked some work to stop.
static ASKED: AtomicBool = AtomicBool::new(false);

/// Does work that Ctrl-C asks to stop. None: it was stopped and has nothing to tell.
pub fn heeding<T>(work: impl FnOnce() -> T) -> Option<T> {
    let halt = Halt::default();
    *open(&WORK) = Some(halt.clone());
    let done = halt.until(work);
    *open(&WORK) = None;
    done
}

/// Whether Ctrl-C has asked some work to stop.
pub fn asked() -> bool {
    ASKED.load(Ordering::Relaxed)
}

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
        if let Some(halt) = open(&WORK).take() {
            ASKED.store(true, Ordering::Relaxed);
            halt.ask();
            return;
        }
        let _none_half_written = held_off();
        let leaves = open(&LEAVES);
        let said = say!("interrupted");
        out::say(&if leaves.is_empty() { format!("{said}\n") } else { format!("{said} {leaves}\n") });
        std::process::exit(i32::from(STATUS));
    });
}
