//! Text with the parts that stand out in it. A terminal may show them bold or coloured; everything else takes the plain
//! text.

use std::ops::Range;

/// Why a part of a text stands out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tone {
    /// The title of a block.
    Title,
    /// The verdict: it can be made.
    Feasible,
    /// The verdict: it cannot be made.
    NotFeasible,
    /// A share of a limit that leaves a thin margin.
    NearLimit,
}

/// A text with its parts that stand out.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Styled {
    text: String,
    marks: Vec<(Range<usize>, Tone)>,
}

impl Styled {
    /// The text alone.
    pub fn plain(&self) -> &str {
        &self.text
    }

    /// Number of lines.
    pub fn lines(&self) -> usize {
        self.text.lines().count()
    }

    /// Adds text.
    pub fn push(&mut self, text: &str) {
        self.text.push_str(text);
    }

    /// Adds text that stands out.
    pub fn push_as(&mut self, tone: Tone, text: &str) {
        let start = self.text.len();
        self.push(text);
        self.marks.push((start..self.text.len(), tone));
    }

    /// Adds another text.
    pub fn append(&mut self, other: Styled) {
        let by = self.text.len();
        self.push(&other.text);
        self.marks.extend(other.marks.into_iter().map(|(at, tone)| (at.start + by..at.end + by, tone)));
    }

    /// Marks a word wherever it stands.
    pub fn mark(&mut self, word: &str, tone: Tone) {
        let places = self.text.match_indices(word).map(|(at, word)| (at..at + word.len(), tone));
        self.marks.extend(places);
    }

    /// The text in pieces, each with its tone if it stands out.
    pub fn pieces(&self) -> Vec<(Option<Tone>, &str)> {
        let mut marks: Vec<&(Range<usize>, Tone)> = self.marks.iter().collect();
        marks.sort_by_key(|(at, _)| at.start);
        let (mut pieces, mut done) = (Vec::new(), 0);
        for (at, tone) in marks {
            // A mark inside another one is left out.
            if let (Some(before), Some(marked)) = (self.text.get(done..at.start), self.text.get(at.clone())) {
                pieces.extend([(None, before), (Some(*tone), marked)]);
                done = at.end;
            }
        }
        pieces.push((None, self.text.get(done..).unwrap_or_default()));
        pieces
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_are_the_whole_text_with_the_marks_in_their_places() {
        let mut text = Styled::default();
        text.push_as(Tone::Title, "Stages");
        text.push("\n  whip 97 %\n");
        let mut all = Styled::default();
        all.push("a\n");
        all.append(text);
        all.mark("97 %", Tone::NearLimit);
        all.mark("7 %", Tone::Title);
        let pieces = all.pieces();
        assert_eq!(pieces.iter().map(|(_, piece)| *piece).collect::<String>(), all.plain());
        let marked: Vec<_> = pieces.iter().filter_map(|(tone, piece)| tone.map(|t| (t, *piece))).collect();
        assert_eq!(marked, [(Tone::Title, "Stages"), (Tone::NearLimit, "97 %")]);
    }
}
