//! Clear height: what is left between the finished floor and the ceiling or the overheads.

use geometry::{Ring, Shape, overlay};
use measure::{Area, Len};

use crate::{Facts, OverheadFacts, Room, RoomIndex};

/// The floor of a room by clear height, lowest first, without empty shares: the area under each
/// overhead, and the rest under the ceiling. Where overheads overlap the lowest counts; one that hides
/// above the ceiling does not. The areas add up to the room's.
pub fn height_shares(facts: &Facts, room: RoomIndex) -> Vec<(Len, Area)> {
    let room = facts.room(room);
    let ceiling = facts.plan.site.ceiling_height();
    let mut over: Vec<&OverheadFacts> =
        hanging(facts, room).filter(|o| o.clear < ceiling).collect();
    over.sort_by_key(|o| (o.clear, o.id));
    let mut left = room.area;
    let mut rings: Vec<Ring> = Vec::new();
    let mut shares = Vec::new();
    for group in over.chunk_by(|a, b| a.clear == b.clear) {
        rings.extend(group.iter().map(|o| o.ring.clone()));
        let rest = area_without(&room.shape, &rings);
        if rest < left {
            shares.push((group[0].clear, left - rest));
        }
        left = rest;
    }
    if left > Area::ZERO {
        shares.push((ceiling, left));
    }
    shares
}

/// A part of a room's floor with one clear height.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HeightRegion {
    pub clear: Len,
    pub shapes: Vec<Shape>,
    /// The overheads that make the height, by id; none under the ceiling.
    pub under: Vec<plan::ElementId>,
}

impl HeightRegion {
    pub fn area(&self) -> Area {
        self.shapes.iter().map(Shape::area).sum()
    }

    /// A point well inside its largest part.
    pub fn middle(&self) -> Option<geometry::Pt> {
        self.shapes.iter().max_by_key(|shape| shape.area()).map(Shape::label_point)
    }
}

/// The floor of a room by clear height, lowest first, as shapes that don't overlap and fill the room: see
/// [`height_shares`]. Crossings of slanting edges are rounded to the grid.
pub fn height_regions(facts: &Facts, room: RoomIndex) -> Vec<HeightRegion> {
    let room = facts.room(room);
    let ceiling = facts.plan.site.ceiling_height();
    let mut over: Vec<&OverheadFacts> =
        hanging(facts, room).filter(|o| o.clear < ceiling).collect();
    over.sort_by_key(|o| (o.clear, o.id));
    let mut rest = vec![room.shape.clone()];
    let mut regions = Vec::new();
    for group in over.chunk_by(|a, b| a.clear == b.clear) {
        let rings: Vec<Ring> = group.iter().map(|o| o.ring.clone()).collect();
        let shapes = overlay::shape_intersect(&rest, &rings);
        rest = overlay::shape_difference(&rest, &rings);
        if !shapes.is_empty() {
            let under = group.iter().map(|o| o.id).collect();
            regions.push(HeightRegion { clear: group[0].clear, shapes, under });
        }
    }
    if !rest.is_empty() {
        regions.push(HeightRegion { clear: ceiling, shapes: rest, under: Vec::new() });
    }
    regions
}

/// The floor of a room with at least a clear height.
pub fn area_at_least(facts: &Facts, room: RoomIndex, height: Len) -> Area {
    if facts.plan.site.ceiling_height() < height {
        return Area::ZERO;
    }
    let room = facts.room(room);
    let low: Vec<Ring> =
        hanging(facts, room).filter(|o| o.clear < height).map(|o| o.ring.clone()).collect();
    area_without(&room.shape, &low)
}

/// The least clear height over a region: the ceiling, or the lowest overhead that hangs over a part of
/// it. An overhead along its edge does not count.
pub fn clear_over(facts: &Facts, region: &Shape) -> Len {
    facts
        .overheads_near(region.bounds())
        .filter(|o| o.hangs_over(region))
        .map(|o| o.clear)
        .fold(facts.plan.site.ceiling_height(), Len::min)
}

fn area_without(shape: &Shape, rings: &[Ring]) -> Area {
    if rings.is_empty() {
        return shape.area();
    }
    overlay::shape_difference(std::slice::from_ref(shape), rings).iter().map(Shape::area).sum()
}

fn hanging<'a>(facts: &'a Facts, room: &'a Room) -> impl Iterator<Item = &'a OverheadFacts> {
    facts.overheads_near(room.shape.bounds()).filter(|o| o.hangs_over(&room.shape))
}

/// The lowest and the highest clear height in a room.
pub(crate) fn range(shape: &Shape, over: &[&OverheadFacts], ceiling: Len) -> (Len, Len) {
    let mut over: Vec<&OverheadFacts> =
        over.iter().copied().filter(|o| o.clear < ceiling && o.hangs_over(shape)).collect();
    over.sort_by_key(|o| (o.clear, o.id));
    let Some(first) = over.first() else { return (ceiling, ceiling) };
    let lowest = first.clear;
    // Only overheads that are together as large as the room can hide its whole ceiling.
    let twice: i128 = over.iter().map(|o| geometry::twice_area(&o.ring)).sum();
    if twice < 2 * shape.area().square_units() {
        return (lowest, ceiling);
    }
    let mut rings = Vec::new();
    for group in over.chunk_by(|a, b| a.clear == b.clear) {
        rings.extend(group.iter().map(|o| o.ring.clone()));
        if area_without(shape, &rings) == Area::ZERO {
            return (lowest, group[0].clear);
        }
    }
    (lowest, ceiling)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::derive;
    use crate::testing::Sketch;
    use geometry::{Pt, Shape};
    use plan::element::{Overhead, OverheadKind, OverheadShape};

    /// 10 ft x 12 ft, ceiling 7 ft 8 in; a duct 2 ft wide at 6 ft 8 in and a beam 1 ft wide at 6 ft 6 in
    /// that cross. Heights in finished inches.
    fn crossed() -> Facts {
        let mut s = Sketch::new();
        s.site(|site| site.floor_build = Len::ZERO);
        s.site(|site| site.joist_underside = Len::inches(92) + site.ceiling.drop());
        s.rectangle(120, 144);
        s.run(OverheadKind::Duct, ((60, 0), (60, 144)), 24, 80);
        s.run(OverheadKind::Beam, ((0, 72), (120, 72)), 12, 78);
        // Hidden above the ceiling.
        s.run(OverheadKind::Pipe, ((20, 0), (20, 144)), 4, 92);
        derive(&s.shared())
    }

    #[test]
    fn where_overheads_overlap_the_lowest_counts() {
        let shares = height_shares(&crossed(), RoomIndex(0));
        let feet = |inches, area| (Len::inches(inches), Area::square_feet(area));
        assert_eq!(shares, [feet(78, 10), feet(80, 24 - 2), feet(92, 120 - 32)]);
    }

    #[test]
    fn the_regions_are_the_shares_drawn() {
        let facts = crossed();
        let regions = height_regions(&facts, RoomIndex(0));
        let areas: Vec<_> = regions.iter().map(|r| (r.clear, r.area())).collect();
        assert_eq!(areas, height_shares(&facts, RoomIndex(0)));
        assert_eq!(regions.iter().map(|r| r.under.len()).collect::<Vec<_>>(), [1, 1, 0]);
        // They don't overlap, and the middle of each lies in it.
        for (i, a) in regions.iter().enumerate() {
            let middle = a.middle().expect("a middle");
            assert!(a.shapes.iter().any(|s| s.contains(middle)));
            for b in &regions[i + 1..] {
                let rings: Vec<Ring> = b.shapes.iter().map(|s| s.outer.clone()).collect();
                assert!(
                    overlay::shape_intersect(&a.shapes, &rings).is_empty() || a.clear < b.clear
                );
            }
        }
    }

    /// A room under random runs: the areas of the regions agree with counted points within three sigma.
    #[test]
    fn the_regions_agree_with_counted_points() {
        let mut seed = 7_u64;
        let mut next = |most: i32| {
            seed = seed
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (seed >> 33) as i32 % most
        };
        let mut s = Sketch::new();
        s.site(|site| site.floor_build = Len::ZERO);
        s.rectangle(240, 180);
        for _ in 0..6 {
            let (x, y, low) = (next(220), next(160), 70 + next(14));
            s.run(OverheadKind::Duct, ((x, 0), (x, 180)), 6 + next(20), low);
            s.run(OverheadKind::Pipe, ((0, y), (240, y)), 2 + next(8), low + next(5));
        }
        let facts = derive(&s.shared());
        let regions = height_regions(&facts, RoomIndex(0));
        let whole = facts.rooms[0].area.square_units() as f64;
        assert_eq!(regions.iter().map(HeightRegion::area).sum::<Area>(), facts.rooms[0].area);
        let points = 40_000;
        let per_inch = Len::PER_INCH;
        let mut counts = vec![0_u32; regions.len()];
        for _ in 0..points {
            let p = Pt::new(next(240 * per_inch), next(180 * per_inch));
            if let Some(i) = regions.iter().position(|r| r.shapes.iter().any(|s| s.contains(p))) {
                counts[i] += 1;
            }
        }
        for (region, count) in regions.iter().zip(counts) {
            let share = region.area().square_units() as f64 / whole;
            let expected = share * f64::from(points);
            let sigma = (f64::from(points) * share * (1.0 - share)).sqrt();
            assert!((f64::from(count) - expected).abs() <= 3.0 * sigma + 1.0, "{count} {expected}");
        }
    }

    #[test]
    fn an_overhead_at_just_the_height_counts_as_high_enough() {
        let facts = crossed();
        let area = |height| area_at_least(&facts, RoomIndex(0), height);
        assert_eq!(area(Len::inches(78)), Area::square_feet(120));
        assert_eq!(area(Len::inches(78) + Len::UNIT), Area::square_feet(110));
        assert_eq!(area(Len::inches(80)), Area::square_feet(110));
        assert_eq!(area(Len::inches(92)), Area::square_feet(88));
        assert_eq!(area(Len::inches(92) + Len::UNIT), Area::ZERO);
    }

    #[test]
    fn clear_height_over_a_region() {
        let facts = crossed();
        let over = |a: (i32, i32), b: (i32, i32)| {
            let ring = geometry::Bounds::of([Pt::inches(a.0, a.1), Pt::inches(b.0, b.1)]).ring();
            clear_over(&facts, &Shape::solid(ring))
        };
        assert_eq!(over((0, 0), (48, 66)), Len::inches(92), "beside the duct and the beam");
        assert_eq!(over((0, 0), (49, 66)), Len::inches(80));
        assert_eq!(over((50, 10), (55, 20)), Len::inches(80), "wholly under the duct");
        assert_eq!(over((0, 0), (120, 144)), Len::inches(78));
    }

    #[test]
    fn a_soffit_of_any_outline() {
        let mut s = Sketch::new();
        s.rectangle(120, 144);
        // An L along two walls, drawn clockwise.
        let l = [(0, 0), (0, 144), (24, 144), (24, 24), (120, 24), (120, 0)];
        let shape = OverheadShape::Outline(l.map(|(x, y)| Pt::inches(x, y)).to_vec());
        let underside = Len::inches(80);
        let id =
            s.add(plan::Body::Overhead(Overhead { kind: OverheadKind::Soffit, shape, underside }));
        let facts = derive(&s.shared());
        assert!(!facts.overhead(id).unwrap().convex);
        let low = underside - Len::sixty_fourths(32);
        let under = Area::square_inch_hundredths((24 * 144 + 96 * 24) * 100);
        let shares = height_shares(&facts, RoomIndex(0));
        assert_eq!(shares[0], (low, under));
        assert_eq!(shares.iter().map(|s| s.1).sum::<Area>(), Area::square_feet(120));
        assert_eq!(facts.rooms[0].lowest, low);
        let notch = geometry::Bounds::of([Pt::inches(24, 24), Pt::inches(60, 60)]).ring();
        assert_eq!(clear_over(&facts, &Shape::solid(notch)), Len::inches(92));
    }
}
