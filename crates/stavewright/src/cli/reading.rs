//! What the commands that read a pattern have in common.

use std::path::{Path, PathBuf};

use basket::pattern::{Pattern, Units};
use basket::{Basket, Catalogue};
use clap::ValueEnum;

use crate::drawn;
use crate::failure::Failure;
use crate::input::{self, Origin};

/// Where the pattern and its materials come from.
#[derive(Debug, clap::Args)]
pub(super) struct Reading {
    /// The pattern file; - reads standard input.
    pub(super) pattern: PathBuf,

    /// Units to print first, whatever the pattern is written in.
    #[arg(long, value_name = "UNITS")]
    units: Option<UnitsArg>,

    /// A file with your own materials; they stand before the catalogue's.
    #[arg(long, value_name = "FILE")]
    shelf: Option<PathBuf>,
}

/// Units by the short names that makers type.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum UnitsArg {
    /// Inches and fractions.
    In,
    /// Millimetres.
    Mm,
}

impl From<UnitsArg> for Units {
    fn from(units: UnitsArg) -> Self {
        match units {
            UnitsArg::In => Self::Inches,
            UnitsArg::Mm => Self::Millimetres,
        }
    }
}

impl Reading {
    /// Reads the pattern and computes the basket.
    pub(super) fn basket(&self) -> Result<Basket, Failure> {
        let catalogue = catalogue(self.shelf.as_deref())?;
        Ok(basket::assemble(&self.pattern(&catalogue)?, &catalogue))
    }

    fn pattern(&self, catalogue: &Catalogue) -> Result<Pattern, Failure> {
        let text = input::read(Origin::of(&self.pattern))?;
        let mut pattern = basket::pattern::read(&text.content, catalogue)
            .map_err(|problems| Failure::Misread { text, problems })?;
        if let Some(units) = self.units {
            pattern.units = units.into();
        }
        drawn::load(&mut pattern, Origin::of(&self.pattern).folder())?;
        Ok(pattern)
    }
}

/// The catalogue, with the maker's own materials before it.
pub(super) fn catalogue(shelf: Option<&Path>) -> Result<Catalogue, Failure> {
    let catalogue = Catalogue::built_in();
    let Some(shelf) = shelf else { return Ok(catalogue.clone()) };
    let text = input::read(Origin::of(shelf))?;
    catalogue.with_shelf(&text.content).map_err(|problems| Failure::Misread { text, problems })
}
