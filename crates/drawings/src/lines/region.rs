//! The outlines of regions on a raster.

use kurbo::{BezPath, Point};

use crate::drawing::closed;
use crate::lines::simplify::simplified;

/// A raster of classes; 0 stands for nothing.
pub(crate) struct Classes {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) cells: Vec<u8>,
}

/// Directions in the order of turning right: right, down, left, up.
const WAYS: [(isize, isize); 4] = [(1, 0), (0, 1), (-1, 0), (0, -1)];

impl Classes {
    fn is(&self, class: u8, x: isize, y: isize) -> bool {
        let inside = x >= 0 && y >= 0 && (x as usize) < self.width && (y as usize) < self.height;
        inside && self.cells[y as usize * self.width + x as usize] == class
    }

    /// The class of most cells, if any has one.
    pub(crate) fn most_common(&self) -> Option<u8> {
        let mut counts = [0_usize; 256];
        for class in self.cells.iter().filter(|class| **class > 0) {
            counts[usize::from(*class)] += 1;
        }
        (1..=u8::MAX)
            .filter(|class| counts[usize::from(*class)] > 0)
            .max_by_key(|class| counts[usize::from(*class)])
    }

    /// The same raster with all classes as one: what lies under them all, so that nothing shines through where
    /// small regions are left out and where the smoothed outlines of neighbours part.
    pub(crate) fn whole(&self) -> Self {
        let cells = self.cells.iter().map(|class| u8::from(*class > 0)).collect();
        Self { width: self.width, height: self.height, cells }
    }

    /// All regions of a class as one path in units of cells, to be filled by the nonzero rule: holes
    /// run the other way. Regions that would enclose less than `least` cells are left out.
    pub(crate) fn regions(&self, class: u8, least: f64, place: impl Fn(f64, f64) -> Point) -> BezPath {
        let mut path = BezPath::new();
        for corners in self.outlines(class).into_iter().filter(|corners| area(corners) >= least) {
            path.extend(closed(smooth(&corners).into_iter().map(|at| place(at.x, at.y))));
        }
        path
    }

    /// Once round every region and every hole of a class, in steps of a cell.
    pub(crate) fn outlines(&self, class: u8) -> Vec<Vec<Point>> {
        let mut outlines = Vec::new();
        let mut done = vec![false; self.cells.len()];
        for start in 0..self.cells.len() {
            let (x, y) = ((start % self.width) as isize, (start / self.width) as isize);
            if self.cells[start] == class && !done[start] && !self.is(class, x - 1, y) {
                outlines.push(self.round(class, (x, y), &mut done));
            }
        }
        outlines
    }

    /// Goes once round a region, the region on the right hand, from the left side of a cell upward.
    /// Gives the middles of the cell sides that are passed.
    fn round(&self, class: u8, start: (isize, isize), done: &mut [bool]) -> Vec<Point> {
        let first = (start.0, start.1 + 1, 3);
        let (mut x, mut y, mut way) = first;
        let mut sides = Vec::new();
        loop {
            let (dx, dy) = WAYS[way];
            if way == 3 {
                // The cell on the right of a step upward has its left side here.
                done[(y - 1) as usize * self.width + x as usize] = true;
            }
            sides.push(Point::new(x as f64 + dx as f64 / 2.0, y as f64 + dy as f64 / 2.0));
            (x, y) = (x + dx, y + dy);
            // The cells ahead on the left and on the right of the corner that is reached.
            let (left, right) = match way {
                0 => ((x, y - 1), (x, y)),
                1 => ((x, y), (x - 1, y)),
                2 => ((x - 1, y), (x - 1, y - 1)),
                _ => ((x - 1, y - 1), (x, y - 1)),
            };
            if !self.is(class, right.0, right.1) {
                way = (way + 1) % 4;
            } else if self.is(class, left.0, left.1) {
                way = (way + 3) % 4;
            }
            if (x, y, way) == first {
                return sides;
            }
        }
    }
}

fn area(outline: &[Point]) -> f64 {
    let ahead = outline.iter().skip(1).chain(outline.first());
    (outline.iter().zip(ahead).map(|(a, b)| a.to_vec2().cross(b.to_vec2())).sum::<f64>() / 2.0).abs()
}

/// Straightens the steps of the raster.
fn smooth(outline: &[Point]) -> Vec<Point> {
    let half = outline.len() / 2;
    let mut first = simplified(&outline[..=half], 0.75);
    let second: Vec<Point> = outline[half..].iter().chain(outline.first()).copied().collect();
    let second = simplified(&second, 0.75);
    first.extend(second.into_iter().skip(1));
    first.pop();
    first
}

#[cfg(test)]
mod tests {
    use kurbo::Shape;

    use super::*;

    #[test]
    fn a_frame_has_an_outline_and_a_hole() {
        let (width, height) = (120, 100);
        let cells = (0..width * height)
            .map(|index| (index % width, index / width))
            .map(|(x, y)| {
                let outer = (10..110).contains(&x) && (10..90).contains(&y);
                let inner = (40..80).contains(&x) && (40..70).contains(&y);
                u8::from(outer && !inner)
            })
            .collect();
        let path = Classes { width, height, cells }.regions(1, 0.0, Point::new);
        assert_eq!(path.winding(Point::new(60.0, 55.0)), 0, "the hole is empty");
        assert_ne!(path.winding(Point::new(25.0, 25.0)), 0, "the frame is filled");
        assert_eq!(path.winding(Point::new(2.0, 2.0)), 0, "outside is empty");
        // 100 × 80 − 40 × 30 cells; the outline may run up to 0.75 cells off.
        assert!((path.area().abs() - 6800.0).abs() < 68.0, "{}", path.area());
    }
}
