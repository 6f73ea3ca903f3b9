//! `wishes`: what the user has decided before planning. All may be left out.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields::{self, WISHES_MAX, nearest};
use crate::job::{HandOverWish, NeverGrip, Section, Shaft, Wishes};
use crate::say;

const KEYS: [&str; 3] = ["hand_over_at", "never_grip", "at_most_hand_overs"];

/// Reads the wishes. If the shaft is known, also checks that they lie on it.
pub(super) fn read(r: &mut Reader, job: &Map, shaft: Option<&Shaft>) -> Option<Wishes> {
    let Some(node) = r.optional(job, "wishes")? else {
        return Some(Wishes::default());
    };
    let map = r.map(node, &KEYS)?;
    let hand_overs = hand_overs(r, &map, shaft);
    let never_grip = never_grip(r, &map, shaft);
    let at_most = at_most(r, &map);
    let (hand_overs, at_most_hand_overs) = (hand_overs?, at_most?);
    if let Some(most) = at_most_hand_overs
        && most < hand_overs.len()
    {
        let diag = Diag::new(say!("wish-too-few", most = most, wished = hand_overs.len()))
            .help(say!("wish-too-few-help", wished = hand_overs.len()));
        r.complain(&map.place("at_most_hand_overs"), diag);
        return None;
    }
    Some(Wishes { hand_overs, never_grip: never_grip?, at_most_hand_overs })
}

fn hand_overs(r: &mut Reader, map: &Map, shaft: Option<&Shaft>) -> Option<Vec<HandOverWish>> {
    let Some(node) = r.optional(map, "hand_over_at")? else { return Some(Vec::new()) };
    let items = r.list(node, "hand_over_at", WISHES_MAX)?;
    let mut wishes: Vec<HandOverWish> = Vec::new();
    let mut complete = true;
    for item in items {
        let Some(wish) = hand_over(r, item, shaft) else {
            complete = false;
            continue;
        };
        if wishes.iter().any(|w| w.at_mm == wish.at_mm) {
            let diag = Diag::new(say!("wish-twice", at = wish.at_mm.to_string())).help(say!("wish-twice-help"));
            r.complain(&item.referenced, diag);
            complete = false;
        } else {
            wishes.push(wish);
        }
    }
    wishes.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
    complete.then_some(wishes)
}

fn hand_over(r: &mut Reader, item: &Spanned<Node>, shaft: Option<&Shaft>) -> Option<HandOverWish> {
    let (at_mm, at, nose) = match &item.value {
        Node::Map(_) => {
            let map = r.map(item, &["at", "nose"])?;
            let at_mm = r.number(&map, &fields::WISH_AT);
            let nose = r.number_maybe(&map, &fields::WISH_NOSE);
            (at_mm?, map.place("at"), nose?.map(|nose_mm| (nose_mm, map.place("nose"))))
        }
        _ => (r.number_in(item, &fields::WISH_HAND_OVER)?, item.referenced, None),
    };
    if let Some(shaft) = shaft {
        let length = shaft.length_mm();
        if at_mm <= 0.0 || at_mm >= length {
            let diag = Diag::new(say!("wish-off-shaft", at = at_mm.to_string()))
                .help(say!("wish-off-shaft-help", length = length.to_string()));
            r.complain(&at, diag);
            return None;
        }
    }
    if let Some((nose_mm, place)) = &nose
        && *nose_mm > at_mm
    {
        let diag = Diag::new(say!("wish-nose", nose = nose_mm.to_string()))
            .help(say!("wish-nose-help", most = at_mm.to_string()));
        r.complain(place, diag);
        return None;
    }
    Some(HandOverWish { at_mm, nose_mm: nose.map(|n| n.0) })
}

fn never_grip(r: &mut Reader, map: &Map, shaft: Option<&Shaft>) -> Option<Vec<NeverGrip>> {
    let Some(node) = r.optional(map, "never_grip")? else { return Some(Vec::new()) };
    let items = r.list(node, "never_grip", WISHES_MAX)?;
    let mut all = Vec::new();
    let mut complete = true;
    for item in items {
        match stretch(r, item, shaft) {
            Some(found) => all.extend(found),
            None => complete = false,
        }
    }
    complete.then_some(all)
}

/// Reads a stretch: the name or the number of a section, or two places. `Some(None)` if a section is meant but the
/// shaft is not known.
fn stretch(r: &mut Reader, item: &Spanned<Node>, shaft: Option<&Shaft>) -> Option<Option<NeverGrip>> {
    let whole = |(index, section): (usize, &Section)| NeverGrip {
        from_mm: section.from_mm,
        to_mm: section.to_mm,
        name: section.label(index),
    };
    if let Node::List(_) = item.value {
        let (from_mm, to_mm) = r.pair(item, &fields::WISH_NEVER_GRIP, "[[120, 140]]")?;
        if from_mm >= to_mm {
            let diag = Diag::new(say!("wish-backwards", from = from_mm.to_string(), to = to_mm.to_string()))
                .help(say!("wish-backwards-help"));
            r.complain(&item.referenced, diag);
            return None;
        }
        return Some(Some(NeverGrip { from_mm, to_mm, name: format!("{from_mm} to {to_mm} mm") }));
    }
    let text = r.text_in(item, "never_grip")?;
    let Some(shaft) = shaft else { return Some(None) };
    let sections = || shaft.sections.iter().enumerate();
    if let Some(found) = sections().find(|(_, s)| s.name.as_deref() == Some(text.as_str())) {
        return Some(Some(whole(found)));
    }
    let plain = !r.written(item).starts_with(['"', '\'']);
    if let (true, Ok(number)) = (plain, text.parse::<usize>())
        && let Some(found) = sections().find(|(i, _)| i + 1 == number)
    {
        return Some(Some(whole(found)));
    }
    let names = shaft.sections.iter().filter_map(|s| s.name.as_deref());
    let meant = nearest(&text, names).map_or(String::new(), |near| say!("did-you-mean", near = near) + " ");
    let diag = Diag::new(say!("section-unknown", name = text))
        .help(meant + &say!("wish-section-help", most = shaft.sections.len()));
    r.complain(&item.referenced, diag);
    None
}

fn at_most(r: &mut Reader, map: &Map) -> Option<Option<usize>> {
    let most = r.number_maybe(map, &fields::WISH_AT_MOST)?;
    if let Some(most) = most
        && most.fract() != 0.0
    {
        let diag = Diag::new(say!("number-not-whole", value = most.to_string()))
            .help(say!("number-not-whole-help", meaning = fields::WISH_AT_MOST.what()));
        r.complain(&map.place("at_most_hand_overs"), diag);
        return None;
    }
    Some(most.map(|most| most as usize))
}
