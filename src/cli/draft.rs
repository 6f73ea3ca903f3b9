//! `draft`: a job from a drawing or a table.

use super::{Ending, files, out};
use crate::diag::Diag;
use crate::drawings::{DRAWING_MAX_MIB, GAP_MM, Options, Units, draft};
use crate::say;
use std::path::{Path, PathBuf};

/// Units of a drawing, as the option takes them. Its values are texts as those of the option of every command, which has its name.
const UNITS: [(&str, Units); 4] = [("mm", Units::Mm), ("cm", Units::Cm), ("m", Units::M), ("inch", Units::Inch)];

/// What `draft` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// A drawing (.dxf) or a list of sections (.csv, .xlsx).
    file: PathBuf,
    /// File for the job. Default: stdout. An existing file is not overwritten.
    #[arg(long, value_name = "JOB")]
    out: Option<PathBuf>,
    /// Machine file for the job. Default: an invented machine as a placeholder.
    #[arg(long, value_name = "FILE")]
    machine: Option<PathBuf>,
    /// Diameter of the bar, mm. Default: the next usual bar as a placeholder.
    #[arg(long, value_name = "MM")]
    stock: Option<f64>,
    /// Name of the material. Default: the material in the drawing, or a placeholder.
    #[arg(long, value_name = "NAME")]
    material: Option<String>,
    /// Unit of the drawing. Default: the unit that the drawing names.
    #[arg(long, value_parser = UNITS.map(|(name, _)| name))]
    units: Option<String>,
    /// Scale of the drawing, 0.5 for 1:2. Default: from the factor of its dimensions.
    #[arg(long, value_name = "SCALE")]
    scale: Option<f64>,
    /// Largest gap between the ends of two lines that the program closes, mm.
    #[arg(long, value_name = "MM", default_value_t = GAP_MM)]
    gap: f64,
    /// The front face is at the right or upper end of the drawing. Default: left or lower end.
    #[arg(long)]
    flip: bool,
    /// Sheet of a workbook. Default: the first sheet.
    #[arg(long, value_name = "NAME")]
    sheet: Option<String>,
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    match drafted(args) {
        Ok(()) => Ending::Done,
        Err(diags) => out::wrong_input(&diags),
    }
}

fn drafted(args: &Args) -> Result<(), Vec<Diag>> {
    let options = options(args).map_err(|diag| vec![diag])?;
    args.out.as_deref().map_or(Ok(()), files::must_be_new).map_err(|diag| vec![diag])?;
    let bytes =
        files::read(&args.file, DRAWING_MAX_MIB, &say!("draft-file-too-large-help")).map_err(|diag| vec![diag])?;
    let base = args.out.as_deref().and_then(Path::parent).unwrap_or(Path::new(""));
    let draft = draft(&args.file, &bytes, base, &options)?;
    match &args.out {
        None => out::result(&draft.text),
        Some(path) => files::write_one(path, &draft.text).map_err(|diag| vec![diag])?,
    }
    let mut said: String = draft.notes.iter().map(|n| format!("{n}\n")).collect();
    if let Some(path) = &args.out {
        said += &format!("{}\n", say!("draft-written", file = path.display().to_string()));
    }
    out::say(&said);
    Ok(())
}

fn options(args: &Args) -> Result<Options, Diag> {
    let within = |name: &str, value: Option<f64>, low: f64, high: f64| match value {
        Some(v) if !(v.is_finite() && v >= low && v <= high) => Err(Diag::new(say!(
            "option-out-of-range",
            option = name,
            value = v.to_string()
        ))
        .help(say!("option-out-of-range-help", low = low.to_string(), high = high.to_string()))),
        other => Ok(other),
    };
    let named = |name: &String| UNITS.into_iter().find(|(known, _)| known == name).map(|(_, units)| units);
    let units = args.units.as_ref().and_then(named);
    let machine = args.machine.as_ref().map(|m| {
        // A path in a job is relative to the folder of the job file.
        let beside = args.out.as_deref().and_then(Path::parent).is_none_or(|p| p.as_os_str().is_empty());
        let path = if beside { m.clone() } else { std::path::absolute(m).unwrap_or_else(|_| m.clone()) };
        path.display().to_string()
    });
    Ok(Options {
        units,
        scale: within("scale", args.scale, 1e-4, 1e4)?,
        gap_mm: within("gap", Some(args.gap), 1e-4, 5.0)?.unwrap_or(GAP_MM),
        flip: args.flip,
        sheet: args.sheet.clone(),
        stock_mm: within("stock", args.stock, crate::fields::STOCK_DIAMETER.min, crate::fields::STOCK_DIAMETER.max)?,
        machine,
        material: args.material.clone(),
    })
}
