//! Long furred walls.

use geometry::Seg;
use measure::Len;
use plan::detail::wall::FIREBLOCKED;
use plan::element::BodyKind;
use plan::{ElementId, State};

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fireblocking",
    group: Group::Build,
    title: "Fireblocking behind furred walls",
    page: "\
What
The concealed space of a furred wall is closed at floor and ceiling, and upright at least every 10 ft.

Why
A fire behind the board runs along the wall and up into the joists before anyone sees it.

Source
IRC R302.11 (all editions).

How it is measured
The length of each run of new furring. One longer than 10 ft needs upright stops, as many as its length asks for:
n - 1 of them for n stretches of at most 10 ft (derived). The stops are marked on the plan; the top needs one all along.

Cannot see
The blocks themselves: state that they are there. Insulation that fills the space and may count.

Exceptions
Batts that fill the space and are held in place count for the upright stops.

Remedies
Blocks of 2x lumber or 1/2 in board at each mark, and a strip along the top.
",
    cites: &["fireblocking"],
    check: Check::Plan(&[On::Kind(BodyKind::Furring)], check),
    remedies: None,
};

const WHY: &str =
    "A fire behind the board runs along the wall and up into the joists before anyone sees it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("fireblocking");
    let mut long: Vec<(ElementId, Seg)> = Vec::new();
    let furring = sheet.facts.standing(&[BodyKind::Furring]);
    for element in furring.filter(|e| e.state == State::New) {
        let Some(wall) = sheet.facts.wall(element.id) else { continue };
        let open = sheet.ask(element, &FIREBLOCKED).yes() != Some(true);
        if open && wall.line.len() > limit.value {
            long.push((wall.id, wall.line));
        }
    }
    let longest = long.iter().map(|(_, line)| line.len()).max();
    let Some(longest) = longest else { return };
    let title = match long.as_slice() {
        [(one, _)] => {
            format!("{} needs fireblocking along its length", capital(&called(sheet, *one)))
        }
        many => format!("{} runs of furring need fireblocking along their length", many.len()),
    };
    let about = long.iter().map(|(id, _)| *id).collect();
    let citation = limit.citation.clone();
    let mut finding =
        Finding::new(Severity::Advice, citation, RULE.slug, about, Phrase::text(title), WHY)
            .figures(Quantity::Len(longest), Quantity::Len(limit.value));
    for (_, line) in long {
        let length = line.len();
        let stretches = stretches(length, limit.value);
        for i in 1..stretches {
            let along = i64::from(length.units()) * i64::from(i) / i64::from(stretches);
            let along = Len::from_units(i32::try_from(along).unwrap_or(i32::MAX));
            finding = finding.at(Place::Point(line.point_at(along)));
        }
    }
    out.push(finding);
}

/// How many stretches of at most `most` a length has.
fn stretches(length: Len, most: Len) -> i32 {
    (length.units() + most.units() - 1) / most.units()
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::{Furring, Layer, Material};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "fireblocking";

    fn furred(length: Len) -> Sample {
        let room = Sample::shell(&[at(0.0, 0.0), at(300.0, 0.0), at(300.0, 240.0), at(0.0, 240.0)]);
        // The last wall of the shell is 240 in long.
        let host = room.last();
        let layers = vec![
            Layer::new(Material::Gap, Len::inches(1)),
            Layer::new(Material::Stud, Len::inches(3)),
            Layer::new(Material::Board, Len::sixty_fourths(32)),
        ];
        let from = Len::inches(4);
        let furring = Furring { host, from, to: from + length, layers, spacing: Len::inches(16) };
        room.add(State::New, plan::Body::Furring(furring))
    }

    #[test]
    fn clear_pass() {
        furred(Len::inches(100)).expect_none(SLUG);
        furred(Len::inches(200)).state(&FIREBLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let long = furred(Len::inches(200)).edition(edition);
            long.expect(SLUG, &["advice, measured 200\", required 120\""]);
            assert_eq!(long.findings(SLUG)[0].places.len(), 1);
        }
    }

    #[test]
    fn at_the_limit() {
        furred(Len::inches(120)).expect_none(SLUG);
        assert_eq!(furred(Len::inches(120) + Len::UNIT).findings(SLUG).len(), 1);
        // T8 of the estimate: ceil(L / 10) - 1 stops.
        assert_eq!([240, 241, 360].map(|l| stretches(Len::inches(l), Len::inches(120))), [2, 3, 3]);
    }

    #[test]
    fn does_not_apply() {
        furred(Len::inches(200)).existing().expect_none(SLUG);
    }
}
