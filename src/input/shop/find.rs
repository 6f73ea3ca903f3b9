//! Which file is the shop's: the one that the call names, else the one that the job names, else the first that lies in the folder of
//! the job or above it.

use std::path::{Component, Path, PathBuf};

use serde_saphyr::Spanned;

use crate::input::node::Node;

/// The usual name of the file.
const NAME: &str = "shop.yaml";

/// What a job says of the shop's file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(in crate::input) enum Which {
    /// Nothing: it is looked for.
    Looked,
    /// No shop's file counts for this job.
    None,
    /// This one, from the folder of the job.
    File(String),
}

/// What the tree of a job says of the shop's file.
pub(in crate::input) fn asked(job: &Spanned<Node>) -> Which {
    match job.value.get("shop").map(|given| &given.value) {
        Some(Node::Text(text)) if text.trim() == "none" => Which::None,
        Some(Node::Text(text)) => Which::File(text.trim().to_owned()),
        _ => Which::Looked,
    }
}

/// The shop's file in a folder or the nearest one above it.
pub(in crate::input) fn found(folder: &Path) -> Option<PathBuf> {
    let mut here = folder.to_owned();
    loop {
        let file = here.join(NAME);
        if file.is_file() {
            return Some(file);
        }
        here = above(&here)?;
    }
}

/// The folder above, written as briefly as the given one; none above the root.
fn above(folder: &Path) -> Option<PathBuf> {
    match folder.components().next_back() {
        Some(Component::Normal(_)) => folder.parent().map(Path::to_owned),
        Some(Component::RootDir | Component::Prefix(_)) => None,
        None | Some(Component::CurDir) => Some(PathBuf::from("..")),
        // A relative path ends where one more step up leads nowhere else.
        Some(Component::ParentDir) => {
            let up = folder.join("..");
            (up.canonicalize().ok()? != folder.canonicalize().ok()?).then_some(up)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_file_upwards_counts() {
        let root = tempfile::tempdir().expect("a folder");
        let jobs = root.path().join("jobs/rollers");
        std::fs::create_dir_all(&jobs).expect("folders");
        assert_eq!(above(Path::new("/")), None);
        assert_eq!(above(Path::new("a/b")), Some(PathBuf::from("a")));
        assert_eq!(above(Path::new("a")), Some(PathBuf::from("")));
        assert_eq!(above(Path::new(".")), Some(PathBuf::from("..")));
        assert_eq!(above(Path::new("")), Some(PathBuf::from("..")));
        std::fs::write(root.path().join(NAME), "name: far\n").expect("a file");
        assert_eq!(found(&jobs), Some(root.path().join(NAME)));
        std::fs::write(root.path().join("jobs").join(NAME), "name: near\n").expect("a file");
        assert_eq!(found(&jobs), Some(root.path().join("jobs").join(NAME)));
        assert_eq!(
            found(&root.path().join("jobs/rollers/../..")),
            Some(root.path().join("jobs/rollers/../..").join(NAME))
        );
    }
}
