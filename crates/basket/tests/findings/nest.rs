//! One basket in another.

use basket::findings::Grade::{Care, Stop};
use basket::findings::in_a_nest;
use basket::sizes::Nest;
use basket::{Length, Piece};

use crate::draft::pattern;
use crate::sides::basket;

/// Straight walls of 100 and of so many millimetres leave half the difference less what stands on both rims; what
/// that is, the nest's own tests measure.
#[test]
fn nest_clearance() {
    let straight = |across: u32| {
        let mould = format!(
            r#"{{ base = "{across} mm", rim = "{across} mm", height = "80 mm", side = "straight" }}"#
        );
        basket(&pattern(&[("mould", &mould)])).basket
    };
    let wanted = Length::mm(3.0);
    let inner = straight(100);
    let found = |across: u32, serves: Option<Length>| {
        let nest = Nest::of(&inner, &straight(across));
        (nest, in_a_nest(&nest, ["small", "large"], wanted, serves))
    };
    let (nest, finding) = found(220, None);
    let spare = nest.room - wanted;
    assert!(spare > Length::ZERO && finding.is_none(), "{nest:?}");
    // As much less across as leaves a millimetre less than is wanted, and then as much as leaves nothing.
    let tight = 220.0 - 2.0 * (spare.to_mm() + 1.0);
    let (nest, finding) = found(tight.round() as u32, Some(Length::mm(220.0)));
    let finding = finding.expect("too little room");
    assert_eq!((finding.code, finding.grade), ("nest-clearance", Care), "{nest:?}");
    assert_eq!(finding.measured, nest.room.into());
    assert_eq!(finding.limit, wanted.into());
    assert_eq!(finding.place.piece, Piece::Whole);
    let (nest, finding) = found(100, None);
    assert!(nest.room < Length::ZERO);
    assert_eq!(finding.expect("no room").grade, Stop);
}
