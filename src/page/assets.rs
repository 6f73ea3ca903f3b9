//! The files of the page, all built into the program. No other file is served.

use axum::http::{StatusCode, Uri, header};
use axum::response::{IntoResponse, Response};

use super::wire::Problem;

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
    "/icon.svg" "icon.svg" ICON,
    "/main.js" "main.js" JS,
    "/api.js" "api.js" JS,
    "/history.js" "history.js" JS,
    "/dom.js" "dom.js" JS,
    "/words.js" "words.js" JS,
    "/form.js" "form.js" JS,
    "/layout.js" "layout.js" JS,
    "/drawing.js" "drawing.js" JS,
    "/machine.js" "machine.js" JS,
    "/results.js" "results.js" JS,
];

/// A file of the page.
pub async fn asset(uri: Uri) -> Response {
    match FILES.iter().find(|(path, ..)| *path == uri.path()) {
        Some((_, kind, text)) => ([(header::CONTENT_TYPE, *kind)], *text).into_response(),
        None => Problem::new("there is no such page", "open the address that `spanhold page` printed")
            .with(StatusCode::NOT_FOUND),
    }
}

/// The answer to a method that the path does not take.
pub async fn other_method() -> Response {
    Problem::new("this path is not asked by this method", "see /openapi.json for the one it takes")
        .with(StatusCode::METHOD_NOT_ALLOWED)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::words;

    #[test]
    fn the_page_says_keys_in_the_words_of_every_other_output() {
        let script = FILES.iter().find(|(path, ..)| *path == "/words.js").map_or("", |(.., text)| *text);
        for key in ["hand_over", "regrip", "segment", "whirl"] {
            let line = format!("{key}: '{}'", words::key(key));
            assert!(script.contains(&line), "{line}");
        }
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
