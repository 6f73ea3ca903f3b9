//! The mechanics at one moment, as a user asks for it. Every number is checked, and what is left out gets a default.

use crate::diag::Diag;
use crate::job::plan::CheckResult;
use crate::job::{Collet, Hold, Holding, Interrupt, Job, Section};
use crate::lang::{Measure, lists};
use crate::planner::places::stations::moments;
use crate::process::moment::{self, Moment, headstock_mm, headstock_places_mm};
use crate::process::segments::{Segment, segment_at};
use crate::process::{Counter, Guide, Rig, State};
use crate::say;
use schemars::JsonSchema;
use serde::Serialize;

/// The moment that is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// Turned length, mm.
    pub turned_mm: f64,
    /// Nose of the counter-spindle's collet, mm from the front face; none: the front is free.
    pub grip_mm: Option<f64>,
    /// Name of the collet; none: the first that holds the diameter there.
    pub collet: Option<String>,
    /// Distance of the headstock's nose from the bush face, mm; none: the worst of nine places.
    pub headstock_mm: Option<f64>,
    /// Without a bush: where the stage ends, mm; none: at the turned length.
    pub stage_end_mm: Option<f64>,
    /// Speed, rev/min; none: that of the segment in cut.
    pub rpm: Option<f64>,
}

/// The mechanics at one turned length: the result of `at --format json`.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
#[allow(missing_docs)]
pub struct At {
    pub turned_mm: f64,
    pub grip_nose_mm: Option<f64>,
    pub collet: Option<String>,
    /// Whether a centre supports the front face.
    pub on_centre: bool,
    pub headstock_mm: Option<f64>,
    pub rpm: f64,
    pub unsupported_mm: f64,
    /// Unsupported length over the mean finished diameter of its turned part.
    pub l_over_d: f64,
    pub n_crit_rpm: f64,
    pub frequencies_hz: Vec<f64>,
    /// At the tool.
    pub stiffness_n_per_um: f64,
    pub stiffness_at_mm: f64,
    /// Lowest stiffness between the grip and the bush. None: the front is free.
    pub span_stiffness_n_per_um: Option<f64>,
    pub span_stiffness_at_mm: Option<f64>,
    pub sag_um: f64,
    pub whip_mm: f64,
    pub cut_deflection_um: f64,
    pub cut_diameter_change_um: f64,
    pub passive_force_n: f64,
    pub net_radial_force_n: f64,
    pub main_force_n: f64,
    /// Place of the finishing tool of a tandem. The deflection is told there. None: not cut by a tandem.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub finisher_at_mm: Option<f64>,
    pub chatter_depth_limit_mm: Option<f64>,
    pub section: usize,
    pub work: String,
    pub checks: Vec<CheckResult>,
    /// Shape of the bent bar, from the front face to the end of the headstock collet's hold.
    pub shape: Vec<Bent>,
    /// Assumptions that the calculation needed.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<String>,
}

/// A point of the bent bar.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Bent {
    pub at_mm: f64,
    /// Sag under its own weight, downward.
    pub weight_um: f64,
    /// Deflection from the radial forces of the finishing travel, away from the tool that makes the size.
    pub cut_um: f64,
}

fn ask(what: impl Into<String>, help: impl Into<String>) -> Diag {
    Diag::new(what).help(help)
}

fn within(name: &str, value: f64, low: f64, high: f64) -> Result<(), Diag> {
    if value.is_finite() && value >= low && value <= high {
        return Ok(());
    }
    let help = say!("at-out-of-range-help", option = name, low = low.to_string(), high = high.to_string());
    Err(ask(say!("at-out-of-range", option = name, value = value.to_string()), help))
}

/// The mechanics at a moment.
///
/// # Errors
/// A value asked for is out of range or does not fit the machine (the diagnostic names the option), the job cannot be
/// cut in segments, or nothing holds the bar.
pub fn at(job: &Job, asked: &Asked) -> Result<At, Diag> {
    within("turned", asked.turned_mm, 0.0, job.parted_at_mm())?;
    let head = &job.machine.headstock;
    if let Some(h) = asked.headstock_mm {
        within("headstock", h, head.nearest_mm, head.farthest_mm())?;
    }
    if let Some(n) = asked.rpm {
        within("rpm", n, 0.0, 1e6)?;
    }
    if asked.grip_mm.is_some() && job.hold == Hold::Centre {
        return Err(ask(say!("at-grip-on-centre"), say!("at-grip-on-centre-help")));
    }
    let collet = choose(job, asked)?;
    if let (Some(g), Some(c)) = (asked.grip_mm, collet) {
        within("grip", g, c.hold_mm, asked.turned_mm.min(job.shaft.length_mm()))?;
    }
    let rig = Rig::new(job, collet);
    let mut notes = Vec::new();
    let segments = segments_anyway(job, collet, &mut notes)?;
    #[expect(clippy::indexing_slicing, reason = "a job has a section, which gives a segment")]
    let segment = &segments[segment_at(&segments, asked.turned_mm)];
    let counter = rig.counter(asked.grip_mm, asked.turned_mm);
    let states: Vec<State> =
        guides(&rig, asked)?.into_iter().map(|guide| State { turned_mm: asked.turned_mm, counter, guide }).collect();
    let rpm = asked.rpm.unwrap_or_else(|| rig.segment_rpm(segment, asked.grip_mm.is_some()));
    let unheld = || ask(say!("at-not-held"), say!("at-not-held-help"));
    let found = moment::moment(&rig, segment, &states, rpm).ok().flatten().ok_or_else(unheld)?;
    let shape = moment::shape(&rig, &found.state, &found.radial_forces).map_err(|_| unheld())?;
    let bent = |b: moment::Bent| Bent { at_mm: b.at_mm, weight_um: b.weight_um, cut_um: b.cut_um };
    Ok(At {
        collet: collet.map(|c| c.name.clone()),
        section: segment.section + 1,
        work: segment.work.key().into(),
        shape: shape.into_iter().map(bent).collect(),
        notes,
        ..told(&found, asked)
    })
}

fn choose<'a>(job: &'a Job, asked: &Asked) -> Result<Option<&'a Collet>, Diag> {
    let (Some(grip), Some(counter)) = (asked.grip_mm, &job.machine.counter_spindle) else {
        return match asked.grip_mm {
            Some(_) => Err(ask(say!("at-no-counter-spindle"), say!("at-no-counter-spindle-help"))),
            None => Ok(None),
        };
    };
    let names = lists::commas(&counter.collets.iter().map(|c| &c.name).collect::<Vec<_>>());
    // The diameter is that of the section at the middle of the hold, whose length depends on the collet.
    let held_mm = |c: &Collet| Rig::new(job, Some(c)).held_mm(grip);
    let found = match &asked.collet {
        Some(name) => job.machine.collet(name),
        None => counter.collets.iter().find(|c| c.holds(held_mm(c))),
    };
    found.map(Some).ok_or_else(|| match &asked.collet {
        Some(name) => ask(say!("at-no-such-collet", collet = name), say!("at-no-such-collet-help", collets = names)),
        None => {
            let diameter = job.shaft.sections.get(job.shaft.section_at(grip)).map_or(0.0, Section::largest_mm);
            ask(
                say!("at-no-collet-fits", diameter = Measure::Size.number(diameter), at = Measure::Place.number(grip)),
                say!("at-no-collet-fits-help", collets = names),
            )
        }
    })
}

fn guides(rig: &Rig<'_>, asked: &Asked) -> Result<Vec<Guide>, Diag> {
    match (rig.job.holding, asked.headstock_mm, asked.stage_end_mm) {
        (Holding::Bush, Some(headstock_mm), None) => Ok(vec![Guide::Bush { headstock_mm }]),
        (Holding::Bush, None, None) => {
            Ok(headstock_places_mm(rig).into_iter().map(|headstock_mm| Guide::Bush { headstock_mm }).collect())
        }
        (Holding::NoBush, None, end) => {
            let stage_end_mm = end.unwrap_or(asked.turned_mm);
            // For work behind the part-off face the bar is fed out farther than for part-off.
            let reaches = &rig.job.machine.cross_tool_reach_mm;
            let done = reaches.iter().flat_map(|r| moments(rig, *r)).map(|(_, turned_mm)| turned_mm);
            within("stage-end", stage_end_mm, asked.turned_mm, done.fold(rig.job.parted_at_mm(), f64::max))?;
            Ok(vec![Guide::Collet { stage_end_mm }])
        }
        (Holding::Bush, _, Some(_)) => Err(ask(say!("at-stage-end-with-bush"), say!("at-stage-end-with-bush-help"))),
        (Holding::NoBush, Some(_), _) => {
            Err(ask(say!("at-headstock-without-bush"), say!("at-headstock-without-bush-help")))
        }
    }
}

/// The segments of a job. A section marked `never` that needs several segments is cut in several all the same, with a
/// note: the mechanics of a moment do not depend on that mark.
fn segments_anyway(job: &Job, collet: Option<&Collet>, notes: &mut Vec<String>) -> Result<Vec<Segment>, Diag> {
    let mut eased = job.clone();
    loop {
        let refused = match Rig::new(&eased, collet).segments() {
            Ok(segments) => return Ok(segments),
            Err(refused) => refused,
        };
        let section = eased.shaft.sections.get_mut(refused.section);
        let Some(section) = section.filter(|s| s.interrupt == Interrupt::Never) else {
            return Err(ask(refused.text, say!("at-cannot-be-cut-help")));
        };
        section.interrupt = Interrupt::Avoid;
        notes.push(say!("note-rule-left-out", rule = refused.text));
    }
}

fn told(m: &Moment, asked: &Asked) -> At {
    At {
        turned_mm: asked.turned_mm,
        grip_nose_mm: asked.grip_mm,
        collet: None,
        on_centre: m.state.counter == Counter::Centre,
        headstock_mm: headstock_mm(&m.state),
        rpm: m.rpm,
        unsupported_mm: m.unsupported_mm,
        l_over_d: m.l_over_d,
        n_crit_rpm: m.critical_rpm,
        frequencies_hz: m.frequencies_hz.clone(),
        stiffness_n_per_um: m.stiffness_n_per_um,
        stiffness_at_mm: m.state.turned_mm,
        span_stiffness_n_per_um: m.span_n_per_um.map(|[value, _]| value),
        span_stiffness_at_mm: m.span_n_per_um.map(|[_, at]| at),
        sag_um: m.sag_um,
        whip_mm: m.whip_mm,
        cut_deflection_um: m.cut_deflection_um,
        cut_diameter_change_um: m.cut_diameter_change_um,
        passive_force_n: m.passive_force_n,
        net_radial_force_n: m.net_radial_force_n,
        main_force_n: m.main_force_n,
        finisher_at_mm: if let [[at_mm, _], _] = m.radial_forces.as_slice() { Some(*at_mm) } else { None },
        chatter_depth_limit_mm: m.chatter_depth_limit_mm,
        section: 0,
        work: String::new(),
        checks: m.checks.iter().map(|f| f.result(asked.turned_mm)).collect(),
        shape: Vec::new(),
        notes: Vec::new(),
    }
}
