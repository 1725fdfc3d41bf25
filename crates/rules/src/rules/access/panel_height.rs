//! Clear height of the working space at an electrical panel.

use geometry::Shape;
use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, House};

use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::keep::KEEP;

pub(crate) const RULE: Rule = Rule {
    slug: "panel-height",
    group: Group::Access,
    title: "Clear height of the working space at the electrical panel",
    page: "\
What
The working space before an electrical panel is 6 ft 6 in high, or as high as the top of the panel where that is more.

Why
Whoever works on a live panel must be able to stand upright before it.

Source
NEC 110.26(A)(3) and its exception 2.

How it is measured
From the finished floor to the ceiling or the lowest beam, duct, pipe run or soffit that hangs over the working space, at
the place across where the space is highest.

Cannot see
The rating of the panel, and pipes and lights that are not drawn.

Exceptions
In an existing dwelling, a panel of 200 A or less may stand where the height is less: the finding is then one to verify,
for the rating is not in the plan.

Remedies
None is offered: raising a duct or a beam is work for its own trade.
",
    cites: &["panel-height"],
    check: Check::Services(&[ServiceKind::Panel], KEEP, check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, element: &Element, _: &ServicePoint, out: &mut Vec<Finding>) {
    let Some(keep) = sheet.keep(element.id) else { return };
    let floor = sheet.plan().site.floor_build;
    let required = keep.space.top - floor;
    let Some((height, ring)) = keep.head.clone().filter(|(height, _)| *height < required) else {
        return;
    };
    let region = Shape { outer: ring.clone(), holes: Vec::new() };
    let mut elements = vec![element.id];
    let over = sheet.facts.overheads_near(region.bounds());
    elements.extend(over.filter(|o| o.clear < required && o.hangs_over(&region)).map(|o| o.id));
    let title = format!("Too little height in front of electrical panel {}", element.name());
    let finding = Finding::new(
        Severity::Correction,
        sheet.book.cite("panel-height"),
        RULE.slug,
        elements,
        Phrase::text(title),
        "Whoever works on a live panel must be able to stand upright before it.",
    )
    .figures(Quantity::Len(height), Quantity::Len(required))
    .at(Place::Area(ring));
    out.push(match sheet.plan().site.house {
        House::New => finding,
        House::Existing => finding.assuming(
            "the panel is rated more than 200 A: up to that, an existing dwelling is excepted",
        ),
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::{OverheadKind, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "panel-height";

    /// A new house whose ceiling is `under` above the slab.
    fn under_a_ceiling(under: Len) -> Sample {
        Sample::room(144.0, 120.0).new_house().site(|s| s.joist_underside = under).service(
            ServiceKind::Panel,
            at(72.0, 0.0),
            Facing::NORTH,
        )
    }

    /// A soffit along the wall with the panel, 24 in wide, over the whole room.
    fn soffit(under: f64) -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .overhead(OverheadKind::Soffit, at(0.0, 24.0), at(144.0, 24.0), 24.0, under)
    }

    #[test]
    fn clear_pass() {
        under_a_ceiling(inch(96.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        under_a_ceiling(inch(76.0)).expect(SLUG, &["correction, measured 76\", required 78\""]);
    }

    #[test]
    fn at_the_limit() {
        under_a_ceiling(inch(78.0)).expect_none(SLUG);
        under_a_ceiling(inch(78.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 77 15/16\", required 78\""]);
        // From the finished floor.
        under_a_ceiling(inch(78.0))
            .site(|s| s.floor_build = inch(0.5))
            .expect(SLUG, &["correction, measured 77 1/2\", required 78\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .site(|s| s.joist_underside = inch(70.0))
            .service(ServiceKind::Cleanout, at(72.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    /// services.md T7 AX3: soffit at 76 in, existing house, panel of 200 A: allowed by exception.
    #[test]
    fn an_existing_house_is_one_to_verify() {
        soffit(76.0).expect(SLUG, &["verify, measured 76\", required 78\""]);
    }

    /// services.md T7 AX4: the same in a new house.
    #[test]
    fn a_new_house_is_one_to_correct() {
        soffit(76.0).new_house().expect(SLUG, &["correction, measured 76\", required 78\""]);
    }

    /// services.md T7 AX6: a duct crossing in front of the panel at 82 in.
    #[test]
    fn a_duct_at_82_in_is_above_it() {
        Sample::room(144.0, 120.0)
            .new_house()
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .overhead(OverheadKind::Duct, at(0.0, 20.0), at(144.0, 20.0), 12.0, 82.0)
            .expect_none(SLUG);
    }

    #[test]
    fn the_space_slides_away_from_a_low_duct() {
        let duct = |x: f64| {
            Sample::room(144.0, 120.0)
                .new_house()
                .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
                .overhead(OverheadKind::Duct, at(x, 0.0), at(x, 120.0), 12.0, 70.0)
        };
        duct(86.0).expect_none(SLUG);
        duct(84.0).expect(SLUG, &["correction, measured 70\", required 78\""]);
    }
}
