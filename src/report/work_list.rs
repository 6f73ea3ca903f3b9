//! The works of a part in the order in which they are done, with a column to write the measured value into.

use super::stops::{self, SAME_PLACE_MM};
use super::table::{number, words as word};
use super::tables::Rows;
use super::{numbers, words};
use crate::job::plan::{AtStop, Done, Plan, Segment};
use crate::lang;
use crate::say;

/// The rows. A piece of turning that a stop divides has a row for each part.
pub fn rows(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-number")),
        number(lang::text("col-stage")),
        word(lang::text("col-work")),
        word(lang::text("col-tool")),
        word(lang::text("col-station")),
        number(lang::text("col-depth")),
        number(lang::text("col-feed")),
        number(lang::text("col-speed")),
        number(lang::text("col-from")),
        number(lang::text("col-to")),
        number(lang::text("col-time")),
        word(lang::text("col-size")),
        word(lang::text("col-measured")),
    ];
    let mut list = List::new(plan);
    for segment in &plan.segments {
        let divides = segment.turning != "back";
        let mut from_mm = segment.from_mm;
        while let Some(done) =
            list.due(if divides { segment.to_mm - SAME_PLACE_MM } else { segment.from_mm + SAME_PLACE_MM })
        {
            if done.turned_mm > from_mm + SAME_PLACE_MM {
                list.piece(segment, from_mm, done.turned_mm);
                from_mm = done.turned_mm;
            }
            list.done(done);
        }
        list.piece(segment, from_mm, segment.to_mm);
    }
    while let Some(done) = list.due(f64::INFINITY) {
        list.done(done);
    }
    list.part_off();
    Rows { heads, rows: list.rows }
}

/// The rows while they are written.
struct List<'a> {
    plan: &'a Plan,
    rows: Vec<Vec<String>>,
    /// What is done at stops and is not written yet.
    ahead: std::iter::Peekable<std::vec::IntoIter<Done>>,
    /// The same, opened collets only, with their times in s.
    times: Vec<(&'a str, f64)>,
}

/// What a row tells; empty where it has nothing to tell.
#[derive(Default)]
struct Row {
    work: String,
    tool: String,
    station: String,
    depth: String,
    feed: String,
    speed: String,
    from: String,
    to: String,
    time: String,
    size: String,
}

impl<'a> List<'a> {
    fn new(plan: &'a Plan) -> Self {
        let operations = plan.cycle.iter().flat_map(|c| &c.operations);
        let opened = operations.filter(|o| matches!(o.work.as_str(), "hand_over" | "regrip"));
        let mut times: Vec<(&str, f64)> = opened.map(|o| (o.work.as_str(), o.to_s - o.from_s)).collect();
        times.reverse();
        List { plan, rows: Vec::new(), ahead: plan.at_stops().into_iter().peekable(), times }
    }

    /// What is done next, if it is done before the turned length passes `limit_mm`.
    fn due(&mut self, limit_mm: f64) -> Option<Done> {
        self.ahead.next_if(|done| done.turned_mm < limit_mm)
    }

    fn push(&mut self, stage: Option<usize>, row: Row) {
        let stage = stage.map_or_else(String::new, |stage| stage.to_string());
        let number = (self.rows.len() + 1).to_string();
        let Row { work, tool, station, depth, feed, speed, from, to, time, size } = row;
        let measured = String::new();
        self.rows.push(vec![number, stage, work, tool, station, depth, feed, speed, from, to, time, size, measured]);
    }

    /// A piece of turning. The size stands where the section ends, because there it can be measured.
    fn piece(&mut self, segment: &Segment, from_mm: f64, to_mm: f64) {
        let section = self.plan.shaft.sections.iter().find(|s| s.number == segment.section);
        let size =
            section.filter(|s| to_mm > s.to_mm - SAME_PLACE_MM).map_or_else(String::new, |s| words::plain(&s.label));
        let name = words::section(self.plan, segment.section);
        let said = |work: String| format!("{work} {name}");
        let work = match segment.turning.as_str() {
            "back" => format!("{} ({})", words::work(&segment.work), words::key("back")),
            _ => words::work(if segment.threading.is_some() { "turn" } else { &segment.work }),
        };
        let length_mm = segment.to_mm - segment.from_mm;
        let share = if length_mm > 0.0 { (to_mm - from_mm) / length_mm } else { 1.0 };
        let (from, to) = (numbers::stop_mm(from_mm), numbers::stop_mm(to_mm));
        let time = numbers::seconds(segment.time_s * share);
        let mut tools: Vec<String> = segment.cuts.iter().flat_map(|c| &c.tools).map(|t| words::plain(t)).collect();
        tools.dedup();
        let tool = tools.join(", ");
        let station = self.station(&tools);
        let turned = Row {
            work: said(work),
            tool,
            station: station.clone(),
            depth: segment.depths_mm.iter().map(|mm| numbers::depth_mm(*mm)).collect::<Vec<_>>().join(", "),
            feed: numbers::feed_mm(segment.feed_mm),
            speed: numbers::rpm(segment.rpm),
            from: from.clone(),
            to: to.clone(),
            ..Row::default()
        };
        let stage = Some(segment.stage);
        match &segment.threading {
            // The time of the piece is that of the turning and the passes together.
            Some(t) => {
                self.push(stage, turned);
                let work = say!("work-repeated", number = t.passes, work = words::work(&segment.work));
                let (feed, speed) = (numbers::feed_mm(t.pitch_mm), numbers::rpm(t.rpm));
                self.push(stage, Row { work: said(work), feed, speed, from, to, time, size, ..Row::default() });
            }
            None => self.push(stage, Row { time, size, ..turned }),
        }
    }

    /// The stations of tools, where the tool list tells them.
    fn station(&self, tools: &[String]) -> String {
        let listed = |tool: &String| self.plan.listed(tool)?.station.as_deref();
        tools.iter().filter_map(listed).map(words::plain).collect::<Vec<_>>().join(", ")
    }

    fn done(&mut self, done: Done) {
        let at = numbers::stop_mm(done.turned_mm);
        let row = match done.what {
            AtStop::Work => {
                let Some(f) = self.plan.features.get(done.index) else { return };
                let (tool, time) = (words::plain(&f.tool), numbers::seconds(f.time_s));
                // Work on the front end is done before the feed begins: no stop.
                let mark = if done.turned_mm > 0.0 { format!("{} ", stops::WORK) } else { String::new() };
                Row { work: mark + &words::plain(&f.text), tool, time, ..Row::default() }
            }
            AtStop::HandOver => self.opened("H", done.index, "hand_over"),
            AtStop::RegripBefore | AtStop::RegripAfter => self.opened("R", done.index, "regrip"),
        };
        self.push(Some(done.stage), Row { from: at, ..row });
    }

    /// A stop at which a collet opens.
    fn opened(&mut self, letter: &str, index: usize, key: &str) -> Row {
        let last = self.times.iter().rposition(|(what, _)| *what == key);
        let time = last.map(|at| numbers::seconds(self.times.remove(at).1));
        let work = format!("{letter}{} {}", index + 1, words::key(key));
        Row { work, time: time.unwrap_or_default(), ..Row::default() }
    }

    /// Part-off and what is done after it.
    fn part_off(&mut self) {
        let plan = self.plan;
        let stage = plan.stages.last().map(|s| s.number);
        if let Some(rpm) = plan.part_off_rpm {
            let tool = plan.part_off_tool();
            let station = tool.and_then(|t| t.station.as_deref()).map(words::plain).unwrap_or_default();
            let row = Row {
                work: say!("cell-part-off"),
                tool: tool.map(|t| words::plain(&t.tool)).unwrap_or_default(),
                station,
                speed: numbers::rpm(rpm),
                from: numbers::stop_mm(plan.length_mm),
                to: numbers::stop_mm(plan.length_mm + plan.layout.part_off_width_mm),
                time: numbers::seconds(plan.time_s.part_off),
                size: say!("length-of-part", length = numbers::mm(plan.length_mm)),
                ..Row::default()
            };
            self.push(stage, row);
        }
        for f in plan.features.iter().filter(|f| f.turned_mm.is_none()) {
            let (work, tool) = (words::plain(&f.text), words::plain(&f.tool));
            self.push(None, Row { work, tool, time: numbers::seconds(f.time_s), ..Row::default() });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_works_of_every_stored_plan_are_all_told_once_and_their_times_add_up() {
        let plans = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("plans");
        let mut seen = 0;
        for folder in std::fs::read_dir(plans).expect("plans") {
            let text = std::fs::read_to_string(folder.expect("a folder").path().join("plan.json")).expect("stored");
            let plan: Plan = serde_json::from_str(&text).expect("a plan");
            if !plan.verdict.has_plan() {
                continue;
            }
            seen += 1;
            let rows = rows(&plan).rows;
            let cell = |row: &Vec<String>, i: usize| row[i].parse::<f64>().unwrap_or(0.0);
            let time: f64 = rows.iter().map(|row| cell(row, 10)).sum();
            // Each row is rounded to a tenth of a second. Centre and tool changes have no row.
            let others: f64 = plan
                .cycle
                .iter()
                .flat_map(|c| &c.operations)
                .filter(|o| matches!(o.work.as_str(), "centre"))
                .map(|o| o.to_s - o.from_s)
                .sum();
            let told = plan.time_s.total - others;
            assert!((time - told).abs() <= 0.05 * rows.len() as f64 + 1e-9, "{}: {time} and {told}", plan.job);
            let marks = |letter: &str| {
                rows.iter().filter(|row| row[2].starts_with(letter) && row[2].as_bytes()[1].is_ascii_digit()).count()
            };
            assert_eq!(
                (marks("H"), marks("R")),
                (plan.hand_overs_mm.len(), plan.headstock_regrips_mm.len()),
                "{}",
                plan.job
            );
            // The rows go along the shaft and leave nothing out.
            let turned: f64 = rows
                .iter()
                .filter(|row| row[9].parse::<f64>().is_ok() && !row[11].starts_with("length"))
                .map(|row| cell(row, 9) - cell(row, 8))
                .sum();
            assert!(turned >= plan.length_mm - 0.5, "{}: {turned}", plan.job);
        }
        assert!(seen > 5, "{seen}");
    }
}
