//! Numbers, joins, courses and ears round a chart.

use basket::pattern::Way;
use basket::weave::{Course, Face, Join, Row};
use kurbo::{BezPath, Point};
use words::Words;

use super::palette::Palette;
use super::plane::Plane;
use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::text::spread;

/// Distance of numbers from the weaving, in mm.
const AWAY: f64 = 1.4;
/// Every how many rows or staves there may be a number.
const STEPS: [u32; 7] = [1, 5, 10, 20, 50, 100, 500];
/// Half the size of the mark of a join, in mm.
const JOIN: f64 = 0.9;
/// The same of a beginning.
const BEGIN: f64 = 0.6;

/// The smallest step at which numbers of this size keep apart.
fn step(pitch: f64, size: f64) -> u32 {
    STEPS.into_iter().find(|step| f64::from(*step) * pitch >= size).unwrap_or(1000)
}

fn is_numbered(number: u32, step: u32) -> bool {
    number == 1 || number.is_multiple_of(step) && number > step / 2
}

/// Numbers of the rows at both sides.
pub(super) fn rows(drawing: &mut Drawing, plane: &Plane<'_>) {
    let lowest =
        plane.rows().map(|row| plane.heights(row)).map(|(bottom, top)| bottom - top).fold(1e9, f64::min);
    let step = step(lowest, Label::SMALL * 1.1);
    let mut ticks = BezPath::new();
    for row in plane.rows().filter(|row| is_numbered(row.number, step)) {
        let (bottom, top) = plane.heights(row);
        let y = f64::midpoint(bottom, top);
        let half = plane.half_within((y - Label::SMALL / 2.0, y + Label::SMALL / 2.0));
        for side in [-1.0, 1.0] {
            ticks.move_to((side * plane.girth(row.along) / 2.0, y));
            ticks.line_to((side * (half + AWAY * 0.7), y));
            let label = Label::new(row.number.to_string(), (side * (half + AWAY), y)).sized(Label::SMALL);
            drawing.label(if side < 0.0 { label.end() } else { label });
        }
    }
    drawing.stroke(ticks, Line::Dimension);
}

/// Numbers of the staves below and above.
pub(super) fn staves(drawing: &mut Drawing, plane: &Plane<'_>) {
    let mut rows = plane.rows();
    let (first, last) = (rows.next(), rows.next_back());
    for (row, y, away) in [(first, plane.foot(), 1.0), (last, plane.top(), -1.0)] {
        let Some(row) = row else { continue };
        let girth = plane.girth(row.along);
        let widest = Label::new(plane.count.to_string(), Point::ZERO).sized(Label::SMALL).width();
        let step = step(girth / f64::from(plane.count), widest + 0.8);
        let mut ticks = BezPath::new();
        for number in (1..=plane.count).filter(|&number| is_numbered(number, step)) {
            let x = plane.x(f64::from(number - 1), girth);
            ticks.move_to((x, y));
            ticks.line_to((x, y + away * AWAY * 0.7));
            let at = (x, y + away * (AWAY + Label::SMALL * 0.4));
            drawing.label(Label::new(number.to_string(), at).middle().sized(Label::SMALL));
        }
        drawing.stroke(ticks, Line::Dimension);
    }
}

/// A line where one course ends and the next begins, and its number.
pub(super) fn courses(drawing: &mut Drawing, plane: &Plane<'_>, palette: &Palette<'_>, words: &Words) {
    let side = plane.rows().map(|row| plane.girth(row.along) / 2.0).fold(0.0, f64::max) + AWAY + 3.0;
    let width = |number: u32| Label::new(number.to_string(), Point::ZERO).sized(Label::SMALL).width();
    let side = side + width(plane.basket.body.weave.rows);
    let mut named: Vec<(f64, String)> = Vec::new();
    for (course, number) in plane.basket.body.weave.courses.iter().zip(1_u32..) {
        let of_course = |row: &&Row| row.course == number;
        let (first, last) = (plane.rows().find(of_course), plane.rows().rfind(of_course));
        let (Some(first), Some(last)) = (first, last) else { continue };
        let (bottom, top) = (plane.heights(first).0, plane.heights(last).1);
        let half = plane.girth(first.along) / 2.0;
        if number > 1 {
            drawing.line((-half, bottom), (half, bottom), Line::Edge);
        }
        let brace = [(-1.2, 0.0), (0.0, 0.0), (0.0, 1.0), (-1.2, 1.0)];
        let inset = 0.3;
        let place = |(x, share): (f64, f64)| {
            Point::new(side + x, (bottom - inset) + (top - bottom + 2.0 * inset) * share)
        };
        drawing.stroke(crate::drawing::open(brace.map(place)), Line::Dimension);
        let text = words.with("drawing-chart-course", &[("number", number.into())]);
        named.push((f64::midpoint(bottom, top), format!("{text}{}", colours(palette, course))));
        start(drawing, plane, first, course.fabric.stave_in(0, 0));
    }
    // From the top of the chart down.
    named.reverse();
    let wanted: Vec<f64> = named.iter().map(|(y, _)| *y).collect();
    for ((_, text), y) in named.into_iter().zip(spread(&wanted, Label::SMALL * 1.2)) {
        drawing.label(Label::new(text, (side + 1.2, y)).sized(Label::SMALL));
    }
}

/// The numbers of a course's colours in the order of its weavers, such as `: 1, 2`; nothing where all is one colour.
fn colours(palette: &Palette<'_>, course: &Course) -> String {
    let of_weavers = course.weavers.iter().flat_map(|weaver| &weaver.colours);
    let mut numbers: Vec<String> = Vec::new();
    for number in of_weavers.filter_map(|colour| palette.number(palette.index(colour))) {
        if !numbers.contains(&number) {
            numbers.push(number);
        }
    }
    if numbers.is_empty() { String::new() } else { format!(": {}", numbers.join(", ")) }
}

/// A pointer at the stave where a course begins, unless that is the first.
fn start(drawing: &mut Drawing, plane: &Plane<'_>, row: &Row, stave: u32) {
    if stave > 0 {
        let at = Point::new(plane.x(f64::from(stave), plane.girth(row.along)), plane.heights(row).0);
        let corners = [(0.0, -0.2), (1.1, 2.2), (-1.1, 2.2)];
        drawing.shape(closed(corners.map(|(x, y)| at + kurbo::Vec2::new(x, y))), Tone::White, Line::Edge);
    }
}

/// A mark where each row begins and ends that is woven by itself.
pub(super) fn beginnings(drawing: &mut Drawing, plane: &Plane<'_>) {
    for row in plane.rows() {
        let Some(course) = plane.basket.body.weave.course_of(row.number) else { continue };
        if course.way == Way::RowByRow {
            let stave = course.fabric.stave_in(row.number - course.first_row, 0);
            let (bottom, top) = plane.heights(row);
            let x = plane.x(f64::from(stave), plane.girth(row.along));
            begin_mark(drawing, Point::new(x, f64::midpoint(bottom, top)));
        }
    }
}

pub(super) fn begin_mark(drawing: &mut Drawing, at: Point) {
    drawing.shape(kurbo::Circle::new(at, BEGIN), Tone::White, Line::Fine);
}

/// A mark where a spent strand ends: over its stave from outside, where the new one starts from inside.
pub(super) fn joins(drawing: &mut Drawing, plane: &Plane<'_>) {
    let joins = plane.basket.body.weave.courses.iter().flat_map(|course| &course.joins);
    for join in joins {
        if let Some(at) = join_at(plane, *join) {
            join_mark(drawing, at);
        }
    }
}

fn join_at(plane: &Plane<'_>, join: Join) -> Option<Point> {
    let row = plane.rows().nth(join.row.checked_sub(1)? as usize)?;
    let stave = match plane.face {
        Face::Outside => join.cut_over,
        Face::Inside => join.start_behind,
    };
    let (bottom, top) = plane.heights(row);
    let x = plane.x(f64::from(stave.checked_sub(1)?), plane.girth(row.along));
    Some(Point::new(x, f64::midpoint(bottom, top)))
}

pub(super) fn join_mark(drawing: &mut Drawing, at: Point) {
    drawing.shape(kurbo::Circle::new(at, JOIN), Tone::White, Line::Edge);
    drawing.fill(kurbo::Circle::new(at, JOIN * 0.35), Tone::Black);
}

/// A mark above the weaving for each ear.
pub(super) fn ears(drawing: &mut Drawing, plane: &Plane<'_>, words: &Words) {
    let (Some(ears), Some(row)) = (&plane.basket.ears, plane.rows().next_back()) else { return };
    let y = plane.top() - AWAY - Label::SMALL * 1.6;
    for (ear, number) in ears.each.iter().zip(1_u32..) {
        let x = plane.x(ear.turn * f64::from(plane.count), plane.girth(row.along));
        ear_mark(drawing, Point::new(x, y));
        let text = words.with("drawing-ear-number", &[("number", number.into())]);
        let label = Label::new(text, (x + 1.8, y)).sized(Label::SMALL);
        let fits = label.bounds().x1 < plane.girth(row.along) / 2.0;
        drawing.label(if fits { label } else { Label { at: (x - 1.8, y).into(), ..label.end() } });
    }
}

pub(super) fn ear_mark(drawing: &mut Drawing, at: Point) {
    let corners = [(0.0, -1.5), (1.1, 0.0), (0.0, 1.5), (-1.1, 0.0)];
    drawing.fill(closed(corners.map(|(x, y)| at + kurbo::Vec2::new(x, y))), Tone::Black);
}
