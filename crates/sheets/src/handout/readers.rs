//! Three readers, and what each of them gets.

use serde::Serialize;

/// Which section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Kind {
    Mind,
    Findings,
    Ready,
    Materials,
    Supplies,
    Tools,
    Preparation,
    Steps,
    Rows,
    Weaving,
    Drawings,
    Plans,
    Choices,
    Record,
    Glance,
    Sessions,
    Beforehand,
    Bring,
    Faults,
    Safety,
    Questions,
}

/// Who reads a sheet that is told in sections.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Reader {
    /// Who makes the basket: what there is, what to do, how it should look. No keys of the pattern.
    Student,
    /// Who teaches it: times, sessions, what to prepare, usual faults.
    Teacher,
    /// Who designed it: choices and their reasons, findings, figures to check and to note.
    Maker,
}

impl Reader {
    /// The sections in their order; one with nothing in it is left out.
    pub(super) const fn sections(self) -> &'static [Kind] {
        match self {
            Self::Student => &[
                Kind::Mind,
                Kind::Ready,
                Kind::Materials,
                Kind::Tools,
                Kind::Preparation,
                Kind::Steps,
                Kind::Rows,
                Kind::Drawings,
            ],
            Self::Teacher => &[
                Kind::Glance,
                Kind::Sessions,
                Kind::Beforehand,
                Kind::Bring,
                Kind::Faults,
                Kind::Safety,
                Kind::Questions,
            ],
            Self::Maker => {
                &[Kind::Findings, Kind::Choices, Kind::Weaving, Kind::Plans, Kind::Supplies, Kind::Record]
            }
        }
    }
}
