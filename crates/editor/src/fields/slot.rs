//! One field: where its value is kept, how it is read and written.

use measure::{Len, Precision, System};
use plan::detail::{Detail, Details};

use crate::entry::read_signed;

/// A place that holds a value.
pub(super) enum Slot<'a> {
    Len(&'a mut Len),
    /// A coordinate: a length in grid units.
    Coordinate(&'a mut i32),
    Count(&'a mut u32),
    Flag(&'a mut bool),
    Text(&'a mut String),
    /// One of several words.
    Choice(Box<dyn Choice + 'a>),
    /// Something that is stated or not.
    Detail(&'a mut Details, &'static Detail),
}

/// What is written for a detail of which nothing is stated.
const NOT_STATED: &str = "not stated";

/// Something with named fields.
pub(super) trait Fields: Sized + 'static {
    /// The fields in order. A field gives no slot where the thing does not have it at the moment, such as the
    /// width of a well that is not there.
    const TABLE: &'static [Field<Self>];
}

/// A field's name and where it is kept.
pub(super) type Field<T> = (&'static str, fn(&mut T) -> Option<Slot<'_>>);

/// The names of all fields of a kind of thing.
pub(super) fn names<T: Fields>() -> Vec<&'static str> {
    T::TABLE.iter().map(|(name, _)| *name).collect()
}

/// The field with a name; the error names the fields there are.
pub(super) fn slot<'a, T: Fields>(thing: &'a mut T, field: &str) -> Result<Slot<'a>, String> {
    let Some((name, get)) = T::TABLE.iter().find(|(name, _)| *name == field) else {
        let names = names::<T>().join(", ");
        return Err(format!("there is no field {field}; there are: {names}"));
    };
    get(thing).ok_or_else(|| format!("it has no {name} at the moment"))
}

/// A value that is one of several words.
pub(super) trait Choice {
    fn words(&self) -> Vec<&'static str>;
    fn word(&self) -> &'static str;
    /// Chooses by word; `false` when there is no such word.
    fn choose(&mut self, word: &str) -> bool;
}

/// A choice among a fixed list of values with their words.
struct Among<'a, T: 'static> {
    value: &'a mut T,
    list: &'static [T],
    word: fn(T) -> &'static str,
}

/// A choice whose values carry more than their word.
struct Kinds<'a, T> {
    value: &'a mut T,
    words: &'static [&'static str],
    word: fn(&T) -> &'static str,
    make: fn(&str, &T) -> T,
}

impl<'a> Slot<'a> {
    /// A choice among a fixed list of values with their words.
    pub fn among<T: Copy + PartialEq + 'static>(
        value: &'a mut T,
        list: &'static [T],
        word: fn(T) -> &'static str,
    ) -> Option<Slot<'a>> {
        Some(Slot::Choice(Box::new(Among { value, list, word })))
    }

    /// A choice whose values carry more than their word: `make` makes the value of a word from the old value.
    pub fn kinds<T>(
        value: &'a mut T,
        words: &'static [&'static str],
        word: fn(&T) -> &'static str,
        make: fn(&str, &T) -> T,
    ) -> Option<Slot<'a>> {
        Some(Slot::Choice(Box::new(Kinds { value, words, word, make })))
    }

    /// The value written out.
    pub fn write(&self, system: System, precision: Precision) -> String {
        match self {
            Slot::Len(len) => system.len(**len, precision),
            Slot::Coordinate(units) => system.len(Len::from_units(**units), precision),
            Slot::Count(n) => n.to_string(),
            Slot::Flag(flag) => if **flag { "yes" } else { "no" }.to_owned(),
            Slot::Text(text) => (*text).clone(),
            Slot::Choice(choice) => choice.word().to_owned(),
            Slot::Detail(details, detail) => match details.get(detail) {
                None => NOT_STATED.to_owned(),
                Some(value) => detail.say(value, system),
            },
        }
    }

    /// Reads a value in; the error says what is accepted and leaves the old value.
    pub fn read(&mut self, text: &str, system: System) -> Result<(), String> {
        match self {
            Slot::Len(len) => **len = read_signed(text, system)?,
            Slot::Coordinate(units) => **units = read_signed(text, system)?.units(),
            Slot::Count(n) => {
                **n = text.parse().map_err(|_| format!("{text} is not a whole number"))?;
            }
            Slot::Flag(flag) => {
                **flag = match text {
                    "yes" | "on" => true,
                    "no" | "off" => false,
                    _ => return Err(format!("{text} is neither yes nor no")),
                };
            }
            Slot::Text(value) => **value = text.to_owned(),
            Slot::Detail(details, detail) => {
                let value = match text {
                    NOT_STATED => None,
                    text => Some(detail.read(text, system)?),
                };
                details.set(detail, value);
            }
            Slot::Choice(choice) => {
                if !choice.choose(text) {
                    let words = choice.words().join(", ");
                    return Err(format!("{text} is not one of: {words}"));
                }
            }
        }
        Ok(())
    }

    /// Whether a written value is the one that is held.
    pub fn equals(&self, text: &str, system: System) -> Result<bool, String> {
        Ok(match self {
            Slot::Len(len) => **len == read_signed(text, system)?,
            Slot::Coordinate(units) => **units == read_signed(text, system)?.units(),
            Slot::Detail(details, detail) if text != NOT_STATED => {
                details.get(detail) == Some(detail.read(text, system)?)
            }
            _ => self.write(system, Precision::Fine) == text,
        })
    }
}

impl<T: Copy + PartialEq> Choice for Among<'_, T> {
    fn words(&self) -> Vec<&'static str> {
        self.list.iter().map(|value| (self.word)(*value)).collect()
    }

    fn word(&self) -> &'static str {
        (self.word)(*self.value)
    }

    fn choose(&mut self, word: &str) -> bool {
        let found = self.list.iter().find(|value| (self.word)(**value) == word);
        if let Some(found) = found {
            *self.value = *found;
        }
        found.is_some()
    }
}

impl<T> Choice for Kinds<'_, T> {
    fn words(&self) -> Vec<&'static str> {
        self.words.to_vec()
    }

    fn word(&self) -> &'static str {
        (self.word)(self.value)
    }

    fn choose(&mut self, word: &str) -> bool {
        let known = self.words.contains(&word);
        if known {
            *self.value = (self.make)(word, self.value);
        }
        known
    }
}
