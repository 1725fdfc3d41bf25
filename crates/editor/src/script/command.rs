//! The commands of a script.

use geometry::Pt;
use measure::{Len, System};

use super::expect::Expect;
use crate::{DimensionId, EditorKey, Mods, ToolKind};

/// One command.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Command {
    Tool(ToolKind),
    Option {
        key: String,
        value: String,
    },
    Press(Pt, Mods),
    Move(Pt, Mods),
    /// Without a point: where the pointer is.
    Release(Option<Pt>, Mods),
    Click(Pt, Mods),
    DoubleClick(Pt, Mods),
    /// Press, move and release.
    Drag(Pt, Pt, Mods),
    /// Types characters.
    Type(String),
    /// Types characters and presses Enter.
    Enter(String),
    Key(EditorKey, Mods),
    Select(Chosen),
    /// Types a value into a live dimension.
    Dimension(DimensionId, Len),
    /// Sets a field of an element, as a pane does.
    Set {
        name: String,
        field: String,
        value: String,
    },
    Site {
        key: String,
        value: String,
    },
    /// Applies a remedy of a finding, counted from 1.
    Apply {
        rule: String,
        on: Option<String>,
        nth: usize,
    },
    /// Sets a finding aside with a reason.
    SetAside {
        rule: String,
        on: Option<String>,
        reason: String,
    },
    Undo(Times),
    Redo(Times),
    Delete,
    Duplicate,
    Copy,
    Paste,
    /// Remembers the plan under a word, to be expected later.
    Mark(String),
    Units(System),
    Reach(Len),
    Check,
    Expect(Expect),
}

/// What a select command chooses.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Chosen {
    Names(Vec<String>),
    All,
    Nothing,
    Next,
    Previous,
}

/// How often.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Times {
    N(usize),
    All,
}

/// Every command with its form, as help and errors list them.
pub const FORMS: [&str; 28] = [
    "tool NAME",
    "option KEY VALUE",
    "press X,Y",
    "move X,Y",
    "release [X,Y]",
    "click X,Y",
    "doubleclick X,Y",
    "drag X,Y to X,Y",
    "type TEXT",
    "enter TEXT",
    "key NAME",
    "select NAME… | all | nothing | next | previous",
    "dimension NAME LENGTH",
    "set ELEMENT FIELD VALUE",
    "site KEY VALUE",
    "apply RULE [on ELEMENT] [N]",
    "set-aside RULE [on ELEMENT] because REASON",
    "undo [N | all]",
    "redo [N | all]",
    "delete",
    "duplicate",
    "copy",
    "paste",
    "mark WORD",
    "units imperial | metric",
    "reach LENGTH",
    "check",
    "expect …",
];
