//! The door: parse the call, run it, exit with its status.
fn main() {
    let path = std::env::args().nth(1).unwrap();
    let job = match spanhold::input::read_job(std::path::Path::new(&path)) { Ok(j) => j, Err(d) => { eprintln!("{}", spanhold::input::render(&d)); std::process::exit(2) } };
    let c = || 0;
    let t = std::time::Instant::now();
    use spanhold::planner::*;
    let counter = job.machine.counter_spindle.as_ref().unwrap();
    for k in &counter.collets {
        let rig = spanhold::process::Rig::new(&job, Some(k));
        let segments = rig.segments().unwrap();
        let tasks = rig.tasks();
        let m = stations::moments(&rig, 10.0);
        let grid = stations::Grid::new(&rig, &segments, &m, &[]);
        let l = outlook::Looker::new(&rig, &segments, &grid, &tasks);
        eprintln!("{} noses {} grid {}", k.name, l.noses.len(), grid.len());
        let runs = runs::Runs::new(&l);
        eprintln!("runs {:?} {}", t.elapsed(), c());
        let b = network::Builder::new(&runs, network::Weights{hand_over:0.0});
        eprintln!("builder {:?} {} least {}", t.elapsed(), c(), b.least_s());
        if b.least_s().is_finite() {
        let net = b.within(b.least_s()*1.001);
        eprintln!("net {:?} {} arcs {}", t.elapsed(), c(), net.arcs.len());
        let w = sequence::best_way(&net, 0.4).unwrap();
        eprintln!("way {:?} {} {}", t.elapsed(), c(), w.is_some());
        } else { frontier::find(&b, &runs);
        eprintln!("frontier {:?} {}", t.elapsed(), c()); }
    }
    let t = std::time::Instant::now();
    let plan = spanhold::planner::plan(&job).unwrap();
    eprintln!("{:?} {}", t.elapsed(), c());
    print!("{}", spanhold::report::plan_text(&plan));
}
