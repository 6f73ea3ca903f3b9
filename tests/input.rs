//! The reader: every bad input gets its message at its place, and no input makes it panic.
//!
//! The cases under `tests/cases` are jobs with the expected errors beside the offending line: in the lines below it, a
//! `^` (or `<` for the first column) stands under the column and is followed by `error: …` and, where it matters,
//! `help: …`. The errors of a job are these and no others, in this order.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use proptest::prelude::*;
use spanhold::diag::Diag;
use spanhold::input::{TEMPLATE, read_job, read_job_text, read_job_with, render};
use spanhold::job::{End, FeatureKind, Holding, Interrupt, Job, Objective, SectionKind, Tools};

/// An expected or found error: file, line, column, what.
#[derive(Debug, PartialEq, Eq)]
struct Told {
    file: String,
    line: usize,
    column: usize,
    what: String,
}

/// What a file says it is answered with; the help beside it where there is one.
fn expected(path: &Path) -> Vec<(Told, Option<String>)> {
    let text = fs::read_to_string(path).expect("case");
    let mut out: Vec<(Told, Option<String>)> = Vec::new();
    let mut line = 0;
    for (number, content) in text.lines().enumerate() {
        let Some((column, kind, body)) = remark(content) else {
            line = number + 1;
            continue;
        };
        if kind == "error" {
            let file = path.display().to_string();
            out.push((Told { file, line, column, what: body.to_owned() }, None));
        } else {
            out.last_mut().expect("help stands below an error").1 = Some(body.to_owned());
        }
    }
    out
}

/// Column, `error` or `help`, and the text of a remark line.
fn remark(line: &str) -> Option<(usize, &str, &str)> {
    let rest = line.strip_prefix('#')?;
    let (column, rest) = match rest.strip_prefix('<') {
        Some(rest) => (1, rest),
        None => {
            let rest = rest.trim_start_matches(' ');
            (line.len() - rest.len() + 1, rest.strip_prefix('^')?)
        }
    };
    let (kind, body) = rest.trim_start().split_once(": ")?;
    ["error", "help"].contains(&kind).then_some((column, kind, body))
}

fn told(diag: &Diag) -> Told {
    let place = diag.place.as_ref();
    Told {
        file: place.map_or_else(String::new, |p| p.source.path.display().to_string()),
        line: place.map_or(0, |p| p.line),
        column: place.map_or(0, |p| p.column),
        what: diag.what.clone(),
    }
}

fn yaml_files(dir: &str) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = fs::read_dir(dir)
        .expect("directory of cases")
        .map(|entry| entry.expect("entry").path())
        .filter(|path| path.extension().is_some_and(|ext| ext == "yaml"))
        .collect();
    files.sort();
    files
}

/// The machine file a case names, where it is one of ours.
fn machine_of(case: &Path) -> Option<PathBuf> {
    let text = fs::read_to_string(case).expect("case");
    let name = text.lines().find_map(|line| line.strip_prefix("machine: "))?.to_owned();
    let path = Path::new("tests/cases").join(name);
    path.is_file().then_some(path)
}

#[test]
fn every_case_is_answered_with_the_errors_beside_its_lines() {
    // The tests run in the crate's root, so that paths in messages are the same everywhere.
    let mut ran = 0;
    let mut machines = BTreeSet::new();
    let mut wrong = String::new();
    for case in yaml_files("tests/cases") {
        let mut wanted = expected(&case);
        if let Some(machine) = machine_of(&case) {
            wanted.extend(expected(&machine));
            machines.insert(machine);
        }
        assert!(!wanted.is_empty(), "{} expects nothing", case.display());
        let diags = read_job(&case).expect_err("a case is a bad job");
        let found: Vec<Told> = diags.iter().map(told).collect();
        let same = found.len() == wanted.len() && found.iter().zip(&wanted).all(|(found, (wanted, _))| found == wanted);
        let helped = diags.iter().zip(&wanted).all(|(diag, (_, help))| help.is_none() || diag.help == *help);
        if !same || !helped {
            wrong +=
                &format!("{}:\n{}\n", case.display(), diags.iter().map(|d| format!("  {d}\n")).collect::<String>());
        }
        assert!(!render(&diags).is_empty());
        ran += 1;
    }
    assert!(ran >= 30, "only {ran} cases were run");
    for machine in yaml_files("tests/cases/machines") {
        assert!(machines.contains(&machine), "{} is used by no case", machine.display());
    }
    assert!(wrong.is_empty(), "answered otherwise:\n{wrong}");
}

/// The errors of a text, which must be bad.
fn errors(text: &str) -> Vec<Diag> {
    read_job_text("job.yaml", text, Path::new("tests/cases")).expect_err("bad input")
}

/// The one error of a text or file.
fn only(diags: Vec<Diag>) -> String {
    assert_eq!(diags.len(), 1, "{diags:?}");
    assert!(diags[0].help.is_some(), "no advice: {}", diags[0]);
    diags[0].to_string()
}

fn job(text: &str) -> Job {
    read_job_text("job.yaml", text, Path::new("tests/cases")).unwrap_or_else(|diags| panic!("{}", render(&diags)))
}

const REST: &str = "stock: {diameter: 16}\nmachine: machines/small.yaml\n";

/// A job of these sections (and features), one a line, on the small machine.
fn job_of(shaft: &str) -> String {
    format!("shaft:\n  material: C45\n{shaft}\n{REST}")
}

#[test]
fn a_missing_file_a_directory_and_an_empty_file_are_told_apart() {
    let dir = tempfile::tempdir().expect("a directory");
    assert!(only(read_job(&dir.path().join("none.yaml")).expect_err("missing")).contains("no file"));
    assert!(only(read_job(dir.path()).expect_err("directory")).contains("is a directory"));
    for content in ["", " \n\n", "\u{feff}"] {
        let path = dir.path().join("empty.yaml");
        fs::write(&path, content).expect("written");
        assert!(only(read_job(&path).expect_err("empty")).contains("the file is empty"), "{content:?}");
    }
}

#[test]
fn a_file_that_is_not_utf_8_is_told_with_its_line() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("latin.yaml");
    fs::write(&path, b"shaft:\n  name: B\xfcgelwelle\n").expect("written");
    assert!(only(read_job(&path).expect_err("latin-1")).contains("not UTF-8 text (first fault in line 2)"));
}

#[test]
fn a_file_of_50_mb_is_refused_before_it_is_read() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("large.yaml");
    let line = "# 50 MB of remarks make no job\n";
    fs::write(&path, line.repeat(50_000_000 / line.len())).expect("written");
    assert!(only(read_job(&path).expect_err("too large")).contains("larger than 4 MiB"));
    assert!(only(errors(&line.repeat(50_000_000 / line.len()))).contains("larger than 4 MiB"));
    let machine = format!("machine: {}\n", path.display());
    let text = format!(
        "shaft: {{material: C45, sections: [{{length: 60, diameter: 12}}]}}\nstock: {{diameter: 16}}\n{machine}"
    );
    assert!(only(errors(&text)).contains("larger than 4 MiB"));
}

#[test]
fn more_sections_features_or_collets_than_a_job_has_are_one_error() {
    let sections = "    - {length: 0.1, diameter: 12}\n".repeat(10_000);
    let told = only(errors(&job_of(&format!("  sections:\n{sections}"))));
    assert!(told.contains("`sections` has 10000 entries") && told.contains("at most 1000"), "{told}");

    let features = "    - {cross_hole: 2, at: 30}\n".repeat(1001);
    let told = only(errors(&job_of(&format!("  sections: [{{length: 60, diameter: 12}}]\n  features:\n{features}"))));
    assert!(told.contains("`features` has 1001 entries"), "{told}");

    let values = "    - {length: 0.1, diameter: 12}\n".repeat(100_000);
    assert!(only(errors(&job_of(&format!("  sections:\n{values}")))).contains("more values than any job has"));
}

#[test]
fn a_thousand_sections_are_read() {
    let sections = "    - {length: 0.1, diameter: 12}\n".repeat(1000);
    let job = job(&job_of(&format!("  sections:\n{sections}")));
    assert_eq!((job.shaft.sections.len(), job.shaft.length_mm()), (1000, 100.0));
}

#[test]
fn nesting_without_end_is_one_error() {
    for (open, close) in [("[", "]"), ("{a: ", "}"), ("- ", ""), ("? ", "")] {
        let deep = format!("shaft:\n  {}x{}\n", open.repeat(100_000), close.repeat(100_000));
        assert!(only(errors(&deep)).contains("nested too deeply"), "{open}");
        let unclosed = open.repeat(100_000);
        assert!(only(errors(&unclosed)).contains("nested too deeply"), "{open}");
    }
    let mut stairs = String::new();
    for depth in 0..1500 {
        stairs += &format!("{}a:\n", " ".repeat(depth));
    }
    assert!(only(errors(&stairs)).contains("nested too deeply"));
}

#[test]
fn alias_bombs_are_one_error() {
    let mut bomb = String::from("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (from, to) in ('a'..='y').zip('b'..='z') {
        bomb +=
            &format!("{to}: &{to} [*{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}]\n");
    }
    assert!(only(errors(&bomb)).contains("anchors and aliases"));
    assert!(only(errors("a: &a {b: *a}\n")).contains("anchors and aliases"));
    assert!(only(errors("a: *nobody\n")).contains("anchors and aliases"));
}

#[test]
fn a_flood_of_errors_is_cut_and_counted() {
    let sections = "    - {length: 0, diameter: 0}\n".repeat(500);
    let diags = errors(&job_of(&format!("  sections:\n{sections}")));
    assert_eq!(diags.len(), 101);
    assert!(diags[100].what.contains("900 more errors"), "{}", diags[100]);
}

#[test]
fn the_long_form_shows_the_line_with_a_marker_and_the_help() {
    let text = job_of("  sections:\n    - {length: 34 mm, diameter: 12}");
    let shown = render(&errors(&text));
    let wanted = "\
error: `length` is written with `mm` behind the number
 --> job.yaml:4:16
  |
4 |     - {length: 34 mm, diameter: 12}
  |                ^^^^^
  |
  = help: numbers are plain mm: write `length: 34`, converted where the unit is another
";
    assert_eq!(shown, wanted);
}

#[test]
fn control_characters_and_endless_lines_do_not_reach_the_terminal() {
    let text = format!("\"a\\e[31m\": 1\n{}: 2\n", "k".repeat(900));
    let shown = render(&errors(&text));
    assert!(!shown.contains('\u{1b}') && shown.lines().all(|line| line.len() < 300), "{shown}");
}

#[test]
fn the_template_is_a_job_without_fault() {
    let job = job(TEMPLATE);
    assert_eq!(job.shaft.name, "guide roller shaft");
    assert_eq!(job.shaft.length_mm(), 480.2);
    assert_eq!(job.shaft.sections.len(), 8);
    assert_eq!(job.shaft.features.len(), 3);
    assert_eq!(job.machine.counter_spindle.as_ref().map(|c| c.collets.len()), Some(2));
    assert_eq!((job.cutting.tools, job.cutting.vc_m_per_min, job.cutting.feed_mm), (Tools::Single, 150.0, None));
    assert_eq!((job.holding, job.objective), (Holding::Bush, Objective::Time));
    assert_eq!(job.rates.as_ref().map(|r| r.currency.as_str()), Some("EUR"));
}

#[test]
fn the_values_the_template_shows_as_defaults_are_the_defaults() {
    let limits: String = TEMPLATE
        .lines()
        .skip_while(|line| !line.starts_with("# limits:"))
        .take_while(|line| line.starts_with('#'))
        .map(|line| format!("{}\n", line.trim_start_matches("# ").replacen("#   ", "  ", 1)))
        .collect();
    assert!(limits.lines().count() >= 9, "{limits}");
    let shown = TEMPLATE.replace("  # bar_end:", "  bar_end:").replace("  # facing:", "  facing:") + &limits;
    assert!(shown.contains("\n  bar_end: 20") && shown.contains("\nlimits:\n"));
    let (job, shown) = (job(TEMPLATE), job(&shown));
    assert_eq!((job.limits, job.machine), (shown.limits, shown.machine));
}

#[test]
fn what_is_left_out_gets_its_default() {
    let job = job(&job_of("  sections: [{length: 60, diameter: 12}]"));
    assert_eq!((job.shaft.name.as_str(), job.shaft.bow_mm_per_m, job.stock.bar_length_mm), ("shaft", 0.3, 3000.0));
    let c = &job.cutting;
    assert_eq!((c.vc_m_per_min, c.nose_radius_mm, c.approach_deg), (160.0, 0.4, 93.0));
    assert_eq!((c.ap_max_mm, c.ap_finish_mm, c.speed_floor), (1.5, 0.25, 1.0));
    assert_eq!((c.lag_mm, c.unbalance, c.in_plane_share, c.feed_mm), (1.0, 0.10, 0.55, None));
    let l = &job.limits;
    assert!((l.stiffness_min_n_per_um - 0.8).abs() < 1e-12);
    assert_eq!((l.whirl_ratio, l.whip_mm, l.sag_mm, l.release_mm), (0.7, 0.10, 0.05, 0.25));
    assert_eq!((l.tolerance_share, l.drill_mm, l.station_pitch_mm, l.damping_ratio), (0.25, 0.02, 5.0, 0.02));
    assert_eq!((l.bore_clearance_mm, l.torque_margin, l.avoid_penalty_s), (1.0, 1.5, 5.0));
    let m = &job.machine;
    assert_eq!(m.bush.as_ref().map(|b| b.engagement_min_mm), Some(10.0));
    assert_eq!((m.shared_stop_saving_s, m.segment_overhead_s, m.bar_end_mm, m.facing_mm), (0.0, 1.2, 20.0, 0.5));
    assert_eq!((m.cross_tool_reach_mm.clone(), m.part_off.width_mm, m.part_off.time_s), (vec![10.0], 3.0, 8.0));
    assert_eq!(m.counter_spindle.as_ref().map(|c| c.friction), Some(0.15));
    assert!(
        job.notes.iter().any(|n| n.contains("160 m/min assumed, the middle of the usual 100 to 220")),
        "{:?}",
        job.notes
    );
    assert!(job.notes.iter().any(|n| n.contains("kc1.1 2220") && n.contains("not re-read")), "{:?}", job.notes);
    assert!(job.notes.iter().any(|n| n.contains("0.3 mm per m assumed")), "{:?}", job.notes);
    assert!(job.rates.is_none() && job.stock.tolerance.is_none());
}

#[test]
fn every_kind_of_section_is_read() {
    let job = job(&job_of(
        "  sections:
    - {length: 34, diameter: 12, tolerance: h6, ra: 0.8, name: front journal}
    - {length: 2.5, diameter: 11.4, kind: groove}
    - {length: 26, thread: M16x1.5}
    - {length: 31, diameter: 14, tolerance: h9, finish_pass: true}
    - {length: 40, taper: [12, 15]}
    - {length: 12, diameter: 15, tolerance: [-0.02, 0.01], interrupt: never, grip: false}
    - {length: 15, across_flats: 13, sides: 6}
    - {length: 10, across_flats: 12, sides: 2, diameter: 15}
    - {length: 10, diameter: 15, kind: knurl}
    - {length: 0.1, diameter: 15}
    - {length: 0.2, diameter: 15}",
    ));
    let s = &job.shaft.sections;
    let kinds: Vec<&SectionKind> = s.iter().map(|s| &s.kind).collect();
    assert_eq!(kinds[0], &SectionKind::Cylinder { diameter_mm: 12.0 });
    assert_eq!(kinds[1], &SectionKind::Groove { diameter_mm: 11.4 });
    let SectionKind::Thread(thread) = kinds[2] else { panic!("{:?}", kinds[2]) };
    assert_eq!((thread.designation.as_str(), thread.major_mm, thread.pitch_mm), ("M16x1.5", 16.0, 1.5));
    assert_eq!(kinds[4], &SectionKind::Taper { front_mm: 12.0, rear_mm: 15.0 });
    let SectionKind::Flats { across_flats_mm: 13.0, sides: 6, circle_mm } = kinds[6] else { panic!("{:?}", kinds[6]) };
    // Across the corners of a hexagon: 2/√3 of across flats.
    assert!((circle_mm - 15.011_107).abs() < 1e-6);
    assert_eq!(kinds[7], &SectionKind::Flats { across_flats_mm: 12.0, sides: 2, circle_mm: 15.0 });
    assert_eq!(kinds[8], &SectionKind::Knurl { diameter_mm: 15.0 });
    // The sum of decimal lengths is a decimal place: no 180.89999999999998.
    assert_eq!(
        s.iter().map(|s| s.to_mm).collect::<Vec<_>>(),
        [34.0, 36.5, 62.5, 93.5, 133.5, 145.5, 160.5, 170.5, 180.5, 180.6, 180.8]
    );
    assert_eq!(
        s.iter().map(|s| s.grip).collect::<Vec<_>>(),
        [true, false, false, true, false, false, false, false, false, true, true]
    );
    let interrupts: Vec<Interrupt> = s.iter().map(|s| s.interrupt).collect();
    assert_eq!(
        interrupts[..6],
        [Interrupt::Never, Interrupt::Free, Interrupt::Never, Interrupt::Avoid, Interrupt::Free, Interrupt::Never]
    );
    assert_eq!((s[0].label(0), s[1].label(1)), ("front journal".to_owned(), "section 2".to_owned()));
    assert_eq!(
        (s[5].tolerance.label.as_str(), s[5].tolerance.lower_mm, s[5].tolerance.upper_mm),
        ("+0.01/-0.02", -0.02, 0.01)
    );
    assert_eq!(s.iter().map(|s| s.finish_pass).filter(|f| *f).count(), 1);
}

#[test]
fn features_are_read_and_a_rear_centre_hole_becomes_back_end_work() {
    let job = job(&job_of(
        "  sections: [{length: 60, diameter: 12}]
  features:
    - {cross_hole: 4, at: 20, thrust: 350}
    - {keyseat: [4, 2.5], from: 30, to: 45}
    - {centre_hole: A2.5, end: front}
    - {centre_hole: A2, end: back}
  back_work: [{name: face, radial_force: 20, torque: 0.4, time_s: 3}]",
    ));
    let kinds: Vec<&FeatureKind> = job.shaft.features.iter().map(|f| &f.kind).collect();
    assert_eq!(kinds[0], &FeatureKind::CrossHole { diameter_mm: 4.0, at_mm: 20.0, thrust_n: Some(350.0) });
    assert_eq!(kinds[1], &FeatureKind::Keyseat { width_mm: 4.0, depth_mm: 2.5, from_mm: 30.0, to_mm: 45.0 });
    let centre = |designation: &str, pilot_mm, mouth_mm, end| FeatureKind::CentreHole {
        designation: designation.to_owned(),
        pilot_mm,
        mouth_mm,
        end,
    };
    assert_eq!(kinds[2], &centre("A2.5", 2.5, 5.3, End::Front));
    assert_eq!(kinds[3], &centre("A2", 2.0, 4.25, End::Back));
    let work = &job.shaft.back_work;
    assert_eq!(work.iter().map(|w| w.name.as_str()).collect::<Vec<_>>(), ["centre hole A2", "face"]);
    // By hand, C45 (2220, 0.14), d 2: f 0.04, kc = 2220 * 0.0172^-0.14 = 3919.7; thrust 0.55 * 3919.7 * 0.04 * 1 = 86.23 N,
    // a tenth of it radial; torque 3919.7 * 0.04 * 4 / 8 = 78.39 N mm.
    assert!((work[0].radial_force_n - 8.62).abs() < 0.01, "{work:?}");
    assert!((work[0].torque_nm - 0.0784).abs() < 0.0001, "{work:?}");
    assert_eq!((work[0].time_s, work[0].tolerance_mm, work[1].tolerance_mm), (4.0, 0.1, 0.1));
}

#[test]
fn a_material_of_ones_own_is_read() {
    let own = job_of("  sections: [{length: 60, diameter: 12}]").replace(
        "material: C45",
        "material: {name: test alloy, e_gpa: 70, density: 2700, kc11: 700, mc: 0.25, poisson: 0.33, vc: [200, 500]}",
    );
    let job = job(&own);
    let m = &job.shaft.material;
    assert_eq!((m.name.as_str(), m.e_gpa, m.density_kg_per_m3, m.poisson), ("test alloy", 70.0, 2700.0, 0.33));
    assert_eq!((m.kc11_n_per_mm2, m.mc, job.cutting.vc_m_per_min), (700.0, 0.25, 350.0));
}

#[test]
fn names_may_look_like_numbers() {
    let text =
        job_of("  name: 4711\n  revision: 2.10\n  sections: [{length: 60, diameter: 12}]").replace("C45", "1.4301");
    let job = job(&text);
    assert_eq!((job.shaft.name.as_str(), job.shaft.revision.as_deref()), ("4711", Some("2.10")));
    assert_eq!(job.shaft.material.name, "X5CrNi18-10");
}

#[test]
fn another_machine_file_takes_the_place_of_the_jobs() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("job.yaml");
    fs::write(&path, job_of("  sections: [{length: 60, diameter: 12}]").replace("small", "nowhere")).expect("written");
    let machine = Path::new("tests/cases/machines/small.yaml");
    let job = read_job_with(&path, Some(machine)).unwrap_or_else(|diags| panic!("{}", render(&diags)));
    assert_eq!(job.machine.name, "small sliding-head lathe");
    assert!(only(read_job(&path).expect_err("no such machine")).contains("no file"));
    assert!(
        only(read_job_with(&path, Some(Path::new("nowhere.yaml"))).expect_err("no such machine")).contains("no file")
    );
}

#[test]
fn a_machine_without_a_name_has_that_of_its_file() {
    let dir = tempfile::tempdir().expect("a directory");
    let small = fs::read_to_string("tests/cases/machines/small.yaml").expect("machine");
    let nameless: String =
        small.lines().filter(|line| !line.starts_with("name:")).map(|line| format!("{line}\n")).collect();
    fs::write(dir.path().join("long bed.yaml"), nameless).expect("written");
    let path = dir.path().join("job.yaml");
    fs::write(
        &path,
        job_of("  sections: [{length: 60, diameter: 12}]").replace("machines/small.yaml", "long bed.yaml"),
    )
    .expect("written");
    assert_eq!(read_job(&path).map(|job| job.machine.name), Ok("long bed".to_owned()));
}

/// A bar too thick for the bush is an answer of the planner, not a fault of the file.
#[test]
fn a_bar_thicker_than_the_bush_takes_is_read() {
    let text = job_of("  sections: [{length: 60, diameter: 12}]").replace("{diameter: 16}", "{diameter: 42}");
    assert_eq!(job(&text).stock.diameter_mm, 42.0);
}

/// The digests were worked out with another program, `sha256sum`, over the job text alone, and over the job text, the
/// machine text's length as eight bytes (low byte first) and the machine text.
#[test]
fn the_digest_is_that_of_the_texts() {
    let machine = "bush: {max_bar: 20, land: 20, gap: 1.5, stiffness: 80}\n\
        headstock: {nearest: 50, stroke: 200, hold: 30, stiffness: 90, max_rpm: 10000, regrip_s: 4}\n";
    let shaft = "shaft: {material: C45, sections: [{length: 60, diameter: 12}]}\nstock: {diameter: 16}\n";
    let inline = format!("{shaft}machine: {{{}}}\n", machine.trim_end().replace('\n', ", "));
    assert_eq!(job(&inline).input_digest, "sha256:ea64a7c917b4c7e85d86ba7d72ea32b75ec8a3c8c6592b5658b3ea8554af91d7");

    let dir = tempfile::tempdir().expect("a directory");
    fs::write(dir.path().join("m.yaml"), machine).expect("written");
    let path = dir.path().join("job.yaml");
    fs::write(&path, format!("{shaft}machine: m.yaml\n")).expect("written");
    assert_eq!(
        read_job(&path).map(|job| job.input_digest),
        Ok("sha256:457a05794a403f167f67cf153aefcdf09c259c54a4598babe911e61d5ab2301b".to_owned())
    );
}

/// Places of the template where a number stands behind a key: byte range of the number.
fn numbers_of_the_template() -> Vec<(usize, usize)> {
    let mut out = Vec::new();
    let mut start = 0;
    for line in TEMPLATE.split_inclusive('\n') {
        let code = line.split('#').next().unwrap_or_default();
        for (i, _) in code.match_indices(": ") {
            let value = &code[i + 2..];
            let length = value.find(|c: char| !"+-.0123456789".contains(c)).unwrap_or(value.len());
            let whole = value[length..].trim_start().is_empty() || value[length..].starts_with([',', '}']);
            if length > 0 && whole && value[..length].parse::<f64>().is_ok() {
                out.push((start + i + 2, start + i + 2 + length));
            }
        }
        start += line.len();
    }
    out
}

/// Every number of the template, replaced by what is no number of any use, is complained about where it stands.
#[test]
fn no_number_of_a_job_may_be_something_else() {
    let places = numbers_of_the_template();
    assert!(places.len() > 50, "{}", places.len());
    for (start, end) in places {
        for bad in [".nan", ".inf", "-1e9", "1e9", "[]", "{}", "\"1\"", "5 mm", "true", "!x 1", "&x 1"] {
            let text = format!("{}{bad}{}", &TEMPLATE[..start], &TEMPLATE[end..]);
            let line = TEMPLATE[..start].matches('\n').count() + 1;
            let diags = errors(&text);
            let here = diags.iter().any(|d| d.place.as_ref().is_some_and(|p| p.line == line));
            assert!(here, "`{bad}` in line {line}: {diags:?}");
        }
    }
}

/// What random edits are made of: the signs of YAML and of our files.
const SCRAPS: &[&str] = &[
    "{",
    "}",
    "[",
    "]",
    ":",
    ": ",
    ",",
    "- ",
    "? ",
    "#",
    "&a ",
    "*a",
    "!x ",
    "|",
    ">",
    "%",
    "@",
    "`",
    "\"",
    "'",
    "\n",
    "\n  ",
    "\t",
    "---\n",
    "...\n",
    "<<: ",
    "0",
    "-1",
    "1e308",
    "1e-308",
    ".nan",
    ".inf",
    "-.inf",
    "null",
    "~",
    "true",
    "0x1F",
    "1_0",
    "é",
    "\u{feff}",
    "\u{0}",
    "\u{85}",
    "\u{2028}",
    "😀",
    "length: ",
    "diameter: ",
    "M1x0.25",
    "across_flats: 3, sides: 2",
    "kind: groove",
    "grip: true",
];

/// The text with some bytes (at whole characters) replaced, taken away or repeated.
fn edited(edits: &[(usize, usize, usize, bool)]) -> String {
    let mut text = TEMPLATE.to_owned();
    for (at, length, scrap, repeat) in edits {
        let mut start = at % (text.len() + 1);
        while !text.is_char_boundary(start) {
            start -= 1;
        }
        let mut end = (start + length).min(text.len());
        while !text.is_char_boundary(end) {
            end += 1;
        }
        let put = if *repeat { text[start..end].repeat(2) } else { SCRAPS[scrap % SCRAPS.len()].to_owned() };
        text.replace_range(start..end, &put);
    }
    text
}

/// Reads a text; whatever comes back must be printable, and a job must be sound.
fn survives(text: &str) {
    match read_job_text("job.yaml", text, Path::new("tests/cases")) {
        Ok(job) => {
            assert!(!job.shaft.sections.is_empty() && job.shaft.length_mm().is_finite());
            let thickest = job.shaft.sections.iter().map(|s| s.largest_mm()).fold(0.0, f64::max);
            assert!(thickest <= job.stock.diameter_mm);
            assert!(job.shaft.sections.iter().all(|s| s.length_mm() > 0.0 && s.tolerance.width_mm() > 0.0));
        }
        Err(diags) => {
            assert!(!diags.is_empty() && !render(&diags).is_empty());
            for place in diags.iter().filter_map(|d| d.place.as_ref()) {
                assert!(place.source.text.get(place.start..place.end).is_some(), "{place:?}");
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_bytes_make_the_reader_panic(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
        let dir = tempfile::tempdir().expect("a directory");
        let path = dir.path().join("job.yaml");
        fs::write(&path, &bytes).expect("written");
        prop_assert!(read_job(&path).is_err());
        survives(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn no_signs_make_the_reader_panic(scraps in proptest::collection::vec(0..SCRAPS.len(), 0..60)) {
        survives(&scraps.iter().map(|i| SCRAPS[*i]).collect::<String>());
    }

    #[test]
    fn no_edit_of_a_job_makes_the_reader_panic(
        edits in proptest::collection::vec((any::<usize>(), 0..40_usize, any::<usize>(), any::<bool>()), 1..6),
    ) {
        survives(&edited(&edits));
    }
}
