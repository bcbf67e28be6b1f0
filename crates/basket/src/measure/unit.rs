//! The units in which a length may be written.

use super::Length;

/// A unit of length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Inch.
    Inch,
    /// Foot, 12 inches.
    Foot,
    /// Millimetre.
    Millimetre,
    /// Centimetre.
    Centimetre,
    /// Metre.
    Metre,
}

/// Every spelling that is understood, in small letters.
const SPELLINGS: [(&str, Unit); 28] = [
    ("in", Unit::Inch),
    ("ft", Unit::Foot),
    ("mm", Unit::Millimetre),
    ("cm", Unit::Centimetre),
    ("m", Unit::Metre),
    ("inch", Unit::Inch),
    ("inches", Unit::Inch),
    ("\"", Unit::Inch),
    ("″", Unit::Inch),
    ("”", Unit::Inch),
    ("''", Unit::Inch),
    ("foot", Unit::Foot),
    ("feet", Unit::Foot),
    ("'", Unit::Foot),
    ("′", Unit::Foot),
    ("’", Unit::Foot),
    ("millimetre", Unit::Millimetre),
    ("millimetres", Unit::Millimetre),
    ("millimeter", Unit::Millimetre),
    ("millimeters", Unit::Millimetre),
    ("centimetre", Unit::Centimetre),
    ("centimetres", Unit::Centimetre),
    ("centimeter", Unit::Centimetre),
    ("centimeters", Unit::Centimetre),
    ("metre", Unit::Metre),
    ("metres", Unit::Metre),
    ("meter", Unit::Metre),
    ("meters", Unit::Metre),
];

impl Unit {
    /// The usual short sign: `in`, `ft`, `mm`, `cm`, `m`.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
        }
    }

    /// The length of one unit.
    pub const fn one(self) -> Length {
        match self {
            Self::Inch => Length::inches(1.0),
            Self::Foot => Length::feet(1.0),
            Self::Millimetre => Length::mm(1.0),
            Self::Centimetre => Length::mm(10.0),
            Self::Metre => Length::mm(1000.0),
        }
    }

    /// The unit of this spelling; a full stop after it (`in.`) and capitals do not matter.
    pub(super) fn from_spelling(word: &str) -> Option<Self> {
        let word = word.trim_end_matches('.').to_lowercase();
        SPELLINGS.iter().find(|(spelling, _)| *spelling == word).map(|(_, unit)| *unit)
    }

    /// The spelling nearest to a word that is no unit.
    pub(super) fn nearest_spelling(word: &str) -> Option<&'static str> {
        let word = word.to_lowercase();
        if word.chars().count() > 20 {
            return None;
        }
        SPELLINGS
            .iter()
            .map(|(spelling, _)| (strsim::osa_distance(&word, spelling), *spelling))
            .filter(|(distance, spelling)| *distance <= 2 && *distance < spelling.chars().count())
            .min_by_key(|(distance, spelling)| (*distance, spelling.chars().next() != word.chars().next()))
            .map(|(_, spelling)| spelling)
    }
}
