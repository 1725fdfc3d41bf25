//! Names in scripts: tools, keys, elements, live dimensions.

use plan::{Element, Plan};

use crate::{DimensionId, EditorKey, ToolKind};

/// The tools by their script word.
pub(super) const TOOLS: [(&str, ToolKind); 15] = [
    ("select", ToolKind::Select),
    ("tape", ToolKind::Tape),
    ("shell", ToolKind::Shell),
    ("window", ToolKind::Window),
    ("stair", ToolKind::Stair),
    ("column", ToolKind::Column),
    ("overhead", ToolKind::Overhead),
    ("service", ToolKind::Service),
    ("partition", ToolKind::Partition),
    ("furring", ToolKind::Furring),
    ("door", ToolKind::Door),
    ("furnishing", ToolKind::Furnishing),
    ("room", ToolKind::RoomTag),
    ("note", ToolKind::Note),
    ("section", ToolKind::Section),
];

/// The keys by their script word.
pub(super) const KEYS: [(&str, EditorKey); 11] = [
    ("enter", EditorKey::Enter),
    ("escape", EditorKey::Escape),
    ("tab", EditorKey::Tab),
    ("backspace", EditorKey::Backspace),
    ("left", EditorKey::Left),
    ("right", EditorKey::Right),
    ("up", EditorKey::Up),
    ("down", EditorKey::Down),
    ("hinge", EditorKey::FlipHinge),
    ("swing", EditorKey::FlipSwing),
    ("turn", EditorKey::Turn),
];

/// The live dimensions by their script word.
pub(super) const DIMENSIONS: [(&str, DimensionId); 10] = [
    ("length", DimensionId::Length),
    ("clear-left", DimensionId::ClearLeft),
    ("clear-right", DimensionId::ClearRight),
    ("to-start", DimensionId::ToStart),
    ("to-finish", DimensionId::ToFinish),
    ("distance", DimensionId::Distance),
    ("box-left", DimensionId::BoxLeft),
    ("box-right", DimensionId::BoxRight),
    ("box-front", DimensionId::BoxFront),
    ("box-back", DimensionId::BoxBack),
];

/// Looks a word up in one of the lists; the error names what is known.
pub(super) fn look_up<T: Copy>(what: &str, word: &str, list: &[(&str, T)]) -> Result<T, String> {
    list.iter().find(|(known, _)| *known == word).map(|(_, value)| *value).ok_or_else(|| {
        let known: Vec<&str> = list.iter().map(|(known, _)| *known).collect();
        format!("there is no {what} {word:?}; known: {}", known.join(", "))
    })
}

/// The element with a short name such as `W14`; `last` is the one added last.
pub(super) fn element<'p>(plan: &'p Plan, name: &str) -> Result<&'p Element, String> {
    if name == "last" {
        return plan.elements().iter().next_back().ok_or_else(|| "the plan is empty".to_owned());
    }
    plan.elements().iter().find(|e| e.name() == name).ok_or_else(|| {
        let known: Vec<String> = plan.elements().iter().map(Element::name).collect();
        if known.is_empty() {
            format!("there is no element {name}; the plan is empty")
        } else {
            format!("there is no element {name}; there are: {}", known.join(" "))
        }
    })
}
