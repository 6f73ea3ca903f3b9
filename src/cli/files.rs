//! Files: read up to a largest size; written under a temporary name, then renamed, so that nothing is half-written.

use super::interrupt;
use crate::diag::Diag;
use crate::say;
use std::collections::hash_map::RandomState;
use std::ffi::OsStr;
use std::fs::{File, OpenOptions};
use std::hash::{BuildHasher, Hasher};
use std::io::{ErrorKind, Read, Write};
use std::path::{Path, PathBuf};

/// Most symbolic links followed from one name; more are taken for a circle.
const LINKS_MAX: usize = 40;
/// Further names tried for a temporary file whose name is taken.
const NAMES_TRIED: usize = 8;

/// The bytes of a file of at most `most_mib` MiB. `help` is the help in the message about a larger file.
///
/// # Errors
/// The file is larger, or cannot be read.
pub fn read(path: &Path, most_mib: u64, help: &str) -> Result<Vec<u8>, Diag> {
    let shown = path.display().to_string();
    let io = |e: std::io::Error| {
        Diag::new(say!("file-unreadable", file = shown, reason = e.to_string())).help(say!("file-check-path"))
    };
    let most = most_mib * 1024 * 1024;
    let mut bytes = Vec::new();
    // The reader itself is limited: the size in the metadata is wrong for a pipe, a device or a file that grows.
    File::open(path).map_err(io)?.take(most + 1).read_to_end(&mut bytes).map_err(io)?;
    if bytes.len() as u64 > most {
        return Err(Diag::new(say!("file-too-large", file = shown, most = most_mib)).help(help));
    }
    Ok(bytes)
}

/// A file being written. An old file of the same name is moved aside until all files are in place.
struct Beside {
    temporary: PathBuf,
    path: PathBuf,
    /// Where the old file is meanwhile; none: there was no old file.
    old: Option<PathBuf>,
    placed: bool,
}

/// Writes all files into a folder and makes the folder if it is missing. Either all files get their names or none.
///
/// # Errors
/// The folder cannot be made, or a file cannot be written.
pub fn write_all(dir: &Path, files: &[(impl AsRef<OsStr>, Vec<u8>)]) -> Result<(), Diag> {
    let _whole = interrupt::held_off();
    std::fs::create_dir_all(dir)
        .map_err(|e| Diag::new(say!("folder-not-made", folder = dir.display().to_string(), reason = e.to_string())))?;
    let mut all: Vec<Beside> = Vec::with_capacity(files.len());
    let written = written_beside(dir, files, &mut all).and_then(|()| all.iter_mut().try_for_each(placed));
    match written {
        // All files are in place. If an old file cannot be removed, nothing is lost.
        Ok(()) => all.iter().filter_map(|b| b.old.as_deref()).for_each(|old| drop(std::fs::remove_file(old))),
        Err(diag) => return Err(all.iter().rev().fold(diag, undone)),
    }
    Ok(())
}

fn written_beside(dir: &Path, files: &[(impl AsRef<OsStr>, Vec<u8>)], all: &mut Vec<Beside>) -> Result<(), Diag> {
    for (name, bytes) in files {
        let path = dir.join(name.as_ref());
        takes_a_name(&path)?;
        let unwritten = |e: std::io::Error| unwritable(&path, &e);
        let (mut file, temporary) = new_beside(dir).map_err(unwritten)?;
        all.push(Beside { temporary, path: path.clone(), old: None, placed: false });
        file.write_all(bytes).and_then(|()| file.sync_all()).map_err(unwritten)?;
    }
    Ok(())
}

/// A new file with a name that nobody can guess and no other file has. The final name is not part of it, because the
/// whole name could be too long.
fn new_beside(dir: &Path) -> std::io::Result<(File, PathBuf)> {
    let mut tried = 0;
    loop {
        let path = dir.join(format!(".spanhold-{}.part", unforeseen()));
        // `create_new` follows no link and overwrites no file.
        match OpenOptions::new().write(true).create_new(true).open(&path) {
            Err(e) if e.kind() == ErrorKind::AlreadyExists && tried < NAMES_TRIED => tried += 1,
            other => return other.map(|file| (file, path)),
        }
    }
}

/// Sixteen hexadecimal digits, from the keys that the system gives the hash tables of a process.
fn unforeseen() -> String {
    format!("{:016x}", RandomState::new().build_hasher().finish())
}

/// Gives a file its final name. Moving the old file aside fails if only its owner may rename files in that folder, or
/// if another program holds it open.
fn placed(of: &mut Beside) -> Result<(), Diag> {
    let unplaced = |e: std::io::Error| unwritable(&of.path, &e);
    if of.path.symlink_metadata().is_ok() {
        let old = of.temporary.with_extension("old");
        std::fs::rename(&of.path, &old).map_err(unplaced)?;
        of.old = Some(old);
    }
    std::fs::rename(&of.temporary, &of.path).map_err(unplaced)?;
    of.placed = true;
    Ok(())
}

/// Removes a new file again and puts the old one back. If that fails, the message says where the old file is.
fn undone(diag: Diag, of: &Beside) -> Diag {
    // The file may not exist, so an error is ignored.
    let _ = std::fs::remove_file(if of.placed { &of.path } else { &of.temporary });
    match &of.old {
        Some(old) if std::fs::rename(old, &of.path).is_err() => {
            diag.help(say!("file-now-at", file = of.path.display().to_string(), now = old.display().to_string()))
        }
        _ => diag,
    }
}

/// Makes sure that a file does not exist yet: a mistyped name could cost the user a file.
///
/// # Errors
/// The file exists.
pub fn must_be_new(path: &Path) -> Result<(), Diag> {
    if path.symlink_metadata().is_ok() {
        let what = say!("file-exists", file = path.display().to_string());
        return Err(Diag::new(what).help(say!("file-exists-help")));
    }
    Ok(())
}

/// Writes one file, as [`write_all`] does.
///
/// # Errors
/// The path does not end in a name, or the file cannot be written.
pub fn write_one(path: &Path, text: &str) -> Result<(), Diag> {
    let Some(name) = path.file_name() else {
        let what = say!("file-no-name", file = path.display().to_string());
        return Err(Diag::new(what).help(say!("file-no-name-help")));
    };
    write_all(folder_of(path), &[(name, text.as_bytes().to_vec())])
}

fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// Makes sure that a path is free or names a file. A device or pipe would be replaced by the file. On Windows some
/// names mean devices in every folder, whatever their ending.
///
/// # Errors
/// The path names something else.
pub fn takes_a_name(path: &Path) -> Result<(), Diag> {
    let shown = path.display().to_string();
    if cfg!(windows) && names_a_device(path) {
        return Err(Diag::new(say!("file-is-device", file = shown)).help(say!("file-no-name-help")));
    }
    let what = match std::fs::metadata(path) {
        Ok(there) if there.is_dir() => say!("file-is-folder", file = shown),
        Ok(there) if !there.is_file() => say!("file-is-device", file = shown),
        _ => return Ok(()),
    };
    Err(Diag::new(what).help(say!("file-no-name-help")))
}

/// Whether Windows takes the name for a device: CON, `nul.txt`, `Com1.yaml`.
fn names_a_device(path: &Path) -> bool {
    let name = path.file_name().unwrap_or_default().to_string_lossy().to_uppercase();
    let stem = name.split(['.', ':']).next().unwrap_or_default().trim_end_matches(' ');
    let numbered =
        |of: &str| stem.strip_prefix(of).is_some_and(|n| n.chars().count() == 1 && "123456789¹²³".contains(n));
    matches!(stem, "CON" | "PRN" | "AUX" | "NUL" | "CONIN$" | "CONOUT$") || numbered("COM") || numbered("LPT")
}

/// Makes sure that no file that is read is overwritten.
///
/// # Errors
/// A file to be written is one of those read.
pub fn not_over<'a>(read: &[PathBuf], written: impl IntoIterator<Item = &'a Path>) -> Result<(), Diag> {
    let read: Vec<PathBuf> = read.iter().map(|path| settled(path)).collect();
    for path in written {
        let to = settled(path);
        if read.iter().any(|from| is_one(from, &to)) {
            return Err(
                Diag::new(say!("file-is-input", file = path.display().to_string())).help(say!("file-is-input-help"))
            );
        }
    }
    Ok(())
}

/// Makes sure that a file to be overwritten is empty or begins like the files that the command writes. `what`: what is
/// wrong otherwise, from the name of the file.
///
/// # Errors
/// The file holds something else, or cannot be read.
pub fn is_ours(path: &Path, begins: &[&[u8]], what: impl Fn(&str) -> String) -> Result<(), Diag> {
    if !std::fs::metadata(path).is_ok_and(|there| there.is_file()) {
        return Ok(());
    }
    let mut head = Vec::new();
    let most = begins.iter().map(|begin| begin.len()).max().unwrap_or(0) as u64;
    let read = File::open(path).and_then(|file| file.take(most).read_to_end(&mut head));
    read.map_err(|e| Diag::new(say!("file-unreadable", file = path.display().to_string(), reason = e.to_string())))?;
    if head.is_empty() || begins.iter().any(|begin| head.starts_with(begin)) {
        return Ok(());
    }
    Err(Diag::new(what(&path.display().to_string())).help(say!("file-exists-help")))
}

/// Whether two paths lead to one file, also by another spelling or a link. The file need not exist.
pub fn same(one: &Path, other: &Path) -> bool {
    is_one(&settled(one), &settled(other))
}

fn is_one(one: &Path, other: &Path) -> bool {
    // On these systems two names that differ only in upper and lower case are one.
    let alike = cfg!(any(windows, target_os = "macos"))
        && one.to_string_lossy().to_lowercase() == other.to_string_lossy().to_lowercase();
    one == other || alike || hard_linked(one, other)
}

/// The path without links, dots and other spellings.
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

/// Whether two names are hard links to one file.
#[cfg(unix)]
fn hard_linked(one: &Path, other: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let of = |path: &Path| std::fs::metadata(path).map(|m| (m.dev(), m.ino()));
    matches!((of(one), of(other)), (Ok(a), Ok(b)) if a == b)
}

/// On other systems the standard library cannot tell. Nothing is lost there: a file that is replaced keeps its content
/// under its other names, and a file that is written in place is looked into first ([`is_ours`]).
#[cfg(not(unix))]
fn hard_linked(_: &Path, _: &Path) -> bool {
    false
}

/// The message about a file that cannot be written.
pub fn unwritable(path: &Path, e: &std::io::Error) -> Diag {
    Diag::new(say!("file-unwritable", file = path.display().to_string(), reason = e.to_string()))
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
