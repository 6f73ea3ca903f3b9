//! From a way to a plan: stops and grips are moved for the largest margin, speeds and checks are settled, and the plan
//! is written.

pub mod assemble;
pub mod draft;
pub mod notes;
pub mod outline;
pub mod placing;
pub mod settle;
mod tools;
