//! What people read, in one place: a table of texts by key, one folder a language.
//!
//! The tables are Fluent files ([the syntax](https://projectfluent.org/fluent/guide/)), so a further language is a further folder.
//! [`text`] gives a text without arguments, the macro `say!` any text:
//!
//! ```
//! use spanhold::say;
//!
//! assert_eq!(say!("stages", number = 1), "1 stage");
//! assert_eq!(say!("stages", number = 4), "4 stages");
//! ```
//!
//! Numbers with decimals are given as text, with the decimals that the value deserves. A whole number is given as a number where
//! the text has a plural. Names of checks, keys of files and user text are arguments, never part of a key.
//!
//! A unit stands in a text as a term, `{ -mm }`, where its number is told by [`Measure`]; `inch.ftl` has the terms of the inch system.
//!
//! A key without a text is an error in this program: the key itself is shown. `tests/layers/texts.rs` holds that every key used
//! has a text, that every text is used, and that the arguments are those of the text.

pub mod lists;
mod measure;
mod numbers;
mod spoken;
mod units;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::BTreeMap;
use std::sync::{LazyLock, OnceLock};

pub use measure::{Measure, told, unit_told, with_unit_told};
pub use numbers::{NONE, fixed, number, trimmed, trimmed_pointed};
pub use spoken::{Language, Spoken, apart, in_english, language, prefer, prefer_units, speak, speaking, spoken, units};
pub use units::Units;

include!(concat!(env!("OUT_DIR"), "/tables.rs"));

/// The texts of each language, metric and in inch.
static TEXTS: LazyLock<Vec<[OnceLock<Texts>; 2]>> =
    LazyLock::new(|| TABLES.iter().map(|_| Default::default()).collect());

/// The texts of a language in a system of units.
struct Texts {
    bundle: FluentBundle<FluentResource>,
    /// The texts without arguments by key, each made when it is first asked for: a call of the program needs few of them.
    plain: BTreeMap<&'static str, OnceLock<String>>,
}

impl Texts {
    fn new(language: &str, files: &[&'static str]) -> Texts {
        let mut bundle = FluentBundle::new_concurrent(language.parse().into_iter().collect());
        // Its marks around arguments are meant for text that runs both ways; files and terminals would show them.
        bundle.set_use_isolating(false);
        let mut plain = BTreeMap::new();
        for file in files {
            // A line that cannot be read is left out; a test of this file holds that there is none.
            let resource = FluentResource::try_new((*file).to_owned()).unwrap_or_else(|(readable, _)| readable);
            plain.extend(keys_of(file).map(|key| (key, OnceLock::new())));
            bundle.add_resource_overriding(resource);
        }
        Texts { bundle, plain }
    }

    /// The texts of a language, by its number in the list of languages, in the units of this thread. They are read when they are first
    /// asked for.
    fn of(number: usize) -> Option<&'static Texts> {
        let (code, files, inch) = TABLES.get(number)?;
        let [metric, in_inch] = TEXTS.get(number)?;
        Some(match units() {
            Units::Metric => metric.get_or_init(|| Texts::new(code, files)),
            Units::Inch => in_inch.get_or_init(|| Texts::new(code, &[files, &[*inch][..]].concat())),
        })
    }

    /// The first language that has a key: that of this thread, else English.
    fn having(key: &str) -> Option<&'static Texts> {
        let has = |texts: &&Texts| texts.plain.contains_key(key);
        Texts::of(language().number()).filter(has).or_else(|| Texts::of(0).filter(has))
    }

    /// A text without arguments; arguments that it has stand there as `{$name}`. None: there is no such key.
    fn plain(&self, key: &str) -> Option<&str> {
        Some(self.plain.get(key)?.get_or_init(|| self.formatted(key, None)))
    }

    fn formatted(&self, key: &str, args: Option<&FluentArgs<'_>>) -> String {
        match self.bundle.get_message(key).and_then(|m| m.value()) {
            Some(pattern) => self.bundle.format_pattern(pattern, args, &mut Vec::new()).into_owned(),
            None => key.to_owned(),
        }
    }
}

/// The keys of a file: what stands before the `=` of each line that begins with a letter.
fn keys_of(file: &str) -> impl Iterator<Item = &str> {
    let keys = file.lines().filter(|line| line.starts_with(|c: char| c.is_ascii_alphabetic()));
    keys.filter_map(|line| line.split_once(" =").map(|(key, _)| key))
}

/// A text without arguments.
pub fn text(key: &'static str) -> &'static str {
    known(key).unwrap_or(key)
}

/// A text without arguments whose key is made from a name. None: there is no such text.
pub fn known(key: &str) -> Option<&'static str> {
    Texts::having(key)?.plain(key)
}

/// The texts whose keys begin with a prefix, for a reader that puts in arguments itself: they stand there as `{$name}`.
pub fn texts_of(prefix: &str) -> BTreeMap<&'static str, &'static str> {
    let keys = Texts::of(0).into_iter().flat_map(|texts| texts.plain.keys());
    keys.filter(|key| key.starts_with(prefix)).map(|key| (*key, text(key))).collect()
}

/// A text with its arguments: what `say!` calls.
pub fn with_arguments<const N: usize>(key: &'static str, arguments: [(&'static str, FluentValue<'_>); N]) -> String {
    let texts = Texts::having(key);
    texts.map_or_else(|| key.to_owned(), |texts| texts.formatted(key, Some(&FluentArgs::from_iter(arguments))))
}

/// Something that can stand in a text.
pub trait Argument {
    /// As a value of the table.
    fn value(&self) -> FluentValue<'_>;
}

impl Argument for str {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(self)
    }
}

impl Argument for String {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(self.as_str())
    }
}

impl Argument for std::borrow::Cow<'_, str> {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(&**self)
    }
}

impl Argument for usize {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(*self)
    }
}

impl Argument for u32 {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(*self)
    }
}

impl Argument for u64 {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(*self)
    }
}

impl Argument for i32 {
    fn value(&self) -> FluentValue<'_> {
        FluentValue::from(*self)
    }
}

impl<T: Argument + ?Sized> Argument for &T {
    fn value(&self) -> FluentValue<'_> {
        (**self).value()
    }
}

/// A text of the table by its key, with its arguments by name: `say!("stages", number = plan.stages.len())`.
#[macro_export]
macro_rules! say {
    ($key:literal) => {
        $crate::lang::text($key).to_owned()
    };
    ($key:literal, $($name:ident = $value:expr),+ $(,)?) => {
        $crate::lang::with_arguments($key, [$((stringify!($name), $crate::lang::Argument::value(&$value))),+])
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_line_of_the_tables_can_be_read_and_no_key_stands_twice() {
        for (language, files, inch) in TABLES {
            let mut seen = std::collections::BTreeSet::new();
            for file in files.iter().chain([&inch]) {
                assert!(FluentResource::try_new((*file).to_owned()).is_ok(), "a line that cannot be read in\n{file}");
                for key in keys_of(file) {
                    assert!(seen.insert(key), "{language}: {key} stands twice");
                }
            }
            assert!(!seen.is_empty());
        }
    }

    #[test]
    fn each_thread_speaks_its_own_language_and_a_file_cannot_change_one_asked_for() {
        let german = Language::of("de").expect("there is German");
        assert_eq!(text("language-name"), "English");
        apart(|| {
            prefer(german);
            assert_eq!((text("language-name"), number(0.5)), ("Deutsch", "0,5".to_owned()));
        });
        assert_eq!(text("language-name"), "English");
        speaking(Spoken::fixed(german), || {
            prefer(Language::default());
            assert_eq!(text("language-name"), "Deutsch");
            let told = std::thread::scope(|s| s.spawn(|| text("language-name")).join());
            assert_eq!(told.expect("no panic"), "English");
        });
    }

    #[test]
    fn units_and_language_are_chosen_apart_from_each_other() {
        let german = Language::of("de").expect("there is German");
        let files_choose = || {
            prefer(german);
            prefer_units(Units::Inch);
            (text("unit-mm"), language() == german)
        };
        assert_eq!(apart(files_choose), ("Zoll", true));
        assert_eq!(speaking(Spoken::fixed(Language::default()), files_choose), ("in", false));
        assert_eq!(speaking(Spoken::default().in_units(Units::Metric), files_choose), ("mm", true));
        let inch_in_english = || in_english(|| text("unit-n"));
        assert_eq!(speaking(Spoken::fixed(german).in_units(Units::Inch), inch_in_english), "lbf");
    }

    #[test]
    fn a_reader_gets_the_language_he_likes_best_of_those_there_are() {
        let liked = |list: &str| Language::liked(list).map(Language::code);
        assert_eq!(liked("de-CH,de;q=0.9,en;q=0.5"), Some("de"));
        assert_eq!(liked("nl, en;q=0.3, fr;q=0.7"), Some("fr"));
        assert_eq!(liked("en;q=0, pt"), None);
        assert_eq!(liked(""), None);
        assert_eq!(liked(";;q=,,de;q=x,ja"), Some("ja"));
    }

    #[test]
    fn a_key_without_a_text_is_shown_as_it_is() {
        assert_eq!(text("no-such-key"), "no-such-key");
        assert_eq!(say!("no-such-key", number = 3), "no-such-key");
    }

    #[test]
    fn arguments_that_are_not_given_stand_as_names() {
        assert_eq!(texts_of("page-row-").get("page-row-button"), Some(&"{$what}: {$row}"));
        assert!(texts_of("page-").keys().all(|key| key.starts_with("page-")));
    }

    #[test]
    fn user_text_stays_as_it_is() {
        let texts = Texts::new("en", &["a = job { $name }\n"]);
        let arguments = FluentArgs::from_iter([("name", "{ $x } \u{1b}[2J".value())]);
        assert_eq!(texts.formatted("a", Some(&arguments)), "job { $x } \u{1b}[2J");
    }
}
