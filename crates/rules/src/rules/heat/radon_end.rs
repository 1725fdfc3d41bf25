//! The end of a radon pipe outdoors.

use plan::detail::heat::{RADON_ABOVE_GROUND, RADON_ABOVE_ROOF, RADON_FROM_OPENING};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-end",
    group: Group::Heat,
    title: "End of a radon pipe",
    page: "\
What
A radon pipe ends at least 12 in above the roof and 10 ft above the ground, and 10 ft from every opening that is less than 2 ft
below it.

Why
What the pipe lifts out of the ground must not come back in by a window.

Source
Appendix AF103 of the residential code (BE in 2024), and the federal agency's standard for radon systems.

How it is measured
By what is stated of the pipe. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The roof. A pipe that blows sideways has other figures: 20 ft above the ground, 10 ft from openings.

Exceptions
None.

Remedies
Have a certified contractor carry the pipe on.
",
    cites: &["radon-above-roof", "radon-above-ground", "radon-from-opening"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "What the pipe lifts out of the ground must not come back in by a window.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "radon-above-roof",
        detail: &RADON_ABOVE_ROOF,
        good: Good::AtLeast,
        fails: "ends too low above the roof",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "radon-above-ground",
        detail: &RADON_ABOVE_GROUND,
        good: Good::AtLeast,
        fails: "ends too low above the ground",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "radon-from-opening",
        detail: &RADON_FROM_OPENING,
        good: Good::AtLeast,
        fails: "ends too near an opening",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::RadonPipe));
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::{Detail, Value};

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "radon-end";

    fn pipe(detail: &'static Detail, len: Len) -> Sample {
        Sample::with(ServiceKind::RadonPipe).state(detail, Value::Length(len))
    }

    const LIMITS: [(&Detail, i32); 3] =
        [(&RADON_ABOVE_ROOF, 12), (&RADON_ABOVE_GROUND, 120), (&RADON_FROM_OPENING, 120)];

    #[test]
    fn clear_pass() {
        LIMITS.iter().for_each(|(d, n)| pipe(d, Len::inches(n * 2)).expect_none(SLUG));
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            for (detail, n) in LIMITS {
                let low = pipe(detail, Len::inches(n / 2)).edition(edition);
                let said = format!("correction, measured {}\", required {n}\"", n / 2);
                low.expect(SLUG, &[&said]);
            }
        }
    }

    #[test]
    fn at_the_limit() {
        for (detail, n) in LIMITS {
            pipe(detail, Len::inches(n)).expect_none(SLUG);
            assert_eq!(pipe(detail, Len::inches(n) - Len::UNIT).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::RadonPipe).expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
