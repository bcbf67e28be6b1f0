//! A second outline carried through the form: an ellipse answers the few questions of an outline, and
//! girths, places and tightest bends round the wall follow.

use std::f64::consts::{FRAC_PI_2, TAU};

use basket::Length;
use basket::form::{Form, Held, Mould, Outline, OutlinePoint, Profile};
use basket::pattern::MouldPieces;

/// Steps over which its length is summed.
const STEPS: usize = 20_000;

struct Ellipse {
    long: f64,
    short: f64,
    /// Way to each of equal steps of the parameter.
    ways: Vec<f64>,
}

impl Ellipse {
    fn new(long: f64, short: f64) -> Self {
        let mut ways = vec![0.0];
        let step = TAU / STEPS as f64;
        for number in 0..STEPS {
            let middle = (number as f64 + 0.5) * step;
            let speed = (long * middle.sin()).hypot(short * middle.cos());
            ways.push(ways[number] + speed * step);
        }
        Self { long, short, ways }
    }
}

impl Outline for Ellipse {
    fn girth(&self) -> f64 {
        self.ways[STEPS]
    }

    fn at(&self, turn: f64) -> OutlinePoint {
        let way = turn.rem_euclid(1.0) * self.girth();
        let after = self.ways.partition_point(|at| *at < way).clamp(1, STEPS);
        let share = (way - self.ways[after - 1]) / (self.ways[after] - self.ways[after - 1]);
        let (sin, cos) = ((after as f64 - 1.0 + share) * TAU / STEPS as f64).sin_cos();
        let speed = (self.long * sin).hypot(self.short * cos);
        OutlinePoint {
            point: [self.long * cos, self.short * sin],
            outward: [self.short * cos / speed, self.long * sin / speed],
            curvature: self.long * self.short / speed.powi(3),
        }
    }

    fn tightest(&self) -> f64 {
        self.short * self.short / self.long
    }
}

#[track_caller]
fn close(found: f64, wanted: f64, allowance: f64) {
    assert!((found - wanted).abs() <= allowance, "{found} is not {wanted} within {allowance}");
}

/// A wall 120 mm high that leans out by 30 mm all round an ellipse of half axes 150 and 100 mm.
fn oval() -> Form<Ellipse> {
    let outline = Ellipse::new(150.0, 100.0);
    let foot = Length::mm(outline.girth() / TAU);
    let profile = Profile::cone(foot, foot + Length::mm(30.0), Length::mm(120.0));
    let held = Held::Mould(Mould::of(&profile, MouldPieces::One));
    Form { outline, profile, held }
}

/// Source: the perimeter of an ellipse by the complete elliptic integral (computed independently by the
/// arithmetic-geometric mean): 793.271 979 464 5 for half axes 150 and 100; a curve at the distance `d`
/// outside a convex one is `2πd` longer (Jakob Steiner, 1840).
#[test]
fn girths_follow_from_the_outline() {
    let form = oval();
    close(form.girth(Length::ZERO, Length::ZERO).to_mm(), 793.271_979_464_5, 1e-5);
    close(form.girth(form.arc(), Length::mm(2.0)).to_mm(), 793.271_979_464_5 + TAU * 32.0, 1e-5);
}

/// Source: equal arc places on the ellipse 150 × 100 for 25 staves, computed independently by root
/// finding: pitch 31.730 879 2, parameters 0, 0.311 252 1, 0.595 765 8, 0.850 872 6.
#[test]
fn places_lie_at_equal_shares_of_the_outline() {
    let form = oval();
    for (number, parameter) in [0.0_f64, 0.311_252_1, 0.595_765_8, 0.850_872_6].into_iter().enumerate() {
        let [x, y, height] = form.at(Length::ZERO, number as f64 / 25.0, Length::ZERO).point;
        close(x.to_mm(), 150.0 * parameter.cos(), 2e-5);
        close(y.to_mm(), 100.0 * parameter.sin(), 2e-5);
        close(height.to_mm(), 0.0, 0.0);
    }
}

/// Source: differential geometry: the smallest radius of an ellipse is b²/a, and that of a curve at the
/// distance `d` outside is `d` larger.
#[test]
fn the_tight_ends_bend_less_further_out() {
    let form = oval();
    close(form.tightest(Length::ZERO, Length::ZERO).to_mm(), 100.0 * 100.0 / 150.0, 1e-6);
    close(form.tightest(form.arc(), Length::mm(5.0)).to_mm(), 100.0 * 100.0 / 150.0 + 35.0, 1e-4);
    let end = form.at(form.arc(), 0.0, Length::mm(5.0));
    close(1.0 / end.curvature, 100.0 * 100.0 / 150.0 + 35.0, 1e-3);
}

/// Every place of a level keeps the outline's normal, as far out all round, and the directions are square.
#[test]
fn levels_are_the_outline_at_a_distance() {
    let form = oval();
    let lean = (30.0_f64 / 120.0).atan();
    for step in 0..16 {
        let turn = f64::from(step) / 16.0;
        let foot = form.outline.at(turn);
        let top = form.at(form.arc(), turn, Length::ZERO);
        let [x, y, height] = top.point.map(Length::to_mm);
        close((x - foot.point[0]).hypot(y - foot.point[1]), 30.0, 1e-4);
        close(height, 120.0, 1e-9);
        let dot: f64 = top.outward.iter().zip(top.along).map(|(out, up)| out * up).sum();
        close(dot, 0.0, 1e-12);
        close(top.along[2].acos(), lean, 1e-9);
        close(top.outward[2], -(FRAC_PI_2 - lean).cos(), 1e-9);
    }
}
