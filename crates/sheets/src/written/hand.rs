//! The hand that the basket was computed for.

use serde::Serialize;

/// The maker's own figures.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Hand {
    /// Whose figures these are; `null` for the usual ones.
    whose: Option<String>,
    /// By how much more (above 1) or less weaver is taken than the taut path says.
    take_up: f64,
    /// Height of a row as a share of what the weave says.
    row_height: f64,
    /// Share of its height that fresh weaving loses when it dries; `null` for the weaver's own.
    shrink: Option<f64>,
    /// Chance that a stave is spoilt in shaping or setting.
    spoilt: f64,
    /// Minutes of work by its kind.
    pace: Pace,
}

/// Minutes of work by its kind.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[allow(clippy::struct_field_names, reason = "the keys of the file carry their unit")]
struct Pace {
    /// Cutting and tapering one stave.
    shape_stave_minutes: f64,
    /// Tapering one stave that is cut to length already.
    taper_stave_minutes: f64,
    /// Setting one stave in the groove.
    set_stave_minutes: f64,
    /// Screwing the base on and marking it.
    mount_base_minutes: f64,
    /// Passing one stave, over one or under one, packing included.
    crossing_minutes: f64,
    /// Passing one stave where a rule has to be counted, such as a twill's.
    counted_crossing_minutes: f64,
    /// Passing one stave with weavers that are twisted round each other.
    twined_crossing_minutes: f64,
    /// How many times as long the first two rows take.
    first_rows_times: f64,
    /// Beginning and ending one row that is a piece of its own.
    begin_row_minutes: f64,
    /// One join.
    join_minutes: f64,
    /// Packing the dried rows down, all round.
    pack_minutes: f64,
    /// Sawing, shaping and setting one ear.
    ear_minutes: f64,
    /// Scarfing, bending and clamping one hoop.
    hoop_minutes: f64,
    /// Trimming one stave tip.
    trim_minutes: f64,
    /// Drilling for one pin, setting and clinching it.
    pin_minutes: f64,
    /// One wrap of the lashing.
    wrap_minutes: f64,
    /// Fitting one piece of filler.
    filler_minutes: f64,
    /// Shaping and bending the bail.
    bail_minutes: f64,
    /// Drilling for and setting one rivet.
    rivet_minutes: f64,
    /// Taking the basket off, plugging and sanding.
    off_mould_minutes: f64,
    /// One coat of finish.
    coat_minutes: f64,
    /// How many times as long a learner takes.
    learner_times: f64,
}

impl From<&basket::Hand> for Hand {
    fn from(hand: &basket::Hand) -> Self {
        let basket::Hand { whose, take_up, row_height, shrink, spoilt, pace } = hand;
        Self {
            whose: whose.clone(),
            take_up: *take_up,
            row_height: *row_height,
            shrink: *shrink,
            spoilt: *spoilt,
            pace: pace.into(),
        }
    }
}

impl From<&basket::Pace> for Pace {
    fn from(pace: &basket::Pace) -> Self {
        let basket::Pace {
            shape_stave,
            taper_stave,
            set_stave,
            mount_base,
            crossing,
            counted_crossing,
            twined_crossing,
            first_rows,
            begin_row,
            join,
            pack,
            ear,
            hoop,
            trim,
            pin,
            wrap,
            filler,
            bail,
            rivet,
            off_mould,
            coat,
            learner,
        } = pace;
        Self {
            shape_stave_minutes: *shape_stave,
            taper_stave_minutes: *taper_stave,
            set_stave_minutes: *set_stave,
            mount_base_minutes: *mount_base,
            crossing_minutes: *crossing,
            counted_crossing_minutes: *counted_crossing,
            twined_crossing_minutes: *twined_crossing,
            first_rows_times: *first_rows,
            begin_row_minutes: *begin_row,
            join_minutes: *join,
            pack_minutes: *pack,
            ear_minutes: *ear,
            hoop_minutes: *hoop,
            trim_minutes: *trim,
            pin_minutes: *pin,
            wrap_minutes: *wrap,
            filler_minutes: *filler,
            bail_minutes: *bail,
            rivet_minutes: *rivet,
            off_mould_minutes: *off_mould,
            coat_minutes: *coat,
            learner_times: *learner,
        }
    }
}
