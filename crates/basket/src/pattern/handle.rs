//! What is known of the handle.

use super::word::words;
use super::{EarAxis, EarsPattern};
use crate::measure::Length;
use crate::stock::Material;

/// The handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct HandlePattern {
    /// Which handle it is; a swinging one unless it says otherwise.
    pub kind: Option<HandleKind>,
    /// Who bends it.
    pub made: Option<HandleMade>,
    /// At the ends of which axis a fixed one stands, where the mould is not round.
    pub axis: Option<EarAxis>,
    /// How a swinging one meets its ears.
    pub joint: Option<HandleJoint>,
    /// The curve of the bow.
    pub curve: Option<BailCurve>,
    /// Rise of the bow's middle above the pivots; of a fixed one, above the rim.
    pub rise: Option<Length>,
    /// Radius of the corners of a three-centred bow.
    pub corner: Option<Length>,
    /// Width, seen from the side; diameter of a knob.
    pub width: Option<Length>,
    /// Thickness, seen from the front; how far a knob stands out.
    pub thickness: Option<Length>,
    /// How much of an ear shows between the rim and the end of a swinging handle.
    pub shows: Option<Length>,
    /// How far each end of a fixed handle goes down below the rim.
    pub ends: Option<Length>,
    /// The rivet.
    pub rivet: Option<Material>,
}

impl HandlePattern {
    /// Which handle it is.
    pub fn kind(&self) -> HandleKind {
        self.kind.unwrap_or_default()
    }

    /// The ears that it brings with it; a fixed one has none.
    pub fn ears(&self) -> Option<EarsPattern> {
        matches!(self.kind(), HandleKind::Swing | HandleKind::Knob).then(EarsPattern::default)
    }
}

/// What one lifts the basket by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum HandleKind {
    /// A bail that swings on its ears.
    #[default]
    Swing,
    /// A bow whose ends are fixed in the rim.
    Fixed,
    /// A knob on each ear.
    Knob,
    /// There is none.
    None,
}

words! { HandleKind:
    Swing = "swing", "handle-kind-swing";
    Fixed = "fixed", "handle-kind-fixed";
    Knob = "knob", "handle-kind-knob";
    None = "none", "handle-kind-none";
}

/// Who bends a bow.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum HandleMade {
    /// It is bought bent.
    #[default]
    Bought,
    /// The maker of the basket bends it.
    Bent,
}

words! { HandleMade:
    Bought = "bought", "handle-made-bought";
    Bent = "bent", "handle-made-bent";
}

/// How a swinging handle meets its ears.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum HandleJoint {
    /// It goes outside the ear.
    #[default]
    Outside,
    /// A slot in its end takes the ear.
    Slot,
    /// It is made of two halves, and the ear goes between them.
    Between,
}

words! { HandleJoint:
    Outside = "outside", "handle-joint-outside";
    Slot = "slot", "handle-joint-slot";
    Between = "between", "handle-joint-between";
}

/// The curve of a bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BailCurve {
    /// Half a circle.
    Semicircle,
    /// Two corner arcs joined by a flatter one.
    ThreeCentred,
    /// Half an ellipse.
    HalfEllipse,
}

words! { BailCurve:
    Semicircle = "semicircle", "bail-curve-semicircle";
    ThreeCentred = "three-centred", "bail-curve-three-centred";
    HalfEllipse = "half-ellipse", "bail-curve-half-ellipse";
}
