//! Alarms on the other storeys, when a basement is finished.

use plan::detail::site::ALARMS_ELSEWHERE;
use plan::{Body, House, State, detail::Value};

use crate::answer::state_site;
use crate::rules::rooms::uses::habitable;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarms-elsewhere",
    group: Group::Electrical,
    title: "Alarms of the other storeys",
    page: "\
What
When a basement is finished with a permit, the smoke and carbon monoxide alarms of the whole house are brought to the layout
of a new one.

Why
The old alarm upstairs is often long past its years, or was never there.

Source
IRC R314.2.2, R315.2.2 (2018, 2021), R310.2.2, R311.2.2 (2024).

How it is measured
In an existing house in which rooms are made to live in, by what is stated of the other storeys; until it is stated it is
asked for.

Cannot see
The other storeys.

Exceptions
Work outdoors, and plumbing or mechanical work alone.

Remedies
Show the alarms of all storeys on the permit drawing: in each bedroom, outside the bedrooms, on each storey.
",
    cites: &["alarms-elsewhere"],
    check: Check::Plan(&[], check),
    remedies: Some(|_, sheet| vec![state_site(sheet, &ALARMS_ELSEWHERE, Value::Yes)]),
};

const WHY: &str = "The old alarm upstairs is often long past its years, or was never there.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let made = sheet.facts.rooms.iter().filter(|room| habitable(room.room_use)).find(|room| {
        let tag = room.tag.and_then(|id| sheet.plan().get(id));
        tag.is_some_and(|tag| tag.state == State::New)
    });
    let answer = sheet.ask_site(&ALARMS_ELSEWHERE);
    let Some(made) = made else { return };
    if sheet.plan().site.house == House::New || answer.yes() == Some(true) {
        return;
    }
    // Painted at the foot of the stair up, or where there is none in the room.
    let foot = sheet.plan().elements().iter().filter(|e| e.stands()).find_map(|e| match &e.body {
        Body::Stair(_) => Some(Place::Of(e.id)),
        _ => None,
    });
    let measured = if answer.stated { "not as in a new house" } else { "not stated" };
    let citation = sheet.book.cite(RULE.slug);
    let title = Phrase::text("The alarms of the other storeys are part of the work");
    out.push(
        Finding::new(Severity::Correction, citation, RULE.slug, Vec::new(), title, WHY)
            .figures(
                Quantity::Words(measured.to_owned()),
                Quantity::Words("as in a new house".to_owned()),
            )
            .resting_on(&answer)
            .at(foot.unwrap_or(Place::Label(made.index))),
    );
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "alarms-elsewhere";

    fn den() -> Sample {
        Sample::with_room(RoomUse::Den)
    }

    #[test]
    fn clear_pass() {
        den().state_site(&ALARMS_ELSEWHERE, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let old = den().edition(edition).state_site(&ALARMS_ELSEWHERE, Value::No);
            let said = "correction, measured not as in a new house, required as in a new house";
            old.expect(SLUG, &[said]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: it is asked for once.
        den().expect(SLUG, &["verify, measured not stated, required as in a new house"]);
        assert_eq!(den().remedies(SLUG), ["State of the site “Alarms upstairs: yes”"]);
    }

    #[test]
    fn does_not_apply() {
        den().new_house().expect_none(SLUG);
        den().existing().expect_none(SLUG);
        Sample::with_room(RoomUse::Storage).expect_none(SLUG);
    }
}
