//! What is said of a mould that is made in pieces.

use basket::Length;
use basket::message::Value;
use basket::mould::{Apart, Pieces, Room, Stuck};
use serde::Serialize;
use words::Words;

use crate::scribe::{Scribe, name};

/// The pieces of a mould, told.
#[derive(Clone, Debug, Default, Serialize)]
pub struct PiecesTold {
    /// How it is cut, held together and taken apart.
    pub notes: Vec<String>,
    /// Number of each part, what it is, and its size.
    pub(crate) rows: Vec<[String; 3]>,
}

impl PiecesTold {
    /// The pieces in a reader's words.
    pub fn of(pieces: &Pieces, words: &Words) -> Self {
        let scribe = Scribe::new(words);
        let Pieces { room, apart, split } = pieces;
        let mut notes: Vec<String> = apart.iter().map(|apart| comes_apart(apart, &scribe)).collect();
        notes.extend(room.map(|room| printed(room, split.parts.len(), &scribe)));
        if !split.pegs.is_empty() {
            let metres = split.peg.length * split.pegs.len() as f64;
            let args = [
                ("pegs", count(split.pegs.len())),
                ("length", split.peg.length.into()),
                ("dowel", split.peg.dowel.into()),
                ("whole", name(words.run(metres))),
                ("hole", name(words.fine_both(split.peg.hole))),
                ("depth", split.peg.depth.into()),
            ];
            notes.push(scribe.text("mould-pegs", &args));
        }
        if split.bare > 0 {
            notes.push(scribe.text("mould-bare", &[("count", count(split.bare))]));
        }
        let rows = split.parts.iter().zip(1..).map(|(part, number)| {
            let of = apart.as_ref().map_or("mould-part", |apart| what(apart, part.block.from));
            [number.to_string(), scribe.text(of, &[]), sides(part.size, words)]
        });
        Self { notes, rows: rows.collect() }
    }
}

/// How a mould comes apart that narrows toward its top, or that no core serves.
pub(crate) fn undercut(depth: Length, apart: &Result<Apart, Stuck>, scribe: &Scribe<'_>) -> String {
    let narrows = scribe.text("mould-undercut", &[("depth", depth.into())]);
    let then = match apart {
        Ok(apart) => comes_apart(apart, scribe),
        Err(_) => scribe.text("mould-stuck", &[]),
    };
    format!("{narrows} {then}")
}

fn comes_apart(apart: &Apart, scribe: &Scribe<'_>) -> String {
    let [length, width] = apart.core;
    let keys = apart.segments.iter().filter(|segment| segment.key).count();
    let room = apart.segments.iter().map(|segment| segment.room).reduce(Length::min).unwrap_or_default();
    let args = [
        ("length", length.into()),
        ("width", width.into()),
        ("segments", count(apart.segments.len())),
        ("keys", count(keys)),
        ("kerf", name(scribe.words.fine_both(apart.kerf))),
        ("room", name(scribe.words.fine_both(room))),
    ];
    scribe.text("mould-apart", &args)
}

fn printed(room: Room, parts: usize, scribe: &Scribe<'_>) -> String {
    let args = [("room", name(sides(room.0, scribe.words))), ("count", count(parts))];
    scribe.text("mould-printed", &args)
}

/// What a part is that begins here.
fn what(apart: &Apart, from: [Length; 3]) -> &'static str {
    let [x, y, _] = from;
    let within = |block: &basket::mould::Block| {
        let sides = block.from.iter().zip(&block.to).zip([x, y]);
        sides.into_iter().all(|((from, to), at)| at >= *from && at < *to)
    };
    match apart.segments.iter().find(|segment| within(&segment.block)) {
        Some(segment) if segment.key => "mould-key",
        Some(_) => "mould-segment",
        None => "mould-core",
    }
}

fn sides(sides: [Length; 3], words: &Words) -> String {
    sides.map(|side| words.length(side)).join(" × ")
}

fn count(count: usize) -> Value {
    u32::try_from(count).unwrap_or(u32::MAX).into()
}
