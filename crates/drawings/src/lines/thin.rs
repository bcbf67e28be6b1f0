//! Leaves out lines that would run too close beside others to be told apart in print.

use kurbo::Point;

/// Directions that are told apart; neighbours of a direction count as alike.
const DIRECTIONS: usize = 8;
/// Cells across the clear distance.
const CELLS: f64 = 2.0;

/// What has been drawn where, and in which direction.
pub(crate) struct Drawn {
    corner: Point,
    cell: f64,
    width: usize,
    height: usize,
    marks: Vec<u8>,
}

impl Drawn {
    /// Keeps lines of the same direction this far apart on a picture of a size, all in mm of paper.
    pub(crate) fn keeping(clear: f64, corner: Point, (width, height): (f64, f64)) -> Self {
        let cell = (clear / CELLS).max(0.02);
        let side = |length: f64| (length / cell).ceil() as usize + 1;
        let (width, height) = (side(width), side(height));
        Self { corner, cell, width, height, marks: vec![0; width * height] }
    }

    /// The parts of a line that keep clear of what has been drawn; they count as drawn from now on.
    pub(crate) fn admit(&mut self, line: &[Point]) -> Vec<Vec<Point>> {
        let marks: Vec<u8> = (0..line.len()).map(|index| direction(line, index)).collect();
        let mut free: Vec<bool> =
            line.iter().zip(&marks).map(|(point, mark)| !self.is_taken(*point, *mark)).collect();
        self.keep_short_crossings(&mut free, line);
        let mut parts = Vec::new();
        let mut start = 0;
        for part in free.chunk_by(|a, b| a == b) {
            let end = start + part.len();
            if part[0] && part.len() > 1 {
                parts.push(line[start..end].to_vec());
            }
            start = end;
        }
        for (index, point) in line.iter().enumerate() {
            if free[index] {
                self.mark(*point, marks[index]);
            }
        }
        parts
    }

    /// Where lines meet or cross they are close, too, but not for long; and what is left of a line
    /// must be long enough to be worth drawing.
    fn keep_short_crossings(&self, free: &mut [bool], line: &[Point]) {
        let shortest = self.cell * CELLS * 3.0;
        for value in [false, true] {
            let mut start = 0;
            while start < free.len() {
                let end = start + free[start..].iter().take_while(|one| **one == free[start]).count();
                let length: f64 = line[start..end].windows(2).map(|ends| ends[0].distance(ends[1])).sum();
                let whole = start == 0 && end == free.len();
                if free[start] == value && !whole && length < shortest {
                    free[start..end].fill(!value);
                }
                start = end;
            }
        }
    }

    fn cell_of(&self, point: Point) -> (usize, usize) {
        let along = |at: f64, most: usize| ((at / self.cell).max(0.0) as usize).min(most - 1);
        (along(point.x - self.corner.x, self.width), along(point.y - self.corner.y, self.height))
    }

    fn is_taken(&self, point: Point, mark: u8) -> bool {
        let like = mark | mark.rotate_left(1) | mark.rotate_right(1);
        let (x, y) = self.cell_of(point);
        let reach = CELLS as usize;
        (y.saturating_sub(reach)..=(y + reach).min(self.height - 1)).any(|y| {
            let row = y * self.width;
            let cells = row + x.saturating_sub(reach)..=row + (x + reach).min(self.width - 1);
            self.marks[cells].iter().any(|marks| marks & like != 0)
        })
    }

    fn mark(&mut self, point: Point, mark: u8) {
        let (x, y) = self.cell_of(point);
        self.marks[y * self.width + x] |= mark;
    }
}

/// One of the directions of a line without arrow, as a bit.
fn direction(line: &[Point], index: usize) -> u8 {
    let (from, to) = (index.saturating_sub(4), (index + 4).min(line.len() - 1));
    let along = line[to] - line[from];
    let turn = along.atan2().rem_euclid(std::f64::consts::PI) / std::f64::consts::PI;
    let sector = (turn * DIRECTIONS as f64) as usize % DIRECTIONS;
    1 << sector
}
