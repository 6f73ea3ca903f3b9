//! The door: connections are let in up to a number, and none may take for ever to say what it wants or to take its answer.

use axum::Router;
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpListener;
use tokio::sync::Semaphore;

use super::patience::Patient;

/// Connections open at once; further ones wait outside. With the largest bodies this bounds the memory that waiting takes.
const CONNECTIONS_MAX: usize = 256;
/// Longest time until a request has told its headers, s; so long, too, an idle connection is kept.
const HEADERS_S: u64 = 20;
/// Longest time in which a connection may take nothing of an answer that waits for it, s.
const READS_S: u64 = 5;
/// Bytes read ahead of a connection.
const AHEAD_BYTES: usize = 64 * 1024;
/// Wait where the system gives no more sockets, ms.
const BREATH_MS: u64 = 50;

/// Serves all who come.
pub async fn open(listener: TcpListener, router: Router) -> Infallible {
    let places = Arc::new(Semaphore::new(CONNECTIONS_MAX));
    let wait = Duration::from_millis(BREATH_MS);
    loop {
        let Ok(place) = Arc::clone(&places).acquire_owned().await else {
            tokio::time::sleep(wait).await;
            continue;
        };
        let Ok((stream, _)) = listener.accept().await else {
            tokio::time::sleep(wait).await;
            continue;
        };
        let service = TowerToHyperService::new(router.clone());
        tokio::spawn(async move {
            let mut http = http1::Builder::new();
            http.timer(TokioTimer::new()).header_read_timeout(Duration::from_secs(HEADERS_S)).max_buf_size(AHEAD_BYTES);
            // Whatever ends a connection ends only that one; there is nobody to tell.
            let _ =
                http.serve_connection(TokioIo::new(Patient::new(stream, Duration::from_secs(READS_S))), service).await;
            drop(place);
        });
    }
}
