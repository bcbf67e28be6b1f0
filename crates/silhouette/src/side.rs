//! The side of the mould: heights and radii.

use crate::edges::Edges;
use crate::fit;
use crate::perspective::{Eye, Seen};

/// Places along the side.
pub(crate) const PLACES: usize = 241;
/// How far about a place the outline is looked at for its slope, as a share of the height, and at least so many
/// pixels.
const NEAR: [f64; 2] = [0.018, 4.0];
/// An outline that runs more level than this belongs to foot or top.
const STEEPEST: f64 = 2.5;

/// What is known of where the eye was: millimetres a pixel, distance from the axis in millimetres, and height along
/// the axis in pixels.
#[derive(Clone, Copy)]
pub(crate) struct View {
    pub(crate) scale: f64,
    pub(crate) distance: f64,
    pub(crate) up: f64,
}

/// The side at even heights from foot to top.
#[derive(Clone, Debug)]
pub(crate) struct Profile {
    pub(crate) height: f64,
    /// Radii from below upward, the mean of both sides.
    pub(crate) radii: Vec<f64>,
    /// By how much both sides differ in most places.
    pub(crate) apart: f64,
}

impl Profile {
    /// None where the outline is too short to be a side.
    pub(crate) fn of(edges: &Edges, view: View) -> Option<Self> {
        let eye = Eye { distance: view.distance, up: view.up * view.scale };
        let sides = [0, 1].map(|side| touched(edges, view, eye, side));
        let [first, last] = [sides[0].first()?, sides[0].last()?];
        let [foot, top] = [(0, first, false), (1, last, true)]
            .map(|(end, [_, radius], is_top)| eye.end(edges.ends[end] * view.scale, *radius, is_top));
        let height = top - foot;
        let step = height / (PLACES - 1) as f64;
        let reach = (height * NEAR[0]).max(NEAR[1] * view.scale);
        let at = |side: &[[f64; 2]], number: usize| {
            let up = foot + step * number as f64;
            // Beyond the last places of a side it runs straight on.
            let (low, high) = (side.first()?[0] + reach, side.last()?[0] - reach);
            let within = up.clamp(low.min(high), high.max(low));
            let wide = if (low.min(high)..=high.max(low)).contains(&up) { reach } else { 2.0 * reach };
            let [radius, slope] = fit::parabola(side, within, wide)?;
            Some(radius + slope * (up - within))
        };
        let both: Option<Vec<[f64; 2]>> =
            (0..PLACES).map(|number| Some([at(&sides[0], number)?, at(&sides[1], number)?])).collect();
        let both = both?;
        let mut apart: Vec<f64> = both.iter().map(|[left, right]| (left - right).abs()).collect();
        apart.sort_by(f64::total_cmp);
        let radii = both.iter().map(|[left, right]| f64::midpoint(*left, *right).max(0.0)).collect();
        Some(Self { height, radii, apart: apart.get(PLACES / 2).copied().unwrap_or(0.0) })
    }

    pub(crate) fn widest(&self) -> f64 {
        self.radii.iter().copied().fold(0.0, f64::max)
    }

    /// How much it narrows again above a wider place.
    pub(crate) fn undercut(&self) -> f64 {
        let (mut widest, mut most) = (0.0_f64, 0.0_f64);
        for radius in &self.radii {
            widest = widest.max(*radius);
            most = most.max(widest - radius);
        }
        most
    }

    /// The nearest side that nowhere narrows upward: neighbours that fall are pooled (M. Ayer and others, "An
    /// Empirical Distribution Function for Sampling with Incomplete Information", Annals of Mathematical
    /// Statistics 26 (1955), pp. 641–647).
    pub(crate) fn without_undercut(mut self) -> Self {
        let mut pools: Vec<(f64, usize)> = Vec::new();
        for radius in &self.radii {
            pools.push((*radius, 1));
            while let [.., below, above] = pools.as_slice() {
                if below.0 <= above.0 {
                    break;
                }
                let count = below.1 + above.1;
                let pooled = (below.0 * below.1 as f64 + above.0 * above.1 as f64) / count as f64;
                pools.truncate(pools.len() - 2);
                pools.push((pooled, count));
            }
        }
        self.radii =
            pools.into_iter().flat_map(|(radius, count)| std::iter::repeat_n(radius, count)).collect();
        self
    }

    pub(crate) fn turned_over(mut self) -> Self {
        self.radii.reverse();
        self
    }

    /// Heights and radii between which straight lines stay this near to the side (D. H. Douglas and T. K. Peucker,
    /// Cartographica 10 (1973), pp. 112–122), at most so many.
    pub(crate) fn knots(&self, near: f64, most: usize) -> Vec<[f64; 2]> {
        let step = self.height / (PLACES - 1) as f64;
        let place = |number: usize| [step * number as f64, self.radii.get(number).copied().unwrap_or(0.0)];
        let mut chosen = vec![0, PLACES / 3, 2 * PLACES / 3, PLACES - 1];
        while chosen.len() < most {
            let off = |from: usize, to: usize, number: usize| {
                let ([low, start], [high, end]) = (place(from), place(to));
                let [up, radius] = place(number);
                (radius - start - (end - start) * (up - low) / (high - low)).abs()
            };
            let worst = chosen
                .windows(2)
                .flat_map(|ends| {
                    (ends[0] + 1..ends[1]).map(move |number| (number, off(ends[0], ends[1], number)))
                })
                .max_by(|a, b| a.1.total_cmp(&b.1));
            match worst {
                Some((number, off)) if off > near => chosen.push(number),
                _ => break,
            }
            chosen.sort_unstable();
        }
        chosen.into_iter().map(place).collect()
    }
}

/// Heights and radii of one side, from below upward.
fn touched(edges: &Edges, view: View, eye: Eye, side: usize) -> Vec<[f64; 2]> {
    let [low, high] = edges.ends;
    let reach = ((high - low) * NEAR[0]).max(NEAR[1]);
    let seen: Vec<[f64; 2]> = edges.places.iter().map(|edge| [edge.up, edge.sides[side]]).collect();
    let mut places: Vec<[f64; 2]> = seen
        .iter()
        .filter(|[up, _]| (low + reach..=high - reach).contains(up))
        .filter_map(|[up, _]| {
            let [aside, slope] = fit::parabola(&seen, *up, reach)?;
            let seen = Seen { aside: aside * view.scale, up: up * view.scale, slope };
            (slope.abs() <= STEEPEST && aside > 0.0).then(|| eye.touched(seen))
        })
        .collect();
    places.sort_by(|a, b| a[0].total_cmp(&b[0]));
    places
}
