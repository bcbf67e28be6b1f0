//! Who may ask: only the page itself, from this machine or with the studio's token.

use std::net::IpAddr;
use std::sync::Arc;
use std::time::Duration;

use axum::extract::{Request, State};
use axum::http::uri::Authority;
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use basket::message::{Message, Value};

use super::door::{Knocked, STAY};
use super::guest::Guest;
use super::refusal::Refusal;
use super::shared::{Access, Bench};

/// The cookie by which the studio knows a browser that was let in.
const COOKIE: &str = "stavewright-studio";
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
    if bench.access.door.is_none() {
        let opener = HeaderName::from_static("cross-origin-opener-policy");
        headers.insert(opener, HeaderValue::from_static("same-origin"));
    }
    let is_pdf = headers.get(header::CONTENT_TYPE).is_some_and(|kind| kind == "application/pdf");
    // Browsers show PDF files in a viewer of their own, which the policy would lock out.
    if !is_pdf {
        headers.entry(header::CONTENT_SECURITY_POLICY).or_insert(HeaderValue::from_static(POLICY));
    }
    let cache = if api { "no-store" } else { "no-cache" };
    headers.entry(header::CACHE_CONTROL).or_insert(HeaderValue::from_static(cache));
    response
}

/// Nothing if the request may pass, or the answer that lets its sender in.
fn admit(access: &Access, request: &Request) -> Result<Option<Response>, Refusal> {
    let host = host(access, request)?;
    from_the_page(request, &host)?;
    let Some(door) = &access.door else { return Ok(None) };
    if cookie(request).is_some_and(|stay| door.knows(stay)) {
        return Ok(None);
    }
    let query = request.uri().query().unwrap_or_default();
    let token = query.split('&').find_map(|pair| pair.strip_prefix("token="));
    let Some(token) = token.filter(|_| request.method() == Method::GET) else { return Err(outside()) };
    match door.knock(Guest::of(request.extensions()).0, token)? {
        Knocked::In(stay) => {
            let cookie =
                format!("{COOKIE}={stay}; Max-Age={}; HttpOnly; SameSite=Lax; Path=/", STAY.as_secs());
            Ok(Some(([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response()))
        }
        Knocked::Wrong => Err(outside()),
        Knocked::Wait(wait) => Ok(Some(slow(wait))),
    }
}

fn outside() -> Refusal {
    Refusal::said(StatusCode::UNAUTHORIZED, Message::new("refused-no-token"), "the token")
}

fn slow(wait: Duration) -> Response {
    let seconds = wait.as_secs() + 1;
    let refusal = Refusal::said(
        StatusCode::TOO_MANY_REQUESTS,
        Message::new("refused-wait").with("seconds", Value::Name(seconds.to_string())),
        "the token",
    );
    ([(header::RETRY_AFTER, seconds.to_string())], refusal).into_response()
}

/// The host that was asked for. A name of somebody else's, led here by their name server, is refused.
fn host(access: &Access, request: &Request) -> Result<String, Refusal> {
    let authority = request.uri().authority().map(Authority::as_str);
    let mut said = request.headers().get_all(header::HOST).iter();
    let (first, second) = (said.next(), said.next());
    let one = first.and_then(|host| host.to_str().ok());
    // Of two names, whoever stands between might believe the other.
    if second.is_some() || matches!((one, authority), (Some(one), Some(other)) if one != other) {
        return Err(Refusal::new(
            StatusCode::BAD_REQUEST,
            "the request names two hosts",
            "the header Host",
            "Send it once.",
        ));
    }
    let named = one.or(authority);
    let fits = |host: &&str| -> bool {
        let Ok(authority) = host.parse::<Authority>() else { return false };
        let name = authority.host().trim_matches(['[', ']']);
        let port = authority.port_u16().unwrap_or(80);
        let is_ours = match name.parse::<IpAddr>() {
            Ok(address) => address.is_loopback() || access.door.is_some(),
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
    Err(Refusal::said(
        StatusCode::FORBIDDEN,
        Message::new("refused-elsewhere").with("own", Value::Name(own)),
        "the header Origin",
    ))
}

fn header(request: &Request, name: HeaderName) -> Option<&str> {
    request.headers().get(name).and_then(|value| value.to_str().ok())
}

fn cookie(request: &Request) -> Option<&str> {
    let cookies = header(request, header::COOKIE)?;
    cookies.split(';').find_map(|cookie| cookie.trim().strip_prefix(COOKIE)?.strip_prefix('='))
}
