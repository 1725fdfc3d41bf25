//! What a rule is.

use plan::element::ServicePoint;
use plan::{Body, Element, Plan};
use space::Facts;

use crate::{Book, Finding, Remedy};

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
#[derive(Clone, Copy)]
pub struct Rule {
    /// Names the fault or the demand, stable for ever: `panel-depth`.
    pub slug: &'static str,
    pub group: Group,
    /// A heading in a few words: `Clear depth in front of the electrical panel`.
    pub title: &'static str,
    /// The page that `explain` shows: plain text with the fixed headings What, Why, Source, How it is
    /// measured, Cannot see, Exceptions, Remedies. Kept in the rule's file.
    pub page: &'static str,
    /// Slugs of the code book that it cites.
    pub cites: &'static [&'static str],
    pub check: fn(&Sheet<'_>, &mut Vec<Finding>),
    /// Edits that may cure a finding of this rule; [`crate::remedies`] tries them and keeps those that do.
    pub remedies: Option<fn(&Finding, &Sheet<'_>) -> Vec<Remedy>>,
}

/// The headings of a rule's page, each on a line of its own, in this order.
pub const HEADINGS: [&str; 7] =
    ["What", "Why", "Source", "How it is measured", "Cannot see", "Exceptions", "Remedies"];

/// What a rule may look at.
#[derive(Clone, Copy)]
pub struct Sheet<'a> {
    pub facts: &'a Facts,
    pub book: &'a Book,
}

impl Group {
    /// The heading that `explain --list` groups by.
    pub fn word(self) -> &'static str {
        match self {
            Group::WayOut => "Way out",
            Group::Access => "Access",
            Group::BedroomOrOffice => "Bedroom or office",
            Group::Rooms => "Rooms",
            Group::Headroom => "Headroom",
            Group::Doors => "Doors",
            Group::Stairs => "Stairs",
        }
    }
}

impl<'a> Sheet<'a> {
    pub fn plan(&self) -> &'a Plan {
        &self.facts.plan
    }

    /// The standing service points, in the order of their ids.
    pub fn services(&self) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
        self.plan().elements().iter().filter(|e| e.stands()).filter_map(|e| match &e.body {
            Body::Service(s) => Some((e, s)),
            _ => None,
        })
    }
}
