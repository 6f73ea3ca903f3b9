//! What the states of a plan allow: asked once, and kept for every way that runs through them.

mod demand;
mod events;
pub mod outlook;
pub mod piece;
