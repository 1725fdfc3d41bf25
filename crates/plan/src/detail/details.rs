//! The details that are stated about one thing, and how a file writes them.

use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, MapAccess, Visitor};
use serde::ser::{Serialize, SerializeMap, Serializer};

use super::{Detail, Kind, Value, named};
use crate::element::Body;
use crate::file::length::L;

/// What is stated about an element or the site, in the order of the details' names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Details(Vec<(&'static Detail, Value)>);

impl Details {
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// What is stated of a detail.
    pub fn get(&self, detail: &Detail) -> Option<Value> {
        let at = self.0.binary_search_by(|(d, _)| d.slug.cmp(detail.slug)).ok()?;
        Some(self.0[at].1)
    }

    /// States a detail, or with `None` takes the statement back.
    pub fn set(&mut self, detail: &'static Detail, value: Option<Value>) {
        match (self.0.binary_search_by(|(d, _)| d.slug.cmp(detail.slug)), value) {
            (Ok(at), Some(value)) => self.0[at].1 = value,
            (Ok(at), None) => drop(self.0.remove(at)),
            (Err(at), Some(value)) => self.0.insert(at, (detail, value)),
            (Err(_), None) => {}
        }
    }

    /// The same with a detail stated.
    pub fn with(mut self, detail: &'static Detail, value: Value) -> Details {
        self.set(detail, Some(value));
        self
    }

    pub fn iter(&self) -> impl Iterator<Item = (&'static Detail, Value)> {
        self.0.iter().copied()
    }

    /// Leaves out what can't be stated about an element.
    pub(crate) fn keep_fitting(&mut self, body: &Body) {
        self.0.retain(|(detail, _)| detail.fits(body));
    }
}

/// A value in a file.
#[derive(serde::Serialize, serde::Deserialize)]
enum Written {
    Yes,
    No,
    Is(String),
    Length(L),
    Number(u32),
}

impl From<Value> for Written {
    fn from(value: Value) -> Written {
        match value {
            Value::Yes => Written::Yes,
            Value::No => Written::No,
            Value::Word(word) => Written::Is(word.to_owned()),
            Value::Length(len) => Written::Length(L(len)),
            Value::Number(n) => Written::Number(n),
        }
    }
}

impl Written {
    fn of(self, detail: &Detail) -> Option<Value> {
        Some(match (self, detail.kind) {
            (Written::Yes, _) => Value::Yes,
            (Written::No, _) => Value::No,
            (Written::Is(word), Kind::Choice(words)) => {
                Value::Word(words.iter().find(|w| **w == word)?)
            }
            (Written::Is(_), _) => return None,
            (Written::Length(len), _) => Value::Length(len.0),
            (Written::Number(n), _) => Value::Number(n),
        })
    }
}

impl Serialize for Details {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (detail, value) in self.iter() {
            map.serialize_entry(detail.slug, &Written::from(value))?;
        }
        map.end()
    }
}

impl<'de> Deserialize<'de> for Details {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Details, D::Error> {
        struct Reader;

        impl<'de> Visitor<'de> for Reader {
            type Value = Details;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("details, such as {\"fuel\": Is(\"gas\")}")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Details, A::Error> {
                let mut details = Details::default();
                while let Some(slug) = map.next_key::<String>()? {
                    let Some(detail) = named(&slug) else {
                        return Err(A::Error::custom(format!(
                            "there is no detail \"{slug}\"; take it out, or open the plan with the program that wrote it"
                        )));
                    };
                    if details.get(detail).is_some() {
                        return Err(A::Error::custom(format!(
                            "the detail \"{slug}\" is stated twice; keep one of the two"
                        )));
                    }
                    let value = map.next_value::<Written>()?.of(detail);
                    let Some(value) = value.filter(|v| detail.takes(*v)) else {
                        let accepted = detail.accepted(measure::System::Imperial);
                        return Err(A::Error::custom(format!(
                            "the detail \"{slug}\" can't be that; it takes: {accepted}"
                        )));
                    };
                    details.set(detail, Some(value));
                }
                Ok(details)
            }
        }

        deserializer.deserialize_map(Reader)
    }
}
