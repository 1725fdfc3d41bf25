//! Writes a note on the plan.

use geometry::Pt;
use plan::{Body, Draft, State, element};

use super::{Cx, Event, Step, Tool};

/// The note tool: ready, or the button is down.
#[derive(Clone, Debug, Default)]
pub(crate) enum Note {
    #[default]
    Ready,
    Pressed,
}

impl Tool for Note {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        match event {
            Event::Press(_) => {
                *self = Note::Pressed;
                Step::default()
            }
            Event::Release(pointer) if self.busy() => {
                *self = Note::Ready;
                add(cx, pointer.at)
            }
            Event::Point(at) => {
                *self = Note::Ready;
                add(cx, *at)
            }
            _ => Step::default(),
        }
    }

    fn busy(&self) -> bool {
        matches!(self, Note::Pressed)
    }

    fn expects(&self) -> &'static str {
        "Click where the note stands, or type x, y."
    }

    fn takes_point(&self) -> bool {
        true
    }
}

fn add(cx: &Cx<'_>, at: Pt) -> Step {
    let body = Body::Note(element::Note { at, text: cx.options.note.clone() });
    Step::add(cx, "Write note".to_owned(), Draft::new(State::New, body))
}
