//! The page: files built from `web/`, carried in the program.

use axum::http::{HeaderMap, Method, StatusCode, Uri, header};
use axum::response::{Html, IntoResponse, Response};
use rust_embed::Embed;

use crate::bench::jobs::media;
use crate::bench::refusal::Refusal;
use crate::bench::secret::hexadecimal;

/// What `make` built; nothing when only cargo was run.
#[derive(Embed)]
#[folder = "../../web/dist/"]
#[allow_missing = true]
struct Built;

/// Stands in while the page is not built.
const PLACEHOLDER: &str = "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Stavewright</title>\
     <h1>The page is not built</h1><p>This program was built without its page. Run <code>make run</code>, \
     which builds it first (Node is needed for that).</p></html>";

/// A file of the page.
pub(super) async fn page(method: Method, uri: Uri, headers: HeaderMap) -> Response {
    let path = uri.path();
    if method != Method::GET && method != Method::HEAD {
        return nothing(path);
    }
    let name = if path == "/" { "index.html" } else { path.trim_start_matches('/') };
    let plain = !name.split('/').any(|part| part.is_empty() || part.starts_with('.')) && !name.contains('\\');
    let Some(file) = plain.then(|| Built::get(name)).flatten() else {
        return if path == "/" { Html(PLACEHOLDER).into_response() } else { nothing(path) };
    };
    let tag = format!("\"{}\"", hexadecimal(&file.metadata.sha256_hash()));
    let known = headers.get(header::IF_NONE_MATCH).is_some_and(|known| known.as_bytes() == tag.as_bytes());
    let about = [(header::ETAG, tag), (header::CONTENT_TYPE, media(name).to_owned())];
    if known { (StatusCode::NOT_MODIFIED, about).into_response() } else { (about, file.data).into_response() }
}

fn nothing(path: &str) -> Response {
    let shown: String = path.chars().take(100).collect();
    Refusal::new(
        StatusCode::NOT_FOUND,
        "there is nothing at this address",
        shown,
        "GET /api/openapi.json says what there is.",
    )
    .into_response()
}
