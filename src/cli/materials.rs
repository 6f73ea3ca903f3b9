//! `materials`: the built-in materials.

use super::beside::InShop;
use super::{Ending, Format, out};
use crate::diag::Diag;
use crate::input::shop_near;
use crate::job::materials::matching;
use crate::job::shop::Grade;
use crate::lang;
use crate::reference::materials;
use crate::report::text::WIDTH;
use crate::say;
use std::path::Path;

/// What `materials` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Only materials with this in a name, the number or the group.
    word: Option<String>,
    #[command(flatten)]
    shop: InShop,
    /// How to print it.
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let word = args.word.as_deref().unwrap_or_default();
    let rows = matching(word);
    let shop = match shop_near(Path::new(""), args.shop.file.as_deref()) {
        Ok(shop) => shop,
        Err(diags) => return out::wrong_input(&diags),
    };
    let own: Vec<&Grade> = shop.iter().flat_map(|shop| &shop.grades).filter(|grade| grade.is(word)).collect();
    let file = shop.as_ref().map(|shop| shop.file_name()).unwrap_or_default();
    if rows.is_empty() && own.is_empty() {
        let diag = Diag::new(say!("help-no-material", word = word)).help(lang::text("help-all-materials"));
        return out::wrong_input(&[diag]);
    }
    if args.format == Format::Text && !own.is_empty() {
        out::result(&materials::of_shop(&own, &file, WIDTH));
    }
    match args.format {
        Format::Text if rows.is_empty() => {}
        Format::Text if word.is_empty() => out::result(&materials::list(WIDTH)),
        Format::Text => out::result(&materials::text(&rows, WIDTH)),
        Format::Json => return out::json(&materials::json(&rows, &own, &file)),
    }
    Ending::Done
}
