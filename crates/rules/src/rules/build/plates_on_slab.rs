//! Bottom plates on the slab.

use plan::detail::Value;
use plan::detail::wall::TREATED_PLATE;
use plan::element::{Layer, Material};
use plan::{Body, Element};

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "plates-on-slab",
    group: Group::Build,
    title: "Bottom plates on the slab",
    page: "\
What
Plates and sleepers on a slab on the ground are treated or of a durable wood.

Why
The slab is as damp as the ground below it; the plate is what rots first and is the hardest to change.

Source
IRC R317.1 item 3 (2018, 2021), R304.1 (2024).

How it is measured
By what is stated of new partitions and furring with studs. Until it is stated, one finding asks for all of them.

Cannot see
The stamp on the wood.

Exceptions
Where an impervious moisture barrier separates wood and slab; steel.

Remedies
Treated plates, with fasteners that treated wood does not eat.
",
    cites: &["plates-on-slab"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &TREATED_PLATE, TREATED)),
};

const TREATED: Value = Value::Word("treated wood");

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &TREATED_PLATE,
        fault: "Untreated plate on the slab",
        many: "walls",
        why: "The slab is as damp as the ground below it; the plate rots first and is the hardest to change.",
        required: Quantity::Words("treated, or on a barrier".to_owned()),
        advice: false,
    };
    let framed = fitting(sheet, &TREATED_PLATE).filter(|e| is_new(sheet, e) && has_studs(e));
    judge(sheet, out, &sheet.book.cite("plates-on-slab"), &demand, framed, |a| {
        a.is(&["treated wood", "wood on a membrane", "steel"])
    });
}

fn has_studs(element: &Element) -> bool {
    let stud = |layer: &Layer| layer.material == Material::Stud;
    match &element.body {
        Body::Partition(p) => p.layers.iter().any(stud),
        Body::Furring(f) => f.layers.iter().any(stud),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "plates-on-slab";
    const OPEN: &str = "verify, measured not stated, required treated, or on a barrier";

    fn one() -> Sample {
        Sample::room(144.0, 120.0).partition(at(60.0, 0.0), at(60.0, 120.0))
    }

    #[test]
    fn clear_pass() {
        for good in ["treated wood", "wood on a membrane", "steel"] {
            one().state(&TREATED_PLATE, Value::Word(good)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bare = one().edition(edition).state(&TREATED_PLATE, Value::Word("untreated wood"));
            bare.expect(
                SLUG,
                &["correction, measured untreated wood, required treated, or on a barrier"],
            );
            one().edition(edition).expect(SLUG, &[OPEN]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One line for all walls, and one remedy.
        let two = one().partition(at(100.0, 0.0), at(100.0, 120.0));
        two.expect(SLUG, &[OPEN]);
        assert_eq!(two.findings(SLUG)[0].elements.len(), 2);
        assert_eq!(two.remedies(SLUG), ["State of 2 elements “Bottom plate: treated wood”"]);
    }

    #[test]
    fn does_not_apply() {
        one().existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
