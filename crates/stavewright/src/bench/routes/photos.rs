//! The photographs beside the patterns.

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};

use crate::bench::api::Fault;
use crate::bench::body::Photograph;
use crate::bench::guest::Guest;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;

/// The photograph of a finished basket, if one is kept beside its pattern.
#[utoipa::path(get, path = "/api/patterns/{name}/photo", params(("name" = String, Path)), responses(
    (status = 200, content_type = "image/jpeg"), (status = 404, body = Fault)))]
pub(super) async fn show(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
) -> Result<Response, Refusal> {
    let own = Arc::clone(&bench);
    let work = move || {
        own.folder.offered(&name, own.access.may_write, &own.catalogue)?;
        own.folder.photo(&name)
    };
    let bytes = bench.files.run(guest.0, work).await?;
    let about = [(header::CONTENT_TYPE, "image/jpeg"), (header::CACHE_CONTROL, "no-store")];
    Ok((about, bytes).into_response())
}

/// Keeps a photograph beside a pattern, in the place of an earlier one.
#[utoipa::path(put, path = "/api/patterns/{name}/photo", params(("name" = String, Path)),
    request_body(content_type = "image/jpeg"), responses((status = 204), (status = 403, body = Fault),
    (status = 404, body = Fault), (status = 422, body = Fault)))]
pub(super) async fn keep(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    Photograph(bytes): Photograph,
) -> Result<StatusCode, Refusal> {
    bench.may_write()?;
    let own = Arc::clone(&bench);
    bench.files.run(guest.0, move || own.folder.keep_photo(&name, &bytes)).await?;
    Ok(StatusCode::NO_CONTENT)
}

/// Takes the photograph of a pattern away.
#[utoipa::path(delete, path = "/api/patterns/{name}/photo", params(("name" = String, Path)), responses(
    (status = 204), (status = 403, body = Fault), (status = 404, body = Fault)))]
pub(super) async fn drop(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
) -> Result<StatusCode, Refusal> {
    bench.may_write()?;
    let own = Arc::clone(&bench);
    bench.files.run(guest.0, move || own.folder.drop_photo(&name)).await?;
    Ok(StatusCode::NO_CONTENT)
}
