//! Numbers of the edges of a section, of its allowance for grinding, and of a hollow bar.

use super::{Field, optional, required};

/// Chamfer of the front edge.
pub const CHAMFER: Field = required("shaft.sections.chamfer", "mm", 0.02, 20.0);
/// Chamfer of the front edge, in a map.
pub const CHAMFER_FRONT: Field = required("shaft.sections.chamfer.front", "mm", 0.02, 20.0);
/// Chamfer of the rear edge, in a map.
pub const CHAMFER_REAR: Field = required("shaft.sections.chamfer.rear", "mm", 0.02, 20.0);
/// Radius at the front end.
pub const RADIUS: Field = required("shaft.sections.radius", "mm", 0.02, 20.0);
/// Radius at the front end, in a map.
pub const RADIUS_FRONT: Field = required("shaft.sections.radius.front", "mm", 0.02, 20.0);
/// Radius at the rear end, in a map.
pub const RADIUS_REAR: Field = required("shaft.sections.radius.rear", "mm", 0.02, 20.0);
/// Allowance for grinding.
pub const GRIND: Field = required("shaft.sections.grind", "mm", 0.01, 3.0);
/// Roughness before grinding.
pub const TURNED_RA: Field = required("shaft.sections.turned_ra", "µm", 0.1, 50.0);
/// Inner diameter of the bar.
pub const STOCK_BORE: Field = optional("stock.bore", "mm", 0.0, 190.0, 0.0);
