//! What is mould and what is background.

use crate::failed::Failed;

/// Shortest side of a picture, in pixels.
const LEAST_SIDE: usize = 160;
/// The frame in which the background is measured, as a share of the shorter side.
const FRAME: f64 = 0.03;
/// Brightness that a shadow leaves of the background, and what a bright spot makes of it.
const SHADE: [f32; 2] = [0.55, 1.12];
/// How many pixels of the frame are looked at, at most.
const MOST_SAMPLES: usize = 20_000;
/// A frame that strays further than this from an even change of light, in levels of 255, is not plain.
const MOST_STRAY: f32 = 14.0;
/// The mould differs from the background by at least this many levels, and this many times the noise.
const LEAST_DIFFERENCE: [f32; 2] = [16.0, 5.0];

/// A picture: three bytes a pixel, row by row from above.
#[derive(Clone, Copy, Debug)]
pub struct Picture<'a> {
    width: usize,
    height: usize,
    rgb: &'a [u8],
}

impl<'a> Picture<'a> {
    /// A picture of this size; none where the bytes are not as many as it says.
    pub fn new(width: u32, height: u32, rgb: &'a [u8]) -> Option<Self> {
        let (width, height) = (width as usize, height as usize);
        (width.checked_mul(height)?.checked_mul(3)? == rgb.len()).then_some(Self { width, height, rgb })
    }

    fn at(&self, x: usize, y: usize) -> [f32; 3] {
        let from = 3 * (y * self.width + x);
        self.rgb.get(from..from + 3).map_or([0.0; 3], |rgb| [rgb[0], rgb[1], rgb[2]].map(f32::from))
    }
}

/// How much every pixel differs from the background behind it, whatever the light on that.
pub(crate) struct Difference {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) values: Vec<f32>,
    /// From how much on a pixel is mould.
    pub(crate) threshold: f32,
}

impl Difference {
    pub(crate) fn of(picture: &Picture<'_>) -> Result<Self, Failed> {
        let (width, height) = (picture.width, picture.height);
        if width.min(height) < LEAST_SIDE {
            return Err(Failed::TooSmall { least: LEAST_SIDE });
        }
        let frame = frame(width, height);
        let light = Light::over(picture, &frame);
        let noise = light.stray(picture, &frame);
        if noise > MOST_STRAY {
            return Err(Failed::NotPlain);
        }
        let mut values = Vec::with_capacity(width * height);
        for y in 0..height {
            for x in 0..width {
                values.push(apart(picture.at(x, y), light.at(picture, x, y)));
            }
        }
        let threshold = split(&values);
        let [levels, times] = LEAST_DIFFERENCE;
        let inside = mean(values.iter().copied().filter(|value| *value > threshold));
        if inside < levels.max(times * noise) {
            return Err(Failed::LooksAlike);
        }
        Ok(Self { width, height, values, threshold })
    }

    /// The value at a place between pixels.
    pub(crate) fn at(&self, x: f64, y: f64) -> f32 {
        if x < 0.0 || y < 0.0 || x > (self.width - 1) as f64 || y > (self.height - 1) as f64 {
            return 0.0;
        }
        let (left, top) = ((x as usize).min(self.width - 2), (y as usize).min(self.height - 2));
        let (right, down) = ((x - left as f64) as f32, (y - top as f64) as f32);
        let at = |x: usize, y: usize| self.values[y * self.width + x];
        let above = at(left, top) * (1.0 - right) + at(left + 1, top) * right;
        let below = at(left, top + 1) * (1.0 - right) + at(left + 1, top + 1) * right;
        above * (1.0 - down) + below * down
    }
}

/// Places in the frame.
fn frame(width: usize, height: usize) -> Vec<[usize; 2]> {
    let thick = ((width.min(height) as f64 * FRAME) as usize).max(3);
    let step = ((2 * thick * (width + height)) / MOST_SAMPLES).max(1);
    let inside =
        |x: usize, y: usize| (thick..width - thick).contains(&x) && (thick..height - thick).contains(&y);
    let all = (0..height).flat_map(|y| (0..width).map(move |x| [x, y]));
    all.filter(|[x, y]| !inside(*x, *y)).step_by(step).collect()
}

/// The background's colour, which changes evenly over the picture.
struct Light {
    /// For each colour the weights of 1, x, y, x², xy, y².
    weights: [[f64; 6]; 3],
}

impl Light {
    /// Fitted to the frame; a second time without what strays far, which is not background.
    fn over(picture: &Picture<'_>, frame: &[[usize; 2]]) -> Self {
        let first = Self::fitted(picture, frame.iter().copied());
        let stray = first.stray(picture, frame).max(2.0);
        let near = frame
            .iter()
            .copied()
            .filter(|[x, y]| apart(picture.at(*x, *y), first.at(picture, *x, *y)) <= 3.0 * stray);
        Self::fitted(picture, near)
    }

    fn fitted(picture: &Picture<'_>, places: impl Iterator<Item = [usize; 2]>) -> Self {
        let mut sums = [[0.0; 9]; 6];
        for [x, y] in places {
            let terms = terms(picture, x, y);
            let colour = picture.at(x, y);
            for (row, term) in sums.iter_mut().zip(terms) {
                for (sum, other) in row.iter_mut().zip(terms.into_iter().chain(colour.map(f64::from))) {
                    *sum += term * other;
                }
            }
        }
        Self { weights: crate::fit::solved(sums) }
    }

    fn at(&self, picture: &Picture<'_>, x: usize, y: usize) -> [f32; 3] {
        let terms = terms(picture, x, y);
        self.weights
            .map(|weights| weights.iter().zip(terms).map(|(weight, term)| weight * term).sum::<f64>() as f32)
    }

    /// How far most of the frame strays from it: the median, as a standard deviation.
    fn stray(&self, picture: &Picture<'_>, frame: &[[usize; 2]]) -> f32 {
        let mut strays: Vec<f32> =
            frame.iter().map(|[x, y]| apart(picture.at(*x, *y), self.at(picture, *x, *y))).collect();
        let middle = strays.len() / 2;
        if strays.is_empty() {
            return 0.0;
        }
        *strays.select_nth_unstable_by(middle, f32::total_cmp).1
    }
}

fn terms(picture: &Picture<'_>, x: usize, y: usize) -> [f64; 6] {
    let (x, y) = (x as f64 / picture.width as f64 - 0.5, y as f64 / picture.height as f64 - 0.5);
    [1.0, x, y, x * x, x * y, y * y]
}

/// How far a colour lies from the background's, in a shadow or not.
fn apart(colour: [f32; 3], background: [f32; 3]) -> f32 {
    let dot = |a: [f32; 3], b: [f32; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    let shade = (dot(colour, background) / dot(background, background).max(1.0)).clamp(SHADE[0], SHADE[1]);
    let off = [0, 1, 2].map(|at| colour[at] - shade * background[at]);
    dot(off, off).sqrt()
}

fn mean(values: impl Iterator<Item = f32>) -> f32 {
    let (sum, count) =
        values.fold((0.0_f64, 0_u64), |(sum, count), value| (sum + f64::from(value), count + 1));
    if count == 0 { 0.0 } else { (sum / count as f64) as f32 }
}

/// The value that parts two heaps of values best (N. Otsu, "A Threshold Selection Method from Gray-Level
/// Histograms", IEEE Transactions on Systems, Man, and Cybernetics 9 (1979), pp. 62–66).
fn split(values: &[f32]) -> f32 {
    let mut histogram = [0_u64; 512];
    for value in values {
        histogram[(*value as usize).min(511)] += 1;
    }
    let total: u64 = histogram.iter().sum();
    let all: f64 = (0..).zip(histogram).map(|(value, count)| f64::from(value) * count as f64).sum();
    let (mut below, mut sum) = (0_u64, 0.0);
    let (mut best, mut threshold) = (0.0, 0_i32);
    for (value, count) in (0_i32..).zip(histogram) {
        below += count;
        sum += f64::from(value) * count as f64;
        let above = total - below;
        if below == 0 || above == 0 {
            continue;
        }
        let apart = sum / below as f64 - (all - sum) / above as f64;
        let between = below as f64 * above as f64 * apart * apart;
        if between > best {
            (best, threshold) = (between, value);
        }
    }
    threshold as f32 + 1.0
}
