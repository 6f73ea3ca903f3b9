//! Lists the tables of texts: each folder of `src/lang` is a language, so a further language needs no code.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs, io};

/// The language that every other falls back to. It stands first.
const FIRST: &str = "en";

/// The units of the inch system, in place of those of the other tables.
const INCH: &str = "inch.ftl";

fn entries(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)?.map(|e| e.map(|e| e.path())).collect::<io::Result<_>>()?;
    paths.sort();
    Ok(paths)
}

fn main() -> io::Result<()> {
    let root = PathBuf::from(env::var_os("CARGO_MANIFEST_DIR").unwrap_or_default()).join("src/lang");
    println!("cargo:rerun-if-changed={}", root.display());
    let mut folders: Vec<PathBuf> = entries(&root)?.into_iter().filter(|path| path.is_dir()).collect();
    folders.sort_by_key(|folder| !folder.ends_with(FIRST));
    let mut list = String::new();
    let mut codes = String::new();
    for folder in &folders {
        println!("cargo:rerun-if-changed={}", folder.display());
        let code = folder.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let _ = write!(codes, "{code:?}, ");
        let _ = write!(list, "(\n    {code:?},\n    &[");
        let tables = entries(folder)?.into_iter().filter(|path| path.extension().is_some_and(|e| e == "ftl"));
        for file in tables.filter(|path| !path.ends_with(INCH)) {
            let _ = write!(list, "\n        include_str!({:?}),", file.display().to_string());
        }
        let _ = write!(list, "\n    ],\n    include_str!({:?})\n), ", folder.join(INCH).display().to_string());
    }
    let tables = format!(
        "/// Codes of the languages that there are, English first.\npub const LANGUAGES: [&str; {0}] = [{codes}];\n\
         /// The tables of each language, in the same order, and its units in inch.\nconst TABLES: [(&str, &[&str], &str); {0}] = [{list}];\n",
        folders.len()
    );
    let out = PathBuf::from(env::var_os("OUT_DIR").unwrap_or_default());
    fs::write(out.join("tables.rs"), tables)
}
