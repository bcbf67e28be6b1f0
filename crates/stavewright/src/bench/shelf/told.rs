//! Why the store did not do what was asked, as an answer.

use axum::http::StatusCode;
use basket::message::{Message, Value};
use workshop::Fault;

use crate::bench::refusal::Refusal;
use crate::store::STORE;

/// A fault of the store as an answer.
pub(super) fn refused(fault: &Fault) -> Refusal {
    let status = match fault {
        Fault::Newer { .. } | Fault::NotAStore => StatusCode::CONFLICT,
        Fault::Damaged(_) | Fault::Unopened(_) | Fault::Other(_) => StatusCode::INTERNAL_SERVER_ERROR,
        Fault::ReadOnly => StatusCode::FORBIDDEN,
        Fault::Full => StatusCode::INSUFFICIENT_STORAGE,
        Fault::Busy => StatusCode::SERVICE_UNAVAILABLE,
        Fault::Unknown { .. } => StatusCode::NOT_FOUND,
        Fault::TooFew { .. } | Fault::Row { .. } | Fault::Refused(_) => StatusCode::UNPROCESSABLE_ENTITY,
    };
    Refusal::said(status, fault.message(), STORE)
}

/// Something that was typed and makes no sense.
pub(super) fn senseless(id: &'static str, typed: &str) -> Refusal {
    let message = Message::new(id).with("typed", Value::Name(typed.chars().take(60).collect()));
    Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, STORE)
}
