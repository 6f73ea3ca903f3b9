//! A network in layers, one for each hand-over made: a bound on their number is no matter of an edge, and so it stays a pure flow.

use crate::planner::sequence::network::{Edge, Network, Node};
use crate::planner::sequence::price::Price;
use std::collections::HashMap;

/// The network with a layer for each hand-over made, up to `most`. `takes_hold` tells the edges that begin with a hand-over. Without a bound:
/// the network as it is.
pub fn layered(net: Network, most: Option<usize>, takes_hold: impl Fn(Node, &Edge) -> bool) -> Network {
    let Some(most) = most else { return net };
    let mut out = Network { nodes: vec![net.nodes[0]], reached: vec![Price::default()], ..Network::default() };
    let mut index: HashMap<(usize, usize), usize> = HashMap::from([((0, 0), 0)]);
    // Edges come in the order in which their nodes are reached, and in each layer they still do.
    for edge in &net.edges {
        let step = usize::from(takes_hold(net.nodes[edge.from], edge));
        for layer in 0..=most.saturating_sub(step) {
            if layer + step > most {
                continue;
            }
            let Some(from) = index.get(&(edge.from, layer)).copied() else { continue };
            // One node for the part-off, however many hand-overs it took.
            let to_layer = if Some(edge.to) == net.goal { 0 } else { layer + step };
            let to = *index.entry((edge.to, to_layer)).or_insert_with(|| {
                out.nodes.push(net.nodes[edge.to]);
                out.reached.push(Price::NO_WAY);
                out.nodes.len() - 1
            });
            out.reached[to] = out.reached[to].min(out.reached[from] + edge.cost);
            out.edges.push(Edge { from, to, ..edge.clone() });
        }
    }
    out.goal = net.goal.and_then(|goal| index.get(&(goal, 0)).copied());
    out
}
