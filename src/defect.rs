//! A fault of this program, which no input should cause.

/// What went wrong inside the program. It is never the user's fault.
#[derive(Debug, Clone, PartialEq)]
pub struct Defect(pub String);

impl std::fmt::Display for Defect {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Defect {}
