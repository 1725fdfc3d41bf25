//! What permit desks ask of a drawing, demand by demand, and what answers it.
//!
//! The lists are data (`assets/desk`): demands in our own words with who asks. They change; the department decides.

mod answers;
mod lists;

use serde::Deserialize;

use crate::kinds::Context;
use crate::set::Options;
use lists::{Demand, lists};

/// How much of a department's list was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
pub enum Seen {
    Full,
    Cut,
    Thin,
    SecondHand,
    Unknown,
}

/// A department or another body with a list.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Department {
    /// Three letters.
    pub code: String,
    pub name: String,
    pub publisher: String,
    pub title: String,
    /// Of the list, not of the code that it follows.
    pub year: Option<u16>,
    pub url: String,
    pub seen: Seen,
    /// A list for alterations in general.
    pub general: bool,
    pub scales: Vec<String>,
    pub papers: Vec<String>,
    pub sets: Option<u32>,
    pub notes: Vec<String>,
}

/// What of a demand is met.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// It stands on the sheet of this number.
    Shown(String),
    /// A rule in words that the checks hold to be met.
    Held,
    /// Findings say that it is not met, or that it has to be looked at: so many corrections and questions.
    Open { corrections: usize, questions: usize },
    /// It is missing: what, and where it is entered.
    Missing { what: &'static str, enter: &'static str },
    /// The plan has nothing that it would concern.
    NothingSuch(&'static str),
    /// The program does not make it: what to hand in instead.
    Elsewhere(&'static str),
    /// Not about the drawing.
    Reminder,
}

/// A demand with its answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answered {
    pub id: &'static str,
    pub words: &'static str,
    /// `floor plan`, `egress`, `format`, ...
    pub group: &'static str,
    pub answer: Answer,
    /// How many of the 73 lists ask for it.
    pub asked_by: usize,
}

/// The answers to one list, or to all demands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Desk {
    /// The department; `None` for the general list: whatever anybody asks.
    pub department: Option<&'static Department>,
    pub answers: Vec<Answered>,
}

impl Answer {
    /// One line for people.
    pub fn say(&self) -> String {
        match self {
            Answer::Shown(sheet) => format!("on sheet {sheet}"),
            Answer::Held => "met by the checks".to_owned(),
            Answer::Open { corrections, questions } => {
                let of = |n: &usize, one: &str, more: &str| match n {
                    0 => None,
                    1 => Some(format!("1 {one}")),
                    n => Some(format!("{n} {more}")),
                };
                let parts = [
                    of(corrections, "correction", "corrections"),
                    of(questions, "question", "questions"),
                ];
                format!("open: {}", parts.into_iter().flatten().collect::<Vec<_>>().join(", "))
            }
            Answer::Missing { what, enter } => format!("missing: {what}. {enter}"),
            Answer::NothingSuch(what) => format!("does not apply: {what}"),
            Answer::Elsewhere(what) => format!("not made here: {what}"),
            Answer::Reminder => "a reminder, not about the drawing".to_owned(),
        }
    }

    /// Whether something is left to do on the drawing.
    pub fn is_gap(&self) -> bool {
        matches!(self, Answer::Missing { .. } | Answer::Open { .. })
    }
}

impl Desk {
    /// How many demands have something left to do.
    pub fn gaps(&self) -> usize {
        self.answers.iter().filter(|a| a.answer.is_gap()).count()
    }
}

/// Every department, by its name.
pub fn departments() -> &'static [Department] {
    &lists().departments
}

/// The department of a code, in capitals or not.
pub fn department(code: &str) -> Option<&'static Department> {
    departments().iter().find(|d| d.code.eq_ignore_ascii_case(code))
}

pub(crate) fn check(context: &Context<'_>, options: &Options) -> Desk {
    let department = options.list.as_deref().and_then(department);
    let asks = |d: &&Demand| department.is_none_or(|of| d.asked_by.contains(&of.code));
    let answers = lists()
        .demands
        .iter()
        .filter(asks)
        .map(|demand| Answered {
            id: &demand.id,
            words: &demand.words,
            group: demand.group.word(),
            answer: answers::answer(context, (department, options.one_sheet), demand),
            asked_by: demand.asked_by.len(),
        })
        .collect();
    Desk { department, answers }
}
