//! Wishes in the search: which of them cannot be met at all, a bound on the number of hand-overs, and which wish stands in
//! the way when there is no plan.
//!
//! A wished hand-over ends every stage that comes to it, and begins one with the wished nose; stretches never to grip are
//! left out of the lands. So both only take arcs away. A bound on the number of hand-overs is not a property of an arc:
//! the network is laid out in layers, one a hand-over, and stays a pure flow.

use super::changes;
use super::frontier::Blocked;
use super::grips::Land;
use super::network::{Arc, Network, Node};
use super::price::Price;
use super::sequence::Defect;
use super::solve::Effort;
use crate::job::{Job, Wishes};
use crate::process::Rig;
use crate::process::segments::Segment;
use crate::process::stops::SAME_MM;
use std::collections::HashMap;

/// What stops the bar where a wish cannot be kept or ends a stage that nothing goes on from.
pub const NAME: &str = "wish";

/// A wish that no plan with this collet can meet, whatever else it does.
pub fn impossible(rig: &Rig<'_>, segments: &[Segment], lands: &[Land]) -> Option<Blocked> {
    let shaft = &rig.job.shaft;
    for wish in &rig.job.wishes.hand_overs {
        let section = shaft.section_at(wish.at_mm);
        let name = shaft.sections[section].label(section);
        let why = match (&rig.collet, wish.nose_mm) {
            (None, _) => "the machine has no counter-spindle that could take hold".to_owned(),
            _ if !rig.stop_at(segments, wish.at_mm).allowed() => format!("the feed must not stop there, on {name}"),
            (Some(collet), Some(nose)) if !on_a_land(lands, nose) => {
                format!("collet {} cannot hold with its nose there", collet.name)
            }
            _ => continue,
        };
        let text = format!("to {} is wished, but {why}", wish.told());
        return Some(Blocked::found(wish.at_mm, NAME, text, section));
    }
    None
}

fn on_a_land(lands: &[Land], nose_mm: f64) -> bool {
    lands.iter().any(|l| nose_mm >= l.nose_from_mm - SAME_MM && nose_mm <= l.nose_to_mm + SAME_MM)
}

/// The network with a layer for each hand-over made, up to `most`. `takes_hold` tells the arcs that begin with a hand-over. Without a bound:
/// the network as it is.
pub fn layered(net: Network, most: Option<usize>, takes_hold: impl Fn(Node, &Arc) -> bool) -> Network {
    let Some(most) = most else { return net };
    let mut out = Network { nodes: vec![net.nodes[0]], reached: vec![Price::default()], ..Network::default() };
    let mut index: HashMap<(usize, usize), usize> = HashMap::from([((0, 0), 0)]);
    // Arcs come in the order in which their nodes are reached, and in each layer they still do.
    for arc in &net.arcs {
        let step = usize::from(takes_hold(net.nodes[arc.from], arc));
        for layer in 0..=most.saturating_sub(step) {
            if layer + step > most {
                continue;
            }
            let Some(from) = index.get(&(arc.from, layer)).copied() else { continue };
            // One node for the part-off, however many hand-overs it took.
            let to_layer = if Some(arc.to) == net.goal { 0 } else { layer + step };
            let to = *index.entry((arc.to, to_layer)).or_insert_with(|| {
                out.nodes.push(net.nodes[arc.to]);
                out.reached.push(Price::NO_WAY);
                out.nodes.len() - 1
            });
            out.reached[to] = out.reached[to].min(out.reached[from] + arc.cost);
            out.arcs.push(Arc { from, to, ..arc.clone() });
        }
    }
    out.goal = net.goal.and_then(|goal| index.get(&(goal, 0)).copied());
    out
}

/// The job without one of its wishes, for each: words, and what is left.
pub fn one_dropped(job: &Job) -> Vec<(String, Wishes)> {
    let all = &job.wishes;
    let mut left = Vec::new();
    for i in 0..all.hand_overs.len() {
        let mut fewer = all.clone();
        fewer.hand_overs.remove(i);
        left.push(fewer);
    }
    for i in 0..all.never_grip.len() {
        let mut fewer = all.clone();
        fewer.never_grip.remove(i);
        left.push(fewer);
    }
    if all.at_most_hand_overs.is_some() {
        left.push(Wishes { at_most_hand_overs: None, ..all.clone() });
    }
    all.told().into_iter().zip(left).collect()
}

/// What stands in the way, told as a wish where there is a plan without it.
pub fn blamed(job: &Job, blocked: Blocked) -> Result<Blocked, Defect> {
    if job.wishes.is_empty() {
        return Ok(blocked);
    }
    let planned_s = |wishes: Wishes| changes::planned_s(&Job { wishes, ..job.clone() }, Effort::Feasible);
    let Some(without_s) = planned_s(Wishes::default())? else { return Ok(blocked) };
    let tell = |who: String, it: &str, time_s: f64| Blocked {
        by: NAME.into(),
        text: format!("{who} in the way: {}; without {it} a part takes {time_s:.1} s", blocked.told()),
        together: Vec::new(),
        others: String::new(),
        ..blocked.clone()
    };
    let wishes = one_dropped(job);
    if let [(told, _)] = &wishes[..] {
        return Ok(tell(format!("the wish to {told} stands"), "it", without_s));
    }
    for (told, left) in wishes {
        if let Some(time_s) = planned_s(left)? {
            return Ok(tell(format!("the wish to {told} stands"), "it", time_s));
        }
    }
    Ok(tell("the wishes together stand".into(), "them", without_s))
}
