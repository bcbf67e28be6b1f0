//! The drawings on the sheets, and the pieces to be printed at true size.

use basket::weave::Face;
use basket::{Basket, Length, Of};
use drawings::stages::{self, Plate};
use drawings::{At, ChartKind, Drawing, TileSize};
use serde::Serialize;
use words::Words;

use crate::paper::Paper;
use crate::scribe::Scribe;

/// Width that neighbouring tiles share.
const OVERLAP: Length = Length::mm(15.0);
/// So many courses have their moves drawn.
const COURSES: usize = 24;
/// Height that a piece leaves free on its page for its heading and note.
const HEADING: Length = Length::mm(24.0);

/// A drawing as a template sees it.
#[derive(Serialize)]
pub(crate) struct Figure {
    pub(crate) name: String,
    pub(crate) file: String,
    width_mm: f64,
    height_mm: f64,
    alt: String,
    caption: String,
    #[serde(skip)]
    pub(crate) svg: String,
}

impl Figure {
    pub(crate) fn of(drawing: &Drawing) -> Self {
        Self {
            name: drawing.name.clone(),
            file: format!("{}.svg", drawing.name),
            width_mm: drawing.width(),
            height_mm: drawing.height(),
            alt: drawing.description.clone(),
            caption: drawing.title.clone(),
            svg: drawing.to_svg(),
        }
    }
}

/// One piece on the sheet of templates: its drawings, by name, in the order of its parts.
#[derive(Serialize)]
pub(crate) struct Piece {
    name: String,
    note: String,
    parts: Vec<String>,
}

/// All that is drawn for one paper.
pub(crate) struct Drawn {
    pub(crate) paper: Paper,
    pub(crate) figures: Vec<Figure>,
    pub(crate) pieces: Vec<Piece>,
}

/// The drawings that every packet shows, under the names by which the templates ask for them.
fn plates(basket: &Basket, words: &Words) -> Vec<Figure> {
    let plates = [
        ("section", drawings::section(basket, words)),
        ("base-plan", drawings::base_plan(basket, words)),
        ("plan", drawings::plan(basket, words)),
        ("taper-chart", drawings::taper_chart(basket, words)),
        ("check-bars", drawings::check_bars(words)),
        ("chart-outside", drawings::chart(basket, words, Face::Outside, ChartKind::True)),
        ("chart-inside", drawings::chart(basket, words, Face::Inside, ChartKind::True)),
    ];
    let plates =
        plates.iter().map(|(name, drawing)| Figure { name: (*name).to_owned(), ..Figure::of(drawing) });
    let lid = basket.lid_alone().into_iter().flat_map(|lid| {
        let section = ("lid-section", drawings::section(&lid, words));
        let plan = ("lid-base-plan", drawings::base_plan(&lid, words));
        [section, plan]
            .map(|(name, drawing)| Figure { name: name.to_owned(), ..Figure::of(&of_lid(drawing, words)) })
    });
    plates.chain(lid).collect()
}

/// A drawing of the lid, which has a name and a title of its own.
fn of_lid(mut drawing: Drawing, words: &Words) -> Drawing {
    drawing.name = format!("lid-{}", drawing.name);
    let own = format!("drawing-{}", drawing.name);
    for text in [&mut drawing.title, &mut drawing.description] {
        *text = words.of(Of::Lid, std::mem::take(text));
    }
    if words.has(&own) {
        drawing.title = words.term(&own);
    }
    drawing
}

/// How the weavers of each course go over and under, as `moves-` and its number; none for a course without rows.
fn moves(basket: &Basket, words: &Words) -> Vec<Figure> {
    let courses = (1_u32..).zip(&basket.body.weave.courses).take(COURSES);
    courses
        .filter_map(|(number, _)| drawings::moves(basket, words, number))
        .map(|drawing| Figure::of(&drawing))
        .collect()
}

/// The pieces that are printed at true size: the basket's, then the lid's.
fn templates(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let mut templates = vessel_templates(basket, words);
    if let Some(lid) = basket.lid_alone() {
        templates.extend(vessel_templates(&lid, words).into_iter().map(|drawing| of_lid(drawing, words)));
    }
    templates
}

fn vessel_templates(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let mut templates =
        vec![drawings::base_disc(basket, words), drawings::spacing_strip(basket, words, At::Base)];
    templates.extend(drawings::stave_templates(basket, words));
    templates.extend([
        drawings::spacing_strip(basket, words, At::Rim),
        drawings::scarf_template(basket, words),
        drawings::drilling_template(basket, words),
    ]);
    templates.extend(drawings::ear_template(basket, words));
    templates
}

/// All drawings of the making: a template may ask for any. In the place of one that shows what the basket has
/// not stands one that says so.
fn stages(basket: &Basket, words: &Words) -> Vec<Figure> {
    let made = stages::stage_drawings(basket, words);
    let absent = Plate::ALL.into_iter().filter(|plate| !plate.is_of(basket));
    let absent = absent.map(|plate| stages::absent(basket, words, plate));
    let lid = stages::lid_drawings(basket, words);
    made.into_iter()
        .chain(lid)
        .map(|(_, drawing)| drawing)
        .chain(absent)
        .map(|drawing| Figure::of(&drawing))
        .collect()
}

pub(crate) fn drawn(basket: &Basket, scribe: &Scribe<'_>, paper: Paper) -> Drawn {
    let mut figures = plates(basket, scribe.words);
    figures.extend(moves(basket, scribe.words));
    figures.extend(stages(basket, scribe.words));
    let (width, height) = paper.template_room();
    let mut pieces = Vec::new();
    for template in templates(basket, scribe.words) {
        let size = TileSize { width, height: height - HEADING, overlap: OVERLAP };
        let tiles = drawings::tiles(&template, size, scribe.words);
        let parts: Vec<_> = tiles.iter().map(Figure::of).collect();
        let note = match u32::try_from(parts.len()) {
            Ok(count) if count > 1 => scribe.text("tiled", &[("parts", count.into())]),
            _ => String::new(),
        };
        let names = parts.iter().map(|part| part.name.clone()).collect();
        pieces.push(Piece { name: template.title, note, parts: names });
        figures.extend(parts);
    }
    Drawn { paper, figures, pieces }
}

pub(crate) fn section_svg(basket: &Basket, words: &Words) -> String {
    drawings::section(basket, words).to_svg()
}

pub(crate) fn base_svg(basket: &Basket, words: &Words) -> String {
    drawings::base_plan(basket, words).to_svg()
}
