//! Finds the plan.

pub mod assemble;
pub mod draft;
pub mod frontier;
pub mod grips;
pub mod network;
pub mod outline;
pub mod outlook;
pub mod placing;
pub mod quote;
pub mod runs;
pub mod sequence;
pub mod settle;
pub mod solve;
pub mod stations;
