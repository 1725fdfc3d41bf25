//! Elements as text, for the clipboard and for copies beside the original.
//!
//! An element keeps its old id as a key: one that is fixed to a wall of the same fragment goes with the
//! copy of that wall, otherwise with the wall of that id in the plan it is pasted into.

mod paste;

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use crate::file::v1::Record;
use crate::file::{self, FileError, FileErrorKind, entry};
use crate::{Draft, Element, ElementId, Plan};

pub use paste::{Pasted, paste};

/// The newest form of a fragment that this program reads, and the one it writes.
const FORM: u32 = 1;

const ADVICE: &str = "Copy elements in a plan first, then paste.";

/// An element of a fragment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// The id in the plan that it was copied from; hosts and served appliances are named by it.
    pub key: ElementId,
    pub draft: Draft,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "Fragment")]
struct Text {
    fragment: u32,
    elements: Vec<Record>,
}

#[derive(Deserialize)]
#[serde(rename = "Fragment")]
struct Envelope {
    fragment: u32,
}

/// The elements with these ids and what is fixed to them, in the order of their ids; ids that the plan
/// does not have are left out.
pub fn pieces(plan: &Plan, ids: &[ElementId]) -> Vec<Piece> {
    chosen(plan, ids).map(|e| Piece { key: e.id, draft: draft(e) }).collect()
}

/// The elements with these ids, and what is fixed to them, as text.
pub fn write(plan: &Plan, ids: &[ElementId]) -> String {
    let records: Vec<Record> = chosen(plan, ids).map(Record::from).collect();
    format!("(\n    fragment: {FORM},\n{})\n", file::list("elements", &records))
}

/// Reads elements from text. Figures are checked when they are pasted; never panics.
pub fn read(text: &str) -> Result<Vec<Piece>, FileError> {
    parsed(text).map_err(|e| FileError { advice: ADVICE, ..e })
}

fn parsed(text: &str) -> Result<Vec<Piece>, FileError> {
    let text = file::parse::check_form(text)?;
    let Envelope { fragment } = file::parse::ron(text)?;
    if fragment != FORM {
        let what = format!(
            "these elements were copied from a newer version (form {fragment}; this program reads {FORM})"
        );
        return Err(FileError {
            advice: ADVICE,
            ..FileError::new(FileErrorKind::Newer, None, what)
        });
    }
    let whole: Text = file::parse::ron(text)?;
    let mut keys = BTreeSet::new();
    let mut pieces = Vec::with_capacity(whole.elements.len());
    for (i, record) in whole.elements.into_iter().enumerate() {
        let e = Element::from(record);
        if !keys.insert(e.id) {
            let place = entry::place_of(text, "elements", i);
            let what = format!("element number {} is used twice; each needs its own", e.id.0);
            return Err(FileError::new(FileErrorKind::Content, place, what));
        }
        pieces.push(Piece { key: e.id, draft: draft(&e) });
    }
    Ok(pieces)
}

fn draft(e: &Element) -> Draft {
    Draft { state: e.state, body: e.body.clone(), details: e.details.clone() }
}

fn chosen<'p>(plan: &'p Plan, ids: &[ElementId]) -> impl Iterator<Item = &'p Element> {
    let fixed = ids.iter().flat_map(|&id| plan.elements().fixed_to(id)).map(|e| e.id);
    let all: BTreeSet<ElementId> = ids.iter().copied().chain(fixed).collect();
    all.into_iter().filter_map(|id| plan.get(id))
}
