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
    "/machine.js" "machine.js" JS,
    "/moment.js" "moment.js" JS,
    "/wish.js" "wish.js" JS,
    "/results.js" "results.js" JS,
    "/compare.js" "compare.js" JS,
    "/compare_parts.js" "compare_parts.js" JS,
    "/compared.js" "compared.js" JS,
    "/pins.js" "pins.js" JS,
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
    fn the_machine_has_the_colours_of_the_diagram() {
        let style = FILES.iter().find(|(path, ..)| *path == "/style.css").map_or("", |(.., text)| *text);
        for (name, colour) in crate::report::COLOURS {
            let line = format!("--{name}: {colour};");
            assert!(style.contains(&line), "{line}");
        }
    }
}
