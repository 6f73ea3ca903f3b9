//! `order`: the order to be quoted. It may be left out.

use super::reader::{Map, Reader};
use crate::fields;
use crate::job::Order;

/// Reads the order: `Some(None)` if it is left out.
pub(super) fn read(r: &mut Reader, job: &Map) -> Option<Option<Order>> {
    let Some(node) = r.optional(job, "order")? else { return Some(None) };
    let map = r.map(node, &["pieces", "set_up_h", "shift_h", "running_share"])?;
    let pieces = r.count(&map, &fields::ORDER_PIECES);
    let set_up = r.number_or(&map, &fields::SET_UP_H, None);
    let shift = r.number_or(&map, &fields::SHIFT_H, None);
    let running = r.number_or(&map, &fields::RUNNING_SHARE, None);
    Some(Some(Order { pieces: pieces?, set_up_h: set_up?, shift_h: shift?, running_share: running? }))
}
