//! Every pattern that can be read gives a basket, whatever it asks for.

mod support;

use basket::pattern::read;
use basket::{Catalogue, Draft, Hand, assemble};
use proptest::prelude::*;

#[test]
fn the_patterns_of_the_repository_give_baskets() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../patterns");
    for entry in std::fs::read_dir(folder).unwrap() {
        let text = std::fs::read_to_string(entry.unwrap().path()).unwrap();
        let pattern = read(&text, Catalogue::built_in()).unwrap();
        let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
        let basket = &draft.basket;
        assert!(basket.body.uprights().count % 2 == 1, "{}: plain weave needs an odd count", basket.title);
        assert!(basket.body.weave.rows > 10 && !draft.cuts.is_empty() && !draft.steps.is_empty());
        assert!(!draft.stops(), "{}", basket.title);
    }
}

proptest! {
    #[test]
    fn any_pattern_gives_a_basket(pattern in support::any_pattern()) {
        let draft = Draft::of(pattern.clone(), Catalogue::built_in(), &Hand::USUAL);
        let basket = &draft.basket;
        prop_assert_eq!(&basket.title, &pattern.title);
        prop_assert_eq!(basket.ears.is_some(), pattern.ears.is_some());
        prop_assert_eq!(basket.handle.is_some(), pattern.handle.is_some());
        prop_assert!(pattern.staves.count.is_none_or(|count| count == basket.body.uprights().count));
        let finite = [basket.body.form.arc(), basket.body.staves().length, basket.body.weave.length, basket.body.rim().outer.cut, basket.body.lashing().map_or(basket::Length::ZERO, |lashing| lashing.length)];
        prop_assert!(finite.iter().all(|length| length.to_mm().is_finite()), "{:?}", finite);
    }
}

proptest! {
    #[test]
    fn one_pattern_gives_one_basket(pattern in support::any_pattern()) {
        prop_assert_eq!(assemble(&pattern, Catalogue::built_in(), &Hand::USUAL), assemble(&pattern, Catalogue::built_in(), &Hand::USUAL));
    }
}
