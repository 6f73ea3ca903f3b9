//! `stock`: the bar. What the job leaves out comes from a bar of the shop.

use super::reader::{Map, Reader};
use super::tolerance;
use crate::diag::Diag;
use crate::fields;
use crate::job::shop::Bar;
use crate::job::{FeatureKind, Holding, Machine, Section, Shaft, Stock, StockKind, Tapped};
use crate::say;

/// The words of `kind`.
const STOCK_KINDS: [(&str, StockKind); 4] = [
    (StockKind::Drawn.key(), StockKind::Drawn),
    (StockKind::Turned.key(), StockKind::Turned),
    (StockKind::Ground.key(), StockKind::Ground),
    (StockKind::BarFeeder.key(), StockKind::BarFeeder),
];

/// How a bar was made: `Some(None)` if it is left out.
pub(super) fn kind(r: &mut Reader, map: &Map) -> Option<Option<StockKind>> {
    match map.tried("kind") {
        false => Some(None),
        true => r.choice(map, "kind", &STOCK_KINDS, None).map(Some),
    }
}

/// Whether there is a shop that keeps bars.
fn shop_has_bars(r: &Reader) -> bool {
    r.shop().is_some_and(|shop| !shop.bars.is_empty())
}

/// The map of the bar; an empty one if the job leaves it to the shop.
pub(super) fn map<'a>(r: &mut Reader, job: &Map<'a>) -> Option<Map<'a>> {
    if shop_has_bars(r) && job.get("stock").is_none() {
        return Some(Map::empty(job.at));
    }
    let node = r.required(job, "stock", "the bar, such as `{diameter: 25}`")?;
    r.map(node, &["diameter", "bore", "tolerance", "bar_length", "kind"])
}

/// Reads the bar, and gives the bar of the shop that it is, if there is one.
pub(super) fn read(
    r: &mut Reader,
    map: &Map,
    shaft: Option<&Shaft>,
    machine: Option<&Machine>,
    holding: Option<Holding>,
) -> Option<(Stock, Option<Bar>)> {
    let kind = kind(r, map);
    let (diameter, bar) = if shop_has_bars(r) && !map.tried("diameter") {
        // Without the shaft and the machine nothing can be chosen; what is wrong with them is reported.
        let bar = chosen(r, map, shaft?, machine?, holding?)?;
        (Some(bar.diameter_mm), Some(bar))
    } else {
        let diameter = r.number(map, &fields::STOCK_DIAMETER);
        let same = |bar: &&Bar| {
            shaft.is_some_and(|s| s.material.name == bar.material)
                && diameter.is_some_and(|d| (d - bar.diameter_mm).abs() < 1e-9)
        };
        let bar = r.shop().and_then(|shop| shop.bars.iter().find(same).cloned());
        (diameter, bar)
    };
    let bore = r.number_or(map, &fields::STOCK_BORE, None);
    let own_length = bar.as_ref().and_then(|bar| bar.bar_length_mm);
    let bar_length = match (map.tried("bar_length"), own_length) {
        (false, Some(length)) => Some(length),
        _ => r.number_or(map, &fields::BAR_LENGTH, None),
    };
    let of_bar = bar.as_ref().and_then(|bar| bar.tolerance.clone());
    let tolerance = tolerance::of_bar(r, map, diameter).map(|own| own.or(of_bar));
    let diameter_mm = diameter?;
    let thickest = shaft.and_then(|shaft| {
        shaft
            .sections
            .iter()
            .enumerate()
            .max_by(|a, b| a.1.largest_mm().total_cmp(&b.1.largest_mm()).then(b.0.cmp(&a.0)))
    });
    if let Some((index, section)) = thickest
        && section.largest_mm() > diameter_mm
    {
        // A circle across corners has endless decimals. The message gives it to a millionth of a mm, rounded up so that
        // a bar of this size is enough.
        let enough = (section.largest_mm() * 1e6).ceil() / 1e6;
        let (bar, needed) = (diameter_mm.to_string(), enough.to_string());
        let diag = Diag::new(say!("stock-too-thin", bar = bar, section = section.label(index), needed = needed))
            .help(say!("stock-too-thin-help", needed = needed));
        r.complain(&map.place("diameter"), diag);
        return None;
    }
    let bore_mm = bore?;
    if let Some(shaft) = shaft.filter(|_| bore_mm > 0.0) {
        bore_leaves_a_wall(r, map, bore_mm, shaft)?;
    }
    let kind = kind?.or(bar.as_ref().and_then(|bar| bar.kind));
    let stock = Stock { diameter_mm, bore_mm, tolerance: tolerance?, bar_length_mm: bar_length?, kind };
    if let Some(bar) = &bar {
        tell(r, map, &stock, bar);
    }
    Some((stock, bar))
}

/// The thinnest bar of the shop that gives the shaft and goes through the machine.
fn chosen(r: &mut Reader, map: &Map, shaft: &Shaft, machine: &Machine, holding: Holding) -> Option<Bar> {
    let most_mm = match holding {
        Holding::Bush => machine.bush.as_ref().map(|bush| bush.max_bar_mm),
        Holding::NoBush => machine.no_bush.as_ref().map(|no_bush| no_bush.max_bar_mm),
    };
    let bars: Vec<Bar> = r.shop().map(|shop| shop.bars.clone()).unwrap_or_default();
    let of_grade: Vec<&Bar> = bars.iter().filter(|bar| bar.material == shaft.material.name).collect();
    let goes = |bar: &&&Bar| bar.gives(shaft) && most_mm.is_none_or(|most| bar.diameter_mm <= most);
    let thinnest = of_grade.iter().filter(goes).min_by(|a, b| a.diameter_mm.total_cmp(&b.diameter_mm));
    if let Some(bar) = thinnest {
        return Some((*bar).clone());
    }
    let (file, material) = (r.shop().map(|shop| shop.file_name()).unwrap_or_default(), shaft.material.name.clone());
    let diag = if of_grade.is_empty() {
        let mut grades: Vec<&str> = bars.iter().map(|bar| bar.material.as_str()).collect();
        grades.sort_unstable();
        grades.dedup();
        Diag::new(say!("shop-no-bar-of", file = file, material = material))
            .help(say!("shop-no-bar-of-help", grades = grades.join(", ")))
    } else {
        let sizes: Vec<String> = of_grade.iter().map(|bar| format!("Ø{}", bar.diameter_mm)).collect();
        let needed = ((shaft.largest_mm() * 1e6).ceil() / 1e6).to_string();
        let what = say!("shop-no-bar", file = file, material = material, needed = needed.clone());
        let (sizes, machine) = (sizes.join(", "), machine.name.clone());
        Diag::new(what).help(say!("shop-no-bar-help", sizes = sizes, machine = machine, needed = needed))
    };
    r.complain(&map.place("diameter"), diag);
    None
}

/// Tells which values of the bar are the shop's.
fn tell(r: &mut Reader, map: &Map, stock: &Stock, bar: &Bar) {
    let tolerance = stock.tolerance.as_ref().map(|t| t.label.clone());
    let values = [
        ("diameter", "stock.diameter", Some(format!("{} mm", stock.diameter_mm))),
        ("tolerance", "stock.tolerance", tolerance),
        ("kind", "stock.kind", stock.kind.map(|kind| kind.key().to_owned())),
        ("bar_length", "stock.bar_length", bar.bar_length_mm.map(|length| format!("{length} mm"))),
    ];
    for (key, path, value) in values {
        if let (false, Some(value)) = (map.tried(key), value) {
            r.given_by_shop(path, value, bar.line);
        }
    }
}

/// A hollow bar has a wall everywhere, and work in an end is larger than its bore.
fn bore_leaves_a_wall(r: &mut Reader, map: &Map, bore_mm: f64, shaft: &Shaft) -> Option<()> {
    let place = map.place("bore");
    let bore = bore_mm.to_string();
    let least = |s: &Section| s.bending_mm(s.from_mm).min(s.bending_mm(s.to_mm));
    let thinnest = shaft.sections.iter().enumerate().min_by(|a, b| least(a.1).total_cmp(&least(b.1)));
    if let Some((i, section)) = thinnest.filter(|(_, s)| least(s) <= bore_mm) {
        let smallest = format!("{:.3}", least(section));
        let diag =
            Diag::new(say!("bore-too-wide", bore = bore, section = section.label(i), smallest = smallest.clone()))
                .help(say!("bore-too-wide-help", smallest = smallest));
        r.complain(&place, diag);
        return None;
    }
    let sizes = shaft.features.iter().filter_map(|f| match &f.kind {
        FeatureKind::AxialHole { diameter_mm, .. } => Some(*diameter_mm),
        FeatureKind::CentreHole { pilot_mm, .. } => Some(*pilot_mm),
        FeatureKind::TappedHole { thread, place: Tapped::InEnd { .. } } => Some(thread.major_mm - thread.pitch_mm),
        FeatureKind::HexSocket { across_flats_mm, .. } => Some(*across_flats_mm),
        _ => None,
    });
    if let Some(size) = sizes.reduce(f64::min).filter(|size| *size <= bore_mm) {
        let diag = Diag::new(say!("bore-hole", bore = bore, size = size.to_string())).help(say!("bore-hole-help"));
        r.complain(&place, diag);
        return None;
    }
    Some(())
}
