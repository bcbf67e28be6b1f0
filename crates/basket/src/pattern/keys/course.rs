//! Keys of one course in `[weave]`.

use super::declared::{Contents, Either, Fits, Usual};
use super::key::{Key, keys};
use super::limits::{Counts, ListOf, PART, RUN, Shares, Texts};
use super::{kinds, weaves};
use crate::colour::Colour;
use crate::pattern::drawn::Drawn;
use crate::pattern::{Lean, Until, Way, WeaveKind};
use crate::{Length, Material, limits};

/// More weavers than anyone lays side by side.
pub const MOST_WEAVERS: usize = 6;
/// More strands than anyone counts.
pub const MOST_STRANDS: usize = 500;

const SEVERAL: Fits = Fits { with: WeaveKind::has_several, only: None };
const WITH_WAY: Fits = Fits { with: WeaveKind::has_way, only: None };
const TWILL: Fits = Fits { with: WeaveKind::leans, only: Some("a twill") };
const REVERSED_TWILL: Fits = Fits { with: WeaveKind::turns, only: Some("a reversed twill") };
const LEVEL: Fits = Fits { with: WeaveKind::steps_up, only: Some("a weave whose rounds can begin level") };
const DRAWN: Fits = Fits { with: WeaveKind::is_drawn, only: None };
const OF_ONE: Fits = Fits { with: WeaveKind::is_of_one, only: Some("a weave of one weaver") };

keys! {
    /// The weave.
    pub const WEAVE: Key<WeaveKind> =
        Key::new("weave.courses.weave", (), Usual::Constant(WeaveKind::Plain), r#""twill 2/1""#);
    /// The material of all weavers.
    pub const WEAVER: Key<Material> = Key::new(
        "weave.courses.weaver",
        kinds::WEAVERS,
        Usual::Nothing("usual-course-weaver"),
        r#""cane fine""#,
    );
    /// The materials, one a weaver.
    pub const WEAVERS: Key<Vec<Material>> = Key::new(
        "weave.courses.weavers",
        ListOf { each: kinds::WEAVERS, most: MOST_WEAVERS },
        Usual::Computed("usual-course-weavers"),
        r#"["cane fine", "cane fine"]"#,
    )
    .with(SEVERAL);
    /// How many rows.
    pub const ROWS: Key<u32> = Key::new(
        "weave.courses.rows",
        Counts::of(1, 2000).usually(1, 60),
        Usual::Nothing("usual-course-rows"),
        "4",
    );
    /// Up to which place.
    pub const UNTIL: Key<Until> =
        Key::new("weave.courses.until", (), Usual::Nothing("usual-course-until"), r#""1 below mould top""#);
    /// The colours of the weavers' strands.
    pub const COLOURS: Key<Vec<Vec<Colour>>> = Key::new(
        "weave.courses.colours",
        ListOf { each: MOST_STRANDS, most: MOST_WEAVERS },
        Usual::Nothing("usual-natural"),
        r#"[["natural", "blue"]]"#,
    );
    /// How one row follows the other.
    pub const WAY: Key<Way> =
        Key::new("weave.courses.way", (), Usual::Constant(Way::Continuous), r#""row by row""#).with(WITH_WAY);
    /// To which side a twill climbs.
    pub const LEAN: Key<Lean> =
        Key::new("weave.courses.lean", (), Usual::Computed("usual-course-lean"), r#""left""#).with(TWILL);
    /// By how many staves each row of a twill is set off.
    pub const STEP: Key<u32> = Key::new(
        "weave.courses.step",
        Counts::of(1, 2 * weaves::LONGEST_FLOAT).usually(1, 7),
        Usual::Constant(1),
        "2",
    )
    .with(TWILL);
    /// Rows of a reversed twill before it turns; the usual count is common practice.
    pub const BAND: Key<u32> =
        Key::new("weave.courses.band", Counts::of(1, 500).usually(1, 24), Usual::Constant(6), "8")
            .with(REVERSED_TWILL);
    /// Whether each round ends with a step up.
    pub const STEP_UP: Key<bool> =
        Key::new("weave.courses.step-up", (), Usual::Constant(false), "true").with(LEVEL);
    /// The stave at which the first row begins.
    pub const START: Key<u32> = Key::new(
        "weave.courses.start",
        Counts::of(1, 999).usually(1, 151),
        Usual::Computed("usual-course-start"),
        "31",
    );
    /// A weave drawn by hand.
    pub const CHART: Key<Drawn> =
        Key::new("weave.courses.chart", limits::CHART_SIDE as usize, Usual::Nothing("usual-course-chart"), r#"["X.X.", ".X.X"]"#)
            .with(DRAWN);
    /// A file with such a weave.
    pub const CHART_FILE: Key<String> = Key::new(
        "weave.courses.chart-file",
        Texts::Line,
        Usual::Nothing("usual-course-chart-file"),
        r#""waves.csv""#,
    )
    .with(DRAWN);
    /// How many of the first rows are woven with the weaver double.
    pub const DOUBLED: Key<u32> =
        Key::new("weave.courses.doubled", Counts::of(0, 100).usually(0, 12), Usual::Constant(0), "2")
            .with(OF_ONE);
    /// Lengths of the first strands.
    pub const STRANDS: Key<Vec<Length>> = Key::new(
        "weave.courses.strands",
        ListOf { each: RUN, most: MOST_STRANDS },
        Usual::Computed("usual-course-strands"),
        r#"["14 ft", "11 ft"]"#,
    );
    /// Distance from row to row against the weaver's width.
    pub const PACKING: Key<f64> = Key::new(
        "weave.courses.packing",
        Shares::of(0.5, 6.0),
        Usual::Computed("usual-course-packing"),
        r#""105 %""#,
    );
    /// Clear distance from row to row.
    pub const SPACED: Key<Length> = Key::new(
        "weave.courses.spaced",
        PART.usually(0.015_625, 1.0),
        Usual::Nothing("usual-course-spaced"),
        r#""1/8""#,
    );
}

/// The weavers are of one material or named one by one.
pub const ONE_WEAVER_OR_MORE: Either = Either {
    ways: [&[&WEAVER], &[&WEAVERS]],
    is_needed: true,
    help: Some("keep one of them: weavers names them one by one"),
    may_lack: &[],
};
/// A course ends after rows or at a place.
pub const ROWS_OR_PLACE: Either = Either {
    ways: [&[&ROWS], &[&UNTIL]],
    is_needed: true,
    help: Some("keep one of them: it says where the course ends"),
    may_lack: &[],
};
/// Rows lie apart by a share or by a distance.
pub const PACKED_OR_SPACED: Either = Either {
    ways: [&[&PACKING], &[&SPACED]],
    is_needed: false,
    help: Some("keep one of them: each says how far apart rows lie"),
    may_lack: &[],
};

/// What stands in a course.
pub const CONTENTS: Contents =
    Contents { keys: ALL, either: &[ONE_WEAVER_OR_MORE, ROWS_OR_PLACE, PACKED_OR_SPACED] };
