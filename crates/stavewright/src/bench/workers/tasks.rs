//! The work itself: from a request as it was sent to its answer.

use std::io::{Cursor, Write};

use axum::http::StatusCode;
use basket::Draft;
use planning::records;
use serde::Serialize;
use sheets::{Options, PacketFile};
use words::Words;
use zip::write::SimpleFileOptions;

use super::order::{Task, Word};
use crate::bench::api::{EditRequest, Edited, LookRequest, PacketRequest};
use crate::bench::body::parse;
use crate::bench::compute::{self, Shop, words};
use crate::bench::refusal::Refusal;
use crate::bench::{choose, compare, draw, log, look, nest, plans, text, traced};

/// The file that holds all others of a packet.
const ALL: &str = "packet.zip";
const JSON: &str = "application/json";

/// Media type and content of an answer.
type Done = (&'static str, Vec<u8>);
/// Told what is done meanwhile.
type Say<'a> = dyn FnMut(Word, &[u8]) + 'a;

/// Does what was asked for.
pub(super) fn answer(task: Task, request: &[u8], shop: Shop<'_>, say: &mut Say<'_>) -> Result<Done, Refusal> {
    match task {
        Task::Look => {
            let LookRequest { source, language, units } = parse(request)?;
            json(&look::look(&source, language.as_deref(), units, shop)?)
        }
        Task::Edit => {
            let request: EditRequest = parse(request)?;
            let source = text::edit(&request.source, &request.edits)?;
            let look = if request.glance { look::glance } else { look::look };
            let look = look(&source, request.language.as_deref(), request.units, shop)?;
            json(&Edited { source, look })
        }
        Task::Picture => draw::picture(&parse(request)?, shop),
        Task::Drawing => Ok(("image/svg+xml", draw::drawing(&parse(request)?, shop)?.into_bytes())),
        Task::Chart => json(&draw::chart(&parse(request)?, shop)?),
        Task::Compare => json(&compare::compare(&parse(request)?, shop)?),
        Task::Trace => json(&traced::trace(&parse(request)?)?),
        Task::Nest => json(&nest::nest(&parse(request)?, shop)?),
        Task::NestSheet => Ok(("application/pdf", nest::sheet(&parse(request)?, shop)?)),
        Task::Ways => json(&choose::ways(&parse(request)?, shop)?),
        Task::Counts => json(&choose::counts(&parse(request)?, shop)?),
        Task::First => json(&choose::first(&parse(request)?, shop)?),
        Task::CheckPacket => {
            ordered(&parse(request)?, shop)?;
            json(&())
        }
        Task::Packet => {
            let request: PacketRequest = parse(request)?;
            let (draft, words, options) = ordered(&request, shop)?;
            let mut step = |name: &str| say(Word::Step(name.to_owned()), b"");
            let sheets = sheets::packet(&draft, &words, &options, &mut step);
            let mut files = sheets.map_err(|error| unset(&error))?;
            files.push(crate::packet::pattern(&request.source));
            hand_over(&files, say)?;
            json(&())
        }
        Task::Plan => {
            let made = plans::work(&parse(request)?, shop, &mut |step| say(Word::Step(step), b""))?;
            for (name, bytes) in made {
                say(Word::File(name.to_owned()), &bytes);
            }
            json(&())
        }
        Task::MakingForm => json(&log::form(&parse(request)?, shop)?),
        Task::ReadMaking => json(&records::write(&[log::read(&parse(request)?, shop)?])),
        Task::PrintMakings => Ok(("application/pdf", log::print(&parse(request)?, shop)?)),
        Task::Learn => json(&log::learn(&parse(request)?, shop)?),
        Task::History => json(&log::told(parse(request)?, shop)?),
        Task::Enough => json(&()),
    }
}

fn json(answer: &impl Serialize) -> Result<Done, Refusal> {
    let bytes = serde_json::to_vec(answer).map_err(|error| unset(&error))?;
    Ok((JSON, bytes))
}

/// What a packet is made from.
fn ordered(request: &PacketRequest, shop: Shop<'_>) -> Result<(Draft, Words, Options), Refusal> {
    let draft = compute::draft(&request.source, shop).map_err(Refusal::misread)?;
    let words = words(request.language.as_deref(), request.units, draft.pattern.units)?;
    let paper = compute::paper(request.paper, &words);
    let photos = compute::photographs(&request.source, &draft.pattern, shop)?;
    Ok((draft, words, Options { paper, photos, ..Options::default() }))
}

/// Each file of a packet, and all of them in one.
fn hand_over(files: &[PacketFile], say: &mut Say<'_>) -> Result<(), Refusal> {
    say(Word::Step(ALL.to_owned()), b"");
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for file in files {
        let added = zip.start_file(file.name, SimpleFileOptions::default()).map_err(std::io::Error::other);
        added.and_then(|()| zip.write_all(&file.bytes)).map_err(|error| unset(&error))?;
        say(Word::File(file.name.to_owned()), &file.bytes);
    }
    let all = zip.finish().map_err(|error| unset(&error))?;
    say(Word::File(ALL.to_owned()), all.get_ref());
    Ok(())
}

fn unset(error: &dyn std::error::Error) -> Refusal {
    Refusal::new(
        StatusCode::INTERNAL_SERVER_ERROR,
        error.to_string(),
        "the sheets",
        "Undo the last change, and report the pattern that did it.",
    )
}
