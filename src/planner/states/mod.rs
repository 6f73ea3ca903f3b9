//! What the states of a plan allow. Each state is worked out once and kept for every way through it.

mod demand;
mod events;
pub mod outlook;
pub mod piece;
