//! Finds the known word that is meant when a word is misspelt.

/// The known word most like `word`, if one is near enough to be meant: at most a third of the letters differ, or one
/// word is the beginning of the other.
pub fn nearest<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    // Longer than any key or name. It keeps the comparison cheap even for a hostile text.
    const LONGEST: usize = 40;
    let word: Vec<char> = word.to_lowercase().chars().take(LONGEST).collect();
    let mut best: Option<(usize, &str)> = None;
    for candidate in known {
        let other: Vec<char> = candidate.to_lowercase().chars().collect();
        let begins = word.len() >= 3 && other.len() >= 3 && (other.starts_with(&word) || word.starts_with(&other));
        let distance = if begins { 1 } else { edit_distance(&word, &other) };
        let allowed = (word.len().max(other.len()) / 3).max(1);
        // A word of one or two letters is within one edit of many words, so it gives no hint.
        let enough = begins || (distance <= allowed && distance < word.len().min(other.len()));
        if enough && best.is_none_or(|(d, _)| distance < d) {
            best = Some((distance, candidate));
        }
    }
    best.map(|(_, candidate)| candidate)
}

/// Levenshtein distance. A swap of two neighbouring letters counts as one edit.
#[expect(clippy::indexing_slicing, reason = "the table has a row and a column more than the words have letters")]
fn edit_distance(a: &[char], b: &[char]) -> usize {
    let mut rows = vec![vec![0; b.len() + 1]; a.len() + 1];
    for (i, row) in rows.iter_mut().enumerate() {
        row[0] = i;
    }
    for (j, cell) in rows[0].iter_mut().enumerate() {
        *cell = j;
    }
    for i in 1..=a.len() {
        for j in 1..=b.len() {
            let change = usize::from(a[i - 1] != b[j - 1]);
            let mut d = (rows[i - 1][j] + 1).min(rows[i][j - 1] + 1).min(rows[i - 1][j - 1] + change);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                d = d.min(rows[i - 2][j - 2] + 1);
            }
            rows[i][j] = d;
        }
    }
    rows[a.len()][b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_word_is_found_over_a_slip() {
        assert_eq!(nearest("diamter", ["length", "diameter"]), Some("diameter"));
        assert_eq!(nearest("dia", ["length", "diameter"]), Some("diameter"));
        assert_eq!(nearest("farhtest", ["nearest", "farthest"]), Some("farthest"));
        assert_eq!(nearest("colour", ["length", "diameter"]), None);
    }
}
