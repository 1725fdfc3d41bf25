//! Saving a plan: all or nothing, with the version before it kept beside it.

use std::fs::{self, File, Metadata};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use plan::Plan;
use tempfile::NamedTempFile;

/// What a file looked like when it was last read or written, to notice that another program changed it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    len: u64,
    modified: Option<SystemTime>,
}

impl Stamp {
    pub(super) fn of(meta: &Metadata) -> Stamp {
        Stamp { len: meta.len(), modified: meta.modified().ok() }
    }

    /// The stamp of a file now; `None` when it is not there.
    pub fn read(path: &Path) -> Option<Stamp> {
        fs::metadata(path).ok().map(|meta| Stamp::of(&meta))
    }
}

/// Why a plan could not be saved. The file on the disk is as it was before.
#[derive(Debug, thiserror::Error)]
pub enum SaveError {
    #[error(
        "{}: the folder could not be written to ({cause}). Nothing was changed there; your plan is still open. Save it under another name or free some space.",
        .path.display()
    )]
    Unwritable { path: PathBuf, cause: io::Error },
    #[error(
        "{}: another program changed this file after it was opened. Save under another name to keep both.",
        .path.display()
    )]
    ChangedOnDisk { path: PathBuf },
}

/// Saves a plan, replacing what is there in one step. The version that was there stays beside it with `.bak` added to its name.
///
/// A symbolic link is followed: the file it points to is replaced, the link stays.
pub fn save(path: &Path, plan: &Plan) -> Result<Stamp, SaveError> {
    let target = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let unwritable = |cause| SaveError::Unwritable { path: path.to_owned(), cause };
    keep_backup(&target).map_err(unwritable)?;
    replace(&target, plan::file::write(plan).as_bytes()).map_err(unwritable)?;
    Stamp::read(&target)
        .ok_or_else(|| unwritable(io::Error::other("the saved file is not there any more")))
}

/// [`save`], but refuses when the file is not what it was when `stamp` was taken.
pub fn save_unchanged(path: &Path, plan: &Plan, stamp: Stamp) -> Result<Stamp, SaveError> {
    match Stamp::read(path) {
        Some(now) if now != stamp => Err(SaveError::ChangedOnDisk { path: path.to_owned() }),
        _ => save(path, plan),
    }
}

/// Puts `bytes` in place of the file at `target`, so that a reader sees the old or the new file, whole.
pub fn replace(target: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = match target.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let mut temp = NamedTempFile::new_in(folder)?;
    temp.write_all(bytes)?;
    match fs::metadata(target) {
        Ok(meta) => temp.as_file().set_permissions(meta.permissions())?,
        Err(_) => share_as_usual(&temp)?,
    }
    temp.as_file().sync_all()?;
    temp.persist(target).map_err(|e| e.error)?;
    sync_folder(folder);
    Ok(())
}

fn keep_backup(target: &Path) -> io::Result<()> {
    match fs::read(target) {
        Ok(bytes) => replace(&backup_path(target), &bytes),
        Err(e) if e.kind() == io::ErrorKind::NotFound => Ok(()),
        Err(e) => Err(e),
    }
}

/// The backup's path: the file's whole name with `.bak` added.
pub(super) fn backup_path(target: &Path) -> PathBuf {
    let mut name = target.as_os_str().to_owned();
    name.push(".bak");
    PathBuf::from(name)
}

/// A temporary file is private; a new plan file gets the permissions that any new file gets.
#[cfg(unix)]
fn share_as_usual(temp: &NamedTempFile) -> io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    let probe = temp.path().with_extension("mode");
    let mode = File::create_new(&probe).and_then(|f| f.metadata()).map(|m| m.permissions().mode());
    let _ = fs::remove_file(&probe);
    temp.as_file().set_permissions(fs::Permissions::from_mode(mode.unwrap_or(0o600)))
}

#[cfg(not(unix))]
fn share_as_usual(_temp: &NamedTempFile) -> io::Result<()> {
    Ok(())
}

/// Makes the new name in the folder last through a power cut, where the system can.
fn sync_folder(folder: &Path) {
    if let Ok(handle) = File::open(folder) {
        let _ = handle.sync_all();
    }
}
