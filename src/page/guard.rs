//! The checks on every request: it comes from this page on this machine, there are not too many, and it does not take
//! for ever. The headers of the answer let the browser load and run only the page's own files.

use axum::body::{Body, to_bytes};
use axum::extract::{Request, State};
use axum::http::{HeaderMap, HeaderName, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use std::sync::Arc;
use std::time::Duration;
use tokio::sync::Semaphore;

use super::BODY_MAX_BYTES;
use super::wire::Problem;
use crate::lang;
use crate::say;

/// Requests worked on or waiting at once. A browser opens six connections.
const REQUESTS_MAX: usize = 32;
/// Longest time of a request after its body has arrived, s. The work itself has a shorter limit.
const REQUEST_S: u64 = 45;
/// Longest time until a body has arrived, s. A slow sender takes none of the places for requests.
const BODY_S: u64 = 10;

/// The page's own files only: no other origin, no inline script or style, no frame, no form.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; \
    connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/// Headers of every answer.
const HEADERS: [(HeaderName, HeaderValue); 6] = [
    (header::CONTENT_SECURITY_POLICY, HeaderValue::from_static(POLICY)),
    (header::X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff")),
    (header::REFERRER_POLICY, HeaderValue::from_static("no-referrer")),
    (header::CACHE_CONTROL, HeaderValue::from_static("no-store")),
    (HeaderName::from_static("cross-origin-opener-policy"), HeaderValue::from_static("same-origin")),
    (HeaderName::from_static("cross-origin-resource-policy"), HeaderValue::from_static("same-origin")),
];

/// The hosts that belong to this page, and the places for requests.
#[derive(Clone)]
pub struct Guard {
    hosts: Arc<[String; 2]>,
    places: Arc<Semaphore>,
}

impl Guard {
    /// The guard of the page on a port.
    pub fn new(port: u16) -> Guard {
        let hosts = Arc::new([format!("127.0.0.1:{port}"), format!("localhost:{port}")]);
        Guard { hosts, places: Arc::new(Semaphore::new(REQUESTS_MAX)) }
    }

    /// Why a request is refused. None: it is let in.
    fn refusal(&self, method: &Method, headers: &HeaderMap) -> Option<(StatusCode, &'static str)> {
        let text = |name: HeaderName| headers.get(name).map(|v| v.to_str().unwrap_or("?"));
        // Another page can make its own host name lead to this machine (DNS rebinding). Such a name is refused.
        if !text(header::HOST).is_some_and(|host| self.hosts.iter().any(|h| h == host)) {
            return Some((StatusCode::FORBIDDEN, lang::text("page-wrong-host")));
        }
        let ours = |origin: &str| self.hosts.iter().any(|h| origin.strip_prefix("http://") == Some(h));
        if text(header::ORIGIN).is_some_and(|origin| !ours(origin)) {
            return Some((StatusCode::FORBIDDEN, lang::text("page-wrong-origin")));
        }
        let site = text(HeaderName::from_static("sec-fetch-site"));
        if site.is_some_and(|site| !matches!(site, "same-origin" | "none")) {
            return Some((StatusCode::FORBIDDEN, lang::text("page-other-site")));
        }
        match *method {
            Method::GET | Method::HEAD => None,
            // A script of this page can send this type. A form of another page cannot.
            Method::POST => {
                let json = text(header::CONTENT_TYPE).is_some_and(|t| t.split(';').next() == Some("application/json"));
                (!json).then_some((StatusCode::UNSUPPORTED_MEDIA_TYPE, lang::text("page-not-json")))
            }
            _ => Some((StatusCode::METHOD_NOT_ALLOWED, lang::text("page-only-get-and-post"))),
        }
    }
}

/// Lets a request in, or answers it.
pub async fn guard(State(guard): State<Guard>, request: Request, next: Next) -> Response {
    let mut response = match guard.refusal(request.method(), request.headers()) {
        Some((status, what)) => Problem::new(what, lang::text("page-no-such-page-help")).with(status),
        None => match whole(request).await {
            Err(refused) => refused,
            Ok(request) => guard.answered(request, next).await,
        },
    };
    response.headers_mut().extend(HEADERS);
    response
}

fn too_long() -> Response {
    Problem::new(lang::text("page-slow-request"), lang::text("page-slow-request-help"))
        .with(StatusCode::REQUEST_TIMEOUT)
}

/// A request with its whole body.
async fn whole(request: Request) -> Result<Request, Response> {
    let (head, body) = request.into_parts();
    let body = tokio::time::timeout(Duration::from_secs(BODY_S), to_bytes(body, BODY_MAX_BYTES)).await;
    match body.map_err(|_| too_long())? {
        Ok(bytes) => Ok(Request::from_parts(head, Body::from(bytes))),
        // A body that broke off gets this answer too, but nobody reads it.
        Err(_) => {
            let what = say!("page-body-too-large", mib = BODY_MAX_BYTES / (1024 * 1024));
            Err(Problem::new(what, lang::text("page-body-too-large-help")).with(StatusCode::PAYLOAD_TOO_LARGE))
        }
    }
}

impl Guard {
    async fn answered(&self, request: Request, next: Next) -> Response {
        let Ok(_place) = self.places.try_acquire() else {
            return Problem::new(lang::text("page-too-many-requests"), lang::text("page-too-many-requests-help"))
                .with(StatusCode::SERVICE_UNAVAILABLE);
        };
        let answer = tokio::time::timeout(Duration::from_secs(REQUEST_S), next.run(request)).await;
        answer.unwrap_or_else(|_| too_long())
    }
}

impl Problem {
    /// The problem as an answer with a status.
    pub fn with(self, status: StatusCode) -> Response {
        (status, axum::Json(self)).into_response()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refused(method: Method, headers: &[(&str, &str)]) -> Option<u16> {
        let pairs = headers
            .iter()
            .filter_map(|(k, v)| Some((HeaderName::from_bytes(k.as_bytes()).ok()?, HeaderValue::from_str(v).ok()?)));
        Guard::new(8417).refusal(&method, &pairs.collect()).map(|(status, _)| status.as_u16())
    }

    #[test]
    fn only_this_page_is_let_in() {
        let host = ("host", "127.0.0.1:8417");
        let json = ("content-type", "application/json");
        assert_eq!(refused(Method::GET, &[host]), None);
        assert_eq!(refused(Method::GET, &[("host", "localhost:8417")]), None);
        assert_eq!(refused(Method::GET, &[]), Some(403));
        for other in ["evil.example", "evil.example:8417", "127.0.0.1", "127.0.0.1:80", "127.0.0.1:8417.evil.example"] {
            assert_eq!(refused(Method::GET, &[("host", other)]), Some(403), "{other}");
        }
        assert_eq!(refused(Method::POST, &[host, json]), None);
        assert_eq!(refused(Method::POST, &[host, json, ("origin", "http://127.0.0.1:8417")]), None);
        for other in ["http://evil.example", "null", "https://127.0.0.1:8417", "http://127.0.0.1:8418"] {
            assert_eq!(refused(Method::POST, &[host, json, ("origin", other)]), Some(403), "{other}");
        }
        assert_eq!(refused(Method::GET, &[host, ("sec-fetch-site", "cross-site")]), Some(403));
        assert_eq!(refused(Method::GET, &[host, ("sec-fetch-site", "same-origin")]), None);
        assert_eq!(refused(Method::POST, &[host]), Some(415));
        assert_eq!(refused(Method::POST, &[host, ("content-type", "text/plain")]), Some(415));
        assert_eq!(refused(Method::PUT, &[host, json]), Some(405));
    }
}
