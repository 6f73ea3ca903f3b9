//! The network without a guide bush.
//!
//! The headstock's collet holds the bar and is set for each piece, so a state depends on where its piece ends. A piece
//! runs from one stop to the next. Before every piece but the first the headstock re-grips and feeds out bar; meanwhile
//! the counter-spindle must hold the front. The counter-spindle may keep its grip from piece to piece, or hand over.
//!
//! A node is a station with the grip that holds the front there, or with no grip: the collet is open, or the front is
//! still free. One walk gives all pieces that end at a station under a grip (`rows`), and it looks at each state once.

mod came;
mod rows;
#[cfg(test)]
mod tests;

use crate::planner::places::ground::Ground;
use crate::planner::places::stations::Grid;
use crate::planner::sequence::layers::layered;
use crate::planner::sequence::network::{Edge, Network, Node, Weights};
use crate::planner::sequence::price::Price;
use crate::process::State;
use crate::process::checks::{self, Event, Finding};
use crate::process::stops::SAME_MM;
use crate::spread::spread;
pub use came::Came;
pub use rows::{Knows, Row};
use std::collections::HashMap;

/// Work of one state with its answers, in steps of the allowance.
pub const POSE: u64 = 100;

/// Marks an edge that only opens the collet; it stands in place of a grip's index.
pub const OPENS: usize = usize::MAX;

/// Builds the network without a bush.
pub struct Unguided<'a> {
    /// The job that the network is built for.
    pub ground: &'a Ground<'a>,
    /// Its stations.
    pub grid: &'a Grid,
    /// Places of the collet's nose, mm.
    pub noses: Vec<f64>,
    weights: Weights,
}

impl<'a> Unguided<'a> {
    /// A builder for a collet's noses.
    pub fn new(ground: &'a Ground<'a>, grid: &'a Grid, noses: Vec<f64>, weights: Weights) -> Unguided<'a> {
        Unguided { ground, grid, noses, weights }
    }

    /// The whole network. `knows` says how exactly the margins are worked out.
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
            // Nodes with a held grip come first: their edges open the collet before other edges leave the open node.
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
                        if self.lets_go(held - 1, i) {
                            self.add(&mut net, &mut index, node, (i, 0), OPENS, Price::default(), 1.0);
                        }
                        // At a wished hand-over, the grip that holds must let go.
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
                        if grip == self.noses.len() && j < grid.last() && !self.lets_go(grip, j) {
                            continue;
                        }
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
        layered(net, most, |(station, held), edge| station > 0 && held == 0 && edge.grip != OPENS)
    }

    /// Stations at which a piece from station `i` under a grip may end, by stops, stroke and travel alone.
    pub fn ends(&self, i: usize, grip: usize) -> impl Iterator<Item = usize> {
        let grid = self.grid;
        let ends = (i + 1..=grid.last()).take_while(move |j| *j == i + 1 || !grid.stations[j - 1].wished);
        // The feed grows with the station, so the first station beyond the stroke ends the list.
        ends.take_while(move |j| self.feeds(i, *j)).filter(move |j| grid.borders(*j) && self.travels(i, *j, grip))
    }

    /// Whether the headstock's stroke feeds the bar from one station to another.
    fn feeds(&self, i: usize, j: usize) -> bool {
        self.grid.fed_to(j) - self.grid.at(i) <= self.ground.rig.job.machine.headstock.stroke_mm + SAME_MM
    }

    /// Walks the rows that station `i` needs and no earlier station needed: for the grips held there and, where a new
    /// grip may take hold, for all grips.
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

    /// Whether the counter-spindle can travel from one station to another while it holds at a grip.
    pub fn travels(&self, i: usize, j: usize, grip: usize) -> bool {
        let rig = self.ground.rig;
        let (Some(nose), Some(counter)) = (self.noses.get(grip), &rig.job.machine.counter_spindle) else {
            return self.grid.fed_to(j) <= rig.centre_to_mm() + SAME_MM;
        };
        let (near, far) = (self.grid.at(i) + rig.gap_mm() - nose, self.grid.fed_to(j) + rig.gap_mm() - nose);
        *nose <= self.grid.at(i) + SAME_MM
            && near >= counter.nearest_mm - SAME_MM
            && far <= counter.farthest_mm + SAME_MM
    }

    /// Grips that may take hold at a station.
    pub fn allowed(&self, station: usize) -> impl Iterator<Item = usize> {
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
        net.edges.push(Edge { from, to, cost, grip, regrips: Vec::new(), regrip_at_end: false, margin });
    }

    /// The state of a station under a grip, with the bar fed out for a piece.
    pub fn state(&self, station: usize, grip: usize, end: usize) -> State {
        let turned_mm = self.grid.at(station);
        State {
            turned_mm,
            counter: self.ground.rig.counter(self.noses.get(grip).copied(), turned_mm),
            guide: self.ground.rig.guide(turned_mm, turned_mm, self.grid.fed_to(end)),
        }
    }

    /// Whether a stage may end at a station: the counter-spindle lets go of the front, or takes hold of one that was free. On a centre
    /// the whole part is one stage.
    fn lets_go(&self, grip: usize, station: usize) -> bool {
        if self.ground.rig.centre().is_some() {
            return false;
        }
        let state = self.state(station, grip, station);
        checks::at_event(self.ground.rig, &state, Event::LetsGo).all(|f| f.is_ok_and(|f| f.passes()))
    }

    /// The state in which the piece is turned and bar is fed on for work behind the part-off.
    pub fn fed_on(&self, grip: usize, turned_mm: f64) -> State {
        let rig = self.ground.rig;
        let counter = rig.counter(self.noses.get(grip).copied(), turned_mm);
        State { turned_mm, counter, guide: rig.guide(turned_mm, turned_mm, turned_mm) }
    }

    /// Largest utilisation of the checks of the last grip, at part-off.
    ///
    /// # Errors
    /// The finding that fails. None: no grip holds the part, and it may not fall.
    pub fn parted(&self, grip: usize) -> Result<f64, Option<Finding>> {
        let rig = self.ground.rig;
        let Some(nose) = self.noses.get(grip) else {
            return if rig.falls() { Ok(0.0) } else { Err(None) };
        };
        match checks::worst(checks::of_last_grip(rig, *nose, rig.held_mm(*nose)).flatten()) {
            Some(f) if !f.passes() => Err(Some(f)),
            f => Ok(f.map_or(0.0, |f| f.utilisation)),
        }
    }
}
