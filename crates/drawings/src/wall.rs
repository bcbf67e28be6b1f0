//! Where the stave lies: from the groove round the turn and up the mould.

use basket::{Basket, Length};
use kurbo::{BezPath, Point, Vec2};

use crate::around::Around;
use crate::drawing::closed;

/// Steps in which curves of the wall are drawn.
const STEPS: u32 = 96;
/// How far lines may stray from the bend.
const FINE: Length = Length::mm(0.02);

/// The wall of a basket in section: radius to the right and height above the mould's base up, in mm.
pub(crate) struct Wall<'a> {
    basket: &'a Basket,
    /// Seen from which side; none as the mean all round.
    from: Option<Around<'a>>,
}

impl<'a> Wall<'a> {
    pub(crate) fn of(basket: &'a Basket) -> Self {
        Self { basket, from: None }
    }

    /// The same from ear to ear, or along its length, where it is not round.
    pub(crate) fn in_front(basket: &'a Basket) -> Self {
        Self { basket, from: Some(Around::of_front(basket)) }
    }

    /// How much further it reaches at a height than the radius of a level there.
    pub(crate) fn over(&self, height: f64) -> f64 {
        self.from.map_or(0.0, |around| around.over(height))
    }

    /// End of the foot, along the mould.
    pub(crate) fn foot(&self) -> Length {
        let parts = &self.basket.body.staves().length_parts;
        -(parts.groove + parts.turn)
    }

    /// The place this far along the mould, and so far out from the stave's inner face.
    pub(crate) fn at(&self, along: Length, out: f64) -> Point {
        let (place, direction) = self.inner_face(along);
        place + outward(direction) * out
    }

    /// Place and direction of the stave's inner face this far along the mould: on the bend from the groove
    /// and then up the mould, further out by as much as rows behind it hold it off.
    fn inner_face(&self, along: Length) -> (Point, Vec2) {
        let body = &self.basket.body;
        let (bend, off) = (&body.staves().bend, body.uprights().standing.at(along).to_mm());
        let spot = body.profile().at(along);
        if along >= bend.touch {
            let (sin, cos) = spot.lean.to_radians().sin_cos();
            let up = Vec2::new(sin, cos);
            return (self.reach(spot.radius, spot.height) + outward(up) * off, up);
        }
        let half = bend.thickness().to_mm() / 2.0;
        let on = bend.at(along + bend.added());
        let (sin, cos) = on.lean.to_radians().sin_cos();
        let up = Vec2::new(sin, cos);
        let pushed = if along > Length::ZERO { off + half - bend.stand_off_at(spot).to_mm() } else { 0.0 };
        let middle = self.reach(on.radius, on.height);
        (middle + outward(up) * (pushed.max(0.0) - half), up)
    }

    fn reach(&self, radius: Length, height: Length) -> Point {
        Point::new(radius.to_mm() + self.over(height.to_mm()), height.to_mm())
    }

    /// A line that stays `out` from the stave's inner face between two places; round the bend at the foot it
    /// keeps to the curve.
    pub(crate) fn line(&self, from: Length, to: Length, out: f64) -> impl DoubleEndedIterator<Item = Point> {
        let bend = &self.basket.body.staves().bend;
        let even = (0..=STEPS).map(|step| from + (to - from) * (f64::from(step) / f64::from(STEPS)));
        let bent = bend.points(FINE).map(|on| on.way - bend.added());
        let mut places: Vec<Length> =
            even.chain(bent.filter(|along| *along > from.min(to) && *along < from.max(to))).collect();
        places.sort_by(|a, b| a.to_mm().total_cmp(&b.to_mm()));
        if to < from {
            places.reverse();
        }
        places.into_iter().map(move |along| self.at(along, out))
    }

    /// A strip of the wall between two places, from `inner` to `outer` out from the inner face.
    pub(crate) fn strip(&self, from: Length, to: Length, inner: f64, outer: f64) -> BezPath {
        closed(self.line(from, to, inner).chain(self.line(from, to, outer).rev()))
    }
}

/// Away from the mould, square to a direction up the wall.
fn outward(up: Vec2) -> Vec2 {
    Vec2::new(up.y, -up.x)
}
