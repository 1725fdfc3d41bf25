//! A batch of arrivals and targets that are parted together.

use std::ops::Range;

use measure::Len;

use super::components::Components;
use super::partition::Partition;
use super::rays::{Label, Rays};
use super::scene::{Pair, Scene};
use super::search::Stand;
use crate::Pt;
use crate::reach::Reach;

/// A pair of pieces with its label for the places of one batch.
#[derive(Clone, Copy, Debug)]
pub(super) struct Edge {
    pub pair: Pair,
    pub label: Label,
}

/// What a pair did. One that did nothing can be left out, also when other pairs come between.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Change {
    Nothing,
    Joined,
    /// It closed a loop round some of the places and not round others.
    Parted,
}

/// The places of a batch, and what has parted them so far.
#[derive(Clone, Debug)]
pub(super) struct Batch {
    pub arrivals: Range<usize>,
    pub targets: Range<usize>,
    rays: Rays,
    components: Components,
    partition: Partition,
    /// The pairs that parted places.
    events: Vec<Pair>,
}

/// A batch has at most this many places.
const PLACES: usize = Label::BITS as usize;

impl Batch {
    /// As few batches as hold every target together with every arrival.
    pub fn all(arrivals: &[Pt], targets: &[Pt], pieces: usize) -> Vec<Batch> {
        let few = arrivals.len().clamp(1, PLACES / 2);
        let mut batches = Vec::new();
        for from in (0..arrivals.len()).step_by(few) {
            let starts = from..(from + few).min(arrivals.len());
            for to in (0..targets.len()).step_by(PLACES - few) {
                let ends = to..(to + PLACES - few).min(targets.len());
                let places = [&arrivals[starts.clone()], &targets[ends.clone()]].concat();
                batches.push(Batch {
                    arrivals: starts.clone(),
                    targets: ends,
                    rays: Rays::new(&places),
                    components: Components::new(pieces),
                    partition: Partition::new(places.len()),
                    events: Vec::new(),
                });
            }
        }
        batches
    }

    /// Nothing joined, nothing parted.
    pub fn reset(&mut self, pieces: usize) {
        self.components.reset(pieces);
        self.partition = Partition::new(self.arrivals.len() + self.targets.len());
        self.events.clear();
    }

    pub fn edge(&self, pair: &Pair, scene: Scene) -> Edge {
        let label = self.rays.label(scene.anchor(pair.a), pair.path, scene.anchor(pair.b));
        Edge { pair: *pair, label }
    }

    /// Adds the next pair by distance.
    pub fn add(&mut self, edge: &Edge) -> Change {
        self.join(&edge.pair, [edge.pair.a, edge.pair.b], edge.label)
    }

    /// Joins two ends by a way with a label, at the turn of a pair.
    pub fn join(&mut self, pair: &Pair, [a, b]: [u32; 2], label: Label) -> Change {
        let Some(round) = self.components.join(a as usize, b as usize, label) else {
            return Change::Joined;
        };
        if round == 0 || !self.partition.part(round, self.events.len()) {
            return Change::Nothing;
        }
        self.events.push(*pair);
        Change::Parted
    }

    /// The pair that parted an arrival from a target, counted within the batch.
    pub fn parted_by(&self, arrival: usize, target: usize) -> Option<&Pair> {
        let event = self.partition.parted_by(arrival, self.arrivals.len() + target)?;
        self.events.get(event)
    }

    /// The widest width that is still in question; `None` when every target is parted from every arrival.
    pub fn open(&self, arrivals: &[Stand], targets: &[Stand], most: Len) -> Option<Reach> {
        if self.partition.is_finest() {
            return None;
        }
        let targets = &targets[self.targets.clone()];
        let mut widest = None;
        for (s, from) in arrivals[self.arrivals.clone()].iter().enumerate() {
            let from = from.width(most);
            for (t, to) in targets.iter().enumerate() {
                if self.partition.are_together(s, self.arrivals.len() + t) {
                    widest = widest.max(Some(from.min(to.width(most))));
                }
            }
        }
        widest
    }
}
