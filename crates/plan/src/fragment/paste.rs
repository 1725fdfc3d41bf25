//! Putting a fragment into a plan.

use std::collections::BTreeMap;

use geometry::Vec2;

use crate::element::Body;
use crate::ops::{free_place, map_points, moved, slide_by};
use crate::{Draft, Edit, EditError, Element, ElementId, Plan};

use super::Piece;

/// What a paste will do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pasted {
    /// Adds the copies, all or none.
    pub edit: Edit,
    /// The ids that the copies get.
    pub ids: Vec<ElementId>,
    /// Why pieces were left out, such as an opening whose wall is not there.
    pub dropped: Vec<EditError>,
}

/// Works out the edit that adds a fragment to a plan, moved by `by`.
///
/// What is fixed to a wall of the fragment keeps its place on the copy. What is fixed to a wall of the
/// plan moves along it by the part of `by` in its direction, an opening on to the nearest free place; it
/// is left out, with the reason, where the wall is missing or has no room. A valve goes on serving the
/// copy of its appliance, else the appliance itself, else none.
pub fn paste(plan: &Plan, pieces: &[Piece], by: Vec2) -> Result<Pasted, EditError> {
    let mut next = plan.next_ids(u32::try_from(pieces.len()).unwrap_or(u32::MAX));
    let mut new_ids = BTreeMap::new();
    let mut pasted = Pasted { edit: Edit::Batch(Vec::new()), ids: Vec::new(), dropped: Vec::new() };
    let mut drafts: Vec<Draft> = Vec::new();
    // Walls first, so that what is fixed to them finds them; the order within each is kept.
    let (fixed, free): (Vec<&Piece>, Vec<&Piece>) =
        pieces.iter().partition(|p| p.draft.body.host().is_some());
    let mut shown = plan.clone();
    for piece in free.into_iter().chain(fixed) {
        let Draft { state, body, details } = piece.draft.clone();
        let e = Element { id: piece.key, state, body, details };
        match placed(plan, &shown, &new_ids, &e, by) {
            Ok(body) => {
                let Some(id) = next.next() else { break };
                new_ids.insert(piece.key, id);
                let draft = Draft { state, body: body.clone(), details: e.details.clone() };
                shown.elements.push(Element { id, body, ..e });
                drafts.push(draft);
                pasted.ids.push(id);
            }
            Err(reason) if e.body.host().is_some() => pasted.dropped.push(reason),
            Err(reason) => return Err(reason),
        }
    }
    for draft in &mut drafts {
        if let Body::Service(s) = &mut draft.body {
            let here =
                |id: &ElementId| matches!(plan.get(*id).map(|e| &e.body), Some(Body::Service(_)));
            s.serves = s.serves.and_then(|id| new_ids.get(&id).copied().or(Some(id).filter(here)));
        }
    }
    pasted.edit = Edit::Batch(drafts.into_iter().map(Edit::Add).collect());
    Ok(pasted)
}

/// The body of the copy. `shown` is the plan with the copies so far.
fn placed(
    plan: &Plan,
    shown: &Plan,
    new_ids: &BTreeMap<ElementId, ElementId>,
    e: &Element,
    by: Vec2,
) -> Result<Body, EditError> {
    let Some(old_host) = e.body.host() else { return map_points(&e.body, |p| moved(e, p, by)) };
    let mut body = e.body.clone();
    let new_host = new_ids.get(&old_host).copied();
    let host = new_host.unwrap_or(old_host);
    let wall = shown.get(host).ok_or(EditError::HostMissing { who: e.name(), host })?;
    match &mut body {
        Body::Opening(o) => {
            o.host = host;
            if new_host.is_none() {
                let wanted = slide_by(plan, e, o, by)?;
                o.at = free_place(shown, host, o.width(), wanted)
                    .ok_or_else(|| EditError::NoRoomOnHost { host: wall.name() })?;
            }
        }
        Body::Furring(f) => {
            f.host = host;
            if !matches!(wall.body, Body::Shell(_)) {
                let needed = "a foundation wall";
                return Err(EditError::HostKind { who: e.name(), host: wall.name(), needed });
            }
        }
        _ => {}
    }
    Ok(body)
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;

    use super::*;
    use crate::element::{Opening, ServiceKind, ServicePoint};
    use crate::{State, fragment, ops, sample};

    fn inches(x: i64, y: i64) -> Vec2 {
        Vec2::new(x * i64::from(Len::PER_INCH), y * i64::from(Len::PER_INCH))
    }

    fn through_text(plan: &Plan, ids: &[ElementId]) -> Vec<Piece> {
        let pieces = fragment::read(&fragment::write(plan, ids)).expect("reads");
        assert_eq!(pieces, fragment::pieces(plan, ids));
        pieces
    }

    fn opening(plan: &Plan, id: ElementId) -> &Opening {
        match &plan.get(id).expect("there").body {
            Body::Opening(o) => o,
            _ => panic!("no opening"),
        }
    }

    #[test]
    fn a_wall_is_pasted_with_its_door() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (80, 20));
        sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let pieces = through_text(&plan, &[wall]);
        let blank = Plan::default();
        let pasted = paste(&blank, &pieces, inches(5, 6)).expect("an edit");
        let next = blank.with(&pasted.edit).expect("accepted");
        assert_eq!(pasted.ids, [ElementId(1), ElementId(2)]);
        assert_eq!(next.get(ElementId(1)).expect("there").body.points()[0], Pt::inches(25, 26));
        assert_eq!(opening(&next, ElementId(2)).host, ElementId(1));
        assert_eq!(opening(&next, ElementId(2)).at, Len::inches(10));
    }

    #[test]
    fn an_opening_alone_goes_to_the_nearest_free_place_or_is_left_out_with_the_reason() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (120, 20));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let pieces = through_text(&plan, &[door]);
        let pasted = paste(&plan, &pieces, inches(6, 6)).expect("an edit");
        let next = plan.with(&pasted.edit).expect("accepted");
        assert_eq!(opening(&next, pasted.ids[0]).at, Len::inches(40));
        let full = ops::set_wall_length(&plan, wall, Len::inches(60), crate::element::End::Start);
        let full = plan.with(&full.expect("an edit")).expect("accepted");
        let pasted = paste(&full, &pieces, inches(6, 6)).expect("an edit");
        assert_eq!((pasted.edit, pasted.ids), (Edit::Batch(vec![]), vec![]));
        assert_eq!(
            pasted.dropped[0].to_string(),
            "There is no room left on W5 for another opening of this width; choose another wall."
        );
        assert!(ops::duplicate(&full, &[door], inches(6, 6)).is_err());
        let pasted = paste(&sample::room(), &pieces, inches(0, 0)).expect("an edit");
        let reason = "D6 is fixed to element 5, which is not in the plan; place it on a wall.";
        assert_eq!(pasted.dropped[0].to_string(), reason);
    }

    #[test]
    fn a_valve_serves_the_copy_else_the_original_else_none() {
        let mut plan = sample::room();
        let heater = sample::service(ServiceKind::WaterHeater, (30, 30), Facing::NORTH);
        let heater = sample::add(&mut plan, State::Existing, heater);
        let mut valve =
            ServicePoint::usual(ServiceKind::GasValve, Pt::inches(60, 0), Facing::NORTH);
        valve.serves = Some(heater);
        let valve = sample::add(&mut plan, State::Existing, Body::Service(valve));
        let serves = |ids: &[ElementId], into: &Plan| {
            let pasted = paste(into, &through_text(&plan, ids), inches(0, 0)).expect("an edit");
            let next = into.with(&pasted.edit).expect("accepted");
            match next.elements().iter().last().map(|e| e.body.clone()) {
                Some(Body::Service(s)) => s.serves,
                _ => panic!("no valve"),
            }
        };
        assert_eq!(serves(&[heater, valve], &plan), Some(ElementId(7)));
        assert_eq!(serves(&[valve], &plan), Some(heater));
        assert_eq!(serves(&[valve], &sample::room()), None);
    }

    #[test]
    fn duplicating_gives_copies_beside_the_original() {
        let mut plan = sample::room();
        let desk = sample::add(&mut plan, State::New, sample::desk((50, 50), Facing::NORTH));
        let edit = ops::duplicate(&plan, &[desk, desk], inches(12, -12)).expect("an edit");
        let next = plan.with(&edit).expect("accepted");
        assert_eq!(next.elements().len(), 6);
        assert_eq!(next.get(ElementId(6)).expect("there").body.points(), [Pt::inches(62, 38)]);
        assert!(ops::duplicate(&plan, &[ElementId(9)], inches(0, 0)).is_err());
        assert!(ops::duplicate(&plan, &[desk], Vec2::new(i64::MAX, 0)).is_err());
    }
}
