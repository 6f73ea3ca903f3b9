//! What earlier plans of a job taught: states that broke between the states looked at.
//!
//! The planner looks at stations, a settled draft at states a millimetre apart, and the proof at states of its own. A
//! state that broke is looked at by all of them from then on. If it breaks again, although the samples of the stations
//! pass it, it is shut: no stage may run through it any more. So every round removes one of finitely many choices or
//! adds a place to look at, and planning and proving cannot repeat without end.

use crate::process::State;

/// Turned lengths closer together than this are one place to look at, mm.
const SAME_MM: f64 = 1e-4;

/// Places to look at, and states that are shut.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Lessons {
    /// Turned lengths to look at besides the stations, mm.
    pub look_at_mm: Vec<f64>,
    /// States that broke although their turned length was looked at.
    pub shut: Vec<State>,
    /// Whether stops and grips stay on their stations, because moved ones broke in the proof more than once.
    pub stay: bool,
}

impl Lessons {
    /// Adds a state that broke. False: it was shut already, so nothing is new.
    pub fn learn(&mut self, broken: State) -> bool {
        if !self.look_at_mm.iter().any(|t| (t - broken.turned_mm).abs() < SAME_MM) {
            self.look_at_mm.push(broken.turned_mm);
            return true;
        }
        let new = !self.shut.iter().any(|known| known.is(&broken));
        if new {
            self.shut.push(broken);
        }
        new
    }

    /// Adds all these states. True: at least one was new.
    pub fn learn_all(&mut self, broken: impl IntoIterator<Item = State>) -> bool {
        // `any` would stop at the first new state, and the others would not be added.
        broken.into_iter().filter(|state| self.learn(*state)).count() > 0
    }
}

#[cfg(test)]
mod tests {
    use super::Lessons;
    use crate::process::{Counter, Guide, State};

    #[test]
    fn a_state_is_looked_at_first_then_shut_and_then_nothing_is_new() {
        let at = |turned_mm: f64| State {
            turned_mm,
            counter: Counter::Holds { nose_mm: 20.0 },
            guide: Guide::Bush { headstock_mm: 90.0 },
        };
        let mut lessons = Lessons::default();
        assert!(lessons.learn(at(41.0)) && lessons.shut.is_empty());
        assert!(lessons.learn(at(41.0)) && lessons.shut.len() == 1);
        assert!(!lessons.learn(at(41.0 + 1e-9)), "the same place, rounding aside");
        // The same length under another grip is another state.
        let other = State { counter: Counter::Away, ..at(41.0) };
        assert!(lessons.learn_all([at(41.0), other]) && lessons.look_at_mm == [41.0] && lessons.shut.len() == 2);
    }
}
