//! The tools, in the order of the work.

/// A stage of the work; the kit pane groups tools by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stage {
    Look,
    AsBuilt,
    KeepReachable,
    NewWork,
    Say,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum ToolKind {
    #[default]
    Select,
    Tape,
    Shell,
    Column,
    Stair,
    Overhead,
    Service,
    Partition,
    Furring,
    Door,
    Window,
    Furnishing,
    RoomTag,
    Note,
    Section,
}

impl ToolKind {
    pub const ALL: [ToolKind; 15] = [
        ToolKind::Select,
        ToolKind::Tape,
        ToolKind::Shell,
        ToolKind::Window,
        ToolKind::Stair,
        ToolKind::Column,
        ToolKind::Overhead,
        ToolKind::Service,
        ToolKind::Partition,
        ToolKind::Furring,
        ToolKind::Door,
        ToolKind::Furnishing,
        ToolKind::RoomTag,
        ToolKind::Note,
        ToolKind::Section,
    ];

    /// The name in the kit pane.
    pub fn word(self) -> &'static str {
        match self {
            ToolKind::Select => "Select",
            ToolKind::Tape => "Tape",
            ToolKind::Shell => "Foundation wall",
            ToolKind::Column => "Column",
            ToolKind::Stair => "Stair",
            ToolKind::Overhead => "Overhead",
            ToolKind::Service => "Service point",
            ToolKind::Partition => "Partition",
            ToolKind::Furring => "Furring",
            ToolKind::Door => "Door",
            ToolKind::Window => "Window",
            ToolKind::Furnishing => "Furnishing",
            ToolKind::RoomTag => "Room use",
            ToolKind::Note => "Note",
            ToolKind::Section => "Section line",
        }
    }

    pub fn stage(self) -> Stage {
        match self {
            ToolKind::Select | ToolKind::Tape => Stage::Look,
            ToolKind::Shell
            | ToolKind::Window
            | ToolKind::Column
            | ToolKind::Stair
            | ToolKind::Overhead => Stage::AsBuilt,
            ToolKind::Service => Stage::KeepReachable,
            ToolKind::Partition | ToolKind::Furring | ToolKind::Door | ToolKind::Furnishing => {
                Stage::NewWork
            }
            ToolKind::RoomTag | ToolKind::Note | ToolKind::Section => Stage::Say,
        }
    }
}

impl Stage {
    pub const ALL: [Stage; 5] =
        [Stage::Look, Stage::AsBuilt, Stage::KeepReachable, Stage::NewWork, Stage::Say];

    pub fn word(self) -> &'static str {
        match self {
            Stage::Look => "Look and measure",
            Stage::AsBuilt => "As built",
            Stage::KeepReachable => "Must stay reachable",
            Stage::NewWork => "New work",
            Stage::Say => "Say",
        }
    }
}
