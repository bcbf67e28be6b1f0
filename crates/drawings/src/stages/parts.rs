//! Picking, moving and finding parts of a solid.

use glam::Vec3;

use crate::solid::{Mesh, Part, PartKind, Solid};

/// The parts that are picked.
pub(super) fn only(solid: Solid, keep: impl Fn(&Part) -> bool) -> Solid {
    Solid { parts: solid.parts.into_iter().filter(keep).collect() }
}

/// The first part of a kind, with a number if one is given.
pub(super) fn find(solid: &Solid, kind: PartKind, number: Option<u32>) -> Option<&Part> {
    let is_wanted = |part: &&Part| part.kind == kind && (number.is_none() || part.number == number);
    solid.parts.iter().find(is_wanted)
}

/// A part as another, moved.
pub(super) fn moved(part: &mut Part, by: Vec3) {
    let mover = |at: &mut [f32; 3]| *at = (Vec3::from(*at) + by).to_array();
    part.mesh.positions.iter_mut().for_each(mover);
    part.edges.iter_mut().flatten().for_each(mover);
    part.turned = None;
}

/// The middle of all corners of a part that are picked.
pub(super) fn middle(part: &Part, pick: impl Fn(Vec3) -> bool) -> Option<Vec3> {
    let corners = part.mesh.positions.iter().map(|at| Vec3::from(*at));
    let picked: Vec<Vec3> = corners.filter(|at| at.is_finite() && pick(*at)).collect();
    let sum: Vec3 = picked.iter().sum();
    (!picked.is_empty()).then(|| sum / picked.len() as f32)
}

/// The middle of an upright part at a height.
pub(super) fn middle_at(part: &Part, height: f32) -> Option<Vec3> {
    let nearest = part.mesh.positions.iter().map(|at| (at[2] - height).abs()).fold(f32::MAX, f32::min);
    middle(part, |at| (at.z - height).abs() <= nearest + 0.5).map(|place| place.with_z(height))
}

/// Lowest and highest corner of all parts.
pub(super) fn heights(solid: &Solid) -> [f32; 2] {
    let heights = solid.parts.iter().flat_map(|part| &part.mesh.positions).map(|at| at[2]);
    heights
        .filter(|height| height.is_finite())
        .fold([f32::MAX, f32::MIN], |[low, high], at| [low.min(at), high.max(at)])
}

/// What lies on one side of an upright plane through the axis: for looking at the wall from inside.
pub(super) fn beyond(solid: Solid, toward: Vec3) -> Solid {
    let keep = |at: &[f32; 3]| Vec3::from(*at).dot(toward) > 0.0;
    let halved = |part: Part| {
        let Mesh { positions, triangles } = part.mesh;
        let inside = |triangle: &[u32; 3]| triangle.iter().all(|corner| keep(&positions[*corner as usize]));
        let triangles = triangles.into_iter().filter(inside).collect();
        let edges = part.edges.iter().flat_map(|edge| edge.chunk_by(|a, b| keep(a) == keep(b)));
        let edges = edges.filter(|piece| keep(&piece[0])).map(<[_]>::to_vec).collect();
        Part { mesh: Mesh { positions, triangles }, edges, ..part }
    };
    Solid { parts: solid.parts.into_iter().map(halved).collect() }
}

/// The azimuth, in degrees, from which a place is seen straight from outside.
pub(super) fn azimuth(place: Vec3) -> f64 {
    f64::from(place.x).atan2(-f64::from(place.y)).to_degrees()
}
