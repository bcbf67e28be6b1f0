//! What lies in a packet.

/// Every file that a packet may hold.
pub(super) const NAMES: [&str; 18] = [
    "handout.pdf",
    "handout.html",
    "teacher.pdf",
    "teacher.html",
    "maker.pdf",
    "bench-card.pdf",
    "templates.pdf",
    "demonstration.pdf",
    "demonstration.html",
    "cuts.csv",
    "cuts.json",
    "section.svg",
    "base.svg",
    "chart.svg",
    "picture.svg",
    "basket.json",
    PATTERN,
    LIST,
];

/// The file that every packet holds, and by which one is known.
pub(super) const KNOWN_BY: &str = "basket.json";

/// The pattern from which it was made.
pub(super) const PATTERN: &str = "pattern.toml";

/// What file managers leave behind in a folder that was looked at.
pub(super) const CRUMBS: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/// The list of all others: a line for each, as `sha256sum --check` reads them.
pub(super) const LIST: &str = "checksums.txt";
