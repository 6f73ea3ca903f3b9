//! A job written in inches is the job written in mm: the same numbers, the same plan.

use crate::{jobs, read};
use spanhold::answer::answer;
use spanhold::fields::ALL;
use spanhold::input::{Named, read_texts};
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::lang::Units;
use std::fs::read_to_string;

/// The text of a metric job or machine file, written in inches: every number whose unit differs is divided by it and written
/// with all its digits.
pub fn in_inches(text: &str) -> String {
    let mut key = String::new();
    let lines = text.lines().map(|line| line.split(" #").next().unwrap_or_default().to_owned() + "\n");
    let text: String = lines.filter(|line| !line.starts_with('#')).collect();
    let parts = text.split_inclusive(['{', '}', '[', ']', ',', ':', '\n']).map(|part| {
        let (word, mark) = part.split_at(part.len() - 1);
        if mark == ":" {
            key = word.trim().to_owned();
        }
        let field = ALL.iter().find(|field| field.key() == key && field.converts());
        let unit = field.and_then(|field| field.unit_in(Units::Inch));
        match (unit, word.trim().parse::<f64>()) {
            (Some(unit), Ok(value)) => format!(" {}{mark}", unit.from_table(value)),
            _ => part.to_owned(),
        }
    });
    format!("units: inch\n{}", parts.collect::<String>())
}

/// What a job says, without the units and the texts of its files.
fn told(mut job: Job) -> String {
    (job.units, job.written, job.machine.written) = <_>::default();
    job.notes.clear();
    job.input_digest.clear();
    format!("{job:?}")
}

/// Whether two texts have the same words, and numbers that agree to 1e-9 of their size.
fn agree(one: &str, other: &str) -> bool {
    let words = |text: &str| -> Vec<String> {
        text.split(|c: char| !(c.is_alphanumeric() || "+-._".contains(c))).map(str::to_owned).collect()
    };
    let (one, other) = (words(one), words(other));
    one.len() == other.len()
        && one.iter().zip(&other).all(|(a, b)| match (a.parse::<f64>(), b.parse::<f64>()) {
            (Ok(a), Ok(b)) => a == b || (a - b).abs() <= 1e-9 * a.abs().max(b.abs()),
            _ => a == b,
        })
}

#[test]
fn a_random_job_in_inches_is_the_same_job() {
    let (mut good, mut bad) = (0, 0);
    for seed in 71_000..71_400 {
        let text = if seed % 2 == 0 { jobs::tray_job(seed) } else { jobs::rich_job(seed) };
        let inches = in_inches(&text);
        assert_ne!(inches, text);
        match (read(&text), read(&inches)) {
            (Some(metric), Some(inch)) => {
                good += 1;
                assert_eq!((inch.units, inch.written, inch.machine.written), (Units::Inch, Units::Inch, Units::Inch));
                let (metric, inch) = (told(metric), told(inch));
                assert!(agree(&metric, &inch), "seed {seed}\n{text}\n{inches}\n{metric}\n{inch}");
            }
            (None, None) => bad += 1,
            (metric, inch) => {
                panic!("seed {seed}: in mm {}, in inches {}\n{inches}", metric.is_some(), inch.is_some())
            }
        }
    }
    println!("{good} read, {bad} refused");
    assert!(good >= 200, "{good} {bad}");
}

fn planned(job: &str, machine: &str) -> Plan {
    let named = |name: &str, text: &str| Named { name: name.to_owned(), text: text.to_owned() };
    let job = read_texts(&named("job.yaml", job), Some(&named("machine.yaml", machine)), None);
    answer(&job.unwrap_or_else(|told| panic!("{told:?}"))).unwrap_or_else(|d| panic!("{d}"))
}

/// Each of the two files in mm and in inches.
#[test]
fn a_demo_job_in_inches_has_the_same_stops() {
    let job = read_to_string("demo/feed-roller-shaft.yaml").expect("a job");
    let machine = read_to_string("demo/machines/long-bed-32.yaml").expect("a machine");
    let metric = planned(&job, &machine);
    assert_eq!(metric.verdict, Verdict::Feasible);
    let places = |plan: &Plan| -> Vec<f64> {
        let stages = plan.stages.iter().flat_map(|s| [s.from_mm, s.to_mm, s.grip.as_ref().map_or(0.0, |g| g.nose_mm)]);
        stages.chain(plan.segments.iter().flat_map(|s| [s.from_mm, s.to_mm, s.diameter_mm])).collect()
    };
    for (job, machine) in
        [(in_inches(&job), in_inches(&machine)), (in_inches(&job), machine.clone()), (job.clone(), in_inches(&machine))]
    {
        let plan = planned(&job, &machine);
        assert_eq!((plan.verdict, plan.stages.len()), (Verdict::Feasible, metric.stages.len()));
        assert!(places(&metric).len() > 20);
        for (a, b) in places(&metric).iter().zip(places(&plan)) {
            assert!((a - b).abs() < 1e-6, "{a} {b}");
        }
    }
}
