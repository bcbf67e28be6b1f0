//! What the colours of a woven course make, with its measures on the mould.

use crate::measure::Angle;
use crate::message::{Message, Value};
use crate::pattern::Lean;
use crate::term::Term;
use crate::weave::diagonal::Diagonal;
use crate::weave::look::{Look, ROWS_READ, Sighting, USUAL_PROPORTION};
use crate::weave::sights::Sights;
use crate::weave::strands::WeaverAmount;
use crate::weave::{Course, Face, Row, Weave};

/// What is seen of a course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CourseLook {
    /// The look and its slope in staves a row.
    pub sighting: Sighting,
    /// One or two twined rows in which colours alternate like the links of a chain.
    pub chain: bool,
    /// To which side the skips climb where one stave is skipped a round, seen from this face.
    pub skips: Option<Lean>,
    /// To which side a spiral climbs, seen from this face on a basket that stands on its base.
    pub lean: Option<Lean>,
    /// How often a line of a spiral goes round from the first row to the last; zero for other looks.
    pub turns: f64,
    /// How steeply a spiral climbs; none for other looks.
    pub climb: Option<Angle>,
}

/// Turns that would be printed as none.
const A_TENTH: f64 = 0.05;

impl CourseLook {
    /// Whether anything stands out in it.
    pub fn stands_out(&self) -> bool {
        self.chain || self.sighting.look != Look::Plain
    }

    /// What is seen, to be said in words.
    pub fn said(&self) -> Message {
        match (self.sighting.look, self.lean, self.climb) {
            (Look::Spiral, Some(lean), Some(climb)) if self.turns < A_TENTH => {
                Message::new(if lean == Lean::Right { "look-climbs-right" } else { "look-climbs-left" })
                    .with("climb", Angle::degrees(climb.to_degrees().round()))
            }
            (Look::Spiral, Some(lean), Some(climb)) => {
                Message::new(if lean == Lean::Right { "look-turns-right" } else { "look-turns-left" })
                    .with("turns", Value::Number(self.turns, 1))
                    .with("climb", Angle::degrees(climb.to_degrees().round()))
            }
            (Look::Mixed | Look::Checks, ..) if self.skips.is_some() => {
                let side = self.skips.unwrap_or(Lean::Left).term();
                Message::new("weaves-skips").with("side", Value::Term(side))
            }
            _ if self.chain => Message::new("look-chain"),
            (look, ..) => Message::new(look.term()),
        }
    }
}

impl Term for Look {
    /// A spiral is named without its side.
    fn term(self) -> &'static str {
        match self {
            Self::Plain => "look-plain",
            Self::Columns => "look-columns",
            Self::Bands => "look-bands",
            Self::Checks => "look-checks",
            Self::Spiral => "look-spiral",
            Self::Arrows => "look-arrows",
            Self::Mixed => "look-mixed",
        }
    }
}

impl Weave {
    /// What is seen of a course from one face.
    ///
    /// Staves that show count as a colour of their own, but rings of one colour are rings whatever the
    /// staves between them.
    pub fn look(&self, course: &Course, face: Face) -> CourseLook {
        let middle = self.each_row.get((course.first_row + course.rows / 2).saturating_sub(1) as usize);
        let proportion = proportion(middle, &course.weavers, course.rows / 2, course.fabric.count);
        let rows = course.rows.min(ROWS_READ);
        let count = course.fabric.count.max(1);
        let twined = course.fabric.twined() > 1;
        let mut known: Vec<Vec<[u8; 3]>> = Vec::new();
        let mut number = |colours: Vec<[u8; 3]>| {
            let found = known.iter().position(|other| *other == colours);
            found.unwrap_or_else(|| {
                known.push(colours);
                known.len() - 1
            }) as u8
        };
        // Read from where rows begin: there each row meets the next, one row up.
        let all = Sights::of(rows, count, |row, place| {
            let stave = course.fabric.stave_in(0, place);
            number(match course.seen(row, stave, face) {
                Some(seen) if twined => vec![seen.colour.rgb],
                Some(_) => course.colours_side_by_side(row, stave),
                None => vec![self.stave_colour(stave + 1).rgb],
            })
        });
        let sighting = if Self::has_rings(course, face) {
            Sighting::still(Look::Bands, Some(1))
        } else {
            all.read(proportion)
        };
        let spiral = sighting.look == Look::Spiral;
        let from_face = |lean: Lean| {
            let outside = self.direction.seen(lean);
            if face == Face::Inside { outside.other() } else { outside }
        };
        let lean = sighting.lean().map(from_face);
        let diagonal = course.verdict.diagonal;
        let skips = diagonal.lean().filter(|_| diagonal == Diagonal::Skips).map(from_face);
        CourseLook {
            sighting,
            chain: course.rows <= 2 && twined && sighting.repeat == Some(2),
            skips,
            lean,
            turns: if spiral { sighting.turns(count, course.rows.saturating_sub(1)) } else { 0.0 },
            climb: spiral
                .then(|| Angle::degrees(libm::atan2(1.0, sighting.slope.abs() * proportion).to_degrees())),
        }
    }

    /// Whether the weavers alone make rings of one colour each, two rows wide and wider. Single rows
    /// are seen as the dots that they leave between the staves.
    fn has_rings(course: &Course, face: Face) -> bool {
        let ring = |row: u32| -> Option<[u8; 3]> {
            let places = 0..course.fabric.count;
            let seen = places.filter_map(|place| course.seen(row, course.fabric.stave_in(row, place), face));
            let colours: Vec<[u8; 3]> = seen.map(|seen| seen.colour.rgb).collect();
            let mut runs = colours.chunk_by(|a, b| a == b);
            // Where strands are joined, a row changes its colour once: it counts for the longer part.
            let (first, second) = (runs.next()?, runs.next().unwrap_or_default());
            let longer = if first.len() >= second.len() { first } else { second };
            runs.next().is_none().then(|| longer.first().copied())?
        };
        let Some(rings) = (0..course.rows).map(ring).collect::<Option<Vec<_>>>() else { return false };
        let runs: Vec<usize> = rings.chunk_by(|a, b| a == b).map(<[_]>::len).collect();
        // The last ring may be cut off by the course's end.
        runs.len() > 1 && runs.iter().rev().skip(1).all(|&rows| rows > 1)
    }
}

/// How many rows wide a stave with its gap is in a row (from 0 within its course) of these weavers.
pub(super) fn proportion(row: Option<&Row>, weavers: &[WeaverAmount], index: u32, count: u32) -> f64 {
    let Some(row) = row else { return USUAL_PROPORTION };
    let lying = weavers.iter().filter(|weaver| weaver.lies_in(index)).count().max(1);
    let across = row.length / (lying as f64 * f64::from(count.max(1)));
    let proportion = across / row.pitch;
    if proportion.is_finite() && proportion > 0.0 { proportion } else { USUAL_PROPORTION }
}

impl Course {
    /// The colours of the weavers that lie side by side at a crossing; one where all are alike.
    fn colours_side_by_side(&self, row: u32, stave: u32) -> Vec<[u8; 3]> {
        let mut colours: Vec<_> = self.side_by_side(row, stave).iter().map(|seen| seen.colour.rgb).collect();
        colours.dedup();
        colours
    }
}
