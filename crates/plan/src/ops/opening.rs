//! Openings: along their wall, hinge and swing.

use measure::Len;

use crate::element::{Body, Door, Opening, OpeningKind};
use crate::{Edit, EditError, Element, ElementId, Plan};

use super::{element, replace};

/// Puts the near edge of an opening at the distance `at` from the start of its wall.
pub fn slide_opening(plan: &Plan, id: ElementId, at: Len) -> Result<Edit, EditError> {
    let (element, opening) = opening(plan, id)?;
    Ok(replace(element, Body::Opening(Opening { at, ..opening.clone() })))
}

/// Hangs a door on its other jamb.
pub fn flip_hinge(plan: &Plan, id: ElementId) -> Result<Edit, EditError> {
    with_door(plan, id, |d| d.hinge = d.hinge.other())
}

/// Lets a door swing to the other side of its wall.
pub fn flip_swing(plan: &Plan, id: ElementId) -> Result<Edit, EditError> {
    with_door(plan, id, |d| d.swing = d.swing.other())
}

fn with_door(
    plan: &Plan,
    id: ElementId,
    change: impl FnOnce(&mut Door),
) -> Result<Edit, EditError> {
    let (element, opening) = opening(plan, id)?;
    let mut opening = opening.clone();
    let OpeningKind::Door(door) = &mut opening.kind else {
        return Err(EditError::WrongKind { who: element.name(), needed: "a door" });
    };
    change(door);
    Ok(replace(element, Body::Opening(opening)))
}

pub(super) fn opening(plan: &Plan, id: ElementId) -> Result<(&Element, &Opening), EditError> {
    let element = element(plan, id)?;
    match &element.body {
        Body::Opening(o) => Ok((element, o)),
        _ => {
            let needed = "a door, a window or a cased opening";
            Err(EditError::WrongKind { who: element.name(), needed })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::element::{End, Side};
    use crate::{State, sample};

    #[test]
    fn hinge_and_swing_flip_alone() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (80, 20));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let window = sample::add(&mut plan, State::Existing, sample::window(ElementId(1), 10, 30));
        let hung = |edit: Result<Edit, EditError>| {
            let next = plan.with(&edit.expect("an edit")).expect("accepted");
            let Some(Body::Opening(o)) = next.get(door).map(|e| &e.body) else { panic!("no door") };
            o.door().map(|d| (d.hinge, d.swing)).expect("a door")
        };
        assert_eq!(hung(flip_hinge(&plan, door)), (End::Finish, Side::Left));
        assert_eq!(hung(flip_swing(&plan, door)), (End::Start, Side::Right));
        assert_eq!(
            flip_hinge(&plan, window).expect_err("no door").to_string(),
            "N7 is not a door."
        );
        assert!(flip_swing(&plan, wall).is_err());
    }

    #[test]
    fn an_opening_slides_to_a_place() {
        let mut plan = sample::room();
        let window = sample::add(&mut plan, State::Existing, sample::window(ElementId(1), 10, 30));
        let slid = |at| plan.with(&slide_opening(&plan, window, at).expect("an edit"));
        assert!(slid(Len::inches(210)).is_ok());
        for at in [Len::inches(210) + Len::UNIT, -Len::UNIT, Len::from_units(i32::MAX)] {
            assert!(slid(at).is_err());
        }
        let e = slide_opening(&plan, ElementId(1), Len::ZERO).expect_err("no opening");
        assert_eq!(e.to_string(), "F1 is not a door, a window or a cased opening.");
    }
}
