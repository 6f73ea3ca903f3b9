//! Which changes would help where there is no plan, and what each limit costs; both by planning with the change.

pub mod candidate;
pub mod candidates;
pub mod changes;
pub mod costs;
mod driven;
pub mod dropped;
pub mod pairs;
pub mod tries;
pub mod works;

#[cfg(test)]
mod tests;
