//! What the commands that set sheets have in common.

use std::path::PathBuf;

use basket::pattern::Units;
use basket::{Basket, Draft};
use clap::ValueEnum;
use sheets::{Paper, SheetError, Templates};
use words::Words;

use super::own_templates;
use super::setting::within_limits;
use crate::failure::Failure;
use crate::progress::Progress;

/// On what sheets are printed, and how they look.
#[derive(Debug, clap::Args)]
pub(super) struct Printing {
    /// Paper of the sheets [default: letter for inches, a4 for millimetres].
    #[arg(long, value_enum)]
    paper: Option<PaperArg>,

    /// A folder with your own templates of the sheets (see `stavewright templates`).
    #[arg(long, value_name = "DIR")]
    templates: Option<PathBuf>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum PaperArg {
    /// 8 1/2 × 11 in.
    Letter,
    /// 210 × 297 mm.
    A4,
}

impl Printing {
    pub(super) fn paper(&self, basket: &Basket) -> Paper {
        self.paper_for(basket.units)
    }

    /// The paper of a sheet about no basket, for readers of these units.
    pub(super) fn paper_for(&self, units: Units) -> Paper {
        match (self.paper, units) {
            (Some(PaperArg::Letter), _) | (None, Units::Inches) => Paper::Letter,
            (Some(PaperArg::A4), _) | (None, Units::Millimetres) => Paper::A4,
        }
    }

    pub(super) fn templates(&self) -> Result<Templates, Failure> {
        Ok(self.templates.as_deref().map(own_templates::read).transpose()?.unwrap_or_default())
    }

    /// Sets sheets; within a time where the templates are somebody's own, for those may have no end.
    pub(super) fn set<T: Send + 'static>(
        &self,
        draft: &Draft,
        words: &Words,
        work: impl FnOnce(&Draft, &Words, &mut dyn FnMut(&str)) -> Result<T, SheetError> + Send + 'static,
    ) -> Result<T, Failure> {
        if self.templates.is_none() {
            let progress = Progress::begin();
            return Ok(work(draft, words, &mut |sheet| progress.say(&format!("setting {sheet}")))?);
        }
        let draft = draft.clone();
        self.set_alone(words, move |words, say| work(&draft, words, say))
    }

    /// The same for a sheet about no basket.
    pub(super) fn set_alone<T: Send + 'static>(
        &self,
        words: &Words,
        work: impl FnOnce(&Words, &mut dyn FnMut(&str)) -> Result<T, SheetError> + Send + 'static,
    ) -> Result<T, Failure> {
        let progress = Progress::begin();
        if self.templates.is_none() {
            return Ok(work(words, &mut |sheet| progress.say(&format!("setting {sheet}")))?);
        }
        let words = Words::new(words.language(), words.units());
        within_limits(move |say| work(&words, say), &progress)
    }
}
