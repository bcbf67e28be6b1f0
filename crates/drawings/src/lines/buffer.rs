//! A raster of what is nearest to the eye.

use glam::Vec3;

use crate::lines::scene::Scene;

/// No face.
pub(crate) const NONE: u32 = u32::MAX;

/// What falls evenly over a face of the picture, as its depth: `x·pixel + y·pixel + start`, within what
/// its corners have.
#[derive(Clone, Copy)]
pub(crate) struct Slope {
    x: f32,
    y: f32,
    start: f32,
    low: f32,
    high: f32,
}

impl Slope {
    pub(crate) fn of([a, b, c]: [Vec3; 3]) -> Self {
        let normal = (b - a).cross(c - a);
        let (x, y) = (-normal.x / normal.z, -normal.y / normal.z);
        let (low, high) = (a.z.min(b.z).min(c.z), a.z.max(b.z).max(c.z));
        Self { x, y, start: a.z - x * a.x - y * a.y, low, high }
    }

    pub(crate) fn at(&self, x: f32, y: f32) -> f32 {
        (self.x * x + self.y * y + self.start).clamp(self.low, self.high)
    }
}

/// Side of a tile, in pixels.
const TILE: usize = 8;

/// For each pixel the nearest face.
pub(crate) struct Buffer {
    pub(crate) width: usize,
    pub(crate) height: usize,
    face: Vec<u32>,
    slopes: Vec<Slope>,
    /// For each tile and the pixels right of it and below the furthest depth of what they show.
    far: Vec<f32>,
    tiles: usize,
}

impl Buffer {
    pub(crate) fn of(scene: &Scene<'_>) -> Self {
        let (width, height) = (scene.camera.width, scene.camera.height);
        let slopes: Vec<Slope> = scene.faces.iter().map(|face| Slope::of(scene.corners_of(face))).collect();
        let face = fill(scene, &slopes);
        let (tiles, down) = (width.div_ceil(TILE), height.div_ceil(TILE));
        let depth = |face: &u32| slopes.get(*face as usize).map_or(f32::NEG_INFINITY, |slope| slope.low);
        let furthest = |tile: usize| {
            let (x, y) = (tile % tiles * TILE, tile / tiles * TILE);
            let rows = y..(y + TILE + 1).min(height);
            let shown = rows.flat_map(|y| &face[y * width + x..y * width + (x + TILE + 1).min(width)]);
            shown.map(depth).fold(f32::INFINITY, f32::min)
        };
        let far = (0..tiles * down).map(furthest).collect();
        Self { width, height, face, slopes, far, tiles }
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
        self.slopes[face as usize].at(x, y)
    }

    /// Whether all points between two that lie in one tile are surely hidden.
    pub(crate) fn hides(&self, from: Vec3, to: Vec3, bias: f32) -> bool {
        let tile = |point: Vec3| {
            let (left, top) = ((point.x - 0.5) as usize, (point.y - 0.5) as usize);
            let inside = point.x >= 0.5 && point.y >= 0.5 && left + 1 < self.width && top + 1 < self.height;
            inside.then(|| top / TILE * self.tiles + left / TILE)
        };
        let (one, other) = (tile(from), tile(to));
        one == other && one.is_some_and(|tile| from.z.max(to.z) + bias < self.far[tile])
    }

    /// Whether a point is seen: not behind what any of the four pixels round it show by more than a
    /// bias. So a line stays visible on the very edge of its own surface.
    pub(crate) fn sees(&self, point: Vec3, bias: f32) -> bool {
        let (left, top) = ((point.x - 0.5) as usize, (point.y - 0.5) as usize);
        let inside = point.x >= 0.5 && point.y >= 0.5;
        if !inside || left + 1 >= self.width || top + 1 >= self.height {
            return false;
        }
        if point.z + bias < self.far[top / TILE * self.tiles + left / TILE] {
            return false;
        }
        let index = top * self.width + left;
        [index, index + 1, index + self.width, index + self.width + 1]
            .into_iter()
            .any(|index| self.depth_near(index, point.x, point.y) <= point.z + bias)
    }
}

/// The nearest face at each pixel.
fn fill(scene: &Scene<'_>, slopes: &[Slope]) -> Vec<u32> {
    let (width, height) = (scene.camera.width, scene.camera.height);
    let mut nearest = vec![NONE; width * height];
    let mut depths = vec![f32::NEG_INFINITY; width * height];
    for ((face, slope), index) in scene.faces.iter().zip(slopes).zip(0..) {
        let corners = scene.corners_of(face);
        let [a, b, c] = corners;
        let (low, high) = (a.min(b).min(c), a.max(b).max(c));
        if pixels(low.x, high.x, width).is_empty() {
            continue;
        }
        for row in pixels(low.y, high.y, height) {
            let y = row as f32 + 0.5;
            let Some((left, right)) = span(corners, y) else { continue };
            let start = row * width;
            for column in pixels(left, right, width) {
                let here = slope.at(column as f32 + 0.5, y);
                let depth = &mut depths[start + column];
                if here > *depth {
                    *depth = here;
                    nearest[start + column] = index;
                }
            }
        }
    }
    nearest
}

/// The pixels below a number whose middles lie from one place to another.
fn pixels(from: f32, to: f32, below: usize) -> std::ops::Range<usize> {
    // Casts cut off toward 0 and give 0 for what is negative.
    let whole = (from - 0.5) as usize;
    let first = if (whole as f32) < from - 0.5 { whole + 1 } else { whole };
    first..((to + 0.5) as usize).min(below)
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
