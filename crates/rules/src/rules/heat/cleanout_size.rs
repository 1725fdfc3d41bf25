//! A cleanout that is smaller than its drain.

use plan::detail::plumbing::{DRAIN_PIPE, PLUG_SIZE};
use plan::element::ServiceKind;

use super::told::of_kind;
use crate::rules::access::judge::unless_existing;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "cleanout-size",
    group: Group::Heat,
    title: "Size of a cleanout",
    page: "\
What
A cleanout is as large as the drain that it opens, and 4 in for larger ones.

Why
A small plug lets no tool in that cleans the whole pipe.

Source
IRC P3005.2.5: 2018 to 2024.

How it is measured
By the stated sizes of the cleanout and its drain, both taken as 4 in until they are stated.

Cannot see
Which drain it opens.

Exceptions
That of a stack, and a trap that comes off, may be one size smaller: set the finding aside with that reason.

Remedies
A larger plug.
",
    cites: &["cleanout-size"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "A small plug lets no tool in that cleans the whole pipe.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let most = sheet.book.len("cleanout-size");
    for element in of_kind(sheet, ServiceKind::Cleanout) {
        let (plug, drain) = (sheet.ask(element, &PLUG_SIZE), sheet.ask(element, &DRAIN_PIPE));
        let (Some(size), Some(pipe)) = (plug.len(), drain.len()) else { continue };
        let required = pipe.min(most.value);
        if size >= required {
            continue;
        }
        let title = format!("{} is smaller than its drain", capital(&called(sheet, element.id)));
        let mut finding = Finding::new(
            Severity::Correction,
            most.citation.clone(),
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(size), Quantity::Len(required))
        .resting_on(&plug)
        .resting_on(&drain);
        finding.places.push(Place::Of(element.id));
        out.push(unless_existing(sheet, finding));
    }
}

#[cfg(test)]
mod tests {

    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "cleanout-size";

    fn cleanout(plug: f64, pipe: f64) -> Sample {
        Sample::with(ServiceKind::Cleanout)
            .state(&PLUG_SIZE, Value::Length(inch(plug)))
            .state(&DRAIN_PIPE, Value::Length(inch(pipe)))
    }

    #[test]
    fn clear_pass() {
        cleanout(4.0, 3.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = cleanout(2.0, 3.0).edition(edition);
            small.expect(SLUG, &["correction, measured 2\", required 3\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // As large as the pipe, and never more than 4 in.
        cleanout(3.0, 3.0).expect_none(SLUG);
        cleanout(4.0, 6.0).expect_none(SLUG);
        assert_eq!(cleanout(3.0, 6.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_assumed() {
        let one = Sample::with(ServiceKind::Cleanout).state(&PLUG_SIZE, Value::Length(inch(2.0)));
        one.expect(SLUG, &["verify, measured 2\", required 4\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::Cleanout).expect_none(SLUG);
        Sample::with(ServiceKind::FloorDrain).expect_none(SLUG);
    }
}
