//! Texts that nobody can guess.

use std::fmt::Write;

use axum::http::StatusCode;

use super::refusal::Refusal;

/// 128 bits of chance in 32 hexadecimal digits.
pub(crate) fn random_text() -> Result<String, Refusal> {
    let mut bytes = [0_u8; 16];
    getrandom::fill(&mut bytes).map_err(|error| {
        Refusal::new(
            StatusCode::INTERNAL_SERVER_ERROR,
            format!("this machine gives no random numbers: {error}"),
            "the server",
            "Start it again.",
        )
    })?;
    Ok(hexadecimal(&bytes))
}

/// Bytes in hexadecimal digits.
pub(crate) fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// Whether two texts are the same, in a time that does not tell where they differ.
pub(crate) fn is_same(one: &str, other: &str) -> bool {
    let pairs = one.bytes().zip(other.bytes());
    one.len() == other.len() && pairs.fold(0, |found, (one, other)| found | (one ^ other)) == 0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_are_compared_whole() {
        assert!(is_same("abc", "abc"));
        assert!(!is_same("abc", "abd") && !is_same("abc", "ab") && !is_same("", "a"));
    }

    #[test]
    fn texts_differ_each_time() {
        let (one, other) = (random_text().unwrap(), random_text().unwrap());
        assert_eq!(one.len(), 32);
        assert_ne!(one, other);
    }
}
