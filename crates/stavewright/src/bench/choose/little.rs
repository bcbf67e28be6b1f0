//! A piece of the weaving as a small picture.

use basket::Basket;
use basket::weave::Face;

use crate::bench::api::LittleChart;

/// Rows and staves that a small picture shows.
const ROWS: u32 = 18;
const STAVES: u32 = 18;

/// The middle of these rows (first and last) as it is seen from outside on a basket that stands on its base.
pub(super) fn little_chart(basket: &Basket, (first, last): (u32, u32)) -> LittleChart {
    let weave = &basket.body.weave;
    let middle = u32::midpoint(first, last);
    let low = middle.saturating_sub(ROWS / 2).max(first);
    let high = (low + ROWS - 1).min(last).min(weave.rows);
    let count = basket.body.uprights().count;
    let mut staves: Vec<u32> = (1..=STAVES.min(count)).collect();
    if drawings::numbers_rise_left(basket, Face::Outside) {
        staves.reverse();
    }
    let mut colours: Vec<String> = Vec::new();
    let mut cell = |row: u32, stave: u32| {
        let seen = weave.colour(row, stave, Face::Outside);
        let hex = seen.colour.to_hex();
        let known = colours.iter().position(|known| *known == hex);
        let index = known.unwrap_or_else(|| {
            colours.push(hex);
            colours.len() - 1
        });
        (u16::try_from(index).unwrap_or(u16::MAX), seen.weaver.is_some())
    };
    let rows = (low..=high).rev().map(|row| staves.iter().map(|stave| cell(row, *stave)).collect());
    let rows = rows.collect();
    LittleChart { colours, rows }
}
