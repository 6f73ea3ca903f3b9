//! The cheapest set of changes with which there is a plan.
//!
//! Sets are looked at in the order of their prices. A set without a plan gives a conflict: changes of which any larger set needs at least
//! one. Only sets with such a change are looked at further, so most sets are never tried. This is the search for hitting sets of conflicts
//! (R. Reiter, A theory of diagnosis from first principles, Artificial Intelligence 32, 1987, memory), by price instead of by size.
//!
//! A conflict is proven, not guessed: all other changes are made together, and there is still no plan. That proves it because a change
//! without a group only adds possibilities. Changes of a group, such as bar diameters, may also harm. They are in no conflict; they are
//! tried with every set, and a conflict counts only for sets with the same changes of groups.

use crate::defect::Defect;
use crate::job::{ChangeKind, Holding, Job};
use crate::planner::advice::candidate::{Candidate, Role};
use crate::planner::advice::lifting::lifts;
use crate::planner::advice::tries::{passes_within, spread, values};
use crate::planner::quick::stopped_by;
use crate::say;
use crate::spread::{Allowance, unless_asked_to_stop};
use std::collections::{BTreeMap, BTreeSet};

/// Largest number of changes in a set.
pub const MOST_CHANGES: usize = 4;
/// Work that one try may take, in steps.
const EACH_MAY_TAKE: u64 = 1_500_000;
/// Work that finding the reasons which stop the bar may take, in steps. They only guide the search.
const REASONS_MAY_TAKE: u64 = 200_000;
/// Work that the whole search may take, in steps.
const ALL_MAY_TAKE: u64 = 10_000_000;
/// Work that the search for one more set may take where one is told, in steps.
const MORE_MAY_TAKE: u64 = 1_000_000;
/// A search that took more than this before a set was told is not gone on with, in steps.
const LONG_SEARCH: u64 = 3_000_000;
/// Sets that are looked at together on all cores. The number is fixed, so that the answer is the same on each machine.
const TOGETHER: usize = 8;
/// Share of the way to the farthest value at which a change of a group is tried, where it is not enough alone.
const HALFWAY: f64 = 0.5;
/// The search looks at about this many places along the shaft. What it finds is planned with the pitch of the job.
const STATIONS: f64 = 70.0;
/// The same without a bush.
const STATIONS_NO_BUSH: f64 = 35.0;
/// Earlier conflicts that are tried first for other changes of groups.
const TRIED_AGAIN: usize = 3;
/// Prices are compared in this unit.
const UNIT: f64 = 1e-3;

/// One way to make a change.
pub struct Atom<'c> {
    pub candidate: &'c Candidate,
    /// Its value, at first the farthest worth trying.
    pub value: f64,
    pub kind: ChangeKind,
    /// Price in units.
    price: u64,
    /// Whether it changes a value of the machine.
    of_machine: bool,
}

impl Atom<'_> {
    fn only_adds(&self) -> bool {
        self.candidate.group.is_none()
    }

    /// Whether two may be made together.
    fn goes_with(&self, other: &Atom<'_>) -> bool {
        let (own, others) = (self.candidate.group, other.candidate.group);
        let apart = |a: &Atom<'_>, b: &Atom<'_>| a.kind == ChangeKind::ShopMachine && b.of_machine;
        (own.is_none() || own != others) && !apart(self, other) && !apart(other, self)
    }
}

/// A set of atoms, by number, sorted.
type Set = Vec<usize>;

/// Without one of these changes no larger set with the same changes of groups has a plan.
struct Conflict {
    groups: Set,
    atoms: Vec<usize>,
}

/// What a try found.
#[derive(Clone, Copy, PartialEq)]
enum Try {
    Holds,
    Fails,
    /// It would take more work than allowed.
    Unknown,
}

/// What a look at a set found.
enum Looked {
    Holds,
    Fails(Vec<usize>),
    Unknown,
    Stopped,
}

/// Why the search ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ended {
    /// It found as many sets as asked for, or there are no more.
    Done,
    /// Its bound of work.
    Bound,
    /// It was asked to stop.
    Stopped,
}

/// The search.
pub struct Search<'c> {
    job: &'c Job,
    /// The job with a coarser pitch of the stations.
    coarse: Job,
    pub atoms: Vec<Atom<'c>>,
    conflicts: Vec<Conflict>,
    open: BTreeSet<(u64, usize, Set)>,
    seen: BTreeSet<Set>,
    known: BTreeMap<Set, Try>,
    /// Work so far, in steps.
    steps: u64,
    /// Sets tried.
    pub tried: usize,
    /// Sets whose try took too much work.
    pub unknown: usize,
}

/// The work of one look, counted.
struct Work(u64);

impl<'c> Search<'c> {
    /// A search over the changes of a list.
    pub fn new(job: &'c Job, list: &'c [Candidate]) -> Search<'c> {
        let mut atoms = Vec::new();
        for candidate in list {
            let Role::Change(kind) = candidate.role else { continue };
            // Of a change that may also harm, the farthest value is mostly too much.
            let halfway = values(candidate, &[HALFWAY]).last().copied().filter(|_| candidate.group.is_some());
            let value = halfway.unwrap_or(candidate.range.1);
            let price = (job.change_prices.of(kind) / UNIT).round() as u64;
            let of_machine = (candidate.writes)(value).iter().any(|e| e.file == "machine");
            atoms.push(Atom { candidate, value, kind, price, of_machine });
        }
        let coarse_mm = job.shaft.length_mm() / STATIONS;
        let mut coarse = job.clone();
        coarse.planning.station_pitch_mm = coarse_mm.max(job.planning.station_pitch_mm);
        let (open, seen) = (BTreeSet::from([(0, 0, Vec::new())]), BTreeSet::from([Vec::new()]));
        Search {
            job,
            coarse,
            atoms,
            conflicts: Vec::new(),
            open,
            seen,
            known: BTreeMap::from([(Vec::new(), Try::Fails)]),
            steps: 0,
            tried: 0,
            unknown: 0,
        }
    }

    /// The price of a set.
    pub fn price(&self, set: &[usize]) -> f64 {
        set.iter().map(|a| self.atoms[*a].price).sum::<u64>() as f64 * UNIT
    }

    /// The kinds of changes of a set.
    pub fn kinds(&self, set: &[usize]) -> BTreeSet<ChangeKind> {
        set.iter().map(|a| self.atoms[*a].kind).collect()
    }

    /// The names of the changes of a set.
    pub fn names(&self, set: &[usize]) -> Vec<&str> {
        set.iter().map(|a| self.atoms[*a].candidate.name.as_str()).collect()
    }

    /// The job with the changes of a set, at the values given.
    pub fn made(&self, set: &[usize], values: &[f64]) -> Job {
        self.on(self.job, set, values)
    }

    fn on(&self, job: &Job, set: &[usize], values: &[f64]) -> Job {
        set.iter().zip(values).fold(job.clone(), |job, (a, value)| (self.atoms[*a].candidate.with)(&job, *value))
    }

    /// The values of a set at which it is tried.
    pub fn farthest(&self, set: &[usize]) -> Vec<f64> {
        set.iter().map(|a| self.atoms[*a].value).collect()
    }

    /// The atoms that the first conflict and the groups leave to be tried alone.
    pub fn alone(&mut self) -> Result<Vec<usize>, Defect> {
        let looked = self.looked(&[])?;
        self.steps += looked.1;
        if let Looked::Fails(atoms) = looked.0 {
            self.conflicts.push(Conflict { groups: Vec::new(), atoms });
        }
        let of_conflict = self.conflicts.iter().flat_map(|c| c.atoms.iter().copied());
        let of_groups = (0..self.atoms.len()).filter(|a| !self.atoms[*a].only_adds());
        Ok(of_conflict.chain(of_groups).collect())
    }

    /// Notes what is known of a change alone: a value with which there is a plan, or that there is none.
    pub fn note(&mut self, candidate: &Candidate, value: Option<f64>) {
        for (a, atom) in self.atoms.iter_mut().enumerate().filter(|(_, a)| std::ptr::eq(a.candidate, candidate)) {
            atom.value = value.filter(|_| atom.candidate.group.is_some()).unwrap_or(atom.value);
            self.known.insert(vec![a], if value.is_some() { Try::Holds } else { Try::Fails });
        }
    }

    /// The next set by price that has a plan. `skip` says which sets are of no interest, nor any larger one.
    /// `more`: a set is told already, so this is worth less work.
    pub fn next(
        &mut self,
        more: bool,
        skip: &dyn Fn(&Search<'_>, &[usize]) -> bool,
    ) -> Result<Result<Set, Ended>, Defect> {
        if more && self.steps > LONG_SEARCH {
            return Ok(Err(Ended::Bound));
        }
        let bound = if more { ALL_MAY_TAKE.min(self.steps + MORE_MAY_TAKE) } else { ALL_MAY_TAKE };
        loop {
            if self.steps > bound {
                // A set that is known to hold is told, although a cheaper one may exist.
                let holds =
                    |(_, _, set): &&(u64, usize, Set)| self.known.get(set) == Some(&Try::Holds) && !skip(self, set);
                let held = self.open.iter().find(holds).cloned();
                return Ok(held.map_or(Err(Ended::Bound), |held| {
                    self.open.remove(&held);
                    Ok(held.2)
                }));
            }
            let mut batch: Vec<(u64, usize, Set)> = Vec::new();
            while batch.len() < TOGETHER {
                let Some((price, size, set)) = self.open.pop_first() else { break };
                if skip(self, &set) {
                    continue;
                }
                // Cheaper sets may still come from those of the batch, so a set that is known to hold waits for them.
                let holds = self.known.get(&set) == Some(&Try::Holds);
                if holds && batch.is_empty() {
                    return Ok(Ok(set));
                }
                if holds {
                    self.open.insert((price, size, set));
                    break;
                }
                match self.conflict_of(&set) {
                    Some(atoms) => self.widen(&set, &atoms),
                    None => batch.push((price, size, set)),
                }
            }
            let Some((_, _, first)) = batch.first() else { return Ok(Err(Ended::Done)) };
            crate::spread::tell(|| say!("progress-sets", tried = self.tried, set = self.names(first).join(" + ")));
            let looked = spread(&batch, |(_, _, set), _| self.looked(set))?;
            for ((price, size, set), (looked, steps)) in batch.into_iter().zip(looked) {
                self.steps += steps;
                self.tried += 1;
                match looked {
                    Looked::Stopped => return Ok(Err(Ended::Stopped)),
                    Looked::Holds => {
                        self.known.insert(set.clone(), Try::Holds);
                        self.open.insert((price, size, set));
                    }
                    Looked::Unknown => self.unknown += 1,
                    Looked::Fails(atoms) => {
                        self.widen(&set, &atoms);
                        let groups = self.groups(&set);
                        self.conflicts.push(Conflict { groups, atoms });
                    }
                }
            }
        }
    }

    /// Whether all changes of a set may be made together.
    #[cfg(test)]
    pub fn allows(&self, set: &[usize]) -> bool {
        let apart = |a: &usize, b: &usize| a != b && !self.atoms[*a].goes_with(&self.atoms[*b]);
        !set.iter().any(|a| set.iter().any(|b| apart(a, b)))
    }

    /// Whether there is a plan with a set, as far as the search can tell.
    #[cfg(test)]
    pub fn passes(&self, set: &[usize]) -> bool {
        self.tried(set, &mut Work(0)) == Try::Holds
    }

    /// Goes on from a set that turned out to have no proven plan.
    pub fn refute(&mut self, set: &[usize]) {
        let all = self.others(set);
        self.widen(set, &all);
        // What it took to find this out.
        self.steps += EACH_MAY_TAKE;
    }

    fn groups(&self, set: &[usize]) -> Set {
        set.iter().copied().filter(|a| !self.atoms[*a].only_adds()).collect()
    }

    /// A known conflict that a set does not meet.
    fn conflict_of(&self, set: &[usize]) -> Option<Vec<usize>> {
        let groups = self.groups(set);
        let open = |c: &&Conflict| c.groups == groups && !c.atoms.iter().any(|a| set.contains(a));
        self.conflicts.iter().find(open).map(|c| c.atoms.clone())
    }

    /// Puts the sets with one more change on the list.
    fn widen(&mut self, set: &[usize], conflict: &[usize]) {
        if set.len() == MOST_CHANGES {
            return;
        }
        let groups = (0..self.atoms.len()).filter(|a| !self.atoms[*a].only_adds());
        for more in conflict.iter().copied().chain(groups).collect::<Vec<_>>() {
            if set.contains(&more) || !set.iter().all(|a| self.atoms[*a].goes_with(&self.atoms[more])) {
                continue;
            }
            let mut wider = set.to_vec();
            wider.push(more);
            wider.sort_unstable();
            if self.seen.insert(wider.clone()) {
                let price = wider.iter().map(|a| self.atoms[*a].price).sum();
                self.open.insert((price, wider.len(), wider));
            }
        }
    }

    /// All changes that only add possibilities and may be made together with a set.
    fn others(&self, set: &[usize]) -> Vec<usize> {
        let may = |a: &usize| {
            let atom = &self.atoms[*a];
            atom.only_adds() && !set.contains(a) && set.iter().all(|s| self.atoms[*s].goes_with(atom))
        };
        // Another machine of the shop excludes what is changed on this one; it is in a group.
        (0..self.atoms.len()).filter(may).collect()
    }

    fn tried(&self, set: &[usize], work: &mut Work) -> Try {
        if let Some(known) = self.known.get(set) {
            return *known;
        }
        let allowance = Allowance::of(EACH_MAY_TAKE);
        let mut job = self.on(&self.coarse, set, &self.farthest(set));
        if job.holding == Holding::NoBush {
            // Without a bush the work grows with the square of the number of stations.
            let coarse_mm = job.shaft.length_mm() / STATIONS_NO_BUSH;
            job.planning.station_pitch_mm = coarse_mm.max(job.planning.station_pitch_mm);
        }
        let found = passes_within(&allowance, &job);
        work.0 += EACH_MAY_TAKE - allowance.left();
        match found {
            Some(true) => Try::Holds,
            Some(false) => Try::Fails,
            None => Try::Unknown,
        }
    }

    /// Looks at a set: whether it has a plan, else its conflict; and the work this took.
    fn looked(&self, set: &[usize]) -> Result<(Looked, u64), Defect> {
        let mut work = Work(0);
        let looked = unless_asked_to_stop(|| {
            Ok(match self.tried(set, &mut work) {
                Try::Holds => Looked::Holds,
                Try::Unknown => Looked::Unknown,
                Try::Fails => Looked::Fails(self.conflict(set, &mut work)?),
            })
        });
        Ok((looked.unwrap_or(Ok(Looked::Stopped))?, work.0))
    }

    /// The conflict of a set without a plan.
    fn conflict(&self, set: &[usize], work: &mut Work) -> Result<Vec<usize>, Defect> {
        let others = self.others(set);
        let fails_without = |left_out: &[usize], work: &mut Work| {
            let mut all = set.to_vec();
            all.extend(others.iter().filter(|a| !left_out.contains(a)));
            all.sort_unstable();
            self.tried(&all, work) == Try::Fails
        };
        // All together may not be enough.
        if fails_without(&[], work) {
            return Ok(Vec::new());
        }
        // What was needed with other changes of groups is mostly needed here too.
        let open = |c: &&Conflict| !c.atoms.is_empty() && !c.atoms.iter().any(|a| set.contains(a));
        for known in self.conflicts.iter().rev().filter(open).take(TRIED_AGAIN) {
            let atoms: Vec<usize> = known.atoms.iter().copied().filter(|a| others.contains(a)).collect();
            if fails_without(&atoms, work) {
                return Ok(atoms);
            }
        }
        // What lifts the reasons that stop the bar.
        let allowance = Allowance::of(REASONS_MAY_TAKE);
        let job = self.on(&self.coarse, set, &self.farthest(set));
        let reasons = allowance.until(|| stopped_by(&job)).unwrap_or_default();
        work.0 += REASONS_MAY_TAKE - allowance.left();
        let lifting = |a: &usize| reasons.iter().any(|by| lifts(by, &self.atoms[*a].candidate.name));
        // If there is no plan without any of them, what is needed is among them. Else there is another way round these reasons. Changes are
        // added as long as there is no plan.
        let (last, first): (Vec<usize>, Vec<usize>) = others.iter().copied().partition(lifting);
        let mut base = set.to_vec();
        let mut order = last.clone();
        if fails_without(&last, work) {
            base.extend(first);
            base.sort_unstable();
        } else {
            order.splice(0..0, first);
        }
        Ok(self.needed(&mut base, &order, work))
    }

    /// The changes of a list that cannot be added to a base without a plan; the others are added to it.
    fn needed(&self, base: &mut Set, list: &[usize], work: &mut Work) -> Vec<usize> {
        if list.is_empty() {
            return Vec::new();
        }
        let mut all = base.clone();
        all.extend(list);
        all.sort_unstable();
        if self.tried(&all, work) == Try::Fails {
            *base = all;
            return Vec::new();
        }
        if list.len() == 1 {
            return list.to_vec();
        }
        let (left, right) = list.split_at(list.len() / 2);
        let mut needed = self.needed(base, left, work);
        needed.extend(self.needed(base, right, work));
        needed
    }
}
