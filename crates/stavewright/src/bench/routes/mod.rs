//! What the server answers, one file a subject. Router and `OpenAPI` description come from the same
//! handlers.

mod basket;
mod choose;
mod log;
mod packets;
mod page;
mod patterns;
mod photos;
mod plans;
mod server;
mod shelf;

use std::sync::Arc;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::http::{Method, StatusCode, Uri, header};
use axum::middleware;
use axum::response::{IntoResponse, Response};
use bytes::Bytes;
use tower_http::catch_panic::CatchPanicLayer;
use utoipa::OpenApi;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

use super::body::LARGEST;
use super::guard;
use super::refusal::{Refusal, in_language};
use super::shared::Bench;

/// The description that the handlers fill in.
#[derive(OpenApi)]
#[openapi(info(
    title = "The bench of Stavewright",
    description = "What the local page asks its server. Everything is computed from the text of a pattern; \
                   the server keeps nothing but the files of its folder and the last few packets."
))]
struct Description;

/// All routes with their description.
fn described() -> (Router<Arc<Bench>>, utoipa::openapi::OpenApi) {
    OpenApiRouter::with_openapi(Description::openapi())
        .routes(routes!(server::health))
        .routes(routes!(server::messages))
        .routes(routes!(server::stock))
        .routes(routes!(patterns::list))
        .routes(routes!(patterns::read, patterns::save))
        .routes(routes!(patterns::rename))
        .routes(routes!(patterns::scenarios))
        .routes(routes!(photos::show, photos::keep, photos::drop))
        .routes(routes!(basket::look))
        .routes(routes!(basket::edit))
        .routes(routes!(basket::picture))
        .routes(routes!(basket::drawing))
        .routes(routes!(basket::chart))
        .routes(routes!(basket::compare))
        .routes(routes!(basket::trace))
        .routes(routes!(basket::nest))
        .routes(routes!(basket::nest_sheet))
        .routes(routes!(choose::ways))
        .routes(routes!(choose::counts))
        .routes(routes!(choose::first))
        .routes(routes!(shelf::show, shelf::act))
        .routes(routes!(shelf::table))
        .routes(routes!(log::show, log::act))
        .routes(routes!(log::hand))
        .routes(routes!(log::form))
        .routes(routes!(log::export))
        .routes(routes!(log::sheet))
        .routes(routes!(log::card))
        .routes(routes!(log::photo))
        .routes(routes!(log::shown_photo))
        .routes(routes!(log::history))
        .routes(routes!(plans::list, plans::write))
        .routes(routes!(plans::work))
        .routes(routes!(packets::begin))
        .routes(routes!(packets::ask, packets::stop))
        .routes(routes!(packets::enough))
        .routes(routes!(packets::file))
        .split_for_parts()
}

/// The whole server: routes, page, and what every request goes through.
pub(crate) fn app(bench: &Arc<Bench>) -> Router {
    let (router, description) = described();
    // Written once and not for each who asks.
    let description = Bytes::from(description.to_json().unwrap_or_default());
    let kind = [(header::CONTENT_TYPE, "application/json")];
    router
        .route("/api/openapi.json", axum::routing::get(|| async move { (kind, description) }))
        .fallback(page::page)
        .method_not_allowed_fallback(wrong_method)
        .layer(CatchPanicLayer::custom(|_| Refusal::broken().into_response()))
        .layer(DefaultBodyLimit::max(LARGEST))
        .layer(middleware::from_fn_with_state(Arc::clone(bench), guard::watch))
        .layer(middleware::from_fn(in_language))
        .with_state(Arc::clone(bench))
}

async fn wrong_method(method: Method, uri: Uri) -> Response {
    Refusal::new(
        StatusCode::METHOD_NOT_ALLOWED,
        format!("{method} is not asked of this address"),
        uri.path(),
        "GET /api/openapi.json says what is.",
    )
    .into_response()
}
