//! Tables of rooms, doors, windows with the arithmetic of escape openings, wall types.

use std::sync::Arc;

use measure::{Area, Len, Precision};
use plan::detail::opening::HEADER;
use plan::element::{DoorOperation, OpeningKind, RoomUse, Side, Window};
use plan::{Body, Element, State};
use rules::{Finding, Group, Severity};
use space::{OpeningFacts, Room};

use super::{Context, Kind, Made};
use crate::flow::{self, Piece, Table};
use crate::wall_types;

pub(crate) const KIND: Kind = Kind {
    slug: "tables",
    title: "Rooms, doors, windows, walls",
    discipline: "A",
    first: 601,
    make,
};

fn make(context: &Context<'_>) -> Made {
    // Facts are of what stands: what is removed is in none of the tables.
    let facts = context.source.facts;
    let mut pieces = Vec::new();
    let mut add = |head: &str, table: Table, after: &[&str]| {
        if !table.rows.is_empty() {
            pieces.push(Piece::Head(head.to_owned()));
            pieces.push(Piece::Table(table));
            pieces.extend(after.iter().map(|text| Piece::Text((*text).to_owned())));
            pieces.push(Piece::Gap);
        }
    };
    let rooms = facts.rooms.iter().map(|room| room_row(context, room)).collect();
    add(
        "Rooms",
        Table {
            head: vec!["Room", "Use", "Clear size", "Net area", "Ceiling", "Lowest"],
            shares: vec![3.0, 2.2, 3.6, 1.8, 1.8, 1.8],
            rows: rooms,
        },
        &[
            "Clear between finished faces; heights from the finished floor; lowest: under what hangs below the ceiling.",
        ],
    );
    let openings = || {
        facts.openings.iter().filter_map(|o| {
            let element = facts.plan.get(o.id)?;
            let Body::Opening(body) = &element.body else { return None };
            Some((element, &body.kind, o))
        })
    };
    let doors = openings().filter_map(|(element, kind, facts)| match kind {
        OpeningKind::Door(d) => {
            let inches = |l| context.system.inches(l, Precision::Tape);
            let swing = match d.operation {
                DoorOperation::Hinged | DoorOperation::Bifold => {
                    let to = match d.swing {
                        Side::Left => facts.left,
                        Side::Right => facts.right,
                    };
                    to.map_or("outdoors".to_owned(), |r| {
                        format!("into {}", context.source.facts.room(r).name)
                    })
                }
                _ => "-".to_owned(),
            };
            Some(vec![
                element.name(),
                state(element),
                d.operation.word().to_owned(),
                format!("{} x {}", inches(d.leaf_width), inches(d.leaf_height)),
                context.system.inches(facts.clear_width, Precision::Floor),
                swing,
                header(context, element),
            ])
        }
        OpeningKind::Window(_) => None,
    });
    add(
        "Doors and openings",
        Table {
            head: vec!["Mark", "State", "Kind", "Width x height", "Clear", "Swing", "Header"],
            shares: vec![1.0, 1.3, 2.2, 2.4, 1.3, 2.4, 2.4],
            rows: doors.collect(),
        },
        &["Clear: between the jamb and the leaf open 90 degrees."],
    );
    let windows = openings().filter_map(|(element, kind, facts)| match kind {
        OpeningKind::Window(w) => Some(window_row(context, element, w, facts)),
        OpeningKind::Door(_) => None,
    });
    add(
        "Windows",
        Table {
            head: vec![
                "Mark",
                "State",
                "Kind",
                "Frame",
                "Clear opening",
                "Clear area",
                "Sill",
                "Escape opening",
                "Well",
                "Header",
            ],
            shares: vec![0.9, 1.2, 1.2, 1.9, 2.0, 2.7, 1.1, 1.4, 2.6, 1.9],
            rows: windows.collect(),
        },
        &[
            "Clear area: clear width x clear height. Sill: finished floor to the bottom of the clear opening. * estimated from the frame: take it from the maker's sheet.",
        ],
    );
    let types = wall_types::of(facts);
    let rows = types.iter().map(|t| {
        vec![
            t.name.clone(),
            t.what().to_owned(),
            t.build_up(context.system),
            context.system.inches(t.thickness(), Precision::Tape),
            t.insulation(),
            t.retarder.map_or("not stated".to_owned(), |v| v.say(context.system)),
            t.plate.map_or("not stated".to_owned(), |v| v.say(context.system)),
        ]
    });
    add(
        "New walls",
        Table {
            head: vec![
                "Type",
                "What",
                "Layers",
                "Thick",
                "Insulation",
                "Vapour retarder",
                "Bottom plate",
            ],
            shares: vec![0.7, 1.8, 4.0, 1.0, 2.2, 1.6, 1.6],
            rows: rows.collect(),
        },
        &["Layers of furring: from the concrete inwards."],
    );
    if pieces.is_empty() {
        return Made::Nothing("there is no room, door, window or wall".to_owned());
    }
    // On a large sheet two columns, so that no line is too long to follow.
    let columns = if context.area.width() > 1_300.0 { 2 } else { 1 };
    let pages = flow::pages(&pieces, context.area, columns);
    Made::Drawn(pages.into_iter().map(|marks| (marks, None)).collect())
}

pub(super) fn state(element: &Element) -> String {
    match element.state {
        State::New => "new",
        State::Existing => "existing",
        State::Removed => "to be removed",
    }
    .to_owned()
}

/// What carries the load over a new opening.
fn header(context: &Context<'_>, element: &Element) -> String {
    match element.stated(&HEADER) {
        Some(value) => value.say(context.system),
        None if element.state == State::New => "not stated".to_owned(),
        None => "-".to_owned(),
    }
}

fn room_row(context: &Context<'_>, room: &Room) -> Vec<String> {
    let long = |len| context.system.len(len, Precision::Floor);
    vec![
        room.name.clone(),
        room.room_use.word().to_owned(),
        format!("{} x {}", long(room.clear.0), long(room.clear.1)),
        context.system.area(room.area),
        long(room.highest),
        long(room.lowest),
    ]
}

fn window_row(
    context: &Context<'_>,
    element: &Element,
    window: &Window,
    facts: &OpeningFacts,
) -> Vec<String> {
    let system = context.system;
    let inches = |l| system.inches(l, Precision::Tape);
    let floor = |l| system.inches(l, Precision::Floor);
    let (w, h) = (facts.clear_width, facts.clear_height);
    let opens = w > Len::ZERO && h > Len::ZERO;
    let mark = if facts.clear_estimated { "*" } else { "" };
    let area = Area::of_rect(w, h);
    let clear =
        if opens { format!("{} x {}{mark}", floor(w), floor(h)) } else { "fixed".to_owned() };
    let sill = window.sill - context.source.plan().site.floor_build;
    let well = window.well.map_or("-".to_owned(), |well| {
        let ladder = if well.ladder { ", ladder" } else { "" };
        let floor = Area::of_rect(well.width, well.projection);
        format!(
            "{} x {}, {} deep, {}{ladder}",
            inches(well.width),
            inches(well.projection),
            inches(well.depth),
            system.area(floor)
        )
    });
    vec![
        element.name(),
        state(element),
        window.operation.word().to_owned(),
        format!("{} x {}", inches(window.frame_width), inches(window.frame_height)),
        clear,
        if opens {
            format!("{} x {} = {}", floor(w), floor(h), system.area(area))
        } else {
            "-".to_owned()
        },
        inches(sill),
        escape(context, element).to_owned(),
        well,
        header(context, element),
    ]
}

/// Whether a bedroom's way out rests on an opening, by the rules.
pub(super) fn escape(context: &Context<'_>, element: &Element) -> &'static str {
    let facts = context.source.facts;
    let Some(opening) = facts.opening(element.id) else { return "-" };
    let about = |f: &&Arc<Finding>| {
        f.elements.contains(&element.id)
            && rules::rule(f.rule).is_some_and(|r| r.group == Group::WayOut)
    };
    let bad =
        context.source.findings.iter().filter(about).any(|f| f.severity == Severity::Correction);
    let bedroom = opening.rooms().any(|r| facts.room(r).room_use == RoomUse::Bedroom);
    let leads_out = opening.outside || !facts.is_door(element.id);
    match (bedroom && leads_out, bad) {
        (true, false) => "yes",
        (true, true) => "no, see the notes",
        (false, _) => "-",
    }
}
