//! Wood fixed straight to the concrete.

use plan::detail::Value;
use plan::detail::wall::FURRING_WOOD;
use plan::element::{BodyKind, Material};
use plan::{Body, Element};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::{is_new, state_all};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "furring-on-concrete",
    group: Group::Build,
    title: "Wood straight on a foundation wall",
    page: "\
What
Wood furring or framing that is fixed directly to the inside of a concrete or masonry wall below grade is treated, or a
vapor retarder lies between.

Why
The wall is damp for as long as it stands, and wood that touches it rots from behind.

Source
IRC R317.1 item 7 (2018, 2021), R304.1 (2024).

How it is measured
By the layers of new furring: framing is the first layer at the concrete; and by what is stated of that wood. Until it is stated,
the finding is to be verified.

Cannot see
How much of the wall is below grade.

Exceptions
Stud walls that stand off the concrete.

Remedies
Foam or a gap of 1/2 in between, or treated wood.
",
    cites: &["furring-on-concrete"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FURRING_WOOD, Value::Word("treated wood"))),
};

const WHY: &str =
    "The wall is damp for as long as it stands, and wood that touches it rots from behind.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    sheet.facts.standing(&[BodyKind::Furring]).for_each(|element| one(sheet, element, out));
}

fn one(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some(wall) = sheet.facts.wall(element.id).filter(|_| is_new(sheet, element)) else {
        return;
    };
    let Body::Furring(furring) = &element.body else { return };
    let first = furring.layers.first().map(|l| l.material);
    if !matches!(first, Some(Material::Stud | Material::Panel)) {
        return;
    }
    let wood = sheet.ask(element, &FURRING_WOOD);
    if wood.is(&["treated wood", "a membrane between", "steel"]) {
        return;
    }
    let title =
        format!("{} is wood straight on the foundation wall", capital(&called(sheet, wall.id)));
    let finding = Finding::new(
        Severity::Correction,
        sheet.book.cite("furring-on-concrete"),
        RULE.slug,
        vec![wall.id],
        Phrase::text(title),
        WHY,
    )
    .figures(
        Quantity::Words("wood on concrete".to_owned()),
        Quantity::Words("treated wood, or a vapor retarder between".to_owned()),
    )
    .at(Place::Along(wall.id));
    out.push(if wood.stated {
        finding
    } else {
        finding.assuming("the wood is not treated and nothing lies between")
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::element::{Furring, Layer};
    use plan::{Edition, State};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "furring-on-concrete";
    const WOOD: &str =
        "verify, measured wood on concrete, required treated wood, or a vapor retarder between";

    fn furred(first: Material) -> Sample {
        let room = Sample::shell(&[at(0.0, 0.0), at(144.0, 0.0), at(144.0, 120.0), at(0.0, 120.0)]);
        let host = room.last();
        let layers = [first, Material::Stud, Material::Board]
            .map(|m| Layer::new(m, Len::inches(2)))
            .to_vec();
        let (to, spacing) = (Len::inches(500), Len::inches(16));
        let furring = Furring { host, from: Len::ZERO, to, layers, spacing };
        room.add(State::New, Body::Furring(furring))
    }

    #[test]
    fn clear_pass() {
        furred(Material::Foam).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            furred(Material::Stud).edition(edition).expect(SLUG, &[WOOD]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A gap keeps the wood off, a panel does not.
        furred(Material::Gap).expect_none(SLUG);
        furred(Material::Panel).expect(SLUG, &[WOOD]);
    }

    #[test]
    fn by_what_is_stated() {
        let stated = |word| furred(Material::Stud).state(&FURRING_WOOD, Value::Word(word));
        for good in ["treated wood", "a membrane between", "steel"] {
            stated(good).expect_none(SLUG);
        }
        let bare = stated("nothing").findings(SLUG);
        assert_eq!(bare[0].severity, Severity::Correction);
    }

    #[test]
    fn does_not_apply() {
        furred(Material::Stud).existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).partition(at(60.0, 0.0), at(60.0, 120.0)).expect_none(SLUG);
    }
}
