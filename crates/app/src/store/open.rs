//! Opening a plan file.

use std::fs::File;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use plan::Plan;

use super::Stamp;

/// The largest plan file that is read: 32 MiB, some hundred thousand elements.
const LARGEST: u64 = 32 << 20;

/// A plan as opened, with what the file looked like then.
#[derive(Debug)]
pub struct Opened {
    pub plan: Plan,
    pub stamp: Stamp,
}

/// Why a plan could not be opened. `Display` says which file, what is wrong and what to do.
#[derive(Debug, thiserror::Error)]
pub enum OpenError {
    #[error("{}: there is no such file. Check the name, or start a new plan.", .0.display())]
    Missing(PathBuf),
    #[error("{}: this is a folder. Name the plan file in it.", .0.display())]
    Folder(PathBuf),
    #[error("{}: the file could not be read ({cause}). Check its permissions and the disk.", .path.display())]
    Unreadable { path: PathBuf, cause: io::Error },
    #[error(
        "{}: the file is over {} MiB, which no plan is. Is it the right file?",
        .path.display(),
        .limit >> 20
    )]
    TooLarge { path: PathBuf, limit: u64 },
    #[error("{}: this is not a text file, so it is not a plan. Is it the right file?", .0.display())]
    NotText(PathBuf),
    #[error("{}{} {cause}", .path.display(), if .cause.place.is_some() { "," } else { ":" })]
    Content { path: PathBuf, cause: plan::file::FileError },
}

/// Opens a plan file. Whatever it holds, this gives a plan or an error and never panics.
pub fn open(path: &Path) -> Result<Opened, OpenError> {
    open_limited(path, LARGEST)
}

/// [`open`] with another size limit, in bytes.
pub fn open_limited(path: &Path, limit: u64) -> Result<Opened, OpenError> {
    let unreadable = |cause| OpenError::Unreadable { path: path.to_owned(), cause };
    let file = File::open(path).map_err(|cause| match cause.kind() {
        io::ErrorKind::NotFound => OpenError::Missing(path.to_owned()),
        _ => unreadable(cause),
    })?;
    let meta = file.metadata().map_err(unreadable)?;
    if meta.is_dir() {
        return Err(OpenError::Folder(path.to_owned()));
    }
    let mut bytes = Vec::new();
    // A device or pipe tells no length, so the limit holds for what is read.
    file.take(limit + 1).read_to_end(&mut bytes).map_err(unreadable)?;
    if bytes.len() as u64 > limit {
        return Err(OpenError::TooLarge { path: path.to_owned(), limit });
    }
    let text = String::from_utf8(bytes).map_err(|_| OpenError::NotText(path.to_owned()))?;
    let plan = plan::file::read(&text)
        .map_err(|cause| OpenError::Content { path: path.to_owned(), cause })?;
    Ok(Opened { plan, stamp: Stamp::of(&meta) })
}
