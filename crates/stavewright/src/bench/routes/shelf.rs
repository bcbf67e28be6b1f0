//! The shelf. It is the maker's own: guests of the studio neither see nor change it unless they may write.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use basket::pattern::Units;
use words::Words;

use super::server::Reader;
use crate::bench::api::{Fault, Shelf, ShelfAct};
use crate::bench::body::Sent;
use crate::bench::guest::Guest;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::{compute, shelf};

/// The shelf as it stands; nothing is made where there is none.
#[utoipa::path(get, path = "/api/shelf", params(Reader), responses(
    (status = 200, body = Shelf), (status = 403, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn show(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(reader): Query<Reader>,
) -> Result<Json<Shelf>, Refusal> {
    bench.may_see_workshop()?;
    let (own, words) = (Arc::clone(&bench), words(&reader)?);
    bench.files.run(guest.0, move || shelf::shelf(&own.folder, &words)).await.map(Json)
}

/// Does something with the shelf, whole or not at all.
#[utoipa::path(post, path = "/api/shelf", params(Reader), request_body = ShelfAct, responses(
    (status = 200, body = Shelf), (status = 403, body = Fault), (status = 404, body = Fault),
    (status = 409, body = Fault), (status = 422, body = Fault)))]
pub(super) async fn act(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(reader): Query<Reader>,
    Sent(what): Sent<ShelfAct>,
) -> Result<Json<Shelf>, Refusal> {
    bench.may_see_workshop()?;
    let (own, words) = (Arc::clone(&bench), words(&reader)?);
    bench.files.run(guest.0, move || shelf::act(&own.folder, what, &words)).await.map(Json)
}

/// The shelf as a table for a spreadsheet.
#[utoipa::path(get, path = "/api/shelf.csv", responses(
    (status = 200, content_type = "text/csv"), (status = 403, body = Fault), (status = 404, body = Fault)))]
pub(super) async fn table(State(bench): State<Arc<Bench>>, guest: Guest) -> Result<Response, Refusal> {
    bench.may_see_workshop()?;
    let own = Arc::clone(&bench);
    let table = bench.files.run(guest.0, move || shelf::table(&own.folder)).await?;
    let headers = [
        (header::CONTENT_TYPE, "text/csv; charset=utf-8"),
        (header::CONTENT_DISPOSITION, "attachment; filename=\"shelf.csv\""),
    ];
    Ok((headers, table).into_response())
}

fn words(reader: &Reader) -> Result<Words, Refusal> {
    compute::words(reader.language.as_deref(), reader.units, Units::default())
}
