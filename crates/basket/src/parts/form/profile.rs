//! The side of a mould as a curve: radius and height by the way along the surface.

use std::f64::consts::TAU;

use super::curve::{Piece, Point};
use super::pchip;
use crate::measure::{Angle, Length};

/// Panels into which a curved piece is cut, unless there are very many pieces.
const PANELS: usize = 32;
/// Panels in the whole profile after which pieces are cut less finely.
const MOST_PANELS: usize = 4096;
/// The largest figure taken from a pattern, in mm.
const LARGEST: f64 = 1e5;
/// A bowl that widens by less than this, in mm, is a cone: no eye or plane can tell them apart.
const FLATTEST_BOWL: f64 = 1e-3;
/// Height of a board that is level: its rounded edge, and what is upright below that (common practice).
pub const BOARD: Length = Length::inches(0.5);
/// Radius of a board's edge: staves of 1/16 in, damp, bend round it without a crack (common practice).
pub(crate) const EDGE: Length = Length::inches(0.375);
/// The most of a board's height, and of its width, that is rounded.
const ROUNDED: f64 = 0.75;
/// How often a board's slope and the place where it ends are looked for in turn.
const STEPS: u32 = 24;

/// A place on the side of a mould.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Way along the surface from the base.
    pub along: Length,
    /// Height above the base.
    pub height: Length,
    /// Radius of the mould; for outlines that are not round, girth / 2π.
    pub radius: Length,
    /// Lean of the wall outward from upright.
    pub lean: Angle,
}

impl Spot {
    /// Girth of the mould here.
    pub fn girth(&self) -> Length {
        self.radius * TAU
    }
}

/// The side of a mould: pieces of curves, cut into panels between whose ends place and direction
/// are interpolated by the way along the surface (to about 1e-6 mm).
#[derive(Clone, Debug, PartialEq)]
pub struct Profile {
    panels: Vec<Panel>,
    volume_mm3: f64,
}

/// A place in the table: where it is and in which direction the surface runs there.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Node {
    along: f64,
    radius: f64,
    height: f64,
    radius_slope: f64,
    height_slope: f64,
}

/// A short part of the side.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Panel {
    from: Node,
    to: Node,
}

impl Profile {
    /// A side that passes through measured places: height above the base and radius there, base
    /// upward, by a monotone cubic (see the module `pchip`). Places that do not rise are passed
    /// over; below the lowest place the wall runs straight down to height 0.
    pub fn through(places: &[(Length, Length)]) -> Self {
        let knots = rising(places);
        let slopes = pchip::slopes(&knots);
        let foot =
            knots.first().zip(slopes.first()).filter(|(lowest, _)| lowest.0 > 0.0).map(|(lowest, slope)| {
                Piece::line(((lowest.1 - slope * lowest.0).max(0.0), 0.0), (lowest.1, lowest.0))
            });
        let spans = knots.iter().zip(knots.iter().skip(1)).zip(slopes.iter().zip(slopes.iter().skip(1)));
        let pieces: Vec<Piece> = foot
            .into_iter()
            .chain(spans.map(|((from, to), (start, end))| Piece::between(*from, *to, (*start, *end))))
            .collect();
        if pieces.is_empty() {
            let (height, radius) = knots.first().copied().unwrap_or_default();
            return Self::of_pieces(&[Piece::line((radius, 0.0), (radius, height))]);
        }
        Self::of_pieces(&pieces)
    }

    /// A straight slope from base to rim; upright when both radii are the same.
    pub fn cone(base: Length, rim: Length, height: Length) -> Self {
        Self::of_pieces(&[Piece::line((sane(base), 0.0), (sane(rim), sane(height)))])
    }

    /// A curve through base and rim that is upright at the rim: an arc of radius
    /// `(d² + H²)/(2d)`, where `d` is the difference of the radii and `H` the height, as long as
    /// `d ≤ H`; else a quarter of an ellipse with semi-axes `d` and `H`. A rim no wider than the
    /// base gives a straight side.
    pub fn bowl(base: Length, rim: Length, height: Length) -> Self {
        let (base_mm, rim_mm, height_mm) = (sane(base), sane(rim), sane(height));
        let widening = rim_mm - base_mm;
        if widening < FLATTEST_BOWL {
            Self::cone(base, rim, height)
        } else if widening > height_mm {
            Self::quarter_ellipse(base, rim, height)
        } else {
            let radius = (widening * widening + height_mm * height_mm) / (2.0 * widening);
            let from = -libm::atan2(height_mm, radius - widening);
            let centre = (rim_mm - radius, height_mm);
            Self::of_pieces(&[Piece::Ellipse { centre, axes: (radius, radius), from, to: 0.0 }])
        }
    }

    /// A board with a rounded edge, upright below it: level, or domed by what its height is more than
    /// [`BOARD`](super::BOARD). A rim no wider than the base gives a straight side.
    pub fn board(base: Length, rim: Length, height: Length) -> Self {
        let (base_mm, rim_mm, height_mm) = (sane(base), sane(rim), sane(height));
        let width = rim_mm - base_mm;
        if width < FLATTEST_BOWL || height_mm < FLATTEST_BOWL {
            return Self::cone(base, rim, height);
        }
        let edge = EDGE.to_mm().min(height_mm * ROUNDED).min(width * ROUNDED);
        let upright = (BOARD.to_mm() - edge).clamp(0.0, height_mm - edge).min(height_mm * (1.0 - ROUNDED));
        // Where the slope runs into the edge, and how steep it is, depend on each other.
        let mut slope = 0.0_f64;
        let mut end = (rim_mm - edge, 0.0);
        for _ in 0..STEPS {
            let (sin, cos) = libm::sincos(slope);
            end = (rim_mm - edge * (1.0 - sin), (height_mm - upright - edge * cos).max(0.0));
            slope = libm::atan2(end.1, end.0 - base_mm);
        }
        let centre = (rim_mm - edge, height_mm - upright);
        let from = slope - std::f64::consts::FRAC_PI_2;
        Self::of_pieces(&[
            Piece::line((base_mm, 0.0), end),
            Piece::Ellipse { centre, axes: (edge, edge), from, to: 0.0 },
            Piece::line((rim_mm, height_mm - upright), (rim_mm, height_mm)),
        ])
    }

    /// A quarter of an ellipse, level at the base and upright at the rim.
    pub fn quarter_ellipse(base: Length, rim: Length, height: Length) -> Self {
        let (base, rim, height) = (sane(base), sane(rim), sane(height));
        let centre = (base, height);
        let from = -std::f64::consts::FRAC_PI_2;
        Self::of_pieces(&[Piece::Ellipse { centre, axes: (rim - base, height), from, to: 0.0 }])
    }

    /// An arc of a circle whose centre stands `off_axis` from the axis, from one angle above level
    /// to another; heights count from where the arc begins.
    pub fn arc(off_axis: Length, radius: Length, from: Angle, to: Angle) -> Self {
        let off_axis = if off_axis.to_mm() < 0.0 { -sane(-off_axis) } else { sane(off_axis) };
        let radius = sane(radius);
        let (from, to) = (sane_angle(from), sane_angle(to));
        let centre = (off_axis, -radius * libm::sin(from));
        Self::of_pieces(&[Piece::Ellipse { centre, axes: (radius, radius), from, to }])
    }

    fn of_pieces(pieces: &[Piece]) -> Self {
        let fine = (MOST_PANELS / pieces.len().max(1)).clamp(2, PANELS);
        let mut profile = Self { panels: Vec::new(), volume_mm3: 0.0 };
        for piece in pieces {
            profile.add(piece, if piece.is_straight() { 1 } else { fine });
        }
        profile
    }

    fn add(&mut self, piece: &Piece, panels: usize) {
        let mut along = self.panels.last().map_or(0.0, |panel| panel.to.along);
        let mut start = 0.0;
        let mut start_point = piece.at(start);
        for number in 1..=panels {
            let end = number as f64 / panels as f64;
            let end_point = piece.at(end);
            let sums = piece.sums(start, end);
            let from = Node::at(along, start_point);
            along += sums.length;
            self.panels.push(Panel { from, to: Node::at(along, end_point) });
            self.volume_mm3 += sums.volume;
            (start, start_point) = (end, end_point);
        }
    }

    /// Way along the surface from base to top.
    pub fn length(&self) -> Length {
        Length::mm(self.top().along)
    }

    /// Height from base to top.
    pub fn height(&self) -> Length {
        Length::mm(self.top().height)
    }

    /// Volume inside the surface, in cubic millimetres.
    pub fn volume_mm3(&self) -> f64 {
        self.volume_mm3
    }

    /// The place this far along the surface; beyond either end the wall runs on straight.
    pub fn at(&self, along: Length) -> Spot {
        let along = finite(along.to_mm());
        let (bottom, top) = (self.bottom(), self.top());
        if along <= bottom.along {
            bottom.straight_on(along).spot()
        } else if along >= top.along {
            top.straight_on(along).spot()
        } else {
            let index = self.panels.partition_point(|panel| panel.to.along < along);
            self.panels.get(index).map_or(top, |panel| panel.at(along)).spot()
        }
    }

    /// The way along the surface to this height; for a side that turns down again, the first way.
    pub fn along_at_height(&self, height: Length) -> Length {
        let height = finite(height.to_mm());
        let (bottom, top) = (self.bottom(), self.top());
        let along = if height <= bottom.height {
            bottom.along_straight_to(height)
        } else if height >= top.height {
            top.along_straight_to(height)
        } else {
            let index = self.panels.partition_point(|panel| panel.to.height < height);
            self.panels.get(index).map_or(top.along, |panel| panel.along_where(|node| node.height - height))
        };
        Length::mm(along)
    }

    /// Largest radius.
    pub fn widest(&self) -> Length {
        self.turning_spots().map(|spot| spot.radius).fold(Length::ZERO, Length::max)
    }

    /// Places at even steps along the surface, from base to top.
    pub fn spots(&self, count: u32) -> impl Iterator<Item = Spot> + '_ {
        let step = self.length() / f64::from(count.saturating_sub(1).max(1));
        (0..count).map(move |number| self.at(step * f64::from(number)))
    }

    /// The places between which the radius only rises or only falls, and many more between them.
    pub(super) fn turning_spots(&self) -> impl Iterator<Item = Spot> + '_ {
        let inner = self.panels.iter().flat_map(|panel| {
            let turns = panel.from.radius_slope * panel.to.radius_slope < 0.0;
            let turning = turns.then(|| {
                let sign = panel.to.radius_slope.signum();
                panel.at(panel.along_where(|node| sign * node.radius_slope))
            });
            [Some(panel.from), turning, Some(panel.to)].into_iter().flatten()
        });
        inner.map(Node::spot)
    }

    fn bottom(&self) -> Node {
        self.panels.first().map_or(Node::NOWHERE, |panel| panel.from)
    }

    fn top(&self) -> Node {
        self.panels.last().map_or(Node::NOWHERE, |panel| panel.to)
    }
}

impl Node {
    const NOWHERE: Self = Self { along: 0.0, radius: 0.0, height: 0.0, radius_slope: 0.0, height_slope: 1.0 };

    fn at(along: f64, point: Point) -> Self {
        let speed = point.speed();
        let (radius_slope, height_slope) =
            if speed > 0.0 { (point.radius_rate / speed, point.height_rate / speed) } else { (0.0, 1.0) };
        Self { along, radius: point.radius, height: point.height, radius_slope, height_slope }
    }

    fn straight_on(self, along: f64) -> Self {
        let way = along - self.along;
        let radius = self.radius + self.radius_slope * way;
        Self { along, radius, height: self.height + self.height_slope * way, ..self }
    }

    /// The way along to a height beyond an end; a nearly level wall is taken to rise a little.
    fn along_straight_to(self, height: f64) -> f64 {
        self.along + (height - self.height) / self.height_slope.max(1e-3)
    }

    fn spot(self) -> Spot {
        Spot {
            along: Length::mm(self.along),
            height: Length::mm(self.height),
            radius: Length::mm(self.radius.max(0.0)),
            lean: Angle::radians(libm::atan2(self.radius_slope, self.height_slope)),
        }
    }
}

impl Panel {
    /// Cubic Hermite interpolation by the way along the surface.
    fn at(&self, along: f64) -> Node {
        let Self { from, to } = self;
        let width = to.along - from.along;
        if width <= 0.0 {
            return *from;
        }
        let share = (along - from.along) / width;
        let (radius, radius_slope) =
            hermite((from.radius, from.radius_slope), (to.radius, to.radius_slope), width, share);
        let (height, height_slope) =
            hermite((from.height, from.height_slope), (to.height, to.height_slope), width, share);
        Node { along, radius, height, radius_slope, height_slope }
    }

    /// The way along to where a figure that rises through the panel passes zero, by halving.
    fn along_where(&self, figure: impl Fn(Node) -> f64) -> f64 {
        let (mut low, mut high) = (self.from.along, self.to.along);
        for _ in 0..48 {
            let middle = f64::midpoint(low, high);
            if figure(self.at(middle)) < 0.0 { low = middle } else { high = middle }
        }
        f64::midpoint(low, high)
    }
}

/// Value and slope at a share of the way between two ends, each given by value and slope.
fn hermite(from: (f64, f64), to: (f64, f64), width: f64, share: f64) -> (f64, f64) {
    let rise = to.0 - from.0;
    let (start, end) = (from.1 * width, to.1 * width);
    let (square, cube) = (3.0 * rise - 2.0 * start - end, start + end - 2.0 * rise);
    let value = from.0 + share * (start + share * (square + share * cube));
    (value, (start + share * (2.0 * square + share * 3.0 * cube)) / width)
}

/// The places whose height rises, as `(height, radius)` in mm.
fn rising(places: &[(Length, Length)]) -> Vec<(f64, f64)> {
    let mut knots: Vec<(f64, f64)> = Vec::with_capacity(places.len());
    for (height, radius) in places {
        let height = sane(*height);
        if knots.last().is_none_or(|below| height - below.0 > 1e-6) {
            knots.push((height, sane(*radius)));
        }
    }
    knots
}

fn sane(length: Length) -> f64 {
    finite(length.to_mm()).clamp(0.0, LARGEST)
}

fn sane_angle(angle: Angle) -> f64 {
    finite(angle.to_radians()).clamp(-TAU, TAU)
}

fn finite(figure: f64) -> f64 {
    if figure.is_nan() { 0.0 } else { figure.clamp(-1e9, 1e9) }
}
