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

use serde::{Deserialize, Serialize};

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
    let Plan { site, next_id, elements, set_aside } = plan;
    let mut text = String::from(HEADER);
    text += &format!("(\n    schema: {SCHEMA},\n    next_id: {next_id},\n    site: ");
    plain::write(&mut text, &v1::SiteFacts::from(site));
    text += ",\n";
    if !site.amendments.is_empty() {
        add_list(&mut text, "amendments", site.amendments.iter().map(v1::Amended::from));
    }
    add_list(&mut text, "elements", elements.iter().map(v1::Record::from));
    add_list(&mut text, "set_aside", set_aside.iter().map(v1::Aside::from));
    text += ")\n";
    text
}

/// Adds a list with each entry on a line of its own.
pub(crate) fn add_list<T: Serialize>(
    text: &mut String,
    name: &str,
    entries: impl IntoIterator<Item = T>,
) {
    *text += &format!("    {name}: [");
    let start = text.len();
    for entry in entries {
        *text += "\n        ";
        plain::write(text, &entry);
        text.push(',');
    }
    *text += if text.len() == start { "],\n" } else { "\n    ],\n" };
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
