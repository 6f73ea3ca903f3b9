//! What untrusted bytes are fed to, a function an entrance: the fuzz targets call these, and so does the replay of what
//! they once found. Each may refuse with words; none may panic, hang or print a plan that is not proven. Each tells
//! whether the bytes came through: to a plan, a fit, a draft, an answer.

use spanhold::drawings::Options;
#[cfg(feature = "page")]
use spanhold::input::{Named, read_texts};
use spanhold::input::{read_job_text, read_readings_text};
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};

/// A folder without machine files: a path in the bytes finds nothing.
const NOWHERE: &str = "/nonexistent";

/// Work for one input: a larger job is read, but not planned, so that a second is many inputs.
const MOST_STATIONS: f64 = 24.0;

/// Where what would help is looked for, which takes many plans.
#[cfg(feature = "page")]
const FEW_STATIONS: f64 = 12.0;

/// A shaft for a machine, planned in no time on most.
const SHAFT: &str = "shaft: {material: C45, sections: [{length: 12, diameter: 12}, {length: 20, diameter: 14}]}\n\
    stock: {diameter: 16, bar_length: 3000}\ncutting: {vc: 120, feed: 0.1}\nplanning: {station_pitch: 100}\nmachine:\n";

/// The stations that planning takes at least, as far as the input tells.
fn stations(job: &Job) -> f64 {
    job.shaft.length_mm() / job.planning.station_pitch_mm + (job.shaft.sections.len() + job.shaft.features.len()) as f64
}

/// What was read; what was refused came with words that can be printed.
fn read<T>(read: Result<T, Vec<spanhold::diag::Diag>>) -> Option<T> {
    match read {
        Ok(read) => Some(read),
        Err(messages) => {
            assert!(!messages.is_empty(), "refused without a word");
            assert!(!spanhold::input::render(&messages).is_empty());
            None
        }
    }
}

fn planned(job: &Job) {
    let plan = match spanhold::answer::advised(job, spanhold::planner::Advice::None) {
        Ok(plan) => plan,
        Err(defect) => panic!("{defect}"),
    };
    let text = serde_json::to_string(&plan).unwrap();
    let again: Plan = serde_json::from_str(&text).unwrap();
    assert_eq!(serde_json::to_string(&again).unwrap(), text, "a plan reads back as it was written");
    if plan.verdict == Verdict::Feasible {
        assert!(spanhold::proof::prove(&again, job).holds());
    }
    printed(&plan);
}

/// Everything that is made of a plan: it may be refused, as a plan with numbers nobody can draw is.
fn printed(plan: &Plan) {
    let _ = spanhold::report::plan_text(plan);
    let _ = spanhold::report::check_summary(plan);
    let _ = spanhold::report::plan_summary(plan, &[]);
    let _ = spanhold::report::plan_svg(plan);
    let _ = spanhold::report::gantt_svg(plan);
    let _ = spanhold::report::sheet_html(plan);
    let _ = spanhold::report::plan_xlsx(plan);
    let _ = spanhold::report::stages_csv(plan);
    let _ = spanhold::report::positions_csv(plan);
    let _ = spanhold::report::plan_dxf(plan);
}

/// A job file with its machine in it.
pub fn job(bytes: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(bytes) else { return false };
    let job = read(read_job_text("wild.yaml", text, NOWHERE.as_ref()));
    job.filter(|job| stations(job) <= MOST_STATIONS).inspect(planned).is_some()
}

/// A machine, put into a plain job.
pub fn machine(bytes: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(bytes) else { return false };
    let indented: String = text.lines().map(|line| format!("  {line}\n")).collect();
    let job = read(read_job_text("wild.yaml", &format!("{SHAFT}{indented}"), NOWHERE.as_ref()));
    job.filter(|job| stations(job) <= MOST_STATIONS).inspect(planned).is_some()
}

/// A readings file with its machine in it, fitted.
pub fn readings(bytes: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(bytes) else { return false };
    let Some(readings) = read(read_readings_text("wild.yaml", text, NOWHERE.as_ref())) else { return false };
    match spanhold::fit::fit(&readings) {
        Ok(fitted) => {
            let _ = spanhold::report::fitted_text(&fitted);
            let fragment = spanhold::report::fitted_yaml(&fitted);
            assert!(!fragment.contains("NaN") && !fragment.contains("inf"), "{fragment}");
            true
        }
        Err(told) => {
            assert!(!told.what.is_empty());
            false
        }
    }
}

/// A stored plan, rechecked against a job it may have nothing to do with.
pub fn plan(bytes: &[u8]) -> bool {
    let Ok(plan) = serde_json::from_slice::<Plan>(bytes) else { return false };
    let job =
        read_job_text("template.yaml", spanhold::input::TEMPLATE, NOWHERE.as_ref()).expect("the template is a job");
    let verified = spanhold::proof::prove(&plan, &job);
    let _ = spanhold::proof::described(&plan, &job, &verified);
    printed(&plan);
    true
}

fn drafted(name: &str, bytes: &[u8]) -> bool {
    let options = Options {
        units: None,
        scale: None,
        gap_mm: 0.05,
        flip: bytes.len() % 2 == 1,
        sheet: None,
        stock_mm: None,
        machine: None,
        material: None,
    };
    let draft = read(spanhold::drawings::draft(name.as_ref(), bytes, NOWHERE.as_ref(), &options));
    draft.inspect(|d| assert!(read_job_text("draft.yaml", &d.text, NOWHERE.as_ref()).is_ok())).is_some()
}

/// A drawing.
pub fn drawing(bytes: &[u8]) -> bool {
    drafted("wild.dxf", bytes)
}

/// A table: a workbook where it begins as one, else CSV.
pub fn table(bytes: &[u8]) -> bool {
    drafted(if bytes.starts_with(b"PK") { "wild.xlsx" } else { "wild.csv" }, bytes)
}

/// A path in the first line and a body behind it, as the page's interface gets them: any answer but that of a defect.
#[cfg(feature = "page")]
pub fn page(bytes: &[u8]) -> bool {
    use axum::body::{Body, to_bytes};
    use axum::http::{Request, header};
    use tower_service::Service;

    let Some(end) = bytes.iter().position(|b| *b == b'\n') else { return false };
    let (path, body) = (&bytes[..end], &bytes[end + 1..]);
    // Work that would take long is not asked for.
    let most = if path == b"/changes" { FEW_STATIONS } else { MOST_STATIONS };
    if texts_of(body).is_some_and(|job| stations(&job) > most) {
        return false;
    }
    let request = Request::post(path).header(header::HOST, "127.0.0.1:8417");
    let request = request.header(header::CONTENT_TYPE, "application/json").body(Body::from(body.to_vec()));
    let Ok(request) = request else { return false };
    let start = spanhold::page::Start {
        job: Named { name: "job.yaml".into(), text: String::new() },
        machine: None,
        shop: None,
        given: true,
    };
    let runtime = tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap();
    runtime.block_on(async {
        let answer = spanhold::page::router(start, 8417).call(request).await.unwrap();
        let status = answer.status().as_u16();
        let body = to_bytes(answer.into_body(), usize::MAX).await.unwrap();
        // 503: not within the time an answer may take, which depends on the machine.
        assert!(status < 500 || status == 503, "{status} {}", String::from_utf8_lossy(&body));
        if status >= 400 {
            let problem: serde_json::Value = serde_json::from_slice(&body).unwrap();
            assert!(problem["what"].as_str().is_some_and(|what| !what.is_empty()), "refused without a word");
        }
        status < 400
    })
}

/// The job of a body, where it has one that can be read.
#[cfg(feature = "page")]
fn texts_of(body: &[u8]) -> Option<Job> {
    let body: serde_json::Value = serde_json::from_slice(body).ok()?;
    let texts = body.get("texts").unwrap_or(&body);
    let named = |text: &serde_json::Value| {
        Some(Named { name: text.get("name")?.as_str()?.into(), text: text.get("text")?.as_str()?.into() })
    };
    read_texts(&named(texts.get("job")?)?, texts.get("machine").and_then(named).as_ref(), None).ok()
}
