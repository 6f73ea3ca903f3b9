//! The sequence program: runs of a grip, the network of them, and its best way.

pub mod layers;
pub mod network;
pub mod price;
pub mod runs;
pub mod unguided;
pub mod way;
