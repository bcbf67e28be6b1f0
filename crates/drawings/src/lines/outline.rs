//! The outline of the whole: where it borders on open space.
//!
//! What is seen through the gaps between staves is not open: heavy lines there would fill the gaps.

use kurbo::Point;

use crate::lines::buffer::{Buffer, NONE};
use crate::lines::camera::Camera;
use crate::lines::region::Classes;

/// Side of the cells in which open space is looked for, in pixels.
const CELL: usize = 4;
/// How far open space reaches on all sides, in cells, to count as open.
const OPEN: usize = 3;
/// How near to open space an outline lies, in cells.
const NEAR: usize = 2;
/// Shortest piece of outline, in pixels.
const SHORTEST: usize = 24;

/// The pieces of the outline on paper.
pub(crate) fn outline(buffer: &Buffer, camera: Camera) -> Vec<Vec<Point>> {
    let (width, height) = (buffer.width, buffer.height);
    let covered: Vec<u8> = (0..width * height).map(|at| u8::from(buffer.face_at(at) != NONE)).collect();
    let classes = Classes { width, height, cells: covered };
    let cells = (width.div_ceil(CELL), height.div_ceil(CELL));
    let near = near_open(&classes, cells);
    let is_near = |at: &Point| {
        let cell = |at: f64, most: usize| (at as usize / CELL).min(most - 1);
        near[cell(at.y, cells.1) * cells.0 + cell(at.x, cells.0)]
    };
    let mut pieces = Vec::new();
    for mut round in classes.outlines(1) {
        // Begin where a piece begins, so that none is cut in two.
        let first = round.iter().position(|at| !is_near(at)).unwrap_or(0);
        round.rotate_left(first);
        round.push(round[0]);
        for piece in round.chunk_by(|a, b| is_near(a) == is_near(b)) {
            if piece.len() >= SHORTEST && is_near(&piece[0]) {
                pieces.push(piece.iter().map(|at| camera.paper(at.x as f32, at.y as f32)).collect());
            }
        }
    }
    pieces
}

/// Cells in or beside wide open space.
fn near_open(classes: &Classes, cells: (usize, usize)) -> Vec<bool> {
    let mut empty = vec![true; cells.0 * cells.1];
    for (row, y) in classes.cells.chunks_exact(classes.width).zip(0..) {
        for (span, x) in row.chunks(CELL).zip(0..) {
            empty[y / CELL * cells.0 + x] &= span.iter().all(|covered| *covered == 0);
        }
    }
    let open = spread(&empty, cells, OPEN, false);
    spread(&open, cells, OPEN + NEAR, true)
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
