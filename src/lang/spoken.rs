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

/// What the texts of a thread are in, in which units, and what of it a file may choose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Spoken {
    language: Language,
    language_fixed: bool,
    units: Units,
    units_fixed: bool,
}

impl Spoken {
    const UNASKED: Spoken =
        Spoken { language: Language(0), language_fixed: false, units: Units::Metric, units_fixed: false };

    /// A language that no file can change: the user asked for it. A file may choose the units.
    pub fn fixed(language: Language) -> Spoken {
        Spoken::UNASKED.in_language(language)
    }

    /// The same in a language that no file can change.
    pub fn in_language(self, language: Language) -> Spoken {
        Spoken { language, language_fixed: true, ..self }
    }

    /// The same in units that no file can change.
    pub fn in_units(self, units: Units) -> Spoken {
        Spoken { units, units_fixed: true, ..self }
    }

    /// Whether no file can change the language.
    pub fn is_fixed(self) -> bool {
        self.language_fixed
    }

    /// The units, if no file can change them.
    pub fn units_fixed(self) -> Option<Units> {
        Some(self.units).filter(|_| self.units_fixed)
    }
}

thread_local! {
    static SPOKEN: Cell<Spoken> = const { Cell::new(Spoken::UNASKED) };
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

/// From here on this thread tells the units that a file asks for, unless the user asked for some.
pub fn prefer_units(units: Units) {
    let now = SPOKEN.get();
    if !now.units_fixed {
        SPOKEN.set(Spoken { units, ..now });
    }
}

/// From here on this thread speaks this, as another thread does or as the user asked.
pub fn speak(spoken: Spoken) {
    SPOKEN.set(spoken);
}

/// From here on the texts of this thread are in the language that a file asks for, unless the user asked for one.
pub fn prefer(language: Language) {
    let now = SPOKEN.get();
    if !now.language_fixed {
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

/// Does work whose texts are in English whatever this thread speaks, in its units.
pub fn in_english<T>(work: impl FnOnce() -> T) -> T {
    speaking(spoken().in_language(Language::default()), work)
}
