//! The shelf. It is the maker's own: guests of the studio neither see nor change it unless they may write.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use basket::pattern::Units;
use serde::Deserialize;
use utoipa::IntoParams;
use words::Words;

use crate::bench::api::{Fault, Shelf, ShelfAct, UnitsWord};
use crate::bench::body::Sent;
use crate::bench::guest::Guest;
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::{compute, shelf};

/// Who reads, and what is looked for.
#[derive(Debug, Default, Deserialize, IntoParams)]
pub(super) struct Looking {
    /// A language's tag, such as `en`.
    language: Option<String>,
    /// `in` or `mm`.
    units: Option<UnitsWord>,
    /// Words that the items hold which are shown; any item if left out.
    find: Option<String>,
}

impl Looking {
    fn words(&self) -> Result<Words, Refusal> {
        compute::words(self.language.as_deref(), self.units, Units::default())
    }

    fn find(&self) -> &str {
        self.find.as_deref().unwrap_or_default()
    }
}

/// The shelf as it stands; nothing is made where there is none.
#[utoipa::path(get, path = "/api/shelf", params(Looking), responses(
    (status = 200, body = Shelf), (status = 403, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn show(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(looking): Query<Looking>,
) -> Result<Json<Shelf>, Refusal> {
    bench.may_see_workshop()?;
    let (own, words) = (Arc::clone(&bench), looking.words()?);
    bench.files.run(guest.0, move || shelf::shelf(&own.folder, (looking.find(), &words))).await.map(Json)
}

/// Does something with the shelf, whole or not at all.
#[utoipa::path(post, path = "/api/shelf", params(Looking), request_body = ShelfAct, responses(
    (status = 200, body = Shelf), (status = 403, body = Fault), (status = 404, body = Fault),
    (status = 409, body = Fault), (status = 422, body = Fault)))]
pub(super) async fn act(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(looking): Query<Looking>,
    Sent(what): Sent<ShelfAct>,
) -> Result<Json<Shelf>, Refusal> {
    bench.may_see_workshop()?;
    let (own, words) = (Arc::clone(&bench), looking.words()?);
    bench.files.run(guest.0, move || shelf::act(&own.folder, what, (looking.find(), &words))).await.map(Json)
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
