//! Materials and staves to try rim and fittings on.
#![allow(dead_code, missing_docs)]

use basket::base::Base;
use basket::fittings::Ears;
use basket::form::Profile;
use basket::measure::Length;
use basket::pattern::{OvalSide, RimPattern};
use basket::rim::{HoopStocks, Rim, Seat};
use basket::staves::{Bend, GapAt, LengthParts, Staves, Taper};
use basket::stock::{Catalogue, Kind, Material};
use basket::uprights::Uprights;
use basket::{Hand, Making};

#[track_caller]
pub(crate) fn close(found: f64, wanted: f64, tolerance: f64) {
    assert!((found - wanted).abs() <= tolerance, "found {found}, wanted {wanted} within {tolerance}");
}

pub(crate) fn material(name: &str, kind: Kind, width_mm: f64, thickness_mm: f64) -> Material {
    Material::bare(name, kind, Length::mm(width_mm), Length::mm(thickness_mm))
}

fn bend(thickness_mm: f64) -> Bend {
    let profile = Profile::cone(Length::mm(80.0), Length::mm(125.0), Length::mm(110.0));
    let base = Base {
        diameter: Length::mm(150.0),
        thickness: Length::mm(10.0),
        groove_depth: Length::mm(6.0),
        groove_width: Length::mm(2.5),
        wood: Catalogue::built_in().woods[0].clone(),
        screw_hole: Length::mm(5.0),
        plug_diameter: Length::mm(10.0),
        movement: Length::mm(1.0),
    };
    Bend::of(&profile, &base, &material("stave", Kind::FlatReed, 6.0, thickness_mm))
}

pub(crate) fn staves(count: u32, thickness_mm: f64) -> Staves {
    let mm = Length::mm;
    let gap = GapAt { along: mm(0.0), height: mm(0.0), width: mm(6.0), ideal_width: mm(6.0), gap: mm(1.5) };
    Staves {
        uprights: Uprights {
            count,
            thickness: mm(thickness_mm),
            width: mm(6.0),
            foot: mm(4.0),
            foot_along: mm(-9.0),
            full_from: mm(50.0),
        },
        spares: 3,
        stock: material("stave", Kind::FlatReed, 6.0, thickness_mm),
        oval_side: OvalSide::Out,
        taper: Taper { from: mm(50.0), foot: mm(4.0), worst: mm(0.0), worst_ideal: mm(0.0) },
        length: mm(200.0),
        length_parts: LengthParts {
            groove: mm(6.0),
            turn: mm(3.0),
            wall: mm(110.0),
            rim: mm(10.0),
            trim: mm(50.0),
        },
        gaps: vec![gap],
        gap_rim: mm(1.5),
        narrowest: gap,
        widest: gap,
        gap_wanted: mm(1.5),
        foot_touch: mm(5.0),
        bend: bend(thickness_mm),
        candidates: Vec::new(),
    }
}

/// The seat of a round rim 100 mm up the wall.
pub(crate) fn seat(radius_mm: f64) -> Seat {
    let radius = Length::mm(radius_mm);
    Seat { along: Length::mm(100.0), girth: radius * std::f64::consts::TAU, tightest: radius }
}

/// A rim of half round hoops 10 by 5 mm with this lap.
pub(crate) fn rim(count: u32, radius_mm: f64, lap_mm: Option<f64>, ears: Option<&Ears>) -> Rim {
    let stock = material("half round", Kind::HalfRoundReed, 10.0, 5.0);
    let pattern = RimPattern { lap: lap_mm.map(Length::mm), ..RimPattern::default() };
    let stocks = HoopStocks { outer: stock.clone(), inner: stock };
    let around = (seat(radius_mm), &staves(count, 1.5).uprights, ears);
    Rim::of(&pattern, stocks, around, &mut Making::new(&Catalogue::default(), &Hand::USUAL))
}
