//! What is woven where, with charts: where there is more to see than a plain weave.

use basket::pattern::WeaveKind;
use basket::{Basket, Colour};

use super::{Block, CHARTS, Source};

impl<'a> Source<'a> {
    /// What is woven where, and how it is seen while it is made.
    pub(super) fn woven(&self) -> Vec<Block<'a>> {
        if is_plain(&self.draft.basket) {
            return Vec::new();
        }
        let mut blocks = vec![self.bands()];
        blocks.extend(self.moves());
        blocks.extend(self.drawn(&CHARTS[..1]));
        blocks
    }

    /// The moves of each weave that is more than over one, under one: once, where a course first has it; two
    /// beside each other.
    fn moves(&self) -> Vec<Block<'a>> {
        let courses = &self.draft.basket.body.weave.courses;
        let is_new = move |index: usize, weave: WeaveKind| {
            !courses.iter().take(index).any(|below| below.weave == weave)
        };
        let named = courses
            .iter()
            .enumerate()
            .filter(move |(index, course)| course.weave != WeaveKind::Plain && is_new(*index, course.weave));
        let names = named.map(|(index, _)| format!("moves-{}", index + 1));
        let there = |name: &String| self.figures.iter().any(|figure| figure.name == *name);
        let names: Vec<String> = names.filter(there).collect();
        names.chunks(2).map(|names| Block::Figures { names: names.to_vec() }).collect()
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
