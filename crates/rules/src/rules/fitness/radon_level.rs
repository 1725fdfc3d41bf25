//! Radon that is too high, or that nobody has measured.

use plan::detail::site::RADON;

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-level",
    group: Group::Fitness,
    title: "Radon in the basement",
    page: "\
What
The lowest level that is lived in is tested for radon. At 4.0 pCi/L or more the house is fixed; from 2.0 on it is worth
considering.

Why
Radon is the second cause of lung cancer, and a basement that becomes a living room is where it is breathed.

Source
ANSI/AARST MAH-2019 (7.1, 8.5.9.2) and the federal agency's guide for the public; the world health organization names 2.7.

How it is measured
By the stated result in tenths of a picocurie per litre. Where rooms are lived in and nothing is stated, a test is advised.

Cannot see
The kind, place and length of the test: a short test wants closed windows for 12 hours before and during it.

Exceptions
None.

Remedies
A system below the slab by a certified contractor; leave a chase of 4 in and a place for the fan before you frame. Sealing
alone doesn't suffice.
",
    cites: &["radon-act", "radon-consider"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Radon is the second cause of lung cancer, and here it will be breathed.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !is_finished(sheet) {
        return;
    }
    let act = sheet.book.count("radon-act").value;
    let consider = sheet.book.count("radon-consider");
    let say = |tenths: u32| format!("{}.{} pCi/L", tenths / 10, tenths % 10);
    let required = format!("below {}", say(act));
    let result = sheet.ask_site(&RADON).number();
    let (title, slug, measured) = match result {
        None => ("Test for radon before you finish the basement", "radon-act", "not stated".into()),
        Some(n) if n >= act => ("Radon is at the level at which to act", "radon-act", say(n)),
        Some(n) if n >= consider.value => {
            ("Radon is at a level at which to consider a system", "radon-consider", say(n))
        }
        Some(_) => return,
    };
    let citation = sheet.book.cite(slug);
    out.push(advice(sheet, RULE.slug, citation, title, WHY, (measured, required)));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "radon-level";

    fn den(tenths: u32) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&RADON, Value::Number(tenths))
    }

    #[test]
    fn clear_pass() {
        den(5).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let high = den(85).edition(edition);
            high.expect(SLUG, &["advice, measured 8.5 pCi/L, required below 4.0 pCi/L"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 4.0 is acted upon, 3.9 considered, 2.0 considered, 1.9 recorded.
        let title = |n| den(n).findings(SLUG).first().map(|f| f.citation.slug);
        assert_eq!(title(40), Some("radon-act"));
        assert_eq!(title(39), Some("radon-consider"));
        assert_eq!(title(20), Some("radon-consider"));
        assert_eq!(title(19), None);
    }

    #[test]
    fn a_test_is_advised() {
        let untested = Sample::with_room(RoomUse::Den);
        untested.expect(SLUG, &["advice, measured not stated, required below 4.0 pCi/L"]);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Storage).expect_none(SLUG);
    }
}
