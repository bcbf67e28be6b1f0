//! Why a request is not done, as an answer.

use axum::Json;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

use super::api::{Fault, PatternText, Problem};

/// A status code and what went wrong.
#[derive(Clone, Debug)]
pub(crate) struct Refusal {
    status: StatusCode,
    fault: Box<Fault>,
}

impl Refusal {
    /// What is wrong, where, and how to mend it.
    pub(crate) fn new(
        status: StatusCode,
        what: impl Into<String>,
        place: impl Into<String>,
        how_to_mend: impl Into<String>,
    ) -> Self {
        let fault = Fault {
            what: what.into(),
            place: place.into(),
            how_to_mend: how_to_mend.into(),
            problems: Vec::new(),
            present: None,
        };
        Self { status, fault: Box::new(fault) }
    }

    /// A request that is well formed and makes no sense.
    pub(crate) fn senseless(
        what: impl Into<String>,
        place: impl Into<String>,
        how_to_mend: impl Into<String>,
    ) -> Self {
        Self::new(StatusCode::UNPROCESSABLE_ENTITY, what, place, how_to_mend)
    }

    /// A pattern that cannot be read.
    pub(crate) fn misread(problems: Vec<Problem>) -> Self {
        let first = problems.first();
        let what =
            first.map_or_else(|| "the pattern cannot be read".to_owned(), |first| first.message.clone());
        let place =
            first.map_or_else(String::new, |first| format!("line {}, column {}", first.line, first.column));
        let help = first.and_then(|first| first.help.clone()).unwrap_or_default();
        let mut refusal = Self::senseless(what, place, help);
        refusal.fault.problems = problems;
        refusal
    }

    /// The same, with the file as it stands now.
    pub(crate) fn with_present(mut self, present: Option<PatternText>) -> Self {
        self.fault.present = present;
        self
    }

    /// Too much is asked at once.
    pub(crate) fn busy() -> Self {
        Self::new(
            StatusCode::SERVICE_UNAVAILABLE,
            "too much is being asked at once",
            "the server",
            "Ask again in a moment.",
        )
    }

    /// The answer to a request whose work ended in a panic.
    pub(crate) fn broken() -> Self {
        Self::new(
            StatusCode::INTERNAL_SERVER_ERROR,
            "this could not be worked out; the fault is Stavewright's",
            "the server",
            "The server goes on and nothing was lost. Undo the last change, and report the pattern that did it.",
        )
    }

    /// Its status code.
    pub(crate) fn status(&self) -> StatusCode {
        self.status
    }

    /// What went wrong.
    pub(crate) fn fault(&self) -> &Fault {
        &self.fault
    }
}

impl IntoResponse for Refusal {
    fn into_response(self) -> Response {
        (self.status, Json(*self.fault)).into_response()
    }
}
