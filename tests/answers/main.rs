//! What whole jobs and readings are answered with: a part with all its works, wishes, what stops a job, stiffnesses from measured values.

mod fit;
mod rod;
mod shortfall;
mod whole_part;
mod wishes;
