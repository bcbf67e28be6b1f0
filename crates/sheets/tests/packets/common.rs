//! Baskets and tools for the tests.

use std::io::Write;
use std::process::{Command, Stdio};

use basket::pattern::Units;
use basket::{Catalogue, Draft, Hand};
use sheets::{Options, PacketFile, Paper, packet};
use words::{Language, Words};

pub(crate) const HARBOUR: &str = include_str!("../../../../patterns/harbour-bread-basket.toml");
/// An even count, which does not lock a plain weave.
pub(crate) const STOPPED: &str = include_str!("../fixed/stopped.toml");
/// Every value that a pattern can hold is written.
pub(crate) const FIXED: &str = include_str!("../fixed/fixed.toml");

pub(crate) fn draft(pattern: &str) -> Draft {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(pattern, catalogue).expect("the pattern can be read");
    Draft::of(pattern, catalogue, &Hand::USUAL)
}

/// A reader of English.
pub(crate) fn words(units: Units) -> Words {
    Words::new(Language::English, units)
}

pub(crate) fn packet_of(draft: &Draft, words: &Words, options: &Options) -> Vec<PacketFile> {
    packet(draft, words, options, &mut |_| ()).expect("the packet can be made")
}

/// Options for this paper.
pub(crate) fn on(paper: Paper) -> Options {
    Options { paper, ..Options::default() }
}

pub(crate) fn file<'a>(packet: &'a [PacketFile], name: &str) -> &'a [u8] {
    &packet.iter().find(|file| file.name == name).expect("the packet holds the file").bytes
}

pub(crate) fn text<'a>(packet: &'a [PacketFile], name: &str) -> &'a str {
    std::str::from_utf8(file(packet, name)).expect("the file is text")
}

/// What a tool of poppler says about a PDF on its standard input.
pub(crate) fn poppler(tool: &str, args: &[&str], pdf: &[u8]) -> String {
    let mut child = Command::new(tool)
        .args(args)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap_or_else(|error| {
            panic!("`{tool}` does not run ({error}); install it: apt-get install poppler-utils")
        });
    let mut input = child.stdin.take().expect("standard input is piped");
    let pdf = pdf.to_owned();
    let feed = std::thread::spawn(move || input.write_all(&pdf));
    let output = child.wait_with_output().expect("the tool ends");
    feed.join().expect("the feeder ends").expect("the tool takes the PDF");
    let complaint = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{tool}: {}: {complaint}", output.status);
    // Texts are UTF-8; names in the structure of a document may be in another encoding.
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// The text of a PDF in the order in which it is set, with single spaces.
pub(crate) fn told(pdf: &[u8]) -> String {
    plain(&poppler("pdftotext", &["-raw", "-", "-"], pdf))
}

/// The same without the feet of its pages, which begin with the basket's title and stand within sentences that run
/// on.
pub(crate) fn run_on(pdf: &[u8], title: &str) -> String {
    let said = poppler("pdftotext", &["-raw", "-", "-"], pdf);
    let foot = format!("{title} – ");
    let lines: Vec<&str> = said.lines().filter(|line| !line.starts_with(&foot)).collect();
    rejoined(&plain(&lines.join(" ")))
}

/// A range of numbers that was parted at the end of a line is one again.
fn rejoined(text: &str) -> String {
    let mut parts = text.split("– ");
    let mut whole = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        whole.push('–');
        let in_range = whole.trim_end_matches('–').ends_with(|end: char| end.is_ascii_digit());
        if !in_range {
            whole.push(' ');
        }
        whole.push_str(part);
    }
    whole
}

/// How many letters a caption beside a sentence has at most.
const CAPTION: usize = 200;

/// Whether a text is said, whole or parted once by the captions at the end of a page.
pub(crate) fn says(said: &str, wanted: &str) -> bool {
    said.contains(wanted)
        || wanted.match_indices(' ').any(|(at, _)| {
            let (before, after) = (&wanted[..at], &wanted[at + 1..]);
            let rest = said.split_once(before).map(|(_, rest)| rest);
            rest.and_then(|rest| rest.find(after)).is_some_and(|gap| gap < CAPTION)
        })
}

/// Text with single, breaking spaces.
pub(crate) fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The value of a line of `pdfinfo`.
pub(crate) fn info<'a>(report: &'a str, key: &str) -> &'a str {
    let line = report.lines().find_map(|line| line.strip_prefix(key)?.strip_prefix(':'));
    line.unwrap_or_else(|| panic!("pdfinfo says nothing of {key}:\n{report}")).trim()
}
