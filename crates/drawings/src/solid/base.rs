//! The base with its groove and turned rings, its screw and plug, the mould and the band round the
//! staves.

use basket::Basket;
use basket::base::Base;
use basket::pattern::Rings;
use basket::piece::{FloorPart, Piece};

use super::colour;
use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, Mesh, round};
use super::part::Part;
use super::shape::Shape;

/// Depth of a turned ring, and half its width, in mm.
const RING: f32 = 0.35;
/// Share of the thickness that is left above the plug.
const ABOVE_PLUG: f32 = 0.6;
/// Radius of the screw's head, as a share of the plug's.
const SCREW_HEAD: f32 = 0.82;
/// Height and thickness of the band round the staves, in mm.
const BAND: [f32; 2] = [10.0, 1.0];

impl Maker<'_> {
    /// The disc. Its upper face lies at the mould's base.
    pub(super) fn base(&self) -> Part {
        let sizes = Sizes::of(self.basket);
        let profile = sizes.profile();
        let sides = self.detail.segments(sizes.edge);
        let mesh = Mesh::lathe(&profile, sides, Ends::Joined);
        let edges = rims(
            &[
                [sizes.edge, 0.0],
                [sizes.edge, sizes.cheeks[1]],
                [sizes.edge, sizes.cheeks[0]],
                [sizes.edge, -sizes.thick],
                [sizes.plug, -sizes.thick],
                [sizes.hole, 0.0],
            ],
            sides,
        );
        // The lip of a ring is seen whole from any side, its bottom is not.
        let faces = sizes.rings.iter().zip([-sizes.thick, 0.0]);
        let lips = faces.flat_map(|(rings, face)| rings.iter().map(move |at| (at, face)));
        let lips: Vec<[f32; 2]> = lips.map(|(at, face)| [at + sizes.ring_half(), face]).collect();
        let edges = edges.into_iter().chain(rims(&lips, sides)).chain(self.glue_lines(&sizes)).collect();
        let wood = colour::wood(&self.basket.body.base().wood.name);
        Part::new(Piece::Floor(FloorPart::Disc), wood, Shape { mesh, edges })
    }

    /// Where strips meet, on both faces; on the lower one from the plug outward.
    fn glue_lines(&self, sizes: &Sizes) -> Vec<Vec<[f32; 3]>> {
        let lines = self.basket.body.base().glue_lines().map(|line| line.to_mm() as f32);
        let reach = |x: f32, radius: f32| (radius * radius - x * x).max(0.0).sqrt();
        lines
            .flat_map(|x| {
                let far = reach(x, sizes.edge);
                let faces = [(-sizes.thick, sizes.plug), (0.0, sizes.hole)];
                faces.into_iter().flat_map(move |(z, hole)| {
                    let near = reach(x, hole);
                    [vec![[x, -far, z], [x, -near, z]], vec![[x, near, z], [x, far, z]]]
                })
            })
            .collect()
    }

    /// The plug in the base's screw hole, flush with the lower face.
    pub(super) fn plug(&self) -> Part {
        let sizes = Sizes::of(self.basket);
        let profile = [[sizes.plug, -sizes.thick], [sizes.plug, -sizes.thick * ABOVE_PLUG]];
        let sides = self.detail.segments(sizes.plug);
        let mesh = Mesh::lathe(&profile, sides, Ends::Capped);
        let wood = colour::wood(&self.basket.body.base().wood.name);
        Part::new(Piece::Floor(FloorPart::Plug), wood, Shape { mesh, edges: rims(&profile, sides) })
    }

    /// The screw that holds the base on the mould, its head sunk in the plug's hole.
    pub(super) fn screw(&self) -> Part {
        let sizes = Sizes::of(self.basket);
        let (head, shank) = (sizes.plug * SCREW_HEAD, sizes.hole * 0.95);
        let (upper, lower) = (-sizes.thick * ABOVE_PLUG, -sizes.thick * (1.0 + ABOVE_PLUG) / 2.0);
        let profile = [[head, lower], [head, upper], [shank, upper], [shank, -0.05]];
        let sides = self.detail.segments(sizes.plug);
        let mesh = Mesh::lathe(&profile, sides, Ends::Capped);
        let slot = [[-head * 0.7, 0.0, lower], [head * 0.7, 0.0, lower]];
        let across = slot.map(|[x, y, z]| [y, x, z]);
        let edges = [rims(&profile[..1], sides), vec![slot.to_vec(), across.to_vec()]].concat();
        Part::new(Piece::Floor(FloorPart::Screw), colour::STEEL, Shape { mesh, edges })
    }

    /// The mould.
    pub(super) fn mould(&self) -> Part {
        let steps = if self.detail == Detail::Thumbnail { 12 } else { 40 };
        let spots = self.basket.body.profile().spots(steps + 1);
        let profile: Vec<[f32; 2]> =
            spots.map(|spot| [(spot.radius.to_mm() as f32).max(0.01), spot.height.to_mm() as f32]).collect();
        let widest = profile.iter().fold(0.0_f32, |widest, at| widest.max(at[0]));
        let sides = self.detail.segments(widest);
        let mesh = Mesh::lathe(&profile, sides, Ends::Capped);
        let edges = rims(&[profile[0], profile[steps as usize]], sides);
        Part::new(Piece::Mould, colour::MOULD, Shape { mesh, edges })
    }

    /// The band that holds the staves against the mould, in the upper part of the wall, over rows of this
    /// thickness.
    pub(super) fn band(&self, rows: f32) -> Part {
        let (basket, surface) = (self.basket, &self.surface);
        let thick = basket.body.uprights().thickness.to_mm() as f32 + rows;
        let top = basket.body.rim().along.to_mm() as f32;
        let high = BAND[0].min(top / 4.0);
        let low = top * 0.82 - high;
        let section =
            [(low, thick), (low + high, thick), (low + high, thick + BAND[1]), (low, thick + BAND[1])];
        let around =
            round(self.detail.segments(surface.at(top).radius).max(2 * basket.body.uprights().count));
        let positions: Vec<[f32; 3]> = around
            .iter()
            .flat_map(|angle| section.iter().map(|(along, out)| surface.at(*along).point(*out, *angle)))
            .collect();
        Part::new(Piece::Band, colour::BAND, Shape::swept(positions, 4, Ends::Joined, [2, 3]))
    }

    /// How far the rows stand out from the staves at most, in mm.
    pub(super) fn thickest_weaver(&self) -> f32 {
        let weavers = self.basket.body.weave.courses.iter().flat_map(|course| &course.weavers);
        weavers.map(|weaver| weaver.material.thickness.to_mm() as f32).fold(0.0, f32::max)
    }
}

/// Circles at these radii and heights, of as many sides as their mesh.
fn rims(places: &[[f32; 2]], sides: u32) -> Vec<Vec<[f32; 3]>> {
    let mut around = round(sides);
    around.push([1.0, 0.0]);
    let circle = |[radius, height]: &[f32; 2]| {
        around.iter().map(|[cos, sin]| [radius * cos, radius * sin, *height]).collect()
    };
    places.iter().map(circle).collect()
}

/// Radii and heights of the disc that make a solid whatever the pattern says.
struct Sizes {
    edge: f32,
    thick: f32,
    root: f32,
    cheeks: [f32; 2],
    hole: f32,
    plug: f32,
    /// Radii of rings turned in the lower and in the upper face.
    rings: [Vec<f32>; 2],
}

/// Radii of turned rings, where there is wood for them.
fn turned(base: &Base, plug: f32, root: f32) -> Vec<f32> {
    let radii = base.ring_radii().into_iter().map(|radius| radius.to_mm() as f32);
    radii.filter(|radius| (plug * 1.05..root * 0.99).contains(radius)).collect()
}

impl Sizes {
    fn of(basket: &Basket) -> Self {
        let base = basket.body.base();
        let edge = (base.diameter.to_mm() as f32 / 2.0).max(0.5);
        let thick = (base.thickness.to_mm() as f32).max(0.2);
        let root = (base.groove_radius().to_mm() as f32).clamp(edge * 0.1, edge * 0.99);
        let groove = (base.groove_width.to_mm() as f32).clamp(thick * 0.02, thick * 0.9);
        let plug = (base.plug_diameter.to_mm() as f32 / 2.0).clamp(0.02, root * 0.7);
        Self {
            edge,
            thick,
            root,
            cheeks: [-(thick + groove) / 2.0, -(thick - groove) / 2.0],
            hole: (base.screw_hole.to_mm() as f32 / 2.0).clamp(0.01, plug * 0.9),
            plug,
            rings: match base.rings {
                Rings::None => [Vec::new(), Vec::new()],
                Rings::Out => [turned(base, plug, root), Vec::new()],
                Rings::In => [Vec::new(), turned(base, plug, root)],
            },
        }
    }

    /// Half the width of a turned ring.
    fn ring_half(&self) -> f32 {
        RING.min((self.root - self.plug) / 40.0)
    }

    /// The section counter-clockwise (radius to the right, height up) from the plug's hole.
    fn profile(&self) -> Vec<[f32; 2]> {
        let deep = RING.min(self.thick / 8.0);
        let half = self.ring_half();
        let ring =
            |at: f32, height: f32, up: f32| [[at - half, height], [at, height + up], [at + half, height]];
        let below = self.rings[0].iter().flat_map(|at| ring(*at, -self.thick, deep));
        let above = self.rings[1].iter().rev().flat_map(|at| {
            let [near, deepest, far] = ring(*at, 0.0, -deep);
            [far, deepest, near]
        });
        let shelf = -self.thick * ABOVE_PLUG;
        let mut profile = vec![[self.plug, -self.thick]];
        profile.extend(below);
        profile.extend([
            [self.edge, -self.thick],
            [self.edge, self.cheeks[0]],
            [self.root, self.cheeks[0]],
            [self.root, self.cheeks[1]],
            [self.edge, self.cheeks[1]],
            [self.edge, 0.0],
        ]);
        profile.extend(above);
        profile.extend([[self.hole, 0.0], [self.hole, shelf], [self.plug, shelf]]);
        profile
    }
}
