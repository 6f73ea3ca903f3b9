//! Turns a settled draft into a plan: stages, segments, features, witness lines, times.

mod told_chatter;

use crate::job::plan::{
    CheckResult, Drive, FeatureMoment, GripPlace, OnCentre, Optimality, PartOff, Plan, Segment, Stage, Threading,
    Times, TracePoint, Verdict, Witness,
};
use crate::job::{Interrupt, SectionKind};
use crate::lang;
use crate::planner::places::ground::Ground;
use crate::planner::plan::draft::Draft;
use crate::planner::plan::outline;
use crate::planner::plan::settle::{Look, Piece, Settled};
use crate::planner::plan::tools;
use crate::process::Rig;
use crate::process::checks::{self, Finding, chatter, free_ratio};
use crate::process::drive::POWER;
use crate::process::segments::Work;
use crate::process::speed::BAR_FEED;
use crate::process::state::Guide;
use crate::process::stops::SAME_MM;
use crate::process::tool::BackTask;
use told_chatter::worst_chatter;

/// Utilisations that differ by less than this share count as equal, so that rounding does not decide where a check is
/// at its worst.
const SAME_SHARE: f64 = 1e-9;

/// Times of a settled draft.
pub fn times(ground: &Ground<'_>, draft: &Draft, settled: &Settled) -> Times {
    let machine = &ground.rig.job.machine;
    let hand_overs = draft.hand_overs_mm();
    let regrips = draft.regrips_mm();
    let shared = regrips.iter().filter(|m| hand_overs.iter().any(|t| (*t - **m).abs() < SAME_MM)).count() as f64;
    let each = machine.headstock.regrip_s;
    let mut stops: Vec<f64> = hand_overs.iter().chain(&regrips).copied().collect();
    stops.sort_by(f64::total_cmp);
    stops.dedup_by(|b, a| *b - *a < SAME_MM);
    let rig = ground.rig;
    let stop_lines: f64 = stops.iter().map(|t| rig.stop_penalty_s(rig.stop_at(ground.segments, *t))).sum();
    let mut t = Times {
        cutting: settled.pieces.iter().map(|p| p.time.cutting_s).sum(),
        segments: settled.pieces.iter().map(|p| p.time.overhead_s).sum(),
        hand_overs: hand_overs.len() as f64 * machine.hand_over_s() + rig.centre_s(),
        regrips: (regrips.len() as f64 - shared) * each + shared * machine.shared_regrip_s(),
        // The empty sum is -0, and would be printed so.
        features: 0.0 + ground.tasks.iter().map(|t| t.time_s).sum::<f64>(),
        part_off: machine.part_off.time_s,
        back_work: 0.0 + rig.back_work_s(),
        penalties: stop_lines + rig.border_penalty_s(ground.segments),
        total: 0.0,
    };
    t.total = t.cutting + t.segments + t.hand_overs + t.regrips + t.features + t.part_off + t.back_work;
    t
}

/// Time that does not depend on the stages, s: features, tool changes, part-off, charges for lines between segments.
/// Work on the rear end counts with the first stage, which may hide it.
pub fn fixed_s(ground: &Ground<'_>) -> f64 {
    let (rig, job) = (ground.rig, ground.rig.job);
    let features: f64 = ground.tasks.iter().map(|t| t.time_s).sum();
    let changes = rig.changes_s(&rig.steps(ground.segments, ground.tasks, ground.moments));
    features + changes + rig.centre_s() + job.machine.part_off.time_s + rig.border_penalty_s(ground.segments)
}

/// The objective of the planner, s: the time from part to part, and the charges for witness lines.
pub fn objective_s(ground: &Ground<'_>, draft: &Draft, settled: &Settled) -> f64 {
    let t = times(ground, draft, settled);
    let steps = ground.rig.steps(ground.segments, ground.tasks, ground.moments);
    let first_mm = draft.stages.first().map_or(0.0, |s| s.to_mm);
    let run_s: f64 = settled.pieces.iter().filter(|p| p.stage == 0).map(|p| p.time.total_s()).sum();
    let first_s = run_s + ground.rig.besides_s(&steps, ground.tasks, first_mm);
    t.total + t.penalties - t.back_work + ground.rig.changes_s(&steps) + ground.rig.pace().beyond_s(first_s)
}

/// The content that every plan of a job has, feasible or not, without stages.
pub fn blank(rig: &Rig<'_>, verdict: Verdict) -> Plan {
    let job = rig.job;
    Plan {
        language: lang::language().code().to_owned(),
        units: lang::units(),
        verdict,
        job: job.shaft.name.clone(),
        drawing: job.shaft.drawing.clone(),
        revision: job.shaft.revision.clone(),
        date: job.shaft.date.clone(),
        length_mm: job.shaft.length_mm(),
        material: job.shaft.material.name.clone(),
        holding: job.holding.key().into(),
        tools: job.cutting.tools.key().into(),
        machine: job.machine.name.clone(),
        collet: None,
        stages: Vec::new(),
        hand_overs_mm: Vec::new(),
        headstock_regrips_mm: Vec::new(),
        segments: Vec::new(),
        part_off_rpm: None,
        part_off: None,
        centre: None,
        drive: None,
        features: Vec::new(),
        witnesses: Vec::new(),
        time_s: Times::default(),
        cycle: None,
        tooling: rig.segments().ok().and_then(|segments| crate::cycle::tooling(rig, &segments)),
        order: None,
        margin: None,
        margin_at: None,
        optimality: Optimality::default(),
        quote: crate::process::quote::quote(job, None),
        shortfall: None,
        limit_costs: Vec::new(),
        scatter: None,
        input_digest: job.input_digest.clone(),
        notes: job.notes.clone(),
        origins: job.origins.clone(),
        tool_list: Vec::new(),
        cautions: Vec::new(),
        shaft: outline::shaft(job),
        layout: outline::layout(rig),
        trace: Vec::new(),
    }
}

/// The plan of a settled draft. Notes and cautions of the plan itself are added later.
pub fn plan(ground: &Ground<'_>, draft: &Draft, settled: &Settled, optimality: Optimality) -> Plan {
    let rig = ground.rig;
    let stages = stages(ground, draft, settled);
    let time_s = times(ground, draft, settled);
    let mut plan = Plan {
        collet: rig.collet.filter(|_| draft.stages.len() > 1).map(|c| c.name.clone()),
        hand_overs_mm: draft.hand_overs_mm(),
        headstock_regrips_mm: draft.regrips_mm(),
        segments: segments(ground, draft, settled),
        part_off_rpm: settled.pieces.last().map(|p| p.rpm),
        part_off: Some(part_off(rig, draft)),
        centre: rig.centre().map(|c| OnCentre { force_n: c.force_n, leaves_at_mm: rig.job.shaft.length_mm() }),
        drive: Some(drive(ground, draft, settled)),
        features: features(ground, draft),
        witnesses: witnesses(ground, draft),
        optimality,
        time_s,
        trace: trace(settled, &stages),
        stages,
        ..blank(rig, Verdict::Feasible)
    };
    plan.tool_list = tools::used(rig, &plan, ground.segments);
    plan.tell_margin();
    let cycle = crate::cycle::timeline(&plan, rig, ground.segments);
    plan.quote = crate::process::quote::quote(rig.job, Some(cycle.steady_s));
    plan.cycle = Some(cycle);
    plan.order = crate::cycle::order(&plan, rig, ground.segments);
    plan
}

/// Where the part goes at part-off.
fn part_off(rig: &Rig<'_>, draft: &Draft) -> PartOff {
    if draft.stages.last().is_some_and(|s| s.nose_mm.is_some()) {
        let into = PartOff::COUNTER_SPINDLE.into();
        return PartOff { into, max_length_mm: None, max_diameter_mm: None, by_default: false };
    }
    let machine = &rig.job.machine;
    let tray = machine.tray();
    PartOff {
        into: PartOff::TRAY.into(),
        max_length_mm: tray.map(|t| t.max_length_mm),
        max_diameter_mm: tray.map(|t| t.max_diameter_mm),
        by_default: tray.is_some() && machine.part_off.tray.is_none(),
    }
}

/// Distance of the headstock's nose from the bush face, or from the tool where there is no bush, mm.
fn headstock(ground: &Ground<'_>, look: &Look) -> f64 {
    match look.state.guide {
        Guide::Bush { headstock_mm } => headstock_mm,
        Guide::Collet { stage_end_mm } => stage_end_mm + ground.rig.gap_mm() - look.state.turned_mm,
        Guide::Parted => 0.0,
    }
}

fn stages(ground: &Ground<'_>, draft: &Draft, settled: &Settled) -> Vec<Stage> {
    let looks = |index: usize| settled.looks.iter().filter(move |l| l.stage == index).collect::<Vec<&Look>>();
    let looks: Vec<Vec<&Look>> = (0..draft.stages.len()).map(looks).collect();
    let chatter = worst_chatter(ground, settled, &looks);
    let each = looks.iter().zip(chatter).enumerate();
    each.map(|(index, (looks, chatter))| stage(ground, draft, settled, (index, looks, chatter))).collect()
}

/// The stage `index` from its looks, with `chatter` where its modes were worked out.
fn stage(
    ground: &Ground<'_>,
    draft: &Draft,
    settled: &Settled,
    (index, looks, chatter): (usize, &[&Look], Option<(Finding, &Look)>),
) -> Stage {
    let rig = ground.rig;
    let d = &draft.stages[index];
    let pieces: Vec<_> = settled.pieces.iter().filter(|p| p.stage == index).collect();
    let cuts: Vec<&&Look> =
        looks.iter().filter(|l| l.piece.is_some() && l.state.turned_mm <= d.to_mm + SAME_MM).collect();
    let grip = d.nose_mm.map(|nose_mm| grip(rig, nose_mm));
    let counter = |t: f64| d.nose_mm.map(|g| t + rig.gap_mm() - g);
    let mut regrips_mm = d.regrips_mm.clone();
    if d.regrip_at_end {
        regrips_mm.push(d.to_mm);
    }
    Stage {
        number: index + 1,
        from_mm: d.from_mm,
        to_mm: d.to_mm,
        travel_mm: d.to_mm - d.from_mm,
        grip,
        unsupported_max_mm: cuts.iter().map(|l| rig.unsupported_mm(&l.state)).fold(0.0, f64::max),
        l_over_d_max: cuts.iter().map(|l| free_ratio::ratio(rig, &l.state)).max_by(f64::total_cmp),
        time_s: pieces.iter().map(|p| p.time.total_s()).sum(),
        counter_spindle_start_mm: counter(d.from_mm),
        counter_spindle_end_mm: counter(d.to_mm),
        headstock_start_mm: cuts.first().map_or(0.0, |l| headstock(ground, l)),
        headstock_end_mm: cuts.last().map_or(0.0, |l| headstock(ground, l)),
        regrips_mm,
        rpm_min: pieces.iter().map(|p| p.rpm).fold(f64::INFINITY, f64::min),
        rpm_max: pieces.iter().map(|p| p.rpm).fold(0.0, f64::max),
        checks: worst_checks(looks, chatter),
    }
}

/// A grip, with the diameter and the section that it holds.
pub fn grip(rig: &Rig<'_>, nose_mm: f64) -> GripPlace {
    GripPlace {
        nose_mm,
        from_mm: nose_mm - rig.hold_mm(),
        to_mm: nose_mm,
        diameter_mm: rig.held_mm(nose_mm),
        section: rig.held_section(nose_mm) + 1,
    }
}

/// The largest utilisation of each check over the looks of a stage; `chatter` from its modes.
fn worst_checks(looks: &[&Look], chatter: Option<(Finding, &Look)>) -> Vec<CheckResult> {
    let findings = || looks.iter().flat_map(|look| look.findings.iter().map(move |found| (*found, *look)));
    let mut largest: Vec<(&str, f64)> = Vec::new();
    for (found, _) in findings() {
        match largest.iter_mut().find(|(check, _)| *check == found.check) {
            Some((_, share)) => *share = share.max(found.utilisation),
            None => largest.push((found.check, found.utilisation)),
        }
    }
    // Of utilisations equal but for rounding the first: in a piece that was slowed down, many states have equal ones.
    let first = |(check, share): &(&str, f64)| {
        findings().find(|(f, _)| f.check == *check && f.utilisation >= share * (1.0 - SAME_SHARE))
    };
    let mut worst: Vec<(Finding, &Look)> = largest.iter().filter_map(first).collect();
    if let (Some(slot), Some(chatter)) = (worst.iter_mut().find(|(w, _)| w.check == chatter::NAME), chatter) {
        *slot = chatter;
    }
    worst.sort_by_key(|(f, _)| checks::order(f.check));
    worst.iter().map(|(f, l)| f.result(l.state.turned_mm)).collect()
}

/// Speed of each travel of a piece, rev/min.
fn speeds(ground: &Ground<'_>, draft: &Draft, piece: &Piece) -> Vec<f64> {
    let (segment, gripped) = (&ground.segments[piece.segment], draft.stages[piece.stage].nose_mm.is_some());
    segment.travels.iter().map(|t| ground.rig.travel_rpm(segment, t, gripped).min(piece.rpm)).collect()
}

/// The most that turning asks of the headstock.
fn drive(ground: &Ground<'_>, draft: &Draft, settled: &Settled) -> Drive {
    let mut most = [(0.0f64, None); 3];
    for piece in &settled.pieces {
        let segment = &ground.segments[piece.segment];
        let section = (segment.work != Work::PartOff).then_some(segment.section + 1);
        for (travel, rpm) in segment.travels.iter().zip(speeds(ground, draft, piece)) {
            let torque_nm = travel.torque_nm();
            let needs = [ground.rig.motor_kw(torque_nm, rpm), torque_nm, travel.feed_n];
            for (most, needed) in most.iter_mut().zip(needs) {
                if needed > most.0 {
                    *most = (needed, section);
                }
            }
        }
    }
    let [(power_kw, power_section), (torque_nm, torque_section), (feed_force_n, feed_force_section)] = most;
    Drive { power_kw, power_section, torque_nm, torque_section, feed_force_n, feed_force_section }
}

fn segments(ground: &Ground<'_>, draft: &Draft, settled: &Settled) -> Vec<Segment> {
    let shaft = &ground.rig.job.shaft;
    let mut all = Vec::new();
    for piece in &settled.pieces {
        let segment = &ground.segments[piece.segment];
        if segment.work == Work::PartOff {
            continue;
        }
        let full = || {
            let gripped = draft.stages[piece.stage].nose_mm.is_some();
            let time = ground.rig.stretch_time(segment, [piece.from_mm, piece.to_mm], gripped, f64::INFINITY);
            (ground.rig.segment_rpm(segment, gripped), piece.time.total_s() - time.total_s())
        };
        let slowed = piece.slowed_by.filter(|by| ![BAR_FEED, POWER].contains(by)).map(|_| full());
        let starts = (piece.from_mm - segment.from_mm).abs() < SAME_MM;
        all.push(Segment {
            section: segment.section + 1,
            work: segment.work.key().into(),
            from_mm: piece.from_mm,
            to_mm: piece.to_mm,
            diameter_mm: shaft.sections[segment.section].smallest_turned_mm(),
            travels: segment.travels.len(),
            depths_mm: segment.travels.iter().flat_map(|t| t.depths_mm.iter().copied()).collect(),
            rpm: piece.rpm,
            feed_mm: segment.finishing().map_or(0.0, |t| t.feed_mm),
            cuts: ground.rig.told_cuts(segment, draft.stages[piece.stage].nose_mm.is_some(), piece.rpm),
            lag_mm: segment.lag_mm,
            turning: if segment.back && starts { "back" } else { "forward" }.into(),
            stage: piece.stage + 1,
            time_s: piece.time.total_s(),
            slowed_by: piece.slowed_by.map(Into::into),
            full_rpm: slowed.map(|(rpm, _)| rpm),
            slowed_s: slowed.map(|(_, seconds)| seconds),
            infeeds_mm: ground.rig.infeeds_mm(segment),
            threading: match (&segment.work, ground.rig.thread_of(segment)) {
                (Work::Thread, Some(thread)) => {
                    let gripped = draft.stages[piece.stage].nose_mm.is_some();
                    let (passes, rpm) = ground.rig.threading(segment, thread, gripped, piece.rpm);
                    Some(Threading { passes: passes as usize, rpm, pitch_mm: thread.lead_mm() })
                }
                _ => None,
            },
        });
    }
    all
}

fn features(ground: &Ground<'_>, draft: &Draft) -> Vec<FeatureMoment> {
    let stage_of = |t: f64| {
        let index = draft.stages.iter().position(|s| t <= s.to_mm + SAME_MM);
        index.unwrap_or(draft.stages.len() - 1) + 1
    };
    let mut all: Vec<FeatureMoment> = ground
        .moments
        .iter()
        .map(|(i, t)| {
            let task = &ground.tasks[*i];
            FeatureMoment {
                feature: task.kind.into(),
                text: task.text.clone(),
                at_mm: task.at_mm,
                turned_mm: Some(*t),
                stage: Some(stage_of(*t)),
                time_s: task.time_s,
                axial_n: Some(task.axial_n).filter(|n| *n > 0.0),
                torque_nm: Some(task.torque_nm).filter(|t| *t > 0.0),
                thrust_n: task.thrust_n,
                tool: task.tool.name.clone(),
            }
        })
        .collect();
    all.sort_by(|a, b| a.turned_mm.unwrap_or(f64::MAX).total_cmp(&b.turned_mm.unwrap_or(f64::MAX)));
    let length = ground.rig.job.shaft.length_mm();
    all.extend(ground.rig.back.iter().map(|BackTask { work: w, tool }| FeatureMoment {
        feature: "back_work".into(),
        text: w.name.clone(),
        at_mm: length,
        turned_mm: None,
        stage: None,
        time_s: w.time_s,
        axial_n: Some(w.axial_force_n).filter(|n| *n > 0.0),
        torque_nm: Some(w.torque_nm).filter(|t| *t > 0.0),
        thrust_n: None,
        tool: tool.name.clone(),
    }));
    all
}

fn witnesses(ground: &Ground<'_>, draft: &Draft) -> Vec<Witness> {
    let (rig, shaft) = (ground.rig, &ground.rig.job.shaft);
    let hand_overs = draft.hand_overs_mm();
    let mut places: Vec<(f64, &str)> = hand_overs.iter().map(|t| (*t, "hand_over")).collect();
    places.extend(draft.regrips_mm().into_iter().map(|t| (t, "regrip")));
    for pair in ground.segments.windows(2) {
        if pair[0].section == pair[1].section && pair[1].work != Work::PartOff {
            places.push((pair[0].to_mm, "segment"));
        }
    }
    for (i, t) in ground.moments {
        if ground.tasks[*i].cross {
            places.push((*t, "feature"));
        }
    }
    places.iter_mut().for_each(|(t, _)| *t = rig.line_at_mm(ground.segments, *t));
    places.sort_by(|a, b| a.0.total_cmp(&b.0));
    places.dedup_by(|b, a| b.0 - a.0 < SAME_MM);
    places
        .into_iter()
        .filter(|(t, _)| {
            let section = &shaft.sections[shaft.section_at(*t)];
            let inside = *t > section.from_mm + SAME_MM && *t < section.to_mm - SAME_MM;
            inside && *t < rig.job.shaft.length_mm() && !matches!(section.kind, SectionKind::Groove { .. })
        })
        .map(|(t, cause)| {
            let section = shaft.section_at(t);
            let interrupt: Interrupt = shaft.sections[section].interrupt;
            Witness { at_mm: t, section: section + 1, cause: cause.into(), interrupt: interrupt.key().into() }
        })
        .collect()
}

/// The points of the trace. `chatter` is known there mostly by an upper bound. It is cut off at the worst value worked
/// out for the stage, so that the curve never stands above the table of the stage.
fn trace(settled: &Settled, stages: &[Stage]) -> Vec<TracePoint> {
    let worst_chatter = |stage: usize| {
        let told = stages[stage].checks.iter().find(|c| c.check == chatter::NAME);
        told.map_or(f64::INFINITY, |c| c.utilisation)
    };
    let mut points: Vec<TracePoint> = Vec::new();
    for look in settled.looks.iter().filter(|l| l.traced) {
        let Some(piece) = look.piece else { continue };
        let most = |f: &Finding| if f.check == chatter::NAME { worst_chatter(look.stage) } else { f64::INFINITY };
        let told: Vec<(&str, f64)> = look.findings.iter().map(|f| (f.check, f.utilisation.min(most(f)))).collect();
        let Some(top) = told.iter().max_by(|a, b| a.1.total_cmp(&b.1)) else { continue };
        points.push(TracePoint {
            turned_mm: look.state.turned_mm,
            stage: look.stage + 1,
            rpm: settled.pieces[piece].rpm,
            check: top.0.into(),
            utilisation: top.1,
            all: told.iter().map(|(check, used)| (check.to_string(), *used)).collect(),
        });
    }
    points
}
