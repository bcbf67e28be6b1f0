//! Pictures of a basket: solids, drawings and the chart's cells.

use axum::http::StatusCode;
use basket::limits::CROSSINGS;
use basket::steps::Stage;
use basket::weave::Face;
use basket::{Basket, Colour};
use drawings::lines::{Style, View, draw};
use drawings::solid::{self, Detail, LidPose};
use drawings::stages::{Plate, stage_drawing};
use drawings::{At, ChartKind, Drawing};
use words::Words;

use super::api::{
    Chart, ChartJoin, ChartRequest, ChartRow, DetailWord, DrawingRequest, DrawingView, FaceWord, LidWord,
    PictureRequest, Seen, SolidFormat,
};
use super::compute::{self, Shop, words};
use super::look::colours::colour_name;
use super::refusal::Refusal;

/// Size of a drawing of basket and lid from the side, in mm.
const LID_WIDTH: f64 = 150.0;
const LID_HEIGHT: f64 = 110.0;

/// A drawing that is no stage of the making.
pub(crate) struct Flat {
    /// Its name in requests.
    pub(crate) name: &'static str,
    /// Identifier of its name in the message files.
    pub(crate) label: &'static str,
    /// For which view.
    pub(crate) view: DrawingView,
    draw: fn(&Basket, &Words) -> Option<Drawing>,
}

impl Flat {
    /// Whether a basket has what it shows.
    pub(crate) fn is_of(&self, basket: &Basket) -> bool {
        match self.name {
            "ear" => basket.ears.is_some(),
            "lid-closed" | "lid-open" => basket.lid.is_some(),
            _ => true,
        }
    }
}

/// All of them.
pub(crate) const FLAT: &[Flat] = &{
    use DrawingView::{Chart, Side, Template};
    const fn flat(
        view: DrawingView,
        name: &'static str,
        label: &'static str,
        draw: fn(&Basket, &Words) -> Option<Drawing>,
    ) -> Flat {
        Flat { name, label, view, draw }
    }
    [
        flat(Side, "section", "form-drawing-section", |basket, words| Some(drawings::section(basket, words))),
        flat(Side, "lid-closed", "form-drawing-lid-closed", |basket, words| {
            with_lid(basket, words, LidPose::Closed)
        }),
        flat(Side, "lid-open", "form-drawing-lid-open", |basket, words| {
            with_lid(basket, words, LidPose::Open)
        }),
        flat(Side, "base-plan", "form-drawing-base-plan", |basket, words| {
            Some(drawings::base_plan(basket, words))
        }),
        flat(Side, "taper-chart", "form-drawing-taper-chart", |basket, words| {
            Some(drawings::taper_chart(basket, words))
        }),
        flat(Side, "plan", "form-drawing-plan", |basket, words| Some(drawings::plan(basket, words))),
        flat(Chart, "chart-outside", "form-drawing-chart-outside", |basket, words| {
            Some(drawings::chart(basket, words, Face::Outside, ChartKind::True))
        }),
        flat(Chart, "chart-inside", "form-drawing-chart-inside", |basket, words| {
            Some(drawings::chart(basket, words, Face::Inside, ChartKind::True))
        }),
        flat(Chart, "chart-outside-grid", "form-drawing-chart-outside-grid", |basket, words| {
            Some(drawings::chart(basket, words, Face::Outside, ChartKind::Grid))
        }),
        flat(Chart, "chart-inside-grid", "form-drawing-chart-inside-grid", |basket, words| {
            Some(drawings::chart(basket, words, Face::Inside, ChartKind::Grid))
        }),
        flat(Template, "base-disc", "form-drawing-base-disc", |basket, words| {
            Some(drawings::base_disc(basket, words))
        }),
        flat(Template, "spacing-base", "form-drawing-spacing-base", |basket, words| {
            Some(drawings::spacing_strip(basket, words, At::Base))
        }),
        flat(Template, "stave", "form-drawing-stave", |basket, words| {
            drawings::stave_templates(basket, words).into_iter().next()
        }),
        flat(Template, "spacing-rim", "form-drawing-spacing-rim", |basket, words| {
            Some(drawings::spacing_strip(basket, words, At::Rim))
        }),
        flat(Template, "scarf", "form-drawing-scarf", |basket, words| {
            Some(drawings::scarf_template(basket, words))
        }),
        flat(Template, "drilling", "form-drawing-drilling", |basket, words| {
            Some(drawings::drilling_template(basket, words))
        }),
        flat(Template, "ear", "form-drawing-ear", drawings::ear_template),
        flat(Template, "check-bars", "form-drawing-check-bars", |_, words| Some(drawings::check_bars(words))),
    ]
};

/// The finished basket from the side, with its lid.
fn with_lid(basket: &Basket, words: &Words, pose: LidPose) -> Option<Drawing> {
    basket.lid.as_ref()?;
    let solid = solid::with_lid(basket, Stage::Finished, Detail::Page, pose);
    let view = View::named("front").ok()?;
    let mut drawing = draw(&solid, &view, &Style::print(LID_WIDTH, LID_HEIGHT)).ok()?;
    drawing.title.clone_from(&basket.title);
    drawing.description = words.name(Stage::Finished);
    Some(drawings::kept(drawing, words))
}

/// A picture in the round as a file, with its media type.
pub(crate) fn picture(request: &PictureRequest, shop: Shop<'_>) -> Result<(&'static str, Vec<u8>), Refusal> {
    let stage = match request.stage.as_deref() {
        None => Stage::Finished,
        Some(name) => {
            Stage::named(name).ok_or_else(|| unknown("stage", name, "`stages` of a look lists them."))?
        }
    };
    let detail = match request.detail {
        Some(DetailWord::Thumbnail) => Detail::Thumbnail,
        Some(DetailWord::Page) | None => Detail::Page,
        Some(DetailWord::Full) => Detail::Full,
    };
    let pose = match request.lid {
        Some(LidWord::Closed) | None => LidPose::Closed,
        Some(LidWord::Open) => LidPose::Open,
        Some(LidWord::Off) => LidPose::Off,
    };
    let basket = compute::basket(&request.source, shop).map_err(Refusal::misread)?;
    let solid = solid::with_lid(&basket, stage, detail, pose);
    match request.format {
        Some(SolidFormat::Glb) | None => Ok(("model/gltf-binary", solid::glb(&solid))),
        Some(SolidFormat::Stl) => Ok(("model/stl", solid::stl(&solid))),
        Some(SolidFormat::ThreeMf) => {
            let file = solid::three_mf(&solid).map_err(|error| {
                Refusal::new(
                    StatusCode::INTERNAL_SERVER_ERROR,
                    error.to_string(),
                    "format",
                    "Take another format.",
                )
            })?;
            Ok(("model/3mf", file))
        }
    }
}

/// A drawing as SVG.
pub(crate) fn drawing(request: &DrawingRequest, shop: Shop<'_>) -> Result<String, Refusal> {
    let basket = compute::basket(&request.source, shop).map_err(Refusal::misread)?;
    let words = words(request.language.as_deref(), request.units, basket.units)?;
    let drawn = if let Some(name) = request.name.strip_prefix("stage-") {
        Plate::named(name).ok().and_then(|plate| stage_drawing(&basket, &words, plate))
    } else {
        FLAT.iter().find(|flat| flat.name == request.name).and_then(|flat| (flat.draw)(&basket, &words))
    };
    let drawn = drawn.ok_or_else(|| unknown("drawing", &request.name, "`drawings` of a look lists them."))?;
    Ok(drawn.to_svg())
}

/// The weaving crossing by crossing.
pub(crate) fn chart(request: &ChartRequest, shop: Shop<'_>) -> Result<Chart, Refusal> {
    let basket = compute::basket(&request.source, shop).map_err(Refusal::misread)?;
    in_bounds(&basket)?;
    let words = words(request.language.as_deref(), None, basket.units)?;
    let face = match request.face {
        Some(FaceWord::Inside) => Face::Inside,
        Some(FaceWord::Outside) | None => Face::Outside,
    };
    let mut seen: Vec<Seen> = Vec::new();
    let rows = basket.body.weave.each_row.iter().map(|row| ChartRow {
        number: row.number,
        course: row.course,
        cells: (1..=basket.body.uprights().count)
            .map(|stave| {
                let at = basket.body.weave.colour(row.number, stave, face);
                index_of(&mut seen, at.weaver.map(|weaver| weaver + 1), at.colour, &words)
            })
            .collect(),
    });
    let rows = rows.collect();
    let joins = basket.body.weave.courses.iter().flat_map(|course| &course.joins);
    let joins = joins.map(|join| ChartJoin {
        row: join.row,
        cut_over: join.cut_over,
        start_behind: join.start_behind,
        recolour: join.recolour,
    });
    Ok(Chart {
        staves: basket.body.uprights().count,
        numbers_rise_left: drawings::numbers_rise_left(&basket, face),
        joins: joins.collect(),
        seen,
        rows,
    })
}

fn index_of(seen: &mut Vec<Seen>, weaver: Option<u32>, colour: &Colour, words: &Words) -> u16 {
    let known = seen.iter().position(|known| known.weaver == weaver && known.colour.name == colour.name);
    let index = known.unwrap_or_else(|| {
        seen.push(Seen { weaver, colour: colour_name(colour, words) });
        seen.len() - 1
    });
    u16::try_from(index).unwrap_or(u16::MAX)
}

/// Whether a basket is small enough to be shown crossing by crossing. Drawings and solids of a larger one are
/// made plainer by themselves.
fn in_bounds(basket: &Basket) -> Result<(), Refusal> {
    let crossings = basket.body.crossings();
    if crossings <= CROSSINGS {
        return Ok(());
    }
    Err(Refusal::senseless(
        format!(
            "{} rows on {} staves are too many to show one by one",
            basket.body.weave.rows,
            basket.body.uprights().count
        ),
        basket::pattern::keys::weave::COURSES.path,
        "Take fewer staves, a wider weaver or a smaller mould; all else is shown all the same, drawings made plainer.",
    ))
}

fn unknown(what: &str, name: &str, help: &str) -> Refusal {
    let shown: String = name.chars().take(60).collect();
    Refusal::senseless(format!("there is no {what} `{shown}` of this basket"), what, help)
}
