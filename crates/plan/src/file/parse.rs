//! From text to structs and back, with errors in plain words.

use ron::error::{Error as Ron, SpannedError};
use ron::extensions::Extensions;
use ron::ser::PrettyConfig;
use serde::Serialize;
use serde::de::DeserializeOwned;

use super::LARGEST;
use super::entry::place_at;
use super::error::{FileError, FileErrorKind, Place};

/// One value on one line.
pub(crate) fn one_line<T: Serialize>(value: &T) -> String {
    let config = PrettyConfig::new()
        .depth_limit(0)
        .compact_arrays(true)
        .compact_structs(true)
        .compact_maps(true);
    // Our structs hold whole numbers, texts, lists and names: nothing that can't be written.
    options().to_string_pretty(value, config).unwrap_or_default()
}

pub(crate) fn foreign() -> FileError {
    let what = "this is not a plan of this program";
    FileError::new(FileErrorKind::Foreign, None, what)
}

pub(crate) fn check_size(bytes: usize) -> Result<(), FileError> {
    if bytes <= LARGEST {
        return Ok(());
    }
    let what = format!(
        "the file has {} MiB; the largest plan that is read has {} MiB",
        bytes.div_ceil(1 << 20),
        LARGEST >> 20
    );
    Err(FileError::new(FileErrorKind::TooLarge, None, what))
}

/// Refuses what can't be a plan before it is parsed; gives the text without a byte order mark.
pub(crate) fn check_form(text: &str) -> Result<&str, FileError> {
    check_size(text.len())?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut rest = text.trim_start();
    while let Some(after) = rest.strip_prefix("//") {
        rest = after.split_once('\n').map_or("", |(_, next)| next).trim_start();
    }
    if rest.is_empty() {
        return Err(FileError::new(FileErrorKind::Empty, None, "the file is empty"));
    }
    if text.contains('\0') || !(rest.starts_with(['(', '#']) || rest.starts_with("/*")) {
        return Err(foreign());
    }
    Ok(text)
}

pub(crate) fn ron<T: DeserializeOwned>(text: &str) -> Result<T, FileError> {
    options().from_str(text).map_err(|e| from_ron(text, &e))
}

/// What may be left out is written plainly where it is given: `serves: 20`, not `serves: Some(20)`.
fn options() -> ron::Options {
    ron::Options::default().with_default_extension(Extensions::IMPLICIT_SOME)
}

fn from_ron(text: &str, e: &SpannedError) -> FileError {
    let kind = match e.code {
        Ron::Eof | Ron::ExpectedStringEnd | Ron::UnclosedBlockComment => FileErrorKind::Truncated,
        Ron::Message(_)
        | Ron::InvalidValueForType { .. }
        | Ron::ExpectedDifferentLength { .. }
        | Ron::NoSuchEnumVariant { .. }
        | Ron::NoSuchStructField { .. }
        | Ron::MissingStructField { .. }
        | Ron::DuplicateStructField { .. }
        | Ron::IntegerOutOfBounds => FileErrorKind::Content,
        _ => FileErrorKind::Notation,
    };
    let place = match kind {
        FileErrorKind::Truncated => place_at(text, text.len()),
        _ => Place { line: e.span.start.line, column: e.span.start.col },
    };
    let within = |outer: &Option<String>| match outer {
        Some(outer) => format!(" in {outer}"),
        None => String::new(),
    };
    let what = match &e.code {
        _ if kind == FileErrorKind::Truncated => "the text ends before the plan does".to_owned(),
        Ron::MissingStructField { field, outer } => {
            format!("the field `{field}` is missing{}", within(outer))
        }
        Ron::DuplicateStructField { field, outer } => {
            format!("the field `{field}` is given twice{}", within(outer))
        }
        Ron::NoSuchStructField { expected, found, outer } => {
            let known = expected.join(", ");
            format!("there is no field `{found}`{}; known are {known}", within(outer))
        }
        Ron::NoSuchEnumVariant { expected, found, .. } => {
            format!("`{found}` is not known here; accepted are {}", expected.join(", "))
        }
        Ron::IntegerOutOfBounds => "the number is too large or below zero".to_owned(),
        code => decapitalised(&code.to_string()),
    };
    FileError::new(kind, Some(place), what)
}

fn decapitalised(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |c| c.to_lowercase().chain(chars).collect())
}
