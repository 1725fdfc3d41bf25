//! An office, den or family room that reads as a bedroom.

use plan::element::RoomUse;
use plan::{Body, Edit, ElementId};
use space::{OpeningFacts, Room, RoomIndex};

use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::rules::way_out::nearest;
use crate::{
    Check, Finding, Group, Phrase, Place, Quantity, Remedy, Rule, Safety, Severity, Sheet,
};

pub(crate) const RULE: Rule = Rule {
    slug: "reads-as-bedroom",
    group: Group::BedroomOrOffice,
    title: "Room that may be counted as a bedroom",
    page: "\
What
A room that is called office, den, family room or gym, but could be slept in: at least 70 sq ft, with a window or door
to the outdoors that could serve to escape, a door or a clothes closet, and no way through it to another room.

Why
If the department counts it as a bedroom, it must have what a bedroom has: escape opening, alarms, perhaps a larger
septic system. Sold as a bedroom without them it can kill.

Source
The residential code asks things of sleeping rooms and gives no test for one. Departments differ: some look at closet,
door, size and window, others at the word on the plan. Local rules of several counties, health boards and forums of
officials.

How it is measured
The area of the room, its outside openings, the doors with a leaf, and closets that open to this room only. A room that
leads on to another room (a bath or closet of its own aside) is a way through.

Cannot see
Built-in desks and shelves that leave no place for a bed, half walls, heat and power.

Exceptions
Rooms entered by a cased opening and without a closet.

Remedies
Call it a bedroom and see what it needs; or ask the department in writing. Taking the closet's door away or opening the
entrance to a wide cased opening helps in some places.
",
    cites: &["reads-as-bedroom", "reads-as-bedroom-area"],
    check: Check::Room(check),
    remedies: Some(remedies),
};

const WHY: &str = "Departments differ on what a bedroom is: some count any private room that could be slept in, others go \
                   by the word on the plan. Ask yours before you build it without what a bedroom needs.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(signs) = signs(sheet, room) else { return };
    let title = format!("{} reads as a bedroom", capital(&room_called(room)));
    let word = room.room_use.word();
    out.push(
        Finding::new(
            Severity::Verify,
            sheet.book.cite("reads-as-bedroom"),
            RULE.slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(
            Quantity::Words(signs.join(", ")),
            Quantity::Words(format!("not a bedroom ({word})")),
        )
        .assuming(format!("the department goes by the word {word} on the plan"))
        .at(Place::Floor(room.index)),
    );
}

/// What makes the room read as a bedroom, where it does.
fn signs(sheet: &Sheet<'_>, room: &Room) -> Option<Vec<&'static str>> {
    let called =
        [RoomUse::Office, RoomUse::Den, RoomUse::FamilyRoom, RoomUse::Gym].contains(&room.room_use);
    if !called || room.area < sheet.book.area("reads-as-bedroom-area").value {
        return None;
    }
    let mut signs = Vec::new();
    let own: Vec<RoomIndex> =
        own_rooms(sheet, room.index, &[RoomUse::Closet, RoomUse::Bath]).collect();
    let entrance = |o: &&OpeningFacts| !o.rooms().any(|r| own.contains(&r));
    if opens_to(sheet, room.index).filter(entrance).any(|o| sheet.facts.has_leaf(o.id)) {
        signs.push("door");
    }
    if own_rooms(sheet, room.index, &[RoomUse::Closet]).next().is_some() {
        signs.push("closet");
    }
    if signs.is_empty() || leads_on(sheet, room.index) {
        return None;
    }
    nearest(sheet, Some(room.index))?;
    signs.push("escape opening");
    signs.push("large enough");
    signs.push("no way through");
    Some(signs)
}

/// The openings between a room and others, windows left out.
fn opens_to<'a>(
    sheet: &Sheet<'a>,
    room: RoomIndex,
) -> impl Iterator<Item = &'a OpeningFacts> + use<'a> {
    let between = |o: &&OpeningFacts| o.left.is_some() && o.right.is_some() && o.left != o.right;
    let facts = sheet.facts;
    facts
        .room(room)
        .openings
        .iter()
        .filter_map(|id| facts.opening(*id))
        .filter(between)
        .filter(move |o| facts.is_door(o.id))
}

/// The rooms on the other side of a room's doors, without repeats.
fn neighbours(sheet: &Sheet<'_>, room: RoomIndex) -> Vec<RoomIndex> {
    let mut next: Vec<RoomIndex> =
        opens_to(sheet, room).flat_map(|o| o.rooms()).filter(|r| *r != room).collect();
    next.sort_unstable();
    next.dedup();
    next
}

/// Rooms of some uses that open to this room only.
fn own_rooms<'a>(
    sheet: &'a Sheet<'_>,
    room: RoomIndex,
    uses: &'a [RoomUse],
) -> impl Iterator<Item = RoomIndex> + 'a {
    neighbours(sheet, room).into_iter().filter(move |&next| {
        uses.contains(&sheet.facts.room(next).room_use) && neighbours(sheet, next) == [room]
    })
}

/// Whether the room is a way to another room than its own baths and closets.
fn leads_on(sheet: &Sheet<'_>, room: RoomIndex) -> bool {
    let own = own_rooms(sheet, room, &[RoomUse::Closet, RoomUse::Bath]).count();
    neighbours(sheet, room).len() - own > 1
}

/// Calling it a bedroom shows what that needs; the user decides.
fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let tag = |id: &ElementId| sheet.plan().get(*id).cloned();
    let mut remedies = Vec::new();
    for mut element in finding.elements.iter().filter_map(tag) {
        let Body::RoomTag(room) = &mut element.body else { continue };
        room.room_use = RoomUse::Bedroom;
        let label = Phrase::text(format!("Call {} a bedroom", room.name));
        remedies.push(Remedy { label, edit: Edit::Replace(element), safety: Safety::Ask });
    }
    remedies
}

#[cfg(test)]
mod tests {
    use plan::element::{ClearOpening, DoorOperation, RoomUse, Window, WindowOperation};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "reads-as-bedroom";

    fn window(operation: WindowOperation) -> Window {
        Window {
            operation,
            frame_width: inch(36.0),
            frame_height: inch(48.0),
            clear: ClearOpening::Sheet { width: inch(32.0), height: inch(44.0) },
            sill: inch(40.0),
            grade: inch(40.0),
            well: None,
        }
    }

    /// A room of so many inches by 10 ft in the west, entered from the rest in the east.
    struct Office {
        room_use: RoomUse,
        width: f64,
        entrance: DoorOperation,
        window: Option<WindowOperation>,
    }

    impl Default for Office {
        fn default() -> Office {
            Office {
                room_use: RoomUse::Office,
                width: 120.0,
                entrance: DoorOperation::Hinged,
                window: Some(WindowOperation::Casement),
            }
        }
    }

    impl Office {
        fn sample(&self) -> Sample {
            let x = self.width + 2.25;
            let sample = Sample::room(400.0, 120.0);
            let south = sample.facts().plan.elements().iter().next().expect("a wall").id;
            let sample = sample.partition(at(x, 0.0), at(x, 120.0));
            let wall = sample.last();
            let sample = sample
                .opening(wall, 20.0, self.entrance, 30.0)
                .tag(at(20.0, 60.0), "Office", self.room_use)
                .tag(at(380.0, 60.0), "Rest", RoomUse::Unfinished);
            match self.window {
                Some(operation) => sample.window(south, 20.0, window(operation)),
                None => sample,
            }
        }

        /// With a closet 24 in deep at the north wall.
        fn with_closet(&self) -> Sample {
            let sample = self.sample().partition(at(0.0, 90.0), at(self.width, 90.0));
            let front = sample.last();
            sample.opening(front, 30.0, DoorOperation::Bifold, 48.0).tag(
                at(20.0, 110.0),
                "Closet",
                RoomUse::Closet,
            )
        }
    }

    fn said(signs: &str, word: &str) -> String {
        format!("verify, measured {signs}, required not a bedroom ({word})")
    }

    #[test]
    fn clear_pass() {
        let open = Office { entrance: DoorOperation::Cased, ..Office::default() };
        open.sample().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let verify = said("door, escape opening, large enough, no way through", "office");
        Office::default().sample().expect(SLUG, &[&verify]);
        for (room_use, word) in
            [(RoomUse::Den, "den"), (RoomUse::FamilyRoom, "family room"), (RoomUse::Gym, "gym")]
        {
            let room = Office { room_use, ..Office::default() };
            let verify = said("door, escape opening, large enough, no way through", word);
            room.sample().expect(SLUG, &[&verify]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 84 x 120 in is exactly 70 sq ft.
        let wide = |width| Office { width, ..Office::default() };
        assert_eq!(wide(84.0).sample().findings(SLUG).len(), 1);
        wide(83.984375).sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        for room_use in [RoomUse::Bedroom, RoomUse::Storage, RoomUse::Bath, RoomUse::Workshop] {
            Office { room_use, ..Office::default() }.sample().expect_none(SLUG);
        }
        for window in [None, Some(WindowOperation::Fixed)] {
            Office { window, ..Office::default() }.sample().expect_none(SLUG);
        }
    }

    #[test]
    fn a_closet_of_its_own_is_a_sign_and_no_way_through() {
        let open = Office { entrance: DoorOperation::Cased, width: 144.0, ..Office::default() };
        let closet = open.with_closet();
        // The bifold of the closet is no door of the room.
        let verify = said("closet, escape opening, large enough, no way through", "office");
        closet.expect(SLUG, &[&verify]);
    }

    #[test]
    fn a_way_through_is_no_bedroom() {
        let sample = Office { width: 144.0, ..Office::default() }.with_closet();
        // The same small room behind, as a store: one passes through the office to it.
        let tag = sample.last();
        let mut element = sample.facts().plan.get(tag).expect("the tag").clone();
        if let plan::Body::RoomTag(tag) = &mut element.body {
            tag.room_use = RoomUse::Storage;
        }
        sample.edit(&plan::Edit::Replace(element)).expect_none(SLUG);
    }

    #[test]
    fn the_remedy_calls_it_a_bedroom() {
        assert_eq!(Office::default().sample().remedies(SLUG), ["Call Office a bedroom"]);
    }
}
