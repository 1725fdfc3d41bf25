//! The recovery copy: written while one works and in the panic hook, removed once the plan is safe.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Sender, channel};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

use plan::Plan;

use super::document::Document;
use crate::store::{Orphan, Recovery, state_dir};

/// A copy is written this long after the first change that it lacks: well within 5 s.
const DELAY: Duration = Duration::from_secs(2);

/// What the panic hook writes.
static LATEST: Mutex<Option<Latest>> = Mutex::new(None);

#[derive(Clone, Debug)]
struct Latest {
    recovery: Arc<Recovery>,
    of: Option<PathBuf>,
    plan: Arc<Plan>,
    unsaved: bool,
}

/// Keeps the recovery copy of this window.
#[derive(Debug)]
pub struct Autosave {
    recovery: Option<Arc<Recovery>>,
    /// The plan in the copy, or waiting to be written.
    copied: Option<Arc<Plan>>,
    changed_at: Option<Instant>,
    seen: Option<Arc<Plan>>,
    writer: Option<(Sender<Latest>, JoinHandle<()>)>,
}

impl Autosave {
    /// Takes a free name for the copy in the system's folder. Where there is none to write to, no copy is
    /// kept: see [`Autosave::keeps`].
    pub fn start() -> Autosave {
        state_dir().map_or_else(Autosave::none, |folder| Autosave::start_in(&folder))
    }

    /// The same in another folder.
    pub fn start_in(folder: &Path) -> Autosave {
        match Recovery::start(folder) {
            Ok(recovery) => {
                let mut autosave = Autosave::none();
                autosave.recovery = Some(Arc::new(recovery));
                autosave.writer = Some(spawn_writer());
                autosave
            }
            Err(why) => {
                log::warn!("{}: no recovery copy can be kept: {why}", folder.display());
                Autosave::none()
            }
        }
    }

    /// Whether a copy is kept.
    pub fn keeps(&self) -> bool {
        self.recovery.is_some()
    }

    /// Keeps no copy.
    pub fn none() -> Autosave {
        Autosave { recovery: None, copied: None, changed_at: None, seen: None, writer: None }
    }

    /// Copies left by windows that ended without saving.
    pub fn orphans() -> Vec<Orphan> {
        state_dir().map(|folder| Recovery::orphans(&folder)).unwrap_or_default()
    }

    /// Looks whether a copy is due, and hands it to the writer. Gives the time until the next look.
    pub fn tend(&mut self, document: &Document) -> Option<Duration> {
        let recovery = Arc::clone(self.recovery.as_ref()?);
        let plan = document.session.plan();
        if !same(&self.seen, plan) {
            self.seen = Some(Arc::clone(plan));
            self.note(&recovery, document);
            if document.unsaved() {
                self.changed_at.get_or_insert_with(Instant::now);
            }
        }
        if !document.unsaved() || same(&self.copied, plan) {
            self.changed_at = None;
            return None;
        }
        let due = self.changed_at.get_or_insert_with(Instant::now).elapsed();
        if due < DELAY {
            return Some(DELAY - due);
        }
        self.changed_at = None;
        self.copied = Some(Arc::clone(plan));
        if let Some((send, _)) = &self.writer {
            let latest = Latest {
                recovery,
                of: document.path().map(ToOwned::to_owned),
                plan: Arc::clone(plan),
                unsaved: true,
            };
            if send.send(latest).is_err() {
                log::warn!("the recovery copy is not being written any more");
            }
        }
        None
    }

    /// Writes the copy at once; gives whether it is on the disk.
    pub fn copy_now(&mut self, document: &Document) -> bool {
        let Some(recovery) = self.recovery.clone() else { return false };
        let plan = document.session.plan();
        let written = recovery.write(document.path(), plan).is_ok();
        if written {
            self.copied = Some(Arc::clone(plan));
        }
        self.note(&recovery, document);
        written
    }

    /// Tells the panic hook what to write.
    fn note(&self, recovery: &Arc<Recovery>, document: &Document) {
        let latest = Latest {
            recovery: Arc::clone(recovery),
            of: document.path().map(ToOwned::to_owned),
            plan: Arc::clone(document.session.plan()),
            unsaved: document.unsaved(),
        };
        *LATEST.lock().unwrap_or_else(PoisonError::into_inner) = Some(latest);
    }

    /// The plan is safe, or the user gave it up: the copy goes.
    pub fn clear(&mut self, document: &Document) {
        self.changed_at = None;
        self.copied = None;
        self.seen = Some(Arc::clone(document.session.plan()));
        self.flush();
        if let Some(recovery) = &self.recovery {
            *LATEST.lock().unwrap_or_else(PoisonError::into_inner) = None;
            if let Err(e) = recovery.clear() {
                log::warn!(
                    "{}: the recovery copy could not be removed: {e}",
                    recovery.path().display()
                );
            }
        }
    }

    /// Waits until the writer has nothing left to do.
    fn flush(&mut self) {
        if let Some((send, thread)) = self.writer.take() {
            drop(send);
            let _ = thread.join();
            self.writer = Some(spawn_writer());
        }
    }
}

impl Drop for Autosave {
    fn drop(&mut self) {
        if let Some((send, thread)) = self.writer.take() {
            drop(send);
            let _ = thread.join();
        }
    }
}

fn same(held: &Option<Arc<Plan>>, plan: &Arc<Plan>) -> bool {
    held.as_ref().is_some_and(|held| Arc::ptr_eq(held, plan))
}

fn spawn_writer() -> (Sender<Latest>, JoinHandle<()>) {
    let (send, wanted) = channel::<Latest>();
    let thread = std::thread::spawn(move || {
        while let Ok(mut latest) = wanted.recv() {
            // Only the newest matters.
            while let Ok(newer) = wanted.try_recv() {
                latest = newer;
            }
            if let Err(e) = latest.recovery.write(latest.of.as_deref(), &latest.plan) {
                log::warn!("{}: {e}", latest.recovery.path().display());
            }
        }
    });
    (send, thread)
}

/// Writes the recovery copy when the program stops with a panic, and says where it lies.
pub fn write_in_panic() -> Option<PathBuf> {
    let latest = match LATEST.try_lock() {
        Ok(held) => held.clone(),
        Err(std::sync::TryLockError::Poisoned(held)) => held.into_inner().clone(),
        Err(std::sync::TryLockError::WouldBlock) => None,
    }?;
    if !latest.unsaved {
        return None;
    }
    latest.recovery.write(latest.of.as_deref(), &latest.plan).ok()?;
    Some(latest.recovery.path().to_owned())
}

#[cfg(test)]
mod tests {
    use editor::Session;
    use geometry::Pt;
    use plan::element::{Body, Note};
    use plan::{Draft, Edit, State};

    use super::*;

    fn changed() -> Document {
        let mut document = Document::empty();
        let note = Note { at: Pt::inches(1, 2), text: "damp corner".into() };
        let draft = Draft::new(State::New, Body::Note(note));
        let session: &mut Session = &mut document.session;
        session.apply("Add a note", &Edit::Add(draft)).expect("a note can be added");
        document
    }

    fn copies(folder: &Path) -> usize {
        let files = std::fs::read_dir(folder).expect("the folder is there");
        files
            .filter(|f| f.as_ref().is_ok_and(|f| f.path().extension().is_some_and(|e| e == "ron")))
            .count()
    }

    #[test]
    fn a_change_is_copied_within_five_seconds_or_in_a_panic_and_the_copy_goes_when_it_is_safe() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut autosave = Autosave::start_in(folder.path());
        assert_eq!(autosave.tend(&Document::empty()), None, "nothing to copy");
        let document = changed();
        let wait = autosave.tend(&document).expect("a look is due");
        assert!(wait <= Duration::from_secs(4), "{wait:?}");
        assert_eq!(copies(folder.path()), 0);
        assert!(autosave.copy_now(&document));
        assert_eq!(copies(folder.path()), 1);
        assert_eq!(autosave.tend(&document), None, "it is copied already");
        autosave.clear(&document);
        assert_eq!(copies(folder.path()), 0);

        // In the same test, because the panic hook's plan is one for the whole program.
        let document = changed();
        autosave.tend(&document);
        let copy = write_in_panic().expect("a copy is written");
        let opened = crate::store::open(&copy).expect("the copy is a plan");
        assert_eq!(&opened.plan, &**document.session.plan());
        autosave.clear(&document);
        assert_eq!(write_in_panic(), None, "nothing is unsaved any more");
    }
}
