//! Writing files: beside, then renamed, so that nothing is half-written.

use super::interrupt;
use crate::diag::Diag;
use std::ffi::OsStr;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Writes all files into a folder, which is made where it is missing; either all take their names or none.
pub fn write_all(dir: &Path, files: &[(impl AsRef<OsStr>, Vec<u8>)]) -> Result<(), Diag> {
    let _whole = interrupt::held_off();
    std::fs::create_dir_all(dir).map_err(|e| problem("the folder cannot be made", dir, &e))?;
    let mut beside: Vec<(PathBuf, PathBuf)> = Vec::with_capacity(files.len());
    let mut write = || -> Result<(), Diag> {
        for (i, (name, bytes)) in files.iter().enumerate() {
            // A name of its own: with something put to the file's it could be too long.
            let (temporary, path) =
                (dir.join(format!(".spanhold-{}-{i}.part", std::process::id())), dir.join(name.as_ref()));
            takes_a_name(&path)?;
            beside.push((temporary.clone(), path));
            write_new(&temporary, bytes)?;
        }
        for (temporary, path) in &beside {
            std::fs::rename(temporary, path).map_err(|e| problem("the file cannot be written", path, &e))?;
        }
        Ok(())
    };
    let written = write();
    if written.is_err() {
        for (temporary, _) in &beside {
            // It may not exist; what matters is that none is left.
            let _ = std::fs::remove_file(temporary);
        }
    }
    written
}

/// A file that must not exist yet: a slip could cost work of one's own.
pub fn must_be_new(path: &Path) -> Result<(), Diag> {
    if path.exists() {
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
    let dir = path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
    write_all(dir, &[(name, text.as_bytes().to_vec())])
}

/// What stands at the place of a file may be a file only: a device would be replaced.
///
/// # Errors
/// It is something else.
pub fn takes_a_name(path: &Path) -> Result<(), Diag> {
    let is = match std::fs::metadata(path) {
        Ok(there) if there.is_dir() => "a folder",
        Ok(there) if !there.is_file() => "a device or a pipe",
        _ => return Ok(()),
    };
    Err(Diag::new(format!("{} is {is}, not a file", path.display())).help("name another place"))
}

/// Whether two paths lead to one file that is there.
pub fn same(one: &Path, other: &Path) -> bool {
    matches!((one.canonicalize(), other.canonicalize()), (Ok(a), Ok(b)) if a == b)
}

fn write_new(path: &Path, bytes: &[u8]) -> Result<(), Diag> {
    let mut file = std::fs::File::create(path).map_err(|e| problem("the file cannot be written", path, &e))?;
    file.write_all(bytes).and_then(|()| file.sync_all()).map_err(|e| problem("the file cannot be written", path, &e))
}

fn problem(what: &str, path: &Path, e: &std::io::Error) -> Diag {
    Diag::new(format!("{what}: {}: {e}", path.display()))
}
