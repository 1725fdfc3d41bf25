//! Writes a value on one line.

use std::fmt::{self, Display, Write};

use serde::ser::{self, Serialize, Serializer};

/// Adds a value to a text, on one line.
pub(in super::super) fn write(text: &mut String, value: &impl Serialize) {
    // Our structs hold whole numbers, texts, lists and names: nothing that can't be written.
    let _ = value.serialize(Plain { text });
}

type Written = fmt::Result;

struct Plain<'s> {
    text: &'s mut String,
}

impl<'s> Plain<'s> {
    fn open(self, word: &str, [open, close]: [char; 2]) -> Result<Entries<'s>, fmt::Error> {
        *self.text += word;
        self.text.push(open);
        Ok(Entries { text: self.text, close, first: true })
    }
}

const ROUND: [char; 2] = ['(', ')'];
const SQUARE: [char; 2] = ['[', ']'];
const CURLY: [char; 2] = ['{', '}'];

/// What no file holds.
macro_rules! not_plain {
    ($($name:ident($kind:ty))*) => {
        $(fn $name(self, _: $kind) -> Written { Err(fmt::Error) })*
    };
}

impl<'s> Serializer for Plain<'s> {
    type Ok = ();
    type Error = fmt::Error;
    type SerializeSeq = Entries<'s>;
    type SerializeTuple = Entries<'s>;
    type SerializeTupleStruct = Entries<'s>;
    type SerializeTupleVariant = Entries<'s>;
    type SerializeMap = Entries<'s>;
    type SerializeStruct = Entries<'s>;
    type SerializeStructVariant = Entries<'s>;

    fn serialize_bool(self, value: bool) -> Written {
        write!(self.text, "{value}")
    }

    fn serialize_i32(self, value: i32) -> Written {
        write!(self.text, "{value}")
    }

    fn serialize_u32(self, value: u32) -> Written {
        write!(self.text, "{value}")
    }

    fn serialize_str(self, value: &str) -> Written {
        self.collect_str(value)
    }

    fn collect_str<T: Display + ?Sized>(self, value: &T) -> Written {
        self.text.push('"');
        let start = self.text.len();
        write!(self.text, "{value}")?;
        let stands_for_itself = |b: u8| matches!(b, b' '..=b'~') && !b"\"'\\".contains(&b);
        if !self.text[start..].bytes().all(stands_for_itself) {
            let value = self.text.split_off(start);
            self.text.extend(value.chars().flat_map(char::escape_debug));
        }
        self.text.push('"');
        Ok(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Written {
        value.serialize(self)
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, word: &'static str) -> Written {
        self.text.write_str(word)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        word: &'static str,
        value: &T,
    ) -> Written {
        let mut only = self.open(word, ROUND)?;
        only.entry(value)?;
        only.close()
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Entries<'s>, fmt::Error> {
        self.open("", SQUARE)
    }

    fn serialize_tuple(self, _: usize) -> Result<Entries<'s>, fmt::Error> {
        self.open("", ROUND)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Entries<'s>, fmt::Error> {
        self.open("", ROUND)
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        word: &'static str,
        _: usize,
    ) -> Result<Entries<'s>, fmt::Error> {
        self.open(word, ROUND)
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Entries<'s>, fmt::Error> {
        self.open("", CURLY)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Entries<'s>, fmt::Error> {
        self.open("", ROUND)
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        word: &'static str,
        _: usize,
    ) -> Result<Entries<'s>, fmt::Error> {
        self.open(word, ROUND)
    }

    not_plain! {
        serialize_i8(i8) serialize_i16(i16) serialize_i64(i64)
        serialize_u8(u8) serialize_u16(u16) serialize_u64(u64)
        serialize_f32(f32) serialize_f64(f64) serialize_char(char)
        serialize_bytes(&[u8]) serialize_unit_struct(&'static str)
    }

    fn serialize_none(self) -> Written {
        Err(fmt::Error)
    }

    fn serialize_unit(self) -> Written {
        Err(fmt::Error)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, _: &T) -> Written {
        Err(fmt::Error)
    }
}

/// The entries between two brackets.
struct Entries<'s> {
    text: &'s mut String,
    close: char,
    first: bool,
}

impl Entries<'_> {
    fn comma(&mut self) {
        if !std::mem::take(&mut self.first) {
            *self.text += ", ";
        }
    }

    fn entry<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        self.comma();
        value.serialize(Plain { text: self.text })
    }

    fn field<T: Serialize + ?Sized>(&mut self, word: &'static str, value: &T) -> Written {
        self.comma();
        *self.text += word;
        self.value(value)
    }

    fn value<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        *self.text += ": ";
        value.serialize(Plain { text: self.text })
    }

    fn close(self) -> Written {
        self.text.push(self.close);
        Ok(())
    }
}

/// Lists and tuples.
macro_rules! of_entries {
    ($($kind:ident $name:ident)*) => {$(
        impl ser::$kind for Entries<'_> {
            type Ok = ();
            type Error = fmt::Error;

            fn $name<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
                self.entry(value)
            }

            fn end(self) -> Written {
                self.close()
            }
        }
    )*};
}

of_entries! {
    SerializeSeq serialize_element
    SerializeTuple serialize_element
    SerializeTupleStruct serialize_field
    SerializeTupleVariant serialize_field
}

/// What has named fields.
macro_rules! of_fields {
    ($($kind:ident)*) => {$(
        impl ser::$kind for Entries<'_> {
            type Ok = ();
            type Error = fmt::Error;

            fn serialize_field<T: Serialize + ?Sized>(
                &mut self,
                word: &'static str,
                value: &T,
            ) -> Written {
                self.field(word, value)
            }

            fn end(self) -> Written {
                self.close()
            }
        }
    )*};
}

of_fields! { SerializeStruct SerializeStructVariant }

impl ser::SerializeMap for Entries<'_> {
    type Ok = ();
    type Error = fmt::Error;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Written {
        self.entry(key)
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        self.value(value)
    }

    fn end(self) -> Written {
        self.close()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use ron::extensions::Extensions;
    use ron::ser::PrettyConfig;

    use super::*;
    use crate::Papers;
    use crate::file::v1;
    use crate::sample::any_plan;

    /// How the library of the notation writes a value on one line.
    fn by_the_library(value: &impl Serialize) -> String {
        let config = PrettyConfig::new()
            .depth_limit(0)
            .compact_arrays(true)
            .compact_structs(true)
            .compact_maps(true);
        let options = ron::Options::default().with_default_extension(Extensions::IMPLICIT_SOME);
        options.to_string_pretty(value, config).expect("a text")
    }

    fn here(value: &impl Serialize) -> String {
        let mut text = String::new();
        write(&mut text, value);
        text
    }

    proptest! {
        #[test]
        fn every_entry_is_written_as_the_library_writes_it(plan in any_plan()) {
            let site = v1::SiteFacts::from(&plan.site);
            prop_assert_eq!(here(&site), by_the_library(&site));
            for e in plan.elements().iter() {
                let record = v1::Record::from(e);
                prop_assert_eq!(here(&record), by_the_library(&record));
            }
            for aside in plan.set_aside() {
                let aside = v1::Aside::from(aside);
                prop_assert_eq!(here(&aside), by_the_library(&aside));
            }
        }

        #[test]
        fn every_text_is_written_as_the_library_writes_it(address: String, north: u32, x: i32) {
            let papers = Papers { address, north: Some(north), ..Papers::default() };
            let value = (papers, x, vec![true, false], Vec::<u32>::new());
            prop_assert_eq!(here(&value), by_the_library(&value));
        }
    }
}
