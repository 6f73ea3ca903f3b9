//! Progress on stderr during long work. Nothing is shown if stderr is not a terminal.

use crate::lang;
use crate::shown;
use crate::spread::{self, spread};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::time::Duration;

/// Nothing is shown for work shorter than this.
const PATIENCE: Duration = Duration::from_millis(400);
const TICK: Duration = Duration::from_millis(120);

/// A progress line, shown until it is dropped.
pub struct Progress(ProgressBar);

impl Progress {
    /// Shows what is being done.
    pub fn working(what: &'static str) -> Progress {
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr_with_hz(8));
        bar.set_message(what);
        let quiet = ProgressStyle::with_template("{spinner} {msg}, {elapsed}");
        if let Ok(style) = quiet {
            bar.set_style(style);
        }
        bar.enable_steady_tick(PATIENCE.max(TICK));
        Progress(bar)
    }

    /// Shows what is being done, and what the work says of its progress.
    pub fn telling<T>(what: &'static str, work: impl FnOnce() -> T) -> T {
        let progress = Progress::working(what);
        let bar = progress.0.clone();
        spread::telling(move |told| bar.set_message(shown::line(&told).into_owned()), work)
    }

    /// Counts the items that are done, out of a known number.
    pub fn counting(what: &'static str, of: usize) -> Progress {
        let bar = ProgressBar::with_draw_target(Some(of as u64), ProgressDrawTarget::stderr_with_hz(8));
        bar.set_message(what);
        if let Ok(style) = ProgressStyle::with_template(lang::text("progress-counting")) {
            bar.set_style(style);
        }
        Progress(bar)
    }

    /// Adds to the number of items to be done.
    pub fn more(&self, n: usize) {
        self.0.inc_length(n as u64);
    }

    /// Removes the line from the screen.
    pub fn clear(&self) {
        self.0.finish_and_clear();
    }

    /// Counts one more item.
    pub fn done_one(&self) {
        self.0.inc(1);
    }
}

/// Works through a list on all cores and counts the items that are done. Results are in the order of the list.
pub fn spread_counting<L: Sync, T: Send>(what: &'static str, list: &[L], work: impl Fn(&L) -> T + Sync) -> Vec<T> {
    let progress = Progress::counting(what, list.len());
    spread(list, |item, _| {
        let done = work(item);
        progress.done_one();
        done
    })
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.0.finish_and_clear();
    }
}
