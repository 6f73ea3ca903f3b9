//! The network without a guide bush.
//!
//! The headstock's collet holds the bar and is set for each piece, so a state depends on where its piece ends. A piece
//! runs from one stop to the next; every piece but the first begins with the headstock feeding out bar, a re-grip, for
//! which the counter-spindle must hold. The counter-spindle may keep its grip from piece to piece, or hand over.
//!
//! Nodes are a station with the grip held there, or with none: the collet open, or the front still free. Parts are short
//! without a bush, so states are whole beams, each worked out once.

use super::draft::{Draft, DraftStage};
use super::frontier::{self, Blocked};
use super::hold;
use super::network::{Arc, Network, Node, Weights};
use super::price::Price;
use super::sequence::Way;
use super::settle::Ground;
use super::stations::{Grid, divisible};
use super::wishes;
use crate::process::checks::{self, Finding, PASSES_UP_TO, View};
use crate::process::stops::SAME_MM;
use crate::process::{Answers, Counter, Guide, State, Work};
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;

/// The grip of an arc that only opens the collet.
const OPENS: usize = usize::MAX;

/// A state on the way to the end of a piece.
struct Seen {
    station: usize,
    state: State,
    answers: Answers,
}

/// States of one grip and one end of a piece.
type Column = Rc<Vec<Seen>>;

/// Builds the network without a bush.
pub struct Unguided<'a> {
    ground: &'a Ground<'a>,
    grid: &'a Grid,
    noses: Vec<f64>,
    weights: Weights,
    /// States of a grip and a piece's end, from the end towards the front.
    columns: RefCell<HashMap<(usize, usize), Column>>,
}

/// Why a piece cannot be turned.
struct Stopped {
    rule: String,
    text: String,
}

impl<'a> Unguided<'a> {
    /// A builder for a collet's noses.
    pub fn new(ground: &'a Ground<'a>, grid: &'a Grid, noses: Vec<f64>, weights: Weights) -> Unguided<'a> {
        Unguided { ground, grid, noses, weights, columns: RefCell::default() }
    }

    /// The whole network, and what stops the bar where nothing leads on.
    pub fn network(&self) -> Network {
        let grid = self.grid;
        let machine = &self.ground.rig.job.machine;
        let each_s = machine.headstock.regrip_s;
        let shared_s = machine.shared_regrip_s();
        let takes_hold = self.weights.hand_over(machine.hand_over_s()).plus_s(shared_s);
        let mut net = Network { nodes: vec![(0, 0)], reached: vec![Price::default()], ..Network::default() };
        let mut index: HashMap<Node, usize> = HashMap::from([((0, 0), 0)]);
        for i in 0..grid.last() {
            // Grips held come first, so that those who open the collet stand before those who close it.
            let mut here: Vec<Node> = index.keys().copied().filter(|n| n.0 == i).collect();
            here.sort_by_key(|n| std::cmp::Reverse(n.1));
            if here.iter().any(|n| n.1 > 0) && !here.iter().any(|n| n.1 == 0) {
                here.push((i, 0));
            }
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
                    for j in i + 1..=grid.last() {
                        if j > i + 1 && grid.stations[j - 1].wished {
                            break;
                        }
                        if !grid.borders(j) || grid.fed_to(j) - grid.at(i) > machine.headstock.stroke_mm + SAME_MM {
                            continue;
                        }
                        let Ok((run_s, margin)) = self.run(i, j, grip) else { continue };
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
        wishes::layered(net, most, |(station, held), arc| station > 0 && held == 0 && arc.grip != OPENS).0
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
    fn column(&self, grip: usize, end: usize, down_to: usize) -> Column {
        let known = self.columns.borrow().get(&(grip, end)).cloned();
        let have = known.as_ref().map_or(0, |c| c.len());
        if have > end - down_to
            && let Some(known) = known
        {
            return known;
        }
        let mut column: Vec<Seen> =
            known.map_or_else(Vec::new, |c| Rc::try_unwrap(c).unwrap_or_else(|c| c.iter().map(Seen::copy).collect()));
        for station in (down_to..=end - column.len()).rev() {
            let state = self.state(station, grip, end);
            crate::spread::breathe();
            let Ok(answers) = self.ground.rig.answers(&state) else { break };
            column.push(Seen { station, state, answers });
        }
        let column = Rc::new(column);
        self.columns.borrow_mut().insert((grip, end), column.clone());
        column
    }

    /// Time and margin of a piece from one station to another.
    fn run(&self, i: usize, j: usize, grip: usize) -> Result<(f64, f64), Stopped> {
        let (rig, grid) = (self.ground.rig, self.grid);
        let gripped = grip < self.noses.len();
        if let (Some(nose), Some(counter)) = (self.noses.get(grip), &rig.job.machine.counter_spindle) {
            let (near, far) = (grid.at(i) + rig.gap_mm() - nose, grid.fed_to(j) + rig.gap_mm() - nose);
            if *nose > grid.at(i) + SAME_MM
                || near < counter.nearest_mm - SAME_MM
                || far > counter.farthest_mm + SAME_MM
            {
                let text = format!("the counter-spindle that holds at {nose:.1} mm does not travel that far");
                return Err(Stopped { rule: "counter_spindle_travel".into(), text });
            }
        }
        let shut = |k: usize| grid.is_shut(&self.state(k, grip, j));
        if !grid.shut.is_empty() && (i..=j).any(shut) {
            return Err(Stopped { rule: "support".into(), text: "a place between the looked-at ones breaks".into() });
        }
        // The end first: most pieces that fail, fail there.
        self.passes(j - 1, &self.column(grip, j, j)[..], gripped)?;
        let column = self.column(grip, j, i);
        let (mut time_s, mut margin) = (0.0, f64::INFINITY);
        let mut k = i;
        while k < j {
            let index = grid.segment[k];
            let last = (k..j).take_while(|n| grid.segment[*n] == index).last().unwrap_or(k);
            let seen = &column[(j - last - 1)..=(j - k)];
            let (cap, piece_margin) = self.passes(k, seen, gripped)?;
            margin = margin.min(piece_margin);
            let segment = &self.ground.segments[index];
            let whole = divisible(segment) || grid.at(last + 1) >= segment.to_mm - SAME_MM;
            if whole && segment.work != Work::PartOff {
                let length = grid.at(last + 1) - grid.at(k);
                time_s += rig.piece_time(segment, length, gripped, cap).total_s();
            }
            k = last + 1;
        }
        let on = |turned_mm: f64| {
            let guide = rig.guide(turned_mm, turned_mm, turned_mm);
            State { turned_mm, guide, ..self.state(j, grip, j) }
        };
        let here = column.iter().filter(|s| s.station > i);
        let here = here.flat_map(|seen| grid.stations[seen.station].tasks.iter().map(|t| (*t, seen.state)));
        let behind = grid.beyond.iter().filter(|_| j == grid.last()).map(|(t, turned_mm)| (*t, on(*turned_mm)));
        for (task, state) in here.chain(behind).map(|(t, state)| (&self.ground.tasks[t], state)) {
            if state.turned_mm > grid.at(j) + SAME_MM {
                match checks::fed_on(rig, self.ground.segments, &state) {
                    Ok(Some(f)) if !f.passes() => return Err(told(&f, &format!("fed on for {}", task.text))),
                    Ok(f) => margin = margin.min(1.0 - f.map_or(0.0, |f| f.utilisation)),
                    Err(_) => return Err(Stopped { rule: "support".into(), text: "nothing holds the bar".into() }),
                }
            }
            let Some(thrust) = task.thrust_n else { continue };
            match checks::drill::find(rig, &state, task.at_mm, thrust) {
                Ok(f) if f.passes() => margin = margin.min(1.0 - f.utilisation),
                Ok(f) => return Err(told(&f, &format!("under the tool for {}", task.text))),
                Err(_) => return Err(Stopped { rule: "support".into(), text: "nothing holds the bar".into() }),
            }
        }
        Ok((time_s, margin))
    }

    /// Speed cap and margin of states of one segment in a row; an error names the check that fails.
    fn passes(&self, piece: usize, seen: &[Seen], gripped: bool) -> Result<(f64, f64), Stopped> {
        let rig = self.ground.rig;
        let segment = &self.ground.segments[self.grid.segment[piece]];
        let wanted = rig.segment_rpm(segment, gripped);
        let floor = rig.job.cutting.speed_floor * wanted;
        let allowed = seen.iter().map(|s| rig.allowed_rpm(&s.state, &s.answers).rpm).fold(f64::INFINITY, f64::min);
        let rpm = wanted.min(allowed.max(floor));
        let mut margin = f64::INFINITY;
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
                margin = margin.min(1.0 - f.utilisation);
            }
        }
        let flexibilities: Vec<f64> = seen.iter().map(|s| s.answers.tool_mm_per_n).collect();
        if let Some(f) = checks::cut::along(rig, segment, &flexibilities) {
            if !f.passes() {
                let end = seen.first().map_or(0.0, |s| s.state.turned_mm);
                return Err(told(&f, &format!("over the piece that ends at {end:.1} mm")));
            }
            margin = margin.min(1.0 - f.utilisation);
        }
        Ok((if rpm < wanted { rpm } else { f64::INFINITY }, margin))
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

    /// How far a network gets, and what stops it there.
    pub fn blocked(&self, net: &Network) -> Blocked {
        let grid = self.grid;
        let far = net.nodes.iter().map(|n| n.0).max().unwrap_or(0);
        let section = self.ground.rig.job.shaft.section_at(grid.at(far));
        let next = (far + 1..=grid.last()).find(|j| grid.borders(*j)).unwrap_or(grid.last());
        let mut stopped: Option<Stopped> = None;
        let mut tell = |found: Stopped| {
            // A check says more than a travel that some other grip would have.
            if stopped.as_ref().is_none_or(|s| s.rule == "counter_spindle_travel") {
                stopped = Some(found);
            }
        };
        for node in net.nodes.iter().filter(|n| n.0 == far) {
            let grips: Vec<usize> = match (node.1, far) {
                (0, 0) => vec![self.noses.len()],
                (0, _) => self.allowed(far).filter(|g| self.noses[*g] <= grid.at(far)).collect(),
                (held, _) => vec![held - 1],
            };
            for grip in grips {
                if let Err(found) = self.run(far, next, grip).and_then(|_| self.parted(grip)) {
                    tell(found);
                }
            }
        }
        // Where no grip can take over, the piece that came so far would have to go on.
        for arc in net.arcs.iter().filter(|a| net.nodes[a.to].0 == far && a.grip != OPENS) {
            if let Err(found) = self.run(net.nodes[arc.from].0, next, arc.grip) {
                tell(found);
            }
        }
        let rig = self.ground.rig;
        let free = !net.arcs.iter().any(|a| a.grip < self.noses.len()) && rig.job.machine.counter_spindle.is_some();
        let no_hold = free.then(|| hold::too_early(rig, &self.noses, grid.at(far))).flatten();
        let stopped = stopped.unwrap_or_else(|| Stopped {
            rule: "collet".into(),
            text: "nothing takes hold of the finished front".into(),
        });
        let collet = rig.collet.map(|c| c.name.clone());
        Blocked { no_hold, collet, ..Blocked::found(grid.at(far), &stopped.rule, stopped.text, section) }
    }
}

impl Seen {
    fn copy(&self) -> Seen {
        Seen { station: self.station, state: self.state, answers: self.answers }
    }
}

fn told(f: &Finding, place: &str) -> Stopped {
    Stopped { rule: f.check.into(), text: f.told(place) }
}
