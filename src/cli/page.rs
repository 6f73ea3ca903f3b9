//! `page`: the local page.

use super::beside::InShop;
use super::{Ending, out};
use crate::diag::Diag;
use crate::input::{self, Named, TEMPLATE};
use crate::lang;
use crate::page::{self, Start};
use crate::say;
use std::io::ErrorKind;
use std::path::PathBuf;

/// The port if none is given.
const PORT: u16 = 8417;

/// What `page` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job file to open. Default: the start screen.
    job: Option<PathBuf>,
    #[command(flatten)]
    shop: InShop,
    /// Port on 127.0.0.1. 0 takes a free port.
    #[arg(long, value_name = "N", default_value_t = PORT)]
    port: u16,
    /// Prints the description of the interface (OpenAPI 3.1) and ends.
    #[arg(long)]
    openapi: bool,
}

/// Runs it until the process is ended.
pub fn run(args: &Args) -> Ending {
    if args.openapi {
        out::result(&(page::description() + "\n"));
        return Ending::Done;
    }
    let texts = match &args.job {
        Some(path) => input::texts_of(path),
        None => Ok((Named { name: "job.yaml".into(), text: TEMPLATE.into() }, None)),
    };
    let shop = match args.job.as_ref().map(|job| input::shop_of(job, args.shop.file.as_deref())).transpose() {
        Ok(shop) => shop.flatten(),
        Err(diags) => return out::wrong_input(&diags),
    };
    let (job, machine) = match texts {
        Ok(texts) => texts,
        Err(diag) => return out::wrong_input(&[diag]),
    };
    let ready = |address: std::net::SocketAddr| {
        out::result(&format!("http://{address}/\n"));
        out::say(&format!("{}\n", lang::text("page-opened")));
    };
    match page::serve(Start { job, machine, shop, given: args.job.is_some() }, args.port, ready) {
        Ok(()) => Ending::Done,
        Err(e) => {
            let help = match e.kind() {
                ErrorKind::AddrInUse => lang::text("page-port-taken-help"),
                _ => lang::text("page-port-help"),
            };
            out::wrong_input(&[
                Diag::new(say!("page-port", port = args.port.to_string(), error = e.to_string())).help(help)
            ])
        }
    }
}
