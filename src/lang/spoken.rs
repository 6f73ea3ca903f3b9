//! The language that the texts of a thread are in, and the units that they tell lengths in.

use super::LANGUAGES;
use super::units::Units;
use std::cell::Cell;

/// A language that there are tables of. The default is English.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Language(usize);

impl Language {
    /// The language with a code, such as `de`.
    pub fn of(code: &str) -> Option<Language> {
        LANGUAGES.iter().position(|known| *known == code).map(Language)
    }

    /// Its code.
    pub fn code(self) -> &'static str {
        LANGUAGES.get(self.0).copied().unwrap_or("en")
    }

    /// Its number in the list of languages.
    pub(super) fn number(self) -> usize {
        self.0
    }

    /// The language that a reader likes best, of those that there are: from a list as browsers send it, such as
    /// `de-CH,de;q=0.9,en;q=0.5` (RFC 9110, 12.5.4). None: there is none of them.
    pub fn liked(list: &str) -> Option<Language> {
        let one = |item: &str| {
            let mut parts = item.split(';').map(str::trim);
            let code = parts.next()?.split('-').next()?.to_ascii_lowercase();
            let weight = parts.find_map(|p| p.strip_prefix("q=")).map_or(Some(1.0), |q| q.parse::<f64>().ok())?;
            Some((Language::of(&code)?, weight)).filter(|(_, weight)| *weight > 0.0)
        };
        // Of equal weights the first counts.
        let best = |best: Option<(Language, f64)>, next: (Language, f64)| {
            best.filter(|(_, weight)| *weight >= next.1).or(Some(next))
        };
        list.split(',').filter_map(one).fold(None, best).map(|(language, _)| language)
    }
}

/// What the texts of a thread are in, and whether a file may choose another language.
#[derive(Debug, Clone, Copy, Default)]
pub struct Spoken {
    language: Language,
    fixed: bool,
    units: Units,
}

impl Spoken {
    /// A language that no file can change: the user asked for it.
    pub fn fixed(language: Language) -> Spoken {
        Spoken { language, fixed: true, units: Units::Metric }
    }

    /// Whether no file can change it.
    pub fn is_fixed(self) -> bool {
        self.fixed
    }
}

thread_local! {
    static SPOKEN: Cell<Spoken> =
        const { Cell::new(Spoken { language: Language(0), fixed: false, units: Units::Metric }) };
}

/// What this thread speaks, to be passed on to another thread.
pub fn spoken() -> Spoken {
    SPOKEN.get()
}

/// The language of the texts of this thread.
pub fn language() -> Language {
    SPOKEN.get().language
}

/// The units that this thread tells.
pub fn units() -> Units {
    SPOKEN.get().units
}

/// From here on this thread tells these units, as a file asks for.
pub fn prefer_units(units: Units) {
    SPOKEN.set(Spoken { units, ..SPOKEN.get() });
}

/// From here on this thread speaks this, as another thread does or as the user asked.
pub fn speak(spoken: Spoken) {
    SPOKEN.set(spoken);
}

/// From here on the texts of this thread are in the language that a file asks for, unless the user asked for one.
pub fn prefer(language: Language) {
    let now = SPOKEN.get();
    if !now.fixed {
        SPOKEN.set(Spoken { language, ..now });
    }
}

/// Puts back what a thread spoke before.
struct Before(Spoken);

impl Drop for Before {
    fn drop(&mut self) {
        SPOKEN.set(self.0);
    }
}

/// Does work in what another thread speaks. What the work itself chooses ends with it.
pub fn speaking<T>(spoken: Spoken, work: impl FnOnce() -> T) -> T {
    let _before = Before(SPOKEN.replace(spoken));
    work()
}

/// Does work whose files may choose a language. The choice ends with the work.
pub fn apart<T>(work: impl FnOnce() -> T) -> T {
    speaking(spoken(), work)
}

/// Does work whose texts are in English whatever this thread speaks.
pub fn in_english<T>(work: impl FnOnce() -> T) -> T {
    speaking(Spoken::fixed(Language::default()), work)
}
