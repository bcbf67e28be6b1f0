//! The pattern files of the folder, and patterns to start from.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Path, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Response};
use basket::pattern::Units;

use crate::bench::api::{Fault, NameRequest, PatternName, PatternText, SaveRequest, Saved, Scenario};
use crate::bench::body::Sent;
use crate::bench::guest::Guest;
use crate::bench::kind::kind_of;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::{compute, log, scenarios};

/// The pattern files of the folder.
#[utoipa::path(get, path = "/api/patterns", responses((status = 200, body = [PatternName])))]
pub(super) async fn list(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
) -> Result<Json<Vec<PatternName>>, Refusal> {
    let own = Arc::clone(&bench);
    let work = move || {
        let mut all = own.folder.list(&own.catalogue)?;
        all.retain(|pattern| own.access.may_write || pattern.reads);
        Ok(all)
    };
    bench.files.run(guest.0, work).await.map(Json)
}

/// A pattern file with its text. With `If-None-Match` and its hash: 304 as long as it is unchanged.
#[utoipa::path(get, path = "/api/patterns/{name}", params(("name" = String, Path)), responses(
    (status = 200, body = PatternText), (status = 304), (status = 404, body = Fault)))]
pub(super) async fn read(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    headers: HeaderMap,
) -> Result<Response, Refusal> {
    let own = Arc::clone(&bench);
    let work = move || own.folder.offered(&name, own.access.may_write, &own.catalogue);
    let text = bench.files.run(guest.0, work).await?;
    let tag = format!("\"{}\"", text.hash);
    let known = headers.get(header::IF_NONE_MATCH).is_some_and(|known| known.as_bytes() == tag.as_bytes());
    let tag = [(header::ETAG, tag)];
    Ok(if known {
        (StatusCode::NOT_MODIFIED, tag).into_response()
    } else {
        (tag, Json(text)).into_response()
    })
}

/// Saves a pattern, whole or not at all, unless the file was changed since it was opened.
#[utoipa::path(put, path = "/api/patterns/{name}", params(("name" = String, Path)), request_body = SaveRequest,
    responses((status = 200, body = Saved), (status = 403, body = Fault), (status = 409, body = Fault),
    (status = 422, body = Fault)))]
pub(super) async fn save(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    Sent(request): Sent<SaveRequest>,
) -> Result<Json<Saved>, Refusal> {
    bench.may_write()?;
    let own = Arc::clone(&bench);
    let work = move || {
        let before = own.folder.read(&name).ok().map(|before| before.source);
        let saved = own.folder.save(&name, &request, &own.catalogue)?;
        if kind_of(&request.source).is_some() {
            return Ok(saved);
        }
        let texts: Vec<&str> = before.iter().map(String::as_str).chain([request.source.as_str()]).collect();
        let unkept = log::keep_version(&own.folder, &name, &texts);
        let words = compute::words(request.language.as_deref(), None, Units::default())?;
        Ok(Saved { history: unkept.map(|unkept| words.say(&unkept)).unwrap_or_default(), ..saved })
    };
    bench.files.run(guest.0, work).await.map(Json)
}

/// Gives a pattern file another name.
#[utoipa::path(post, path = "/api/patterns/{name}/rename", params(("name" = String, Path)),
    request_body = NameRequest, responses((status = 200, body = Saved), (status = 403, body = Fault),
    (status = 404, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn rename(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    Sent(request): Sent<NameRequest>,
) -> Result<Json<Saved>, Refusal> {
    bench.may_write()?;
    let own = Arc::clone(&bench);
    let work = move || {
        let saved = own.folder.rename(&name, &request)?;
        log::rename(&own.folder, &name, &saved.name);
        Ok(saved)
    };
    bench.files.run(guest.0, work).await.map(Json)
}

/// Patterns to start from.
#[utoipa::path(get, path = "/api/scenarios", responses((status = 200, body = [Scenario])))]
pub(super) async fn scenarios() -> Json<Vec<Scenario>> {
    Json(scenarios::all())
}
