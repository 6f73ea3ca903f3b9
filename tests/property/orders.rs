//! What is known of two jobs that differ in one thing.

use crate::jobs::{self, with};
use crate::read;
use spanhold::answer::advised;
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;

/// Plans within this share are equally fast for the planner, which then takes the safer one.
const EQUALLY_FAST: f64 = 1e-3;
const SEEDS: std::ops::Range<u64> = 50_000..50_400;

/// Plans within a thousandth count as equally fast.
#[test]
fn a_shorter_travel_never_gives_a_faster_answer() {
    let mut felt = 0;
    for seed in SEEDS.start..SEEDS.start + 100 {
        let text = jobs::small_job(seed);
        let (Some(job), Some(other)) = (read(&text), with(&text, "farthest", |mm| 0.8 * mm).and_then(|t| read(&t)))
        else {
            continue;
        };
        let total = |job: &Job| {
            let plan = advised(job, Advice::None).unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
            if plan.verdict == Verdict::Feasible { plan.time_s.total + plan.time_s.penalties } else { f64::INFINITY }
        };
        let (long, short) = (total(&job), total(&other));
        if long.is_infinite() {
            assert!(short.is_infinite(), "seed {seed}: feasible with less travel only\n{text}");
            continue;
        }
        assert!(short >= long * (1.0 - EQUALLY_FAST), "seed {seed}: {short} s after {long} s\n{text}");
        felt += usize::from(short > long * (1.0 + EQUALLY_FAST));
    }
    assert!(felt >= 3, "{felt}");
}

#[test]
fn the_order_of_the_collets_changes_nothing() {
    let (mut compared, mut refused) = (0, 0);
    for seed in SEEDS {
        let text = jobs::small_job(seed);
        let collets: Vec<&str> = text.lines().filter(|l| l.trim_start().starts_with("- {name: ")).collect();
        let [a, b] = collets[..] else { continue };
        let swapped = text.replace(&format!("{a}\n{b}\n"), &format!("{b}\n{a}\n"));
        let (Some(one), Some(other)) = (read(&text), read(&swapped)) else { continue };
        let answer = |job: &Job| advised(job, Advice::None).unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
        let (p, mut q) = (answer(&one), answer(&other));
        assert_ne!(p.input_digest, q.input_digest);
        q.input_digest.clone_from(&p.input_digest);
        if p.verdict == Verdict::Infeasible {
            // Which collet's reason is told may depend on the order where several come equally far.
            assert_eq!(q.verdict, Verdict::Infeasible, "seed {seed}\n{text}");
            let far = |p: &Plan| p.shortfall.as_ref().map(|s| s.farthest_mm);
            assert_eq!(far(&p), far(&q), "seed {seed}\n{text}");
            refused += 1;
            continue;
        }
        assert_eq!(p, q, "seed {seed}\n{text}");
        compared += 1;
    }
    println!("{compared} plans and {refused} reasons compared");
    assert!(compared >= 5 && refused >= 10, "{compared} {refused}");
}

/// Four collets for the same diameter, of different hold and force: all that are equally fast are placed before one is chosen, whatever their order.
#[test]
fn regress_the_order_of_like_collets_does_not_cost_margin() {
    let (mut worse, mut compared) = (Vec::new(), 0);
    for seed in 400_300..400_400 {
        let text = jobs::small_job(seed);
        let Some(line) = text.lines().find(|l| l.contains("- {name: A")) else { continue };
        let hold = if line.contains("hold: 4") { "hold: 4" } else { "hold: 8" };
        let force = if line.contains("9000") { "9000" } else { "2500" };
        let others: Vec<String> = (0..4)
            .map(|i| {
                let line = line.replace("name: A", &format!("name: A{i}"));
                let line = line.replace(hold, &format!("hold: {}", 3 + 2 * i));
                line.replace(force, &format!("{}", 1500 + 2000 * i)) + "\n"
            })
            .collect();
        let with = |collets: String| {
            let kept = text.lines().filter(|l| !l.contains("- {name: ")).map(|l| format!("{l}\n"));
            kept.map(|l| if l.contains("collets:") { l + &collets } else { l }).collect::<String>()
        };
        let forward = read(&with(others.concat()));
        let backward = read(&with(others.iter().rev().cloned().collect()));
        let (Some(one), Some(other)) = (forward, backward) else { continue };
        let answer = |job: &Job| advised(job, Advice::None).unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
        let (p, q) = (answer(&one), answer(&other));
        assert_eq!(p.verdict, q.verdict, "seed {seed}\n{text}");
        let (Some(a), Some(b)) = (p.margin, q.margin) else { continue };
        compared += 1;
        if (a - b).abs() > 0.005 {
            worse.push((seed, p.collet, p.time_s.total, a, q.collet, q.time_s.total, b));
        }
    }
    assert!(worse.is_empty(), "{worse:#?}");
    println!("{compared} plans compared");
    assert!(compared >= 15, "{compared}");
}
