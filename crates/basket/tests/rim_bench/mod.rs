//! Materials and uprights to try rim and fittings on.
#![allow(dead_code, missing_docs)]

use basket::choice::Choice;
use basket::fittings::{Ears, Wall};
use basket::form::{Across, Form};
use basket::measure::Length;
use basket::pattern::{EarsPattern, Levels, MouldForm, MouldPattern, MouldPieces, Outline, RimPattern, Side};
use basket::rim::{HoopStocks, Rim, Taken};
use basket::seat::Seat;
use basket::stock::{Catalogue, Kind, Material};
use basket::uprights::{Standing, Uprights};
use basket::weave::Row;
use basket::{Hand, Making};

#[track_caller]
pub(crate) fn close(found: f64, wanted: f64, tolerance: f64) {
    assert!((found - wanted).abs() <= tolerance, "found {found}, wanted {wanted} within {tolerance}");
}

pub(crate) fn material(name: &str, kind: Kind, width_mm: f64, thickness_mm: f64) -> Material {
    Material::bare(name, kind, Length::mm(width_mm), Length::mm(thickness_mm))
}

/// Uprights 6 mm wide that lie on the form.
pub(crate) fn uprights(count: u32, thickness_mm: f64) -> Uprights {
    let mm = Length::mm;
    Uprights {
        wider: None,
        paths: Vec::new(),
        paths_to: Length::ZERO,
        kind: Kind::FlatReed,
        count,
        thickness: mm(thickness_mm),
        width: mm(6.0),
        foot: mm(4.0),
        foot_along: mm(-9.0),
        full_from: mm(50.0),
        standing: Standing::default(),
    }
}

/// The seat of a round rim 100 mm up the wall.
pub(crate) fn seat(radius_mm: f64) -> Seat {
    let radius = Length::mm(radius_mm);
    let (girth, across) = (radius * std::f64::consts::TAU, Across::round(radius * 2.0));
    Seat { along: Length::mm(100.0), height: Length::mm(100.0), girth, tightest: radius, across }
}

/// A straight round wall of this radius.
pub(crate) fn round(radius_mm: f64) -> Form {
    let across = Length::mm(2.0 * radius_mm);
    let height = Length::mm(120.0);
    let form = MouldForm::Drawn { base: across, rim: across, height, side: Side::Straight };
    Form::on_mould(&MouldPattern {
        outline: Outline::Round,
        form,
        levels: Levels::Even,
        pieces: MouldPieces::One,
    })
}

/// A rim of half round hoops 10 by 5 mm with this lap.
pub(crate) fn rim(count: u32, radius_mm: f64, lap_mm: Option<f64>, ears: Option<&Ears>) -> Rim {
    let stock = material("half round", Kind::HalfRoundReed, 10.0, 5.0);
    let pattern = RimPattern { lap: lap_mm.map(Length::mm), ..RimPattern::default() };
    let stocks = HoopStocks { outer: stock.clone(), inner: stock };
    let around = (seat(radius_mm), &uprights(count, 1.5), ears.map_or(Taken::Free, Taken::Ears));
    Rim::of(&pattern, stocks, around, &mut Making::new(&Catalogue::default(), &Hand::USUAL))
}

/// What is made with the usual hand from a catalogue, and the choices on the way.
pub(crate) fn made<T>(catalogue: &Catalogue, make: impl FnOnce(&mut Making<'_>) -> T) -> (T, Vec<Choice>) {
    let mut making = Making::new(catalogue, &Hand::USUAL);
    let made = make(&mut making);
    (made, making.take_choices())
}

/// Ears on a rim 10 mm high over a wall of rows 2.5 mm high on a mould of 100 mm, with the choices.
pub(crate) fn ears_and_choices(pattern: &EarsPattern, count: u32, radius_mm: f64) -> (Ears, Vec<Choice>) {
    let row = |number: u32| Row {
        number,
        course: 1,
        begin: 1,
        along: Length::mm(2.5 * f64::from(number) - 1.25),
        height: Length::mm(2.5 * f64::from(number) - 1.25),
        pitch: Length::mm(2.5),
        length: Length::mm(1000.0),
    };
    let rows: Vec<Row> = (1..=40).map(row).collect();
    let wood = Catalogue::built_in().wood("cherry").expect("a wood of the catalogue");
    let form = round(radius_mm);
    let wall = Wall {
        form: &form,
        seat: &seat(radius_mm),
        height: Length::mm(10.0),
        uprights: &uprights(count, 1.5),
        rows: &rows,
        mould: Length::mm(100.0),
        foot: Length::mm(9.0),
        wood,
    };
    made(&Catalogue::default(), |making| Ears::of(pattern, &wall, making))
}

/// The same ears without the choices.
pub(crate) fn ears(pattern: &EarsPattern, count: u32, radius_mm: f64) -> Ears {
    ears_and_choices(pattern, count, radius_mm).0
}
