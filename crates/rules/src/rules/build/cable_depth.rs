//! Cables near the face of framing, and framing that is too shallow for them.

use measure::Len;
use plan::detail::wall::CABLE_DEPTH;
use plan::element::{Layer, Material};
use plan::{Body, Element};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::new_work;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "cable-depth",
    group: Group::Build,
    title: "Cables near the face of framing",
    page: "\
What
A cable through framing, or the hole for it, lies at least 1 1/4 in behind the face, or a steel plate of 1/16 in covers it.

Why
A screw for the board, or a nail for a picture, goes into the cable.

Source
NEC 300.4(A) and (D) (all editions).

How it is measured
By what is stated of new framing. Until it is stated, a cable is taken to run in the middle of the studs: studs less than
2 1/2 in deep, such as strips of 1 1/2 in on a foundation wall, can't keep the distance, and are marked to verify. That the
middle is half the stud's depth is our own reading; the cable's own thickness is left out.

Cannot see
Cables. Whether any runs in this wall.

Exceptions
Cables in steel conduit.

Remedies
Plates or conduit where the framing is shallow, or deeper studs.
",
    cites: &["cable-depth"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "A screw for the board, or a nail for a picture, goes into the cable.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("cable-depth");
    for wall in new_work(sheet, &CABLE_DEPTH) {
        let answer = sheet.ask(wall, &CABLE_DEPTH);
        let stated = answer.len().filter(|_| answer.stated);
        let Some(depth) = stated.or_else(|| middle(wall)).filter(|depth| *depth < limit.value)
        else {
            continue;
        };
        let name = capital(&called(sheet, wall.id));
        let title = match stated {
            Some(_) => format!("A cable in {name} is too near the face"),
            None => format!("{name} is too shallow for cables without plates"),
        };
        let mut finding = Finding::new(
            Severity::Correction,
            limit.citation.clone(),
            RULE.slug,
            vec![wall.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(depth), Quantity::Len(limit.value));
        if stated.is_none() {
            finding = finding.assuming("a cable runs in the middle of its studs, without plates");
        }
        out.push(finding.at(Place::Of(wall.id)));
    }
}

/// Half the depth of the studs.
fn middle(wall: &Element) -> Option<Len> {
    let layers: &[Layer] = match &wall.body {
        Body::Partition(wall) => &wall.layers,
        Body::Furring(wall) => &wall.layers,
        _ => return None,
    };
    let studs = layers.iter().filter(|layer| layer.material == Material::Stud);
    studs.map(|layer| layer.thickness / 2).min()
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "cable-depth";

    fn furring(stud: Len) -> Sample {
        Sample::with_furring().tune(|e| match &mut e.body {
            Body::Furring(wall) => {
                let studs = wall.layers.iter_mut().filter(|l| l.material == Material::Stud);
                studs.for_each(|layer| layer.thickness = stud);
            }
            other => panic!("{}", other.word()),
        })
    }

    #[test]
    fn clear_pass() {
        furring(inch(3.5)).expect_none(SLUG);
        let plated = furring(inch(1.5)).state(&CABLE_DEPTH, Value::Length(inch(2.0)));
        plated.expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = furring(inch(3.5)).state(&CABLE_DEPTH, Value::Length(inch(0.75)));
            let said = "correction, measured 3/4\", required 1 1/4\"";
            near.edition(edition).expect(SLUG, &[said]);
        }
    }

    #[test]
    fn shallow_studs_are_to_be_verified() {
        furring(inch(1.5)).expect(SLUG, &["verify, measured 3/4\", required 1 1/4\""]);
    }

    #[test]
    fn at_the_limit() {
        furring(inch(2.5)).expect_none(SLUG);
        assert_eq!(furring(inch(2.5) - Len::UNIT - Len::UNIT).findings(SLUG).len(), 1);
        let stated = |len: Len| furring(inch(3.5)).state(&CABLE_DEPTH, Value::Length(len));
        stated(inch(1.25)).expect_none(SLUG);
        assert_eq!(stated(inch(1.25) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        furring(inch(1.5)).existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
