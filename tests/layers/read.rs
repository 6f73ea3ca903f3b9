//! The sources as text: files, code without comments and tests, paths that are used.

use std::path::{Path, PathBuf};

pub fn source_root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

/// All Rust files under a folder, sorted, so that messages come in the same order.
pub fn files(dir: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(dir).expect("the sources are there") {
        let path = entry.expect("readable").path();
        if path.is_dir() {
            found.extend(files(&path));
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The code with comments, texts and characters blanked, line breaks kept.
pub fn code_of(source: &str) -> String {
    let chars: Vec<char> = source.chars().collect();
    let mut out = String::with_capacity(source.len());
    let at = |i: usize| chars.get(i).copied().unwrap_or('\0');
    let blank = |out: &mut String, c: char| out.push(if c == '\n' { '\n' } else { ' ' });
    let mut i = 0;
    while i < chars.len() {
        let c = chars[i];
        let is_word = i > 0 && (at(i - 1).is_alphanumeric() || at(i - 1) == '_');
        if c == '/' && at(i + 1) == '/' {
            while i < chars.len() && chars[i] != '\n' {
                i += 1;
            }
        } else if c == '/' && at(i + 1) == '*' {
            let mut depth = 0;
            loop {
                if at(i) == '/' && at(i + 1) == '*' {
                    depth += 1;
                    i += 2;
                } else if at(i) == '*' && at(i + 1) == '/' {
                    depth -= 1;
                    i += 2;
                } else {
                    blank(&mut out, at(i));
                    i += 1;
                }
                if depth == 0 || i >= chars.len() {
                    break;
                }
            }
        } else if c == 'r' && !is_word && (at(i + 1) == '"' || (at(i + 1) == '#' && matches!(at(i + 2), '"' | '#'))) {
            let hashes = (i + 1..).take_while(|k| at(*k) == '#').count();
            i += hashes + 2;
            while i < chars.len() && !(chars[i] == '"' && (1..=hashes).all(|k| at(i + k) == '#')) {
                blank(&mut out, chars[i]);
                i += 1;
            }
            i += hashes + 1;
        } else if c == '"' {
            i += 1;
            while i < chars.len() && chars[i] != '"' {
                let step = if chars[i] == '\\' { 2 } else { 1 };
                (0..step).for_each(|k| blank(&mut out, at(i + k)));
                i += step;
            }
            i += 1;
        } else if c == '\'' && (at(i + 2) == '\'' || at(i + 1) == '\\') {
            i += if at(i + 1) == '\\' { 3 } else { 2 };
            while i < chars.len() && chars[i] != '\'' {
                i += 1;
            }
            i += 1;
        } else {
            out.push(c);
            i += 1;
        }
    }
    out
}

/// The same code without its test modules; their lines stay, empty.
pub fn without_tests(code: &str) -> String {
    let mut out = String::with_capacity(code.len());
    let mut rest = code;
    while let Some(start) = rest.find("#[cfg(test)]") {
        out.push_str(&rest[..start]);
        let mut depth = 0;
        let mut end = rest.len();
        for (i, c) in rest[start..].char_indices() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                ';' if depth == 0 => {}
                _ => continue,
            }
            if depth == 0 {
                end = start + i + 1;
                break;
            }
        }
        out.extend(rest[start..end].chars().filter(|c| *c == '\n'));
        rest = &rest[end..];
    }
    out + rest
}

/// Whether a file of the sources holds tests: one named `tests`, or one in a folder of that name.
pub fn is_test(file: &Path) -> bool {
    file.with_extension("").iter().any(|part| part == "tests")
}

/// Folders and name of a file, without its ending.
pub fn parts(file: &Path) -> Vec<String> {
    file.with_extension("").iter().map(|p| p.to_string_lossy().into_owned()).collect()
}

/// Paths from the crate's root that a piece of code uses, `job::plan` deep, with their line.
pub fn paths(code: &str, file: &Path) -> Vec<(usize, String)> {
    let module: Vec<String> = parts(file).into_iter().filter(|p| p != "mod").collect();
    let mut found = Vec::new();
    // Depths of braces at which a module written inside this file was opened: `super` counts from the innermost.
    let (mut depth, mut inner): (usize, Vec<usize>) = (0, Vec::new());
    for (number, line) in code.lines().enumerate() {
        let words = line.trim().trim_start_matches("pub ");
        if words.starts_with("mod ") && words.ends_with('{') {
            inner.push(depth);
        }
        let mut rest = line;
        while let Some((at, word)) = ["crate::", "super::", "spanhold::"]
            .into_iter()
            .filter_map(|w| rest.find(w).map(|at| (at, w)))
            .min_by_key(|(at, _)| *at)
        {
            let joined = rest[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_' || c == ':');
            rest = &rest[at + word.len()..];
            if joined {
                continue;
            }
            let mut above = usize::from(word == "super::");
            while let Some(further) = rest.strip_prefix("super::") {
                above += 1;
                rest = further;
            }
            if word == "super::" && above <= inner.len() {
                continue;
            }
            let above = above.saturating_sub(inner.len());
            let base = if word == "super::" { module.len().saturating_sub(above) } else { 0 };
            let next: String =
                rest.chars().take_while(|c| c.is_alphanumeric() || matches!(c, '_' | ':' | '{' | '*')).collect();
            let mut path: Vec<&str> = module[..base].iter().map(String::as_str).collect();
            path.extend(next.split("::").filter(|p| !p.is_empty()));
            path.truncate(2);
            found.push((number + 1, path.join("::")));
        }
        depth = (depth + line.matches('{').count()).saturating_sub(line.matches('}').count());
        while inner.last().is_some_and(|opened| depth <= *opened) {
            inner.pop();
        }
    }
    found
}
