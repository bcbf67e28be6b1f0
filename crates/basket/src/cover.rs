//! The lid of a basket: a pattern of its own that follows from the basket's, worked out like any other.

use std::f64::consts::TAU;

use crate::basket::Basket;
use crate::form::Outline as _;
use crate::hand::Hand;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::parts::lid::{self, Ledge, Lid};
use crate::parts::vessel::Vessel;
use crate::pattern::{
    BasePattern, CoursePattern, HoopWay, LidPattern, MouldPattern, Pattern, RimPattern, StavesPattern, Until,
    WeaveKind, WeavePattern, keys,
};
use crate::stock::{Catalogue, Material};

/// Height of a lid's mould (common practice).
const HEIGHT: Length = Length::inches(0.75);
/// Room between lid and rim (common practice: thick cane and a damp day take 1/32 in of it).
const CLEARANCE: Length = Length::inches(0.0625);
/// How much of the way from the rim to the middle of a round lid is woven, and how much of that to the centre of
/// the tightest end of another (chosen here: further in, staves crowd, and at the ends they fan).
const WOVEN: [f64; 2] = [0.4, 0.2];
/// The most of it that may be: beyond, the plaque would come to a point.
const MOST_WOVEN: f64 = 0.8;
/// How often the mould is drawn until the rim that grows on it is as wide as it should be.
const ROUNDS: u32 = 6;
/// How near to that is near enough, and how much a maker's mark is.
const NEAR: Length = Length::mm(0.01);
const MARK: Length = Length::inches(1.0 / 64.0);
/// Where hoops are bent in their place they need the mould behind them.
const BEHIND_HOOPS: Length = Length::inches(0.5);

/// How a pattern is worked out.
type Assemble = fn(&Pattern, &Catalogue, &Hand) -> Basket;

/// The lid that a pattern asks for, for a basket that is woven.
pub(crate) fn lid(
    (pattern, wanted): (&Pattern, &LidPattern),
    body: &Vessel,
    assemble: Assemble,
    making: &mut Making<'_>,
) -> Lid {
    let height =
        making.or(wanted.height, keys::lid::HEIGHT.path, HEIGHT, |_| Message::new("choice-lid-height"));
    let clearance = making
        .or(wanted.clearance, keys::lid::CLEARANCE.path, CLEARANCE, |_| Message::new("choice-lid-clearance"));
    let mouth = lid::mouth(body);
    let foot = Length::mm(body.form.outline.girth() / TAU);
    let tightest = |radius: Length| Length::mm(body.form.outline.tightest()) + (radius - foot);
    let from_length = |length: Length| foot + (length - body.form.across_of_girth(foot * TAU).length) / 2.0;
    let [round, other] = WOVEN;
    let share = if body.form.outline.is_round() { round } else { other };
    let plaque = |rim: Length| {
        let most = rim - tightest(rim).max(Length::ZERO) * MOST_WOVEN;
        let usual = rim - tightest(rim).max(Length::ZERO) * share;
        wanted.plaque.map_or(usual, from_length).max(most).min(rim)
    };
    let woven = |rim: Length| {
        let mould = lid::mould(&pattern.mould, body, [plaque(rim), rim], height);
        let cover = cover(pattern, wanted, mould.clone());
        (assemble(&cover, making.catalogue, making.hand), mould)
    };
    let rim = wanted.across.map_or_else(|| fitting(mouth - clearance, &woven), from_length);
    let (Basket { body: vessel, .. }, mould) = woven(rim);
    if wanted.across.is_none() {
        let across = body.form.across_of_girth(rim * TAU).length;
        let reason = Message::new("choice-lid-across").with("mouth", body.form.across_of_girth(mouth * TAU));
        making.chose(keys::lid::ACROSS.path, across, reason);
    }
    if wanted.plaque.is_none() {
        let across = body.form.across_of_girth(plaque(rim) * TAU).length;
        making.chose(keys::lid::PLAQUE.path, across, Message::new("choice-lid-plaque"));
    }
    let edge = lid::edge(&vessel);
    let stock = wanted.ledge.clone().unwrap_or_else(|| body.rim().inner.stock.clone());
    let ledge = Ledge::of(body, stock, edge, mouth - edge);
    let high = vessel.profile().at(vessel.rim().along + vessel.rim().height).height + vessel.base().thickness;
    Lid {
        fit: wanted.fit.unwrap_or_default(),
        clearance: mouth - edge,
        wanted: clearance,
        mouth: body.form.across_of_girth(mouth * TAU),
        across: body.form.across_of_girth(edge * TAU),
        rises: high - body.rim().height,
        ledge,
        lift: wanted.lift.unwrap_or_default(),
        mould,
        vessel,
    }
}

/// The mould's rim, as girth over 2π, on which a rim of this girth over 2π grows: drawn, woven and corrected by
/// what it is off, then made as much smaller as a mark.
fn fitting(wanted: Length, woven: &dyn Fn(Length) -> (Basket, MouldPattern)) -> Length {
    let mut rim = wanted;
    for _ in 0..ROUNDS {
        let off = wanted - lid::edge(&woven(rim).0.body);
        rim = (rim + off).max(Length::mm(1.0));
        if off.abs() < NEAR {
            break;
        }
    }
    let marks = (rim / MARK + 1e-6).floor();
    MARK * marks.max(1.0)
}

/// The pattern of a lid over this mould: like the basket's, without what it does not have.
pub(crate) fn cover(pattern: &Pattern, wanted: &LidPattern, mould: MouldPattern) -> Pattern {
    let body = pattern.clone();
    let height = wanted.height.unwrap_or(HEIGHT);
    let stock = wanted.staves.clone().or(body.staves.stock);
    let staves = StavesPattern {
        stock,
        count: wanted.count,
        oval_side: body.staves.oval_side,
        ..StavesPattern::default()
    };
    let woods = body.base.woods.map(|woods| woods.into_iter().take(1).collect());
    let base = BasePattern {
        thickness: body.base.thickness,
        screw_hole: body.base.screw_hole,
        sealed: body.base.sealed,
        woods,
        ..BasePattern::default()
    };
    let weaver = wanted.weaver.clone().or_else(|| finest(&body.weave.courses));
    let weaver = weaver.map(|weaver| plain(weaver, height, body.rim.hoops == Some(HoopWay::Bent)));
    let weave = WeavePattern { courses: weaver.into_iter().collect(), ..body.weave };
    let rim = RimPattern { lap: None, ..body.rim };
    Pattern {
        mould,
        base,
        staves,
        weave,
        rim,
        ears: None,
        handle: None,
        lid: None,
        notes: Vec::new(),
        signature: None,
        ..body
    }
}

/// One course over one, under one, to the top of the mould less what packing takes.
fn plain(weaver: Material, height: Length, is_bent: bool) -> CoursePattern {
    let room = if is_bent { BEHIND_HOOPS.min(height / 2.0) } else { height * weaver.shrink };
    CoursePattern::new(WeaveKind::Plain, weaver, Until::BelowTop(room))
}

fn finest(courses: &[CoursePattern]) -> Option<Material> {
    let weavers = courses.iter().flat_map(CoursePattern::materials);
    weavers.min_by(|a, b| a.width.to_mm().total_cmp(&b.width.to_mm())).cloned()
}

impl Basket {
    /// The lid as a basket of its own, plaque down: for all that is said and drawn of any basket.
    pub fn lid_alone(&self) -> Option<Self> {
        let lid = self.lid.as_ref()?;
        Some(Self {
            body: lid.vessel.clone(),
            lid: None,
            ears: None,
            handle: None,
            signature: None,
            notes: Vec::new(),
            choices: Vec::new(),
            ..self.clone()
        })
    }
}
