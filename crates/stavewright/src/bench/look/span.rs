//! Between which heights a place of the basket lies.

use basket::findings::{Part, Place};
use basket::{Basket, Length};

/// Lowest and highest point of a place above the mould's base, in mm. A place at one height has no
/// extent.
pub(super) fn span(basket: &Basket, place: Place) -> [f64; 2] {
    if let Some(height) = place.height {
        return [height.to_mm(); 2];
    }
    let at = |along: Length| basket.body.form.profile.at(along).height;
    let foot = -basket.body.base().thickness;
    let under_rim = at(basket.body.rim().along);
    let rim_top = at(basket.body.rim().along + basket.body.rim().height);
    let pivots = rim_top + basket.ears.as_ref().map_or(Length::ZERO, |ears| ears.hole_height);
    let [low, high] = match place.part {
        Part::Whole => [foot, rim_top],
        Part::Mould => [Length::ZERO, basket.body.form.height()],
        Part::Base | Part::Groove => [foot, Length::ZERO],
        Part::Staves => [Length::ZERO, rim_top],
        Part::Weave => course(basket, place.number)
            .map_or([Length::ZERO, basket.body.weave.top_height], |course| [at(course.from), at(course.to)]),
        Part::Rim | Part::OuterHoop | Part::InnerHoop | Part::Pins | Part::Filler | Part::Lashing => {
            [under_rim, rim_top]
        }
        Part::Ears => [under_rim, pivots],
        Part::Handle => [pivots, basket.handle.as_ref().map_or(pivots, |handle| pivots + handle.rise)],
    };
    [low.to_mm(), high.to_mm()]
}

fn course(basket: &Basket, number: Option<u32>) -> Option<&basket::weave::Course> {
    basket.body.weave.courses.get(number?.checked_sub(1)? as usize)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_lie_one_above_the_other() {
        let pattern = include_str!("../../../../../patterns/harbour-bread-basket.toml");
        let catalogue = basket::Catalogue::built_in();
        let basket = basket::assemble(&basket::pattern::read(pattern, catalogue).unwrap(), catalogue);
        let of = |part| span(&basket, Place { part, number: None, height: None });
        let order = [Part::Base, Part::Weave, Part::Rim, Part::Handle];
        for pair in order.windows(2) {
            let ([low, high], [next, _]) = (of(pair[0]), of(pair[1]));
            assert!(low < high && high <= next + 0.5, "{pair:?}: {high} {next}");
        }
        let [low, high] = of(Part::Whole);
        assert!(low < of(Part::Mould)[0] && (high - of(Part::Lashing)[1]).abs() < 1e-9);
    }

    #[test]
    fn a_course_lies_within_the_weaving_and_a_height_is_itself() {
        let pattern = include_str!("../../../../../patterns/channel-marker.toml");
        let catalogue = basket::Catalogue::built_in();
        let basket = basket::assemble(&basket::pattern::read(pattern, catalogue).unwrap(), catalogue);
        let place = |number, height| Place { part: Part::Weave, number, height };
        let second = span(&basket, place(Some(2), None));
        let all = span(&basket, place(None, None));
        assert!(all[0] < second[0] && second[0] < second[1] && second[1] <= all[1] + 1e-9, "{second:?}");
        let [low, high] = span(&basket, place(Some(2), Some(Length::mm(40.0))));
        assert!((low - 40.0).abs() < 1e-9 && (high - 40.0).abs() < 1e-9, "{low} {high}");
    }
}
