//! Strands of cane that are led through a hole or round rims.

use basket::Length;
use basket::lashing::Hull;
use glam::{Vec2, Vec3};

use super::super::mesh::Ends;
use super::super::section::CrossSection;
use super::super::shape::Shape;

/// How far a strand that is tied lies off what it goes round, in mm.
const OFF: f64 = 0.1;
/// Places nearer than this are one, in mm.
const SAME: f32 = 1e-3;

/// A place on the way of a strand, and the direction in which its round side looks there.
pub(super) type Laid = (Vec3, Vec3);

/// An upright plane.
#[derive(Clone, Copy)]
pub(super) struct Plane {
    /// A place in it.
    pub(super) origin: Vec3,
    /// A level direction in it.
    pub(super) level: Vec3,
}

impl Plane {
    fn flat(&self, at: Vec3) -> Vec2 {
        Vec2::new((at - self.origin).dot(self.level), at.z - self.origin.z)
    }

    pub(super) fn direction(&self, at: Vec2) -> Vec3 {
        self.level * at.x + Vec3::Z * at.y
    }

    /// The shortest way round places, seen against this plane.
    pub(super) fn tied(&self, places: &[Vec3]) -> Vec<Laid> {
        let flat = places.iter().map(|at| self.flat(*at));
        let hull = Hull::of(flat.map(|at| (Length::mm(f64::from(at.x)), Length::mm(f64::from(at.y)))));
        let corners = hull.grown(Length::mm(OFF));
        let place = |(x, y): &(Length, Length)| Vec2::new(x.to_mm() as f32, y.to_mm() as f32);
        let mut line: Vec<Vec2> = corners.corners().iter().map(place).collect();
        line.dedup_by(|a, b| a.distance(*b) < SAME);
        let count = line.len();
        let out = |index: usize| {
            let [before, here, after] = [index + count - 1, index, index + 1].map(|at| line[at % count]);
            let way = (here - before).normalize_or_zero() + (after - here).normalize_or_zero();
            self.direction(Vec2::new(way.y, -way.x)).normalize_or_zero()
        };
        (0..count).map(|index| (self.origin + self.direction(line[index]), out(index))).collect()
    }
}

/// A strand along its way.
pub(super) fn strand(way: &[Laid], section: &CrossSection, ends: Ends) -> Shape {
    let count = way.len();
    let near = |index: usize, step: usize| match ends {
        Ends::Joined => (index + count + step - 1) % count,
        Ends::Capped => (index + step).saturating_sub(1).min(count - 1),
    };
    let positions = (0..count).flat_map(|index| {
        let (at, out) = way[index];
        let ahead = (way[near(index, 2)].0 - way[near(index, 0)].0).normalize_or_zero();
        let out = (out - ahead * out.dot(ahead)).normalize_or_zero();
        let aside = out.cross(ahead);
        section.iter().map(move |[across, high]| (at + aside * *across + out * *high).to_array())
    });
    let per = section.len();
    Shape::swept(positions.collect(), per, ends, [0, per / 2])
}

/// Two turns side by side of one strand.
pub(super) fn twice(way: &[Laid], section: &CrossSection, ends: Ends) -> Shape {
    let half = section.iter().map(|at| at[0]).fold(0.0, f32::max) * 1.02;
    let beside = |side: f32| {
        let moved: CrossSection =
            section.iter().map(|[across, high]| [across + side * half, *high]).collect();
        strand(way, &moved, ends)
    };
    beside(-1.0).and(beside(1.0))
}
