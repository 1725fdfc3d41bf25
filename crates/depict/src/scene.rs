//! What is to be drawn.

use std::collections::BTreeSet;
use std::sync::Arc;

use geometry::{Pt, Ring};
use measure::System;
use plan::ElementId;
use rules::room_to_move::RoomToMove;
use rules::{Finding, KeepClear};
use space::{Facts, RoomIndex};

use crate::{Blade, Caught, Poche, RoomHeights, WaysLayer};

/// Which kinds of marks are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Show {
    pub overheads: bool,
    pub services: bool,
    pub keep_clears: bool,
    /// The static drafting dimensions; live blades are always drawn.
    pub dimensions: bool,
    pub furnishings: bool,
    pub grid: bool,
    pub notes: bool,
    /// Badges, breached keep-clears and lit places.
    pub findings: bool,
    pub rulers: bool,
}

impl Default for Show {
    fn default() -> Show {
        Show {
            overheads: true,
            services: true,
            keep_clears: true,
            dimensions: true,
            furnishings: true,
            grid: true,
            notes: true,
            findings: true,
            rulers: true,
        }
    }
}

/// A plan with what is said about it and done to it now. Make one with [`Scene::new`] and set the fields
/// that apply.
#[derive(Clone, Debug)]
pub struct Scene<'a> {
    pub facts: &'a Facts,
    pub findings: &'a [Arc<Finding>],
    pub keep_clears: &'a [KeepClear],
    pub selection: &'a BTreeSet<ElementId>,
    /// The element under the pointer.
    pub hovered: Option<ElementId>,
    /// Indices into `findings` of those that are hovered or selected: their places light up.
    pub lit: &'a [usize],
    pub show: Show,
    /// Ways in, where they are shown.
    pub ways: Option<WaysLayer<'a>>,
    /// The headroom of the rooms, where it is shown.
    pub heights: &'a [RoomHeights],
    /// Where the element that is moved, or is asked about, may go.
    pub moving: &'a [RoomToMove],
    /// The plan from which it moves, where the facts are those of a preview.
    pub moved_from: Option<&'a plan::Plan>,
    /// Live measurements.
    pub blades: &'a [Blade<'a>],
    /// What the pointer was caught by.
    pub caught: Option<Caught<'a>>,
    /// Outlines of what the next click would place.
    pub ghosts: &'a [Ring],
    /// Opposite corners of the box that a drag selects with.
    pub marquee: Option<(Pt, Pt)>,
    pub system: System,
    /// Hatch new work in place of its tint: see `drawing::Palette::hatches`.
    pub hatched: bool,
    /// Rooms in which nothing is done: their floor is hatched, and they are called existing.
    pub untouched: &'a [RoomIndex],
    /// Short names that a table explains: before the size of an opening, along a wall.
    pub named: &'a [(ElementId, String)],
    /// The joined walls of these facts, where the caller keeps them; else they are made anew.
    pub poche: Option<&'a Poche>,
}

static NOTHING_SELECTED: BTreeSet<ElementId> = BTreeSet::new();

impl<'a> Scene<'a> {
    /// The plan of some facts alone, everything shown, in feet and inches.
    pub fn new(facts: &'a Facts) -> Scene<'a> {
        Scene {
            facts,
            findings: &[],
            keep_clears: &[],
            selection: &NOTHING_SELECTED,
            hovered: None,
            lit: &[],
            show: Show::default(),
            ways: None,
            heights: &[],
            moving: &[],
            moved_from: None,
            blades: &[],
            caught: None,
            ghosts: &[],
            marquee: None,
            system: System::Imperial,
            hatched: false,
            untouched: &[],
            named: &[],
            poche: None,
        }
    }

    pub(crate) fn name_of(&self, id: ElementId) -> Option<&'a str> {
        self.named.iter().find(|(named, _)| *named == id).map(|(_, name)| name.as_str())
    }

    pub(crate) fn selected(&self, id: ElementId) -> bool {
        self.selection.contains(&id)
    }
}
