//! The single changes that are tried when there is no plan.

use crate::job::{ChangeKind, Hold, Holding, Interrupt, Job, Sleeve, Tools, Tray};
use crate::lang::{self, Measure};
use crate::planner::advice::candidate::{Candidate, Role, edit, number, number_told, once};
use crate::planner::advice::limits::{PART_TIMES, round_step};
use crate::planner::advice::written::in_units_of_files;
use crate::planner::advice::{bars, collets, driven, dropped, limits, set_ups, works};
use crate::process::Rig;
use crate::process::fall::NoFall;
use crate::say;
use serde_json::{Value, json};

/// Largest clamping force of a headstock's collet, N.
const MOST_CLAMP_N: f64 = 200_000.0;
/// A tray is advised for parts up to this length: a longer part bends or jams when it falls, mm. Common practice, no source.
const LONGEST_FALL_MM: f64 = 150.0;

/// The straightest shaft that is asked of a bar, mm of bow per m. Common practice, no source.
const STRAIGHTEST_MM_PER_M: f64 = 0.05;
/// The stroke that the headstock uses is shortened to no less than this share.
const LEAST_STROKE: f64 = 0.1;
/// The least stroke that a file may give, mm.
const LEAST_STROKE_MM: f64 = 5.0;

/// Sleeves that a shop puts into the bore: distance, mm, and stiffness, N/µm. Common practice, no source.
const SLEEVE_PITCH_MM: f64 = 150.0;
const SLEEVE_N_PER_UM: f64 = 5.0;

/// All changes worth trying for a job, and the limits that a house may change after a trial.
pub fn all(job: &Job) -> Vec<Candidate> {
    // A set of changes is made in this order: another machine comes before what is changed on it, and work leaves the part last.
    let mut list = of_the_shop(job);
    list.extend(wishes(job));
    list.extend(settings(job));
    list.extend(leaves(job));
    list.extend(collets::all(job));
    list.extend(bars::all(job));
    list.extend(limits::house(job));
    list.extend(machines(job));
    list.extend(works::all(job));
    list.extend(driven::all(job));
    list.extend(set_ups::all(job));
    in_units_of_files(job, worth_trying(list))
}

/// Those that change something.
pub fn worth_trying(mut list: Vec<Candidate>) -> Vec<Candidate> {
    list.retain(|c| c.after.is_some() || (c.range.1 - c.range.0).abs() >= c.step);
    list
}

fn wishes(job: &Job) -> Vec<Candidate> {
    let dropped = dropped::one_dropped(job).into_iter().enumerate().map(|(i, (told, _))| {
        let says = say!("change-drop-wish", wish = told);
        let (role, all) = (Role::Change(ChangeKind::Wish), job.wishes.clone());
        once("wish", role, json!(told), Value::Null, says, move |j| dropped::drop(&mut j.wishes, &all, i))
    });
    dropped.zip(dropped::edits(job)).map(|(c, edits)| c.written(move |_| edits.clone())).collect()
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
            Role::Change(ChangeKind::Speed),
            (rpm.floor(), (0.2 * rpm).ceil()),
            round_step(0.02 * rpm).max(1.0),
            move |n| say!("change-rpm", rpm = format!("{n:.0}"), vc = Measure::Speed.fixed(vc_of(n), 0)),
            move |j, n| j.set_vc(vc_of(n)),
        )
        .written(move |n| {
            vec![edit("job", "cutting.vc", &number_told((vc_of(n) * 100.0).floor() / 100.0).to_string())]
        }),
        number(
            "speed_floor",
            Role::Change(ChangeKind::Speed),
            (job.cutting.speed_floor, 0.2),
            0.05,
            |f| say!("change-speed-floor", percent = format!("{:.0}", 100.0 * f)),
            |j, f| j.cutting.speed_floor = f,
        )
        .at_key("job", "cutting.speed_floor"),
        number(
            "ap_max",
            Role::Change(ChangeKind::Cut),
            (job.cutting.ap_max_mm, (d / 2.0).min(4.0 * job.cutting.ap_max_mm)),
            0.1,
            |ap| say!("change-ap-max", depth = Measure::Size.fixed(ap, 1)),
            |j, ap| j.cutting.ap_max_mm = ap,
        )
        .at_key("job", "cutting.ap_max")
        .in_group("depth"),
    ];
    list.retain(|c| c.name != "rpm" || job.tool_list.is_empty());
    list.extend(driven::lighter(job));
    let (holding, says) = match job.holding {
        Holding::Bush => (Holding::NoBush, say!("change-no-bush")),
        Holding::NoBush => (Holding::Bush, say!("change-bush")),
    };
    let has = match holding {
        Holding::Bush => job.machine.bush.is_some(),
        Holding::NoBush => job.machine.no_bush.is_some(),
    };
    if has {
        let role = Role::Change(ChangeKind::Hold);
        let change = once("holding", role, json!(job.holding.key()), json!(holding.key()), says, move |j| {
            j.holding = holding;
        });
        let write = move |_| vec![edit("job", "holding", holding.key())];
        list.push(change.in_group("holding").written(write));
    }
    if set_ups::may_take_a_centre(job) {
        let (before, after) = (json!(Hold::Collet.key()), json!(Hold::Centre.key()));
        let role = Role::Change(ChangeKind::Hold);
        let change = once("hold", role, before, after, say!("change-centre"), |j| j.hold = Hold::Centre);
        list.push(change.in_group(set_ups::HOLD).written(|_| vec![edit("job", "hold", Hold::Centre.key())]));
    }
    let stroke_mm = job.machine.headstock.stroke_mm;
    let shorter = number(
        "shorter_stroke",
        Role::Change(ChangeKind::Hold),
        (stroke_mm, (LEAST_STROKE * stroke_mm).max(LEAST_STROKE_MM)),
        5.0,
        |s| say!("change-shorter-stroke", stroke = Measure::Place.fixed(s, 0)),
        |j, s| j.machine.headstock.stroke_mm = s,
    );
    list.push(shorter.in_group("stroke").at_key("machine", "headstock.stroke"));
    if let Some(axial_n) = job.machine.counter_spindle.as_ref().map(|c| c.axial_load_n).filter(|n| *n < 0.0) {
        let softer = number(
            "axial_load",
            Role::Change(ChangeKind::Hold),
            (axial_n, 0.0),
            round_step(-0.02 * axial_n),
            |n| say!("change-axial-load", force = Measure::Force.fixed(n, 0)),
            |j, n| {
                if let Some(c) = &mut j.machine.counter_spindle {
                    c.axial_load_n = n;
                }
            },
        );
        list.push(softer.at_key("machine", "counter_spindle.axial_load"));
    }
    if job.cutting.tools == Tools::Single {
        let says = say!("change-opposed");
        let role = Role::Change(ChangeKind::Tools);
        let pair = once("tools", role, json!("single"), json!("opposed"), says, |j| {
            j.cutting.tools = Tools::Opposed;
        });
        list.push(pair.in_group("tools").written(|_| vec![edit("job", "cutting.tools", "opposed")]));
        // Not every machine can do it, so it is tried where the machine file says so.
        if let Some(side) =
            job.machine.tandem_side().filter(|_| job.holding == Holding::Bush && job.cutting.lag_mm > 0.0)
        {
            let says = say!("change-tandem");
            let tandem = once("tools", role, json!("single"), json!("tandem"), says, move |j| {
                j.cutting.tools = Tools::Tandem;
                j.cutting.finisher.side = side;
            });
            let write =
                move |_| vec![edit("job", "cutting.tools", "tandem"), edit("job", "cutting.finisher.side", side.key())];
            list.push(tandem.in_group("tools").written(write));
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
            let (name, role) = (format!("interrupt of {name}"), Role::Change(ChangeKind::Stop));
            let stop = once(&name, role, json!("never"), json!("avoid"), says, move |j| {
                j.shaft.sections[i].interrupt = Interrupt::Avoid;
            });
            list.push(stop.written(move |_| vec![edit("job", &format!("shaft.sections[{i}].interrupt"), "avoid")]));
        }
        if !section.grip && section.is_plain() {
            let says = say!("change-grip", section = name);
            let (name, role) = (format!("grip of {name}"), Role::Change(ChangeKind::Grip));
            let grip = once(&name, role, json!(false), json!(true), says, move |j| {
                j.shaft.sections[i].grip = true;
            });
            list.push(grip.written(move |_| vec![edit("job", &format!("shaft.sections[{i}].grip"), "true")]));
        }
    }
    if job.shaft.sections.iter().any(|s| s.run_out_mm.is_some()) {
        let asked: Vec<(usize, f64)> =
            job.shaft.sections.iter().enumerate().filter_map(|(i, s)| Some((i, s.run_out_mm?))).collect();
        let eased = number(
            "sections.run_out",
            Role::Change(ChangeKind::Drawing),
            (1.0, PART_TIMES),
            0.5,
            |times| say!("change-section-run-out", times = lang::fixed(times, 1)),
            |j, times| j.shaft.sections.iter_mut().filter_map(|s| s.run_out_mm.as_mut()).for_each(|r| *r *= times),
        );
        list.push(eased.written(move |times| {
            let one = |(i, mm): &(usize, f64)| {
                edit("job", &format!("shaft.sections[{i}].run_out"), &number_told(mm * times).to_string())
            };
            asked.iter().map(one).collect()
        }));
    }
    let straighter = number(
        "straightness",
        Role::Change(ChangeKind::Straightness),
        (job.shaft.bow_mm_per_m, STRAIGHTEST_MM_PER_M.min(job.shaft.bow_mm_per_m)),
        0.01,
        |b| say!("change-straightness", bow = Measure::Bow.fixed(b, 2)),
        |j, b| j.shaft.bow_mm_per_m = b,
    );
    list.push(straighter.at_key("job", "shaft.straightness"));
    list
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
    let says = say!(
        "change-tray",
        length = Measure::Place.number(tray.max_length_mm),
        diameter = Measure::Size.number(tray.max_diameter_mm)
    );
    let from = now.as_ref().map_or(Value::Null, told);
    let role = Role::Change(ChangeKind::Tray);
    let change = once("part_off.tray", role, from, told(&tray), says, move |j| j.machine.part_off.tray = Some(tray));
    let written = format!("{{max_length: {}, max_diameter: {}}}", tray.max_length_mm, tray.max_diameter_mm);
    Some(change.written(move |_| vec![edit("machine", "part_off.tray", &written)]))
}

fn machines(job: &Job) -> Vec<Candidate> {
    let head = &job.machine.headstock;
    let mut list = vec![
        number(
            "stroke",
            Role::Change(ChangeKind::Machine),
            (head.stroke_mm, head.stroke_mm + 500.0),
            5.0,
            |s| say!("change-stroke", stroke = Measure::Place.fixed(s, 0)),
            |j, s| j.machine.headstock.stroke_mm = s,
        )
        .in_group("stroke")
        .at_key("machine", "headstock.stroke"),
    ];
    if let Some(bush) = &job.machine.bush {
        let d = job.stock.diameter_mm;
        if d > bush.max_bar_mm {
            let says = say!("change-bush-max-bar", bar = Measure::Size.number(d));
            let role = Role::Change(ChangeKind::Machine);
            let wider = once("bush.max_bar", role, json!(bush.max_bar_mm), json!(d), says, move |j| {
                if let Some(b) = &mut j.machine.bush {
                    b.max_bar_mm = d;
                }
            });
            list.push(wider.written(move |_| vec![edit("machine", "bush.max_bar", &d.to_string())]));
        }
    }
    if let Some(force_n) = head.clamp_force_n {
        let most_n = (collets::MOST_CLAMP_TIMES * force_n)
            .min(MOST_CLAMP_N)
            .min(collets::borne_n(job.stock.diameter_mm, head.hold_mm));
        let firmer = number(
            "headstock.clamp_force",
            Role::Change(ChangeKind::Machine),
            (force_n, most_n.max(force_n)),
            100.0,
            |n| say!("change-headstock-clamp-force", force = Measure::Force.fixed(n, 0)),
            |j, n| j.machine.headstock.clamp_force_n = Some(n),
        );
        list.push(firmer.at_key("machine", "headstock.clamp_force"));
    }
    list.extend(tray(job));
    let Some(counter) = &job.machine.counter_spindle else { return list };
    let of_counter = |name: &'static str,
                      key: &'static str,
                      range: (f64, f64),
                      step: f64,
                      says: fn(f64) -> String,
                      set: fn(&mut crate::job::CounterSpindle, f64)| {
        let with = move |j: &mut Job, v| {
            if let Some(c) = &mut j.machine.counter_spindle {
                set(c, v);
            }
        };
        number(name, Role::Change(ChangeKind::Machine), range, step, says, with).at_key("machine", key)
    };
    let length = job.shaft.length_mm();
    list.push(of_counter(
        "farthest",
        "counter_spindle.farthest",
        (counter.farthest_mm, counter.farthest_mm + 600.0),
        5.0,
        |v| say!("change-farthest", farthest = Measure::Place.fixed(v, 0)),
        |c, v| c.farthest_mm = v,
    ));
    list.push(of_counter(
        "bore_depth",
        "counter_spindle.bore_depth",
        (counter.bore_depth_mm, length.max(counter.bore_depth_mm).ceil()),
        5.0,
        |v| say!("change-bore-depth", depth = Measure::Place.fixed(v, 0)),
        |c, v| c.bore_depth_mm = v,
    ));
    list.push(of_counter(
        "bore",
        "counter_spindle.bore",
        (counter.bore_mm, 3.0 * counter.bore_mm),
        1.0,
        |v| say!("change-bore", bore = Measure::Size.fixed(v, 0)),
        |c, v| c.bore_mm = v,
    ));
    if counter.sleeve.is_none() {
        let says = say!(
            "change-sleeve",
            pitch = Measure::Place.number(SLEEVE_PITCH_MM),
            stiffness = lang::number(SLEEVE_N_PER_UM)
        );
        let after = json!({"pitch": SLEEVE_PITCH_MM, "stiffness": SLEEVE_N_PER_UM});
        let role = Role::Change(ChangeKind::Sleeve);
        let sleeve = once("sleeve", role, Value::Null, after, says, |j| {
            if let Some(c) = &mut j.machine.counter_spindle {
                c.sleeve = Some(Sleeve { pitch_mm: SLEEVE_PITCH_MM, stiffness_n_per_um: SLEEVE_N_PER_UM });
            }
        });
        let written = format!("{{pitch: {SLEEVE_PITCH_MM}, stiffness: {SLEEVE_N_PER_UM}}}");
        list.push(sleeve.written(move |_| vec![edit("machine", "counter_spindle.sleeve", &written)]));
    }
    list
}

/// The other machines of the shop that can hold the bar as the job asks for.
fn of_the_shop(job: &Job) -> Vec<Candidate> {
    let fits = |m: &crate::job::Machine| {
        let held = match job.holding {
            Holding::Bush => m.bush.is_some(),
            Holding::NoBush => m.no_bush.is_some(),
        };
        held && (job.hold == Hold::Collet || m.centre_comes(job.holding))
            && (job.cutting.tools != Tools::Tandem || m.tandem_side().is_some())
    };
    let others = job.nearby.machines().into_iter().filter(|(_, m)| *m != job.machine && fits(m));
    let change = |(name, machine): (String, crate::job::Machine)| {
        let says = say!("change-shop-machine", machine = name);
        let role = Role::Change(ChangeKind::ShopMachine);
        let written = name.clone();
        let change = once("machine", role, json!(job.machine.name), json!(name), says, move |j| {
            j.machine = machine.clone();
        });
        change.in_group("machine").written(move |_| vec![edit("job", "machine", &written)])
    };
    others.map(change).collect()
}
