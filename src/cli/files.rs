//! Files: read up to a bound; written beside, then renamed, so that nothing is half-written.

use super::interrupt;
use crate::diag::Diag;
use std::collections::hash_map::RandomState;
use std::ffi::OsStr;
use std::fs::{File, OpenOptions};
use std::hash::{BuildHasher, Hasher};
use std::io::{ErrorKind, Read, Write};
use std::path::{Path, PathBuf};

/// Links followed from one name to another; more lead in a circle.
const LINKS_MAX: usize = 40;
/// Names tried for a file beside.
const NAMES_TRIED: usize = 8;

/// The bytes of a file of at most so many MiB; `help` is said of a larger one.
///
/// # Errors
/// It is larger, or cannot be read.
pub fn read(path: &Path, most_mib: u64, help: &str) -> Result<Vec<u8>, Diag> {
    let shown = path.display();
    let io = |e: std::io::Error| Diag::new(format!("`{shown}` cannot be read: {e}")).help("check the path");
    let most = most_mib * 1024 * 1024;
    let mut bytes = Vec::new();
    // The size told beforehand says nothing about a pipe, a device or a file that grows.
    File::open(path).map_err(io)?.take(most + 1).read_to_end(&mut bytes).map_err(io)?;
    if bytes.len() as u64 > most {
        return Err(Diag::new(format!("`{shown}` is larger than {most_mib} MiB")).help(help));
    }
    Ok(bytes)
}

/// A file on its way: written beside, and what stood at its place put aside until all are there.
struct Beside {
    temporary: PathBuf,
    path: PathBuf,
    /// Where the old file is meanwhile.
    old: Option<PathBuf>,
    placed: bool,
}

/// Writes all files into a folder, which is made where it is missing; either all take their names or none.
pub fn write_all(dir: &Path, files: &[(impl AsRef<OsStr>, Vec<u8>)]) -> Result<(), Diag> {
    let _whole = interrupt::held_off();
    std::fs::create_dir_all(dir).map_err(|e| problem("the folder cannot be made", dir, &e))?;
    let mut all: Vec<Beside> = Vec::with_capacity(files.len());
    let written = written_beside(dir, files, &mut all).and_then(|()| all.iter_mut().try_for_each(placed));
    match written {
        // All are there; of an old file that stays aside nothing is lost.
        Ok(()) => all.iter().filter_map(|b| b.old.as_deref()).for_each(|old| drop(std::fs::remove_file(old))),
        Err(diag) => return Err(all.iter().rev().fold(diag, undone)),
    }
    Ok(())
}

fn written_beside(dir: &Path, files: &[(impl AsRef<OsStr>, Vec<u8>)], all: &mut Vec<Beside>) -> Result<(), Diag> {
    for (name, bytes) in files {
        let path = dir.join(name.as_ref());
        takes_a_name(&path)?;
        let unwritten = |e: std::io::Error| problem("the file cannot be written", &path, &e);
        let (mut file, temporary) = new_beside(dir).map_err(unwritten)?;
        all.push(Beside { temporary, path: path.clone(), old: None, placed: false });
        file.write_all(bytes).and_then(|()| file.sync_all()).map_err(unwritten)?;
    }
    Ok(())
}

/// A new file with a name that nobody can have foreseen and no other file has. With something put to the name of its own it
/// could be too long.
fn new_beside(dir: &Path) -> std::io::Result<(File, PathBuf)> {
    let mut tried = 0;
    loop {
        let path = dir.join(format!(".spanhold-{}.part", unforeseen()));
        // Never through a link, never over a file.
        match OpenOptions::new().write(true).create_new(true).open(&path) {
            Err(e) if e.kind() == ErrorKind::AlreadyExists && tried < NAMES_TRIED => tried += 1,
            other => return other.map(|file| (file, path)),
        }
    }
}

/// Sixteen digits from the keys that the system gives the hash tables of a process.
fn unforeseen() -> String {
    format!("{:016x}", RandomState::new().build_hasher().finish())
}

/// Gives a file its name. In a folder where only the owner of a file may rename it, and where another program holds it open,
/// already the old file cannot be put aside.
fn placed(of: &mut Beside) -> Result<(), Diag> {
    let unplaced = |e: std::io::Error| problem("the file cannot be written", &of.path, &e);
    if of.path.symlink_metadata().is_ok() {
        let old = of.temporary.with_extension("old");
        std::fs::rename(&of.path, &old).map_err(unplaced)?;
        of.old = Some(old);
    }
    std::fs::rename(&of.temporary, &of.path).map_err(unplaced)?;
    of.placed = true;
    Ok(())
}

/// Takes a file away again and puts the old one back; what cannot be put back is told where it is.
fn undone(diag: Diag, of: &Beside) -> Diag {
    // It may not exist; what matters is that none is left.
    let _ = std::fs::remove_file(if of.placed { &of.path } else { &of.temporary });
    match &of.old {
        Some(old) if std::fs::rename(old, &of.path).is_err() => {
            let help = format!("what stood in {} is now in {}", of.path.display(), old.display());
            diag.help(help)
        }
        _ => diag,
    }
}

/// A file that must not exist yet: a slip could cost work of one's own.
pub fn must_be_new(path: &Path) -> Result<(), Diag> {
    if path.symlink_metadata().is_ok() {
        return Err(
            Diag::new(format!("{} exists already", path.display())).help("name another file, or remove that one")
        );
    }
    Ok(())
}

/// Writes one file, beside first.
pub fn write_one(path: &Path, text: &str) -> Result<(), Diag> {
    let Some(name) = path.file_name() else {
        return Err(Diag::new(format!("{} is not the name of a file", path.display())).help("name a file"));
    };
    write_all(folder_of(path), &[(name, text.as_bytes().to_vec())])
}

fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// What stands at the place of a file may be a file only: a device would be replaced. On Windows some names are devices in
/// every folder, whatever their ending.
///
/// # Errors
/// It is something else.
pub fn takes_a_name(path: &Path) -> Result<(), Diag> {
    if cfg!(windows) && names_a_device(path) {
        let what = format!("{} is the name of a device here, not a file", path.display());
        return Err(Diag::new(what).help("name another file"));
    }
    let is = match std::fs::metadata(path) {
        Ok(there) if there.is_dir() => "a folder",
        Ok(there) if !there.is_file() => "a device or a pipe",
        _ => return Ok(()),
    };
    Err(Diag::new(format!("{} is {is}, not a file", path.display())).help("name another place"))
}

/// Whether Windows takes the name for a device: CON, `nul.txt`, `Com1.yaml`.
fn names_a_device(path: &Path) -> bool {
    let name = path.file_name().unwrap_or_default().to_string_lossy().to_uppercase();
    let stem = name.split(['.', ':']).next().unwrap_or_default().trim_end_matches(' ');
    let numbered =
        |of: &str| stem.strip_prefix(of).is_some_and(|n| n.chars().count() == 1 && "123456789¹²³".contains(n));
    matches!(stem, "CON" | "PRN" | "AUX" | "NUL" | "CONIN$" | "CONOUT$") || numbered("COM") || numbered("LPT")
}

/// Nothing that is read is written over.
///
/// # Errors
/// A file to be written is one of those read.
pub fn not_over<'a>(read: &[PathBuf], written: impl IntoIterator<Item = &'a Path>) -> Result<(), Diag> {
    let read: Vec<PathBuf> = read.iter().map(|path| settled(path)).collect();
    for path in written {
        let to = settled(path);
        if read.iter().any(|from| is_one(from, &to)) {
            return Err(Diag::new(format!("{} is read and would be written over", path.display()))
                .help("name another place to write to"));
        }
    }
    Ok(())
}

/// A file that is written anew holds nothing yet, or begins as those do that the command writes.
///
/// # Errors
/// Something else stands in it.
pub fn is_ours(path: &Path, begins: &[&[u8]], what: &str) -> Result<(), Diag> {
    if !std::fs::metadata(path).is_ok_and(|there| there.is_file()) {
        return Ok(());
    }
    let mut head = Vec::new();
    let most = begins.iter().map(|begin| begin.len()).max().unwrap_or(0) as u64;
    let read = File::open(path).and_then(|file| file.take(most).read_to_end(&mut head));
    read.map_err(|e| problem("the file cannot be looked into", path, &e))?;
    if head.is_empty() || begins.iter().any(|begin| head.starts_with(begin)) {
        return Ok(());
    }
    Err(Diag::new(format!("{} exists and holds no {what}", path.display()))
        .help("name another file, or remove that one"))
}

/// Whether two paths lead to one file, by another spelling or a link too; it need not be there.
pub fn same(one: &Path, other: &Path) -> bool {
    is_one(&settled(one), &settled(other))
}

fn is_one(one: &Path, other: &Path) -> bool {
    // These systems take two names for one that differ in capitals only.
    let alike = cfg!(any(windows, target_os = "macos"))
        && one.to_string_lossy().to_lowercase() == other.to_string_lossy().to_lowercase();
    one == other || alike || hard_linked(one, other)
}

/// A path without links, dots and other spellings.
fn settled(path: &Path) -> PathBuf {
    let mut path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    for _ in 0..LINKS_MAX {
        if let Ok(there) = path.canonicalize() {
            return there;
        }
        let folder = path.parent().map(|p| p.canonicalize().unwrap_or_else(|_| p.to_owned())).unwrap_or_default();
        match path.read_link() {
            // A link to a file that is not there yet.
            Ok(to) => path = folder.join(to),
            Err(_) => return path.file_name().map_or_else(|| path.clone(), |name| folder.join(name)),
        }
    }
    path
}

/// Whether two names are of one file.
#[cfg(unix)]
fn hard_linked(one: &Path, other: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let of = |path: &Path| std::fs::metadata(path).map(|m| (m.dev(), m.ino()));
    matches!((of(one), of(other)), (Ok(a), Ok(b)) if a == b)
}

/// Elsewhere std does not tell. There a file that is replaced keeps what it is under its other names, and one that is
/// written in place is looked into first ([`is_ours`]).
#[cfg(not(unix))]
fn hard_linked(_: &Path, _: &Path) -> bool {
    false
}

fn problem(what: &str, path: &Path, e: &std::io::Error) -> Diag {
    Diag::new(format!("{what}: {}: {e}", path.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_devices_are_known_by_their_stem() {
        for name in ["NUL", "con.yaml", "jobs/aux.tar.gz", "prn ", "Com1.yaml", "lpt9", "COM².txt", "conout$", "nul:x"]
        {
            assert!(names_a_device(Path::new(name)), "{name}");
        }
        for name in
            ["null", "console.yaml", "com", "com0", "com10.yaml", "aux-2.yaml", "lpt1/job.yaml", "a.con", "..", ""]
        {
            assert!(!names_a_device(Path::new(name)), "{name}");
        }
    }
}
