//! How much room one basket has in another, against measuring between outlines place by place.

use std::f64::consts::TAU;

use basket::form::{Form, Outline as _};
use basket::pattern::read;
use basket::sizes::{Nest, across, changes};
use basket::{Basket, Catalogue, Hand, Length, assemble};

fn basket(mould: &str) -> Basket {
    let text = format!("title = \"Nest\"\nmould = {{ {mould} }}\n");
    let pattern = read(&text, Catalogue::built_in()).unwrap();
    assemble(&pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn straight(across: f64, height: f64) -> Basket {
    basket(&format!(
        "base = \"{across} mm\", rim = \"{across} mm\", height = \"{height} mm\", side = \"straight\""
    ))
}

/// The thickness of all that stands round a straight wall at its rim, inside and outside the form.
fn stack(basket: &Basket) -> [f64; 2] {
    let rim = basket.body.rim();
    let lashing = basket.body.lashing().unwrap();
    let cane = lashing.weaver.thickness.to_mm() * 2.0;
    let cane = if lashing.thickness().to_mm() > lashing.weaver.thickness.to_mm() { cane } else { cane / 2.0 };
    let standing = rim.radius().to_mm() - basket.body.profile().at(rim.along).radius.to_mm();
    let inside = rim.inner.stock.thickness.to_mm() + cane - standing;
    let outside =
        standing + basket.body.uprights().thickness.to_mm() + rim.outer.stock.thickness.to_mm() + cane;
    [inside, outside]
}

#[test]
fn straight_walls_have_half_the_difference_less_both_rims() {
    let (inner, outer) = (straight(100.0, 80.0), straight(140.0, 120.0));
    let nest = Nest::of(&inner, &outer);
    let ([_, outside], [inside, _]) = (stack(&inner), stack(&outer));
    assert!((nest.room.to_mm() - (20.0 - outside - inside)).abs() < 1e-9, "{nest:?}");
    assert!(nest.fits(nest.room) && !nest.fits(nest.room + Length::mm(0.01)));
    // Both rims stand on the last row; the inner basket stands on its disc.
    let tops = outer.body.rim().along - inner.body.rim().along - inner.body.base().thickness;
    assert!((nest.below - tops).abs() < Length::mm(1e-6), "{nest:?} {tops:?}");
}

#[test]
fn a_taller_basket_meets_no_rim_with_its_own_below_it() {
    let low = Nest::of(&straight(100.0, 200.0), &straight(140.0, 60.0));
    assert!(low.below < Length::ZERO, "{low:?}");
    // Its rim stays above the outer one, so only its wall passes: more room than with rim in rim.
    let deep = Nest::of(&straight(100.0, 60.0), &straight(140.0, 200.0));
    assert!(low.room > deep.room, "{low:?} {deep:?}");
}

/// Places of a level.
fn level(form: &Form, radius: f64) -> Vec<[f64; 2]> {
    let out = radius - form.outline.girth() / TAU;
    (0..1440)
        .map(|step| {
            let at = form.outline.at(f64::from(step) / 1440.0);
            [at.point[0] + at.outward[0] * out, at.point[1] + at.outward[1] * out]
        })
        .collect()
}

#[test]
fn ovals_are_as_near_as_their_places() {
    let oval = |length: f64, width: f64, height: f64| {
        basket(&format!(
            "shape = \"oval\", length = \"{length} mm\", width = \"{width} mm\", rim = \"{length} mm\", \
             height = \"{height} mm\", side = \"straight\""
        ))
    };
    for (small, large) in [((200.0, 130.0), (260.0, 180.0)), ((200.0, 150.0), (300.0, 190.0))] {
        let (inner, outer) = (oval(small.0, small.1, 70.0), oval(large.0, large.1, 120.0));
        let nest = Nest::of(&inner, &outer);
        let ([_, outside], [inside, _]) = (stack(&inner), stack(&outer));
        let at_rim = |basket: &Basket| basket.body.profile().at(basket.body.rim().along).radius.to_mm();
        let one = level(&inner.body.form, at_rim(&inner) + outside);
        let other = level(&outer.body.form, at_rim(&outer) - inside);
        let nearest = one
            .iter()
            .flat_map(|a| other.iter().map(|b| (a[0] - b[0]).hypot(a[1] - b[1])))
            .fold(f64::INFINITY, f64::min);
        assert!((nest.room.to_mm() - nearest).abs() < 0.05, "{nest:?}, place by place {nearest}");
    }
}

/// A basket in one that widens less along its sides than at its ends: nearest at the sides.
#[test]
fn sides_that_run_otherwise_than_the_ends_are_as_near_as_their_places() {
    let oval = |size: [f64; 2], more: &str, height: f64| {
        let [length, width] = size;
        basket(&format!(
            "shape = \"oval\", length = \"{length} mm\", width = \"{width} mm\", height = \"{height} mm\", {more}"
        ))
    };
    let widths = "rim = \"300 mm\", widths = [[\"60 mm\", \"185 mm\"], [\"120 mm\", \"190 mm\"]]";
    for more in [widths, "rim = \"300 mm\", levels = \"scaled\""] {
        let inner = oval([200.0, 130.0], "rim = \"210 mm\", levels = \"scaled\"", 70.0);
        let outer = oval([260.0, 180.0], more, 120.0);
        let nest = Nest::of(&inner, &outer);
        let rim = &inner.body.rim();
        let lashing = inner.body.lashing().unwrap().thickness();
        let outside = inner.body.rim_level(rim.outer_radius(inner.body.uprights()) + lashing);
        let lift = inner.body.base().thickness;
        let height = inner.body.profile().at(rim.along).height + lift;
        let along = outer.body.profile().along_at_height(height);
        let places: Vec<[f64; 2]> = (0..720).map(|step| outside.place(f64::from(step) / 720.0)).collect();
        let turns = || (0..2880).map(|step| f64::from(step) / 2880.0);
        let wall = turns().map(|turn| outer.body.form.at(along, turn, Length::ZERO).point);
        // The wall widens upward, and above it the inner hoop stands in.
        let (hoops, cane) = (outer.body.rim(), outer.body.lashing().unwrap().thickness());
        let hoop = outer.body.rim_level(hoops.inner_radius() - cane);
        let wall = wall.map(|[x, y, _]| [x.to_mm(), y.to_mm()]).chain(turns().map(|turn| hoop.place(turn)));
        let wall: Vec<[f64; 2]> = wall.collect();
        let nearest = places
            .iter()
            .flat_map(|a| wall.iter().map(|b| (a[0] - b[0]).hypot(a[1] - b[1])))
            .fold(f64::INFINITY, f64::min);
        assert!((nest.room.to_mm() - nearest).abs() < 0.1, "{nest:?}, place by place {nearest}");
    }
}

#[test]
fn another_size_keeps_proportion_and_takes_stock_that_is_sold() {
    let text = include_str!("../../../patterns/ferry-egg-basket.toml");
    let catalogue = Catalogue::built_in();
    let pattern = read(text, catalogue).unwrap();
    let own = across(&pattern.mould);
    assert!(changes(&pattern, own, catalogue).is_empty());
    let double = changes(&pattern, own * 2.0, catalogue);
    let value = |key: &str| {
        let change = double.iter().find(|change| change.key == key);
        change.unwrap_or_else(|| panic!("{key} is not among {double:?}")).value.clone()
    };
    assert_eq!(value("base.diameter").unwrap(), "\"7 in\"");
    assert_eq!(value("mould.girths").unwrap().split("], [").next().unwrap(), "[[\"0 in\", \"22 1/2 in\"");
    // 3/16 in doubled is 3/8 in, which is sold as flat oval reed.
    assert_eq!(value("staves.stock").unwrap(), "\"flat oval reed 3/8 in\"");
    assert_eq!(value("rim.lap"), None);
    for change in &double {
        if let (true, Some(name)) = (change.key.ends_with("weaver"), &change.value) {
            assert!(catalogue.material(name.trim_matches('"')).is_some(), "{name} is not sold");
        }
    }
}
