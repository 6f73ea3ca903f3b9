//! What a browser makes of diagram and sheet: no text lies on another, none stands outside the page, no cell runs over, and
//! print cuts no row.
//!
//! Looks at the stored plans of the demo jobs and at plans built by hand, one of sixty sections, with headless Chromium.
//! Where there is none the test says so and passes, unless `SPANHOLD_NEEDS_TOOLS` is set, as `.ci/run` does. The pages stay in
//! `target/tmp/rendered` to be looked at.

use crate::ends::{HANGS_AFTER, run};
use crate::{paper, plans};
use serde_json::Value;
use spanhold::job::plan::Plan;
use spanhold::lang::{self, Language};
use spanhold::report::{plan_svg, sheet_html, work_list};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Mutex;
use std::time::{Duration, Instant};

const MEASURE: &str = include_str!("measure.html");

fn stored() -> Vec<(String, Plan)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("plans");
    let mut dirs: Vec<PathBuf> = std::fs::read_dir(root).expect("plans").map(|e| e.expect("readable").path()).collect();
    dirs.sort();
    let plan = |dir: PathBuf| {
        let text = std::fs::read_to_string(dir.join("plan.json")).expect("plan.json");
        let name = dir.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        (name, serde_json::from_str(&text).expect("a plan"))
    };
    dirs.into_iter().map(plan).collect()
}

fn all() -> Vec<(String, Plan)> {
    let by_hand = plans::all_plans().into_iter().map(|(name, plan)| (name.to_string(), plan));
    stored().into_iter().chain(by_hand).collect()
}

/// Text inside a quoted attribute.
fn attribute(text: &str) -> String {
    text.replace('&', "&amp;").replace('"', "&quot;")
}

/// Chromium; none where it is not installed and not asked for.
fn browser() -> Option<Command> {
    let there = Command::new("chromium").arg("--version").output().is_ok_and(|o| o.status.success());
    let needed = std::env::var_os("SPANHOLD_NEEDS_TOOLS").is_some();
    assert!(there || !needed, "chromium is not installed");
    there.then(|| Command::new("chromium"))
}

/// One browser at a time, and as quiet as it can be.
static ALONE: Mutex<()> = Mutex::new(());
const QUIET: [&str; 10] = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--allow-file-access-from-files",
    "--no-pdf-header-footer",
];

/// The page as the browser leaves it.
fn dumped(mut browser: Command, page: &Path) -> String {
    let _alone = ALONE.lock().unwrap_or_else(|e| e.into_inner());
    let profile = tempfile::tempdir().expect("a profile");
    browser.args(QUIET).arg("--dump-dom").arg(format!("--user-data-dir={}", profile.path().display()));
    let ended = run(browser.arg(format!("file://{}", page.display())));
    assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
    String::from_utf8(ended.stdout).expect("UTF-8")
}

/// Prints a page. The browser is ended as soon as the file is whole: some linger long after it.
fn print(mut browser: Command, page: &Path, pdf: &Path) {
    let _alone = ALONE.lock().unwrap_or_else(|e| e.into_inner());
    let profile = tempfile::tempdir().expect("a profile");
    let _ = std::fs::remove_file(pdf);
    let mut child = browser
        .args(QUIET)
        .arg(format!("--print-to-pdf={}", pdf.display()))
        .arg(format!("--user-data-dir={}", profile.path().display()))
        .arg(format!("file://{}", page.display()))
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("chromium runs");
    let whole = || std::fs::read(pdf).is_ok_and(|f| f.trim_ascii_end().ends_with(b"%%EOF"));
    let start = Instant::now();
    while !whole() && child.try_wait().expect("a child").is_none() && start.elapsed() < HANGS_AFTER {
        std::thread::sleep(Duration::from_millis(200));
    }
    let _ = child.kill();
    let _ = child.wait();
    assert!(whole(), "chromium has not printed {}", page.display());
}

fn folder() -> PathBuf {
    let dir = Path::new(env!("CARGO_TARGET_TMPDIR")).join("rendered");
    std::fs::create_dir_all(&dir).expect("a folder for the pages");
    dir
}

/// The text of every page of a PDF, its blanks squeezed line by line.
fn printed_pages(pdf: &Path) -> Vec<String> {
    let read = run(Command::new("pdftotext").args(["-layout", "-enc", "UTF-8"]).arg(pdf).arg("-"));
    let text = String::from_utf8(read.stdout).expect("UTF-8");
    let squeezed = |page: &str| {
        page.lines().map(|l| l.split_whitespace().collect::<Vec<_>>().join(" ")).collect::<Vec<_>>().join("\n")
    };
    text.split('\u{c}').filter(|p| !p.trim().is_empty()).map(squeezed).collect()
}

/// All of the head is on the first page; every row of the list of works is whole on one page, under the head of its table.
#[test]
fn the_sheet_prints_on_a4_and_cuts_no_row() {
    if browser().is_none() {
        println!("chromium is not installed: nothing was printed");
        return;
    }
    let asked = ["feed-roller-shaft", "nasty"];
    let plans: Vec<_> = all().into_iter().filter(|(name, _)| asked.contains(&name.as_str())).collect();
    assert_eq!(plans.len(), asked.len());
    for (name, plan) in plans {
        let (page, pdf) = (folder().join(format!("print-{name}.html")), folder().join(format!("print-{name}.pdf")));
        std::fs::write(&page, sheet_html(&plan).expect("written")).expect("written");
        print(browser().expect("asked above"), &page, &pdf);
        let pages = printed_pages(&pdf);
        let first = &pages[0];
        assert!(
            first.contains("position on the shaft and turned length") && first.contains("sha256:"),
            "{name}: {first}"
        );
        let rows: Vec<Vec<String>> = work_list::rows(&plan).rows;
        assert!(rows.len() > 3, "{name}: {} rows", rows.len());
        for row in &rows {
            // Behind the names, which may take several lines. What is empty leaves no blank.
            let cells: Vec<&str> = row[5..11].iter().map(String::as_str).filter(|cell| !cell.is_empty()).collect();
            let cells = cells.join(" ");
            let on = pages.iter().filter(|p| p.contains(&cells)).collect::<Vec<_>>();
            assert!(!on.is_empty(), "{name}: {cells} is on no page");
            assert!(on.iter().any(|p| p.contains("from to time size measured")), "{name}: {cells} without its head");
        }
    }
}

#[test]
fn two_printed_pages_are_for_the_setter() {
    if browser().is_none() {
        println!("chromium is not installed: nothing was printed");
        return;
    }
    for (name, plan) in stored().into_iter().filter(|(_, plan)| plan.verdict.has_plan()) {
        let (page, pdf) = (folder().join(format!("print-{name}.html")), folder().join(format!("two-{name}.pdf")));
        std::fs::write(&page, sheet_html(&plan).expect("written")).expect("written");
        print(browser().expect("asked above"), &page, &pdf);
        paper::look(&name, &plan, &paper::read(&pdf));
    }
}

/// Longer words of another language push nothing off its page.
#[test]
fn two_printed_pages_are_for_the_setter_in_every_language() {
    if browser().is_none() {
        println!("chromium is not installed: nothing was printed");
        return;
    }
    let asked = ["bobbin-spindle", "drive-hub"];
    for (name, plan) in stored().into_iter().filter(|(name, _)| asked.contains(&name.as_str())) {
        for code in lang::LANGUAGES {
            let language = Language::of(code).expect("a language");
            lang::speaking(lang::spoken().in_language(language), || {
                let (page, pdf) =
                    (folder().join(format!("{name}-{code}.html")), folder().join(format!("{name}-{code}.pdf")));
                std::fs::write(&page, sheet_html(&plan).expect("written")).expect("written");
                print(browser().expect("asked above"), &page, &pdf);
                let pages: Vec<String> =
                    paper::read(&pdf).iter().map(|p| p.words.iter().map(|w| w.1.as_str()).collect()).collect();
                for (on, key) in
                    [(0, "sheet-stage-limits"), (1, "sheet-work-list"), (1, "sheet-sign-off"), (2, "title-cautions")]
                {
                    let title: String = lang::text(key).split_whitespace().collect();
                    assert!(pages[on].contains(&title), "{name}: {title} is not on page {}", on + 1);
                }
            });
        }
    }
}

/// Wherever a table begins on a page, three of its rows stand with its title or none; nor are the last two parted from it.
#[test]
fn no_printed_table_is_parted_behind_two_rows() {
    if browser().is_none() {
        println!("chromium is not installed: nothing was printed");
        return;
    }
    let sheet = sheet_html(&plans::sample_plan()).expect("written");
    let style = sheet.split("<style>").nth(1).and_then(|rest| rest.split("</style>").next()).expect("a style");
    let rows: String = (1..=6).map(|i| format!("<tr><td>row{i}</td></tr>")).collect();
    let table = format!(
        "<section><h2>Title</h2><table><thead><tr><th>head</th></tr></thead><tbody>{rows}</tbody></table></section>"
    );
    let one = |room_mm: usize| format!("<div class=\"page\"><div style=\"height: {room_mm}mm\">.</div>{table}</div>");
    let body: String = (140..186).step_by(3).map(one).collect();
    let (page, pdf) = (folder().join("parted.html"), folder().join("parted.pdf"));
    let html = format!(
        "<!DOCTYPE html><html><head><meta charset=\"utf-8\"/><style>{style}</style></head><body>{body}</body></html>"
    );
    std::fs::write(&page, html).expect("written");
    print(browser().expect("asked above"), &page, &pdf);
    let on_pages: Vec<usize> = printed_pages(&pdf).iter().map(|p| p.matches("row").count()).collect();
    assert!(on_pages.iter().any(|n| (1..6).contains(n)), "no table was parted: {on_pages:?}");
    assert!(on_pages.iter().all(|n| [0, 3, 6].contains(n)), "{on_pages:?}");
}

#[test]
fn no_text_lies_on_another_or_outside_its_page() {
    let dir = folder();
    let mut pages = String::new();
    for (name, plan) in all() {
        let (svg, sheet) = (plan_svg(&plan).expect("drawn"), sheet_html(&plan).expect("written"));
        std::fs::write(dir.join(format!("{name}.svg")), &svg).expect("written");
        std::fs::write(dir.join(format!("{name}.html")), &sheet).expect("written");
        let inner = &svg[svg.find("<svg").expect("an element")..];
        pages.push_str(&format!("<div class=\"page\" data-name=\"{name}.svg\">{inner}</div>\n"));
        pages.push_str(&format!("<iframe data-name=\"{name}.html\" srcdoc=\"{}\"></iframe>\n", attribute(&sheet)));
    }
    let page = dir.join("measure.html");
    std::fs::write(&page, MEASURE.replace("<!-- PAGES -->", &pages)).expect("written");
    let Some(browser) = browser() else {
        println!("chromium is not installed: nothing was measured");
        return;
    };
    let dom = dumped(browser, &page);
    let found = dom.split("<pre id=\"found\">").nth(1).and_then(|rest| rest.split("</pre>").next()).expect("a result");
    let found = found.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    let found: Value = serde_json::from_str(&found).unwrap_or_else(|e| panic!("{e}: {found}"));
    assert!(found["texts"].as_u64().is_some_and(|n| n > 800), "too few texts were measured: {}", found["texts"]);
    let faults: Vec<String> = found["found"].as_array().expect("a list").iter().map(Value::to_string).collect();
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
