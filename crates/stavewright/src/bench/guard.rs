//! Who may ask: only the page itself, from this machine or with the studio's token.

use std::net::IpAddr;
use std::sync::Arc;

use axum::extract::{Request, State};
use axum::http::uri::Authority;
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};

use super::refusal::Refusal;
use super::secret::is_same;
use super::shared::{Access, Bench};

/// The cookie that holds the studio's token.
const COOKIE: &str = "stavewright-token";
/// What the page may load and do: what this server sends, and nothing else.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; \
     font-src 'self'; connect-src 'self'; worker-src 'self'; frame-src 'self' blob:; manifest-src 'self'; \
     base-uri 'none'; form-action 'none'; frame-ancestors 'self'";
/// Headers of every answer.
const HEADERS: [(HeaderName, &str); 4] = [
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (header::REFERRER_POLICY, "no-referrer"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
    (HeaderName::from_static("permissions-policy"), "camera=(), microphone=(), geolocation=()"),
];

/// Lets a request pass or refuses it; every answer gets the headers that keep the page to itself.
pub(crate) async fn watch(State(bench): State<Arc<Bench>>, request: Request, next: Next) -> Response {
    let api = request.uri().path().starts_with("/api/");
    let mut response = match admit(&bench.access, &request) {
        Ok(None) => next.run(request).await,
        Ok(Some(response)) => response,
        Err(refusal) => refusal.into_response(),
    };
    let headers = response.headers_mut();
    for (name, value) in HEADERS {
        headers.insert(name, HeaderValue::from_static(value));
    }
    // Browsers heed this on the machine itself; in a network without encryption they complain of it.
    if bench.access.token.is_none() {
        let opener = HeaderName::from_static("cross-origin-opener-policy");
        headers.insert(opener, HeaderValue::from_static("same-origin"));
    }
    let is_pdf = headers.get(header::CONTENT_TYPE).is_some_and(|kind| kind == "application/pdf");
    // Browsers show PDF files in a viewer of their own, which the policy would lock out.
    if !is_pdf {
        headers.insert(header::CONTENT_SECURITY_POLICY, HeaderValue::from_static(POLICY));
    }
    let cache = if api { "no-store" } else { "no-cache" };
    headers.entry(header::CACHE_CONTROL).or_insert(HeaderValue::from_static(cache));
    response
}

/// Nothing if the request may pass, or the answer that lets its sender in.
fn admit(access: &Access, request: &Request) -> Result<Option<Response>, Refusal> {
    let host = host(access, request)?;
    from_the_page(request, &host)?;
    let Some(token) = &access.token else { return Ok(None) };
    if cookie(request).is_some_and(|sent| is_same(sent, token)) {
        return Ok(None);
    }
    let asked =
        request.uri().query().unwrap_or_default().split('&').find_map(|pair| pair.strip_prefix("token="));
    if request.method() == Method::GET && asked.is_some_and(|sent| is_same(sent, token)) {
        let cookie = format!("{COOKIE}={token}; HttpOnly; SameSite=Lax; Path=/");
        return Ok(Some(([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response()));
    }
    Err(Refusal::new(
        StatusCode::UNAUTHORIZED,
        "this bench is open only with its token",
        "the token",
        "Open the whole address that stands on the terminal, or scan the square there.",
    ))
}

/// The host that was asked for. A name of somebody else's, led here by their name server, is refused.
fn host(access: &Access, request: &Request) -> Result<String, Refusal> {
    let named = header(request, header::HOST).or(request.uri().authority().map(Authority::as_str));
    let fits = |host: &&str| -> bool {
        let Ok(authority) = host.parse::<Authority>() else { return false };
        let name = authority.host().trim_matches(['[', ']']);
        let port = authority.port_u16().unwrap_or(80);
        let is_ours = match name.parse::<IpAddr>() {
            Ok(address) => address.is_loopback() || access.token.is_some(),
            Err(_) => name.eq_ignore_ascii_case("localhost"),
        };
        is_ours && port == access.address.port() && !host.contains('@')
    };
    named.filter(fits).map(str::to_owned).ok_or_else(|| {
        Refusal::new(
            StatusCode::FORBIDDEN,
            "the bench does not answer under this name",
            "the header Host",
            format!("Open http://127.0.0.1:{}/.", access.address.port()),
        )
    })
}

/// Whether a request that may change something comes from the page itself, and not from another site.
fn from_the_page(request: &Request, host: &str) -> Result<(), Refusal> {
    let own = format!("http://{host}");
    let origin = header(request, header::ORIGIN);
    let site = header(request, HeaderName::from_static("sec-fetch-site"));
    let reads = matches!(*request.method(), Method::GET | Method::HEAD);
    let fits = match origin {
        Some(origin) => origin.eq_ignore_ascii_case(&own),
        None => reads,
    };
    // Another site may link to the page; it may load nothing else of it.
    let same_site = match site {
        None | Some("same-origin" | "none") => true,
        Some(_) => reads && request.uri().path() == "/",
    };
    if fits && same_site {
        return Ok(());
    }
    Err(Refusal::new(
        StatusCode::FORBIDDEN,
        "this request does not come from the bench's own page",
        "the header Origin",
        format!("Work in the page at {own}/."),
    ))
}

fn header(request: &Request, name: HeaderName) -> Option<&str> {
    request.headers().get(name).and_then(|value| value.to_str().ok())
}

fn cookie(request: &Request) -> Option<&str> {
    let cookies = header(request, header::COOKIE)?;
    cookies.split(';').find_map(|cookie| cookie.trim().strip_prefix(COOKIE)?.strip_prefix('='))
}
