//! Do filler and lashing reach, and do they cover?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::stock::reaches;
use super::write;
use crate::lashing::{Filler, Lashing};
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::keys;
use crate::piece::Piece;

/// Least share of the binding that one strand should do: with shorter strands half the rim is
/// joins (common practice: a quarter).
const SHARE_PER_STRAND: f64 = 0.25;
/// Length that holds when it is tucked behind the rim (a maker's lashing tutorial: 2 in; taken as
/// 50 mm so that the metric reading of it passes).
const LEAST_TAIL: Length = Length::mm(50.0);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(filler) = case.basket.body.filler() {
        found.extend(filler_short(case, filler));
        found.extend(filler_too_narrow(case, filler));
    }
    if let Some(lashing) = case.basket.body.lashing() {
        found.extend(lashing_short(case, lashing));
        found.extend(tail_short(case, lashing));
    }
    found
}

fn filler_short(case: &Case<'_>, filler: &Filler) -> Option<Finding> {
    let strand = filler.stock.put_up.strand?;
    let (piece, number) =
        filler.pieces.iter().zip(1_u32..).max_by(|a, b| a.0.length.to_mm().total_cmp(&b.0.length.to_mm()))?;
    piece.length.exceeds(strand).then(|| {
        let place = Place::from(Piece::Filler(number));
        Finding::new(Grade::Stop, "filler-short", place)
            .measured(strand, piece.length)
            .arg("stock", &filler.stock)
            .maybe(
                keys::filler::STOCK.path,
                case.stock_like(&filler.stock, |other| reaches(other, piece.length)),
            )
    })
}

/// The filler lies on the tips of the staves and hides them.
fn filler_too_narrow(case: &Case<'_>, filler: &Filler) -> Option<Finding> {
    let (width, tips) = (filler.stock.width, case.basket.body.uprights().thickness);
    width.falls_short_of(tips).then(|| {
        Finding::new(Grade::Care, "filler-too-narrow", Piece::Fillers)
            .measured(width, tips)
            .arg("stock", &filler.stock)
            .maybe(keys::filler::STOCK.path, case.stock_like(&filler.stock, |other| other.width >= tips))
    })
}

fn lashing_short(case: &Case<'_>, lashing: &Lashing) -> Option<Finding> {
    let usable = lashing.strand - lashing.tail * 2.0;
    let limit = lashing.net * SHARE_PER_STRAND;
    usable.falls_short_of(limit).then(|| {
        let grade = if usable < lashing.round * 2.0 { Grade::Stop } else { Grade::Care };
        let enough = (limit + lashing.tail * 2.0) * 1.05;
        Finding::new(grade, "lashing-short", Piece::Lashing)
            .measured(usable.max(Length::ZERO), limit)
            .arg("weaver", &lashing.weaver)
            .arg("strand", lashing.strand)
            .arg("strands", lashing.strands)
            .maybe(keys::lashing::TAIL.path, shorter_tail(case, lashing))
            .maybe(
                keys::lashing::WEAVER.path,
                case.stock_like(&lashing.weaver, |other| reaches(other, enough)),
            )
    })
}

/// The usual tail, where a longer one eats the strand.
fn shorter_tail(case: &Case<'_>, lashing: &Lashing) -> Option<String> {
    let usable = lashing.strand - LEAST_TAIL * 2.1;
    (usable >= lashing.net * SHARE_PER_STRAND).then(|| write::at_least(LEAST_TAIL, case.units()))
}

fn tail_short(case: &Case<'_>, lashing: &Lashing) -> Option<Finding> {
    let tail = lashing.tail;
    tail.falls_short_of(LEAST_TAIL).then(|| {
        Finding::new(Grade::Care, "lashing-tail-short", Piece::Lashing)
            .measured(tail, LEAST_TAIL)
            .arg("style", Value::Term(crate::term::Term::term(lashing.style)))
            .remedy(keys::lashing::TAIL.path, write::at_least(LEAST_TAIL, case.units()))
    })
}
