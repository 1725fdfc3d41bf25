//! What a script expects, and whether it is so.

mod compare;
mod read;

use measure::{Len, Precision, System};
use plan::{Body, ElementId, Plan};
use rules::Finding;

use super::changes;
use super::names;
use super::run::name;
use crate::{Checked, DimensionId, Session, ToolKind, fields};
use compare::{equal, matches, same_area, same_len};

pub use read::FORMS;
pub(super) use read::parse;

/// One expectation.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Expect {
    /// So many elements in the committed plan; of a kind where a word is given.
    Elements {
        count: usize,
        word: Option<String>,
    },
    Finding(Wanted),
    /// No finding that is like this one.
    NoFinding(Wanted),
    Length {
        name: String,
        len: Len,
    },
    Status(String),
    Caught(Option<String>),
    Rooms(usize),
    RoomArea {
        name: String,
        figure: String,
    },
    RoomUse {
        name: String,
        word: String,
    },
    Undo(Option<String>),
    Redo(Option<String>),
    Value {
        name: String,
        field: String,
        value: String,
    },
    Site {
        key: String,
        value: String,
    },
    Refused(Option<String>),
    Selection(Vec<String>),
    Dimension {
        id: DimensionId,
        value: Option<Len>,
    },
    Entry(Option<String>),
    Tool(ToolKind),
    /// The committed plan is the marked one.
    Plan {
        mark: String,
    },
    /// The shown plan is the committed one, and no gesture is running.
    Ready,
}

/// A finding as a script describes it.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Wanted {
    /// Any rule when absent.
    pub rule: Option<String>,
    pub severity: Option<String>,
    pub on: Option<String>,
    pub measured: Option<String>,
    pub required: Option<String>,
}

/// The findings of a rule that name an element.
pub(super) fn findings<'c>(
    checked: &'c Checked,
    rule: &str,
    on: Option<ElementId>,
) -> Vec<&'c Finding> {
    let all = checked.findings.iter();
    all.filter(|f| f.rule == rule && on.is_none_or(|id| f.elements.contains(&id)))
        .map(|f| &**f)
        .collect()
}

/// The findings there are, for a message.
pub(super) fn known(checked: &Checked, plan: &Plan, system: System) -> String {
    if checked.findings.is_empty() {
        return "there are no findings".to_owned();
    }
    let list: Vec<String> =
        checked.findings.iter().map(|f| changes::words(f, plan, system)).collect();
    format!("there are:\n    {}", list.join("\n    "))
}

/// Checks an expectation; the error says what is so instead.
pub(super) fn check(
    expect: &Expect,
    session: &mut Session,
    marks: &[(String, Plan)],
) -> Result<(), String> {
    let checked = session.checked();
    let system = session.system();
    let shown = std::sync::Arc::clone(session.shown());
    let text = |what: &str, wanted: &Option<String>, is: Option<&str>| match (wanted, is) {
        (None, None) => Ok(()),
        (Some(wanted), Some(is)) if is.contains(wanted.as_str()) => Ok(()),
        (_, is) => {
            Err(format!("{what} is {}", is.map_or("nothing".to_owned(), |is| format!("{is:?}"))))
        }
    };
    match expect {
        Expect::Elements { count, word } => {
            let of_kind = |body: &Body| word.as_deref().is_none_or(|word| body.word() == word);
            let is = session.plan().elements().iter().filter(|e| of_kind(&e.body)).count();
            equal(*count, is)
        }
        Expect::Finding(wanted) => {
            let mut like = Vec::new();
            for finding in checked.findings.iter() {
                if matches(wanted, finding, &shown, system)? {
                    like.push(finding);
                }
            }
            if like.is_empty() { Err(known(&checked, &shown, system)) } else { Ok(()) }
        }
        Expect::NoFinding(wanted) => {
            for finding in checked.findings.iter() {
                if matches(wanted, finding, &shown, system)? {
                    return Err(format!("there is: {}", changes::words(finding, &shown, system)));
                }
            }
            Ok(())
        }
        Expect::Length { name, len } => {
            let element = names::element(&shown, name)?;
            let line = element.body.wall_line().or(match &element.body {
                Body::Overhead(o) => match &o.shape {
                    plan::element::OverheadShape::Run { a, b, .. } => {
                        Some(geometry::Seg::new(*a, *b))
                    }
                    plan::element::OverheadShape::Outline(_) => None,
                },
                _ => None,
            });
            let is = line.ok_or_else(|| format!("{name} has no length"))?.len();
            same_len(*len, is, system)
        }
        Expect::Status(wanted) => text(
            "what is expected next",
            &Some(wanted.clone()),
            Some(session.status().expects.as_str()),
        ),
        Expect::Caught(wanted) => {
            let is = session.status().caught.as_ref().map(|snap| snap.word);
            if is == wanted.as_deref() { Ok(()) } else { Err(format!("what was caught is {is:?}")) }
        }
        Expect::Rooms(count) => equal(*count, checked.facts.rooms.len()),
        Expect::RoomArea { name, figure } => {
            let area = checked.facts.room(room(&checked, name)?).area;
            same_area(figure, area, system)
        }
        Expect::RoomUse { name, word } => {
            let is = checked.facts.room(room(&checked, name)?).room_use.word();
            if is == word { Ok(()) } else { Err(format!("its use is {is}")) }
        }
        Expect::Undo(wanted) => text("the step to undo", wanted, session.can_undo()),
        Expect::Redo(wanted) => text("the step to redo", wanted, session.can_redo()),
        Expect::Value { name, field, value } => {
            let element = names::element(&shown, name)?;
            match fields::holds(element, field, value, system)? {
                true => Ok(()),
                false => Err(format!("it is {}", fields::get(element, field, system)?)),
            }
        }
        Expect::Site { key, value } => match fields::site_holds(&shown.site, key, value, system)? {
            true => Ok(()),
            false => Err(format!("it is not {value}")),
        },
        Expect::Refused(wanted) => {
            text("what was refused", wanted, session.status().refused.as_deref())
        }
        Expect::Selection(wanted) => {
            let is: Vec<String> = session.selection().iter().map(|id| name(&shown, *id)).collect();
            if is == *wanted { Ok(()) } else { Err(format!("selected: {}", is.join(" "))) }
        }
        Expect::Dimension { id, value } => {
            let all = session.dimensions();
            let is = all.iter().find(|d| d.id == *id).map(|d| d.value);
            match (value, is) {
                (None, None) => Ok(()),
                (Some(value), Some(is)) => same_len(*value, is, system),
                (_, is) => {
                    let is = is.map(|is| system.len(is, Precision::Fine));
                    Err(format!("it is {}", is.unwrap_or("not there".to_owned())))
                }
            }
        }
        Expect::Entry(wanted) => {
            let typed = session.entry().map(|e| e.text.as_str()).filter(|text| !text.is_empty());
            if typed == wanted.as_deref() {
                Ok(())
            } else {
                Err(format!("typed so far: {typed:?}"))
            }
        }
        Expect::Tool(tool) => {
            let is = session.tool();
            if is == *tool { Ok(()) } else { Err(format!("the tool is {}", is.word())) }
        }
        Expect::Plan { mark } => {
            let Some((_, marked)) = marks.iter().find(|(word, _)| word == mark) else {
                return Err(format!("nothing has been marked {mark}"));
            };
            if session.plan().says_the_same(marked) {
                Ok(())
            } else {
                Err(format!("the plan is not the one marked {mark}"))
            }
        }
        Expect::Ready => {
            if session.busy() {
                Err("a gesture is running".to_owned())
            } else if !std::sync::Arc::ptr_eq(session.plan(), session.shown()) {
                Err("a change is shown that has not been made".to_owned())
            } else {
                Ok(())
            }
        }
    }
}

/// The room with a name; where none has it, the room whose use it is.
fn room(checked: &Checked, name: &str) -> Result<space::RoomIndex, String> {
    let rooms = &checked.facts.rooms;
    let found = rooms
        .iter()
        .find(|room| room.name == name)
        .or_else(|| rooms.iter().find(|room| room.room_use.word() == name));
    found.map(|room| room.index).ok_or_else(|| {
        let names: Vec<String> = rooms
            .iter()
            .map(|room| format!("{:?} ({})", room.name, room.room_use.word()))
            .collect();
        format!("there is no room {name}; there are: {}", names.join(", "))
    })
}
