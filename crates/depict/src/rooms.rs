//! Room labels: name, use, area, clear dimensions, ceiling height; tags that stand in no room.

use drawing::{Anchor, Marks, P, Tone, size};
use geometry::{Bounds, Pt, Shape};
use measure::Precision;
use plan::Body;
use plan::element::{RoomTag, RoomUse};
use rules::capital;
use space::{Room, RoomIndex};

use crate::labels::{ANY_SIZE, Label, Line, NOBODY, Placer, Rank, Spot, beside, square};
use crate::picture::Canvas;

pub(crate) fn labels(canvas: &Canvas<'_>, labels: &mut Vec<Label>) {
    let facts = canvas.scene.facts;
    for room in facts.rooms.iter().filter(|r| canvas.sees(&r.shape.outer)) {
        labels.push(label(canvas, room));
    }
    for element in facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::RoomTag(tag) = &element.body else { continue };
        let speaks = facts.rooms.iter().any(|r| r.tag == Some(element.id));
        if !speaks && canvas.sees(&[tag.at]) {
            labels.push(astray(canvas, element.name(), element.id.0, tag));
        }
    }
}

/// The origin of a room's marks: its tag, or its number when it has none.
pub(crate) fn origin(canvas: &Canvas<'_>, room: &Room) -> String {
    let RoomIndex(index) = room.index;
    room.tag.map_or_else(|| format!("room {index}"), |id| format!("room {}", canvas.name(id)))
}

fn label(canvas: &Canvas<'_>, room: &Room) -> Label {
    let system = canvas.scene.system;
    let small = |text: String| Line::plain(text, size::SMALL, Tone::SoftInk);
    let word = room.room_use.word();
    let area = system.area(room.area);
    let long = |len| system.len(len, Precision::Floor);
    let clear = format!("{} × {} clear", long(room.clear.0), long(room.clear.1));
    let height = if room.lowest == room.highest {
        format!("ceiling {}", long(room.highest))
    } else {
        format!("ceiling {}, least {}", long(room.highest), long(room.lowest))
    };
    let tagged = room.tag.is_some();
    let name = match (tagged, room.name.is_empty()) {
        (true, false) => room.name.clone(),
        (true, true) => capital(word),
        (false, _) => "No use given".to_owned(),
    };
    let head = |size: f32| {
        let tone = if tagged { Tone::Ink } else { Tone::SoftInk };
        Line::bold(name.clone(), size, tone)
    };
    // The use is said once: not below a name that is the same word.
    let what = if tagged && !name.eq_ignore_ascii_case(word) {
        format!("{word} · {area}")
    } else {
        area.clone()
    };
    // What was finished before is called so.
    let untouched = canvas.scene.untouched.contains(&room.index);
    let what = match untouched && room.room_use != RoomUse::Unfinished {
        true => format!("existing · {what}"),
        false => what,
    };
    let forms = vec![
        vec![head(size::LARGE), small(what.clone()), small(clear), small(height.clone())],
        vec![head(size::LARGE), small(what), small(height)],
        vec![head(size::LARGE), small(area.clone())],
        vec![head(size::BODY), small(area)],
        vec![head(size::SMALL)],
    ];
    let all = room.shape.bounds();
    let tag = room.tag.and_then(|id| canvas.scene.facts.plan.get(id)).map(|e| &e.body);
    let preferred = match tag {
        Some(Body::RoomTag(tag)) => tag.at,
        _ => room.label_at,
    };
    Label {
        origin: origin(canvas, room),
        rank: Rank::Room,
        owner: NOBODY,
        forms,
        spots: spots(canvas, &room.shape, preferred, room.label_at),
        within: None,
        most: (canvas.view.points(all.width()), canvas.view.points(all.height())),
        plate: untouched.then_some(Tone::Slab),
    }
}

/// The tag's own place, the middle of the room, then a lattice over the room by nearness to the tag.
fn spots(canvas: &Canvas<'_>, shape: &Shape, preferred: Pt, middle: Pt) -> Vec<Spot> {
    const LATTICE: i64 = 6;
    let seen = canvas.view.bounds();
    let all = shape.bounds();
    // Only the part on the screen.
    let low = Pt::new(all.min.x.max(seen.min.x), all.min.y.max(seen.min.y));
    let high = Pt::new(all.max.x.min(seen.max.x), all.max.y.min(seen.max.y));
    let mut more: Vec<(i64, Pt)> = Vec::new();
    if !Bounds::of([low, high]).is_empty() && low.x < high.x && low.y < high.y {
        for i in 1..LATTICE {
            for j in 1..LATTICE {
                let along = |a: i32, b: i32, n: i64| {
                    (i64::from(a) + (i64::from(b) - i64::from(a)) * n / LATTICE) as i32
                };
                let p = Pt::new(along(low.x, high.x, i), along(low.y, high.y, j));
                if shape.contains(p) {
                    more.push(((p - preferred).norm2(), p));
                }
            }
        }
    }
    more.sort_unstable();
    [preferred, middle]
        .into_iter()
        .chain(more.into_iter().map(|(_, p)| p))
        .map(|p| Spot::new(canvas.view.screen_from_plan(p), Anchor::Middle))
        .collect()
}

fn astray(canvas: &Canvas<'_>, origin: String, owner: u32, tag: &RoomTag) -> Label {
    let at = canvas.view.screen_from_plan(tag.at);
    let name = if tag.name.is_empty() { capital(tag.room_use.word()) } else { tag.name.clone() };
    let head = Line::bold(name, size::LARGE, Tone::SoftInk);
    let open = Line::plain("not enclosed by walls", size::SMALL, Tone::Verify);
    let spots = [0.0, 18.0, -18.0, 36.0].map(|dy| Spot::new(at.by(0.0, dy), Anchor::Middle));
    Label {
        origin,
        rank: Rank::Room,
        owner,
        forms: vec![vec![head.clone(), open], vec![head]],
        spots: spots.to_vec(),
        within: None,
        most: ANY_SIZE,
        plate: None,
    }
}

/// Notes: their text beside a dot.
pub(crate) fn notes(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    if !canvas.scene.show.notes {
        return;
    }
    for element in canvas.scene.facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::Note(note) = &element.body else { continue };
        if !canvas.sees(&[note.at]) {
            continue;
        }
        let at: P = canvas.view.screen_from_plan(note.at);
        placer.block(square(at, 3.0), element.id.0);
        marks.group(element.name(), |m| m.circle(at, 2.0, Some(Tone::New), None));
        let lines: Vec<Line> =
            note.text.lines().map(|line| Line::plain(line, size::SMALL, Tone::New)).collect();
        labels.push(Label {
            origin: element.name(),
            rank: Rank::Note,
            owner: element.id.0,
            forms: vec![lines],
            spots: beside(at, 1.0),
            within: None,
            most: ANY_SIZE,
            plate: None,
        });
    }
}
