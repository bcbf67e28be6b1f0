//! Packets to take away.

use std::sync::Arc;

use axum::Json;
use axum::body::Body;
use axum::extract::{Path, Query, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use utoipa::IntoParams;

use crate::bench::api::{Fault, Packet, PacketRequest};
use crate::bench::body::Posted;
use crate::bench::guest::Guest;
use crate::bench::jobs::media;
use crate::bench::own_page;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::workers::Task;

/// Begins a packet.
#[utoipa::path(post, path = "/api/packets", request_body = PacketRequest, responses(
    (status = 202, body = Packet), (status = 422, body = Fault), (status = 429, body = Fault)))]
pub(super) async fn begin(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Response, Refusal> {
    let checked = bench.work(guest, Task::CheckPacket, request.clone()).await?;
    if !checked.status.is_success() {
        return Ok(checked.into_response());
    }
    let packet = bench.jobs.begin(guest, bench.order(Task::Packet).await, request)?;
    Ok((StatusCode::ACCEPTED, Json(packet)).into_response())
}

/// How far a packet is.
#[utoipa::path(get, path = "/api/packets/{id}", params(("id" = String, Path)), responses(
    (status = 200, body = Packet), (status = 404, body = Fault)))]
pub(super) async fn ask(
    State(bench): State<Arc<Bench>>,
    Path(id): Path<String>,
) -> Result<Json<Packet>, Refusal> {
    bench.jobs.ask(&id).map(Json)
}

/// Stops a packet, or throws a finished one away.
#[utoipa::path(delete, path = "/api/packets/{id}", params(("id" = String, Path)), responses(
    (status = 200, body = Packet), (status = 404, body = Fault)))]
pub(super) async fn stop(
    State(bench): State<Arc<Bench>>,
    Path(id): Path<String>,
) -> Result<Json<Packet>, Refusal> {
    bench.jobs.stop(&id).map(Json)
}

/// How a file is wanted.
#[derive(Debug, Default, Deserialize, IntoParams)]
pub(super) struct Wanted {
    /// There to have it saved rather than shown.
    save: Option<String>,
}

/// A file of a finished packet; `packet.zip` holds all others.
#[utoipa::path(get, path = "/api/packets/{id}/{file}", params(("id" = String, Path), ("file" = String, Path), Wanted),
    responses((status = 200, content_type = "application/octet-stream"), (status = 404, body = Fault)))]
pub(super) async fn file(
    State(bench): State<Arc<Bench>>,
    Path((id, name)): Path<(String, String)>,
    Query(wanted): Query<Wanted>,
) -> Result<Response, Refusal> {
    let bytes = bench.jobs.file(&id, &name)?;
    let shown =
        if wanted.save.is_some() || media(&name) == "application/zip" { "attachment" } else { "inline" };
    let policy = own_page::policy(&name, &bytes).map(|policy| [(header::CONTENT_SECURITY_POLICY, policy)]);
    let headers = [
        (header::CONTENT_TYPE, media(&name).to_owned()),
        (header::CONTENT_DISPOSITION, format!("{shown}; filename=\"{name}\"")),
    ];
    Ok((headers, policy, Body::from(bytes)).into_response())
}
