//! Works in a row on two spindles, part after part: when each begins, and how often a part comes off.
//!
//! The works of a part follow one another. Each takes the headstock side, the counter-spindle side, or both. A side
//! does one thing at a time and takes the parts in order. So a work begins when its part and its sides are ready, and
//! the pattern repeats from the second part on at the latest.

/// Which spindles a work takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The headstock alone.
    Headstock,
    /// Both hold the part.
    Both,
    /// The counter-spindle alone.
    Counter,
}

impl Side {
    /// Its word in a plan file.
    pub fn key(self) -> &'static str {
        match self {
            Side::Headstock => "headstock",
            Side::Both => "both",
            Side::Counter => "counter_spindle",
        }
    }

    fn headstock(self) -> bool {
        self != Side::Counter
    }

    fn counter(self) -> bool {
        self != Side::Headstock
    }
}

/// The times of one part.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// When the headstock begins with the part, s. If a bar is loaded for it, loading begins then.
    pub start_s: f64,
    /// When each of its works begins, s.
    pub begins_s: Vec<f64>,
    /// When the last of them ends, s.
    pub end_s: f64,
}

/// The times of parts in a row. `loads_s`: time to load a bar before each part, s; 0: no bar is loaded.
pub fn run(works: &[(Side, f64)], loads_s: &[f64]) -> Vec<Part> {
    let (mut headstock, mut counter) = (0.0, 0.0);
    let one = |load: &f64| {
        let start_s = headstock;
        headstock += load;
        let mut at: f64 = headstock;
        let mut begins_s = Vec::with_capacity(works.len());
        for (side, seconds) in works {
            if side.headstock() {
                at = at.max(headstock);
            }
            if side.counter() {
                at = at.max(counter);
            }
            begins_s.push(at);
            at += seconds;
            if side.headstock() {
                headstock = at;
            }
            if side.counter() {
                counter = at;
            }
        }
        Part { start_s, begins_s, end_s: at }
    };
    loads_s.iter().map(one).collect()
}

/// Time from a part to the next in the steady run, if a bar is loaded before the first of the two, s.
pub fn period_s(works: &[(Side, f64)], load_s: f64) -> f64 {
    let parts = run(works, &[0.0, 0.0, 0.0, load_s, 0.0]);
    parts[4].start_s - parts[3].start_s
}

/// Mean time from part to part over the parts of one bar, s.
pub fn mean_s(works: &[(Side, f64)], load_s: f64, pieces_per_bar: f64) -> f64 {
    ((pieces_per_bar - 1.0) * period_s(works, 0.0) + period_s(works, load_s)) / pieces_per_bar
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Tries the works in every order that keeps the order within each part. `best` is the earliest end of all works,
    /// which no schedule can beat.
    struct Brute<'a> {
        works: &'a [(Side, f64)],
        best: f64,
    }

    impl Brute<'_> {
        /// `done`: finished works of each part; `ready`: when each part is ready; `free`: when each side is free;
        /// `held`: the part in the counter-spindle.
        fn search(&mut self, done: &mut [usize], ready: &mut [f64], free: [f64; 2], held: Option<usize>) {
            let late = ready.iter().copied().fold(0.0, f64::max);
            if late >= self.best - 1e-12 {
                return;
            }
            if done.iter().all(|d| *d == self.works.len()) {
                self.best = late;
                return;
            }
            for part in 0..done.len() {
                let Some((side, seconds)) = self.works.get(done[part]).copied() else { continue };
                // A part in the counter-spindle stays there until its last work there.
                if side.counter() && held.is_some_and(|h| h != part) {
                    continue;
                }
                // The headstock makes the parts in order.
                if side.headstock() && (0..part).any(|p| self.works[done[p]..].iter().any(|w| w.0.headstock())) {
                    continue;
                }
                let sides = [side.headstock(), side.counter()];
                let at = (0..2).filter(|i| sides[*i]).map(|i| free[i]).fold(ready[part], f64::max);
                let end = at + seconds;
                let before = ready[part];
                let next = [0, 1].map(|i| if sides[i] { end } else { free[i] });
                done[part] += 1;
                ready[part] = end;
                let more = self.works[done[part]..].iter().any(|w| w.0.counter());
                let now_held = if side.counter() { more.then_some(part) } else { held };
                self.search(done, ready, next, now_held);
                done[part] -= 1;
                ready[part] = before;
            }
        }
    }

    fn least_s(works: &[(Side, f64)], parts: usize) -> f64 {
        let mut brute = Brute { works, best: f64::INFINITY };
        brute.search(&mut vec![0; parts], &mut vec![0.0; parts], [0.0; 2], None);
        brute.best
    }

    /// Random small jobs: works of the free stage, works that both spindles hold, works on the rear end. No order of
    /// their works ends earlier than ours, and the time from part to part is that of the closed form.
    #[test]
    fn no_order_of_the_works_is_done_earlier() {
        let mut rng = fastrand::Rng::with_seed(7);
        let (mut waits, mut hides) = (0, 0);
        for _ in 0..150 {
            let mut works: Vec<(Side, f64)> = Vec::new();
            for (side, most) in [(Side::Headstock, 2), (Side::Both, 3), (Side::Counter, 2)] {
                let least = usize::from(side == Side::Both);
                let n = rng.usize(least..=most);
                works.extend((0..n).map(|_| (side, 1.0 + rng.f64() * 9.0)));
            }
            let parts = 3;
            let ours = run(&works, &vec![0.0; parts]).last().map_or(0.0, |p| p.end_s);
            let all = run(&works, &vec![0.0; parts]).iter().map(|p| p.end_s).fold(ours, f64::max);
            let least = least_s(&works, parts);
            assert!((all - least).abs() < 1e-9, "{works:?}: {all} {least}");
            let sum = |s: Side| works.iter().filter(|w| w.0 == s).map(|w| w.1).sum::<f64>();
            let (first, both, rear) = (sum(Side::Headstock), sum(Side::Both), sum(Side::Counter));
            let period = period_s(&works, 0.0);
            assert!((period - (both + first.max(rear))).abs() < 1e-9, "{works:?}");
            // The brute-force schedule takes the same time from part to part.
            let each = least_s(&works, parts + 1) - least;
            assert!((each - period).abs() < 1e-9, "{works:?}: {each} {period}");
            waits += usize::from(rear > first);
            hides += usize::from(rear > 0.0 && rear < first);
        }
        assert!(waits > 20 && hides > 20, "{waits} {hides}");
    }

    #[test]
    fn a_new_bar_gives_the_counter_spindle_time() {
        let works = [(Side::Headstock, 10.0), (Side::Both, 20.0), (Side::Counter, 25.0)];
        assert_eq!(period_s(&works, 0.0), 45.0);
        assert_eq!(period_s(&works, 20.0), 50.0);
        assert_eq!(mean_s(&works, 20.0, 5.0), 46.0);
    }
}
