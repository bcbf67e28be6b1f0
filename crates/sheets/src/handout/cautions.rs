//! Cautions, each told once: in full where it first matters, and by the number of that step where it holds again.

use basket::steps::Step;

use super::{Block, Source};

/// The cautions of a step.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Cautions {
    /// Those that no earlier step gave.
    pub(super) new: Vec<&'static str>,
    /// The steps that gave the others, in order.
    pub(super) steps: Vec<u32>,
}

/// The cautions of each step.
pub(super) fn told(steps: &[Step]) -> Vec<Cautions> {
    let mut given: Vec<(&'static str, u32)> = Vec::new();
    let mut told = Vec::new();
    for step in steps {
        let mut cautions = Cautions { new: Vec::new(), steps: Vec::new() };
        for id in &step.cautions {
            match given.iter().find(|(known, _)| known == id) {
                None => {
                    given.push((id, step.number));
                    cautions.new.push(id);
                }
                Some((_, first)) if *first != step.number && !cautions.steps.contains(first) => {
                    cautions.steps.push(*first);
                }
                Some(_) => {}
            }
        }
        cautions.steps.sort_unstable();
        told.push(cautions);
    }
    told
}

impl<'a> Source<'a> {
    /// All cautions of the making, for one who answers for a group.
    pub(super) fn safety(&self) -> Vec<Block<'a>> {
        let all = told(&self.draft.steps).into_iter().flat_map(|cautions| cautions.new);
        vec![Block::Points { items: all.map(|id| self.scribe.words.term(id)).collect() }]
    }
}

#[cfg(test)]
mod tests {
    use basket::{Catalogue, Draft, Hand};

    use super::*;

    #[test]
    fn a_caution_is_given_once_and_pointed_back_to() {
        let pattern = include_str!("../../../../patterns/harbour-bread-basket.toml");
        let pattern = basket::pattern::read(pattern, Catalogue::built_in()).expect("it can be read");
        let mut steps = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL).steps;
        steps.truncate(4);
        for (step, cautions) in steps.iter_mut().zip([
            vec!["caution-knife", "caution-knife"],
            vec!["caution-water"],
            vec!["caution-water", "caution-knife", "caution-glue"],
            vec![],
        ]) {
            step.cautions = cautions;
        }
        let expected = [
            (vec!["caution-knife"], vec![]),
            (vec!["caution-water"], vec![]),
            (vec!["caution-glue"], vec![1, 2]),
            (vec![], vec![]),
        ];
        assert_eq!(told(&steps), expected.map(|(new, steps)| Cautions { new, steps }));
    }
}
