//! What a person does, in plan space.

use geometry::Pt;
use measure::Len;

/// Modifier keys held.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Mods {
    /// Adds to the selection; nudges finer.
    pub shift: bool,
    /// Ctrl, or Cmd on a Mac: no snapping while held.
    pub command: bool,
    pub alt: bool,
}

/// A key that the editor acts on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EditorKey {
    Enter,
    Escape,
    Tab,
    Backspace,
    Left,
    Right,
    Up,
    Down,
    /// Flips the hinge side of the selected doors (or of the door being placed).
    FlipHinge,
    /// Flips the swing side.
    FlipSwing,
    /// Turns what is selected or being placed a quarter counter-clockwise.
    Turn,
}

/// One thing that a person does.
#[derive(Clone, Debug, PartialEq)]
pub enum Gesture {
    /// The main button goes down. `reach` is how near counts as "on" (a few screen points, in plan units).
    Press {
        at: Pt,
        reach: Len,
        mods: Mods,
    },
    /// The pointer moves, with or without the button.
    Move {
        at: Pt,
        reach: Len,
        mods: Mods,
    },
    /// The main button goes up.
    Release {
        at: Pt,
        reach: Len,
        mods: Mods,
    },
    DoubleClick {
        at: Pt,
        reach: Len,
        mods: Mods,
    },
    Key {
        key: EditorKey,
        mods: Mods,
    },
    /// A typed character that belongs to a length (digits, quotes, fraction bar, units).
    Char(char),
}
