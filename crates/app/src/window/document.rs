//! The open plan and the file it belongs to.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use editor::Session;
use plan::Plan;

use crate::store::Stamp;

/// The open plan and the file it belongs to.
#[derive(Debug)]
pub struct Document {
    pub session: Session,
    /// Where it was opened from or saved to.
    pub file: Option<PlanFile>,
    /// The plan as it is in the file; the same pointer means nothing is unsaved.
    saved: Option<Arc<Plan>>,
    /// What the plan is called while it has no file.
    unnamed: &'static str,
}

/// A plan's file and what it looked like when it was last read or written.
#[derive(Clone, Debug)]
pub struct PlanFile {
    pub path: PathBuf,
    pub stamp: Option<Stamp>,
}

impl Document {
    /// A new plan, with nothing to save.
    pub fn empty() -> Document {
        Document::unnamed(Plan::default(), "New plan")
    }

    /// A sample plan: it has no file, and nothing to save until it is changed.
    pub fn sample(plan: Plan) -> Document {
        Document::unnamed(plan, "Sample plan")
    }

    fn unnamed(plan: Plan, unnamed: &'static str) -> Document {
        let session = Session::new(plan);
        let saved = Some(Arc::clone(session.plan()));
        Document { session, file: None, saved, unnamed }
    }

    /// A plan opened from a file.
    pub fn opened(plan: Plan, path: PathBuf, stamp: Stamp) -> Document {
        let file = Some(PlanFile { path, stamp: Some(stamp) });
        Document { file, ..Document::unnamed(plan, "") }
    }

    /// A plan from a recovery copy: unsaved. Its file, where it had one, is only named: saving asks
    /// under which name, so that the last saved version is not replaced unasked.
    pub fn recovered(plan: Plan) -> Document {
        Document { saved: None, ..Document::unnamed(plan, "Recovered plan") }
    }

    /// Whether the plan differs from its file.
    pub fn unsaved(&self) -> bool {
        !self.saved.as_ref().is_some_and(|saved| Arc::ptr_eq(saved, self.session.plan()))
    }

    /// Notes that `plan` is in the file now.
    pub fn now_saved(&mut self, plan: Arc<Plan>, path: PathBuf, stamp: Stamp) {
        self.saved = Some(plan);
        self.file = Some(PlanFile { path, stamp: Some(stamp) });
    }

    pub fn path(&self) -> Option<&Path> {
        self.file.as_ref().map(|f| f.path.as_path())
    }

    /// What the title bar calls the plan.
    pub fn name(&self) -> String {
        match self.path().and_then(Path::file_name) {
            Some(name) => name.to_string_lossy().into_owned(),
            None => self.unnamed.to_owned(),
        }
    }
}
