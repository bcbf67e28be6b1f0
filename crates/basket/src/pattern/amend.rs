//! A pattern with one key changed, as a remedy would change it.

use super::{
    BasePattern, CoursePattern, EarsPattern, FillerPattern, HandlePattern, LashingPattern, LidPattern,
    Pattern, PinsPattern, RimPattern, StavesPattern, Way, WeavePattern, Word, read,
};
use crate::measure::Length;
use crate::pattern::keys;
use crate::stock::Catalogue;

/// A mould of which nothing is kept, for reading a key of another section.
const ANY_MOULD: &str = "mould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\", side = \"cone\" }";

/// The same of one that is not round, to be written on.
const ANY_OVAL: &str =
    "[mould]\nshape = \"oval\"\nlength = \"9 in\"\nwidth = \"6 in\"\nrim = \"9 in\"\nheight = \"4 in\"";

impl Pattern {
    /// The pattern with a TOML value written under a key such as `base.groove.depth` or
    /// `weave.courses[2].rows` (courses counted from 1); none where that could not be read.
    pub fn amended(&self, key: &str, value: &str, catalogue: &Catalogue) -> Option<Self> {
        let catalogue = catalogue.with(&self.materials);
        let written = |lines: &str| {
            let units = self.units.word();
            read(&format!("title = \"A change\"\nunits = \"{units}\"\n{lines}\n"), &catalogue).ok()
        };
        let mut changed = self.clone();
        if let Some((number, inner)) = course_key(key) {
            let course = changed.weave.courses.get_mut(number.checked_sub(1)?)?;
            let written = written(&format!(
                "{ANY_MOULD}\nweave.courses = [{{ {}{inner} = {value} }}]",
                course.beside(inner)
            ));
            course.take(inner, written?.weave.courses.pop()?)?;
        } else if key == keys::mould::GIRTHS.path {
            changed.mould.form = written(&format!("{key} = {value}"))?.mould.form;
        } else if key == keys::mould::WIDTHS.path || key == keys::mould::LEVELS.path {
            changed.mould.levels =
                written(&format!("{ANY_OVAL}\n{} = {value}", key.trim_start_matches("mould.")))?.mould.levels;
        } else if key == keys::mould::PIECES.path {
            let cone = "\"cone\"";
            changed.mould.pieces =
                written(&ANY_MOULD.replace(cone, &format!("{cone}, pieces = {value}")))?.mould.pieces;
        } else if key == keys::mould::WIDTH.path || key == keys::mould::CORNER.path {
            let length = Length::parse(value.trim_matches('"'), Some(self.units.unit())).ok()?;
            changed.mould.outline.round_ends(key == keys::mould::CORNER.path, length)?;
        } else if key == keys::mould::RIM.path {
            changed.mould.widen(written(&ANY_MOULD.replace("\"8 in\"", value))?.mould);
        } else {
            let beside = self.beside(key);
            changed.overlay(written(&format!("{ANY_MOULD}\n{beside}{key} = {value}"))?);
        }
        Some(changed)
    }

    /// What else must be written for this key to be held against it: sizes of base and staves, and which
    /// handle it is.
    fn beside(&self, key: &str) -> String {
        let base = &self.base;
        let sizes = [
            (keys::base::DIAMETER.path, base.diameter),
            (keys::base::THICKNESS.path, base.thickness),
            (keys::groove::DEPTH.path, base.groove_depth),
            (keys::groove::WIDTH.path, base.groove_width),
            (keys::base::SCREW.path, base.screw_hole),
            (
                keys::staves::WIDTH.path,
                self.staves.width.or(self.staves.stock.as_ref().map(|stock| stock.width)),
            ),
        ];
        let section = key.split('.').next().unwrap_or_default();
        let fit = |(other, _): &(&str, Option<Length>)| {
            *other != key && other.split('.').next() == Some(section) && key != keys::staves::STOCK.path
        };
        let kind = self.handle.as_ref().and_then(|handle| handle.kind).filter(|_| section == "handle");
        let kind = kind.filter(|_| key != keys::handle::KIND.path).map(Word::word);
        let start = kind.map(|kind| format!("{} = \"{kind}\"\n", keys::handle::KIND.path));
        sizes.into_iter().filter(fit).fold(start.unwrap_or_default(), |written, (other, size)| match size {
            Some(size) => format!("{written}{other} = \"{} mm\"\n", size.to_mm()),
            None => written,
        })
    }

    /// Takes over what another pattern says of base, staves, rim and fittings.
    fn overlay(&mut self, over: Self) {
        self.base = self.base.clone().overlaid(over.base);
        self.staves = self.staves.clone().overlaid(over.staves);
        self.weave = self.weave.clone().overlaid(&over.weave);
        self.rim = self.rim.clone().overlaid(over.rim);
        if over.filler != FillerPattern::Choose {
            self.filler = over.filler;
        }
        self.lashing = match (self.lashing.take(), over.lashing) {
            (own, Some(over)) if over == LashingPattern::default() => own,
            (own, over) => over.map(|over| own.unwrap_or_default().overlaid(over)),
        };
        self.pins = self.pins.clone().overlaid(over.pins);
        // A handle that is read brings bare ears with it, which say nothing.
        if let Some(over) = over.ears.filter(|ears| *ears != EarsPattern::default()) {
            self.ears = Some(self.ears.take().unwrap_or_default().overlaid(over));
        }
        if let Some(over) = over.lid {
            self.lid = Some(self.lid.take().unwrap_or_default().overlaid(over));
        }
        if let Some(over) = over.handle {
            self.handle = Some(self.handle.take().unwrap_or_default().overlaid(over));
        }
    }
}

/// Number of the course and key within it.
fn course_key(key: &str) -> Option<(usize, &str)> {
    let (number, inner) = key.strip_prefix("weave.courses[")?.split_once("].")?;
    Some((number.parse().ok()?, inner))
}

impl CoursePattern {
    /// What else must be written of the course so that this key can be read.
    fn beside(&self, key: &str) -> String {
        let (weave, chart) = (format!("\"{}\"", self.weave), "[\"X.\", \".X\"]");
        let level = self.way == Some(Way::RowByRow);
        [
            (key != "weave", "weave", weave.as_str()),
            (key != "weaver", "weaver", "\"cane fine\""),
            (!matches!(key, "rows" | "until"), "rows", "4"),
            (key != "chart" && key != "weave" && self.weave.is_drawn(), "chart", chart),
            (!matches!(key, "way" | "weave") && level, "way", "\"row by row\""),
            (!matches!(key, "step-up" | "weave") && self.step_up, "step-up", "true"),
        ]
        .into_iter()
        .filter(|(wanted, ..)| *wanted)
        .fold(String::new(), |written, (_, key, value)| format!("{written}{key} = {value}, "))
    }

    /// Takes over one key of another course; none for a key that no remedy changes.
    fn take(&mut self, key: &str, over: Self) -> Option<()> {
        match key {
            "weave" => self.weave = over.weave,
            "weaver" => self.weaver = over.weaver,
            "rows" | "until" => self.until = over.until,
            "way" => self.way = over.way,
            "step-up" => self.step_up = over.step_up,
            "step" => self.step = over.step,
            "start" => self.start = over.start,
            "strands" => self.strands = over.strands,
            "chart" => self.chart = over.chart,
            _ => return None,
        }
        Some(())
    }
}

impl BasePattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { diameter, thickness, groove_depth, groove_width, woods, screw_hole, rings, sealed } = over;
        Self {
            diameter: diameter.or(self.diameter),
            thickness: thickness.or(self.thickness),
            groove_depth: groove_depth.or(self.groove_depth),
            groove_width: groove_width.or(self.groove_width),
            woods: woods.or(self.woods),
            screw_hole: screw_hole.or(self.screw_hole),
            rings: rings.or(self.rings),
            sealed: sealed.or(self.sealed),
        }
    }
}

impl StavesPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { count, stock, width, gap, taper, length, spares, spacing, ends, oval_side, colours } =
            over;
        Self {
            count: count.or(self.count),
            stock: stock.or(self.stock),
            width: width.or(self.width),
            gap: gap.or(self.gap),
            taper: taper.or(self.taper),
            length: length.or(self.length),
            spares: spares.or(self.spares),
            spacing: spacing.or(self.spacing),
            ends: ends.or(self.ends),
            oval_side: oval_side.or(self.oval_side),
            colours: if colours.is_empty() { self.colours } else { colours },
        }
    }
}

impl WeavePattern {
    fn overlaid(self, over: &Self) -> Self {
        Self {
            courses: self.courses,
            shrink: over.shrink.or(self.shrink),
            float_staves: over.float_staves.or(self.float_staves),
            float_rows: over.float_rows.or(self.float_rows),
            direction: over.direction.or(self.direction),
            first_face: over.first_face.or(self.first_face),
        }
    }
}

impl RimPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { hoops, stock, inner, lap, hinged } = over;
        Self {
            hoops: hoops.or(self.hoops),
            stock: stock.or(self.stock),
            inner: inner.or(self.inner),
            lap: lap.or(self.lap),
            hinged: hinged || self.hinged,
        }
    }
}

impl LashingPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { weaver, every, style, tail } = over;
        Self {
            weaver: weaver.or(self.weaver),
            every: every.or(self.every),
            style: style.or(self.style),
            tail: tail.or(self.tail),
        }
    }
}

impl PinsPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { stock, every } = over;
        Self { stock: stock.or(self.stock), every: every.or(self.every) }
    }
}

impl EarsPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { material, wood, way, axis, placing, width, thickness, hole_height, tail } = over;
        Self {
            material: material.or(self.material),
            wood: wood.or(self.wood),
            way: way.or(self.way),
            axis: axis.or(self.axis),
            placing: placing.or(self.placing),
            width: width.or(self.width),
            thickness: thickness.or(self.thickness),
            hole_height: hole_height.or(self.hole_height),
            tail: tail.or(self.tail),
        }
    }
}

impl LidPattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { fit, way, across, height, plaque, clearance, staves, count, weaver, ledge, lift, hinge } =
            over;
        Self {
            fit: fit.or(self.fit),
            way: way.or(self.way),
            across: across.or(self.across),
            height: height.or(self.height),
            plaque: plaque.or(self.plaque),
            clearance: clearance.or(self.clearance),
            staves: staves.or(self.staves),
            count: count.or(self.count),
            weaver: weaver.or(self.weaver),
            ledge: ledge.or(self.ledge),
            lift: lift.or(self.lift),
            hinge: hinge.or(self.hinge),
        }
    }
}

impl HandlePattern {
    fn overlaid(self, over: Self) -> Self {
        let Self { kind, made, axis, joint, curve, rise, corner, width, thickness, shows, ends, rivet } =
            over;
        Self {
            kind: kind.or(self.kind),
            made: made.or(self.made),
            axis: axis.or(self.axis),
            joint: joint.or(self.joint),
            curve: curve.or(self.curve),
            rise: rise.or(self.rise),
            corner: corner.or(self.corner),
            width: width.or(self.width),
            thickness: thickness.or(self.thickness),
            shows: shows.or(self.shows),
            ends: ends.or(self.ends),
            rivet: rivet.or(self.rivet),
        }
    }
}
