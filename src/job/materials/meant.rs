//! What may be meant by a name that is not in the table. For a wrong number nothing of another family is offered.

use super::names::{LONGEST, allowed, plain, without_standard, without_system};
use super::{Group, Row, rows};
use crate::fields::nearest;
use crate::lang;
use crate::say;

/// A family of materials, as numbers tell it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Family {
    Unalloyed,
    Tool,
    Special,
    Stainless,
    HeatResistant,
    Alloyed,
    Copper,
    Nickel,
    Aluminium,
    Titanium,
    Other,
}

impl Family {
    /// That of a material number: `1.43` of `1.4301` is stainless steel. From memory of EN 10027-2 and DIN 17007.
    fn of(number: &str) -> Family {
        let group: u32 = number.get(2..4).and_then(|group| group.parse().ok()).unwrap_or(u32::MAX);
        match (number.chars().next(), group) {
            (Some('1'), 0..=14) => Family::Unalloyed,
            (Some('1'), 15..=29) => Family::Tool,
            (Some('1'), 30..=39) => Family::Special,
            (Some('1'), 40..=46) => Family::Stainless,
            (Some('1'), 47..=49) => Family::HeatResistant,
            (Some('1'), 50..=99) => Family::Alloyed,
            (Some('2'), 0..=19) => Family::Copper,
            (Some('2'), 40..=49) => Family::Nickel,
            (Some('3'), 0..=49) => Family::Aluminium,
            (Some('3'), 70..=79) => Family::Titanium,
            _ => Family::Other,
        }
    }

    /// Its name, and the word with which `materials` lists it.
    fn told(self) -> Option<(&'static str, Group)> {
        Some(match self {
            Family::Unalloyed => (lang::text("material-unalloyed"), Group::Steel),
            Family::Tool => (lang::text("material-tool"), Group::ToolSteel),
            Family::Special => (lang::text("material-special"), Group::Steel),
            Family::Stainless => (lang::text("material-stainless"), Group::StainlessSteel),
            Family::HeatResistant => (lang::text("material-heat-resistant"), Group::StainlessSteel),
            Family::Alloyed => (lang::text("material-alloyed"), Group::Steel),
            Family::Copper => (lang::text("material-copper"), Group::Copper),
            Family::Nickel => (lang::text("material-nickel"), Group::Nickel),
            Family::Aluminium => (lang::text("material-aluminium"), Group::Aluminium),
            Family::Titanium => (lang::text("material-titanium"), Group::Titanium),
            Family::Other => return None,
        })
    }
}

/// The shape of a name. Only a name of the same kind is offered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// A material number.
    Number(Family),
    /// Four or five digits, with the first two: a steel, or aluminium.
    Digits(u8, u8),
    /// Three digits, with the first: a stainless steel.
    ThreeDigits(u8),
    /// A letter and at least four digits, with the letter and the first digit.
    Letter(u8, u8),
    /// A name, with its first character.
    Name(char),
}

impl Kind {
    /// That of a plain name without its system.
    fn of(bare: &str) -> Option<Kind> {
        let digits = bare.bytes().take_while(u8::is_ascii_digit).count();
        let all_digits = |text: &[u8]| text.iter().all(u8::is_ascii_digit);
        // `316L`, `12L14` and `430FR`; `42CrMo4` is a name.
        let number = bare.len() - digits <= 2 && bare.bytes().all(|b| b.is_ascii_alphanumeric());
        Some(match bare.as_bytes() {
            [_, b'.', rest @ ..] if digits == 1 && all_digits(rest) => Kind::Number(Family::of(bare)),
            [a, b, ..] if (4..=5).contains(&digits) && number => Kind::Digits(*a, *b),
            [a, b, b'l', rest @ ..] if digits == 2 && rest.len() == 2 && all_digits(rest) => Kind::Digits(*a, *b),
            [a, ..] if digits == 3 && number => Kind::ThreeDigits(*a),
            [a, rest @ ..] if a.is_ascii_alphabetic() && rest.len() >= 4 && all_digits(rest) => {
                Kind::Letter(*a, rest.first().copied()?)
            }
            _ => Kind::Name(bare.chars().next()?),
        })
    }

    /// The family that it tells.
    fn family(self) -> Family {
        match self {
            Kind::Number(family) => family,
            Kind::Digits(b'1', b'0' | b'1' | b'2' | b'5') | Kind::Letter(b'g', b'1') => Family::Unalloyed,
            Kind::Digits(b'4' | b'8' | b'9', _) | Kind::Letter(b'g', _) => Family::Alloyed,
            Kind::ThreeDigits(b'2'..=b'6') | Kind::Letter(b's', _) => Family::Stainless,
            Kind::Letter(b'n', _) => Family::Nickel,
            Kind::Letter(b'a', _) => Family::Aluminium,
            Kind::Letter(b'c', _) => Family::Copper,
            Kind::Letter(b't', _) => Family::Tool,
            _ => Family::Other,
        }
    }
}

/// A plain name without its system.
fn bare(plain: &str) -> &str {
    without_system(plain).unwrap_or(plain)
}

/// The help for a name that is not in the table.
pub(super) fn advice(name: &str) -> String {
    let name = without_standard(name).unwrap_or(name);
    let whole: String = plain(name).chars().take(LONGEST).collect();
    let wanted = bare(&whole);
    let Some(kind) = Kind::of(wanted) else { return say!("material-none-near") };
    let aluminium = whole.starts_with("aw") || whole.starts_with("enaw");
    let names = rows().filter(|row| allowed(&whole, row)).flat_map(Row::names);
    let mut kin: Vec<&str> = names.filter(|known| Kind::of(bare(&plain(known))) == Some(kind)).collect();
    // Of names that are as near, the one whose first number is nearest: C45 for C46, and not C40.
    kin.sort_by_key(|known| first_number(bare(&plain(known))).abs_diff(first_number(wanted)));
    let near = match kind {
        Kind::Name(_) => nearest(name, kin),
        // Two digits that differ are another material, not a slip.
        _ => kin.into_iter().find(|known| one_slip(wanted, bare(&plain(known)))),
    };
    match (near, kind.family().told()) {
        (Some(near), _) => say!("material-near", near = near),
        (None, _) if aluminium => {
            say!("material-far", family = lang::text("material-aluminium"), word = Group::Aluminium.word())
        }
        (None, Some((family, group))) => say!("material-far", family = family, word = group.word()),
        (None, None) => say!("material-none-near"),
    }
}

/// The first number in a plain name, without its point: 14301 of `1.4301`, 45 of `c45`.
fn first_number(plain: &str) -> u32 {
    let behind = plain.trim_start_matches(|c: char| !c.is_ascii_digit());
    let digits = behind.chars().filter(|c| *c != '.').take_while(char::is_ascii_digit);
    digits.take(9).collect::<String>().parse().unwrap_or(0)
}

/// Whether one character more, less or another, or two that changed places, make one name of the other.
fn one_slip(a: &str, b: &str) -> bool {
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    let head = a.iter().zip(&b).take_while(|(a, b)| a == b).count();
    let tail = |i: usize, j: usize| a.get(head + i..).is_some_and(|rest| b.get(head + j..) == Some(rest));
    let swapped = a.get(head) == b.get(head + 1) && a.get(head + 1) == b.get(head);
    tail(1, 1) || tail(1, 0) || tail(0, 1) || (swapped && tail(2, 2))
}

#[cfg(test)]
mod tests {
    use super::super::find;

    fn help(name: &str) -> String {
        find(name).expect_err(name).help.unwrap_or_else(|| panic!("{name}: no help"))
    }

    #[test]
    fn a_slip_is_answered_with_what_is_near() {
        for (slip, near) in [
            ("1.4103", "1.4104"),
            ("1.7252", "1.7225"),
            ("4141", "AISI 4140"),
            ("AISI 1056", "AISI 1055"),
            ("12L15", "AISI 12L14"),
            ("CW615N", "CW614N"),
            ("C46", "C45"),
            ("42CrMo5", "42CrMo4"),
            ("EN 10088-3 X5CrNi18-11", "X5CrNi18-10"),
            ("EN AW-6083", "EN AW-6082"),
        ] {
            assert!(
                help(slip).starts_with(&format!("did you mean `{near}`? or give your own: ")),
                "{slip}: {}",
                help(slip)
            );
        }
    }

    #[test]
    fn a_wrong_number_is_not_answered_with_another_family() {
        for (number, family, word) in [
            ("1.4999", "a heat-resistant steel", "stainless steel"),
            ("1.4666", "a stainless steel", "stainless steel"),
            ("1.0999", "an unalloyed steel", "steel"),
            ("1.2999", "a tool steel", "tool steel"),
            ("1.8999", "an alloyed steel", "steel"),
            ("2.0999", "copper or a copper alloy", "copper alloy"),
            ("2.4999", "an alloy of nickel or cobalt", "nickel alloy"),
            ("3.4999", "aluminium or an aluminium alloy", "aluminium"),
            ("3.7999", "titanium or a titanium alloy", "titanium"),
            ("AISI 4999", "an alloyed steel", "steel"),
            ("1099", "an unalloyed steel", "steel"),
            ("AISI 499", "a stainless steel", "stainless steel"),
            ("EN AW-5140", "aluminium or an aluminium alloy", "aluminium"),
        ] {
            let told = help(number);
            let expected = format!("by its number it is {family}, and no number near it is in the table; ");
            assert!(told.starts_with(&expected), "{number}: {told}");
            assert!(told.contains(&format!("`spanhold materials \"{word}\"`")), "{number}: {told}");
        }
        for number in ["0.6025", "3.5200", "AISI 2011", "SUS 6082", "unobtainium", "?", "1.", "1.4", "ß"] {
            let told = help(number);
            assert!(!told.contains("did you mean"), "{number}: {told}");
            assert!(told.contains("`spanhold materials`") || told.contains("stainless"), "{number}: {told}");
        }
    }

    /// Every number with one digit changed is offered a number of its own family, or none.
    #[test]
    fn a_changed_digit_stays_in_its_family() {
        let mut offered = 0;
        for number in super::rows().map(|row| row.number).filter(|number| number.len() == 6 && number.starts_with("1."))
        {
            for digit in '0'..='9' {
                let other = format!("{}{digit}", &number[..5]);
                let Err(diag) = find(&other) else { continue };
                let help = diag.help.unwrap_or_default();
                let Some(near) = help.strip_prefix("did you mean `").and_then(|rest| rest.split('`').next()) else {
                    continue;
                };
                assert_eq!(super::Family::of(near), super::Family::of(&other), "{other}: {help}");
                offered += 1;
            }
        }
        assert!(offered > 100);
    }
}
