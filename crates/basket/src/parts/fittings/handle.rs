//! What one lifts the basket by: a bail that swings on ears, a bow fixed in the rim, or two knobs.

use super::bend::bend;
use super::bow::{Bow, strain};
use super::{Ears, FixedHandle, Knobs, Lashed, Rivets, SwingHandle};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::pattern::{HandleKind, HandlePattern};

/// The handle as computed.
#[derive(Clone, Debug, PartialEq)]
pub enum Handle {
    /// A bail that swings on two ears.
    Swing(Box<SwingHandle>),
    /// A bow whose ends stand in the rim.
    Fixed(Box<FixedHandle>),
    /// A knob on each ear.
    Knobs(Box<Knobs>),
}

impl Handle {
    /// The handle on the ears of a basket that is ready for it.
    pub fn on_ears(pattern: &HandlePattern, basket: &Lashed<'_>, making: &mut Making<'_>) -> Self {
        match pattern.kind() {
            HandleKind::Knob => Self::Knobs(Box::new(Knobs::of(pattern, basket, making))),
            _ => Self::Swing(Box::new(SwingHandle::of(pattern, basket, making))),
        }
    }

    /// The one that swings.
    pub fn swing(&self) -> Option<&SwingHandle> {
        if let Self::Swing(swing) = self { Some(swing) } else { None }
    }

    /// The one that is fixed.
    pub fn fixed(&self) -> Option<&FixedHandle> {
        if let Self::Fixed(fixed) = self { Some(fixed) } else { None }
    }

    /// The knobs.
    pub fn knobs(&self) -> Option<&Knobs> {
        if let Self::Knobs(knobs) = self { Some(knobs) } else { None }
    }

    /// The bow that is bent.
    pub fn bow(&self) -> Option<&Bow> {
        match self {
            Self::Swing(swing) => Some(&swing.bow),
            Self::Fixed(fixed) => Some(&fixed.bow),
            Self::Knobs(_) => None,
        }
    }

    /// The rivets that hold it on ears.
    pub fn rivets(&self) -> Option<&Rivets> {
        match self {
            Self::Swing(swing) => Some(&swing.rivets),
            Self::Fixed(_) => None,
            Self::Knobs(knobs) => Some(&knobs.rivets),
        }
    }

    /// What of it stands in the rim as ears do.
    pub fn ends(&self) -> Option<&Ears> {
        self.fixed().map(|fixed| &fixed.ends)
    }

    /// How far it leans when its feet do not face each other.
    pub fn tilt(&self) -> Option<Angle> {
        match self {
            Self::Swing(swing) => Some(swing.tilt),
            Self::Fixed(fixed) => Some(fixed.tilt),
            Self::Knobs(_) => None,
        }
    }

    /// Height of its top above the rim.
    pub fn top(&self) -> Length {
        match self {
            Self::Swing(swing) => swing.pivot_height + swing.bow.rise + swing.bow.thickness / 2.0,
            Self::Fixed(fixed) => fixed.bow.rise + fixed.bow.thickness / 2.0,
            Self::Knobs(knobs) => knobs.pivot_height + knobs.diameter / 2.0,
        }
    }

    /// Strain of its bow's outer face if it were bent as another pattern says, with everything else as it
    /// is. Outside its ears its span grows with its thickness.
    pub(crate) fn strain_as(&self, pattern: &HandlePattern) -> f64 {
        let Some(bow) = self.bow() else { return 0.0 };
        let (grows, layers) = self.swing().map_or((0.0, 1.0), SwingHandle::growth);
        let thickness = pattern.thickness.unwrap_or(bow.thickness);
        let half_span = bow.half_span + (thickness - bow.thickness) * grows;
        strain(&bend(pattern, half_span), thickness / layers)
    }
}
