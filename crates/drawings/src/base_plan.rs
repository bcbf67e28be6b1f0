//! The base from below, as it stands on the mould: every stave's slot, and by direction what stands
//! above it at the rim.

use std::f64::consts::{FRAC_PI_2, TAU};

use basket::message::Value;
use basket::pattern::{Direction, Rings};
use basket::rim::Scarf;
use basket::{Basket, Length};
use kurbo::{Arc, BezPath, Circle, Point, Vec2};
use words::Words;

use crate::around::Around;
use crate::dimension::{Dimension, pointer};
use crate::drawing::{Drawing, Label, Line, TOLERANCE, Tone, closed, open};
use crate::plain::kept;
use crate::scale::{round_scale, scale_name};
use crate::sense::sense;

/// Most width of the disc on paper, in mm: with all that stands round it the plan is as wide as a column.
const WIDTH: f64 = 112.0;
/// How far staves are shown beyond the edge, in mm.
const STUB: f64 = 2.0;
/// Tones of the woods of a disc that is glued up, in the order in which they come.
const STRIPS: [Tone; 4] = [Tone::White, Tone::Light, Tone::Pale, Tone::Mid];
/// Steps along the edge of a strip.
const ARC: u32 = 24;
/// Steps round a whole edge.
const ROUND: u32 = 360;
/// How far beyond the edge the numbers, the pins, the ears and the scarfs of both hoops stand, in mm.
const NUMBERS: f64 = 6.0;
const PINS: f64 = 10.2;
const EARS: f64 = 13.0;
const OUTER: f64 = 17.5;
const INNER: f64 = 22.0;
/// More staves than this are not told apart.
const MOST: u32 = 2000;

/// The base from below, at true size or to the largest round scale that fits into a column, numbers running to
/// the right round the near side.
pub fn base_plan(basket: &Basket, words: &Words) -> Drawing {
    let args = [
        ("count", basket.body.uprights().count.into()),
        ("diameter", Value::Name(words.across(basket.body.base().across()))),
    ];
    let description = words.with(
        match basket.body.weave.direction {
            Direction::Right => "drawing-base-plan-description",
            Direction::Left => "drawing-base-plan-description-left",
        },
        &args,
    );
    let mut drawing = Drawing::new("base-plan", words.term("drawing-base-plan"), description);
    let scale = round_scale((WIDTH / basket.body.base().across().length.to_mm().max(1.0)).min(1.0));
    let plan = Plan::of(basket, words, scale);
    plan.disc(&mut drawing);
    plan.staves(&mut drawing);
    plan.numbers(&mut drawing);
    plan.rim_marks(&mut drawing);
    plan.labels(&mut drawing);
    plan.key(&mut drawing);
    kept(drawing.fitted(1.5), words)
}

/// The disc at true size: outline, middle, bottom of the groove, screw hole and plug.
pub fn base_disc(basket: &Basket, words: &Words) -> Drawing {
    let args = [
        ("diameter", Value::Name(words.across(basket.body.base().across()))),
        ("thickness", Value::Name(words.both(basket.body.base().thickness))),
    ];
    let title = words.term("drawing-base-disc");
    let mut drawing = Drawing::new("base-disc", title, words.with("drawing-base-disc-description", &args));
    let plan = Plan::of(basket, words, 1.0);
    plan.disc(&mut drawing);
    drawing.stroke(plan.ring(plan.root), Line::Hidden);
    plan.quarters(&mut drawing);
    plan.labels(&mut drawing);
    kept(drawing.fitted(1.5), words)
}

struct Plan<'a> {
    basket: &'a Basket,
    words: &'a Words,
    around: Around<'a>,
    /// Paper per base.
    scale: f64,
    /// Radius of the disc on paper; where it is not round, of its girth.
    edge: f64,
    /// Radius of the bottom of the groove on paper.
    root: f64,
}

impl<'a> Plan<'a> {
    fn of(basket: &'a Basket, words: &'a Words, scale: f64) -> Self {
        let base = basket.body.base();
        let edge = base.diameter.to_mm() / 2.0 * scale;
        Self {
            basket,
            words,
            around: Around::of(basket),
            scale,
            edge,
            root: base.groove_radius().to_mm().max(0.0) * scale,
        }
    }

    /// Half its width on paper.
    fn half_width(&self) -> f64 {
        self.paper(self.basket.body.base().across().width) / 2.0
    }

    /// A length of the base as it is drawn, in mm.
    fn paper(&self, length: Length) -> f64 {
        length.to_mm() * self.scale
    }

    fn disc(&self, drawing: &mut Drawing) {
        let base = &self.basket.body.base();
        let round = |diameter| Circle::new(Point::ZERO, self.paper(diameter) / 2.0);
        drawing.shape(self.ring(self.edge), Tone::White, Line::Outline);
        self.strips(drawing);
        // From below, rings that look out are seen, and those that look in lie behind.
        let line = if base.rings == Rings::Out { Line::Fine } else { Line::Hidden };
        for radius in base.ring_radii() {
            drawing.stroke(Circle::new(Point::ZERO, self.paper(radius)), line);
        }
        drawing.shape(round(base.plug_diameter), Tone::Pale, Line::Hidden);
        drawing.shape(round(base.screw_hole), Tone::White, Line::Edge);
    }

    /// Strips that a disc is glued up from: their glue lines, each wood with its tone.
    fn strips(&self, drawing: &mut Drawing) {
        let base = &self.basket.body.base();
        let mut woods: Vec<&str> = Vec::new();
        for (strip, number) in base.strips.iter().zip(0_u32..) {
            let seen = woods.iter().position(|wood| *wood == strip.name);
            let wood = seen.unwrap_or(woods.len());
            if seen.is_none() {
                woods.push(&strip.name);
            }
            let width = self.paper(base.strip_width());
            let [left, right] = [number, number + 1].map(|line| f64::from(line) * width - self.edge);
            drawing.shape(self.strip(left, right), STRIPS[wood % STRIPS.len()], Line::Fine);
        }
    }

    /// What of the disc lies between two lines.
    fn strip(&self, left: f64, right: f64) -> BezPath {
        let arc = |from: f64, to: f64, side: f64| {
            (0..=ARC).map(move |step| {
                let x = from + (to - from) * f64::from(step) / f64::from(ARC);
                Point::new(x, side * (self.edge * self.edge - x * x).max(0.0).sqrt())
            })
        };
        closed(arc(left, right, 1.0).chain(arc(right, left, -1.0)))
    }

    /// A cross in the middle and a mark at each quarter of the edge.
    fn quarters(&self, drawing: &mut Drawing) {
        for quarter in 0..4 {
            let turn = f64::from(quarter) / 4.0;
            drawing.line(Point::ZERO, (self.direction(turn) * 3.5).to_point(), Line::Edge);
            drawing.line(self.at(turn, self.edge - 3.0), self.at(turn, self.edge + 3.0), Line::Edge);
        }
    }

    fn turns(&self) -> impl Iterator<Item = (u32, f64)> {
        let staves = &self.basket.body.staves();
        (1..=staves.uprights.count.min(MOST)).map(|stave| (stave, staves.uprights.turn(stave)))
    }

    /// Staves from the bottom of the groove to a little beyond the edge, seen through the disc.
    fn staves(&self, drawing: &mut Drawing) {
        let staves = &self.basket.body.staves();
        drawing.stroke(self.ring(self.root), Line::Hidden);
        let foot = self.paper(staves.taper.foot) / 2.0;
        for (number, turn) in self.turns() {
            let outer = self.paper(staves.uprights.width_of(number, -staves.length_parts.turn)) / 2.0;
            let out = self.outward(turn);
            let side = Vec2::new(out.y, -out.x);
            let (root, end) = (self.at(turn, self.root), self.at(turn, self.edge + STUB));
            let stave = [root - side * foot, end - side * outer, end + side * outer, root + side * foot];
            drawing.shape(closed(stave), Tone::Pale, Line::Dimension);
        }
        drawing.stroke(self.ring(self.edge), Line::Outline);
    }

    fn numbers(&self, drawing: &mut Drawing) {
        let radius = self.edge + NUMBERS;
        let pitch = radius * TAU / f64::from(self.basket.body.uprights().count.max(1));
        let step = if pitch >= Label::SMALL { 1 } else { 5 };
        let marked = self.basket.body.uprights().quarters();
        // Where not all have room, those that the steps name have theirs before their neighbours.
        let crowds = |stave: u32| step > 1 && marked.iter().any(|&quarter| quarter.abs_diff(stave) == 1);
        let is_numbered =
            |stave: u32| marked.contains(&stave) || (stave.is_multiple_of(step) && !crowds(stave));
        for (stave, turn) in self.turns().filter(|(stave, _)| is_numbered(*stave)) {
            let out = self.outward(turn);
            let angle = out.y.atan2(out.x).to_degrees();
            let upright = if out.x < -1e-9 { angle + 180.0 } else { angle };
            let label = Label::new(stave.to_string(), self.at(turn, radius)).middle().sized(Label::SMALL);
            let label = label.turned(upright);
            drawing.label(if marked.contains(&stave) { label.bold() } else { label });
        }
    }

    fn rim_marks(&self, drawing: &mut Drawing) {
        let staves = &self.basket.body.staves();
        for (stave, _) in self.basket.body.pins().each().into_iter().take(MOST as usize) {
            let above = self.above(staves.uprights.turn(stave));
            drawing.fill(Circle::new(self.at(above, self.edge + PINS), 0.6), Tone::Black);
        }
        let girth = self.basket.body.rim().girth.to_mm();
        // What is longer than the rim goes once round.
        let half = |length: Length| if length.to_mm() < girth { length.to_mm() / girth / 2.0 } else { 0.5 };
        if let Some(ears) = &self.basket.ears {
            for (number, ear) in (1_u32..).zip(&ears.each) {
                let half = half(ears.width);
                let text = self.words.with("drawing-ear-number", &[("number", number.into())]);
                let turn = self.above(ear.turn);
                self.arc(drawing, (turn - half, turn + half), EARS, text);
            }
        }
        let scarf = |drawing: &mut Drawing, scarf: &Scarf, ring, text| {
            let half = half(scarf.lap);
            let turn = self.above(scarf.turn);
            self.arc(drawing, (turn - half, turn + half), ring, self.words.term(text));
        };
        scarf(drawing, &self.basket.body.rim().outer.scarf, OUTER, "drawing-outer-scarf");
        scarf(drawing, &self.basket.body.rim().inner.scarf, INNER, "drawing-inner-scarf");
    }

    /// Where at the rim a place among the staves lies, told as a share of the round of their feet.
    fn above(&self, share: f64) -> f64 {
        let rim = self.basket.body.rim();
        self.basket.body.uprights().turn_between(share, rim.along + rim.height / 2.0)
    }

    /// Direction of a fraction of the way round: 0 toward the reader, then the way that is woven.
    fn direction(&self, turn: f64) -> Vec2 {
        let (sin, cos) = (sense(self.basket) * turn * TAU).sin_cos();
        Vec2::new(sin, cos)
    }

    /// Square to the edge, outward, there.
    fn outward(&self, turn: f64) -> Vec2 {
        if self.around.is_round() {
            return self.direction(turn);
        }
        let [x, y] = self.around.at(turn).outward;
        Vec2::new(sense(self.basket) * y, x)
    }

    /// The place so far round on the level of a radius on paper.
    fn at(&self, turn: f64, radius: f64) -> Point {
        if self.around.is_round() {
            return (self.direction(turn) * radius).to_point();
        }
        let [x, y] = self.around.at_foot(radius / self.scale).place(turn);
        Point::new(sense(self.basket) * y * self.scale, x * self.scale)
    }

    /// The whole level of a radius on paper.
    fn ring(&self, radius: f64) -> BezPath {
        if self.around.is_round() {
            return kurbo::Shape::to_path(&Circle::new(Point::ZERO, radius), TOLERANCE);
        }
        closed((0..ROUND).map(|step| self.at(f64::from(step) / f64::from(ROUND), radius)))
    }

    /// An arc so far outside the edge, with ends and a label along it.
    fn arc(&self, drawing: &mut Drawing, (from, to): (f64, f64), beyond: f64, text: String) {
        let (radius, sense) = (self.edge + beyond, sense(self.basket) * TAU);
        if self.around.is_round() {
            let arc =
                Arc::new(Point::ZERO, (radius, radius), FRAC_PI_2 - sense * from, sense * (from - to), 0.0);
            drawing.stroke(kurbo::Shape::to_path(&arc, TOLERANCE), Line::Outline);
        } else {
            let place = |step: u32| self.at(from + (to - from) * f64::from(step) / f64::from(ARC), radius);
            drawing.stroke(open((0..=ARC).map(place)), Line::Outline);
        }
        for turn in [from, to] {
            drawing.line(self.at(turn, radius - 1.2), self.at(turn, radius + 1.2), Line::Edge);
        }
        let middle = f64::midpoint(from, to);
        let out = self.outward(middle);
        let below = out.y > 0.0;
        let tangent = if below { Vec2::new(out.y, -out.x) } else { Vec2::new(-out.y, out.x) };
        let label = Label::new(text, self.at(middle, radius + 2.4)).middle().sized(Label::SMALL);
        drawing.label(label.turned(tangent.y.atan2(tangent.x).to_degrees()));
    }

    fn labels(&self, drawing: &mut Drawing) {
        let (base, words) = (&self.basket.body.base(), self.words);
        let inner = self.root;
        let half = self.half_width();
        let ends = [Point::new(-half, 0.0), Point::new(half, 0.0)];
        Dimension { places: ends, ends, text: String::new() }.draw(drawing);
        if self.around.is_round() {
            let text = format!("⌀ {}", words.both(base.diameter));
            drawing.label(Label::new(text, (-inner * 0.55, -1.9)).middle());
        } else {
            // In two lines: a narrow disc has no room for both beside each other.
            let across = base.across();
            let lines = [format!("{} ×", words.both(across.length)), words.both(across.width)];
            for (line, text) in lines.into_iter().enumerate() {
                let y = inner * 0.3 + Label::SIZE * 1.45 * line as f64;
                drawing.label(Label::new(text, (0.0, y)).middle());
            }
        }
        if !base.strips.is_empty() {
            let text = words.with("drawing-base-strips", &[("woods", base.woods())]);
            drawing.label(Label::new(text, (0.0, inner * 0.3)).middle().sized(Label::SMALL));
        }
        let hole = note(words, "drawing-screw-hole", base.screw_hole);
        let groove = note(words, "drawing-groove-deep", base.groove_depth);
        for (text, up, to) in [
            (hole, 0.5, (self.direction(0.5) * (self.paper(base.screw_hole) / 2.0)).to_point()),
            (groove, -0.6, self.at(0.0, inner)),
        ] {
            let place = Point::new(0.0, -inner * up);
            pointer(drawing, to, place + Vec2::new(0.0, 1.8));
            drawing.label(Label::new(text, place).middle());
        }
    }

    /// What the marks outside the edge are.
    fn key(&self, drawing: &mut Drawing) {
        let low = drawing.bounds().y1 + 4.0;
        let left = -self.half_width();
        drawing.fill(Circle::new((left, low), 0.6), Tone::Black);
        let scale = Value::Name(scale_name(self.scale, self.words));
        let says = [
            format!("{}; {}", self.words.term("drawing-plan-pins"), self.words.term("drawing-plan-key")),
            self.words.with("drawing-section-scale", &[("scale", scale)]),
        ];
        for (text, line) in says.into_iter().zip(0..) {
            let at = (1.6 + left, low + f64::from(line) * Label::SMALL * 1.5);
            drawing.label(Label::new(text, at).sized(Label::SMALL));
        }
    }
}

fn note(words: &Words, id: &str, length: Length) -> String {
    words.with(id, &[("length", Value::Name(words.fine_both(length)))])
}
