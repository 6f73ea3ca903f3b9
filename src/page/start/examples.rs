//! The demo jobs and their machines, built into the program.

use schemars::JsonSchema;
use serde::Serialize;

use super::super::wire::{Text, Texts};
use crate::input::{Named, read_texts};
use crate::job::plan::ShaftOutline;
use crate::planner::plan::outline;

macro_rules! files {
    ($folder:literal: $($file:literal,)*) => {
        &[$(($file, include_str!(concat!("../../../demo/", $folder, $file))),)*]
    };
}

/// Names and texts of the example machines.
pub const MACHINES: &[(&str, &str)] = files!["machines/":
    "small-7.yaml", "mid-20.yaml", "long-bed-alu.yaml", "long-bed-32.yaml", "turret-32.yaml", "heavy-38.yaml",
];

/// Names and texts of the example jobs.
const JOBS: &[(&str, &str)] = files!["":
    "feed-roller-shaft.yaml", "metering-spindle.yaml", "bobbin-spindle.yaml", "platen-shaft.yaml", "scanner-rail.yaml", "drive-hub.yaml",
    "probe-needle.yaml", "collared-rod.yaml",
];

/// An example part.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Example {
    /// Its files.
    texts: Texts,
    /// Its name.
    name: String,
    /// Its length.
    length_mm: f64,
    /// Its largest diameter.
    diameter_mm: f64,
    /// Its material.
    material: String,
    /// Its outline.
    shaft: ShaftOutline,
}

/// An example machine by the name of its file, with or without a folder.
pub fn machine(name: &str) -> Option<Text> {
    let (file, text) = MACHINES.iter().find(|(file, _)| name.rsplit('/').next() == Some(file))?;
    Some(Text { name: (*file).into(), text: (*text).into() })
}

/// All of them.
pub fn gallery() -> Vec<Example> {
    JOBS.iter().filter_map(|(name, text)| example(name, text)).collect()
}

fn example(name: &str, text: &str) -> Option<Example> {
    let named = text.lines().find_map(|line| line.strip_prefix("machine:")).and_then(|name| machine(name.trim()));
    // Saved beside each other, the job finds the machine: the folder of the demos is left out.
    let text = text.replace("machine: machines/", "machine: ");
    let job = Named { name: name.to_owned(), text };
    let read = read_texts(&job, named.as_ref().map(Named::from).as_ref(), None).ok()?;
    Some(Example {
        name: read.shaft.name.clone(),
        length_mm: read.shaft.length_mm(),
        diameter_mm: read.shaft.largest_mm(),
        material: read.shaft.material.name.clone(),
        shaft: outline::shaft(&read),
        texts: Texts { job: job.into(), machine: named },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_example_is_a_job_without_errors() {
        let all = gallery();
        assert_eq!(all.len(), JOBS.len());
        assert!(all.iter().all(|e| e.texts.machine.is_some() && !e.shaft.sections.is_empty()));
    }
}
