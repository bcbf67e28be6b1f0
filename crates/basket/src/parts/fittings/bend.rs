//! The curve to which a bail is bent: as the pattern wants it, and what gives way where it cannot be.

use super::Bail;
use crate::making::Making;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::keys;
use crate::pattern::{BailCurve, HandlePattern};

/// Corner radius of a three-centred bail as a share of its rise (an even curve to the eye).
const CORNER: f64 = 0.7;

/// The bail that a pattern gives on this half span. What cannot be bent as written (a semicircle of
/// another rise, corners larger than the rise) gives way.
pub(crate) fn bend(pattern: &HandlePattern, half_span: Length) -> Bail {
    let curve = pattern.curve.unwrap_or_else(|| usual_curve(pattern).0);
    let rise = rise(pattern, curve, half_span);
    let corner = pattern.corner.unwrap_or(rise * CORNER);
    Bail::new(curve, half_span, rise, corner).unwrap_or(Bail::HalfEllipse { half_span, rise })
}

/// Tells what of a bent bail the pattern left open, and what of it gave way.
pub(super) fn tell(pattern: &HandlePattern, bail: &Bail, making: &mut Making<'_>) {
    let (usual, reason) = usual_curve(pattern);
    if pattern.curve.is_none() {
        making.chose(keys::handle::CURVE.path, curve_name(usual), Message::new(reason));
    }
    let half_span = bail.half_span();
    let mut tell = |key, value: Value, id| {
        making.chose(key, value, Message::new(id).with("half_span", half_span));
    };
    let wanted = pattern.curve.unwrap_or(usual);
    if wanted == BailCurve::Semicircle {
        match pattern.rise {
            None => tell(keys::handle::RISE.path, half_span.into(), "choice-handle-rise-semicircle"),
            Some(rise) if (rise - half_span).abs() > Length::mm(0.5) => {
                tell(keys::handle::RISE.path, half_span.into(), "choice-handle-rise-not-semicircle");
            }
            Some(_) => {}
        }
        return;
    }
    if pattern.rise.is_none() {
        tell(keys::handle::RISE.path, rise(pattern, wanted, half_span).into(), "choice-handle-rise");
    }
    if wanted != bail.curve() {
        tell(keys::handle::CURVE.path, curve_name(bail.curve()).into(), "choice-handle-not-three-centred");
    } else if let (None, Some(corner)) = (pattern.corner, bail.corner()) {
        tell(keys::handle::CORNER.path, corner.into(), "choice-handle-corner");
    }
}

fn rise(pattern: &HandlePattern, curve: BailCurve, half_span: Length) -> Length {
    pattern.rise.unwrap_or(match curve {
        BailCurve::Semicircle => half_span,
        BailCurve::ThreeCentred => half_span * 0.75,
        BailCurve::HalfEllipse => half_span * 1.25,
    })
}

/// The curve where the pattern names none, and why.
fn usual_curve(pattern: &HandlePattern) -> (BailCurve, &'static str) {
    match (pattern.corner, pattern.rise) {
        (Some(_), _) => (BailCurve::ThreeCentred, "choice-handle-curve-corner"),
        (None, Some(_)) => (BailCurve::HalfEllipse, "choice-handle-curve-rise"),
        (None, None) => (BailCurve::Semicircle, "choice-handle-curve"),
    }
}

fn curve_name(curve: BailCurve) -> &'static str {
    match curve {
        BailCurve::Semicircle => "semicircle",
        BailCurve::ThreeCentred => "three-centred",
        BailCurve::HalfEllipse => "half-ellipse",
    }
}
