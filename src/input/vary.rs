//! `vary`: the ranges of a family of parts.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use super::slips::shown;
use crate::diag::Diag;
use crate::fields::{self, FAMILY_MAX, Field, nearest};
use crate::job::{Range, Section, SectionKind, Shaft, Varied};
use crate::say;

/// Reads the ranges, the one of the length first. Empty if the job has no `vary`.
pub(super) fn read(r: &mut Reader, job: &Map, shaft: Option<&Shaft>) -> Option<Vec<Range>> {
    let Some(node) = r.optional(job, "vary")? else {
        return Some(Vec::new());
    };
    let map = r.map(node, &["length", "diameter"])?;
    let length_fields = [&fields::VARY_LENGTH_FROM, &fields::VARY_LENGTH_TO, &fields::VARY_LENGTH_STEP];
    let diameter_fields = [&fields::VARY_DIAMETER_FROM, &fields::VARY_DIAMETER_TO, &fields::VARY_DIAMETER_STEP];
    let length = range(r, &map, Varied::Length, length_fields, shaft);
    let diameter = range(r, &map, Varied::Diameter, diameter_fields, shaft);
    let ranges: Vec<Range> = length?.into_iter().chain(diameter?).collect();
    if ranges.is_empty() {
        if !map.tried("length") && !map.tried("diameter") {
            let diag = Diag::new(say!("vary-nothing")).help(say!("vary-nothing-help"));
            r.complain(&map.at, diag);
        }
        return None;
    }
    let parts = ranges.iter().map(Range::count).fold(1_usize, usize::saturating_mul);
    if parts > FAMILY_MAX {
        let diag = Diag::new(say!("vary-too-many", parts = parts)).help(say!("vary-too-many-help", most = FAMILY_MAX));
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
    let map = r.map(node, &["section", "from", "to", "step"])?;
    let section = r.required(&map, "section", "the name of the section, or its number from the front");
    let section = section.and_then(|node| section_of(r, node, varied, shaft?));
    let (from_mm, to_mm, step_mm) = (r.number(&map, from), r.number(&map, to), r.number(&map, step));
    let (from_mm, to_mm, step_mm) = (from_mm?, to_mm?, step_mm?);
    if from_mm > to_mm {
        let diag = Diag::new(say!("vary-backwards", from = from_mm.to_string(), to = to_mm.to_string()))
            .help(say!("vary-backwards-help"));
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
                Some(near) => say!("did-you-mean", near = near),
                None => say!("section-unknown-help", most = shaft.sections.len()),
            };
            r.complain(&node.referenced, Diag::new(say!("section-unknown", name = shown(&text))).help(help));
            return None;
        }
        ([first, ..], _) => {
            let diag = Diag::new(say!("sections-same-name", count = named.len(), name = shown(&text)))
                .help(say!("sections-same-name-help", number = first + 1));
            r.complain(&node.referenced, diag);
            return None;
        }
    };
    let section = shaft.sections.get(index)?;
    let plain =
        matches!(section.kind, SectionKind::Cylinder { .. } | SectionKind::Groove { .. } | SectionKind::Knurl { .. });
    if varied == Varied::Diameter && !plain {
        let diag =
            Diag::new(say!("vary-no-diameter", section = section.label(index))).help(say!("vary-no-diameter-help"));
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
        return Some(say!("note-family", ranges = all.join("; ")));
    }
    let all: Vec<String> = varied.iter().map(|(range, mm)| range.size_text(*mm)).collect();
    Some(say!("note-part-of-family", sizes = all.join(", ")))
}
