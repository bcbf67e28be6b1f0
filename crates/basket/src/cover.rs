//! The lid of a basket: a pattern of its own that follows from the basket's, worked out like any other.

use crate::basket::Basket;
use crate::form::{BOARD, EDGE};
use crate::hand::Hand;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::parts::lid::{self, Lid, Meets};
use crate::parts::vessel::Vessel;
use crate::pattern::{
    BasePattern, CoursePattern, HoopWay, LidFit, LidHinge, LidPattern, LidWay, MouldPattern, Pattern,
    RimPattern, Side, StavesPattern, Until, WeaveKind, WeavePattern, Word as _, keys,
};
use crate::stock::{Catalogue, Material};

/// Height of a lid's mould, and of a cap's, which also covers the rim (common practice).
const HEIGHTS: [Length; 2] = [Length::inches(0.75), Length::inches(1.0)];
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
    let fit = wanted.fit.unwrap_or_default();
    let height = making.or(wanted.height, keys::lid::HEIGHT.path, usual_height(wanted), |_| {
        Message::new("choice-lid-height")
    });
    let clearance = making
        .or(wanted.clearance, keys::lid::CLEARANCE.path, CLEARANCE, |_| Message::new("choice-lid-clearance"));
    let meets = Meets { fit, body, clearance };
    let own = body.rim().radius();
    let level = body.rim_level(own);
    let tightest = |radius: Length| level.tightest() + (radius - own);
    let from_length = |length: Length| own + (length - level.across().length) / 2.0;
    let [round, other] = WOVEN;
    let share = if body.form.outline.is_round() { round } else { other };
    let plaque = |rim: Length| {
        let most = rim - tightest(rim).max(Length::ZERO) * MOST_WOVEN;
        // On a board the level part is woven like the side of a mould, and its edge comes beside it.
        let edge = if wanted.way == Some(LidWay::Flat) { EDGE } else { Length::ZERO };
        let usual = rim - edge - tightest(rim).max(Length::ZERO) * share;
        wanted.plaque.map_or(usual, from_length).max(most).min(rim)
    };
    let side = if wanted.way == Some(LidWay::Flat) { Side::Board } else { Side::Bowl };
    let woven = |rim: Length| {
        let mould = lid::mould(&pattern.mould, body, [plaque(rim), rim], (height, side));
        let cover = cover(pattern, wanted, mould.clone());
        (assemble(&cover, making.catalogue, making.hand), mould)
    };
    let rim = wanted.across.map_or_else(|| fitting(&meets, &woven), from_length);
    if wanted.across.is_none() {
        let across = body.rim_level(rim).across().length;
        making.chose(keys::lid::ACROSS.path, across, meets.reason());
    }
    if wanted.plaque.is_none() {
        let across = body.rim_level(plaque(rim)).across().length;
        making.chose(keys::lid::PLAQUE.path, across, Message::new("choice-lid-plaque"));
    }
    let hinge = (fit == LidFit::Flush).then(|| wanted.hinge.unwrap_or_else(|| choose_hinge(making)));
    let (vessel, mould) = woven(rim);
    let vessel = vessel.body;
    let stock = wanted.ledge.clone().unwrap_or_else(|| choose_held(&meets, &vessel, making));
    meets.lid((vessel, mould), (stock, hinge, wanted.lift.unwrap_or_default()))
}

/// A ledge of few rings; a collar as the inner hoop that it lies in.
fn choose_held(meets: &Meets<'_>, vessel: &Vessel, making: &mut Making<'_>) -> Material {
    let inner = &meets.body.rim().inner.stock;
    if meets.fit != LidFit::DropIn {
        return inner.clone();
    }
    let (edge, catalogue) = (lid::edge(vessel), making.catalogue);
    let room = lid::mouth(meets.body) - edge;
    let stock = lid::ledge_stock(catalogue.of_kind(inner.kind), meets.body, (edge, room)).unwrap_or(inner);
    making.chose(keys::lid::LEDGE.path, stock.name.as_str(), Message::new("choice-lid-ledge"));
    stock.clone()
}

fn usual_height(wanted: &LidPattern) -> Length {
    let [low, cap] = HEIGHTS;
    match (wanted.way, wanted.fit) {
        (Some(LidWay::Flat), _) => BOARD,
        (_, Some(LidFit::Cap)) => cap,
        _ => low,
    }
}

fn choose_hinge(making: &mut Making<'_>) -> LidHinge {
    making.chose(keys::lid::HINGE.path, LidHinge::Side.word(), Message::new("choice-lid-hinge"));
    LidHinge::Side
}

/// The mould's rim, as girth over 2π, on which a lid grows that meets its basket: drawn, woven and corrected by what
/// it is off, then made to the next mark on the side of more room.
fn fitting(meets: &Meets<'_>, woven: &dyn Fn(Length) -> (Basket, MouldPattern)) -> Length {
    let mut rim = meets.body.rim().radius();
    let mut best = (Length::mm(f64::INFINITY), rim);
    for round in 0..ROUNDS {
        let [is, wanted] = meets.measured(&woven(rim).0.body);
        let off = wanted - is;
        if off.abs() < best.0 {
            best = (off.abs(), if off.abs() < MARK { rim + off } else { rim });
        }
        if off.abs() < NEAR {
            break;
        }
        // Counts of staves and rows jump; where they do, shorter steps come nearer.
        rim = (rim + if round < ROUNDS / 2 { off } else { off / 2.0 }).max(Length::mm(1.0));
    }
    let (_, rim) = best;
    let marks = rim / MARK;
    let marks = match meets.fit {
        LidFit::DropIn => (marks + 1e-6).floor(),
        LidFit::Cap => (marks - 1e-6).ceil(),
        LidFit::Flush => marks.round(),
    };
    MARK * marks.max(1.0)
}

/// The pattern of a lid over this mould: like the basket's, without what it does not have.
pub(crate) fn cover(pattern: &Pattern, wanted: &LidPattern, mould: MouldPattern) -> Pattern {
    let body = pattern.clone();
    let height = wanted.height.unwrap_or_else(|| usual_height(wanted));
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
    let rim = RimPattern { lap: None, hinged: pattern.is_hinged_at_sides(), ..body.rim };
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
