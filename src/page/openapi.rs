//! The interface as a document of OpenAPI 3.1, made from the paths and types.

use utoipa::OpenApi;

use super::{export, handlers};

#[derive(OpenApi)]
#[openapi(
    info(
        title = "spanhold page",
        description = "What the local page asks. Loopback only; requests are JSON; lengths in mm, times in s."
    ),
    paths(
        handlers::start,
        handlers::fields,
        handlers::openapi,
        handlers::plan,
        handlers::changes,
        handlers::edit,
        handlers::at,
        handlers::prove,
        export::export
    )
)]
struct Description;

/// The document, JSON.
pub fn text() -> String {
    Description::openapi().to_pretty_json().unwrap_or_default()
}
