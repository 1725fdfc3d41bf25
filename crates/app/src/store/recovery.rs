//! Recovery copies: written while one works, found again after a crash.

use std::fs::{self, File, TryLockError};
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use plan::Plan;

use super::save::replace;

/// What the first line of a recovery copy begins with; the rest names the plan's file.
const HEAD: &str = "// Cellarwright recovery copy of ";
const UNNAMED: &str = "a plan without a name";

/// The folder for recovery copies: `CELLARWRIGHT_STATE` where it is set, else the system's state folder.
pub fn state_dir() -> Option<PathBuf> {
    if let Some(dir) = std::env::var_os("CELLARWRIGHT_STATE") {
        return Some(PathBuf::from(dir));
    }
    let dirs = directories::ProjectDirs::from("", "", "cellarwright")?;
    Some(dirs.state_dir().unwrap_or_else(|| dirs.data_local_dir()).to_owned())
}

/// The recovery copy of one running window. Its lock file tells other windows that it is in use; the
/// system lets go of the lock when the program ends, however it ends.
#[derive(Debug)]
pub struct Recovery {
    copy: PathBuf,
    lock_path: PathBuf,
    /// Held open for the lock.
    _lock: File,
}

/// A recovery copy that no running window owns.
#[derive(Debug)]
pub struct Orphan {
    pub copy: PathBuf,
    /// The plan's file, where it had one.
    pub of: Option<PathBuf>,
    pub modified: Option<SystemTime>,
    pub plan: Plan,
}

impl Recovery {
    /// Takes a free name in the folder, which is made where it is missing.
    pub fn start(folder: &Path) -> io::Result<Recovery> {
        fs::create_dir_all(folder)?;
        for n in 0.. {
            let lock_path = folder.join(format!("window-{n}.lock"));
            let copy = folder.join(format!("window-{n}.ron"));
            if copy.exists() {
                continue;
            }
            let lock = File::options().create(true).truncate(false).write(true).open(&lock_path)?;
            match lock.try_lock() {
                // Somebody may have left a copy between the two looks.
                Ok(()) if !copy.exists() => return Ok(Recovery { copy, lock_path, _lock: lock }),
                Ok(()) | Err(TryLockError::WouldBlock) => {}
                Err(TryLockError::Error(e)) => return Err(e),
            }
        }
        Err(io::Error::other("no free name for a recovery copy"))
    }

    /// Writes the copy, in one step. `of` is the plan's file.
    pub fn write(&self, of: Option<&Path>, plan: &Plan) -> io::Result<()> {
        self.write_text(of, &plan::file::write(plan))
    }

    /// [`Recovery::write`] for a plan that is written out already.
    pub fn write_text(&self, of: Option<&Path>, text: &str) -> io::Result<()> {
        let name = of.map_or_else(
            || UNNAMED.to_owned(),
            |p| serde_json::Value::from(p.to_string_lossy()).to_string(),
        );
        replace(&self.copy, format!("{HEAD}{name}\n{text}").as_bytes())
    }

    /// Removes the copy: the plan is saved, or the user gave it up.
    pub fn clear(&self) -> io::Result<()> {
        match fs::remove_file(&self.copy) {
            Err(e) if e.kind() != io::ErrorKind::NotFound => Err(e),
            _ => Ok(()),
        }
    }

    /// Where the copy is written, to name it in a message.
    pub fn path(&self) -> &Path {
        &self.copy
    }

    /// Copies in the folder that no running window owns and that can be read, newest first.
    pub fn orphans(folder: &Path) -> Vec<Orphan> {
        let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
        let mut orphans: Vec<Orphan> = entries
            .filter_map(|entry| Some(entry.ok()?.path()))
            .filter(|path| path.extension().is_some_and(|e| e == "ron") && is_free(path))
            .filter_map(Orphan::read)
            .collect();
        orphans.sort_by(|a, b| (b.modified, &a.copy).cmp(&(a.modified, &b.copy)));
        orphans
    }
}

impl Drop for Recovery {
    fn drop(&mut self) {
        // The copy stays unless it was cleared: it may be all that is left.
        if !self.copy.exists() {
            let _ = fs::remove_file(&self.lock_path);
        }
    }
}

impl Orphan {
    fn read(copy: PathBuf) -> Option<Orphan> {
        let opened = super::open(&copy).ok()?;
        let text = fs::read_to_string(&copy).ok()?;
        let head = text.lines().next()?.strip_prefix(HEAD)?;
        let of = (head != UNNAMED)
            .then(|| serde_json::from_str::<String>(head).ok().map(PathBuf::from))
            .flatten();
        let modified = fs::metadata(&copy).and_then(|m| m.modified()).ok();
        Some(Orphan { copy, of, modified, plan: opened.plan })
    }

    /// Gives the copy up for good.
    pub fn discard(&self) -> io::Result<()> {
        fs::remove_file(&self.copy)?;
        let _ = fs::remove_file(self.copy.with_extension("lock"));
        Ok(())
    }
}

fn is_free(copy: &Path) -> bool {
    match File::options().write(true).open(copy.with_extension("lock")) {
        Ok(lock) => lock.try_lock().is_ok(),
        // No lock file, or one that is not ours to open: nobody holds it.
        Err(_) => true,
    }
}
