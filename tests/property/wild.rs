//! Jobs with some numbers replaced by anything: read or refused, planned or not, they end and never panic.

use crate::{cases, jobs, read};
use proptest::prelude::*;
use spanhold::defect::Defect;
use spanhold::job::plan::Plan;

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

/// What becomes of a job; messages never come empty.
fn ends(text: &str) -> Option<Result<Plan, Defect>> {
    match spanhold::input::read_job_text("wild.yaml", text, ".".as_ref()) {
        Err(messages) => {
            assert!(!messages.is_empty(), "refused without a word\n{text}");
            None
        }
        Ok(job) => Some(spanhold::answer::answer(&job)),
    }
}

fn wild() -> impl Strategy<Value = String> {
    let changes = prop::collection::vec((0.0..1.0, value()), 1..4);
    (60_000..70_000u64, changes).prop_map(|(seed, changes)| changed(&jobs::small_job(seed), &changes))
}

proptest! {
    #![proptest_config(cases(500))]

    #[test]
    fn any_job_ends_in_an_answer_or_in_messages_and_no_valid_one_is_called_a_fault_of_ours(text in wild()) {
        if let Some(Err(defect)) = ends(&text) {
            prop_assert!(false, "{defect}\n{text}");
        }
    }
}

/// The jobs above must not all be refused by the reader.
#[test]
fn many_wild_jobs_are_read() {
    let one = |seed: u64, value: &str| {
        read(&changed(&jobs::small_job(seed), &[(0.37 * (seed % 7) as f64 % 1.0, value.into())]))
    };
    let there = (60_000..60_100).filter(|seed| one(*seed, "7.5").is_some()).count();
    assert!(there >= 40, "{there}");
}
