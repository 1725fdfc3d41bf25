//! Openings that could serve as an escape opening.

use measure::{Area, Len};
use plan::detail::opening::{OCCUPANCY, REPLACES};
use plan::element::{ClearOpening, Opening, Well, Window, WindowOperation};
use plan::{House, Site, State};
use space::{Facts, OpeningFacts, RoomIndex};

use crate::{Limit, Severity, Sheet};

/// An opening in a foundation wall that leads outdoors.
#[derive(Clone, Copy)]
pub(crate) struct Candidate<'a> {
    pub facts: &'a OpeningFacts,
    pub opening: &'a Opening,
}

/// Where the bottom of the clear opening lies against the outside ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Grade {
    /// At most the reach above or below it.
    Floor,
    /// Deeper than that.
    Below,
    /// Higher than that, or not known.
    Other,
}

/// Every candidate of a room, or of the whole basement.
pub(super) fn candidates(facts: &Facts, room: Option<RoomIndex>) -> Vec<Candidate<'_>> {
    let leads_out = |o: &&OpeningFacts| o.outside;
    let candidate = |o| Candidate::of(facts, o);
    match room {
        Some(room) => facts.openings_of(room).filter(leads_out).filter_map(candidate).collect(),
        None => facts.outside().into_iter().filter_map(candidate).collect(),
    }
}

impl<'a> Candidate<'a> {
    fn of(facts: &'a Facts, opening_facts: &'a OpeningFacts) -> Option<Candidate<'a>> {
        let plan::Body::Opening(opening) = &facts.plan.get(opening_facts.id)?.body else {
            return None;
        };
        Some(Candidate { facts: opening_facts, opening })
    }

    pub fn window(&self) -> Option<&'a Window> {
        self.opening.window()
    }

    /// Whether it opens at all.
    pub fn opens(&self) -> bool {
        self.window().is_none_or(|w| w.operation != WindowOperation::Fixed)
    }

    /// Whether the clear size is worked out from the frame instead of read from the maker's sheet.
    pub fn estimated(&self) -> bool {
        self.opens() && self.window().is_some_and(|w| w.clear == ClearOpening::Estimated)
    }

    /// Whether it is stated to take the place of a window of an existing house in the same frame, in the maker's
    /// largest size for it: such a window is excused from the demands on size and sill.
    pub fn replaces(&self, sheet: &Sheet<'_>) -> bool {
        let Some(element) = sheet.plan().get(self.facts.id) else { return false };
        sheet.plan().site.house == House::Existing
            && sheet.ask(element, &REPLACES).is(&["yes, the maker's largest"])
            && sheet.ask(element, &OCCUPANCY).yes() != Some(true)
    }

    /// Whether it is an existing window that may serve in a smaller size, because the occupancy changes.
    pub fn kept(&self, sheet: &Sheet<'_>) -> bool {
        let Some(element) = sheet.plan().get(self.facts.id) else { return false };
        self.opens()
            && self.window().is_some()
            && element.state == State::Existing
            && sheet.book.count("escape-kept-window").value == 1
            && sheet.ask(element, &OCCUPANCY).yes() == Some(true)
    }

    /// Whether it could serve at all: it opens, and where its clear size is estimated, its frame is at least
    /// as large as the clear opening must be.
    pub fn could_serve(&self, sheet: &Sheet<'_>) -> bool {
        if self.replaces(sheet) {
            return self.opens();
        }
        let Some(window) = self.window().filter(|_| self.estimated()) else {
            return self.opens();
        };
        let frame = Area::of_rect(window.frame_width, window.frame_height);
        let (least_width, least_height) =
            self.size_limits(sheet, window.frame_width, window.frame_height);
        window.frame_width >= least_width.value
            && window.frame_height >= least_height.value
            && frame >= self.area_limit(sheet).value
    }

    /// The least clear width and height of an opening of this size. Where a place lets them change places, a
    /// wide opening is held to them the other way round.
    pub fn size_limits(
        &self,
        sheet: &Sheet<'_>,
        width: Len,
        height: Len,
    ) -> (Limit<Len>, Limit<Len>) {
        let limits = match self.kept(sheet) {
            true => (sheet.book.len("escape-kept-width"), sheet.book.len("escape-kept-height")),
            false => (sheet.book.len("escape-width"), sheet.book.len("escape-height")),
        };
        let turned = sheet.book.count("escape-either-way").value == 1 && width > height;
        if turned { (limits.1, limits.0) } else { limits }
    }

    /// The limits of its clear width and height.
    pub fn clear_limits(&self, sheet: &Sheet<'_>) -> (Limit<Len>, Limit<Len>) {
        self.size_limits(sheet, self.facts.clear_width, self.facts.clear_height)
    }

    /// The least clear area that it needs where it stands against the outside ground.
    pub fn area_limit(&self, sheet: &Sheet<'_>) -> Limit<Area> {
        if self.kept(sheet) {
            return sheet.book.area("escape-kept-area");
        }
        self.full_area_limit(sheet)
    }

    /// As [`Candidate::area_limit`], without the exception for a kept window.
    pub fn full_area_limit(&self, sheet: &Sheet<'_>) -> Limit<Area> {
        sheet.book.area(match self.grade(sheet.book.len("escape-grade-floor-reach").value) {
            Grade::Floor => "escape-area-grade-floor",
            Grade::Below => "escape-area-below-grade",
            Grade::Other => "escape-area",
        })
    }

    /// How grave a fault of the clear size is: an estimate can't be wrong for certain.
    pub fn size_severity(&self) -> Severity {
        if self.facts.clear_estimated { Severity::Verify } else { Severity::Correction }
    }

    /// Whether a clear size is known or can be estimated: what an awning or hopper leaves is known only from
    /// the maker's sheet.
    pub fn sized(&self) -> bool {
        let awning =
            |w: &Window| matches!(w.operation, WindowOperation::Awning | WindowOperation::Hopper);
        self.opens() && !(self.estimated() && self.window().is_some_and(awning))
    }

    /// Net clear opening: clear width times clear height.
    pub fn area(&self) -> Area {
        if self.opens() {
            Area::of_rect(self.facts.clear_width, self.facts.clear_height)
        } else {
            Area::ZERO
        }
    }

    /// Finished floor to the bottom of the clear opening; zero for a door.
    pub fn sill(&self, site: &Site) -> Len {
        self.window().map_or(Len::ZERO, |w| w.sill - site.floor_build)
    }

    /// Where the bottom of the clear opening lies against the outside ground, which a door does not tell.
    pub fn grade(&self, reach: Len) -> Grade {
        match self.window() {
            None => Grade::Other,
            Some(w) if (w.sill - w.grade).abs() <= reach => Grade::Floor,
            Some(w) if w.sill < w.grade => Grade::Below,
            Some(_) => Grade::Other,
        }
    }

    /// Whether the bottom of the clear opening is lower than the ground outside.
    pub fn below_grade(&self) -> bool {
        self.window().is_some_and(|w| w.sill < w.grade)
    }

    /// The well that the opening needs, where there is one.
    pub fn well(&self) -> Option<&'a Well> {
        self.window().filter(|_| self.below_grade()).and_then(|w| w.well.as_ref())
    }
}
