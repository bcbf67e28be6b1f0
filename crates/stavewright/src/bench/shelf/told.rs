//! Why the store did not do what was asked, in the reader's language.

use axum::http::StatusCode;
use basket::message::Value;
use words::Words;
use workshop::Fault;

use crate::bench::refusal::Refusal;

/// The file of the store, in the folder of the patterns.
pub(super) const STORE: &str = "workshop.db";

/// A fault of the store as an answer.
pub(super) fn refused(fault: &Fault, words: &Words) -> Refusal {
    let name = |text: &str| Value::Name(text.to_owned());
    let count = |count: i64| Value::Count(count);
    let (status, id, values) = match fault {
        Fault::Newer { .. } => (StatusCode::CONFLICT, "newer", vec![]),
        Fault::NotAStore => (StatusCode::CONFLICT, "no-store", vec![]),
        Fault::Damaged(_) => (StatusCode::INTERNAL_SERVER_ERROR, "damaged", vec![]),
        Fault::ReadOnly => (StatusCode::FORBIDDEN, "read-only", vec![]),
        Fault::Full => (StatusCode::INSUFFICIENT_STORAGE, "full", vec![]),
        Fault::Busy => (StatusCode::SERVICE_UNAVAILABLE, "busy", vec![]),
        Fault::Unopened(said) => (StatusCode::INTERNAL_SERVER_ERROR, "unopened", vec![("said", name(said))]),
        Fault::Unknown { name: own, .. } => (StatusCode::NOT_FOUND, "unknown", vec![("name", name(own))]),
        Fault::TooFew { name: own, there, wanted } => {
            let values = vec![("name", name(own)), ("there", count(*there)), ("wanted", count(*wanted))];
            (StatusCode::UNPROCESSABLE_ENTITY, "too-few", values)
        }
        Fault::Row(row) => {
            let line = count(i64::try_from(row.line).unwrap_or(i64::MAX));
            (StatusCode::UNPROCESSABLE_ENTITY, "row", vec![("line", line), ("said", name(&row.what))])
        }
        Fault::Refused(said) => (StatusCode::UNPROCESSABLE_ENTITY, "refused", vec![("said", name(said))]),
        Fault::Other(said) => (StatusCode::INTERNAL_SERVER_ERROR, "other", vec![("said", name(said))]),
    };
    let (what, help) = (format!("workshop-fault-{id}"), format!("workshop-fault-{id}.help"));
    Refusal::new(status, words.with(&what, &values), STORE, words.with(&help, &values))
}

/// Something that was typed and makes no sense.
pub(super) fn senseless(id: &str, typed: &str, words: &Words) -> Refusal {
    let values = [("typed", Value::Name(typed.chars().take(60).collect()))];
    Refusal::senseless(words.with(id, &values), STORE, words.with(&format!("{id}.help"), &values))
}
