//! The stored plans of the demo jobs.

use spanhold::job::plan::Plan;

pub const STORED: [&str; 8] = [
    "bobbin-spindle",
    "collared-rod",
    "drive-hub",
    "feed-roller-shaft",
    "metering-spindle",
    "platen-shaft",
    "probe-needle",
    "scanner-rail",
];

/// One of them.
pub fn stored(name: &str) -> Plan {
    let text = std::fs::read_to_string(format!("plans/{name}/plan.json")).expect("a stored plan");
    serde_json::from_str(&text).expect("a plan")
}
