//! Single changes of work other than turning: a place for a tool, a socket that is shaved instead of punched, a finer
//! stroke.

use crate::job::plan::Edit;
use crate::job::{ChangeKind, FeatureKind, Forming, Interrupt, Job, Place, Section, SectionKind, ThreadBy};
use crate::lang::Measure;
use crate::planner::advice::candidate::{Candidate, Role, edit, number, number_told, once};
use crate::process::Rig;
use crate::process::segments::THREAD_LENGTH;
use crate::say;
use serde_json::{Value, json};

/// The finest step of a shaving tool that is worth trying, mm.
const FINEST_STEP_MM: f64 = 0.01;

/// The least share of the bush land that may be left on unturned bar, where advice relaxes it. Common practice, no source.
const LEAST_LAND: f64 = 0.25;

/// Changes worth trying.
pub fn all(job: &Job) -> Vec<Candidate> {
    let mut list = places(job);
    list.extend(long_threads(job));
    for (i, feature) in job.shaft.features.iter().enumerate() {
        match feature.kind {
            FeatureKind::HexSocket { forming: Forming::Punched, across_flats_mm, .. } => {
                let says = say!("change-forming", size = Measure::Size.number(across_flats_mm));
                let role = Role::Change(ChangeKind::Method);
                let shaved = once("forming", role, json!("punch"), json!("shave"), says, move |j| {
                    if let Some(FeatureKind::HexSocket { forming, .. }) = kind_of(j, i) {
                        *forming = Forming::Shaved;
                    }
                });
                let place = format!("shaft.features[{i}].forming");
                list.push(shaved.written(move |_| vec![edit("job", &place, "shave")]));
            }
            FeatureKind::HexSocket { step_mm, .. } | FeatureKind::Keyway { step_mm, .. } => {
                let finer = number(
                    "step",
                    Role::Change(ChangeKind::Cut),
                    (step_mm, FINEST_STEP_MM.min(step_mm)),
                    0.005,
                    |v| say!("change-step", step = Measure::Size.fixed(v, 3)),
                    move |j, v| {
                        if let Some(FeatureKind::HexSocket { step_mm, .. } | FeatureKind::Keyway { step_mm, .. }) =
                            kind_of(j, i)
                        {
                            *step_mm = v;
                        }
                    },
                );
                let place = format!("shaft.features[{i}].step");
                list.push(finer.written(move |v| vec![edit("job", &place, &number_told(v).to_string())]));
            }
            _ => {}
        }
    }
    list
}

fn kind_of(job: &mut Job, feature: usize) -> Option<&mut FeatureKind> {
    job.shaft.features.get_mut(feature).map(|f| &mut f.kind)
}

/// Other ways to make threads that are too long for a single-point tool.
fn long_threads(job: &Job) -> Vec<Candidate> {
    if !Rig::new(job, None).segments().is_err_and(|refused| refused.rule == THREAD_LENGTH) {
        return Vec::new();
    }
    let longest_mm = Rig::new(job, None).pull_back_by_land_mm();
    let index = Place::ALL.iter().position(|p| *p == Place::Whirling);
    let numbers: Vec<usize> =
        job.shaft.sections.iter().enumerate().filter(|(_, s)| is_long(s, longest_mm)).map(|(i, _)| i).collect();
    let by = |way: &'static str, more: &'static [(&'static str, &'static str, &'static str)]| {
        let numbers = numbers.clone();
        move |_: f64| {
            let mut list: Vec<Edit> = Vec::new();
            for i in &numbers {
                list.push(edit("job", &format!("shaft.sections[{i}].thread_by"), way));
                list.extend(
                    more.iter()
                        .filter(|m| m.0 == "section")
                        .map(|(_, key, value)| edit("job", &format!("shaft.sections[{i}].{key}"), value)),
                );
            }
            list.extend(more.iter().filter(|m| m.0 == "machine").map(|(file, at, value)| edit(file, at, value)));
            list
        }
    };
    let long = move |s: &&mut Section| is_long(s, longest_mm);
    let role = Role::Change(ChangeKind::Machine);
    let unit = once("tools.whirling", role, json!(0), json!(1), say!("change-whirling"), move |j| {
        j.shaft.sections.iter_mut().filter(long).for_each(|s| s.thread_by = Some(ThreadBy::Whirling));
        let places = j.machine.tools.as_mut().map(|t| &mut t.places);
        if let Some(units) = places.zip(index).and_then(|(places, i)| places.get_mut(i)) {
            *units = (*units).max(1);
        }
    });
    let rolled = json!(ThreadBy::Rolling.key());
    let role = Role::Change(ChangeKind::Method);
    let rolling = once("thread_by", role, Value::Null, rolled, say!("change-rolling"), move |j| {
        for section in j.shaft.sections.iter_mut().filter(long) {
            section.thread_by = Some(ThreadBy::Rolling);
            section.interrupt = Interrupt::Free;
        }
    });
    let mut list = vec![
        unit.written(by("whirling", &[("machine", "tools.whirling", "1")])).in_group("threads"),
        rolling.written(by("rolling", &[("section", "interrupt", "free")])).in_group("threads"),
    ];
    if let Some(bush) = &job.machine.bush {
        let (now_mm, least_mm) = (bush.engagement_min_mm, LEAST_LAND * bush.land_mm);
        if least_mm < now_mm {
            list.push(number(
                "engagement_min",
                Role::House,
                (now_mm, least_mm),
                0.5,
                |mm| say!("change-engagement", mm = Measure::Place.fixed(mm, 1)),
                |j, mm| {
                    if let Some(bush) = &mut j.machine.bush {
                        bush.engagement_min_mm = mm;
                    }
                },
            ));
        }
    }
    list
}

fn is_long(section: &Section, longest_mm: f64) -> bool {
    matches!(section.kind, SectionKind::Thread(_)) && section.length_mm() > longest_mm
}

/// More places for tools, of each kind that has too few.
fn places(job: &Job) -> Vec<Candidate> {
    let rig = Rig::new(job, None);
    let fit = rig.segments().ok().and_then(|segments| rig.tool_fit(&segments)).filter(|fit| !fit.fits());
    let short = fit.into_iter().flat_map(|fit| fit.rooms).filter(|room| room.short > 0);
    let candidate = |room: crate::process::tooling::Room| {
        let place = room.place;
        let index = Place::ALL.iter().position(|p| *p == room.place).unwrap_or(0);
        let range = (room.places as f64, (room.places + room.short) as f64);
        let at = format!("tools.{}", room.place.key());
        let more = number(
            &at,
            Role::Change(ChangeKind::Machine),
            range,
            1.0,
            move |n| say!("change-tool-places", number = n.round() as usize, place = place.in_words()),
            move |j, n| {
                if let Some(tools) = &mut j.machine.tools {
                    tools.places[index] = n as usize;
                }
            },
        );
        let at = at.clone();
        more.written(move |n| vec![edit("machine", &at, &number_told(n).to_string())])
    };
    short.map(candidate).collect()
}
