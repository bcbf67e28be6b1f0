//! How the weavers of a course go over and under: a few staves from outside, each weaver with the number of its
//! move.
//!
//! Weavers that lie in rows above each other are drawn as bands; those that are twisted round each other as lines
//! that cross between the staves. What passes where is asked of the weave, stave by stave.

use basket::Basket;
use basket::message::Value;
use basket::weave::{Course, Fabric};
use kurbo::{BezPath, Point, Rect, Shape, Vec2};
use words::Words;

use crate::drawing::{Drawing, Label, Line, TOLERANCE, Tone, closed, open};

/// From stave to stave, and the width of one, in mm.
const PITCH: f64 = 8.4;
const STAVE: f64 = 4.8;
/// From row to row, and the height of a weaver, in mm.
const ROW: f64 = 6.4;
const WEAVER: f64 = 3.6;
/// How far staves run on beyond the rows, in mm.
const BEYOND: f64 = 5.0;
/// Fewest and most staves that are shown.
const STAVES: [u32; 2] = [8, 14];
/// Fewest and most rows of weavers that are not twisted.
const ROWS: [u32; 2] = [2, 6];
/// Rounds of twisted weavers: more would repeat the first.
const ROUNDS: u32 = 1;

/// The moves of a course, counted from 1 as in the handout: over which staves each weaver goes, and under which.
/// None where there is no such course, or it has no rows.
pub fn moves(basket: &Basket, words: &Words, number: u32) -> Option<Drawing> {
    let course = basket.body.weave.courses.get(number.checked_sub(1)? as usize)?;
    if course.rows == 0 {
        return None;
    }
    let args = [
        ("number", Value::from(number)),
        ("weave", course.weave.name().into()),
        ("weavers", course.fabric.weavers().into()),
    ];
    let title = words.with("drawing-moves", &args);
    let name = format!("moves-{number}");
    let mut drawing = Drawing::new(name, title, words.with("drawing-moves-description", &args));
    let plan = Moves::of(course);
    plan.staves(&mut drawing);
    if plan.is_twisted() {
        plan.twisted(&mut drawing);
    } else {
        plan.laid(&mut drawing);
    }
    plan.way(&mut drawing, words);
    Some(drawing.fitted(1.0))
}

struct Moves<'a> {
    fabric: &'a Fabric,
    /// How many staves and rows are shown.
    staves: u32,
    rows: u32,
}

impl<'a> Moves<'a> {
    fn of(course: &'a Course) -> Self {
        let fabric = &course.fabric;
        let two_repeats = fabric.repeat().saturating_mul(2).clamp(STAVES[0], STAVES[1]);
        let rows = if fabric.twined() > 1 { ROUNDS } else { fabric.repeat().clamp(ROWS[0], ROWS[1]) };
        Self { fabric, staves: two_repeats.min(fabric.count), rows: rows.min(course.rows) }
    }

    fn is_twisted(&self) -> bool {
        self.fabric.twined() > 1
    }

    /// The stave at a place, from where the course begins.
    fn stave(&self, place: u32) -> u32 {
        self.fabric.stave_in(0, place)
    }

    /// Middle of a stave; numbers run to the right, as on the mould with its base up.
    fn x(place: f64) -> f64 {
        place * PITCH
    }

    /// Middle of a row: on the mould the first row lies at the base, which is up.
    fn y(row: u32) -> f64 {
        f64::from(row) * ROW
    }

    fn low(&self) -> f64 {
        let lanes = if self.is_twisted() { self.fabric.twined() } else { self.rows };
        Self::y(lanes.saturating_sub(1))
    }

    fn bar(place: u32, from: f64, to: f64) -> Rect {
        let x = Self::x(f64::from(place));
        Rect::new(x - STAVE / 2.0, from, x + STAVE / 2.0, to)
    }

    fn staves(&self, drawing: &mut Drawing) {
        for place in 0..self.staves {
            drawing.shape(Self::bar(place, -BEYOND, self.low() + BEYOND), Tone::Pale, Line::Fine);
            let at = Point::new(Self::x(f64::from(place)), -BEYOND - Label::SMALL * 0.8);
            let number = self.stave(place) + 1;
            drawing.label(Label::new(number.to_string(), at).middle().sized(Label::SMALL));
        }
    }

    /// The stave drawn over what passes behind it at this height.
    fn cover(drawing: &mut Drawing, place: u32, y: f64) {
        let bar = Self::bar(place, y - WEAVER / 2.0 - 0.3, y + WEAVER / 2.0 + 0.3);
        drawing.fill(bar, Tone::Pale);
        for x in [bar.x0, bar.x1] {
            drawing.line((x, bar.y0), (x, bar.y1), Line::Fine);
        }
    }

    /// Rows as bands, each numbered at its beginning.
    fn laid(&self, drawing: &mut Drawing) {
        let (from, to) = (Self::x(-0.5), Self::x(f64::from(self.staves) - 0.5));
        for row in 0..self.rows {
            let y = Self::y(row);
            let tone = if row.is_multiple_of(2) { Tone::Light } else { Tone::Mid };
            drawing.shape(Rect::new(from, y - WEAVER / 2.0, to, y + WEAVER / 2.0), tone, Line::Edge);
            for place in 0..self.staves {
                if !self.fabric.is_over(row, self.stave(place)) {
                    Self::cover(drawing, place, y);
                }
            }
            let text = format!("{}{}", row + 1, self.whose(row));
            drawing.label(Label::new(text, (from - 1.4, y)).end().bold());
        }
    }

    /// The letter of the weaver that lays a row, where several take turns.
    fn whose(&self, row: u32) -> String {
        let mut cells = (0..self.staves).map(|place| self.fabric.cell(row, self.stave(place)));
        let weaver = cells.find_map(|cell| cell.outside.or(cell.inside)).unwrap_or(0);
        if self.fabric.weavers() > 1 { letter(weaver) } else { String::new() }
    }

    /// Twisted weavers as lines: in front of the staves in their own lane, behind them through the midst of all.
    fn twisted(&self, drawing: &mut Drawing) {
        let weavers = self.fabric.twined();
        let behind = Self::y(weavers.saturating_sub(1)) / 2.0;
        for weaver in 0..weavers {
            let height = |place: u32| {
                if self.fabric.is_outside(0, self.stave(place), weaver) { Self::y(weaver) } else { behind }
            };
            self.strand(drawing, weaver, &height);
        }
        for place in 0..self.staves {
            let inside = self.fabric.cell(0, self.stave(place)).inside;
            if inside.is_some() {
                Self::cover(drawing, place, behind);
            }
        }
        // In front again where lanes cross the midst.
        for weaver in (0..weavers).filter(|weaver| (Self::y(*weaver) - behind).abs() < WEAVER) {
            for place in
                (0..self.staves).filter(|place| self.fabric.is_outside(0, self.stave(*place), weaver))
            {
                Self::piece(drawing, weaver, place);
            }
        }
        self.numbers(drawing, weavers, behind);
    }

    /// A weaver all the way, as a band that bends between staves.
    fn strand(&self, drawing: &mut Drawing, weaver: u32, height: &impl Fn(u32) -> f64) {
        let mut middle: Vec<Point> = vec![Point::new(Self::x(-0.5), height(0))];
        for place in 0..self.staves {
            let (x, y) = (Self::x(f64::from(place)), height(place));
            middle.extend([Point::new(x - STAVE / 2.0, y), Point::new(x + STAVE / 2.0, y)]);
        }
        middle.push(Point::new(Self::x(f64::from(self.staves) - 0.5), height(self.staves.saturating_sub(1))));
        drawing.shape(band(&middle), tone(weaver), Line::Edge);
    }

    /// A weaver in front of one stave.
    fn piece(drawing: &mut Drawing, weaver: u32, place: u32) {
        let (x, y) = (Self::x(f64::from(place)), Self::y(weaver));
        let half = Vec2::new(STAVE / 2.0, 0.0);
        let at = Point::new(x, y);
        let piece = Rect::from_points(
            at - half - Vec2::new(0.3, WEAVER / 2.0),
            at + half + Vec2::new(0.3, WEAVER / 2.0),
        );
        drawing.fill(piece, tone(weaver));
        for side in [piece.y0, piece.y1] {
            drawing.line((piece.x0, side), (piece.x1, side), Line::Edge);
        }
    }

    /// The number of a move where it goes behind its stave: the weaver that is furthest back moves first.
    fn numbers(&self, drawing: &mut Drawing, weavers: u32, behind: f64) {
        let mut moved = 0;
        for place in 0..self.staves {
            let Some(weaver) = self.fabric.cell(0, self.stave(place)).inside else { continue };
            moved += 1;
            if moved > weavers * 2 {
                break;
            }
            let at = Point::new(Self::x(f64::from(place)), behind);
            drawing.shape(kurbo::Circle::new(at, 2.2), Tone::White, Line::Edge);
            drawing.label(Label::new(moved.to_string(), at).middle().bold());
            let from = Point::new(Self::x(f64::from(place)), self.low() + BEYOND + Label::SMALL * 0.9);
            drawing.label(Label::new(letter(weaver), from).middle().sized(Label::SMALL));
        }
        for weaver in 0..weavers {
            let at = Point::new(Self::x(-0.5) - 2.6, Self::y(weaver));
            drawing.label(Label::new(letter(weaver), at).middle().bold());
        }
    }

    /// An arrow along the way of the weaver, and what the numbers are.
    fn way(&self, drawing: &mut Drawing, words: &Words) {
        let y = drawing.bounds().y1 + 3.0;
        let (from, to) = (Point::new(Self::x(-0.4), y), Point::new(Self::x(1.1), y));
        drawing.stroke(open([from, to]), Line::Edge);
        drawing.fill(
            closed([to + Vec2::new(2.0, 0.0), to + Vec2::new(0.0, 0.9), to - Vec2::new(0.0, 0.9)]),
            Tone::Black,
        );
        let says = if self.is_twisted() { "drawing-moves-twisted" } else { "drawing-moves-laid" };
        let width = (Self::x(f64::from(self.staves)) - to.x - 4.0).max(62.0);
        for (line, number) in
            crate::text::wrapped(&words.term(says), width, Label::SMALL).into_iter().zip(0..)
        {
            let at = to + Vec2::new(4.0, f64::from(number) * Label::SMALL * 1.25);
            drawing.label(Label::new(line, at).sized(Label::SMALL));
        }
    }
}

/// The letter of a twisted weaver.
fn letter(weaver: u32) -> String {
    char::from(b'A' + (weaver % 26) as u8).to_string()
}

/// Greys that stay apart, the first the lightest.
fn tone(weaver: u32) -> Tone {
    match weaver % 3 {
        0 => Tone::White,
        1 => Tone::Light,
        _ => Tone::Mid,
    }
}

/// A band of the height of a weaver along a way.
fn band(middle: &[Point]) -> BezPath {
    let half = Vec2::new(0.0, WEAVER / 2.0);
    let upper = middle.iter().map(|at| *at - half);
    let lower = middle.iter().rev().map(|at| *at + half);
    closed(upper.chain(lower)).to_path(TOLERANCE)
}
