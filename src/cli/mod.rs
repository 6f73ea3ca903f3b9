//! The command line: options, messages and files, no engineering. One file for each command.

mod at;
mod batch;
mod beside;
mod check;
mod compare;
mod draft;
mod files;
mod fit;
mod help;
mod interrupt;
mod materials;
mod new;
mod out;
#[cfg(feature = "page")]
mod page;
mod plan;
mod progress;
mod recheck;
mod schema;
mod shell;
mod style;

use crate::lang::{self, LANGUAGES, Language, Spoken, Units};
use crate::say;
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
    /// Ctrl-C; what was known then has been printed.
    Interrupted,
}

impl Ending {
    /// The exit status.
    pub fn status(self) -> u8 {
        match self {
            Ending::Done => 0,
            Ending::NotFeasible => 1,
            Ending::WrongInput => 2,
            Ending::Defect => 3,
            Ending::Interrupted => interrupt::STATUS,
        }
    }
}

/// How results are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// A text for people.
    Text,
    /// One JSON document.
    Json,
}

/// Plans the turning of a long slender shaft on a sliding-head (guide-bush) lathe, and proves the plan.
#[derive(Debug, Parser)]
#[command(name = "spanhold", version, arg_required_else_help = true, disable_help_subcommand = true, after_help = help::more())]
struct Call {
    // Looked at before the call is read, see `asked_to_speak`; here it is only checked.
    #[arg(long, global = true, value_name = "CODE", value_parser = language, help = say!("option-lang", languages = LANGUAGES.join(", ")))]
    lang: Option<Language>,
    // As for the language. `draft` has an option of this name with more values: the unit of the drawing.
    #[arg(long, global = true, value_name = "mm|inch", value_parser = Units::CODES, help = lang::text("option-units"))]
    units: Option<String>,
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Makes the plan: stages, grips, headstock re-grips, segments, times and quote.
    Plan(plan::Args),
    /// Checks feasibility only. If the job is not feasible, it gives the cause and the changes that help.
    Check(check::Args),
    /// Calculates forces, deflections and checks at one turned length.
    At(at::Args),
    /// Compares plans with and without guide bush, with single tool, opposed pair and tandem, on one or more machines.
    Compare(compare::Args),
    /// Checks a stored plan against a job. The job may be changed since.
    Recheck(recheck::Args),
    /// Plans many jobs on all processor cores. Each job gives one line of JSON, in the order of the input.
    Batch(batch::Args),
    /// Makes a draft job from a drawing (DXF) or a list of sections (CSV, XLSX).
    Draft(draft::Args),
    /// Calculates the stiffness of bush, headstock and counter-spindle from readings on the machine.
    Fit(fit::Args),
    /// Opens the local page in which you change a job and see its plan.
    #[cfg(feature = "page")]
    Page(page::Args),
    /// Prints the JSON Schema of a job, machine, shop, readings, plan or positions file, for editors.
    Schema(schema::Args),
    /// Writes an example job with comments, or an example of a shop's file.
    New(new::Args),
    /// The built-in materials and those of the shop with their numbers.
    Materials(materials::Args),
    /// What a topic or a command is about: job, machine, shop, readings, materials, checks, plan-file.
    Help(help::Args),
    /// Completions for a shell.
    Completions(shell::Completions),
    /// Man pages.
    Man(shell::Man),
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

/// A language as the option takes it.
fn language(code: &str) -> Result<Language, String> {
    Language::of(code).ok_or_else(|| say!("no-such-language", languages = LANGUAGES.join(", ")))
}

/// The value of an option of every command, before the call is read: `--lang de` or `--lang=de`.
fn asked<'a>(args: &'a [OsString], option: &str) -> Option<&'a str> {
    let texts: Vec<&str> = args.iter().filter_map(|arg| arg.to_str()).collect();
    let behind = texts.iter().position(|arg| *arg == option).and_then(|at| texts.get(at + 1)).copied();
    behind.or_else(|| texts.iter().find_map(|arg| arg.strip_prefix(option)?.strip_prefix('=')))
}

/// What a call asks to be spoken, before the call is read: what is wrong with the call is told in it too.
fn asked_to_speak(args: &[OsString]) -> Spoken {
    let language = asked(args, "--lang").and_then(Language::of);
    let units = asked(args, "--units").and_then(Units::of);
    let spoken = language.map_or_else(lang::spoken, Spoken::fixed);
    units.map_or(spoken, |units| spoken.in_units(units))
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
    let args: Vec<OsString> = args.into_iter().collect();
    lang::speak(asked_to_speak(&args));
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
        Command::Materials(args) => materials::run(&args),
        Command::Help(args) => help::run(&args),
        Command::Completions(args) => shell::completions(&args),
        Command::Man(args) => shell::man(&args),
    };
    ExitCode::from(out::ended(ending).status())
}
