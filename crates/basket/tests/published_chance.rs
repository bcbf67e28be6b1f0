//! Chance against published tables and values computed independently by simulation and exact sums.

use basket::chance::{spares, to_make};

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
