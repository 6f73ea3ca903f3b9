//! Jobs from stdin: paths, one per line; YAML documents between `---` lines; or JSON documents, one per line. The first
//! line that is neither empty nor a comment decides which. Only one of them is in memory at a time.

use crate::diag::Diag;
use crate::fields::FILE_MAX_BYTES;
use crate::input;
use crate::say;
use std::io::{BufRead, Read};
use std::path::PathBuf;

/// A job of the call or of stdin.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// A path.
    Path(PathBuf),
    /// A document and its number from 1, or what is wrong with it.
    Document(usize, Result<String, Diag>),
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Form {
    Paths,
    Yaml,
    JsonLines,
}

/// Splits a stream into its jobs.
#[derive(Debug)]
pub struct Documents<R> {
    from: R,
    form: Option<Form>,
    number: usize,
    /// The rest of a `---` line, which belongs to the document after it.
    rest: Vec<u8>,
    ended: bool,
}

impl<R: BufRead> Documents<R> {
    /// Splits this stream.
    pub fn new(from: R) -> Self {
        Documents { from, form: None, number: 0, rest: Vec::new(), ended: false }
    }

    /// A line with its line end, cut if it is longer than any job may be. None: the stream has ended. An error: the
    /// stream cannot be read any further.
    fn line(&mut self) -> Option<Result<Vec<u8>, Diag>> {
        let mut line = Vec::new();
        let read = self.from.by_ref().take(FILE_MAX_BYTES + 1).read_until(b'\n', &mut line);
        match read {
            Ok(0) => None,
            Ok(_) => {
                // The rest of a cut line is skipped.
                while !line.ends_with(b"\n") {
                    let mut more = Vec::new();
                    match self.from.by_ref().take(FILE_MAX_BYTES).read_until(b'\n', &mut more) {
                        Ok(0) | Err(_) => break,
                        Ok(_) if more.ends_with(b"\n") => line.push(b'\n'),
                        Ok(_) => {}
                    }
                }
                Some(Ok(line))
            }
            Err(e) => Some(Err(Diag::new(say!("batch-stdin-unreadable", reason = e.to_string())))),
        }
    }

    fn document(&mut self, bytes: Result<Vec<u8>, Diag>) -> Item {
        self.number += 1;
        let text = bytes.and_then(|bytes| {
            if bytes.len() as u64 > FILE_MAX_BYTES {
                return Err(Diag::new(say!("batch-document-too-large", most = FILE_MAX_BYTES / (1024 * 1024)))
                    .help(say!("batch-document-too-large-help")));
            }
            String::from_utf8(bytes)
                .map_err(|_| Diag::new(say!("batch-document-not-utf8")).help(say!("batch-document-not-utf8-help")))
        });
        Item::Document(self.number, text)
    }

    /// The next YAML document. `first` is its first line if that was read already, else empty.
    fn yaml(&mut self, first: Vec<u8>) -> Option<Item> {
        let mut held = std::mem::take(&mut self.rest);
        let mut line = Some(Ok(first)).filter(|l: &Result<Vec<u8>, Diag>| !matches!(l, Ok(b) if b.is_empty()));
        loop {
            let next = match line.take() {
                Some(line) => Some(line),
                None => self.line(),
            };
            match next {
                Some(Ok(bytes)) => match behind_separator(&bytes) {
                    Some(behind) if says_something(&held) => {
                        self.rest = behind;
                        return Some(self.document(Ok(held)));
                    }
                    Some(behind) => held = behind,
                    // The rest of a document larger than any job is dropped, so that a stream without separators does
                    // not fill the memory.
                    None if held.len() as u64 <= FILE_MAX_BYTES => held.extend(bytes),
                    None => {}
                },
                Some(Err(diag)) => {
                    self.ended = true;
                    return Some(self.document(Err(diag)));
                }
                None => {
                    self.ended = true;
                    return says_something(&held).then(|| self.document(Ok(held)));
                }
            }
        }
    }
}

/// The text after `---`. None: the line does not begin a document.
fn behind_separator(line: &[u8]) -> Option<Vec<u8>> {
    let rest = line.strip_prefix(b"---")?;
    rest.first().is_none_or(u8::is_ascii_whitespace).then(|| rest.trim_ascii_start().to_vec())
}

/// Whether there is more than empty lines and comments.
fn says_something(text: &[u8]) -> bool {
    text.split(|b| *b == b'\n').any(|line| !is_idle(line))
}

fn is_idle(line: &[u8]) -> bool {
    matches!(line.trim_ascii(), [] | [b'#', ..])
}

fn form_of(line: &[u8]) -> Form {
    let line = line.strip_prefix(b"\xef\xbb\xbf").unwrap_or(line);
    let text = String::from_utf8_lossy(line);
    if line.trim_ascii().starts_with(b"{") {
        Form::JsonLines
    } else if behind_separator(line).is_some()
        || line.starts_with(b"%")
        || text.split_once(':').is_some_and(|(key, _)| input::is_job_key(key.trim()))
    {
        Form::Yaml
    } else {
        Form::Paths
    }
}

impl<R: BufRead> Iterator for Documents<R> {
    type Item = Item;

    fn next(&mut self) -> Option<Item> {
        if self.form == Some(Form::Yaml) && !self.ended {
            return self.yaml(Vec::new());
        }
        while !self.ended {
            let line = match self.line() {
                Some(Ok(line)) => line,
                Some(Err(diag)) => {
                    self.ended = true;
                    return Some(self.document(Err(diag)));
                }
                None => break,
            };
            let idle = is_idle(&line);
            if idle && self.form != Some(Form::Paths) {
                continue;
            }
            match *self.form.get_or_insert_with(|| form_of(&line)) {
                Form::Yaml => return self.yaml(line),
                Form::JsonLines => return Some(self.document(Ok(line))),
                Form::Paths if line.trim_ascii().is_empty() => {}
                Form::Paths => {
                    return Some(match String::from_utf8(line) {
                        // Editors on Windows may begin a file with a byte order mark.
                        Ok(path) => {
                            Item::Path(path.trim_start_matches('\u{feff}').trim_end_matches(['\n', '\r']).into())
                        }
                        Err(_) => self.document(Err(Diag::new(say!("batch-path-not-utf8")))),
                    });
                }
            }
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pieces(text: &str) -> Vec<Item> {
        Documents::new(text.as_bytes()).collect()
    }

    fn document(number: usize, text: &str) -> Item {
        Item::Document(number, Ok(text.to_owned()))
    }

    #[test]
    fn paths_come_one_a_line() {
        let path = |p: &str| Item::Path(p.into());
        assert_eq!(pieces("a.yaml\r\n\nb c.yaml\n#1.yaml\n"), [path("a.yaml"), path("b c.yaml"), path("#1.yaml")]);
        assert_eq!(pieces("\u{feff}a.yaml\r\nb.yaml\r\n"), [path("a.yaml"), path("b.yaml")]);
        assert_eq!(pieces("a: b.yaml"), [path("a: b.yaml")]);
        assert_eq!(pieces("\n# nothing\n"), []);
    }

    #[test]
    fn yaml_documents_are_parted_by_lines_of_dashes() {
        let text = "# two jobs\n---\nshaft: 1\nstock: 2\n--- # more\n\n---\nshaft: 3\n---x\n";
        assert_eq!(pieces(text), [document(1, "shaft: 1\nstock: 2\n"), document(2, "shaft: 3\n---x\n")]);
        assert_eq!(pieces("shaft: 1\n---\n---\n"), [document(1, "shaft: 1\n")]);
        assert_eq!(
            pieces("--- {shaft: 1}\n--- {shaft: 2}\n"),
            [document(1, "{shaft: 1}\n"), document(2, "{shaft: 2}\n")]
        );
    }

    #[test]
    fn json_documents_are_lines() {
        let text = "{\"shaft\": 1}\n\n{\"shaft\": 2}";
        assert_eq!(pieces(text), [document(1, "{\"shaft\": 1}\n"), document(2, "{\"shaft\": 2}")]);
    }

    #[test]
    fn a_stream_that_is_no_text_or_too_long_is_told_and_what_comes_behind_is_read() {
        let mut bytes = b"--- \nshaft: \xff\n---\n".to_vec();
        bytes.extend(std::iter::repeat_n(b'x', FILE_MAX_BYTES as usize * 2));
        bytes.extend(b"\n---\nshaft: 2\n");
        let all: Vec<Item> = Documents::new(&bytes[..]).collect();
        assert_eq!(all.len(), 3);
        assert!(matches!(&all[0], Item::Document(1, Err(d)) if d.what.contains("UTF-8")));
        assert!(matches!(&all[1], Item::Document(2, Err(d)) if d.what.contains("larger than 4 MiB")));
        assert_eq!(all[2], document(3, "shaft: 2\n"));
    }
}
