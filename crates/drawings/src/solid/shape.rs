//! Meshes with the edges on them that are worth drawing.

use super::mesh::{Ends, Mesh, rotated};

/// A mesh with its edges worth drawing.
#[derive(Clone, Debug)]
pub(super) struct Shape {
    pub(super) mesh: Mesh,
    pub(super) edges: Vec<Vec<[f32; 3]>>,
}

impl Shape {
    /// A capped sweep through sections of `per` corners, with lines along the sharpest of them and round
    /// the last section.
    pub(super) fn long(positions: Vec<[f32; 3]>, per: usize) -> Self {
        let corners = positions.get(..per).map(sharp).unwrap_or_default();
        let mut edges: Vec<_> = corners.into_iter().map(|corner| line(&positions, per, corner)).collect();
        let tip = positions.len().checked_sub(per).map(|tip| &positions[tip..]);
        edges.extend(tip.map(|tip| tip.iter().chain(tip.first()).copied().collect()));
        Self { mesh: Mesh::swept(positions, per, Ends::Capped), edges }
    }

    /// A sweep through sections of `per` corners with lines along some of them.
    pub(super) fn swept<const LINES: usize>(
        positions: Vec<[f32; 3]>,
        per: usize,
        ends: Ends,
        corners: [usize; LINES],
    ) -> Self {
        let edges = corners.map(|corner| line(&positions, per, corner)).to_vec();
        Self { mesh: Mesh::swept(positions, per, ends), edges }
    }

    /// The two together, as one shape.
    pub(super) fn and(mut self, other: Self) -> Self {
        let before = self.mesh.positions.len() as u32;
        self.mesh.positions.extend(other.mesh.positions);
        self.mesh
            .triangles
            .extend(other.mesh.triangles.iter().map(|triangle| triangle.map(|at| at + before)));
        self.edges.extend(other.edges);
        self
    }

    /// The same turned about the z axis by an angle given by its cosine and sine.
    pub(super) fn turned(&self, angle: [f32; 2]) -> Self {
        Self { mesh: self.mesh.turned(angle), edges: turned(&self.edges, angle) }
    }
}

/// The lines turned about the z axis by an angle given by its cosine and sine.
pub(super) fn turned(lines: &[Vec<[f32; 3]>], angle: [f32; 2]) -> Vec<Vec<[f32; 3]>> {
    lines.iter().map(|line| line.iter().map(|at| rotated(*at, angle)).collect()).collect()
}

/// One line along a corner of a sweep.
fn line(positions: &[[f32; 3]], per: usize, corner: usize) -> Vec<[f32; 3]> {
    positions.iter().skip(corner).step_by(per.max(1)).copied().collect()
}

/// Corners of a section at which it turns by more than 40°.
fn sharp(section: &[[f32; 3]]) -> Vec<usize> {
    let count = section.len();
    let at = |index: usize| glam::Vec3::from(section[index % count]);
    let turns = |index: &usize| {
        let before = at(*index) - at(index + count - 1);
        let after = at(index + 1) - at(*index);
        before.normalize_or_zero().dot(after.normalize_or_zero()) < 0.766
    };
    (0..count).filter(turns).collect()
}
