//! The bail with the rivets and washers on which it swings.
//!
//! The bail stands upright. Holes are not cut in ears and bail; the rivet fills them.

use basket::Piece;
use basket::fittings::{Bail, Ears, Handle};
use glam::{Vec2, Vec3};

use super::colour::{self, Substance};
use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, Mesh, round, toward};
use super::part::Part;
use super::shape::Shape;

/// Thickness of the washer between ear and bail, in mm, as the handle's span reckons it.
const WASHER: f32 = 0.8;
/// Radius and height of a rivet's head in diameters (common practice).
const HEAD: [f32; 2] = [1.0, 0.6];

/// The plane in which the bail stands: the middle between both pivots, the direction to the first.
struct Stand<'a> {
    handle: &'a Handle,
    ears: &'a Ears,
    detail: Detail,
    middle: Vec3,
    along: Vec3,
    /// Half the distance between the ears' middles.
    half: f32,
}

impl<'a> Stand<'a> {
    fn of(maker: &Maker<'a>) -> Option<Self> {
        let (handle, ears) = (maker.basket.handle.as_ref()?, maker.basket.ears.as_ref()?);
        let (radius, height) = (maker.ear_radius(), maker.pivot_height(ears));
        let [first, second] = ears.each.map(|ear| {
            let [cos, sin] = toward(ear.turn as f32);
            Vec3::new(radius * cos, radius * sin, height)
        });
        Some(Self {
            handle,
            ears,
            detail: maker.detail,
            middle: (first + second) / 2.0,
            along: (first - second).normalize_or(Vec3::X),
            half: first.distance(second) / 2.0,
        })
    }

    /// The place so far from the middle toward the first ear, aside, and above the pivots.
    fn point(&self, along: f32, aside: f32, up: f32) -> [f32; 3] {
        (self.middle + self.along * along + Vec3::Z.cross(self.along) * aside + Vec3::Z * up).to_array()
    }

    fn bail(&self) -> Part {
        let (handle, ears, detail) = (self.handle, self.ears, self.detail);
        let corner = handle.corner.unwrap_or_default();
        let steps = match detail {
            Detail::Full => 40,
            Detail::Page | Detail::Column => 20,
            Detail::Thumbnail => 10,
        };
        // Ears that do not quite face each other stand nearer than a diameter.
        let shift = self.half + ((ears.thickness + handle.thickness) / 2.0).to_mm() as f32 + WASHER
            - handle.half_span.to_mm() as f32;
        let washer = washer_radius(handle);
        let mut line = end(handle);
        if let Some(bail) = Bail::new(handle.curve, handle.half_span, handle.rise, corner) {
            let half = |step: u32| {
                let (x, y) = bail.point(f64::from(step) / f64::from(steps));
                let (x, y) = (x.to_mm() as f32, y.to_mm() as f32);
                // Straight where the washers bear on it.
                [
                    if y < washer { handle.half_span.to_mm() as f32 } else { x },
                    y,
                    handle.width.to_mm() as f32 / 2.0,
                ]
            };
            line.extend((0..=steps).map(half));
        }
        let mirrored: Vec<[f32; 3]> = line.iter().rev().skip(1).map(|[x, y, half]| [-x, *y, *half]).collect();
        line.extend(mirrored);
        let section = strap(handle.thickness.to_mm() as f32, detail);
        let per = section.len();
        let at = |index: usize| line[index.min(line.len() - 1)];
        let positions: Vec<[f32; 3]> = (0..line.len())
            .flat_map(|index| {
                let [before, here, after] = [at(index.saturating_sub(1)), at(index), at(index + 1)];
                let way = Vec2::new(after[0] - before[0], after[1] - before[1]).normalize_or(Vec2::Y);
                // From the middle line outward, away from the basket's middle below.
                let out = Vec2::new(way.y, -way.x);
                section.iter().map(move |[across, thick]| {
                    let pull =
                        shift * (here[0] / (handle.half_span.to_mm() as f32).max(1e-3)).clamp(-1.0, 1.0);
                    self.point(here[0] + out.x * thick + pull, across * here[2], here[1] + out.y * thick)
                })
            })
            .collect();
        Part::new(Piece::Handle, colour::BAIL, Shape::long(positions, per))
    }

    /// Rivet and washers at one pivot.
    fn pivot(&self, number: u32, side: f32) -> Vec<Part> {
        let (handle, ears) = (self.handle, self.ears);
        let (ear, bail) = (ears.thickness.to_mm() as f32, handle.thickness.to_mm() as f32);
        let shank = handle.rivet.width.to_mm() as f32 / 2.0;
        let burr = (handle.grip.to_mm() as f32 - ear - bail - WASHER).max(0.2);
        let inside = -ear / 2.0;
        let outside = ear / 2.0 + WASHER + bail + burr;
        let [head, height] = HEAD.map(|times| times * 2.0 * shank);
        let rivet = [
            [head * 0.4, inside - height],
            [head * 0.85, inside - height * 0.6],
            [head, inside],
            [shank, inside],
            [shank, outside],
            [head, outside],
            [head * 0.85, outside + height * 0.6],
            [head * 0.4, outside + height],
        ];
        let washer = |from: f32, thick: f32| {
            let reach = washer_radius(handle);
            [[reach, from], [reach, from + thick], [shank, from + thick], [shank, from]]
        };
        let metal = colour::stock(&handle.rivet);
        let washers = [
            (2 * number - 1, colour::WASHER, washer(ear / 2.0, WASHER)),
            (2 * number, Substance { name: "burr", ..metal }, washer(outside - burr, burr)),
        ];
        let rivet = self.turned(side, &rivet, Ends::Capped);
        let rivet = Part::new(Piece::Rivet(number), metal, rivet);
        let washers = washers.map(|(number, substance, profile)| {
            let shape = self.turned(side, &profile, Ends::Joined);
            Part::new(Piece::Washer(number), substance, shape)
        });
        std::iter::once(rivet).chain(washers).collect()
    }

    /// A profile of radii and distances from the ear's middle outward, turned round a pivot's axis.
    fn turned(&self, side: f32, profile: &[[f32; 2]], ends: Ends) -> Shape {
        let sides = round(if self.detail == Detail::Full { 20 } else { 10 });
        let ring = |[radius, out]: [f32; 2]| {
            let sides = &sides;
            sides.iter().map(move |[cos, sin]| {
                self.point(side * (self.half + out), side * radius * cos, radius * sin)
            })
        };
        let positions: Vec<[f32; 3]> = profile.iter().flat_map(|at| ring(*at)).collect();
        let per = sides.len();
        let circle = |index: usize| -> Vec<[f32; 3]> {
            positions.iter().skip(index * per).take(per).chain(positions.get(index * per)).copied().collect()
        };
        let edges = vec![circle(0), circle(1)];
        Shape { mesh: Mesh::swept(positions, per, ends), edges }
    }
}

impl Maker<'_> {
    /// Bail, rivets and washers.
    pub(super) fn handle(&self) -> Vec<Part> {
        let Some(stand) = Stand::of(self) else { return Vec::new() };
        let mut parts = vec![stand.bail()];
        for (number, side) in [(1, 1.0), (2, -1.0)] {
            parts.extend(stand.pivot(number, side));
        }
        parts
    }
}

/// The rounded end below the first pivot, as distance from the middle, height and half width.
fn end(handle: &Handle) -> Vec<[f32; 3]> {
    let span = handle.half_span.to_mm() as f32;
    let half = handle.width.to_mm() as f32 / 2.0;
    let below = ((handle.cut - handle.arc).to_mm() as f32 / 2.0).max(0.5);
    let rounding = half.min(below);
    (0..=5_u8)
        .map(|step| {
            let (sin, cos) = (std::f32::consts::FRAC_PI_2 * (0.1 + 0.9 * f32::from(step) / 5.0)).sin_cos();
            [span, -below + rounding * (1.0 - cos), half * sin]
        })
        .collect()
}

/// The bail's section with its edges broken, as (across from −1 to 1, out in mm), counter-clockwise
/// seen from ahead.
fn strap(thick: f32, detail: Detail) -> Vec<[f32; 2]> {
    let half = thick / 2.0;
    if detail == Detail::Thumbnail {
        return vec![[-1.0, -half], [-1.0, half], [1.0, half], [1.0, -half]];
    }
    let (inner, outer) = (0.84, 0.6 * half);
    vec![
        [-inner, -half],
        [-1.0, -outer],
        [-1.0, outer],
        [-inner, half],
        [inner, half],
        [1.0, outer],
        [1.0, -outer],
        [inner, -half],
    ]
}

/// Outer radius of a washer: a little more than twice the rivet's (common practice).
fn washer_radius(handle: &Handle) -> f32 {
    handle.rivet.width.to_mm() as f32 + 1.0
}
