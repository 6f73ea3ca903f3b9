//! A file as text: of limited size and UTF-8. The error says clearly why a file cannot be read.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::diag::{Diag, Source};
use crate::fields::FILE_MAX_BYTES;
use crate::say;

/// The whole text of a file.
///
/// # Errors
/// The file is missing, a directory, larger than 4 MiB, not UTF-8, or not readable. The error has no place.
pub(super) fn read_text(path: &Path) -> Result<String, Diag> {
    let name = path.display().to_string();
    let io = |error: std::io::Error| match error.kind() {
        ErrorKind::NotFound => Diag::new(say!("file-missing", file = name)).help(say!("file-check-path")),
        ErrorKind::PermissionDenied => {
            Diag::new(say!("file-not-permitted", file = name)).help(say!("file-not-permitted-help"))
        }
        ErrorKind::IsADirectory => directory(path),
        _ => Diag::new(say!("file-unreadable", file = name, reason = error.to_string())).help(say!("file-check-path")),
    };
    let about = std::fs::metadata(path).map_err(io)?;
    if about.is_dir() {
        return Err(directory(path));
    }
    if about.len() > FILE_MAX_BYTES {
        return Err(too_large(path));
    }
    let mut bytes = Vec::new();
    // The size in the metadata says nothing about a pipe or a file that grows, so the reading is limited too.
    File::open(path).map_err(io)?.take(FILE_MAX_BYTES + 1).read_to_end(&mut bytes).map_err(io)?;
    if bytes.len() as u64 > FILE_MAX_BYTES {
        return Err(too_large(path));
    }
    String::from_utf8(bytes).map_err(|error| {
        let good = error.as_bytes().iter().take(error.utf8_error().valid_up_to());
        let line = good.filter(|byte| **byte == b'\n').count() + 1;
        Diag::new(say!("file-not-utf8", file = name, line = line)).help(say!("file-not-utf8-help"))
    })
}

/// The text of a file, with the path that messages show.
///
/// # Errors
/// As [`read_text`].
pub(super) fn source_at(path: &Path) -> Result<Arc<Source>, Diag> {
    Ok(Arc::new(Source { path: path.to_owned(), text: read_text(path)? }))
}

/// A given text, with the name that messages show.
///
/// # Errors
/// The text is larger than 4 MiB. The error has no place.
pub(super) fn source_of(name: &str, text: impl Into<String>) -> Result<Arc<Source>, Diag> {
    let (path, text) = (PathBuf::from(name), text.into());
    if text.len() as u64 > FILE_MAX_BYTES {
        return Err(too_large(&path));
    }
    Ok(Arc::new(Source { path, text }))
}

fn directory(path: &Path) -> Diag {
    Diag::new(say!("file-is-folder", file = path.display().to_string())).help(say!("file-is-folder-help"))
}

fn too_large(path: &Path) -> Diag {
    let (file, most) = (path.display().to_string(), FILE_MAX_BYTES / (1024 * 1024));
    Diag::new(say!("file-too-large", file = file, most = most)).help(say!("file-too-large-help"))
}
