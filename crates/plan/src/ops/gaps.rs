//! The stretches of a wall that openings leave free.

use measure::Len;

use crate::element::Body;
use crate::{EditError, ElementId, Plan};

use super::opening::opening;

/// How far an opening may slide between its neighbours: the least and the most distance of its near
/// edge from the start of the wall.
pub fn slide_range(plan: &Plan, id: ElementId) -> Result<(Len, Len), EditError> {
    let (element, o) = opening(plan, id)?;
    let gaps = gaps(plan, o.host, Some(id));
    let here = gaps.into_iter().find(|&(from, to)| from <= o.at && o.at + o.width() <= to);
    // An opening that is to be torn out may lie across others.
    let (from, to) = here.unwrap_or((o.at, o.at + o.width()));
    debug_assert!(here.is_some() || !element.stands());
    Ok((from, to - o.width()))
}

/// The place nearest to `wanted` where an opening of this width fits a wall; `None` where there is none.
pub fn free_place(plan: &Plan, host: ElementId, width: Len, wanted: Len) -> Option<Len> {
    let gaps = gaps(plan, host, None);
    let places = gaps
        .into_iter()
        .filter(|&(from, to)| to - from >= width)
        .map(|(from, to)| wanted.clamp(from, to - width));
    places.min_by_key(|&at| (i64::from(at.units()) - i64::from(wanted.units())).abs())
}

/// The stretches between standing openings, apart from `but`, in order along the wall.
fn gaps(plan: &Plan, host: ElementId, but: Option<ElementId>) -> Vec<(Len, Len)> {
    let Some(line) = plan.get(host).and_then(|e| e.body.wall_line()) else { return Vec::new() };
    let taken = plan.elements().fixed_to(host).filter_map(|e| match &e.body {
        Body::Opening(o) if e.stands() && Some(e.id) != but => Some((o.at, o.at + o.width())),
        _ => None,
    });
    let mut taken: Vec<_> = taken.collect();
    taken.sort();
    let mut gaps = Vec::new();
    let mut from = Len::ZERO;
    for (at, end) in taken.into_iter().chain([(line.len(), line.len())]) {
        gaps.push((from, at));
        from = end;
    }
    gaps
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{State, sample};

    #[test]
    fn an_opening_slides_between_its_neighbours() {
        let mut plan = sample::room();
        let wall = ElementId(1);
        let first = sample::add(&mut plan, State::New, sample::door(wall, 20, 30));
        let second = sample::add(&mut plan, State::New, sample::window(wall, 100, 40));
        sample::add(&mut plan, State::Removed, sample::window(wall, 60, 30));
        let range = |id| slide_range(&plan, id).map(|(a, b)| (a.to_inches(), b.to_inches()));
        assert_eq!(range(first), Ok((0.0, 70.0)));
        assert_eq!(range(second), Ok((50.0, 200.0)));
        assert!(slide_range(&plan, wall).is_err());
    }

    #[test]
    fn a_free_place_is_the_nearest() {
        let mut plan = sample::room();
        let wall = ElementId(1);
        sample::add(&mut plan, State::New, sample::door(wall, 20, 30));
        sample::add(&mut plan, State::New, sample::window(wall, 100, 40));
        let place = |width, wanted| {
            let place = free_place(&plan, wall, Len::inches(width), Len::inches(wanted));
            place.map(Len::to_inches)
        };
        assert_eq!(place(20, 0), Some(0.0));
        assert_eq!(place(20, 60), Some(60.0));
        assert_eq!(place(21, 25), Some(50.0));
        assert_eq!(place(50, 90), Some(50.0));
        assert_eq!(place(51, 90), Some(140.0));
        assert_eq!(place(20, -900), Some(0.0));
        assert_eq!(place(20, 900), Some(220.0));
        assert_eq!(place(101, 90), None);
        assert_eq!(free_place(&plan, ElementId(9), Len::UNIT, Len::ZERO), None);
    }
}
