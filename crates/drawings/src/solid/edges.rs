//! Edges worth drawing, picked from the corners of a sweep.

use super::mesh::turn;

/// Lines along the sharpest corners of a sweep of sections of `per` corners, and round its last
/// section.
pub(super) fn long(positions: &[[f32; 3]], per: usize) -> Vec<Vec<[f32; 3]>> {
    let Some(first) = positions.get(..per) else { return Vec::new() };
    let mut lines: Vec<Vec<[f32; 3]>> =
        sharp(first).into_iter().map(|corner| line(positions, per, corner)).collect();
    let tip = positions.len() - per;
    lines.extend(positions.get(tip..).map(|tip| tip.iter().chain(tip.first()).copied().collect()));
    lines
}

/// One line along a corner of a sweep.
pub(super) fn line(positions: &[[f32; 3]], per: usize, corner: usize) -> Vec<[f32; 3]> {
    positions.iter().skip(corner).step_by(per.max(1)).copied().collect()
}

/// The lines turned about the z axis by an angle given by its cosine and sine.
pub(super) fn turned(lines: &[Vec<[f32; 3]>], angle: [f32; 2]) -> Vec<Vec<[f32; 3]>> {
    lines.iter().map(|line| line.iter().map(|at| turn(*at, angle)).collect()).collect()
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
