//! Materials: what the beam and the cut need to know.

/// A material.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Material {
    /// Name.
    pub name: String,
    /// Young's modulus in GPa.
    pub e_gpa: f64,
    /// Density in kg/m³.
    pub density_kg_per_m3: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Specific cutting force at 1 mm chip thickness, N/mm².
    pub kc11_n_per_mm2: f64,
    /// Exponent of the chip thickness.
    pub mc: f64,
    /// Usual cutting speeds, low and high, m/min.
    pub vc_m_per_min: Option<(f64, f64)>,
}
