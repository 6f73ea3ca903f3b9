//! Other collets: for a diameter that none of the counter-spindle holds, with more force, with less run-out.

use crate::job::{ChangeKind, Collet, CounterSpindle, Job};
use crate::lang::lists;
use crate::lang::{self, Measure};
use crate::planner::advice::candidate::{Candidate, Role, edit, number, number_told, once};
use crate::process::profile::Profile;
use crate::say;
use serde_json::json;
use std::f64::consts::PI;

/// Largest number of collets whose clamping force a change tells.
const MOST_COLLETS_TOLD: usize = 3;
/// A clamping force is raised to at most this many times its value. Common practice, no source.
pub const MOST_CLAMP_TIMES: f64 = 4.0;
/// Mean pressure of a collet on the part up to which more force is advised, N/mm². A collet touches only parts of its bore, so this is about
/// a quarter of the yield strength of a soft steel. Common practice, no source.
const MOST_PRESSURE_N_PER_MM2: f64 = 50.0;
/// A collet is advised down to this share of the smallest diameter that the collets at hand hold. Common practice, no source.
const SMALLEST_SHARE: f64 = 0.5;
/// A collet advised holds from this much below its diameter to this much above it, and opens this much beyond what passes, mm.
const BELOW_MM: f64 = 0.4;
const ABOVE_MM: f64 = 0.1;

/// Changes worth trying.
pub fn all(job: &Job) -> Vec<Candidate> {
    let Some(counter) = &job.machine.counter_spindle else { return Vec::new() };
    let mut list = to_get(job, counter);
    list.extend(firmer(job, counter));
    let worst_mm = counter.collets.iter().filter_map(|c| c.run_out_mm).fold(0.0, f64::max);
    let own = in_file(job, counter);
    let truer = number(
        "collet_run_out",
        Role::Change(ChangeKind::Collet),
        (worst_mm, 0.1 * worst_mm),
        0.001,
        |mm| say!("change-collet-run-out", mm = Measure::Size.fixed(mm, 3)),
        |j, mm| {
            let collets = j.machine.counter_spindle.iter_mut().flat_map(|c| &mut c.collets);
            collets.filter_map(|c| c.run_out_mm.as_mut()).for_each(|r| *r = r.min(mm));
        },
    );
    list.push(truer.written(move |mm| {
        let worse = own.iter().filter(|(_, c)| c.run_out_mm.is_some_and(|r| r > mm));
        worse.map(|(i, _)| edit("machine", &place(*i, "run_out"), &number_told(mm).to_string())).collect()
    }));
    list
}

fn place(index: usize, key: &str) -> String {
    format!("counter_spindle.collets[{index}].{key}")
}

/// The collets of the machine file, with their numbers there; those that the shop has in stock follow them.
fn in_file(job: &Job, counter: &CounterSpindle) -> Vec<(usize, Collet)> {
    let stock = |c: &Collet| {
        let shop = job.nearby.0.as_ref();
        shop.is_some_and(|shop| shop.collets.iter().any(|s| s.collet == *c))
    };
    counter.collets.iter().cloned().enumerate().filter(|(_, c)| !stock(c)).collect()
}

/// The largest clamping force that a diameter bears over a length, N.
pub fn borne_n(diameter_mm: f64, hold_mm: f64) -> f64 {
    MOST_PRESSURE_N_PER_MM2 * PI * diameter_mm * hold_mm
}

/// Collets for diameters that none holds, near to what the spindle has, and with no more pressure on the part than the nearest one has.
fn to_get(job: &Job, counter: &CounterSpindle) -> Vec<Candidate> {
    let profile = Profile::new(&job.shaft);
    let held = |least: bool| {
        let each = counter.collets.iter().map(|c| if least { c.smallest_mm } else { c.largest_mm.max(c.passes_mm) });
        if least { each.fold(f64::INFINITY, f64::min) } else { each.fold(counter.bore_mm, f64::max) }
    };
    let (from_mm, to_mm) = (SMALLEST_SHARE * held(true), held(false));
    let mut known: Vec<(f64, f64)> = Vec::new();
    let mut list = Vec::new();
    // Sections that must not be gripped count too: the permission to grip them is another change.
    for section in job.shaft.sections.iter().filter(|s| s.is_plain()) {
        let d = section.largest_mm();
        let passes = profile.largest_in_front_mm(section.to_mm);
        let serves = |c: &Collet| c.holds(d) && passes <= c.passes_mm;
        let alike = |k: &(f64, f64)| (k.0 - d).abs() < 1e-9 && (k.1 - passes).abs() < 1e-9;
        let near = d >= from_mm && passes.max(d) <= to_mm;
        if !near || counter.collets.iter().any(serves) || known.iter().any(alike) {
            continue;
        }
        known.push((d, passes));
        let off = |c: &Collet| (c.largest_mm - d).abs();
        let Some(like) = counter.collets.iter().min_by(|a, b| off(a).total_cmp(&off(b))) else { continue };
        // The same pressure on a smaller diameter is less force.
        let force_n = like.clamp_force_n * (d / like.smallest_mm).min(1.0);
        let clamp_force_n = (force_n.min(borne_n(d, like.hold_mm)) / 10.0).floor() * 10.0;
        let collet = Collet {
            name: format!("{d} (to get)"),
            smallest_mm: d - BELOW_MM.min(0.1 * d),
            largest_mm: d + ABOVE_MM,
            passes_mm: passes + BELOW_MM,
            clamp_force_n,
            ..like.clone()
        };
        let (diameter, hold) = (Measure::Size.number(d), Measure::Place.number(collet.hold_mm));
        let force = Measure::Force.number(clamp_force_n);
        let says = if passes > d + 1e-9 {
            let opens = Measure::Size.fixed(collet.passes_mm, 1);
            say!("change-collet-opens", diameter = diameter, opens = opens, hold = hold, force = force)
        } else {
            say!("change-collet", diameter = diameter, hold = hold, force = force)
        };
        let names: Vec<&str> = counter.collets.iter().map(|c| c.name.as_str()).collect();
        let number = |mm: f64| number_told((mm * 1e4).round() / 1e4);
        let written = format!(
            "{{name: {}, range: [{}, {}], hold: {}, passes: {}, clamp_force: {}}}",
            collet.name,
            number(collet.smallest_mm),
            number(collet.largest_mm),
            number(collet.hold_mm),
            number(collet.passes_mm),
            number(clamp_force_n)
        );
        let role = Role::Change(ChangeKind::Collet);
        let got = once("collet", role, json!(names), json!(collet.name), says, move |j| {
            if let Some(c) = &mut j.machine.counter_spindle {
                c.collets.push(collet.clone());
            }
        });
        list.push(got.written(move |_| vec![edit("machine", "counter_spindle.collets[+]", &written)]));
    }
    list
}

/// More clamping force, as far as each diameter that the collets can hold bears it.
fn firmer(job: &Job, counter: &CounterSpindle) -> Option<Candidate> {
    let held = |c: &Collet| {
        let plain = job.shaft.sections.iter().filter(|s| s.is_plain() && c.holds(s.largest_mm()));
        plain.map(crate::job::Section::largest_mm).fold(f64::INFINITY, f64::min)
    };
    let useful: Vec<(usize, Collet, f64)> = in_file(job, counter)
        .into_iter()
        .map(|(i, c)| (i, held(&c), c))
        .filter(|(_, d, _)| d.is_finite())
        .map(|(i, d, c)| (i, c, d))
        .collect();
    let bears = |(_, c, d): &(usize, Collet, f64)| borne_n(*d, c.hold_mm) / c.clamp_force_n;
    let times = useful.iter().map(bears).fold(MOST_CLAMP_TIMES, f64::min);
    if useful.is_empty() || times <= 1.0 {
        return None;
    }
    let forces: Vec<(String, f64)> =
        useful.iter().map(|(_, c, _)| (c.name.clone(), c.clamp_force_n)).take(MOST_COLLETS_TOLD).collect();
    let names: Vec<String> = useful.iter().map(|(_, c, _)| c.name.clone()).collect();
    let firmer = number(
        "clamp_force",
        Role::Change(ChangeKind::Machine),
        (1.0, (times * 10.0).floor() / 10.0),
        0.1,
        move |v| {
            let one = |(name, n): &(String, f64)| {
                say!("change-clamp-force-collet", collet = name, force = Measure::Force.fixed(n * v, 0))
            };
            let told: Vec<String> = forces.iter().map(one).collect();
            say!("change-clamp-force", times = lang::fixed(v, 1), collets = lists::commas(&told))
        },
        move |j, v| {
            let collets = j.machine.counter_spindle.iter_mut().flat_map(|c| &mut c.collets);
            collets.filter(|c| names.contains(&c.name)).for_each(|c| c.clamp_force_n *= v);
        },
    );
    Some(firmer.written(move |v| {
        let one = |(i, c, _): &(usize, Collet, f64)| {
            edit("machine", &place(*i, "clamp_force"), &number_told(c.clamp_force_n * v).to_string())
        };
        useful.iter().map(one).collect()
    }))
}
