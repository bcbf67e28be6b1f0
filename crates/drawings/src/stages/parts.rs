//! Picking, moving and finding parts.

use basket::Piece;
use std::borrow::Cow;

use glam::Vec3;

use crate::drawing::Drawing;
use crate::lines::{PictureError, Placed, Style, View, picture_of};
use crate::solid::{Mesh, Part};

/// Parts to draw: most of them shared, some made for one drawing.
pub(super) type Parts<'a> = Vec<Cow<'a, Part>>;

/// Parts as they are.
pub(super) fn shared(parts: Vec<&Part>) -> Parts<'_> {
    parts.into_iter().map(Cow::Borrowed).collect()
}

/// A drawing of parts, and where things lie on it.
pub(super) fn picture(
    parts: &Parts<'_>,
    view: &View,
    style: &Style,
) -> Result<(Drawing, Placed), PictureError> {
    picture_of(parts.iter().map(|part| &**part).collect(), view, style)
}

/// The part that is a piece.
pub(super) fn find<'p>(parts: &'p Parts<'_>, piece: Piece) -> Option<&'p Part> {
    parts.iter().map(|part| &**part).find(|part| part.piece == piece)
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
pub(super) fn heights(parts: &Parts<'_>) -> [f32; 2] {
    let heights = parts.iter().flat_map(|part| &part.mesh.positions).map(|at| at[2]);
    heights
        .filter(|height| height.is_finite())
        .fold([f32::MAX, f32::MIN], |[low, high], at| [low.min(at), high.max(at)])
}

/// What lies within reach of a place, without the far side of the basket, which would only confuse.
pub(super) fn around<'a>(parts: Parts<'a>, place: Vec3, reach: f32) -> Parts<'a> {
    let toward = place.with_z(0.0);
    let keep = |at: &[f32; 3]| {
        let at = Vec3::from(*at);
        at.dot(toward) > 0.0 && at.distance_squared(place) < reach * reach
    };
    let near = |part: Cow<'a, Part>| {
        let within: Vec<bool> = part.mesh.positions.iter().map(keep).collect();
        if !within.contains(&true) {
            return None;
        }
        if !within.contains(&false) {
            return Some(part);
        }
        let inside = |triangle: &&[u32; 3]| triangle.iter().all(|corner| within[*corner as usize]);
        let triangles = part.mesh.triangles.iter().filter(inside).copied().collect();
        let edges = part.edges.iter().flat_map(|edge| edge.chunk_by(|a, b| keep(a) == keep(b)));
        let edges = edges.filter(|piece| keep(&piece[0])).map(<[_]>::to_vec).collect();
        let mesh = Mesh { positions: part.mesh.positions.clone(), triangles };
        Some(Cow::Owned(Part {
            piece: part.piece,
            of: part.of,
            material: part.material.clone(),
            colour: part.colour,
            mesh,
            edges,
            turned: None,
        }))
    };
    parts.into_iter().filter_map(near).collect()
}

/// How many rows parts show.
pub(super) fn rows(parts: &Parts<'_>) -> u32 {
    parts.iter().filter_map(|part| part.row()).max().unwrap_or(0)
}

/// The azimuth, in degrees, from which a place is seen straight from outside.
pub(super) fn azimuth(place: Vec3) -> f64 {
    f64::from(place.x).atan2(-f64::from(place.y)).to_degrees()
}
