//! The true colours of parts, as a picture in lines shows them.

use crate::drawing::Tone;
use crate::solid::Part;

/// Least lightness of a face, of 255: on anything darker the lines between strands would not be seen.
const LEAST_LIGHT: f64 = 92.0;
/// What is left of a colour where a part is turned from the light.
const SHADE: f64 = 0.84;
/// The same where a part is set off from those round it, in the light and in shade.
const DEEP: [f64; 2] = [0.7, 0.58];

/// A part's own colour in the light and in shade.
pub(crate) fn own(part: &Part) -> [Tone; 2] {
    [1.0, SHADE].map(|share| tone(part, share))
}

/// The same, deeper.
pub(crate) fn deep(part: &Part) -> [Tone; 2] {
    DEEP.map(|share| tone(part, share))
}

fn tone(part: &Part, share: f64) -> Tone {
    let [red, green, blue] = part.colour.map(f64::from);
    // Lightness as the eye weighs it (ITU-R BT.601).
    let light = 0.299 * red + 0.587 * green + 0.114 * blue;
    let to_white = ((LEAST_LIGHT - light) / (255.0 - light).max(1.0)).max(0.0);
    Tone::Dyed([red, green, blue].map(|own| ((own + (255.0 - own) * to_white) * share).round() as u8))
}
