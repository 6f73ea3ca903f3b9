//! `spanhold` plans how a long slender shaft is turned on a sliding-head (guide-bush) lathe.
//!
//! From a job file (shaft, bar, machine, tools, limits) it works out stage by stage how far the bar may be turned
//! before the unsupported length gets too soft, whirls or sags, where the counter-spindle takes hold, and where the
//! headstock re-grips; it proves the plan state by state and writes a stage table, a diagram and a sheet.
//!
//! What a user of the library calls, in this order:
//!
//! - read: [`input::read_job`], or [`input::read_job_text`] for a text; a job is plain data ([`job::Job`])
//! - plan: [`answer::answer`], which proves the plan before it gives it away; a plan is plain data too ([`job::plan::Plan`])
//! - prove: [`proof::prove`], for a plan that was stored
//! - print: [`report::plan_text`], [`report::plan_svg`], [`report::sheet_html`] and the like, from a plan alone
//!
//! ```
//! use spanhold::{answer, input, proof, report};
//!
//! let job = input::read_job("demo/probe-needle.yaml".as_ref()).expect("a job that can be read");
//! let plan = answer::answer(&job).expect("no fault of ours");
//! assert!(proof::prove(&plan, &job).holds());
//! println!("{}", report::plan_text(&plan));
//! ```
//!
//! `mechanics` and `process` are public too, because a beam on springs, its modes and chatter, and a machine at one
//! moment are useful on their own. The search for a plan is not public: only the entry point of [`planner`] is.
//!
//! The modules; DEVELOPERS.md calls them rooms. A module uses only modules of its own row and of the rows above it:
//!
//! | room | purpose |
//! |---|---|
//! | [`units`], [`lang`], [`diag`], [`defect`] | conversions; every text that people read; messages with a place; an error in this program |
//! | [`shown`], [`fields`], [`spread`] | text without control characters; all input quantities; work on all cores |
//! | [`job`] | plain data: shaft, bar, machine, cutting, limits, standards; the plan as plain data |
//! | [`mechanics`] | pure numbers: beam, banded solver, modes, cutting force, chatter; knows no lathe and no file |
//! | [`process`] | the machine at one moment: state, checks, segments, times |
//! | `cycle` | a finished plan in time: both spindles, critical path, tools, an order |
//! | [`planner`] | stations, arcs, the two linear programs, what is missing, the quote |
//! | [`proof`] | a finished plan re-checked state by state; uses `process`, never `planner` |
//! | [`fit`] | measured deflections and frequencies to stiffnesses of the supports |
//! | [`schema`] | JSON Schemas of the files, from the fields and the plan's types |
//! | [`mod@reference`] | tables of keys, checks and materials, for `help` and `docs/` |
//! | [`input`] | files to a [`job::Job`], every message pointing at what was written |
//! | [`drawings`] | drawings and tables to the text of a job |
//! | [`report`] | what people read, from a finished plan alone |
//! | [`answer`] | plan, prove, plan again: no unproven plan leaves it |
//! | `page` | the local page: a small JSON interface and the files of the page, on loopback only |
//! | [`cli`] | one file for each command: options, messages and files, no engineering |

#![forbid(unsafe_code)]
// The lints hold three rules: no input causes a panic, no result depends on the order of a hash map, only `cli` prints.
#![cfg_attr(
    not(test),
    warn(
        clippy::dbg_macro,
        clippy::exit,
        clippy::expect_used,
        clippy::indexing_slicing,
        clippy::iter_over_hash_type,
        clippy::mem_forget,
        clippy::missing_errors_doc,
        clippy::missing_panics_doc,
        clippy::panic,
        clippy::print_stderr,
        clippy::print_stdout,
        clippy::string_slice,
        clippy::todo,
        clippy::unimplemented,
        clippy::unreachable,
        clippy::unwrap_used,
    )
)]

// Work that is stopped unwinds (`spread`). So do a panic of a library on a broken drawing (`drawings`) and a panic in
// one job of many (`cli::batch`). Each is caught, and the rest goes on. With `panic = "abort"` each would end the whole
// program.
#[cfg(panic = "abort")]
compile_error!("spanhold stops work by unwinding: build it with `panic = \"unwind\"`, the default");

pub mod answer;
pub mod cli;
pub mod defect;
pub mod diag;
pub mod drawings;
pub mod fields;
pub mod shown;
#[expect(clippy::indexing_slicing, reason = "one place for each thing of the list, one share for each worker")]
pub mod spread;
pub mod units;

#[expect(clippy::indexing_slicing, reason = "indices are those of segments, tasks and parts listed in the same call")]
mod cycle;
pub mod fit;
pub mod input;
pub mod job;
pub mod lang;
#[expect(
    clippy::indexing_slicing,
    reason = "matrices and nodes of a beam made here: formulas are read by their indices, and run hot"
)]
pub mod mechanics;
#[cfg(feature = "page")]
pub mod page;
#[expect(
    clippy::indexing_slicing,
    reason = "grids, networks and tables made here and walked by their own indices, most of it hot"
)]
pub mod planner;
pub mod process;
#[expect(
    clippy::indexing_slicing,
    reason = "stages are counted through, or looked up before; one passed over would go unproven"
)]
pub mod proof;
pub mod reference;
pub mod report;
pub mod schema;
