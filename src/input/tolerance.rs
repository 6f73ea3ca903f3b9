//! Reads a tolerance of a diameter.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields;
use crate::job::{Tolerance, iso286};
use crate::say;

/// The tolerance of a bar: `Some(None)` if it is left out. None also if the diameter is not known.
pub(super) fn of_bar(r: &mut Reader, map: &Map, diameter_mm: Option<f64>) -> Option<Option<Tolerance>> {
    match r.optional(map, "tolerance")? {
        None => Some(None),
        Some(node) => read(r, node, diameter_mm?).map(Some),
    }
}

/// Reads a tolerance: a class of ISO 286, or `[lower, upper]` in mm.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, diameter_mm: f64) -> Option<Tolerance> {
    match &node.value {
        Node::List(_) => {
            let (lower_mm, upper_mm) = r.pair(node, &fields::TOLERANCE, "[-0.05, 0]")?;
            if lower_mm >= upper_mm {
                let diag = Diag::new(say!("tolerance-order")).help(say!("tolerance-order-help"));
                r.complain(&node.referenced, diag);
                return None;
            }
            let signed = |mm: f64| if mm > 0.0 { format!("+{mm}") } else { format!("{}", mm + 0.0) };
            Some(Tolerance { lower_mm, upper_mm, label: format!("{}/{}", signed(upper_mm), signed(lower_mm)) })
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
