//! Figures of a hand that somebody works with, as they were when they were taken up.

use std::collections::BTreeMap;

use basket::{Hand, Pace};
use serde::{Deserialize, Serialize};

use super::compared::{Figure, Work};

/// Figures that were taken up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Adopted {
    /// Whose they are.
    pub whose: String,
    /// As many times the usual ones, by the words of their figures.
    pub times: BTreeMap<String, f64>,
    /// Share of its height that weaving loses in drying; none for the weaver's own.
    pub shrink: Option<f64>,
    /// The chance that a stave is spoilt; none for the usual one.
    pub spoilt: Option<f64>,
}

impl Adopted {
    /// The usual hand with these figures in the place of its own.
    pub fn hand(&self) -> Hand {
        let mut hand = Hand { whose: Some(self.whose.clone()), ..Hand::USUAL };
        let times = |figure: Figure| self.times.get(figure.word()).copied().filter(|times| times.is_finite());
        if let Some(times) = times(Figure::TakeUp) {
            hand.take_up = (hand.take_up * times).max(0.0);
        }
        if let Some(times) = times(Figure::RowHeight) {
            hand.row_height *= times;
        }
        for work in Work::ALL {
            at_pace(&mut hand.pace, work, times(Figure::Pace(work)).unwrap_or(1.0));
        }
        hand.shrink = self.shrink.map(|shrink| shrink.clamp(0.0, 0.5));
        hand.spoilt = self.spoilt.unwrap_or(hand.spoilt).clamp(0.0, 1.0);
        hand
    }
}

/// Makes all of one work so many times as long.
fn at_pace(pace: &mut Pace, work: Work, times: f64) {
    let minutes: &mut [&mut f64] = match work {
        Work::Preparing => {
            &mut [&mut pace.shape_stave, &mut pace.taper_stave, &mut pace.set_stave, &mut pace.mount_base]
        }
        Work::Weaving => &mut [
            &mut pace.crossing,
            &mut pace.counted_crossing,
            &mut pace.twined_crossing,
            &mut pace.begin_row,
            &mut pace.join,
            &mut pace.pack,
        ],
        Work::Rim => &mut [&mut pace.hoop, &mut pace.trim, &mut pace.pin],
        Work::Lashing => &mut [&mut pace.wrap, &mut pace.filler],
        Work::Fittings => &mut [&mut pace.ear, &mut pace.bail, &mut pace.rivet],
        Work::Finishing => &mut [&mut pace.off_mould, &mut pace.coat],
    };
    for minutes in minutes {
        **minutes *= times;
    }
}
