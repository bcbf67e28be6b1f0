//! The page on limits tells each limit and its value.

/// The digits of a value as it is written in either place: `5_000`, `5,000 mm`, `Length::mm(5000.0)`.
fn digits(text: &str) -> String {
    text.replace(".0", "").chars().filter(char::is_ascii_digit).collect()
}

#[test]
fn each_limit_stands_on_the_page_with_its_value() {
    let source = include_str!("../src/limits.rs");
    let page = include_str!("../../../docs/limits.md");
    let limits: Vec<(&str, &str)> = source
        .lines()
        .filter_map(|line| line.strip_prefix("pub const "))
        .filter_map(|rest| Some((rest.split_once(':')?.0, rest.split_once('=')?.1)))
        .collect();
    assert!(limits.len() >= 18, "{limits:?}: are they still found?");
    for (name, value) in &limits {
        let row = page.lines().find_map(|line| line.strip_prefix(&format!("| `{name}` | ")));
        let told = row.and_then(|row| row.split(" |").next()).map(digits);
        assert_eq!(told, Some(digits(value)), "{name}");
    }
    let rows = page.lines().filter(|line| line.starts_with("| `")).count();
    assert_eq!(rows, limits.len(), "the page tells limits that are none");
}
