//! Supply air in framing cavities.

use plan::detail::overhead::DUCT_MADE_OF;

use super::told::{self, Demand, Good};
use crate::rules::stated::fitting;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "duct-cavity",
    group: Group::Heat,
    title: "Framing as a duct",
    page: "\
What
Stud and joist spaces may carry return air, of one floor alone, but no supply air.

Why
Warm damp air in the framing leaks, wets the wood and carries fire.

Source
IRC M1601.1.1; the energy part bans cavities as ducts altogether (N1103.3, from memory).

How it is measured
By what is stated of a duct; it is taken for a made one.

Cannot see
Fireblocks in its way, and joints.

Exceptions
None.

Remedies
A metal duct in the cavity.
",
    cites: &["duct-cavity"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Warm damp air in the framing leaks, wets the wood and carries fire.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "duct-cavity",
    detail: &DUCT_MADE_OF,
    good: Good::Words(&["metal or flexible duct", "framing, return air"]),
    fails: "blows supply air through the framing",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, fitting(sheet, &DUCT_MADE_OF));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{Sample, at};
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::{OverheadKind, ServiceKind};

    const SLUG: &str = "duct-cavity";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .overhead(OverheadKind::Duct, at(0.0, 60.0), at(144.0, 60.0), 20.0, 84.0)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing()
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample =
                good().edition(edition).state(&DUCT_MADE_OF, Value::Word("framing, supply air"));
            sample.expect(SLUG, &["correction, measured made of: framing, supply air, required metal or flexible duct"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&DUCT_MADE_OF, Value::Word("metal or flexible duct")).expect_none(SLUG);
        good().state(&DUCT_MADE_OF, Value::Word("framing, return air")).expect_none(SLUG);
        assert_eq!(
            good().state(&DUCT_MADE_OF, Value::Word("framing, supply air")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
