//! The basket that is measured: 75 staves and 80 rows, with ears and a handle.

use basket::steps::Stage;
use basket::{Basket, Catalogue, Hand, assemble};
use drawings::solid::{Detail, Solid, solid};

const PATTERN: &str = r#"
title = "Bench"
units = "mm"
[mould]
side = "bowl"
base = "140"
rim = "260"
height = "205"
[staves]
stock = "flat oval reed 3/8 in"
count = 75
[weave]
courses = [{ weave = "plain", weaver = "cane fine", rows = 80 }]
[ears]
[handle]
"#;

pub fn basket() -> Basket {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(PATTERN, catalogue).expect("the pattern can be read");
    let basket = assemble(&pattern, catalogue, &Hand::USUAL);
    assert_eq!((basket.body.uprights().count, basket.body.weave.rows), (75, 80));
    basket
}

pub fn finished(detail: Detail) -> Solid {
    solid(&basket(), Stage::Finished, detail)
}
