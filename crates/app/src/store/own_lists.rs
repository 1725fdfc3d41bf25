//! Lists of amendments in the user's own folder, to be used in one plan after the other.

use std::io;
use std::path::{Path, PathBuf};

use plan::Amendment;
use rules::Layer;

use super::save::replace;
use super::{amendments, state_dir};

/// A file of the folder: its list, or what is wrong with it.
#[derive(Debug)]
pub struct OwnList {
    pub path: PathBuf,
    pub list: Result<Layer, String>,
}

/// The folder of the user's own lists; `None` where the system names no folder for programs.
pub fn own_lists_dir() -> Option<PathBuf> {
    Some(state_dir()?.join("amendments"))
}

/// The lists of a folder, by file name. A folder that isn't there holds none.
pub fn own_lists(folder: &Path) -> Vec<OwnList> {
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let mut paths: Vec<PathBuf> = entries
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|e| e == "ron"))
        .collect();
    paths.sort();
    paths.into_iter().map(|path| OwnList { list: amendments(&path), path }).collect()
}

/// Keeps a list under a name; one that is there under the same name is replaced. The error is a sentence.
pub fn keep_list(folder: &Path, name: &str, list: &[Amendment]) -> Result<PathBuf, String> {
    let path = folder.join(format!("{}.ron", file_name(name)));
    let text = rules::write_amendments(name.trim(), list);
    let write = || -> io::Result<()> {
        std::fs::create_dir_all(folder)?;
        replace(&path, text.as_bytes())
    };
    match write() {
        Ok(()) => Ok(path),
        Err(e) => Err(format!(
            "{}: the list can't be written ({e}). It is still in the plan.",
            path.display()
        )),
    }
}

/// A name as a file name: letters and digits, lower case, with hyphens between.
fn file_name(name: &str) -> String {
    let plain = name.to_lowercase();
    let words: Vec<&str> =
        plain.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    if words.is_empty() { "list".to_owned() } else { words.join("-") }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sill(figure: &str) -> Amendment {
        Amendment {
            limit: "escape-sill".to_owned(),
            figure: figure.to_owned(),
            reason: "Handout \"7\", page 2".to_owned(),
        }
    }

    #[test]
    fn a_kept_list_is_listed_again_and_a_bad_one_says_where() {
        let dir = tempfile::tempdir().expect("a folder");
        let folder = dir.path().join("amendments");
        assert!(own_lists(&folder).is_empty());
        let path = keep_list(&folder, "Our Town / county", &[sill("48 in")]).expect("kept");
        assert!(path.ends_with("our-town-county.ron"));
        keep_list(&folder, "our town (county)", &[sill("46 in")]).expect("replaced");
        std::fs::write(
            folder.join("bad.ron"),
            "(place: \"X\",\n amendments: [(limit: \"no\", figure: \"1\", reason: \"r\")])",
        )
        .expect("written");
        std::fs::write(folder.join("note.txt"), "not a list").expect("written");
        let lists = own_lists(&folder);
        assert_eq!(lists.len(), 2);
        let bad = lists[0].list.as_ref().expect_err("a bad file");
        assert!(bad.contains("bad.ron:2: "), "{bad}");
        let good = lists[1].list.as_ref().expect("a good file");
        assert_eq!(good.place, "our town (county)");
        assert_eq!(good.entries().count(), 1);
    }

    #[test]
    fn a_folder_that_cannot_be_made_is_named() {
        let dir = tempfile::tempdir().expect("a folder");
        let file = dir.path().join("file");
        std::fs::write(&file, "").expect("written");
        let error = keep_list(&file, "A", &[]).expect_err("a file is no folder");
        assert!(error.contains("still in the plan"), "{error}");
    }
}
