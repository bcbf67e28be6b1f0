//! Colours of staves and weavers.

use serde::{Serialize, Serializer};

/// A colour with the name under which the maker knows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Colour {
    /// Name, such as `blue`.
    pub name: String,
    /// How it looks on a screen: red, green, blue.
    pub rgb: [u8; 3],
}

/// The colours that a pattern may name without defining them (own choice of tints).
pub const BUILT_IN: &[(&str, [u8; 3])] = &[
    ("natural", [0xd9, 0xbe, 0x8c]),
    ("white", [0xf6, 0xf2, 0xe6]),
    ("grey", [0x8a, 0x8a, 0x84]),
    ("black", [0x26, 0x24, 0x22]),
    ("brown", [0x6b, 0x43, 0x26]),
    ("red", [0x9d, 0x2f, 0x2a]),
    ("orange", [0xc8, 0x6f, 0x2b]),
    ("yellow", [0xd9, 0xa9, 0x34]),
    ("green", [0x47, 0x6b, 0x3c]),
    ("blue", [0x2b, 0x4c, 0x7e]),
    ("purple", [0x5d, 0x3a, 0x66]),
];

impl Colour {
    /// The colour of undyed cane, reed and splint.
    pub fn natural() -> Self {
        Self { name: "natural".to_owned(), rgb: [0xd9, 0xbe, 0x8c] }
    }

    /// The built-in colour of this name.
    pub fn built_in(name: &str) -> Option<Self> {
        let found = BUILT_IN.iter().find(|(known, _)| known.eq_ignore_ascii_case(name.trim()))?;
        Some(Self { name: found.0.to_owned(), rgb: found.1 })
    }

    /// Reads `#2b4c7e`.
    pub fn hex(name: &str, hex: &str) -> Option<Self> {
        let digits = hex.trim().strip_prefix('#').filter(|digits| digits.len() == 6)?;
        let part = |from: usize| u8::from_str_radix(digits.get(from..from + 2)?, 16).ok();
        Some(Self { name: name.to_owned(), rgb: [part(0)?, part(2)?, part(4)?] })
    }

    /// Writes `#2b4c7e`.
    pub fn to_hex(&self) -> String {
        let [red, green, blue] = self.rgb;
        format!("#{red:02x}{green:02x}{blue:02x}")
    }
}

impl Default for Colour {
    fn default() -> Self {
        Self::natural()
    }
}

impl Serialize for Colour {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.name)
    }
}
