//! A value as a person types it.

use measure::{BareUnit, System, read_len};

use super::{Detail, Kind, Value};

impl Detail {
    /// Reads a value; a bare length means inches or millimetres. The error is a sentence that says what is accepted.
    pub fn read(&self, text: &str, system: System) -> Result<Value, String> {
        let text = text.trim();
        match self.kind {
            Kind::YesNo => match text {
                "yes" => Ok(Value::Yes),
                "no" => Ok(Value::No),
                _ => Err(format!("“{text}” is neither yes nor no.")),
            },
            Kind::Choice(words) => match words.iter().find(|word| **word == text) {
                Some(word) => Ok(Value::Word(word)),
                None => Err(format!("“{text}” is not one of: {}.", words.join(", "))),
            },
            Kind::Length(bound) => {
                let bare = match system {
                    System::Imperial => BareUnit::Inches,
                    System::Metric => BareUnit::Millimetres,
                };
                let len = read_len(text, bare).map_err(|e| e.to_string())?;
                if bound.holds(len) {
                    return Ok(Value::Length(len));
                }
                Err(format!("The {} may be {}.", bound.what, bound.accepted(system)))
            }
            Kind::Number(bound, unit) => match text.trim_end_matches(unit).trim().parse::<u32>() {
                Ok(n) if bound.holds(n as usize) => Ok(Value::Number(n)),
                _ => Err(format!(
                    "“{text}” is not accepted: the {} is a whole number {bound}.",
                    bound.what
                )),
            },
        }
    }

    /// What its field accepts, as a sentence.
    pub fn accepted(&self, system: System) -> String {
        match self.kind {
            Kind::YesNo => "Yes or no.".to_owned(),
            Kind::Choice(words) => format!("One of: {}.", words.join(", ")),
            Kind::Length(bound) => format!("A length, {}.", bound.accepted(system)),
            Kind::Number(bound, "") => format!("A whole number {bound}."),
            Kind::Number(bound, unit) => format!("A whole number of {unit}, {bound}."),
        }
    }

    /// A value of this detail in words, with its unit.
    pub fn say(&self, value: Value, system: System) -> String {
        match (self.kind, value) {
            (Kind::Number(_, unit), Value::Number(_)) if !unit.is_empty() => {
                format!("{} {unit}", value.say(system))
            }
            _ => value.say(system),
        }
    }
}
