//! One function for each path. Work is done on another thread, and the answers are JSON.

use axum::Json;
use axum::extract::State;
use axum::http::header;
use axum::response::{IntoResponse, Response};
use std::sync::Arc;

use super::answers;
use super::asked::{Body, answered};
use super::openapi;
use super::wire::{
    Applied, ApplyAsked, AtAsked, Breach, ChangesAsked, EditAsked, Edited, PlanAsked, ProveAsked, Proven, SampledAsked,
    StageCheck, Text, Texts,
};
use super::work::Desk;
use crate::answer::at::Asked;
use crate::answer::{at as moment, moved};
use crate::fields::{ALL, Field};
use crate::input::Named;
use crate::input::edit::{changed, edited};

/// What the page starts with.
pub async fn start(State(desk): State<Arc<Desk>>) -> Json<Texts> {
    let machine = desk.start.machine.clone().map(Text::from);
    Json(Texts { job: desk.start.job.clone().into(), machine })
}

/// Every number of the input: meaning, unit, range, default.
pub async fn fields() -> Json<&'static [Field]> {
    Json(ALL)
}

/// This interface.
pub async fn openapi() -> Response {
    ([(header::CONTENT_TYPE, "application/json")], openapi::text()).into_response()
}

/// The plan of a job with its diagram; or what is wrong with the texts, each thing at its place.
pub async fn plan(State(desk): State<Arc<Desk>>, asked: Body<PlanAsked>) -> Response {
    answered(&desk, asked, |desk, asked| {
        let (texts, canvas) = asked.parts();
        answers::planned(desk, &texts, canvas).map(Json)
    })
    .await
}

/// As [`plan`], as soon as the plan is proven: the sampled parts may be missing.
pub async fn first(State(desk): State<Arc<Desk>>, asked: Body<PlanAsked>) -> Response {
    answered(&desk, asked, |desk, asked| {
        let (texts, canvas) = asked.parts();
        answers::first(desk, &texts, canvas).map(Json)
    })
    .await
}

/// Sampled parts of the plan.
pub async fn sampled(State(desk): State<Arc<Desk>>, asked: Body<SampledAsked>) -> Response {
    answered(&desk, asked, |desk, asked| answers::sampled(desk, &asked).map(Json)).await
}

/// The changes that would help if there is no plan. To find them takes many plans.
pub async fn changes(State(desk): State<Arc<Desk>>, asked: Body<ChangesAsked>) -> Response {
    answered(&desk, asked, |desk, asked| answers::changes(desk, &asked).map(Json)).await
}

/// A text with edits made in it. What the edits do not touch stays as it is.
pub async fn edit(State(desk): State<Arc<Desk>>, asked: Body<EditAsked>) -> Response {
    answered(&desk, asked, |_, asked| {
        let mut text = asked.text.text;
        for edit in &asked.edits {
            text = edited(&asked.text.name, &text, edit).map_err(answers::unusable)?;
        }
        Ok(Json(Edited { text }))
    })
    .await
}

/// Both files with the edits of a change. What the edits do not touch stays as it is.
pub async fn apply(State(desk): State<Arc<Desk>>, asked: Body<ApplyAsked>) -> Response {
    answered(&desk, asked, |_, asked| {
        let machine = asked.texts.machine.as_ref().map(Named::from);
        let made = changed(&Named::from(&asked.texts.job), machine.as_ref(), &asked.edits);
        let (job, machine) = made.map_err(answers::unusable)?;
        Ok(Json(Applied { job, machine }))
    })
    .await
}

/// The mechanics at one moment.
pub async fn at(State(desk): State<Arc<Desk>>, asked: Body<AtAsked>) -> Response {
    answered(&desk, asked, |desk, asked| {
        let job = answers::job_of(desk, &asked.texts)?;
        let AtAsked { turned_mm, grip_mm, collet, headstock_mm, stage_end_mm, rpm, .. } = asked;
        let asked = Asked { turned_mm, grip_mm, collet, headstock_mm, stage_end_mm, rpm };
        moment::at(&job, &asked).map(Json).map_err(answers::unusable)
    })
    .await
}

/// The plan of a job with one place moved by hand, and what the proof says of it.
pub async fn prove(State(desk): State<Arc<Desk>>, asked: Body<ProveAsked>) -> Response {
    answered(&desk, asked, |desk, asked| {
        let job = answers::job_of(desk, &asked.texts)?;
        let plan = answers::plan_of(desk, &job, &asked.texts)?;
        let (plan, found) = moved::moved(&job, &plan, asked.moved(), asked.to_mm).map_err(answers::unusable)?;
        let breaches = found.breaches.iter().map(|b| Breach {
            stage: b.stage,
            rule: b.rule.clone(),
            text: b.text.clone(),
            turned_mm: b.turned_mm,
        });
        let stages = plan.stages.iter().map(|s| StageCheck {
            number: s.number,
            from_mm: s.from_mm,
            to_mm: s.to_mm,
            check: s.governing().cloned(),
        });
        Ok(Json(Proven {
            proven: found.holds(),
            breaches: breaches.collect(),
            total_s: plan.pace_s(),
            stages: stages.collect(),
        }))
    })
    .await
}
