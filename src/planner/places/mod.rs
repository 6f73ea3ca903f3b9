//! Where a plan can have its stops and grips, and what the proofs of earlier plans taught.

pub mod grips;
pub mod ground;
pub mod lessons;
pub mod stations;
