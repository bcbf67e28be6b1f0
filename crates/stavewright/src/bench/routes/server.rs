//! The server itself, and what does not depend on a pattern.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use basket::pattern::Units;
use serde::Deserialize;
use utoipa::IntoParams;
use words::{Language, Words, page_texts};

use crate::bench::api::{Fault, Health, LanguageName, Stock, UnitsWord};
use crate::bench::compute;
use crate::bench::guest::Guest;
use crate::bench::look;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;

/// In which language, and which units stand first.
#[derive(Debug, Default, Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
pub(super) struct Reader {
    /// A language's tag, such as `en`.
    pub(super) language: Option<String>,
    /// `in` or `mm`.
    pub(super) units: Option<UnitsWord>,
}

/// That the server lives, and what it may do.
#[utoipa::path(get, path = "/api/health", responses((status = 200, body = Health)))]
pub(super) async fn health(State(bench): State<Arc<Bench>>) -> Json<Health> {
    let language = |language: &Language| LanguageName {
        tag: language.tag().to_owned(),
        name: Words::new(*language, Units::Inches).term("language-name"),
    };
    Json(Health {
        version: env!("CARGO_PKG_VERSION").to_owned(),
        started: bench.started.clone(),
        folder: bench.folder.mark(),
        may_write: bench.access.may_write,
        studio: bench.access.door.is_some(),
        open: bench.open.clone(),
        languages: Language::ALL.iter().map(language).collect(),
    })
}

/// The page's texts, as a Fluent file.
#[utoipa::path(get, path = "/api/messages", params(Reader), responses(
    (status = 200, body = String, content_type = "text/plain"), (status = 422, body = Fault)))]
pub(super) async fn messages(Query(reader): Query<Reader>) -> Result<Response, Refusal> {
    let language = compute::language(reader.language.as_deref())?;
    Ok(([(header::CONTENT_TYPE, "text/plain; charset=utf-8")], page_texts(language)).into_response())
}

/// What a pattern may name: materials, woods, colours.
#[utoipa::path(get, path = "/api/stock", params(Reader), responses(
    (status = 200, body = Stock), (status = 422, body = Fault)))]
pub(super) async fn stock(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(reader): Query<Reader>,
) -> Result<Json<Stock>, Refusal> {
    let own = Arc::clone(&bench);
    let work = move || {
        let words = compute::words(reader.language.as_deref(), reader.units, Units::default())?;
        Ok(look::stock(&own.catalogue, &own.measures.read(&own.catalogue), &words))
    };
    bench.files.run(guest.0, work).await.map(Json)
}
