//! Fewer points for the same line.

use kurbo::Point;

/// The points that keep a line within a tolerance (Douglas and Peucker, "Algorithms for the reduction
/// of the number of points required to represent a digitized line or its caricature", 1973).
pub(crate) fn simplified(points: &[Point], tolerance: f64) -> Vec<Point> {
    let mut keep = vec![false; points.len()];
    let Some(last) = points.len().checked_sub(1) else { return Vec::new() };
    (keep[0], keep[last]) = (true, true);
    let mut parts = vec![(0, last)];
    while let Some((from, to)) = parts.pop() {
        let far = (from + 1..to)
            .map(|index| (index, distance(points[index], points[from], points[to])))
            .max_by(|a, b| a.1.total_cmp(&b.1));
        if let Some((index, _)) = far.filter(|(_, off)| *off > tolerance) {
            keep[index] = true;
            parts.extend([(from, index), (index, to)]);
        }
    }
    points.iter().zip(keep).filter_map(|(point, keep)| keep.then_some(*point)).collect()
}

fn distance(point: Point, from: Point, to: Point) -> f64 {
    let along = to - from;
    let share = ((point - from).dot(along) / along.hypot2()).clamp(0.0, 1.0);
    if share.is_finite() { (from + along * share).distance(point) } else { from.distance(point) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn straight_runs_become_one_line_and_corners_stay() {
        let run = (0..=10).map(|x| Point::new(f64::from(x), 0.0));
        let rise = (1..=10).map(|y| Point::new(10.0, f64::from(y)));
        let points: Vec<Point> = run.chain(rise).collect();
        let corners = [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0)].map(Point::from);
        assert_eq!(simplified(&points, 0.01), corners);
    }

    #[test]
    fn no_point_of_a_circle_lies_further_off_than_the_tolerance() {
        let circle: Vec<Point> = (0..=360)
            .map(|degree| f64::from(degree).to_radians().sin_cos())
            .map(|(y, x)| Point::new(50.0 * x, 50.0 * y))
            .collect();
        let few = simplified(&circle, 0.1);
        // A chord of a circle of radius r lies r(1 − cos φ/2) inside it: at 0.1 mm, 7.2° at most.
        assert!((45..80).contains(&few.len()), "{} points", few.len());
        for point in &circle {
            let off = few.windows(2).map(|ends| distance(*point, ends[0], ends[1])).fold(f64::MAX, f64::min);
            assert!(off <= 0.1 + 1e-9);
        }
    }
}
