//! Says what a room is used as. A room that has a tag keeps it: its use and name change.

use geometry::Pt;
use plan::{Body, Draft, Edit, Element, State, element};

use super::{Commit, Cx, Event, Step, Tool};

/// The room use tool: ready, or the button is down.
#[derive(Clone, Debug, Default)]
pub(crate) enum RoomTag {
    #[default]
    Ready,
    Pressed,
}

impl Tool for RoomTag {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        match event {
            Event::Press(_) => {
                *self = RoomTag::Pressed;
                Step::default()
            }
            Event::Release(pointer) if self.busy() => {
                *self = RoomTag::Ready;
                call(cx, pointer.at)
            }
            Event::Point(at) => {
                *self = RoomTag::Ready;
                call(cx, *at)
            }
            _ => Step::default(),
        }
    }

    fn busy(&self) -> bool {
        matches!(self, RoomTag::Pressed)
    }

    fn expects(&self) -> &'static str {
        "Click in a room to say what it is used as, or type x, y."
    }

    fn takes_point(&self) -> bool {
        true
    }
}

fn call(cx: &Cx<'_>, at: Pt) -> Step {
    let options = cx.options;
    let word = options.room_use.word();
    let label = format!("Call the room {word}");
    let tagged = cx.facts.room_at(at).and_then(|room| cx.facts.room(room).tag);
    if let Some(old) = tagged.and_then(|id| cx.plan.get(id))
        && let Body::RoomTag(tag) = &old.body
    {
        let name = if options.room_name.is_empty() { &tag.name } else { &options.room_name };
        let body = Body::RoomTag(element::RoomTag {
            at: tag.at,
            name: name.clone(),
            room_use: options.room_use,
        });
        let edit = Edit::Replace(Element { body, ..old.clone() });
        let commit = Commit { label, edit, select: Some(vec![old.id]) };
        return Step { commit: Some(commit), ..Step::default() };
    }
    let body = Body::RoomTag(element::RoomTag {
        at,
        name: options.room_name.clone(),
        room_use: options.room_use,
    });
    Step::add(cx, label, Draft::new(State::New, body))
}
