//! Which parts of a line are seen.

use glam::Vec3;
use kurbo::Point;

use crate::lines::buffer::Buffer;
use crate::lines::camera::Camera;

/// Distance between samples on a line, in pixels.
const STEP: f32 = 1.5;
/// Runs and gaps of fewer samples are noise.
const NOISE: usize = 3;

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
        let points = sampled(line, self.buffer.width as f32, self.buffer.height as f32);
        let mut seen: Vec<bool> = points.iter().map(|point| self.buffer.sees(*point, self.bias)).collect();
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

/// Points on a line a step apart; parts of it beyond the picture are left out.
fn sampled(line: &[Vec3], width: f32, height: f32) -> Vec<Vec3> {
    let mut points = Vec::new();
    for ends in line.windows(2) {
        let (from, to) = (ends[0], ends[1]);
        let (low, high) = (from.min(to), from.max(to));
        let beyond = high.x < 0.0 || high.y < 0.0 || low.x > width || low.y > height;
        if beyond || !from.is_finite() || !to.is_finite() {
            // Seen as hidden, so that the line does not run straight across.
            points.push(Vec3::splat(-1.0));
            continue;
        }
        let steps = ((to - from).truncate().length() / STEP).ceil().clamp(1.0, 20_000.0);
        points.extend((0..steps as u32).map(|step| from.lerp(to, step as f32 / steps)));
    }
    points.extend(line.last().filter(|end| end.is_finite()));
    points
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
