//! Every key that a pattern file knows, section by section.

/// Keys at the top of a pattern: single values first, then the sections.
pub const PATTERN: &[&str] = &[
    "title",
    "units",
    "language",
    "finish",
    "mould",
    "base",
    "staves",
    "weave",
    "rim",
    "filler",
    "lashing",
    "pins",
    "ears",
    "handle",
    "note",
    "colours",
    "materials",
];
/// Keys of `[mould]`.
pub const MOULD: &[&str] = &["shape", "girths", "base", "rim", "height", "side"];
/// Keys of `[base]`.
pub const BASE: &[&str] = &["diameter", "thickness", "groove", "wood", "screw"];
/// Keys of `groove = { … }` in `[base]`.
pub const GROOVE: &[&str] = &["depth", "width"];
/// Keys of `[staves]`.
pub const STAVES: &[&str] =
    &["count", "stock", "width", "gap", "taper", "length", "spares", "oval", "colours"];
/// Keys of `taper = { … }` in `[staves]`.
pub const TAPER: &[&str] = &["from", "foot"];
/// Keys of `[weave]`.
pub const WEAVE: &[&str] = &["courses", "shrink", "float-staves", "float-rows"];
/// Keys of one course in `[weave]`.
pub const COURSE: &[&str] = &[
    "weave",
    "weaver",
    "weavers",
    "colours",
    "strands",
    "way",
    "lean",
    "step",
    "band",
    "step-up",
    "start",
    "chart",
    "chart-file",
    "doubled",
    "rows",
    "until",
    "packing",
    "spaced",
];
/// Keys of `[rim]`.
pub const RIM: &[&str] = &["stock", "inner", "lap"];
/// Keys of `[filler]`.
pub const FILLER: &[&str] = &["stock"];
/// Keys of `[lashing]`.
pub const LASHING: &[&str] = &["weaver", "every", "style", "tail"];
/// Keys of `[pins]`.
pub const PINS: &[&str] = &["stock", "every"];
/// Keys of `[ears]`.
pub const EARS: &[&str] = &["material", "placing", "width", "thickness", "hole", "tail"];
/// Keys of `[handle]`.
pub const HANDLE: &[&str] = &["kind", "curve", "rise", "corner", "width", "thickness", "rivet"];
/// Keys of one `[[note]]`.
pub const NOTE: &[&str] = &["step", "text", "photo", "caption"];
/// Keys at the top of a shelf file.
pub const SHELF: &[&str] = &["units", "materials"];
/// Keys of one material in `[materials]`.
pub const MATERIAL: &[&str] = &[
    "like",
    "kind",
    "width",
    "thickness",
    "diameter",
    "length",
    "put-up",
    "holds",
    "strand",
    "soak",
    "bend",
    "shrink",
];
