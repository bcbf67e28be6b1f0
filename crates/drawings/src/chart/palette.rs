//! The colours of a chart, each with a hatch and a number of its own, so that they stay apart in black and white.
//!
//! Dark dyes are lightened until black marks are seen on them: a printer without colour makes them all one grey.

use basket::Colour;
use basket::weave::Weave;
use kurbo::{BezPath, Point, Rect};

use crate::drawing::{Tone, closed};

/// By how much of the way to white a stave is lighter than a weaver of the same colour.
const PALE: f64 = 0.6;
/// Least lightness of a weaver, of 255. Black on this has a contrast of 7 : 1 (WCAG 2.2, relative luminance 0.31).
const LEAST_LIGHT: f64 = 152.0;

/// What marks each crossing of a colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Hatch {
    None,
    Rising,
    Dot,
    Level,
    Falling,
    Upright,
    Cross,
    Ends,
}

const HATCHES: [Hatch; 8] = [
    Hatch::None,
    Hatch::Rising,
    Hatch::Dot,
    Hatch::Level,
    Hatch::Falling,
    Hatch::Upright,
    Hatch::Cross,
    Hatch::Ends,
];

/// The colours of a weaving in the order in which they are met, undyed first.
pub(super) struct Palette<'a> {
    colours: Vec<&'a Colour>,
}

impl<'a> Palette<'a> {
    pub(super) fn of(weave: &'a Weave) -> Self {
        let natural = Colour::natural();
        let weavers = weave.courses.iter().flat_map(|course| &course.weavers);
        let met = weave.stave_colours.iter().chain(weavers.flat_map(|weaver| &weaver.colours));
        let mut colours: Vec<&Colour> = Vec::new();
        for colour in met {
            if !colours.contains(&colour) {
                colours.push(colour);
            }
        }
        colours.sort_by_key(|colour| colour.name != natural.name);
        Self { colours }
    }

    pub(super) fn colours(&self) -> impl Iterator<Item = (usize, &'a Colour)> + '_ {
        self.colours.iter().copied().enumerate()
    }

    pub(super) fn index(&self, colour: &Colour) -> usize {
        self.colours.iter().position(|known| *known == colour).unwrap_or(0)
    }

    /// The number by which a colour is named beside the chart, from 1; none where there is only one.
    pub(super) fn number(&self, index: usize) -> Option<String> {
        (self.colours.len() > 1).then(|| (index + 1).to_string())
    }

    /// Where a weaver is seen.
    pub(super) fn tone(&self, index: usize) -> Tone {
        let rgb = self.colours.get(index).map_or(Colour::natural().rgb, |colour| colour.rgb);
        let [red, green, blue] = rgb.map(f64::from);
        // Lightness as the eye weighs it (Rec. 601).
        let light = 0.299 * red + 0.587 * green + 0.114 * blue;
        Tone::Dyed(toward_white(rgb, (LEAST_LIGHT - light) / (255.0 - light).max(1.0)))
    }

    /// Where a stave is seen.
    pub(super) fn stave(&self, index: usize) -> Tone {
        Tone::Dyed(toward_white(self.tone(index).rgb(), PALE))
    }

    /// The hatch of a colour within a crossing.
    pub(super) fn hatch(index: usize, cell: Rect, into: &mut BezPath) {
        let hatch = HATCHES.get(index % HATCHES.len()).copied().unwrap_or(Hatch::None);
        // Strokes stay as thin as the crossing allows.
        let thin = (cell.width().min(cell.height()) * 0.09).clamp(0.06, 0.3);
        let inner = cell.inset((-cell.width() * 0.14, -cell.height() * 0.14));
        let (middle, left, right) = (cell.center(), inner.x0, inner.x1);
        let mut stroke = |from: Point, to: Point| into.extend(bar(from, to, thin));
        match hatch {
            Hatch::None => {}
            Hatch::Rising => stroke(Point::new(left, inner.y1), Point::new(right, inner.y0)),
            Hatch::Falling => stroke(Point::new(left, inner.y0), Point::new(right, inner.y1)),
            Hatch::Level => stroke(Point::new(left, middle.y), Point::new(right, middle.y)),
            Hatch::Upright => stroke(Point::new(middle.x, inner.y0), Point::new(middle.x, inner.y1)),
            Hatch::Cross => {
                stroke(Point::new(left, inner.y1), Point::new(right, inner.y0));
                stroke(Point::new(left, inner.y0), Point::new(right, inner.y1));
            }
            Hatch::Dot => {
                let size = inner.width().min(inner.height()) * 0.4;
                let corners = [(-size, 0.0), (0.0, -size), (size, 0.0), (0.0, size)];
                into.extend(closed(corners.map(|(x, y)| Point::new(middle.x + x, middle.y + y))));
            }
            Hatch::Ends => {
                stroke(Point::new(left, inner.y0), Point::new(left, inner.y1));
                stroke(Point::new(right, inner.y0), Point::new(right, inner.y1));
            }
        }
    }
}

/// A colour moved by a share of the way to white; a share below nothing leaves it as it is.
fn toward_white(rgb: [u8; 3], share: f64) -> [u8; 3] {
    let share = share.clamp(0.0, 1.0);
    rgb.map(|part| (f64::from(part) + (255.0 - f64::from(part)) * share).round() as u8)
}

/// A stroke as a filled bar.
fn bar(from: Point, to: Point, half: f64) -> BezPath {
    let way = to - from;
    let aside = way.turn_90() * (half / way.hypot().max(1e-9));
    closed([from + aside, to + aside, to - aside, from - aside])
}
