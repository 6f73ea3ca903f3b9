//! Work on other threads than the connections. It is stopped if nobody waits for it any more or if it takes too long. A
//! panic in it does not end the server.

use axum::http::StatusCode;
use axum::response::Response;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;
use tokio::sync::Semaphore;

use super::Start;
use super::wire::{Problem, Texts};
use crate::job::Job;
use crate::job::plan::Plan;
use crate::lang::{self, Spoken, Units};
use crate::say;
use crate::spread::Halt;

/// Longest time one answer may take, s.
pub const WORK_S: u64 = 30;
/// Answers worked out at once; each plans on all cores where it can.
const AT_ONCE: usize = 3;
/// Plans kept, so that an undone edit, an export or a moved grip need no new planning.
const PLANS_KEPT: usize = 24;

/// A job that was read: its texts, what was spoken before and after reading, and the job.
type Read = (Texts, [Spoken; 2], Arc<Job>);

/// A plan that was worked out before.
#[derive(Clone)]
pub struct Kept {
    /// The plan.
    pub plan: Arc<Plan>,
    /// Whether its sampled parts are counted, or there is nothing to count.
    pub settled: bool,
}

/// What the handlers share.
pub struct Desk {
    /// What the page starts with.
    pub start: Start,
    places: Semaphore,
    plans: Mutex<VecDeque<(String, Kept)>>,
    /// Units of exports that the call asks for.
    pub units: Option<Units>,
    /// The job read last: while the slider moves the texts are the same again and again.
    read: Mutex<Option<Read>>,
}

/// Asks the work to stop when the request that waits for it is dropped.
struct Leaving(Halt);

impl Drop for Leaving {
    fn drop(&mut self) {
        self.0.ask();
    }
}

impl Desk {
    /// A desk without plans and jobs.
    pub fn new(start: Start) -> Desk {
        Desk {
            start,
            places: Semaphore::new(AT_ONCE),
            plans: Mutex::default(),
            units: lang::spoken().units_fixed(),
            read: Mutex::default(),
        }
    }

    /// Does something on another thread. It is stopped if the request is dropped, as when the page replaces it by a
    /// newer one, or if it takes too long.
    ///
    /// # Errors
    /// It took too long (503), or it met an error in this program (500).
    pub async fn work<T: Send + 'static>(&self, work: impl FnOnce() -> T + Send + 'static) -> Result<T, Response> {
        let stopped = || {
            let what = say!("page-takes-too-long", seconds = WORK_S);
            Problem::new(what, lang::text("page-takes-too-long-help")).with(StatusCode::SERVICE_UNAVAILABLE)
        };
        let defect = || {
            Problem::new(lang::text("page-defect-unknown"), lang::text("page-defect-help"))
                .with(StatusCode::INTERNAL_SERVER_ERROR)
        };
        let (halt, spoken) = (Halt::default(), lang::spoken());
        let leaving = Leaving(halt.clone());
        let in_time = tokio::time::timeout(Duration::from_secs(WORK_S), async {
            let _place = self.places.acquire().await.map_err(|_| defect())?;
            match tokio::task::spawn_blocking(move || lang::speaking(spoken, || halt.until(work))).await {
                Ok(Some(done)) => Ok(done),
                Ok(None) => Err(stopped()),
                Err(_) => Err(defect()),
            }
        });
        let done = in_time.await.unwrap_or_else(|_| Err(stopped()));
        drop(leaving);
        done
    }

    /// The job of the texts. If they are the texts read last, that job is taken; else `read` reads them.
    ///
    /// # Errors
    /// Those of `read`.
    pub fn job<E>(&self, texts: &Texts, read: impl FnOnce() -> Result<Job, E>) -> Result<Arc<Job>, E> {
        let last = || self.read.lock().unwrap_or_else(PoisonError::into_inner);
        let before = lang::spoken();
        if let Some((_, [_, after], job)) = last().as_ref().filter(|(of, [told, _], _)| of == texts && *told == before)
        {
            // The units that the job asks for, as if it were read.
            lang::speak(*after);
            return Ok(Arc::clone(job));
        }
        let job = Arc::new(read()?);
        *last() = Some((texts.clone(), [before, lang::spoken()], Arc::clone(&job)));
        Ok(job)
    }

    /// A plan that was worked out before.
    pub fn kept(&self, key: &str) -> Option<Kept> {
        let plans = self.plans.lock().unwrap_or_else(PoisonError::into_inner);
        plans.iter().find(|(k, _)| k == key).map(|(_, kept)| kept.clone())
    }

    /// Keeps a plan.
    pub fn keep(&self, key: String, plan: Kept) {
        let mut plans = self.plans.lock().unwrap_or_else(PoisonError::into_inner);
        plans.retain(|(k, _)| *k != key);
        plans.push_front((key, plan));
        plans.truncate(PLANS_KEPT);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::Named;
    use crate::spread::checkpoint;

    fn run<T>(story: impl Future<Output = T>) -> T {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
        runtime.expect("a runtime").block_on(story)
    }

    fn desk() -> Desk {
        Desk::new(Start {
            job: Named { name: "job.yaml".into(), text: String::new() },
            machine: None,
            shop: None,
            given: true,
        })
    }

    #[test]
    fn a_defect_of_one_answer_is_not_the_end_of_the_others() {
        run(async {
            let desk = desk();
            let nothing: Vec<u8> = Vec::new();
            let failed = desk.work(move || nothing[0]).await.map_err(|response| response.status());
            assert_eq!(failed, Err(StatusCode::INTERNAL_SERVER_ERROR));
            assert!(desk.work(|| 7).await.is_ok_and(|n| n == 7));
        });
    }

    #[test]
    fn work_ends_when_nobody_waits_for_it_any_more() {
        run(async {
            let desk = desk();
            let held = Arc::new(());
            for _ in 0..AT_ONCE {
                let mine = Arc::clone(&held);
                let endless = desk.work::<()>(move || {
                    let _mine = mine;
                    loop {
                        checkpoint();
                    }
                });
                assert!(tokio::time::timeout(Duration::from_millis(20), endless).await.is_err());
            }
            let ended = async {
                while Arc::strong_count(&held) > 1 {
                    tokio::time::sleep(Duration::from_millis(5)).await;
                }
            };
            tokio::time::timeout(Duration::from_secs(300), ended).await.expect("the work ends");
            assert!(desk.work(|| 7).await.is_ok(), "their places are free again");
        });
    }

    #[test]
    fn the_same_texts_are_read_once() {
        let desk = desk();
        let texts =
            |text: &str| Texts { job: Named { name: "job.yaml".into(), text: text.into() }.into(), machine: None };
        let read = || crate::input::read_job_text("job.yaml", crate::input::TEMPLATE, ".".as_ref());
        assert!(desk.job(&texts("a"), read).is_ok());
        assert!(desk.job(&texts("a"), || Err(())).is_ok(), "not read again");
        assert!(desk.job(&texts("b"), || Err(())).is_err());
    }

    #[test]
    fn plans_are_kept_up_to_a_number() {
        let desk = desk();
        let plan = crate::answer::advised(
            &crate::input::read_job_text("job.yaml", crate::input::TEMPLATE, ".".as_ref()).expect("a job"),
            crate::planner::Advice::None,
        );
        let plan = Kept { plan: Arc::new(plan.expect("a plan")), settled: false };
        for i in 0..PLANS_KEPT + 1 {
            desk.keep(i.to_string(), plan.clone());
        }
        assert!(desk.kept("0").is_none() && desk.kept("1").is_some());
    }
}
