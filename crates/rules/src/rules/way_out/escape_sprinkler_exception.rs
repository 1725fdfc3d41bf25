//! A sleeping room that rests on the sprinkler exception.

use super::choice::{nearest, whose};
use super::need::{SprinklerPath, bedrooms, sprinkler_exception};
use crate::rules::rooms::words::capital;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-sprinkler-exception",
    group: Group::WayOut,
    title: "Sleeping room that rests on the sprinkler exception",
    page: "\
What
In a sprinklered basement a sleeping room needs no escape opening of its own, if the basement has a way
out and one escape opening, or two ways out.

Why
The sprinklers buy the time to reach another way out. Without them, or with a system of another kind,
the room has none.

Source
IRC R310.1 exception 2 (2018, 2021), R319.1 exception 3 (2024).

How it is measured
Stairs and outside doors that meet the demands on an escape opening count as ways out. An outside door
is not counted twice, as a way out and as the escape opening.

Cannot see
Whether the sprinkler system is of the kind that the code names (P2904 or NFPA 13D) and covers the
whole basement. Whether the stair leads to the required egress door.

Exceptions
None.

Remedies
None.
",
    cites: &["basement-sprinkler"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "The room has no escape opening of its own and rests on the sprinklers: only a system of the kind \
                   that the code names gives this exception.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let Some(path) = sprinkler_exception(sheet) else { return };
    for need in bedrooms(sheet) {
        let own = nearest(sheet, need.room).is_some_and(|(_, v)| v.corrections == 0);
        let Some(index) = need.room.filter(|_| !own) else { continue };
        let room = sheet.facts.room(index);
        let has = match path {
            SprinklerPath::StairAndOpening => "a way out and an escape opening",
            SprinklerPath::TwoWaysOut => "two ways out",
        };
        let title = format!("{} rests on the sprinkler exception", capital(&whose(sheet, need)));
        out.push(
            Finding::new(
                Severity::Verify,
                sheet.book.cite("basement-sprinkler"),
                RULE.slug,
                room.tag.into_iter().collect(),
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words(format!("sprinklers, {has}")),
                Quantity::Words("a system to P2904 or NFPA 13D".to_owned()),
            )
            .assuming("the sprinkler system is of the kind that the code names")
            .at(Place::Floor(room.index)),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::RoomUse;

    use crate::rules::way_out::sample::{bare_bedroom, bedroom, good_window, south, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "escape-sprinkler-exception";
    const MISSING: &str = "bedroom-without-escape";

    fn sprinklered(sample: Sample) -> Sample {
        sample.site(|s| s.sprinklers = true)
    }

    /// A bedroom without a window east of an open part with the stair.
    fn two_rooms() -> Sample {
        Sample::room(360.0, 200.0)
            .partition(at(200.0, 0.0), at(200.0, 200.0))
            .tag(at(280.0, 100.0), "Guest room", RoomUse::Bedroom)
            .stair(at(100.0, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        sprinklered(bedroom(good_window())).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let verify = "verify, measured sprinklers, a way out and an escape opening, required a system to \
                      P2904 or NFPA 13D";
        for edition in Edition::ALL {
            let sample = sprinklered(with_window(two_rooms(), good_window())).edition(edition);
            sample.expect(SLUG, &[verify]);
            sample.expect_none(MISSING);
        }
    }

    #[test]
    fn at_the_limit() {
        // One way out without an escape opening is one short of the condition.
        let one = sprinklered(two_rooms());
        one.expect_none(SLUG);
        assert_eq!(one.findings(MISSING).len(), 1);
        // A second way out meets it.
        let host = south(&one);
        let two = one.door(host, 20.0, 36.0);
        let verify =
            "verify, measured sprinklers, two ways out, required a system to P2904 or NFPA 13D";
        two.expect(SLUG, &[verify]);
        two.expect_none(MISSING);
    }

    #[test]
    fn does_not_apply() {
        let dry = with_window(two_rooms(), good_window());
        dry.expect_none(SLUG);
        assert_eq!(dry.findings(MISSING).len(), 1);
        // An outside door is not counted both as the way out and as the escape opening.
        let sample = bare_bedroom();
        let host = south(&sample);
        let alone = sprinklered(
            Sample::room(360.0, 200.0)
                .partition(at(200.0, 0.0), at(200.0, 200.0))
                .tag(at(280.0, 100.0), "Guest room", RoomUse::Bedroom)
                .door(host, 20.0, 36.0),
        );
        alone.expect_none(SLUG);
        assert_eq!(alone.findings(MISSING).len(), 1);
    }
}
