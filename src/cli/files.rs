//! Writing files: beside, then renamed, so that nothing is half-written.

use crate::diag::Diag;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Writes all files into a folder, which is made where it is missing; either all take their names or none.
pub fn write_all(dir: &Path, files: &[(&str, Vec<u8>)]) -> Result<(), Diag> {
    std::fs::create_dir_all(dir).map_err(|e| problem("the folder cannot be made", dir, &e))?;
    let mut beside: Vec<(PathBuf, PathBuf)> = Vec::with_capacity(files.len());
    let mut write = || -> Result<(), Diag> {
        for (name, bytes) in files {
            let (temporary, path) = (dir.join(format!(".{name}.{}.part", std::process::id())), dir.join(name));
            if path.is_dir() {
                return Err(
                    Diag::new(format!("{} is a folder, not a file", path.display())).help("name another folder")
                );
            }
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
    let name = path.file_name().map(|n| n.to_string_lossy().into_owned());
    let Some(name) = name else {
        return Err(Diag::new(format!("{} is not the name of a file", path.display())));
    };
    let dir = path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
    write_all(dir, &[(name.as_str(), text.as_bytes().to_vec())])
}

fn write_new(path: &Path, bytes: &[u8]) -> Result<(), Diag> {
    let mut file = std::fs::File::create(path).map_err(|e| problem("the file cannot be written", path, &e))?;
    file.write_all(bytes).and_then(|()| file.sync_all()).map_err(|e| problem("the file cannot be written", path, &e))
}

fn problem(what: &str, path: &Path, e: &std::io::Error) -> Diag {
    Diag::new(format!("{what}: {}: {e}", path.display()))
}
