//! Pure numbers: a stepped beam on springs, its static answers and its modes, cutting forces, chatter, drilling,
//! threading, shaving.
//!
//! This room knows no lathe and no file. Units are mm, N, s, tonne (so N/mm² and t/mm³), angles in rad.

pub mod banded;
pub mod beam;
pub mod chatter;
pub mod cutting;
pub mod drilling;
pub mod factor;
pub mod milling;
pub mod modes;
pub mod overhang;
pub mod receptance;
pub mod shaving;
pub mod threading;
