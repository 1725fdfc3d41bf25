//! Gaps round pipes and cables through the floor above.

use plan::detail::Value;
use plan::detail::site::PENETRATIONS;
use plan::element::ServiceKind;

use crate::answer::state_site;
use crate::rules::rooms::uses::habitable;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "penetrations",
    group: Group::Build,
    title: "Gaps through the floor above",
    page: "\
What
Gaps round pipes, ducts, vents and cables at ceiling and floor level are closed with what resists the passage of flame.

Why
A hole round a pipe is a chimney from the basement to the floor above.

Source
IRC R302.11 item 4: 2018 to 2024.

How it is measured
By what is stated of the house, once a room to live in is planned in it. It is asked for until it is stated.

Cannot see
Each gap, and what closes it.

Exceptions
None.

Remedies
Fire-rated caulk, mineral wool or foam that is listed for it.
",
    cites: &["penetrations"],
    check: Check::Plan(&[], check),
    remedies: Some(|_, sheet| vec![state_site(sheet, &PENETRATIONS, Value::Yes)]),
};

const WHY: &str = "A hole round a pipe is a chimney from the basement to the floor above.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let closed = sheet.ask_site(&PENETRATIONS);
    let room = sheet.facts.rooms.iter().find(|room| habitable(room.room_use));
    let Some(room) = room.filter(|_| closed.yes() != Some(true)) else { return };
    // Shown where pipes surely go up, so that it does not cover the tag of a room.
    let risers =
        |k| matches!(k, ServiceKind::WaterHeater | ServiceKind::Furnace | ServiceKind::Panel);
    let riser = sheet.services().find(|(_, point)| risers(point.kind));
    let place = riser.map_or(Place::Label(room.index), |(element, _)| Place::Of(element.id));
    let words = |text: &str| Quantity::Words(text.to_owned());
    let measured = if closed.stated { "open" } else { "not stated" };
    let title = "Close the gaps round pipes and cables through the floor above";
    let citation = sheet.book.cite("penetrations");
    out.push(
        Finding::new(
            Severity::Correction,
            citation,
            RULE.slug,
            Vec::new(),
            Phrase::text(title),
            WHY,
        )
        .figures(words(measured), words("closed"))
        .resting_on(&closed)
        .at(place),
    );
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "penetrations";

    fn den(closed: Value) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&PENETRATIONS, closed)
    }

    #[test]
    fn clear_pass() {
        den(Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let open = den(Value::No).edition(edition);
            open.expect(SLUG, &["correction, measured open, required closed"]);
            let asked = Sample::with_room(RoomUse::Den).edition(edition);
            asked.expect(SLUG, &["verify, measured not stated, required closed"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One finding, whatever the number of rooms.
        let two = den(Value::No).tag(crate::testing::at(10.0, 10.0), "Den", RoomUse::Den);
        assert_eq!(two.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Storage).expect_none(SLUG);
    }
}
