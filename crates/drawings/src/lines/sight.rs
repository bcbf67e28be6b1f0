//! Which parts of a line are seen.

use glam::Vec3;
use kurbo::Point;

use crate::lines::buffer::Buffer;
use crate::lines::camera::Camera;
use crate::lines::scene::Scene;

/// Distance between samples on a line, in pixels.
const STEP: f32 = 1.5;
/// Runs and gaps of fewer samples are noise.
const NOISE: usize = 3;
/// Samples after which a line is cut at the edges of the picture before it is walked.
const LONG: f32 = 4000.0;
/// How far beside a line its sides are looked at, in pixels.
const SIDE: f32 = 2.0;
/// How far pieces that run on into each other may lie apart, in mm of the basket.
const FLUSH: f32 = 0.15;

/// A point that is not seen.
const HIDDEN: Vec3 = Vec3::splat(-1.0);

/// Looks at lines through a buffer.
pub(crate) struct Sight<'a> {
    buffer: &'a Buffer,
    camera: Camera,
    bias: f32,
}

impl<'a> Sight<'a> {
    pub(crate) fn of(buffer: &'a Buffer, camera: Camera) -> Self {
        let bias = 0.08 + 0.5 / camera.density as f32;
        Self { buffer, camera, bias }
    }

    /// The runs of a line that are seen, as points on paper.
    pub(crate) fn runs(&self, line: &[Vec3]) -> Vec<Vec<Point>> {
        let points = self.sampled(line);
        let seen = points.iter().map(|point| self.buffer.sees(*point, self.bias)).collect();
        self.seen_runs(&points, seen)
    }

    /// The same for the contour of a part, without the seams where one piece of the same material
    /// runs on into the next.
    pub(crate) fn contour(&self, line: &[Vec3], scene: &Scene<'_>) -> Vec<Vec<Point>> {
        let points = self.sampled(line);
        let seen = (0..points.len())
            .map(|index| self.buffer.sees(points[index], self.bias) && !self.is_seam(&points, index, scene))
            .collect();
        self.seen_runs(&points, seen)
    }

    /// Whether two pieces of the same kind and material lie on both sides of a line, flush.
    fn is_seam(&self, points: &[Vec3], index: usize, scene: &Scene<'_>) -> bool {
        let (before, after) = (points[index.saturating_sub(1)], points[(index + 1).min(points.len() - 1)]);
        let along = (after - before).truncate().normalize_or_zero();
        let at = points[index];
        let face = |side: f32| {
            let place = at.truncate() + along.perp() * side;
            let inside = place.cmpge(glam::Vec2::ZERO).all();
            let (x, y) = (place.x as usize, place.y as usize);
            let face = (inside && x < self.buffer.width && y < self.buffer.height)
                .then(|| self.buffer.face(x, y))?;
            let part = scene.parts[scene.faces.get(face as usize)?.part as usize];
            Some((part, self.buffer.depth_of(face, at.x, at.y)))
        };
        let (Some((one, near)), Some((other, far))) = (face(SIDE), face(-SIDE)) else { return false };
        let alike = one.piece.sort() == other.piece.sort() && one.material == other.material;
        alike && !std::ptr::eq(one, other) && (near - far).abs() < FLUSH
    }

    /// Points on a line a step apart. Parts of it that lie beyond the picture or are surely hidden are
    /// left out.
    fn sampled(&self, line: &[Vec3]) -> Vec<Vec3> {
        let (width, height) = (self.buffer.width as f32, self.buffer.height as f32);
        let mut points = Vec::with_capacity(2 * line.len());
        for ends in line.windows(2) {
            let (from, to) = (ends[0], ends[1]);
            let (low, high) = (from.min(to), from.max(to));
            let beyond = high.x < 0.0 || high.y < 0.0 || low.x > width || low.y > height;
            if beyond || !from.is_finite() || !to.is_finite() || self.buffer.hides(from, to, self.bias) {
                // A gap long enough not to be closed, so that the line does not run straight across.
                if points.last() != Some(&HIDDEN) {
                    points.extend([HIDDEN; NOISE]);
                }
                continue;
            }
            let steps = ((to - from).truncate().length() / STEP).ceil().max(1.0);
            if steps <= LONG {
                points.extend((0..steps as u32).map(|step| from.lerp(to, step as f32 / steps)));
                continue;
            }
            // Most of a line as long as that lies beyond the picture.
            let Some([enters, leaves]) = within(from, to, (width, height)) else { continue };
            points.extend([HIDDEN; NOISE]);
            let steps = (steps * (leaves - enters)).ceil().clamp(1.0, 2.0 * LONG);
            let share = |step: u32| enters + (leaves - enters) * step as f32 / steps;
            points.extend((0..=steps as u32).map(|step| from.lerp(to, share(step))));
            points.extend([HIDDEN; NOISE]);
        }
        points.extend(line.last().filter(|end| end.is_finite()));
        points
    }

    fn seen_runs(&self, points: &[Vec3], mut seen: Vec<bool>) -> Vec<Vec<Point>> {
        close_gaps(&mut seen);
        let mut runs = Vec::new();
        let mut start = 0;
        for run in seen.chunk_by(|a, b| a == b) {
            let end = start + run.len();
            if run[0] && run.len() >= NOISE {
                let on_paper = points[start..end].iter().map(|point| self.camera.paper(point.x, point.y));
                runs.push(on_paper.collect());
            }
            start = end;
        }
        runs
    }
}

/// Between which shares of its way a line passes through the picture (Y.-D. Liang and B. A. Barsky, "A New
/// Concept and Method for Line Clipping", *ACM Transactions on Graphics* 3 (1984)).
fn within(from: Vec3, to: Vec3, (width, height): (f32, f32)) -> Option<[f32; 2]> {
    let way = to - from;
    let sides = [(-way.x, from.x), (way.x, width - from.x), (-way.y, from.y), (way.y, height - from.y)];
    let (mut enters, mut leaves) = (0.0_f32, 1.0_f32);
    for (out, room) in sides {
        if out < 0.0 {
            enters = enters.max(room / out);
        } else if out > 0.0 {
            leaves = leaves.min(room / out);
        } else if room < 0.0 {
            return None;
        }
    }
    (enters <= leaves).then_some([enters, leaves])
}

/// What is hidden for a moment only is seen.
fn close_gaps(seen: &mut [bool]) {
    let mut start = 0;
    while start < seen.len() {
        let end = start + seen[start..].iter().take_while(|one| **one == seen[start]).count();
        if !seen[start] && end - start < NOISE && start > 0 && end < seen.len() {
            seen[start..end].fill(true);
        }
        start = end;
    }
}
