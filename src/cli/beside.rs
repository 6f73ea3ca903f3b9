//! The files beside a job that a call may name.

use crate::input::Beside;
use std::path::{Path, PathBuf};

/// Options of a call that plans on one machine.
#[derive(Debug, Clone, Default, clap::Args)]
pub struct Files {
    /// Machine to use instead of the machine of the job: a file, or a name from the shop's file.
    #[arg(long, value_name = "FILE")]
    pub machine: Option<PathBuf>,
    #[command(flatten)]
    pub shop: InShop,
}

/// The option that names the shop's file.
#[derive(Debug, Clone, Default, clap::Args)]
pub struct InShop {
    /// The shop's file. Default: `shop` of the job, else the nearest shop.yaml in the folder of the job or above it.
    #[arg(long = "shop", value_name = "FILE")]
    pub file: Option<PathBuf>,
}

impl Files {
    /// As the reader takes them.
    pub fn beside(&self) -> Beside<'_> {
        self.shop.beside(self.machine.as_deref())
    }
}

impl InShop {
    /// As the reader takes it, with a machine.
    pub fn beside<'a>(&'a self, machine: Option<&'a Path>) -> Beside<'a> {
        Beside { machine, shop: self.file.as_deref() }
    }
}
