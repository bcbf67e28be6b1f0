//! Where rows and staves lie on a chart.

use basket::pattern::Direction;
use basket::weave::{Face, Row};
use basket::{Basket, Length};
use kurbo::Rect;

/// Longest side of the weaving on paper, in mm.
const WIDTH: f64 = 130.0;
/// Most height of the weaving on paper, in mm.
const HEIGHT: f64 = 140.0;
/// More staves or rows than this are not drawn.
const MOST: u32 = 1000;
/// Largest side of a crossing on a grid, in mm.
const SQUARE: f64 = 4.0;

/// Whether stave numbers rise to the left on a face of a basket that stands on its base.
pub fn numbers_rise_left(basket: &Basket, face: Face) -> bool {
    (face == Face::Outside) == (basket.body.weave.direction == Direction::Right)
}

/// How a chart is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChartKind {
    /// Each row at its true girth and height, each stave at its true width, to one scale.
    True,
    /// Every crossing the same square.
    Grid,
}

/// The plane of a chart: x 0 in its middle, y 0 at the foot of the wall, y down.
pub(super) struct Plane<'a> {
    pub(super) basket: &'a Basket,
    pub(super) face: Face,
    pub(super) kind: ChartKind,
    pub(super) count: u32,
    /// Paper per basket.
    pub(super) scale: f64,
    /// Side of a crossing on a grid.
    square: f64,
}

impl<'a> Plane<'a> {
    pub(super) fn of(basket: &'a Basket, face: Face, kind: ChartKind) -> Self {
        let count = basket.body.uprights().count.clamp(1, MOST);
        let rows = basket.body.weave.rows.clamp(1, MOST);
        let square = SQUARE.min(WIDTH / f64::from(count)).min(HEIGHT / f64::from(rows));
        let mut plane = Self { basket, face, kind, count, scale: 1.0, square };
        let widest = plane.rows().map(|row| plane.girth(row.along)).fold(1.0, f64::max);
        plane.scale = (WIDTH / widest).min(HEIGHT / basket.body.weave.top_along.to_mm().max(1.0)).min(1.0);
        plane
    }

    /// The rows that are drawn.
    pub(super) fn rows(&self) -> impl DoubleEndedIterator<Item = &'a Row> + Clone + use<'a> {
        self.basket.body.weave.each_row.iter().take(MOST as usize)
    }

    /// Width of the unrolled wall, this far along the mould.
    pub(super) fn girth(&self, along: Length) -> f64 {
        match self.kind {
            ChartKind::Grid => self.square * f64::from(self.count),
            ChartKind::True => {
                let surface = match self.face {
                    Face::Outside => self.basket.body.uprights().thickness,
                    Face::Inside => Length::ZERO,
                };
                let off = self.basket.body.uprights().standing.at(along);
                self.basket.body.form.girth(along, off + surface).to_mm() * self.scale
            }
        }
    }

    /// Bottom and top of a row.
    pub(super) fn heights(&self, row: &Row) -> (f64, f64) {
        match self.kind {
            ChartKind::Grid => {
                let bottom = -f64::from(row.number.saturating_sub(1)) * self.square;
                (bottom, bottom - self.square)
            }
            ChartKind::True => (self.y(row.along - row.pitch / 2.0), self.y(row.along + row.pitch / 2.0)),
        }
    }

    /// Height on paper of a place along the mould.
    fn y(&self, along: Length) -> f64 {
        -along.to_mm() * self.scale
    }

    /// Whether stave numbers rise to the left as one looks at it.
    pub(super) fn numbers_rise_left(&self) -> bool {
        numbers_rise_left(self.basket, self.face)
    }

    /// Where a place on the way round lies: `turn` counts staves, 0 at the middle of stave 1.
    pub(super) fn x(&self, turn: f64, girth: f64) -> f64 {
        let share = (turn + 0.5) / f64::from(self.count) - 0.5;
        if self.numbers_rise_left() { -share * girth } else { share * girth }
    }

    /// Half the width of a stave at a row.
    pub(super) fn half_stave(&self, row: &Row) -> f64 {
        match self.kind {
            ChartKind::Grid => self.square / 2.0,
            ChartKind::True => self.basket.body.uprights().width_at(row.along).to_mm() * self.scale / 2.0,
        }
    }

    /// The piece of a row from the gap before one stave to the gap after another (both from 0).
    pub(super) fn piece(&self, row: &Row, first: u32, last: u32) -> Rect {
        let girth = self.girth(row.along);
        let (bottom, top) = self.heights(row);
        let (from, to) = (self.x(f64::from(first) - 0.5, girth), self.x(f64::from(last) + 0.5, girth));
        Rect::from_points((from, bottom), (to, top))
    }

    /// Half the width of the widest row between two heights on paper, the upper first.
    pub(super) fn half_within(&self, (upper, lower): (f64, f64)) -> f64 {
        let meets = |row: &&Row| {
            let (bottom, top) = self.heights(row);
            top < lower && bottom > upper
        };
        self.rows().filter(meets).map(|row| self.girth(row.along) / 2.0).fold(0.0, f64::max)
    }

    /// Bottom of the weaving.
    pub(super) fn foot(&self) -> f64 {
        self.rows().next().map_or(0.0, |row| self.heights(row).0)
    }

    /// Top of the weaving.
    pub(super) fn top(&self) -> f64 {
        self.rows().next_back().map_or(0.0, |row| self.heights(row).1)
    }
}
