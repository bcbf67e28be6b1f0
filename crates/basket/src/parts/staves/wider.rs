//! Which staves have room to be wider than the others.

use crate::form::Form;
use crate::limits::STAVES;
use crate::measure::Length;
use crate::uprights::{Uprights, Wider};

/// Those with so much more width that no gap beside them comes to less, this far along the wall, than the least
/// of all is without; none where there are none.
pub(super) fn wider(form: &Form, uprights: &Uprights, width: Length, along: Length) -> Option<Wider> {
    if uprights.count > STAVES {
        return None;
    }
    let more = width - uprights.width;
    let gaps = uprights.each_gap(form, along);
    let least = gaps.iter().copied().reduce(Length::min)?;
    let has_room = |gap: &Length| *gap - more >= least;
    let before = gaps.last().into_iter().chain(&gaps);
    let both = before.zip(&gaps).zip(1..);
    let numbers: Vec<u32> = both
        .filter(|((before, after), _)| has_room(before) && has_room(after))
        .map(|(_, number)| number)
        .collect();
    (more > Length::ZERO && !numbers.is_empty()).then_some(Wider { width, numbers })
}
