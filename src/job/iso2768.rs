//! General tolerances of ISO 2768-1, class m, for diameters whose tolerance is not given.

use super::shaft::Tolerance;
use crate::diag::Diag;
use crate::say;

/// The label of such a tolerance.
pub const LABEL: &str = "ISO 2768-m";

/// Sizes up to and including (mm), and their deviation (± mm). From memory of ISO 2768-1, table 1, class m; not
/// re-read.
const CLASS_M: [(f64, f64); 5] = [(6.0, 0.1), (30.0, 0.2), (120.0, 0.3), (400.0, 0.5), (1000.0, 0.8)];

/// Below this size the standard gives no deviations. They must be written beside the size.
pub const FROM_MM: f64 = 0.5;

/// General tolerance, class m, of a diameter or length.
///
/// - **Units**: mm.
/// - **Source**: from memory of ISO 2768-1, table 1, class m; not re-read.
///
/// ```
/// use spanhold::job::iso2768::limits;
/// assert_eq!(limits(6.0)?.upper_mm, 0.1);
/// assert_eq!(limits(6.1)?.upper_mm, 0.2);
/// assert!(limits(0.4).is_err());
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// The size is below 0.5 mm, where the standard asks for deviations beside the size, or over 1000 mm.
pub fn limits(size_mm: f64) -> Result<Tolerance, Diag> {
    if size_mm < FROM_MM {
        return Err(Diag::new(say!("general-too-small", size = size_mm.to_string(), from = FROM_MM.to_string()))
            .help(say!("general-too-small-help")));
    }
    match CLASS_M.iter().find(|(up_to, _)| size_mm <= *up_to) {
        Some((_, deviation)) => Ok(Tolerance { lower_mm: -deviation, upper_mm: *deviation, label: LABEL.to_owned() }),
        None => {
            Err(Diag::new(say!("general-too-large", size = size_mm.to_string())).help(say!("general-too-large-help")))
        }
    }
}
