//! Selects by click, Shift and marquee, and drags what is selected.

mod drag;
mod snap;

use std::collections::BTreeSet;

use geometry::Pt;
use plan::ElementId;

use super::{Commit, Cx, Event, Step, Tool};
use crate::pick;
use crate::pointer::{Pointer, within};
use crate::{Dimension, DimensionId};
use drag::{Drag, Shift};

/// The select tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Select {
    state: State,
    /// The place and the element of the last click, so that clicking there again takes the next one below.
    last: Option<(Pt, ElementId)>,
}

#[derive(Clone, Debug, Default)]
enum State {
    #[default]
    Ready,
    /// The button is down on an element, or on the handle of one.
    Pressed {
        at: Pt,
        drag: Option<Drag>,
        hits: Vec<ElementId>,
    },
    /// The button is down on nothing; a box is drawn.
    Marquee {
        from: Pt,
        to: Pt,
        add: bool,
    },
    Dragging {
        drag: Drag,
        grab: Pt,
        shift: Shift,
    },
}

impl Tool for Select {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        match (self.state.clone(), event) {
            (State::Ready, Event::Press(pointer)) => self.press(cx, pointer),
            (State::Ready, Event::Move(pointer)) => Step {
                hovered: pick::hits(cx.plan, cx.facts, pointer, cx.hidden).first().copied(),
                ..Step::default()
            },
            (State::Ready, Event::Double(pointer)) => {
                // The two clicks of a double click would have gone on to what lies below.
                let top = pick::hits(cx.plan, cx.facts, pointer, cx.hidden).first().copied();
                self.last = top.map(|id| (pointer.at, id));
                Step { select: top.map(|id| BTreeSet::from([id])), ..Step::default() }
            }
            (State::Pressed { at, drag, .. }, Event::Move(pointer)) => {
                match drag.filter(|_| !within(at, pointer.at, pointer.reach)) {
                    Some(drag) => self.drag_to(cx, drag, at, pointer),
                    None => Step::default(),
                }
            }
            (State::Pressed { hits, .. }, Event::Release(pointer)) => {
                self.state = State::Ready;
                self.click(cx, pointer, &hits)
            }
            (State::Marquee { from, add, .. }, Event::Move(pointer)) => {
                self.state = State::Marquee { from, to: pointer.at, add };
                Step::default()
            }
            (State::Marquee { from, add, .. }, Event::Release(pointer)) => {
                self.state = State::Ready;
                marquee(cx, from, pointer, add)
            }
            (State::Dragging { drag, grab, .. }, Event::Move(pointer)) => {
                self.drag_to(cx, drag, grab, pointer)
            }
            (State::Dragging { drag, grab, .. }, Event::Release(pointer)) => {
                let (shift, caught) = drag.aim(cx, grab, pointer);
                self.state = State::Ready;
                Step { caught, ..commit(cx, &drag, &shift) }
            }
            (State::Dragging { drag, shift, .. }, Event::Length(_, len)) => {
                match drag.typed(&shift, *len) {
                    Some(shift) => {
                        self.state = State::Ready;
                        commit(cx, &drag, &shift)
                    }
                    None => Step::refuse("Drag it some way first, so that the direction is known."),
                }
            }
            (State::Dragging { drag, shift, .. }, Event::Enter) => {
                self.state = State::Ready;
                commit(cx, &drag, &shift)
            }
            (State::Dragging { drag, shift, .. }, _) => preview(cx, &drag, &shift),
            _ => Step::default(),
        }
    }

    fn busy(&self) -> bool {
        !matches!(self.state, State::Ready)
    }

    fn expects(&self) -> &'static str {
        match &self.state {
            State::Ready => {
                "Click selects, Shift adds, drag moves. Tab types into the tape's figures."
            }
            State::Pressed { .. } => "Drag to move, release to select.",
            State::Marquee { .. } => "Release to select what lies wholly in the box.",
            State::Dragging { .. } => "Release to place, or type how far. Ctrl: no snapping.",
        }
    }

    fn fields(&self) -> &'static [DimensionId] {
        match &self.state {
            State::Dragging { shift: Shift::To { .. }, .. } => &[DimensionId::Length],
            State::Dragging { .. } => &[DimensionId::Distance],
            _ => &[],
        }
    }

    fn dimensions(&self) -> Vec<Dimension> {
        match &self.state {
            State::Dragging { drag, grab, shift } => drag.dimensions(*grab, shift),
            _ => Vec::new(),
        }
    }

    fn marquee(&self) -> Option<(Pt, Pt)> {
        match self.state {
            State::Marquee { from, to, .. } => Some((from, to)),
            _ => None,
        }
    }
}

impl Select {
    fn press(&mut self, cx: &Cx<'_>, pointer: &Pointer) -> Step {
        let add = pointer.mods.shift;
        if !add && let Some(drag) = Drag::handle(cx, pointer) {
            let hits = cx.selection.iter().copied().collect();
            self.state = State::Pressed { at: pointer.at, drag: Some(drag), hits };
            return Step::default();
        }
        let hits = pick::hits(cx.plan, cx.facts, pointer, cx.hidden);
        let Some(top) = hits.first().copied() else {
            self.state = State::Marquee { from: pointer.at, to: pointer.at, add };
            return Step::default();
        };
        let held = hits.iter().any(|id| cx.selection.contains(id));
        let (drag, select) = if held || add {
            (Drag::of(cx, cx.selection), None)
        } else {
            let one = BTreeSet::from([top]);
            (Drag::of(cx, &one), Some(one))
        };
        self.state = State::Pressed { at: pointer.at, drag, hits };
        Step { select, hovered: Some(top), ..Step::default() }
    }

    /// A click without a drag.
    fn click(&mut self, cx: &Cx<'_>, pointer: &Pointer, hits: &[ElementId]) -> Step {
        let Some(top) = hits.first().copied() else { return Step::default() };
        if pointer.mods.shift {
            let mut selection = cx.selection.clone();
            if !selection.remove(&top) {
                selection.insert(top);
            }
            return Step { select: Some(selection), ..Step::default() };
        }
        let below = self
            .last
            .filter(|(at, _)| within(*at, pointer.at, pointer.reach))
            .and_then(|(_, id)| hits.iter().position(|hit| *hit == id))
            .map(|i| hits[(i + 1) % hits.len()]);
        let chosen = below.unwrap_or(top);
        self.last = Some((pointer.at, chosen));
        Step { select: Some(BTreeSet::from([chosen])), ..Step::default() }
    }

    fn drag_to(&mut self, cx: &Cx<'_>, drag: Drag, grab: Pt, pointer: &Pointer) -> Step {
        let (shift, caught) = drag.aim(cx, grab, pointer);
        let step = Step { caught, ..preview(cx, &drag, &shift) };
        self.state = State::Dragging { drag, grab, shift };
        step
    }
}

fn preview(cx: &Cx<'_>, drag: &Drag, shift: &Shift) -> Step {
    match drag.edit(cx, shift) {
        Ok((_, edit)) => Step::preview(edit, None),
        Err(why) => Step::refuse(why),
    }
}

fn commit(cx: &Cx<'_>, drag: &Drag, shift: &Shift) -> Step {
    match drag.edit(cx, shift) {
        Ok((label, edit)) => {
            let commit = Commit { label, edit, select: None };
            Step { commit: Some(commit), ..Step::default() }
        }
        Err(why) => Step::refuse(why),
    }
}

fn marquee(cx: &Cx<'_>, from: Pt, pointer: &Pointer, add: bool) -> Step {
    let found = pick::within_box(cx.plan, cx.facts, (from, pointer.at), cx.hidden);
    let mut selection = if add { cx.selection.clone() } else { BTreeSet::new() };
    selection.extend(found);
    // A click on the bare floor means the room, which its tag speaks for.
    if within(from, pointer.at, pointer.reach) {
        selection.extend(cx.facts.room_at(pointer.at).and_then(|room| cx.facts.room(room).tag));
    }
    Step { select: Some(selection), ..Step::default() }
}
