//! The packet's own list of what was written into it, by which a change made by hand is noticed.

use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::io;
use std::path::Path;

use sha2::{Digest, Sha256};
use sheets::PacketFile;

use super::names::{CRUMBS, LIST};

/// What became of a packet since it was written.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum State {
    /// It is as it was written, or empty; files may be missing.
    AsWritten,
    /// These files are others than were written.
    Changed(Vec<String>),
    /// Nobody knows: it has no list.
    Unlisted,
}

/// The list of these files.
pub(super) fn of(files: &[PacketFile]) -> PacketFile {
    let mut list = String::new();
    for file in files {
        let _ = writeln!(list, "{}  {}", sum(&file.bytes), file.name);
    }
    PacketFile { name: LIST, bytes: list.into_bytes() }
}

/// Compares a packet with its list.
pub(super) fn judge(packet: &Path) -> io::Result<State> {
    let list = match fs::read_to_string(packet.join(LIST)) {
        Ok(list) => Some(list),
        Err(error) if error.kind() == io::ErrorKind::NotFound => None,
        Err(error) => return Err(error),
    };
    let listed: BTreeMap<&str, &str> = list
        .iter()
        .flat_map(|list| list.lines())
        .filter_map(|line| line.split_once("  "))
        .map(|(sum, name)| (name, sum))
        .collect();
    let (mut changed, mut any) = (Vec::new(), false);
    for entry in fs::read_dir(packet)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if CRUMBS.contains(&name.as_str()) {
            continue;
        }
        any = true;
        let written = name == LIST
            || match listed.get(name.as_str()) {
                Some(listed) => entry.file_type()?.is_file() && sum(&fs::read(entry.path())?) == *listed,
                None => false,
            };
        if !written {
            changed.push(name);
        }
    }
    changed.sort();
    Ok(match list {
        None if any => State::Unlisted,
        _ if changed.is_empty() => State::AsWritten,
        _ => State::Changed(changed),
    })
}

/// The checksum of a file, in hexadecimal signs.
pub(super) fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().fold(String::new(), |mut sum, byte| {
        let _ = write!(sum, "{byte:02x}");
        sum
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_are_those_of_the_standard() {
        // FIPS 180-4, as in NIST's example of SHA-256 for the message "abc".
        assert_eq!(sum(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
