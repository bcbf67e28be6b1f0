//! What is worked out from a pattern's text.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use axum::http::header;
use axum::response::{IntoResponse, Response};

use crate::bench::api::{
    Chart, ChartRequest, CompareRequest, Comparison, DrawingRequest, EditRequest, Edited, Fault, LookRequest,
    Looked, PictureRequest,
};
use crate::bench::body::Sent;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::{compare as comparing, draw, look as looking, text};

/// Everything that the page shows of a pattern but pictures.
#[utoipa::path(post, path = "/api/look", request_body = LookRequest, responses(
    (status = 200, body = Looked), (status = 422, body = Fault)))]
pub(super) async fn look(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<LookRequest>,
) -> Result<Json<Looked>, Refusal> {
    let own = Arc::clone(&bench);
    let LookRequest { source, language, units } = request;
    let work = move || looking::look(&source, language.as_deref(), units, own.shop());
    bench.gate.run(work).await.map(Json)
}

/// A changed pattern, and what it gives.
#[utoipa::path(post, path = "/api/edit", request_body = EditRequest, responses(
    (status = 200, body = Edited), (status = 422, body = Fault)))]
pub(super) async fn edit(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<EditRequest>,
) -> Result<Json<Edited>, Refusal> {
    let own = Arc::clone(&bench);
    let work = move || {
        let source = text::edit(&request.source, &request.edits)?;
        let look = looking::look(&source, request.language.as_deref(), request.units, own.shop())?;
        Ok(Edited { source, look })
    };
    bench.gate.run(work).await.map(Json)
}

/// The basket in the round at a stage of its making.
#[utoipa::path(post, path = "/api/picture", request_body = PictureRequest, responses(
    (status = 200, content_type = "model/gltf-binary"), (status = 422, body = Fault)))]
pub(super) async fn picture(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<PictureRequest>,
) -> Result<Response, Refusal> {
    let own = Arc::clone(&bench);
    let (media, file) = bench.gate.run(move || draw::picture(&request, own.shop())).await?;
    Ok(([(header::CONTENT_TYPE, media)], file).into_response())
}

/// A drawing.
#[utoipa::path(post, path = "/api/drawing", request_body = DrawingRequest, responses(
    (status = 200, body = String, content_type = "image/svg+xml"), (status = 422, body = Fault)))]
pub(super) async fn drawing(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<DrawingRequest>,
) -> Result<Response, Refusal> {
    let own = Arc::clone(&bench);
    let svg = bench.gate.run(move || draw::drawing(&request, own.shop())).await?;
    Ok(([(header::CONTENT_TYPE, "image/svg+xml")], svg).into_response())
}

/// The weaving, crossing by crossing.
#[utoipa::path(post, path = "/api/chart", request_body = ChartRequest, responses(
    (status = 200, body = Chart), (status = 422, body = Fault)))]
pub(super) async fn chart(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<ChartRequest>,
) -> Result<Json<Chart>, Refusal> {
    let own = Arc::clone(&bench);
    bench.gate.run(move || draw::chart(&request, own.shop())).await.map(Json)
}

/// In what two patterns differ.
#[utoipa::path(post, path = "/api/compare", request_body = CompareRequest, responses(
    (status = 200, body = Comparison), (status = 422, body = Fault)))]
pub(super) async fn compare(
    State(bench): State<Arc<Bench>>,
    Sent(request): Sent<CompareRequest>,
) -> Result<Json<Comparison>, Refusal> {
    let own = Arc::clone(&bench);
    bench.gate.run(move || comparing::compare(&request, own.shop())).await.map(Json)
}
