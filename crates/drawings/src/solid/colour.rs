//! What parts are made of, with colours for pictures and for files that carry them.

use basket::colour::Colour;
use basket::pattern::EarMaterial;
use basket::stock::{Kind, Material};

const BRASS: [u8; 3] = [196, 160, 74];
const OAK: [u8; 3] = [186, 146, 96];

/// What a part is made of: its name and its colour as red, green and blue.
#[derive(Clone, Copy, Debug)]
pub(super) struct Substance<'a> {
    pub(super) name: &'a str,
    pub(super) colour: [u8; 3],
}

pub(super) const STEEL: Substance<'_> = Substance { name: "steel", colour: [150, 156, 162] };
pub(super) const BAIL: Substance<'_> = Substance { name: "bail", colour: [188, 150, 104] };
pub(super) const KNOB: Substance<'_> = Substance { name: "knob", colour: [150, 104, 66] };
pub(super) const WASHER: Substance<'_> = Substance { name: "washer", colour: BRASS };
pub(super) const MOULD: Substance<'_> = Substance { name: "mould", colour: [226, 214, 192] };
pub(super) const BAND: Substance<'_> = Substance { name: "band", colour: [120, 130, 140] };

/// A stock, in the colour of its kind.
pub(super) fn stock(stock: &Material) -> Substance<'_> {
    let colour = match stock.kind {
        Kind::RoundReed | Kind::FlatReed | Kind::FlatOvalReed | Kind::HalfRoundReed => [232, 208, 164],
        Kind::ChairCane | Kind::BinderCane => [214, 172, 102],
        Kind::Splint => [214, 184, 140],
        Kind::Pin => BRASS,
        Kind::Rivet | Kind::Burr => [184, 115, 70],
    };
    Substance { name: &stock.name, colour }
}

/// A stock that may be dyed; undyed stock has its own colour.
pub(super) fn dyed<'a>(material: &'a Material, colour: Option<&Colour>) -> Substance<'a> {
    let own = stock(material);
    let dye = colour.filter(|colour| colour.name != Colour::natural().name);
    Substance { colour: dye.map_or(own.colour, |colour| colour.rgb), ..own }
}

/// A wood, in a colour by its name.
pub(super) fn wood(name: &str) -> Substance<'_> {
    let known = [
        ("cherry", [166, 100, 62]),
        ("walnut", [96, 66, 46]),
        ("maple", [216, 186, 142]),
        ("oak", OAK),
        ("ash", [208, 180, 138]),
        ("birch", [214, 184, 140]),
        ("beech", [198, 152, 108]),
        ("pine", [220, 186, 132]),
    ];
    let lower = name.to_lowercase();
    let colour = known.iter().find(|(wood, _)| lower.contains(wood));
    Substance { name, colour: colour.map_or([180, 140, 96], |(_, colour)| *colour) }
}

/// What ears are made of.
pub(super) const fn ear(material: EarMaterial) -> Substance<'static> {
    match material {
        EarMaterial::Brass => Substance { name: "brass", colour: BRASS },
        EarMaterial::Wood | EarMaterial::Oak => Substance { name: "oak", colour: OAK },
        EarMaterial::Bone => Substance { name: "bone", colour: [236, 228, 206] },
    }
}
