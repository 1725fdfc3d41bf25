//! Walls that stand on a slab which the soil lifts.

use plan::detail::Value;
use plan::detail::site::SWELLING_SOIL;
use plan::detail::wall::FLOATING_GAP;
use plan::element::{Layer, Material};
use plan::{Body, Element};

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "floating-wall",
    group: Group::Fitness,
    title: "Walls over swelling soil",
    page: "\
What
Where the soil below the slab swells, partitions and furring hang from the joists and keep a gap of 1 1/2 in above the plate on
the slab.

Why
Clay that gets wet lifts the slab, the slab lifts the walls, and the walls lift the floor above.

Source
A regional building department's guide to the inspection of basement frames; others ask for 2 or 3 in. Not in the model code.

How it is measured
By what is stated of the soil and of new walls with studs. Until the gap is stated, one finding asks for all of them.

Cannot see
How the board, the trim, the doors and the stair keep the gap open.

Exceptions
A structural slab, and soil that does not swell.

Remedies
A floating plate below the studs, held by long spikes; ask the department how large the gap must be.
",
    cites: &["floating-wall"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| {
        let gap = sheet.book.length("floating-wall");
        state_all(finding, sheet, &FLOATING_GAP, Value::Length(gap))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if sheet.ask_site(&SWELLING_SOIL).yes() != Some(true) {
        return;
    }
    let limit = sheet.book.len("floating-wall");
    let demand = Demand {
        rule: RULE.slug,
        detail: &FLOATING_GAP,
        fault: "No gap, or too small a gap, over swelling soil",
        many: "walls",
        why: "Clay that gets wet lifts the slab, the slab lifts the walls, and the walls lift the floor above.",
        required: Quantity::Len(limit.value),
        advice: true,
    };
    let framed = fitting(sheet, &FLOATING_GAP).filter(|e| is_new(sheet, e) && has_studs(e));
    judge(sheet, out, &limit.citation, &demand, framed, |a| {
        a.len().is_some_and(|gap| gap >= limit.value)
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

    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "floating-wall";

    fn wall() -> Sample {
        Sample::room(144.0, 120.0)
            .partition(at(60.0, 0.0), at(60.0, 120.0))
            .state_site(&SWELLING_SOIL, Value::Yes)
    }

    fn gap(len: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .partition(at(60.0, 0.0), at(60.0, 120.0))
            .state(&FLOATING_GAP, Value::Length(len))
            .state_site(&SWELLING_SOIL, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        gap(inch(3.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let said = "advice, measured 0\", required 1 1/2\"";
            gap(Len::ZERO).edition(edition).expect(SLUG, &[said]);
            let open = wall().edition(edition);
            open.expect(SLUG, &["advice, measured not stated, required 1 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        gap(inch(1.5)).expect_none(SLUG);
        assert_eq!(gap(inch(1.5) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).partition(at(60.0, 0.0), at(60.0, 120.0)).expect_none(SLUG);
        wall().state_site(&SWELLING_SOIL, Value::No).expect_none(SLUG);
    }
}
