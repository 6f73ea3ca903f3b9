//! What a user has to know about the files, the checks and the materials: as text for `help`, as Markdown for `docs/`.
//!
//! The tables are made from the schemas (so from the table of fields), the list of checks and the table of materials.

mod checks;
mod keys;
mod left_out;
pub mod materials;
mod speeds;
mod table;

use crate::lang;
use crate::schema::File;
use table::{Table, wrapped};

/// A topic.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topic {
    /// Keys of the job file.
    Job,
    /// Keys of the machine file.
    Machine,
    /// Keys of the shop's file.
    Shop,
    /// Keys of the readings file.
    Readings,
    /// The built-in materials.
    Materials,
    /// Speeds and feeds by class of material.
    Speeds,
    /// The checks.
    Checks,
    /// Keys of `plan.json`.
    PlanFile,
}

/// All topics with their names.
pub const TOPICS: [(&str, Topic); 8] = [
    ("job", Topic::Job),
    ("machine", Topic::Machine),
    ("shop", Topic::Shop),
    ("readings", Topic::Readings),
    ("materials", Topic::Materials),
    ("speeds", Topic::Speeds),
    ("checks", Topic::Checks),
    ("plan-file", Topic::PlanFile),
];

impl Topic {
    /// The topic with a name.
    pub fn named(name: &str) -> Option<Topic> {
        TOPICS.into_iter().find(|(known, _)| *known == name).map(|(_, topic)| topic)
    }

    /// What there is to know, as text. No line is longer than `width`.
    pub fn text(self, width: usize) -> String {
        let mut out = wrapped(self.opening(), width);
        if self == Topic::Materials {
            return out + "\n" + &materials::list(width);
        }
        if let Some(example) = self.example() {
            out.push('\n');
            out.push_str(example);
        }
        for table in self.tables() {
            out.push('\n');
            out.push_str(&table.text(width));
        }
        out
    }

    /// The tables as Markdown.
    pub fn markdown(self) -> String {
        let tables: Vec<String> = self.tables().iter().map(Table::markdown).collect();
        tables.join("\n")
    }

    fn tables(self) -> Vec<Table> {
        match self {
            Topic::Job => keys::tables(File::Job),
            Topic::Machine => keys::tables(File::Machine),
            Topic::Shop => keys::tables(File::Shop),
            Topic::Readings => keys::tables(File::Readings),
            Topic::PlanFile => keys::tables(File::Plan),
            Topic::Materials => materials::tables(),
            Topic::Speeds => speeds::tables(),
            Topic::Checks => vec![checks::table()],
        }
    }

    /// The sentences before the tables.
    fn opening(self) -> &'static str {
        match self {
            Topic::Job => lang::text("help-job"),
            Topic::Machine => lang::text("help-machine"),
            Topic::Shop => lang::text("help-shop"),
            Topic::Readings => lang::text("help-readings"),
            Topic::Materials => lang::text("help-materials"),
            Topic::Speeds => lang::text("help-speeds"),
            Topic::Checks => lang::text("help-checks"),
            Topic::PlanFile => lang::text("help-plan-file"),
        }
    }

    /// A file that can be used as it is; that of the job names that of the machine.
    fn example(self) -> Option<&'static str> {
        match self {
            Topic::Job => Some(include_str!("job.yaml")),
            Topic::Machine => Some(include_str!("machine.yaml")),
            Topic::Shop => Some(include_str!("shop.yaml")),
            Topic::Readings => Some(include_str!("readings.yaml")),
            Topic::Materials | Topic::Speeds | Topic::Checks | Topic::PlanFile => None,
        }
    }
}
