//! From a pattern to a basket, in making order.

use crate::basket::Basket;
use crate::cover;
use crate::hand::Hand;
use crate::making::Making;
use crate::measure::Length;
use crate::parts::base::Base;
use crate::parts::construction::Construction;
use crate::parts::edge::Edge;
use crate::parts::fittings::{Ears, FixedHandle, Handle, Lashed, Pins, Wall};
use crate::parts::form::Form;
use crate::parts::lashing::{Filler, Lashing};
use crate::parts::rim::{HoopStocks, Rim, Taken};
use crate::parts::seat::Seat;
use crate::parts::staves::{Needs, Staves};
use crate::parts::vessel::Vessel;
use crate::parts::weave::layout::{Laid, behind, lay_out};
use crate::parts::weave::{self, Running, Weave};
use crate::pattern::{CoursePattern, Pattern};
use crate::stock::{Catalogue, Kind, Material};

/// Computes the whole basket: form, base, staves, weaving, rim, fittings.
///
/// Total: every pattern gives a basket. What cannot be woven is said by
/// [`check`](crate::findings::check).
pub fn assemble(pattern: &Pattern, catalogue: &Catalogue, hand: &Hand) -> Basket {
    let own_catalogue;
    let catalogue = if pattern.materials.is_empty() {
        catalogue
    } else {
        own_catalogue = catalogue.with(&pattern.materials);
        &own_catalogue
    };
    let making = &mut Making::new(catalogue, hand);
    let form = Form::on_mould(&pattern.mould);
    let stave_thickness = pattern.staves.stock.as_ref().map(|stock| stock.thickness);
    let base = Base::of(&pattern.base, stave_thickness, &form, making);

    let courses: Vec<CoursePattern> = if pattern.weave.courses.is_empty() {
        weave::defaults::courses(&form, pattern, making)
    } else {
        pattern.woven_courses()
    };
    let courses = courses.as_slice();
    let laid = lay_out(courses, &form, hand);
    let top = laid.last().map_or(Length::ZERO, Laid::to);
    let stocks = HoopStocks::of(&pattern.rim, making);
    let offered = stave_stocks(catalogue);
    let needs = Needs {
        form: &form,
        stocks: &offered,
        wall: top,
        rim: stocks.outer.width,
        weaver: thickest(courses),
        row: courses.last().map_or(Length::ZERO, |course| course.weaver.width),
        behind: &behind(&laid),
        ears: pattern.ears.is_some(),
        running: &|count| Running::of(courses, count),
    };
    let staves = Staves::solve(&pattern.staves, &base, &needs, making);
    let weave = Weave::of(&laid, pattern, (&form, &staves.uprights), making);

    let uprights = &staves.uprights;
    let height = stocks.outer.width;
    let seat = Seat::on(&form, top, height, uprights.standing.at(top));
    let parts = &staves.length_parts;
    let wall = Wall {
        form: &form,
        seat: &seat,
        height,
        uprights,
        rows: &weave.each_row,
        mould: form.arc(),
        foot: parts.groove + parts.turn,
        wood: &base.wood,
    };
    let ears = pattern.ears.as_ref().map(|ears| Ears::of(ears, &wall, making));
    let fixed = pattern.fixed_handle().map(|handle| FixedHandle::of(handle, &wall, making));
    let in_rim = fixed.as_ref().map(|fixed| &fixed.ends).or(ears.as_ref());
    let is_hinged = pattern.rim.hinged || pattern.is_hinged_at_sides();
    let taken = in_rim.map_or(if is_hinged { Taken::Hinge } else { Taken::Free }, Taken::Ears);
    let rim = Rim::of(&pattern.rim, stocks, (seat, uprights, taken), making);
    let bound = pattern.lashing.as_ref();
    let filler = bound.and_then(|_| Filler::of(&pattern.filler, (&rim, uprights, in_rim), making));
    let finest = finest(courses).unwrap_or(&rim.outer.stock);
    let lashing = bound.map(|bound| Lashing::of(bound, (&rim, uprights, filler.as_ref()), finest, making));
    let pins = Pins::of(&pattern.pins, (&rim, uprights, in_rim, lashing.is_some()), making);
    let on_ears = pattern.handle.as_ref().zip(ears.as_ref()).filter(|_| fixed.is_none());
    let on_ears = on_ears.map(|(handle, ears)| {
        let filler = filler.as_ref();
        let lashing = lashing.as_ref();
        let lashed = Lashed { form: &form, uprights, weave: &weave, rim: &rim, filler, lashing, ears };
        Handle::on_ears(handle, &lashed, making)
    });
    let handle = fixed.map(|fixed| Handle::Fixed(Box::new(fixed))).or(on_ears);

    let body = Vessel {
        form,
        construction: Construction::Moulded { base, staves },
        weave,
        edge: Edge::Rim { rim, filler, lashing, pins },
    };
    let lid = pattern.lid.as_ref().map(|lid| cover::lid((pattern, lid), &body, assemble, making));

    Basket {
        title: pattern.title.clone(),
        units: pattern.units,
        language: pattern.language,
        body,
        lid,
        ears,
        handle,
        finish: pattern.finish,
        finish_on: pattern.finish_on.clone(),
        signature: pattern.signature.clone(),
        ready: pattern.ready.clone(),
        notes: pattern.notes.clone(),
        hand: hand.clone(),
        choices: making.take_choices(),
    }
}

/// The stock that staves may be cut from when the pattern leaves it open.
fn stave_stocks(catalogue: &Catalogue) -> Vec<Material> {
    let fit = |material: &&Material| {
        matches!(material.kind, Kind::FlatOvalReed | Kind::FlatReed | Kind::BinderCane | Kind::Splint)
            && STAVE_WIDTHS.contains(&material.width.to_mm())
    };
    catalogue.materials.iter().filter(fit).cloned().collect()
}

/// Widths of staves in millimetres that are looked at (common practice for mould baskets).
const STAVE_WIDTHS: std::ops::RangeInclusive<f64> = 3.5..=16.0;

/// Thickness of the thickest weaver: the least gap through which the weaving can turn.
fn thickest(courses: &[CoursePattern]) -> Length {
    weavers(courses).map(|weaver| weaver.thickness).fold(Length::ZERO, Length::max)
}

/// The narrowest weaver; it also lashes the rim unless the pattern says otherwise.
fn finest(courses: &[CoursePattern]) -> Option<&Material> {
    weavers(courses).min_by(|a, b| a.width.to_mm().total_cmp(&b.width.to_mm()))
}

fn weavers(courses: &[CoursePattern]) -> impl Iterator<Item = &Material> {
    courses.iter().flat_map(CoursePattern::materials)
}
