//! Cells of tables that spreadsheets open.

use std::borrow::Cow;

/// What a spreadsheet takes for the beginning of a formula, and the sign that keeps it from doing so. The
/// signs are those of OWASP's page on CSV injection.
const FIRST: [char; 12] =
    ['\'', '=', '+', '-', '@', '\t', '\r', '\n', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'];

/// A cell that no spreadsheet takes for a formula: one that begins as a formula may, or with an
/// apostrophe, has an apostrophe put before it. [`plain`] gives the exact text back.
pub fn guarded(cell: &str) -> Cow<'_, str> {
    if cell.starts_with(FIRST) { format!("'{cell}").into() } else { cell.into() }
}

/// The text of a cell that was guarded. An apostrophe that guards nothing, as in a name, stays.
pub fn plain(cell: &str) -> &str {
    cell.strip_prefix('\'').filter(|text| text.starts_with(FIRST)).unwrap_or(cell)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_guarded_cell_is_read_back_without_loss() {
        for first in FIRST {
            for text in [first.to_string(), format!("{first}1+1"), format!("'{first}"), format!("{first}'")] {
                let cell = guarded(&text);
                assert!(cell.starts_with('\''), "{text:?}");
                assert_eq!(plain(&cell), text);
            }
        }
        for text in ["", "a hank", "1=1", "\u{e4}"] {
            assert_eq!((guarded(text).as_ref(), plain(text)), (text, text));
        }
        // Typed by hand, not guarded: the apostrophe is part of the name.
        assert_eq!(plain("'s hank"), "'s hank");
    }
}
