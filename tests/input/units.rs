//! Files in inches, and values with units of their own.

use spanhold::input::{Beside, Family, Named, read_job_with, read_readings_text, read_texts};
use spanhold::job::Job;
use spanhold::lang::{self, Units};
use std::fs::{read_to_string, write};
use std::path::Path;

use crate::{errors, job, job_of};

/// A part of an invented laboratory shaker, as an inch drawing would have it.
const SHAKER: &str = "units: inch
shaft:
  name: shaker spindle
  material: C45
  sections:
    - {length: .75, diameter: .3120, tolerance: [-.0005, 0], ra: 32, name: journal}
    - {length: 1/2, thread: 5/16-24 UNF-2A}
    - {length: 2 1/4 in, diameter: 0.4375\", tolerance: ±.001, ra: 63 µin}
    - {length: 30 mm, diameter: 10 mm, tolerance: h9, ra: 1.6 um}
  features:
    - {cross_hole: 0.0938, at: 2, thrust: 20}
  straightness: .003
stock: {diameter: 0.5, bar_length: 144}
machine: machines/small.yaml
cutting: {vc: 300, feed: .004, nose_radius: 1/64, ap_max: 0.08 in}
wishes: {never_grip: [[0.5, 1]]}
";

fn near(found: f64, by_hand: f64) {
    assert!((found - by_hand).abs() <= 1e-12 * by_hand.abs(), "{found} {by_hand}");
}

/// By hand: inches times 25.4, sfm times 0.3048, lbf times 4.4482216152605, µin times 0.0254; 0.003 in per ft is 0.25 mm per m.
#[test]
fn an_inch_drawing_arrives_in_metric_units() {
    let job = lang::apart(|| {
        let job = job(SHAKER);
        assert_eq!(lang::units(), Units::Inch);
        job
    });
    assert_eq!((job.units, job.written, job.machine.written), (Units::Inch, Units::Inch, Units::Metric));
    let [journal, thread, body, rear] = &job.shaft.sections[..] else { panic!("four sections") };
    assert_eq!((journal.to_mm, journal.largest_mm()), (19.05, 7.9248));
    assert_eq!((journal.tolerance.lower_mm, journal.tolerance.upper_mm), (-0.0127, 0.0));
    assert_eq!(journal.tolerance.label, "0/-0.0005 in");
    assert_eq!((thread.to_mm, body.to_mm, rear.to_mm), (31.75, 88.9, 118.9));
    assert_eq!((body.largest_mm(), rear.largest_mm()), (11.1125, 10.0));
    assert_eq!((body.tolerance.lower_mm, body.tolerance.upper_mm), (-0.0254, 0.0254));
    assert_eq!(body.tolerance.label, "±0.001 in");
    assert_eq!([journal.ra_um, body.ra_um, rear.ra_um], [Some(0.8128), Some(1.6002), Some(1.6)]);
    assert_eq!((job.stock.diameter_mm, job.stock.bar_length_mm), (12.7, 3657.6));
    assert_eq!((job.cutting.vc_m_per_min, job.cutting.feed_mm), (91.44, Some(0.1016)));
    assert_eq!((job.cutting.nose_radius_mm, job.cutting.ap_max_mm), (0.396_875, 2.032));
    near(job.shaft.bow_mm_per_m, 0.25);
    let told = format!("{:?}", job.shaft.features);
    assert!(
        told.contains("diameter_mm: 2.38252") && told.contains("at_mm: 50.8") && told.contains("88.96443230521"),
        "{told}"
    );
    assert_eq!((job.wishes.never_grip[0].from_mm, job.wishes.never_grip[0].to_mm), (12.7, 25.4));
    let note = job.notes.iter().find(|note| note.contains("both systems")).expect("a note");
    assert!(note.contains("`job.yaml`") && note.contains("`length` in line 9, `diameter` in line 9"), "{note}");
}

#[test]
fn units_of_the_file_s_own_system_are_no_mixture() {
    let mixed = |job: &Job| job.notes.iter().filter(|note| note.contains("both systems")).count();
    let metric = job_of("  sections: [{length: 38 mm, diameter: 12, ra: 0.8 µm}]");
    assert_eq!(mixed(&job(&metric)), 0);
    let value = metric.replace("38 mm", "1.5 in");
    assert_eq!((mixed(&job(&value)), job(&value).shaft.length_mm()), (1, 38.1));
    let inch = format!(
        "units: inch\n{}",
        metric.replace("38 mm", "1.5 in").replace("12,", "1/2,").replace("0.8 µm", "32 uin")
    );
    let read = job(&inch.replace("diameter: 16", "diameter: 0.625"));
    assert_eq!((mixed(&read), read.shaft.sections[0].largest_mm()), (0, 12.7));
}

/// The file of the machine has its own units, whatever the job has; a machine in a job has the job's, or its own.
#[test]
fn each_file_has_its_own_units() {
    let machine = read_to_string("tests/cases/machines/small.yaml").expect("a machine");
    let named = |name: &str, text: String| Named { name: name.to_owned(), text };
    let read = |job: &str, machine: &str| {
        let (job, machine) = (named("job.yaml", job.to_owned()), named("m.yaml", machine.to_owned()));
        read_texts(&job, Some(&machine), None).unwrap_or_else(|told| panic!("{told:?}"))
    };
    let metric = job_of("  sections: [{length: 40, diameter: 12}]");
    let inches = machine.replace("max_bar: 20,", "max_bar: 20 mm, ").replace("gap: 1.5", "gap: 1/16");
    let (land, gap) = ("land: 20", "land: 0.75");
    let rest = "nearest: 50, stroke: 200, hold: 30";
    let inches = inches.replace(land, gap).replace(rest, "nearest: 2, stroke: 8, hold: 1.25");
    let inches = inches.replace(
        "nearest: 20\n  farthest: 300\n  bore: 22\n  bore_depth: 500",
        "nearest: .75\n  farthest: 12\n  bore: 7/8\n  bore_depth: 20",
    );
    let inches = inches.replace(
        "range: [11.6, 12.1], hold: 18, passes: 12.4, clamp_force: 6000",
        "range: [0.46, 0.48], hold: 3/4, passes: 0.49, clamp_force: 1350",
    );
    let found = read(&metric, &format!("units: inch\n{inches}"));
    assert_eq!((found.written, found.units, found.machine.written), (Units::Metric, Units::Metric, Units::Inch));
    let (bush, counter) =
        (found.machine.bush.as_ref().expect("a bush"), found.machine.counter_spindle.as_ref().expect("one"));
    assert_eq!((bush.max_bar_mm, bush.land_mm, bush.gap_mm, bush.stiffness_n_per_um), (20.0, 19.05, 1.5875, 80.0));
    assert_eq!((found.machine.headstock.stroke_mm, found.machine.headstock.max_rpm), (203.2, 10_000.0));
    let collet = &counter.collets[0];
    assert_eq!(
        (collet.smallest_mm, collet.largest_mm, collet.hold_mm, collet.passes_mm),
        (11.684, 12.192, 19.05, 12.446)
    );
    near(collet.clamp_force_n, 1350.0 * 4.448_221_615_260_5);
    let note = found.notes.iter().find(|note| note.contains("both systems")).expect("a note");
    assert!(note.contains("`m.yaml`") && note.contains("`max_bar` in line 4"), "{note}");
    let inside: String =
        machine.lines().filter(|line| !line.starts_with('#')).map(|line| format!("  {line}\n")).collect();
    let inch = "units: inch\nshaft: {material: C45, sections: [{length: 1.5, diameter: .47}]}\nstock: {diameter: .5}\nmachine:\n";
    let own = job(&format!("{inch}  units: mm\n{inside}"));
    assert_eq!((own.machine.bush.expect("a bush").land_mm, own.machine.written), (20.0, Units::Metric));
    assert!(errors(&format!("{inch}{inside}")).iter().any(|diag| diag.what == "20 in is too large"));
}

#[test]
fn the_shop_says_the_units_of_sheets_and_of_its_own_numbers() {
    let dir = tempfile::tempdir().expect("a folder");
    let machine = read_to_string("tests/cases/machines/small.yaml").expect("a machine");
    write(dir.path().join("m.yaml"), machine).expect("written");
    let shop = "units: inch\nmachines: [m.yaml]\nlimits: {whip: .004, sag: 0.05 mm}\n\
                bars: [{material: C45, diameter: 1/2, bar_length: 144, tolerance: [-0.002, 0]}]\n\
                collets: [{name: half, range: [.49, .5], hold: .7, passes: .51, clamp_force: 1300}]\n";
    write(dir.path().join("shop.yaml"), shop).expect("written");
    let path = dir.path().join("job.yaml");
    let text = "shaft: {material: C45, sections: [{length: 60, diameter: 12}]}\n";
    let read = |text: &str| {
        write(&path, text).expect("written");
        lang::apart(|| read_job_with(&path, Beside::default())).unwrap_or_else(|told| panic!("{told:?}"))
    };
    let job = read(text);
    assert_eq!((job.units, job.written), (Units::Inch, Units::Metric));
    assert_eq!((job.stock.diameter_mm, job.stock.bar_length_mm, job.shaft.length_mm()), (12.7, 3657.6, 60.0));
    assert_eq!((job.limits.whip_mm, job.limits.sag_mm), (0.1016, 0.05));
    assert_eq!(job.machine.counter_spindle.expect("one").collets[1].largest_mm, 12.7);
    assert!(
        job.notes.iter().any(|note| note.contains("`shop.yaml`") && note.contains("`sag` in line 3")),
        "{:?}",
        job.notes
    );
    assert_eq!(read(&format!("units: mm\n{text}")).units, Units::Metric);
}

#[test]
fn a_family_in_inches_varies_by_inches() {
    let text = format!(
        "{}vary: {{length: {{section: 1, from: .5, to: 1, step: 1/4}}}}\n",
        SHAKER.replace("never_grip: [[0.5, 1]]", "")
    );
    let family = Family::from_text("job.yaml", text, Path::new("tests/cases"), Beside::default());
    let family = family.unwrap_or_else(|told| panic!("{told:?}"));
    assert_eq!((family.count(), family.values_mm(2)), (3, vec![25.4]));
    let part = family.part(2).unwrap_or_else(|told| panic!("{told:?}"));
    assert_eq!(part.shaft.length_mm(), 125.25);
    // The hole lies behind the varied section, so it moves with it.
    assert!(format!("{:?}", part.shaft.features).contains("at_mm: 57.15"), "{:?}", part.shaft.features);
}

#[test]
fn readings_may_be_in_inches() {
    let text = "units: inch\nmachine: machines/small.yaml\nmaterial: C45\ndiameter: 5/8\n\
                set_ups: [{headstock: 4, front: 3, dial: [{load: 25, at: 2.5, deflection: 400}]}]\n";
    let found = read_readings_text("r.yaml", text, Path::new("tests/cases")).unwrap_or_else(|told| panic!("{told:?}"));
    let dial = &found.set_ups[0].dial[0];
    assert_eq!((found.diameter_mm, found.set_ups[0].front_mm, dial.at_mm), (15.875, 76.2, 63.5));
    near(dial.deflection_um, 10.16);
    near(dial.load_n, 25.0 * 4.448_221_615_260_5);
}
