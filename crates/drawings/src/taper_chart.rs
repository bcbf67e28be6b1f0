//! A chart of the staves' width and of the gap between them against the height on the mould.

use basket::staves::GapAt;
use basket::{Basket, Length};
use kurbo::Point;
use words::Words;

use crate::drawing::{Drawing, Label, Line, open};
use crate::plain::kept;
use crate::scale::ticks;

/// Size of a panel in mm.
const WIDTH: f64 = 118.0;
const HEIGHT: f64 = 34.0;
/// From one panel's foot to the next one's top, in mm.
const BETWEEN: f64 = 12.0;

/// Width above, gap below; the practical taper solid, what would be ideal dashed.
pub fn taper_chart(basket: &Basket, words: &Words) -> Drawing {
    let title = words.term("drawing-taper-chart");
    let mut drawing = Drawing::new("taper-chart", title, words.term("drawing-taper-chart-description"));
    let staves = basket.body.staves();
    let wanted = |_: &GapAt| staves.gap_wanted;
    let panels = [
        Panel::of(basket, words, 0.0, &[&|at| at.width, &|at| at.ideal_width]),
        Panel::of(basket, words, HEIGHT + BETWEEN, &[&|at| at.gap, &wanted]),
    ];
    let [width, gap] = &panels;
    width.frame(&mut drawing, "drawing-chart-width");
    width.curve(&mut drawing, Line::Hidden, &|at| at.ideal_width);
    width.curve(&mut drawing, Line::Outline, &|at| at.width);
    gap.frame(&mut drawing, "drawing-chart-gap");
    gap.curve(&mut drawing, Line::Hidden, &wanted);
    gap.curve(&mut drawing, Line::Outline, &|at| at.gap);
    gap.heights(&mut drawing);
    key(&mut drawing, words);
    kept(drawing.fitted(1.5), words)
}

type Measure<'a> = &'a dyn Fn(&GapAt) -> Length;

struct Panel<'a> {
    basket: &'a Basket,
    words: &'a Words,
    /// Top of the panel in the drawing.
    top: f64,
    /// The value at the top of the panel.
    most: Length,
    /// The height at its right edge.
    highest: Length,
}

impl<'a> Panel<'a> {
    fn of(basket: &'a Basket, words: &'a Words, top: f64, measures: &[Measure<'_>]) -> Self {
        let gaps = &basket.body.staves().gaps;
        let values = gaps.iter().flat_map(|at| measures.iter().map(move |measure| measure(at)));
        let most = values.fold(Length::mm(0.1), Length::max) * 1.1;
        let highest = gaps.iter().map(|at| at.height).fold(Length::mm(1.0), Length::max);
        Self { basket, words, top, most, highest }
    }

    fn x(&self, height: Length) -> f64 {
        height / self.highest * WIDTH
    }

    fn y(&self, value: Length) -> f64 {
        self.top + HEIGHT * (1.0 - value / self.most)
    }

    /// Axes, ticks and heading; a line through zero where gaps become negative.
    fn frame(&self, drawing: &mut Drawing, heading: &str) {
        drawing.line((0.0, self.top), (0.0, self.top + HEIGHT), Line::Edge);
        drawing.line((0.0, self.y(Length::ZERO)), (WIDTH, self.y(Length::ZERO)), Line::Edge);
        for tick in ticks(self.most, self.words.units(), 5) {
            let y = self.y(tick);
            drawing.line((-1.2, y), (0.0, y), Line::Edge);
            drawing.line((0.0, y), (WIDTH, y), Line::Fine);
            drawing.label(Label::new(self.words.fine(tick), (-2.2, y)).end().sized(Label::SMALL));
        }
        drawing.label(Label::new(self.words.term(heading), (0.0, self.top - 3.6)));
    }

    fn curve(&self, drawing: &mut Drawing, line: Line, measure: Measure<'_>) {
        let points = self.basket.body.staves().gaps.iter().filter(|at| at.height >= Length::ZERO);
        drawing.stroke(open(points.map(|at| Point::new(self.x(at.height), self.y(measure(at))))), line);
    }

    /// Ticks of height under the panel.
    fn heights(&self, drawing: &mut Drawing) {
        let low = self.y(Length::ZERO).max(drawing.bounds().y1 - 1.5);
        for tick in ticks(self.highest, self.words.units(), 9) {
            let x = self.x(tick);
            drawing.line((x, low), (x, low + 1.2), Line::Edge);
            drawing.label(Label::new(self.words.length(tick), (x, low + 3.4)).middle().sized(Label::SMALL));
        }
        let text = self.words.term("drawing-chart-height");
        drawing.label(Label::new(text, (WIDTH, low + 7.6)).end());
    }
}

fn key(drawing: &mut Drawing, words: &Words) {
    let y = drawing.bounds().y1 - 1.3;
    let mut x = 0.0;
    for (line, id) in [(Line::Outline, "drawing-chart-made"), (Line::Hidden, "drawing-chart-ideal")] {
        drawing.line((x, y), (x + 8.0, y), line);
        let label = Label::new(words.term(id), (x + 9.5, y)).sized(Label::SMALL);
        x = label.bounds().x1 + 6.0;
        drawing.label(label);
    }
}
