//! Chance: how many spares to make so that enough come out good. Every function gives a finite result for
//! any input.

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

fn share(figure: f64, most: f64) -> f64 {
    if figure.is_nan() { 0.0 } else { figure.clamp(0.0, most) }
}
