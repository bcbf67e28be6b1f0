//! Pieces of the solid neither pass through each other nor float: sampled against an independent
//! library of collision geometry (the crate parry3d).

mod common;

use std::collections::BTreeMap;

use basket::piece::FloorPart;
use basket::steps::Stage;
use basket::{Basket, Length, Piece};
use common::{CHANNEL, FERRY, HANDLES, HARBOUR, basket, with_handle};
use drawings::solid::{Detail, MOST_GAP, MOST_OVERLAP, Mesh, Part, Solid, solid};
use parry3d::bounding_volume::{Aabb, BoundingVolume};
use parry3d::glamx::Vec3;
use parry3d::query::PointQuery;
use parry3d::shape::{TriMesh, TriMeshFlags};

/// A part ready to be asked how deep a point lies in it.
struct Body<'a> {
    part: &'a Part,
    mesh: TriMesh,
    bounds: Aabb,
    samples: Vec<Vec3>,
}

impl<'a> Body<'a> {
    fn of(part: &'a Part) -> Self {
        let corners: Vec<Vec3> = part.mesh.positions.iter().map(|at| Vec3::from_array(*at)).collect();
        let flags = TriMeshFlags::ORIENTED
            | TriMeshFlags::MERGE_DUPLICATE_VERTICES
            | TriMeshFlags::DELETE_DEGENERATE_TRIANGLES;
        let mesh = TriMesh::with_flags(corners.clone(), part.mesh.triangles.clone(), flags).expect("a mesh");
        let bounds = mesh.local_aabb();
        Self { part, mesh, bounds, samples: samples(&part.mesh, &corners) }
    }

    /// How far a point lies inside (positive) or outside.
    fn depth(&self, point: Vec3) -> f32 {
        let projection = self.mesh.project_local_point(point, false);
        let distance = (projection.point - point).length();
        if projection.is_inside { distance } else { -distance }
    }
}

/// Corners and middles of triangles.
fn samples(mesh: &Mesh, corners: &[Vec3]) -> Vec<Vec3> {
    let triangles = mesh.triangles.iter().map(|triangle| {
        let [a, b, c] = triangle.map(|index| corners[index as usize]);
        (a + b + c) / 3.0
    });
    corners.iter().copied().chain(triangles).collect()
}

/// Pins and rivets fill the holes drilled for them.
fn drilled(a: Piece, b: Piece) -> bool {
    use Piece::{Ears, Handle, InnerHoop, Knobs, OuterHoop, Pins, Rivets, Uprights};
    let fills = |one, other| {
        matches!(
            (one, other),
            (Pins, Uprights | OuterHoop | InnerHoop | Ears | Handle) | (Rivets, Ears | Handle | Knobs)
        )
    };
    fills(a, b) || fills(b, a)
}

/// How much further parts may overlap at a place. Low down the staves are bent over the edge of the base, and
/// a weaver, drawn flat across its width, lies there on a curve: it gives way by half its thickness.
fn give(basket: &Basket, kinds: (Piece, Piece), at: Vec3) -> f32 {
    let rows = matches!(kinds, (Piece::Weaving, _) | (_, Piece::Weaving));
    let wall = [kinds.0, kinds.1].iter().any(|kind| matches!(kind, Piece::Uprights | Piece::Mould));
    let courses = &basket.body.weave.courses;
    let thinnest = courses.iter().map(|course| course.weaver.thickness.to_mm()).fold(f64::INFINITY, f64::min);
    let widest = courses.iter().map(|course| course.weaver.width.to_mm()).fold(0.0, f64::max);
    let touch = basket.body.form.profile.at(basket.body.staves().bend.touch.max(Length::ZERO));
    let is_bent = f64::from(at.z) < touch.height.to_mm() + widest;
    if rows && wall && is_bent && thinnest.is_finite() { thinnest as f32 / 2.0 } else { 0.0 }
}

/// The deepest overlap found between any two kinds of parts beyond what they give, with the names of the
/// parts.
fn overlaps(basket: &Basket, solid: &Solid) -> BTreeMap<(Piece, Piece), (f32, String)> {
    let bodies: Vec<Body<'_>> = solid.parts.iter().map(Body::of).collect();
    let mut found: BTreeMap<(Piece, Piece), (f32, String)> = BTreeMap::new();
    for (index, one) in bodies.iter().enumerate() {
        for (_, other) in bodies
            .iter()
            .enumerate()
            .filter(|(number, other)| *number != index && one.bounds.intersects(&other.bounds))
        {
            if drilled(one.part.piece.sort(), other.part.piece.sort()) {
                continue;
            }
            let within = other.bounds;
            let inside = one.samples.iter().filter(|at| within.contains_local_point(**at));
            let key = (
                one.part.piece.sort().min(other.part.piece.sort()),
                one.part.piece.sort().max(other.part.piece.sort()),
            );
            let deepest = inside
                .map(|at| (other.depth(*at) - give(basket, key, *at), *at))
                .fold((0.0_f32, Vec3::ZERO), |a, b| if b.0 > a.0 { b } else { a });
            let known = found.entry(key).or_default();
            if deepest.0 > known.0 {
                *known =
                    (deepest.0, format!("{} in {} at {:?}", one.part.name(), other.part.name(), deepest.1));
            }
        }
    }
    found
}

fn check_overlaps(pattern: &str, stage: Stage) {
    check_overlaps_upto(MOST_OVERLAP, pattern, stage);
}

fn check_overlaps_upto(most: f32, pattern: &str, stage: Stage) {
    let basket = basket(pattern);
    let solid = solid(&basket, stage, Detail::Full);
    let found = overlaps(&basket, &solid);
    for (kinds, (depth, names)) in &found {
        println!("{kinds:?} {depth:.3} {names}");
    }
    let deep: Vec<_> = found.iter().filter(|(_, (depth, _))| *depth > most).collect();
    assert!(deep.is_empty(), "{deep:#?}");
}

#[test]
fn no_piece_of_a_bread_basket_passes_through_another() {
    check_overlaps(HARBOUR, Stage::Finished);
}

#[test]
fn no_handle_passes_through_what_it_stands_on() {
    for handle in HANDLES {
        check_overlaps(&with_handle(handle), Stage::Finished);
    }
}

#[test]
fn no_piece_of_an_egg_basket_with_oak_ears_passes_through_another() {
    check_overlaps(FERRY, Stage::Handled);
}

#[test]
fn no_piece_under_a_crossed_lashing_passes_through_another() {
    check_overlaps(CHANNEL, Stage::Finished);
}

#[test]
fn clamps_hold_the_hoops_and_pass_through_nothing() {
    for pattern in [FERRY, CHANNEL] {
        check_overlaps(pattern, Stage::RimClamped);
        let solid = solid(&basket(pattern), Stage::RimClamped, Detail::Full);
        let bodies: Vec<Body<'_>> = solid.parts.iter().map(Body::of).collect();
        for (index, clamp) in
            bodies.iter().enumerate().filter(|(_, body)| body.part.piece.sort() == Piece::Clamps)
        {
            for hoop in [Piece::OuterHoop, Piece::InnerHoop] {
                let gap = nearest(&bodies, index, hoop);
                assert!(gap < 2.0 * MOST_GAP, "{} is {gap} from any {hoop:?}", clamp.part.name());
            }
        }
    }
}

#[test]
fn no_piece_of_a_half_woven_basket_passes_through_mould_or_band() {
    check_overlaps(FERRY, Stage::HalfWoven);
}

/// A small basket in this weave; see docs/pattern-file.md.
fn woven(count: u32, course: &str) -> String {
    format!(
        "title = \"Small\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"60\"\nrim = \"80\"\nheight = \"40\"\n\
         [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n[weave]\ncourses = [{{ {course} }}]\n"
    )
}

#[test]
fn weavers_that_share_the_wall_keep_clear_of_each_other() {
    for (count, course) in [
        (24, "weave = \"chase\", weaver = \"cane fine\", colours = [\"blue\", \"red\"], rows = 8"),
        (25, "weave = \"slew\", weavers = [\"cane fine\", \"cane common\"], rows = 4"),
        (25, "weave = \"plain\", weaver = \"cane fine\", start = 7, rows = 6"),
        (26, "weave = \"twill 2/2\", weaver = \"cane fine\", way = \"row by row\", rows = 6"),
        (25, "weave = \"twill 2/1\", weaver = \"cane fine\", rows = 6"),
        (25, "weave = \"slew twill 2/2\", weavers = [\"cane fine\", \"cane fine\"], rows = 3"),
        (24, "weave = \"pairing\", weaver = \"cane fine\", rows = 5"),
        (25, "weave = \"plain\", weaver = \"cane fine\", doubled = 2, rows = 5"),
    ] {
        check_overlaps(&woven(count, course), Stage::Woven);
    }
}

/// Where the weavers of a wale pass each other in a gap they press each other flat, which is not drawn:
/// there they overlap by up to their thickness.
#[test]
fn weavers_of_a_wale_overlap_by_no_more_than_their_thickness() {
    let pattern = woven(24, "weave = \"wale 3\", weaver = \"cane fine\", rows = 4");
    let thickness = basket(&pattern).body.weave.courses[0].weaver.thickness.to_mm() as f32;
    check_overlaps_upto(thickness, &pattern, Stage::Woven);
}

/// The least distance from a part to any part of a kind; negative where they overlap.
fn nearest(bodies: &[Body<'_>], from: usize, kind: Piece) -> f32 {
    let one = &bodies[from];
    let near = |other: &Body<'_>| {
        let room = other.bounds.loosened(1.0);
        let there =
            one.samples.iter().filter(|at| room.contains_local_point(**at)).map(|at| -other.depth(*at));
        let room = one.bounds.loosened(1.0);
        let back =
            other.samples.iter().filter(|at| room.contains_local_point(**at)).map(|at| -one.depth(*at));
        there.chain(back).fold(f32::INFINITY, f32::min)
    };
    bodies
        .iter()
        .enumerate()
        .filter(|(index, other)| *index != from && other.part.piece.sort() == kind)
        .map(|(_, other)| near(other))
        .fold(f32::INFINITY, f32::min)
}

#[test]
fn what_touches_in_wood_touches_in_the_solid() {
    use Piece::{Ears, Fillers, Handle, InnerHoop, Lashing, OuterHoop, Uprights, Washers, Weaving};
    for pattern in [FERRY, CHANNEL] {
        let basket = basket(pattern);
        let solid = solid(&basket, Stage::Handled, Detail::Full);
        let bodies: Vec<Body<'_>> = solid.parts.iter().map(Body::of).collect();
        let touching = [
            (Uprights, Piece::Floor(FloorPart::Disc)),
            (Uprights, OuterHoop),
            (Uprights, InnerHoop),
            (Uprights, Fillers),
            (Weaving, Uprights),
            (Lashing, OuterHoop),
            (Lashing, InnerHoop),
            (Ears, Uprights),
            (Washers, Handle),
        ];
        for (kind, other) in touching {
            for (index, body) in bodies.iter().enumerate().filter(|(_, body)| body.part.piece.sort() == kind)
            {
                if matches!(other, Fillers | OuterHoop) && kind == Uprights && near_ear(&basket, body.part) {
                    continue;
                }
                let mut gap = nearest(&bodies, index, other);
                if kind == Lashing {
                    gap = gap.min(nearest(&bodies, index, Lashing));
                }
                assert!(gap < MOST_GAP, "{}: {} is {gap} from any {other:?}", basket.title, body.part.name());
            }
        }
    }
}

/// Where an ear stands, it lies between stave and outer hoop, and the filler leaves room for it.
fn near_ear(basket: &basket::Basket, part: &Part) -> bool {
    let (Some(ears), Piece::Upright(number)) = (&basket.ears, part.piece) else { return false };
    ears.each.iter().any(|ear| {
        let off = basket.body.uprights().turn(number) - ear.turn;
        (off - off.round()).abs() * f64::from(basket.body.uprights().count) < 2.0
    })
}

#[test]
fn every_row_lies_on_every_stave() {
    let basket = basket(CHANNEL);
    let solid = solid(&basket, Stage::Woven, Detail::Full);
    let bodies: Vec<Body<'_>> = solid.parts.iter().map(Body::of).collect();
    let staves: Vec<&Body<'_>> =
        bodies.iter().filter(|body| body.part.piece.sort() == Piece::Uprights).collect();
    // The first and the last row are tapered and reach round only in part.
    for row in
        bodies.iter().filter(|body| body.part.piece.sort() == Piece::Weaving).skip(1).step_by(5).take(7)
    {
        for stave in &staves {
            let room = stave.bounds.loosened(1.0);
            let near =
                row.samples.iter().filter(|at| room.contains_local_point(**at)).map(|at| -stave.depth(*at));
            let gap = near.fold(f32::INFINITY, f32::min);
            assert!(gap < MOST_GAP, "{} is {gap} from {}", row.part.name(), stave.part.name());
        }
    }
}
