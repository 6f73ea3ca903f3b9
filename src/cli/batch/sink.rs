//! Where lines go: stdout, or a file that grows line by line, so that an interrupted call can go on.

use super::super::{files, interrupt};
use super::line::Head;
use super::tasks::Task;
use crate::diag::Diag;
use crate::say;
use crate::shown;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{BufRead, BufReader, ErrorKind, Seek, SeekFrom, Write};
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

/// How every line begins.
pub const LINE_BEGINS: &[u8] = b"{\"file\":";

/// Takes lines.
pub enum Sink {
    /// Stdout.
    Stdout(std::io::Stdout),
    /// A file, its name, and the bytes of its whole lines.
    File(File, PathBuf, u64),
}

impl Sink {
    /// Opens it. With `resume` the tasks of the whole lines in the file are skipped, `before` is called for each of
    /// these lines, and an unfinished line at the end is cut off.
    ///
    /// # Errors
    /// The file cannot be written, or its lines are not those of these tasks; then the file stays unchanged.
    pub fn open(
        path: Option<&Path>,
        resume: bool,
        tasks: &mut impl Iterator<Item = Task>,
        before: impl FnMut(&Head),
    ) -> Result<Sink, Diag> {
        let Some(path) = path else { return Ok(Sink::Stdout(std::io::stdout())) };
        let problem = |e: std::io::Error| files::unwritable(path, &e);
        let mut file = opened_alone(path)?;
        let whole = if resume { passed_over(&file, path, tasks, before)? } else { 0 };
        // The length of a device cannot be set.
        if resume || file.metadata().is_ok_and(|about| about.is_file()) {
            file.set_len(whole).and_then(|()| file.seek(SeekFrom::Start(whole))).map_err(problem)?;
        }
        Ok(Sink::File(file, path.to_owned(), whole))
    }

    /// Writes a line. Break: the reader has closed the pipe, and the work ends.
    ///
    /// # Errors
    /// The line cannot be written.
    pub fn write(&mut self, line: &str) -> Result<ControlFlow<()>, Diag> {
        let line = format!("{}\n", shown::line(line));
        let (written, name) = match self {
            Sink::Stdout(out) => {
                let mut out = out.lock();
                (out.write_all(line.as_bytes()).and_then(|()| out.flush()), "stdout".to_owned())
            }
            // If a line cannot be written in full, the part that was written is cut off. If the program is killed, the
            // last line may be unfinished.
            Sink::File(file, path, whole) => {
                let _whole = interrupt::held_off();
                let written = file.write_all(line.as_bytes());
                match written {
                    Ok(()) => *whole += line.len() as u64,
                    Err(_) => drop(file.set_len(*whole)),
                }
                (written, path.display().to_string())
            }
        };
        match written {
            Ok(()) => Ok(ControlFlow::Continue(())),
            Err(e) if e.kind() == ErrorKind::BrokenPipe => Ok(ControlFlow::Break(())),
            Err(e) => Err(Diag::new(say!("batch-line-unwritten", file = name, reason = e.to_string()))
                .help(say!("batch-line-unwritten-help"))),
        }
    }
}

/// Opens a file without changing it, for this call alone.
fn opened_alone(path: &Path) -> Result<File, Diag> {
    let problem = |e: std::io::Error| files::unwritable(path, &e);
    let taken =
        || Diag::new(say!("batch-file-in-use", file = path.display().to_string())).help(say!("batch-file-in-use-help"));
    // Something that is not a file, such as a pipe, may refuse to be opened for reading.
    let is_file = std::fs::metadata(path).map_or(true, |there| there.is_file());
    let mut options = OpenOptions::new();
    options.read(is_file).write(true).create(true).truncate(false);
    #[cfg(windows)]
    {
        use std::os::windows::fs::OpenOptionsExt;
        // FILE_SHARE_READ: others may read meanwhile. A lock on the file would forbid it.
        options.share_mode(1);
    }
    /// ERROR_SHARING_VIOLATION.
    const SHARING: i32 = 32;
    let file = options.open(path).map_err(|e| match e.raw_os_error() {
        Some(SHARING) if cfg!(windows) => taken(),
        _ => problem(e),
    })?;
    // Other errors are ignored: some file systems have no locks.
    if cfg!(unix) && is_file && matches!(file.try_lock(), Err(TryLockError::WouldBlock)) {
        return Err(taken());
    }
    Ok(file)
}

/// Number of bytes of the whole lines of a file. Each line must be that of the next task.
fn passed_over(
    file: &File,
    path: &Path,
    tasks: &mut impl Iterator<Item = Task>,
    mut before: impl FnMut(&Head),
) -> Result<u64, Diag> {
    let name = path.display().to_string();
    let other = |what: String| Err(Diag::new(what).help(say!("batch-resume-help")));
    let no_line = |n: usize| other(say!("batch-resume-no-line", line = n, file = name));
    let mut reader = BufReader::new(file);
    let (mut whole, mut line, mut number) = (0, Vec::new(), 0);
    loop {
        line.clear();
        let read = reader.read_until(b'\n', &mut line);
        let read = read.map_err(|e| Diag::new(say!("file-unreadable", file = name, reason = e.to_string())))?;
        if !line.ends_with(b"\n") {
            // It is cut off only if it can be the beginning of a line of `batch`.
            let ours = line.iter().zip(LINE_BEGINS).all(|(a, b)| a == b);
            return if ours { Ok(whole) } else { no_line(number + 1) };
        }
        number += 1;
        let Some(head) = std::str::from_utf8(&line).ok().and_then(Head::read) else {
            return no_line(number);
        };
        match tasks.next() {
            Some(task) if task.id == head.id => before(&head),
            Some(task) => {
                let (found, wanted) = (head.id.text(), task.id.text());
                return other(say!("batch-resume-other", line = number, file = name, found = found, wanted = wanted));
            }
            None => {
                return other(say!("batch-resume-beyond", line = number, file = name, found = head.id.text()));
            }
        }
        whole += read as u64;
    }
}
