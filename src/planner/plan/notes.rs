//! Notes of a plan: what the planner assumed or lowered.

use crate::job::plan::Plan;
use crate::job::{Edge, FeatureKind, Hold, Holding, Job, Section, SectionKind, ThreadBy, Tools};
use crate::lang::lists;
use crate::lang::{self, Measure};
use crate::mechanics::cutting::{CHIPS_TOLD_MM, MEASURED_TO_MM};
use crate::mechanics::drilling::THRUST_TOLD_MM;
use crate::process::cutter::DEFAULT_FEED_MM;
use crate::process::features::{ToolChip, ToolKind, turning_chips};
use crate::process::segments::{FINISHING_TO_MM, Segment, Work};
use crate::process::tandem::NoTandem;
use crate::process::{Rig, checks};
use crate::say;

/// Notes on what the planner assumed or lowered.
pub fn notes(job: &Job, plan: &Plan) -> Vec<String> {
    let rig = Rig::new(job, None);
    let segments = rig.segments().unwrap_or_default();
    let mut notes = job.notes.clone();
    if job.holding == Holding::Bush && plan.segments.iter().any(|s| s.work == "whirl") {
        notes.push(if job.machine.tools.is_some() { say!("note-whirled") } else { say!("note-whirled-assumed") });
    }
    if job.hold == Hold::Centre {
        notes.push(say!("note-centre"));
    }
    if let (Some((length_mm, diameter_mm)), true) =
        (plan.tray_mm(), plan.part_off.as_ref().is_some_and(|p| p.by_default))
    {
        notes.push(say!(
            "note-falls-by-default",
            length = Measure::Place.number(length_mm),
            diameter = Measure::Size.number(diameter_mm)
        ));
    }
    notes.extend(drive(job, plan));
    notes.extend(torque_share(job, plan));
    notes.extend(power_lowers(&rig, &segments, plan));
    notes.extend(ground(job));
    notes.extend(small_radii(job));
    notes.extend(unusual_threads(job));
    notes.extend(rolled_and_left(job));
    notes.extend(slow_cutting(job, plan));
    if !plan.segments.is_empty() {
        notes.extend(passive_forces(&rig, &segments));
        notes.extend(forces_outside(&rig, &segments));
        notes.extend(finishing(&rig, &segments));
        notes.extend(not_listed(plan));
    }
    let given = job.cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM);
    for (i, section) in job.shaft.sections.iter().enumerate() {
        let lowered = plan.segments.iter().find(|s| s.section == i + 1 && s.work == "turn" && s.feed_mm < given - 1e-9);
        if let (Some(s), Some(_), Some(ra)) = (lowered, job.cutting.feed_mm, section.ra_um) {
            notes.push(say!(
                "note-feed-lowered",
                section = section.label(i),
                given = Measure::Feed.number(given),
                feed = Measure::Feed.fixed(s.feed_mm, 3),
                ra = Measure::Micro.number(ra),
                factor = lang::number(job.cutting.ra_factor)
            ));
        }
        let turned = plan.segments.iter().any(|s| s.section == i + 1 && s.work == "turn");
        let floor = job.cutting.ra_floor_um;
        if let Some(ra) = section.ra_um.filter(|ra| turned && *ra <= floor) {
            let (section, floor) = (section.label(i), Measure::Micro.number(floor));
            notes.push(say!("note-ra-floor", section = section, ra = Measure::Micro.number(ra), floor = floor));
        }
    }
    notes
}

/// Tools that the plan needs and the tool list does not have.
fn not_listed(plan: &Plan) -> Option<String> {
    let names: Vec<&str> = plan.tool_list.iter().filter(|tool| !tool.listed).map(|tool| tool.tool.as_str()).collect();
    (!names.is_empty()).then(|| say!("note-not-listed", tools = lists::commas(&names)))
}

/// How the sections that ask for a finishing cut come to it: one deep cut, a last pass, or both tools of a tandem in one travel. With one
/// deep cut, what could be done instead.
fn finishing(rig: &Rig<'_>, segments: &[Segment]) -> Vec<String> {
    let job = rig.job;
    let mut with_tandem = job.clone();
    with_tandem.cutting.tools = Tools::Tandem;
    let asked_tandem = job.cutting.tools == Tools::Tandem;
    let no_tools = job.machine.tools.is_some() && job.machine.tandem_side().is_none() && !asked_tandem;
    let with_tandem = Rig::new(&with_tandem, None);
    let why_not = |section: &Section, back: bool| match no_tools {
        true => Some(NoTandem::NoTools),
        false => with_tandem.no_tandem(section, back),
    };
    let (mut notes, mut tandem) = (Vec::new(), Vec::new());
    for (i, section) in job.shaft.sections.iter().enumerate() {
        let Some(segment) = segments.iter().find(|s| s.section == i && s.work == Work::Turn) else { continue };
        if segment.lag_mm.is_some() {
            tandem.push(section.label(i));
        }
        let deep = rig.stock_mm(section) > FINISHING_TO_MM && Rig::asks_to_finish(section);
        if segment.lag_mm.is_some() || !deep {
            continue;
        }
        let (name, why) = (section.label(i), why_not(section, segment.back));
        if segment.travels.iter().map(|t| t.depths_mm.len()).sum::<usize>() > 1 {
            notes.extend(
                why.filter(|_| asked_tandem).map(|w| say!("note-tandem-last-pass", section = name, why = w.told())),
            );
            continue;
        }
        let instead = match (rig.last_pass_fits(section, segment.back), why) {
            (true, None) => say!("note-one-cut-both"),
            (true, Some(_)) => say!("note-one-cut-pass"),
            (false, None) => say!("note-one-cut-tandem"),
            (false, Some(why)) => say!("note-one-cut-why", why = why.told()),
        };
        let (asked, depth) = (asked(section), Measure::Size.fixed(rig.stock_mm(section), 2));
        notes.push(say!("note-one-cut", section = name, asked = asked, depth = depth, instead = instead));
    }
    if !tandem.is_empty() {
        let names: Vec<&str> = tandem.iter().map(String::as_str).collect();
        notes.insert(0, say!("note-tandem", sections = lists::commas(&names)));
    }
    notes
}

/// What turning asks of the headstock, and what its machine file does not give.
fn drive(job: &Job, plan: &Plan) -> Option<String> {
    let (needs, head) = (plan.drive?, &job.machine.headstock);
    let place = |section: Option<usize>| match section.and_then(|n| Some((n, job.shaft.sections.get(n - 1)?))) {
        Some((n, section)) => section.label(n - 1),
        None => say!("driven-part-off"),
    };
    let power = lang::fixed(needs.power_kw, 1);
    let torque = lang::fixed(needs.torque_nm, 1);
    let force = Measure::Force.fixed(needs.feed_force_n, 0);
    let told = say!(
        "note-drive",
        power = power,
        power_at = place(needs.power_section),
        torque = torque,
        torque_at = place(needs.torque_section),
        force = force,
        force_at = place(needs.feed_force_section)
    );
    let keys = [("power", head.power_kw), ("torque", head.torque_nm), ("feed_force", head.feed_force_n)];
    let missing: Vec<String> =
        keys.iter().filter(|(_, given)| given.is_none()).map(|(key, _)| format!("headstock.{key}")).collect();
    let list = lists::commas(&missing);
    Some(if missing.is_empty() { told } else { say!("note-drive-not-given", told = told, keys = list) })
}

/// Sections that are ground later, with both sizes.
fn ground(job: &Job) -> Vec<String> {
    let sections = job.shaft.sections.iter().enumerate();
    let told = sections.filter_map(|(i, section)| {
        let ground = section.ground.as_ref()?;
        let ra = |ra: Option<f64>| ra.map_or(String::new(), |ra| format!(" Ra {}", Measure::Micro.number(ra)));
        let size = |mm: f64| Measure::Size.number(mm);
        let turned = format!("Ø{} {}{}", size(section.largest_mm()), section.tolerance.told(), ra(section.ra_um));
        let is = format!("Ø{} {}{}", size(ground.diameter_mm), ground.tolerance.told(), ra(ground.ra_um));
        Some(say!("note-ground", section = section.label(i), turned = turned, ground = is))
    });
    told.collect()
}

/// Corners under a thicker section with a radius smaller than the nose of the tool.
fn small_radii(job: &Job) -> Vec<String> {
    let nose_mm = job.cutting.nose_radius_mm;
    let sections = &job.shaft.sections;
    let mut notes = Vec::new();
    for (i, section) in sections.iter().enumerate() {
        let beside = [
            i.checked_sub(1).and_then(|j| sections.get(j)).map(|s| s.rear_mm()),
            sections.get(i + 1).map(|s| s.front_mm()),
        ];
        for ((edge, other), own) in section.edges.iter().zip(beside).zip([section.front_mm(), section.rear_mm()]) {
            if let (Some(Edge::Radius(mm)), true) = (edge, other.is_some_and(|other| other > own))
                && *mm < nose_mm - 1e-9
            {
                let (radius, nose) = (Measure::Size.number(*mm), Measure::Size.number(nose_mm));
                notes.push(say!("note-small-radius", section = section.label(i), radius = radius, nose = nose));
            }
        }
    }
    notes
}

/// Travels whose speed the power of the headstock lowers: the sections, each with the speeds of its travels.
fn power_lowers(rig: &Rig<'_>, segments: &[Segment], plan: &Plan) -> Vec<String> {
    let job = rig.job;
    let Some(power) = job.machine.headstock.power_kw else { return Vec::new() };
    let mut notes: Vec<String> = Vec::new();
    for s in &plan.segments {
        let cut = segments.iter().find(|c| c.section + 1 == s.section && c.from_mm < s.to_mm && s.from_mm < c.to_mm);
        let bound =
            |c: &Segment| c.travels.iter().zip(&s.cuts).any(|(t, cut)| rig.powered_rpm(t) <= cut.rpm * (1.0 + 1e-9));
        let (Some(_), Some(section)) = (cut.filter(|c| bound(c)), job.shaft.sections.get(s.section - 1)) else {
            continue;
        };
        let speeds: Vec<String> = s.cuts.iter().map(|cut| format!("{:.0}", cut.rpm.floor())).collect();
        let (section, power) = (section.label(s.section - 1), lang::number(power));
        let note = say!("note-power-lowers", section = section, power = power, speeds = lists::commas(&speeds));
        if !notes.contains(&note) {
            notes.push(note);
        }
    }
    notes
}

/// What a section asks for that takes a finishing cut, in words.
fn asked(section: &Section) -> String {
    let width = Measure::Size.fixed(section.tolerance.width_mm(), 3);
    let fine_ra = section.ra_um.map(|ra| Measure::Micro.number(ra));
    let by_tolerance = Rig::asks_to_finish(&Section { ra_um: None, ..section.clone() });
    match fine_ra {
        Some(ra) if by_tolerance => say!("asked-both", width = width, ra = ra),
        Some(ra) => say!("asked-ra", ra = ra),
        None => say!("asked-tolerance", width = width),
    }
}

/// Where the torque on the last grip is nearest to its limit: how much of it the twist of the bar alone would give to this grip.
fn torque_share(job: &Job, plan: &Plan) -> Option<String> {
    let torque = plan.margin_at.as_ref().filter(|m| m.check == checks::torque::NAME)?;
    let rig = Rig::new(job, plan.collet.as_ref().and_then(|name| job.machine.collet(name)));
    let percent = format!("{:.0}", 100.0 * rig.share_untold(torque.at_mm)?);
    Some(say!("note-torque-share", percent = percent))
}

/// Cutting speeds that were lowered below the usual range of the material: the lowest one, with its place.
fn slow_cutting(job: &Job, plan: &Plan) -> Option<String> {
    let (low, high) = job.shaft.material.vc_m_per_min?;
    let turned = plan.segments.iter().filter(|s| s.slowed_by.is_some() && s.work == "turn");
    // The bar in front of the last travel carries the speed, as for the planned one.
    let cut = |s: &crate::job::plan::Segment| {
        let before_mm = s.diameter_mm + 2.0 * s.depths_mm.last().copied().unwrap_or(0.0);
        std::f64::consts::PI * before_mm * s.rpm / 1000.0
    };
    let slowest = turned.min_by(|a, b| cut(a).total_cmp(&cut(b))).filter(|s| cut(s) < low)?;
    let section = job.shaft.sections.get(slowest.section - 1)?.label(slowest.section - 1);
    let speed = Measure::Speed.fixed(cut(slowest), 0);
    let (low, high) = (Measure::Speed.number(low), Measure::Speed.number(high));
    Some(say!(
        "note-slow-cutting",
        section = section,
        speed = speed,
        low = low,
        high = high,
        material = job.shaft.material.name
    ))
}

/// Passive forces that no measured force stands behind: those of deep cuts, and those that are the floor.
fn passive_forces(rig: &Rig<'_>, segments: &[Segment]) -> Vec<String> {
    let turned = segments.iter().filter(|s| matches!(s.work, Work::Turn | Work::Thread));
    let (mut deepest_mm, mut floored) = (0.0_f64, false);
    for travel in turned.flat_map(|s| &s.travels) {
        deepest_mm = travel.depths_mm.iter().copied().fold(deepest_mm, f64::max);
        floored |= rig.travel_forces(&travel.depths_mm, &travel.cutters, travel.feed_mm).cuts.iter().any(|c| c.floored);
    }
    let deep = (deepest_mm > MEASURED_TO_MM).then(|| {
        say!(
            "note-passive-deep",
            depth = Measure::Size.fixed(deepest_mm, 2),
            measured = Measure::Size.number(MEASURED_TO_MM)
        )
    });
    let floor = floored.then(|| say!("note-passive-floor", share = lang::number(rig.job.cutting.passive_floor)));
    deep.into_iter().chain(floor).collect()
}

/// Cutting forces outside what their sources know: the drill, and the chip, that go farthest outside. And a class of material that was
/// assumed.
fn forces_outside(rig: &Rig<'_>, segments: &[Segment]) -> Vec<String> {
    let mut tools = rig.tool_chips();
    let material = &rig.job.shaft.material;
    let assumed = material.class_assumed && !tools.is_empty();
    let assumed = assumed.then(|| say!("note-class-assumed", class = material.class.words(), material = material.name));
    let outside = |[low, high]: [f64; 2], value: f64| (low / value).max(value / high);
    let farthest = |tools: &[ToolChip], range: [f64; 2], of: fn(&ToolChip) -> f64| {
        let worst = tools.iter().max_by(|a, b| outside(range, of(a)).total_cmp(&outside(range, of(b))));
        worst.filter(|tool| outside(range, of(tool)) > 1.0 + 1e-9).copied()
    };
    let drills: Vec<ToolChip> = tools.iter().copied().filter(|tool| tool.kind == ToolKind::Drill).collect();
    let told = |mm: f64| Measure::Size.trimmed(mm, 2);
    let sizes = farthest(&drills, THRUST_TOLD_MM, |tool| tool.diameter_mm).map(|tool| {
        let [low, high] = THRUST_TOLD_MM.map(|mm| Measure::Size.number(mm));
        say!("note-drill-size", size = told(tool.diameter_mm), low = low, high = high)
    });
    tools.extend(turning_chips(segments));
    let chips = farthest(&tools, CHIPS_TOLD_MM, |tool| tool.chip_mm).map(|tool| {
        let [low, high] = CHIPS_TOLD_MM.map(|mm| Measure::Size.number(mm));
        let chip = Measure::Size.fixed(tool.chip_mm, 3);
        // Of turning the feed stands in place of a diameter.
        let size = match tool.kind {
            ToolKind::Turning => Measure::Feed.trimmed(tool.diameter_mm, 2),
            _ => told(tool.diameter_mm),
        };
        match tool.kind {
            ToolKind::Drill => say!("note-chips-of-drill", size = size, chip = chip, low = low, high = high),
            ToolKind::Tap => say!("note-chips-of-tap", size = size, chip = chip, low = low, high = high),
            ToolKind::Cutter => say!("note-chips-of-cutter", size = size, chip = chip, low = low, high = high),
            ToolKind::Turning => say!("note-chips-of-turning", size = size, chip = chip, low = low, high = high),
        }
    });
    assumed.into_iter().chain(sizes).chain(chips).collect()
}

/// What the set-up must have for rolled threads and left-hand threads.
fn rolled_and_left(job: &Job) -> Vec<String> {
    let mut notes = Vec::new();
    for (i, section) in job.shaft.sections.iter().enumerate() {
        let SectionKind::Thread(thread) = &section.kind else { continue };
        if section.thread_by == Some(ThreadBy::Rolling) {
            let blank = Measure::Size.fixed(thread.flank_mm(), 2);
            let (section, length) = (section.label(i), Measure::Place.number(section.length_mm()));
            notes.push(say!("note-rolled", section = section, length = length, blank = blank));
        }
        if thread.left {
            notes.push(say!("note-left-hand", section = section.label(i), thread = thread.designation));
        }
    }
    notes
}

/// Threads whose pitch is not in their standard, each told once: tools for them are made to order.
fn unusual_threads(job: &Job) -> Vec<String> {
    let turned = job.shaft.sections.iter().filter_map(|s| match &s.kind {
        SectionKind::Thread(t) => Some(t),
        _ => None,
    });
    let tapped = job.shaft.features.iter().filter_map(|f| match &f.kind {
        FeatureKind::TappedHole { thread, .. } => Some(thread),
        _ => None,
    });
    let mut notes: Vec<String> = Vec::new();
    for thread in turned.chain(tapped).filter(|t| !t.is_usual()) {
        let note = say!("note-unusual-pitch", thread = thread.designation, standard = thread.standard());
        if !notes.contains(&note) {
            notes.push(note);
        }
    }
    notes
}
