//! Signs in somebody else's text that a terminal would obey instead of showing them.

use std::borrow::Cow;
use std::fmt::Write;
use std::ops::Range;

/// What stands for a sign on the screen; none for one that may go there.
///
/// Control signs are shown by their pictures, others by their numbers. Marks that turn the direction of
/// writing could make a line read otherwise than it is.
fn stand_in(sign: char) -> Option<String> {
    match sign {
        '\n' | '\t' => None,
        '\0'..='\x1f' => char::from_u32(0x2400 + u32::from(sign)).map(String::from),
        '\x7f' => Some("\u{2421}".to_owned()),
        _ if obeyed(sign) => Some(format!("\\u{{{:x}}}", u32::from(sign))),
        _ => None,
    }
}

/// Whether a sign above ASCII is obeyed and not shown: controls, separators of lines, marks of direction
/// (the `Bidi_Control` property of Unicode).
pub(crate) fn obeyed(sign: char) -> bool {
    matches!(sign,
        '\x7f'..='\u{9f}' | '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// The text with all of its signs shown.
pub(crate) fn shown(text: &str) -> Cow<'_, str> {
    if text.chars().any(|sign| stand_in(sign).is_some()) {
        Cow::Owned(with_place(text, 0..0).0)
    } else {
        Cow::Borrowed(text)
    }
}

/// The same, with the place in it that was `place` in the text. The signs that end a line stay.
pub(crate) fn with_place(text: &str, place: Range<usize>) -> (String, Range<usize>) {
    let mut shown = String::with_capacity(text.len());
    let (mut start, mut end) = (None, None);
    for (at, sign) in text.char_indices() {
        if at >= place.start {
            start.get_or_insert(shown.len());
        }
        if at >= place.end {
            end.get_or_insert(shown.len());
        }
        let ends_line = sign == '\r' && text.get(at + 1..).is_some_and(|rest| rest.starts_with('\n'));
        match stand_in(sign).filter(|_| !ends_line) {
            Some(other) => shown.push_str(&other),
            None => shown.push(sign),
        }
    }
    let place = start.unwrap_or(shown.len())..end.unwrap_or(shown.len());
    (shown, place)
}

/// An answer as it goes to the screen: of all that a terminal obeys only our own styles are left.
pub(crate) fn styled(answer: &str) -> String {
    let mut said = String::with_capacity(answer.len());
    let mut rest = answer;
    while let Some(sign) = rest.chars().next() {
        let length = style(rest).unwrap_or_else(|| {
            match stand_in(sign) {
                Some(other) => said.push_str(&other),
                None => said.push(sign),
            }
            0
        });
        said.push_str(rest.get(..length).unwrap_or_default());
        rest = rest.get(length.max(sign.len_utf8())..).unwrap_or_default();
    }
    said
}

/// How long the style is with which a text begins: weight, slant, line below and colour, never what
/// hides a text (ECMA-48, §8.3.117).
fn style(text: &str) -> Option<usize> {
    let (parameters, _) = text.strip_prefix("\x1b[")?.split_once('m')?;
    let plain = |parameter: &str| {
        parameter.is_empty() || matches!(parameter.parse(), Ok(0..=4 | 22..=24 | 30..=39 | 90..=97))
    };
    let numbers = |text: &str| text.bytes().all(|sign| sign.is_ascii_digit() || sign == b';');
    let of_colour = parameters.starts_with("38;") && numbers(parameters);
    (of_colour || parameters.split(';').all(plain)).then_some("\x1b[m".len() + parameters.len())
}

/// JSON in which every sign that is obeyed is written by its number: the same to a program.
pub(crate) fn json(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for sign in text.chars() {
        if obeyed(sign) {
            let _ = write!(safe, "\\u{:04x}", u32::from(sign));
        } else {
            safe.push(sign);
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_obeyed_is_shown() {
        assert_eq!(shown("tin\x1b[2Jpail\r\x07\u{7f}"), "tin␛[2Jpail␍␇␡");
        assert_eq!(shown("a\u{202e}b\u{9b}2J"), "a\\u{202e}b\\u{9b}2J");
        let plain = "Körbe, 4 7/8 in\n\tfür 木 und \u{200d}";
        assert!(matches!(shown(plain), Cow::Borrowed(same) if same == plain));
    }

    #[test]
    fn a_place_stays_on_its_words() {
        let text = "a = \"\x1b[1m\"\r\nb\u{202e} = fault\n";
        let at = text.find("fault").unwrap();
        let (shown, place) = with_place(text, at..at + 5);
        assert_eq!(&shown[place], "fault");
        assert_eq!(shown, "a = \"␛[1m\"\r\nb\\u{202e} = fault\n");
        assert_eq!(with_place("abc", 3..3).1, 3..3);
    }

    #[test]
    fn only_our_styles_reach_the_screen() {
        let ours = "\x1b[1m\x1b[31merror:\x1b[0m word\x1b[38;5;9m\x1b[m\n";
        assert_eq!(styled(ours), ours);
        for (theirs, shown) in [
            ("\x1b[8mhidden", "␛[8mhidden"),
            ("\x1b]0;title\x07", "␛]0;title␇"),
            ("\x1b[2J\x1bm", "␛[2J␛m"),
            ("\x1b[1", "␛[1"),
            ("\u{9b}8m", "\\u{9b}8m"),
        ] {
            assert_eq!(styled(theirs), shown);
        }
    }

    #[test]
    fn json_says_the_same() {
        let text = "a\u{202e}b\u{85}c\u{7f} ü";
        let safe = json(&serde_json::to_string(text).unwrap());
        assert!(!safe.chars().any(obeyed), "{safe}");
        assert_eq!(serde_json::from_str::<String>(&safe).unwrap(), text);
    }
}
