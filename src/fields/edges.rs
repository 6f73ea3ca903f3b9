//! Numbers of the edges of a section, of its allowance for grinding, and of a hollow bar.

use super::{Field, optional, required};

const CHAMFER_WHAT: &str = "width of a chamfer of 45°";
const RADIUS_WHAT: &str = "radius of a rounded edge or of a corner";

/// Chamfer of the front edge.
pub const CHAMFER: Field =
    required("shaft.sections.chamfer", "width of a chamfer of 45° at the front end", "mm", 0.02, 20.0);
/// Chamfer of the front edge, in a map.
pub const CHAMFER_FRONT: Field = required("shaft.sections.chamfer.front", CHAMFER_WHAT, "mm", 0.02, 20.0);
/// Chamfer of the rear edge, in a map.
pub const CHAMFER_REAR: Field = required("shaft.sections.chamfer.rear", CHAMFER_WHAT, "mm", 0.02, 20.0);
/// Radius at the front end.
pub const RADIUS: Field =
    required("shaft.sections.radius", "radius of the front edge or of the corner in front", "mm", 0.02, 20.0);
/// Radius at the front end, in a map.
pub const RADIUS_FRONT: Field = required("shaft.sections.radius.front", RADIUS_WHAT, "mm", 0.02, 20.0);
/// Radius at the rear end, in a map.
pub const RADIUS_REAR: Field = required("shaft.sections.radius.rear", RADIUS_WHAT, "mm", 0.02, 20.0);
/// Allowance for grinding.
pub const GRIND: Field =
    required("shaft.sections.grind", "allowance on the diameter that is ground off later", "mm", 0.01, 3.0);
/// Roughness before grinding.
pub const TURNED_RA: Field =
    required("shaft.sections.turned_ra", "roughness Ra of the turned surface before grinding", "µm", 0.1, 50.0);
/// Inner diameter of the bar.
pub const STOCK_BORE: Field = optional("stock.bore", "inner diameter of a hollow bar", "mm", 0.0, 190.0, 0.0);
