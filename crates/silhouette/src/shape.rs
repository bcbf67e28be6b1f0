//! The largest connected part of a picture that is not background.

use crate::background::Difference;
use crate::failed::Failed;

/// Share of the picture that the mould covers at least.
const LEAST_SHARE: f64 = 0.02;
/// Share of the largest part that a second one may have.
const MOST_SECOND: f64 = 0.2;

/// Where the mould is.
pub(crate) struct Found {
    /// Its middle.
    pub(crate) middle: [f64; 2],
    /// Leftmost and rightmost column, topmost and lowest row.
    pub(crate) bounds: [usize; 4],
}

impl Found {
    pub(crate) fn of(difference: &Difference) -> Result<Self, Failed> {
        let parts = parts(difference);
        let Some(largest) = parts.first() else { return Err(Failed::Nothing) };
        let (width, height) = (difference.width, difference.height);
        if (largest.count as f64) < LEAST_SHARE * (width * height) as f64 {
            return Err(Failed::Nothing);
        }
        let [left, right, top, low] = largest.bounds;
        if left == 0 || top == 0 || right + 1 == width || low + 1 == height {
            return Err(Failed::CutOff);
        }
        if parts.get(1).is_some_and(|second| second.count as f64 > MOST_SECOND * largest.count as f64) {
            return Err(Failed::Several);
        }
        let count = largest.count as f64;
        Ok(Self { middle: largest.sum.map(|sum| sum / count), bounds: largest.bounds })
    }
}

struct Part {
    count: u64,
    sum: [f64; 2],
    bounds: [usize; 4],
}

/// All connected parts, the largest first.
fn parts(difference: &Difference) -> Vec<Part> {
    let (width, height) = (difference.width, difference.height);
    let mut left: Vec<bool> = difference.values.iter().map(|value| *value > difference.threshold).collect();
    let mut parts = Vec::new();
    let mut waiting = Vec::new();
    for start in 0..left.len() {
        if !std::mem::take(&mut left[start]) {
            continue;
        }
        waiting.push(start);
        let mut part = Part { count: 0, sum: [0.0; 2], bounds: [usize::MAX, 0, usize::MAX, 0] };
        while let Some(at) = waiting.pop() {
            let (x, y) = (at % width, at / width);
            part.count += 1;
            part.sum = [part.sum[0] + x as f64, part.sum[1] + y as f64];
            let [low_x, high_x, low_y, high_y] = part.bounds;
            part.bounds = [low_x.min(x), high_x.max(x), low_y.min(y), high_y.max(y)];
            let near = [
                (x > 0).then(|| at - 1),
                (x + 1 < width).then_some(at + 1),
                (y > 0).then(|| at - width),
                (y + 1 < height).then_some(at + width),
            ];
            for next in near.into_iter().flatten() {
                if std::mem::take(&mut left[next]) {
                    waiting.push(next);
                }
            }
        }
        parts.push(part);
    }
    parts.sort_by_key(|part| std::cmp::Reverse(part.count));
    parts
}
