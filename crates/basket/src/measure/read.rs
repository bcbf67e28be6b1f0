//! Reading lengths as makers write them: `5 5/8 in`, `5-5/8"`, `1 ft 2 in`, `14.3 cm`, `5⅝`.

use std::ops::Range;

use super::{Length, Unit};
use crate::message::Message;

/// A text that is not a length: what is wrong, and where in the text.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{fault}")]
pub struct LengthError {
    /// What is wrong.
    pub fault: LengthFault,
    /// Where, as a range of bytes in the text.
    pub span: Range<usize>,
}

/// What is wrong with a length.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LengthFault {
    /// Nothing is written.
    #[error("no length is written here")]
    Empty,
    /// A minus sign stands in front.
    #[error("a length cannot be negative")]
    Negative,
    /// Something other than a number.
    #[error("`{0}` is not a number")]
    NotANumber(String),
    /// No unit, and none to fall back on.
    #[error("the unit is missing")]
    NoUnit,
    /// A word that is no unit.
    #[error("`{found}` is not a unit of length")]
    UnknownUnit {
        /// The word.
        found: String,
        /// The unit that was perhaps meant.
        nearest: Option<&'static str>,
    },
    /// A fraction over nothing.
    #[error("a fraction cannot have 0 below the line")]
    ZeroDenominator,
    /// A fraction of one or more after a whole number.
    #[error("the fraction `{0}` after a whole number must be less than one")]
    ImproperFraction(String),
    /// A comma that may part thousands or decimals.
    #[error("`{0}` can be read in two ways")]
    AmbiguousComma(String),
    /// Something after the length.
    #[error("`{0}` does not belong to a length")]
    Trailing(String),
    /// More than a number can hold.
    #[error("this number is far too large")]
    TooLarge,
}

impl LengthError {
    /// What is wrong, to be told in a reader's language.
    pub fn told(&self) -> Message {
        let of = |id, found: &str| Message::new(id).with("written", found);
        match &self.fault {
            LengthFault::Empty => Message::new("problem-length-empty"),
            LengthFault::Negative => Message::new("problem-length-negative"),
            LengthFault::NotANumber(found) => of("problem-length-number", found),
            LengthFault::NoUnit => Message::new("problem-length-no-unit"),
            LengthFault::UnknownUnit { found, nearest } => {
                of("problem-length-unit", found).with("near", nearest.unwrap_or_default())
            }
            LengthFault::ZeroDenominator => Message::new("problem-length-zero"),
            LengthFault::ImproperFraction(found) => of("problem-length-fraction", found),
            LengthFault::AmbiguousComma(found) => of("problem-length-comma", found),
            LengthFault::Trailing(found) => of("problem-length-rest", found),
            LengthFault::TooLarge => Message::new("problem-length-large"),
        }
    }

    /// How to mend it.
    pub fn help(&self) -> String {
        match &self.fault {
            LengthFault::Empty | LengthFault::NotANumber(_) => {
                "write a number and a unit, such as 5 5/8 in or 143 mm".to_owned()
            }
            LengthFault::Negative => "leave the minus sign out".to_owned(),
            LengthFault::NoUnit => "add in, ft, mm, cm or m".to_owned(),
            LengthFault::UnknownUnit { nearest: Some(nearest), .. } => format!("did you mean `{nearest}`?"),
            LengthFault::UnknownUnit { nearest: None, .. } => "use in, ft, mm, cm or m".to_owned(),
            LengthFault::ZeroDenominator => "write the fraction with 2, 4, 8, 16, 32 or 64 below".to_owned(),
            LengthFault::ImproperFraction(_) => "add the fraction to the whole number".to_owned(),
            LengthFault::AmbiguousComma(number) => format!(
                "write {} for thousands or {} for decimals",
                number.replace(',', ""),
                number.replace(',', ".")
            ),
            LengthFault::Trailing(_) => {
                "take it out: a length is one number with one unit, or feet and inches as in 1 ft 2 in"
                    .to_owned()
            }
            LengthFault::TooLarge => "check the number".to_owned(),
        }
    }
}

impl Length {
    /// Reads a length. A number without unit is meant in `default`, or is an error without one.
    ///
    /// Fractions (`5 5/8`, `5-5/8`, `5⅝`), decimals with point or comma, feet and inches are read;
    /// a comma before exactly three digits (`1,200`) is refused because it can mean two things.
    ///
    /// ```
    /// use basket::measure::{Length, Unit};
    /// assert_eq!(Length::parse("5 5/8 in", None), Ok(Length::inches(5.625)));
    /// assert_eq!(Length::parse("143", Some(Unit::Millimetre)), Ok(Length::mm(143.0)));
    /// assert_eq!(Length::parse("5 inn", None).unwrap_err().help(), "did you mean `in`?");
    /// ```
    ///
    /// # Errors
    /// Anything else, with the place in the text and how to mend it.
    pub fn parse(text: &str, default: Option<Unit>) -> Result<Self, LengthError> {
        let mut scan = Scan { text, at: 0 };
        scan.skip_spaces();
        if scan.rest().is_empty() {
            return Err(LengthError { fault: LengthFault::Empty, span: 0..text.len() });
        }
        if scan.peek().is_some_and(|sign| "-−–—‐‑".contains(sign)) {
            return Err(scan.fault_here(LengthFault::Negative));
        }
        let (first, unit) = part(&mut scan, default)?;
        let mut length = first;
        if unit == Unit::Foot
            && scan.peek().is_some_and(|next| next.is_ascii_digit() || vulgar(next).is_some())
        {
            let start = scan.at;
            let (second, unit) = part(&mut scan, None)?;
            if unit != Unit::Inch {
                return Err(scan.trailing_from(start));
            }
            length += second;
        }
        if !scan.rest().is_empty() {
            return Err(scan.trailing_from(scan.at));
        }
        if length.to_mm().is_finite() {
            Ok(length)
        } else {
            Err(LengthError { fault: LengthFault::TooLarge, span: 0..text.len() })
        }
    }
}

/// A number and its unit, and the spaces after them.
fn part(scan: &mut Scan, default: Option<Unit>) -> Result<(Length, Unit), LengthError> {
    let start = scan.at;
    let number = quantity(scan)?;
    let end = scan.at;
    scan.skip_spaces();
    let unit = match unit(scan)? {
        Some(unit) => unit,
        None if scan.rest().is_empty() || default.is_some() => {
            default.ok_or(LengthError { fault: LengthFault::NoUnit, span: start..end })?
        }
        None => return Err(scan.trailing_from(scan.at)),
    };
    scan.skip_spaces();
    Ok((unit.one() * number, unit))
}

/// A whole number, a decimal, a fraction, or a whole number and a fraction.
fn quantity(scan: &mut Scan) -> Result<f64, LengthError> {
    if let Some(fraction) = scan.take_vulgar() {
        return Ok(fraction);
    }
    let start = scan.at;
    let Some((number, whole)) = decimal(scan)? else {
        let word = scan.word_at(start);
        return Err(LengthError {
            span: start..start + word.len(),
            fault: LengthFault::NotANumber(shorten(word)),
        });
    };
    if !whole {
        return Ok(number);
    }
    if scan.take_slash() {
        return over(scan, number);
    }
    Ok(number + fraction_after_whole(scan)?)
}

/// The fraction in `5 5/8`, `5-5/8` or `5⅝`; zero when there is none.
fn fraction_after_whole(scan: &mut Scan) -> Result<f64, LengthError> {
    let back = scan.at;
    if scan.peek().is_some_and(|joint| "-–‐‑".contains(joint)) {
        scan.bump();
    } else {
        scan.skip_spaces();
    }
    if let Some(fraction) = scan.take_vulgar() {
        return Ok(fraction);
    }
    let start = scan.at;
    let digits = scan.take_digits();
    if digits.is_empty() || !scan.take_slash() {
        scan.at = back;
        return Ok(0.0);
    }
    let fraction = over(scan, value_of(digits))?;
    if fraction < 1.0 {
        return Ok(fraction);
    }
    let found = shorten(scan.text.get(start..scan.at).unwrap_or_default());
    Err(LengthError { fault: LengthFault::ImproperFraction(found), span: start..scan.at })
}

/// The denominator below a numerator already read.
fn over(scan: &mut Scan, numerator: f64) -> Result<f64, LengthError> {
    let start = scan.at;
    let digits = scan.take_digits();
    if digits.is_empty() {
        let slash =
            scan.text.get(..start).and_then(|before| before.chars().next_back()).map_or(0, char::len_utf8);
        let word = scan.word_at(start - slash);
        return Err(LengthError {
            span: start - slash..start - slash + word.len(),
            fault: LengthFault::NotANumber(shorten(word)),
        });
    }
    let denominator = value_of(digits);
    if denominator > 0.0 {
        Ok(numerator / denominator)
    } else {
        Err(LengthError { fault: LengthFault::ZeroDenominator, span: start..scan.at })
    }
}

/// A number with or without decimals, and whether it was written whole.
fn decimal(scan: &mut Scan) -> Result<Option<(f64, bool)>, LengthError> {
    let start = scan.at;
    let whole = scan.take_digits();
    let back = scan.at;
    let mark = scan.peek().filter(|mark| *mark == '.' || *mark == ',');
    let decimals = if mark.is_some() {
        scan.bump();
        scan.take_digits()
    } else {
        ""
    };
    if decimals.is_empty() {
        scan.at = back;
        return Ok((!whole.is_empty()).then(|| (value_of(whole), true)));
    }
    if mark == Some(',') && decimals.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0') {
        let found = scan.text.get(start..scan.at).unwrap_or_default().to_owned();
        return Err(LengthError { fault: LengthFault::AmbiguousComma(found), span: start..scan.at });
    }
    Ok(Some((value_of(&format!("0{whole}.{decimals}")), false)))
}

fn unit(scan: &mut Scan) -> Result<Option<Unit>, LengthError> {
    let mut letters = scan.rest().strip_prefix('-').unwrap_or(scan.rest()).chars();
    if scan.peek() == Some('-') && letters.next().is_some_and(char::is_alphabetic) {
        scan.bump();
    }
    let start = scan.at;
    let word = if scan.peek().is_some_and(char::is_alphabetic) {
        scan.take_while(|letter| letter.is_alphabetic() || letter == '.')
    } else {
        scan.take_while(|mark| "\"″”'′’".contains(mark))
    };
    if word.is_empty() {
        return Ok(None);
    }
    Unit::from_spelling(word).map(Some).ok_or_else(|| LengthError {
        fault: LengthFault::UnknownUnit { found: shorten(word), nearest: Unit::nearest_spelling(word) },
        span: start..scan.at,
    })
}

/// Only digits and at most one point reach this, so it is always a number (infinite when too long).
fn value_of(digits: &str) -> f64 {
    digits.parse().unwrap_or(f64::INFINITY)
}

fn vulgar(sign: char) -> Option<f64> {
    let (numerator, denominator) = match sign {
        '½' => (1, 2),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅒' => (1, 10),
        _ => return None,
    };
    Some(f64::from(numerator) / f64::from(denominator))
}

fn shorten(text: &str) -> String {
    const LONGEST: usize = 24;
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        None => text.to_owned(),
    }
}

/// A place in a text.
struct Scan<'t> {
    text: &'t str,
    at: usize,
}

impl<'t> Scan<'t> {
    fn rest(&self) -> &'t str {
        self.text.get(self.at..).unwrap_or_default()
    }
    fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }
    fn bump(&mut self) {
        self.at += self.peek().map_or(0, char::len_utf8);
    }
    fn take_while(&mut self, belongs: impl Fn(char) -> bool) -> &'t str {
        let rest = self.rest();
        let end = rest.find(|next| !belongs(next)).unwrap_or(rest.len());
        self.at += end;
        rest.get(..end).unwrap_or_default()
    }
    fn take_digits(&mut self) -> &'t str {
        self.take_while(|digit| digit.is_ascii_digit())
    }
    fn skip_spaces(&mut self) {
        self.take_while(char::is_whitespace);
    }
    fn take_vulgar(&mut self) -> Option<f64> {
        let fraction = self.peek().and_then(vulgar)?;
        self.bump();
        Some(fraction)
    }
    fn take_slash(&mut self) -> bool {
        let slash = self.peek().is_some_and(|mark| "/⁄∕".contains(mark));
        if slash {
            self.bump();
        }
        slash
    }
    /// From a place to the next space.
    fn word_at(&self, start: usize) -> &'t str {
        self.text.get(start..).unwrap_or_default().split_whitespace().next().unwrap_or_default()
    }
    fn fault_here(&self, fault: LengthFault) -> LengthError {
        LengthError { fault, span: self.at..self.at + self.peek().map_or(0, char::len_utf8) }
    }
    fn trailing_from(&self, start: usize) -> LengthError {
        let found = self.text.get(start..).unwrap_or_default().trim_end();
        LengthError { span: start..start + found.len(), fault: LengthFault::Trailing(shorten(found)) }
    }
}
