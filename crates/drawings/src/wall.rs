//! Where the stave lies: from the groove round the turn and up the mould.

use basket::{Basket, Length};
use kurbo::{BezPath, CubicBez, ParamCurve, ParamCurveDeriv, Point, Vec2};

use crate::drawing::closed;

/// Steps in which curves of the wall are drawn.
const STEPS: u32 = 96;

/// The wall of a basket in section: radius to the right and height above the mould's base up, in mm.
pub(crate) struct Wall<'a> {
    basket: &'a Basket,
    /// Middle line of the stave from the edge of the base to the mould's foot.
    turn: CubicBez,
}

impl<'a> Wall<'a> {
    pub(crate) fn of(basket: &'a Basket) -> Self {
        let half = basket.body.uprights().thickness.to_mm() / 2.0;
        let edge = Point::new(
            basket.body.base().diameter.to_mm() / 2.0,
            -basket.body.base().thickness.to_mm() / 2.0,
        );
        let (foot, up) = on_mould(basket, Length::ZERO);
        let foot = foot + outward(up) * half;
        let reach = (foot - edge).hypot() * 0.45;
        let turn = CubicBez::new(edge, edge + Vec2::new(reach, 0.0), foot - up * reach, foot);
        Self { basket, turn }
    }

    /// End of the foot, along the mould: negative.
    pub(crate) fn foot(&self) -> Length {
        let parts = &self.basket.body.staves().length_parts;
        -(parts.groove + parts.turn)
    }

    /// The place this far along the mould, and so far out from the stave's inner face.
    pub(crate) fn at(&self, along: Length, out: f64) -> Point {
        let (place, direction) = self.inner_face(along);
        place + outward(direction) * out
    }

    /// Place and direction of the stave's inner face this far along the mould.
    fn inner_face(&self, along: Length) -> (Point, Vec2) {
        if along >= Length::ZERO {
            return on_mould(self.basket, along);
        }
        let parts = &self.basket.body.staves().length_parts;
        let half = self.basket.body.uprights().thickness.to_mm() / 2.0;
        let below = along.to_mm() + parts.turn.to_mm();
        let (middle, direction) = if below < 0.0 || parts.turn <= Length::ZERO {
            (self.turn.p0 + Vec2::new(below, 0.0), Vec2::new(1.0, 0.0))
        } else {
            let share = below / parts.turn.to_mm();
            let way = self.turn.deriv().eval(share).to_vec2();
            (self.turn.eval(share), way / way.hypot().max(1e-9))
        };
        (middle - outward(direction) * half, direction)
    }

    /// A line that stays `out` from the stave's inner face between two places.
    pub(crate) fn line(&self, from: Length, to: Length, out: f64) -> impl DoubleEndedIterator<Item = Point> {
        (0..=STEPS).map(move |step| self.at(from + (to - from) * (f64::from(step) / f64::from(STEPS)), out))
    }

    /// A strip of the wall between two places, from `inner` to `outer` out from the inner face.
    pub(crate) fn strip(&self, from: Length, to: Length, inner: f64, outer: f64) -> BezPath {
        closed(self.line(from, to, inner).chain(self.line(from, to, outer).rev()))
    }
}

fn on_mould(basket: &Basket, along: Length) -> (Point, Vec2) {
    let spot = basket.body.form.profile.at(along);
    let (sin, cos) = spot.lean.to_radians().sin_cos();
    (Point::new(spot.radius.to_mm(), spot.height.to_mm()), Vec2::new(sin, cos))
}

/// Away from the mould, square to a direction up the wall.
fn outward(up: Vec2) -> Vec2 {
    Vec2::new(up.y, -up.x)
}
