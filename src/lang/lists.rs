//! Lists of texts. How they are joined stands in the table, because languages differ in it.

use crate::say;

fn joined<T: AsRef<str>>(items: &[T], add: impl Fn(String, &str) -> String) -> String {
    let mut items = items.iter().map(AsRef::as_ref);
    let first = items.next().unwrap_or_default().to_owned();
    items.fold(first, add)
}

/// `a, b, c`.
pub fn commas<T: AsRef<str>>(items: &[T]) -> String {
    joined(items, |before, item| say!("list-comma", before = before, item = item))
}

/// `a; b; c`, for clauses and whole sentences.
pub fn semicolons<T: AsRef<str>>(items: &[T]) -> String {
    joined(items, |before, item| say!("list-semicolon", before = before, item = item))
}

/// `a, b and c`.
pub fn and<T: AsRef<str>>(items: &[T]) -> String {
    match items {
        [before @ .., last] if !before.is_empty() => {
            say!("list-and", before = commas(before), item = last.as_ref())
        }
        _ => commas(items),
    }
}

/// `a, b and 12 more`: at most so many items, and how many are left out.
pub fn at_most<T: AsRef<str>>(most: usize, items: &[T]) -> String {
    match items.split_at_checked(most) {
        Some((shown, rest)) if !rest.is_empty() => say!("list-more", items = commas(shown), more = rest.len()),
        _ => commas(items),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_are_joined_as_the_table_says() {
        let none: [&str; 0] = [];
        assert_eq!((commas(&none), and(&none)), (String::new(), String::new()));
        assert_eq!(
            (and(&["a"]), and(&["a", "b"]), and(&["a", "b", "c"])),
            ("a".into(), "a and b".into(), "a, b and c".into())
        );
        assert_eq!(semicolons(&["a, b", "c"]), "a, b; c");
        assert_eq!((at_most(2, &["a", "b"]), at_most(2, &["a", "b", "c"])), ("a, b".into(), "a, b and 1 more".into()));
    }
}
