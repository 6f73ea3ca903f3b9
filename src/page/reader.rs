//! The language of the one who reads the page.

use axum::extract::{Request, State};
use axum::http::header;
use axum::middleware::Next;
use axum::response::Response;
use std::pin::Pin;
use std::task::{Context, Poll};

use crate::lang::{self, Language, Spoken, Units};

/// A future whose texts are in a language. It may be polled on any thread, so each poll sets the language anew.
struct Speaking<F> {
    spoken: Spoken,
    work: Pin<Box<F>>,
}

impl<F: Future> Future for Speaking<F> {
    type Output = F::Output;

    fn poll(self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<F::Output> {
        let this = self.get_mut();
        lang::speaking(this.spoken, || this.work.as_mut().poll(context))
    }
}

/// Answers in the language of the call (`--lang`), else in the one that the browser likes best of those there are.
pub async fn answered(State(call): State<Spoken>, request: Request, next: Next) -> Response {
    let liked = request.headers().get(header::ACCEPT_LANGUAGE).and_then(|list| list.to_str().ok());
    let liked = Spoken::fixed(liked.and_then(Language::liked).unwrap_or_default());
    // The page shows the numbers of its files, which are metric.
    let spoken = if call.is_fixed() { call } else { liked }.in_units(Units::Metric);
    Speaking { spoken, work: Box::pin(next.run(request)) }.await
}
