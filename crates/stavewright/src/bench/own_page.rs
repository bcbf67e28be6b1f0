//! Pages that a packet holds, under a policy of their own.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// The policy for a page of a packet: it shows its own style and the pictures it carries, and nothing runs.
/// None for files that are no pages.
pub(crate) fn policy(name: &str, bytes: &[u8]) -> Option<String> {
    let is_page = name.rsplit_once('.').is_some_and(|(_, ending)| ending == "html");
    let page = std::str::from_utf8(bytes).ok().filter(|_| is_page)?;
    let styles = styles(page).map(|style| format!(" 'sha256-{}'", STANDARD.encode(Sha256::digest(style))));
    let styles: String = styles.collect();
    let styles = if styles.is_empty() { " 'none'".to_owned() } else { styles };
    Some(format!(
        "default-src 'none'; style-src{styles}; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'"
    ))
}

/// The contents of the page's style elements.
fn styles(page: &str) -> impl Iterator<Item = &str> {
    page.split("<style")
        .skip(1)
        .filter_map(|rest| rest.split_once('>')?.1.split_once("</style>").map(|(style, _)| style))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The hash of `p{color:red}` was computed with `printf 'p{color:red}' | openssl dgst -sha256 -binary | base64`.
    #[test]
    fn a_style_is_allowed_by_its_hash() {
        let policy =
            policy("handout.html", b"<head><style media=\"all\">p{color:red}</style></head>").unwrap();
        assert!(
            policy.contains("style-src 'sha256-p0bF+un5yUb9MBO6xRb8kPHlY2BdpHVtLiFkDrZPF64=';"),
            "{policy}"
        );
        assert!(!policy.contains("unsafe") && policy.starts_with("default-src 'none'"), "{policy}");
        assert!(super::policy("cuts.csv", b"<style>p{}</style>").is_none());
    }
}
