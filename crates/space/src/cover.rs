//! What covers a service point, so that it can't be reached without taking something away.

use geometry::{Bounds, Pt, Seg, Vec2, Where, convex_overlap, locate};
use measure::Len;
use plan::element::{Mount, OverheadKind, RoomUse, ServicePoint};
use plan::{Body, CeilingBuild, ElementId};

use crate::reach::Strip;
use crate::{Facts, SolidKind, WallKind};

/// The thing that covers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CoverBy {
    Element(ElementId),
    /// Board fixed to the joists.
    BoardCeiling,
    /// Lay-in tiles, which lift out.
    LayInCeiling,
}

/// One thing that covers a service point.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cover {
    pub by: CoverBy,
    /// What the user calls it: `furring`, `desk`, `board ceiling`.
    pub word: String,
}

/// Everything that covers a standing service point; empty for anything else. An access opening is not
/// taken into account.
///
/// * On a wall: furring or a partition in whose body its front lies (a front flush with the finished
///   face, or past it, is free), or one that closes it into a cavity that is no room, within 12 in.
/// * On the ceiling, or high on a wall: the finished ceiling where its bottom is not below it, but not
///   in an unfinished room or outside of rooms, where the joists are taken to be open; a soffit boxed
///   round it.
/// * On the floor: what stands on a part of it: walls, columns, stairs, furnishings.
pub fn cover(facts: &Facts, service: ElementId) -> Vec<Cover> {
    let Some(element) = facts.plan.get(service).filter(|e| e.stands()) else { return Vec::new() };
    let Body::Service(point) = &element.body else { return Vec::new() };
    let mut covers = match point.mount {
        Mount::Floor => on_floor(facts, service, point),
        Mount::Wall => on_wall(facts, point),
        Mount::Ceiling => Vec::new(),
    };
    if point.mount != Mount::Floor {
        covers.extend(above_ceiling(facts, point));
        covers.extend(in_soffit(facts, point));
    }
    covers.sort_by_key(|c| c.by);
    covers.dedup();
    covers
}

fn by_element(facts: &Facts, id: ElementId) -> Cover {
    let word = facts.plan.get(id).map(|e| e.body.word().to_owned()).unwrap_or_default();
    Cover { by: CoverBy::Element(id), word }
}

fn on_floor(facts: &Facts, service: ElementId, point: &ServicePoint) -> Vec<Cover> {
    let ring = point.placed().corners();
    let top = point.bottom + point.height;
    facts
        .solids_near(Bounds::of(ring))
        .filter(|s| s.element != service && s.kind != SolidKind::Service && s.bottom <= top)
        .filter(|s| convex_overlap(&ring, &s.ring))
        .map(|s| by_element(facts, s.element))
        .collect()
}

/// How far before a thing a wall is looked for that closes it into a cavity.
const CAVITY: Len = Len::inches(12);

fn on_wall(facts: &Facts, point: &ServicePoint) -> Vec<Cover> {
    let front = point.placed().front();
    let ahead = front + one_step(point.facing.vec());
    let crosses =
        |bottom: Len, top: Len| bottom < point.bottom + point.height && point.bottom < top;
    let framed = |id: ElementId| facts.wall(id).is_some_and(|w| w.kind != WallKind::Shell);
    let reach = front + point.facing.step(CAVITY);
    let near: Vec<_> = facts
        .solids_near(Bounds::of([front, ahead, reach]))
        .filter(|s| s.kind == SolidKind::Wall && framed(s.element) && crosses(s.bottom, s.top))
        .collect();
    let holds = |ring: &[Pt], p: Pt| locate(p, ring) != Where::Outside;
    let inside: Vec<Cover> = near
        .iter()
        .filter(|s| holds(&s.ring, front) && holds(&s.ring, ahead))
        .map(|s| by_element(facts, s.element))
        .collect();
    if !inside.is_empty() || facts.room_at(ahead).is_some() {
        return inside;
    }
    // In no room: the nearest framed wall straight ahead closes the cavity.
    let across = point.facing.right().step(Len::inches(1));
    let line = Seg::new(front - across, front + across);
    let Some(strip) = Strip::before(line) else { return Vec::new() };
    near.iter()
        .filter_map(|s| strip.nearest(&s.ring).map(|n| (n.depth, s.element)))
        .filter(|&(depth, _)| depth <= CAVITY)
        .min()
        .map(|(_, id)| by_element(facts, id))
        .into_iter()
        .collect()
}

/// A step of about one grid unit along a direction.
fn one_step(v: Vec2) -> Vec2 {
    let step = v.with_len(Len::UNIT);
    if step == Vec2::default() { v.with_len(Len::from_units(2)) } else { step }
}

fn above_ceiling(facts: &Facts, point: &ServicePoint) -> Option<Cover> {
    let site = &facts.plan.site;
    let (by, word) = match site.ceiling {
        CeilingBuild::Open => return None,
        CeilingBuild::Board(_) => (CoverBy::BoardCeiling, "board ceiling"),
        CeilingBuild::LayIn(_) => (CoverBy::LayInCeiling, "lay-in ceiling"),
    };
    let room = facts.room_at(point.placed().front()).or(facts.room_at(point.placed().centre()))?;
    let finished = facts.room(room).room_use != RoomUse::Unfinished;
    let face = site.joist_underside - site.ceiling.drop();
    (finished && point.bottom >= face).then(|| Cover { by, word: word.to_owned() })
}

fn in_soffit(facts: &Facts, point: &ServicePoint) -> Vec<Cover> {
    let centre = point.placed().centre();
    facts
        .overheads_near(Bounds::of([centre]))
        .filter(|o| o.kind == OverheadKind::Soffit && o.underside <= point.bottom)
        .filter(|o| locate(centre, &o.ring) != Where::Outside)
        .map(|o| by_element(facts, o.id))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::derive;
    use crate::testing::Sketch;
    use geometry::Facing;
    use plan::element::ServiceKind;

    fn covers(s: &Sketch, id: ElementId) -> Vec<(CoverBy, String)> {
        cover(&derive(&s.shared()), id).into_iter().map(|c| (c.by, c.word)).collect()
    }

    fn element(id: ElementId, word: &str) -> Vec<(CoverBy, String)> {
        vec![(CoverBy::Element(id), word.to_owned())]
    }

    fn room(room_use: RoomUse) -> (Sketch, Vec<ElementId>) {
        let mut s = Sketch::new();
        let walls = s.rectangle(240, 240);
        s.tag(200, 200, room_use);
        (s, walls)
    }

    #[test]
    fn a_valve_behind_furring_is_covered_until_its_front_reaches_the_finish() {
        let (mut s, walls) = room(RoomUse::Office);
        // 6 in deep, on the concrete.
        let valve = s.service(ServiceKind::MainWaterValve, 60, 0, Facing::NORTH);
        assert_eq!(covers(&s, valve), []);
        let strip = s.furring(walls[0], Len::inches(6));
        assert_eq!(covers(&s, valve), [], "flush with the finished face");
        s.plan = s.plan.with(&plan::Edit::Remove(vec![strip])).unwrap();
        let strip = s.furring(walls[0], Len::inches(6) + Len::UNIT);
        assert_eq!(covers(&s, valve), element(strip, "furring"));
    }

    #[test]
    fn an_opening_in_the_furring_uncovers() {
        let (mut s, walls) = room(RoomUse::Office);
        let valve = s.service(ServiceKind::MainWaterValve, 60, 0, Facing::NORTH);
        s.furring(walls[0], Len::inches(8));
        s.door(walls[0], 50, 20);
        assert_eq!(covers(&s, valve), []);
    }

    #[test]
    fn a_valve_in_a_partition_or_closed_into_a_cavity() {
        let (mut s, _) = room(RoomUse::Office);
        let inside = s.service(ServiceKind::GasValve, 60, 98, Facing::NORTH);
        let wall = s.partition((0, 100), (240, 100));
        assert_eq!(covers(&s, inside), []);
        let buried = s.service(ServiceKind::GasValve, 80, 97, Facing::NORTH);
        assert_eq!(covers(&s, buried), element(wall, "partition"));

        // 140 in² between a pair of short partitions and a wall 1 in before the front.
        let (mut s, _) = room(RoomUse::Office);
        let valve = s.service(ServiceKind::GasValve, 60, 0, Facing::NORTH);
        let front = s.partition((40, 7), (80, 7));
        s.partition((50, 0), (50, 5));
        s.partition((70, 0), (70, 5));
        assert_eq!(covers(&s, valve), element(front, "partition"));
    }

    #[test]
    fn above_the_ceiling_only_where_there_is_one() {
        for (build, by, word) in [
            (CeilingBuild::Board(Len::inches(1)), CoverBy::BoardCeiling, "board ceiling"),
            (CeilingBuild::LayIn(Len::inches(4)), CoverBy::LayInCeiling, "lay-in ceiling"),
        ] {
            let (mut s, _) = room(RoomUse::Office);
            let of = |s: &mut Sketch, x| s.service(ServiceKind::JunctionBox, x, 60, Facing::NORTH);
            let joint = of(&mut s, 60);
            // The box's bottom is at 90 in, the ceiling's face at 90 in, then a unit above the bottom.
            s.site(|site| {
                site.ceiling = build;
                site.joist_underside = Len::inches(90) + build.drop();
            });
            assert_eq!(covers(&s, joint), [(by, word.to_owned())]);
            s.site(|site| site.joist_underside += Len::UNIT);
            assert_eq!(covers(&s, joint), [], "it comes through the ceiling");
            s.site(|site| site.ceiling = CeilingBuild::Open);
            assert_eq!(covers(&s, joint), []);
        }
        let (mut s, _) = room(RoomUse::Unfinished);
        let joint = s.service(ServiceKind::JunctionBox, 60, 60, Facing::NORTH);
        s.site(|site| site.joist_underside = Len::inches(84));
        assert_eq!(covers(&s, joint), [], "open joists");
    }

    #[test]
    fn a_damper_boxed_into_a_soffit() {
        let (mut s, _) = room(RoomUse::Office);
        let damper = s.service(ServiceKind::Damper, 60, 60, Facing::NORTH);
        s.run(OverheadKind::Duct, ((0, 64), (240, 64)), 16, 80);
        assert_eq!(covers(&s, damper), [], "it hangs on the bare duct");
        let soffit = s.run(OverheadKind::Soffit, ((0, 64), (240, 64)), 20, 80);
        assert_eq!(covers(&s, damper), element(soffit, "soffit"));
    }

    #[test]
    fn a_drain_under_things_that_stand_on_it() {
        let (mut s, _) = room(RoomUse::Office);
        let drain = s.service(ServiceKind::FloorDrain, 60, 60, Facing::NORTH);
        s.furnishing(60 + 16, 60, Facing::NORTH, (24, 24, 30));
        assert_eq!(covers(&s, drain), [], "beside it");
        let desk = s.furnishing(60, 66, Facing::NORTH, (24, 24, 30));
        assert_eq!(covers(&s, drain), element(desk, "desk"));
        let wall = s.partition((0, 64), (240, 64));
        assert_eq!(covers(&s, drain).len(), 2);
        s.door(wall, 40, 40);
        assert_eq!(covers(&s, drain), element(desk, "desk"), "in a doorway");
    }

    #[test]
    fn only_service_points_are_covered() {
        let (s, walls) = room(RoomUse::Office);
        assert_eq!(covers(&s, walls[0]), []);
        assert_eq!(covers(&s, ElementId(999)), []);
    }
}
