//! The sequence program: runs, the network of stages, and its best way.
//!
//! A run is travel from one station to another under one grip. A stage goes from one hand-over to the next; it is an
//! edge of the network. A way is a path of edges from the free start to the part-off.

pub mod layers;
pub mod network;
pub mod price;
pub mod runs;
pub mod unguided;
pub mod way;
