//! What is to be planned, one by one: jobs × machines × the parts of a family.

use super::STDIN;
use super::documents::{Documents, Item};
use super::id::{Id, Sizes};
use crate::cli::beside::InShop;
use crate::diag::Diag;
use crate::input::Family;
use std::io::BufRead;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The name of stdin in a line.
const FROM_STDIN: &str = "<stdin>";

/// One plan to make.
#[derive(Debug)]
pub struct Task {
    /// What it is about.
    pub id: Id,
    /// A part of a family, or what is wrong with the job.
    pub of: Result<(Arc<Family>, usize), Vec<Diag>>,
}

/// A job that was opened for one machine, and its next part.
struct Open {
    id: Id,
    family: Arc<Family>,
    part: usize,
}

/// All tasks in the order of the call: by job, then machine, then part. Nothing is read before it is asked for.
pub struct Tasks<R, M> {
    jobs: std::vec::IntoIter<PathBuf>,
    machines: Vec<Option<PathBuf>>,
    shop: InShop,
    stdin: Option<R>,
    documents: Option<Documents<R>>,
    /// The current job and the index of its next machine.
    job: Option<(Item, usize)>,
    open: Option<Open>,
    more: M,
}

/// All tasks of a call. `more` is called with the number of tasks that each job adds, as soon as it is known.
pub fn tasks<R: BufRead, M: Fn(usize)>(
    jobs: Vec<PathBuf>,
    (machines, shop): (Vec<PathBuf>, InShop),
    stdin: R,
    more: M,
) -> Tasks<R, M> {
    let machines: Vec<Option<PathBuf>> =
        if machines.is_empty() { vec![None] } else { machines.into_iter().map(Some).collect() };
    let named = jobs.iter().filter(|j| j.as_os_str() != STDIN).count();
    more(named * machines.len());
    Tasks { jobs: jobs.into_iter(), machines, shop, stdin: Some(stdin), documents: None, job: None, open: None, more }
}

impl<R: BufRead, M: Fn(usize)> Tasks<R, M> {
    /// The next job of the call or of stdin.
    fn next_job(&mut self) -> Option<Item> {
        loop {
            if let Some(documents) = &mut self.documents {
                if let Some(piece) = documents.next() {
                    (self.more)(self.machines.len());
                    return Some(piece);
                }
                self.documents = None;
            }
            let path = self.jobs.next()?;
            match self.stdin.take_if(|_| path.as_os_str() == STDIN) {
                Some(stdin) => self.documents = Some(Documents::new(stdin)),
                None => return Some(Item::Path(path)),
            }
        }
    }
}

impl<R: BufRead, M: Fn(usize)> Iterator for Tasks<R, M> {
    type Item = Task;

    fn next(&mut self) -> Option<Task> {
        loop {
            if let Some(open) = &mut self.open {
                if open.part < open.family.count() {
                    let mut id = open.id.clone();
                    id.vary = Sizes::of(open.family.ranges(), &open.family.values_mm(open.part));
                    open.part += 1;
                    return Some(Task { id, of: Ok((Arc::clone(&open.family), open.part - 1)) });
                }
                self.open = None;
            }
            if self.job.as_ref().is_none_or(|(_, next)| *next >= self.machines.len()) {
                self.job = Some((self.next_job()?, 0));
            }
            let (piece, next) = self.job.as_mut()?;
            let machine = self.machines.get(*next)?.as_deref();
            *next += 1;
            let (id, family) = opened(piece, machine, &self.shop);
            match family {
                Err(diags) => return Some(Task { id, of: Err(diags) }),
                Ok(family) => {
                    (self.more)(family.count() - 1);
                    self.open = Some(Open { id, family: Arc::new(family), part: 0 });
                }
            }
        }
    }
}

fn opened(piece: &Item, machine: Option<&Path>, shop: &InShop) -> (Id, Result<Family, Vec<Diag>>) {
    let (file, document, family) = match piece {
        Item::Path(path) => (path.display().to_string(), None, Family::read(path, shop.beside(machine))),
        Item::Document(number, text) => {
            let name = format!("{FROM_STDIN}#{number}");
            let family = match text {
                Ok(text) => Family::from_text(&name, text.clone(), Path::new(""), shop.beside(machine)),
                Err(diag) => Err(vec![diag.clone()]),
            };
            (FROM_STDIN.to_owned(), Some(*number), family)
        }
    };
    (Id { file, document, machine: machine.map(|m| m.display().to_string()), vary: None }, family)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::cell::Cell;

    #[test]
    fn jobs_times_machines_times_parts_in_the_order_of_the_call() {
        let text = crate::input::TEMPLATE;
        let family = format!("{text}\nvary: {{length: {{section: 4, from: 200, to: 220, step: 10}}}}\n");
        let stdin = format!("---\n{family}---\nnot: a job\n");
        let told = Cell::new(0);
        let of = |paths: &[&str]| paths.iter().map(PathBuf::from).collect::<Vec<_>>();
        let tasks = tasks(
            of(&["a.yaml", "-", "b.yaml"]),
            (of(&["demo/machines/long-bed-32.yaml", "m"]), InShop::default()),
            stdin.as_bytes(),
            |n| told.set(told.get() + n),
        );
        let all: Vec<String> = tasks.map(|t| t.id.text()).collect();
        let long = "demo/machines/long-bed-32.yaml";
        let expected = [
            format!("a.yaml on {long}"),
            "a.yaml on m".into(),
            format!("<stdin> document 1 on {long}, length 200 mm"),
            format!("<stdin> document 1 on {long}, length 210 mm"),
            format!("<stdin> document 1 on {long}, length 220 mm"),
            "<stdin> document 1 on m".into(),
            format!("<stdin> document 2 on {long}"),
            "<stdin> document 2 on m".into(),
            format!("b.yaml on {long}"),
            "b.yaml on m".into(),
        ];
        assert_eq!(all, expected);
        assert_eq!(told.get(), all.len());
    }
}
