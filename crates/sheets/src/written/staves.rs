//! The staves.

use basket::staves;
use basket::uprights::{self, Uprights};
use serde::Serialize;
use words::Words;

use super::measure::Mm;
use super::vocabulary::{OvalSide, Spacing};

/// The staves.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Staves {
    /// How many stand in the basket.
    count: u32,
    /// How many more to shape.
    spares: u32,
    /// The stock they are cut from.
    stock: String,
    /// Full width.
    width_mm: Mm,
    /// Thickness.
    thickness_mm: Mm,
    /// Where they are spaced evenly.
    spacing: Spacing,
    /// The groups of those that are cut alike; one where all are.
    groups: Vec<Group>,
    /// The way of each up the wall, stave 1 first; none where all keep to the places of their feet.
    paths: Vec<Path>,
    /// Which face looks out.
    oval_side: OvalSide,
    /// The straight taper toward the foot.
    taper: Taper,
    /// Length to cut of the longest.
    length_mm: Mm,
    /// What the length is made of.
    length_parts: LengthParts,
    /// Width and gap at even steps from the base to the rim.
    gaps: Vec<GapAt>,
    /// Gap at the rim, on the mould's own girth, as a maker tapes it.
    gap_rim_mm: Mm,
    /// Gap at the rim on the wall itself, which stands off the mould.
    gap_rim_wall_mm: Mm,
    /// The narrowest gap on the way up.
    narrowest: GapAt,
    /// The widest gap on the way up.
    widest: GapAt,
    /// The gap that was aimed at.
    gap_wanted_mm: Mm,
    /// Width at which the feet of neighbours touch at the bottom of the groove: `2 r tan(π/n)`.
    foot_touch_mm: Mm,
    /// How each bends from the groove up onto the wall.
    bend: Bend,
    /// How far their inner faces stand off the mould at places up the wall; it changes evenly between them.
    standing: Vec<Standing>,
    /// The best counts and stocks, best first; the first is used. A count that the pattern fixes stands
    /// before those that would be better.
    pub(crate) candidates: Vec<Candidate>,
}

/// Staves that are cut alike.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Group {
    /// What it is called where there are several: a letter.
    name: String,
    /// Their numbers, rising.
    staves: Vec<u32>,
    /// How many more of them to shape.
    spares: u32,
    /// Length to cut.
    length_mm: Mm,
    /// Full width.
    width_mm: Mm,
}

/// The way of a stave up the wall.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Path {
    /// Where its foot stands, as a share of the way round the foot.
    foot_turn: f64,
    /// Above which place of the foot it stands at the middle of the rim, as the same share.
    rim_turn: f64,
    /// How far it leans from square to the foot; positive toward higher numbers.
    lean_deg: f64,
    /// How much its edges would be strained if it were held straight up.
    strain: f64,
    /// How much longer it is up to the rim than the way along the wall.
    longer_mm: Mm,
}

/// A taper a maker can shave: full width above a point, then straight to the foot.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Taper {
    /// Distance above the mould's base, along the mould, at which full width begins.
    from_mm: Mm,
    /// Width at the foot, at the bottom of the groove.
    foot_mm: Mm,
    /// Largest departure of a gap from the one aimed at, with this taper.
    worst_mm: Mm,
    /// The same for the ideal width curve, which only the stock's width limits.
    worst_ideal_mm: Mm,
}

/// The parts of a stave's length.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct LengthParts {
    /// In the groove.
    groove_mm: Mm,
    /// From the edge of the base round the bend to the mould's foot.
    turn_mm: Mm,
    /// Along the mould to the top of the last row.
    wall_mm: Mm,
    /// Between the hoops.
    rim_mm: Mm,
    /// Left above the rim, to hold and trim.
    trim_mm: Mm,
}

/// Width and gap of the staves at one height.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct GapAt {
    /// Distance above the mould's base, along the mould.
    along_mm: Mm,
    /// Height above the mould's base.
    height_mm: Mm,
    /// Width of a stave with the practical taper.
    width_mm: Mm,
    /// Width that would give the wanted gap here.
    ideal_width_mm: Mm,
    /// Gap to the neighbour.
    gap_mm: Mm,
}

/// The bend of a stave from the groove onto the wall.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Bend {
    /// Radius of the stave's middle in the bend, and in the bend back where there is one.
    radius_mm: Mm,
    /// Least radius that the stock stands.
    least_radius_mm: Mm,
    /// Strain of the outer face in the bend, `t/(2R)`.
    strain: f64,
    /// Whether one bend fits; else the stave swings out and back.
    is_single: bool,
    /// Where the stave comes to lie on the wall, along the mould.
    touch_mm: Mm,
    /// Way from the edge of the base to there, along the stave's middle.
    way_mm: Mm,
    /// How much further than on the wall the stave stands off the mould below the touch, at most.
    stand_off_mm: Mm,
}

/// How far staves stand off the mould at a place.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Standing {
    /// The place, along the mould.
    along_mm: Mm,
    /// How far off, level.
    off_mm: Mm,
}

/// One way to stave the basket.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Candidate {
    /// How many staves.
    pub(crate) count: u32,
    /// From which stock.
    stock: String,
    /// Gap at the rim.
    gap_rim_mm: Mm,
    /// Narrowest gap on the way up.
    gap_narrowest_mm: Mm,
    /// Widest gap on the way up.
    gap_widest_mm: Mm,
    /// Width at the foot.
    foot_mm: Mm,
    /// Penalty by which candidates are ranked; 0 would be perfect.
    penalty: f64,
    /// What speaks for or against it, most weighty first.
    pub(crate) reasons: Vec<String>,
}

impl Staves {
    pub(super) fn of(staves: &staves::Staves, words: &Words) -> Self {
        let staves::Staves {
            uprights,
            spares,
            stock,
            spacing,
            groups,
            oval_side,
            taper,
            length,
            length_parts,
            gaps,
            gap_rim,
            gap_rim_wall,
            narrowest,
            widest,
            gap_wanted,
            foot_touch,
            bend,
            candidates,
        } = staves;
        // Kind, foot and taper of the uprights are those of the staves, and the groups tell which are wider.
        let Uprights {
            kind: _,
            count,
            thickness,
            width,
            foot: _,
            foot_along: _,
            full_from: _,
            standing,
            wider: _,
            paths,
            paths_to,
        } = uprights;
        let paths = paths.iter().zip(1..).map(|(path, number)| {
            let uprights::Path { lean, strain, longer, .. } = path;
            Path {
                foot_turn: uprights.turn(number),
                rim_turn: uprights.turn_at(number, *paths_to),
                lean_deg: lean.to_degrees(),
                strain: *strain,
                longer_mm: longer.into(),
            }
        });
        let stand = |along| Standing { along_mm: Mm::from(along), off_mm: standing.at(along).into() };
        Self {
            count: *count,
            spares: *spares,
            stock: stock.name.clone(),
            width_mm: width.into(),
            thickness_mm: thickness.into(),
            spacing: spacing.into(),
            groups: groups.iter().map(Group::from).collect(),
            paths: paths.collect(),
            oval_side: oval_side.into(),
            taper: taper.into(),
            length_mm: length.into(),
            length_parts: length_parts.into(),
            gaps: gaps.iter().map(GapAt::from).collect(),
            gap_rim_mm: gap_rim.into(),
            gap_rim_wall_mm: gap_rim_wall.into(),
            narrowest: narrowest.into(),
            widest: widest.into(),
            gap_wanted_mm: gap_wanted.into(),
            foot_touch_mm: foot_touch.into(),
            bend: bend.into(),
            standing: standing.places().map(stand).collect(),
            candidates: candidates.iter().map(|way| Candidate::of(way, words)).collect(),
        }
    }
}

impl Candidate {
    fn of(way: &staves::Candidate, words: &Words) -> Self {
        let staves::Candidate { count, stock, gap_rim, gap_narrowest, gap_widest, foot, penalty, reasons } =
            way;
        Self {
            count: *count,
            stock: stock.name.clone(),
            gap_rim_mm: gap_rim.into(),
            gap_narrowest_mm: gap_narrowest.into(),
            gap_widest_mm: gap_widest.into(),
            foot_mm: foot.into(),
            penalty: *penalty,
            reasons: reasons.iter().map(|reason| words.say(reason)).collect(),
        }
    }
}

impl From<&staves::Group> for Group {
    fn from(group: &staves::Group) -> Self {
        let staves::Group { name, numbers, length, width, spares } = group;
        Self {
            name: name.clone(),
            staves: numbers.clone(),
            spares: *spares,
            length_mm: length.into(),
            width_mm: width.into(),
        }
    }
}

impl From<&staves::Bend> for Bend {
    fn from(bend: &staves::Bend) -> Self {
        // The rest of it is private: the curve, which is asked place by place.
        let staves::Bend { radius, least_radius, strain, is_single, touch, way, stand_off, .. } = bend;
        Self {
            radius_mm: radius.into(),
            least_radius_mm: least_radius.into(),
            strain: *strain,
            is_single: *is_single,
            touch_mm: touch.into(),
            way_mm: way.into(),
            stand_off_mm: stand_off.into(),
        }
    }
}

impl From<&staves::Taper> for Taper {
    fn from(taper: &staves::Taper) -> Self {
        let staves::Taper { from, foot, worst, worst_ideal } = taper;
        Self {
            from_mm: from.into(),
            foot_mm: foot.into(),
            worst_mm: worst.into(),
            worst_ideal_mm: worst_ideal.into(),
        }
    }
}

impl From<&staves::LengthParts> for LengthParts {
    fn from(parts: &staves::LengthParts) -> Self {
        let staves::LengthParts { groove, turn, wall, rim, trim } = parts;
        Self {
            groove_mm: groove.into(),
            turn_mm: turn.into(),
            wall_mm: wall.into(),
            rim_mm: rim.into(),
            trim_mm: trim.into(),
        }
    }
}

impl From<&staves::GapAt> for GapAt {
    fn from(at: &staves::GapAt) -> Self {
        let staves::GapAt { along, height, width, ideal_width, gap } = at;
        Self {
            along_mm: along.into(),
            height_mm: height.into(),
            width_mm: width.into(),
            ideal_width_mm: ideal_width.into(),
            gap_mm: gap.into(),
        }
    }
}
