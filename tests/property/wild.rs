//! Jobs with some numbers replaced by anything: read or refused, planned or not, they end and never panic.

use crate::{cases, jobs};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use spanhold::defect::Defect;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use std::cell::Cell;

/// Where numbers stand in a text.
fn numbers(text: &str) -> Vec<(usize, usize)> {
    let bytes = text.as_bytes();
    let mut found = Vec::new();
    let mut i = 0;
    while i < bytes.len() {
        let starts = bytes[i].is_ascii_digit() && (i == 0 || !bytes[i - 1].is_ascii_alphanumeric());
        let mut end = i;
        while starts && end < bytes.len() && (bytes[end].is_ascii_digit() || bytes[end] == b'.') {
            end += 1;
        }
        if starts && (end == bytes.len() || !bytes[end].is_ascii_alphabetic()) {
            found.push((i, end));
        }
        i = end.max(i + 1);
    }
    found
}

fn changed(text: &str, changes: &[(f64, String)]) -> String {
    let mut text = text.to_string();
    for (place, value) in changes {
        let all = numbers(&text);
        let (from, to) = all[((place * all.len() as f64) as usize).min(all.len() - 1)];
        text.replace_range(from..to, value);
    }
    text
}

fn value() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => (-2.0..3.0f64).prop_map(|e| format!("{:.4}", 10f64.powf(e))),
        2 => prop::sample::select(vec!["0", "-1", "1e-9", "1e9", ".inf", ".nan", "1e400", "0.1", "x", "[1, 2]", "''", "~"])
            .prop_map(String::from),
        1 => any::<f64>().prop_map(|v| format!("{v:e}")),
    ]
}

/// One of so many jobs is also asked what would help.
const HELPED: usize = 6;

/// What becomes of a job; messages never come empty.
fn ends(text: &str) -> Option<Result<Plan, Defect>> {
    match spanhold::input::read_job_text("wild.yaml", text, ".".as_ref()) {
        Err(messages) => {
            assert!(!messages.is_empty(), "refused without a word\n{text}");
            None
        }
        Ok(job) => {
            // What would help takes many plans, so it is asked for some of them.
            let advice = if text.len().is_multiple_of(HELPED) { Advice::Wanted } else { Advice::None };
            Some(spanhold::answer::advised(&job, advice))
        }
    }
}

fn wild() -> impl Strategy<Value = String> {
    let changes = prop::collection::vec((0.0..1.0, value()), 1..4);
    (60_000..70_000u64, changes).prop_map(|(seed, changes)| changed(&jobs::small_job(seed), &changes))
}

#[test]
fn any_job_ends_in_an_answer_or_in_messages_and_no_valid_one_is_called_a_fault_of_ours() {
    let (planned, stopped) = (Cell::new(0), Cell::new(0));
    let looked = TestRunner::new(cases(500)).run(&wild(), |text| {
        match ends(&text) {
            None => {}
            Some(Ok(plan)) if plan.verdict == Verdict::Feasible => planned.set(planned.get() + 1),
            Some(Ok(_)) => stopped.set(stopped.get() + 1),
            Some(Err(defect)) => prop_assert!(false, "{defect}\n{text}"),
        }
        Ok(())
    });
    looked.unwrap_or_else(|e| panic!("{e}"));
    // They must not all be refused by the reader.
    println!("{planned:?} of 500 are planned, {stopped:?} cannot be made");
    assert!(planned.get() >= 15 && stopped.get() >= 35, "{planned:?} {stopped:?}");
}
