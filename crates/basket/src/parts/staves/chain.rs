//! Chains of chords over a wall, and how they are tightened.

/// Rounds of Newton's method: the first is right to the thousandth of a millimetre already.
const ROUNDS: u32 = 4;
/// The farthest, in turns, that a round takes a place of a chain.
const MOST_STEP: f64 = 0.05;

/// A direction or a way in space, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Vector(pub(super) [f64; 3]);

impl Vector {
    pub(super) fn plus(self, other: Self) -> Self {
        let ([x, y, z], [a, b, c]) = (self.0, other.0);
        Self([x + a, y + b, z + c])
    }

    pub(super) fn minus(self, other: Self) -> Self {
        self.plus(other.times(-1.0))
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self(self.0.map(|part| part * factor))
    }

    pub(super) fn dot(self, other: Self) -> f64 {
        let [x, y, z] = self.0;
        let [a, b, c] = other.0;
        x * a + y * b + z * c
    }

    pub(super) fn cross(self, other: Self) -> Self {
        let [x, y, z] = self.0;
        let [a, b, c] = other.0;
        Self([y * c - z * b, z * a - x * c, x * b - y * a])
    }

    pub(super) fn size(self) -> f64 {
        self.dot(self).sqrt()
    }

    pub(super) fn unit(self) -> Self {
        self.times(1.0 / self.size().max(1e-9))
    }
}

/// A short piece of a level of the wall, which bends evenly, by the share of the way round.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bow {
    middle: f64,
    at: Vector,
    rate: Vector,
    bend: Vector,
}

impl Bow {
    /// The parabola through three places that lie as far apart, in turns.
    pub(super) fn through(middle: f64, apart: f64, [before, at, after]: [Vector; 3]) -> Self {
        let rate = after.minus(before).times(0.5 / apart);
        let bend = after.plus(before).minus(at.times(2.0)).times(1.0 / (apart * apart));
        Self { middle, at, rate, bend }
    }

    pub(super) fn place(&self, turn: f64) -> Vector {
        let off = turn - self.middle;
        self.at.plus(self.rate.times(off)).plus(self.bend.times(off * off / 2.0))
    }

    fn rate(&self, turn: f64) -> Vector {
        self.rate.plus(self.bend.times(turn - self.middle))
    }

    /// The turn on this piece to which a chain goes straight on that has come by a chord of direction `way` to
    /// the turn `from` on the piece before; square to that piece where it begins there.
    pub(super) fn straight_on(&self, before: &Self, from: f64, way: Option<Vector>) -> f64 {
        let (at, along) = (before.place(from), before.rate(from));
        let wanted = way.map_or(0.0, |way| way.dot(along));
        let mut turn = self.middle;
        for _ in 0..ROUNDS {
            let chord = self.place(turn).minus(at);
            let unit = chord.unit();
            let rate = self.rate(turn);
            let slope = along.dot(rate.minus(unit.times(unit.dot(rate)))) / chord.size().max(1e-9);
            let step = (unit.dot(along) - wanted) / slope;
            if step.is_finite() {
                turn -= step.clamp(-MOST_STEP, MOST_STEP);
            }
        }
        turn
    }
}

/// A chain over pieces of levels, one above the other.
pub(super) struct Chain {
    pub(super) bows: Vec<Bow>,
}

impl Chain {
    /// The turns at which it is shortest, from given ones on; its ends are held. The length's change with each
    /// turn depends on those beside it alone, so that a round takes one sweep up and one down.
    pub(super) fn tightened(&self, mut turns: Vec<f64>) -> Vec<f64> {
        for _ in 0..ROUNDS {
            let places = self.places(&turns);
            let rates: Vec<Vector> =
                self.bows.iter().zip(&turns).map(|(bow, turn)| bow.rate(*turn)).collect();
            let steps = self.steps(&places, &rates);
            for (turn, step) in turns.iter_mut().skip(1).zip(steps) {
                *turn -= step.clamp(-MOST_STEP, MOST_STEP);
            }
        }
        turns
    }

    /// Where it lies at these turns.
    pub(super) fn places(&self, turns: &[f64]) -> Vec<Vector> {
        self.bows.iter().zip(turns).map(|(bow, turn)| bow.place(*turn)).collect()
    }

    /// Newton's steps of all turns but the ends'.
    fn steps(&self, places: &[Vector], rates: &[Vector]) -> Vec<f64> {
        let mut swept: Vec<(f64, f64)> = Vec::with_capacity(places.len());
        let triples = places.windows(3).zip(rates.windows(3)).zip(self.bows.iter().skip(1));
        for ((place, rate), bow) in triples {
            let ([before, here, after], [rate_before, rate, rate_after]) = (place, rate) else { continue };
            let [into, out] = [here.minus(*before), after.minus(*here)];
            let [short, long] = [into, out].map(|chord| 1.0 / chord.size().max(1e-9));
            let [into, out] = [into.times(short), out.times(long)];
            let across =
                |way: Vector, one: Vector, other: Vector| one.dot(other) - one.dot(way) * other.dot(way);
            let pull = rate.dot(into.minus(out));
            let own = across(into, *rate, *rate) * short
                + across(out, *rate, *rate) * long
                + bow.bend.dot(into.minus(out));
            let lower = -across(into, *rate_before, *rate) * short;
            let upper = -across(out, *rate, *rate_after) * long;
            // The first chord's lower end and the last one's upper end are held.
            let (carried, known) = swept.last().copied().unwrap_or_default();
            let whole = own - lower * carried;
            let is_sound = whole.is_finite() && whole > 0.0;
            swept.push(if is_sound { (upper / whole, (pull - lower * known) / whole) } else { (0.0, 0.0) });
        }
        let mut next = 0.0;
        let mut steps: Vec<f64> = swept
            .into_iter()
            .rev()
            .map(|(carried, known)| {
                next = known - carried * next;
                next
            })
            .collect();
        steps.reverse();
        steps
    }
}
