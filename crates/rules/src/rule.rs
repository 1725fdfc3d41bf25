//! What a rule is.

use plan::Plan;
use space::Facts;

use crate::{Book, Finding};

/// The family that a rule belongs to, in the order listed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    WayOut,
    Access,
    BedroomOrOffice,
    Rooms,
    Headroom,
    Doors,
    Stairs,
}

/// One rule. A rule's file holds one `pub(crate) const RULE: Rule`, its check and its tests.
pub struct Rule {
    /// Names the fault or the demand, stable for ever: `panel-depth`.
    pub slug: &'static str,
    pub group: Group,
    /// A heading in a few words: `Clear depth in front of the electrical panel`.
    pub title: &'static str,
    /// The page that `explain` shows: plain text with the fixed headings What, Why, Source, How it is
    /// measured, Cannot see, Exceptions, Remedies. Kept in the rule's file.
    pub page: &'static str,
    pub check: fn(&Sheet<'_>, &mut Vec<Finding>),
}

/// What a rule may look at.
#[derive(Clone, Copy)]
pub struct Sheet<'a> {
    pub facts: &'a Facts,
    pub book: &'a Book,
}

impl<'a> Sheet<'a> {
    pub fn plan(&self) -> &'a Plan {
        &self.facts.plan
    }
}
