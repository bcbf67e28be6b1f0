//! Colours of materials, for pictures and for files that carry them.

use basket::colour::Colour;
use basket::pattern::EarMaterial;
use basket::stock::{Kind, Material};

pub(super) const BRASS: [u8; 3] = [196, 160, 74];
pub(super) const COPPER: [u8; 3] = [184, 115, 70];
pub(super) const STEEL: [u8; 3] = [150, 156, 162];
pub(super) const BAIL: [u8; 3] = [188, 150, 104];
pub(super) const MOULD: [u8; 3] = [226, 214, 192];
pub(super) const BAND: [u8; 3] = [120, 130, 140];

/// Colour of a stock, by its kind.
pub(super) const fn of(stock: &Material) -> [u8; 3] {
    match stock.kind {
        Kind::RoundReed | Kind::FlatReed | Kind::FlatOvalReed | Kind::HalfRoundReed => [232, 208, 164],
        Kind::ChairCane | Kind::BinderCane => [214, 172, 102],
        Kind::Splint => [214, 184, 140],
        Kind::Pin => BRASS,
        Kind::Rivet | Kind::Burr => COPPER,
    }
}

/// Colour of a stock that may be dyed; undyed stock has its own.
pub(super) fn dyed(stock: &Material, colour: Option<&Colour>) -> [u8; 3] {
    colour
        .filter(|colour| colour.name != Colour::natural().name)
        .map_or_else(|| of(stock), |colour| colour.rgb)
}

/// Colour of a wood, by its name.
pub(super) fn of_wood(name: &str) -> [u8; 3] {
    let known = [
        ("cherry", [166, 100, 62]),
        ("walnut", [96, 66, 46]),
        ("maple", [216, 186, 142]),
        ("oak", [186, 146, 96]),
        ("ash", [208, 180, 138]),
        ("birch", [214, 184, 140]),
        ("beech", [198, 152, 108]),
        ("pine", [220, 186, 132]),
    ];
    let name = name.to_lowercase();
    known.iter().find(|(wood, _)| name.contains(wood)).map_or([180, 140, 96], |(_, colour)| *colour)
}

pub(super) const fn of_ear(material: EarMaterial) -> [u8; 3] {
    match material {
        EarMaterial::Brass => BRASS,
        EarMaterial::Oak => [186, 146, 96],
        EarMaterial::Bone => [236, 228, 206],
    }
}
