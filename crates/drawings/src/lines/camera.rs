//! From the basket's space to a picture's pixels.

use glam::{DVec3, Vec3};
use kurbo::{Point, Rect};

use crate::lines::{PictureError, View};

/// Most pixels of a raster.
const MOST_PIXELS: f64 = 6.0e6;
/// Pixels left free round what is shown, so that its outline borders on nothing.
pub(crate) const BORDER: f64 = 16.0;
/// How near to the eye things are still drawn, as a share of its distance.
const NEAREST: f64 = 0.05;

/// Places in the picture plane: mm of the basket at its middle, y up, depth growing toward the eye.
pub(crate) struct Plane {
    axes: [DVec3; 3],
    middle: DVec3,
    distance: Option<f64>,
}

impl Plane {
    pub(crate) fn of(view: &View, middle: DVec3) -> Self {
        let middle = view.region.map_or(middle, |region| DVec3::from(region.middle));
        Self { axes: view.axes(), middle, distance: view.distance }
    }

    /// Where a point is seen; none for one beside or behind the eye.
    ///
    /// Seen from a distance `d`, a point `t` before the middle is enlarged `d/(d − t)` times; its
    /// depth `t·d/(d − t)` keeps planes plane.
    pub(crate) fn place(&self, point: Vec3) -> Option<DVec3> {
        let from = point.as_dvec3() - self.middle;
        let [x, y, toward] = self.axes.map(|axis| axis.dot(from));
        let place = DVec3::new(x, y, toward);
        let grown = match self.distance {
            None => 1.0,
            Some(distance) if distance - toward > NEAREST * distance => distance / (distance - toward),
            Some(_) => return None,
        };
        Some(place * grown)
    }
}

/// Room for a picture.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Room {
    /// Most width, in mm of paper.
    pub(crate) width: f64,
    /// Most height, in mm of paper.
    pub(crate) height: f64,
    /// Pixels of the raster in a mm of paper.
    pub(crate) density: f64,
}

/// A part of the picture plane on its raster.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Camera {
    /// What of the plane is shown.
    window: Rect,
    /// Pixels in a mm of the basket.
    pub(crate) density: f64,
    /// Millimetres of paper in a pixel.
    pub(crate) pixel: f64,
    pub(crate) width: usize,
    pub(crate) height: usize,
}

impl Camera {
    /// Shows a window of the plane as large as fits into the room.
    pub(crate) fn fit(window: Rect, room: Room) -> Result<Self, PictureError> {
        let sound = window.is_finite() && window.width() >= 0.0 && window.height() >= 0.0;
        if !sound || window.width().max(window.height()) < 1e-3 {
            return Err(PictureError::Empty);
        }
        let scale = (room.width / window.width().max(1e-6)).min(room.height / window.height().max(1e-6));
        let paper = window.width() * window.height() * scale * scale;
        let per_mm = room.density.min((MOST_PIXELS / paper.max(1e-6)).sqrt());
        let density = scale * per_mm;
        let side = |length: f64| (length * density + 2.0 * BORDER).ceil() as usize;
        Ok(Self {
            window,
            density,
            pixel: 1.0 / per_mm,
            width: side(window.width()),
            height: side(window.height()),
        })
    }

    /// A place of the plane in pixels, y down, and its depth in mm.
    pub(crate) fn pixel_of(&self, place: DVec3) -> Vec3 {
        Vec3::new(
            ((place.x - self.window.x0) * self.density + BORDER) as f32,
            ((self.window.y1 - place.y) * self.density + BORDER) as f32,
            place.z as f32,
        )
    }

    /// Pixels on paper, in mm.
    pub(crate) fn paper(&self, x: f32, y: f32) -> Point {
        Point::new((f64::from(x) - BORDER) * self.pixel, (f64::from(y) - BORDER) * self.pixel)
    }
}
