//! Is the stock long enough for the piece?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::rim::{hoops, stock_key};
use crate::measure::Length;
use crate::pattern::{HoopWay, keys};
use crate::piece::Piece;
use crate::stock::Material;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let staves = case.basket.body.staves();
    let mut pieces = vec![(&staves.stock, staves.length, Piece::Uprights, keys::staves::STOCK.path)];
    let bought = case.basket.body.rim().hoops == HoopWay::Bought;
    for (hoop, part) in hoops(case).into_iter().filter(|_| !bought) {
        pieces.push((&hoop.stock, hoop.cut, part, stock_key(case, part)));
    }
    pieces
        .into_iter()
        .filter_map(|(stock, length, part, key)| cannot_yield(case, stock, length, part, key))
        .collect()
}

/// A stave or a hoop is one piece: it cannot be joined on the way.
fn cannot_yield(
    case: &Case<'_>,
    stock: &Material,
    length: Length,
    part: Piece,
    key: &str,
) -> Option<Finding> {
    let strand = stock.put_up.strand?;
    length.exceeds(strand).then(|| {
        Finding::new(Grade::Stop, "stock-cannot-yield", part)
            .measured(length, strand)
            .arg("stock", stock)
            .maybe(key, case.stock_like(stock, |other| reaches(other, length)))
    })
}

/// Whether a strand of this material is surely long enough. Where nothing is known, it is not sure.
pub(super) fn reaches(material: &Material, length: Length) -> bool {
    material.put_up.strand.is_some_and(|strand| strand >= length)
}
