//! The notation as this program writes it, read fast.
//!
//! It is a part of RON: no attributes, no block comments, no raw strings, no names of structs, numbers in plain
//! decimals. Whatever else there is, sound or not, is given up without a word: [`super::parse`] then reads it
//! with care, and says what is wrong. What is read here, is read there as the same.

use std::fmt;

use serde::de::{
    self, Deserialize, DeserializeSeed, Deserializer, EnumAccess, IntoDeserializer, MapAccess,
    SeqAccess, VariantAccess, Visitor,
};
use serde::forward_to_deserialize_any;

/// The value that a whole text says, where the text is plain and sound.
pub(super) fn read<'de, T: Deserialize<'de>>(text: &'de str) -> Option<T> {
    let mut plain = Plain { text, at: 0 };
    let value = T::deserialize(&mut plain).ok()?;
    plain.space().ok()?;
    (plain.at == text.len()).then_some(value)
}

/// The text is not plain, or not sound.
#[derive(Debug)]
struct GivenUp;

type Read<T> = Result<T, GivenUp>;

impl fmt::Display for GivenUp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the text is not plain")
    }
}

impl std::error::Error for GivenUp {}

impl de::Error for GivenUp {
    fn custom<T: fmt::Display>(_: T) -> GivenUp {
        GivenUp
    }
}

/// A text that is read from `at` on, which is between two characters.
struct Plain<'de> {
    text: &'de str,
    at: usize,
}

impl<'de> Plain<'de> {
    fn rest(&self) -> &'de [u8] {
        &self.text.as_bytes()[self.at..]
    }

    /// Goes past spaces, ends of lines and line comments.
    fn space(&mut self) -> Read<()> {
        loop {
            match self.rest() {
                [b' ' | b'\n' | b'\r' | b'\t', ..] => self.at += 1,
                [b'/', b'/', rest @ ..] => {
                    self.at += 3 + rest.iter().position(|&b| b == b'\n').ok_or(GivenUp)?;
                }
                _ => return Ok(()),
            }
        }
    }

    /// What comes next that is no space.
    fn peek(&mut self) -> Read<u8> {
        self.space()?;
        self.rest().first().copied().ok_or(GivenUp)
    }

    /// Goes past a character where it is the next.
    fn goes_on_with(&mut self, wanted: u8) -> Read<bool> {
        let there = self.peek()? == wanted;
        self.at += usize::from(there);
        Ok(there)
    }

    fn expect(&mut self, wanted: u8) -> Read<()> {
        if self.goes_on_with(wanted)? { Ok(()) } else { Err(GivenUp) }
    }

    /// The next bytes of which this holds; they are of ASCII.
    fn run(&mut self, holds: impl Fn(&u8) -> bool) -> Read<&'de str> {
        self.space()?;
        let rest = self.rest();
        let length = rest.iter().position(|b| !holds(b)).unwrap_or(rest.len());
        let run = self.text.get(self.at..self.at + length).filter(|run| !run.is_empty());
        self.at += length;
        run.ok_or(GivenUp)
    }

    fn word(&mut self) -> Read<&'de str> {
        let word = self.run(|b| b.is_ascii_alphanumeric() || *b == b'_')?;
        if word.as_bytes()[0].is_ascii_digit() { Err(GivenUp) } else { Ok(word) }
    }

    /// A whole number with no sign but a minus, and no zero in front.
    fn number(&mut self) -> Read<i64> {
        let number = self.run(|b| b.is_ascii_alphanumeric() || b"_.-".contains(b))?;
        let digits = number.strip_prefix('-').unwrap_or(number);
        let plain = number == "0" || !digits.starts_with('0');
        if plain && digits.bytes().all(|b| b.is_ascii_digit()) {
            number.parse().map_err(|_| GivenUp)
        } else {
            Err(GivenUp)
        }
    }

    /// What stands between quotes, up to the first backslash or to the end; and whether that is the end.
    fn piece(&mut self) -> Read<(&'de str, bool)> {
        let rest = self.rest();
        let length = rest.iter().position(|b| matches!(b, b'"' | b'\\')).ok_or(GivenUp)?;
        let piece = &self.text[self.at..self.at + length];
        self.at += length + 1;
        Ok((piece, rest[length] == b'"'))
    }

    /// What follows the first piece of a text with backslashes.
    fn unescaped(&mut self, first: &str) -> Read<String> {
        let mut text = first.to_owned();
        loop {
            text.push(self.escaped()?);
            let (piece, ends) = self.piece()?;
            text += piece;
            if ends {
                return Ok(text);
            }
        }
    }

    /// The character that stands for itself behind a backslash, or is named there.
    fn escaped(&mut self) -> Read<char> {
        let mark = *self.rest().first().ok_or(GivenUp)?;
        self.at += 1;
        match mark {
            b'n' => Ok('\n'),
            b't' => Ok('\t'),
            b'"' | b'\\' | b'\'' => Ok(char::from(mark)),
            b'u' => {
                let number = self.text[self.at..].strip_prefix('{').and_then(|t| t.split_once('}'));
                let (digits, _) = number.ok_or(GivenUp)?;
                self.at += digits.len() + 2;
                let plain = digits.len() <= 6 && digits.bytes().all(|b| b.is_ascii_hexdigit());
                let code = u32::from_str_radix(digits, 16).ok().filter(|_| plain);
                code.and_then(char::from_u32).ok_or(GivenUp)
            }
            _ => Err(GivenUp),
        }
    }

    /// What stands between two brackets.
    fn within<T>(
        &mut self,
        [open, close]: [u8; 2],
        inner: impl FnOnce(Entries<'_, 'de>) -> Read<T>,
    ) -> Read<T> {
        self.expect(open)?;
        let value = inner(Entries { of: self, close, first: true })?;
        self.expect(close)?;
        Ok(value)
    }
}

const ROUND: [u8; 2] = *b"()";
const SQUARE: [u8; 2] = *b"[]";
const CURLY: [u8; 2] = *b"{}";

impl<'de> Deserializer<'de> for &mut Plain<'de> {
    type Error = GivenUp;

    fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Read<V::Value> {
        Err(GivenUp)
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.word()? {
            "true" => visitor.visit_bool(true),
            "false" => visitor.visit_bool(false),
            _ => Err(GivenUp),
        }
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        visitor.visit_u32(self.number()?.try_into().map_err(|_| GivenUp)?)
    }

    fn deserialize_i32<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        visitor.visit_i32(self.number()?.try_into().map_err(|_| GivenUp)?)
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.expect(b'"')?;
        match self.piece()? {
            (text, true) => visitor.visit_borrowed_str(text),
            (first, false) => visitor.visit_string(self.unescaped(first)?),
        }
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.deserialize_str(visitor)
    }

    /// What may be left out is written plainly where it is given; `None` and `Some` are no part of it.
    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        if self.peek()?.is_ascii_alphabetic() { Err(GivenUp) } else { visitor.visit_some(self) }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.within(SQUARE, |entries| visitor.visit_seq(entries))
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Read<V::Value> {
        self.within(ROUND, |entries| visitor.visit_seq(entries))
    }

    fn deserialize_tuple_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        count: usize,
        visitor: V,
    ) -> Read<V::Value> {
        self.deserialize_tuple(count, visitor)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.within(CURLY, |entries| visitor.visit_map(entries))
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        self.within(ROUND, |entries| visitor.visit_map(entries))
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        visitor.visit_enum(self)
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        visitor.visit_borrowed_str(self.word()?)
    }

    forward_to_deserialize_any! {
        i8 i16 i64 i128 u8 u16 u64 u128 f32 f64 char bytes byte_buf unit unit_struct newtype_struct
        ignored_any
    }
}

/// The entries between two brackets, with a comma between each two and perhaps one after the last.
struct Entries<'p, 'de> {
    of: &'p mut Plain<'de>,
    close: u8,
    first: bool,
}

impl Entries<'_, '_> {
    fn has_next(&mut self) -> Read<bool> {
        let goes_on = std::mem::take(&mut self.first) || self.of.goes_on_with(b',')?;
        match (goes_on, self.of.peek()? == self.close) {
            (_, true) => Ok(false),
            (true, false) => Ok(true),
            (false, false) => Err(GivenUp),
        }
    }
}

impl<'de> SeqAccess<'de> for Entries<'_, 'de> {
    type Error = GivenUp;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<Option<T::Value>> {
        if self.has_next()? { seed.deserialize(&mut *self.of).map(Some) } else { Ok(None) }
    }
}

/// Fields have words for keys, which `deserialize_identifier` reads, and maps have texts.
impl<'de> MapAccess<'de> for Entries<'_, 'de> {
    type Error = GivenUp;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Read<Option<K::Value>> {
        if self.has_next()? { seed.deserialize(&mut *self.of).map(Some) } else { Ok(None) }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Read<V::Value> {
        self.of.expect(b':')?;
        seed.deserialize(&mut *self.of)
    }
}

impl<'p, 'de> EnumAccess<'de> for &'p mut Plain<'de> {
    type Error = GivenUp;
    type Variant = &'p mut Plain<'de>;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Read<(V::Value, Self::Variant)> {
        Ok((seed.deserialize(self.word()?.into_deserializer())?, self))
    }
}

impl<'de> VariantAccess<'de> for &mut Plain<'de> {
    type Error = GivenUp;

    fn unit_variant(self) -> Read<()> {
        Ok(())
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Read<T::Value> {
        self.expect(ROUND[0])?;
        let value = seed.deserialize(&mut *self)?;
        self.expect(ROUND[1])?;
        Ok(value)
    }

    fn tuple_variant<V: Visitor<'de>>(self, count: usize, visitor: V) -> Read<V::Value> {
        self.deserialize_tuple(count, visitor)
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        self.within(ROUND, |entries| visitor.visit_map(entries))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde::de::DeserializeOwned;

    use super::super::{Envelope, parse, v1, write};
    use super::*;
    use crate::element::Note;
    use crate::sample::{self, any_plan, mutations};
    use crate::{Body, State};

    /// What is read here, is read with care as the same. Gives whether it is read here.
    fn agrees<T: DeserializeOwned + fmt::Debug>(text: &str) -> bool {
        let plain = read::<T>(text).map(|value| format!("{value:?}"));
        if let Some(plain) = &plain {
            let careful = parse::ron::<T>(text).map(|value| format!("{value:?}"));
            assert_eq!(careful.as_ref(), Ok(plain), "{text}");
        }
        plain.is_some()
    }

    fn agrees_as_file(text: &str) {
        if agrees::<v1::File>(text) {
            assert!(parse::ron::<Envelope>(text).is_ok(), "{text}");
        }
    }

    #[derive(Debug, serde::Serialize, serde::Deserialize)]
    #[serde(deny_unknown_fields)]
    enum Any {
        Word,
        Text(String),
        Pair(i32, u32),
        Fields { yes: bool, some: Option<i32>, all: Vec<Any> },
        Map(std::collections::BTreeMap<String, Any>),
    }

    proptest! {
        #[test]
        fn what_is_read_is_read_with_care_as_the_same(plan in any_plan()) {
            agrees_as_file(&write(&plan));
        }

        #[test]
        fn what_is_read_of_a_spoilt_file_is_read_with_care_as_the_same(text in mutations(write(&sample::basement(8)))) {
            agrees_as_file(&text);
        }

        #[test]
        fn what_is_read_of_a_small_text_is_read_with_care_as_the_same(
            text in mutations(r#"Fields(yes: true, some: -12, all: [Word, Text("é\n\"\u{301}"), Pair(0, 7), Map({"a": Word})])"#.to_owned()),
        ) {
            agrees::<Any>(&text);
        }
    }

    #[test]
    fn what_the_program_writes_is_plain() {
        let mut plan = sample::basement(60);
        let text = "it's a \"quoted\"\nremark \\ é e\u{301}, ]".to_owned();
        let at = geometry::Pt::inches(1, 2);
        sample::add(&mut plan, State::New, Body::Note(Note { at, text }));
        assert!(agrees::<v1::File>(&write(&plan)));
    }

    #[test]
    fn other_sound_notation_is_given_up() {
        for (text, plain) in [
            ("Pair(-12, 7)", true),
            (" // a remark\nPair ( -12 , 7 ) // and another\n", true),
            ("Pair(-12, 7) // not ended", false),
            ("Pair(/* a */ 1, 7)", false),
            ("Pair(0x1F, 7)", false),
            ("Pair(1_000, 7)", false),
            ("Pair(+1, 7)", false),
            ("Pair(-0, 7)", false),
            ("Pair(007, 7)", false),
            ("Pair(- 1, 7)", false),
            ("Pair(1, -7)", false),
            ("Pair(1, 4294967296)", false),
            ("Pair(1, 7", false),
            ("Pair(1 7)", false),
            ("Pair(,1, 7)", false),
            ("Text(\"a\\tb\")", true),
            ("Text(\"a\\u{62}\\u{10FFFF}\\u{301}b\")", true),
            ("Text(\"a\\u{}\")", false),
            ("Text(\"a\\u{+62}\")", false),
            ("Text(\"a\\u{0000062}\")", false),
            ("Text(\"a\\u{d800}\")", false),
            ("Text(\"a\\u62\")", false),
            ("Text(\"a\\u{62", false),
            ("Text(\"a\\r\")", false),
            ("Text(r\"a\")", false),
            ("Text(\"a)", false),
            ("Fields(yes: true, some: 3, all: [])", true),
            ("Fields(yes: true, some: 3, all: [Word,],)", true),
            ("Fields(yes: true, all: [Word, Word])", true),
            ("Fields(yes: true, some: Some(3), all: [])", false),
            ("Fields(yes: true, some: None, all: [])", false),
            ("Fields(yes: true, yes: true, all: [])", false),
            ("Fields(yes: true, r#all: [])", false),
            ("Fields(yes: true, other: 1, all: [])", false),
            ("Map({\"a\": Word, \"b\": Map({})})", true),
            ("#![enable(implicit_some)] Word", false),
            ("Word", true),
            ("Word Word", false),
            ("", false),
        ] {
            assert_eq!(agrees::<Any>(text), plain, "{text}");
        }
    }
}
