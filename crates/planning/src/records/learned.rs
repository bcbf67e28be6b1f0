//! The maker's own hand: figures from records, drawn toward the usual ones as long as little is known.
//!
//! Each figure is normal about the hand's own mean, with an unknown spread; both have the conjugate prior
//! (normal and inverse gamma; Gelman et al. 2013, "Bayesian Data Analysis", 3rd ed., sec. 3.3), in which the
//! usual figure counts as five makings. Times and heights are taken by their logarithms. Spoilt staves are
//! binomial with a beta prior (sec. 2.4) that counts as the staves of five makings.

use basket::Hand;
use statrs::distribution::{Beta, ContinuousCDF, StudentsT};

use super::adopted::Adopted;
use super::compared::{Compared, Figure, Work};

/// As how many makings the usual figures count (assumed).
const MAKINGS: f64 = 5.0;
/// As how many makings the usual spread counts (assumed).
const SPREAD_MAKINGS: f64 = 8.0;
/// The share of hands that the stated bounds leave out on either side.
const OUTSIDE: f64 = 0.025;

impl Figure {
    /// By how much one making differs from another (assumed): logarithms for times and heights.
    pub fn spread(self) -> f64 {
        match self {
            Self::TakeUp => 0.25,
            Self::RowHeight => 0.08,
            Self::Shrink | Self::Pace(_) => 0.3,
        }
    }

    /// Whether it is taken by its logarithm.
    pub fn by_logarithm(self) -> bool {
        matches!(self, Self::RowHeight | Self::Pace(_))
    }
}

/// A figure of one's own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Own {
    /// The figure.
    pub value: f64,
    /// The bounds within which the true one lies with 95 % certainty.
    pub within: (f64, f64),
    /// How many records it is from.
    pub records: usize,
}

/// What records say of a hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Learned {
    /// Figures, as many times the usual ones, in making order; those of which there is no record are left out.
    pub times: Vec<(Figure, Own)>,
    /// The chance that a stave is spoilt, if any record says so.
    pub spoilt: Option<Own>,
    /// Share of its height that the weaving of these baskets usually loses.
    usual_shrink: f64,
}

impl Learned {
    /// What is learned from records.
    pub fn of(records: &[Compared]) -> Self {
        let figures = [Figure::TakeUp, Figure::RowHeight, Figure::Shrink].into_iter();
        let figures = figures.chain(Work::ALL.map(Figure::Pace));
        let times = figures.filter_map(|figure| {
            let told = records.iter().flat_map(|record| &record.times);
            let values: Vec<f64> = told.filter(|(of, _)| *of == figure).map(|(_, times)| *times).collect();
            Some((figure, own(figure, &values)?))
        });
        let shrinks = records.iter().map(|record| record.usual_shrink).sum::<f64>();
        let usual_shrink = shrinks / records.len().max(1) as f64;
        Self { times: times.collect(), spoilt: spoilt(records), usual_shrink }
    }

    /// The usual hand with these figures in the place of its own.
    pub fn hand(&self, whose: &str) -> Hand {
        self.adopted(whose).hand()
    }

    /// The figures as somebody would take them up.
    pub fn adopted(&self, whose: &str) -> Adopted {
        let shrink = self.times.iter().find(|(figure, _)| *figure == Figure::Shrink);
        let times = self.times.iter().filter(|(figure, _)| *figure != Figure::Shrink);
        Adopted {
            whose: whose.to_owned(),
            times: times.map(|(figure, own)| (figure.word().to_owned(), own.value)).collect(),
            shrink: shrink.map(|(_, own)| self.usual_shrink * own.value),
            spoilt: self.spoilt.map(|own| own.value),
        }
    }
}

fn own(figure: Figure, times: &[f64]) -> Option<Own> {
    if times.is_empty() {
        return None;
    }
    let taken = |times: f64| if figure.by_logarithm() { times.max(1e-6).ln() } else { times };
    let usual = taken(1.0);
    let count = times.len() as f64;
    let mean = times.iter().map(|times| taken(*times)).sum::<f64>() / count;
    let off = times.iter().map(|times| (taken(*times) - mean).powi(2)).sum::<f64>();
    let strength = MAKINGS + count;
    let middle = (MAKINGS * usual + count * mean) / strength;
    let freedom = SPREAD_MAKINGS + count;
    let apart = MAKINGS * count / strength * (mean - usual).powi(2);
    let spread = (SPREAD_MAKINGS * figure.spread().powi(2) + off + apart) / freedom;
    let reach =
        StudentsT::new(0.0, 1.0, freedom).ok()?.inverse_cdf(1.0 - OUTSIDE) * (spread / strength).sqrt();
    let told = |value: f64| if figure.by_logarithm() { value.exp() } else { value };
    Some(Own {
        value: told(middle),
        within: (told(middle - reach), told(middle + reach)),
        records: times.len(),
    })
}

fn spoilt(records: &[Compared]) -> Option<Own> {
    let staves: Vec<(u32, u32)> = records.iter().filter_map(|record| record.staves).collect();
    let made: f64 = staves.iter().map(|(made, _)| f64::from(*made)).sum();
    if made <= 0.0 {
        return None;
    }
    let bad: f64 = staves.iter().map(|(made, spoilt)| f64::from(*spoilt.min(made))).sum();
    let known = MAKINGS * made / staves.len() as f64;
    let (a, b) = (Hand::USUAL.spoilt * known + bad, (1.0 - Hand::USUAL.spoilt) * known + made - bad);
    let beta = Beta::new(a, b).ok()?;
    let within = (beta.inverse_cdf(OUTSIDE), beta.inverse_cdf(1.0 - OUTSIDE));
    Some(Own { value: a / (a + b), within, records: staves.len() })
}
