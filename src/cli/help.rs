//! `help`: a topic, a command, or the list of both.

use super::{Call, Ending, out};
use crate::diag::Diag;
use crate::fields::nearest;
use crate::reference::{TOPICS, Topic};
use crate::report::text::WIDTH;
use crate::say;
use clap::{CommandFactory, Parser};

/// Name of the program, as a call begins.
pub(super) const PROGRAM: &str = "spanhold";
/// What `help` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// A topic or a command; left out: the list of commands.
    topic: Option<String>,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let call = command();
    let Some(word) = &args.topic else { return as_asked(&[PROGRAM, "--help"]) };
    if let Some(topic) = Topic::named(word) {
        out::result(&topic.text(WIDTH));
        return Ending::Done;
    }
    if call.find_subcommand(word).is_some() {
        return as_asked(&[PROGRAM, word, "--help"]);
    }
    let (topics, commands) = (topics(), names(&call));
    let all = say!("help-topics-and-commands", topics = topics.join(", "), commands = commands.join(", "));
    let help = match nearest(word, topics.iter().copied().chain(commands.iter().map(String::as_str))) {
        Some(near) => say!("help-nearest", near = near, all = all),
        None => all,
    };
    out::wrong_input(&[Diag::new(say!("help-unknown-topic", word = word)).help(help)])
}

/// The help that the command line itself gives.
fn as_asked(words: &[&str]) -> Ending {
    if let Err(help) = Call::try_parse_from(words) {
        out::result(&help.render().to_string());
    }
    Ending::Done
}

/// The whole command line, ready to be described.
pub(super) fn command() -> clap::Command {
    let mut call = Call::command();
    call.build();
    call
}

/// The line below the list of commands.
pub(super) fn more() -> String {
    say!("help-more-topics", topics = topics().join(", "))
}

/// Names of the topics.
pub(super) fn topics() -> Vec<&'static str> {
    TOPICS.iter().map(|(name, _)| *name).collect()
}

/// Names of the commands.
pub(super) fn names(call: &clap::Command) -> Vec<String> {
    call.get_subcommands().map(|c| c.get_name().to_owned()).collect()
}
