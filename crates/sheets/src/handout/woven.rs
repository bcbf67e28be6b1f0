//! Charts of the weaving, where there is more to see than a plain weave.

use basket::pattern::WeaveKind;
use basket::{Basket, Colour};

use super::{Block, CHARTS, Source};

impl<'a> Source<'a> {
    /// The weaving as it is seen while it is made.
    pub(super) fn woven(&self) -> Vec<Block<'a>> {
        if is_plain(&self.draft.basket) { Vec::new() } else { self.drawn(&CHARTS[..1]) }
    }

    /// The weaving from both sides.
    pub(super) fn charts(&self) -> Vec<Block<'a>> {
        if is_plain(&self.draft.basket) { Vec::new() } else { self.drawn(&CHARTS) }
    }
}

/// Whether all of it is plain weave, undyed.
fn is_plain(basket: &Basket) -> bool {
    let weave = &basket.body.weave;
    let weavers = weave.courses.iter().flat_map(|course| &course.weavers);
    let mut colours = weavers
        .flat_map(|weaver| &weaver.colours)
        .chain((1..=basket.body.uprights().count).map(|stave| weave.stave_colour(stave)));
    weave.courses.iter().all(|course| course.weave == WeaveKind::Plain)
        && colours.all(|colour| *colour == Colour::natural())
}
