//! Which changes would help where there is no plan, and what each limit costs; both by planning with the change.

mod bars;
pub mod candidate;
pub mod candidates;
mod collets;
pub mod costs;
mod driven;
pub mod dropped;
pub mod lifting;
mod limits;
mod search;
mod set_ups;
pub mod sets;
pub mod tries;
pub mod works;
mod written;

#[cfg(test)]
mod tests;
