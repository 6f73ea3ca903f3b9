//! Work that leaves this plan: it is done in a second set-up, or the part is made from its other end.

use crate::job::plan::Edit;
use crate::job::{ChangeKind, End, Engraved, FeatureKind, Hold, Job, SectionKind, Shaft, Tapped};
use crate::lang;
use crate::planner::advice::candidate::{Candidate, Role, edit, number_told, once};
use crate::process::Rig;
use crate::say;
use serde_json::{Value, json};

/// Time to put a part into a second set-up and to take it out, by hand, s. Common practice, no source.
pub const LOADING_S: f64 = 20.0;
/// The names of these changes begin so.
pub const PREFIX: &str = "set_up of ";

/// The group of changes that decide whether a centre can hold the front.
pub const HOLD: &str = "hold";

/// Whether machine and part have what `hold: centre` needs, and the job does not ask for it yet.
pub fn may_take_a_centre(job: &Job) -> bool {
    let comes = job.hold == Hold::Collet && job.machine.centre_comes(job.holding);
    comes && job.shaft.has_front_centre_hole() && job.wishes.hand_overs.is_empty()
}

/// Whether other parts of the job need a feature: a keyway the hole that it is in, the centre its hole.
fn is_needed(job: &Job, feature: &FeatureKind) -> bool {
    match feature {
        FeatureKind::CentreHole { end: End::Front, .. } => job.hold == Hold::Centre,
        FeatureKind::AxialHole { end, .. } => job.shaft.features.iter().any(|f| match &f.kind {
            FeatureKind::Keyway { end: own, .. } => own == end,
            _ => false,
        }),
        _ => false,
    }
}

/// Changes worth trying.
pub fn all(job: &Job) -> Vec<Candidate> {
    let rig = Rig::new(job, None);
    let role = Role::Change(ChangeKind::SetUp);
    let mut list = Vec::new();
    for (i, feature) in job.shaft.features.iter().enumerate().filter(|(_, f)| !is_needed(job, &f.kind)) {
        let (text, time_s) = rig.feature_work(&feature.kind);
        let own = feature.clone();
        let change = elsewhere(role, &text, time_s, format!("shaft.features[{i}]"), move |j| {
            remove(&mut j.shaft.features, &own);
        });
        let of_centre = matches!(feature.kind, FeatureKind::CentreHole { end: End::Front, .. });
        list.push(if of_centre && may_take_a_centre(job) { change.in_group(HOLD) } else { change });
    }
    for (i, work) in job.shaft.back_work.iter().enumerate() {
        let own = work.clone();
        list.push(elsewhere(role, &work.name, work.time_s, format!("shaft.back_work[{i}]"), move |j| {
            remove(&mut j.shaft.back_work, &own);
        }));
    }
    list.extend(turn_round(job));
    list
}

/// Removes the first item that is equal to one.
fn remove<T: PartialEq>(list: &mut Vec<T>, item: &T) {
    if let Some(at) = list.iter().position(|other| other == item) {
        list.remove(at);
    }
}

fn elsewhere(
    role: Role,
    text: &str,
    time_s: f64,
    place: String,
    with: impl Fn(&mut Job) + Sync + 'static,
) -> Candidate {
    let says =
        say!("change-set-up", work = text, seconds = lang::fixed(time_s, 1), loading = format!("{LOADING_S:.0}"));
    let change = once(&format!("{PREFIX}{text}"), role, json!(text), Value::Null, says, with);
    Candidate { elsewhere_s: time_s, ..change }.written(move |_| vec![edit("job", &place, "")])
}

/// The part made from its other end. None: places that the user has given, or edges that differ, would have to be thought over.
fn turn_round(job: &Job) -> Option<Candidate> {
    let shaft = &job.shaft;
    let even = shaft.sections.iter().all(|s| s.edges[0] == s.edges[1]);
    let symmetric = shaft.sections.len() == 1 && shaft.features.is_empty();
    if !even
        || symmetric
        || job.hold == Hold::Centre
        || !job.wishes.is_empty()
        || !job.vary.is_empty()
        || !shaft.back_work.is_empty()
    {
        return None;
    }
    let role = Role::Change(ChangeKind::TurnRound);
    let (before, after) = (json!("front first"), json!("rear first"));
    let edits = edits_of_turning(shaft);
    let change = once("turn_round", role, before, after, say!("change-turn-round"), |j| turn(&mut j.shaft));
    let group = if may_take_a_centre(job) { HOLD } else { "end" };
    Some(change.in_group(group).written(move |_| edits.clone()))
}

/// Turns a shaft round.
fn turn(shaft: &mut Shaft) {
    let length_mm = shaft.length_mm();
    shaft.sections.reverse();
    for section in &mut shaft.sections {
        (section.from_mm, section.to_mm) = (length_mm - section.to_mm, length_mm - section.from_mm);
        if let SectionKind::Taper { front_mm, rear_mm } = &mut section.kind {
            std::mem::swap(front_mm, rear_mm);
        }
    }
    for feature in &mut shaft.features {
        turn_feature(&mut feature.kind, length_mm);
    }
}

/// Turns a feature round on a shaft of a length, mm; its keys in a job that this changes, with their new values.
fn turn_feature(kind: &mut FeatureKind, length_mm: f64) -> Vec<(&'static str, String)> {
    let told = |mm: f64| number_told(mm).to_string();
    match kind {
        FeatureKind::CrossHole { at_mm, .. } | FeatureKind::TappedHole { place: Tapped::Across { at_mm }, .. } => {
            *at_mm = length_mm - *at_mm;
            vec![("at", told(*at_mm))]
        }
        FeatureKind::Keyseat { from_mm, to_mm, .. } => {
            (*from_mm, *to_mm) = (length_mm - *to_mm, length_mm - *from_mm);
            vec![("from", told(*from_mm)), ("to", told(*to_mm))]
        }
        FeatureKind::Engraving { place: Engraved::Along { from_mm, to_mm }, .. } => {
            (*from_mm, *to_mm) = (length_mm - *to_mm, length_mm - *from_mm);
            vec![("at", told(*from_mm))]
        }
        FeatureKind::CentreHole { end, .. }
        | FeatureKind::Facing { end, .. }
        | FeatureKind::AxialHole { end, .. }
        | FeatureKind::TappedHole { place: Tapped::InEnd { end, .. }, .. }
        | FeatureKind::HexSocket { end, .. }
        | FeatureKind::Keyway { end, .. }
        | FeatureKind::Engraving { place: Engraved::Face { end }, .. } => {
            let (other, key) = match end {
                End::Front => (End::Back, "back"),
                End::Back => (End::Front, "front"),
            };
            *end = other;
            vec![("end", key.to_owned())]
        }
    }
}

/// What to write into a job for a shaft turned round: sections are exchanged, then places are given from the other end.
fn edits_of_turning(shaft: &Shaft) -> Vec<Edit> {
    let last = shaft.sections.len() - 1;
    let swap = |i: usize| Edit { with: Some(last - i), ..edit("job", &format!("shaft.sections[{i}]"), "") };
    let mut list: Vec<Edit> = (0..shaft.sections.len() / 2).map(swap).collect();
    for (i, section) in shaft.sections.iter().rev().enumerate() {
        if let SectionKind::Taper { front_mm, rear_mm } = section.kind {
            let value = format!("[{}, {}]", number_told(rear_mm), number_told(front_mm));
            list.push(edit("job", &format!("shaft.sections[{i}].taper"), &value));
        }
    }
    for (i, feature) in shaft.features.iter().enumerate() {
        let keys = turn_feature(&mut feature.kind.clone(), shaft.length_mm());
        list.extend(keys.iter().map(|(key, value)| edit("job", &format!("shaft.features[{i}].{key}"), value)));
    }
    list
}
