//! Tests of what a use demands.

use plan::Edition;
use plan::element::RoomUse;
use space::RoomIndex;

use super::{Demand, Met, demands};
use crate::Sheet;
use crate::testing::{Sample, at, inch};

/// What the only room of a sample would have to have.
fn of(sample: &Sample, room_use: RoomUse) -> Vec<Demand> {
    let (facts, book) = (sample.facts(), sample.book());
    assert_eq!(facts.rooms.len(), 1);
    demands(&Sheet::new(&facts, &book), RoomIndex(0), room_use)
}

fn met(demands: &[Demand], start: &str) -> Option<Met> {
    demands.iter().find(|d| d.text.starts_with(start)).map(|d| d.met)
}

fn office() -> Sample {
    Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Office", RoomUse::Office)
}

#[test]
fn an_office_without_a_window_lacks_what_a_bedroom_needs() {
    let sample = office();
    let bedroom = of(&sample, RoomUse::Bedroom);
    assert_eq!(met(&bedroom, "Escape opening of its own"), Some(Met::No));
    assert_eq!(met(&bedroom, "Floor area"), Some(Met::Yes));
    assert_eq!(met(&bedroom, "Least dimension"), Some(Met::Yes));
    assert_eq!(met(&bedroom, "Ceiling height"), Some(Met::Yes));
    assert_eq!(met(&bedroom, "Smoke alarm in the room"), Some(Met::Unknown));
    let office = of(&sample, RoomUse::Office);
    assert_eq!(met(&office, "Escape opening of its own"), None);
    assert_eq!(met(&office, "Escape opening of the basement"), Some(Met::Unknown));
    let new = of(&sample.new_house(), RoomUse::Office);
    assert_eq!(met(&new, "Escape opening of the basement"), Some(Met::No));
}

#[test]
fn a_use_asks_for_its_own_height() {
    let low = office().site(|s| s.joist_underside = inch(81.0));
    assert_eq!(met(&of(&low, RoomUse::Office), "Ceiling height"), Some(Met::No));
    assert_eq!(met(&of(&low, RoomUse::Bath), "Ceiling height"), Some(Met::Yes));
    let low = low.edition(Edition::E2024);
    assert_eq!(met(&of(&low, RoomUse::Office), "Ceiling height"), Some(Met::Yes));
}

#[test]
fn a_store_has_no_least_size_and_a_hall_has_a_width() {
    let sample = Sample::room(30.0, 120.0).tag(at(15.0, 60.0), "Room", RoomUse::Storage);
    let store = of(&sample, RoomUse::Storage);
    assert_eq!(met(&store, "Floor area"), None);
    assert_eq!(met(&store, "Least dimension"), None);
    let hall = of(&sample, RoomUse::Hall);
    assert_eq!(met(&hall, "Width of the hall"), Some(Met::No));
    assert_eq!(met(&of(&sample, RoomUse::Den), "Floor area"), Some(Met::No));
    assert_eq!(met(&of(&sample, RoomUse::Bath), "Window of 3 sq ft"), Some(Met::Unknown));
}

#[test]
fn a_storm_shelter_may_do_without_an_opening_of_its_own() {
    use plan::detail::{Value, room::STORM_SHELTER};
    let shelter = office().state(&STORM_SHELTER, Value::Yes);
    let bedroom = of(&shelter, RoomUse::Bedroom);
    assert_eq!(met(&bedroom, "Escape opening of its own"), Some(Met::Unknown));
}
