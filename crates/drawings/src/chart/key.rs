//! The key below a chart: what its colours, hatches and marks stand for.

use basket::message::Value;
use basket::pattern::Way;
use basket::weave::{Course, Face};
use kurbo::{BezPath, Point, Rect, Vec2};
use words::Words;

use super::marks;
use super::palette::Palette;
use super::plane::Plane;
use crate::drawing::{Drawing, Label, Line, Tone};
use crate::text::wrapped;

/// Size of a sample, in mm.
const SAMPLE: (f64, f64) = (7.0, 3.6);
/// Height of a line of the key, in mm.
const LINE: f64 = 4.0;
/// Least width of a line of text, in mm.
const LEAST: f64 = 160.0;
/// Distance between entries, in mm.
const APART: f64 = 6.0;

/// Writes the key below all that is drawn.
pub(super) fn write(drawing: &mut Drawing, plane: &Plane<'_>, palette: &Palette<'_>, words: &Words) {
    let bounds = drawing.bounds();
    let mut pen = Pen { left: bounds.x0, right: bounds.x1, at: Point::new(bounds.x0, bounds.y1 + LINE) };
    for (index, colour) in palette.colours() {
        let name = words.colour(&colour.name);
        let name = palette.number(index).map_or(name.clone(), |number| format!("{number} {name}"));
        let at = pen.room(SAMPLE.0 * 2.0 + 1.5, &name);
        sample(drawing, palette, index, at);
        drawing.label(Label::new(name, at + Vec2::new(SAMPLE.0 * 2.0 + 1.5, 0.0)).sized(Label::SMALL));
    }
    let joined = plane.basket.body.weave.courses.iter().any(|course| !course.joins.is_empty());
    let join = match plane.face {
        Face::Outside => "drawing-chart-join-outside",
        Face::Inside => "drawing-chart-join-inside",
    };
    if joined {
        let text = words.term(join);
        let at = pen.room(3.0, &text);
        marks::join_mark(drawing, at + Vec2::new(1.0, 0.0));
        drawing.label(Label::new(text, at + Vec2::new(3.0, 0.0)).sized(Label::SMALL));
    }
    if plane.basket.body.weave.courses.iter().any(|course| course.way == Way::RowByRow && course.rows > 0) {
        let text = words.term("drawing-chart-begin");
        let at = pen.room(3.0, &text);
        marks::begin_mark(drawing, at + Vec2::new(1.0, 0.0));
        drawing.label(Label::new(text, at + Vec2::new(3.0, 0.0)).sized(Label::SMALL));
    }
    let side = match (plane.face, plane.numbers_rise_left()) {
        (Face::Outside, true) => "drawing-chart-to-left",
        (Face::Outside, false) => "drawing-chart-outside-to-right",
        (Face::Inside, true) => "drawing-chart-inside-to-left",
        (Face::Inside, false) => "drawing-chart-to-right",
    };
    let notes = std::iter::once(words.term(side));
    let courses = plane
        .basket
        .body
        .weave
        .courses
        .iter()
        .zip(1_u32..)
        .filter(|(course, _)| course.rows > 0)
        .map(|(course, number)| about(plane, course, number, words));
    let width = bounds.width().max(LEAST);
    for line in notes.chain(courses).flat_map(|text| wrapped(&text, width, Label::SMALL)) {
        let at = pen.line();
        drawing.label(Label::new(line, at).sized(Label::SMALL));
    }
}

/// A course in words: number, weave, materials, rows, and what stands out in it, where anything does.
fn about(plane: &Plane<'_>, course: &Course, number: u32, words: &Words) -> String {
    let mut materials: Vec<String> =
        course.weavers.iter().map(|weaver| words.material(&weaver.material.name)).collect();
    materials.dedup();
    let args = [
        ("number", number.into()),
        ("weave", course.weave.name().into()),
        ("weavers", Value::Name(materials.join(", "))),
        ("from", course.first_row.into()),
        ("rows", course.rows.into()),
        ("to", (course.first_row + course.rows).saturating_sub(1).into()),
    ];
    let course_said = words.with("drawing-chart-about-course", &args);
    let look = plane.basket.body.weave.look(course, plane.face);
    if !look.stands_out() {
        return course_said;
    }
    let seen = look.said();
    let seen = [("course", Value::Name(course_said)), ("look", seen.into())];
    words.with("drawing-chart-course-seen", &seen)
}

/// A weaver's and a stave's crossing in a colour, side by side.
fn sample(drawing: &mut Drawing, palette: &Palette<'_>, index: usize, at: Point) {
    let (width, height) = SAMPLE;
    let cell = |number: f64| {
        Rect::new(
            at.x + number * width,
            at.y - height / 2.0,
            at.x + (number + 1.0) * width,
            at.y + height / 2.0,
        )
    };
    for (rect, tone) in [(cell(0.0), palette.tone(index)), (cell(1.0), palette.stave(index))] {
        drawing.shape(rect, tone, Line::Fine);
        let mut hatch = BezPath::new();
        Palette::hatch(index, rect, &mut hatch);
        drawing.fill(hatch, Tone::Black);
    }
}

/// Where the next entry of the key comes.
struct Pen {
    left: f64,
    right: f64,
    at: Point,
}

impl Pen {
    /// Room for a sample and a text beside it; on the next line if this one is full.
    fn room(&mut self, sample: f64, text: &str) -> Point {
        let width = sample + Label::new(text, Point::ZERO).sized(Label::SMALL).width();
        if self.at.x + width > self.right && self.at.x > self.left {
            self.at = Point::new(self.left, self.at.y + LINE);
        }
        let at = self.at;
        self.at.x += width + APART;
        at
    }

    /// A line of its own.
    fn line(&mut self) -> Point {
        if self.at.x > self.left {
            self.at = Point::new(self.left, self.at.y + LINE);
        }
        let at = self.at;
        self.at.y += LINE;
        at
    }
}
