//! Light on faces: from the upper left, before the picture.

use glam::Vec3;

use crate::drawing::Tone;
use crate::lines::buffer::{Buffer, Slope};
use crate::lines::region::Classes;
use crate::lines::scene::Scene;
use crate::lines::style::PartStyle;

/// Direction to the light: right, up, toward the eye.
const LIGHT: Vec3 = Vec3::new(-0.50, 0.62, 0.60);
/// Faces with less light than this are in shade.
const SHADE: f32 = 0.3;
/// Cosine of the angle from which two faces meet in an edge.
const EDGE: f32 = 0.8;
/// Pixels along the side of a cell of tone.
const COARSE: usize = 2;

/// Light on the faces of a scene, from −1 to 1, each face rounded into those it meets without an edge.
pub(crate) struct Light {
    falls: Vec<Slope>,
}

impl Light {
    pub(crate) fn on(scene: &Scene<'_>) -> Self {
        let density = scene.camera.density as f32;
        let normals: Vec<Vec3> = scene
            .faces
            .iter()
            .map(|face| {
                let [a, b, c] =
                    scene.corners_of(face).map(|at| Vec3::new(at.x / density, -at.y / density, at.z));
                (b - a).cross(c - a)
            })
            .collect();
        let around = Around::of(scene);
        let falls = scene.faces.iter().zip(&normals).map(|(face, normal)| {
            let own = normal.normalize_or_zero();
            let corners = face.corners.map(|corner| {
                let met = around.faces(corner).iter().map(|face| normals[*face as usize]);
                let round = met.filter(|met| met.dot(own) > met.length() * EDGE).sum::<Vec3>();
                let at = scene.corners[corner as usize];
                Vec3::new(at.x, at.y, round.normalize_or(own).dot(LIGHT))
            });
            Slope::of(corners)
        });
        Self { falls: falls.collect() }
    }

    /// Light on what is seen of a face in the middle of a pixel.
    pub(crate) fn at(&self, face: u32, x: usize, y: usize) -> f32 {
        self.falls[face as usize].at(x as f32 + 0.5, y as f32 + 0.5)
    }
}

/// Which faces meet in each corner.
struct Around {
    starts: Vec<u32>,
    faces: Vec<u32>,
}

impl Around {
    fn of(scene: &Scene<'_>) -> Self {
        let mut starts = vec![0; scene.corners.len() + 1];
        for corner in scene.faces.iter().flat_map(|face| face.corners) {
            starts[corner as usize + 1] += 1;
        }
        for corner in 1..starts.len() {
            starts[corner] += starts[corner - 1];
        }
        let mut next = starts.clone();
        let mut faces = vec![0; scene.faces.len() * 3];
        for (face, index) in scene.faces.iter().zip(0..) {
            for corner in face.corners {
                let place = &mut next[corner as usize];
                faces[*place as usize] = index;
                *place += 1;
            }
        }
        Self { starts, faces }
    }

    fn faces(&self, corner: u32) -> &[u32] {
        &self.faces[self.starts[corner as usize] as usize..self.starts[corner as usize + 1] as usize]
    }
}

/// Which tone each cell shows: 0 for none, else its place in the palette and 1.
pub(crate) fn tones(scene: &Scene<'_>, buffer: &Buffer, looks: &[PartStyle], palette: &[Tone]) -> Classes {
    let light = Light::on(scene);
    let class = |tone: Option<Tone>| {
        let place = tone.and_then(|tone| palette.iter().position(|one| *one == tone));
        place.map_or(0, |place| (place + 1).min(255) as u8)
    };
    let classes: Vec<[u8; 2]> = looks.iter().map(|look| [class(look.shaded), class(look.lit)]).collect();
    let class = |x: usize, y: usize| {
        let face = buffer.face(x, y);
        let part = scene.faces.get(face as usize).map(|face| face.part as usize);
        part.map_or(0, |part| classes[part][usize::from(light.at(face, x, y) >= SHADE)])
    };
    let (width, height) = (buffer.width.div_ceil(COARSE), buffer.height.div_ceil(COARSE));
    let mut cells = Vec::with_capacity(width * height);
    for y in 0..height {
        cells.extend((0..width).map(|x| class(x * COARSE, y * COARSE)));
    }
    Classes { width, height, cells }
}

/// Pixels along the side of a cell.
pub(crate) const fn cell() -> f64 {
    COARSE as f64
}
