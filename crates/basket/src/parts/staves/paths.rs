//! The paths of staves up a wall that is not round.
//!
//! A stave is a flat strip: it bends easily across its face and hardly in its own plane. It lies where its edges
//! are not strained, which is on a geodesic of the wall: the shortest way between its ends, or the way straight
//! on from where it begins. Here a path is a chain of short chords over places of the wall whose length is least
//! (the principle of least length; the discretisation is derived here). A chain that begins freely square to the
//! foot is found step by step, one that is held at both ends by Newton's method.

use super::chain::{Bow, Chain, Vector};
use super::round::Round;
use super::rung::Rung;
use crate::form::Form;
use crate::limits::STAVES;
use crate::measure::{Angle, Length};
use crate::pattern::Spacing;
use crate::uprights::Path;

/// Steps from foot to rim.
const STEPS: u32 = 16;
/// Places round the wall at which the lines straight up are looked at.
const LOOKS: u32 = 16;
/// Steps between places at which the bend of such a line is taken, and the share of the wall over which it is.
const BENDS: u32 = 4;
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

/// A chain as it lies: at each step the turn and the place.
struct Links {
    turns: Vec<f64>,
    places: Vec<Vector>,
}

impl Wall<'_> {
    /// The path of each stave, or none where all keep to the lines square to the foot: on a round wall always,
    /// and where these are geodesics and the staves are to be spaced at the foot.
    pub(super) fn paths(&self, spacing: Spacing) -> Vec<Path> {
        if self.form.outline.is_round() || self.rim <= Length::ZERO || self.count > STAVES {
            return Vec::new();
        }
        let rungs: Vec<Rung<'_>> = (0..=STEPS).map(|step| self.rung(self.along(step))).collect();
        let plane = has_plane_lines(&rungs);
        if plane && spacing == Spacing::Foot {
            return Vec::new();
        }
        let round = rungs.last().filter(|_| spacing == Spacing::Rim).map(|rim| Round::of(rim.level()));
        let (side, bends) = (self.side(), if plane { Vec::new() } else { self.bends() });
        let path = |number: u32| {
            let turn = f64::from(number) / f64::from(self.count);
            let links = match &round {
                Some(round) => held(&rungs, [turn, round.turn(turn)]),
                None => free(&rungs, turn),
            };
            let bend = bends.iter().fold(0.0, |most: f64, three| most.max(bend(three, turn)));
            Path {
                aside: links.turns.iter().map(|place| place - turn).collect(),
                lean: rungs.first().map_or(Angle::default(), |foot| links.lean(foot.beside(turn))),
                strain: bend * self.width.to_mm() / 2.0,
                longer: Length::mm(links.length() - side),
            }
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

    fn rung(&self, along: Length) -> Rung<'_> {
        Rung::at(self.form, along, self.outward)
    }

    /// The chords of the side, which the chords of a path are compared with: both cut the same corners.
    fn side(&self) -> f64 {
        let spots: Vec<[f64; 2]> = (0..=STEPS)
            .map(|step| self.form.profile.at(self.along(step)))
            .map(|spot| [spot.radius.to_mm(), spot.height.to_mm()])
            .collect();
        let chords = spots.iter().zip(spots.iter().skip(1));
        chords.map(|(from, to)| libm::hypot(to[0] - from[0], to[1] - from[1])).sum()
    }

    /// Three levels close together, at some heights up to the rim.
    fn bends(&self) -> Vec<[Rung<'_>; 3]> {
        let near = self.rim / NEAR;
        let middle = |look: u32| near + (self.rim - near * 2.0) * (f64::from(look) / f64::from(BENDS));
        let three = |middle: Length| [middle - near, middle, middle + near].map(|along| self.rung(along));
        (0..=BENDS).map(|look| three(middle(look))).collect()
    }
}

/// Whether the lines of one place in the round lie in planes square to the foot, and all levels run there as
/// the foot does: such a line is a geodesic, because it bends nowhere but toward the wall (differential
/// geometry).
fn has_plane_lines(rungs: &[Rung<'_>]) -> bool {
    let Some((foot, above)) = rungs.split_first() else { return true };
    (0..LOOKS).all(|look| {
        // Off the axes, where all lines are plane.
        let turn = (f64::from(look) + 0.3) / f64::from(LOOKS);
        let (place, beside) = (foot.place(turn), foot.beside(turn));
        above.iter().step_by(4).all(|level| {
            let stray = level.place(turn).minus(place).dot(beside).abs();
            stray < PLANE && level.beside(turn).minus(beside).size() < PLANE
        })
    })
}

/// How much the line of one place in the round bends in the wall's own plane at three levels, in 1/mm.
fn bend(three: &[Rung<'_>; 3], turn: f64) -> f64 {
    let [before, here, after] = three.each_ref().map(|rung| rung.place(turn));
    let [into, out] = [here.minus(before), after.minus(here)];
    let up = into.plus(out).unit();
    let aside = three[1].beside(turn).cross(up).unit().cross(up);
    (2.0 * out.unit().minus(into.unit()).dot(aside) / (into.size() + out.size()).max(1e-9)).abs()
}

/// The shortest chain between a place of the foot and one of the rim.
fn held(rungs: &[Rung<'_>], [from, to]: [f64; 2]) -> Links {
    let turns: Vec<f64> =
        (0..=STEPS).map(|step| from + (to - from) * f64::from(step) / f64::from(STEPS)).collect();
    let reach = ((to - from).abs() / 4.0).max(1e-4);
    let chain = Chain { bows: rungs.iter().zip(&turns).map(|(rung, turn)| rung.bow(*turn, reach)).collect() };
    let turns = chain.tightened(turns);
    let places = chain.places(&turns);
    Links { turns, places }
}

/// The chain that begins square to the foot and goes straight on.
fn free(rungs: &[Rung<'_>], from: f64) -> Links {
    let mut links = Links { turns: Vec::new(), places: Vec::new() };
    let mut last: Option<(Bow, f64)> = None;
    let (mut way, mut turned) = (None, 0.0);
    for rung in rungs {
        let before = last.map_or(from, |(_, turn)| turn);
        let bow = rung.bow(before + turned, REACH);
        let turn = last.map_or(from, |(below, at)| bow.straight_on(&below, at, way));
        let place = bow.place(turn);
        way = links.places.last().map(|below: &Vector| place.minus(*below).unit());
        turned = turn - before;
        links.turns.push(turn);
        links.places.push(place);
        last = Some((bow, turn));
    }
    links
}

impl Links {
    /// How far its whole chord leans to the side that is `beside` at the foot.
    fn lean(&self, beside: Vector) -> Angle {
        let ends = self.places.first().zip(self.places.last());
        let chord = ends.map_or(beside.times(0.0), |(foot, rim)| rim.minus(*foot));
        Angle::radians(libm::asin((chord.dot(beside) / chord.size().max(1e-9)).clamp(-1.0, 1.0)))
    }

    fn length(&self) -> f64 {
        let chords = self.places.iter().zip(self.places.iter().skip(1));
        chords.map(|(from, to)| to.minus(*from).size()).sum()
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
