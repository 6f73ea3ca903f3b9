//! What a person can choose from: machines and materials.

use schemars::JsonSchema;
use serde::Serialize;
use std::sync::LazyLock;

use super::super::Start;
use super::super::wire::Text;
use super::examples::MACHINES;
use crate::input::{Named, read_machine_text};
use crate::job::Machine;
use crate::job::materials::{Group, rows};
use crate::lang;

/// Machines and materials to choose from.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Choices {
    /// Whether the call gave no job, so that the page begins with its start screen.
    begins: bool,
    /// The machines: those of the shop, then the examples.
    machines: Vec<MachineChoice>,
    /// The materials by family; those of the shop come first.
    materials: Vec<MaterialChoices>,
}

/// A machine to choose.
#[derive(Debug, Clone, Serialize, JsonSchema)]
struct MachineChoice {
    /// The name as a job has it: a name in the shop's file, or the name of the machine's file.
    name: String,
    /// Its name in words.
    title: String,
    /// Whether it is one of the shop. A job that names it needs no machine file.
    of_shop: bool,
    /// Its file. None: it is one of the shop.
    file: Option<Text>,
    /// Largest bar. None: it has no guide bush.
    bar_mm: Option<f64>,
    /// Stroke of the headstock.
    stroke_mm: f64,
    /// Largest distance of the counter-spindle from the guide bush. None: it has none.
    reach_mm: Option<f64>,
}

/// Materials of one family.
#[derive(Debug, Clone, Serialize, JsonSchema)]
struct MaterialChoices {
    /// The family. None: materials of the shop.
    family: Option<String>,
    /// Names, each with its number if it has one.
    names: Vec<(String, String)>,
}

fn choice(name: &str, machine: &Machine, file: Option<Text>) -> MachineChoice {
    MachineChoice {
        name: name.to_owned(),
        title: machine.name.clone(),
        of_shop: file.is_none(),
        file,
        bar_mm: machine.bush.as_ref().map(|bush| bush.max_bar_mm),
        stroke_mm: machine.headstock.stroke_mm,
        reach_mm: machine.counter_spindle.as_ref().map(|counter| counter.farthest_mm),
    }
}

/// The choices of the page that begins so.
pub fn of(start: &Start) -> Choices {
    let shop = start.shop.as_ref();
    let of_shop = shop.iter().flat_map(|shop| &shop.machines);
    // A machine that cannot be read is no choice.
    let of_shop = of_shop.filter_map(|m| LazyLock::force(&m.machine).as_ref().map(|read| choice(&m.name, read, None)));
    let examples = MACHINES.iter().filter_map(|(name, text)| {
        let file = Named { name: (*name).into(), text: (*text).into() };
        read_machine_text(&file).map(|machine| choice(name, &machine, Some(file.into())))
    });
    let grades = shop.iter().flat_map(|shop| &shop.grades);
    let own: Vec<(String, String)> = grades.map(|grade| (grade.material.name.clone(), String::new())).collect();
    let own = (!own.is_empty()).then_some(MaterialChoices { family: None, names: own });
    let mut families: Vec<(Group, Vec<(String, String)>)> = Vec::new();
    for row in rows() {
        let name = (row.name.to_owned(), row.number.to_owned());
        match families.iter_mut().find(|(group, _)| *group == row.group()) {
            Some((_, names)) => names.push(name),
            None => families.push((row.group(), vec![name])),
        }
    }
    let families =
        families.into_iter().map(|(group, names)| MaterialChoices { family: Some(family(group).to_owned()), names });
    Choices {
        begins: !start.given,
        machines: of_shop.chain(examples).collect(),
        materials: own.into_iter().chain(families).collect(),
    }
}

fn family(group: Group) -> &'static str {
    match group {
        Group::Steel => lang::text("page-family-steel"),
        Group::ToolSteel => lang::text("page-family-tool-steel"),
        Group::StainlessSteel => lang::text("page-family-stainless"),
        Group::Titanium => lang::text("page-family-titanium"),
        Group::CobaltChromium => lang::text("page-family-cobalt"),
        Group::Nickel => lang::text("page-family-nickel"),
        Group::Copper => lang::text("page-family-copper"),
        Group::Aluminium => lang::text("page-family-aluminium"),
        Group::Plastic => lang::text("page-family-plastic"),
    }
}
