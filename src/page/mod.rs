//! The local page: a small JSON interface over `answer`, and the files of the page itself, all on loopback.
//!
//! It opens no file, writes none and makes no connection. The page asks this interface for what it shows.
//! `/openapi.json` describes the interface; it is made from the types that are sent.

// A refusal is a whole response, made once per request: a box around it would save nothing.
#![allow(clippy::result_large_err)]

mod answers;
mod asked;
mod assets;
mod door;
mod export;
mod guard;
mod handlers;
mod openapi;
mod patience;
mod reader;
mod start;
mod wire;
mod work;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware;
use axum::routing::{get, post};
use std::io;
use std::net::{Ipv4Addr, SocketAddr};
use std::sync::Arc;

use crate::input::Named;
use crate::job::shop::Shop;
use crate::lang;
use work::Desk;

/// Largest request, bytes. A job of a thousand sections takes a tenth of it.
const BODY_MAX_BYTES: usize = 2 * 1024 * 1024;

/// What the page starts with.
#[derive(Debug, Clone)]
pub struct Start {
    /// The job.
    pub job: Named,
    /// The machine file that the job names; none: there is none, or it could not be read.
    pub machine: Option<Named>,
    /// The shop whose values count where the job gives none.
    pub shop: Option<Arc<Shop>>,
    /// Whether the call gives the job. If not, the page begins with its start screen.
    pub given: bool,
}

/// The interface as a document of OpenAPI 3.1, JSON.
pub fn description() -> String {
    openapi::text()
}

/// Serves the page until the process ends. `port` 0 means any free port. `ready` is called with the address first.
///
/// # Errors
/// The port is taken, or the system gives no socket.
pub fn serve(start: Start, port: u16, ready: impl FnOnce(SocketAddr)) -> io::Result<()> {
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build()?;
    runtime.block_on(async {
        let listener = tokio::net::TcpListener::bind((Ipv4Addr::LOCALHOST, port)).await?;
        let address = listener.local_addr()?;
        ready(address);
        match door::open(listener, router(start, address.port())).await {}
    })
}

/// The service behind the socket. The Host header of requests must name `port`.
pub fn router(start: Start, port: u16) -> Router {
    let desk = Arc::new(Desk::new(start));
    Router::new()
        .route("/texts.js", get(assets::texts))
        .route("/start", get(handlers::start))
        .route("/fields", get(handlers::fields))
        .route("/openapi.json", get(handlers::openapi))
        .route("/gallery", get(start::gallery))
        .route("/choices", get(start::choices))
        .route("/new", post(start::fresh))
        .route("/draft", post(start::draft).layer(DefaultBodyLimit::max(start::DRAFT_MAX_BYTES)))
        .route("/first", post(handlers::first))
        .route("/plan", post(handlers::plan))
        .route("/sampled", post(handlers::sampled))
        .route("/changes", post(handlers::changes))
        .route("/edit", post(handlers::edit))
        .route("/apply", post(handlers::apply))
        .route("/at", post(handlers::at))
        .route("/prove", post(handlers::prove))
        .route("/export/{format}", post(export::export))
        .fallback(assets::asset)
        .method_not_allowed_fallback(assets::other_method)
        .layer(DefaultBodyLimit::max(BODY_MAX_BYTES))
        .layer(middleware::from_fn_with_state(guard::Guard::new(port), guard::guard))
        .layer(middleware::from_fn_with_state(lang::spoken(), reader::answered))
        .with_state(desk)
}
