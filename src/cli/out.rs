//! Printing: results to stdout, everything else to stderr. Characters that would control a terminal are written out.

use super::{Ending, style};
use crate::defect::Defect;
use crate::diag::Diag;
use crate::drawings;
use crate::input;
use crate::report::Styled;
use crate::say;
use crate::shown;
use std::backtrace::{Backtrace, BacktraceStatus};
use std::io::{ErrorKind, Write};
use std::sync::atomic::{AtomicBool, Ordering};

/// Whether a result could not be printed.
static UNPRINTED: AtomicBool = AtomicBool::new(false);

/// Prints a result. A reader that closes the pipe has seen enough: this is no error.
pub fn result(text: &str) {
    written(shown::lines(text).as_bytes());
}

fn written(bytes: &[u8]) {
    let mut stdout = std::io::stdout().lock();
    let written = stdout.write_all(bytes).and_then(|()| stdout.flush());
    if let Err(e) = written
        && e.kind() != ErrorKind::BrokenPipe
    {
        say(&format!("{}\n", say!("result-not-printed", reason = e.to_string())));
        UNPRINTED.store(true, Ordering::Relaxed);
    }
}

/// Prints a result with what stands out in it: bold and coloured on a terminal, plain everywhere else.
pub fn styled(text: &Styled) {
    written(style::painted(text, style::wanted()).as_bytes());
}

/// The ending of the call: a result that could not be printed turns an ending into [`Ending::WrongInput`].
pub fn ended(ending: Ending) -> Ending {
    match ending {
        Ending::Done | Ending::NotFeasible if UNPRINTED.load(Ordering::Relaxed) => Ending::WrongInput,
        other => other,
    }
}

/// Prints a JSON document.
pub fn json(value: &impl serde::Serialize) -> Ending {
    match serde_json::to_string_pretty(value) {
        Ok(mut text) => {
            text.push('\n');
            result(&text);
            Ending::Done
        }
        Err(e) => defect(&Defect(format!("the result could not be written as JSON: {e}"))),
    }
}

/// Prints a message on stderr. If even stderr is closed, the message is lost.
pub fn say(text: &str) {
    let _ = std::io::stderr().lock().write_all(shown::lines(text).as_bytes());
}

/// Prints panics like every other message. A panic of a library on a broken file is left out: an error is reported for
/// it.
pub fn tell_panics() {
    std::panic::set_hook(Box::new(|panic| {
        if drawings::is_caught() {
            return;
        }
        let trace = Backtrace::capture();
        let trace = if trace.status() == BacktraceStatus::Captured { format!("{trace}") } else { String::new() };
        say(&format!("{panic}\n{trace}"));
    }));
}

/// Tells what is wrong with the input.
pub fn wrong_input(diags: &[Diag]) -> Ending {
    let mut text = input::render(diags);
    if !text.ends_with('\n') {
        text.push('\n');
    }
    say(&text);
    Ending::WrongInput
}

/// Prints that this program has an error.
pub fn defect(defect: &Defect) -> Ending {
    say(&format!("{}\n", say!("defect-of-program-because", reason = defect.to_string())));
    Ending::Defect
}
