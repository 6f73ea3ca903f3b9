//! Reads a tolerance of a diameter.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields;
use crate::job::{Tolerance, iso286};
use crate::lang::{self, Units};
use crate::say;
use crate::units::INCH_MM;

/// The tolerance of a bar: `Some(None)` if it is left out. None also if the diameter is not known.
pub(super) fn of_bar(r: &mut Reader, map: &Map, diameter_mm: Option<f64>) -> Option<Option<Tolerance>> {
    match r.optional(map, "tolerance")? {
        None => Some(None),
        Some(node) => read(r, node, diameter_mm?).map(Some),
    }
}

/// The deviation of a tolerance that is the same to both sides.
fn both_sides(text: &str) -> Option<&str> {
    text.strip_prefix('±').or_else(|| text.strip_prefix("+/-"))
}

/// A deviation as its file has it: in mm or in inches.
fn told(r: &Reader, mm: f64) -> String {
    match r.units {
        Units::Metric => format!("{}", mm + 0.0),
        // Seven decimals of an inch are finer than a hundredth of a µm.
        Units::Inch => lang::trimmed_pointed(mm / INCH_MM, 7),
    }
}

/// What stands behind deviations: deviations in mm have no unit, as on drawings.
fn unit(r: &Reader) -> &'static str {
    match r.units {
        Units::Metric => "",
        Units::Inch => " in",
    }
}

/// Reads a tolerance: a class of ISO 286, `[lower, upper]` or `±0.05`.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, diameter_mm: f64) -> Option<Tolerance> {
    if let Node::Text(text) = &node.value
        && let Some(both) = both_sides(text)
    {
        let mm = r.number_of_text(node, both, &fields::TOLERANCE)?;
        if mm <= 0.0 {
            let diag = Diag::new(say!("tolerance-order")).help(say!("tolerance-order-help"));
            r.complain(&node.referenced, diag);
            return None;
        }
        return Some(Tolerance { lower_mm: -mm, upper_mm: mm, label: format!("±{}{}", told(r, mm), unit(r)) });
    }
    match &node.value {
        Node::List(_) => {
            let (lower_mm, upper_mm) = r.pair(node, &fields::TOLERANCE, "[-0.05, 0]")?;
            if lower_mm >= upper_mm {
                let diag = Diag::new(say!("tolerance-order")).help(say!("tolerance-order-help"));
                r.complain(&node.referenced, diag);
                return None;
            }
            let signed = |mm: f64| if mm > 0.0 { format!("+{}", told(r, mm)) } else { told(r, mm) };
            let label = format!("{}/{}{}", signed(upper_mm), signed(lower_mm), unit(r));
            Some(Tolerance { lower_mm, upper_mm, label })
        }
        Node::Number(_) => {
            let diag = Diag::new(say!("tolerance-one-number")).help(say!("tolerance-one-number-help"));
            r.complain(&node.referenced, diag);
            None
        }
        _ => {
            let class = r.text_in(node, "tolerance")?;
            r.settle(&node.referenced, iso286::shaft_limits(&class, diameter_mm))
        }
    }
}
