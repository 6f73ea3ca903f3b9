//! The files of the page, all built into the program. No other file is served.

use axum::http::{StatusCode, Uri, header};
use axum::response::{IntoResponse, Response};
use serde_json::json;
use std::collections::BTreeMap;

use super::wire::Problem;
use crate::lang;
use crate::process::checks::{CHECKS, EVENTS};
use crate::report::words;

const HTML: &str = "text/html; charset=utf-8";
const CSS: &str = "text/css; charset=utf-8";
const JS: &str = "text/javascript; charset=utf-8";
const ICON: &str = "image/svg+xml";

macro_rules! files {
    ($($path:literal $file:literal $kind:ident,)*) => {
        &[$(($path, $kind, include_str!(concat!("assets/", $file))),)*]
    };
}

/// Path, type and text.
const FILES: &[(&str, &str, &str)] = files![
    "/" "index.html" HTML,
    "/style.css" "style.css" CSS,
    "/compare.css" "compare.css" CSS,
    "/fit.css" "fit.css" CSS,
    "/dark.css" "dark.css" CSS,
    "/shared.css" "shared.css" CSS,
    "/shared.html" "shared.html" HTML,
    "/start.css" "start.css" CSS,
    "/icon.svg" "icon.svg" ICON,
    "/main.js" "main.js" JS,
    "/api.js" "api.js" JS,
    "/answers.js" "answers.js" JS,
    "/history.js" "history.js" JS,
    "/dom.js" "dom.js" JS,
    "/words.js" "words.js" JS,
    "/tree.js" "tree.js" JS,
    "/form.js" "form.js" JS,
    "/layout.js" "layout.js" JS,
    "/drawing.js" "drawing.js" JS,
    "/drawer.js" "drawer.js" JS,
    "/machine.js" "machine.js" JS,
    "/moment.js" "moment.js" JS,
    "/wish.js" "wish.js" JS,
    "/results.js" "results.js" JS,
    "/scheme.js" "scheme.js" JS,
    "/share.js" "share.js" JS,
    "/shared.js" "shared.js" JS,
    "/shared_api.js" "shared_api.js" JS,
    "/spoken.js" "spoken.js" JS,
    "/compare.js" "compare.js" JS,
    "/compare_parts.js" "compare_parts.js" JS,
    "/compared.js" "compared.js" JS,
    "/pins.js" "pins.js" JS,
    "/plain.js" "plain.js" JS,
    "/start.js" "start.js" JS,
    "/choose.js" "choose.js" JS,
    "/checks.js" "checks.js" JS,
];

/// A file of the page.
pub async fn asset(uri: Uri) -> Response {
    match FILES.iter().find(|(path, ..)| *path == uri.path()) {
        Some((_, kind, text)) => ([(header::CONTENT_TYPE, *kind)], *text).into_response(),
        None => Problem::new(lang::text("page-no-such-page"), lang::text("page-no-such-page-help"))
            .with(StatusCode::NOT_FOUND),
    }
}

/// The texts of the page by key, and keys of a plan in the words of every other output: a script of the page.
pub async fn texts() -> Response {
    let named = |key: &str| key.strip_prefix("key-").unwrap_or(key).replace('-', "_");
    let names: BTreeMap<String, &str> =
        lang::texts_of("key-").into_iter().map(|(key, name)| (named(key), name)).collect();
    let all = CHECKS.iter().chain(&EVENTS).map(|check| check.name);
    let checks: BTreeMap<&str, String> = all.map(|name| (name, words::check_name(name))).collect();
    let mut spoken = lang::texts_of("page-");
    spoken.extend(lang::texts_of("unit-"));
    let (texts, names, checks) = (json!(spoken), json!(names), json!(checks));
    let (language, mark) = (json!(lang::language().code()), json!(lang::text("decimal-mark")));
    let script = format!(
        "export const LANGUAGE = {language};\nexport const DECIMAL_MARK = {mark};\nexport const TEXTS = {texts};\n\
         export const NAMES = {names};\nexport const CHECKS = {checks};\n"
    );
    ([(header::CONTENT_TYPE, JS)], script).into_response()
}

/// The answer to a method that the path does not take.
pub async fn other_method() -> Response {
    Problem::new(lang::text("page-wrong-method"), lang::text("page-see-description"))
        .with(StatusCode::METHOD_NOT_ALLOWED)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_colour_of_a_picture_has_a_dark_one() {
        let file = |name: &str| FILES.iter().find(|(path, ..)| *path == name).map_or("", |(.., text)| *text);
        let job = crate::input::read_job_text("job.yaml", crate::input::TEMPLATE, ".".as_ref()).expect("a job");
        let plan = crate::answer::sampled(&job, crate::planner::Advice::None).expect("a plan");
        let canvas = crate::report::Canvas::screen(900.0);
        let drawing = crate::report::placed(&plan, None, canvas).expect("a drawing").svg;
        let strip = crate::report::gantt::inline_svg(&plan, canvas).expect("a strip").unwrap_or_default();
        let inputs = crate::report::sure_chart::inline_svg(&plan, canvas).expect("a chart").unwrap_or_default();
        let mut seen = 0;
        for of in ["fill", "stroke"] {
            let start = format!(" {of}=\"#");
            for part in [&drawing, &strip, &inputs].into_iter().flat_map(|svg| svg.split(&start).skip(1)) {
                let colour = part.get(..6).unwrap_or_default().to_lowercase();
                let line = format!("svg [{of}=\"#{colour}\" i]");
                assert!(file("/dark.css").contains(&line), "{line}");
                seen += 1;
            }
        }
        assert!(seen > 100, "{seen} colours");
    }

    #[test]
    fn the_machine_has_the_colours_of_the_diagram() {
        let style = FILES.iter().find(|(path, ..)| *path == "/style.css").map_or("", |(.., text)| *text);
        for (name, colour) in crate::report::COLOURS {
            let line = format!("--{name}: {colour};");
            assert!(style.contains(&line), "{line}");
        }
    }
}
