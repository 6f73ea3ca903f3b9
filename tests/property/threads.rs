//! A designation is printed in one form, which reads back to the same thread.

use super::cases;
use proptest::prelude::*;
use spanhold::job::thread::Thread;

/// What people write: a size of each standard or near one, with blanks, commas, classes and hands.
fn designation() -> impl Strategy<Value = String> {
    let size = prop_oneof![
        (1..700u32, prop::sample::select(vec!["0.5", "0,75", "1", "1.25", "1,5", "2", "1.4", "3"]))
            .prop_map(|(d, p)| format!("M{}x{p}", f64::from(d) / 10.0)),
        (1..69u32).prop_map(|d| format!("m {d}")),
        (8..40u32, 1..4u32, 2..4u32).prop_map(|(d, p, n)| format!("M{d} x Ph{}P{p}", n * p)),
        (8..80u32, 2..10u32).prop_map(|(d, p)| format!("Tr {d} x {p}")),
        (8..80u32, 2..10u32, 1..5u32).prop_map(|(d, p, n)| format!("tr{d}x{}(P{p})", p * n)),
        (1..9u32, 1..5u32).prop_map(|(n, by)| format!("G{n}/{}", 1 << by)),
        (1..3u32, 1..4u32).prop_map(|(n, part)| format!("g {n} {part}/4")),
        (0..13u32, 10..90u32, prop::sample::select(vec!["#", ""]), series())
            .prop_map(|(n, tpi, sign, series)| format!("{sign}{n}-{tpi}{series}")),
        (1..16u32, 6..40u32, series()).prop_map(|(n, tpi, series)| format!("{n}/16-{tpi} {series}")),
        (1..4u32, 1..8u32, 6..30u32).prop_map(|(n, part, tpi)| format!("{n} {part}/8 - {tpi} uns")),
    ];
    let tail = prop::sample::select(vec![
        "", "-6g", " 4h6h", "-LH", " LH - 6h", "-6g-LH", "-2A", " 3a LH", "A", " b-LH", "-7e", "LH-8c", "-6H", "-7H",
        "-RH",
    ]);
    (size, tail).prop_map(|(size, tail)| format!("{size}{tail}"))
}

fn series() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec!["", "UNC", " UNF", "-unef", " UNS", " UN"])
}

#[test]
fn a_designation_reads_back_to_the_same_thread() {
    let mut runner = proptest::test_runner::TestRunner::new(cases(20_000));
    let read = std::cell::Cell::new([0; 4]);
    runner
        .run(&designation(), |text| {
            let Ok(thread) = Thread::parse(&text) else { return Ok(()) };
            let again = Thread::parse(&thread.designation).map_err(|d| TestCaseError::fail(format!("{text}: {d}")))?;
            prop_assert_eq!(&again, &thread, "{}", text);
            prop_assert!(thread.minor_mm() > 0.0 && thread.minor_mm() < thread.flank_mm());
            prop_assert!(thread.flank_mm() < thread.major_mm);
            let form = ["M", "Tr", "G"].iter().position(|f| thread.designation.starts_with(f)).unwrap_or(3);
            let mut counts = read.get();
            counts[form] += 1;
            read.set(counts);
            Ok(())
        })
        .unwrap_or_else(|e| panic!("{e}"));
    assert!(read.get().iter().all(|n| *n > 100), "{:?}", read.get());
}
