//! The body of a request: JSON, small, and sent in good time.

use std::time::Duration;

use axum::body::{Body, to_bytes};
use axum::extract::{FromRequest, Request};
use axum::http::{StatusCode, header};
use basket::limits::PHOTO_BYTES;
use basket::message::{Message, Value};
use serde::de::DeserializeOwned;

use super::refusal::Refusal;

/// No body is larger, in bytes.
pub(crate) const LARGEST: usize = 1_000_000;
/// A body has to be there by then.
const PATIENCE: Duration = Duration::from_secs(10);

/// A body that is said to be JSON, as it was sent: a worker reads it.
pub(crate) struct Posted(pub(crate) Vec<u8>);

impl<S: Send + Sync> FromRequest<S> for Posted {
    type Rejection = Refusal;

    async fn from_request(request: Request, _: &S) -> Result<Self, Refusal> {
        let kind = header_text(&request, header::CONTENT_TYPE).split(';').next().unwrap_or_default().trim();
        if !kind.eq_ignore_ascii_case("application/json") {
            return Err(Refusal::new(
                StatusCode::UNSUPPORTED_MEDIA_TYPE,
                "the body is not said to be JSON",
                "the header Content-Type",
                "Send Content-Type: application/json.",
            ));
        }
        let length = header_text(&request, header::CONTENT_LENGTH).parse::<u64>().unwrap_or(0);
        if length > LARGEST as u64 {
            return Err(too_large());
        }
        read(request.into_body(), LARGEST, too_large).await.map(Self)
    }
}

/// A body read as JSON. It may hold only the fields that the request knows.
pub(crate) struct Sent<T>(pub(crate) T);

impl<T: DeserializeOwned, S: Send + Sync> FromRequest<S> for Sent<T> {
    type Rejection = Refusal;

    async fn from_request(request: Request, state: &S) -> Result<Self, Refusal> {
        let Posted(bytes) = Posted::from_request(request, state).await?;
        parse(&bytes).map(Self)
    }
}

/// A body that is said to be a JPEG photograph.
pub(crate) struct Photograph(pub(crate) Vec<u8>);

impl<S: Send + Sync> FromRequest<S> for Photograph {
    type Rejection = Refusal;

    async fn from_request(request: Request, _: &S) -> Result<Self, Refusal> {
        photograph(request, LARGEST).await.map(Self)
    }
}

/// A photograph of any size that one may have.
pub(crate) struct LargePhotograph(pub(crate) Vec<u8>);

impl<S: Send + Sync> FromRequest<S> for LargePhotograph {
    type Rejection = Refusal;

    async fn from_request(request: Request, _: &S) -> Result<Self, Refusal> {
        photograph(request, PHOTO_BYTES as usize).await.map(Self)
    }
}

async fn photograph(request: Request, largest: usize) -> Result<Vec<u8>, Refusal> {
    if header_text(&request, header::CONTENT_TYPE) != "image/jpeg" {
        return Err(Refusal::new(
            StatusCode::UNSUPPORTED_MEDIA_TYPE,
            "the body is not said to be a photograph",
            "the header Content-Type",
            "Send Content-Type: image/jpeg.",
        ));
    }
    let heavy = || {
        let megabytes = Value::Count(i64::try_from(largest / 1_000_000).unwrap_or(i64::MAX));
        let message = Message::new("photo-heavy").with("megabytes", megabytes);
        Refusal::said(StatusCode::PAYLOAD_TOO_LARGE, message, "the body")
    };
    read(request.into_body(), largest, heavy).await
}

fn header_text(request: &Request, name: header::HeaderName) -> &str {
    request.headers().get(name).and_then(|value| value.to_str().ok()).unwrap_or_default()
}

async fn read(body: Body, largest: usize, too_large: impl Fn() -> Refusal) -> Result<Vec<u8>, Refusal> {
    match tokio::time::timeout(PATIENCE, to_bytes(body, largest)).await {
        Ok(Ok(bytes)) => Ok(bytes.into()),
        Ok(Err(error)) if is_length(&error) => Err(too_large()),
        Ok(Err(_)) => Err(Refusal::new(
            StatusCode::BAD_REQUEST,
            "the body broke off",
            "the body",
            "Send the request again.",
        )),
        Err(_) => Err(Refusal::new(
            StatusCode::REQUEST_TIMEOUT,
            "the body did not come in time",
            "the body",
            "Send the request again.",
        )),
    }
}

fn is_length(error: &axum::Error) -> bool {
    let source = std::error::Error::source(error);
    source.is_some_and(|source| source.to_string().contains("length limit"))
}

fn too_large() -> Refusal {
    Refusal::new(
        StatusCode::PAYLOAD_TOO_LARGE,
        "the body is larger than 1 MB, far too large for a pattern",
        "the body",
        "A pattern is a page of text; is this the right file?",
    )
}

/// Reads a body.
pub(crate) fn parse<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, Refusal> {
    serde_json::from_slice(bytes).map_err(|error| {
        let place = format!("the body, line {}, column {}", error.line(), error.column());
        if error.is_data() {
            Refusal::senseless(error.to_string(), place, "GET /api/openapi.json says which fields there are.")
        } else {
            let what = format!("the body is not JSON: {error}");
            Refusal::new(StatusCode::BAD_REQUEST, what, place, "Send a JSON object.")
        }
    })
}
