//! What is stated of a detail.

use measure::{Len, Precision, System};

/// A stated value.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Value {
    Yes,
    No,
    /// One of the detail's words.
    Word(&'static str),
    Length(Len),
    /// In the detail's unit.
    Number(u32),
}

impl Value {
    /// The value in words; a number without its unit.
    pub fn say(self, system: System) -> String {
        match self {
            Value::Yes => "yes".to_owned(),
            Value::No => "no".to_owned(),
            Value::Word(word) => word.to_owned(),
            Value::Length(len) => system.inches(len, Precision::Fine),
            Value::Number(n) => n.to_string(),
        }
    }

    pub fn yes(self) -> Option<bool> {
        match self {
            Value::Yes => Some(true),
            Value::No => Some(false),
            _ => None,
        }
    }

    pub fn len(self) -> Option<Len> {
        match self {
            Value::Length(len) => Some(len),
            _ => None,
        }
    }

    pub fn number(self) -> Option<u32> {
        match self {
            Value::Number(n) => Some(n),
            _ => None,
        }
    }

    pub fn word(self) -> Option<&'static str> {
        match self {
            Value::Word(word) => Some(word),
            _ => None,
        }
    }
}
