//! The plan file: text in RON (Rusty Object Notation), versioned, one element on a line.
//!
//! [`write()`] then [`read`] gives back the equal plan. Lengths are exact: see the header that is written.
//! A file states its `schema`; each schema has its own structs, apart from the model.

pub(crate) mod entry;
pub(crate) mod error;
pub(crate) mod length;
pub(crate) mod parse;
mod plain;
pub(crate) mod v1;

use serde::Deserialize;

use crate::Plan;

pub use error::{FileError, FileErrorKind, Place};

/// The newest schema that this program reads, and the one it writes.
pub const SCHEMA: u32 = 1;

/// The largest text that is read, in bytes: 32 MiB.
pub const LARGEST: usize = 32 << 20;

const HEADER: &str = "\
// A basement plan. Lengths are exact: \"12ft 6 1/2in\", \"3201mm\", or \"17u\" where 1u is 1/320 mm.
// Points are (east, north). Openings and furring are placed from the start `a` of their wall.
";

/// Only the schema of a file; other fields are skipped.
#[derive(Deserialize)]
#[serde(rename = "Plan")]
#[cfg_attr(test, derive(Debug))]
struct Envelope {
    schema: u32,
}

/// The plan as text.
pub fn write(plan: &Plan) -> String {
    let file = v1::File::from(plan);
    let mut text = String::from(HEADER);
    text += "(\n";
    text += &format!("    schema: {},\n    next_id: {},\n", file.schema, file.next_id);
    text += &format!("    site: {},\n", parse::one_line(&file.site));
    if !file.amendments.is_empty() {
        text += &list("amendments", &file.amendments);
    }
    text += &list("elements", &file.elements);
    text += &list("set_aside", &file.set_aside);
    text += ")\n";
    text
}

/// A list with each entry on a line of its own.
pub(crate) fn list<T: serde::Serialize>(name: &str, entries: &[T]) -> String {
    if entries.is_empty() {
        return format!("    {name}: [],\n");
    }
    let lines = entries.iter().map(|e| format!("        {},\n", parse::one_line(e)));
    format!("    {name}: [\n{}    ],\n", lines.collect::<String>())
}

/// Reads a plan from the bytes of a file.
pub fn read_bytes(bytes: &[u8]) -> Result<Plan, FileError> {
    parse::check_size(bytes.len())?;
    match std::str::from_utf8(bytes) {
        Ok(text) => read(text),
        Err(e) if bytes.contains(&0) || e.valid_up_to() < 16 => Err(parse::foreign()),
        Err(e) => {
            let sound = std::str::from_utf8(&bytes[..e.valid_up_to()]).unwrap_or_default();
            let place = Some(entry::place_at(sound, sound.len()));
            Err(FileError::new(FileErrorKind::Notation, place, "there are bytes that are no text"))
        }
    }
}

/// Reads a plan. Never panics, whatever the text is; the error says where, what is wrong and what to do.
pub fn read(text: &str) -> Result<Plan, FileError> {
    let text = parse::check_form(text)?;
    let plain = plain::read::<v1::File>(text).filter(|file| file.schema == SCHEMA);
    match plain.and_then(|file| Plan::try_from(file).ok()) {
        Some(plan) => Ok(plan),
        None => read_with_care(text),
    }
}

/// Reads a plan in any notation that is sound, or says where and what is wrong.
fn read_with_care(text: &str) -> Result<Plan, FileError> {
    let Envelope { schema } = parse::ron(text)?;
    if schema > SCHEMA {
        let what = format!(
            "this file was saved by a newer version (schema {schema}; this program reads up to {SCHEMA})"
        );
        return Err(FileError::new(FileErrorKind::Newer, None, what));
    }
    if schema == 0 {
        let what = "there is no schema 0; the first is 1";
        return Err(FileError::new(FileErrorKind::Content, None, what));
    }
    let file: v1::File = parse::ron(text)?;
    Plan::try_from(file).map_err(|fault| {
        let place = fault.entry.and_then(|(list, i)| entry::place_of(text, list, i));
        FileError::new(FileErrorKind::Content, place, fault.what)
    })
}
