//! The machine file, or `machine` as a map in the job.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use super::{scatter, tools, units};
use crate::diag::Diag;
use crate::fields::{self, COLLETS_MAX, REACHES_MAX};
use crate::job::{
    BackPlace, Bush, BushKind, Centre, Collet, CounterSpindle, Headstock, Machine, NoBush, PartOff, Sleeve, Tray,
};
use crate::say;

const KEYS: [&str; 19] = [
    "name",
    "units",
    "bush",
    "no_bush",
    "headstock",
    "bar_feed",
    "counter_spindle",
    "shared_stop_saving_s",
    "cross_tool_reach",
    "driven_max_rpm",
    "segment_overhead_s",
    "part_off",
    "bar_end",
    "facing",
    "tools",
    "tool_change_s",
    "bar_change_s",
    "rapid",
    "scatter",
];

const BACK_PLACES: [(&str, BackPlace); 2] = [("in_line", BackPlace::InLine), ("aside", BackPlace::Aside)];

const BUSH_KINDS: [(&str, Option<BushKind>); 2] =
    [("fixed", Some(BushKind::Fixed)), ("following", Some(BushKind::Following))];

/// Part of the land that must stay on raw bar if the machine file does not say, as a share. Common practice, no source.
const ENGAGEMENT_SHARE: f64 = 0.5;

/// Reads the machine. If it has no `name`, it gets `default_name`. Its own `units` count in it alone.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, default_name: &str) -> Option<Machine> {
    let map = r.map(node, &KEYS)?;
    let own = units::read(r, &map);
    let around = r.units;
    r.units = own.flatten().unwrap_or(around);
    let machine = parts(r, &map, default_name);
    r.units = around;
    own.and(machine)
}

fn parts(r: &mut Reader, map: &Map, default_name: &str) -> Option<Machine> {
    let name = r.text_maybe(map, "name");
    let bush = part(r, map, "bush", bush);
    let no_bush = part(r, map, "no_bush", no_bush);
    let headstock = r
        .required(map, "headstock", "the keys nearest, stroke, hold, stiffness, max_rpm, regrip_s with their values")
        .and_then(|node| headstock(r, node));
    let bar_feed = part(r, map, "bar_feed", bar_feed);
    let counter_spindle = part(r, map, "counter_spindle", counter_spindle);
    let saving = r.number_or(map, &fields::SHARED_STOP_SAVING_S, None);
    let reach = reach(r, map);
    let driven = r.number_or(map, &fields::DRIVEN_MAX_RPM, None);
    let overhead = r.number_or(map, &fields::SEGMENT_OVERHEAD_S, None);
    let part_off = part_off(r, map);
    let bar_end = r.number_or(map, &fields::BAR_END, None);
    let facing = r.number_or(map, &fields::FACING, None);
    let tools = tools::read(r, map);
    let tool_change = r.number_or(map, &fields::TOOL_CHANGE_S, None);
    let bar_change = r.number_or(map, &fields::BAR_CHANGE_S, None);
    let rapid = r.number_or(map, &fields::RAPID, None);
    let spreads = scatter::own(r, map, &scatter::OF_MACHINE);
    let machine = Machine {
        name: name?.unwrap_or_else(|| default_name.to_owned()),
        bush: bush?,
        no_bush: no_bush?,
        headstock: headstock?,
        bar_feed_max_rpm: bar_feed?,
        counter_spindle: counter_spindle?,
        shared_stop_saving_s: saving?,
        cross_tool_reach_mm: reach?,
        driven_max_rpm: driven?,
        segment_overhead_s: overhead?,
        part_off: part_off?,
        bar_end_mm: bar_end?,
        facing_mm: facing?,
        tools: tools?,
        tool_change_s: tool_change?,
        bar_change_s: bar_change?,
        rapid_m_per_min: rapid?,
        spreads: spreads?,
        written: r.units,
    };
    fits(r, map, &machine)?;
    Some(machine)
}

/// A part of the machine that may be left out: `Some(None)` if it is left out.
fn part<T>(
    r: &mut Reader,
    map: &Map,
    key: &str,
    read: fn(&mut Reader, &Spanned<Node>) -> Option<T>,
) -> Option<Option<T>> {
    match r.optional(map, key)? {
        None => Some(None),
        Some(node) => read(r, node).map(Some),
    }
}

fn bush(r: &mut Reader, node: &Spanned<Node>) -> Option<Bush> {
    let map = r.map(node, &["max_bar", "land", "gap", "stiffness", "engagement_min", "kind"])?;
    let max_bar = r.number(&map, &fields::BUSH_MAX_BAR);
    let land = r.number(&map, &fields::BUSH_LAND);
    let gap = r.number(&map, &fields::BUSH_GAP);
    let stiffness = r.number(&map, &fields::BUSH_STIFFNESS);
    let engagement = r.number_or(&map, &fields::ENGAGEMENT_MIN, land.map(|land| ENGAGEMENT_SHARE * land));
    let kind = r.choice(&map, "kind", &BUSH_KINDS, Some(None));
    let (land_mm, engagement_min_mm) = (land?, engagement?);
    if engagement_min_mm > land_mm {
        let diag = Diag::new(say!("bush-engagement", engagement = engagement_min_mm.to_string()))
            .help(say!("bush-engagement-help", most = land_mm.to_string()));
        r.complain(&map.place("engagement_min"), diag);
        return None;
    }
    let (max_bar_mm, gap_mm, stiffness_n_per_um) = (max_bar?, gap?, stiffness?);
    Some(Bush { max_bar_mm, land_mm, gap_mm, stiffness_n_per_um, engagement_min_mm, kind: kind? })
}

fn no_bush(r: &mut Reader, node: &Spanned<Node>) -> Option<NoBush> {
    let map = r.map(node, &["max_bar", "collet_gap"])?;
    let max_bar = r.number(&map, &fields::NO_BUSH_MAX_BAR);
    let gap = r.number(&map, &fields::COLLET_GAP);
    Some(NoBush { max_bar_mm: max_bar?, collet_gap_mm: gap? })
}

fn headstock(r: &mut Reader, node: &Spanned<Node>) -> Option<Headstock> {
    const KEYS: [&str; 12] = [
        "nearest",
        "stroke",
        "hold",
        "stiffness",
        "max_rpm",
        "regrip_s",
        "clamp_force",
        "friction",
        "power",
        "efficiency",
        "torque",
        "feed_force",
    ];
    let map = r.map(node, &KEYS)?;
    let nearest = r.number(&map, &fields::HEADSTOCK_NEAREST);
    let stroke = r.number(&map, &fields::STROKE);
    let hold = r.number(&map, &fields::HEADSTOCK_HOLD);
    let stiffness = r.number(&map, &fields::HEADSTOCK_STIFFNESS);
    let max_rpm = r.number(&map, &fields::HEADSTOCK_MAX_RPM);
    let regrip = r.number(&map, &fields::REGRIP_S);
    let clamp = r.number_maybe(&map, &fields::HEADSTOCK_CLAMP_FORCE);
    let friction = r.number_or(&map, &fields::HEADSTOCK_FRICTION, None);
    let power = r.number_maybe(&map, &fields::HEADSTOCK_POWER);
    let efficiency = r.number_or(&map, &fields::HEADSTOCK_EFFICIENCY, None);
    let torque = r.number_maybe(&map, &fields::HEADSTOCK_TORQUE);
    let feed_force = r.number_maybe(&map, &fields::HEADSTOCK_FEED_FORCE);
    Some(Headstock {
        nearest_mm: nearest?,
        stroke_mm: stroke?,
        hold_mm: hold?,
        stiffness_n_per_um: stiffness?,
        max_rpm: max_rpm?,
        regrip_s: regrip?,
        clamp_force_n: clamp?,
        friction: friction?,
        power_kw: power?,
        efficiency: efficiency?,
        torque_nm: torque?,
        feed_force_n: feed_force?,
    })
}

/// The highest speed of the bar feeder, rev/min.
fn bar_feed(r: &mut Reader, node: &Spanned<Node>) -> Option<f64> {
    let map = r.map(node, &["max_rpm"])?;
    r.number(&map, &fields::BAR_FEED_MAX_RPM)
}

fn counter_spindle(r: &mut Reader, node: &Spanned<Node>) -> Option<CounterSpindle> {
    const KEYS: [&str; 17] = [
        "nearest",
        "farthest",
        "bore",
        "bore_depth",
        "stiffness",
        "max_rpm",
        "torque",
        "hand_over_s",
        "friction",
        "sleeve",
        "centre",
        "collets",
        "back_work",
        "unload_s",
        "axial_load",
        "torsional_stiffness",
        "phase_error",
    ];
    let map = r.map(node, &KEYS)?;
    let nearest = r.number(&map, &fields::COUNTER_NEAREST);
    let farthest = r.number(&map, &fields::COUNTER_FARTHEST);
    let bore = r.number(&map, &fields::BORE);
    let bore_depth = r.number(&map, &fields::BORE_DEPTH);
    let stiffness = r.number(&map, &fields::COUNTER_STIFFNESS);
    let max_rpm = r.number(&map, &fields::COUNTER_MAX_RPM);
    let torque = r.number_maybe(&map, &fields::COUNTER_TORQUE);
    let hand_over = r.number(&map, &fields::HAND_OVER_S);
    let friction = r.number_or(&map, &fields::FRICTION, None);
    let back_place = r.choice(&map, "back_work", &BACK_PLACES, Some(BackPlace::InLine));
    let unload = r.number_or(&map, &fields::UNLOAD_S, None);
    let axial_load = r.number_or(&map, &fields::COUNTER_AXIAL_LOAD, None);
    let torsional = r.number_maybe(&map, &fields::TORSIONAL_STIFFNESS);
    let phase = r.number_or(&map, &fields::PHASE_ERROR, None);
    if matches!(torsional, Some(None)) && map.get("phase_error").is_some() {
        let diag = Diag::new(say!("phase-error-alone")).help(say!("phase-error-alone-help"));
        r.complain(&map.place("phase_error"), diag);
        return None;
    }
    let sleeve = part(r, &map, "sleeve", sleeve);
    let centre = part(r, &map, "centre", centre);
    let collets = collets(r, &map);
    if let (Some(nearest), Some(farthest)) = (nearest, farthest)
        && farthest <= nearest
    {
        let diag = Diag::new(say!("spindle-farthest", farthest = farthest.to_string()))
            .help(say!("spindle-farthest-help", nearest = nearest.to_string()));
        r.complain(&map.place("farthest"), diag);
        return None;
    }
    Some(CounterSpindle {
        nearest_mm: nearest?,
        farthest_mm: farthest?,
        bore_mm: bore?,
        bore_depth_mm: bore_depth?,
        stiffness_n_per_um: stiffness?,
        max_rpm: max_rpm?,
        torque_nm: torque?,
        hand_over_s: hand_over?,
        friction: friction?,
        back_place: back_place?,
        unload_s: unload?,
        axial_load_n: axial_load?,
        torsional_n_m_per_rad: torsional?,
        phase_error_deg: phase?,
        sleeve: sleeve?,
        centre: centre?,
        collets: collets?,
    })
}

fn sleeve(r: &mut Reader, node: &Spanned<Node>) -> Option<Sleeve> {
    let map = r.map(node, &["pitch", "stiffness"])?;
    let pitch = r.number(&map, &fields::SLEEVE_PITCH);
    let stiffness = r.number(&map, &fields::SLEEVE_STIFFNESS);
    Some(Sleeve { pitch_mm: pitch?, stiffness_n_per_um: stiffness? })
}

fn centre(r: &mut Reader, node: &Spanned<Node>) -> Option<Centre> {
    let map = r.map(node, &["force", "stiffness", "stands_out"])?;
    let force = r.number(&map, &fields::CENTRE_FORCE);
    let stiffness = r.number(&map, &fields::CENTRE_STIFFNESS);
    let stands_out = r.number_maybe(&map, &fields::CENTRE_STANDS_OUT);
    Some(Centre { force_n: force?, stiffness_n_per_um: stiffness?, stands_out_mm: stands_out? })
}

fn collets(r: &mut Reader, map: &Map) -> Option<Vec<Collet>> {
    if r.collets_elsewhere && !map.tried("collets") {
        return Some(Vec::new());
    }
    let node = r.required(map, "collets", "a list of collets")?;
    let items = r.list(node, "collets", COLLETS_MAX)?;
    if items.is_empty() {
        let diag = Diag::new(say!("collets-none")).help(say!("collets-none-help"));
        r.complain(&node.referenced, diag);
        return None;
    }
    let mut collets: Vec<Collet> = Vec::with_capacity(items.len());
    for item in items {
        let Some((map, collet)) = collet(r, item, &[]) else {
            continue;
        };
        if collets.iter().any(|other| other.name == collet.name) {
            let diag = Diag::new(say!("collets-same-name", name = collet.name)).help(say!("collets-same-name-help"));
            r.complain(&map.place("name"), diag);
            continue;
        }
        collets.push(collet);
    }
    (collets.len() == items.len()).then_some(collets)
}

/// Reads a collet, in a map that may have `more` keys.
pub(super) fn collet<'a>(r: &mut Reader, node: &'a Spanned<Node>, more: &[&'static str]) -> Option<(Map<'a>, Collet)> {
    let keys = ["name", "range", "hold", "passes", "clamp_force", "run_out"];
    let map = r.map(node, &[&keys, more].concat())?;
    let name = r.text(&map, "name", "the name of the collet");
    let range = r.required(&map, "range", "`[smallest, largest]` diameter that it clamps");
    let range = range.and_then(|node| r.pair(node, &fields::COLLET_RANGE, "[17.6, 18.1]"));
    let hold = r.number(&map, &fields::COLLET_HOLD);
    let passes = r.number(&map, &fields::PASSES);
    let force = r.number(&map, &fields::CLAMP_FORCE);
    let run_out = r.number_maybe(&map, &fields::COLLET_RUN_OUT);
    let (smallest_mm, largest_mm) = range?;
    if smallest_mm > largest_mm {
        let diag = Diag::new(say!("collet-range")).help(say!(
            "collet-range-help",
            smallest = largest_mm.to_string(),
            largest = smallest_mm.to_string()
        ));
        r.complain(&map.place("range"), diag);
        return None;
    }
    let passes_mm = passes?;
    if passes_mm < largest_mm {
        let diag = Diag::new(say!("collet-passes", passes = passes_mm.to_string()))
            .help(say!("collet-passes-help", largest = largest_mm.to_string()));
        r.complain(&map.place("passes"), diag);
        return None;
    }
    let (hold_mm, clamp_force_n, run_out_mm) = (hold?, force?, run_out?);
    let collet = Collet { name: name?, smallest_mm, largest_mm, hold_mm, passes_mm, clamp_force_n, run_out_mm };
    Some((map, collet))
}

fn reach(r: &mut Reader, map: &Map) -> Option<Vec<f64>> {
    let field = &fields::CROSS_TOOL_REACH;
    match r.optional(map, field.key())? {
        Some(node) if matches!(node.value, Node::List(_)) => {
            let items = r.list(node, field.key(), REACHES_MAX)?;
            if items.is_empty() {
                r.complain(
                    &node.referenced,
                    Diag::new(say!("text-empty", key = field.key())).help(say!("value-missing-help")),
                );
                return None;
            }
            let reaches: Vec<f64> = items.iter().filter_map(|item| r.number_in(item, field)).collect();
            (reaches.len() == items.len()).then_some(reaches)
        }
        _ => r.number_or(map, field, None).map(|reach| vec![reach]),
    }
}

fn part_off(r: &mut Reader, map: &Map) -> Option<PartOff> {
    let Some(node) = r.optional(map, "part_off")? else {
        let (width_mm, time_s) = (fields::PART_OFF_WIDTH.default?, fields::PART_OFF_TIME_S.default?);
        return Some(PartOff { width_mm, time_s, tray: None });
    };
    let map = r.map(node, &["width", "time_s", "tray"])?;
    let width = r.number_or(&map, &fields::PART_OFF_WIDTH, None);
    let time = r.number_or(&map, &fields::PART_OFF_TIME_S, None);
    let tray = part(r, &map, "tray", tray);
    Some(PartOff { width_mm: width?, time_s: time?, tray: tray? })
}

fn tray(r: &mut Reader, node: &Spanned<Node>) -> Option<Tray> {
    let map = r.map(node, &["max_length", "max_diameter"])?;
    let length = r.number(&map, &fields::TRAY_MAX_LENGTH);
    let diameter = r.number(&map, &fields::TRAY_MAX_DIAMETER);
    Some(Tray::new(length?, diameter?))
}

/// Checks what must hold between the parts of the machine.
fn fits(r: &mut Reader, map: &Map, machine: &Machine) -> Option<()> {
    let nearest_mm = machine.headstock.nearest_mm;
    if let Some(bush) = &machine.bush
        && nearest_mm < bush.land_mm
    {
        let diag = Diag::new(say!("headstock-in-bush", nearest = nearest_mm.to_string()))
            .help(say!("headstock-in-bush-help", land = bush.land_mm.to_string()));
        r.complain(&map.inner_place("headstock", "nearest"), diag);
        return None;
    }
    Some(())
}
