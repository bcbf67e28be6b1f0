//! Why a request is not done, as an answer.

use axum::Json;
use axum::extract::Request;
use axum::http::{StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use basket::message::Message;
use basket::pattern::Units;
use words::{Language, Words};

use super::api::{Fault, PatternText, Problem};

/// A status code and what went wrong.
#[derive(Clone, Debug)]
pub(crate) struct Refusal {
    status: StatusCode,
    fault: Box<Fault>,
    /// What it says, where it can be said in the reader's language.
    message: Option<Message>,
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
        Self { status, fault: Box::new(fault), message: None }
    }

    /// What is wrong and how to mend it as a message of `refusals.ftl`, whose attribute `help` says the latter.
    /// It is English until the reader's language is known.
    pub(crate) fn said(status: StatusCode, message: Message, place: impl Into<String>) -> Self {
        let unsaid = Self::new(status, "", place, "");
        Self { message: Some(message), ..unsaid }.told(Language::default())
    }

    /// The same in a language.
    pub(crate) fn told(mut self, language: Language) -> Self {
        if let Some(message) = &self.message {
            let words = Words::new(language, Units::default());
            self.fault.what = words.say(message);
            self.fault.how_to_mend = words.with(&format!("{}.help", message.id), &message.args);
        }
        self
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

    /// What a worker refused, which has told it in the reader's language.
    pub(crate) fn again(status: StatusCode, fault: Fault) -> Self {
        Self { status, fault: Box::new(fault), message: None }
    }

    /// Too much is asked at once.
    pub(crate) fn busy() -> Self {
        Self::said(StatusCode::SERVICE_UNAVAILABLE, Message::new("refused-busy"), "the server")
    }

    /// The answer to a request whose work ended in a panic.
    pub(crate) fn broken() -> Self {
        Self::said(StatusCode::INTERNAL_SERVER_ERROR, Message::new("refused-broken"), "the server")
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
        let mut response = (self.status, Json(&self.fault)).into_response();
        response.extensions_mut().insert(self);
        response
    }
}

/// Tells refusals in the language that the request asks for first.
pub(crate) async fn in_language(request: Request, next: Next) -> Response {
    let asked = request.headers().get(header::ACCEPT_LANGUAGE).and_then(|asked| asked.to_str().ok());
    let first = asked.and_then(|asked| asked.split([',', ';', '-']).next());
    let language = first.and_then(|tag| Language::of(tag.trim())).unwrap_or_default();
    let response = next.run(request).await;
    let refusal = response.extensions().get::<Refusal>().filter(|refusal| refusal.message.is_some()).cloned();
    match refusal {
        // Only what is said changes: the headers are those of the answer, also what the guard has added.
        Some(refusal) if language != Language::default() => {
            let (head, _) = response.into_parts();
            Response::from_parts(head, refusal.told(language).into_response().into_body())
        }
        _ => response,
    }
}
