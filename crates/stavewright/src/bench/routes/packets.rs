//! Packets to take away.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Path, Query, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use basket::pattern::{Pattern, Units};
use serde::Deserialize;
use sheets::{Options, Paper, Photos};
use utoipa::IntoParams;

use crate::bench::api::{Fault, Packet, PacketRequest, PaperWord};
use crate::bench::body::Sent;
use crate::bench::compute::{draft, words};
use crate::bench::jobs::media;
use crate::bench::look::problems;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::failure::Failure;
use crate::photos;
use crate::source::{Origin, Text};

/// Begins a packet.
#[utoipa::path(post, path = "/api/packets", request_body = PacketRequest, responses(
    (status = 202, body = Packet), (status = 422, body = Fault), (status = 429, body = Fault)))]
pub(super) async fn begin(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<PacketRequest>,
) -> Result<(StatusCode, Json<Packet>), Refusal> {
    let own = Arc::clone(&bench);
    let work = move || {
        let draft = draft(&request.source, own.shop()).map_err(Refusal::misread)?;
        crate::bench::draw::in_bounds(&draft.basket)?;
        let words = words(request.language.as_deref(), request.units, draft.pattern.units)?;
        let paper = match (request.paper, words.units()) {
            (Some(PaperWord::Letter), _) | (None, Units::Inches) => Paper::Letter,
            (Some(PaperWord::A4), _) | (None, Units::Millimetres) => Paper::A4,
        };
        let photos = photographs(&request.source, &draft.pattern, own.folder.path())?;
        own.jobs.begin(draft, words, Options { paper, photos, ..Options::default() })
    };
    bench.gate.run(work).await.map(|packet| (StatusCode::ACCEPTED, Json(packet)))
}

/// The photographs that a pattern's notes name, from the folder and from nowhere else.
fn photographs(source: &str, pattern: &Pattern, folder: &std::path::Path) -> Result<Photos, Refusal> {
    let origin = Origin::File(folder.join("pattern.toml"));
    let text = Text { origin, content: source.to_owned() };
    photos::load(pattern, &text).map_err(|failure| match failure {
        Failure::Misread { problems: found, .. } => Refusal::misread(problems::of(source, &found)),
        other => {
            Refusal::senseless(other.parts().0, basket::pattern::keys::note::PHOTO.path, other.parts().1)
        }
    })
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
    let headers = [
        (header::CONTENT_TYPE, media(&name).to_owned()),
        (header::CONTENT_DISPOSITION, format!("{shown}; filename=\"{name}\"")),
    ];
    Ok((headers, bytes.to_vec()).into_response())
}
