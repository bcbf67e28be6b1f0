//! What is measured on a lashed rim: within it and over it.

use crate::measure::Length;
use crate::parts::lashing::Lashing;
use crate::parts::vessel::Vessel;

/// Girth over 2π of the opening within a lashed rim.
pub(crate) fn mouth(body: &Vessel) -> Length {
    body.rim().inner_radius() - lashing(body)
}

/// Girth over 2π of a lashed rim, outside.
pub(crate) fn edge(lid: &Vessel) -> Length {
    lid.rim().outer_radius(lid.uprights()) + lashing(lid)
}

fn lashing(vessel: &Vessel) -> Length {
    vessel.lashing().map_or(Length::ZERO, Lashing::thickness)
}
