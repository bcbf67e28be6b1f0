//! The stave at true size: its taper, and where along it what happens.

use basket::message::Value;
use basket::staves::Group;
use basket::{Basket, Length};
use kurbo::Point;
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::plain::kept;
use crate::text::spread;

/// Where labels begin, to the right of the stave's middle, in mm.
const LABELS: f64 = 14.0;
/// Longer staves than this are cut short in the drawing, in mm.
const LONGEST: f64 = 3000.0;

/// A stave of each group that is cut alike, upright at true size, foot below, with its widths on the left and its
/// places, counted from the foot, on the right.
pub fn stave_templates(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let groups = &basket.body.staves().groups;
    groups.iter().zip(1..).map(|(group, number)| template(basket, words, (group, number))).collect()
}

fn template(basket: &Basket, words: &Words, (group, number): (&Group, u32)) -> Drawing {
    let staves = basket.body.staves();
    let args = [
        ("length", Value::Name(words.both(group.length))),
        ("width", Value::Name(words.both(group.width))),
        ("foot", Value::Name(words.fine_both(staves.taper.foot))),
    ];
    let description = words.with("drawing-stave-description", &args);
    let marked = (staves.groups.len() > 1).then(|| {
        let args = [("group", group.name.as_str().into()), ("staves", Value::runs(&group.numbers))];
        words.with("drawing-stave-group", &args)
    });
    let name = if number == 1 { "stave".to_owned() } else { format!("stave-{number}") };
    let title = marked.clone().unwrap_or_else(|| words.term("drawing-stave"));
    let mut drawing = Drawing::new(name, title, description);
    let length = group.length.to_mm().clamp(0.0, LONGEST);
    let template = Template { basket, words, group, length };
    template.outline(&mut drawing);
    template.places(&mut drawing);
    template.widths(&mut drawing);
    if let Some(marked) = marked {
        drawing.label(Label::new(marked, (0.0, Label::SIZE * 2.0)).middle().bold());
    }
    kept(drawing.fitted(1.5), words)
}

struct Template<'a> {
    basket: &'a Basket,
    words: &'a Words,
    group: &'a Group,
    length: f64,
}

impl Template<'_> {
    fn foot_along(&self) -> Length {
        let parts = &self.basket.body.staves().length_parts;
        -(parts.groove + parts.turn)
    }
    /// From the foot to a place along the mould, in mm: on a way of its own it is that much farther.
    fn above_foot(&self, along: Length) -> f64 {
        let uprights = self.basket.body.uprights();
        let path = self.group.numbers.first().and_then(|number| uprights.path(*number));
        let share = (along.max(Length::ZERO) / uprights.paths_to.max(Length::mm(1e-6))).min(1.0);
        let farther = path.map_or(Length::ZERO, |path| path.longer * share);
        (along + farther - self.foot_along()).to_mm().clamp(0.0, self.length)
    }
    fn half_width(&self, from_foot: f64) -> f64 {
        let along = self.foot_along() + Length::mm(from_foot);
        self.basket.body.uprights().tapered(self.group.width, along).to_mm() / 2.0
    }
    /// The stave between two places.
    fn piece(&self, from: f64, to: f64) -> kurbo::BezPath {
        let full = self.above_foot(self.basket.body.staves().taper.from).clamp(from.min(to), to.max(from));
        let places = [from, full, to];
        let right = places.map(|place| Point::new(self.half_width(place), -place));
        let left = places.map(|place| Point::new(-self.half_width(place), -place));
        closed(right.into_iter().chain(left.into_iter().rev()))
    }
    fn outline(&self, drawing: &mut Drawing) {
        let rim = &self.basket.body.rim();
        let parts = &self.basket.body.staves().length_parts;
        let trim = self.above_foot(rim.along + rim.height);
        drawing.fill(self.piece(0.0, parts.groove.to_mm().clamp(0.0, self.length)), Tone::Light);
        drawing.fill(self.piece(self.above_foot(rim.along), trim), Tone::Light);
        drawing.fill(self.piece(trim, self.length), Tone::Pale);
        drawing.line((0.0, 2.0), (0.0, -self.length - 2.0), Line::Centre);
        drawing.stroke(self.piece(0.0, self.length), Line::Outline);
    }
    fn places(&self, drawing: &mut Drawing) {
        let (staves, rim) = (&self.basket.body.staves(), &self.basket.body.rim());
        let mut places = vec![
            (0.0, "drawing-place-foot"),
            (staves.length_parts.groove.to_mm().clamp(0.0, self.length), "drawing-place-groove"),
            (self.above_foot(Length::ZERO), "drawing-place-mould"),
            (self.above_foot(staves.taper.from), "drawing-place-full"),
            (self.above_foot(rim.along), "drawing-place-rim"),
            (self.above_foot(rim.along + rim.height), "drawing-place-trim"),
            (self.length, "drawing-place-tip"),
        ];
        let last_row = self.above_foot(self.basket.body.weave.top_along);
        if (last_row - self.above_foot(rim.along)).abs() > 0.5 {
            places.push((last_row, "drawing-place-last-row"));
        }
        places.sort_by(|a, b| b.0.total_cmp(&a.0));
        let wanted: Vec<f64> = places.iter().map(|place| -place.0).collect();
        for ((place, id), y) in places.iter().zip(spread(&wanted, Label::SIZE * 1.45)) {
            let half = self.half_width(*place);
            drawing.line((-half - 1.0, -place), (half + 1.5, -place), Line::Edge);
            let knee =
                [Point::new(half + 1.5, -place), Point::new(LABELS - 3.0, y), Point::new(LABELS - 1.0, y)];
            drawing.stroke(crate::drawing::open(knee), Line::Dimension);
            let from_foot = Value::Name(self.words.both(Length::mm(*place)));
            drawing.label(Label::new(self.words.with(id, &[("from", from_foot)]), (LABELS, y)));
        }
    }
    fn widths(&self, drawing: &mut Drawing) {
        let staves = &self.basket.body.staves();
        let mut places = vec![
            self.length,
            self.above_foot(staves.taper.from),
            staves.length_parts.groove.to_mm().clamp(0.0, self.length),
            0.0,
        ];
        let full = places[1];
        places.extend(
            [0.25, 0.5, 0.75].map(|share| full * share).iter().filter(|place| full > 40.0 && **place > 8.0),
        );
        places.sort_by(|a, b| b.total_cmp(a));
        let wanted: Vec<f64> = places.iter().map(|place| -place).collect();
        for (place, y) in places.iter().zip(spread(&wanted, Label::SIZE * 1.45)) {
            let half = self.half_width(*place);
            let text = self.words.fine_both(Length::mm(2.0 * half));
            let knee =
                [Point::new(-half - 1.0, -place), Point::new(3.0 - LABELS, y), Point::new(1.0 - LABELS, y)];
            drawing.line((-half, -place), (half, -place), Line::Dimension);
            drawing.stroke(crate::drawing::open(knee), Line::Dimension);
            drawing.label(Label::new(text, (-LABELS, y)).end());
        }
    }
}
