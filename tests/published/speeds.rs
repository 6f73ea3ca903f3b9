//! Speeds and feeds of drills, taps and cutters against ranges that others print. Most of these ranges are also what the values were chosen
//! from, so an agreement shows that nothing was copied wrongly. The feed of a tooth is held against a maker it was not taken from.
//!
//! Ranges in ft/min are told in m/min, times 0.3048, to the next whole number outwards.

use crate::row::{Agreement, Row, Standing, Table};
use spanhold::job::materials::{Class, Speeds, fz_mm};

/// Two rows: ours is not below and not above a printed range, or is told as missed.
fn inside(source: &'static str, what: &str, (low, high): (f64, f64), ours: f64) -> Vec<Row> {
    let bound = |agreement, printed: f64, end: &str| {
        let holds = match agreement {
            Agreement::AtLeast => ours >= printed,
            _ => ours <= printed,
        };
        let agreement = if holds { agreement } else { Agreement::Missed };
        let mut t = Table::new(source, Standing::Verified("the page"), agreement);
        t.printed(format!("{what}, {end} end of the range"), &printed.to_string(), ours);
        t.done()
    };
    [bound(Agreement::AtLeast, low, "low"), bound(Agreement::AtMost, high, "high")].concat()
}

fn feet((low, high): (f64, f64)) -> (f64, f64) {
    ((0.3048 * low).floor(), (0.3048 * high).ceil())
}

fn drills() -> Vec<Row> {
    const COURSE: &str = "a training course for machinists of a navy: high-speed steel drills";
    const GUIDE: &str = "a drill maker's reference guide: high-speed steel drills";
    const DEALER: &str = "a tool dealer's page, repeats a handbook: high-speed steel drills, annealed";
    const CARBIDE: &str = "a tool maker's catalogue, 2020, p. 1339: solid carbide drills; rows of a broken table";
    let cases = [
        (COURSE, "low-carbon steel", Class::Structural, (80.0, 110.0)),
        (COURSE, "medium-carbon steel", Class::Carbon, (70.0, 80.0)),
        (COURSE, "alloy steel", Class::Alloy, (50.0, 70.0)),
        (COURSE, "stainless steel", Class::Austenitic, (30.0, 40.0)),
        (COURSE, "brass", Class::Brass, (200.0, 300.0)),
        (COURSE, "aluminium", Class::Aluminium, (200.0, 300.0)),
        (GUIDE, "mild steel", Class::Structural, (80.0, 110.0)),
        (GUIDE, "steel of 0.4 to 0.5 % carbon", Class::Carbon, (70.0, 80.0)),
        (GUIDE, "tool steel", Class::Tool, (50.0, 60.0)),
        (GUIDE, "free-machining stainless steel", Class::FreeStainless, (30.0, 80.0)),
        (GUIDE, "work-hardening stainless steel", Class::Austenitic, (15.0, 50.0)),
        (GUIDE, "bronze of high strength", Class::Copper, (70.0, 150.0)),
        (GUIDE, "Monel or high-nickel steel", Class::Nickel, (30.0, 50.0)),
        (GUIDE, "plastics", Class::Plastic, (100.0, 300.0)),
        (DEALER, "303", Class::FreeStainless, (85.0, 85.0)),
        (DEALER, "304", Class::Austenitic, (55.0, 55.0)),
        (DEALER, "316", Class::Austenitic, (50.0, 50.0)),
        (DEALER, "ferritic 430", Class::Ferritic, (65.0, 65.0)),
        (DEALER, "martensitic 410, 420", Class::Ferritic, (65.0, 75.0)),
        (DEALER, "oil-hardening tool steel", Class::Tool, (45.0, 45.0)),
        (DEALER, "hot-work tool steel", Class::Tool, (50.0, 60.0)),
    ];
    let inch = cases.map(|(source, theirs, class, range)| {
        let what = format!("drilling {theirs}, ours {}: m/min", class.key());
        inside(source, &what, feet(range), class.speeds().drill_m_per_min)
    });
    // Ours are of high-speed steel; what a carbide drill does is told for comparison.
    let carbide = [
        ("free-cutting steel", Class::FreeCutting, 90.0),
        ("carbon steel, annealed", Class::Carbon, 120.0),
        ("austenitic stainless steel", Class::Austenitic, 50.0),
    ];
    let carbide = carbide.map(|(theirs, class, vc)| {
        let mut t = Table::new(CARBIDE, Standing::Verified("the page"), Agreement::AtMost);
        let what = format!("drilling {theirs} with carbide, ours {} with high-speed steel: m/min", class.key());
        t.printed(what, &format!("{vc}"), class.speeds().drill_m_per_min);
        t.done()
    });
    [inch.concat(), carbide.concat()].concat()
}

fn drill_feeds() -> Vec<Row> {
    const BOOK: &str = "a table book for apprentices, second-hand: feed of drills of 4 to 25 mm";
    let cases = [
        ("steel to 800 N/mm²", Class::Structural, 4.0, (0.08, 0.32)),
        ("steel to 800 N/mm²", Class::Structural, 10.0, (0.08, 0.32)),
        ("steel above 800 N/mm²", Class::Alloy, 10.0, (0.08, 0.15)),
        ("stainless steel", Class::Austenitic, 5.0, (0.06, 0.12)),
        ("stainless steel", Class::Austenitic, 10.0, (0.06, 0.12)),
        ("aluminium", Class::Aluminium, 10.0, (0.20, 0.40)),
        ("aluminium", Class::Aluminium, 4.0, (0.20, 0.40)),
    ];
    let feed = |class: Class, d: f64| class.speeds().drill_feed_share * d;
    let rows = cases.map(|(theirs, class, d, range)| {
        inside(BOOK, &format!("drill of {d} mm in {theirs}: mm/rev"), range, feed(class, d))
    });
    rows.concat()
}

fn taps() -> Vec<Row> {
    const DEALER: &str = "a tool dealer's table of tapping speeds";
    const CHART: &str = "a chart of tapping speeds";
    let cases = [
        (DEALER, "free-machining steel", Class::FreeCutting, (40.0, 80.0)),
        (DEALER, "stainless steel", Class::Austenitic, (5.0, 35.0)),
        (DEALER, "titanium alloys", Class::TitaniumAlloy, (10.0, 40.0)),
        (DEALER, "Monel", Class::Nickel, (20.0, 40.0)),
        (DEALER, "copper", Class::Copper, (30.0, 60.0)),
        (DEALER, "bronze", Class::Copper, (50.0, 100.0)),
        (DEALER, "brass", Class::Brass, (50.0, 200.0)),
        (DEALER, "aluminium", Class::Aluminium, (50.0, 150.0)),
        (DEALER, "thermoplastics", Class::Plastic, (50.0, 100.0)),
        (CHART, "low-carbon steel", Class::Structural, (0.0, 55.0)),
        (CHART, "medium-carbon steel", Class::Carbon, (0.0, 35.0)),
        (CHART, "300 series stainless", Class::Austenitic, (0.0, 20.0)),
        (CHART, "400 series stainless", Class::Ferritic, (0.0, 15.0)),
        (CHART, "wrought aluminium", Class::Aluminium, (0.0, 80.0)),
        (CHART, "free-machining brass", Class::Brass, (0.0, 60.0)),
        (CHART, "nickel alloys", Class::Nickel, (0.0, 10.0)),
        (CHART, "titanium alloys", Class::TitaniumAlloy, (0.0, 10.0)),
    ];
    let rows = cases.map(|(source, theirs, class, range)| {
        let what = format!("tapping {theirs}, ours {}: m/min", class.key());
        let rows = inside(source, &what, feet(range), class.speeds().tap_m_per_min);
        // The chart tells one speed. Ours is not held to more than that.
        if source == CHART { rows.into_iter().skip(1).collect() } else { rows }
    });
    rows.concat()
}

fn cutters() -> Vec<Row> {
    const SLOTS: &str = "a tool maker's catalogue, 2020, p. 1084: slots with solid carbide";
    let cases = [
        ("carbon steel", Class::Carbon, (140.0, 180.0), [(0.030, 0.045), (0.035, 0.055), (0.050, 0.070)]),
        ("alloy steel", Class::Alloy, (70.0, 150.0), [(0.025, 0.040), (0.035, 0.055), (0.050, 0.070)]),
        ("stainless steel", Class::Austenitic, (60.0, 100.0), [(0.025, 0.045), (0.035, 0.050), (0.040, 0.065)]),
        ("aluminium", Class::Aluminium, (300.0, 750.0), [(0.025, 0.050), (0.035, 0.065), (0.035, 0.090)]),
        ("titanium alloy", Class::TitaniumAlloy, (20.0, 50.0), [(0.025, 0.040), (0.030, 0.050), (0.035, 0.085)]),
    ];
    let each = cases.map(|(theirs, class, vc, feeds)| {
        let Speeds { mill_m_per_min, tooth_feed, .. } = class.speeds();
        let mut rows = inside(SLOTS, &format!("milling slots in {theirs}: m/min"), vc, mill_m_per_min);
        // The sizes are printed as ranges; ours is that of the size in the middle.
        for (d, range) in [7.0, 11.0, 18.0].into_iter().zip(feeds) {
            let what = format!("cutter of {d} mm in {theirs}: mm/tooth");
            rows.extend(inside(SLOTS, &what, range, fz_mm(tooth_feed, d)));
        }
        rows
    });
    each.concat()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [drills(), drill_feeds(), taps(), cutters()].concat()
}
