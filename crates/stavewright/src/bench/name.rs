//! Names of pattern files: those of a file in the folder, everywhere, and of nothing else.

use axum::http::StatusCode;
use basket::message::Message;

use super::refusal::Refusal;

/// No name of a file is longer, in bytes.
const LONGEST: usize = 120;
/// Names that some systems keep for devices, whatever their ending (from memory: the list of reserved names
/// in the documentation of file names on Windows).
const DEVICES: [&str; 4] = ["con", "prn", "aux", "nul"];
/// The same, with a digit after them.
const NUMBERED: [&str; 2] = ["com", "lpt"];

/// Why a name cannot be that of a pattern.
enum Wrong {
    /// It has signs that file names cannot have, or that are not seen.
    Signs,
    /// Some systems keep it for a device.
    Device,
}

/// Whether a name can be that of a pattern.
pub(crate) fn is_plain(name: &str) -> bool {
    wrong(name).is_none()
}

/// Refuses a name that cannot be that of a pattern.
pub(crate) fn plain(name: &str) -> Result<(), Refusal> {
    let Some(wrong) = wrong(name) else { return Ok(()) };
    let message = Message::new(match wrong {
        Wrong::Signs => "form-name-signs",
        Wrong::Device => "form-name-device",
    });
    Err(Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, "name"))
}

fn wrong(name: &str) -> Option<Wrong> {
    let odd = |sign: char| sign.is_control() || is_unseen(sign) || "/\\:*?\"<>|".contains(sign);
    let edge = |sign: char| sign == '.' || sign.is_whitespace();
    let ends = name.is_empty() || name.starts_with(edge) || name.ends_with(edge);
    if ends || name.len() > LONGEST || name.chars().any(odd) {
        return Some(Wrong::Signs);
    }
    is_device(name).then_some(Wrong::Device)
}

/// Signs that turn the direction of reading, join or part others, or take no room (Unicode's general
/// category Cf, the blocks that names could hold): two names that look alike would be two files.
fn is_unseen(sign: char) -> bool {
    matches!(sign,
        '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}' | '\u{e0000}'..='\u{e007f}')
}

fn is_device(name: &str) -> bool {
    let stem = name.split('.').next().unwrap_or_default().trim_end().to_lowercase();
    let mut signs = stem.chars();
    let digit = signs.next_back().is_some_and(|sign| "123456789\u{b9}\u{b2}\u{b3}".contains(sign));
    DEVICES.contains(&stem.as_str()) || digit && NUMBERED.contains(&signs.as_str())
}

#[cfg(test)]
mod tests {
    use words::Language;

    use super::*;

    #[test]
    fn devices_and_unseen_signs_are_no_names() {
        for name in ["CON", "nul", "Aux.old", "com1", "LPT9", "COM\u{b9}", "nul "] {
            assert!(!is_plain(name), "{name:?}");
        }
        for name in ["bread\u{202e}lmot", "a\u{200b}b", "\u{feff}basket", "a\u{2066}b"] {
            assert!(!is_plain(name), "{name:?}");
        }
        for name in ["console", "con basket", "Körbchen 2", "com", "com10", "籠", "nullam"] {
            assert!(is_plain(name), "{name:?}");
        }
    }

    #[test]
    fn why_is_said_in_the_readers_language() {
        let said = |language| plain("CON").unwrap_err().told(language).fault().clone();
        let (english, german) = (said(Language::English), said(Language::German));
        assert!(english.what.contains("some systems") && german.what.contains("Systeme"), "{}", german.what);
        assert!(!english.how_to_mend.contains("form-") && english.how_to_mend != german.how_to_mend);
    }
}
