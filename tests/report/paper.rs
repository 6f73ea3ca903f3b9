//! A printed sheet read back: each word with its place on the page, by Poppler's `pdftotext -bbox`.

use crate::ends::run;
use spanhold::job::plan::Plan;
use spanhold::lang;
use spanhold::report::work_list;
use std::path::Path;
use std::process::Command;

/// A word: left, top, right and bottom in points, and its text.
pub struct Word(pub [f64; 4], pub String);

/// A page: width and height in points, and its words in the order of the file.
pub struct Page {
    pub size: [f64; 2],
    pub words: Vec<Word>,
}

const MM: f64 = 72.0 / 25.4;

/// The pages of a PDF.
pub fn read(pdf: &Path) -> Vec<Page> {
    let read = run(Command::new("pdftotext").arg("-bbox").arg(pdf).arg("-"));
    let text = String::from_utf8(read.stdout).expect("UTF-8");
    let number = |line: &str, key: &str| -> f64 {
        let rest = line.split(&format!("{key}=\"")).nth(1).unwrap_or_else(|| panic!("{key} in {line}"));
        rest.split('"').next().and_then(|n| n.parse().ok()).expect("a number")
    };
    let mut pages = Vec::new();
    for line in text.lines().map(str::trim) {
        if line.starts_with("<page ") {
            pages.push(Page { size: ["width", "height"].map(|key| number(line, key)), words: Vec::new() });
        } else if let Some(rest) = line.strip_prefix("<word ") {
            let word = rest.split('>').nth(1).and_then(|w| w.strip_suffix("</word")).expect("a word");
            let place = ["xMin", "yMin", "xMax", "yMax"].map(|key| number(line, key));
            pages.last_mut().expect("a page").words.push(Word(place, word.replace("&amp;", "&")));
        }
    }
    pages
}

impl Page {
    /// Top of the first place where these words follow each other.
    pub fn top(&self, text: &str) -> Option<f64> {
        let wanted: Vec<&str> = text.split_whitespace().collect();
        let found =
            self.words.windows(wanted.len()).find(|w| w.iter().map(|w| w.1.as_str()).eq(wanted.iter().copied()));
        found.and_then(|w| w.first()).map(|w| w.0[1])
    }

    /// The words that stand left of a place, with their tops.
    fn left_of(&self, x_mm: f64) -> impl Iterator<Item = (&str, f64)> {
        self.words.iter().filter(move |w| w.0[2] < x_mm * MM).map(|w| (w.1.as_str(), w.0[1]))
    }
}

/// What holds of every printed sheet of a usual part: two pages for the setter, then details.
pub fn look(name: &str, plan: &Plan, pages: &[Page]) {
    let count = pages.len();
    for (i, page) in pages.iter().enumerate() {
        let [width, height] = page.size;
        assert!((width - 297.0 * MM).abs() < 1.0 && (height - 210.0 * MM).abs() < 1.0, "{name}: {width} × {height}");
        let said = format!("page {} of {count}", i + 1);
        let at = page.top(&said).unwrap_or_else(|| panic!("{name}: {said}"));
        assert!(at > height - 14.0 * MM, "{name}: {said} at {at}");
        for word in plan.drawing.iter().chain(&plan.revision).chain(&plan.date).flat_map(|w| w.split_whitespace()) {
            let told = page.words.iter().any(|w| w.0[1] > height - 14.0 * MM && w.1.trim_end_matches(',') == word);
            assert!(told, "{name}: {word} at the foot of page {}", i + 1);
        }
        for Word([left, top, right, bottom], word) in &page.words {
            let inside =
                *left > 8.0 * MM && *top > 7.0 * MM && *right < width - 8.0 * MM && *bottom < height - 4.0 * MM;
            assert!(inside, "{name}: {word} stands in the margin of page {}", i + 1);
        }
    }
    // The first page: the drawing, under it the limits, under them where the cautions are.
    let first = &pages[0];
    let tops = ["position on the shaft", "Limits of the stages:", "Read the cautions"]
        .map(|text| first.top(text).unwrap_or_else(|| panic!("{name}: {text} is not on the first page")));
    assert!(tops[0] < tops[1] && tops[1] < tops[2], "{name}: {tops:?}");
    for stage in &plan.stages {
        assert!(first.top(&format!("Stage {}:", stage.number)).is_some_and(|y| y > tops[1]), "{name}");
    }
    // The second page: every work in its order, and the box to sign.
    let second = &pages[1];
    assert!(second.top(lang::text("sheet-work-list")).is_some_and(|y| y < 25.0 * MM), "{name}");
    let rows = work_list::rows(plan).rows;
    let mut numbers: Vec<(&str, f64)> = second.left_of(24.0).filter(|(w, _)| w.parse::<usize>().is_ok()).collect();
    numbers.sort_by(|a, b| a.1.total_cmp(&b.1));
    let wanted: Vec<String> = (1..=rows.len()).map(|n| n.to_string()).collect();
    assert_eq!(numbers.iter().map(|(n, _)| *n).collect::<Vec<_>>(), wanted, "{name}");
    assert!(numbers.windows(2).all(|w| w[0].1 + 3.0 * MM < w[1].1), "{name}: there is no room to write");
    let signed = second.top("Sign-off").unwrap_or_else(|| panic!("{name}: no box to sign on the second page"));
    assert!(numbers.last().is_some_and(|(_, y)| *y < signed), "{name}");
    // The third page begins the details, with the cautions.
    assert!(pages[2].top("Cautions").is_some(), "{name}");
}
