//! Texts in other languages: by the call, by the job, by the shop's file. Files stay as they are.

use super::{GOOD, call};
use std::path::Path;

/// A word of the first line of a feasible plan in each language.
const FEASIBLE: [(&str, &str); 6] = [
    ("en", "FEASIBLE"),
    ("de", "MACHBAR"),
    ("fr", "RÉALISABLE"),
    ("it", "FATTIBILE"),
    ("es", "VIABLE"),
    ("ja", "加工可能"),
];

/// A small job with a key of its own, written into a folder.
fn job_with(folder: &Path, key: &str) -> String {
    let path = folder.join("job.yaml");
    let machine = "{name: m, bush: {max_bar: 20, land: 30, gap: 1, stiffness: 100}, headstock: {nearest: 60, stroke: 200, hold: 40, \
                   stiffness: 100, max_rpm: 8000, regrip_s: 4}, part_off: {tray: {max_length: 100, max_diameter: 30}}}";
    let text = format!(
        "{key}\nshaft: {{material: C45, sections: [{{length: 30.5, diameter: 10.5}}]}}\nstock: {{diameter: 12}}\nmachine: {machine}\n"
    );
    std::fs::write(&path, text).expect("written");
    path.display().to_string()
}

#[test]
fn the_call_chooses_the_language_and_numbers_have_its_decimal_mark() {
    for (code, word) in FEASIBLE {
        let said = call(["check", GOOD, "--lang", code]);
        assert!(said.status == 0 && said.out.starts_with(word), "{code}: {}", said.out);
        let plan = call([&format!("--lang={code}"), "plan", GOOD, "--format", "json"]).json();
        assert_eq!(plan["language"], code);
        let estimate = plan["cautions"][0].as_str().expect("a text");
        // A caution that no tradesman has read stands in English too.
        assert!(estimate.contains("This is an estimate."), "{code}: {estimate}");
        assert_eq!(estimate.starts_with("This is an estimate."), code == "en", "{code}: {estimate}");
    }
    let text = call(["plan", GOOD, "--full", "--lang", "de"]).out;
    let seconds = |line: &&str| line.contains(" s") && line.contains(',');
    assert!(text.lines().any(|line| seconds(&line)), "{text}");
}

#[test]
fn a_language_that_there_is_not_is_told_in_the_language_of_the_call() {
    let said = call(["check", GOOD, "--lang", "xx"]);
    assert!(said.status == 2 && said.err.contains("en, de, es, fr, it, ja"), "{}", said.err);
    let folder = tempfile::tempdir().expect("a folder");
    let said = call(["check", &job_with(folder.path(), "language: klingon")]);
    assert!(said.status == 2 && said.err.contains("language"), "{}", said.err);
    // What is wrong with a job is told in its language.
    let said = call(["check", &job_with(folder.path(), "language: de\nhold: foot")]);
    assert!(
        said.status == 2 && said.err.contains("collet, centre") && said.err.contains("Schreiben Sie"),
        "{}",
        said.err
    );
}

#[test]
fn the_job_chooses_before_the_shop_and_the_call_before_both() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("shop.yaml"), "name: s\nlanguage: it\n").expect("written");
    let first = |args: &[&str], word: &str| {
        let said = call([&["check"], args].concat());
        assert!(said.status == 0 && said.out.starts_with(word), "{args:?}: {}{}", said.out, said.err);
    };
    first(&[&job_with(folder.path(), "")], "FATTIBILE");
    first(&[&job_with(folder.path(), "language: es")], "VIABLE");
    first(&[&job_with(folder.path(), "language: es"), "--lang", "en"], "FEASIBLE");
}

#[test]
fn files_for_programs_are_the_same_in_every_language_and_a_plan_is_rechecked_in_its_own() {
    let folder = tempfile::tempdir().expect("a folder");
    let job = job_with(folder.path(), "");
    let out = |code: &str| folder.path().join(code).display().to_string();
    for (code, _) in FEASIBLE {
        let said = call(["plan", &job, "--out", &out(code), "--lang", code]);
        assert!(said.status == 0, "{code}: {}", said.err);
        let table = |code: &str| std::fs::read_to_string(Path::new(&out(code)).join("stages.csv")).expect("written");
        assert_eq!(table(code), table("en"), "{code}");
        let sheet = std::fs::read_to_string(Path::new(&out(code)).join("sheet.html")).expect("written");
        assert!(sheet.contains(&format!("<html lang=\"{code}\">")), "{code}");
        let plan = format!("{}/plan.json", out(code));
        let said = call(["recheck", &plan, &job]);
        assert!(said.status == 0, "{code}: {}{}", said.out, said.err);
    }
}

#[test]
fn each_job_of_a_batch_speaks_its_own_language() {
    let folder = tempfile::tempdir().expect("a folder");
    let one = |name: &str, key: &str| {
        let path = job_with(folder.path(), key);
        let own = folder.path().join(name);
        std::fs::rename(path, &own).expect("renamed");
        own.display().to_string()
    };
    let jobs: Vec<String> =
        (0..6).map(|i| one(&format!("{i}.yaml"), if i % 2 == 0 { "language: fr" } else { "" })).collect();
    let said = call(std::iter::once("batch".to_owned()).chain(jobs));
    assert_eq!(said.status, 0, "{}", said.err);
    for (i, line) in said.out.lines().enumerate() {
        let plan: serde_json::Value = serde_json::from_str(line).expect("JSON");
        let language = if i % 2 == 0 { "fr" } else { "en" };
        assert!(line.contains(&format!("\"language\":\"{language}\"")), "{i}: {plan}");
    }
}

#[test]
fn the_call_chooses_the_units_and_files_for_programs_stay_metric() {
    let folder = tempfile::tempdir().expect("a folder");
    let job = job_with(folder.path(), "");
    let out = |units: &str| folder.path().join(units).display().to_string();
    for units in ["mm", "inch"] {
        let said = call(["plan", &job, "--out", &out(units), "--units", units]);
        assert!(said.status == 0, "{units}: {}", said.err);
        let file = |name: &str| std::fs::read_to_string(Path::new(&out(units)).join(name)).expect("written");
        let plan: serde_json::Value = serde_json::from_str(&file("plan.json")).expect("JSON");
        assert_eq!((&plan["units"], &plan["length_mm"]), (&units.into(), &30.5.into()));
        // 30.5 mm are 1.2008 in.
        assert_eq!(file("sheet.html").contains("1.201 in"), units == "inch");
        assert_eq!(
            file("stages.csv"),
            std::fs::read_to_string(Path::new(&out("mm")).join("stages.csv")).expect("written")
        );
        let said = call(["recheck", &format!("{}/plan.json", out(units)), &job]);
        assert!(said.status == 0, "{units}: {}{}", said.out, said.err);
    }
    // Units and language are chosen apart from each other.
    let said = call(["--units=inch", "plan", &job_with(folder.path(), "language: de"), "--full"]);
    assert!(said.status == 0 && said.out.contains("MACHBAR") && said.out.contains("1,201 Zoll"), "{}", said.out);
    let said = call(["check", &job, "--units", "cubit"]);
    assert!(said.status == 2 && said.err.contains("mm, inch"), "{}", said.err);
}

#[test]
fn the_units_of_a_draft_are_those_of_its_drawing_wherever_the_option_stands() {
    let folder = tempfile::tempdir().expect("a folder");
    let table = folder.path().join("table.csv");
    std::fs::write(&table, "length (mm),diameter (mm)\n30.5,10.5\n").expect("written");
    let table = table.display().to_string();
    let after = call(["draft", &table, "--units", "inch"]);
    let before = call(["--units", "inch", "draft", &table]);
    assert!(after.status == 0, "{}", after.err);
    assert_eq!((after.status, after.out), (before.status, before.out));
    assert_eq!(call(["draft", &table, "--units", "cm"]).status, 0);
}
