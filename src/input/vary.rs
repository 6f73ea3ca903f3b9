//! `vary`: the ranges of a family of parts.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader, shown};
use crate::diag::Diag;
use crate::fields::{self, FAMILY_MAX, Field, nearest};
use crate::job::{Range, Section, SectionKind, Shaft, Varied};

const FORM: &str = "`length: {section: body, from: 200, to: 1200, step: 50}`";

/// Reads the ranges, the one of the length first. Empty if the job has no `vary`.
pub(super) fn read(r: &mut Reader, job: &Map, shaft: Option<&Shaft>) -> Option<Vec<Range>> {
    let Some(node) = r.optional(job, "vary")? else {
        return Some(Vec::new());
    };
    let map = r.map(node, "`vary`", &["length", "diameter"])?;
    let length_fields = [&fields::VARY_LENGTH_FROM, &fields::VARY_LENGTH_TO, &fields::VARY_LENGTH_STEP];
    let diameter_fields = [&fields::VARY_DIAMETER_FROM, &fields::VARY_DIAMETER_TO, &fields::VARY_DIAMETER_STEP];
    let length = range(r, &map, Varied::Length, length_fields, shaft);
    let diameter = range(r, &map, Varied::Diameter, diameter_fields, shaft);
    let ranges: Vec<Range> = length?.into_iter().chain(diameter?).collect();
    if ranges.is_empty() {
        if !map.tried("length") && !map.tried("diameter") {
            let diag = Diag::new("`vary` names nothing to vary").help(format!("write {FORM}, `diameter`, or both"));
            r.complain(&map.at, diag);
        }
        return None;
    }
    let parts = ranges.iter().map(Range::count).fold(1_usize, usize::saturating_mul);
    if parts > FAMILY_MAX {
        let diag = Diag::new(format!("`vary` asks for {parts} parts"))
            .help(format!("a family has at most {FAMILY_MAX}: take a larger `step`"));
        r.complain(&map.at, diag);
        return None;
    }
    Some(ranges)
}

fn range(
    r: &mut Reader,
    vary: &Map,
    varied: Varied,
    [from, to, step]: [&Field; 3],
    shaft: Option<&Shaft>,
) -> Option<Option<Range>> {
    let Some(node) = r.optional(vary, varied.key())? else {
        return Some(None);
    };
    let map = r.map(node, "the range", &["section", "from", "to", "step"])?;
    let section = r.required(&map, "section", "the section's name, or its number from the front");
    let section = section.and_then(|node| section_of(r, node, varied, shaft?));
    let (from_mm, to_mm, step_mm) = (r.number(&map, from), r.number(&map, to), r.number(&map, step));
    let (from_mm, to_mm, step_mm) = (from_mm?, to_mm?, step_mm?);
    if from_mm > to_mm {
        let diag = Diag::new(format!("the {} goes from {from_mm} to {to_mm} mm", varied.key()))
            .help("`to` is not smaller than `from`");
        r.complain(&map.place("to"), diag);
        return None;
    }
    let (section, label) = section?;
    Some(Some(Range { varied, section, label, from_mm, to_mm, step_mm }))
}

/// Index and label of the section that is meant: found by its name, otherwise by its number.
fn section_of(r: &mut Reader, node: &Spanned<Node>, varied: Varied, shaft: &Shaft) -> Option<(usize, String)> {
    let text = r.text_in(node, "section")?;
    let called = |(i, s): (usize, &Section)| (s.name.as_deref() == Some(text.as_str())).then_some(i);
    let named: Vec<usize> = shaft.sections.iter().enumerate().filter_map(called).collect();
    let number = text.parse::<usize>().ok().and_then(|n| n.checked_sub(1)).filter(|i| *i < shaft.sections.len());
    let index = match (&named[..], number) {
        ([index], _) => *index,
        ([], Some(index)) => index,
        ([], None) => {
            let names: Vec<&str> = shaft.sections.iter().filter_map(|s| s.name.as_deref()).collect();
            let help = match nearest(&text, names.iter().copied()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("give a section's `name`, or its number from the front, 1 to {}", shaft.sections.len()),
            };
            r.complain(&node.referenced, Diag::new(format!("no section is called `{}`", shown(&text))).help(help));
            return None;
        }
        ([first, ..], _) => {
            let diag = Diag::new(format!("{} sections are called `{}`", named.len(), shown(&text)))
                .help(format!("name them apart, or write the number from the front: `section: {}`", first + 1));
            r.complain(&node.referenced, diag);
            return None;
        }
    };
    let section = shaft.sections.get(index)?;
    let plain =
        matches!(section.kind, SectionKind::Cylinder { .. } | SectionKind::Groove { .. } | SectionKind::Knurl { .. });
    if varied == Varied::Diameter && !plain {
        let diag = Diag::new(format!("{} has no plain diameter to vary", section.label(index)))
            .help("a thread, a taper or flats can vary in length only");
        r.complain(&node.referenced, diag);
        return None;
    }
    Some((index, section.label(index)))
}

/// The note about its family in the plan of a job.
pub(super) fn note(ranges: &[Range], varied: &[(&Range, f64)]) -> Option<String> {
    if ranges.is_empty() {
        return None;
    }
    if varied.is_empty() {
        let all: Vec<String> = ranges.iter().map(Range::text).collect();
        return Some(format!(
            "The job varies {}: planned here with the values of its sections; `spanhold batch` plans the whole range.",
            all.join(", and ")
        ));
    }
    let all: Vec<String> =
        varied.iter().map(|(range, mm)| format!("{} of {} {mm} mm", range.varied.key(), range.label)).collect();
    Some(format!("One part of a family: {}.", all.join(", ")))
}
