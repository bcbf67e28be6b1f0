//! Chance against published tables and values computed independently by simulation and exact sums.

use basket::Length;
use basket::chance::{
    last_does_not_fit, normal_cdf, normal_quantile, spares, stray_at_end, stray_between_marks, to_make,
    widest_that_fits,
};

#[track_caller]
fn close(measured: f64, published: f64, allowance: f64) {
    assert!((measured - published).abs() <= allowance, "{measured} is not {published} within {allowance}");
}

/// Source: M. Abramowitz and I. A. Stegun, *Handbook of Mathematical Functions* (1964), tables 26.1
/// and 26.5.
#[test]
fn the_normal_distribution_is_the_tabled_one() {
    close(normal_cdf(0.0), 0.5, 1e-15);
    close(normal_cdf(1.0), 0.841_344_746_068_543, 1e-14);
    close(normal_cdf(-2.0), 0.022_750_131_948_179, 1e-14);
    close(normal_quantile(0.99), 2.326_347_87, 1e-8);
    close(normal_quantile(0.95), 1.644_853_63, 1e-8);
    close(normal_quantile(0.025), -1.959_963_98, 1e-8);
    for chance in [f64::NAN, f64::INFINITY, -1.0, 0.0, 1.0, 2.0] {
        assert!(normal_quantile(chance).is_finite());
    }
}

/// Source: exact binomial sums, computed independently.
#[test]
fn how_many_to_make() {
    for (fail, at_95, at_99) in [(0.05, 28, 30), (0.10, 31, 33), (0.20, 36, 39)] {
        assert_eq!((to_make(25, fail, 0.95), to_make(25, fail, 0.99)), (at_95, at_99));
        assert_eq!(spares(25, fail, 0.95), at_95 - 25);
    }
}

/// Source: exact binomial sums, computed independently: kits that share their spares need fewer.
#[test]
fn pooled_kits_need_fewer_spares() {
    assert_eq!(to_make(12 * 25, 0.05, 0.95), 323);
    // Kept apart, all twelve kits together must suffice with the same confidence.
    assert_eq!(12 * to_make(25, 0.05, 0.95_f64.powf(1.0 / 12.0)), 360);
}

/// Source: sums of normal variates, computed independently by simulation.
#[test]
fn the_last_stave_may_not_fit() {
    let (mean, circle) = (Length::mm(19.8), Length::mm(500.0));
    let own = mean * 0.02;
    close(last_does_not_fit(25, mean, own, Length::ZERO, circle), 0.005_780_8, 1e-7);
    close(last_does_not_fit(25, mean, own, mean * 0.01, circle), 0.174_16, 1e-5);
    close(widest_that_fits(25, 0.02, circle, 0.99).to_mm(), 19.815_608, 1e-6);
    close(last_does_not_fit(25, mean, Length::ZERO, Length::ZERO, circle), 0.0, 0.0);
    close(last_does_not_fit(26, mean, Length::ZERO, Length::ZERO, circle), 1.0, 0.0);
}

/// Source: the variance of a random walk and of a walk tied at both ends (W. Feller, *An
/// Introduction to Probability Theory and Its Applications*, vol. 1 (1968), chapter III).
#[test]
fn quarter_marks_halve_the_straying() {
    let deviation = Length::mm(0.4);
    close(stray_at_end(25, deviation).to_mm(), 2.0, 1e-12);
    close(stray_between_marks(25, deviation, 1).to_mm(), 1.0, 1e-12);
    close(stray_between_marks(25, deviation, 4).to_mm(), 0.5, 1e-12);
}

mod any_input {
    use super::to_make;
    use proptest::prelude::*;

    /// Chance that `needed` or more of `made` are good, by the recurrence of the binomial terms.
    fn chance_of(made: u32, needed: u32, fail: f64) -> f64 {
        let mut ways = vec![0.0; needed as usize + 1];
        ways[0] = 1.0;
        for _ in 0..made {
            for good in (0..=needed as usize).rev() {
                let from_below = if good > 0 { ways[good - 1] * (1.0 - fail) } else { 0.0 };
                let stays = if good == needed as usize { ways[good] } else { ways[good] * fail };
                ways[good] = stays + from_below;
            }
        }
        ways[needed as usize]
    }

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn the_least_number_that_suffices(needed in 1_u32..120, fail in 0.0..0.6_f64, confidence in 0.5..0.999_f64) {
            let made = to_make(needed, fail, confidence);
            prop_assert!(chance_of(made, needed, fail) >= confidence - 1e-9);
            if made > needed {
                prop_assert!(chance_of(made - 1, needed, fail) < confidence + 1e-9);
            }
        }

        #[test]
        fn any_input_ends(needed in 0_u32..1000, fail in -1.0..2.0_f64, confidence in -1.0..2.0_f64) {
            prop_assert!(to_make(needed, fail, confidence) >= needed);
        }
    }
}
