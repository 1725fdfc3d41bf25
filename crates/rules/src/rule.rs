//! What a rule is.

use std::cell::OnceCell;

use measure::Len;
use plan::element::{BodyKind, ServiceKind, ServicePoint};
use plan::{Body, Element, ElementId, Plan};
use space::{Facts, On, OpeningFacts, Room};

use crate::rules::build::fixtures::{self, Fitted, Fixture};
use crate::rules::electrical::devices::{self, Devices};
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

/// What a rule judges at a time. A rule that has judged a plan is asked about the next only where something has changed
/// (`kept/`): what it says rests on nothing but what its variant names, and on what is drawn and stated at all, without
/// where it stands: the kinds of the elements, their details, the uses of the rooms, and which openings join them.
/// Places of findings that are named by what stands there ([`crate::Place::Of`] and its like) don't count.
#[derive(Clone, Copy)]
pub enum Check {
    /// The plan as a whole: with some things, and nothing near them.
    Plan(&'static [On], CheckPlan),
    /// A room: with its walls, its openings, and what stands or hangs in it.
    Room(CheckRoom),
    /// A room: with the rooms that are open to it through cased openings as well.
    Rooms(CheckRoom),
    /// An opening: with its leaf, and what stands within some reach of it.
    Openings(&'static [Reach], fn(&Sheet<'_>, &OpeningFacts, &mut Vec<Finding>)),
    /// A standing element of some kinds (no walls, openings or overheads): with what stands within some reach of it, and
    /// the use of the room that it is in.
    Things(&'static [BodyKind], &'static [Reach], fn(&Sheet<'_>, &Element, &mut Vec<Finding>)),
    /// A standing service point of some kinds: with the same.
    Services(&'static [ServiceKind], &'static [Reach], CheckService),
}

pub(crate) type CheckPlan = fn(&Sheet<'_>, &mut Vec<Finding>);
pub(crate) type CheckRoom = fn(&Sheet<'_>, &Room, &mut Vec<Finding>);
pub(crate) type CheckService = fn(&Sheet<'_>, &Element, &ServicePoint, &mut Vec<Finding>);

/// How far from a thing something may stand that counts for it, beside its own greatest side. Where there are
/// several, the greatest counts; around a thing a foot always does.
#[derive(Clone, Copy, Debug)]
pub enum Reach {
    /// A length of the code book.
    Limit(&'static str),
    /// Several of them end to end.
    Sum(&'static [&'static str]),
    Len(Len),
}

/// What always counts of a thing: a wall that closes it into a cavity.
const CAVITY: Len = Len::inches(12);

/// What is judged may lie a little farther off than it is measured: corners are rounded.
const MARGIN: Len = Len::inches(1);

impl Reach {
    /// The greatest of some, by a book.
    pub(crate) fn greatest(reaches: &[Reach], book: &Book) -> Len {
        let len = |reach: &Reach| match reach {
            Reach::Limit(slug) => book.length(slug),
            Reach::Sum(slugs) => slugs.iter().map(|slug| book.length(slug)).sum(),
            Reach::Len(len) => *len,
        };
        reaches.iter().map(len).fold(Len::ZERO, Len::max) + MARGIN
    }
}

impl Check {
    /// How far it looks from a thing or an opening.
    pub(crate) fn reach(&self, book: &Book) -> Len {
        match self {
            Check::Openings(reach, _) => Reach::greatest(reach, book),
            Check::Things(_, reach, _) | Check::Services(_, reach, _) => {
                Reach::greatest(reach, book).max(CAVITY + MARGIN)
            }
            Check::Plan(..) | Check::Room(_) | Check::Rooms(_) => Len::ZERO,
        }
    }
}

impl Check {
    /// Gives everything that is judged, in order: its number among its like, and its judgement.
    pub(crate) fn each(
        &self,
        sheet: &Sheet<'_>,
        mut judge: impl FnMut(usize, &dyn Fn(&mut Vec<Finding>)),
    ) {
        let facts = sheet.facts;
        match *self {
            Check::Plan(_, check) => judge(0, &|out| check(sheet, out)),
            Check::Room(check) | Check::Rooms(check) => {
                facts.rooms.iter().for_each(|r| judge(r.index.0, &|out| check(sheet, r, out)));
            }
            Check::Openings(_, check) => {
                let all = facts.openings.iter().enumerate();
                all.for_each(|(i, o)| judge(i, &|out| check(sheet, o, out)));
            }
            Check::Things(kinds, _, check) => {
                for place in kinds.iter().flat_map(|kind| facts.places(*kind)).copied() {
                    let element = facts.element_at(place);
                    judge(place as usize, &|out| check(sheet, element, out));
                }
            }
            Check::Services(kinds, _, check) => {
                for place in devices::of_kinds(sheet, kinds) {
                    if let Some((element, service)) = devices::service_at(sheet, place) {
                        judge(place as usize, &|out| check(sheet, element, service, out));
                    }
                }
            }
        }
    }
}

impl Rule {
    /// Judges everything that the rule is about, in order.
    pub fn judge(&self, sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
        self.check.each(sheet, |_, judge| judge(out));
    }
}

/// The headings of a rule's page, each on a line of its own, in this order.
pub const HEADINGS: [&str; 7] =
    ["What", "Why", "Source", "How it is measured", "Cannot see", "Exceptions", "Remedies"];

/// What a rule may look at. Measures that several rules ask for are taken once for each sheet.
pub struct Sheet<'a> {
    pub facts: &'a Facts,
    pub book: &'a Book,
    pub(crate) measures: Measures,
}

/// Measures that several rules ask for, each taken when it is asked for first.
#[derive(Debug, Default)]
pub(crate) struct Measures {
    pub keeps: OnceCell<Vec<Keep>>,
    pub fixtures: OnceCell<Vec<(u32, Fixture)>>,
    pub devices: OnceCell<Devices>,
    pub needs: OnceCell<Vec<Need>>,
    pub needs_with_openings: OnceCell<Vec<Need>>,
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
        Sheet { facts, book, measures: Measures::default() }
    }

    pub fn plan(&self) -> &'a Plan {
        &self.facts.plan
    }

    /// The spaces before service points, by service point.
    pub(crate) fn keeps(&self) -> &[Keep] {
        self.measures.keeps.get_or_init(|| rules::keeps(self))
    }

    /// The space before a service point, where one is asked for.
    pub(crate) fn keep(&self, service: ElementId) -> Option<&Keep> {
        let keeps = self.keeps();
        let at = keeps.binary_search_by_key(&service, |keep| keep.service).ok()?;
        keeps.get(at)
    }

    /// The standing bath fixtures, in the order of their ids.
    pub(crate) fn fixtures(&self) -> impl Iterator<Item = Fitted<'a>> + use<'_, 'a> {
        let all = self.measures.fixtures.get_or_init(|| fixtures::standing(self.facts));
        let facts = self.facts;
        all.iter().filter_map(|(place, kind)| match facts.element_at(*place) {
            element @ Element { body: Body::Furnishing(f), .. } => Some((element, f, *kind)),
            _ => None,
        })
    }

    /// What needs an escape opening.
    pub(crate) fn needs(&self) -> &[Need] {
        self.measures.needs.get_or_init(|| need::needs(self))
    }

    /// What needs an escape opening and has openings that lead outdoors.
    pub(crate) fn needs_with_openings(&self) -> &[Need] {
        self.measures.needs_with_openings.get_or_init(|| need::with_openings(self))
    }

    /// The standing service points by kind and by room.
    pub(crate) fn devices(&self) -> &Devices {
        self.measures.devices.get_or_init(|| Devices::new(self))
    }

    /// The standing service points, in the order of their ids.
    pub fn services(&self) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
        self.facts.standing(&[BodyKind::Service]).filter_map(|e| match &e.body {
            Body::Service(s) => Some((e, s)),
            _ => None,
        })
    }
}
