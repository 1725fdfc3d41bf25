//! Placing an opening in a wall: a ghost follows the pointer along the wall. Shared by doors and windows.

use geometry::{Seg, Where, locate, nearest_on};
use measure::Len;
use plan::element::{Body, Opening, OpeningKind};
use plan::{Draft, Edit, ElementId, State};

use super::{Cx, Event, Step};
use crate::pointer::{Pointer, along};
use crate::snap::caught;
use crate::{Dimension, DimensionId};

/// How far from a wall a typed point may lie.
const NEAR: Len = Len::inches(24);

/// The states of an opening being placed.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) enum Hosted {
    #[default]
    Ready,
    /// The ghost stands in a wall.
    Over { host: ElementId, line: Seg, at: Len, width: Len, pressed: bool },
}

/// The fields of a ghost.
pub(crate) const FIELDS: &[DimensionId] = &[DimensionId::ToStart, DimensionId::ToFinish];

impl Hosted {
    pub fn on(&mut self, event: &Event, cx: &Cx<'_>, kind: &OpeningKind, state: State) -> Step {
        let width = Opening { host: ElementId(0), at: Len::ZERO, kind: kind.clone() }.width();
        match event {
            Event::Press(pointer) | Event::Move(pointer) | Event::Release(pointer) => {
                let was_pressed = matches!(self, Hosted::Over { pressed: true, .. });
                let pressed = matches!(event, Event::Press(_))
                    || (was_pressed && matches!(event, Event::Move(_)));
                let found = wall_near(cx, pointer, pointer.reach);
                let Some((host, line)) = found else {
                    *self = Hosted::Ready;
                    return match event {
                        Event::Press(_) => Step::refuse("There is no wall here: click on a wall."),
                        _ => Step::default(),
                    };
                };
                if matches!(event, Event::Move(_)) && !was_pressed && on_selected(cx, host, pointer)
                {
                    // The opening that was just set lies under the pointer: that it is there is no mistake.
                    *self = Hosted::Ready;
                    return Step { hovered: Some(host), ..Step::default() };
                }
                let (at, word) = slide(cx, pointer, line, width);
                *self = Hosted::Over { host, line, at, width, pressed };
                let spot = line.point_at(at + width / 2);
                let snap = word.and_then(|word| caught(word, spot));
                let step = if was_pressed && matches!(event, Event::Release(_)) {
                    *self = Hosted::Ready;
                    add(cx, host, at, kind, state)
                } else {
                    let draft = draft(host, at, kind, state);
                    Step { hovered: Some(host), ..Step::preview(Edit::Add(draft), None) }
                };
                Step { caught: snap, ..step }
            }
            Event::Length(field, value) => self.typed(cx, *field, *value, kind, state),
            Event::Point(p) => {
                let pointer = Pointer { at: *p, ..Pointer::default() };
                let Some((host, line)) = wall_near(cx, &pointer, NEAR) else {
                    return Step::refuse("There is no wall within 2 ft of that point.");
                };
                let room = (line.len() - width).max(Len::ZERO);
                let at = (along(*p - line.a, line.dir()) - width / 2).clamp(Len::ZERO, room);
                *self = Hosted::Ready;
                add(cx, host, at, kind, state)
            }
            Event::Enter | Event::Double(_) | Event::Arrow(_) | Event::Turn => {
                self.ghost(kind, state)
            }
        }
    }

    fn typed(
        &mut self,
        cx: &Cx<'_>,
        field: DimensionId,
        value: Len,
        kind: &OpeningKind,
        state: State,
    ) -> Step {
        let Hosted::Over { host, line, width, .. } = *self else {
            return Step::refuse("Point at a wall first.");
        };
        let at = if field == DimensionId::ToFinish { line.len() - width - value } else { value };
        *self = Hosted::Ready;
        add(cx, host, at, kind, state)
    }

    /// The ghost as it stands.
    fn ghost(&self, kind: &OpeningKind, state: State) -> Step {
        match *self {
            Hosted::Ready => Step::default(),
            Hosted::Over { host, at, .. } => {
                Step::preview(Edit::Add(draft(host, at, kind, state)), None)
            }
        }
    }

    pub fn busy(&self) -> bool {
        matches!(self, Hosted::Over { .. })
    }

    /// The distances to both ends of the wall.
    pub fn dimensions(&self) -> Vec<Dimension> {
        match *self {
            Hosted::Ready => Vec::new(),
            Hosted::Over { host, line, at, width, .. } => to_ends(host, line, at, width),
        }
    }
}

/// The distances from an opening's jambs to the ends of its wall.
pub(crate) fn to_ends(host: ElementId, line: Seg, at: Len, width: Len) -> Vec<Dimension> {
    let dimension = |id, from, to, value| Dimension {
        id,
        from,
        to,
        value,
        editable: true,
        against: Some(host),
    };
    let far = at + width;
    vec![
        dimension(DimensionId::ToStart, line.point_at(at), line.a, at),
        dimension(DimensionId::ToFinish, line.point_at(far), line.b, line.len() - far),
    ]
}

/// The wall that takes openings whose body holds the pointer or lies within `reach`, with its drawn line.
/// Furring speaks for the foundation wall behind it.
fn wall_near(cx: &Cx<'_>, pointer: &Pointer, reach: Len) -> Option<(ElementId, Seg)> {
    let r = i64::from(reach.units());
    let mut best: Option<(i64, ElementId)> = None;
    for wall in &cx.facts.walls {
        let far = reach + wall.thickness;
        if !crate::pointer::box_reaches(wall.line, pointer.at, far) {
            continue;
        }
        let off = if locate(pointer.at, &wall.outline) != Where::Outside {
            0
        } else {
            [wall.left, wall.right, wall.line]
                .into_iter()
                .map(|seg| (pointer.at - nearest_on(seg, pointer.at)).norm2())
                .min()
                .unwrap_or(i64::MAX)
        };
        if off <= r * r && best.is_none_or(|(least, _)| off < least) {
            best = Some((off, wall.id));
        }
    }
    let (_, id) = best?;
    let host = cx.plan.get(id)?.body.host().unwrap_or(id);
    Some((host, cx.facts.wall(host)?.line))
}

/// Whether the pointer is on a selected opening of a wall.
fn on_selected(cx: &Cx<'_>, host: ElementId, pointer: &Pointer) -> bool {
    cx.selection.iter().filter_map(|id| cx.plan.get(*id)).any(|element| {
        let Body::Opening(opening) = &element.body else { return false };
        let Some(line) = cx.plan.get(host).and_then(|e| e.body.wall_line()) else { return false };
        let at = along(pointer.at - line.a, line.dir());
        opening.host == host && opening.at <= at && at <= opening.at + opening.width()
    })
}

/// Where along the wall the ghost stands, its middle at the pointer: the ends and the middle of the wall catch
/// it, else the grid.
pub(crate) fn slide(
    cx: &Cx<'_>,
    pointer: &Pointer,
    line: Seg,
    width: Len,
) -> (Len, Option<&'static str>) {
    let at = along(pointer.at - line.a, line.dir()) - width / 2;
    catch_along(cx, pointer, at, (Len::ZERO, (line.len() - width).max(Len::ZERO)))
}

/// Catches a place along a wall between two limits.
pub(crate) fn catch_along(
    cx: &Cx<'_>,
    pointer: &Pointer,
    at: Len,
    (least, most): (Len, Len),
) -> (Len, Option<&'static str>) {
    if !cx.catch(&[]).active(pointer) {
        return (at.clamp(least, most), None);
    }
    let middle = least + (most - least) / 2;
    let stops = [(least, "end"), (most, "end"), (middle, "middle")];
    let stop = stops
        .into_iter()
        .filter(|(stop, _)| (*stop - at).abs() <= pointer.reach)
        .min_by_key(|(stop, _)| (*stop - at).abs());
    match stop {
        Some((stop, word)) => (stop, Some(word)),
        None if at < least || at > most => (at.clamp(least, most), Some("end")),
        None if cx.options.grid > Len::ZERO => {
            (at.round_to(cx.options.grid).clamp(least, most), Some("grid"))
        }
        None => (at, None),
    }
}

fn draft(host: ElementId, at: Len, kind: &OpeningKind, state: State) -> Draft {
    Draft::new(state, Body::Opening(Opening { host, at, kind: kind.clone() }))
}

fn add(cx: &Cx<'_>, host: ElementId, at: Len, kind: &OpeningKind, state: State) -> Step {
    let draft = draft(host, at, kind, state);
    let label = format!("Set {} in {}", draft.body.word(), cx.name(host));
    Step::add(cx, label, draft)
}
