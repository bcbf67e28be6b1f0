//! A packet on the disk: written whole or not at all.
//!
//! The files go into a new folder beside the one wanted, are flushed to the disk, and the folder
//! then takes its name in one step. An earlier packet is moved aside first and removed only when
//! the new one stands in its place. A folder that holds anything but a packet is left alone.

use std::fmt::Write as _;
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use sheets::PacketFile;

use crate::failure::Failure;

/// Every file that a packet may hold.
pub(crate) const NAMES: [&str; 10] = [
    "handout.pdf",
    "handout.html",
    "bench-card.pdf",
    "templates.pdf",
    "demonstration.pdf",
    "cuts.csv",
    "cuts.json",
    "section.svg",
    "base.svg",
    "basket.json",
];

/// The file that every packet holds, and by which one is known.
const KNOWN_BY: &str = "basket.json";

/// What file managers leave behind in a folder that was looked at.
const CRUMBS: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/// Makes temporary files and folders beside the wanted ones, with the rights that new files have.
pub(crate) fn builder(mode: u32) -> tempfile::Builder<'static, 'static> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".stavewright-");
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(mode));
    #[cfg(not(unix))]
    let _ = mode;
    builder
}

/// The folder in which a packet may be written: it is not there yet, or holds a packet or nothing.
pub(crate) fn place(out: &Path) -> Result<PathBuf, Failure> {
    let out = settle(out)?;
    let about = match out.metadata() {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(out),
        Err(error) => return Err(cannot(&out, "cannot be looked at", &error)),
        Ok(about) => about,
    };
    if !about.is_dir() {
        return Err(Failure::plain(
            format!("{}: this is not a folder, so no packet can be written there", out.display()),
            "Name another folder with --out.",
        ));
    }
    let strangers = strangers(&out).map_err(|error| cannot(&out, "cannot be looked into", &error))?;
    if strangers.is_empty() { Ok(out) } else { Err(refuse(&out, &strangers)) }
}

/// Writes a packet. Returns the folder.
pub(crate) fn write(out: &Path, files: &[PacketFile]) -> Result<PathBuf, Failure> {
    let out = place(out)?;
    let parent =
        out.parent().filter(|parent| !parent.as_os_str().is_empty()).unwrap_or(Path::new(".")).to_owned();
    let made =
        make_folders(&parent).map_err(|error| cannot(&parent, "this folder cannot be made", &error))?;
    let done = write_beside(&parent, files)
        .map_err(|error| cannot(&out, "the packet cannot be written", &error))
        .and_then(|fresh| swap(fresh, &out, &parent));
    if done.is_err() {
        for folder in made.iter().rev() {
            let _ = fs::remove_dir(folder);
        }
    }
    done.map(|()| out)
}

/// The folder itself where the path ends in a link, `.` or `..`.
fn settle(out: &Path) -> Result<PathBuf, Failure> {
    let is_link = out.symlink_metadata().is_ok_and(|about| about.is_symlink());
    if out.file_name().is_some() && !out.ends_with(".") && !is_link {
        return Ok(out.to_owned());
    }
    let real = out.canonicalize().map_err(|error| cannot(out, "cannot be found", &error))?;
    let here = std::env::current_dir().and_then(|here| here.canonicalize()).unwrap_or_default();
    if here.starts_with(&real) {
        return Err(Failure::plain(
            format!("{}: you are working in this folder, so it cannot be replaced", out.display()),
            "Name a folder inside it with --out, such as --out out.",
        ));
    }
    Ok(real)
}

/// What in a folder keeps it from being a packet.
fn strangers(folder: &Path) -> io::Result<Vec<String>> {
    let mut strangers = Vec::new();
    let mut known = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if NAMES.contains(&name.as_str()) && entry.file_type()?.is_file() {
            known.push(name);
        } else if !CRUMBS.contains(&name.as_str()) {
            strangers.push(name);
        }
    }
    if strangers.is_empty() && !known.iter().any(|name| name == KNOWN_BY) {
        strangers = known;
    }
    strangers.sort();
    Ok(strangers)
}

fn refuse(out: &Path, strangers: &[String]) -> Failure {
    const SHOWN: usize = 5;
    let mut list = strangers.iter().take(SHOWN).map(String::as_str).collect::<Vec<_>>().join(", ");
    if let Some(more) = strangers.len().checked_sub(SHOWN).filter(|more| *more > 0) {
        let _ = write!(list, " and {more} more");
    }
    Failure::plain(
        format!("{}: this folder holds more than a packet: {list}", out.display()),
        "Stavewright replaces only packets that it wrote. Name another folder with --out, or move these files.",
    )
}

/// Makes a folder and those above it; returns the ones that were not there.
fn make_folders(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut missing: Vec<PathBuf> = folder
        .ancestors()
        .take_while(|above| !above.as_os_str().is_empty() && !above.exists())
        .map(Path::to_owned)
        .collect();
    missing.reverse();
    fs::create_dir_all(folder)?;
    Ok(missing)
}

fn write_beside(parent: &Path, files: &[PacketFile]) -> io::Result<tempfile::TempDir> {
    let fresh = builder(0o777).tempdir_in(parent)?;
    for sheet in files {
        let mut file = File::create_new(fresh.path().join(sheet.name))?;
        file.write_all(&sheet.bytes)?;
        file.sync_all()?;
    }
    flush_folder(fresh.path())?;
    Ok(fresh)
}

/// Gives the new folder its name; what stood there before is put back if that fails.
fn swap(fresh: tempfile::TempDir, out: &Path, parent: &Path) -> Result<(), Failure> {
    let cannot_swap = |error: io::Error| cannot(out, "the packet cannot be put in place", &error);
    let aside = if out.exists() { Some(move_aside(out, parent).map_err(cannot_swap)?) } else { None };
    if let Err(error) = fs::rename(fresh.path(), out) {
        return Err(match aside {
            Some(aside) => put_back(aside, out, &error),
            None => cannot_swap(error),
        });
    }
    // The folder has its name now; there is nothing left to remove under the old one.
    let _ = fresh.keep();
    flush_folder(parent).map_err(cannot_swap)
}

fn move_aside(out: &Path, parent: &Path) -> io::Result<tempfile::TempDir> {
    let aside = builder(0o700).tempdir_in(parent)?;
    fs::rename(out, aside.path().join("packet"))?;
    Ok(aside)
}

fn put_back(aside: tempfile::TempDir, out: &Path, error: &io::Error) -> Failure {
    if fs::rename(aside.path().join("packet"), out).is_ok() {
        return cannot(out, "the packet cannot be put in place; the earlier one still stands", error);
    }
    let kept = aside.keep().join("packet");
    let message = format!("the packet cannot be put in place; the earlier one is kept in {}", kept.display());
    cannot(out, &message, error)
}

/// Makes the names in a folder survive a loss of power, where the system can.
pub(crate) fn flush_folder(folder: &Path) -> io::Result<()> {
    if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
}

fn cannot(place: &Path, what: &str, error: &io::Error) -> Failure {
    let help = match error.kind() {
        io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => {
            "You may not write there. Name a folder of your own with --out."
        }
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => {
            "The disk is full. Make room and try again."
        }
        io::ErrorKind::NotADirectory | io::ErrorKind::AlreadyExists => {
            "A file stands where a folder is needed. Name another folder with --out."
        }
        _ => "Name another folder with --out.",
    };
    Failure::plain(format!("{}: {what}: {error}", place.display()), help)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sheets(text: &str) -> Vec<PacketFile> {
        ["cuts.csv", KNOWN_BY].into_iter().map(|name| PacketFile { name, bytes: text.into() }).collect()
    }

    fn names(folder: &Path) -> Vec<String> {
        let mut names: Vec<_> = fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
            .collect();
        names.sort();
        names
    }

    fn message(failure: Failure) -> String {
        match failure {
            Failure::Plain { message, .. } => message,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_packet_takes_the_place_of_an_earlier_one_whole() {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("deep/packet");
        write(&out, &sheets("first")).unwrap();
        fs::write(out.join("handout.pdf"), "of the first packet only").unwrap();
        write(&out, &sheets("second")).unwrap();
        assert_eq!(names(&out), [KNOWN_BY, "cuts.csv"]);
        assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "second");
        assert_eq!(names(&room.path().join("deep")), ["packet"], "nothing temporary stays");
    }

    #[test]
    fn a_folder_with_other_files_is_left_alone() {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("plans");
        fs::create_dir(&out).unwrap();
        for name in ["letter.txt", "cuts.csv", KNOWN_BY] {
            fs::write(out.join(name), "mine").unwrap();
        }
        let said = message(write(&out, &sheets("new")).unwrap_err());
        assert!(said.ends_with("this folder holds more than a packet: letter.txt"), "{said}");
        assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "mine");
        assert_eq!(names(room.path()), ["plans"]);
    }

    #[test]
    fn files_with_the_names_of_sheets_are_no_packet_without_its_heart() {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("plans");
        fs::create_dir(&out).unwrap();
        fs::write(out.join("handout.pdf"), "mine").unwrap();
        let said = message(write(&out, &sheets("new")).unwrap_err());
        assert!(said.ends_with("more than a packet: handout.pdf"), "{said}");
        assert_eq!(names(&out), ["handout.pdf"]);
    }

    #[test]
    fn an_empty_folder_is_taken() {
        let room = tempfile::tempdir().unwrap();
        write(room.path().join("new").as_path(), &sheets("a")).unwrap();
        let out = room.path().join("empty");
        fs::create_dir(&out).unwrap();
        write(&out, &sheets("b")).unwrap();
        assert_eq!(names(&out), [KNOWN_BY, "cuts.csv"]);
    }

    #[test]
    fn a_file_in_the_way_stays_and_folders_made_in_vain_go() {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("note");
        fs::write(&out, "mine").unwrap();
        let said = message(write(&out, &sheets("a")).unwrap_err());
        assert!(said.contains("this is not a folder"), "{said}");
        assert_eq!(fs::read_to_string(&out).unwrap(), "mine");

        let doubled = [sheets("a"), sheets("b")].concat();
        let said = message(write(&room.path().join("x/y/z"), &doubled).unwrap_err());
        assert!(said.contains("the packet cannot be written"), "{said}");
        assert_eq!(names(room.path()), ["note"], "no folder and nothing temporary stays");
    }

    #[test]
    fn the_earlier_packet_comes_back_when_the_new_one_cannot_take_its_place() {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("packet");
        write(&out, &sheets("earlier")).unwrap();
        let fresh = write_beside(room.path(), &sheets("new")).unwrap();
        fs::remove_dir_all(fresh.path()).unwrap();
        let said = message(swap(fresh, &out, room.path()).unwrap_err());
        assert!(said.contains("the earlier one still stands"), "{said}");
        assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "earlier");
        assert_eq!(names(room.path()), ["packet"]);
    }

    #[cfg(unix)]
    #[test]
    fn a_link_to_a_packet_stays_a_link() {
        let room = tempfile::tempdir().unwrap();
        let (real, link) = (room.path().join("real"), room.path().join("link"));
        write(&real, &sheets("first")).unwrap();
        std::os::unix::fs::symlink(&real, &link).unwrap();
        write(&link, &sheets("second")).unwrap();
        assert!(link.symlink_metadata().unwrap().is_symlink());
        assert_eq!(fs::read_to_string(real.join("cuts.csv")).unwrap(), "second");
    }

    #[cfg(unix)]
    #[test]
    fn a_packet_has_the_rights_of_any_new_folder() {
        use std::os::unix::fs::PermissionsExt;
        let room = tempfile::tempdir().unwrap();
        let (out, usual) = (room.path().join("packet"), room.path().join("usual"));
        write(&out, &sheets("a")).unwrap();
        fs::create_dir(&usual).unwrap();
        let mode = |path: &Path| path.metadata().unwrap().permissions().mode();
        assert_eq!(mode(&out), mode(&usual));
    }
}
