//! The paths of staves up a wall that is not round.
//!
//! A stave is a flat strip: it bends easily across its face and hardly in its own plane. It lies where its edges
//! are not strained, which is on a geodesic of the wall: the shortest way between its ends, or the way straight
//! on from where it begins. Here a path is a chain of short chords over places of the wall whose length is least
//! (the principle of least length; the discretisation is derived here). A chain that begins freely square to the
//! foot is found step by step, one that is held at both ends by Newton's method.

use crate::form::Form;
use crate::measure::{Angle, Length};
use crate::parts::staves::chain::{Bow, Chain, Place};
use crate::parts::staves::round::Round;
use crate::pattern::Spacing;
use crate::uprights::Path;

/// Steps from foot to rim.
const STEPS: u32 = 16;
/// Places round the wall, and up it, at which the lines straight up are looked at.
const LOOKS: (u32, u32) = (16, 4);
/// Steps between places at which the bend of such a line is taken, and the share of the wall over which it is.
const BENDS: u32 = 8;
const NEAR: f64 = 48.0;
/// How far, in mm, such a line may stray from the plane square to the foot and still count as plane.
const PLANE: f64 = 1e-6;
/// Half the way round over which the wall about a stave that runs free is taken to bend evenly.
const REACH: f64 = 2e-3;

/// The wall on which staves take their paths.
pub(super) struct Wall<'a> {
    pub(super) form: &'a Form,
    /// Middle of the rim, along the wall.
    pub(super) rim: Length,
    /// How far the staves' middles stand off the form there.
    pub(super) outward: Length,
    pub(super) count: u32,
    /// Full width of a stave.
    pub(super) width: Length,
}

impl Wall<'_> {
    /// The path of each stave, or none where all keep to the lines square to the foot: on a round wall always,
    /// and where these are geodesics and the staves are to be spaced at the foot.
    pub(super) fn paths(&self, spacing: Spacing) -> Vec<Path> {
        if self.form.outline.is_round() || self.rim <= Length::ZERO {
            return Vec::new();
        }
        let plane = self.has_plane_lines();
        if plane && spacing == Spacing::Foot {
            return Vec::new();
        }
        let round =
            (spacing == Spacing::Rim).then(|| Round::of(|turn| self.form.at(self.rim, turn, self.outward)));
        let path = |number: u32| {
            let turn = f64::from(number) / f64::from(self.count);
            let turns = match &round {
                Some(round) => self.held([turn, round.turn(turn)]),
                None => self.free(turn),
            };
            self.path(&turns, plane)
        };
        // Where one side of the outline is the other's image, so are their staves.
        let half = if self.form.outline.is_even() { self.count / 2 + 1 } else { self.count };
        let mut paths: Vec<Path> = (0..half).map(path).collect();
        let images: Vec<Path> = (half..self.count)
            .filter_map(|number| paths.get((self.count - number) as usize))
            .map(image)
            .collect();
        paths.extend(images);
        paths
    }

    fn along(&self, step: u32) -> Length {
        self.rim * (f64::from(step) / f64::from(STEPS))
    }

    fn at(&self, step: u32, turn: f64) -> Place {
        Place::of(&self.form.at(self.along(step), turn, self.outward))
    }

    /// Whether the lines of one place in the round lie in planes square to foot and wall: such a line is a
    /// geodesic, because it bends nowhere but toward the wall (differential geometry).
    fn has_plane_lines(&self) -> bool {
        let (round, up) = LOOKS;
        (0..round).all(|look| {
            // Off the axes, where all lines are plane.
            let turn = (f64::from(look) + 0.3) / f64::from(round);
            let foot = self.at(0, turn);
            (1..=up).all(|level| {
                let here = self.at(STEPS * level / up, turn);
                let beside = foot.beside();
                here.minus(foot.point).dot(beside).abs() < PLANE && here.outward.dot(beside).abs() < PLANE
            })
        })
    }

    /// The turns of the shortest chain between a place of the foot and one of the rim.
    fn held(&self, [from, to]: [f64; 2]) -> Vec<f64> {
        let turns: Vec<f64> =
            (0..=STEPS).map(|step| from + (to - from) * f64::from(step) / f64::from(STEPS)).collect();
        let reach = ((to - from).abs() / 4.0).max(1e-4);
        let bows = turns.iter().zip(0..).map(|(turn, step)| self.bow(step, *turn, reach));
        Chain { bows: bows.collect() }.tightened(turns)
    }

    /// The turns of the chain that begins square to the foot and goes straight on.
    fn free(&self, from: f64) -> Vec<f64> {
        let mut turns = vec![from];
        let mut last = (self.bow(0, from, REACH), from);
        let mut way = None;
        for step in 1..=STEPS {
            let before = turns.iter().rev().nth(1).map_or(0.0, |before| last.1 - before);
            let bow = self.bow(step, last.1 + before, REACH);
            let turn = bow.straight_on(&last.0, last.1, way);
            way = Some(bow.place(turn).minus(last.0.place(last.1)).unit());
            turns.push(turn);
            last = (bow, turn);
        }
        turns
    }

    fn bow(&self, step: u32, turn: f64, reach: f64) -> Bow {
        Bow::through(turn, reach, [-reach, 0.0, reach].map(|aside| self.at(step, turn + aside).point))
    }

    fn path(&self, turns: &[f64], plane: bool) -> Path {
        let from = turns.first().copied().unwrap_or_default();
        let places: Vec<Place> = turns.iter().zip(0..).map(|(turn, step)| self.at(step, *turn)).collect();
        let lean = match (places.first(), places.last()) {
            (Some(foot), Some(rim)) => {
                let chord = rim.minus(foot.point);
                libm::asin((chord.dot(foot.beside()) / chord.size().max(1e-9)).clamp(-1.0, 1.0))
            }
            _ => 0.0,
        };
        let chords = places.iter().zip(places.iter().skip(1));
        let length: f64 = chords.map(|(from, to)| to.minus(from.point).size()).sum();
        Path {
            aside: turns.iter().map(|turn| turn - from).collect(),
            lean: Angle::radians(lean),
            strain: if plane { 0.0 } else { self.strain(from) },
            longer: Length::mm(length - self.side()),
        }
    }

    /// The chords of the side, which the chords of a path are compared with: both cut the same corners.
    fn side(&self) -> f64 {
        let spots: Vec<[f64; 2]> = (0..=STEPS)
            .map(|step| self.form.profile.at(self.along(step)))
            .map(|spot| [spot.radius.to_mm(), spot.height.to_mm()])
            .collect();
        spots
            .iter()
            .zip(spots.iter().skip(1))
            .map(|(from, to)| libm::hypot(to[0] - from[0], to[1] - from[1]))
            .sum()
    }

    /// Strain of the edges of a stave that is held on the line of its place in the round, where that bends most in
    /// the wall's own plane.
    fn strain(&self, turn: f64) -> f64 {
        let (looks, near) = (f64::from(BENDS), self.rim / NEAR);
        let bends = (0..=BENDS).map(|look| {
            let middle = near + (self.rim - near * 2.0) * (f64::from(look) / looks);
            let at = |along: Length| Place::of(&self.form.at(along, turn, self.outward));
            let [before, here, after] = [middle - near, middle, middle + near].map(at);
            let [into, out] = [here.minus(before.point), after.minus(here.point)];
            let aside = here.outward.cross(out.plus(into).unit());
            2.0 * out.unit().minus(into.unit()).dot(aside) / (into.size() + out.size()).max(1e-9)
        });
        bends.fold(0.0, |most: f64, bend| most.max(bend.abs())) * self.width.to_mm() / 2.0
    }
}

/// The path of the stave on the other side of the axis.
fn image(path: &Path) -> Path {
    Path {
        aside: path.aside.iter().map(|turn| -turn).collect(),
        lean: Angle::radians(-path.lean.to_radians()),
        ..*path
    }
}
