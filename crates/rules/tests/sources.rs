//! Every source that a code file names stands in the list of sources.

#![allow(clippy::disallowed_methods, reason = "reads the code book's own files")]

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

#[test]
fn every_source_stands_in_the_list() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../assets/code");
    let list = fs::read_to_string(folder.join("sources.md")).expect("the list of sources");
    let listed: BTreeSet<&str> = list
        .lines()
        .filter_map(|line| line.strip_prefix("| ")?.split(" |").next())
        .flat_map(|keys| keys.split(", "))
        .collect();
    let mut files = 0;
    for file in fs::read_dir(&folder).expect("the code files").flatten() {
        if file.path().extension().is_none_or(|ext| ext != "ron") {
            continue;
        }
        files += 1;
        let text = fs::read_to_string(file.path()).expect("a code file");
        for rest in text.split("source: \"").skip(1) {
            let keys = rest.split('"').next().unwrap_or_default();
            for key in keys.split(", ").filter(|key| !key.is_empty()) {
                assert!(listed.contains(key), "{}: {key}", file.path().display());
            }
        }
    }
    assert!(files >= 7, "{files} code files");
}
