//! A mould traced from a photograph; of the photograph nothing is kept.

use axum::http::StatusCode;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use basket::Length;
use basket::message::{Message, Value};
use basket::pattern::Units;
use basket::pattern::keys::Declared;
use basket::pattern::keys::mould::{
    BASE, CORNER, FULLNESS, GIRTHS, HEIGHT, LENGTH, LEVELS, RAYS, RIM, SHAPE, SIDE, WIDTH, WIDTHS,
};
use silhouette::{Failed, Known, Picture, Traced};

use super::api::{Edit, EditValue, TraceRequest, TracedMould};
use super::compute::{language, words};
use super::refusal::Refusal;
use super::text::marks;
use crate::mould_photo;

/// Places of an edge that are sent.
const PLACES: usize = 160;

/// Traces the mould on a photograph.
pub(crate) fn trace(request: &TraceRequest) -> Result<TracedMould, Refusal> {
    let language = language(request.language.as_deref())?;
    work(request).map_err(|refusal| refusal.told(language))
}

fn work(request: &TraceRequest) -> Result<TracedMould, Refusal> {
    let units = Units::from(request.units);
    let words = words(request.language.as_deref(), Some(request.units), units)?;
    let known = match (request.girth.trim(), request.height.trim()) {
        ("", "") => return Err(refused("refused-trace-size", "girth")),
        ("", height) => Known::Height(length(height, "height", units)?),
        (girth, _) => Known::Girth(length(girth, "girth", units)?),
    };
    let distance = match request.distance.trim() {
        "" => None,
        written => Some(length(written, "distance", units)?),
    };
    let camera = mould_photo::camera(distance, request.foot_up);
    let bytes = BASE64_STANDARD.decode(&request.photo).map_err(|_| refused("refused-no-photo", "photo"))?;
    let photo = mould_photo::of(&bytes).map_err(|_| refused("refused-trace-unread", "photo"))?;
    let picture = Picture::new(photo.width(), photo.height(), photo.as_raw())
        .ok_or_else(|| refused("refused-trace-unread", "photo"))?;
    let traced = silhouette::trace(&picture, camera, known).map_err(|failed| untraced(&failed))?;
    let percent = |share: f64| Value::Percent(share);
    let mut said = vec![words.with(
        "trace-done",
        &[("girths", Value::Count(traced.girths.len() as i64)), ("trust", percent(traced.trust))],
    )];
    if distance.is_none() {
        said.push(words.term("trace-no-distance"));
    }
    if matches!(known, Known::Height(_)) {
        said.push(words.term("trace-no-girth"));
    }
    if traced.lopsided > mould_photo::LOPSIDED {
        said.push(words.with("trace-lopsided", &[("share", percent(traced.lopsided))]));
    }
    if traced.smoothed {
        said.push(words.term("trace-smoothed"));
    }
    Ok(TracedMould {
        edits: edits(&traced, units),
        said,
        size: [photo.width(), photo.height()],
        matrix: matrix(&traced, request.foot_up),
        edges: [-1.0, 1.0].map(|side| edge(&traced, side)),
    })
}

fn length(written: &str, place: &str, units: Units) -> Result<f64, Refusal> {
    Length::parse(written, Some(units.unit())).map(Length::to_mm).map_err(|_| {
        let message = Message::new("refused-length").with("typed", Value::Name(written.to_owned()));
        Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, place)
    })
}

fn refused(id: &'static str, place: &str) -> Refusal {
    Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, Message::new(id), place)
}

fn untraced(failed: &Failed) -> Refusal {
    let id = match failed {
        Failed::TooSmall { .. } => "refused-trace-small",
        Failed::NotPlain => "refused-trace-not-plain",
        Failed::LooksAlike => "refused-trace-alike",
        Failed::Nothing => "refused-trace-nothing",
        Failed::CutOff => "refused-trace-cut-off",
        Failed::Several => "refused-trace-several",
        Failed::Leans => "refused-trace-leans",
        Failed::Lopsided => "refused-trace-lopsided",
        Failed::NoSize => "refused-trace-no-size",
    };
    refused(id, "photo")
}

/// The girths in the place of whatever the mould was before. What is traced is round.
fn edits(traced: &Traced, units: Units) -> Vec<Edit> {
    let others: [&dyn Declared; 12] =
        [&SHAPE, &LENGTH, &WIDTH, &CORNER, &FULLNESS, &RAYS, &LEVELS, &WIDTHS, &BASE, &RIM, &HEIGHT, &SIDE];
    let text = |mm: f64| {
        let length = Length::mm(mm);
        EditValue::Text(length.print(marks(length, units)))
    };
    let girths = traced.girths.iter().map(|pair| EditValue::List(pair.iter().copied().map(text).collect()));
    let value = EditValue::List(girths.collect());
    let remove = |key: &&dyn Declared| Edit::Remove { path: key.path().to_owned() };
    others.iter().map(remove).chain([Edit::Set { path: GIRTHS.path.to_owned(), value }]).collect()
}

/// Lays the photograph under a drawing of the side: its axis upright, its mould as large as the profile.
///
/// One scale serves all heights; the nearer the camera, the more foot and top lie beside the profile, which has
/// the perspective taken out.
fn matrix(traced: &Traced, foot_up: bool) -> [f64; 6] {
    let ends = [traced.edges.first(), traced.edges.last()].map(|edge| edge.map_or(0.0, |edge| edge.up));
    let (middle, reach) = (f64::midpoint(ends[0], ends[1]), (ends[1] - ends[0]).max(1.0));
    let radii = &traced.side.radii;
    let radius = |share: f64| {
        let at = (share * radii.len().saturating_sub(1) as f64).round() as usize;
        radii.get(at).copied().unwrap_or(0.0)
    };
    let (mut over, mut under) = (0.0, 0.0);
    for edge in &traced.edges {
        let share = (edge.up - ends[0]) / reach;
        let half = f64::midpoint(edge.sides[0], edge.sides[1]);
        over += half * radius(if foot_up { 1.0 - share } else { share });
        under += half * half;
    }
    let scale: f64 = if under > 0.0 { over / under } else { 1.0 };
    // A mould that stood on its rim is turned by half a turn, not mirrored.
    let scale = if foot_up { -scale } else { scale };
    let (sin, cos) = traced.axis.tilt.sin_cos();
    let [x, y] = traced.axis.through;
    [
        scale * cos,
        -scale * sin,
        scale * sin,
        scale * cos,
        -scale * (x * cos + y * sin),
        scale * (x * sin - y * cos + middle) - traced.side.height / 2.0,
    ]
}

/// An edge from below upward: the left one, or the right one.
fn edge(traced: &Traced, side: f64) -> Vec<[f64; 2]> {
    let step = traced.edges.len().div_ceil(PLACES).max(1);
    let which = usize::from(side > 0.0);
    let place = |edge: &silhouette::Edge| traced.axis.place(edge.up, side * edge.sides[which]);
    traced.edges.iter().step_by(step).chain(traced.edges.last()).map(place).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::api::UnitsWord;
    use image::{ImageFormat, Rgb, RgbImage};
    use std::io::Cursor;

    const WOOD: Rgb<u8> = Rgb([150, 100, 60]);
    const SHEET: Rgb<u8> = Rgb([225, 225, 228]);

    /// A cone as it is seen from very far away: 200 pixels across at the foot, 320 at the top, 200 high, its axis
    /// at 300 and its foot at 350.
    fn request(foot_up: bool) -> TraceRequest {
        let photo = RgbImage::from_fn(600, 500, |x, y| {
            let up = 350.0 - f64::from(y);
            let rise = if foot_up { 200.0 - up } else { up };
            let half = 100.0 + 60.0 * rise / 200.0;
            let inside = (0.0..=200.0).contains(&up) && (f64::from(x) - 300.0).abs() <= half;
            if inside { WOOD } else { SHEET }
        });
        let mut bytes = Vec::new();
        photo.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).unwrap();
        TraceRequest {
            photo: BASE64_STANDARD.encode(bytes),
            girth: "640 mm".to_owned(),
            height: String::new(),
            distance: "500 m".to_owned(),
            foot_up,
            units: UnitsWord::Mm,
            language: None,
        }
    }

    /// Where a pixel comes to lie, in mm right of the axis and above the foot.
    fn laid([a, b, c, d, e, f]: [f64; 6], [x, y]: [f64; 2]) -> [f64; 2] {
        [a * x + c * y + e, -(b * x + d * y + f)]
    }

    /// The largest girth is 640 mm, so a pixel is 640/320π mm (a circle's girth is π times its width).
    #[test]
    fn the_photograph_lies_in_scale_under_the_profile() {
        let mm = 640.0 / (320.0 * std::f64::consts::PI);
        for (foot_up, foot, top) in [(false, 350.0, 150.0), (true, 150.0, 350.0)] {
            let traced = trace(&request(foot_up)).unwrap();
            let [x, y] = laid(traced.matrix, [300.0, foot]);
            assert!(x.abs() < 0.7 && y.abs() < 1.5, "{foot_up}: foot at {x}, {y}");
            let aside = if foot_up { 140.0 } else { 460.0 };
            let [x, y] = laid(traced.matrix, [aside, top]);
            assert!((x - 160.0 * mm).abs() < 1.5 && (y - 200.0 * mm).abs() < 1.5, "{foot_up}: top {x}, {y}");
        }
    }

    #[test]
    fn what_cannot_be_traced_is_told_in_the_readers_words() {
        let blank = RgbImage::from_pixel(400, 400, SHEET);
        let mut bytes = Vec::new();
        blank.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).unwrap();
        for (photo, girth, said) in [
            (BASE64_STANDARD.encode(bytes), "640 mm", "look alike"),
            ("no photograph".to_owned(), "640 mm", "no photograph"),
            (String::new(), "640 mm", "cannot be read"),
            (request(false).photo, "", "girth"),
            (request(false).photo, "wide", "wide"),
        ] {
            let asked = TraceRequest { photo, girth: girth.to_owned(), ..request(false) };
            let refusal = trace(&asked).unwrap_err();
            assert_eq!(refusal.status(), 422);
            assert!(refusal.fault().what.contains(said), "{}", refusal.fault().what);
            assert!(
                refusal.told(words::Language::German).fault().what != trace(&asked).unwrap_err().fault().what
            );
        }
    }
}
