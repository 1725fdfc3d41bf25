use geometry::Facing;
use plan::element::ServiceKind;
use plan::{Edit, ElementId};

use super::faults::Look;
use super::*;
use crate::testing::{Sample, at, inch};
use crate::{Book, Severity, check};

/// A partition 45 in before the panel on the south wall, in a room 20 ft deep.
fn before_a_panel() -> (Sample, ElementId) {
    let sample = Sample::room(144.0, 240.0)
        .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
        .tune_service(|s| s.depth = inch(4.0))
        .partition(at(144.0, 51.25), at(0.0, 51.25));
    let wall = sample.last();
    (sample, wall)
}

#[test]
fn a_wall_may_come_as_near_as_the_panel_allows() {
    let (sample, wall) = before_a_panel();
    let facts = sample.facts();
    let book = sample.book();
    let courses = Course::of(&facts.plan, wall);
    assert_eq!(courses, [Course::Wall(wall)]);
    let found = Scan::new(&facts.plan, &book, courses[0]).run();
    // Its face is 49 in from the wall, 45 in from the panel: 9 in may go. Left of its line is down.
    let [_, high] = found.breaks();
    let high = high.expect("it breaks");
    assert_eq!((high.at, high.fault.rule), (inch(9.0), "panel-depth"));
    assert_eq!(found.safe().1, inch(9.0));
}

/// Each end flips between two neighbouring units, by a judgement made anew.
fn ends_flip(sample: &Sample, course: Course) -> usize {
    let (plan, book) = (sample.facts().plan, sample.book());
    let found = Scan::new(&plan, &book, course).run();
    let fault_at = |by: Len, fault: &Fault| {
        let edit = course.edit(&plan, by).expect("an edit");
        Look::new(&book).faults(plan.with(&edit).expect("a plan")).contains(fault)
    };
    let mut ends = 0;
    for holds in &found.holds {
        for (from, to) in &holds.free {
            assert!(!fault_at(*from, &holds.fault) && !fault_at(*to, &holds.fault));
            if *from > found.looked.0 {
                assert!(fault_at(*from - Len::UNIT, &holds.fault), "{:?} {from:?}", holds.fault);
                ends += 1;
            }
            if *to < found.looked.1 {
                assert!(fault_at(*to + Len::UNIT, &holds.fault), "{:?} {to:?}", holds.fault);
                ends += 1;
            }
        }
    }
    // Offsets between the looks agree with a judgement made anew.
    let (from, to) = (found.looked.0.units(), found.looked.1.units());
    for i in 0..40_i64 {
        let by = i64::from(from) + (i64::from(to) - i64::from(from)) * (i * 7919 % 4001) / 4001;
        let by = Len::from_units(by as i32);
        for holds in &found.holds {
            let free = holds.free.iter().any(|(a, b)| *a <= by && by <= *b);
            assert_eq!(free, !fault_at(by, &holds.fault), "{:?} at {by:?}", holds.fault);
        }
    }
    ends
}

#[test]
fn every_end_flips_between_neighbouring_units() {
    let (sample, wall) = before_a_panel();
    assert!(ends_flip(&sample, Course::Wall(wall)) > 0);
    let panel = ElementId(wall.0 - 1);
    let sideways = Course::of(&sample.facts().plan, panel)[0];
    ends_flip(&sample, sideways);
}

#[test]
fn the_smallest_move_cures_and_a_little_less_does_not() {
    let (sample, wall) = before_a_panel();
    let near = Course::Wall(wall).edit(&sample.facts().plan, inch(20.0)).expect("an edit");
    let sample = sample.edit(&near);
    let (facts, book) = (sample.facts(), sample.book());
    let finding = sample.findings("panel-depth").remove(0);
    let remedy = smallest_move(&finding, &facts, &book).expect("a move");
    assert!(remedy.label.say(measure::System::Imperial).contains("by 11\""), "{:?}", remedy.label);
    let cured = |edit: &Edit| {
        let plan = facts.plan.with(edit).expect("a plan");
        check(&space::derive(&std::sync::Arc::new(plan)), &book)
            .iter()
            .all(|f| f.rule != "panel-depth")
    };
    assert!(cured(&remedy.edit));
    let less = Course::Wall(wall).edit(&facts.plan, -(inch(11.0) - Len::UNIT)).expect("an edit");
    assert!(!cured(&less));
}

#[test]
fn what_stands_is_not_moved() {
    let (sample, wall) = before_a_panel();
    let near = Course::Wall(wall).edit(&sample.facts().plan, inch(20.0)).expect("an edit");
    let sample = sample.edit(&near).existing();
    let finding = sample.findings("panel-depth").remove(0);
    assert!(smallest_move(&finding, &sample.facts(), &sample.book()).is_none());
}

#[test]
fn an_element_that_does_not_move_has_no_course() {
    let sample = Sample::room(144.0, 120.0).furring(ElementId(1));
    assert!(Course::of(&sample.facts().plan, sample.last()).is_empty());
    assert!(Course::of(&sample.facts().plan, ElementId(999)).is_empty());
}

#[test]
fn a_way_that_closes_is_a_fault() {
    // A heater behind a partition that ends 30 in short of the wall: 10 in further and the way is narrower than 20 in.
    let sample = Sample::room(240.0, 120.0)
        .stair(at(30.0, 20.0), Facing::NORTH)
        .service(ServiceKind::WaterHeater, at(200.0, 120.0), Facing::SOUTH)
        .partition(at(120.0, 0.0), at(120.0, 120.0));
    let host = sample.last();
    let sample = sample.opening(host, 40.0, plan::element::DoorOperation::Cased, 30.0).furnishing(
        at(118.0, 55.0),
        Facing::WEST,
        20.0,
        20.0,
    );
    let course = Course::Thing(sample.last(), Facing::NORTH);
    let book: Book = sample.book();
    let plan = sample.facts().plan;
    let found = Scan::new(&plan, &book, course).run();
    let way = found.holds.iter().find(|h| h.fault.rule == WAY_RULE).expect("a way");
    assert_eq!(way.fault.severity, Severity::Verify);
}
