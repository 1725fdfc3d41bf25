//! Light joists without a membrane under them.

use measure::Len;
use plan::CeilingBuild;
use plan::detail::site::FLOOR_ABOVE;

use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "floor-membrane",
    group: Group::Build,
    title: "Board under the floor above",
    page: "\
What
The underside of a floor of I-joists or open-web trusses gets 1/2 in gypsum board, 5/8 in wood panel, or the like.

Why
Light joists burn through in minutes, under the feet of whoever comes to help.

Source
IRC R302.13: 2018 to 2024. Several states have struck it out for older floors.

How it is measured
By what is stated of the floor above and by the ceiling of the site facts: board of 1/2 in or more serves; open joists and
lay-in tiles don't.

Cannot see
Patches that may stay open, up to 80 sq ft together with fireblocks around.

Exceptions
Solid joists of 2x10 or more; sprinklers below; a crawl space without storage or appliances. The demand is made when the floor
is built: in a house that stands it is to be verified.

Remedies
A gypsum ceiling before the tiles.
",
    cites: &["floor-membrane"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Light joists burn through in minutes, under the feet of whoever comes to help.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let site = &sheet.plan().site;
    let floor = sheet.ask_site(&FLOOR_ABOVE);
    if site.sprinklers || !floor.is(&["solid joists under 2x10", "I-joists", "open-web trusses"]) {
        return;
    }
    let limit = sheet.book.len("floor-membrane");
    let (measured, thickness) = match site.ceiling {
        CeilingBuild::Open => ("open joists", Len::ZERO),
        CeilingBuild::LayIn(_) => ("lay-in tiles", Len::ZERO),
        CeilingBuild::Board(thickness) => ("board", thickness),
    };
    if thickness >= limit.value {
        return;
    }
    let measured = match thickness {
        Len::ZERO => Quantity::Words(measured.to_owned()),
        thickness => Quantity::Len(thickness),
    };
    let title = format!("The {} above are not covered", floor.word().unwrap_or("joists"));
    let mut finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        Vec::new(),
        Phrase::text(title),
        WHY,
    )
    .figures(measured, Quantity::Len(limit.value));
    if let Some(room) = sheet.facts.rooms.first() {
        finding = finding.at(Place::Label(room.index));
    }
    out.push(match site.house {
        plan::House::New => finding,
        plan::House::Existing => {
            finding.assuming("the department holds a floor that stands to the demand")
        }
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "floor-membrane";

    fn under(floor: &'static str, ceiling: CeilingBuild) -> Sample {
        Sample::room(144.0, 120.0)
            .new_house()
            .state_site(&FLOOR_ABOVE, Value::Word(floor))
            .site(|s| s.ceiling = ceiling)
    }

    const HALF: Len = Len::sixty_fourths(32);

    #[test]
    fn clear_pass() {
        under("solid joists", CeilingBuild::Open).expect_none(SLUG);
        under("I-joists", CeilingBuild::Board(Len::sixty_fourths(40))).expect_none(SLUG);
        // Solid joists need it too where they are smaller than 2x10.
        assert_eq!(under("solid joists under 2x10", CeilingBuild::Open).findings(SLUG).len(), 1);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let open = under("I-joists", CeilingBuild::Open).edition(edition);
            open.expect(SLUG, &["correction, measured open joists, required 1/2\""]);
        }
        let old = under("I-joists", CeilingBuild::LayIn(Len::inches(4)))
            .site(|s| s.house = plan::House::Existing);
        old.expect(SLUG, &["verify, measured lay-in tiles, required 1/2\""]);
    }

    #[test]
    fn at_the_limit() {
        under("open-web trusses", CeilingBuild::Board(HALF)).expect_none(SLUG);
        let thin = under("open-web trusses", CeilingBuild::Board(HALF - Len::UNIT));
        assert_eq!(thin.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        under("I-joists", CeilingBuild::Open).site(|s| s.sprinklers = true).expect_none(SLUG);
        // Solid joists are assumed until it is stated.
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
