//! The way out past the open door of an electrical panel.

use geometry::Facing;
use measure::Len;
use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, ElementId};

use crate::front::{Face, Space};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

use super::panel;

pub(crate) const RULE: Rule = Rule {
    slug: "panel-open-door",
    group: Group::Access,
    title: "Way past the panel's open door",
    page: "\
What
With the panel's door open, the way into and out of the working space is at least 24 in wide and 6 1/2 ft high.

Why
Who works on a live panel must get away from it, also past its open door.

Source
NEC 110.26 (2023, for the 2024 edition). It is new there: the older editions have no such figure.

How it is measured
The door is taken to be as wide as the panel, hinged at one side and open at 90 degrees. From before the panel three ways are
tried: straight out, to the side away from the door, and past the end of the door. One of them must be free over 24 in, as
far as the working space reaches and 24 in beyond. Both hinge sides are tried.

Cannot see
At which side the door is hinged and its true width: so the finding is always one to verify. How the way goes on: ways in
are looked at by other rules.

Exceptions
None.

Remedies
A door that is hinged at the other side, or more room before the panel.
",
    cites: &["panel-open-door"],
    check: Check::Services(&[ServiceKind::Panel], &[Reach::Sum(&["panel-depth", "panel-depth", "panel-open-door"])], check),
    remedies: None,
};

const WHY: &str = "Who works on a live panel must get away from it, also past its open door.";

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("panel-open-door");
    if limit.value == Len::ZERO {
        return;
    }
    let stopped: Vec<(Hinge, Len)> = [Hinge::Right, Hinge::Left]
        .into_iter()
        .filter_map(|hinge| Some((hinge, narrow(sheet, element.id, service, hinge, limit.value)?)))
        .collect();
    let Some((hinge, widest)) = stopped.iter().copied().min_by_key(|(_, widest)| *widest) else {
        return;
    };
    let title = format!("The open door of electrical panel {} bars the way", element.name());
    let face = Face::of(service.placed());
    let door = face.ring(-(service.width / 2), service.width, service.width);
    let finding = Finding::new(
        Severity::Verify,
        limit.citation.clone(),
        RULE.slug,
        vec![element.id],
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(widest), Quantity::Len(limit.value))
    .at(Place::Area(door))
    .assuming("the door is as wide as the panel");
    out.push(if stopped.len() == 1 {
        finding.assuming(format!("it is hinged at the {}, as one faces it", hinge.word()))
    } else {
        finding
    });
}

/// The side of the door's hinge, as one faces the panel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Hinge {
    Left,
    Right,
}

impl Hinge {
    fn word(self) -> &'static str {
        match self {
            Hinge::Left => "left",
            Hinge::Right => "right",
        }
    }

    /// The side of the leaf, for one who looks the way the panel faces.
    fn side(self, facing: Facing) -> Facing {
        match self {
            Hinge::Right => facing.left(),
            Hinge::Left => facing.left().back(),
        }
    }
}

/// The widest way out past a door that is open, where every one is narrower than asked for.
fn narrow(
    sheet: &Sheet<'_>,
    id: ElementId,
    panel: &ServicePoint,
    hinge: Hinge,
    asked: Len,
) -> Option<Len> {
    let exits = exits(sheet, panel, hinge, asked);
    let fits = |width: Len| exits.iter().any(|exit| exit.is_free(sheet, id, width));
    if fits(asked) {
        return None;
    }
    let (mut low, mut high) = (0, asked.units());
    while high - low > 1 {
        let middle = low + (high - low) / 2;
        if fits(Len::from_units(middle)) { low = middle } else { high = middle }
    }
    Some(Len::from_units(low))
}

/// A way out: a body as wide as asked for goes somewhere through the face, as far as the depth.
struct Exit {
    face: Face,
    depth: Len,
    bottom: Len,
    top: Len,
}

impl Exit {
    fn is_free(&self, sheet: &Sheet<'_>, id: ElementId, width: Len) -> bool {
        let space = Space { width, depth: self.depth, bottom: self.bottom, top: self.top };
        let ignored = |solid: &space::Solid| {
            solid.element == id
                || panel::flush(sheet.facts, solid)
                || panel::electrical(sheet.facts, solid)
        };
        self.face.fit(sheet.facts, space, ignored).is_clear()
    }
}

fn exits(sheet: &Sheet<'_>, panel: &ServicePoint, hinge: Hinge, asked: Len) -> [Exit; 3] {
    let face = Face::of(panel.placed());
    let side = hinge.side(face.facing);
    let (reach, half) = (sheet.book.length("panel-depth"), panel.width / 2);
    let bottom = sheet.plan().site.floor_build;
    let top = bottom + sheet.book.length("panel-height");
    // The inner face of the open leaf, and the point beyond its end.
    let leaf = face.at + side.step(half);
    let exit =
        |at, facing, depth| Exit { face: Face { at, facing, width: reach }, depth, bottom, top };
    let out = |at: geometry::Pt, by: Len| at + face.facing.step(by);
    [
        exit(leaf + side.back().step(reach / 2), face.facing, reach + asked),
        exit(out(leaf, reach / 2), side.back(), panel.width + asked),
        exit(out(face.at, panel.width + reach / 2), side, half + asked),
    ]
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::Edition;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "panel-open-door";

    /// A panel 14 in wide near the east end of a blind hall whose far face is `clear` before the panel.
    fn blind_hall(clear: Len) -> Sample {
        let y = inch(4.0) + clear;
        Sample::room(144.0, 120.0)
            .edition(Edition::E2024)
            .service(ServiceKind::Panel, at(130.0, 0.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        blind_hall(inch(60.0)).expect_none(SLUG);
        // Along an open wall one steps aside.
        Sample::room(144.0, 120.0)
            .edition(Edition::E2024)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let tight = blind_hall(inch(36.0));
        tight.expect(SLUG, &["verify, measured 22\", required 24\""]);
        assert_eq!(
            tight.findings(SLUG)[0].assumed,
            ["the door is as wide as the panel", "it is hinged at the right, as one faces it"]
        );
    }

    #[test]
    fn at_the_limit() {
        // The door takes 14 in of the hall.
        blind_hall(inch(38.0)).expect_none(SLUG);
        blind_hall(inch(38.0) - Len::UNIT)
            .expect(SLUG, &["verify, measured 23 15/16\", required 24\""]);
    }

    #[test]
    fn older_editions_have_no_such_figure() {
        for edition in [Edition::E2018, Edition::E2021] {
            blind_hall(inch(36.0)).edition(edition).expect_none(SLUG);
        }
    }

    #[test]
    fn in_a_closet_of_its_own_both_hinge_sides_are_stopped() {
        let closet = Sample::room(30.0, 40.0).edition(Edition::E2024).service(
            ServiceKind::Panel,
            at(15.0, 0.0),
            Facing::NORTH,
        );
        assert_eq!(closet.findings(SLUG)[0].assumed, ["the door is as wide as the panel"]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(30.0, 40.0)
            .edition(Edition::E2024)
            .service(ServiceKind::Disconnect, at(15.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
