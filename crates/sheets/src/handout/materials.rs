//! The cut list, what it adds up to, and what has to be soaked.

use basket::cuts::Cut;
use basket::pattern::Ready;
use basket::piece::Piece;
use basket::{Colour, Length, Material};

use super::table::{Cell, Column, Table, Width};
use super::{Block, Source};
use crate::scribe::{Scribe, name};
use crate::written;

impl<'a> Source<'a> {
    pub(super) fn materials(&self) -> Vec<Block<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("piece"), Width::Share(1.4)),
            Column::left(scribe.label("material"), Width::Share(0.85)),
            Column::right(scribe.label("number"), Width::Mm(15.0)),
            Column::right(scribe.label("length-each"), Width::Mm(19.0)),
            Column::left(scribe.label("shape"), Width::Share(2.15)),
        ];
        let cuts = self.written.cuts.iter().zip(&self.draft.cuts);
        let table = Table::new(columns, cuts.map(|(told, cut)| self.row(told, cut))).wide();
        vec![Block::Table { table }]
    }

    /// A line of the cut list.
    fn row(&self, told: &written::Cut, cut: &Cut) -> Vec<Cell> {
        let scribe = self.scribe;
        let spare = match told.spares {
            0 => String::new(),
            spares => format!("+ {spares} {}", scribe.label("spare")),
        };
        let purpose = if self.draft.basket.ready.has_piece(cut.piece) {
            format!("{}; {}", told.purpose, scribe.label("lies-ready"))
        } else {
            told.purpose.clone()
        };
        let width = cut.width.map(|width| scribe.text("width", &[("width", name(scribe.fine(width)))]));
        let shape = cut.shape.as_ref().map(|shape| scribe.words.say(shape));
        vec![
            Cell::strong(told.piece.clone()).with(purpose),
            scribe.stock(cut).into(),
            Cell::strong(told.count.to_string()).with(spare),
            Cell::lines(cut.length.map(|length| scribe.lines(length)).unwrap_or_default()),
            Cell::lines(width.into_iter().chain(shape).collect()),
        ]
    }

    /// What lies ready, where anything does.
    pub(super) fn ready(&self) -> Vec<Block<'a>> {
        match self.draft.basket.ready.each() {
            [] => Vec::new(),
            parts => {
                let cut_alone =
                    |part: &&Ready| **part != Ready::StavesCut || !parts.contains(&Ready::StavesTapered);
                let items = parts.iter().filter(cut_alone).map(|part| self.scribe.words.name(*part));
                vec![self.note("ready-note"), Block::List { items: items.collect() }]
            }
        }
    }

    /// What is needed of each stock, in the order of the cut list.
    pub(super) fn supplies(&self) -> Block<'a> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("material"), Width::Share(1.3)),
            Column::right(scribe.label("all-pieces"), Width::Share(1.0)),
            Column::left(scribe.label("sold"), Width::Share(1.0)),
        ];
        let row = |of: Use<'_>| {
            vec![of.name(scribe).into(), total(&of, scribe).into(), sold(of.material, scribe).into()]
        };
        Block::Table { table: Table::new(columns, self.uses().into_iter().map(row)) }
    }

    /// What has to be soaked and shaped beforehand.
    pub(super) fn preparation(&self) -> Vec<Block<'a>> {
        let (basket, staves) = (&self.draft.basket, self.draft.basket.body.staves());
        let shaped = staves.taper.is_of(staves.uprights.width) && !basket.ready.has(Ready::StavesTapered);
        let taper = shaped.then(|| self.note("preparation-taper"));
        [self.note("soaking-note"), self.soaking()].into_iter().chain(taper).collect()
    }

    /// How long each material soaks.
    pub(super) fn soaking(&self) -> Block<'a> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("material"), Width::Share(1.4)),
            Column::left(scribe.label("soak"), Width::Share(1.0)),
            Column::left(scribe.label("soak-for"), Width::Share(1.6)),
        ];
        // Glued rings come apart in water; staves that lie ready are bent as any.
        let ready = &self.draft.basket.ready;
        let is_dry = |cut: &&Cut| ready.has_piece(cut.piece) && cut.piece.sort() != Piece::Uprights;
        let row = |mut of: Use<'_>| {
            of.cuts.retain(|cut| !is_dry(cut));
            let (from, to) = of.material.soak_minutes.filter(|_| !of.cuts.is_empty())?;
            Some(vec![
                of.name(scribe).into(),
                range(from, to, scribe).into(),
                pieces(&of, scribe).join(", ").into(),
            ])
        };
        Block::Table { table: Table::new(columns, self.uses().into_iter().filter_map(row)) }
    }

    /// What is cut from each material that is sold, each colour by itself, in the order of the cut list.
    fn uses(&self) -> Vec<Use<'a>> {
        let mut uses: Vec<Use<'_>> = Vec::new();
        for cut in &self.draft.cuts {
            let Some(material) = cut.stock.material() else { continue };
            let colour = cut.colour.as_ref().filter(|colour| colour.name != Colour::natural().name);
            let is_known =
                |known: &&mut Use<'_>| known.material.name == material.name && known.colour == colour;
            match uses.iter_mut().find(is_known) {
                Some(known) => known.cuts.push(cut),
                None => uses.push(Use { material, colour, cuts: vec![cut] }),
            }
        }
        uses
    }
}

/// A material in one colour with all that is cut from it.
struct Use<'a> {
    material: &'a Material,
    /// None where it is left as it is.
    colour: Option<&'a Colour>,
    cuts: Vec<&'a Cut>,
}

impl Use<'_> {
    fn name(&self, scribe: &Scribe<'_>) -> String {
        scribe.in_colour(scribe.words.material(&self.material.name), self.colour)
    }
}

/// The names of the pieces, each once.
fn pieces(of: &Use<'_>, scribe: &Scribe<'_>) -> Vec<String> {
    let mut pieces: Vec<String> = Vec::new();
    for piece in of.cuts.iter().map(|cut| scribe.words.cut(cut.of, cut.piece)) {
        if !pieces.contains(&piece) {
            pieces.push(piece);
        }
    }
    pieces
}

/// From one time to another; said once where both read alike.
fn range(from: f64, to: f64, scribe: &Scribe<'_>) -> String {
    let (from, to) = (scribe.minutes(from), scribe.minutes(to));
    if from == to { from } else { scribe.text("range", &[("from", name(from)), ("to", name(to))]) }
}

fn total(of: &Use<'_>, scribe: &Scribe<'_>) -> String {
    let length: Length = of.cuts.iter().filter_map(|cut| cut.total).sum();
    if length > Length::ZERO {
        return scribe.line(length);
    }
    let pieces = of.cuts.iter().map(|cut| cut.count.saturating_add(cut.spares));
    scribe.text("pieces", &[("count", pieces.fold(0, u32::saturating_add).into())])
}

fn sold(material: &Material, scribe: &Scribe<'_>) -> String {
    let put_up = &material.put_up;
    let unit = ("unit", name(scribe.words.put_up(&put_up.unit)));
    match put_up.length {
        Some(length) => scribe.text("sold-by-length", &[unit, ("length", name(scribe.line(length)))]),
        None => scribe.text("sold-by", &[unit]),
    }
}
