//! A solid as a picture sees it: corners in pixels, and the triangles that face the eye.

use glam::{DVec3, Vec3};
use kurbo::Rect;

use crate::lines::camera::{Camera, Plane, Room};
use crate::lines::{PictureError, View};
use crate::solid::Part;

/// A triangle that faces the eye.
#[derive(Clone, Copy)]
pub(crate) struct Face {
    pub(crate) corners: [u32; 3],
    pub(crate) part: u32,
}

/// A corner that cannot be seen.
pub(crate) const NOWHERE: Vec3 = Vec3::NAN;

pub(crate) struct Scene<'a> {
    pub(crate) parts: Vec<&'a Part>,
    pub(crate) camera: Camera,
    pub(crate) plane: Plane,
    /// All corners of all parts, in pixels.
    pub(crate) corners: Vec<Vec3>,
    pub(crate) faces: Vec<Face>,
}

impl<'a> Scene<'a> {
    /// Sets up parts for a picture.
    pub(crate) fn of(parts: Vec<&'a Part>, view: &View, room: Room) -> Result<Self, PictureError> {
        view.check()?;
        let plane = Plane::of(view, middle(&parts));
        let places: Vec<Option<DVec3>> = parts
            .iter()
            .flat_map(|part| part.mesh.positions.iter())
            .map(|position| plane.place(Vec3::from(*position)).filter(|place| place.is_finite()))
            .collect();
        let camera = Camera::fit(window(view, &places)?, room)?;
        let corners: Vec<Vec3> =
            places.iter().map(|place| place.map_or(NOWHERE, |place| camera.pixel_of(place))).collect();
        let mut faces = Vec::new();
        let mut before = 0;
        for (part, index) in parts.iter().zip(0..) {
            let own = |corner: &u32| corner + before;
            for triangle in &part.mesh.triangles {
                let [a, b, c] = [own(&triangle[0]), own(&triangle[1]), own(&triangle[2])];
                if faces_the_eye(&corners, [a, b, c]) {
                    faces.push(Face { corners: [a, b, c], part: index });
                }
            }
            before += part.mesh.positions.len() as u32;
        }
        Ok(Self { parts, camera, plane, corners, faces })
    }

    pub(crate) fn corners_of(&self, face: &Face) -> [Vec3; 3] {
        face.corners.map(|corner| self.corners[corner as usize])
    }

    /// A point of the basket in pixels, if it lies before the eye.
    pub(crate) fn pixel(&self, position: [f32; 3]) -> Vec3 {
        let place = self.plane.place(Vec3::from(position)).filter(|place| place.is_finite());
        place.map_or(NOWHERE, |place| self.camera.pixel_of(place))
    }
}

/// Pixels run down, so what turns counter-clockwise seen from outside turns clockwise here.
fn faces_the_eye(corners: &[Vec3], triangle: [u32; 3]) -> bool {
    let [a, b, c] = triangle.map(|corner| corners.get(corner as usize).copied().unwrap_or(NOWHERE));
    let turn = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    turn < -1e-6
}

/// The middle of what the parts fill.
fn middle(parts: &[&Part]) -> DVec3 {
    let (mut low, mut high) = (Vec3::INFINITY, Vec3::NEG_INFINITY);
    for position in parts.iter().flat_map(|part| &part.mesh.positions) {
        let position = Vec3::from(*position);
        if position.is_finite() {
            (low, high) = (low.min(position), high.max(position));
        }
    }
    let middle = low.midpoint(high).as_dvec3();
    if middle.is_finite() { middle } else { DVec3::ZERO }
}

fn window(view: &View, places: &[Option<DVec3>]) -> Result<Rect, PictureError> {
    if let Some(region) = view.region {
        let (x, y) = (region.half_width, region.half_height);
        return Ok(Rect::new(-x, -y, x, y));
    }
    let mut seen = places.iter().flatten();
    let first = seen.next().ok_or(PictureError::Empty)?;
    let start = Rect::new(first.x, first.y, first.x, first.y);
    Ok(seen.fold(start, |window, place| window.union_pt((place.x, place.y))))
}
