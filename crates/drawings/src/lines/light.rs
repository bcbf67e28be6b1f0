//! Light on faces: from the upper left, before the picture.

use glam::Vec3;

use crate::lines::buffer::{Buffer, NONE};
use crate::lines::region::Classes;
use crate::lines::scene::Scene;
use crate::lines::style::Look;

/// Direction to the light: right, up, toward the eye.
const LIGHT: Vec3 = Vec3::new(-0.50, 0.62, 0.60);
/// Faces with less light than this are in shade.
const SHADE: f32 = 0.3;
/// Pixels along the side of a cell of tone.
const COARSE: usize = 2;

/// Light on each face of a scene, from −1 to 1.
pub(crate) fn light(scene: &Scene<'_>) -> Vec<f32> {
    let density = scene.camera.density as f32;
    scene
        .faces
        .iter()
        .map(|face| {
            let [a, b, c] = scene.corners_of(face).map(|at| Vec3::new(at.x / density, -at.y / density, at.z));
            (b - a).cross(c - a).normalize_or_zero().dot(LIGHT)
        })
        .collect()
}

/// Which tone of its part's look each cell shows: 0 for none, else twice the part's place in `looks`
/// plus 1 in light and 2 in shade, by the tones that there are.
pub(crate) fn tones(scene: &Scene<'_>, buffer: &Buffer, looks: &[Look]) -> Classes {
    let light = light(scene);
    let class = |face: u32| {
        if face == NONE {
            return 0;
        }
        let look = looks[scene.faces[face as usize].part as usize];
        let tone = if light[face as usize] < SHADE { look.shaded } else { look.lit };
        tone.map_or(0, |tone| tone as u8 + 1)
    };
    let (width, height) = (buffer.width.div_ceil(COARSE), buffer.height.div_ceil(COARSE));
    let mut cells = Vec::with_capacity(width * height);
    for y in 0..height {
        cells.extend((0..width).map(|x| class(buffer.face(x * COARSE, y * COARSE))));
    }
    Classes { width, height, cells }
}

/// Pixels along the side of a cell.
pub(crate) const fn cell() -> f64 {
    COARSE as f64
}
