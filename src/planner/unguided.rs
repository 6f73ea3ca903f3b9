//! The network without a guide bush.
//!
//! The headstock's collet holds the bar and is set for each piece, so a state depends on where its piece ends. A piece
//! runs from one stop to the next; every piece but the first begins with the headstock feeding out bar, a re-grip, for
//! which the counter-spindle must hold. The counter-spindle may keep its grip from piece to piece, or hand over.
//!
//! Nodes are a station with the grip held there, or with none: the collet open, or the front still free. All pieces that
//! end at a station under a grip come from one walk over whole beams, each looked at once (`rows`).

mod came;
mod rows;

use super::draft::{Draft, DraftStage};
use super::frontier::{self, Blocked};
use super::hold;
use super::network::{Arc, Network, Node, Weights};
use super::price::Price;
use super::sequence::Way;
use super::settle::Ground;
use super::stations::Grid;
use super::wishes;
use crate::process::checks::{self, Finding, PASSES_UP_TO, View};
use crate::process::stops::SAME_MM;
use crate::process::{Answers, Counter, Guide, State};
use crate::spread::spread;
pub use came::Came;
pub use rows::{Knows, Row};
use std::collections::HashMap;

/// What a state takes with its answers, in breaths.
const POSE: u64 = 100;

/// The grip of an arc that only opens the collet.
const OPENS: usize = usize::MAX;

/// A state on the way to the end of a piece.
struct Seen {
    station: usize,
    state: State,
    answers: Answers,
}

/// Builds the network without a bush.
pub struct Unguided<'a> {
    ground: &'a Ground<'a>,
    grid: &'a Grid,
    noses: Vec<f64>,
    weights: Weights,
}

/// Why a piece cannot be turned.
struct Stopped {
    rule: String,
    text: String,
}

impl<'a> Unguided<'a> {
    /// A builder for a collet's noses.
    pub fn new(ground: &'a Ground<'a>, grid: &'a Grid, noses: Vec<f64>, weights: Weights) -> Unguided<'a> {
        Unguided { ground, grid, noses, weights }
    }

    /// The whole network, with what is to be known of its pieces.
    pub fn network(&self, knows: Knows) -> Network {
        let grid = self.grid;
        let machine = &self.ground.rig.job.machine;
        let each_s = machine.headstock.regrip_s;
        let shared_s = machine.shared_regrip_s();
        let takes_hold = self.weights.hand_over(machine.hand_over_s()).plus_s(shared_s);
        let mut net = Network { nodes: vec![(0, 0)], reached: vec![Price::default()], ..Network::default() };
        let mut index: HashMap<Node, usize> = HashMap::from([((0, 0), 0)]);
        let mut rows: HashMap<(usize, usize), Row> = HashMap::new();
        for i in 0..grid.last() {
            // Grips held come first, so that those who open the collet stand before those who close it.
            let mut here: Vec<Node> = index.keys().copied().filter(|n| n.0 == i).collect();
            here.sort_by_key(|n| std::cmp::Reverse(n.1));
            if here.iter().any(|n| n.1 > 0) && !here.iter().any(|n| n.1 == 0) {
                here.push((i, 0));
            }
            let tags: Vec<usize> = here.iter().map(|n| n.1).collect();
            self.look(i, &tags, knows, &mut rows);
            for node in here {
                let runs = match node.1 {
                    0 if i == 0 => vec![(self.noses.len(), Price::default())],
                    0 => self.allowed(i).map(|g| (g, takes_hold)).collect(),
                    held => {
                        if self.release(held - 1, i).is_some_and(|f| f.passes()) {
                            self.add(&mut net, &mut index, node, (i, 0), OPENS, Price::default(), 1.0);
                        }
                        // Where a hand-over is wished, what holds lets go.
                        if grid.stations[i].wished { Vec::new() } else { vec![(held - 1, Price::seconds(each_s))] }
                    }
                };
                if !index.contains_key(&node) {
                    continue;
                }
                for (grip, cost) in runs {
                    for j in self.ends(i, grip) {
                        let known = rows.get(&(grip, j)).and_then(|row| row.get(j - 1 - i));
                        let Some((run_s, margin)) = known.copied() else { continue };
                        let (to, line_s, margin) = if j < grid.last() {
                            let tag = if grip < self.noses.len() { grip + 1 } else { 0 };
                            ((j, tag), grid.stations[j].penalty_s, margin)
                        } else {
                            match self.parted(grip) {
                                Ok(share) => ((j, 0), 0.0, margin.min(1.0 - share)),
                                Err(_) => continue,
                            }
                        };
                        let first_s = if i == 0 { self.weights.first.beyond_s(j, run_s) } else { 0.0 };
                        self.add(&mut net, &mut index, node, to, grip, cost.plus_s(run_s + first_s + line_s), margin);
                    }
                }
            }
        }
        net.goal = index.get(&(grid.last(), 0)).copied();
        let most = self.ground.rig.job.wishes.at_most_hand_overs;
        wishes::layered(net, most, |(station, held), arc| station > 0 && held == 0 && arc.grip != OPENS)
    }

    /// Stations at which a piece from a station under a grip may end, as far as stops, stroke and travel tell.
    pub fn ends(&self, i: usize, grip: usize) -> impl Iterator<Item = usize> {
        let (grid, stroke_mm) = (self.grid, self.ground.rig.job.machine.headstock.stroke_mm);
        let ends = (i + 1..=grid.last()).take_while(move |j| *j == i + 1 || !grid.stations[j - 1].wished);
        let ends = ends.take_while(move |j| grid.at(*j) - grid.at(i) <= stroke_mm + SAME_MM);
        ends.filter(move |j| grid.borders(*j) && grid.fed_to(*j) - grid.at(i) <= stroke_mm + SAME_MM)
            .filter(move |j| self.travels(i, *j, grip))
    }

    /// Walks the rows that a station asks for and none before it did, for the grips held there and, where one may take hold, all others.
    fn look(&self, i: usize, tags: &[usize], knows: Knows, rows: &mut HashMap<(usize, usize), Row>) {
        let takes_hold = tags.contains(&0);
        let grips = (0..=self.noses.len()).filter(|g| match *g == self.noses.len() {
            true => i == 0,
            false => i > 0 && (takes_hold || tags.contains(&(g + 1))),
        });
        let pairs: Vec<(usize, usize)> = grips.flat_map(|g| self.ends(i, g).map(move |j| (g, j))).collect();
        let new: Vec<(usize, usize)> = pairs.into_iter().filter(|pair| !rows.contains_key(pair)).collect();
        let walked = spread(&new, |(grip, j), _| self.row(*grip, *j, i, knows));
        rows.extend(new.into_iter().zip(walked));
    }

    /// Whether the counter-spindle that holds at a grip travels from one station to another.
    fn travels(&self, i: usize, j: usize, grip: usize) -> bool {
        let rig = self.ground.rig;
        let (Some(nose), Some(counter)) = (self.noses.get(grip), &rig.job.machine.counter_spindle) else { return true };
        let (near, far) = (self.grid.at(i) + rig.gap_mm() - nose, self.grid.fed_to(j) + rig.gap_mm() - nose);
        *nose <= self.grid.at(i) + SAME_MM
            && near >= counter.nearest_mm - SAME_MM
            && far <= counter.farthest_mm + SAME_MM
    }

    /// Grips that may take hold at a station.
    fn allowed(&self, station: usize) -> impl Iterator<Item = usize> {
        let wishes = &self.ground.rig.job.wishes;
        let at_mm = self.grid.at(station);
        (0..self.noses.len()).filter(move |g| wishes.allow_nose(at_mm, self.noses[*g]))
    }

    #[allow(clippy::too_many_arguments)]
    fn add(
        &self,
        net: &mut Network,
        index: &mut HashMap<Node, usize>,
        from: Node,
        to: Node,
        grip: usize,
        cost: Price,
        margin: f64,
    ) {
        let from = index[&from];
        let to = *index.entry(to).or_insert_with(|| {
            net.nodes.push(to);
            net.reached.push(Price::NO_WAY);
            net.nodes.len() - 1
        });
        net.reached[to] = net.reached[to].min(net.reached[from] + cost);
        net.arcs.push(Arc { from, to, cost, grip, regrips: Vec::new(), regrip_at_end: false, margin });
    }

    fn state(&self, station: usize, grip: usize, end: usize) -> State {
        let turned_mm = self.grid.at(station);
        State {
            turned_mm,
            counter: Counter::of(self.noses.get(grip).copied()),
            guide: self.ground.rig.guide(turned_mm, turned_mm, self.grid.fed_to(end)),
        }
    }

    fn release(&self, grip: usize, station: usize) -> Option<Finding> {
        checks::release::find(self.ground.rig, &self.state(station, grip, station)).ok()
    }

    /// Largest share of what must hold at the part-off.
    fn parted(&self, grip: usize) -> Result<f64, Stopped> {
        let rig = self.ground.rig;
        let Some(nose) = self.noses.get(grip) else {
            return match rig.job.machine.counter_spindle {
                None => Ok(0.0),
                Some(_) => Err(Stopped { rule: "collet".into(), text: "nothing holds the part at part-off".into() }),
            };
        };
        match checks::worst(checks::of_last_grip(rig, *nose, rig.held_mm(*nose)).flatten()) {
            Some(f) if !f.passes() => Err(Stopped { rule: f.check.into(), text: frontier::last_grip(rig, &f) }),
            f => Ok(f.map_or(0.0, |f| f.utilisation)),
        }
    }

    /// States of a grip from the end of a piece down to a station, as far as the supports hold the bar.
    fn column(&self, grip: usize, end: usize, down_to: usize) -> Vec<Seen> {
        let seen = |station: usize| {
            let state = self.state(station, grip, end);
            crate::spread::breathe_deeply(POSE);
            let answers = self.ground.rig.answers(&state).ok()?;
            Some(Seen { station, state, answers })
        };
        (down_to..=end).rev().map_while(seen).collect()
    }

    /// With the piece at an end turned and bar fed on for what is done behind the part-off.
    fn fed_on(&self, grip: usize, end: usize, turned_mm: f64) -> State {
        let guide = self.ground.rig.guide(turned_mm, turned_mm, turned_mm);
        State { turned_mm, guide, ..self.state(end, grip, end) }
    }

    /// What stops a piece from one station to another, told in the order in which it is turned; nothing where it passes.
    fn stops(&self, i: usize, j: usize, grip: usize) -> Result<(), Stopped> {
        let (rig, grid) = (self.ground.rig, self.grid);
        let gripped = grip < self.noses.len();
        if !self.travels(i, j, grip) {
            let nose = self.noses.get(grip).copied().unwrap_or(0.0);
            let text = format!("the counter-spindle that holds at {nose:.1} mm does not travel that far");
            return Err(Stopped { rule: "counter_spindle_travel".into(), text });
        }
        let shut = |k: usize| grid.is_shut(&self.state(k, grip, j));
        if !grid.shut.is_empty() && (i..=j).any(shut) {
            return Err(Stopped { rule: "support".into(), text: "a place between the looked-at ones breaks".into() });
        }
        // The end first: most pieces that fail, fail there.
        self.passes(j - 1, &self.column(grip, j, j), gripped)?;
        let column = self.column(grip, j, i);
        let mut k = i;
        while k < j {
            let index = grid.segment[k];
            let last = (k..j).take_while(|n| grid.segment[*n] == index).last().unwrap_or(k);
            self.passes(k, &column[(j - last - 1)..=(j - k)], gripped)?;
            k = last + 1;
        }
        let here = column.iter().filter(|s| s.station > i);
        let here = here.flat_map(|seen| grid.stations[seen.station].tasks.iter().map(|t| (*t, seen.state)));
        let behind = grid.beyond.iter().filter(|_| j == grid.last()).map(|(t, mm)| (*t, self.fed_on(grip, j, *mm)));
        for (task, state) in here.chain(behind).map(|(t, state)| (&self.ground.tasks[t], state)) {
            if state.turned_mm > grid.at(j) + SAME_MM {
                match checks::fed_on(rig, self.ground.segments, &state) {
                    Ok(Some(f)) if !f.passes() => return Err(told(&f, &format!("fed on for {}", task.text))),
                    Ok(_) => {}
                    Err(_) => return Err(Stopped { rule: "support".into(), text: "nothing holds the bar".into() }),
                }
            }
            let Some(thrust) = task.thrust_n else { continue };
            match checks::drill::find(rig, &state, task.at_mm, thrust) {
                Ok(f) if f.passes() => {}
                Ok(f) => return Err(told(&f, &format!("under the tool for {}", task.text))),
                Err(_) => return Err(Stopped { rule: "support".into(), text: "nothing holds the bar".into() }),
            }
        }
        Ok(())
    }

    /// States of one segment in a row; an error names the check that fails.
    fn passes(&self, piece: usize, seen: &[Seen], gripped: bool) -> Result<(), Stopped> {
        let rig = self.ground.rig;
        let segment = &self.ground.segments[self.grid.segment[piece]];
        let wanted = rig.segment_rpm(segment, gripped);
        let floor = rig.job.cutting.speed_floor * wanted;
        let allowed = seen.iter().map(|s| rig.allowed_rpm(&s.state, &s.answers).rpm).fold(f64::INFINITY, f64::min);
        let rpm = wanted.min(allowed.max(floor));
        for s in seen {
            let view = View { rig, state: &s.state, answers: &s.answers, segment, rpm };
            for f in checks::all(&view) {
                if f.utilisation > PASSES_UP_TO {
                    let set = match s.state.guide {
                        Guide::Collet { stage_end_mm } => {
                            format!(", with the bar fed out for the piece that ends at {stage_end_mm:.1} mm,")
                        }
                        _ => String::new(),
                    };
                    return Err(told(&f, &format!("at a turned length of {:.1} mm{set}", s.state.turned_mm)));
                }
            }
        }
        let flexibilities: Vec<f64> = seen.iter().map(|s| s.answers.tool_mm_per_n).collect();
        if let Some(f) = checks::cut::along(rig, segment, &flexibilities)
            && !f.passes()
        {
            let end = seen.first().map_or(0.0, |s| s.state.turned_mm);
            return Err(told(&f, &format!("over the piece that ends at {end:.1} mm")));
        }
        Ok(())
    }

    /// The draft of a way: pieces under one grip are one stage.
    pub fn draft(&self, way: &Way) -> Draft {
        let mut stages: Vec<DraftStage> = Vec::new();
        let mut opened = true;
        for (arc, ends) in way.arcs.iter().zip(way.stations.windows(2)) {
            if arc.grip == OPENS {
                opened = true;
                continue;
            }
            let (from_mm, to_mm) = (self.grid.at(ends[0]), self.grid.at(ends[1]));
            let nose_mm = self.noses.get(arc.grip).copied();
            match stages.last_mut() {
                Some(stage) if !opened => {
                    stage.regrips_mm.push(from_mm);
                    stage.to_mm = to_mm;
                }
                _ => {
                    let regrips_mm = if nose_mm.is_some() { vec![from_mm] } else { Vec::new() };
                    stages.push(DraftStage { from_mm, to_mm, nose_mm, regrips_mm, regrip_at_end: false });
                }
            }
            // After the free piece the front is free to be taken.
            opened = nose_mm.is_none();
        }
        Draft { stages, fed_to_mm: self.grid.fed_to(self.grid.last()) }
    }

    /// What stops the bar where a network ends.
    pub fn blocked(&self, came: &Came) -> Blocked {
        let (grid, far) = (self.grid, came.far);
        let section = self.ground.rig.job.shaft.section_at(grid.at(far));
        let next = (far + 1..=grid.last()).find(|j| grid.borders(*j)).unwrap_or(grid.last());
        let held = came.held.iter().flat_map(|held| {
            let grips: Vec<usize> = match (*held, far) {
                (0, 0) => vec![self.noses.len()],
                (0, _) => self.allowed(far).filter(|g| self.noses[*g] <= grid.at(far)).collect(),
                (held, _) => vec![held - 1],
            };
            grips
                .into_iter()
                .filter_map(|grip| self.stops(far, next, grip).and_then(|()| self.parted(grip).map(|_| ())).err())
        });
        // Where no grip can take over, the piece that came so far would have to go on.
        let by = came.by.iter().filter_map(|(from, grip)| self.stops(*from, next, *grip).err());
        // A check says more than a travel that some other grip would have; of checks the first is told.
        let mut stopped: Option<Stopped> = None;
        for found in held.chain(by) {
            let travel = found.rule == "counter_spindle_travel";
            stopped = Some(found);
            if !travel {
                break;
            }
        }
        let rig = self.ground.rig;
        let free = !came.gripped && rig.job.machine.counter_spindle.is_some();
        let no_hold = free.then(|| hold::too_early(rig, &self.noses, grid.at(far))).flatten();
        let stopped = stopped.unwrap_or_else(|| Stopped {
            rule: "collet".into(),
            text: "nothing takes hold of the finished front".into(),
        });
        let collet = rig.collet.map(|c| c.name.clone());
        Blocked { no_hold, collet, ..Blocked::found(grid.at(far), &stopped.rule, stopped.text, section) }
    }
}

fn told(f: &Finding, place: &str) -> Stopped {
    Stopped { rule: f.check.into(), text: f.told(place) }
}
