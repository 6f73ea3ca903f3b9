//! The sequence program: the cheapest unit flow from the free start to the part-off. Then, among the plans within a
//! thousandth of the least time, the plan whose smallest margin is largest. Where hand-overs count first, only edges on
//! ways with the fewest hand-overs enter, and the program minimises the seconds. So no weight has to combine the two.
//!
//! The program is a pure flow, so its vertices are whole numbers and no integer variables are needed (Hoffman & Kruskal
//! 1956; any text on network flows). The solver reports no reduced costs, so its optimum is checked against the labels
//! of the network: least costs, found without the solver.

use crate::defect::Defect;
use crate::planner::sequence::network::{Edge, Network};
use crate::planner::sequence::price::Price;
use good_lp::{Expression, ProblemVariables, Solution, SolverModel, microlp, variable};
use std::collections::BTreeSet;

/// Plans within this share of the least time count as equally fast.
pub const EQUALLY_FAST: f64 = 1e-3;
/// An edge with more flow than this is on the way. A vertex of the program has flows of 0 and 1 only.
const ON_THE_WAY: f64 = 0.5;
/// The program and the labels must agree within this, s.
pub const AGREE_S: f64 = 1e-6;
/// Largest number of edges given to the program at once. Above it, edges that cannot be on a cheapest way stay out.
const MOST_EDGES: usize = 30_000;

/// Solves the flow program over the edges that `enters` accepts, and returns the edges of the way in order. None: no
/// way.
///
/// # Errors
/// [`Defect`] when an edge has no finite cost, when the solver fails, when its answer is not a way from start to goal,
/// or when the way costs other than the labels of the network say.
pub fn cheapest_way(net: &Network, enters: impl Fn(&Edge) -> bool) -> Result<Option<Vec<usize>>, Defect> {
    let Some(goal) = net.goal else { return Ok(None) };
    let edges: Vec<usize> = (0..net.edges.len()).filter(|a| enters(&net.edges[*a])).collect();
    if edges.iter().any(|a| !net.edges[*a].cost.is_finite()) {
        return Err(Defect("an edge of the sequence program has no finite cost".into()));
    }
    let labels = labels(net, &edges);
    if !labels[goal].is_finite() {
        return Ok(None);
    }
    // An edge that is on no way to the goal would only add rows without a solution. The edges left are on ways with the
    // fewest hand-overs.
    let back = labels_back(net, goal, &edges);
    let few = |a: &Edge| (labels[a.from] + a.cost + back[a.to]).hand_overs <= labels[goal].hand_overs;
    let edges: Vec<usize> = edges.into_iter().filter(|a| few(&net.edges[*a])).collect();
    let mut problem = ProblemVariables::new();
    let flow: Vec<_> = edges.iter().map(|_| problem.add(variable().min(0.0))).collect();
    let cost: Expression = edges.iter().zip(&flow).map(|(a, x)| net.edges[*a].cost.s * *x).sum();
    let mut balance: Vec<Expression> = vec![Expression::default(); net.nodes.len()];
    let mut touched = vec![false; net.nodes.len()];
    for (a, x) in edges.iter().zip(&flow) {
        let edge = &net.edges[*a];
        balance[edge.from] += *x;
        balance[edge.to] -= *x;
        touched[edge.from] = true;
        touched[edge.to] = true;
    }
    let mut model = problem.minimise(cost).using(microlp);
    for (node, sum) in balance.into_iter().enumerate() {
        // The row of the goal follows from the other rows.
        if touched[node] && node != goal {
            model = model.with(sum.eq(if node == 0 { 1.0 } else { 0.0 }));
        }
    }
    let solution = model.solve().map_err(|e| Defect(format!("the sequence program failed: {e}")))?;
    let on: Vec<usize> =
        edges.iter().zip(&flow).filter(|(_, x)| solution.value(**x) > ON_THE_WAY).map(|(a, _)| *a).collect();
    let way = ordered(net, on, goal)?;
    let (found, least) = (sum(way.iter().map(|a| net.edges[*a].cost)), labels[goal]);
    if found.hand_overs != least.hand_overs || (found.s - least.s).abs() > AGREE_S * (1.0 + least.s.abs()) {
        return Err(Defect(format!("the sequence program found {found:?}, the labels of its network {least:?}")));
    }
    Ok(Some(way))
}

/// Least cost from the start to every node over some edges. Edges leave stations in ascending order, so one pass is
/// enough.
fn labels(net: &Network, edges: &[usize]) -> Vec<Price> {
    let mut labels = vec![Price::NO_WAY; net.nodes.len()];
    labels[0] = Price::default();
    for a in edges {
        let edge = &net.edges[*a];
        labels[edge.to] = labels[edge.to].min(labels[edge.from] + edge.cost);
    }
    labels
}

/// Least cost from every node to the goal.
fn labels_back(net: &Network, goal: usize, edges: &[usize]) -> Vec<Price> {
    let mut labels = vec![Price::NO_WAY; net.nodes.len()];
    labels[goal] = Price::default();
    for edge in edges.iter().rev().map(|a| &net.edges[*a]) {
        labels[edge.from] = labels[edge.from].min(labels[edge.to] + edge.cost);
    }
    labels
}

fn ordered(net: &Network, on: Vec<usize>, goal: usize) -> Result<Vec<usize>, Defect> {
    let mut way = Vec::with_capacity(on.len());
    let mut node = 0;
    while node != goal {
        let next = on.iter().find(|a| net.edges[**a].from == node && !way.contains(*a));
        let Some(a) = next else { return Err(Defect("the sequence program's flow is not one way".into())) };
        way.push(*a);
        node = net.edges[*a].to;
    }
    Ok(way)
}

fn sum(prices: impl Iterator<Item = Price>) -> Price {
    prices.fold(Price::default(), |sum, price| sum + price)
}

/// A way through the network, with its cost and margin.
#[derive(Debug, Clone)]
pub struct Way {
    /// Edges, in order.
    pub edges: Vec<Edge>,
    /// Stations at which its edges begin and end.
    pub stations: Vec<usize>,
    /// Its cost.
    pub cost: Price,
    /// Least cost of any way.
    pub least: Price,
    /// Smallest margin over its edges.
    pub margin: f64,
}

/// Of the ways that cost at most `allowance_s` more than the cheapest, with no more hand-overs where these count, the
/// way with the largest margin.
///
/// An infinite allowance gives the safest way of all; of equally safe ways, the cheapest.
///
/// # Errors
/// [`Defect`] as of [`cheapest_way`], and where the margins leave no way although there is one.
pub fn best_way(net: &Network, allowance_s: f64) -> Result<Option<Way>, Defect> {
    let Some(goal) = net.goal else { return Ok(None) };
    let all: Vec<usize> = (0..net.edges.len()).collect();
    let (ahead, back) = (net.reached.as_slice(), labels_back(net, goal, &all));
    let least = back[0];
    if !least.is_finite() {
        return Ok(None);
    }
    // The same costs summed in another order may differ by rounding. A node without a way is never within the
    // allowance.
    let most = if allowance_s.is_finite() { least.plus_s(allowance_s + AGREE_S) } else { Price::NO_WAY };
    let within = |price: Price| price.is_finite() && price <= most;
    let through = |edge: &Edge| ahead[edge.from] + edge.cost + back[edge.to];
    // Largest margin for which a way within the allowance remains: bisection over the margins of the edges.
    let margins: Vec<u64> = {
        let in_band = net.edges.iter().filter(|a| within(through(a)));
        in_band.map(|a| order_key(a.margin)).collect::<BTreeSet<_>>().into_iter().collect()
    };
    let feasible = |key: u64| {
        let edges: Vec<usize> = (0..net.edges.len()).filter(|a| order_key(net.edges[*a].margin) >= key).collect();
        within(labels(net, &edges)[goal])
    };
    let (mut low, mut high) = (0, margins.len());
    while high - low > 1 {
        let middle = (low + high) / 2;
        if feasible(margins[middle]) {
            low = middle;
        } else {
            high = middle;
        }
    }
    let floor = margins.get(low).copied().unwrap_or(0);
    let enters = |a: &Edge| order_key(a.margin) >= floor && within(through(a));
    let safest = match net.edges.iter().filter(|a| enters(a)).count() {
        0..=MOST_EDGES => cheapest_way(net, enters)?,
        _ => {
            let edges: Vec<usize> = (0..net.edges.len()).filter(|a| enters(&net.edges[*a])).collect();
            let (ahead, back) = (labels(net, &edges), labels_back(net, goal, &edges));
            cheapest_way(net, |a| enters(a) && ahead[a.from] + a.cost + back[a.to] <= back[0].plus_s(AGREE_S))?
        }
    };
    let Some(way) = safest else { return Err(Defect("the margins leave no way, though there is one".into())) };
    let edges: Vec<Edge> = way.iter().map(|a| net.edges[*a].clone()).collect();
    let mut stations = vec![0];
    stations.extend(edges.iter().map(|a| net.nodes[a.to].0));
    Ok(Some(Way {
        cost: sum(edges.iter().map(|a| a.cost)),
        least,
        margin: edges.iter().map(|a| a.margin).fold(f64::INFINITY, f64::min),
        stations,
        edges,
    }))
}

/// Maps a number to an integer of the same order, so that numbers can be sorted and compared (total order of IEEE 754).
fn order_key(x: f64) -> u64 {
    let bits = x.to_bits();
    if bits >> 63 == 1 { !bits } else { bits | (1 << 63) }
}

#[cfg(test)]
mod tests {
    use super::{Edge, Network, Price, best_way};

    /// Three nodes before the goal; edges as from, to, seconds, hand-overs, margin. The last edge leads nowhere.
    fn net(edges: &[(usize, usize, f64, f64, f64)]) -> Network {
        let edge = |&(from, to, s, hand_overs, margin): &(usize, usize, f64, f64, f64)| Edge {
            from,
            to,
            cost: Price { hand_overs, s },
            margin,
            ..Edge::default()
        };
        let mut net = Network { nodes: (0..5).map(|i| (i, 0)).collect(), goal: Some(3), ..Network::default() };
        net.edges = edges.iter().map(edge).collect();
        net.reached = super::labels(&net, &(0..edges.len()).collect::<Vec<_>>());
        net
    }

    #[test]
    fn the_safest_way_of_all_is_one_that_arrives() {
        let net = net(&[
            (0, 1, 5.0, 0.0, 0.2),
            (0, 2, 9.0, 0.0, 0.6),
            (0, 4, 1.0, 0.0, 0.9),
            (1, 3, 5.0, 0.0, 0.2),
            (2, 3, 9.0, 0.0, 0.5),
        ]);
        let way = best_way(&net, f64::INFINITY).expect("no defect").expect("a way");
        assert_eq!((way.cost.s, way.margin, way.least.s), (18.0, 0.5, 10.0));
        // Within a bound the safer way is out of reach.
        assert_eq!(best_way(&net, 1.0).expect("no defect").expect("a way").margin, 0.2);
    }

    #[test]
    fn fewer_hand_overs_come_before_any_time_and_the_margin_after_both() {
        let net = net(&[
            (0, 1, 5.0, 0.0, 0.9),
            (0, 2, 1e9, 0.0, 0.3),
            (1, 3, 5.0, 2.0, 0.9),
            (2, 3, 1.0, 1.0, 0.2),
            (2, 3, 1.0 + 1e-4, 1.0, 0.4),
        ]);
        let way = best_way(&net, 0.5).expect("no defect").expect("a way");
        assert_eq!((way.cost.hand_overs, way.margin), (1.0, 0.3));
        let fast = best_way(&net, 0.0).expect("no defect").expect("a way");
        assert_eq!((fast.cost.s - 1e9, fast.margin), (1.0, 0.2));
    }
}
