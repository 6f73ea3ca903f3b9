//! From a way to a plan: its places moved for the largest margin, its speeds and checks settled, all of it told.

pub mod assemble;
pub mod draft;
pub mod outline;
pub mod placing;
pub mod settle;
