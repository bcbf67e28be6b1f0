//! A raster of what is nearest to the eye.

use glam::Vec3;

use crate::lines::scene::{Face, Scene};

/// No face.
pub(crate) const NONE: u32 = u32::MAX;

/// The plane of a face over the picture: depth `x·pixel + y·pixel + at`, within the depths of its
/// corners.
#[derive(Clone, Copy, Default)]
struct Slope {
    x: f32,
    y: f32,
    at: f32,
    low: f32,
    high: f32,
}

impl Slope {
    fn of([a, b, c]: [Vec3; 3]) -> Self {
        let normal = (b - a).cross(c - a);
        let (x, y) = (-normal.x / normal.z, -normal.y / normal.z);
        let (low, high) = (a.z.min(b.z).min(c.z), a.z.max(b.z).max(c.z));
        Self { x, y, at: a.z - x * a.x - y * a.y, low, high }
    }
    fn depth(&self, x: f32, y: f32) -> f32 {
        (self.x * x + self.y * y + self.at).clamp(self.low, self.high)
    }
}

/// For each pixel the nearest face.
pub(crate) struct Buffer {
    pub(crate) width: usize,
    pub(crate) height: usize,
    depth: Vec<f32>,
    face: Vec<u32>,
    slopes: Vec<Slope>,
}

impl Buffer {
    pub(crate) fn of(scene: &Scene<'_>) -> Self {
        let (width, height) = (scene.camera.width, scene.camera.height);
        let mut buffer = Self {
            width,
            height,
            depth: vec![f32::NEG_INFINITY; width * height],
            face: vec![NONE; width * height],
            slopes: vec![Slope::default(); scene.faces.len()],
        };
        for (face, index) in scene.faces.iter().zip(0..) {
            buffer.fill(scene, face, index);
        }
        buffer
    }

    fn fill(&mut self, scene: &Scene<'_>, face: &Face, index: u32) {
        let [a, b, c] = scene.corners_of(face);
        let (low, high) = (a.min(b).min(c), a.max(b).max(c));
        // Pixels are sampled at their middles.
        let top = (low.y - 0.5).ceil().max(0.0) as usize;
        let bottom = (high.y - 0.5).floor().min(self.height as f32 - 1.0);
        let covers_a_column = (low.x - 0.5).ceil() <= high.x - 0.5;
        if bottom < top as f32 || high.x < 0.0 || !covers_a_column {
            return;
        }
        let slope = Slope::of([a, b, c]);
        self.slopes[index as usize] = slope;
        for row in top..=bottom as usize {
            let y = row as f32 + 0.5;
            let Some((left, right)) = span([a, b, c], y) else { continue };
            let left = (left - 0.5).ceil().max(0.0) as usize;
            let right = (right - 0.5).floor().min(self.width as f32 - 1.0);
            if right < left as f32 {
                continue;
            }
            let start = row * self.width;
            let cells = start + left..=start + right as usize;
            let depths = self.depth[cells.clone()].iter_mut().zip(&mut self.face[cells]);
            for ((depth, nearest), column) in depths.zip(left..) {
                let here = slope.depth(column as f32 + 0.5, y);
                if here > *depth {
                    (*depth, *nearest) = (here, index);
                }
            }
        }
    }

    /// The face nearest to the eye at a pixel.
    pub(crate) fn face(&self, x: usize, y: usize) -> u32 {
        self.face[y * self.width + x]
    }

    /// The same, rows counted one after the other.
    pub(crate) fn face_at(&self, index: usize) -> u32 {
        self.face[index]
    }

    /// Depth of what is seen in a pixel, taken at a point near it.
    fn depth_near(&self, index: usize, x: f32, y: f32) -> f32 {
        let face = self.face[index];
        if face == NONE {
            return f32::NEG_INFINITY;
        }
        self.depth_of(face, x, y)
    }

    /// Depth of a face at a point, within the depths of its corners.
    pub(crate) fn depth_of(&self, face: u32, x: f32, y: f32) -> f32 {
        self.slopes[face as usize].depth(x, y)
    }

    /// Whether a point is seen: not behind what any of the four pixels round it show by more than a
    /// bias. So a line stays visible on the very edge of its own surface.
    pub(crate) fn sees(&self, point: Vec3, bias: f32) -> bool {
        let (left, top) = ((point.x - 0.5).floor(), (point.y - 0.5).floor());
        let inside = left >= 0.0 && top >= 0.0;
        if !inside || left + 1.0 >= self.width as f32 || top + 1.0 >= self.height as f32 {
            return false;
        }
        let index = top as usize * self.width + left as usize;
        [index, index + 1, index + self.width, index + self.width + 1]
            .into_iter()
            .any(|index| self.depth_near(index, point.x, point.y) <= point.z + bias)
    }
}

/// Where a triangle crosses a level: its left and right end.
fn span(corners: [Vec3; 3], y: f32) -> Option<(f32, f32)> {
    let (mut left, mut right) = (f32::INFINITY, f32::NEG_INFINITY);
    for (from, to) in [(0, 1), (1, 2), (2, 0)] {
        let (from, to) = (corners[from], corners[to]);
        if (from.y <= y) != (to.y <= y) {
            // From the upper end downward, so that neighbours agree to the bit.
            let (high, low) = if from.y < to.y { (from, to) } else { (to, from) };
            let x = high.x + (low.x - high.x) * ((y - high.y) / (low.y - high.y));
            (left, right) = (left.min(x), right.max(x));
        }
    }
    (left <= right).then_some((left, right))
}
