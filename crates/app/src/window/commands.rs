//! The command table: one row for everything that a menu, a key or a button can do without more words.
//!
//! The menus, the shortcuts, the tooltips, the help window and the tests read this table; `run.rs`
//! carries the commands out.

use editor::ToolKind;
use egui::{Key, KeyboardShortcut, Modifiers};

use super::theme::Look;
use super::view::Toggle;

/// One thing to do that needs no further words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Command {
    New,
    Open,
    OpenDemo,
    Save,
    SaveAs,
    Quit,
    Undo,
    Redo,
    Cut,
    Copy,
    Paste,
    Duplicate,
    Delete,
    SelectAll,
    NextElement,
    PreviousElement,
    FlipHinge,
    FlipSwing,
    Turn,
    Fit,
    FitSelection,
    ZoomIn,
    ZoomOut,
    Toggle(Toggle),
    Look(Look),
    Imperial,
    Metric,
    Tool(ToolKind),
    SiteFacts,
    Compare,
    NextFinding,
    Rules,
    Carry,
    Sheets,
    ExportSheets,
    TitleBlock,
    Keys,
    Cautions,
    About,
}

/// The menu that a command stands in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Menu {
    File,
    Edit,
    View,
    Plan,
    Help,
    /// In no menu: the kit pane shows it.
    Kit,
}

impl Menu {
    /// The menus of the bar, in order.
    pub const BAR: [Menu; 5] = [Menu::File, Menu::Edit, Menu::View, Menu::Plan, Menu::Help];

    pub fn word(self) -> &'static str {
        match self {
            Menu::File => "File",
            Menu::Edit => "Edit",
            Menu::View => "View",
            Menu::Plan => "Plan",
            Menu::Help => "Help",
            Menu::Kit => "Kit",
        }
    }
}

/// A row of the table.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    pub command: Command,
    pub menu: Menu,
    /// What the menu says.
    pub text: &'static str,
    pub shortcut: Option<KeyboardShortcut>,
    /// One sentence: what it does.
    pub help: &'static str,
    /// Begins a new group in its menu.
    pub gap: bool,
}

/// What the enabled tests look at.
#[derive(Clone, Copy, Debug, Default)]
pub struct Now<'a> {
    /// The label of the step that undo would take back.
    pub undo: Option<&'a str>,
    pub redo: Option<&'a str>,
    pub selected: usize,
    pub elements: usize,
    pub findings: usize,
    pub unsaved: bool,
    /// A door or window is selected, or is about to be placed.
    pub opening: bool,
    /// One room tag is selected.
    pub room_tag: bool,
}

const NONE: Modifiers = Modifiers::NONE;
const CTRL: Modifiers = Modifiers::COMMAND;
const CTRL_SHIFT: Modifiers = Modifiers::COMMAND.plus(Modifiers::SHIFT);

const fn key(modifiers: Modifiers, key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(modifiers, key))
}

const fn row(
    command: Command,
    menu: Menu,
    text: &'static str,
    shortcut: Option<KeyboardShortcut>,
    help: &'static str,
) -> Row {
    Row { command, menu, text, shortcut, help, gap: false }
}

impl Row {
    const fn after_gap(mut self) -> Row {
        self.gap = true;
        self
    }
}

use Command as C;
use Menu as M;

/// Every command, in the order of the menus.
pub const TABLE: &[Row] = &[
    row(C::New, M::File, "New plan", key(CTRL, Key::N), "Starts an empty plan."),
    row(C::Open, M::File, "Open…", key(CTRL, Key::O), "Opens a plan file."),
    row(
        C::OpenDemo,
        M::File,
        "Open a sample plan",
        None,
        "Opens a sample basement to try things on.",
    ),
    row(C::Save, M::File, "Save", key(CTRL, Key::S), "Saves the plan; the version before is kept.")
        .after_gap(),
    row(
        C::SaveAs,
        M::File,
        "Save under another name…",
        key(CTRL_SHIFT, Key::S),
        "Saves the plan in another file.",
    ),
    row(
        C::ExportSheets,
        M::File,
        "Export the sheets…",
        None,
        "Writes the permit set as PDF, SVG or pictures.",
    ),
    row(
        C::Quit,
        M::File,
        "Quit",
        key(CTRL, Key::Q),
        "Closes the window; unsaved work is asked about.",
    )
    .after_gap(),
    row(C::Undo, M::Edit, "Undo", key(CTRL, Key::Z), "Takes the last step back."),
    row(C::Redo, M::Edit, "Redo", key(CTRL_SHIFT, Key::Z), "Does the undone step again."),
    row(C::Cut, M::Edit, "Cut", key(CTRL, Key::X), "Copies the selection and deletes it.")
        .after_gap(),
    row(C::Copy, M::Edit, "Copy", key(CTRL, Key::C), "Copies the selection."),
    row(C::Paste, M::Edit, "Paste", key(CTRL, Key::V), "Adds what was copied."),
    row(
        C::Duplicate,
        M::Edit,
        "Duplicate",
        key(CTRL, Key::D),
        "Puts a copy of the selection beside it.",
    ),
    row(C::Delete, M::Edit, "Delete", key(NONE, Key::Delete), "Deletes the selection.").after_gap(),
    row(C::SelectAll, M::Edit, "Select all", key(CTRL, Key::A), "Selects every element."),
    row(
        C::NextElement,
        M::Edit,
        "Select the next element",
        key(NONE, Key::PageDown),
        "Steps through the elements in the order they were drawn.",
    ),
    row(
        C::PreviousElement,
        M::Edit,
        "Select the previous element",
        key(NONE, Key::PageUp),
        "Steps back through the elements.",
    ),
    row(
        C::FlipHinge,
        M::Edit,
        "Hinge on the other jamb",
        key(NONE, Key::J),
        "Moves the hinge of the selected doors to the other jamb.",
    )
    .after_gap(),
    row(
        C::FlipSwing,
        M::Edit,
        "Swing to the other side",
        key(NONE, Key::K),
        "Lets the selected doors swing to the other side of the wall.",
    ),
    row(
        C::Turn,
        M::Edit,
        "Quarter turn",
        key(NONE, Key::Q),
        "Turns the selection, or what is being placed, a quarter to the left.",
    ),
    row(C::Fit, M::View, "Fit the plan", key(NONE, Key::Home), "Shows the whole plan."),
    row(
        C::FitSelection,
        M::View,
        "Fit the selection",
        key(CTRL, Key::Home),
        "Shows the selected elements as large as they fit.",
    ),
    row(C::ZoomIn, M::View, "Zoom in", key(NONE, Key::Plus), "Makes the plan larger."),
    row(C::ZoomOut, M::View, "Zoom out", key(NONE, Key::Minus), "Makes the plan smaller."),
    row(
        C::Toggle(Toggle::Grid),
        M::View,
        "Grid",
        key(CTRL, Key::G),
        "Shows the tape grid on the ground.",
    )
    .after_gap(),
    row(
        C::Toggle(Toggle::Overheads),
        M::View,
        "Overheads",
        None,
        "Shows beams, ducts, pipe runs and soffits.",
    ),
    row(
        C::Toggle(Toggle::Services),
        M::View,
        "Service points",
        None,
        "Shows valves, dampers, appliances and the like.",
    ),
    row(
        C::Toggle(Toggle::KeepClears),
        M::View,
        "Keep-clear boxes",
        None,
        "Shows the space that must stay free before a service point.",
    ),
    row(
        C::Toggle(Toggle::Dimensions),
        M::View,
        "Dimensions",
        None,
        "Shows the lengths of walls and the sizes of rooms.",
    ),
    row(C::Toggle(Toggle::Furnishings), M::View, "Furnishings", None, "Shows the furnishings."),
    row(
        C::Toggle(Toggle::Findings),
        M::View,
        "Findings on the plan",
        None,
        "Shows where findings lie.",
    ),
    row(
        C::Toggle(Toggle::Ways),
        M::View,
        "Ways in",
        None,
        "Shows where people come in and where their ways pinch.",
    ),
    row(
        C::Toggle(Toggle::Headroom),
        M::View,
        "Headroom",
        None,
        "Hatches the floor that is lower than a height that the code names.",
    ),
    row(C::Look(Look::Light), M::View, "Light", None, "Dark lines on a light slab.").after_gap(),
    row(C::Look(Look::Dark), M::View, "Lights off", None, "Light lines on a dark slab."),
    row(C::Look(Look::Paper), M::View, "Paper", None, "Black on white, as it prints."),
    row(
        C::Imperial,
        M::View,
        "Feet and inches",
        None,
        "Shows lengths in feet and inches; a bare number typed means inches.",
    )
    .after_gap(),
    row(
        C::Metric,
        M::View,
        "Millimetres",
        None,
        "Shows lengths in millimetres; a bare number typed means millimetres.",
    ),
    row(
        C::SiteFacts,
        M::Plan,
        "Site facts…",
        key(CTRL, Key::I),
        "Code edition, house, ceiling and floor build-up.",
    ),
    row(
        C::Compare,
        M::Plan,
        "Compare two uses…",
        key(CTRL, Key::U),
        "What two uses demand of the room whose tag is selected, and what each would take.",
    ),
    row(
        C::Carry,
        M::Plan,
        "Carry a thing in…",
        None,
        "Tells to which rooms a heater, a sofa or a board gets from where people come in.",
    ),
    row(
        C::TitleBlock,
        M::Plan,
        "Title block…",
        None,
        "Address, parcel, owner, author, date and north of the permit sheets.",
    ),
    row(
        C::Sheets,
        M::Plan,
        "Permit sheets",
        None,
        "Shows the sheets of the permit set, and what a permit desk asks of them.",
    ),
    row(
        C::NextFinding,
        M::Plan,
        "Next finding",
        key(NONE, Key::F8),
        "Shows the next open finding on the plan.",
    ),
    row(
        C::Rules,
        M::Help,
        "Rules…",
        key(NONE, Key::F2),
        "What each rule checks, why, by which source, how it is measured, what it can't see.",
    ),
    row(
        C::Keys,
        M::Help,
        "Keys and mouse",
        key(NONE, Key::F1),
        "Lists every command with its key.",
    ),
    row(C::Cautions, M::Help, "Cautions", None, "What the checks can't know, and who decides."),
    row(C::About, M::Help, "About", None, "Version and licences.").after_gap(),
    row(
        C::Tool(ToolKind::Select),
        M::Kit,
        "Select",
        key(NONE, Key::E),
        "Picks, drags and types over what is there.",
    ),
    row(C::Tool(ToolKind::Tape), M::Kit, "Tape", key(NONE, Key::M), "Measures between two points."),
    row(
        C::Tool(ToolKind::Shell),
        M::Kit,
        "Foundation wall",
        key(NONE, Key::F),
        "Draws the shell by the face that the tape touches.",
    ),
    row(C::Tool(ToolKind::Window), M::Kit, "Window", key(NONE, Key::N), "Puts a window in a wall."),
    row(
        C::Tool(ToolKind::Stair),
        M::Kit,
        "Stair",
        key(NONE, Key::T),
        "Places a straight flight by its foot.",
    ),
    row(
        C::Tool(ToolKind::Column),
        M::Kit,
        "Column",
        key(NONE, Key::C),
        "Places a post that carries the house.",
    ),
    row(
        C::Tool(ToolKind::Overhead),
        M::Kit,
        "Overhead",
        key(NONE, Key::H),
        "Draws a beam, duct, pipe run or soffit along its middle line.",
    ),
    row(
        C::Tool(ToolKind::Service),
        M::Kit,
        "Service point",
        key(NONE, Key::S),
        "Places a thing that must stay reachable.",
    ),
    row(
        C::Tool(ToolKind::Partition),
        M::Kit,
        "Partition",
        key(NONE, Key::W),
        "Draws framed walls.",
    ),
    row(
        C::Tool(ToolKind::Furring),
        M::Kit,
        "Furring",
        key(NONE, Key::U),
        "Frames against a foundation wall; the net face moves in.",
    ),
    row(
        C::Tool(ToolKind::Door),
        M::Kit,
        "Door",
        key(NONE, Key::D),
        "Puts a door or cased opening in a wall.",
    ),
    row(
        C::Tool(ToolKind::Furnishing),
        M::Kit,
        "Furnishing",
        key(NONE, Key::B),
        "Places a box with a name: a desk, a bed, a shelf.",
    ),
    row(
        C::Tool(ToolKind::RoomTag),
        M::Kit,
        "Room use",
        key(NONE, Key::R),
        "Names a room and says what it is used as.",
    ),
    row(C::Tool(ToolKind::Note), M::Kit, "Note", key(NONE, Key::X), "Writes a remark on the plan."),
    row(
        C::Tool(ToolKind::Section),
        M::Kit,
        "Section line",
        key(NONE, Key::L),
        "Draws the line along which the permit set cuts the building.",
    ),
];

/// Other keys for commands of the table.
pub const ALSO: &[(KeyboardShortcut, Command)] = &[
    (KeyboardShortcut::new(CTRL, Key::Y), Command::Redo),
    (KeyboardShortcut::new(NONE, Key::Equals), Command::ZoomIn),
    (KeyboardShortcut::new(CTRL, Key::Plus), Command::ZoomIn),
    (KeyboardShortcut::new(CTRL, Key::Equals), Command::ZoomIn),
    (KeyboardShortcut::new(CTRL, Key::Minus), Command::ZoomOut),
    (KeyboardShortcut::new(CTRL, Key::Num0), Command::Fit),
];

/// The rows of a menu, in order.
pub fn of_menu(menu: Menu) -> impl Iterator<Item = &'static Row> {
    TABLE.iter().filter(move |r| r.menu == menu)
}

/// Every key with its command, those with more modifiers first: egui takes a key with Shift for the one
/// without it too.
pub fn shortcuts() -> impl Iterator<Item = (KeyboardShortcut, Command)> {
    let own = TABLE.iter().filter_map(|r| Some((r.shortcut?, r.command)));
    let mut all: Vec<(KeyboardShortcut, Command)> = own.chain(ALSO.iter().copied()).collect();
    all.sort_by_key(|(s, _)| !s.modifiers.shift);
    all.into_iter()
}

/// The row of a command.
pub fn row_of(command: Command) -> Option<&'static Row> {
    TABLE.iter().find(|r| r.command == command)
}

impl Command {
    /// Whether the command makes sense now.
    pub fn enabled(self, now: &Now<'_>) -> bool {
        match self {
            Command::Undo => now.undo.is_some(),
            Command::Redo => now.redo.is_some(),
            Command::Cut
            | Command::Copy
            | Command::Duplicate
            | Command::Delete
            | Command::FitSelection => now.selected > 0,
            Command::SelectAll | Command::NextElement | Command::PreviousElement | Command::Fit => {
                now.elements > 0
            }
            Command::NextFinding => now.findings > 0,
            Command::Compare => now.room_tag,
            Command::FlipHinge | Command::FlipSwing => now.opening,
            _ => true,
        }
    }

    /// What the menu says now: undo and redo name their step.
    pub fn text(self, now: &Now<'_>) -> String {
        let text = row_of(self).map_or("", |r| r.text);
        match (self, now.undo, now.redo) {
            (Command::Undo, Some(step), _) | (Command::Redo, _, Some(step)) => {
                format!("{text}: {step}")
            }
            _ => text.to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_commands_share_a_key() {
        let taken: Vec<(KeyboardShortcut, Command)> = shortcuts().collect();
        for (i, (a, one)) in taken.iter().enumerate() {
            for (b, other) in &taken[i + 1..] {
                assert!(a != b, "{one:?} and {other:?} share {a:?}");
            }
        }
    }

    #[test]
    fn keys_that_type_a_length_start_no_command() {
        // Digits and quotes begin a typed length; letters only go on with one.
        let begins = [Key::Num0, Key::Num1, Key::Num9, Key::Quote, Key::Slash, Key::Period];
        for row in TABLE {
            if let Some(s) = row.shortcut {
                assert!(!s.modifiers.is_none() || !begins.contains(&s.logical_key), "{row:?}");
            }
        }
    }

    #[test]
    fn every_row_is_written_out_and_stands_once() {
        for (i, row) in TABLE.iter().enumerate() {
            assert!(!row.text.is_empty() && row.help.ends_with('.'), "{row:?}");
            assert!(TABLE[i + 1..].iter().all(|other| other.command != row.command), "{row:?}");
        }
        for tool in ToolKind::ALL {
            let row = row_of(Command::Tool(tool)).expect("every tool has a row");
            assert_eq!(row.text, tool.word());
        }
        for toggle in Toggle::ALL {
            assert!(row_of(Command::Toggle(toggle)).is_some());
        }
    }

    #[test]
    fn undo_names_its_step_and_needs_one() {
        let nothing = Now::default();
        assert!(!Command::Undo.enabled(&nothing));
        let now = Now { undo: Some("Draw partition W4"), ..Now::default() };
        assert!(Command::Undo.enabled(&now));
        assert_eq!(Command::Undo.text(&now), "Undo: Draw partition W4");
        assert_eq!(Command::Redo.text(&now), "Redo");
    }
}
