//! What is worked out from a pattern's text.

use std::sync::Arc;

use axum::extract::State;

use crate::bench::answer::Answer;
use crate::bench::api::{
    Chart, ChartRequest, CompareRequest, Comparison, DrawingRequest, EditRequest, Edited, Fault, LookRequest,
    Looked, NestRequest, NestShown, PictureRequest, TraceRequest, TracedMould,
};
use crate::bench::body::Posted;
use crate::bench::guest::Guest;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::workers::Task;

/// Everything that the page shows of a pattern but pictures.
#[utoipa::path(post, path = "/api/look", request_body = LookRequest, responses(
    (status = 200, body = Looked), (status = 422, body = Fault)))]
pub(super) async fn look(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Look, request).await
}

/// A changed pattern, and what it gives.
#[utoipa::path(post, path = "/api/edit", request_body = EditRequest, responses(
    (status = 200, body = Edited), (status = 422, body = Fault)))]
pub(super) async fn edit(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Edit, request).await
}

/// The basket in the round at a stage of its making.
#[utoipa::path(post, path = "/api/picture", request_body = PictureRequest, responses(
    (status = 200, content_type = "model/gltf-binary"), (status = 422, body = Fault)))]
pub(super) async fn picture(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Picture, request).await
}

/// A drawing.
#[utoipa::path(post, path = "/api/drawing", request_body = DrawingRequest, responses(
    (status = 200, body = String, content_type = "image/svg+xml"), (status = 422, body = Fault)))]
pub(super) async fn drawing(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Drawing, request).await
}

/// The weaving, crossing by crossing.
#[utoipa::path(post, path = "/api/chart", request_body = ChartRequest, responses(
    (status = 200, body = Chart), (status = 422, body = Fault)))]
pub(super) async fn chart(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Chart, request).await
}

/// In what two patterns differ.
#[utoipa::path(post, path = "/api/compare", request_body = CompareRequest, responses(
    (status = 200, body = Comparison), (status = 422, body = Fault)))]
pub(super) async fn compare(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Compare, request).await
}

/// A mould traced from a photograph, of which nothing is kept.
#[utoipa::path(post, path = "/api/trace", request_body = TraceRequest, responses(
    (status = 200, body = TracedMould), (status = 422, body = Fault)))]
pub(super) async fn trace(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Trace, request).await
}

/// The pattern in several sizes, each basket standing in the next.
#[utoipa::path(post, path = "/api/nest", request_body = NestRequest, responses(
    (status = 200, body = NestShown), (status = 422, body = Fault)))]
pub(super) async fn nest(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Nest, request).await
}

/// The same as a sheet to print.
#[utoipa::path(post, path = "/api/nest/sheet", request_body = NestRequest, responses(
    (status = 200, content_type = "application/pdf"), (status = 422, body = Fault)))]
pub(super) async fn nest_sheet(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::NestSheet, request).await
}
