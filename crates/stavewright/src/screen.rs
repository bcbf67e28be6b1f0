//! The terminal: width, colours, and printing without ever failing loudly.
//!
//! Of what a terminal obeys, only our own styles go out (see [`signs`]). Colour goes out only to a terminal that wants it (`anstream` honours `NO_COLOR` and `CLICOLOR`).

use std::io::{self, Write};

use anstyle::{AnsiColor, Style};
use serde::Serialize;
use textwrap::{WordSeparator, WordSplitter};

use crate::signs;

/// No line of an answer is longer.
pub(crate) const WIDTH: usize = 80;

/// Headings.
pub(crate) const HEADING: Style = Style::new().bold();
/// What cannot be woven; errors.
pub(crate) const STOP: Style = AnsiColor::Red.on_default().bold();
/// What will show or give trouble.
pub(crate) const CARE: Style = AnsiColor::Yellow.on_default().bold();
/// Good to know.
pub(crate) const NOTE: Style = AnsiColor::Cyan.on_default().bold();

/// Wraps a text at spaces only, so that codes, keys and file names stay whole; `first` stands before
/// its first line, `rest` before the others.
pub(crate) fn wrap(text: &str, first: &str, rest: &str) -> String {
    let options = textwrap::Options::new(WIDTH)
        .word_separator(WordSeparator::AsciiSpace)
        .word_splitter(WordSplitter::NoHyphenation)
        .initial_indent(first)
        .subsequent_indent(rest);
    textwrap::fill(text, options)
}

/// Prints an answer on standard output.
pub(crate) fn print(text: &str) -> io::Result<()> {
    write(&signs::styled(text))
}

/// Says something on standard error, if anyone is there to hear it.
pub(crate) fn tell(text: &str) {
    let mut out = anstream::stderr().lock();
    let _ = out.write_all(signs::styled(text).as_bytes()).and_then(|()| out.flush());
}

/// Prints a value for other programs.
pub(crate) fn print_json(value: &impl Serialize) -> io::Result<()> {
    write(&(signs::json(&serde_json::to_string_pretty(value)?) + "\n"))
}

fn write(text: &str) -> io::Result<()> {
    let mut out = anstream::stdout().lock();
    out.write_all(text.as_bytes())?;
    out.flush()
}

#[cfg(test)]
mod tests {
    use super::{WIDTH, wrap};

    #[test]
    fn codes_stay_whole() {
        for padding in 0..WIDTH {
            let wrapped = wrap(&format!("{} (base-wood-moves)", "x ".repeat(padding)), "", "  ");
            assert!(wrapped.contains("(base-wood-moves)"), "{wrapped}");
            assert!(wrapped.lines().all(|line| line.len() <= WIDTH), "{wrapped}");
        }
    }
}
