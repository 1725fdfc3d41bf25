//! The kinds of sheets. One file and one line of [`KINDS`] each.

mod building;
mod ceiling;
pub(crate) mod cover;
mod electrical;
mod existing;
mod lot;
mod mechanical;
mod notes;
mod plans;
mod plumbing;
mod proposed;
mod services;
mod stair;
mod tables;
mod walls;

use drawing::Marks;
use measure::System;

use crate::paper::{Area, Paper};
use crate::set::{Join, LeftOut, Source};

/// What a kind of sheet may look at.
#[derive(Debug)]
pub(crate) struct Context<'a> {
    pub source: Source<'a>,
    pub system: System,
    pub paper: Paper,
    pub join: Join,
    /// The box to fill.
    pub area: Area,
    /// The sheets after the cover; empty while they are made.
    pub index: Vec<Listed>,
    pub left_out: Vec<LeftOut>,
}

/// A line of the index.
#[derive(Clone, Debug)]
pub(crate) struct Listed {
    pub number: String,
    pub title: String,
    pub kind: &'static str,
    pub scale: Option<&'static str>,
}

/// The pages of a kind with the scale of each, or why there is none.
pub(crate) enum Made {
    /// Another kind of sheet shows it, as it was asked for.
    NotAsked,
    Drawn(Vec<(Marks, Option<&'static str>)>),
    Nothing(String),
}

/// A kind of sheet.
#[derive(Debug)]
pub(crate) struct Kind {
    pub slug: &'static str,
    pub title: &'static str,
    /// The letter and the first number, by the disciplines of sets of drawings: G general, A architectural, E
    /// electrical, M mechanical, P plumbing (common practice, no source).
    pub discipline: &'static str,
    pub first: usize,
    pub make: fn(&Context<'_>) -> Made,
}

/// In the order of the set, after the cover.
pub(crate) const KINDS: &[Kind] = &[
    notes::KIND,
    lot::KIND,
    existing::KIND,
    proposed::KIND,
    building::KIND,
    walls::KIND,
    stair::KIND,
    ceiling::KIND,
    tables::KIND,
    electrical::KIND,
    mechanical::KIND,
    plumbing::KIND,
    services::KIND,
];
