//! The sheet for whoever makes the mould: a card for the lathe, what each board has to hold, the outlines.

use basket::form::Layer;
use basket::message::Value;
use basket::mould::{Apart, Pieces};
use basket::{Draft, Length};
use drawings::TileSize;
use serde::Serialize;
use words::Words;

use crate::error::SheetError;
use crate::figures::Figure;
use crate::front;
use crate::mould_pieces::{PiecesTold, undercut};
use crate::paper::Paper;
use crate::press;
use crate::scribe::Scribe;
use crate::templates::Templates;

/// What neighbouring tiles share.
const OVERLAP: Length = Length::mm(15.0);
/// Height that the first tile leaves free for what stands above it.
const HEADING: Length = Length::mm(30.0);

/// How the sheet is wanted.
#[derive(Clone, Debug)]
pub struct MouldSheet {
    /// Thickness of the boards.
    pub board: Length,
    /// The pieces that it is made in, where it is not made whole.
    pub pieces: Option<Pieces>,
    /// The paper in the printer.
    pub paper: Paper,
}

#[derive(Serialize)]
struct Own {
    facts: Vec<[String; 2]>,
    boards: Vec<[String; 6]>,
    notes: Vec<String>,
    cautions: Vec<String>,
    told: PiecesTold,
    templates: Vec<Template>,
}

#[derive(Serialize)]
struct Template {
    name: String,
    note: String,
    parts: Vec<String>,
}

/// Sets the sheet.
///
/// # Errors
/// [`SheetError::Template`] when the template is wrong.
pub fn mould_sheet(
    draft: &Draft,
    words: &Words,
    wanted: &MouldSheet,
    templates: &Templates,
) -> Result<Vec<u8>, SheetError> {
    let scribe = Scribe::new(words);
    let basket = &draft.basket;
    let layers = basket.body.form.layers(wanted.board);
    let mut drawn = drawings::turning_templates(basket, words);
    if !basket.body.form.outline.is_round() {
        drawn.push(drawings::board_outlines(basket, &layers, words));
    }
    drawn.extend(wanted.pieces.iter().map(|pieces| drawings::mould_plan(basket, &pieces.split, words)));
    let mut figures = vec![Figure::of(&drawings::check_bars(words))];
    let mut cut = Vec::new();
    let (width, height) = wanted.paper.template_room();
    for drawing in &drawn {
        let size = TileSize { width, height: height - HEADING, overlap: OVERLAP };
        let parts: Vec<Figure> = drawings::tiles(drawing, size, words).iter().map(Figure::of).collect();
        let count = u32::try_from(parts.len()).unwrap_or(u32::MAX);
        cut.push(Template {
            name: drawing.title.clone(),
            note: if count > 1 { scribe.text("tiled", &[("parts", count.into())]) } else { String::new() },
            parts: parts.iter().map(|part| part.name.clone()).collect(),
        });
        figures.extend(parts);
    }
    let own = Own {
        facts: facts(draft, words, &scribe),
        boards: layers.iter().map(|layer| board(draft, words, layer)).collect(),
        notes: notes(draft, wanted, &scribe),
        cautions: ["rules", "lathe", "saw", "sanding-dust"]
            .map(|caution| words.term(&format!("caution-{caution}")))
            .to_vec(),
        told: wanted.pieces.as_ref().map(|pieces| PiecesTold::of(pieces, words)).unwrap_or_default(),
        templates: cut,
    };
    press::print("mould", templates, &front::files(draft, &scribe, (wanted.paper, &figures), own)?)
}

fn facts(draft: &Draft, words: &Words, scribe: &Scribe<'_>) -> Vec<[String; 2]> {
    let form = &draft.basket.body.form;
    let [foot, top] = [Length::ZERO, form.arc()].map(|along| words.across(form.across(along, Length::ZERO)));
    [
        ("mould-foot", foot),
        ("mould-top", top),
        ("mould-height", words.both(form.height())),
        ("mould-screw", words.both(draft.basket.body.base().screw_hole)),
    ]
    .map(|(label, value)| [scribe.label(label), value])
    .to_vec()
}

/// Its number, from where to where, blank, finished lower and upper face, hole and bevel.
fn board(draft: &Draft, words: &Words, layer: &Layer) -> [String; 6] {
    let form = &draft.basket.body.form;
    let across = |(height, radius): (Length, Length)| words.across(form.level(height, radius).across());
    [
        layer.number.to_string(),
        words.length(layer.to),
        across(layer.blank_level()),
        across((layer.to, layer.faces[1])),
        layer.hole_level().map_or_else(|| "–".to_owned(), across),
        words.value(&Value::Angle(layer.bevel)),
    ]
}

fn notes(draft: &Draft, wanted: &MouldSheet, scribe: &Scribe<'_>) -> Vec<String> {
    let form = &draft.basket.body.form;
    let mut notes = vec![scribe.text("mould-boards-note", &[("board", wanted.board.into())])];
    notes.push(scribe.text(if form.outline.is_round() { "mould-turned" } else { "mould-planed" }, &[]));
    let depth = form.mould().undercut.depth;
    let told = wanted.pieces.as_ref().is_some_and(|pieces| pieces.apart.is_some());
    if depth > Length::ZERO && !told {
        notes.push(undercut(depth, &Apart::of(&draft.basket), scribe));
    }
    notes
}
