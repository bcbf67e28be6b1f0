//! What is asked of solids.

use basket::Piece;
use drawings::solid::{Mesh, Part, Solid};
use glam::Vec3;

/// Every edge belongs to two triangles that run along it in opposite directions.
pub(crate) fn assert_closed(part: &Part) {
    let corners = part.mesh.positions.len() as u32;
    let mut edges: Vec<(u32, u32)> = Vec::with_capacity(3 * part.mesh.triangles.len());
    for [a, b, c] in &part.mesh.triangles {
        assert!(a != b && b != c && c != a, "{}: a triangle with two corners in one", part.name());
        assert!(*a < corners && *b < corners && *c < corners, "{}: a corner that is not there", part.name());
        edges.extend([(*a, *b), (*b, *c), (*c, *a)]);
    }
    edges.sort_unstable();
    assert!(edges.windows(2).all(|pair| pair[0] != pair[1]), "{}: an edge is run along twice", part.name());
    let mut back: Vec<(u32, u32)> = edges.iter().map(|(from, to)| (*to, *from)).collect();
    back.sort_unstable();
    assert!(edges == back, "{}: an edge is open", part.name());
}

pub(crate) fn assert_sound(solid: &Solid) {
    for part in &solid.parts {
        assert_closed(part);
        let finite =
            part.mesh.positions.iter().chain(part.edges.iter().flatten()).flatten().all(|at| at.is_finite());
        assert!(finite, "{} has a place that is no number", part.name());
    }
}

pub(crate) fn of_kind(solid: &Solid, kind: Piece) -> impl Iterator<Item = &Part> {
    solid.parts.iter().filter(move |part| part.piece.sort() == kind)
}

/// Volume inside, in mm³: the sum of the tetrahedra on the origin.
pub(crate) fn volume(mesh: &Mesh) -> f64 {
    let corners = |triangle: &[u32; 3]| triangle.map(|at| Vec3::from(mesh.positions[at as usize]).as_dvec3());
    mesh.triangles.iter().map(corners).map(|[a, b, c]| a.dot(b.cross(c))).sum::<f64>() / 6.0
}
