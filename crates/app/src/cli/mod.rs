//! The command line. Everything but the window works without a display.

mod args;
mod carry;
mod check;
mod explain;
mod headroom;
mod rehearse;
mod report;
mod room_to_move;
mod sheets;
mod ways;

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::Path;
use std::sync::Arc;

use clap::Parser;
use plan::Plan;

pub use args::WindowArgs;
use args::{Args, Task};

use crate::store;

/// Stands under every report.
const CAUTION: &str = "A planning aid: model-code figures differ by place and edition, and your building department \
     decides. Structure, gas, service equipment, radon systems, asbestos and lead are work for licensed people.";

/// What `main` is to do.
#[derive(Debug)]
pub enum Invocation {
    /// Open the window.
    Window(WindowArgs),
    /// The command is done; end with this exit code.
    Done(u8),
}

/// Exit codes, the same for every command.
mod exit {
    pub const OK: u8 = 0;
    /// There are corrections, or an expectation of a script was not met.
    pub const CORRECTIONS: u8 = 1;
    pub const USAGE: u8 = 2;
    /// The file can't be read or written.
    pub const FILE: u8 = 4;
}

/// Runs one command line. `out` gets results, `err` gets what went wrong.
pub fn run<I>(args: I, out: &mut dyn Write, err: &mut dyn Write) -> Invocation
where
    I: IntoIterator<Item = OsString>,
{
    let args = match Args::try_parse_from(args) {
        Ok(args) => args,
        Err(e) => {
            // `--help` and `--version` come this way too, and are no error.
            let text = e.render().to_string();
            if e.use_stderr() {
                let _ = err.write_all(text.as_bytes());
                return Invocation::Done(exit::USAGE);
            }
            let _ = out.write_all(text.as_bytes());
            return Invocation::Done(exit::OK);
        }
    };
    let result = match args.task {
        None => return Invocation::Window(args.window),
        Some(Task::Check(task)) => check::run(&task, out, err),
        Some(Task::Ways(task)) => ways::run(&task, out, err),
        Some(Task::Carry(task)) => carry::run(&task, out, err),
        Some(Task::Headroom(task)) => headroom::run(&task, out, err),
        Some(Task::RoomToMove(task)) => room_to_move::run(&task, out, err),
        Some(Task::Sheets(task)) => sheets::run(&task, out, err),
        Some(Task::Explain(task)) => explain::run(&task, out, err),
        Some(Task::Rehearse(task)) => rehearse::run(&task, out, err),
    };
    // A closed pipe (`cellarwright check plan.ron | head -1`) is no error worth a message.
    Invocation::Done(result.unwrap_or(exit::OK))
}

/// The plan of a file; says what is wrong where it can't be opened.
fn open(path: &Path, err: &mut dyn Write) -> io::Result<Option<Arc<Plan>>> {
    match store::open(path) {
        Ok(opened) => Ok(Some(Arc::new(opened.plan))),
        Err(e) => writeln!(err, "{e}").map(|()| None),
    }
}
