//! The single changes that are tried when there is no plan.

use crate::job::{Collet, Hold, Holding, Interrupt, Job, Sleeve, Tools, Tray};
use crate::lang::lists;
use crate::planner::advice::candidate::{Candidate, Ease, number, once};
use crate::planner::advice::{driven, dropped, works};
use crate::process::Rig;
use crate::process::fall::NoFall;
use crate::process::profile::Profile;
use crate::say;
use serde_json::{Value, json};

/// Largest number of collets whose clamping force a change tells.
const MOST_COLLETS_TOLD: usize = 3;
/// Largest clamping force of a headstock's collet, N.
const MOST_CLAMP_N: f64 = 200_000.0;
/// A limit of safety is relaxed to at most this many times its value.
const SAFE_TIMES: f64 = 5.0;
/// A limit for the quality of the part is relaxed to at most this many times its value.
const PART_TIMES: f64 = 25.0;
/// A tray is advised for parts up to this length: a longer part bends or jams when it falls, mm. Common practice, no source.
const LONGEST_FALL_MM: f64 = 150.0;

/// The stroke that the headstock uses is shortened to no less than this share.
const LEAST_STROKE: f64 = 0.1;
/// The least stroke that a file may give, mm.
const LEAST_STROKE_MM: f64 = 5.0;

/// All changes worth trying for a job.
pub fn all(job: &Job) -> Vec<Candidate> {
    let mut list = wishes(job);
    list.extend(settings(job));
    list.extend(leaves(job));
    list.extend(tooling(job));
    list.extend(limits(job));
    list.extend(machines(job));
    list.extend(works::all(job));
    list.extend(driven::all(job));
    list.retain(|c| c.after.is_some() || (c.range.1 - c.range.0).abs() >= c.step);
    list
}

fn wishes(job: &Job) -> Vec<Candidate> {
    let dropped = dropped::one_dropped(job).into_iter().map(|(told, left)| {
        let says = say!("change-drop-wish", wish = told);
        once("wish", Ease::Wish, json!(told), Value::Null, says, move |j| j.wishes = left.clone())
    });
    dropped.collect()
}

/// Whether machine and part have what `hold: centre` needs.
fn may_take_a_centre(job: &Job) -> bool {
    job.machine.centre_comes(job.holding) && job.shaft.has_front_centre_hole() && job.wishes.hand_overs.is_empty()
}

fn settings(job: &Job) -> Vec<Candidate> {
    let vc = job.cutting.vc_m_per_min;
    let d = job.stock.diameter_mm;
    let most = job.machine.headstock_rpm();
    let rpm = crate::units::spindle_rpm(vc, d).min(most);
    let vc_of = move |n: f64| n * std::f64::consts::PI * d / 1000.0;
    let mut list = vec![
        number(
            "rpm",
            Ease::Setting,
            (rpm.floor(), (0.2 * rpm).ceil()),
            round_step(0.02 * rpm).max(1.0),
            move |n| say!("change-rpm", rpm = format!("{n:.0}"), vc = format!("{:.0}", vc_of(n))),
            move |j, n| j.set_vc(vc_of(n)),
        ),
        number(
            "speed_floor",
            Ease::Setting,
            (job.cutting.speed_floor, 0.2),
            0.05,
            |f| say!("change-speed-floor", percent = format!("{:.0}", 100.0 * f)),
            |j, f| j.cutting.speed_floor = f,
        ),
        number(
            "ap_max",
            Ease::Setting,
            (job.cutting.ap_max_mm, (d / 2.0).min(4.0 * job.cutting.ap_max_mm)),
            0.1,
            |ap| say!("change-ap-max", depth = format!("{ap:.1}")),
            |j, ap| j.cutting.ap_max_mm = ap,
        ),
    ];
    let (holding, says) = match job.holding {
        Holding::Bush => (Holding::NoBush, say!("change-no-bush")),
        Holding::NoBush => (Holding::Bush, say!("change-bush")),
    };
    let has = match holding {
        Holding::Bush => job.machine.bush.is_some(),
        Holding::NoBush => job.machine.no_bush.is_some(),
    };
    if has {
        list.push(once("holding", Ease::Tooling, json!(job.holding.key()), json!(holding.key()), says, move |j| {
            j.holding = holding;
        }));
    }
    if job.hold == Hold::Collet && may_take_a_centre(job) {
        let (before, after) = (json!(Hold::Collet.key()), json!(Hold::Centre.key()));
        list.push(once("hold", Ease::Tooling, before, after, say!("change-centre"), |j| j.hold = Hold::Centre));
    }
    let stroke_mm = job.machine.headstock.stroke_mm;
    list.push(number(
        "shorter_stroke",
        Ease::Setting,
        (stroke_mm, (LEAST_STROKE * stroke_mm).max(LEAST_STROKE_MM)),
        5.0,
        |s| say!("change-shorter-stroke", stroke = format!("{s:.0}")),
        |j, s| j.machine.headstock.stroke_mm = s,
    ));
    if let Some(axial_n) = job.machine.counter_spindle.as_ref().map(|c| c.axial_load_n).filter(|n| *n < 0.0) {
        list.push(number(
            "axial_load",
            Ease::Setting,
            (axial_n, 0.0),
            round_step(-0.02 * axial_n),
            |n| say!("change-axial-load", force = format!("{n:.0}")),
            |j, n| {
                if let Some(c) = &mut j.machine.counter_spindle {
                    c.axial_load_n = n;
                }
            },
        ));
    }
    if job.cutting.tools == Tools::Single {
        let says = say!("change-opposed");
        list.push(once("tools", Ease::Setting, json!("single"), json!("opposed"), says, |j| {
            j.cutting.tools = Tools::Opposed;
        }));
        // Not every machine can do it, so it is tried where the machine file says so.
        if let Some(side) =
            job.machine.tandem_side().filter(|_| job.holding == Holding::Bush && job.cutting.lag_mm > 0.0)
        {
            let says = say!("change-tandem");
            list.push(once("tools", Ease::Setting, json!("single"), json!("tandem"), says, move |j| {
                j.cutting.tools = Tools::Tandem;
                j.cutting.finisher.side = side;
            }));
        }
    }
    list
}

fn leaves(job: &Job) -> Vec<Candidate> {
    let mut list = Vec::new();
    for (i, section) in job.shaft.sections.iter().enumerate() {
        let name = section.label(i);
        let thread = matches!(section.kind, crate::job::SectionKind::Thread(_));
        if section.interrupt == Interrupt::Never && !thread {
            let says = say!("change-interrupt", section = name);
            list.push(once(
                &format!("interrupt of {name}"),
                Ease::Leave,
                json!("never"),
                json!("avoid"),
                says,
                move |j| {
                    j.shaft.sections[i].interrupt = Interrupt::Avoid;
                },
            ));
        }
        if !section.grip && section.is_plain() {
            let says = say!("change-grip", section = name);
            list.push(once(&format!("grip of {name}"), Ease::Leave, json!(false), json!(true), says, move |j| {
                j.shaft.sections[i].grip = true;
            }));
        }
    }
    if job.shaft.sections.iter().any(|s| s.run_out_mm.is_some()) {
        list.push(number(
            "sections.run_out",
            Ease::Leave,
            (1.0, PART_TIMES),
            0.5,
            |times| say!("change-section-run-out", times = format!("{times:.1}")),
            |j, times| j.shaft.sections.iter_mut().filter_map(|s| s.run_out_mm.as_mut()).for_each(|r| *r *= times),
        ));
    }
    list.push(number(
        "straightness",
        Ease::Leave,
        (job.shaft.bow_mm_per_m, 0.05),
        0.01,
        |b| say!("change-straightness", bow = format!("{b:.2}")),
        |j, b| j.shaft.bow_mm_per_m = b,
    ));
    list
}

fn tooling(job: &Job) -> Vec<Candidate> {
    let mut list = Vec::new();
    if let Some(counter) = &job.machine.counter_spindle {
        let profile = Profile::new(&job.shaft);
        let mut known: Vec<(f64, f64)> = Vec::new();
        // Sections that must not be gripped count too: the permission to grip them is another change.
        for section in job.shaft.sections.iter().filter(|s| s.is_plain()) {
            let d = section.largest_mm();
            let passes = profile.largest_in_front_mm(section.to_mm);
            let serves = |c: &Collet| c.holds(d) && passes <= c.passes_mm;
            let alike = |k: &(f64, f64)| (k.0 - d).abs() < 1e-9 && (k.1 - passes).abs() < 1e-9;
            if counter.collets.iter().any(serves) || known.iter().any(alike) {
                continue;
            }
            known.push((d, passes));
            let like =
                counter.collets.iter().min_by(|a, b| (a.largest_mm - d).abs().total_cmp(&(b.largest_mm - d).abs()));
            let (hold_mm, clamp_force_n) = like.map_or((d.max(10.0), 8000.0), |c| (c.hold_mm, c.clamp_force_n));
            let opens = passes + 0.4;
            let collet = Collet {
                name: format!("{d} (to get)"),
                smallest_mm: d - 0.4,
                largest_mm: d + 0.1,
                hold_mm,
                passes_mm: opens,
                clamp_force_n,
                run_out_mm: like.and_then(|c| c.run_out_mm),
            };
            let (diameter, hold, force) = (d.to_string(), hold_mm.to_string(), clamp_force_n.to_string());
            let says = if passes > d + 1e-9 {
                let opens = format!("{opens:.1}");
                say!("change-collet-opens", diameter = diameter, opens = opens, hold = hold, force = force)
            } else {
                say!("change-collet", diameter = diameter, hold = hold, force = force)
            };
            let names: Vec<&str> = counter.collets.iter().map(|c| c.name.as_str()).collect();
            list.push(once("collet", Ease::Tooling, json!(names), json!(collet.name), says, move |j| {
                if let Some(c) = &mut j.machine.counter_spindle {
                    c.collets.push(collet.clone());
                }
            }));
        }
    }
    let collets = job.machine.counter_spindle.iter().flat_map(|c| &c.collets);
    let worst_mm = collets.filter_map(|c| c.run_out_mm).fold(0.0, f64::max);
    list.push(number(
        "collet_run_out",
        Ease::Tooling,
        (worst_mm, 0.1 * worst_mm),
        0.001,
        |mm| say!("change-collet-run-out", mm = format!("{mm:.3}")),
        |j, mm| {
            let collets = j.machine.counter_spindle.iter_mut().flat_map(|c| &mut c.collets);
            collets.filter_map(|c| c.run_out_mm.as_mut()).for_each(|r| *r = r.min(mm));
        },
    ));
    let largest = job.shaft.sections.iter().map(crate::job::Section::largest_mm).fold(0.0, f64::max);
    list.push(number(
        "bar",
        Ease::Tooling,
        (job.stock.diameter_mm, largest.ceil()),
        1.0,
        |d| say!("change-bar", diameter = d.to_string()),
        |j, d| {
            j.limits.follow_bar(j.stock.diameter_mm, d);
            j.stock.diameter_mm = d;
        },
    ));
    list
}

fn limits(job: &Job) -> Vec<Candidate> {
    let l = &job.limits;
    let eased = |name: &'static str, from: f64, to: f64, unit: &'static str, set: fn(&mut Job, f64)| {
        // The step is as fine as for a limit of safety, however far the range goes.
        let step = round_step(0.02 * from.max(to.min(SAFE_TIMES * from)));
        let says = move |v: f64| say!("change-limit", limit = name, value = format!("{}{unit}", on(step, v)));
        number(name, Ease::Limit, (from, to), step, says, set)
    };
    let (stiffness, span) = (l.stiffness_min_n_per_um, l.span_stiffness_min_n_per_um);
    let mut list = vec![
        eased("stiffness_min", stiffness, 0.1 * stiffness, " N/µm", |j, v| j.limits.stiffness_min_n_per_um = v),
        eased("span_stiffness_min", span, 0.1 * span, " N/µm", |j, v| j.limits.span_stiffness_min_n_per_um = v),
        eased("whirl_ratio", l.whirl_ratio, 0.9, "", |j, v| j.limits.whirl_ratio = v),
        eased("whip", l.whip_mm, SAFE_TIMES * l.whip_mm, " mm", |j, v| j.limits.whip_mm = v),
        eased("sag", l.sag_mm, PART_TIMES * l.sag_mm, " mm", |j, v| j.limits.sag_mm = v),
        eased("pick_up", l.pick_up_mm, SAFE_TIMES * l.pick_up_mm, " mm", |j, v| j.limits.pick_up_mm = v),
        eased("release", l.release_mm, SAFE_TIMES * l.release_mm, " mm", |j, v| j.limits.release_mm = v),
        eased("drill", l.drill_mm, PART_TIMES * l.drill_mm, " mm", |j, v| j.limits.drill_mm = v),
        eased("tolerance_share", l.tolerance_share, 1.0, "", |j, v| j.limits.tolerance_share = v),
        eased("bore_clearance", l.bore_clearance_mm, 0.0, " mm", |j, v| j.limits.bore_clearance_mm = v),
        eased("torque_margin", l.torque_margin, 1.0, "", |j, v| j.limits.torque_margin = v),
        eased("buckling_share", l.buckling_share, (2.0 * l.buckling_share).min(0.9), "", |j, v| {
            j.limits.buckling_share = v;
        }),
    ];
    let free = |ratio: f64| eased("free_ratio", ratio, PART_TIMES * ratio, "", |j, v| j.limits.free_ratio = Some(v));
    list.extend(l.free_ratio.map(free));
    list
}

/// The round number (1, 2 or 5 and a power of ten) at or below a step.
fn round_step(step: f64) -> f64 {
    if step <= 0.0 {
        return 1.0;
    }
    let power = 10f64.powf(step.log10().floor());
    [5.0, 2.0, 1.0].into_iter().map(|n| n * power).find(|s| *s <= step * (1.0 + 1e-9)).unwrap_or(power)
}

/// A value with as many decimals as its step has.
fn on(step: f64, value: f64) -> String {
    let decimals = (-step.log10()).ceil().clamp(0.0, 6.0) as usize;
    format!("{value:.decimals$}")
}

/// A tray for this part, where only its size keeps it from falling. A stroke that does not turn the part with its front free lets no
/// part fall, and a long part is not dropped.
fn tray(job: &Job) -> Option<Candidate> {
    let (length_mm, diameter_mm) = (job.shaft.length_mm(), job.shaft.largest_mm());
    let too_large = Rig::new(job, None).no_fall().is_some_and(|no| matches!(no, NoFall::TooLarge(_)));
    let turned = job.parted_at_mm() <= job.machine.headstock.stroke_mm;
    if !too_large || !turned || length_mm > LONGEST_FALL_MM {
        return None;
    }
    let told = |t: &Tray| json!({"max_length": t.max_length_mm, "max_diameter": t.max_diameter_mm});
    // A hundredth of a mm is fine enough for a tray, and what may fall must not be less than the part.
    let up = |mm: f64| (mm * 100.0 - 1e-6).ceil() / 100.0;
    let now = job.machine.part_off.tray;
    // The other bound of a tray stays where it is large enough.
    let most = |known: Option<f64>, needed: f64| known.map_or(up(needed), |k| k.max(up(needed)));
    let tray =
        Tray::new(most(now.map(|t| t.max_length_mm), length_mm), most(now.map(|t| t.max_diameter_mm), diameter_mm));
    let says =
        say!("change-tray", length = tray.max_length_mm.to_string(), diameter = tray.max_diameter_mm.to_string());
    let from = now.as_ref().map_or(Value::Null, told);
    Some(once("part_off.tray", Ease::Machine, from, told(&tray), says, move |j| j.machine.part_off.tray = Some(tray)))
}

fn machines(job: &Job) -> Vec<Candidate> {
    let head = &job.machine.headstock;
    let mut list = vec![number(
        "stroke",
        Ease::Machine,
        (head.stroke_mm, head.stroke_mm + 500.0),
        5.0,
        |s| say!("change-stroke", stroke = format!("{s:.0}")),
        |j, s| j.machine.headstock.stroke_mm = s,
    )];
    if let Some(bush) = &job.machine.bush {
        let d = job.stock.diameter_mm;
        if d > bush.max_bar_mm {
            let says = say!("change-bush-max-bar", bar = d.to_string());
            list.push(once("bush.max_bar", Ease::Machine, json!(bush.max_bar_mm), json!(d), says, move |j| {
                if let Some(b) = &mut j.machine.bush {
                    b.max_bar_mm = d;
                }
            }));
        }
    }
    if let Some(force_n) = head.clamp_force_n {
        list.push(number(
            "headstock.clamp_force",
            Ease::Machine,
            (force_n, (20.0 * force_n).min(MOST_CLAMP_N)),
            100.0,
            |n| say!("change-headstock-clamp-force", force = format!("{n:.0}")),
            |j, n| j.machine.headstock.clamp_force_n = Some(n),
        ));
    }
    list.extend(tray(job));
    let Some(counter) = &job.machine.counter_spindle else { return list };
    let of_counter = |name: &'static str,
                      from: f64,
                      to: f64,
                      step: f64,
                      says: fn(f64) -> String,
                      set: fn(&mut crate::job::CounterSpindle, f64)| {
        number(name, Ease::Machine, (from, to), step, says, move |j: &mut Job, v| {
            if let Some(c) = &mut j.machine.counter_spindle {
                set(c, v);
            }
        })
    };
    let length = job.shaft.length_mm();
    list.push(of_counter(
        "farthest",
        counter.farthest_mm,
        counter.farthest_mm + 600.0,
        5.0,
        |v| say!("change-farthest", farthest = format!("{v:.0}")),
        |c, v| c.farthest_mm = v,
    ));
    list.push(of_counter(
        "bore_depth",
        counter.bore_depth_mm,
        length.max(counter.bore_depth_mm).ceil(),
        5.0,
        |v| say!("change-bore-depth", depth = format!("{v:.0}")),
        |c, v| c.bore_depth_mm = v,
    ));
    list.push(of_counter(
        "bore",
        counter.bore_mm,
        3.0 * counter.bore_mm,
        1.0,
        |v| say!("change-bore", bore = format!("{v:.0}")),
        |c, v| c.bore_mm = v,
    ));
    let forces: Vec<(String, f64)> =
        counter.collets.iter().map(|c| (c.name.clone(), c.clamp_force_n)).take(MOST_COLLETS_TOLD).collect();
    list.push(number(
        "clamp_force",
        Ease::Machine,
        (1.0, 4.0),
        0.1,
        move |v| {
            let one = |(name, n): &(String, f64)| {
                say!("change-clamp-force-collet", collet = name, force = format!("{:.0}", n * v))
            };
            let told: Vec<String> = forces.iter().map(one).collect();
            say!("change-clamp-force", times = format!("{v:.1}"), collets = lists::commas(&told))
        },
        |j, v| {
            if let Some(c) = &mut j.machine.counter_spindle {
                c.collets.iter_mut().for_each(|k| k.clamp_force_n *= v);
            }
        },
    ));
    if counter.sleeve.is_none() {
        let says = say!("change-sleeve", pitch = 150, stiffness = 5);
        let after = json!({"pitch": 150, "stiffness": 5});
        list.push(once("sleeve", Ease::Machine, Value::Null, after, says, |j| {
            if let Some(c) = &mut j.machine.counter_spindle {
                c.sleeve = Some(Sleeve { pitch_mm: 150.0, stiffness_n_per_um: 5.0 });
            }
        }));
    }
    list
}
