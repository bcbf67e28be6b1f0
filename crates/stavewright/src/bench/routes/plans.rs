//! Plans of classes. They are the maker's own, as the shelf is.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

use crate::bench::api::{Fault, Packet, PlanName, PlanOrder, PlanRequest, PlanText};
use crate::bench::body::Sent;
use crate::bench::guest::Guest;
use crate::bench::plans::Planning;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::workers::Task;
use crate::bench::{plans, shelf};

/// The plans of the folder. Their texts are read and saved as those of patterns are.
#[utoipa::path(get, path = "/api/plans", responses((status = 200, body = [PlanName]), (status = 403, body = Fault)))]
pub(super) async fn list(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
) -> Result<Json<Vec<PlanName>>, Refusal> {
    bench.may_see_workshop()?;
    let own = Arc::clone(&bench);
    bench.files.run(guest.0, move || own.folder.plans()).await.map(Json)
}

/// A plan after changes to it, and what is wrong with it.
#[utoipa::path(post, path = "/api/plans", request_body = PlanRequest, responses(
    (status = 200, body = PlanText), (status = 403, body = Fault), (status = 422, body = Fault)))]
pub(super) async fn write(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Sent(request): Sent<PlanRequest>,
) -> Result<Json<PlanText>, Refusal> {
    bench.may_see_workshop()?;
    bench.files.run(guest.0, move || plans::written(&request)).await.map(Json)
}

/// Begins to work a plan out. How far it is, is asked of it as of a packet; what is shown of it is its file
/// `shown.json`, of the form of `PlanShown`.
#[utoipa::path(post, path = "/api/plans/work", request_body = PlanOrder, responses(
    (status = 202, body = Packet), (status = 403, body = Fault), (status = 429, body = Fault)))]
pub(super) async fn work(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Sent(order): Sent<PlanOrder>,
) -> Result<Response, Refusal> {
    bench.may_see_workshop()?;
    let own = Arc::clone(&bench);
    let planning = move || {
        let items = shelf::items(&own.folder)?;
        let orders = shelf::orders(&own.folder, &order.orders)?;
        serde_json::to_vec(&Planning { order, items, orders }).map_err(|_| Refusal::broken())
    };
    let request = bench.files.run(guest.0, planning).await?;
    let packet = bench.jobs.begin(guest, bench.order(Task::Plan).await, request)?;
    Ok((StatusCode::ACCEPTED, Json(packet)).into_response())
}
