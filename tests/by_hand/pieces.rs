//! How a section is cut into pieces and travels, and where the feed may stop.

use super::*;
use spanhold::process::segments::{Refused, segment_at};
use spanhold::process::stops::Stop;

/// Flexibility of an overhang `x` of 16.5 mm bar on two springs, `contact` apart.
fn tip(x: f64, contact: f64, spring: f64) -> f64 {
    let d = 16.5f64;
    let (ei, ga) = (200_000.0 * PI * d.powi(4) / 64.0, 200_000.0 / 2.6 * PI * d * d / 4.0 * 7.8 / 8.8);
    let (held, free) = ((contact + x) / contact, x / contact);
    held * held / spring + free * free / spring + x * x * (contact + x) / (3.0 * ei) + (x + x * x / contact) / ga
}

/// What a pull-back by `p` changes in the last travel of the first section, gap 2 mm, land 30 mm.
fn change(job: &Job, p: f64) -> f64 {
    let spring = 1000.0 * job.machine.bush.as_ref().expect("a bush").stiffness_n_per_um / 2.0;
    let force = forces(&rig(job), &[0.25], 0.1).net_radial_n;
    2.0 * force * (tip(p, 30.0 - (p - 2.0), spring) - tip(2.0, 30.0, spring))
}

fn of_section(job: &Job, section: usize) -> Vec<Segment> {
    rig(job).segments().expect("can be cut").into_iter().filter(|s| s.section == section).collect()
}

fn refused(changes: &[(&str, &str)]) -> Refused {
    let job = changed(changes);
    rig(&job).segments().expect_err("cannot be cut")
}

/// 50 mm in pieces of at most 22: three. The bush is stiff and the tolerance wide, so the land alone rules.
#[test]
fn pieces_by_the_land() {
    let job = job("single", "");
    let pieces = of_section(&job, 0);
    assert_eq!(pieces.len(), 3);
    for (i, piece) in pieces.iter().enumerate() {
        near(piece.from_mm, 50.0 / 3.0 * i as f64);
        near(piece.to_mm, 50.0 / 3.0 * (i + 1) as f64);
        near(piece.change_mm, change(&job, 50.0 / 3.0));
        assert!(piece.change_mm > 0.0 && piece.change_mm < 0.025);
    }
    assert_eq!(pieces[2].to_mm, 50.0);
    // 44 mm are two of 22, to rounding; a little more is three.
    for (length, count) in [("44", 2), ("44.001", 3), ("22", 1), ("22.001", 2), ("10", 1)] {
        let job = changed(&[("length: 50", &format!("length: {length}"))]);
        assert_eq!(of_section(&job, 0).len(), count, "{length}");
    }
    // Three times a third of 48.1 is not 48.1 to the last digit; the last border is the section's end all the same.
    assert_eq!(of_section(&changed(&[("length: 50", "length: 48.1")]), 0)[2].to_mm, 48.1);
    // A whole section in front of the tool does not change by more than its own length does.
    near(of_section(&changed(&[("length: 50", "length: 10")]), 0)[0].change_mm, change(&job, 10.0));
    // Not pulled back farther than the gap: nothing changes.
    near(of_section(&changed(&[("length: 50", "length: 1.5")]), 0)[0].change_mm, 0.0);
}

/// A bush of 20 N/µm: now a quarter of the tolerance rules. The step found obeys it; one piece fewer would not.
#[test]
fn pieces_by_the_deflection() {
    let job = changed(&[("gap: 2, stiffness: 10000", "gap: 2, stiffness: 20")]);
    let pieces = of_section(&job, 0);
    let (step, longer) = (50.0 / pieces.len() as f64, 50.0 / (pieces.len() - 1) as f64);
    near(pieces[0].change_mm, change(&job, step));
    assert!(pieces.len() > 3 && longer < 22.0, "{}", pieces.len());
    assert!(
        change(&job, step) <= 0.025 && change(&job, longer) > 0.025,
        "{} {}",
        change(&job, step),
        change(&job, longer)
    );
}

/// So little may change that a piece would be a hair longer than the gap, of which a section of 5 m has more than 2000.
#[test]
fn what_cannot_be_cut_so() {
    let never = refused(&[("tolerance: [-0.1, 0]}", "tolerance: [-0.1, 0], interrupt: never}")]);
    assert_eq!((never.rule, never.section, never.at_mm, never.segments), ("interrupt", 0, 0.0, 3));
    assert!(never.text.contains("needs 3 travels") && never.text.contains("3 segments"), "{}", never.text);
    // One piece alone has no line in it.
    let short =
        changed(&[("length: 50", "length: 22"), ("tolerance: [-0.1, 0]}", "tolerance: [-0.1, 0], interrupt: never}")]);
    assert_eq!(of_section(&short, 0).len(), 1);
    let fine = refused(&[
        ("length: 50", "length: 2990"),
        ("bar_length: 3000", "bar_length: 6000"),
        ("gap: 2, stiffness: 10000", "gap: 1, stiffness: 20"),
        ("tolerance: [-0.1, 0]}", "tolerance: [-0.0001, 0]}"),
    ]);
    assert_eq!((fine.rule, fine.section), ("pull_back", 0));
    assert!(fine.segments > 2000 && fine.text.contains("no pull-back is short enough"), "{fine:?}");
}

/// Depths by hand, `ap_max` 1.5 and the last pass 0.25.
#[test]
fn travels_of_other_depths() {
    let depths = |tools: &str, diameter: &str, more: &str| -> Vec<Vec<f64>> {
        let section = format!("diameter: {diameter}, tolerance: [-0.2, 0]{more}");
        let text = text(tools, "").replacen("diameter: 18, tolerance: [-0.2, 0]", &section, 1);
        of_section(&read(&text), 2)[0].travels.iter().map(|t| t.depths_mm.clone()).collect()
    };
    assert_eq!(depths("single", "17", ""), [[1.5]]);
    assert_eq!(depths("single", "18", ", finish_pass: true"), [[0.75], [0.25]]);
    assert_eq!(depths("single", "19.5", ", finish_pass: true"), [[0.25]]);
    assert_eq!(depths("opposed", "19.5", ""), [[0.25]]);
    assert_eq!(depths("opposed", "16.5", ""), [vec![1.5, 0.25]]);
    assert_eq!(depths("opposed", "19", ""), [[0.25, 0.25]]);
    // 1.75 + 0.25: two of 0.875. The bar is left as drawn where there is nothing to take off.
    assert_eq!(depths("single", "16", ""), [[0.875], [0.875], [0.25]]);
    assert_eq!(depths("single", "13", ""), [vec![3.25 / 3.0], vec![3.25 / 3.0], vec![3.25 / 3.0], vec![0.25]]);
    let drawn = changed(&[("diameter: 18, tolerance: [-0.2, 0]", "diameter: 20, tolerance: [-0.2, 0]")]);
    let segments = of_section(&drawn, 2);
    assert_eq!((segments.len(), segments[0].work, segments[0].travels.len()), (1, Work::AsDrawn, 0));
    // Tapers: the smaller end is what must be reached.
    assert_eq!(segments[0].finishing(), None);
}

/// √(8 · 0.4 · 4 Ra/1.5): 0.0413 mm for Ra 0.2, in the last travel alone; no less for a finer one, which no feed gives; for Ra 3.2 more
/// than the feed given.
#[test]
fn feeds_that_leave_a_roughness() {
    let feeds = |ra: &str| -> Vec<f64> {
        let job = changed(&[("tolerance: [-0.1, 0]}", &format!("tolerance: [-0.1, 0], interrupt: free, ra: {ra}}}"))]);
        of_section(&job, 0)[0].travels.iter().map(|t| t.feed_mm).collect()
    };
    let fine = feeds("0.2");
    assert_eq!(fine[..2], [0.1, 0.1]);
    near(fine[2], (8.0f64 * 0.4 * 0.0008 / 1.5).sqrt());
    near(feeds("0.1")[2], fine[2]);
    assert_eq!(feeds("3.2"), [0.1; 3]);
    // Where the job gives none, 0.15; and 0.4 of it where it is plunged.
    let none = changed(&[("feed: 0.1, ", "")]);
    let segments = rig(&none).segments().expect("can be cut");
    near(segments[0].travels[0].feed_mm, 0.15);
    let slow: Vec<f64> = segments
        .iter()
        .filter(|s| matches!(s.work, Work::Plunge | Work::PartOff))
        .map(|s| s.travels[0].feed_mm)
        .collect();
    assert_eq!(slow.len(), 2);
    slow.into_iter().for_each(|feed| near(feed, 0.06));
}

/// A thread is cut with a tool as long as 2 + 30 - 10 mm may be pulled back, else whirled from bar in one travel.
#[test]
fn long_threads_are_whirled() {
    for (length, work) in [("22", Work::Thread), ("22.01", Work::Whirl)] {
        let job = changed(&[("length: 12, thread", &format!("length: {length}, thread"))]);
        let thread = &of_section(&job, 3)[0];
        assert_eq!(thread.work, work);
        // In front of it the bar is thicker: the tool comes from behind, but for a whirling head.
        assert_eq!(thread.back, work == Work::Thread);
        let travel = &thread.travels[0];
        // A whirling head moves by the pitch in each turn of the bar; the other travel only turns the thread's outside.
        let feed_mm = if work == Work::Whirl { 1.25 } else { 0.1 };
        assert_eq!((travel.before_mm, travel.feed_mm), (20.0, feed_mm));
        assert_eq!(travel.depths_mm.is_empty(), work == Work::Whirl);
    }
    let no_bush = [("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 30, collet_gap: 5}\n")];
    let long = changed(&[no_bush[0], ("length: 12, thread", "length: 40, thread")]);
    assert_eq!(of_section(&long, 3)[0].work, Work::Thread);
    // A step down, whose shoulder faces the rear, before pieces: the first piece alone.
    let stepped = changed(&[("length: 60, diameter: 18", "length: 60, diameter: 11")]);
    let backs: Vec<bool> = of_section(&stepped, 2).iter().map(|s| s.back).collect();
    assert!(backs.len() > 1 && backs[0] && backs[1..].iter().all(|b| !b), "{backs:?}");
    let backs: Vec<bool> = rig(&job("single", "")).segments().expect("can be cut").iter().map(|s| s.back).collect();
    assert_eq!(backs, [false, false, false, false, false, true, false]);
    // No shoulder between equal diameters.
    let even = changed(&[("length: 60, diameter: 18", "length: 60, diameter: 12")]);
    assert!(of_section(&even, 2).iter().all(|s| !s.back));
    let keys = [Work::Turn, Work::Plunge, Work::Thread, Work::Whirl, Work::PartOff, Work::AsDrawn].map(Work::key);
    assert_eq!(keys, ["turn", "plunge", "thread", "whirl", "part_off", "as_drawn"]);
}

#[test]
fn a_border_belongs_to_the_segment_in_front_of_it() {
    let job = job("single", "");
    let segments = rig(&job).segments().expect("can be cut");
    for (turned, index) in [(0.0, 0), (50.0, 2), (50.001, 3), (57.0, 3), (57.1, 4), (129.0, 5), (132.0, 6), (200.0, 6)]
    {
        assert_eq!(segment_at(&segments, turned), index, "{turned}");
    }
    assert_eq!(segment_at(&[], 1.0), 0);
}

/// Section 0 is three pieces of 16.667 mm, section 2 one travel, the others whole.
#[test]
fn where_the_feed_may_stop() {
    let interrupt = |first: &str, third: &str| {
        changed(&[
            ("tolerance: [-0.1, 0]}", &format!("tolerance: [-0.1, 0], interrupt: {first}}}")),
            ("tolerance: [-0.2, 0]}", &format!("tolerance: [-0.2, 0], interrupt: {third}}}")),
        ])
    };
    let job = interrupt("avoid", "free");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let stop = |turned| rig.stop_at(&segments, turned);
    for (turned, means) in [
        (0.0, Stop::Shoulder),
        (10.0, Stop::Forbidden),
        (50.0 / 3.0, Stop::Border),
        (50.0 / 3.0 + 5e-7, Stop::Border),
        (50.0 / 3.0 - 5e-7, Stop::Border),
        (50.0 / 3.0 + 2e-6, Stop::Forbidden),
        (100.0 / 3.0, Stop::Border),
        (50.0, Stop::Shoulder),
        (53.0, Stop::Forbidden),
        (57.0, Stop::Shoulder),
        (57.0 + 5e-7, Stop::Shoulder),
        (57.0 + 2e-6, Stop::Free),
        (90.0, Stop::Free),
        (117.0, Stop::Shoulder),
        (120.0, Stop::Forbidden),
        (129.0, Stop::Shoulder),
        (129.0 + 5e-7, Stop::Shoulder),
        (129.0 + 2e-6, Stop::Forbidden),
        (131.0, Stop::Forbidden),
    ] {
        assert_eq!(stop(turned), means, "{turned}");
        assert_eq!(means.allowed(), means != Stop::Forbidden);
    }
    // Two lines within the section that would rather not have any; 5 s each.
    near(job.limits.avoid_penalty_s, 5.0);
    near(rig.border_penalty_s(&segments), 10.0);
    let other = interrupt("free", "avoid");
    let rig = super::rig(&other);
    near(rig.border_penalty_s(&segments), 0.0);
    assert_eq!(rig.stop_at(&segments, 90.0), Stop::Avoid);
    near(rig.stop_penalty_s(Stop::Avoid), 5.0);
    assert!([Stop::Shoulder, Stop::Border, Stop::Free].iter().all(|s| rig.stop_penalty_s(*s) == 0.0));
    let never = interrupt("free", "never");
    assert_eq!(super::rig(&never).stop_at(&segments, 90.0), Stop::Forbidden);
    // A bar left as drawn may be stopped on as any surface.
    let drawn =
        changed(&[("diameter: 18, tolerance: [-0.2, 0]}", "diameter: 20, tolerance: [-0.2, 0], interrupt: free}")]);
    let rig = super::rig(&drawn);
    assert_eq!(rig.stop_at(&rig.segments().expect("can be cut"), 90.0), Stop::Free);
}

/// Whirling needs a unit: where the machine lists its tool places, one of them must be it.
#[test]
fn threads_by_other_ways() {
    let with = |tools: &str, by: &str| {
        changed(&[
            ("length: 12, thread: M8", &format!("length: 30, thread: M8{by}")),
            ("  bar_end: 50", &format!("{tools}  bar_end: 50")),
        ])
    };
    let work = |job: &Job| rig(job).segments().map(|all| all.iter().map(|s| s.work).collect::<Vec<_>>());
    let places = "  tools: {turning: 9}\n";
    let unit = "  tools: {turning: 9, whirling: 1}\n";
    for (tools, by) in [("", ""), (unit, ""), (places, ", thread_by: whirling"), ("", ", thread_by: whirling")] {
        assert!(work(&with(tools, by)).expect("whirled").contains(&Work::Whirl), "{tools} {by}");
    }
    for (tools, by, says) in [
        (places, "", "no whirling unit"),
        (places, ", thread_by: single_point", "no whirling unit"),
        (unit, ", thread_by: single_point", "Remove `thread_by"),
    ] {
        let refused = work(&with(tools, by)).expect_err("too long");
        // 2 + 30 - 10 mm.
        assert_eq!((refused.rule, refused.section, refused.at_mm), ("thread_length", 3, 117.0));
        assert!(refused.text.contains(says) && refused.text.contains("at most 22.00 mm"), "{}", refused.text);
    }
    // A head that the machine has no place for.
    let no_place = with(places, ", thread_by: whirling");
    let rig = super::rig(&no_place);
    assert!(!rig.tool_fit(&rig.segments().expect("whirled")).expect("places").fits());
    // Rolled: turned to d - 0.649519 P in pieces, then 20 turns at 40 m/min on 8 mm and 2 s.
    let rolled = with(places, ", thread_by: rolling");
    let rig = super::rig(&rolled);
    let mut blank = of_section(&rolled, 3);
    assert_eq!(blank.pop().map(|s| s.work), Some(Work::PartOff));
    assert!(blank.len() > 1 && blank.iter().all(|s| s.work == Work::Turn));
    let last = blank[0].travels.last().expect("a travel");
    near(last.before_mm - 2.0 * last.depths_mm.iter().sum::<f64>(), 8.0 - 0.649_519 * 1.25);
    let task = rig.tasks().into_iter().find(|t| t.kind == "thread_rolling").expect("rolled");
    near(task.time_s, 60.0 * 20.0 / (40_000.0 / (PI * 8.0)) + 2.0);
    near(task.at_mm, 147.0);
}

/// Two starts: twice the passes, the lead in each turn, and no faster than 20 m/min of rapid allow.
#[test]
fn a_thread_with_two_starts() {
    let one = changed(&[("thread: M8", "thread: Tr10x2")]);
    let two = changed(&[("thread: M8", "thread: Tr10x4(P2)")]);
    let of = |job: &Job| {
        let rig = super::rig(job);
        let segment = of_section(job, 3).remove(0);
        let thread = rig.thread_of(&segment).expect("a thread").clone();
        let found = rig.threading(&segment, &thread, false, 1e9);
        (found, rig.infeeds_mm(&segment), rig.piece_time(&segment, 1.0, false, 1000.0).cutting_s, segment)
    };
    let ((passes, rpm), infeeds, cutting_s, segment) = of(&one);
    // 7.5 of the table, rounded; h3 = 1 + 0.25 mm.
    assert_eq!((passes, infeeds.len()), (8.0, 8));
    near(infeeds.iter().sum(), 1.25);
    near(rpm, 90_000.0 / (PI * 10.0));
    let turning: f64 = segment.travels.iter().map(|t| 60.0 * 12.0 / (t.feed_mm * 1000.0)).sum();
    near(cutting_s, turning + 8.0 * (60.0 * 12.0 / (2.0 * 1000.0) + 1.0));
    let (found, infeeds, cutting_s, _) = of(&two);
    assert_eq!((found.0, infeeds.len()), (16.0, 8));
    near(cutting_s, turning + 16.0 * (60.0 * 12.0 / (4.0 * 1000.0) + 1.0));
    let steep = changed(&[("thread: M8", "thread: Tr10x24(P2)")]);
    near(of(&steep).0.1, 20_000.0 / 24.0);
    // Whirled: a travel for each start, at the lead.
    let whirled = changed(&[("length: 12, thread: M8", "length: 30, thread: Tr10x4(P2)")]);
    let feeds: Vec<f64> = of_section(&whirled, 3)[0].travels.iter().map(|t| t.feed_mm).collect();
    assert_eq!(feeds, [4.0, 4.0]);
}

fn passes_of_m6() -> usize {
    let job = changed(&[("thread: M8", "thread: M6")]);
    rig(&job).infeeds_mm(&of_section(&job, 3)[0]).len()
}

/// What is left of the times: no faster than the cap, plunges by their width, a thread whirled.
#[test]
fn times_of_other_pieces() {
    let job = changed(&[("length: 12, thread", "length: 30, thread")]);
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let whirled = segments.iter().find(|s| s.work == Work::Whirl).expect("a whirled thread");
    // 30 mm of 1.25 mm at 6 rev/min, and with no cap at that of the whirling head: 9.727 rev/min.
    near(rig.piece_time(whirled, 1.0, true, 6.0).cutting_s, 60.0 * 30.0 / (1.25 * 6.0));
    near(
        rig.piece_time(whirled, 1.0, true, 60.0).cutting_s,
        1440.0 / (0.48 * 120_000.0 / (PI * 20.0) / 1.5 / (PI * 20.0)),
    );
    assert!(rig.infeeds_mm(whirled).is_empty());
    // The tables have five passes for a pitch of 1 mm.
    assert_eq!(passes_of_m6(), 5);
    for (length, plunges) in [("2", 1.0), ("3", 1.0), ("3.1", 2.0), ("6", 2.0)] {
        let job = changed(&[("length: 7", &format!("length: {length}"))]);
        let rig = super::rig(&job);
        let groove = of_section(&job, 1);
        near(rig.piece_time(&groove[0], 1.0, true, 600.0).total_s(), plunges * (10.0 + 2.0));
    }
    // Threading at three quarters of 120 m/min on 8 mm, 3581 rev/min, in seven passes, and no faster than the cap.
    let job = self::job("single", "");
    let (rig, thread) = (super::rig(&job), &of_section(&job, 3)[0]);
    let spanhold::job::SectionKind::Thread(m8) = &job.shaft.sections[3].kind else { panic!("a thread") };
    let (passes, rpm) = rig.threading(thread, m8, false, 1e9);
    near(passes, 7.0);
    near(rpm, 90_000.0 / (PI * 8.0));
    near(rig.threading(thread, m8, false, 1000.0).1, 1000.0);
    // With the counter-spindle's 3000 rev/min, three quarters of that.
    near(rig.threading(thread, m8, true, 1e9).1, 2250.0);
    // Infeeds: to a √((n-1)/6), the first to a √(0.3/6), a = 0.613435 · 1.25; they are what each pass adds.
    let (infeeds, a) = (rig.infeeds_mm(thread), 0.613_435 * 1.25);
    near(infeeds[0], a * (0.3f64 / 6.0).sqrt());
    near(infeeds.iter().sum(), a);
    let drawn = Segment { work: Work::AsDrawn, ..thread.clone() };
    near(rig.piece_time(&drawn, 5.0, true, 600.0).total_s(), 0.0);
}
