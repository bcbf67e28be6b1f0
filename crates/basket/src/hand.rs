//! The maker's own hand: figures that differ from one pair of hands to another.

/// What is counted on where a maker's own records say nothing better.
#[derive(Clone, Debug, PartialEq)]
pub struct Hand {
    /// Whose figures these are; none for the usual ones.
    pub whose: Option<String>,
    /// By how much more (above 1) or less weaver is taken than the taut path says.
    pub take_up: f64,
    /// Height of a row as a share of what the weave says; smaller packs closer.
    pub row_height: f64,
    /// Share of its height that fresh weaving loses when it dries; none for the weaver's own.
    pub shrink: Option<f64>,
    /// Chance that a stave is spoilt in shaping or setting.
    pub spoilt: f64,
    /// How long work takes.
    pub pace: Pace,
}

impl Hand {
    /// The usual hand: as the formulas say, one stave in twenty spoilt (assumed), at the usual pace.
    pub const USUAL: Self =
        Self { whose: None, take_up: 1.0, row_height: 1.0, shrink: None, spoilt: 0.05, pace: Pace::USUAL };
}

impl Default for Hand {
    fn default() -> Self {
        Self::USUAL
    }
}

/// Minutes of work by its kind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pace {
    /// Cutting and tapering one stave.
    pub shape_stave: f64,
    /// Tapering one stave that is cut to length already.
    pub taper_stave: f64,
    /// Setting one stave in the groove.
    pub set_stave: f64,
    /// Screwing the base on and marking it.
    pub mount_base: f64,
    /// Passing one stave, over one or under one, packing included.
    pub crossing: f64,
    /// Passing one stave where a rule has to be counted, such as a twill's.
    pub counted_crossing: f64,
    /// Passing one stave with weavers that are twisted round each other.
    pub twined_crossing: f64,
    /// How many times as long the first two rows take.
    pub first_rows: f64,
    /// Beginning and ending one row that is a piece of its own.
    pub begin_row: f64,
    /// One join.
    pub join: f64,
    /// Packing the dried rows down, all round.
    pub pack: f64,
    /// Sawing, shaping and setting one ear.
    pub ear: f64,
    /// Scarfing, bending and clamping one hoop.
    pub hoop: f64,
    /// Trimming one stave tip.
    pub trim: f64,
    /// Drilling for one pin, setting and clinching it.
    pub pin: f64,
    /// One wrap of the lashing.
    pub wrap: f64,
    /// Fitting one piece of filler.
    pub filler: f64,
    /// Shaping and bending the bail.
    pub bail: f64,
    /// Drilling for and setting one rivet.
    pub rivet: f64,
    /// Taking the basket off, plugging and sanding.
    pub off_mould: f64,
    /// One coat of finish.
    pub coat: f64,
    /// How many times as long a learner takes.
    pub learner: f64,
}

impl Pace {
    /// Common practice and rough, for practised hands.
    pub const USUAL: Self = Self {
        shape_stave: 1.5,
        taper_stave: 1.2,
        set_stave: 0.5,
        mount_base: 15.0,
        crossing: 0.05,
        counted_crossing: 0.06,
        twined_crossing: 0.08,
        first_rows: 2.0,
        begin_row: 2.0,
        join: 1.0,
        pack: 15.0,
        ear: 20.0,
        hoop: 30.0,
        trim: 0.15,
        pin: 1.5,
        wrap: 0.5,
        filler: 5.0,
        bail: 45.0,
        rivet: 10.0,
        off_mould: 30.0,
        coat: 15.0,
        learner: 2.0,
    };
}
