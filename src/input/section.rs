//! Reads one entry of `shaft.sections`.

use std::f64::consts::PI;

use serde_saphyr::{Location, Spanned};

use super::edges::{self, Turned};
use super::node::Node;
use super::reader::{Map, Reader};
use super::slips::shown;
use super::tolerance;
use crate::diag::Diag;
use crate::fields;
use crate::job::thread::{Side, Thread};
use crate::job::{Interrupt, Section, SectionKind, ThreadBy, Tolerance, iso2768};
use crate::lang;
use crate::say;

const KEYS: [&str; 20] = [
    "length",
    "diameter",
    "tolerance",
    "ra",
    "run_out",
    "name",
    "kind",
    "thread",
    "thread_by",
    "taper",
    "across_flats",
    "sides",
    "grip",
    "interrupt",
    "finish_pass",
    "chamfer",
    "radius",
    "grind",
    "turned_tolerance",
    "turned_ra",
];

/// Keys that say what kind of section it is.
const KINDS: [&str; 4] = ["diameter", "thread", "taper", "across_flats"];

#[derive(Clone, Copy, PartialEq)]
enum Word {
    Groove,
    Knurl,
}

/// Reads a section that begins at `from_mm`. The length is also returned alone: even if the rest of the section is
/// wrong, the sections behind it then have their place.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, from_mm: f64) -> (Option<f64>, Option<Section>) {
    let Some(map) = r.map(node, &KEYS) else {
        return (None, None);
    };
    let length = r.number(&map, &fields::LENGTH);
    let section = section(r, &map, from_mm, length);
    (length, section)
}

fn section(r: &mut Reader, map: &Map, from_mm: f64, length: Option<f64>) -> Option<Section> {
    let kind = kind(r, map);
    let name = r.text_maybe(map, "name");
    let ra = r.number_maybe(map, &fields::RA);
    let run_out = r.number_maybe(map, &fields::RUN_OUT);
    let finish_pass = r.flag(map, "finish_pass");
    let grip = r.flag(map, "grip");
    let interrupt = r.optional(map, "interrupt").and_then(|given| match given {
        None => Some(None),
        Some(_) => r.choice(map, "interrupt", &INTERRUPTS, None).map(Some),
    });
    let tolerance = kind.as_ref().and_then(|kind| tolerance_of(r, map, kind));
    let edges = edges::read(r, map);
    let thread_by = r.optional(map, "thread_by").and_then(|given| match given {
        None => Some(None),
        Some(_) => r.choice(map, "thread_by", &ThreadBy::ALL.map(|by| (by.key(), by)), None).map(Some),
    });
    let (kind, thread_by) = (kind?, thread_by?);
    let what = match kind {
        SectionKind::Cylinder { .. } => None,
        SectionKind::Thread(_) => Some(lang::text("section-is-thread")),
        SectionKind::Taper { .. } => Some(lang::text("section-is-taper")),
        SectionKind::Groove { .. } => Some(lang::text("section-is-groove")),
        SectionKind::Knurl { .. } => Some(lang::text("section-is-knurl")),
        SectionKind::Flats { .. } => Some(lang::text("section-has-flats")),
    };
    let grip = grip?.unwrap_or(what.is_none());
    if let (true, Some(what)) = (grip, what) {
        let diag = Diag::new(what).help(say!("section-grip-help"));
        r.complain(&map.place("grip"), diag);
        return None;
    }
    let given = interrupt?;
    let is_thread = matches!(kind, SectionKind::Thread(_));
    if is_thread && given.is_some_and(|interrupt| interrupt != Interrupt::Never) {
        let diag = Diag::new(say!("thread-interrupted")).help(say!("thread-interrupted-help"));
        r.complain(&map.place("interrupt"), diag);
        return None;
    }
    if thread_by.is_some() && !is_thread {
        let diag = Diag::new(say!("thread-by-alone")).help(say!("thread-by-alone-help"));
        r.complain(&map.place("thread_by"), diag);
        return None;
    }
    let run_out_mm = run_out?;
    let Turned { kind, tolerance, ra_um, ground } = edges::ground(r, map, kind, tolerance?, ra?)?;
    let mut section = Section {
        name: name?,
        kind,
        from_mm,
        to_mm: super::lengths::tidy(from_mm + length?),
        tolerance,
        ra_um,
        run_out_mm,
        finish_pass: finish_pass?.unwrap_or(false),
        grip,
        interrupt: Interrupt::Never,
        thread_by,
        edges: edges?,
        ground,
    };
    if thread_by == Some(ThreadBy::Rolling) {
        // The rolls go over every line that a stop leaves on the blank.
        section.interrupt = Interrupt::Free;
    } else if !is_thread {
        // Grinding removes a line with the rest of the turned surface.
        let usual = match section.ground {
            Some(_) => Interrupt::Free,
            None => Interrupt::usual(section.tolerance.width_mm(), section.largest_mm(), ra_um),
        };
        section.interrupt = given.unwrap_or(usual);
    }
    Some(section)
}

const INTERRUPTS: [(&str, Interrupt); 3] =
    [("never", Interrupt::Never), ("avoid", Interrupt::Avoid), ("free", Interrupt::Free)];

fn kind(r: &mut Reader, map: &Map) -> Option<SectionKind> {
    let word = match r.optional(map, "kind")? {
        None => None,
        Some(_) => Some(r.choice(map, "kind", &[("groove", Word::Groove), ("knurl", Word::Knurl)], None)?),
    };
    let given: Vec<&str> = KINDS.into_iter().filter(|key| map.get(key).is_some()).collect();
    if map.get("sides").is_some() && !given.contains(&"across_flats") {
        let diag = Diag::new(say!("sides-alone")).help(say!("sides-alone-help"));
        r.complain(&map.place("sides"), diag);
        return None;
    }
    match given[..] {
        [] if KINDS.iter().any(|key| map.tried(key)) => None,
        [] => {
            let diag = Diag::new(say!("section-no-size")).help(say!("section-no-size-help"));
            r.complain(&map.at, diag);
            None
        }
        ["diameter"] => {
            let diameter_mm = r.number(map, &fields::DIAMETER)?;
            Some(match word {
                None => SectionKind::Cylinder { diameter_mm },
                Some(Word::Groove) => SectionKind::Groove { diameter_mm },
                Some(Word::Knurl) => SectionKind::Knurl { diameter_mm },
            })
        }
        _ if word.is_some() => {
            let diag = Diag::new(say!("section-kind-size")).help(say!("section-kind-size-help"));
            r.complain(&map.place("kind"), diag);
            None
        }
        ["thread"] => thread(r, map),
        ["taper"] => taper(r, map),
        ["across_flats"] | ["diameter", "across_flats"] => flats(r, map),
        _ => {
            let diag =
                Diag::new(say!("section-two-sizes", keys = given.join(", "))).help(say!("section-two-sizes-help"));
            r.complain(&given.get(1).map_or(map.at, |second| map.place(second)), diag);
            None
        }
    }
}

fn thread(r: &mut Reader, map: &Map) -> Option<SectionKind> {
    let node = map.get("thread")?;
    let text = r.text(map, "thread", "such as M16x1.5-6g")?;
    let thread = r.settle(&node.referenced, Thread::parse(&text).and_then(|t| t.on(Side::External)))?;
    r.settle(&node.referenced, fields::THREAD.check(thread.major_mm))?;
    Some(SectionKind::Thread(thread))
}

fn taper(r: &mut Reader, map: &Map) -> Option<SectionKind> {
    let node = r.required(map, "taper", "")?;
    let (front_mm, rear_mm) = r.pair(node, &fields::TAPER, "[18, 22]")?;
    if front_mm == rear_mm {
        let diag = Diag::new(say!("taper-same")).help(say!("taper-same-help", diameter = front_mm.to_string()));
        r.complain(&node.referenced, diag);
        return None;
    }
    Some(SectionKind::Taper { front_mm, rear_mm })
}

fn flats(r: &mut Reader, map: &Map) -> Option<SectionKind> {
    let across = r.number(map, &fields::ACROSS_FLATS);
    let sides = r.number(map, &fields::SIDES);
    let diameter = r.number_maybe(map, &fields::DIAMETER);
    let (across_flats_mm, sides, diameter) = (across?, sides?, diameter?);
    if ![2.0, 4.0, 6.0, 8.0].contains(&sides) {
        let diag = Diag::new(say!("sides-number", sides = sides.to_string())).help(say!("sides-number-help"));
        r.complain(&map.place("sides"), diag);
        return None;
    }
    let corners_mm = (sides > 2.0).then(|| across_flats_mm / (PI / sides).cos());
    let circle_mm = match (diameter, corners_mm) {
        (Some(diameter), _) if diameter <= across_flats_mm => {
            let diag = Diag::new(say!("flats-too-thick", diameter = diameter.to_string()))
                .help(say!("flats-too-thick-help", across = across_flats_mm.to_string()));
            r.complain(&map.place("diameter"), diag);
            return None;
        }
        (Some(diameter), Some(corners)) if diameter > corners => {
            let diag = Diag::new(say!("flats-beyond-corners", diameter = diameter.to_string()))
                .help(say!("flats-beyond-corners-help", corners = format!("{corners:.3}")));
            r.complain(&map.place("diameter"), diag);
            return None;
        }
        (Some(diameter), _) => diameter,
        (None, Some(corners)) => r.settle(&map.place("across_flats"), fields::CORNERS.check(corners))?,
        (None, None) => {
            let diag = Diag::new(say!("flats-without-diameter")).help(say!("flats-without-diameter-help"));
            r.complain(&map.at, diag);
            return None;
        }
    };
    // `sides` is exactly 2, 4, 6 or 8 here.
    Some(SectionKind::Flats { across_flats_mm, sides: sides as u32, circle_mm })
}

fn tolerance_of(r: &mut Reader, map: &Map, kind: &SectionKind) -> Option<Tolerance> {
    let diameter_mm = match kind {
        SectionKind::Cylinder { diameter_mm }
        | SectionKind::Groove { diameter_mm }
        | SectionKind::Knurl { diameter_mm } => *diameter_mm,
        SectionKind::Thread(thread) => thread.major_mm,
        SectionKind::Taper { front_mm, rear_mm } => front_mm.max(*rear_mm),
        SectionKind::Flats { circle_mm, .. } => *circle_mm,
    };
    match r.optional(map, "tolerance")? {
        None => {
            let at: Location = map.place("diameter");
            r.settle(&at, iso2768::limits(diameter_mm))
        }
        Some(node) => {
            if let (SectionKind::Thread(thread), Node::Text(text)) = (kind, &node.value)
                && text.starts_with(|c: char| c.is_ascii_digit())
            {
                let diag = Diag::new(say!("thread-class", class = shown(text))).help(say!(
                    "thread-class-help",
                    designation = thread.designation,
                    class = shown(text)
                ));
                r.complain(&node.referenced, diag);
                return None;
            }
            tolerance::read(r, node, diameter_mm)
        }
    }
}
