//! `completions` and `man`: the command line described for shells and for `man`.

use super::{Ending, files, help, out};
use crate::diag::Diag;
use crate::reference::Topic;
use crate::say;
use clap::builder::PossibleValuesParser;
use clap_complete::Shell;
use clap_mangen::Man as Page;
use std::path::PathBuf;

/// What `completions` takes.
#[derive(Debug, clap::Args)]
pub struct Completions {
    /// Which shell.
    #[arg(value_enum)]
    shell: Shell,
}

/// What `man` takes.
#[derive(Debug, clap::Args)]
pub struct Man {
    /// A command; left out: the program.
    #[arg(conflicts_with = "out")]
    command: Option<String>,
    /// Write all pages into this folder instead.
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,
}

/// Prints the completions of a shell.
pub fn completions(args: &Completions) -> Ending {
    let call = help::command();
    let commands = help::names(&call);
    let mut words: Vec<String> = help::topics().into_iter().map(str::to_owned).collect();
    words.extend(commands.iter().filter(|c| Topic::named(c).is_none()).cloned());
    let mut call = call
        .mut_subcommand("help", |c| c.mut_arg("topic", |a| a.value_parser(PossibleValuesParser::new(words))))
        .mut_subcommand("man", |c| c.mut_arg("command", |a| a.value_parser(PossibleValuesParser::new(commands))));
    let mut text = Vec::new();
    clap_complete::generate(args.shell, &mut call, help::PROGRAM, &mut text);
    out::result(&String::from_utf8_lossy(&text));
    Ending::Done
}

/// Prints a page, or writes all.
pub fn man(args: &Man) -> Ending {
    let call = help::command();
    if let Some(dir) = &args.out {
        let pages = std::iter::once(&call).chain(call.get_subcommands()).map(|c| (format!("{}.1", title(c)), page(c)));
        return match files::write_all(dir, &pages.collect::<Vec<_>>()) {
            Ok(()) => Ending::Done,
            Err(diag) => out::wrong_input(&[diag]),
        };
    }
    let wanted = match &args.command {
        None => Some(&call),
        Some(name) => call.find_subcommand(name),
    };
    match wanted {
        Some(command) => out::result(&String::from_utf8_lossy(&page(command))),
        None => {
            let commands = help::names(&call).join(", ");
            let diag = Diag::new(say!("man-unknown-command", word = args.command.clone().unwrap_or_default()));
            return out::wrong_input(&[diag.help(say!("man-commands", commands = commands))]);
        }
    }
    Ending::Done
}

/// Name of a page: `spanhold`, `spanhold-plan`.
fn title(command: &clap::Command) -> String {
    command.get_display_name().unwrap_or(command.get_name()).to_owned()
}

fn page(command: &clap::Command) -> Vec<u8> {
    let mut text = Vec::new();
    let source = concat!("spanhold ", env!("CARGO_PKG_VERSION"));
    // Writing into memory cannot fail.
    let _ = Page::new(command.clone()).source(source).render(&mut text);
    text
}
