//! A job as a family of parts. Without `vary` it is one part, otherwise one part for every combination of the varied
//! values.
//!
//! The varied numbers are put into the tree of the file and the whole job is read again. So every part of a family is
//! checked like any other job, and its tolerances, interruptions and features follow from its own sizes.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use serde_saphyr::Spanned;

use super::job::read_tree;
use super::lengths::tidy;
use super::machine_from::MachineFrom;
use super::node::{Node, parse};
use super::shop::ShopFrom;
use super::{Beside, file, measure, units};
use crate::diag::{Diag, Source};
use crate::fields::{self, Field};
use crate::job::shop::Shop;
use crate::job::{Job, Range, Varied};
use crate::lang::Units;

/// A job file or text, and the ranges that it varies.
#[derive(Debug)]
pub struct Family {
    source: Arc<Source>,
    base_dir: PathBuf,
    machine: Option<PathBuf>,
    shop: Option<Arc<Shop>>,
    tree: Spanned<Node>,
    ranges: Vec<Range>,
    values_mm: Vec<Vec<f64>>,
    /// Rear end of each varied section with the sizes written in the file, mm.
    ends_mm: Vec<f64>,
}

impl Family {
    /// Reads a job file with the files that the call names.
    ///
    /// # Errors
    /// The text cannot be read. For a family, also all errors in its nominal part. Errors in a single job are reported
    /// by [`Family::part`].
    pub fn read(path: &Path, beside: Beside<'_>) -> Result<Family, Vec<Diag>> {
        let source = file::source_at(path).map_err(|diag| vec![diag])?;
        Family::of(source, path.parent().unwrap_or(Path::new("")), beside)
    }

    /// Reads a job from its text. Messages show `name`. A machine path in it is relative to `base_dir`.
    ///
    /// # Errors
    /// As [`Family::read`].
    pub fn from_text(name: &str, text: String, base_dir: &Path, beside: Beside<'_>) -> Result<Family, Vec<Diag>> {
        Family::of(file::source_of(name, text).map_err(|diag| vec![diag])?, base_dir, beside)
    }

    fn of(source: Arc<Source>, base_dir: &Path, beside: Beside<'_>) -> Result<Family, Vec<Diag>> {
        let tree = parse(&source).map_err(|diag| vec![diag])?;
        let shop = ShopFrom::Files(base_dir, beside.shop).of(&tree)?;
        let machine = beside.machine;
        let (mut ranges, mut ends_mm) = (Vec::new(), Vec::new());
        if tree.value.get("vary").is_some() {
            let nominal = read_tree(&source, &tree, MachineFrom::files(base_dir, machine), shop.clone(), &[])?;
            let sections = &nominal.shaft.sections;
            ends_mm = nominal.vary.iter().filter_map(|range| Some(sections.get(range.section)?.to_mm)).collect();
            ranges = nominal.vary;
        }
        let values_mm = ranges.iter().map(Range::values_mm).collect();
        let (base_dir, machine) = (base_dir.to_owned(), machine.map(Path::to_owned));
        Ok(Family { source, base_dir, machine, shop, tree, ranges, values_mm, ends_mm })
    }

    /// The ranges. Empty for a single part.
    pub fn ranges(&self) -> &[Range] {
        &self.ranges
    }

    /// Number of parts; at least 1.
    pub fn count(&self) -> usize {
        self.values_mm.iter().map(Vec::len).product()
    }

    /// The varied values of a part in mm, in the order of the ranges. The last range changes first from part to part.
    pub fn values_mm(&self, part: usize) -> Vec<f64> {
        let mut rest = part;
        let mut values: Vec<f64> = Vec::with_capacity(self.values_mm.len());
        for of in self.values_mm.iter().rev() {
            values.extend(of.get(rest % of.len()));
            rest /= of.len();
        }
        values.reverse();
        values
    }

    /// The job of a part.
    ///
    /// # Errors
    /// All errors in this job, in file order.
    pub fn part(&self, part: usize) -> Result<Job, Vec<Diag>> {
        let values = self.values_mm(part);
        let varied: Vec<(&Range, f64)> = self.ranges.iter().zip(values).collect();
        let machine = MachineFrom::files(&self.base_dir, self.machine.as_deref());
        if varied.is_empty() {
            return read_tree(&self.source, &self.tree, machine, self.shop.clone(), &[]);
        }
        let mut tree = self.tree.clone();
        let units = units::of(&tree).unwrap_or_default();
        for ((range, value_mm), end_mm) in varied.iter().zip(&self.ends_mm) {
            change(&mut tree, units, range, *value_mm, *end_mm);
        }
        read_tree(&self.source, &tree, machine, self.shop.clone(), &varied)
    }
}

/// Puts a value into the tree of a file in these units. If a section becomes longer or shorter, everything behind it moves with its rear end.
fn change(tree: &mut Spanned<Node>, units: Units, range: &Range, value_mm: f64, end_mm: f64) {
    let Some(shaft) = child(tree, "shaft") else { return };
    let section = child(shaft, "sections").and_then(|sections| match &mut sections.value {
        Node::List(items) => items.get_mut(range.section),
        _ => None,
    });
    let field = match range.varied {
        Varied::Length => &fields::LENGTH,
        Varied::Diameter => &fields::DIAMETER,
    };
    let Some(node) = section.and_then(|s| child(s, field.key())) else { return };
    let Some(was_mm) = measure::of_node(field, &node.value, units) else { return };
    let grown_mm = value_mm - was_mm;
    node.value = measure::as_node(field, value_mm, units);
    if range.varied == Varied::Diameter {
        return;
    }
    let Some(Node::List(features)) = child(shaft, "features").map(|n| &mut n.value) else { return };
    for feature in features {
        let mut place = |field: &Field, grown_mm: f64| {
            let node = child(feature, field.key())?;
            let at_mm = measure::of_node(field, &node.value, units)?;
            if grown_mm != 0.0 {
                node.value = measure::as_node(field, tidy(at_mm + grown_mm), units);
            }
            Some(at_mm)
        };
        // A keyseat keeps its length. If it begins behind the section, it moves as a whole.
        let begins = place(&fields::AT, 0.0).or_else(|| place(&fields::KEYSEAT_FROM, 0.0));
        if begins.is_none_or(|at_mm| at_mm < end_mm) {
            continue;
        }
        for field in [&fields::AT, &fields::KEYSEAT_FROM, &fields::KEYSEAT_TO] {
            place(field, grown_mm);
        }
    }
}

/// The value of a key.
fn child<'a>(node: &'a mut Spanned<Node>, key: &str) -> Option<&'a mut Spanned<Node>> {
    match &mut node.value {
        Node::Map(entries) => entries
            .iter_mut()
            .find(|(k, _)| matches!(&k.value, Node::Text(text) if text == key))
            .map(|(_, value)| value),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::FeatureKind;

    fn family(vary: &str) -> Result<Family, Vec<Diag>> {
        let text = super::super::TEMPLATE.replace(
            "- {length: 210, diameter: 18, tolerance: h9, ra: 1.6}",
            "- {length: 210, diameter: 18, tolerance: h9, ra: 1.6, name: body}",
        );
        Family::from_text("job.yaml", format!("{text}\nvary: {vary}\n"), Path::new("."), Beside::default())
    }

    #[test]
    fn each_part_is_a_job_of_its_own_sizes_and_what_lies_behind_moves() {
        let family = family("{length: {section: body, from: 200, to: 300, step: 50}, diameter: {section: 4, from: 17, to: 18, step: 0.5}}")
            .expect("a family");
        assert_eq!(family.count(), 9);
        assert_eq!(family.values_mm(0), [200.0, 17.0]);
        assert_eq!(family.values_mm(5), [250.0, 18.0]);
        let (first, last) = (family.part(0).expect("a job"), family.part(8).expect("a job"));
        assert_eq!(first.shaft.length_mm(), 470.2);
        assert_eq!(last.shaft.length_mm(), 570.2);
        assert_eq!(first.shaft.sections[3].largest_mm(), 17.0);
        assert_ne!(first.input_digest, last.input_digest);
        let keyseat = |job: &Job| {
            job.shaft.features.iter().find_map(|f| match f.kind {
                FeatureKind::Keyseat { from_mm, to_mm, .. } => Some((from_mm, to_mm)),
                _ => None,
            })
        };
        assert_eq!(keyseat(&first), Some((290.0, 330.0)));
        assert_eq!(keyseat(&last), Some((390.0, 430.0)));
        assert!(last.notes.iter().any(|n| n == "One part of a family: length of body 300 mm, diameter of body 18 mm."));
    }

    #[test]
    fn a_job_without_ranges_is_one_part() {
        let family =
            Family::from_text("job.yaml", super::super::TEMPLATE.to_owned(), Path::new("."), Beside::default());
        let family = family.expect("a job");
        assert_eq!((family.count(), family.ranges().len()), (1, 0));
        let alone = super::super::read_job_text("job.yaml", super::super::TEMPLATE, Path::new("."));
        assert_eq!(family.part(0), alone);
    }

    #[test]
    fn what_is_wrong_with_a_range_is_told_with_its_place() {
        for (vary, says) in [
            ("{}", "`vary` is empty"),
            ("{lenght: {section: 1, from: 1, to: 2, step: 1}}", "Unknown key `lenght`"),
            ("{length: {section: bodi, from: 1, to: 2, step: 1}}", "No section has the name `bodi`"),
            ("{length: {section: 99, from: 1, to: 2, step: 1}}", "No section has the name `99`"),
            ("{length: {section: body, from: 3, to: 2, step: 1}}", "goes from 3 to 2 mm"),
            ("{length: {section: body, from: 3, to: 2000, step: 0.001}}", "`vary` gives"),
            ("{length: {section: body, from: 3, to: 20}}", "`step` is missing"),
            ("{diameter: {section: 3, from: 3, to: 20, step: 1}}", "no plain diameter to vary"),
            ("{diameter: {section: body, from: 3, to: 20, step: 0}}", "0 mm is too small"),
        ] {
            let diags = family(vary).expect_err(vary);
            assert_eq!(diags.len(), 1, "{vary}: {diags:?}");
            assert!(diags[0].what.contains(says) && diags[0].place.is_some() && diags[0].help.is_some(), "{diags:?}");
        }
    }
}
