//! The command line: options, messages and files, no engineering. One file for each command.

mod at;
mod batch;
mod check;
mod compare;
mod draft;
mod files;
mod fit;
mod interrupt;
mod new;
mod out;
#[cfg(feature = "page")]
mod page;
mod plan;
mod progress;
mod recheck;
mod schema;

use clap::error::{ContextKind, ContextValue};
use clap::{Parser, Subcommand, ValueEnum};
use std::ffi::OsString;
use std::process::ExitCode;

/// How a command ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ending {
    /// Feasible, or done.
    Done,
    /// Not feasible.
    NotFeasible,
    /// The input or the call is wrong.
    WrongInput,
    /// An error in this program.
    Defect,
}

impl Ending {
    /// The exit status.
    pub fn status(self) -> u8 {
        match self {
            Ending::Done => 0,
            Ending::NotFeasible => 1,
            Ending::WrongInput => 2,
            Ending::Defect => 3,
        }
    }
}

/// How results are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// For reading.
    Text,
    /// One JSON document and nothing else.
    Json,
}

/// Plans how a long slender shaft is turned on a sliding-head (guide-bush) lathe, and proves the plan.
#[derive(Debug, Parser)]
#[command(name = "spanhold", version, arg_required_else_help = true)]
struct Call {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// The whole plan: stages, grips, re-grips, segments, times, quote.
    Plan(plan::Args),
    /// The verdict alone: can it be made so, and if not, what stops it and what would help.
    Check(check::Args),
    /// The mechanics at one moment.
    At(at::Args),
    /// The ways of holding and tooling it side by side, on one machine or several.
    Compare(compare::Args),
    /// A stored plan against a (revised) job.
    Recheck(recheck::Args),
    /// Many jobs on all cores, one JSON line each, in input order.
    Batch(batch::Args),
    /// A job drafted from a drawing (DXF) or a list of sections (CSV, XLSX).
    Draft(draft::Args),
    /// Stiffnesses of bush, headstock and counter-spindle from readings taken on the machine.
    Fit(fit::Args),
    /// The local page: change a job and see its plan at once.
    #[cfg(feature = "page")]
    Page(page::Args),
    /// The JSON Schema of a job, machine, readings or plan file, for editors.
    Schema(schema::Args),
    /// A commented job to start from.
    New(new::Args),
}

impl Command {
    /// Whether the command ends by itself. The page does not: Ctrl-C is the way to end it.
    fn ends_by_itself(&self) -> bool {
        #[cfg(feature = "page")]
        return !matches!(self, Command::Page(_));
        #[cfg(not(feature = "page"))]
        true
    }
}

/// A line of help if a number was given with a decimal comma; else empty.
fn decimal_comma(asked: &clap::Error) -> String {
    let Some(ContextValue::String(value)) = asked.get(ContextKind::InvalidValue) else { return String::new() };
    let with_point = value.replace(',', ".");
    if with_point == *value || with_point.parse::<f64>().is_err() {
        return String::new();
    }
    format!("\nhelp: decimals are written with a point: `{with_point}`\n")
}

/// Runs a command line and returns the exit status. Results go to stdout, everything else to stderr.
pub fn run(args: impl IntoIterator<Item = OsString>) -> ExitCode {
    interrupt::no_end_by_size();
    out::tell_panics();
    let call = match Call::try_parse_from(args) {
        Ok(call) => call,
        Err(asked) => {
            // Help and version are results; everything else is a wrong call.
            let wrong = asked.use_stderr();
            let text = asked.render().to_string() + &decimal_comma(&asked);
            if wrong {
                out::say(&text);
            } else {
                out::result(&text);
            }
            return ExitCode::from(if wrong { Ending::WrongInput } else { out::ended(Ending::Done) }.status());
        }
    };
    if call.command.ends_by_itself() {
        interrupt::listen();
    }
    let ending = match call.command {
        Command::Plan(args) => plan::run(&args),
        Command::Check(args) => check::run(&args),
        Command::At(args) => at::run(&args),
        Command::Compare(args) => compare::run(&args),
        Command::Recheck(args) => recheck::run(&args),
        Command::Batch(args) => batch::run(&args),
        Command::Draft(args) => draft::run(&args),
        Command::Fit(args) => fit::run(&args),
        #[cfg(feature = "page")]
        Command::Page(args) => page::run(&args),
        Command::Schema(args) => schema::run(&args),
        Command::New(args) => new::run(&args),
    };
    ExitCode::from(out::ended(ending).status())
}
