//! What a shop has, as plain data: machines, collets, grades, bars, house values.

use std::path::PathBuf;
use std::sync::{Arc, LazyLock};

use super::materials::{self, Material, Row};
use super::{Collet, ListedTool, Machine, SectionKind, Shaft, Spreads, StockKind, Tolerance};
use crate::diag::{Diag, Source};
use crate::lang::{Language, Units};

/// A number or word with the line that gives it.
#[derive(Debug, Clone, PartialEq)]
pub struct Given<T> {
    /// The value.
    pub value: T,
    /// Line in the shop's file, from 1.
    pub line: usize,
}

/// A machine of the shop.
#[derive(Debug)]
pub struct ShopMachine {
    /// The name by which a job asks for it.
    pub name: String,
    /// Its cost per hour, if it has its own.
    pub per_hour: Option<f64>,
    /// Line in the shop's file, from 1.
    pub line: usize,
    /// What it is.
    pub what: What,
    /// The machine, where it can be read without errors. It is read when it is first asked for, which few jobs do.
    pub machine: Lazily,
}

/// A machine that is read when it is first asked for.
pub type Lazily = LazyLock<Option<Machine>, Box<dyn FnOnce() -> Option<Machine> + Send>>;

/// A machine that `read` gives when it is first asked for.
pub fn lazily(read: impl FnOnce() -> Option<Machine> + Send + 'static) -> Lazily {
    LazyLock::new(Box::new(read))
}

/// What a machine of the shop is: written in the shop's file, or the text of its own file.
#[derive(Debug)]
pub enum What {
    /// Written in the shop's file.
    Here,
    /// Its own file, or why that cannot be read.
    File(Result<Arc<Source>, Diag>),
}

/// A collet in stock.
#[derive(Debug)]
pub struct ShopCollet {
    /// The collet.
    pub collet: Collet,
    /// Names of the machines that it fits; empty: all.
    pub machines: Vec<String>,
}

/// What a shop has.
#[derive(Debug)]
pub struct Shop {
    /// Its file.
    pub source: Arc<Source>,
    /// The language of texts and sheets.
    pub language: Option<Language>,
    /// The units that its numbers are in, and those of texts and sheets.
    pub units: Option<Units>,
    /// Values in units of the other system, by key and line.
    pub mixed: Vec<(&'static str, usize)>,
    /// Its machines; the first is the usual one.
    pub machines: Vec<ShopMachine>,
    /// Collets in stock, beside those of the machine files.
    pub collets: Vec<ShopCollet>,
    /// Its own grades, and grades of the table for which it has its own values.
    pub grades: Vec<Grade>,
    /// Its bars.
    pub bars: Vec<Bar>,
    /// Its tools.
    pub tool_list: Option<Given<Vec<ListedTool>>>,
    /// Numbers by the path that they have in a job.
    pub numbers: Vec<(&'static str, Given<f64>)>,
    /// Words by their key.
    pub words: Vec<(&'static str, Given<String>)>,
}

impl Shop {
    /// Name of the file, without its folder.
    pub fn file_name(&self) -> String {
        let path = &self.source.path;
        path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
    }

    /// Paths of the files that belong to the shop: its own, and those of its machines that could be read.
    pub fn files(&self) -> Vec<PathBuf> {
        let machines = self.machines.iter().filter_map(|m| match &m.what {
            What::File(Ok(source)) => Some(source.path.clone()),
            _ => None,
        });
        std::iter::once(self.source.path.clone()).chain(machines).collect()
    }

    /// A number by its path.
    pub fn number(&self, path: &str) -> Option<&Given<f64>> {
        self.numbers.iter().find(|(known, _)| *known == path).map(|(_, given)| given)
    }

    /// A word by its key.
    pub fn word(&self, key: &str) -> Option<&Given<String>> {
        self.words.iter().find(|(known, _)| *known == key).map(|(_, given)| given)
    }

    /// The machine with a name; without a name the usual one, which is the first.
    pub fn machine(&self, name: Option<&str>) -> Option<&ShopMachine> {
        self.machines.iter().find(|machine| name.is_none_or(|name| machine.name == name))
    }

    /// Adds the collets in stock that fit a machine, except those whose name the machine file has already. `machine`: its name in the
    /// shop's file, if it has one.
    pub fn add_collets(&self, machine: Option<&str>, to: &mut Vec<Collet>) {
        for shelf in &self.collets {
            let fits =
                shelf.machines.is_empty() || machine.is_some_and(|name| shelf.machines.iter().any(|m| m == name));
            if fits && !to.iter().any(|collet| collet.name == shelf.collet.name) {
                to.push(shelf.collet.clone());
            }
        }
    }
}

/// A grade of the shop.
#[derive(Debug, Clone, PartialEq)]
pub struct Grade {
    /// Its values.
    pub material: Material,
    /// The row of the table that it is. None: the shop's own grade.
    pub row: Option<&'static Row>,
    /// Price per kg.
    pub price_per_kg: Option<f64>,
    /// Whether the shop gives its own cutting force.
    pub own_force: bool,
    /// Line in the file that gives it, from 1.
    pub line: usize,
}

impl Grade {
    /// Whether a word is in its name, or finds the row of the table that it is.
    pub fn is(&self, word: &str) -> bool {
        let of_row = self.row.is_some_and(|row| materials::matching(word).iter().any(|found| found.name == row.name));
        of_row || self.material.name.to_lowercase().contains(&word.trim().to_lowercase())
    }
}

/// The grade with a name: the shop's, else that of the table. With it whether the shop has an entry for it.
///
/// # Errors
/// Neither has such a name.
pub fn find<'g>(grades: &'g [Grade], name: &str) -> Result<(Material, Option<&'g Grade>), Diag> {
    let plain = |text: &str| text.trim().to_lowercase();
    if let Some(own) = grades.iter().find(|g| plain(&g.material.name) == plain(name)) {
        return Ok((own.material.clone(), Some(own)));
    }
    let row = materials::find(name)?;
    let of_row = grades.iter().find(|g| g.row.is_some_and(|own| own.name == row.name));
    Ok((of_row.map_or_else(|| row.material(), |g| g.material.clone()), of_row))
}

/// What else the shop has that could make a part.
#[derive(Debug, Clone, Default)]
pub struct Nearby(pub Option<Arc<Shop>>);

/// Two jobs are the same job whatever else the shop has.
impl PartialEq for Nearby {
    fn eq(&self, _: &Nearby) -> bool {
        true
    }
}

impl Nearby {
    /// The other machines of the shop, with the collets in stock that fit them, by name. Machines that cannot be read are left out.
    pub fn machines(&self) -> Vec<(String, Machine)> {
        let Some(shop) = &self.0 else { return Vec::new() };
        let one = |m: &ShopMachine| {
            let mut machine = LazyLock::force(&m.machine).clone()?;
            if let Some(counter) = &mut machine.counter_spindle {
                shop.add_collets(Some(&m.name), &mut counter.collets);
            }
            Some((m.name.clone(), machine))
        };
        shop.machines.iter().filter_map(one).collect()
    }

    /// The diameters of the bars in stock of a material that a shaft can be turned from, mm.
    pub fn bars_mm(&self, shaft: &Shaft) -> Vec<f64> {
        let Some(shop) = &self.0 else { return Vec::new() };
        let of_it = |bar: &&Bar| find(&shop.grades, &bar.material).is_ok_and(|(m, _)| m.name == shaft.material.name);
        let mut all: Vec<f64> =
            shop.bars.iter().filter(of_it).filter(|b| b.gives(shaft)).map(|b| b.diameter_mm).collect();
        all.sort_by(f64::total_cmp);
        all.dedup();
        all
    }
}

/// A bar in stock.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    /// Name of its material.
    pub material: String,
    /// Diameter, mm.
    pub diameter_mm: f64,
    /// Tolerance of the diameter.
    pub tolerance: Option<Tolerance>,
    /// How it was made.
    pub kind: Option<StockKind>,
    /// Length, mm.
    pub bar_length_mm: Option<f64>,
    /// Its price per kg.
    pub price_per_kg: Option<f64>,
    /// Spreads of its own.
    pub spreads: Spreads,
    /// Line in the shop's file, from 1.
    pub line: usize,
}

impl Bar {
    /// Whether a shaft can be turned from it: it is thicker than every section, or as thick as some and they may stay as they are.
    pub fn gives(&self, shaft: &Shaft) -> bool {
        shaft.sections.iter().all(|section| {
            let left_mm = self.diameter_mm - section.largest_mm();
            let drawn = matches!(section.kind, SectionKind::Cylinder { .. }) && left_mm.abs() < 1e-6;
            left_mm > 1e-6 || drawn && self.keeps(&section.tolerance)
        })
    }

    /// Whether its tolerance is within another one for the same diameter. General tolerances are kept by any drawn bar.
    fn keeps(&self, asked: &Tolerance) -> bool {
        match &self.tolerance {
            Some(own) => own.lower_mm >= asked.lower_mm - 1e-9 && own.upper_mm <= asked.upper_mm + 1e-9,
            None => asked.label.starts_with("ISO 2768"),
        }
    }
}
