//! `tools` of a machine: its places for tools. If it is left out, the plan says nothing about tools.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use crate::fields::{self, Field};
use crate::job::{Place, ToolPlaces, Turret};

/// The field of each kind of place, in the order of [`Place::ALL`].
const PLACES: [&Field; 7] = [
    &fields::TURNING_PLACES,
    &fields::CROSS_PLACES,
    &fields::FRONT_FIXED,
    &fields::FRONT_DRIVEN,
    &fields::BACK_FIXED,
    &fields::BACK_DRIVEN,
    &fields::WHIRLING_PLACES,
];

/// Reads the places: `Some(None)` if the machine file gives none.
pub(super) fn read(r: &mut Reader, machine: &Map) -> Option<Option<ToolPlaces>> {
    let Some(node) = r.optional(machine, "tools")? else { return Some(None) };
    let mut keys: Vec<&'static str> = Place::ALL.iter().map(|p| p.key()).collect();
    keys.extend(["opposed", "tandem", "turret"]);
    let map = r.map(node, &keys)?;
    let counts = PLACES.map(|field| r.count(&map, field));
    let opposed = r.flag(&map, "opposed");
    let tandem = r.flag(&map, "tandem");
    let turret = match r.optional(&map, "turret") {
        Some(Some(node)) => turret(r, node).map(Some),
        Some(None) => Some(None),
        None => None,
    };
    let mut places = [0; 7];
    for (place, count) in places.iter_mut().zip(counts) {
        *place = count?;
    }
    Some(Some(ToolPlaces {
        places,
        opposed: opposed?.unwrap_or(false),
        tandem: tandem?.unwrap_or(false),
        turret: turret?,
    }))
}

fn turret(r: &mut Reader, node: &Spanned<Node>) -> Option<Turret> {
    let map = r.map(node, &["stations", "tools_per_station"])?;
    let stations = r.count(&map, &fields::TURRET_STATIONS);
    let tools = r.count(&map, &fields::TURRET_TOOLS);
    Some(Turret { stations: stations?, tools_per_station: tools? })
}
