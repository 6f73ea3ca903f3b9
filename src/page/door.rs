//! Accepts connections. Their number is limited, and none may take for ever to send its request or to take its answer.

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

/// Connections open at once; further ones wait until they are accepted. With the largest bodies this bounds the memory
/// for requests that wait.
const CONNECTIONS_MAX: usize = 256;
/// Longest time until a request has sent its headers, s. An idle connection is kept as long.
const HEADERS_S: u64 = 20;
/// Longest time in which a reader may take nothing of its answer, s.
const READS_S: u64 = 5;
/// Bytes read ahead of a connection.
const AHEAD_BYTES: usize = 64 * 1024;
/// Wait before the next try if the system gives no socket, ms.
const BREATH_MS: u64 = 50;

/// Accepts and serves connections for ever.
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
            // An error ends this connection only, and there is nobody to report it to.
            let _ =
                http.serve_connection(TokioIo::new(Patient::new(stream, Duration::from_secs(READS_S))), service).await;
            drop(place);
        });
    }
}
