//! A smoke alarm that the cooker sets off.

use geometry::gap;
use plan::detail::electrical::ALARM_SENSES;
use plan::element::{BodyKind, Furnishing, ServiceKind};
use plan::{Body, Edition, Element};

use super::devices::of_kind;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarm-near-cooker",
    group: Group::Electrical,
    title: "Distance of a smoke alarm from a cooker",
    page: "\
What
A smoke alarm keeps its distance from a permanent cooking appliance. 2018 and 2021: 20 ft where it senses by ions, 10 ft with
a silencer, 6 ft where it senses by light. 2024: 10 ft for every kind, 6 ft where it can't be placed otherwise.

Why
An alarm that goes off over every breakfast is taken down.

Source
IRC R314.3.1 (2018, 2021), R310.3.1 (2024).

How it is measured
Straight from the box of the cooker to the outline of the alarm, walls not counted. Cookers are known by their names
(range, cooker, stove, cooktop, oven). How the alarm senses is as stated; until then light is assumed.

Cannot see
Walls and doors between them, which help.

Exceptions
2024: down to 6 ft where the alarm could not be placed as the code asks otherwise.

Remedies
Move the alarm, or take one that senses by light.
",
    cites: &["alarm-cooker-light", "alarm-cooker-ions", "alarm-cooker-silencer"],
    check: Check::Plan(&[On::Service(ServiceKind::SmokeAlarm), On::Kind(BodyKind::Furnishing)], check),
    remedies: None,
};

const WHY: &str = "An alarm that goes off over every breakfast is taken down.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let cookers: Vec<(&Element, &Furnishing)> = sheet
        .facts
        .standing(&[BodyKind::Furnishing])
        .filter_map(|e| match &e.body {
            Body::Furnishing(f) if cooks(f) => Some((e, f)),
            _ => None,
        })
        .collect();
    if cookers.is_empty() {
        return;
    }
    for (element, alarm) in of_kind(sheet, ServiceKind::SmokeAlarm) {
        let senses = sheet.ask(element, &ALARM_SENSES);
        let limit = sheet.book.len(match senses.word() {
            Some("ions") => "alarm-cooker-ions",
            Some("ions, with a silencer") => "alarm-cooker-silencer",
            _ => "alarm-cooker-light",
        });
        for (cooker, thing) in &cookers {
            let gap = gap(&alarm.placed().corners(), &thing.placed().corners());
            if gap.len >= limit.value {
                continue;
            }
            let title = format!(
                "{} is too near to {}",
                capital(&called(sheet, element.id)),
                called(sheet, cooker.id)
            );
            let finding = Finding::new(
                Severity::Correction,
                limit.citation.clone(),
                RULE.slug,
                vec![element.id, cooker.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(gap.len), Quantity::Len(limit.value))
            .at(Place::Span(gap.from, gap.to));
            out.push(match sheet.book.edition() {
                // Every kind is alike, and 6 ft may do.
                Edition::E2024 => finding.assuming("the alarm can be placed as asked elsewhere"),
                _ => finding.resting_on(&senses),
            });
        }
    }
}

/// Whether a thing cooks, by the words of its name.
fn cooks(thing: &Furnishing) -> bool {
    thing.is_called(&["range", "cooker", "stove", "cooktop", "oven"])
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "alarm-near-cooker";

    /// A range 30 in wide, and an alarm whose near edge is `off` from it.
    fn kitchen(off: f64) -> Sample {
        Sample::room(480.0, 120.0)
            .furnishing(at(15.0, 0.0), Facing::NORTH, 30.0, 24.0)
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "range".to_owned(),
                other => panic!("{}", other.word()),
            })
            .service(ServiceKind::SmokeAlarm, at(30.0 + off + 3.0, 10.0), Facing::NORTH)
            .fresh()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            kitchen(250.0).edition(edition).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        let light = Value::Word("light (photoelectric)");
        for edition in [Edition::E2018, Edition::E2021] {
            kitchen(60.0)
                .state(&ALARM_SENSES, light)
                .edition(edition)
                .expect(SLUG, &["correction, measured 60\", required 72\""]);
        }
        kitchen(60.0)
            .state(&ALARM_SENSES, light)
            .edition(Edition::E2024)
            .expect(SLUG, &["verify, measured 60\", required 120\""]);
        kitchen(60.0).expect(SLUG, &["verify, measured 60\", required 72\""]);
    }

    #[test]
    fn at_the_limit() {
        let old =
            [("light (photoelectric)", 72.0), ("ions, with a silencer", 120.0), ("ions", 240.0)];
        for (senses, limit) in old {
            let alarm = |off| kitchen(off).state(&ALARM_SENSES, Value::Word(senses));
            alarm(limit).expect_none(SLUG);
            assert_eq!(alarm(limit - 1.0 / 64.0).findings(SLUG).len(), 1, "{senses}");
            let new = |off| alarm(off).edition(Edition::E2024);
            new(120.0).expect_none(SLUG);
            assert_eq!(new(120.0 - 1.0 / 64.0).findings(SLUG).len(), 1, "{senses}");
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::SmokeAlarm, at(40.0, 10.0), Facing::NORTH)
            .furnishing(at(70.0, 0.0), Facing::NORTH, 30.0, 24.0)
            .expect_none(SLUG);
    }
}
