//! Paper strips at true size: where the staves stand on the base and at the rim, and where the rim
//! is drilled.
//!
//! As on the mould, with the base up, numbers run to the right round the outside.

use std::f64::consts::TAU;

use basket::message::Value;
use basket::rim::Scarf;
use basket::{Basket, Length};
use kurbo::{Point, Rect};
use words::Words;

use crate::around::Around;
use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::plain::kept;

/// Beyond the girth, to glue or tape under the other end.
const TAB: f64 = 15.0;
/// Height of a spacing strip in mm.
const HEIGHT: f64 = 27.0;
/// A shorter remnant of a bar at the strip's end is left out, in mm.
const LEAST: f64 = 2.0;
/// More staves than this are marked no longer one by one.
const MOST: u32 = 2000;

/// Where a strip lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum At {
    /// Round the edge of the base, over the groove.
    Base,
    /// Round the outside of the staves, at the middle of the rim.
    Rim,
}

/// A strip with a mark for every stave, its girth long, and a tab beyond. The staves are shown at
/// their width there; a strip begins and ends in the middle of a gap.
pub fn spacing_strip(basket: &Basket, words: &Words, at: At) -> Drawing {
    let (name, place, girth) = match at {
        At::Base => ("strip-base", "drawing-strip-base", base_girth(basket)),
        At::Rim => ("strip-rim", "drawing-strip-rim", rim_girth(basket)),
    };
    let strip = Strip { basket, words, at, girth: girth.to_mm() };
    let girth = ("girth", Value::Name(words.both(girth)));
    let title = words.with(place, std::slice::from_ref(&girth));
    let description =
        words.with("drawing-strip-description", &[girth, ("count", basket.body.uprights().count.into())]);
    let mut drawing = Drawing::new(name, title, description);
    strip.sheet(&mut drawing, HEIGHT);
    let along = match at {
        At::Base => -basket.body.staves().length_parts.turn,
        At::Rim => basket.body.rim().along,
    };
    strip.staves(&mut drawing, along);
    strip.numbers(&mut drawing, 8.5);
    strip.quarters(&mut drawing, HEIGHT, &words.term(&format!("{place}-short")));
    strip.ears(&mut drawing, 14.0);
    if at == At::Rim {
        strip.pins(&mut drawing);
        strip.scarfs(&mut drawing);
    }
    kept(drawing.fitted(1.0), words)
}

/// Girth of the base at the edge over the groove.
pub fn base_girth(basket: &Basket) -> Length {
    basket.body.base().diameter * std::f64::consts::PI
}

/// Girth outside the staves at the middle of the rim.
pub fn rim_girth(basket: &Basket) -> Length {
    basket.body.rim().girth_at(basket.body.uprights().thickness)
}

/// A strip as high as the outer hoop, laid round its outside, with the middle of every pin.
pub fn drilling_template(basket: &Basket, words: &Words) -> Drawing {
    let rim = basket.body.rim();
    let girth = rim.girth_at(basket.body.uprights().thickness + rim.outer.stock.thickness);
    let strip = Strip { basket, words, at: At::Rim, girth: girth.to_mm() };
    let args = [
        ("girth", Value::Name(words.both(girth))),
        ("drill", Value::Name(drills(basket, words))),
        ("count", basket.body.pins().count().into()),
    ];
    let title = words.with("drawing-drilling", &args);
    let mut drawing = Drawing::new("drilling", title, words.with("drawing-drilling-description", &args));
    let hoop = basket.body.rim().outer.stock.width.to_mm();
    let below = 13.0;
    strip.sheet(&mut drawing, hoop + below);
    drawing.line((0.0, hoop), (strip.girth, hoop), Line::Edge);
    drawing.line((0.0, hoop / 2.0), (strip.girth, hoop / 2.0), Line::Centre);
    for (stave, pin) in basket.body.pins().each() {
        let radius = (pin.drill.to_mm() / 2.0).max(0.3);
        let at = Point::new(strip.x(basket.body.uprights().turn(stave)), hoop / 2.0);
        drawing.stroke(kurbo::Circle::new(at, radius), Line::Edge);
        drawing.line((at.x, at.y - 2.2), (at.x, at.y + 2.2), Line::Dimension);
        drawing.label(Label::new(stave.to_string(), (at.x, hoop + 2.6)).middle().sized(Label::SMALL));
    }
    strip.ears(&mut drawing, hoop + 6.5);
    strip.quarters(&mut drawing, hoop + below, &words.term("drawing-drilling-short"));
    kept(drawing.fitted(1.0), words)
}

/// The drill, and that for the ears where it is another.
fn drills(basket: &Basket, words: &Words) -> String {
    let pins = basket.body.pins();
    let drill = words.fine_both(pins.others.drill);
    match pins.ears.as_ref().filter(|ears| ears.drill != pins.others.drill) {
        Some(ears) => {
            let at_ears = Value::Name(words.fine_both(ears.drill));
            let id = if pins.of_handle { "drawing-drills-ends" } else { "drawing-drills" };
            words.with(id, &[("drill", Value::Name(drill)), ("ears", at_ears)])
        }
        None => drill,
    }
}

struct Strip<'a> {
    basket: &'a Basket,
    words: &'a Words,
    at: At,
    girth: f64,
}

/// The middle of the rim, along the wall.
fn rim_middle(basket: &Basket) -> Length {
    basket.body.rim().along + basket.body.rim().height / 2.0
}

impl Strip<'_> {
    fn pitch(&self) -> f64 {
        self.girth / f64::from(self.basket.body.uprights().count.max(1))
    }

    /// Where a place among the staves lies, told as a share of the round of their feet: stave 1 stands half a
    /// pitch from the end.
    fn x(&self, share: f64) -> f64 {
        let around = Around::of(self.basket);
        let uprights = self.basket.body.uprights();
        let (height, along) = match self.at {
            At::Base => (0.0, Length::ZERO),
            At::Rim => (self.basket.body.rim_height().to_mm(), rim_middle(self.basket)),
        };
        let turn = uprights.turn_between(share, along);
        let level = || around.level(height, self.girth / TAU);
        let way = if around.is_round() { turn * self.girth } else { level().way_to(turn) };
        (way + self.pitch() / 2.0).rem_euclid(self.girth.max(1e-9))
    }

    fn sheet(&self, drawing: &mut Drawing, height: f64) {
        drawing.stroke(Rect::new(0.0, 0.0, self.girth, height), Line::Edge);
        let tab = [(0.0, 0.0), (TAB, 1.5), (TAB, height - 1.5), (0.0, height)];
        drawing.stroke(closed(tab.map(|(x, y)| Point::new(self.girth + x, y))), Line::Hidden);
        let text = self.words.term("drawing-tab");
        let at = Point::new(self.girth + TAB / 2.0, height / 2.0);
        drawing.label(Label::new(text, at).middle().sized(Label::SMALL).turned(-90.0));
    }

    fn numbers(&self, drawing: &mut Drawing, y: f64) {
        let pitch = self.pitch();
        let widest = Label::new(self.basket.body.uprights().count.to_string(), Point::ZERO)
            .sized(Label::SMALL)
            .width();
        let upright = pitch < widest + 0.6;
        let step = if pitch >= Label::SMALL { 1 } else { 5 };
        for stave in 1..=self.basket.body.uprights().count.min(MOST) {
            if stave == 1 || stave % step == 0 {
                let at = Point::new(self.x(self.basket.body.uprights().turn(stave)), y);
                let label = Label::new(stave.to_string(), at).middle().sized(Label::SMALL);
                drawing.label(if upright { label.turned(-90.0) } else { label });
            }
        }
    }

    fn staves(&self, drawing: &mut Drawing, along: Length) {
        let uprights = self.basket.body.uprights();
        for stave in 1..=uprights.count.min(MOST) {
            let (x, width) = (self.x(uprights.turn(stave)), uprights.width_of(stave, along).to_mm());
            drawing.shape(Rect::new(x - width / 2.0, 0.0, x + width / 2.0, 5.0), Tone::Pale, Line::Dimension);
            drawing.line((x, 0.0), (x, if stave % 5 == 0 { 6.5 } else { 5.5 }), Line::Edge);
        }
    }

    /// Marks at each quarter of the girth, each with the strip's name, so that a cut piece is known.
    fn quarters(&self, drawing: &mut Drawing, height: f64, name: &str) {
        for (quarter, text) in ["0", "1/4", "1/2", "3/4", "1"].into_iter().enumerate() {
            let x = self.girth * quarter as f64 / 4.0;
            let mark = [(-1.2, 0.0), (1.2, 0.0), (0.0, -3.4)].map(|(dx, dy)| Point::new(x + dx, height + dy));
            drawing.fill(closed(mark), Tone::Black);
            let last = quarter == 4;
            let label =
                Label::new(format!("{text} · {name}"), (x + if last { -2.2 } else { 2.2 }, height - 1.9));
            drawing.label(if last { label.end() } else { label }.sized(Label::SMALL));
        }
    }

    fn ears(&self, drawing: &mut Drawing, y: f64) {
        let Some(ears) = &self.basket.ears else { return };
        // As wide as the ear at the rim, and in the same directions elsewhere.
        let half = ears.width / 2.0 / rim_girth(self.basket).max(Length::mm(1e-6)) * self.girth;
        for (number, ear) in (1_u32..).zip(&ears.each) {
            let x = self.x(ear.turn);
            let text = self.words.with("drawing-ear-number", &[("number", number.into())]);
            self.span(drawing, (x - half, x + half), y, &text);
            let point = [(0.0, -1.6), (1.0, 0.0), (0.0, 1.6), (-1.0, 0.0)];
            drawing.fill(closed(point.map(|(dx, dy)| Point::new(x + dx, y + dy))), Tone::Black);
        }
    }

    fn pins(&self, drawing: &mut Drawing) {
        for (stave, _) in self.basket.body.pins().each().into_iter().take(MOST as usize) {
            let at = Point::new(self.x(self.basket.body.uprights().turn(stave)), 2.5);
            drawing.fill(kurbo::Circle::new(at, 0.7), Tone::Black);
        }
    }

    fn scarfs(&self, drawing: &mut Drawing) {
        let rim = &self.basket.body.rim();
        self.scarf(drawing, &rim.outer.scarf, 17.0, "drawing-outer-scarf");
        self.scarf(drawing, &rim.inner.scarf, 20.5, "drawing-inner-scarf");
    }

    fn scarf(&self, drawing: &mut Drawing, scarf: &Scarf, y: f64, text: &str) {
        let (x, half) = (self.x(scarf.turn), scarf.lap.to_mm() / 2.0);
        self.span(drawing, (x - half, x + half), y, &self.words.term(text));
    }

    /// A bar with ends and a label behind it; what runs off one end of the strip comes in at the other.
    fn span(&self, drawing: &mut Drawing, (from, to): (f64, f64), y: f64, text: &str) {
        for shift in [-self.girth, 0.0, self.girth] {
            let (start, end) = ((from + shift).max(0.0), (to + shift).min(self.girth));
            if end - start > LEAST {
                drawing.line((start, y), (end, y), Line::Outline);
                for x in [start, end] {
                    drawing.line((x, y - 1.3), (x, y + 1.3), Line::Edge);
                }
                let label = Label::new(text, (end + 1.5, y)).sized(Label::SMALL);
                let fits = end + 1.5 + label.width() < self.girth;
                drawing.label(if fits {
                    label
                } else {
                    Label { at: (start - 1.5, y).into(), ..label.end() }
                });
            }
        }
    }
}
