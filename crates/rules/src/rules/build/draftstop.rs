//! A large ceiling space under open webs.

use measure::Area;
use plan::CeilingBuild;
use plan::detail::Value;
use plan::detail::site::{DRAFTSTOPPED, FLOOR_ABOVE};

use crate::answer::state_site;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "draftstop",
    group: Group::Build,
    title: "Draftstops in the ceiling space",
    page: "\
What
Where a ceiling is hung below the floor, or closes the space between open-web trusses, that space is divided so that no part
is larger than 1,000 sq ft.

Why
Fire runs in the hidden space from one end of the house to the other.

Source
IRC R302.12: 2018 to 2024 (from memory; the figure is confirmed by several pages).

How it is measured
The net floor of all rooms together, where the ceiling of the site facts is of lay-in tiles, or of board and the floor above
is stated to be of open-web trusses. The space over partitions is taken to be open.

Cannot see
Walls that go up to the floor, and stops that are there: state them.

Exceptions
Solid joists with board fixed to them; open trusses without a ceiling.

Remedies
1/2 in board, 3/8 in panel or the like across the space, in about equal parts.
",
    cites: &["draftstop"],
    check: Check::Plan(&[On::Floors], check),
    remedies: Some(|_, sheet| vec![state_site(sheet, &DRAFTSTOPPED, Value::Yes)]),
};

const WHY: &str = "Fire runs in the hidden space from one end of the house to the other.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let hung = matches!(sheet.plan().site.ceiling, CeilingBuild::LayIn(_));
    let closed = sheet.plan().site.ceiling != CeilingBuild::Open;
    let webs = closed && sheet.ask_site(&FLOOR_ABOVE).is(&["open-web trusses"]);
    let stopped = sheet.ask_site(&DRAFTSTOPPED);
    if !(hung || webs) || stopped.yes() == Some(true) {
        return;
    }
    let limit = sheet.book.area("draftstop");
    let floor: Area = sheet.facts.rooms.iter().map(|room| room.area).sum();
    if floor <= limit.value {
        return;
    }
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        Vec::new(),
        Phrase::text("The ceiling space is not divided"),
        WHY,
    )
    .figures(Quantity::Area(floor), Quantity::Area(limit.value))
    .resting_on(&stopped);
    out.push(match sheet.facts.rooms.first() {
        Some(room) => finding.at(Place::Label(room.index)),
        None => finding,
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "draftstop";

    /// A basement 25 ft deep under lay-in tiles.
    fn tiled(length: f64) -> Sample {
        Sample::room(length, 300.0).site(|s| s.ceiling = CeilingBuild::LayIn(Len::inches(4)))
    }

    #[test]
    fn clear_pass() {
        tiled(240.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let large = tiled(600.0).edition(edition);
            large.expect(SLUG, &["verify, measured 1250.0 sq ft, required 1000.0 sq ft"]);
            let open = large.state_site(&DRAFTSTOPPED, Value::No);
            open.expect(SLUG, &["correction, measured 1250.0 sq ft, required 1000.0 sq ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 40 ft by 25 ft are 1,000 sq ft.
        tiled(480.0).expect_none(SLUG);
        assert_eq!(tiled(480.0 + 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(600.0, 300.0).expect_none(SLUG);
        tiled(600.0).state_site(&DRAFTSTOPPED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn trusses_enclose_a_space_only_with_a_ceiling() {
        let open =
            Sample::room(600.0, 300.0).state_site(&FLOOR_ABOVE, Value::Word("open-web trusses"));
        open.clone().expect_none(SLUG);
        let trusses = open.site(|s| s.ceiling = CeilingBuild::Board(Len::sixty_fourths(32)));
        assert_eq!(trusses.findings(SLUG).len(), 1);
        assert_eq!(trusses.remedies(SLUG), ["State of the site “Ceiling space divided: yes”"]);
    }
}
