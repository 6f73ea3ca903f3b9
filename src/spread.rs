//! Work spread over all cores, results in the order of the list: the same answers on any number of cores.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

/// Works out something for everything in a list. `work` gets the thing and its index.
pub fn spread<L: Sync, T: Send>(list: &[L], work: impl Fn(&L, usize) -> T + Sync) -> Vec<T> {
    spread_on(std::thread::available_parallelism().map_or(1, usize::from), list, work)
}

/// The same on so many cores at most.
pub fn spread_on<L: Sync, T: Send>(cores: usize, list: &[L], work: impl Fn(&L, usize) -> T + Sync) -> Vec<T> {
    let slots: Vec<Mutex<Option<T>>> = list.iter().map(|_| Mutex::new(None)).collect();
    let next = AtomicUsize::new(0);
    let workers = cores.clamp(1, list.len().max(1));
    std::thread::scope(|scope| {
        for _ in 0..workers {
            scope.spawn(|| {
                loop {
                    let index = next.fetch_add(1, Ordering::Relaxed);
                    let Some(item) = list.get(index) else { break };
                    let done = work(item, index);
                    if let Ok(mut slot) = slots[index].lock() {
                        *slot = Some(done);
                    }
                }
            });
        }
    });
    slots.into_iter().filter_map(|slot| slot.into_inner().ok().flatten()).collect()
}

#[cfg(test)]
mod tests {
    #[test]
    fn results_stand_in_the_order_of_the_list() {
        let list: Vec<usize> = (0..1000).collect();
        let doubled = super::spread(&list, |n, index| n + index);
        assert_eq!(doubled, list.iter().map(|n| 2 * n).collect::<Vec<_>>());
    }
}
