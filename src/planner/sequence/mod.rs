//! The sequence program: runs, the network of stages, and its best way.
//!
//! A run is travel from one station to another under one grip. A stage goes from one hand-over to the next. With a
//! bush, each edge of the network is a stage; without a bush, it is a piece of a stage, or the opening of the collet. A
//! way is a path of edges from the free start to the part-off.

pub mod layers;
pub mod network;
pub mod price;
pub mod runs;
pub mod unguided;
pub mod way;
