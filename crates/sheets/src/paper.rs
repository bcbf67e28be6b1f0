//! The paper on which sheets are printed.

use basket::Length;
use serde::Serialize;

/// A size of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Paper {
    /// US Letter, 8 1/2 × 11 in.
    #[default]
    Letter,
    /// A4, 210 × 297 mm (ISO 216).
    A4,
}

impl Paper {
    /// Width and height.
    pub const fn size(self) -> (Length, Length) {
        match self {
            Self::Letter => (Length::inches(8.5), Length::inches(11.0)),
            Self::A4 => (Length::mm(210.0), Length::mm(297.0)),
        }
    }
    /// The name under which the templates know it.
    pub(crate) const fn template_name(self) -> &'static str {
        match self {
            Self::Letter => "us-letter",
            Self::A4 => "a4",
        }
    }
}

/// White edge of a sheet of templates, in millimetres.
#[derive(Clone, Copy, Debug, Serialize)]
pub(crate) struct Margin {
    pub(crate) side: f64,
    pub(crate) top: f64,
    pub(crate) bottom: f64,
}

/// Edges of a sheet of templates: header above; check bars, correction and page number below.
pub(crate) const TEMPLATE_MARGIN: Margin = Margin { side: 10.0, top: 24.0, bottom: 38.0 };

impl Paper {
    /// Room for templates on a page.
    pub(crate) fn template_room(self) -> (Length, Length) {
        let (width, height) = self.size();
        let margin = TEMPLATE_MARGIN;
        (width - Length::mm(2.0 * margin.side), height - Length::mm(margin.top + margin.bottom))
    }
}
