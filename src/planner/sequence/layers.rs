//! A network in layers, one layer for each number of hand-overs made. A single edge cannot hold a bound on the number
//! of hand-overs; layers can, and the program stays a pure flow.

use crate::planner::sequence::network::{Edge, Network, Node};
use crate::planner::sequence::price::Price;
use std::collections::HashMap;

/// The network with a layer for each number of hand-overs made, from 0 to `most`. `takes_hold` says which edges begin
/// with a hand-over. Where `most` is none, the network is returned unchanged.
pub fn layered(net: Network, most: Option<usize>, takes_hold: impl Fn(Node, &Edge) -> bool) -> Network {
    let Some(most) = most else { return net };
    let mut out = Network { nodes: vec![net.nodes[0]], reached: vec![Price::default()], ..Network::default() };
    let mut index: HashMap<(usize, usize), usize> = HashMap::from([((0, 0), 0)]);
    // Edges are in the order in which their start nodes are reached. This order also holds within each layer.
    for edge in &net.edges {
        let step = usize::from(takes_hold(net.nodes[edge.from], edge));
        for layer in 0..=most.saturating_sub(step) {
            if layer + step > most {
                continue;
            }
            let Some(from) = index.get(&(edge.from, layer)).copied() else { continue };
            // The part-off has one node for all numbers of hand-overs.
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
