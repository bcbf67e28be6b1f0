//! Chance: how many spares to make so that enough come out good.
