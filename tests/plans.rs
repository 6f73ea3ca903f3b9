//! The worked plans of the demo jobs in `plans/`, kept current: planned anew and compared with what is stored.
//!
//! Renew them with `SPANHOLD_BLESS=1 cargo test --test plans`, and read every change before it is committed. What people
//! read is compared to the letter. Numbers of `plan.json` are compared within a share that leaves room for nothing but the
//! last digits of another mathematics library.

use serde_json::Value;
use spanhold::job::Job;
use spanhold::job::plan::Plan;
use spanhold::{answer::answer, input, proof, report};
use std::path::{Path, PathBuf};

const RENEW: &str = "SPANHOLD_BLESS=1 cargo test --test plans";

/// Numbers of a stored plan agree within this share, or this much: a gap or a margin is a difference of numbers near one, whose last
/// digits are a large share of what is left.
const SAME_SHARE: f64 = 1e-9;
const SAME: f64 = 1e-9;

/// How far inputs are moved to see whether a stored text hangs on last digits: hundreds of units in the last place, where a library of
/// mathematics differs from another by one.
const LAST_DIGITS: f64 = 1e-13;

/// The job whose sheet, positions and drawing are stored too; the others leave them out, to keep the repository small.
const WITH_SHEET: &str = "feed-roller-shaft";

/// The job whose two spindles in time are stored as a picture.
const WITH_STRIP: &str = "metering-spindle";

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Files of a folder with an ending, sorted.
fn files(dir: &str, ending: &str) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(root().join(dir)).expect("the folder is there");
    let mut found: Vec<PathBuf> = entries.map(|e| e.expect("readable").path()).collect();
    found.retain(|p| p.extension().is_some_and(|e| e == ending));
    found.sort();
    assert!(!found.is_empty(), "no {ending} in {dir}");
    found
}

fn stem(path: &Path) -> String {
    path.file_stem().map(|s| s.to_string_lossy().into_owned()).unwrap_or_default()
}

fn read(path: &Path) -> Result<String, String> {
    std::fs::read_to_string(path).map_err(|e| format!("{}: {e}", path.display()))
}

fn job(path: &Path) -> Job {
    input::read_job(path).unwrap_or_else(|diags| panic!("{}", input::render(&diags)))
}

/// What `plan --out` and stdout would hold.
fn worked(name: &str, plan: &Plan) -> Vec<(&'static str, String)> {
    let mut files = vec![
        ("plan.txt", report::plan_text(plan)),
        ("plan.json", serde_json::to_string_pretty(plan).expect("a plan is JSON") + "\n"),
        ("stages.csv", report::stages_csv(plan)),
        ("plan.svg", report::plan_svg(plan).expect("drawn")),
    ];
    if name == WITH_SHEET {
        files.push(("sheet.html", report::sheet_html(plan).expect("drawn")));
        files.push(("positions.csv", report::positions_csv(plan)));
        files.push(("plan.dxf", report::plan_dxf(plan).expect("drawn")));
    }
    if name == WITH_STRIP {
        files.push(("cycle.svg", report::gantt_svg(plan).expect("drawn").expect("it has a cycle")));
    }
    for (_, text) in &mut files {
        if !text.ends_with('\n') {
            text.push('\n');
        }
    }
    files
}

/// Where two documents differ first; numbers may differ in their last digits.
fn difference(stored: &Value, now: &Value, at: &str) -> Option<String> {
    match (stored, now) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64()?, b.as_f64()?);
            let same = (a - b).abs() <= SAME + SAME_SHARE * a.abs().max(b.abs());
            (!same).then(|| format!("{at}: {a} is stored, {b} is planned"))
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            a.iter().zip(b).enumerate().find_map(|(i, (a, b))| difference(a, b, &format!("{at}/{i}")))
        }
        (Value::Object(a), Value::Object(b)) if a.keys().eq(b.keys()) => {
            a.iter().find_map(|(key, a)| difference(a, &b[key], &format!("{at}/{key}")))
        }
        (a, b) => (a != b).then(|| format!("{at} differs")),
    }
}

fn stale(path: &Path, now: &str) -> Option<String> {
    let stored = match read(path) {
        Ok(stored) => stored,
        Err(e) => return Some(e),
    };
    let name = path.strip_prefix(root()).unwrap_or(path).display();
    if path.extension().is_some_and(|e| e == "json") {
        let parsed = |text: &str| serde_json::from_str::<Value>(text).map_err(|e| format!("{name}: {e}"));
        return match (parsed(&stored), parsed(now)) {
            (Ok(a), Ok(b)) => difference(&a, &b, "").map(|d| format!("{name}: {d}")),
            (Err(e), _) | (_, Err(e)) => Some(e),
        };
    }
    let lines = stored.lines().map(Some).chain(std::iter::repeat(None));
    let news = now.lines().map(Some).chain(std::iter::repeat(None));
    let first = lines.zip(news).enumerate().take_while(|(_, (a, b))| a.is_some() || b.is_some());
    let differs = |(i, (a, b)): (usize, (Option<&str>, Option<&str>))| {
        (a != b).then(|| format!("{name}:{}: stored {:?}, planned {:?}", i + 1, a.unwrap_or(""), b.unwrap_or("")))
    };
    first.into_iter().find_map(differs).or_else(|| (stored != now).then(|| format!("{name}: line ends differ")))
}

#[test]
fn the_worked_plans_are_those_of_the_demo_jobs() {
    let bless = std::env::var_os("SPANHOLD_BLESS").is_some();
    let mut old = Vec::new();
    for path in files("demo", "yaml") {
        let name = stem(&path);
        let plan = answer(&job(&path)).unwrap_or_else(|e| panic!("{name}: {e}"));
        let dir = root().join("plans").join(&name);
        for (file, text) in worked(&name, &plan) {
            let Some(told) = stale(&dir.join(file), &text) else { continue };
            if bless {
                std::fs::create_dir_all(&dir).expect("the folder can be made");
                std::fs::write(dir.join(file), text).expect("the file can be written");
            } else {
                old.push(told);
            }
        }
    }
    assert!(old.is_empty(), "\nstale, renew with `{RENEW}`:\n  {}\n", old.join("\n  "));
}

/// A job with all that the bar bends and is cut by moved by a share: what another mathematics library does to the last digits, and more.
fn moved(mut job: Job, by: f64) -> Job {
    let more = 1.0 + by;
    let (m, machine) = (&mut job.shaft.material, &mut job.machine);
    m.e_gpa *= more;
    m.kc11_n_per_mm2 *= more;
    m.mc *= more;
    m.density_kg_per_m3 /= more;
    machine.headstock.stiffness_n_per_um /= more;
    machine.bush.iter_mut().for_each(|b| b.stiffness_n_per_um *= more);
    machine.counter_spindle.iter_mut().for_each(|c| c.stiffness_n_per_um *= more);
    job
}

/// What is kept to the letter must not stand where its rounding turns, nor hang on which of two equal things comes first: then another
/// processor's mathematics, which differs in the last digits, would make it stale.
#[test]
fn no_stored_text_hangs_on_the_last_digits() {
    let mut hang = Vec::new();
    for path in files("demo", "yaml") {
        let name = stem(&path);
        for by in [-LAST_DIGITS, LAST_DIGITS] {
            let plan = answer(&moved(job(&path), by)).unwrap_or_else(|e| panic!("{name}: {e}"));
            let dir = root().join("plans").join(&name);
            let told = worked(&name, &plan).into_iter().filter_map(|(file, text)| stale(&dir.join(file), &text));
            hang.extend(told.map(|t| format!("moved by {by:e}: {t}")));
        }
    }
    assert!(hang.is_empty(), "\n  {}\n", hang.join("\n  "));
}

/// The demo of a family of parts: its map is stored beside the plan of its nominal part.
const FAMILY: &str = "platen-shaft";

#[test]
fn the_map_of_the_family_is_that_of_its_job() {
    let dir = tempfile::tempdir().expect("a folder");
    let drawn = dir.path().join("map.svg");
    let mut command = assert_cmd::Command::new(env!("CARGO_BIN_EXE_spanhold"));
    command.current_dir(root().join("demo")).arg("batch").arg(format!("{FAMILY}.yaml")).arg("--map").arg(&drawn);
    // Far more than it takes on the slowest machine.
    let called = command.timeout(std::time::Duration::from_secs(1800)).output().expect("it starts");
    assert!(called.status.success(), "{}", String::from_utf8_lossy(&called.stderr));
    let now = read(&drawn).unwrap_or_else(|e| panic!("{e}"));
    let stored = root().join("plans").join(FAMILY).join("map.svg");
    if std::env::var_os("SPANHOLD_BLESS").is_some() {
        std::fs::create_dir_all(stored.with_file_name("")).expect("the folder can be made");
        std::fs::write(&stored, &now).expect("the file can be written");
    }
    assert_eq!(stale(&stored, &now), None, "renew with `{RENEW}`");
}

#[test]
fn every_stored_plan_belongs_to_a_demo_job_and_is_proven_as_it_is_stored() {
    let jobs: Vec<PathBuf> = files("demo", "yaml");
    let mut proven = 0;
    for entry in std::fs::read_dir(root().join("plans")).expect("renew with the command above") {
        let dir = entry.expect("readable").path();
        let name = dir.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        let path = jobs.iter().find(|j| stem(j) == name).unwrap_or_else(|| panic!("plans/{name} has no demo job"));
        let text = read(&dir.join("plan.json")).unwrap_or_else(|e| panic!("{e}; renew with `{RENEW}`"));
        let plan: Plan = serde_json::from_str(&text).unwrap_or_else(|e| panic!("{name}: {e}; renew with `{RENEW}`"));
        let found = proof::prove(&plan, &job(path));
        if plan.shortfall.is_none() {
            assert!(found.holds(), "{name}: {:?}; renew with `{RENEW}`", found.breaches);
            proven += 1;
        } else {
            assert!(!found.holds(), "{name}: an answer without a plan was proven");
        }
    }
    assert!(proven >= 4, "only {proven} plans were proven");
}

/// The README shows the start of what `plan` prints for the roller, up to the end of the stage table.
#[test]
fn the_readme_shows_the_plan_that_is_stored() {
    let stored = read(&root().join("plans").join(WITH_SHEET).join("plan.json")).unwrap_or_else(|e| panic!("{e}"));
    let plan: Plan = serde_json::from_str(&stored).unwrap_or_else(|e| panic!("{e}"));
    let printed = spanhold::report::plan_summary(&plan, &[]);
    let (before, table) = printed.plain().split_once("\nStages ").expect("a stage table");
    let table = table.split("\n\n").next().unwrap_or(table);
    assert!(table.lines().count() > 4, "{table}");
    let start = format!("{before}\nStages {table}\n");
    let readme = read(&root().join("README.md")).unwrap_or_else(|e| panic!("{e}"));
    assert!(readme.contains(&start), "README.md does not show these lines; put them there:\n{start}");
    assert!(readme.contains(&format!("(plans/{WITH_SHEET}/plan.svg)")), "README.md does not show the picture");
}

/// Each demo says what it shows, in its own first line and in the list of demos.
#[test]
fn every_demo_says_what_it_shows() {
    let list = read(&root().join("demo/README.md")).unwrap_or_else(|e| panic!("{e}"));
    for path in files("demo", "yaml").into_iter().chain(files("demo/machines", "yaml")) {
        let name = path.strip_prefix(root().join("demo")).unwrap_or(&path).display().to_string();
        assert!(list.contains(&format!("`{name}`")), "demo/README.md does not list `{name}`");
        let text = read(&path).unwrap_or_else(|e| panic!("{e}"));
        assert!(text.starts_with("# "), "{name} does not say what it shows");
    }
}

#[test]
fn a_stale_number_is_found() {
    let (a, b) = (serde_json::json!({ "x": [1.0, 2.0] }), serde_json::json!({ "x": [1.0, 2.000_001] }));
    assert_eq!(difference(&a, &b, "").as_deref(), Some("/x/1: 2 is stored, 2.000001 is planned"));
    let rounding = serde_json::json!({ "x": [1.0, 2.0 + 4e-16] });
    assert_eq!(difference(&a, &rounding, ""), None);
    assert_eq!(difference(&a, &serde_json::json!({ "x": [1.0] }), "").as_deref(), Some("/x differs"));
    assert_eq!(difference(&a, &serde_json::json!({ "y": 1 }), "").as_deref(), Some(" differs"));
}

/// The first number behind some words of a text, mm.
fn number_after(text: &str, words: &str) -> f64 {
    let rest = text.split(words).nth(1).unwrap_or_else(|| panic!("no `{words}` in {text}"));
    let number: String = rest.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    number.parse().unwrap_or_else(|_| panic!("no number behind `{words}` in {text}"))
}

/// What a sheet tells of bar that is fed on for work behind the part-off face, and the plan.
fn told_of_bar_fed_on(job: &spanhold::job::Job) -> (spanhold::job::plan::Plan, String, String) {
    let plan = spanhold::answer::advised(job, spanhold::planner::Advice::None).unwrap_or_else(|d| panic!("{d}"));
    let proven = spanhold::proof::prove(&plan, job);
    assert!(proven.breaches.is_empty(), "{:?}", proven.breaches);
    let sheet = spanhold::report::sheet_html(&plan).expect("drawn");
    let limit = |words: &str| {
        let lines: Vec<&str> = sheet.lines().filter(|l| l.contains("<li>Stage") && l.contains(words)).collect();
        lines.last().unwrap_or_else(|| panic!("no `{words}` in the sheet")).to_string()
    };
    let (turned, fed) = (limit("turn to "), limit("feed out to "));
    (plan, turned, fed)
}

#[test]
fn no_stop_of_a_sheet_is_farther_than_the_limits_it_prints() {
    let job = spanhold::input::read_job("demo/feed-roller-shaft.yaml".as_ref()).expect("read");
    let (plan, turned, fed) = told_of_bar_fed_on(&job);
    let farthest = plan.features.iter().filter_map(|f| f.turned_mm).fold(0.0, f64::max);
    assert!(number_after(&turned, "turn to ") < farthest);
    assert_eq!(number_after(&fed, "feed out to "), farthest);
    // By hand, next to a bush: every mm fed on is one more between bush and counter-spindle.
    let on = farthest - number_after(&turned, "turn to ");
    let longer = number_after(&fed, "while fed out: ") - number_after(&turned, "never more than ");
    assert!((longer - on).abs() < 1e-9, "{longer} longer for {on} mm");
}

#[test]
fn without_a_bush_the_headstock_stands_back_for_bar_that_is_fed_on() {
    let demo = std::fs::read_to_string("demo/drive-hub.yaml").expect("read");
    let hub = demo.replace("{cross_hole: 6, at: 60}", "{cross_hole: 6, at: 60}\n    - {cross_hole: 6, at: 110}");
    assert_ne!(demo, hub, "the demo has another hole");
    let job = spanhold::input::read_job_text("hub.yaml", &hub, "demo".as_ref()).expect("read");
    let (plan, turned, fed) = told_of_bar_fed_on(&job);
    let last = plan.stages.last().expect("stages");
    let farthest = plan.features.iter().filter_map(|f| f.turned_mm).fold(0.0, f64::max);
    let on = farthest - last.to_mm;
    assert!(on > 1.0, "{on}");
    // The collet is as far from the tool at the end of the cut as its gap and what is fed on; nothing bends farther then.
    assert!((last.headstock_end_mm - on - job.machine.no_bush.as_ref().expect("no bush").collet_gap_mm).abs() < 1e-6);
    assert_eq!(number_after(&fed, "while fed out: "), number_after(&turned, "never more than "));
    assert!(number_after(&fed, "headstock ") < number_after(&fed, "while fed out: "));
    let grip = last.grip.as_ref().expect("held");
    let gap = job.machine.no_bush.as_ref().expect("no bush").collet_gap_mm;
    assert!((last.unsupported_max_mm - (farthest + gap - grip.nose_mm)).abs() < 1e-6, "{}", last.unsupported_max_mm);
}
