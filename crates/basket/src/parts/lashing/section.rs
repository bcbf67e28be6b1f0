//! The section of the rim that a wrap goes round: hoops, stave and filler.

use std::f64::consts::PI;

use super::{Filler, Hull};
use crate::measure::Length;
use crate::rim::Rim;
use crate::stock::{Kind, Material};

/// Places as (out from the staves' inner face, up from the hoops' lower edge).
type Outline = Vec<(Length, Length)>;

/// The parts of a rim cut across, each as its outline: places as (out from the staves' inner face,
/// up from the hoops' lower edge).
#[derive(Clone, Debug, PartialEq)]
pub struct RimSection {
    /// The outer hoop.
    pub outer: Vec<(Length, Length)>,
    /// The stave between the hoops.
    pub stave: Vec<(Length, Length)>,
    /// The inner hoop.
    pub inner: Vec<(Length, Length)>,
    /// The filler on the tip of the stave, where there is one.
    pub filler: Option<Vec<(Length, Length)>>,
}

impl RimSection {
    /// The section of a rim with what lies on it. A rounded face is drawn by so many straight sides that
    /// end on it, which makes it at most `(π/steps)²/24` of its length too short (a circle and its
    /// polygon).
    pub fn of(rim: &Rim, filler: Option<&Filler>, steps: u32) -> Self {
        let (outer, inner) = (&rim.outer.stock, &rim.inner.stock);
        let stave = rim.stack - outer.thickness - inner.thickness;
        let on_tip = |filler: &Filler| {
            let face = face(&filler.stock, steps).into_iter();
            face.map(|(across, high)| (stave / 2.0 + across, rim.height + high)).collect()
        };
        Self {
            outer: hoop(outer, steps).map(|(out, up)| (stave + out, up)).collect(),
            stave: [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)]
                .map(|(out, up)| (stave * out, rim.height * up))
                .to_vec(),
            inner: hoop(inner, steps).map(|(out, up)| (-out, up)).collect(),
            filler: filler.map(on_tip),
        }
    }

    /// The way that a wrap takes round it.
    pub fn hull(&self) -> Hull {
        let parts = [&self.outer, &self.stave, &self.inner].into_iter().chain(&self.filler);
        Hull::of(parts.flatten().copied())
    }
}

/// A hoop that stands on its edge, as (from its flat face, up).
fn hoop(stock: &Material, steps: u32) -> impl Iterator<Item = (Length, Length)> + use<> {
    let half = stock.width / 2.0;
    face(stock, steps).into_iter().map(move |(across, high)| (high, half + across))
}

/// The section of a stock, as (from its middle, above its flat face). Half round stock is half an
/// ellipse; flat oval stock and cane are half as thick at their edges, with a parabola above, which
/// fills five sixths of its box; round stock is an ellipse; what is left is flat.
fn face(stock: &Material, steps: u32) -> Outline {
    let (half, thick) = (stock.width / 2.0, stock.thickness);
    let shares = || (0..=steps.max(1)).map(move |step| f64::from(step) / f64::from(steps.max(1)));
    let foot = [(-half, Length::ZERO), (half, Length::ZERO)].into_iter();
    match stock.kind {
        Kind::HalfRoundReed => {
            shares().map(|share| (half * libm::cos(PI * share), thick * libm::sin(PI * share))).collect()
        }
        Kind::FlatOvalReed | Kind::ChairCane | Kind::BinderCane => {
            let arch = shares().map(|share| 1.0 - 2.0 * share);
            foot.chain(arch.map(|across| (half * across, thick * (1.0 - across * across / 2.0)))).collect()
        }
        Kind::RoundReed | Kind::Pin | Kind::Rivet | Kind::Burr => {
            let round = (0..2 * steps.max(1)).map(|step| PI * f64::from(step) / f64::from(steps.max(1)));
            round.map(|way| (half * libm::cos(way), thick / 2.0 * (1.0 + libm::sin(way)))).collect()
        }
        Kind::FlatReed | Kind::Splint => foot.chain([(half, thick), (-half, thick)]).collect(),
    }
}
