//! `materials`: the built-in materials.

use super::{Ending, Format, out};
use crate::diag::Diag;
use crate::job::materials::matching;
use crate::lang;
use crate::reference::materials;
use crate::report::text::WIDTH;
use crate::say;

/// What `materials` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Only materials with this in a name, the number or the group.
    word: Option<String>,
    /// How to print it.
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let word = args.word.as_deref().unwrap_or_default();
    let rows = matching(word);
    if rows.is_empty() {
        let diag = Diag::new(say!("help-no-material", word = word)).help(lang::text("help-all-materials"));
        return out::wrong_input(&[diag]);
    }
    match args.format {
        Format::Text if word.is_empty() => out::result(&materials::list(WIDTH)),
        Format::Text => out::result(&materials::text(&rows, WIDTH)),
        Format::Json => return out::json(&materials::json(&rows)),
    }
    Ending::Done
}
