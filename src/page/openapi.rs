//! The interface as an OpenAPI 3.1 document: its paths from the table in this file, its schemas from the types that are
//! sent. The crate for them also makes the schemas of the files.

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, SchemaGenerator};
use serde_json::{Map, Value, json};

use super::export;
use super::start::{Choices, DraftAsked, Drafted, Example, NewAsked};
use super::wire::{
    Applied, ApplyAsked, AtAsked, Changes, ChangesAsked, EditAsked, Edited, PlanAsked, Planned, Problem, ProveAsked,
    Proven, Sampled, SampledAsked, Texts,
};
use crate::answer::at::At;
use crate::fields::Field;

/// A body: its media types, with their schemas.
type Body = fn(&mut SchemaGenerator) -> Value;

/// A request: its path, its purpose, its body if it has one, the body of the answer.
struct Question {
    path: &'static str,
    what: &'static str,
    asks: Option<Body>,
    answers: Body,
}

const QUESTIONS: [Question; 16] = [
    Question { path: "/start", what: "The files that the page opens first.", asks: None, answers: json_of::<Texts> },
    Question {
        path: "/fields",
        what: "All numbers of the input files: meaning, unit, range and default.",
        asks: None,
        answers: json_of::<Vec<Field>>,
    },
    Question {
        path: "/openapi.json",
        what: "The description of this interface.",
        asks: None,
        answers: json_of::<Value>,
    },
    Question { path: "/gallery", what: "The example parts.", asks: None, answers: json_of::<Vec<Example>> },
    Question {
        path: "/choices",
        what: "The machines and materials to choose from.",
        asks: None,
        answers: json_of::<Choices>,
    },
    Question {
        path: "/new",
        what: "The first job of a new shaft, with an example machine.",
        asks: Some(json_of::<NewAsked>),
        answers: json_of::<Texts>,
    },
    Question {
        path: "/draft",
        what: "A job from a drawing or a table. It must be checked.",
        asks: Some(json_of::<DraftAsked>),
        answers: json_of::<Drafted>,
    },
    Question {
        path: "/first",
        what: "The same as `/plan`, as soon as the plan is proven: the sampled parts may still be missing.",
        asks: Some(json_of::<PlanAsked>),
        answers: json_of::<Planned>,
    },
    Question {
        path: "/plan",
        what: "The plan of a job with its diagram, or the errors in its files.",
        asks: Some(json_of::<PlanAsked>),
        answers: json_of::<Planned>,
    },
    Question {
        path: "/sampled",
        what: "Sampled parts of the plan along the turned length: a band, the parts that break a check, and one part.",
        asks: Some(json_of::<SampledAsked>),
        answers: json_of::<Sampled>,
    },
    Question {
        path: "/changes",
        what: "Changes that make a job feasible. This takes longer than one plan.",
        asks: Some(json_of::<ChangesAsked>),
        answers: json_of::<Changes>,
    },
    Question {
        path: "/edit",
        what: "A file with edits. Everything else in the file stays as it is written.",
        asks: Some(json_of::<EditAsked>),
        answers: json_of::<Edited>,
    },
    Question {
        path: "/apply",
        what: "Both files with the edits of a set of changes. Everything else in them stays as it is written.",
        asks: Some(json_of::<ApplyAsked>),
        answers: json_of::<Applied>,
    },
    Question {
        path: "/at",
        what: "Forces, deflections and checks at one turned length.",
        asks: Some(json_of::<AtAsked>),
        answers: json_of::<At>,
    },
    Question {
        path: "/prove",
        what: "The plan of a job with one position moved, checked by the proof.",
        asks: Some(json_of::<ProveAsked>),
        answers: json_of::<Proven>,
    },
    Question {
        path: "/export/{format}",
        what: "The plan of a job as a file: sheet, diagram, table of stages, workbook, text or JSON.",
        asks: Some(json_of::<Texts>),
        answers: |_| json!({ "application/octet-stream": {} }),
    },
];

/// Statuses that any request may get instead, with their descriptions.
const REFUSALS: [(u16, &str); 5] = [
    (403, "The request does not come from this page."),
    (404, "This address or this export does not exist."),
    (405, "This address does not take this method."),
    (408, "The request took too long to arrive."),
    (500, "An error in this program."),
];

/// Further statuses that a request with a body may get.
const REFUSALS_OF_BODIES: [(u16, &str); 5] = [
    (400, "The body is not JSON."),
    (413, "The body is too large."),
    (415, "The body is not `application/json`."),
    (422, "The body does not fit this address, or the files have errors."),
    (503, "There are too many requests at once, or the calculation took too long and was stopped."),
];

fn json_of<T: JsonSchema>(schemas: &mut SchemaGenerator) -> Value {
    json!({ "application/json": { "schema": schemas.subschema_for::<T>() } })
}

/// Schemas of what is read and of what is written. They are apart because they differ in what may be left out.
struct Schemas {
    asked: SchemaGenerator,
    answered: SchemaGenerator,
}

#[expect(clippy::indexing_slicing, reason = "the keys are put into an object of ours")]
fn operation(question: &Question, schemas: &mut Schemas) -> Value {
    let mut answers = Map::new();
    let answer = (question.answers)(&mut schemas.answered);
    answers.insert("200".into(), json!({ "description": "The answer.", "content": answer }));
    let bodies = REFUSALS_OF_BODIES.iter().filter(|_| question.asks.is_some());
    for (status, what) in REFUSALS.iter().chain(bodies) {
        let refusal = json!({ "description": what, "content": json_of::<Problem>(&mut schemas.answered) });
        answers.insert(status.to_string(), refusal);
    }
    let name = question.path.trim_matches('/').split(['/', '.']).next().unwrap_or_default();
    let mut out = json!({ "operationId": name, "summary": question.what, "responses": answers });
    if let Some(body) = question.asks {
        out["requestBody"] = json!({ "required": true, "content": body(&mut schemas.asked) });
    }
    if question.path.contains("{format}") {
        let schema = json!({ "type": "string", "enum": export::names() });
        out["parameters"] = json!([{ "name": "format", "in": "path", "required": true, "schema": schema }]);
    }
    out
}

/// The document, JSON.
pub fn text() -> String {
    let settings = || SchemaSettings::draft2020_12().with(|s| s.definitions_path = "/components/schemas".into());
    let (asked, answered) = (settings().into_generator(), settings().for_serialize().into_generator());
    let mut schemas = Schemas { asked, answered };
    let mut paths = Map::new();
    for question in &QUESTIONS {
        let method = if question.asks.is_some() { "post" } else { "get" };
        paths.insert(question.path.into(), json!({ method: operation(question, &mut schemas) }));
    }
    // The few types that are both read and written are described as they are read.
    let mut types = schemas.answered.take_definitions(true);
    types.extend(schemas.asked.take_definitions(true));
    let document = json!({
        "openapi": "3.1.0",
        "info": {
            "title": "spanhold page",
            "description": "The interface of the local page. It answers on this computer only. Requests are JSON. \
                Lengths are in mm, times in s.",
            "version": env!("CARGO_PKG_VERSION"),
            "license": { "name": "MIT", "identifier": "MIT" },
        },
        "paths": paths,
        "components": { "schemas": types },
    });
    serde_json::to_string_pretty(&document).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reference_leads_to_a_schema_and_every_schema_is_asked_for() {
        let text = text();
        let document: Value = serde_json::from_str(&text).expect("JSON");
        let schemas = document["components"]["schemas"].as_object().expect("schemas");
        let referred: Vec<&str> = text
            .match_indices("\"#/components/schemas/")
            .map(|(at, start)| text[at + start.len()..].split('"').next().unwrap_or_default())
            .collect();
        assert!(referred.iter().all(|name| schemas.contains_key(*name)), "{referred:?}");
        assert!(schemas.keys().all(|name| referred.contains(&name.as_str())));
        assert!(schemas.contains_key("Plan") && schemas.contains_key("Problem"));
        assert_eq!(document["paths"].as_object().map(Map::len), Some(QUESTIONS.len()));
    }
}
