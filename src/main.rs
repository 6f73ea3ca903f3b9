//! The door: parse the call, run it, exit with its status.
fn main() {
    let path = std::env::args().nth(1).unwrap();
    let job = match spanhold::input::read_job(std::path::Path::new(&path)) { Ok(j) => j, Err(d) => { eprintln!("{}", spanhold::input::render(&d)); std::process::exit(2) } };
    let t = std::time::Instant::now();
    let plan = spanhold::planner::plan(&job).unwrap();
    eprintln!("{:?}", t.elapsed());
    print!("{}", spanhold::report::plan_text(&plan));
}
