//! Groups of keys.

/// Values that are thought of together, in making order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The basket as a whole.
    Basket,
    /// The mould.
    Mould,
    /// The base.
    Base,
    /// The staves.
    Staves,
    /// The weaving.
    Weave,
    /// The rim, its filler and its pins.
    Rim,
    /// The lashing.
    Lashing,
    /// Ears and handle.
    Handle,
    /// The lid.
    Lid,
    /// The finish.
    Finish,
}

impl Group {
    /// All groups in making order.
    pub const ALL: [Self; 10] = [
        Self::Basket,
        Self::Mould,
        Self::Base,
        Self::Staves,
        Self::Weave,
        Self::Rim,
        Self::Lashing,
        Self::Handle,
        Self::Lid,
        Self::Finish,
    ];

    /// Its name in data.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Basket => "basket",
            Self::Mould => "mould",
            Self::Base => "base",
            Self::Staves => "staves",
            Self::Weave => "weave",
            Self::Rim => "rim",
            Self::Lashing => "lashing",
            Self::Handle => "handle",
            Self::Lid => "lid",
            Self::Finish => "finish",
        }
    }
}
