//! The system's file dialogs, asked for on a thread so that the window never waits for them.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};

/// The ending of a plan file.
pub const ENDING: &str = "ron";

/// What a file is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Purpose {
    Open,
    Save,
}

/// What happens once the plan is safe.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Then {
    Stay,
    New,
    Sample,
    /// Ask for a file and open it.
    Open,
    OpenPath(PathBuf),
    Quit,
}

/// A file dialog that is up.
#[derive(Debug)]
pub struct Pending {
    pub purpose: Purpose,
    pub then: Then,
    answer: Receiver<Option<PathBuf>>,
    since: Instant,
    /// The field for the path has been offered beside it.
    pub offered: bool,
}

/// How a file dialog ended, or stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reply {
    Waiting,
    /// It has been up for a while; it may be hidden, or the system may have none.
    Slow,
    Chosen(PathBuf),
    Cancelled,
    /// It ended before a person could have answered: the system has no file dialog.
    Missing,
}

/// No person cancels a dialog faster than this.
const TOO_FAST: Duration = Duration::from_millis(150);
/// After this, a field for the path is offered.
const SLOW: Duration = Duration::from_secs(3);

impl Pending {
    /// Puts a dialog up.
    pub fn start(
        ctx: &egui::Context,
        purpose: Purpose,
        then: Then,
        near: Option<&Path>,
    ) -> Pending {
        let (send, answer) = channel();
        let ctx = ctx.clone();
        let mut dialog = rfd::FileDialog::new().add_filter("Plan", &[ENDING]);
        if let Some(folder) = near.and_then(Path::parent).filter(|f| f.is_dir()) {
            dialog = dialog.set_directory(folder);
        }
        let name = near.and_then(Path::file_name).map(|n| n.to_string_lossy().into_owned());
        let name = name.unwrap_or_else(|| format!("plan.{ENDING}"));
        std::thread::spawn(move || {
            let chosen = match purpose {
                Purpose::Open => dialog.set_title("Open a plan").pick_file(),
                Purpose::Save => dialog.set_title("Save the plan").set_file_name(name).save_file(),
            };
            // Nobody listens any more when the window was closed meanwhile.
            let _ = send.send(chosen);
            ctx.request_repaint();
        });
        Pending { purpose, then, answer, since: Instant::now(), offered: false }
    }

    /// How the dialog stands.
    pub fn poll(&self) -> Reply {
        match self.answer.try_recv() {
            Ok(Some(path)) => Reply::Chosen(path),
            Ok(None) | Err(TryRecvError::Disconnected) if self.since.elapsed() < TOO_FAST => {
                Reply::Missing
            }
            Ok(None) | Err(TryRecvError::Disconnected) => Reply::Cancelled,
            Err(TryRecvError::Empty) if self.since.elapsed() >= SLOW => Reply::Slow,
            Err(TryRecvError::Empty) => Reply::Waiting,
        }
    }

    /// When the dialog becomes [`Reply::Slow`].
    pub fn slow_in(&self) -> Duration {
        SLOW.saturating_sub(self.since.elapsed())
    }
}

/// A typed or chosen path with the ending of plans where it has none.
pub fn with_ending(path: PathBuf) -> PathBuf {
    match path.extension() {
        Some(_) => path,
        None => path.with_extension(ENDING),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_without_an_ending_gets_one() {
        assert_eq!(with_ending(PathBuf::from("cellar")), PathBuf::from("cellar.ron"));
        assert_eq!(with_ending(PathBuf::from("cellar.txt")), PathBuf::from("cellar.txt"));
    }
}
