//! What every path does with a request: takes its body, works on another thread, answers.

use super::answers::Refused;
use super::wire::Problem;
use super::work::Desk;
use crate::lang;
use axum::Json;
use axum::extract::rejection::JsonRejection;
use axum::response::{IntoResponse, Response};
use std::sync::Arc;

/// The body, or why it was rejected.
pub type Body<T> = Result<Json<T>, JsonRejection>;

/// Takes the body of a request, works on another thread and answers.
pub async fn answered<Q: Send + 'static, A: IntoResponse + Send + 'static>(
    desk: &Arc<Desk>,
    asked: Body<Q>,
    work: impl FnOnce(&Desk, Q) -> Result<A, Refused> + Send + 'static,
) -> Response {
    let asked = match asked {
        Ok(Json(asked)) => asked,
        Err(rejected) => {
            let help = lang::text("page-see-description");
            return Problem::new(rejected.body_text(), help).with(rejected.status());
        }
    };
    let own = Arc::clone(desk);
    match desk.work(move || work(&own, asked)).await {
        Ok(Ok(answer)) => answer.into_response(),
        Ok(Err((status, problem))) => problem.with(status),
        Err(response) => response,
    }
}
