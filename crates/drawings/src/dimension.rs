//! Dimension lines: extension lines, arrows and the measure.

use kurbo::{Point, Vec2};

use crate::drawing::{Anchor, Drawing, Label, Line, Tone, closed};

/// Room between what is measured and its extension line, in mm.
const GAP: f64 = 0.8;
/// How far an extension line runs on beyond the dimension line, in mm.
const BEYOND: f64 = 1.0;
/// Length of an arrow in mm.
const ARROW: f64 = 1.8;
/// Half the width of an arrow in mm.
const BARB: f64 = 0.33;
/// From the dimension line to the middle of its text, in mm.
const ASIDE: f64 = 1.9;

/// A measure between two places, on a line beside them.
#[derive(Clone, Debug, PartialEq)]
pub struct Dimension {
    /// The places measured.
    pub places: [Point; 2],
    /// The ends of the dimension line.
    pub ends: [Point; 2],
    /// What it says.
    pub text: String,
}

impl Dimension {
    /// A level dimension line at the height `y` of the drawing.
    pub fn level(places: [Point; 2], y: f64, text: impl Into<String>) -> Self {
        let mut places = places;
        places.sort_by(|a, b| a.x.total_cmp(&b.x));
        Self { places, ends: places.map(|place| Point::new(place.x, y)), text: text.into() }
    }

    /// An upright dimension line at `x` of the drawing; its text reads from the right.
    pub fn upright(places: [Point; 2], x: f64, text: impl Into<String>) -> Self {
        let mut places = places;
        places.sort_by(|a, b| b.y.total_cmp(&a.y));
        Self { places, ends: places.map(|place| Point::new(x, place.y)), text: text.into() }
    }

    /// Draws it. Where text and arrows have no room between the ends, they stand outside.
    pub fn draw(&self, drawing: &mut Drawing) {
        let [from, to] = self.ends;
        let way = to - from;
        let length = way.hypot();
        let direction = if length > 0.0 { way / length } else { Vec2::new(1.0, 0.0) };
        for (place, end) in self.places.iter().zip(self.ends) {
            extension(drawing, *place, end);
        }
        let label = Label::new(&self.text, from.midpoint(to)).middle();
        let arrows_fit = length > 3.0 * ARROW;
        if arrows_fit {
            drawing.line(from, to, Line::Dimension);
        } else {
            drawing.line(from - direction * 3.0 * ARROW, to + direction * 3.0 * ARROW, Line::Dimension);
        }
        let inward = if arrows_fit { 1.0 } else { -1.0 };
        arrow(drawing, from, direction * inward);
        arrow(drawing, to, -direction * inward);
        drawing.label(self.place(label, direction, length));
    }

    /// Above the line where there is room, else beyond its right or lower end.
    fn place(&self, label: Label, direction: Vec2, length: f64) -> Label {
        let [from, to] = self.ends;
        let above = Vec2::new(direction.y, -direction.x);
        let upright = direction.y.abs() > direction.x.abs();
        let turn = direction.y.atan2(direction.x).to_degrees();
        let clear = if length > 3.0 * ARROW { BEYOND } else { 3.0 * ARROW } + 0.8;
        if label.width() + 1.0 < length {
            Label { at: from.midpoint(to) + above * ASIDE, turn, ..label }
        } else if upright {
            Label { at: from - direction * clear, turn, ..label }.anchored(Anchor::End)
        } else {
            Label { at: to + direction * clear, ..label }.anchored(Anchor::Start)
        }
    }
}

fn extension(drawing: &mut Drawing, place: Point, end: Point) {
    let way = end - place;
    let length = way.hypot();
    if length > GAP {
        let direction = way / length;
        drawing.line(place + direction * GAP, end + direction * BEYOND, Line::Dimension);
    }
}

/// An arrow whose tip lies at a place and which points against `inward`.
fn arrow(drawing: &mut Drawing, tip: Point, inward: Vec2) {
    let back = tip + inward * ARROW;
    let side = Vec2::new(-inward.y, inward.x) * BARB;
    drawing.fill(closed([tip, back + side, back - side]), Tone::Black);
}

/// A pointer from a label to what it names, with a dot at its end.
pub(crate) fn pointer(drawing: &mut Drawing, at: impl Into<Point>, from: impl Into<Point>) {
    let at = at.into();
    drawing.line(from, at, Line::Dimension);
    drawing.fill(kurbo::Circle::new(at, 0.4), Tone::Black);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::Item;

    fn drawn(dimension: &Dimension) -> Drawing {
        let mut drawing = Drawing::new("dimension", "", "");
        dimension.draw(&mut drawing);
        drawing
    }

    fn label(drawing: &Drawing) -> &Label {
        let labels = drawing.items().iter().find_map(|item| match item {
            Item::Label(label) => Some(label),
            Item::Path { .. } => None,
        });
        labels.expect("a dimension has a label")
    }

    #[test]
    fn text_stands_above_a_level_line_with_room() {
        let places = [Point::new(60.0, 5.0), Point::new(0.0, 0.0)];
        let drawing = drawn(&Dimension::level(places, 20.0, "2 3/8 in (60 mm)"));
        let label = label(&drawing);
        assert_eq!((label.at, label.turn), (Point::new(30.0, 20.0 - ASIDE), 0.0));
    }

    #[test]
    fn text_reads_from_the_right_beside_an_upright_line_with_room() {
        let places = [Point::new(0.0, 0.0), Point::new(0.0, 60.0)];
        let drawing = drawn(&Dimension::upright(places, -10.0, "2 3/8 in (60 mm)"));
        let label = label(&drawing);
        assert_eq!((label.at, label.turn), (Point::new(-10.0 - ASIDE, 30.0), -90.0));
    }

    #[test]
    fn text_without_room_stands_outside() {
        let places = [Point::new(0.0, 0.0), Point::new(3.0, 0.0)];
        let drawing = drawn(&Dimension::level(places, 10.0, "1/8 in (3 mm)"));
        assert!(label(&drawing).bounds().x0 > 3.0 + ARROW);
    }
}
