//! Spreads work over all cores. Results are in the order of the list, so they do not depend on the number of cores.

use crate::lang;
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::ops::{ControlFlow, Range};
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, OnceLock, PoisonError, mpsc};
use std::thread::LocalKey;

thread_local! {
    /// The [`Halt`] that can stop the work of this thread.
    static LISTENS_TO: RefCell<Option<Halt>> = const { RefCell::new(None) };
    /// The [`Allowance`] of steps for the work of this thread.
    static MAY_TAKE: RefCell<Option<Allowance>> = const { RefCell::new(None) };
    /// Whether the work of this thread is already part of spread work.
    static SPREAD: Cell<bool> = const { Cell::new(false) };
    /// Receiver of progress messages from the work of this thread.
    static TELLS: RefCell<Option<Told>> = const { RefCell::new(None) };
}

/// Receiver of progress messages.
type Told = Arc<dyn Fn(String) + Send + Sync>;

/// Does work that reports its progress by [`tell`]; `told` receives the messages.
pub fn telling<T>(told: impl Fn(String) + Send + Sync + 'static, work: impl FnOnce() -> T) -> T {
    let before = TELLS.replace(Some(Arc::new(told)));
    let done = work();
    TELLS.replace(before);
    done
}

/// Reports the progress of long work to the receiver, if there is one.
pub fn tell(what: impl FnOnce() -> String) {
    if let Some(told) = TELLS.with_borrow(Clone::clone) {
        told(what());
    }
}

/// Can ask long work to stop, and counts its steps. All clones belong to the same work.
#[derive(Debug, Clone, Default)]
pub struct Halt(Arc<Pulse>);

#[derive(Debug, Default)]
struct Pulse {
    asked: AtomicBool,
    steps: AtomicU64,
}

/// Payload with which work unwinds when it was asked to stop.
struct Halted;

/// A number of steps that work may use, in one part or in several. Unlike a time limit, this bound does not depend on a
/// clock or on other work on the machine.
#[derive(Debug, Clone)]
pub struct Allowance(Arc<AtomicU64>);

/// Payload with which work unwinds when its allowance is used up.
struct Spent;

impl Allowance {
    /// An allowance of `steps` steps.
    pub fn of(steps: u64) -> Allowance {
        Allowance(Arc::new(AtomicU64::new(steps)))
    }

    /// Does work. None if it needs more steps than are left.
    pub fn until<T>(&self, work: impl FnOnce() -> T) -> Option<T> {
        unless::<Spent, _, _>(&MAY_TAKE, self.clone(), work)
    }

    /// Number of steps left.
    pub fn left(&self) -> u64 {
        self.0.load(Ordering::Relaxed)
    }

    /// Whether no steps are left.
    pub fn is_spent(&self) -> bool {
        self.0.load(Ordering::Relaxed) == 0
    }

    /// Uses steps, and tells whether enough were left.
    fn take(&self, steps: u64) -> bool {
        let taken = |left: u64| Some(left.saturating_sub(steps));
        self.0.fetch_update(Ordering::Relaxed, Ordering::Relaxed, taken).is_ok_and(|left| left >= steps)
    }
}

impl Halt {
    /// Asks the work to stop.
    pub fn ask(&self) {
        self.0.asked.store(true, Ordering::Relaxed);
    }

    /// Number of steps the work has taken. Unlike time, this measure does not depend on a clock or on other work on the machine.
    pub fn steps(&self) -> u64 {
        self.0.steps.load(Ordering::Relaxed)
    }

    /// Does work that stops at its next call of [`checkpoint`] when it is asked to. None if it was stopped.
    ///
    /// The work unwinds, so that no function between has to pass the request on. Everything the work owns is dropped.
    pub fn until<T>(&self, work: impl FnOnce() -> T) -> Option<T> {
        unless::<Halted, _, _>(&LISTENS_TO, self.clone(), work)
    }
}

/// Does work that stops at its next call of [`checkpoint`] when the work around it is asked to stop. None if it was stopped: then the work
/// around it can still tell what it has, if it makes no more calls.
pub fn unless_asked_to_stop<T>(work: impl FnOnce() -> T) -> Option<T> {
    match LISTENS_TO.with_borrow(Clone::clone) {
        Some(halt) => halt.until(work),
        None => Some(work()),
    }
}

/// Does work with `heeds` (a halt or an allowance) in its slot of this thread. None if the work unwound for the given
/// reason; with any other reason the unwinding continues.
fn unless<Reason: 'static, L, T>(
    slot: &'static LocalKey<RefCell<Option<L>>>,
    heeds: L,
    work: impl FnOnce() -> T,
) -> Option<T> {
    let before = slot.replace(Some(heeds));
    let done = catch_unwind(AssertUnwindSafe(work));
    slot.replace(before);
    match done {
        Ok(done) => Some(done),
        Err(reason) if reason.is::<Reason>() => None,
        Err(other) => resume_unwind(other),
    }
}

/// Long work calls this from time to time. It unwinds the work if the work was asked to stop or its allowance is used up.
pub fn checkpoint() {
    checkpoint_worth(1);
}

/// As [`checkpoint`], for work that counts as `steps` steps. A step is about a microsecond of work.
pub fn checkpoint_worth(steps: u64) {
    let asked = LISTENS_TO.with_borrow(|halt| {
        halt.as_ref().is_some_and(|h| {
            h.0.steps.fetch_add(steps, Ordering::Relaxed);
            h.0.asked.load(Ordering::Relaxed)
        })
    });
    // `resume_unwind` instead of a panic: no panic hook is called and nothing is printed.
    if asked {
        resume_unwind(Box::new(Halted));
    }
    if MAY_TAKE.with_borrow(|may| may.as_ref().is_some_and(|may| !may.take(steps))) {
        resume_unwind(Box::new(Spent));
    }
}

/// Restores the former value of `SPREAD` when dropped, also when the work unwinds.
struct Spread(bool);

impl Drop for Spread {
    fn drop(&mut self) {
        SPREAD.set(self.0);
    }
}

/// Computes a result for each item of a list, in any order. `work` gets the item and its index. Neighbours in the list
/// stay on one core where possible. Spread work that is called from spread work stays on the core of its caller.
pub fn spread<L: Sync, T: Send>(list: &[L], work: impl Fn(&L, usize) -> T + Sync) -> Vec<T> {
    spread_on(cores(), list, work)
}

/// Number of cores. The system is asked only once, because it reads the answer from several files.
fn cores() -> usize {
    static CORES: OnceLock<usize> = OnceLock::new();
    *CORES.get_or_init(|| std::thread::available_parallelism().map_or(1, usize::from))
}

/// Number of cores for further work here: one in work that is spread already. Use it for the order of work only, never for its result.
pub fn free_cores() -> usize {
    if SPREAD.get() { 1 } else { cores() }
}

/// As [`spread`], on at most `cores` cores.
pub fn spread_on<L: Sync, T: Send>(cores: usize, list: &[L], work: impl Fn(&L, usize) -> T + Sync) -> Vec<T> {
    let workers = if SPREAD.get() { 1 } else { cores.clamp(1, list.len().max(1)) };
    // With one core asked for, spread work inside `work` must not use more cores either.
    let _alone = (cores == 1).then(|| Spread(SPREAD.replace(true)));
    if workers == 1 {
        return list.iter().enumerate().map(|(index, item)| work(item, index)).collect();
    }
    let slots: Vec<Mutex<Option<T>>> = list.iter().map(|_| Mutex::new(None)).collect();
    let share = |worker: usize| worker * list.len() / workers;
    let left = Mutex::new((0..workers).map(|w| share(w)..share(w + 1)).collect::<Vec<Range<usize>>>());
    // The next item of the worker's own range. If it is empty: the last item of the longest range left.
    let next = |worker: usize| {
        let mut left = lock(&left);
        left[worker].next().or_else(|| left.iter_mut().max_by_key(|range| range.len())?.next_back())
    };
    let halt = LISTENS_TO.with_borrow(Clone::clone);
    let (told, may_take) = (TELLS.with_borrow(Clone::clone), MAY_TAKE.with_borrow(Clone::clone));
    let spoken = lang::spoken();
    let work_through = |worker: usize| {
        while let Some(index) = next(worker) {
            *lock(&slots[index]) = Some(work(&list[index], index));
        }
    };
    let ended: Vec<_> = std::thread::scope(|scope| {
        let others = 1..workers;
        let threads: Vec<_> = others
            .map(|worker| {
                let (halt, told, may_take, work_through) = (&halt, &told, &may_take, &work_through);
                scope.spawn(move || {
                    SPREAD.set(true);
                    LISTENS_TO.replace(halt.clone());
                    TELLS.replace(told.clone());
                    MAY_TAKE.replace(may_take.clone());
                    lang::speak(spoken);
                    work_through(worker);
                })
            })
            .collect();
        let _spread = Spread(SPREAD.replace(true));
        let own = catch_unwind(AssertUnwindSafe(|| work_through(0)));
        threads.into_iter().map(|thread| thread.join()).chain([own]).collect()
    });
    if let Some(reason) = ended.into_iter().find_map(Result::err) {
        resume_unwind(reason);
    }
    slots.into_iter().filter_map(|slot| slot.into_inner().unwrap_or_else(PoisonError::into_inner)).collect()
}

/// Results of [`stream`], per core, that may wait for an earlier result. There are enough that one long item among
/// short ones does not leave the other cores idle.
const WAITING_EACH: usize = 32;

/// Works through a list that may be larger than memory. Items are taken from it one by one and results are handed to
/// `done` in the order of the list. No more than a few dozen results per core wait for an earlier one. `done` may end
/// the work early.
pub fn stream<L: Send, T: Send>(
    list: impl Iterator<Item = L> + Send,
    work: impl Fn(L) -> T + Sync,
    mut done: impl FnMut(T) -> ControlFlow<()>,
) {
    let (workers, spoken) = (cores(), lang::spoken());
    let window = workers * WAITING_EACH;
    let list = Mutex::new(list.enumerate().fuse());
    // Number of results handed to `done`; `usize::MAX` ends the work.
    let (handed_on, changed) = (Mutex::new(0_usize), Condvar::new());
    let (send, receive) = mpsc::channel();
    std::thread::scope(|scope| {
        for _ in 0..workers {
            let send = send.clone();
            let (list, work, handed_on, changed) = (&list, &work, &handed_on, &changed);
            scope.spawn(move || {
                SPREAD.set(true);
                lang::speak(spoken);
                loop {
                    // Only one thread at a time asks for the next item, because the list may have to wait for its source.
                    let (index, item) = {
                        let mut list = lock(list);
                        let Some((index, item)) = lang::apart(|| list.next()) else { break };
                        let mut so_far = lock(handed_on);
                        while *so_far != usize::MAX && index >= so_far.saturating_add(window) {
                            so_far = changed.wait(so_far).unwrap_or_else(PoisonError::into_inner);
                        }
                        if *so_far == usize::MAX {
                            break;
                        }
                        (index, item)
                    };
                    if send.send((index, lang::apart(|| work(item)))).is_err() {
                        break;
                    }
                }
            });
        }
        drop(send);
        let (mut next, mut early) = (0, BTreeMap::new());
        for (index, result) in receive {
            early.insert(index, result);
            while let Some(result) = early.remove(&next) {
                next += 1;
                let goes_on = done(result).is_continue();
                *lock(&handed_on) = if goes_on { next } else { usize::MAX };
                changed.notify_all();
                if !goes_on {
                    return;
                }
            }
        }
    });
}

/// The largest number found so far by any core; zero at first. It depends on the progress of the other cores, so use it only to
/// skip work, never in a way that changes a result.
#[derive(Debug, Default)]
pub struct Largest(AtomicU64);

impl Largest {
    /// The largest so far.
    pub fn so_far(&self) -> f64 {
        f64::from_bits(self.0.load(Ordering::Relaxed))
    }

    /// Notes one more number; a negative one counts as zero.
    pub fn note(&self, number: f64) {
        // The bit patterns of non-negative floats have the same order as their values.
        self.0.fetch_max(number.max(0.0).to_bits(), Ordering::Relaxed);
    }
}

/// Locks a mutex, even if a worker panicked while holding it: no worker leaves the data in a half-changed state.
pub fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

#[cfg(test)]
mod tests {
    use super::{Allowance, Halt, checkpoint, checkpoint_worth, spread, spread_on};
    use std::ops::ControlFlow;
    use std::sync::atomic::{AtomicUsize, Ordering};

    #[test]
    fn work_takes_what_it_may_and_no_more_on_any_core() {
        let allowance = Allowance::of(100);
        assert_eq!(allowance.until(|| (0..40).for_each(|_| checkpoint())), Some(()));
        // Steps on other cores count too, and work without an allowance goes on.
        let list: Vec<u64> = (0..40).collect();
        assert_eq!(
            allowance.until(|| spread_on(4, &list, |n, _| {
                checkpoint();
                *n
            })
            .len()),
            Some(40)
        );
        assert!(!allowance.is_spent());
        assert_eq!(allowance.until(|| checkpoint_worth(21)), None);
        assert!(allowance.is_spent());
        checkpoint_worth(1_000);
        // A stop asked for from outside is not mistaken for a used-up allowance.
        let halt = Halt::default();
        halt.ask();
        assert!(halt.until(|| Allowance::of(100).until(checkpoint)).is_none());
    }

    #[test]
    fn spread_work_keeps_its_order_and_spreads_no_further() {
        let here = std::thread::current().id();
        let list: Vec<usize> = (0..100).collect();
        let inner = |n: &usize| {
            let mine = std::thread::current().id();
            let threads = super::spread_on(4, &[1, 2, 3], |m, _| (n * m, std::thread::current().id()));
            assert!(threads.iter().all(|(_, id)| *id == mine), "what is spread already goes on where it is");
            threads.into_iter().map(|(product, _)| product).sum::<usize>()
        };
        let expected: Vec<usize> = list.iter().map(|n| 6 * n).collect();
        assert_eq!(super::spread_on(3, &list, |n, _| inner(n)), expected);
        let alone = super::spread_on(1, &list, |n, _| (inner(n), std::thread::current().id()));
        assert!(alone.iter().all(|(_, id)| *id == here));
        // Afterwards work is spread again, also after work was stopped.
        let halt = Halt::default();
        halt.ask();
        assert!(halt.until(|| super::spread_on(1, &list, |_, _| checkpoint())).is_none());
        assert!(halt.until(|| super::spread_on(2, &list, |_, _| checkpoint())).is_none());
        let both = std::sync::Barrier::new(2);
        super::spread_on(2, &[1, 2], |_, _| both.wait());
    }

    #[test]
    fn a_stream_keeps_its_order_and_runs_only_a_window_ahead() {
        let (taken, mut handed_on, mut most) = (AtomicUsize::new(0), 0_usize, 0);
        let list = (0..5000_usize).inspect(|_| {
            taken.fetch_add(1, Ordering::SeqCst);
        });
        super::stream(
            list,
            |n| 3 * n,
            |tripled| {
                assert_eq!(tripled, 3 * handed_on);
                most = most.max(taken.load(Ordering::SeqCst) - handed_on);
                handed_on += 1;
                ControlFlow::Continue(())
            },
        );
        assert_eq!(handed_on, 5000);
        let workers = std::thread::available_parallelism().map_or(1, usize::from);
        assert!(most <= workers * (super::WAITING_EACH + 1) + 1, "{most} were taken ahead");
    }

    #[test]
    fn a_stream_without_an_end_can_be_ended() {
        let mut handed_on = 0;
        super::stream(
            0..,
            |n: usize| n,
            |_| {
                handed_on += 1;
                if handed_on < 700 { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
            },
        );
        assert_eq!(handed_on, 700);
    }

    #[test]
    fn work_stops_where_it_is_asked_to_and_what_comes_after_does_not() {
        let halt = Halt::default();
        let list: Vec<usize> = (0..100).collect();
        let stopped = halt.until(|| {
            spread(&list, |n, _| {
                if *n == 7 {
                    halt.ask();
                }
                checkpoint();
                *n
            })
        });
        assert_eq!(stopped, None);
        checkpoint();
        assert_eq!(Halt::default().until(|| spread(&list, |n, _| *n)), Some(list));
    }

    #[test]
    fn the_largest_is_that_of_all_cores() {
        let largest = super::Largest::default();
        assert_eq!(largest.so_far(), 0.0);
        let list: Vec<u32> = (0..1000).collect();
        super::spread_on(4, &list, |n, _| largest.note(f64::from(n % 77) / 7.0 - 1.0));
        assert_eq!(largest.so_far(), 76.0 / 7.0 - 1.0);
        largest.note(f64::NAN);
        largest.note(-3.0);
        assert_eq!(largest.so_far(), 76.0 / 7.0 - 1.0);
        largest.note(f64::INFINITY);
        assert_eq!(largest.so_far(), f64::INFINITY);
    }

    #[test]
    fn results_stand_in_the_order_of_the_list() {
        let list: Vec<usize> = (0..1000).collect();
        let doubled = super::spread(&list, |n, index| n + index);
        assert_eq!(doubled, list.iter().map(|n| 2 * n).collect::<Vec<_>>());
    }
}
