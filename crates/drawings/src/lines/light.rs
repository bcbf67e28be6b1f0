//! Light on faces: from the upper left, before the picture.

use glam::Vec3;

use crate::drawing::Tone;
use crate::lines::buffer::Buffer;
use crate::lines::region::Classes;
use crate::lines::scene::Scene;
use crate::lines::style::PartStyle;

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

/// Which tone each cell shows: 0 for none, else its place in the palette and 1.
pub(crate) fn tones(scene: &Scene<'_>, buffer: &Buffer, looks: &[PartStyle], palette: &[Tone]) -> Classes {
    let light = light(scene);
    let class = |tone: Option<Tone>| {
        let place = tone.and_then(|tone| palette.iter().position(|one| *one == tone));
        place.map_or(0, |place| (place + 1).min(255) as u8)
    };
    let classes: Vec<[u8; 2]> = looks.iter().map(|look| [class(look.shaded), class(look.lit)]).collect();
    let class = |face: u32| {
        let part = scene.faces.get(face as usize).map(|face| face.part as usize);
        part.map_or(0, |part| classes[part][usize::from(light[face as usize] >= SHADE)])
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
