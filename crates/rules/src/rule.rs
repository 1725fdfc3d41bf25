//! What a rule is.

use std::cell::OnceCell;

use plan::element::{BodyKind, ServicePoint};
use plan::{Body, Element, ElementId, Plan};
use space::{Facts, OpeningFacts, Room};

use crate::rules::build::fixtures::{self, Fitted, Fixture};
use crate::rules::electrical::devices::Devices;
use crate::rules::way_out::need::{self, Need};
use crate::rules::{self, Keep};
use crate::{Book, Finding, Remedy};

/// The family that a rule belongs to, in the order listed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    Fitness,
    WayOut,
    Access,
    BedroomOrOffice,
    Rooms,
    Headroom,
    Doors,
    Stairs,
    Electrical,
    Heat,
    Build,
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
    pub check: Check,
    /// Edits that may cure a finding of this rule; [`crate::remedies`] tries them and keeps those that do.
    pub remedies: Option<fn(&Finding, &Sheet<'_>) -> Vec<Remedy>>,
}

impl std::fmt::Debug for Rule {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.slug)
    }
}

/// What a rule judges at a time. A rule that judges things one by one is asked again only about those of which
/// something has changed (`kept/`): what it says about one of them rests on nothing but what its variant names, and on
/// what is drawn and stated at all, without where it stands: the kinds of the elements, their details, the uses of the
/// rooms, and which openings join them.
#[derive(Clone, Copy)]
pub enum Check {
    /// The plan as a whole.
    Plan(fn(&Sheet<'_>, &mut Vec<Finding>)),
    /// Everything of some kinds together: where each stands, and nothing near it.
    Kinds(&'static [BodyKind], fn(&Sheet<'_>, &mut Vec<Finding>)),
    /// A room: with its walls, its openings, what stands or hangs in it, and the rooms behind its openings.
    Rooms(fn(&Sheet<'_>, &Room, &mut Vec<Finding>)),
    /// An opening: with its leaf, and what stands no farther from it than the greatest of some limits.
    Openings(&'static [&'static str], fn(&Sheet<'_>, &OpeningFacts, &mut Vec<Finding>)),
    /// A standing, solid element of some kinds: with what stands no farther from it than the greatest of some limits,
    /// and the room that it is in.
    Things(
        &'static [BodyKind],
        &'static [&'static str],
        fn(&Sheet<'_>, &Element, &mut Vec<Finding>),
    ),
}

impl Rule {
    /// Judges everything that the rule is about, in order.
    pub fn judge(&self, sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
        match self.check {
            Check::Plan(check) | Check::Kinds(_, check) => check(sheet, out),
            Check::Rooms(check) => sheet.facts.rooms.iter().for_each(|r| check(sheet, r, out)),
            Check::Openings(_, check) => {
                sheet.facts.openings.iter().for_each(|o| check(sheet, o, out));
            }
            Check::Things(kinds, _, check) => {
                sheet.facts.standing(kinds).for_each(|e| check(sheet, e, out));
            }
        }
    }
}

/// The headings of a rule's page, each on a line of its own, in this order.
pub const HEADINGS: [&str; 7] =
    ["What", "Why", "Source", "How it is measured", "Cannot see", "Exceptions", "Remedies"];

/// What a rule may look at. Measures that several rules ask for are taken once for each sheet.
pub struct Sheet<'a> {
    pub facts: &'a Facts,
    pub book: &'a Book,
    keeps: OnceCell<Vec<Keep>>,
    fixtures: OnceCell<Vec<(u32, Fixture)>>,
    devices: OnceCell<Devices>,
    needs: OnceCell<Vec<Need>>,
    needs_with_openings: OnceCell<Vec<Need>>,
}

impl Group {
    /// The heading that `explain --list` groups by.
    pub fn word(self) -> &'static str {
        match self {
            Group::Fitness => "Is the space fit",
            Group::WayOut => "Way out",
            Group::Access => "Access",
            Group::BedroomOrOffice => "Bedroom or office",
            Group::Rooms => "Rooms",
            Group::Headroom => "Headroom",
            Group::Doors => "Doors",
            Group::Stairs => "Stairs",
            Group::Electrical => "Outlets, lights and alarms",
            Group::Heat => "Heating, gas, water and drains",
            Group::Build => "Walls, glass and where things stand",
        }
    }
}

impl<'a> Sheet<'a> {
    pub fn new(facts: &'a Facts, book: &'a Book) -> Sheet<'a> {
        let (keeps, fixtures, devices) = Default::default();
        let (needs, needs_with_openings) = Default::default();
        Sheet { facts, book, keeps, fixtures, devices, needs, needs_with_openings }
    }

    pub fn plan(&self) -> &'a Plan {
        &self.facts.plan
    }

    /// The spaces before service points, by service point.
    pub(crate) fn keeps(&self) -> &[Keep] {
        self.keeps.get_or_init(|| rules::keeps(self))
    }

    /// The space before a service point, where one is asked for.
    pub(crate) fn keep(&self, service: ElementId) -> Option<&Keep> {
        let keeps = self.keeps();
        let at = keeps.binary_search_by_key(&service, |keep| keep.service).ok()?;
        keeps.get(at)
    }

    /// The standing bath fixtures, in the order of their ids.
    pub(crate) fn fixtures(&self) -> impl Iterator<Item = Fitted<'a>> + use<'_, 'a> {
        let all = self.fixtures.get_or_init(|| fixtures::standing(self.facts));
        let facts = self.facts;
        all.iter().filter_map(|(place, kind)| match facts.element_at(*place) {
            element @ Element { body: Body::Furnishing(f), .. } => Some((element, f, *kind)),
            _ => None,
        })
    }

    /// What needs an escape opening.
    pub(crate) fn needs(&self) -> &[Need] {
        self.needs.get_or_init(|| need::needs(self))
    }

    /// What needs an escape opening and has openings that lead outdoors.
    pub(crate) fn needs_with_openings(&self) -> &[Need] {
        self.needs_with_openings.get_or_init(|| need::with_openings(self))
    }

    /// The standing service points by kind and by room.
    pub(crate) fn devices(&self) -> &Devices {
        self.devices.get_or_init(|| Devices::new(self))
    }

    /// The standing service points, in the order of their ids.
    pub fn services(&self) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
        self.facts.standing(&[BodyKind::Service]).filter_map(|e| match &e.body {
            Body::Service(s) => Some((e, s)),
            _ => None,
        })
    }
}
