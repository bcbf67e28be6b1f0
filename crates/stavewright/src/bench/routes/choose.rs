//! What may be chosen by seeing it.

use std::sync::Arc;

use axum::extract::State;

use crate::bench::answer::Answer;
use crate::bench::api::{Counts, CountsRequest, Edited, Fault, FirstRequest, Ways, WaysRequest};
use crate::bench::body::Posted;
use crate::bench::guest::Guest;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::workers::Task;

/// Ways to weave a course so that it looks as wanted, each woven on this basket.
#[utoipa::path(post, path = "/api/ways", request_body = WaysRequest, responses(
    (status = 200, body = Ways), (status = 422, body = Fault)))]
pub(super) async fn ways(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Ways, request).await
}

/// What counts of staves near by do.
#[utoipa::path(post, path = "/api/counts", request_body = CountsRequest, responses(
    (status = 200, body = Counts), (status = 422, body = Fault)))]
pub(super) async fn counts(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::Counts, request).await
}

/// A pattern from what is asked for a first basket.
#[utoipa::path(post, path = "/api/first", request_body = FirstRequest, responses(
    (status = 200, body = Edited), (status = 422, body = Fault)))]
pub(super) async fn first(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Posted(request): Posted,
) -> Result<Answer, Refusal> {
    bench.work(guest, Task::First, request).await
}
