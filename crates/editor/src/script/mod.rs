//! The rehearse language: drives a session by a text of gestures, one command per line, and says after each
//! what changed and how long it took. Stable; described with every command in `docs/rehearse.md`.

mod changes;
mod command;
mod expect;
mod names;
mod parse;
mod run;

use std::fmt;

use crate::{Session, Work};

pub use command::FORMS as COMMANDS;
pub use expect::FORMS as EXPECTATIONS;
pub use run::run;

/// One command that was carried out.
#[derive(Clone, Debug)]
pub struct Step {
    /// Counted from 1.
    pub line: usize,
    /// The line as written, without its comment.
    pub command: String,
    /// What changed, in words, one line each; for `check` the findings.
    pub said: Vec<String>,
    pub work: Work,
}

/// What went wrong: a line that is not a command, or an expectation that is not met.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Counted from 1.
    pub line: usize,
    pub command: String,
    /// What is wrong, and what is known or was found instead.
    pub what: String,
    /// Whether the line was understood and an expectation was not met.
    pub unmet: bool,
}

/// What a script came to.
#[derive(Debug)]
pub struct Report {
    /// The commands carried out, in order. A script stops at its first problem.
    pub steps: Vec<Step>,
    pub problem: Option<Problem>,
    /// The session at the end.
    pub session: Session,
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {}\n  {}", self.line, self.command, self.what)
    }
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:>4}  {}", self.line, self.command)?;
        let ms = |part: std::time::Duration| part.as_secs_f64() * 1e3;
        if self.work.total() > std::time::Duration::ZERO {
            write!(
                f,
                "  [edit {:.3} ms, derive {:.3} ms, check {:.3} ms]",
                ms(self.work.edit),
                ms(self.work.derive),
                ms(self.work.check)
            )?;
        }
        for said in &self.said {
            write!(f, "\n        {said}")?;
        }
        Ok(())
    }
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for step in &self.steps {
            writeln!(f, "{step}")?;
        }
        match &self.problem {
            Some(problem) => writeln!(f, "{problem}"),
            None => Ok(()),
        }
    }
}
