//! Why there is no plan: how far the bar comes, and what stops it there.

pub mod blocked;
pub mod farthest;
pub mod frontier;
pub mod hold;
pub mod no_hold;
pub mod shortfall;
mod unguided;
pub mod walk;
pub mod wished;
