//! The sheet as a PDF, read back by programs from outside: its words, its fonts, its pages as pictures.
//!
//! Poppler's `pdftotext`, `pdffonts` and `pdftoppm`; where they are missing the test says so and passes, unless
//! `SPANHOLD_NEEDS_TOOLS` is set, as `.ci/run` does. The files stay in `target/tmp/pdf` to be looked at.

use crate::ends::run;
use crate::stored::stored;
use crate::{paper, plans};
use spanhold::job::plan::Plan;
use spanhold::lang::{self, Language};
use spanhold::report::{numbers, sheet_pdf, words, work_list};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::Command;

fn all() -> Vec<(&'static str, Plan)> {
    let mut all = plans::all_plans();
    all.extend(["feed-roller-shaft", "collared-rod", "bobbin-spindle"].map(|name| (name, stored(name))));
    all
}

/// The PDF of a plan in a file. Tests write the same name at the same time and read it with other programs, so the file is put in
/// its place whole.
fn written(name: &str, plan: &Plan) -> PathBuf {
    let dir = Path::new(env!("CARGO_TARGET_TMPDIR")).join("pdf");
    std::fs::create_dir_all(&dir).expect("a folder");
    let path = dir.join(format!("{name}.pdf"));
    let mut beside = tempfile::NamedTempFile::new_in(&dir).expect("a file beside");
    beside.write_all(&sheet_pdf(plan, None).expect("written")).expect("written");
    beside.persist(&path).expect("in its place");
    path
}

/// What a program prints; none where it is not installed and not asked for.
fn printed(program: &str, arguments: &[&str]) -> Option<Vec<u8>> {
    let there = Command::new(program).arg("-v").output().is_ok();
    if !there && std::env::var_os("SPANHOLD_NEEDS_TOOLS").is_none() {
        println!("{program} is not installed: nothing was read back");
        return None;
    }
    let ended = run(Command::new(program).args(arguments));
    assert!(ended.status.success(), "{program}: {}", String::from_utf8_lossy(&ended.stderr));
    Some(ended.stdout)
}

/// Text of the pages, laid out as it stands.
fn pages(path: &Path) -> Option<Vec<String>> {
    let text = printed("pdftotext", &["-layout", "-enc", "UTF-8", &path.display().to_string(), "-"])?;
    let text = String::from_utf8(text).expect("UTF-8");
    Some(text.split('\u{c}').map(str::to_string).filter(|p| !p.trim().is_empty()).collect())
}

/// Without the blanks that the layout puts in.
fn squeezed(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    for (name, plan) in all() {
        let (a, b) = (sheet_pdf(&plan, None).expect("written"), sheet_pdf(&plan, None).expect("written"));
        assert!(a.starts_with(b"%PDF-") && a == b, "{name}");
    }
}

#[test]
fn the_words_of_the_sheet_are_in_it() {
    for name in ["feed-roller-shaft", "bobbin-spindle"] {
        let plan = stored(name);
        let Some(pages) = pages(&written(name, &plan)) else { return };
        let first = squeezed(&pages[0]);
        assert!(first.contains(&plan.job) && first.contains("FEASIBLE") && first.contains(&plan.material), "{first}");
        assert!(first.contains("position on the shaft and turned length"), "the diagram is on the first page: {first}");
        let all = squeezed(&pages.join(" "));
        for stage in &plan.stages {
            let said = words::check(stage.governing().expect("a check"));
            assert!(all.contains(&said), "{name}: {said}");
            assert!(all.contains(&format!("turn to {} mm, no farther", numbers::mm(stage.to_mm))), "{name}");
        }
        for words in ["Sign-off", "Cautions", "do not exceed", "Witness lines", "part-off", "qualified setter"] {
            assert!(all.contains(words), "{name}: {words}");
        }
        for (i, page) in pages.iter().enumerate() {
            assert!(page.contains(&format!("page {} of {}", i + 1, pages.len())), "{name}: {page}");
        }
    }
}

#[test]
fn no_row_is_parted_and_the_head_is_on_every_page() {
    let plan = plans::nasty_plan();
    let Some(pages) = pages(&written("nasty", &plan)) else { return };
    assert!(pages.len() > 5, "{}", pages.len());
    let mut seen = 0;
    let is_work = |line: &&str| {
        let mut words = line.split_whitespace();
        let numbered = words.by_ref().take(2).filter(|w| w.parse::<usize>().is_ok()).count() == 2;
        numbered && words.next() == Some("turn")
    };
    for page in &pages {
        let rows = page.lines().filter(is_work).count();
        seen += rows;
        assert!(rows == 0 || squeezed(page).contains("from to time size measured"), "{page}");
    }
    assert!(seen > 20, "{seen}");
    let stored = stored("feed-roller-shaft");
    let all = self::pages(&written("feed-roller-shaft", &stored)).expect("read before").join("\n");
    let lines: Vec<String> = all.lines().map(squeezed).collect();
    for cells in work_list::rows(&stored).rows.iter().filter(|cells| !cells[9].is_empty()) {
        let row = format!(" {} {}", cells[8], cells[9]);
        assert!(lines.iter().any(|l| l.contains(&row) && l.contains(&cells[2])), "{row} in\n{all}");
    }
}

#[test]
fn two_pages_are_for_the_setter() {
    for name in ["feed-roller-shaft", "probe-needle", "bobbin-spindle", "metering-spindle"] {
        let plan = stored(name);
        let path = written(name, &plan);
        if pages(&path).is_some() {
            paper::look(name, &plan, &paper::read(&path));
        }
    }
}

/// Longer words of another language push nothing off its page.
#[test]
fn two_pages_are_for_the_setter_in_other_languages() {
    for (name, plan) in ["bobbin-spindle", "drive-hub"].map(|name| (name, stored(name))) {
        // The fonts have no Japanese.
        for code in lang::LANGUAGES.into_iter().filter(|code| *code != "ja") {
            let language = Language::of(code).expect("a language");
            lang::speaking(lang::spoken().in_language(language), || {
                let Some(pages) = pages(&written(&format!("{name}-{code}"), &plan)) else { return };
                for (on, key) in
                    [(0, "sheet-stage-limits"), (1, "sheet-work-list"), (1, "sheet-sign-off"), (2, "title-cautions")]
                {
                    let title = lang::text(key);
                    let told = squeezed(&pages[on]).contains(&squeezed(title));
                    assert!(told, "{name}: {title} is not on page {}", on + 1);
                }
            });
        }
    }
}

#[test]
fn every_font_is_embedded() {
    let path = written("sample", &plans::sample_plan());
    let Some(list) = printed("pdffonts", &[&path.display().to_string()]) else { return };
    let list = String::from_utf8(list).expect("UTF-8");
    let fonts: Vec<&str> = list.lines().skip(2).collect();
    assert!(!fonts.is_empty());
    for font in fonts {
        // The columns from the right: object and its generation, to Unicode, subset, embedded.
        let columns: Vec<&str> = font.split_whitespace().rev().collect();
        assert_eq!((columns[4], columns[2]), ("yes", "yes"), "embedded, and can be read back: {font}");
    }
}

/// A grey picture: width, height, and a byte a pixel.
fn picture(file: &[u8]) -> (usize, usize, &[u8]) {
    let mut fields = file.splitn(4, |b| b.is_ascii_whitespace());
    assert_eq!(fields.next(), Some(&b"P5"[..]));
    let number = |f: Option<&[u8]>| -> usize {
        std::str::from_utf8(f.expect("a field")).expect("text").parse().expect("a number")
    };
    let (width, height) = (number(fields.next()), number(fields.next()));
    let rest = fields.next().expect("pixels");
    (width, height, &rest[rest.len() - width * height..])
}

#[test]
fn every_page_is_a4_landscape_has_ink_and_leaves_its_margin_white() {
    for (name, plan) in all() {
        let path = written(name, &plan);
        let Some(count) = pages(&path).map(|p| p.len()) else { return };
        for page in 1..=count {
            let (file, number) = (path.display().to_string(), page.to_string());
            // 25.4 dots an inch: a dot is a millimetre.
            let arguments = ["-r", "25.4", "-gray", "-f", &number, "-l", &number, &file];
            let Some(found) = printed("pdftoppm", &arguments) else { return };
            let (width, height, pixels) = picture(&found);
            assert!((297..=298).contains(&width) && (210..=211).contains(&height), "{name} {page}: {width} × {height}");
            let ink = pixels.iter().filter(|p| **p < 250).count();
            assert!(ink > 100 && ink < width * height / 2, "{name} {page}: {ink}");
            let margin = |i: usize| {
                let (x, y) = (i % width, i / width);
                x < 5 || y < 4 || x + 5 >= width || y + 5 >= height
            };
            let stray = (0..pixels.len()).filter(|i| margin(*i) && pixels[*i] < 250).count();
            assert_eq!(stray, 0, "{name} {page}: ink in the margin");
        }
    }
}
