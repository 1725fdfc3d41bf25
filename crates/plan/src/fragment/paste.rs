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
        let e = Element { id: piece.key, state: piece.draft.state, body: piece.draft.body.clone() };
        match placed(plan, &shown, &new_ids, &e, by) {
            Ok(body) => {
                let Some(id) = next.next() else { break };
                new_ids.insert(piece.key, id);
                let draft = Draft { state: e.state, body };
                shown.elements.put(Element { id, state: draft.state, body: draft.body.clone() });
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
