//! A room tried in another use: what it demands, and what it would take.

use std::sync::Arc;

use plan::element::RoomUse;
use plan::{Body, Edit, Element, ElementId, Plan};
use space::{Facts, RoomIndex};

use crate::{
    Book, Demand, Finding, Phrase, Severity, Sheet, check, demands, explain, remedies, rule,
};

/// A room in a use that it may not have now.
#[derive(Clone, Debug)]
pub struct Trial {
    pub room_use: RoomUse,
    pub demands: Vec<Demand>,
    /// What would be found in this use and is no advice, with what cures it.
    pub cures: Vec<Cure>,
}

/// What it takes to be rid of a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cure {
    pub rule: &'static str,
    pub severity: Severity,
    pub title: Phrase,
    /// The first edit that cures it, as it would be called, or what the rule's page says of remedies.
    pub how: Phrase,
}

/// The tag of a room with another use; `None` where it is no room tag.
pub fn in_use(plan: &Plan, tag: ElementId, room_use: RoomUse) -> Option<Element> {
    let mut element = plan.get(tag)?.clone();
    let Body::RoomTag(body) = &mut element.body else { return None };
    body.room_use = room_use;
    Some(element)
}

/// Tries a use for the room that a tag speaks for; `None` where the tag speaks for none. It derives and checks a
/// copy of the plan, so it is for a pane, not for the frame of a drag.
pub fn try_use(plan: &Plan, tag: ElementId, room_use: RoomUse) -> Option<Trial> {
    let tried = plan.with(&Edit::Replace(in_use(plan, tag, room_use)?)).ok()?;
    let facts = space::derive(&Arc::new(tried));
    let room = facts.rooms.iter().find(|r| r.tag == Some(tag))?.index;
    let book = Book::of(&facts.plan.site);
    let demands = demands(&Sheet::new(&facts, &book), room, room_use);
    let cures = check(&facts, &book)
        .iter()
        .filter(|f| f.severity != Severity::Advice && f.set_aside.is_none())
        .filter(|f| concerns(f, &facts, room, tag))
        .map(|f| cure(f, &facts, &book))
        .collect();
    Some(Trial { room_use, demands, cures })
}

/// Whether a finding is about the room: its tag, or an opening of its walls.
fn concerns(finding: &Finding, facts: &Facts, room: RoomIndex, tag: ElementId) -> bool {
    finding.elements.contains(&tag)
        || facts.openings.iter().any(|o| {
            (o.left == Some(room) || o.right == Some(room)) && finding.elements.contains(&o.id)
        })
}

fn cure(finding: &Finding, facts: &Facts, book: &Book) -> Cure {
    let edit = remedies(finding, facts, book).into_iter().next().map(|r| r.label);
    let how = edit.unwrap_or_else(|| {
        let page = rule(finding.rule).map_or("", |r| explain::section(r, "Remedies"));
        Phrase::text(page.lines().collect::<Vec<_>>().join(" "))
    });
    Cure { rule: finding.rule, severity: finding.severity, title: finding.title.clone(), how }
}

#[cfg(test)]
mod tests {
    use measure::System;

    use super::*;
    use crate::Met;
    use crate::testing::{Sample, at};

    /// An office of 10 ft by 12 ft without a window.
    fn office() -> (Arc<Plan>, ElementId) {
        let sample = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Office", RoomUse::Office);
        let tag = sample.last();
        (Arc::clone(&sample.facts().plan), tag)
    }

    #[test]
    fn a_bedroom_takes_an_escape_opening_where_an_office_does_not() {
        let (plan, tag) = office();
        let bedroom = try_use(&plan, tag, RoomUse::Bedroom).expect("a room");
        assert!(bedroom.demands.iter().any(|d| d.met == Met::No && d.text.contains("Escape")));
        let cure = bedroom.cures.iter().find(|c| c.rule == "bedroom-without-escape");
        let cure = cure.expect("the missing way out");
        assert_eq!(cure.severity, Severity::Correction);
        assert!(cure.how.say(System::Imperial).contains("foundation wall"), "{cure:?}");
        let office = try_use(&plan, tag, RoomUse::Office).expect("a room");
        assert!(office.cures.iter().all(|c| c.rule != "bedroom-without-escape"));
        assert!(office.demands.iter().all(|d| d.met != Met::No), "{:?}", office.demands);
    }

    #[test]
    fn the_plan_itself_is_not_touched_and_a_tag_without_a_room_has_no_trial() {
        let (plan, tag) = office();
        let before = plan.clone();
        try_use(&plan, tag, RoomUse::Bedroom);
        assert_eq!(before, plan);
        let loose = Sample::blank().tag(at(0.0, 0.0), "Nowhere", RoomUse::Office);
        assert!(try_use(&loose.facts().plan, loose.last(), RoomUse::Bedroom).is_none());
        assert!(try_use(&plan, ElementId(9_999), RoomUse::Bedroom).is_none());
    }

    #[test]
    fn every_rule_has_something_to_say_of_remedies() {
        for rule in crate::RULES {
            assert!(!explain::section(rule, "Remedies").is_empty(), "{}", rule.slug);
        }
    }
}
