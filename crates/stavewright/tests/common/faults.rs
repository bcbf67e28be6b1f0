//! A disk that goes wrong at a chosen call: a library that is preloaded into the program.

#![allow(dead_code, reason = "each test file uses its part")]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitStatus, Output};
use std::sync::OnceLock;

use tempfile::TempDir;

/// The library, built once for all tests of a file.
fn library() -> &'static Path {
    static LIBRARY: OnceLock<(TempDir, PathBuf)> = OnceLock::new();
    let (_, library) = LIBRARY.get_or_init(|| {
        let room = tempfile::tempdir().unwrap();
        let library = room.path().join("faults.so");
        let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/faults/faults.c");
        let compiler = std::env::var("CC").unwrap_or_else(|_| "cc".to_owned());
        let built = Command::new(compiler)
            .args(["-Wall", "-Werror", "-shared", "-fPIC", "-o"])
            .args([&library, &source])
            .arg("-ldl")
            .status()
            .expect("a C compiler");
        assert!(built.success());
        (room, library)
    });
    library
}

/// The program in a folder, with faults such as `("FAULTS_KILL", 3)`.
pub fn faulty(folder: &Path, faults: &[(&str, usize)]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_stavewright"));
    command.current_dir(folder).env("LD_PRELOAD", library());
    for (variable, value) in faults {
        command.env(variable, value.to_string());
    }
    command
}

/// Names of the calls that a command makes on the disk.
pub fn calls(folder: &Path, faults: &[(&str, usize)], arguments: &[&str]) -> Vec<String> {
    let log = tempfile::NamedTempFile::new().unwrap();
    let output = faulty(folder, faults).env("FAULTS_LOG", log.path()).args(arguments).output().unwrap();
    assert!(output.status.code().is_some_and(|code| code < 2), "{}", told(&output));
    fs::read_to_string(log.path()).unwrap().lines().map(str::to_owned).collect()
}

/// What it said on standard error.
pub fn told(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// Whether it was killed, as the library does it.
pub fn was_killed(status: ExitStatus) -> bool {
    use std::os::unix::process::ExitStatusExt;
    status.signal() == Some(9)
}

/// All files of a folder with what is in them; none if it is not there.
pub fn content(folder: &Path) -> Option<BTreeMap<String, Vec<u8>>> {
    let entries = fs::read_dir(folder).ok()?;
    let file = |entry: fs::DirEntry| {
        (entry.file_name().into_string().unwrap(), fs::read(entry.path()).expect("only files are in it"))
    };
    Some(entries.map(|entry| file(entry.unwrap())).collect())
}

/// Makes a folder with these files.
pub fn restore(folder: &Path, content: &BTreeMap<String, Vec<u8>>) {
    fs::create_dir(folder).unwrap();
    for (name, bytes) in content {
        fs::write(folder.join(name), bytes).unwrap();
    }
}
