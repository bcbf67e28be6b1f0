//! What was worked out, on its way to whoever asked for it.

use axum::body::Body;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use bytes::Bytes;

use super::gate::Turn;

/// An answer that a worker gave.
pub(crate) struct Answer {
    /// Its status code.
    pub(crate) status: StatusCode,
    /// Its media type.
    pub(crate) media: String,
    /// What it holds.
    pub(crate) body: Bytes,
}

impl Answer {
    /// The same, holding the turn that it was worked out in until all of it was sent or given up.
    pub(crate) fn holding(self, turn: Turn) -> Self {
        let held = Held { body: self.body, _turn: turn };
        Self { body: Bytes::from_owner(held), ..self }
    }
}

impl IntoResponse for Answer {
    fn into_response(self) -> Response {
        (self.status, [(header::CONTENT_TYPE, self.media)], Body::from(self.body)).into_response()
    }
}

struct Held {
    body: Bytes,
    _turn: Turn,
}

impl AsRef<[u8]> for Held {
    fn as_ref(&self) -> &[u8] {
        &self.body
    }
}
