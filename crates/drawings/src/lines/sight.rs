//! Which parts of a line are seen, and which of them lie on the outline of the whole.

use glam::Vec3;
use kurbo::Point;

use crate::lines::buffer::{Buffer, NONE};
use crate::lines::camera::Camera;

/// Distance between samples on a line, in pixels.
const STEP: f32 = 1.0;
/// Runs and gaps shorter than this many pixels are noise.
const NOISE: usize = 3;
/// Shortest outline, in pixels; shorter ones stay edges.
const SHORTEST_OUTLINE: usize = 8;
/// Side of the cells in which open space is looked for, in pixels.
const CELL: usize = 4;

/// How a point of a line is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Seen {
    Hidden,
    Inside,
    Outline,
}

/// Looks at lines through a buffer.
pub(crate) struct Sight<'a> {
    buffer: &'a Buffer,
    camera: Camera,
    bias: f32,
    /// Cells next to wide open space; the gaps between staves do not count as open.
    near_open: Vec<bool>,
    cells: (usize, usize),
}

impl<'a> Sight<'a> {
    pub(crate) fn of(buffer: &'a Buffer, camera: Camera) -> Self {
        let cells = (buffer.width.div_ceil(CELL), buffer.height.div_ceil(CELL));
        let mut empty = vec![true; cells.0 * cells.1];
        for y in 0..buffer.height {
            for x in 0..buffer.width {
                if buffer.face(x, y) != NONE {
                    empty[y / CELL * cells.0 + x / CELL] = false;
                }
            }
        }
        let open = spread(&empty, cells, 1, false);
        let near_open = spread(&open, cells, 3, true);
        let bias = 0.08 + 0.5 / camera.density as f32;
        Self { buffer, camera, bias, near_open, cells }
    }

    /// The runs of a line that are seen, as points on paper, and whether each lies on the outline.
    pub(crate) fn runs(&self, line: &[Vec3]) -> Vec<(Seen, Vec<Point>)> {
        let points = sampled(line, self.buffer.width as f32, self.buffer.height as f32);
        let mut seen: Vec<Seen> = points.iter().map(|point| self.look(*point)).collect();
        settle(&mut seen, Seen::Hidden, NOISE);
        settle(&mut seen, Seen::Inside, SHORTEST_OUTLINE);
        settle(&mut seen, Seen::Outline, SHORTEST_OUTLINE);
        let mut runs = Vec::new();
        let mut start = 0;
        for run in seen.chunk_by(|a, b| a == b) {
            // A run reaches to the first point of the next, so that no gap is left.
            let end = (start + run.len()).min(points.len() - 1);
            if run[0] != Seen::Hidden && run.len() >= NOISE {
                let next_hidden = seen.get(start + run.len()) == Some(&Seen::Hidden);
                let end = if next_hidden { end - 1 } else { end };
                let on_paper = points[start..=end].iter().map(|point| self.camera.paper(point.x, point.y));
                runs.push((run[0], on_paper.collect()));
            }
            start += run.len();
        }
        runs
    }

    fn look(&self, point: Vec3) -> Seen {
        if !self.buffer.sees(point, self.bias) {
            return Seen::Hidden;
        }
        let (x, y) = (point.x as usize, point.y as usize);
        let cell = (y / CELL).min(self.cells.1 - 1) * self.cells.0 + (x / CELL).min(self.cells.0 - 1);
        if self.near_open[cell] && self.borders_nothing(x, y) { Seen::Outline } else { Seen::Inside }
    }

    fn borders_nothing(&self, x: usize, y: usize) -> bool {
        let around = |at: usize, most: usize| at.saturating_sub(2)..=(at + 2).min(most - 1);
        around(y, self.buffer.height)
            .any(|y| around(x, self.buffer.width).any(|x| self.buffer.face(x, y) == NONE))
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

/// Takes short runs of one kind into what lies on both sides of them, where that is alike.
fn settle(seen: &mut [Seen], kind: Seen, shortest: usize) {
    let mut start = 0;
    while start < seen.len() {
        let length = seen[start..].iter().take_while(|one| **one == seen[start]).count();
        let end = start + length;
        if seen[start] == kind && length < shortest && start > 0 && end < seen.len() {
            let (before, after) = (seen[start - 1], seen[end]);
            let taken =
                if kind == Seen::Outline { Some(Seen::Inside) } else { (before == after).then_some(before) };
            if let Some(taken) = taken {
                seen[start..end].fill(taken);
            }
        }
        start = end;
    }
}

/// Grows (or shrinks) the cells that are set by so many cells.
fn spread(cells: &[bool], (width, height): (usize, usize), by: usize, grow: bool) -> Vec<bool> {
    let pass = |cells: &[bool], step: usize, place: &dyn Fn(usize) -> (usize, usize)| -> Vec<bool> {
        (0..cells.len())
            .map(|index| {
                let (at, count) = place(index);
                let back = at.min(by);
                let ahead = (count - 1 - at).min(by);
                let mut near = (index - back * step..=index + ahead * step).step_by(step).map(|i| cells[i]);
                if grow { near.any(|set| set) } else { near.all(|set| set) }
            })
            .collect()
    };
    let level = pass(cells, 1, &|index| (index % width, width));
    pass(&level, width, &|index| (index / width, height))
}
