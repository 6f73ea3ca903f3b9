//! The shop's file: what is the same for all jobs of a workshop. A job need not repeat it, and may say otherwise.
//!
//! The file is read whole and checked like a job. Its numbers have the keys of a job, and the reader of a job asks for
//! them where the job gives none. Machine files are opened when the shop's file is read, so that the page, which opens
//! no file, can use them too. Their contents are checked only if a job uses them.

mod bars;
mod find;
mod materials;

use std::path::Path;
use std::sync::Arc;

use serde_saphyr::Spanned;

use super::file;
use super::machine;
use super::machine_from;
use super::node::{Node, parse};
use super::reader::{Map, Reader};
use super::{language, tool_list, units};
use crate::diag::{Diag, Source};
use crate::fields::{self, ALL};
use crate::job::shop::{Given, Shop, ShopCollet, ShopMachine, What, lazily};
use crate::lang;
use crate::say;

pub(super) use find::{Which, asked, found};

/// The shop's file to start from.
pub const TEMPLATE: &str = include_str!("template.yaml");

/// Keys of the file.
const KEYS: [&str; 19] = [
    "name",
    "tool_list",
    "language",
    "units",
    "machines",
    "collets",
    "materials",
    "bars",
    "rates",
    "holding",
    "objective",
    "cutting",
    "limits",
    "planning",
    "scatter",
    "change_prices",
    "confidence",
    "confidence_warn",
    "order",
];

/// Maps of numbers that have the same keys as in a job. A cutting speed belongs to a material, and the number of pieces to an order.
const LIKE_A_JOB: [(&str, &[&str]); 6] = [
    ("cutting", &["vc"]),
    ("limits", &[]),
    ("planning", &[]),
    ("scatter", &[]),
    ("change_prices", &[]),
    ("order", &["pieces"]),
];

/// Which shop's file counts for a job.
#[derive(Debug, Clone)]
pub(super) enum ShopFrom<'a> {
    /// The one that the call names, else that of the job, else the nearest upwards from this folder.
    Files(&'a Path, Option<&'a Path>),
    /// The one that the job names, from this folder; none is looked for.
    Named(&'a Path),
    /// This one, unless the job wants none. No file is opened.
    Ready(Option<Arc<Shop>>),
}

impl ShopFrom<'_> {
    /// The shop of a job.
    ///
    /// # Errors
    /// All errors in the shop's file.
    pub(super) fn of(self, job: &Spanned<Node>) -> Result<Option<Arc<Shop>>, Vec<Diag>> {
        let said = asked(job);
        let file = match (self, said) {
            (ShopFrom::Files(_, Some(file)), _) => Some(file.to_owned()),
            (_, Which::None) => None,
            (ShopFrom::Ready(shop), _) => return Ok(shop),
            (ShopFrom::Files(folder, None) | ShopFrom::Named(folder), Which::File(path)) => Some(folder.join(path)),
            (ShopFrom::Files(folder, None), Which::Looked) => found(folder),
            (ShopFrom::Named(_), Which::Looked) => None,
        };
        file.map(|file| read_shop(&file).map(Arc::new)).transpose()
    }
}

/// Reads the shop's file.
///
/// # Errors
/// All errors in it, in file order.
pub fn read_shop(path: &Path) -> Result<Shop, Vec<Diag>> {
    let source = file::source_at(path).map_err(|diag| vec![diag])?;
    let folder = path.parent().unwrap_or(Path::new("")).to_owned();
    read(&source, &|machine| file::source_at(&folder.join(machine)))
}

/// Reads the text of a shop's file. `open` gives the text of a machine file.
fn read(source: &Arc<Source>, open: &dyn Fn(&str) -> Result<Arc<Source>, Diag>) -> Result<Shop, Vec<Diag>> {
    let tree = parse(source).map_err(|diag| vec![diag])?;
    language::of(&tree).into_iter().for_each(lang::prefer);
    let mut r = Reader::new(Arc::clone(source));
    r.units = units::of(&tree).unwrap_or_default();
    let shop = r.map(&tree, &KEYS).and_then(|map| parts(&mut r, source, &map, open));
    match (shop, r.finish(&tree)) {
        (Some(shop), diags) if diags.is_empty() => Ok(shop),
        (_, diags) if diags.is_empty() => {
            Err(vec![Diag::new(say!("defect-of-reader")).help(say!("defect-of-reader-help"))])
        }
        (_, diags) => Err(diags),
    }
}

fn parts(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    open: &dyn Fn(&str) -> Result<Arc<Source>, Diag>,
) -> Option<Shop> {
    let name = r.text_maybe(map, "name");
    let language = language::read(r, map);
    let units = units::read(r, map);
    r.collets_elsewhere = map.get("collets").is_some();
    let machines = listed(r, map, "machines", |r, item| one_machine(r, item, open));
    let names: Vec<String> = machines.iter().flatten().map(|m| m.name.clone()).collect();
    let collets = listed(r, map, "collets", |r, item| one_collet(r, item, &names));
    let grades = materials::read(r, map, open);
    let bars = listed(r, map, "bars", |r, item| bars::read(r, item, grades.as_deref().unwrap_or_default()));
    let tool_list = tool_list::read(r, map, grades.as_deref().unwrap_or_default());
    let (mut numbers, mut words) = (Vec::new(), Vec::new());
    let mut complete = true;
    for (key, without) in LIKE_A_JOB {
        complete &= like_a_job(r, map, key, without, (&mut numbers, &mut words)).is_some();
    }
    complete &= rates(r, map, &mut numbers, &mut words).is_some();
    for field in [&fields::CONFIDENCE, &fields::CONFIDENCE_WARN] {
        complete &= number(r, map, field, &mut numbers).is_some();
    }
    for (key, known) in [("holding", &["bush", "no_bush"][..]), ("objective", &["time", "fewest_hand_overs", "margin"])]
    {
        complete &= word(r, map, key, known, &mut words).is_some();
    }
    name?;
    let (machines, collets, grades, bars) = (machines?, collets?, grades?, bars?);
    let line = map.get("tool_list").map_or(1, |node| r.line(node));
    let tool_list = tool_list?.map(|value| Given { value, line });
    let source = Arc::clone(source);
    let (language, units, mixed) = (language?, units?, r.foreign().to_vec());
    complete.then_some(Shop {
        source,
        language,
        units,
        mixed,
        machines,
        collets,
        grades,
        bars,
        tool_list,
        numbers,
        words,
    })
}

/// The items of a list that may be left out. None: at least one of them is wrong.
fn listed<T>(
    r: &mut Reader,
    map: &Map,
    key: &str,
    mut one: impl FnMut(&mut Reader, &Spanned<Node>) -> Option<T>,
) -> Option<Vec<T>> {
    let Some(node) = r.optional(map, key)? else { return Some(Vec::new()) };
    let items = r.list(node, key, fields::SHOP_ITEMS_MAX)?;
    let read: Vec<T> = items.iter().filter_map(|item| one(r, item)).collect();
    (read.len() == items.len()).then_some(read)
}

fn one_machine(
    r: &mut Reader,
    node: &Spanned<Node>,
    open: &dyn Fn(&str) -> Result<Arc<Source>, Diag>,
) -> Option<ShopMachine> {
    let line = r.line(node);
    let stem =
        |path: &str| Path::new(path).file_stem().map_or_else(|| path.to_owned(), |s| s.to_string_lossy().into_owned());
    if !matches!(node.value, Node::Map(_)) {
        let path = r.text_in(node, "machines")?;
        return Some(of_file(stem(&path), None, line, open(&path)));
    }
    let map = r.map(node, &["name", "file", "machine", "per_hour"])?;
    let name = r.text_maybe(&map, "name");
    let per_hour = r.number_maybe(&map, &fields::SHOP_PER_HOUR);
    let (name, per_hour) = (name?, per_hour?);
    if let Some(node) = r.optional(&map, "machine")? {
        let machine = machine::read(r, node, name.as_deref().unwrap_or("machine"))?;
        let name = name.unwrap_or_else(|| machine.name.clone());
        let machine = lazily(|| Some(machine));
        return Some(ShopMachine { name, per_hour, line, what: What::Here, machine });
    }
    let path = r.text(&map, "file", "the path of a machine file, from the folder of this file")?;
    let name = name.unwrap_or_else(|| stem(&path));
    Some(of_file(name, per_hour, line, open(&path)))
}

/// A machine in its own file.
fn of_file(name: String, per_hour: Option<f64>, line: usize, source: Result<Arc<Source>, Diag>) -> ShopMachine {
    let text = source.as_ref().ok().cloned();
    let machine = lazily(move || machine_from::in_clean_file(&text?));
    ShopMachine { name, per_hour, line, what: What::File(source), machine }
}

fn one_collet(r: &mut Reader, node: &Spanned<Node>, machines: &[String]) -> Option<ShopCollet> {
    let (map, collet) = machine::collet(r, node, &["machines"])?;
    let Some(node) = r.optional(&map, "machines")? else { return Some(ShopCollet { collet, machines: Vec::new() }) };
    let items = r.list(node, "machines", fields::SHOP_ITEMS_MAX)?;
    let mut named = Vec::with_capacity(items.len());
    for item in items {
        let name = r.text_in(item, "machines")?;
        if !machines.contains(&name) {
            let diag = Diag::new(say!("shop-machine-unknown", name = super::slips::shown(&name)))
                .help(say!("shop-machine-unknown-help", machines = machines.join(", ")));
            r.complain(&item.referenced, diag);
            return None;
        }
        named.push(name);
    }
    Some(ShopCollet { collet, machines: named })
}

type Numbers = Vec<(&'static str, Given<f64>)>;
type Words = Vec<(&'static str, Given<String>)>;

/// Reads a map that has the keys of the same map in a job.
fn like_a_job(
    r: &mut Reader,
    map: &Map,
    key: &'static str,
    without: &[&str],
    (numbers, words): (&mut Numbers, &mut Words),
) -> Option<()> {
    let Some(node) = r.optional(map, key)? else { return Some(()) };
    let known: Vec<&'static fields::Field> = ALL
        .iter()
        .filter(|f| {
            f.path
                .strip_prefix(key)
                .and_then(|rest| rest.strip_prefix('.'))
                .is_some_and(|k| !k.contains('.') && !without.contains(&k))
        })
        .collect();
    let mut keys: Vec<&'static str> = known.iter().map(|f| f.key()).collect();
    keys.extend((key == "cutting").then_some("tools"));
    let map = r.map(node, &keys)?;
    let mut complete = true;
    for field in known {
        complete &= number(r, &map, field, numbers).is_some();
    }
    if key == "cutting" {
        complete &= word(r, &map, "tools", &["single", "opposed", "tandem"], words).is_some();
    }
    complete.then_some(())
}

fn number(r: &mut Reader, map: &Map, field: &'static fields::Field, numbers: &mut Numbers) -> Option<()> {
    if let (Some(value), Some(node)) = (r.number_maybe(map, field)?, map.get(field.key())) {
        numbers.push((field.path, Given { value, line: r.line(node) }));
    }
    Some(())
}

fn word(r: &mut Reader, map: &Map, key: &'static str, known: &[&'static str], words: &mut Words) -> Option<()> {
    let Some(node) = map.get(key) else { return Some(()) };
    let choices: Vec<(&str, &str)> = known.iter().map(|word| (*word, *word)).collect();
    let value = r.choice(map, key, &choices, None)?;
    words.push((key, Given { value: value.to_owned(), line: r.line(node) }));
    Some(())
}

fn rates(r: &mut Reader, map: &Map, numbers: &mut Numbers, words: &mut Words) -> Option<()> {
    let Some(node) = r.optional(map, "rates")? else { return Some(()) };
    let map = r.map(node, &["machine_per_hour", "material_per_kg", "currency"])?;
    let machine = number(r, &map, &fields::MACHINE_PER_HOUR, numbers);
    let material = number(r, &map, &fields::MATERIAL_PER_KG, numbers);
    if let (Some(value), Some(node)) = (r.text_maybe(&map, "currency")?, map.get("currency")) {
        words.push(("currency", Given { value, line: r.line(node) }));
    }
    machine.and(material)
}
