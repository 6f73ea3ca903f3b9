//! Pure calculation: a stepped beam on springs with its static answers and modes, cutting forces, chatter, drilling,
//! threading, shaving, columns under an axial load, torsion.
//!
//! This module knows no lathe and no file. Units are mm, N, s and tonne (so N/mm² and t/mm³); angles are in rad.

pub mod banded;
pub mod beam;
pub mod chatter;
pub mod column;
pub mod cutting;
pub mod drilling;
pub mod factor;
pub mod milling;
pub mod modes;
pub mod overhang;
pub mod receptance;
pub mod shaving;
pub mod threading;
pub mod torsion;
