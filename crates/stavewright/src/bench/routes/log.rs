//! The log of makings, and what every pattern was before. They are the maker's own, as the shelf is.

use std::sync::Arc;

use axum::Json;
use axum::extract::{FromRequest, Path, Query, Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use basket::pattern::Units;
use planning::records;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use utoipa::IntoParams;
use words::Words;

use super::server::Reader;
use crate::bench::answer::Answer;
use crate::bench::api::{Fault, KeptPhoto, LearnedHand, LogAct, MakingForm, MakingLog, PastVersion};
use crate::bench::body::{LargePhotograph, Sent};
use crate::bench::guest::Guest;
use crate::bench::log::{self, Learning, Past, Printed, Typed};
use crate::bench::refusal::Refusal;
use crate::bench::shared::Bench;
use crate::bench::workers::Task;
use crate::bench::{compute, folder::Folder};

/// Whose makings are meant.
#[derive(Debug, Default, Deserialize, IntoParams)]
pub(super) struct Whose {
    /// The maker; all if left out.
    who: Option<String>,
    /// Language of the answer, such as `en`.
    language: Option<String>,
}

/// The log as it stands; nothing is made where there is none.
#[utoipa::path(get, path = "/api/log", params(Reader), responses(
    (status = 200, body = MakingLog), (status = 403, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn show(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(reader): Query<Reader>,
) -> Result<Json<MakingLog>, Refusal> {
    bench.may_see_workshop()?;
    read(&bench, guest, move |folder| log::log(folder, &words(&reader)?)).await.map(Json)
}

/// Does something with the log, whole or not at all.
#[utoipa::path(post, path = "/api/log", params(Reader), request_body = LogAct, responses(
    (status = 200, body = MakingLog), (status = 403, body = Fault), (status = 404, body = Fault),
    (status = 409, body = Fault), (status = 422, body = Fault)))]
pub(super) async fn act(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(reader): Query<Reader>,
    Sent(what): Sent<LogAct>,
) -> Result<Json<MakingLog>, Refusal> {
    bench.may_see_workshop()?;
    let language = reader.language.clone();
    match what {
        LogAct::Log { pattern, making } => {
            let source = read(&bench, guest, move |folder| folder.read(&pattern)).await?.source;
            let typed = Typed { source, making: Some(*making), language };
            let record: String = work(&bench, guest, Task::ReadMaking, &typed).await?;
            let record = records::read(&record).ok().and_then(|records| records.into_iter().next());
            let record = record.ok_or_else(Refusal::broken)?;
            read(&bench, guest, move |folder| log::making(folder, &record)).await?;
        }
        LogAct::Forget { numbers } => {
            read(&bench, guest, move |folder| log::forget(folder, &numbers)).await?;
        }
        LogAct::Adopt { who } => {
            let (_, adopted) = learned(&bench, guest, (who, language)).await?;
            let adopted = adopted.ok_or_else(log::nothing_to_learn_from)?;
            let own = adopted.clone();
            read(&bench, guest, move |folder| log::adopt(folder, Some(&own))).await?;
            bench.take_up(Some(adopted));
        }
        LogAct::TakeBack => {
            read(&bench, guest, |folder| log::adopt(folder, None)).await?;
            bench.take_up(None);
        }
    }
    read(&bench, guest, move |folder| log::log(folder, &words(&reader)?)).await.map(Json)
}

/// What the log says of a hand, beside the usual one.
#[utoipa::path(get, path = "/api/log/hand", params(Whose), responses(
    (status = 200, body = LearnedHand), (status = 403, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn hand(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(whose): Query<Whose>,
) -> Result<Json<LearnedHand>, Refusal> {
    bench.may_see_workshop()?;
    learned(&bench, guest, (whose.who, whose.language)).await.map(|(told, _)| Json(told))
}

/// What can be written down of a pattern's making.
#[utoipa::path(get, path = "/api/log/form/{name}", params(("name" = String, Path), Reader), responses(
    (status = 200, body = MakingForm), (status = 403, body = Fault), (status = 404, body = Fault)))]
pub(super) async fn form(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    Query(reader): Query<Reader>,
) -> Result<Json<MakingForm>, Refusal> {
    bench.may_see_workshop()?;
    let source = read(&bench, guest, move |folder| folder.read(&name)).await?.source;
    let typed = Typed { source, making: None, language: reader.language };
    work(&bench, guest, Task::MakingForm, &typed).await.map(Json)
}

/// Makings as a file that `stavewright records log` and `stavewright hand` read.
#[utoipa::path(get, path = "/api/log.toml", params(Whose), responses(
    (status = 200, content_type = "application/toml"), (status = 403, body = Fault), (status = 404, body = Fault)))]
pub(super) async fn export(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(whose): Query<Whose>,
) -> Result<Response, Refusal> {
    bench.may_see_workshop()?;
    let file = read(&bench, guest, move |folder| log::export(folder, whose.who.as_deref())).await?;
    let headers = [
        (header::CONTENT_TYPE, "application/toml"),
        (header::CONTENT_DISPOSITION, "attachment; filename=\"records.toml\""),
    ];
    Ok((headers, file).into_response())
}

/// The log to print, of one maker or of all.
#[utoipa::path(get, path = "/api/log.pdf", params(Whose), responses(
    (status = 200, content_type = "application/pdf"), (status = 403, body = Fault), (status = 404, body = Fault),
    (status = 409, body = Fault)))]
pub(super) async fn sheet(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(whose): Query<Whose>,
) -> Result<Answer, Refusal> {
    printed(&bench, guest, (None, whose)).await
}

/// The card that says where a basket comes from, to print.
#[utoipa::path(get, path = "/api/log/{number}/card.pdf", params(("number" = u32, Path), Reader), responses(
    (status = 200, content_type = "application/pdf"), (status = 403, body = Fault), (status = 404, body = Fault),
    (status = 409, body = Fault)))]
pub(super) async fn card(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(number): Path<u32>,
    Query(reader): Query<Reader>,
) -> Result<Answer, Refusal> {
    printed(&bench, guest, (Some(number), Whose { who: None, language: reader.language })).await
}

/// How a photograph is to be kept.
#[derive(Debug, Default, Deserialize, IntoParams)]
pub(super) struct Kept {
    /// There to have place and time stay in it.
    all: Option<String>,
}

/// Keeps a photograph of a making in the folder, upright.
#[utoipa::path(post, path = "/api/log/photos", params(Kept), request_body(content_type = "image/jpeg"), responses(
    (status = 200, body = KeptPhoto), (status = 403, body = Fault), (status = 413, body = Fault),
    (status = 422, body = Fault)))]
pub(super) async fn photo(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Query(kept): Query<Kept>,
    request: Request,
) -> Result<Json<KeptPhoto>, Refusal> {
    // Who may not keep it need not send it.
    bench.may_see_workshop()?;
    let LargePhotograph(bytes) = LargePhotograph::from_request(request, &()).await?;
    read(&bench, guest, move |folder| log::photo(folder, bytes, kept.all.is_some())).await.map(Json)
}

/// A photograph of a making.
#[utoipa::path(get, path = "/api/log/photos/{name}", params(("name" = String, Path)), responses(
    (status = 200, content_type = "image/jpeg"), (status = 403, body = Fault), (status = 404, body = Fault)))]
pub(super) async fn shown_photo(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
) -> Result<Response, Refusal> {
    bench.may_see_workshop()?;
    let bytes = read(&bench, guest, move |folder| log::shown_photo(folder, &name)).await?;
    Ok(([(header::CONTENT_TYPE, "image/jpeg")], bytes).into_response())
}

/// What a pattern was before, the last first, and in what each version differs from the one before it.
#[utoipa::path(get, path = "/api/patterns/{name}/history", params(("name" = String, Path), Reader), responses(
    (status = 200, body = [PastVersion]), (status = 403, body = Fault), (status = 409, body = Fault)))]
pub(super) async fn history(
    State(bench): State<Arc<Bench>>,
    guest: Guest,
    Path(name): Path<String>,
    Query(reader): Query<Reader>,
) -> Result<Json<Vec<PastVersion>>, Refusal> {
    bench.may_see_workshop()?;
    let versions = read(&bench, guest, move |folder| log::history(folder, &name)).await?;
    work(&bench, guest, Task::History, &Past { versions, language: reader.language }).await.map(Json)
}

async fn printed(
    bench: &Arc<Bench>,
    guest: Guest,
    (number, Whose { who, language }): (Option<u32>, Whose),
) -> Result<Answer, Refusal> {
    bench.may_see_workshop()?;
    let own = Arc::clone(bench);
    let (records, sources) = read(bench, guest, move |folder| log::material(folder, &own.catalogue)).await?;
    let request = serde_json::to_vec(&Printed { records, sources, number, who, language });
    bench.work(guest, Task::PrintMakings, request.map_err(|_| Refusal::broken())?).await
}

/// What is learned, and the figures to take up.
async fn learned(
    bench: &Arc<Bench>,
    guest: Guest,
    (who, language): (Option<String>, Option<String>),
) -> Result<(LearnedHand, Option<records::Adopted>), Refusal> {
    let own = Arc::clone(bench);
    let (records, sources) = read(bench, guest, move |folder| log::material(folder, &own.catalogue)).await?;
    work(bench, guest, Task::Learn, &Learning { records, sources, who, language }).await
}

/// Reads or writes files.
async fn read<T: Send + 'static>(
    bench: &Arc<Bench>,
    guest: Guest,
    act: impl FnOnce(&Folder) -> Result<T, Refusal> + Send + 'static,
) -> Result<T, Refusal> {
    let own = Arc::clone(bench);
    bench.files.run(guest.0, move || act(&own.folder)).await
}

/// Has something worked out.
async fn work<T: DeserializeOwned>(
    bench: &Arc<Bench>,
    guest: Guest,
    task: Task,
    request: &impl serde::Serialize,
) -> Result<T, Refusal> {
    let request = serde_json::to_vec(request).map_err(|_| Refusal::broken())?;
    let answer = bench.work(guest, task, request).await?;
    if !answer.status.is_success() {
        let fault = serde_json::from_slice::<Fault>(&answer.body).map_err(|_| Refusal::broken())?;
        return Err(Refusal::again(answer.status, fault));
    }
    serde_json::from_slice(&answer.body).map_err(|_| Refusal::broken())
}

fn words(reader: &Reader) -> Result<Words, Refusal> {
    compute::words(reader.language.as_deref(), reader.units, Units::default())
}
