//! The workbook of a plan, read back by a library that did not write it.

use calamine::{Data, Reader, Xlsx};
use spanhold::job::plan::Plan;
use spanhold::report::{ReportError, plan_xlsx};
use std::io::Cursor;

fn plan(name: &str) -> Plan {
    let text = std::fs::read_to_string(format!("plans/{name}/plan.json")).expect("a stored plan");
    serde_json::from_str(&text).expect("a plan")
}

fn opened(plan: &Plan) -> Xlsx<Cursor<Vec<u8>>> {
    Xlsx::new(Cursor::new(plan_xlsx(plan).expect("written"))).expect("a workbook")
}

#[test]
fn the_sheets_hold_the_plan_as_typed_cells() {
    let plan = plan("feed-roller-shaft");
    let mut book = opened(&plan);
    assert_eq!(book.sheet_names(), ["stages", "segments", "checks", "quote", "features", "positions"]);
    let stages = book.worksheet_range("stages").expect("a sheet");
    assert_eq!(stages.height(), plan.stages.len() + 1);
    let column = |sheet: &calamine::Range<Data>, head: &str| {
        let heads = sheet.rows().next().expect("heads");
        heads.iter().position(|c| *c == Data::String(head.into())).unwrap_or_else(|| panic!("no {head}: {heads:?}"))
    };
    for (row, stage) in stages.rows().skip(1).zip(&plan.stages) {
        assert_eq!(row[column(&stages, "to (mm)")], Data::Float(stage.to_mm));
        // Whole, and never above the speed that holds.
        assert_eq!(row[column(&stages, "highest speed (rev/min)")], Data::Float(stage.rpm_max.floor()));
        // The highest may be too fast elsewhere in the stage: each stretch has its own, none above what holds there.
        let stretches = row[column(&stages, "highest speed from … to … mm turned length (rev/min)")].to_string();
        for piece in plan.segments.iter().filter(|s| s.stage == stage.number && s.rpm > 0.0) {
            let rpm = stretches.split("; ").find_map(|s| {
                let (from_to, rpm) = s.split_once(": ")?;
                let (from, to) = from_to.split_once(" to ")?;
                let [from, to, rpm] = [from, to, rpm].map(|n| n.parse::<f64>().expect("a number"));
                (from < piece.from_mm + 0.01 && piece.to_mm < to + 0.01).then_some(rpm)
            });
            assert!(rpm.is_some_and(|rpm| rpm <= piece.rpm && rpm > piece.rpm - 1.0), "{stretches}: {piece:?}");
        }
        let grip = stage.grip.as_ref().map_or(Data::Empty, |g| Data::Float(g.from_mm));
        assert_eq!(row[column(&stages, "grip from (mm)")], grip);
        let check = stage.governing().expect("a check");
        assert_eq!(
            row[column(&stages, "tightest check")],
            Data::String(spanhold::report::words::check_name(&check.check))
        );
        assert_eq!(row[column(&stages, "share of its limit (%)")], Data::Float(check.utilisation));
    }
    let segments = book.worksheet_range("segments").expect("a sheet");
    assert_eq!(segments.height(), plan.segments.len() + 1);
    assert_eq!(segments.get((1, column(&segments, "feed (mm/rev)"))), Some(&Data::Float(plan.segments[0].feed_mm)));
    let checks = book.worksheet_range("checks").expect("a sheet");
    assert_eq!(checks.height(), plan.stages.iter().map(|s| s.checks.len()).sum::<usize>() + 1);
    let quote = book.worksheet_range("quote").expect("a sheet");
    let value = |what: &str| {
        let row = quote.rows().find(|r| r[0] == Data::String(what.into()));
        row.unwrap_or_else(|| panic!("no {what}"))[1].clone()
    };
    assert_eq!(value("sum of operations"), Data::Float(plan.time_s.total));
    assert_eq!(value("cycle time"), Data::Float(plan.cycle.as_ref().expect("a cycle").steady_s));
    assert_eq!(value("cost per part"), Data::Float(plan.quote.cost.as_ref().expect("rates").total));
    assert_eq!(value("pieces per bar"), Data::Float(plan.quote.pieces_per_bar as f64));
}

#[test]
fn every_stored_plan_gives_a_workbook_and_the_same_bytes_again() {
    for name in ["bobbin-spindle", "collared-rod", "drive-hub", "probe-needle", "scanner-rail"] {
        let plan = plan(name);
        let once = plan_xlsx(&plan).expect("written");
        assert_eq!(once, plan_xlsx(&plan).expect("written"), "{name}");
        // The date inside is a fixed one, not the clock's.
        let mut book = opened(&plan);
        assert_eq!(book.worksheet_range("stages").expect("a sheet").height(), plan.stages.len() + 1, "{name}");
    }
}

/// The text of a file inside a workbook.
fn inside(plan: &Plan, name: &str) -> String {
    let mut book = zip::ZipArchive::new(Cursor::new(plan_xlsx(plan).expect("written"))).expect("an archive");
    std::io::read_to_string(book.by_name(name).expect("a file")).expect("text")
}

#[test]
fn every_sheet_prints_as_wide_as_a_page_with_its_heads_and_what_it_is_about() {
    let mut plan = plan("metering-spindle");
    plan.job = "3 \"A & B\" spindles".into();
    let sheets = opened(&plan).sheet_names();
    assert_eq!(
        sheets,
        ["stages", "segments", "checks", "quote", "features", "tools", "tool places", "order", "positions"]
    );
    for (number, name) in (1..).zip(&sheets) {
        let sheet = inside(&plan, &format!("xl/worksheets/sheet{number}.xml"));
        for told in [
            "<pageSetUpPr fitToPage=\"1\"/>",
            "orientation=\"landscape\"",
            "fitToHeight=\"0\"",
            "state=\"frozen\"",
            "&amp;L 3 \"A &amp;&amp; B\" spindles, ",
            "&amp;Rpage &amp;P of &amp;N",
        ] {
            assert!(sheet.contains(told), "{name}: {told}");
        }
    }
    let book = inside(&plan, "xl/workbook.xml");
    for kind in ["_xlnm.Print_Titles", "_xlnm.Print_Area"] {
        assert_eq!(book.matches(kind).count(), sheets.len(), "{kind}");
    }
    // The heads of the positions stand below the caution and three sentences.
    assert!(book.contains("positions!$5:$5"), "{book}");
}

#[test]
fn the_sheets_around_the_turning_hold_the_plan() {
    let plan = plan("metering-spindle");
    let mut book = opened(&plan);
    let features = book.worksheet_range("features").expect("a sheet");
    assert_eq!(features.height(), plan.features.len() + 1);
    let positions = book.worksheet_range("positions").expect("a sheet");
    let caution = positions.get((0, 0)).map(ToString::to_string).unwrap_or_default();
    assert!(caution.contains("not a program"), "{caution}");
    let table = spanhold::report::positions::positions(&plan);
    assert_eq!(positions.height(), table.rows.len() + 5);
    for (row, told) in positions.rows().skip(5).zip(&table.rows) {
        assert_eq!(row[0], Data::String(told.what.clone()));
        assert_eq!(row[6], told.turned_mm.map_or(Data::Empty, Data::Float));
        assert_eq!(row[11], told.counter_spindle_mm.map_or(Data::Empty, Data::Float));
    }
    let order = plan.order.as_ref().expect("an order");
    let sheet = book.worksheet_range("order").expect("a sheet");
    let heads = sheet.rows().position(|r| r[0] == Data::String("pieces".into())).expect("heads");
    let pieces: Vec<String> = sheet.rows().skip(heads + 1).map(|r| r[0].to_string()).collect();
    assert_eq!(pieces, order.quantities.iter().map(|q| q.pieces.to_string()).collect::<Vec<_>>());
    assert!(pieces.contains(&order.pieces.to_string()), "{pieces:?}");
    let priced = sheet.rows().any(|r| r.iter().any(|c| c.to_string().contains("cost")));
    assert_eq!(priced, plan.quote.cost.is_some(), "prices only where the quote has them");
    // Each tool is there once.
    let tools = book.worksheet_range("tools").expect("a sheet");
    let names: Vec<String> = tools.rows().skip(1).map(|r| r[0].to_string()).collect();
    let unique: std::collections::BTreeSet<&String> = names.iter().collect();
    let turning = plan.tool_list.iter().map(|t| &t.tool);
    let all: std::collections::BTreeSet<&String> =
        plan.tooling.iter().flat_map(|t| t.places.iter().flat_map(|p| &p.tools)).chain(turning).collect();
    assert_eq!(unique, all);
}

#[test]
fn a_number_that_is_none_is_refused() {
    let mut plan = plan("feed-roller-shaft");
    plan.stages[1].travel_mm = f64::NAN;
    match plan_xlsx(&plan) {
        Err(ReportError::NotDrawable { what }) => assert_eq!(what, "travel (mm) in row 3"),
        other => panic!("{other:?}"),
    }
}
