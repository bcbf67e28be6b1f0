//! Chance: how many spares to make so that enough come out good, and what the scatter of stave
//! widths does to a ring of them.
//!
//! Widths are taken as normally distributed and independent; the formulas follow from that and are
//! derived here. Every function gives a finite result for any input.

use crate::measure::Length;

/// Chance that a normal variate of mean 0 and standard deviation 1 stays below `x`.
pub fn normal_cdf(x: f64) -> f64 {
    0.5 * libm::erfc(-x / std::f64::consts::SQRT_2)
}

/// The value below which a normal variate stays with this chance: the inverse of [`normal_cdf`],
/// by halving. Chances are taken within 1e-300 and 1 − 1e-16.
pub fn normal_quantile(chance: f64) -> f64 {
    let chance = if chance.is_nan() { 0.5 } else { chance.clamp(1e-300, 1.0 - 1e-16) };
    let (mut low, mut high) = (-40.0, 40.0);
    for _ in 0..64 {
        let middle = f64::midpoint(low, high);
        if normal_cdf(middle) < chance { low = middle } else { high = middle }
    }
    f64::midpoint(low, high)
}

/// How many to make so that at least `needed` are good: the least `m` for which a binomial count of
/// `m` trials, each failing with chance `fail`, reaches `needed` with chance `confidence`.
///
/// Summed exactly over the failures before the last good piece (negative binomial), all terms
/// positive, their logarithms kept so that nothing underflows. `fail` is taken within 0 and 0.95,
/// `confidence` within 0 and 0.999 999.
pub fn to_make(needed: u32, fail: f64, confidence: f64) -> u32 {
    let fail = share(fail, 0.95);
    let confidence = share(confidence, 0.999_999);
    if needed == 0 || fail <= 0.0 {
        return needed;
    }
    let good = f64::from(needed);
    let mut log_term = good * libm::log1p(-fail);
    let mut sum = libm::exp(log_term);
    let mut failures = 0_u32;
    // With at most 95 in 100 failing, 60 failures a good piece are beyond any asked confidence.
    let most = needed.saturating_mul(60).saturating_add(1000);
    while sum < confidence && failures < most {
        let so_far = f64::from(failures);
        log_term += libm::log(fail * (good + so_far) / (so_far + 1.0));
        sum += libm::exp(log_term);
        failures += 1;
    }
    needed.saturating_add(failures)
}

/// How many more than `needed` to make: [`to_make`] less `needed`.
pub fn spares(needed: u32, fail: f64, confidence: f64) -> u32 {
    to_make(needed, fail, confidence).saturating_sub(needed)
}

/// Chance that the last of `count` staves does not fit on a circle, when their widths have this
/// mean and standard deviation: their sum is normal with mean `nμ` and deviation `σ√n`.
/// `common` is the deviation of an error that all staves of a batch share; it adds `n` times over.
pub fn last_does_not_fit(count: u32, mean: Length, deviation: Length, common: Length, circle: Length) -> f64 {
    let count = f64::from(count);
    let own = deviation.to_mm().abs() * count.sqrt();
    let shared = common.to_mm().abs() * count;
    let spread = libm::hypot(own, shared);
    let room = circle.to_mm() - mean.to_mm() * count;
    if spread > 0.0 && spread.is_finite() && room.is_finite() {
        normal_cdf(-room / spread)
    } else if room < 0.0 {
        1.0
    } else {
        0.0
    }
}

/// Largest nominal width at which `count` staves fit on a circle with this confidence, when their
/// deviation is a share `scatter` of the width: `C / (n + z·scatter·√n)`.
pub fn widest_that_fits(count: u32, scatter: f64, circle: Length, confidence: f64) -> Length {
    let count = f64::from(count.max(1));
    let scatter = share(scatter, 1.0);
    circle / (count + normal_quantile(confidence).max(0.0) * scatter * count.sqrt())
}

/// How far staves set one after another have strayed by the end of the round: `σ√n`.
pub fn stray_at_end(count: u32, deviation: Length) -> Length {
    deviation * f64::from(count).sqrt()
}

/// How far they stray at most between `marks` places round the rim that are marked beforehand,
/// midway between two marks: `σ√(n/marks)/2`. One mark is the place where the round closes.
pub fn stray_between_marks(count: u32, deviation: Length, marks: u32) -> Length {
    deviation * ((f64::from(count) / f64::from(marks.max(1))).sqrt() / 2.0)
}

fn share(figure: f64, most: f64) -> f64 {
    if figure.is_nan() { 0.0 } else { figure.clamp(0.0, most) }
}
