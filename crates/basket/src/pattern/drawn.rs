//! A weave drawn by hand: rows of signs as it is seen from outside, the uppermost row first.

use thiserror::Error;

use crate::limits::CHART_SIDE;
use crate::message::Message;

/// More staves or rows than a drawing can have.
const MOST: usize = CHART_SIDE as usize;

/// A weave drawn by hand; repeats round and upward.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawn {
    /// Rows from the bottom upward, `true` where the weaver is seen from outside.
    rows: Vec<Vec<bool>>,
}

/// Why a drawing cannot be woven.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum DrawnFault {
    /// No rows, or rows without staves.
    #[error("the chart is empty")]
    Empty,
    /// More than can be drawn.
    #[error("the chart has more than {MOST} rows or staves")]
    TooLarge,
    /// A row of another length than the first.
    #[error("line {line} of the chart has {got} staves, the first has {wanted}")]
    Ragged {
        /// Line, counted from 1 at the top.
        line: usize,
        /// Its staves.
        got: usize,
        /// Staves of the first line.
        wanted: usize,
    },
    /// A sign that is neither over nor under.
    #[error("line {line} of the chart, stave {stave}: `{sign}` is neither over nor under")]
    Sign {
        /// Line, counted from 1 at the top.
        line: usize,
        /// Stave, counted from 1 at the left.
        stave: usize,
        /// The sign.
        sign: char,
    },
}

impl DrawnFault {
    /// What is wrong, to be told in a reader's language.
    pub fn told(&self) -> Message {
        let number = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
        match *self {
            Self::Empty => Message::new("problem-chart-empty"),
            Self::TooLarge => Message::new("problem-chart-large").with("most", number(MOST)),
            Self::Ragged { line, got, wanted } => Message::new("problem-chart-ragged")
                .with("line", number(line))
                .with("count", number(got))
                .with("wanted", number(wanted)),
            Self::Sign { line, stave, sign } => Message::new("problem-chart-sign")
                .with("line", number(line))
                .with("stave", number(stave))
                .with("written", sign.to_string()),
        }
    }

    /// How to mend it.
    pub const fn help(&self) -> &'static str {
        match self {
            Self::Empty => {
                "write a row as a text of signs: X where the weaver is outside, . where the stave is"
            }
            Self::TooLarge => "draw one repeat: it is repeated round and upward",
            Self::Ragged { .. } => "give each line of the chart the same number of staves",
            Self::Sign { .. } => "write X where the weaver is outside and . where the stave is",
        }
    }
}

impl Drawn {
    /// From rows of cells as seen, the uppermost first; `true` where the weaver is seen from outside.
    ///
    /// # Errors
    /// An empty, ragged or endless drawing.
    pub fn of(mut rows: Vec<Vec<bool>>) -> Result<Self, DrawnFault> {
        let wanted = rows.first().map_or(0, Vec::len);
        if wanted == 0 {
            return Err(DrawnFault::Empty);
        }
        if rows.len() > MOST || wanted > MOST {
            return Err(DrawnFault::TooLarge);
        }
        if let Some((row, line)) = rows.iter().zip(1..).find(|(row, _)| row.len() != wanted) {
            return Err(DrawnFault::Ragged { line, got: row.len(), wanted });
        }
        rows.reverse();
        Ok(Self { rows })
    }

    /// As it is seen in a mirror.
    #[must_use]
    pub fn mirrored(self) -> Self {
        Self { rows: self.rows.into_iter().map(|row| row.into_iter().rev().collect()).collect() }
    }

    /// From lines of signs as seen, the uppermost first: `X`, `x`, `#` or `1` where the weaver is
    /// outside; `.`, `-`, `o` or `0` where the stave is. Spaces, commas and semicolons are passed over.
    ///
    /// # Errors
    /// An empty, ragged or endless drawing, or a sign that is neither.
    pub fn read<'t>(lines: impl IntoIterator<Item = &'t str>) -> Result<Self, DrawnFault> {
        let mut rows = Vec::new();
        for (text, line) in lines.into_iter().zip(1..) {
            let signs = text.trim_end_matches(['\r', '\n']).chars().filter(|sign| !" ,;\t".contains(*sign));
            let row: Result<Vec<bool>, DrawnFault> =
                signs.zip(1..).map(|(sign, stave)| over(sign, line, stave)).collect();
            rows.push(row?);
            if rows.len() > MOST {
                return Err(DrawnFault::TooLarge);
            }
        }
        Self::of(rows)
    }

    /// From the text of a file: a line a row; empty lines are passed over.
    ///
    /// # Errors
    /// As [`Drawn::read`]; lines are counted without the empty ones.
    pub fn text(text: &str) -> Result<Self, DrawnFault> {
        let text = text.trim_start_matches('\u{feff}');
        Self::read(text.lines().filter(|line| !line.trim().is_empty()))
    }

    /// Rows from the bottom upward, `true` where the weaver is seen from outside.
    pub fn rows(&self) -> &[Vec<bool>] {
        &self.rows
    }

    /// Columns (from 1 at the left, as seen) in which all signs are alike, so that the weaver never crosses
    /// the stave.
    pub fn columns_on_one_side(&self) -> Vec<u32> {
        let alike = |column: &usize| {
            let mut signs = self.rows.iter().filter_map(|row| row.get(*column));
            let first = signs.next();
            signs.all(|sign| Some(sign) == first)
        };
        (0..self.width() as usize).filter(alike).map(|column| column as u32 + 1).collect()
    }

    /// The drawing as a TOML value, with one row more at the bottom: the opposite of the lowest, which gives
    /// each column both signs.
    pub fn with_opposite_row(&self) -> String {
        let opposite = self.rows.first().map(|row| row.iter().map(|over| !over).collect::<Vec<_>>());
        let line = |row: &Vec<bool>| {
            let signs: String = row.iter().map(|over| if *over { 'X' } else { '.' }).collect();
            format!("\"{signs}\"")
        };
        let lines: Vec<String> = self.rows.iter().rev().chain(&opposite).map(line).collect();
        format!("[{}]", lines.join(", "))
    }

    /// Staves of one repeat.
    pub fn width(&self) -> u32 {
        self.rows.first().map_or(0, Vec::len) as u32
    }
}

fn over(sign: char, line: usize, stave: usize) -> Result<bool, DrawnFault> {
    match sign {
        'X' | 'x' | '#' | '1' => Ok(true),
        '.' | '-' | 'o' | 'O' | '0' => Ok(false),
        _ => Err(DrawnFault::Sign { line, stave, sign }),
    }
}
