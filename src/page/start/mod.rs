//! The start of the page: example parts, a new shaft, a draft from a drawing or a table, and the machines and materials to choose from.
//! No path ever comes from the page: what it may choose is built into the program, or was read at the start.

mod choices;
mod examples;
mod fresh;

use axum::Json;
use axum::extract::State;
use axum::response::Response;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::path::Path;
use std::sync::Arc;

use super::answers::{Refused, unusable};
use super::asked::{Body, answered};
use super::wire::{Problem, Text};
use super::work::Desk;
use crate::diag::Diag;
use crate::drawings::{self, Options, Units};
use crate::lang;
use crate::say;
use axum::http::StatusCode;
pub use choices::Choices;
pub use examples::Example;
pub use fresh::NewAsked;

/// Largest request that holds a drawing or a table, bytes.
pub const DRAFT_MAX_BYTES: usize = 8 * 1024 * 1024;

/// A drawing or a table.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DraftAsked {
    /// Name of the file. Its ending says what the file is: dxf, csv, tsv, txt, xlsx, xls or ods.
    name: String,
    /// Bytes of the file, each as one character from U+0000 to U+00FF.
    bytes: String,
    /// Whether the front face is at the right or upper end of the drawing.
    #[serde(default)]
    flip: bool,
    /// Whether the drawing is in inches, whatever it says.
    #[serde(default)]
    inches: bool,
}

/// A draft of a job.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Drafted {
    /// The job file. Remarks in it say what must be checked.
    job: Text,
    /// What was decided, used and not understood. The text of the job contains these notes too.
    notes: Vec<String>,
}

/// The example parts.
pub async fn gallery() -> Json<Vec<Example>> {
    Json(examples::gallery())
}

/// The machines and the materials to choose from.
pub async fn choices(State(desk): State<Arc<Desk>>) -> Json<Choices> {
    Json(choices::of(&desk.start))
}

/// A first job of a plain shaft.
pub async fn fresh(State(desk): State<Arc<Desk>>, asked: Body<NewAsked>) -> Response {
    answered(&desk, asked, |desk, asked| fresh::texts(&asked, &desk.start).map(Json)).await
}

/// A job from a drawing or a table.
pub async fn draft(State(desk): State<Arc<Desk>>, asked: Body<DraftAsked>) -> Response {
    answered(&desk, asked, |_, asked| drafted(&asked).map(Json)).await
}

fn drafted(asked: &DraftAsked) -> Result<Drafted, Refused> {
    let bytes: Result<Vec<u8>, _> = asked.bytes.chars().map(u8::try_from).collect();
    let bytes = bytes.map_err(|_| unusable(Diag::new(say!("page-draft-no-bytes"))))?;
    let path = Path::new(Path::new(&asked.name).file_name().unwrap_or_default());
    let options = Options {
        units: asked.inches.then_some(Units::Inch),
        scale: None,
        gap_mm: drawings::GAP_MM,
        flip: asked.flip,
        sheet: None,
        stock_mm: None,
        machine: None,
        material: None,
    };
    let draft = drawings::draft(path, &bytes, Path::new(""), &options).map_err(|diags| refused(&diags))?;
    let stem = path.file_stem().unwrap_or_default().to_string_lossy();
    Ok(Drafted { job: Text { name: format!("{stem}.yaml"), text: draft.text }, notes: draft.notes })
}

/// All that prevents a draft, as one problem.
fn refused(diags: &[Diag]) -> Refused {
    let one = |d: &Diag| [Some(d.what.clone()), d.help.clone()].into_iter().flatten().collect::<Vec<_>>().join(" ");
    let (what, help) = match diags {
        [only] => (only.what.clone(), only.help.clone().unwrap_or_default()),
        several => (lang::text("page-draft-failed").to_owned(), several.iter().map(one).collect::<Vec<_>>().join(" ")),
    };
    (StatusCode::UNPROCESSABLE_ENTITY, Problem::new(what, help))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::{LANGUAGES, Language, Spoken, speaking};

    #[test]
    fn the_marks_of_every_language_are_those_of_its_drafts() {
        let mut marks = std::collections::BTreeSet::new();
        for code in LANGUAGES {
            let language = Language::of(code).expect("a language");
            let remarks = [
                "draft-no-unit",
                "draft-placeholder-bar",
                "draft-not-read",
                "draft-not-understood",
                "workbook-cells-beyond",
            ];
            let told = speaking(Spoken::fixed(language), || {
                (lang::text("page-start-marks"), remarks.map(|key| lang::known(key).unwrap_or_default()))
            });
            for remark in told.1 {
                assert!(told.0.split('|').any(|mark| remark.starts_with(mark)), "{code}: {remark}");
            }
            marks.insert(told.0);
        }
        assert!(marks.len() > 1);
    }

    #[test]
    fn what_is_no_drawing_is_refused_with_a_reason() {
        let asked =
            |name: &str, bytes: &str| DraftAsked { name: name.into(), bytes: bytes.into(), flip: false, inches: false };
        for (name, bytes) in
            [("a.dxf", "no drawing"), ("a.exe", "x"), ("", ""), ("a.csv", "\u{20ac}"), ("../../etc/passwd", "")]
        {
            let refused = drafted(&asked(name, bytes)).map_err(|(status, problem)| (status, problem.what));
            assert!(refused.is_err_and(|(status, what)| status == 422 && !what.is_empty()), "{name}");
        }
        assert!(drafted(&asked("shaft.csv", "length,diameter\n100,12\n")).is_ok_and(|d| d.job.name == "shaft.yaml"));
    }
}
