//! The texts that people read stand in tables (`src/lang/`): what the sources ask for and what the tables hold are the same.

use crate::read::{files, is_test, source_root};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Each text by its key as it stands in the tables, up to the next key. A term (`-mm`) stands there with its dash.
fn texts(tables: &[String]) -> BTreeMap<String, String> {
    let mut texts: BTreeMap<String, String> = BTreeMap::new();
    let mut key = String::new();
    for line in tables.iter().flat_map(|t| t.lines()).filter(|l| !l.starts_with('#')) {
        let begins = line.starts_with(|c: char| c.is_ascii_alphabetic() || c == '-');
        let (own, text) = if begins { line.split_once(" =").unwrap_or((line, "")) } else { (key.as_str(), line) };
        key = own.to_owned();
        texts.entry(key.clone()).or_default().push_str(&format!("{text}\n"));
    }
    texts.remove("");
    texts
}

/// The tables of a language.
fn tables(folder: &Path) -> Vec<String> {
    let files = std::fs::read_dir(folder).expect("tables");
    files.map(|file| std::fs::read_to_string(file.expect("readable").path()).expect("readable")).collect()
}

/// Arguments of a text: what stands as `$name`.
fn arguments(text: &str) -> BTreeSet<String> {
    text.split('$').skip(1).map(word).collect()
}

/// Terms of a text: what stands as `{ -name }`.
fn terms(text: &str) -> BTreeSet<String> {
    let name = |rest: &str| rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-').collect::<String>();
    text.split("{ -").skip(1).map(|rest| format!("-{}", name(rest))).collect()
}

/// Arguments of each text by its key.
fn told(tables: &[String]) -> BTreeMap<String, BTreeSet<String>> {
    texts(tables)
        .into_iter()
        .filter(|(key, _)| !key.starts_with('-'))
        .map(|(key, text)| (key, arguments(&text)))
        .collect()
}

/// The letters, figures and `_` that a text begins with.
fn word(text: &str) -> String {
    text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect()
}

/// Keys that a source asks for, with the arguments it gives: `say!("key", name = …)` and `text("key")`.
fn asked(source: &str) -> Vec<(String, BTreeSet<String>)> {
    let mut found = Vec::new();
    for (at, opening) in source.match_indices("say!(").chain(source.match_indices("lang::text(")) {
        let line = source[..at].rfind('\n').map_or(0, |n| n + 1);
        if source[line..at].trim_start().starts_with("//") {
            continue;
        }
        let behind = source[at + opening.len()..].trim_start();
        let Some((key, rest)) = behind.strip_prefix('"').and_then(|b| b.split_once('"')) else { continue };
        found.push((key.to_owned(), if opening == "say!(" { names(rest) } else { BTreeSet::new() }));
    }
    found
}

/// Names of the arguments up to the parenthesis that closes the call: a word before a single `=` at the call's own depth.
fn names(rest: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let (mut depth, mut in_text, mut piece) = (0, false, String::new());
    let mut chars = rest.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '\\' if in_text => {
                chars.next();
            }
            '"' => in_text = !in_text,
            _ if in_text => {}
            '(' | '[' | '{' => depth += 1,
            ')' if depth == 0 => break,
            ')' | ']' | '}' => depth -= 1,
            ',' if depth == 0 => piece.clear(),
            '=' if depth == 0 && chars.peek() != Some(&'=') && word(piece.trim()) == piece.trim() => {
                names.insert(piece.trim().to_owned());
            }
            c if depth == 0 => piece.push(c),
            _ => {}
        }
    }
    names.remove("");
    names
}

/// Keys that a script of the page asks for, with the arguments it gives: `say('key', { name, other: … })`.
fn asked_by_script(source: &str) -> Vec<(String, BTreeSet<String>)> {
    let calls = source.match_indices("say('").map(|(at, opening)| &source[at + opening.len()..]);
    let calls = calls.filter_map(|behind| behind.split_once('\''));
    let given = |rest: &str| {
        let object = rest.strip_prefix(',').and_then(|r| r.trim_start().strip_prefix('{'));
        object.map_or_else(BTreeSet::new, script_names)
    };
    calls.map(|(key, rest)| (key.to_owned(), given(rest))).collect()
}

/// Names of an object up to the brace that closes it: what stands before a `:` or `,` at the object's own depth.
fn script_names(object: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let (mut depth, mut quote, mut piece) = (0, None, String::new());
    for c in object.chars() {
        match (c, quote) {
            (_, Some(q)) => quote = Some(q).filter(|q| *q != c),
            ('\'' | '"' | '`', None) => quote = Some(c),
            ('}', None) if depth == 0 => break,
            ('(' | '[' | '{', None) => depth += 1,
            (')' | ']' | '}', None) => depth -= 1,
            (',', None) if depth == 0 => {
                names.insert(word(piece.trim()));
                piece.clear();
            }
            (c, None) if depth == 0 => piece.push(c),
            _ => {}
        }
    }
    names.insert(word(piece.trim()));
    names.remove("");
    names
}

/// Keys that an HTML file asks for: `data-say="key"`, `data-say-title="key"`, `data-say-label="key"`.
fn asked_by_html(source: &str) -> Vec<(String, BTreeSet<String>)> {
    let uses = source.split("data-say").skip(1).filter_map(|rest| rest.split('"').nth(1));
    uses.map(|key| (key.to_owned(), BTreeSet::new())).collect()
}

/// What the files of the page ask for.
fn asked_by_page(path: &Path, source: &str) -> Vec<(String, BTreeSet<String>)> {
    match path.extension().and_then(|e| e.to_str()) {
        Some("js") => asked_by_script(source),
        Some("html") => asked_by_html(source),
        _ => Vec::new(),
    }
}

#[test]
fn every_text_is_in_the_tables_and_every_text_of_the_tables_is_used() {
    let root = source_root();
    let told = told(&tables(&root.join("lang/en")));
    let (mut uses, mut used) = (Vec::new(), BTreeSet::new());
    let mut wrong = Vec::new();
    for path in files(&root).into_iter().filter(|p| !is_test(p) && !p.ends_with("lang/mod.rs")) {
        let source = std::fs::read_to_string(&path).expect("readable");
        uses.extend(asked(&source).into_iter().map(|(key, given)| (path.clone(), key, given)));
    }
    for entry in std::fs::read_dir(root.join("page/assets")).expect("the page") {
        let path = entry.expect("readable").path();
        let source = std::fs::read_to_string(&path).expect("readable");
        uses.extend(asked_by_page(&path, &source).into_iter().map(|(key, given)| (path.clone(), key, given)));
    }
    for (path, key, given) in uses {
        match told.get(&key) {
            None => wrong.push(format!("{}: no text for `{key}`", path.display())),
            Some(wanted) if *wanted != given => {
                wrong.push(format!("{}: `{key}` has the arguments {wanted:?}, not {given:?}", path.display()));
            }
            Some(_) => {}
        }
        used.insert(key);
    }
    // The meanings of fields are asked for by the paths of the fields; a test there holds that each has one and none is left. Keys of a plan
    // in words are asked for by the keys; one without words is shown as it is.
    let by_path = |key: &str| key.starts_with("field-") || key.starts_with("key-");
    let unused: Vec<&String> = told.keys().filter(|key| !used.contains(*key) && !by_path(key)).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(unused.is_empty(), "in the tables and asked for by nothing: {unused:?}");
}

/// What must be the same in every language: the arguments, what stands between backquotes, and the terms.
fn fixed(text: &str) -> [BTreeSet<String>; 3] {
    let quoted = text.split('`').skip(1).step_by(2).map(str::to_owned);
    [arguments(text), quoted.collect(), terms(text)]
}

#[test]
fn each_term_has_its_metric_and_its_inch_form_and_is_used() {
    let root = source_root().join("lang");
    let english = texts(&tables(&root.join("en")));
    let used: BTreeSet<String> = english.values().flat_map(|text| terms(text)).collect();
    assert!(used.len() >= 6, "{used:?}");
    for entry in std::fs::read_dir(&root).expect("languages").map(|e| e.expect("readable").path()) {
        for file in ["lang.ftl", "inch.ftl"].map(|name| entry.join(name)).into_iter().filter(|_| entry.is_dir()) {
            let table = texts(&[std::fs::read_to_string(&file).expect("readable")]);
            let known: BTreeSet<String> = table.into_keys().filter(|key| key.starts_with('-')).collect();
            assert_eq!(known, used, "{}", file.display());
        }
    }
}

#[test]
fn every_language_has_every_text_with_the_same_arguments_and_nothing_else() {
    let root = source_root().join("lang");
    let english = texts(&tables(&root.join("en")));
    let mut languages = 0;
    for entry in std::fs::read_dir(&root).expect("languages") {
        let folder = entry.expect("readable").path();
        if !folder.is_dir() {
            continue;
        }
        languages += 1;
        let own = texts(&tables(&folder));
        let keys = |texts: &BTreeMap<String, String>| texts.keys().cloned().collect::<BTreeSet<_>>();
        let missing: Vec<String> = keys(&english).difference(&keys(&own)).cloned().collect();
        let left: Vec<String> = keys(&own).difference(&keys(&english)).cloned().collect();
        assert!(missing.is_empty() && left.is_empty(), "{}: missing {missing:?}, left over {left:?}", folder.display());
        for (key, text) in &own {
            assert_eq!(fixed(text), fixed(&english[key]), "{}: {key}", folder.display());
            assert!(!text.trim().is_empty(), "{}: {key} is empty", folder.display());
        }
    }
    assert!(languages >= 6);
}

#[test]
fn keys_and_arguments_are_read_off_a_call() {
    let calls = r#"say!("a-b", x = f(y == 1, "," ), n = list.len()); // say!("no")
        let s = crate::lang::text("c"); say!(
            "d");"#;
    let set = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect::<BTreeSet<_>>();
    let expected = [("a-b", set(&["x", "n"])), ("no", set(&[])), ("d", set(&[])), ("c", set(&[]))];
    assert_eq!(asked(calls), expected.map(|(k, a)| (k.to_owned(), a)));
    let script = "say('a', { x, y: f({ z: 1 }, ','), w: `${v}` }) say('b') say('c',\n { t: s ? '}' : 2 })";
    let expected = [("a", set(&["x", "y", "w"])), ("b", set(&[])), ("c", set(&["t"]))];
    assert_eq!(asked_by_script(script), expected.map(|(k, a)| (k.to_owned(), a)));
    let html = r#"<a id="q" data-say="d" data-say-title="e">"#;
    assert_eq!(asked_by_html(html), [("d".to_owned(), set(&[])), ("e".to_owned(), set(&[]))]);
    let table = "# $no\n-e = f\na = b { $x } { -e } {$y ->\n   *[other] { $z }\n}\nc =\n    d\n";
    assert_eq!(terms(table), set(&["-e"]));
    assert_eq!(
        told(&[table.to_owned()]),
        BTreeMap::from([("a".into(), set(&["x", "y", "z"])), ("c".into(), set(&[]))])
    );
}
