//! The plan as a file that the browser saves.

use axum::extract::rejection::PathRejection;
use axum::extract::{Path, State};
use axum::http::{StatusCode, header};
use axum::response::Response;
use std::sync::Arc;

use super::answers;
use super::asked::{Body, answered};
use super::wire::{Problem, Texts};
use super::work::Desk;
use crate::defect::Defect;
use crate::job::plan::Plan;
use crate::lang::{self, Spoken};
use crate::report;
use crate::say;

/// Type of a workbook.
const WORKBOOK: &str = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/// Writes a plan as the bytes of a file.
type Writer = fn(&Plan) -> Result<Vec<u8>, String>;

/// All formats: name in the path, media type, file extension, writer.
const FORMATS: [(&str, &str, &str, Writer); 9] = [
    ("sheet", "text/html; charset=utf-8", "html", |p| text(report::sheet_html(p))),
    ("svg", "image/svg+xml", "svg", |p| text(report::plan_svg(p))),
    ("csv", "text/csv; charset=utf-8", "csv", |p| Ok(report::stages_csv(p).into_bytes())),
    ("positions", "text/csv; charset=utf-8", "positions.csv", |p| Ok(report::positions_csv(p).into_bytes())),
    ("positions-json", "application/json", "positions.json", |p| {
        report::positions_json(p).map(String::into_bytes).map_err(|e| e.to_string())
    }),
    ("dxf", "image/vnd.dxf", "dxf", |p| text(report::plan_dxf(p))),
    ("xlsx", WORKBOOK, "xlsx", |p| report::plan_xlsx(p).map_err(|e| e.to_string())),
    ("text", "text/plain; charset=utf-8", "txt", |p| Ok(report::plan_text(p).into_bytes())),
    ("json", "application/json", "json", |p| serde_json::to_vec_pretty(p).map_err(|e| e.to_string())),
];

/// Names of all formats.
pub fn names() -> Vec<&'static str> {
    FORMATS.iter().map(|(name, ..)| *name).collect()
}

fn text(drawn: Result<String, report::ReportError>) -> Result<Vec<u8>, String> {
    drawn.map(String::into_bytes).map_err(|e| e.to_string())
}

/// The plan of a job as a file: the sheet for the machine, the diagram, the stage table, the table of positions, a drawing, a
/// workbook, the text, or everything as JSON.
pub async fn export(
    State(desk): State<Arc<Desk>>,
    format: Result<Path<String>, PathRejection>,
    asked: Body<Texts>,
) -> Response {
    // A name that is not text, such as `%ee`, is no format either.
    let format = format.map_or(String::new(), |Path(name)| name);
    let Some((_, kind, ending, writer)) = FORMATS.into_iter().find(|(name, ..)| *name == format) else {
        return Problem::new(lang::text("page-no-such-export"), say!("page-exports", names = names().join(", ")))
            .with(StatusCode::NOT_FOUND);
    };
    answered(&desk, asked, move |desk, texts| {
        let asked = answers::job_of(desk, &texts)?.language.unwrap_or_else(lang::language);
        // A sheet is in the language and the units that the job asks for, whatever those of the page.
        let spoken = Spoken::fixed(asked);
        let spoken = desk.units.map_or(spoken, |units| spoken.in_units(units));
        let (plan, bytes) = lang::speaking(spoken, || {
            let job = answers::job_of(desk, &texts)?;
            let plan = answers::plan_of(desk, &job, &texts)?;
            let bytes = writer(&plan).map_err(|text| answers::defect(&Defect(text)))?;
            Ok((plan, bytes))
        })?;
        let saved = format!("attachment; filename=\"{}\"", file_name(&plan.job, ending));
        Ok(([(header::CONTENT_TYPE, kind.to_owned()), (header::CONTENT_DISPOSITION, saved)], bytes))
    })
    .await
}

/// A file name that any system takes: the letters and digits of the job's name, a dash for everything else.
fn file_name(job: &str, ending: &str) -> String {
    let plain: String = job.chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).take(60).collect();
    let plain = plain.trim_matches('-');
    format!("{}.{ending}", if plain.is_empty() { "plan" } else { plain })
}
