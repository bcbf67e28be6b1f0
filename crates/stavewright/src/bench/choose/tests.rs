//! What is offered comes out as it was promised.

use basket::Catalogue;
use basket::weave::Face;
use basket::weave::look::Look;

use super::trial::Trial;
use super::{counts, first, ways};
use crate::bench::api::{
    CountsRequest, FirstMould, FirstRequest, HandleWord, LookWord, SideWord, UnitsWord, WaysRequest, Wish,
};
use crate::bench::compute::Shop;
use crate::bench::folder::Folder;
use crate::bench::text;
use crate::own::Own;

const HARBOUR: &str = include_str!("../../../../../patterns/harbour-bread-basket.toml");

fn in_shop<T>(work: impl FnOnce(Shop<'_>) -> T) -> T {
    let place = tempfile::tempdir().unwrap();
    let folder = Folder::at(place.path()).unwrap();
    let own = Own::default();
    work(Shop {
        folder: &folder,
        catalogue: Catalogue::built_in(),
        own: &own,
        hand: &basket::Hand::USUAL,
        any_file: true,
    })
}

fn wish(look: LookWord, lean: Option<SideWord>, colours: &[&str]) -> Wish {
    let colours = colours.iter().map(|name| (*name).to_owned()).collect();
    Wish { look: Some(look), lean, turns: None, colours }
}

fn asked(source: &str, wish: Wish) -> WaysRequest {
    WaysRequest { source: source.to_owned(), course: 2, wish, most: None, language: None, units: None }
}

#[test]
fn what_is_taken_looks_as_it_was_wanted_and_holds() {
    let wants = [
        (LookWord::Spiral, Some(SideWord::Right), Look::Spiral),
        (LookWord::Spiral, Some(SideWord::Left), Look::Spiral),
        (LookWord::Columns, None, Look::Columns),
        (LookWord::Checks, None, Look::Checks),
    ];
    // The left hand's basket is turned over, and leans as it was asked for all the same.
    for source in [HARBOUR.to_owned(), HARBOUR.replacen("units =", "hand = \"left\"\nunits =", 1)] {
        for (word, lean, look) in wants {
            in_shop(|shop| {
                let found = ways(&asked(&source, wish(word, lean, &["natural", "blue"])), shop).unwrap().each;
                assert!(!found.is_empty(), "{word:?} {lean:?}");
                for way in found {
                    let taken = text::edit(&source, &way.edits).unwrap();
                    let basket = Trial::of(taken, shop).unwrap().basket;
                    let weave = &basket.body.weave;
                    let seen = weave.look(&weave.courses[1], Face::Outside);
                    assert_eq!(seen.sighting.look, look, "{}", way.weave);
                    assert!(lean.is_none_or(|lean| seen.lean == Some(lean.lean())), "{}", way.weave);
                    assert!(weave.courses.iter().all(|course| course.verdict.holds), "{}", way.weave);
                    assert_eq!(basket.body.uprights().count, way.staves);
                }
            });
        }
    }
}

#[test]
fn rings_of_colour_keep_where_the_course_ended() {
    in_shop(|shop| {
        let before = Trial::of(HARBOUR.to_owned(), shop).unwrap().basket.body.weave;
        let found = ways(&asked(HARBOUR, wish(LookWord::Bands, None, &["natural", "blue"])), shop).unwrap();
        let rings = found.each.iter().find(|way| way.edits.len() > 4).unwrap();
        let after = Trial::of(text::edit(HARBOUR, &rings.edits).unwrap(), shop).unwrap().basket.body.weave;
        assert!(after.courses.len() > before.courses.len());
        let top = |weave: &basket::weave::Weave| weave.courses.last().unwrap().wanted_to;
        assert_eq!(top(&after), top(&before));
        let colours: Vec<&str> =
            after.courses[1..].iter().map(|course| course.weavers[0].colours[0].name.as_str()).collect();
        assert!(colours.windows(2).all(|pair| pair[0] != pair[1]), "{colours:?}");
    });
}

#[test]
fn counts_say_of_themselves_what_the_basket_then_says() {
    in_shop(|shop| {
        let request = CountsRequest { source: HARBOUR.to_owned(), language: None, units: None };
        let counts = counts(&request, shop).unwrap().each;
        assert_eq!(counts.iter().filter(|one| one.now).count(), 1);
        // Plain weave in one round runs on odd counts alone.
        assert!(counts.iter().all(|one| one.runs == (one.count % 2 == 1)));
        let other = counts.iter().find(|one| !one.now && one.runs).unwrap();
        let taken = text::edit(HARBOUR, &other.edits).unwrap();
        assert_eq!(Trial::of(taken, shop).unwrap().basket.body.uprights().count, other.count);
    });
}

#[test]
fn a_first_basket_is_as_large_as_was_asked_and_can_be_woven() {
    in_shop(|shop| {
        let request = FirstRequest {
            title: "First".to_owned(),
            typed_in: UnitsWord::Mm,
            mould: FirstMould::Guessed { across: "180".to_owned(), high: String::new() },
            staves: String::new(),
            wish: wish(LookWord::Spiral, Some(SideWord::Right), &["natural", "red"]),
            handle: HandleWord::Swing,
            language: Some("de".to_owned()),
            units: None,
        };
        let made = first(&request, shop).unwrap();
        let basket = made.look.basket.unwrap();
        assert!(basket.findings.iter().all(|finding| finding.grade != crate::bench::api::Grade::Stop));
        let made = Trial::of(made.source, shop).unwrap().basket;
        assert!((made.body.form.profile.widest().to_mm() - 90.0).abs() < 0.1);
        assert!(made.handle.is_some());
    });
}
