//! Work spread over all cores, results in the order of the list: the same answers on any number of cores.

use std::cell::RefCell;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};

thread_local! {
    /// What the work of this thread listens to.
    static LISTENS_TO: RefCell<Option<Halt>> = const { RefCell::new(None) };
}

/// Asks work that takes long to stop. Clones ask the same work.
#[derive(Debug, Clone, Default)]
pub struct Halt(Arc<AtomicBool>);

/// What unwinds the work.
struct Halted;

impl Halt {
    /// Asks.
    pub fn ask(&self) {
        self.0.store(true, Ordering::Relaxed);
    }

    /// Does something that stops when it is asked to, wherever it calls [`breathe`]; none: it was stopped.
    ///
    /// The work unwinds, so that no function on the way has to pass the request on; what it holds is dropped.
    pub fn until<T>(&self, work: impl FnOnce() -> T) -> Option<T> {
        let before = LISTENS_TO.replace(Some(self.clone()));
        let done = catch_unwind(AssertUnwindSafe(work));
        LISTENS_TO.replace(before);
        match done {
            Ok(done) => Some(done),
            Err(reason) if reason.is::<Halted>() => None,
            Err(defect) => resume_unwind(defect),
        }
    }
}

/// Called now and then by work that takes long: goes no further when it was asked to stop.
pub fn breathe() {
    let asked = LISTENS_TO.with_borrow(|halt| halt.as_ref().is_some_and(|h| h.0.load(Ordering::Relaxed)));
    if asked {
        // Not a panic: no hook is called, nothing is printed.
        resume_unwind(Box::new(Halted));
    }
}

/// Works out something for everything in a list. `work` gets the thing and its index.
pub fn spread<L: Sync, T: Send>(list: &[L], work: impl Fn(&L, usize) -> T + Sync) -> Vec<T> {
    let slots: Vec<Mutex<Option<T>>> = list.iter().map(|_| Mutex::new(None)).collect();
    let next = AtomicUsize::new(0);
    let workers = std::thread::available_parallelism().map_or(1, usize::from).min(list.len().max(1));
    let halt = LISTENS_TO.with_borrow(Clone::clone);
    let ended: Vec<_> = std::thread::scope(|scope| {
        let work_through = || {
            LISTENS_TO.replace(halt.clone());
            loop {
                let index = next.fetch_add(1, Ordering::Relaxed);
                let Some(item) = list.get(index) else { break };
                let done = work(item, index);
                if let Ok(mut slot) = slots[index].lock() {
                    *slot = Some(done);
                }
            }
        };
        let threads: Vec<_> = (0..workers).map(|_| scope.spawn(work_through)).collect();
        threads.into_iter().map(|thread| thread.join()).collect()
    });
    if let Some(reason) = ended.into_iter().find_map(Result::err) {
        resume_unwind(reason);
    }
    slots.into_iter().filter_map(|slot| slot.into_inner().ok().flatten()).collect()
}

#[cfg(test)]
mod tests {
    use super::{Halt, breathe, spread};

    #[test]
    fn work_stops_where_it_is_asked_to_and_what_comes_after_does_not() {
        let halt = Halt::default();
        let list: Vec<usize> = (0..100).collect();
        let stopped = halt.until(|| {
            spread(&list, |n, _| {
                if *n == 7 {
                    halt.ask();
                }
                breathe();
                *n
            })
        });
        assert_eq!(stopped, None);
        breathe();
        assert_eq!(Halt::default().until(|| spread(&list, |n, _| *n)), Some(list));
    }

    #[test]
    fn results_stand_in_the_order_of_the_list() {
        let list: Vec<usize> = (0..1000).collect();
        let doubled = super::spread(&list, |n, index| n + index);
        assert_eq!(doubled, list.iter().map(|n| 2 * n).collect::<Vec<_>>());
    }
}
