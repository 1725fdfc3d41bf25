//! Appliances that burn with the air of a room, by the floor that they share.

use std::collections::{BTreeMap, BTreeSet};

use plan::detail::heat::{FUEL, INPUT, VENT};
use plan::element::ServiceKind;
use plan::{Element, ElementId};
use space::{Facts, Room, RoomIndex};

use crate::Sheet;
use crate::answer::Answer;

/// The appliances of one room, or of several that stand open to one another.
pub(super) struct Burners<'a> {
    /// In the order of their index.
    pub rooms: Vec<&'a Room>,
    pub appliances: Vec<Burner<'a>>,
}

/// One appliance, with what is known of it.
pub(super) struct Burner<'a> {
    pub element: &'a Element,
    pub fuel: Answer,
    pub vent: Answer,
    pub input: Answer,
}

impl Burners<'_> {
    /// The input of all in BTU/h, where every one is stated.
    pub fn input(&self) -> Option<u64> {
        self.appliances.iter().map(|b| b.input.number().map(u64::from)).sum()
    }

    pub fn ids(&self) -> Vec<ElementId> {
        self.appliances.iter().map(|b| b.element.id).collect()
    }

    /// The tag of the room with the first appliance.
    pub fn tag(&self, sheet: &Sheet<'_>) -> Option<ElementId> {
        let first = self.appliances.first()?;
        room_of(sheet, first.element).and_then(|i| sheet.facts.room(i).tag)
    }

    /// The volume of their rooms in cubic inches, from net floor and ceiling height, rounded down.
    pub fn cubic_inches(&self, sheet: &Sheet<'_>) -> u128 {
        let height = sheet.plan().site.ceiling_height().units().max(0);
        let unit = u128::from(measure::Len::PER_INCH.unsigned_abs());
        let area: i128 = self.rooms.iter().map(|r| r.area.square_units()).sum();
        let area = u128::try_from(area).unwrap_or(0);
        area * u128::from(height.unsigned_abs()) / (unit * unit * unit)
    }
}

/// Every group of rooms with something that burns with their air: neither electric nor direct vent.
pub(super) fn burners<'a>(sheet: &Sheet<'a>) -> Vec<Burners<'a>> {
    let burns = |k| matches!(k, ServiceKind::Furnace | ServiceKind::WaterHeater);
    let mut groups: BTreeMap<RoomIndex, Burners<'a>> = BTreeMap::new();
    for (element, _) in sheet.services().filter(|(_, s)| burns(s.kind)) {
        let ask = |detail| sheet.ask(element, detail);
        let burner = Burner { element, fuel: ask(&FUEL), vent: ask(&VENT), input: ask(&INPUT) };
        if burner.fuel.is(&["electric"]) || burner.vent.is(&["direct vent"]) {
            continue;
        }
        let Some(room) = room_of(sheet, element) else { continue };
        let joined = joined_rooms(sheet.facts, room);
        let Some(first) = joined.first().copied() else { continue };
        let group = groups.entry(first).or_insert_with(|| Burners {
            rooms: joined.iter().map(|r| sheet.facts.room(*r)).collect(),
            appliances: Vec::new(),
        });
        group.appliances.push(burner);
    }
    groups.into_values().collect()
}

fn room_of(sheet: &Sheet<'_>, element: &Element) -> Option<RoomIndex> {
    match &element.body {
        plan::Body::Service(s) => sheet.facts.room_at(s.placed().centre()),
        _ => None,
    }
}

/// A room and those that it stands open to, also through others: through openings without a leaf.
fn joined_rooms(facts: &Facts, room: RoomIndex) -> BTreeSet<RoomIndex> {
    let (mut joined, mut next) = (BTreeSet::from([room]), vec![room]);
    while let Some(room) = next.pop() {
        let open = facts.open_to(room).into_iter().map(|r| r.index);
        next.extend(open.filter(|r| joined.insert(*r)));
    }
    joined
}
