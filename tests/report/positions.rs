//! The table of positions against the plan it is made from.

use super::plans::all_plans;
use super::stored::{STORED, stored};
use spanhold::job::plan::Position;
use spanhold::report::positions::positions;
use spanhold::report::{positions_csv, positions_json};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6
}

fn both_near(a: Option<f64>, b: Option<f64>) -> bool {
    a.zip(b).is_none_or(|(a, b)| near(a, b))
}

fn moves(row: &Position, actor: &str) -> bool {
    row.actor == actor && row.event == "move"
}

/// What must hold of the rows of any plan: the bar takes both spindles with it, and a spindle leaves that only with its collet open.
fn assert_connected(name: &str, rows: &[Position]) {
    for (number, row) in (1..).zip(rows) {
        assert_eq!(row.row, number, "{name}");
    }
    for pair in rows.windows(2) {
        let [before, after] = pair else { continue };
        let on = after.turned_mm.zip(before.turned_mm).map(|(b, a)| b - a);
        let Some(on) = on else { continue };
        if !moves(after, "headstock") {
            let follows = before.headstock_mm.map(|at| at - on);
            assert!(both_near(follows, after.headstock_mm), "{name}: {before:?} {after:?}");
        }
        if !moves(after, "counter_spindle") {
            let follows = before.counter_spindle_mm.map(|at| at + on);
            assert!(both_near(follows, after.counter_spindle_mm), "{name}: {before:?} {after:?}");
        }
        // While both hold the part their noses keep their distance.
        if after.event != "move" {
            let apart = |r: &Position| r.headstock_mm.zip(r.counter_spindle_mm).map(|(h, c)| h + c);
            assert!(both_near(apart(before), apart(after)), "{name}: {before:?} {after:?}");
        }
        // Nothing moves along the axis while a collet is open but its own spindle.
        let open = matches!(before.event.as_str(), "open") || (before.event == "move");
        assert!(!open || near(on, 0.0), "{name}: {after:?}");
        if before.event == "close" {
            assert!(after.wait_point.is_some(), "{name}: nothing waits for the collet: {after:?}");
        }
    }
    let points: Vec<usize> = rows.iter().filter_map(|r| r.wait_point).collect();
    assert_eq!(points, (1..=points.len()).collect::<Vec<_>>(), "{name}");
    for row in rows {
        assert_eq!(row.wait_point.is_some(), !row.waits_for.is_empty(), "{name}: {row:?}");
        assert!(row.event != "open" || row.wait_point.is_some(), "{name}: {row:?}");
        assert!(row.counter_spindle_rpm.is_none() || row.counter_spindle_rpm == row.headstock_rpm, "{name}: {row:?}");
    }
}

#[test]
fn at_both_ends_of_a_stage_everything_stands_where_the_plan_says() {
    let mut stages = 0;
    for name in STORED {
        let plan = stored(name);
        let rows = positions(&plan).rows;
        assert_eq!(rows.is_empty(), !plan.verdict.has_plan(), "{name}");
        if rows.is_empty() {
            continue;
        }
        assert_connected(name, &rows);
        for stage in &plan.stages {
            let here = || rows.iter().filter(|r| r.stage == Some(stage.number));
            let start = here().find(|r| r.event == "stage_start").unwrap_or_else(|| panic!("{name}: {stage:?}"));
            // The last that turns or feeds; bar that is fed on farther comes back for the part-off.
            let carries = |r: &&Position| !["open", "move", "close"].contains(&r.event.as_str());
            let end = here().rfind(carries).unwrap_or_else(|| panic!("{name}: {stage:?}"));
            for (row, turned, headstock, counter) in [
                (start, stage.from_mm, stage.headstock_start_mm, stage.counter_spindle_start_mm),
                (end, stage.to_mm, stage.headstock_end_mm, stage.counter_spindle_end_mm),
            ] {
                assert!(row.turned_mm.is_some_and(|t| near(t, turned)), "{name}: {row:?}");
                assert!(row.headstock_mm.is_some_and(|h| near(h, headstock)), "{name}: {row:?} {headstock}");
                assert_eq!(row.counter_spindle_mm.is_some(), counter.is_some(), "{name}: {row:?}");
                assert!(both_near(row.counter_spindle_mm, counter), "{name}: {row:?} {counter:?}");
            }
            stages += 1;
        }
        let layout = &plan.layout;
        for at in rows.iter().filter_map(|r| r.headstock_mm) {
            // Without a bush the plan counts from the tool, and bar fed on for work may leave the reach of turning.
            let fits = at <= layout.headstock_farthest_mm + 1e-6 && at >= layout.headstock_nearest_mm - 1e-6;
            assert!(fits || layout.bush_land_mm.is_none(), "{name}: {at}");
        }
    }
    assert!(stages >= 15, "{stages}");
}

#[test]
fn plans_made_by_hand_have_rows_that_hang_together() {
    for (name, plan) in all_plans() {
        let rows = positions(&plan).rows;
        assert_eq!(rows.is_empty(), !plan.verdict.has_plan(), "{name}");
        assert_connected(name, &rows);
        // Each stop of the plan is there, and each segment is cut to its end.
        let count = |actor: &str| rows.iter().filter(|r| r.actor == actor && r.event == "close").count();
        if !rows.is_empty() {
            assert_eq!(count("counter_spindle"), plan.stages.len() - 1, "{name}");
            assert_eq!(count("headstock"), plan.stages.iter().map(|s| s.regrips_mm.len()).sum::<usize>(), "{name}");
        }
        for segment in plan.segments.iter().filter(|_| !rows.is_empty()) {
            let ends = |r: &&Position| r.turned_mm.is_some_and(|t| near(t, segment.to_mm)) && r.feed_mm.is_some();
            assert_eq!(rows.iter().filter(ends).count(), segment.travels, "{name}: {segment:?}");
        }
    }
}

#[test]
fn each_travel_and_each_pass_has_the_diameter_that_it_leaves() {
    // 42 mm bar, depths 2.9, 2.9 and 0.2 mm to 30 mm.
    let rows = positions(&stored("drive-hub")).rows;
    let first: Vec<&Position> = rows.iter().filter(|r| r.event == "turn").take(3).collect();
    let left: Vec<f64> = first.iter().filter_map(|r| r.diameter_mm).collect();
    assert!(left.iter().zip([36.2, 30.4, 30.0]).all(|(a, b)| near(*a, b)), "{left:?}");
    assert_eq!(rows.iter().filter(|r| r.event == "feed_back").count(), 4, "two returns each for two sections");
    // M16x1.5 in seven passes; all infeeds together are its depth, 0.6134 P (ISO 68-1: 17/24 of the height of the triangle).
    let rows = positions(&stored("feed-roller-shaft")).rows;
    let passes: Vec<&Position> = rows.iter().filter(|r| r.event == "thread").collect();
    assert_eq!(passes.len(), 7);
    assert!(passes.windows(2).all(|p| p[0].diameter_mm > p[1].diameter_mm), "{passes:?}");
    assert!(passes.iter().all(|p| p.feed_mm == Some(1.5)));
    let root = passes[6].diameter_mm.expect("a diameter");
    assert!((root - (16.0 - 2.0 * 0.6134 * 1.5)).abs() < 0.002, "{root}");
    // The flats lie behind the part-off: the bar is fed on to 970 mm and comes back to 963 mm.
    let at: Vec<(&str, f64)> =
        rows.iter().rev().filter_map(|r| Some((r.event.as_str(), r.turned_mm?))).take(4).collect();
    assert_eq!(at, [("part_off", 963.0), ("feed_back", 963.0), ("feature", 970.0), ("feed_out", 970.0)]);
    // A pair: the leading tool stands above the other by twice the depth of that one.
    let needle = positions(&stored("probe-needle")).rows;
    let cut = needle.iter().find(|r| r.event == "turn").expect("a cut");
    assert!(cut.diameter_mm.is_some_and(|d| near(d, 0.9)) && cut.leading_diameter_mm.is_some_and(|d| near(d, 1.2)));
}

#[test]
fn a_tandem_runs_out_behind_the_end_of_a_section_and_comes_back() {
    let (_, mut plan) = all_plans().remove(0);
    let segment = &mut plan.segments[0];
    (segment.travels, segment.lag_mm, segment.depths_mm) = (1, Some(2.0), vec![6.25, 0.25]);
    let cut = |tools: &[&str]| spanhold::job::plan::TravelCut {
        tools: tools.iter().map(|t| t.to_string()).collect(),
        depths_mm: vec![6.25, 0.25],
        feed_mm: 0.1,
        rpm: 2000.0,
    };
    segment.cuts = vec![cut(&["roughing tool", "finishing tool"])];
    let rows = positions(&plan).rows;
    assert_connected("tandem", &rows);
    let told: Vec<(&str, f64)> = rows.iter().filter_map(|r| Some((r.event.as_str(), r.turned_mm?))).collect();
    let at = told.iter().position(|(event, _)| *event == "turn").expect("a cut");
    assert_eq!(told[at..at + 3], [("turn", 34.0), ("run_out", 36.0), ("feed_back", 34.0)]);
    assert_eq!(rows[at].leading_diameter_mm.zip(rows[at].lag_mm), Some((12.5, 2.0)));
}

#[test]
fn events_begin_when_the_timeline_says() {
    let mut told = 0;
    for name in STORED {
        let plan = stored(name);
        let Some(cycle) = &plan.cycle else { continue };
        let rows = positions(&plan).rows;
        let times: Vec<f64> = rows.iter().filter_map(|r| r.start_s).collect();
        assert!(times.windows(2).all(|t| t[0] <= t[1]), "{name}: {times:?}");
        // Each work of the timeline of the headstock begins with one row, but for changes of tools.
        let works = cycle.operations.iter().filter(|o| o.side != "counter_spindle" && o.work != "tool_change");
        let begins: Vec<f64> = works.map(|o| o.from_s).collect();
        assert_eq!(times, begins, "{name}");
        told += times.len();
    }
    assert!(told > 60, "{told}");
}

#[test]
fn the_files_hold_the_same_rows_and_the_caution() {
    for name in STORED {
        let plan = stored(name);
        let table = positions(&plan);
        let json: serde_json::Value = serde_json::from_str(&positions_json(&plan).expect("JSON")).expect("JSON");
        assert!(json["caution"].as_str().is_some_and(|c| c.contains("not a program")), "{name}");
        assert_eq!(json["rows"].as_array().map(Vec::len), Some(table.rows.len()), "{name}");
        let csv = positions_csv(&plan);
        let mut read = csv::ReaderBuilder::new().from_reader(csv.as_bytes());
        let heads: Vec<String> = read.headers().expect("heads").iter().map(str::to_owned).collect();
        if let Some(first) = json["rows"].get(0).and_then(|r| r.as_object()) {
            assert_eq!(
                first.keys().cloned().collect::<std::collections::BTreeSet<_>>(),
                heads.iter().cloned().collect()
            );
        }
        let rows: Vec<csv::StringRecord> = read.records().collect::<Result<_, _>>().expect("as many fields in each");
        assert_eq!(rows.len(), table.rows.len() + 1, "{name}");
        let at = |head: &str| heads.iter().position(|h| h == head).unwrap_or_else(|| panic!("no {head}"));
        let last = &rows[table.rows.len()];
        assert_eq!((&last[at("row")], &last[at("what")]), ("", table.caution.as_str()), "{name}");
        for (row, position) in rows.iter().zip(&table.rows) {
            let number = |head: &str| row[at(head)].parse::<f64>().ok();
            for (head, value) in [
                ("turned_mm", position.turned_mm),
                ("headstock_mm", position.headstock_mm),
                ("counter_spindle_mm", position.counter_spindle_mm),
                ("diameter_mm", position.diameter_mm),
            ] {
                let same = number(head).zip(value).is_none_or(|(a, b)| (a - b).abs() < 6e-4);
                assert!(same && number(head).is_some() == value.is_some(), "{name}: {head} {row:?} {position:?}");
            }
        }
    }
}

#[test]
fn the_table_of_a_plan_is_as_frozen() {
    insta::assert_snapshot!("metering_positions", positions_csv(&stored("metering-spindle")));
}
