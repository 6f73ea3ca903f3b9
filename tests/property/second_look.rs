//! Printed plans against a second, slow look: nothing of `process`, `planner` or `proof` is used, only the plan, the job and a dense
//! beam of its own (two-node Timoshenko elements, masses lumped at the nodes) with the supports of docs/model.md, "Supports".

use crate::jobs;
use crate::plans::answer;
use nalgebra::{Cholesky, DMatrix, DVector, Dyn};
use spanhold::job::plan::{Plan, Stage, Verdict};
use spanhold::job::{Interrupt, Job, SectionKind};

/// Lumped masses and a coarser mesh: answers agree to this share.
const SAME: f64 = 5e-3;
const G_MM_PER_S2: f64 = 9_810.0;
/// States are this far apart, no multiple of anything the planner or the proof use.
const STEP_MM: f64 = 2.37;

/// The bar at one moment.
struct Bar {
    x: Vec<f64>,
    k: DMatrix<f64>,
    /// Mass at each node, t.
    mass: Vec<f64>,
}

impl Bar {
    /// `springs`: place and N/mm. `diameter` of the piece that begins at a place.
    fn new(job: &Job, mut x: Vec<f64>, springs: &[(f64, f64)], diameter: impl Fn(f64) -> f64) -> Bar {
        x.extend(springs.iter().map(|s| s.0));
        x.sort_by(f64::total_cmp);
        x.dedup_by(|b, a| *b - *a < 1e-4);
        let m = &job.shaft.material;
        let (e, rho) = (m.e_gpa * 1e3, m.density_kg_per_m3 * 1e-12);
        let g = e / (2.0 * (1.0 + m.poisson));
        let kappa = 6.0 * (1.0 + m.poisson) / (7.0 + 6.0 * m.poisson);
        let mut k = DMatrix::zeros(2 * x.len(), 2 * x.len());
        let mut mass = vec![0.0; x.len()];
        for i in 0..x.len() - 1 {
            let (l, d) = (x[i + 1] - x[i], diameter(0.5 * (x[i] + x[i + 1])));
            let (area, inertia) = (std::f64::consts::PI * d * d / 4.0, std::f64::consts::PI * d.powi(4) / 64.0);
            let phi = 12.0 * e * inertia / (kappa * g * area * l * l);
            let c = e * inertia / (l.powi(3) * (1.0 + phi));
            let rows = [
                [12.0, 6.0 * l, -12.0, 6.0 * l],
                [6.0 * l, (4.0 + phi) * l * l, -6.0 * l, (2.0 - phi) * l * l],
                [-12.0, -6.0 * l, 12.0, -6.0 * l],
                [6.0 * l, (2.0 - phi) * l * l, -6.0 * l, (4.0 + phi) * l * l],
            ];
            for (a, row) in rows.iter().enumerate() {
                for (b, value) in row.iter().enumerate() {
                    k[(2 * i + a, 2 * i + b)] += c * value;
                }
            }
            for node in [i, i + 1] {
                mass[node] += 0.5 * rho * area * l;
            }
        }
        let mut bar = Bar { x, k, mass };
        for (at, n_per_mm) in springs {
            let node = 2 * bar.node(*at);
            bar.k[(node, node)] += n_per_mm;
        }
        bar
    }

    fn node(&self, at: f64) -> usize {
        let near = |i: &usize| (self.x[*i] - at).abs();
        (0..self.x.len()).min_by(|a, b| near(a).total_cmp(&near(b))).expect("nodes")
    }

    fn factor(&self) -> Cholesky<f64, Dyn> {
        self.k.clone().cholesky().expect("held")
    }

    fn sag(&self, factor: &Cholesky<f64, Dyn>) -> DVector<f64> {
        let weight = (0..2 * self.x.len()).map(|i| if i % 2 == 0 { self.mass[i / 2] * G_MM_PER_S2 } else { 0.0 });
        factor.solve(&DVector::from_iterator(2 * self.x.len(), weight))
    }

    fn flexibility(&self, factor: &Cholesky<f64, Dyn>, node: usize) -> f64 {
        let mut load = DVector::zeros(2 * self.x.len());
        load[2 * node] = 1.0;
        factor.solve(&load)[2 * node]
    }

    /// Whether the lowest frequency lies above one, rev/min.
    fn swings_above(&self, rpm: f64) -> bool {
        let omega = rpm * std::f64::consts::TAU / 60.0;
        let mut dynamic = self.k.clone();
        for (i, mass) in self.mass.iter().enumerate() {
            dynamic[(2 * i, 2 * i)] -= omega * omega * mass;
        }
        dynamic.cholesky().is_some()
    }
}

fn diameter(job: &Job, turned: f64, s: f64) -> f64 {
    if s >= turned {
        return job.stock.diameter_mm;
    }
    job.shaft.sections.iter().find(|section| s < section.to_mm).map_or(job.stock.diameter_mm, |section| match &section
        .kind
    {
        SectionKind::Thread(thread) => thread.major_mm - 1.226_87 * thread.pitch_mm,
        _ => section.bending_mm(s),
    })
}

fn bar(job: &Job, plan: &Plan, t: f64, nose: Option<f64>, closed: bool, last_regrip: f64) -> Bar {
    let machine = &job.machine;
    let bush = machine.bush.as_ref().expect("these jobs have a bush");
    let head = &machine.headstock;
    let face = t + bush.gap_mm;
    let back = face + head.nearest_mm + head.stroke_mm - (t - last_regrip);
    let mut springs = Vec::new();
    let mut pair = |a: f64, b: f64, n_per_um: f64| springs.extend([(a, 500.0 * n_per_um), (b, 500.0 * n_per_um)]);
    pair(face, face + bush.land_mm, bush.stiffness_n_per_um);
    pair(back, back + head.hold_mm, head.stiffness_n_per_um);
    if let (Some(nose), Some(counter)) = (nose, &machine.counter_spindle) {
        let hold = plan.collet.as_deref().and_then(|name| machine.collet(name)).expect("its collet").hold_mm;
        if closed {
            pair(nose - hold, nose, counter.stiffness_n_per_um);
        }
        if let Some(sleeve) = &counter.sleeve {
            let places = (1..).map(|j| nose - hold - f64::from(j) * sleeve.pitch_mm).take_while(|at| *at >= 0.0);
            springs.extend(places.map(|at| (at, 1e3 * sleeve.stiffness_n_per_um)));
        }
    }
    let end = back + head.hold_mm;
    let mut x: Vec<f64> = (0..=(end / 4.0) as usize).map(|i| 4.0 * i as f64).collect();
    x.extend([t, face, end]);
    x.extend(nose);
    x.extend(job.shaft.sections.iter().map(|s| s.to_mm).filter(|to| *to < t));
    Bar::new(job, x, &springs, |s| diameter(job, t, s))
}

/// One state of a stage; what is wrong with it.
fn state(job: &Job, plan: &Plan, stage: &Stage, t: f64, last_regrip: f64) -> Result<(), String> {
    let machine = &job.machine;
    let bush = machine.bush.as_ref().expect("a bush");
    let holds = |what: &str, value: f64, limit: f64| {
        if value <= limit * (1.0 + SAME) { Ok(()) } else { Err(format!("{what} {value} over {limit} at {t}")) }
    };
    holds("headstock's way", t - last_regrip, machine.headstock.stroke_mm)?;
    let nose = stage.grip.as_ref().map(|g| g.nose_mm);
    if let (Some(nose), Some(counter)) = (nose, &machine.counter_spindle) {
        let away = t + bush.gap_mm - nose;
        holds("counter-spindle's way", away, counter.farthest_mm)?;
        holds("counter-spindle's nearness", counter.nearest_mm, away)?;
        holds("bore's depth", nose, counter.bore_depth_mm)?;
    }
    let bar = bar(job, plan, t, nose, true, last_regrip);
    let factor = bar.factor();
    holds("stiffness, its limit", job.limits.stiffness_min_n_per_um, 1e-3 / bar.flexibility(&factor, bar.node(t)))?;
    let sag = bar.sag(&factor);
    if let Some(nose) = nose {
        let span = (0..bar.x.len()).filter(|i| bar.x[*i] >= nose && bar.x[*i] <= t + bush.gap_mm);
        holds("sag", span.map(|i| sag[2 * i].abs()).fold(0.0, f64::max), job.limits.sag_mm)?;
    } else if let Some(most) = job.limits.free_ratio {
        let parts = job.shaft.sections.iter().take_while(|s| s.from_mm < t);
        let sum: f64 =
            parts.map(|s| (s.to_mm.min(t) - s.from_mm) * diameter(job, t, 0.5 * (s.from_mm + s.to_mm.min(t)))).sum();
        let mean = if t > 0.0 { sum / t.min(job.shaft.length_mm()) } else { job.stock.diameter_mm };
        holds("free ratio", (t + bush.gap_mm) / mean, most)?;
    }
    let pieces = plan.segments.iter().filter(|s| s.stage == stage.number && s.from_mm <= t && t <= s.to_mm);
    let Some(rpm) = pieces.filter(|s| s.work != "as_drawn").map(|s| s.rpm).reduce(f64::max) else { return Ok(()) };
    if !bar.swings_above(rpm / job.limits.whirl_ratio * (1.0 - SAME)) {
        return Err(format!("whirls at {t}, {rpm} rev/min"));
    }
    let unsupported = t + bush.gap_mm - nose.unwrap_or(0.0);
    let bow = job.shaft.bow_mm_per_m * (unsupported / 1e3).powi(2) * if nose.is_some() { 1.0 } else { 4.0 };
    holds("bow at rest", bow, job.limits.whip_mm)?;
    // The least critical speed that whip allows: e/(1 - (n/n_crit)²) = limit.
    let least = rpm / (1.0 - bow / job.limits.whip_mm).max(0.0).sqrt();
    if bow < job.limits.whip_mm * (1.0 - SAME) && !bar.swings_above(least * (1.0 - SAME)) {
        return Err(format!("whips at {t}, {rpm} rev/min"));
    }
    Ok(())
}

/// Grips, stops and every state.
fn look(job: &Job, plan: &Plan) -> Result<usize, String> {
    let mut states = 0;
    let collet = plan.collet.as_deref().and_then(|name| job.machine.collet(name));
    let within = |s: f64| job.shaft.sections.iter().find(|x| x.from_mm + 1e-6 < s && s < x.to_mm - 1e-6);
    for stop in plan.hand_overs_mm.iter().chain(&plan.headstock_regrips_mm) {
        if let Some(section) = within(*stop).filter(|s| s.interrupt == Interrupt::Never) {
            return Err(format!("a stop at {stop} on {section:?}"));
        }
    }
    let mut last_regrip = 0.0;
    for (index, stage) in plan.stages.iter().enumerate() {
        if let (Some(grip), Some(collet)) = (&stage.grip, collet) {
            let back = grip.nose_mm - collet.hold_mm;
            let section =
                job.shaft.sections.iter().find(|s| s.from_mm <= back + 1e-6 && grip.nose_mm <= s.to_mm + 1e-6);
            let section = section.ok_or_else(|| format!("a grip over a shoulder at {}", grip.nose_mm))?;
            let SectionKind::Cylinder { diameter_mm } = section.kind else {
                return Err("a grip on no cylinder".into());
            };
            let fits = (collet.smallest_mm - 1e-9..=collet.largest_mm + 1e-9).contains(&diameter_mm) && section.grip;
            let front = job.shaft.sections.iter().filter(|s| s.from_mm < grip.nose_mm);
            if !fits || front.map(|s| s.largest_mm()).fold(0.0, f64::max) > collet.passes_mm + 1e-9 {
                return Err(format!("the collet does not hold or pass at {}", grip.nose_mm));
            }
            if grip.nose_mm > stage.from_mm + 1e-6 {
                return Err(format!("a grip at {} where nothing is turned yet", grip.nose_mm));
            }
        }
        let steps = ((stage.to_mm - stage.from_mm) / STEP_MM).ceil().max(1.0) as usize;
        for i in 0..=steps {
            let t = stage.from_mm + (stage.to_mm - stage.from_mm) * i as f64 / steps as f64;
            // At a re-grip the state before it is the longer one; at the start of a stage nothing is cut before it.
            let until = if i == 0 { t + 1e-6 } else { t - 1e-6 };
            let regrip = stage.regrips_mm.iter().copied().filter(|m| *m < until).fold(last_regrip, f64::max);
            state(job, plan, stage, t, regrip)?;
            states += 1;
        }
        last_regrip = stage.regrips_mm.iter().copied().filter(|m| *m <= stage.to_mm + 1e-6).fold(last_regrip, f64::max);
        if stage.grip.is_none() && index + 1 < plan.stages.len() {
            let free = bar(job, plan, stage.to_mm, None, false, last_regrip);
            let bow = 4.0 * job.shaft.bow_mm_per_m * (stage.unsupported_max_mm / 1e3).powi(2);
            let off = free.sag(&free.factor())[2 * free.node(0.0)].abs() + bow;
            if off > job.limits.pick_up_mm * (1.0 + SAME) {
                return Err(format!("picked up at {}, it is off by {off}", stage.to_mm));
            }
        }
        if let (Some(grip), true) = (&stage.grip, index + 1 < plan.stages.len()) {
            let open = bar(job, plan, stage.to_mm, Some(grip.nose_mm), false, last_regrip);
            let sag = open.sag(&open.factor())[2 * open.node(grip.nose_mm)].abs();
            if sag > job.limits.release_mm * (1.0 + SAME) {
                return Err(format!("let go at {}, it drops by {sag}", stage.to_mm));
            }
        }
    }
    Ok(states)
}

/// Where the second look must object: it is not blind.
fn spoilt(plan: &Plan) -> Vec<Plan> {
    let mut all = Vec::new();
    for share in [1.6, 3.0] {
        let mut fast = plan.clone();
        fast.segments.iter_mut().for_each(|s| s.rpm *= share);
        all.push(fast);
    }
    let mut far = plan.clone();
    if let Some(grip) = far.stages.iter_mut().filter_map(|s| s.grip.as_mut()).next() {
        grip.nose_mm -= 4.0;
        all.push(far);
    }
    all
}

#[test]
fn a_second_slow_look_finds_nothing_in_printed_plans() {
    let (mut plans, mut states, mut refused) = (0, 0, 0);
    for seed in (10_000..10_400).filter(|seed| seed % 3 != 0) {
        let text = jobs::small_job(seed);
        // Features and tapers have rules of their own that are not looked at here.
        if text.contains("features") || text.contains("taper") {
            continue;
        }
        let Some((job, plan)) = answer(&text) else { continue };
        if plan.verdict == Verdict::Infeasible {
            continue;
        }
        states += look(&job, &plan).unwrap_or_else(|wrong| panic!("seed {seed}: {wrong}\n{text}"));
        refused += spoilt(&plan).iter().filter(|bad| look(&job, bad).is_err()).count();
        plans += 1;
        if plans == 10 {
            break;
        }
    }
    assert!(plans == 10 && states > 250 && refused > 10, "{plans} {states} {refused}");
}
