//! What the checker says.

use std::borrow::Cow;

use geometry::{Pt, Ring, Seg};
use measure::{Area, Len, Precision, System};
use plan::{Body, Edit, Edition, ElementId};
use space::{Facts, RoomIndex};

use crate::Phrase;

/// How much a finding matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// The permit desk or the inspector would stop it.
    Correction,
    /// A fact is missing or assumed, or the text leaves it to the official.
    Verify,
    /// Good practice.
    Advice,
}

/// Something measured or required.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Quantity {
    Len(Len),
    Area(Area),
    Count(u32),
    /// A fact in words, such as `none` or `hinged`.
    Words(String),
}

/// How sure the book is of a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Deserialize)]
pub enum Confidence {
    /// Seen in code text or on an official page.
    Seen,
    /// Seen second-hand, or in a neighbouring edition.
    SecondHand,
    /// From memory; not seen.
    FromMemory,
    /// Our own arithmetic or reading.
    Derived,
    /// Common practice, no source.
    Practice,
    /// As the user states it.
    Stated,
}

/// Where a limit comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Citation {
    /// The limit's slug in the code book.
    pub slug: &'static str,
    /// For example `2021 IRC R310.2.1` or `2020 NEC 110.26(A)(1)`.
    pub text: String,
    pub edition: Edition,
    pub confidence: Confidence,
}

/// What to paint on the plan for a finding.
///
/// A place that is named by what stands there ([`Place::Of`] and those after it) moves along with it: [`Place::on`] says
/// where it is. So a finding that says nothing of where something stands is the same wherever it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    Point(Pt),
    /// A gap or distance, with the figure that is written on it.
    Span(Pt, Pt),
    Area(Ring),
    /// A keep-clear box that something stands in.
    Breach {
        keep_clear: Ring,
        overlap: Vec<Ring>,
    },
    /// The point that stands for an element.
    Of(ElementId),
    /// From end to end of a wall or an opening.
    Along(ElementId),
    /// The floor under a service point, a furnishing or a flight.
    Under(ElementId),
    /// The point at which a room's name stands.
    Label(RoomIndex),
    /// The floor of a room.
    Floor(RoomIndex),
}

/// Whether a remedy may be applied without asking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Safety {
    /// Changes no intent: apply.
    Safe,
    /// Changes intent: show it first.
    Ask,
}

/// An edit that cures a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remedy {
    /// In the user's words, as the undo step is named: `Move W14 by 2 3/8"`.
    pub label: Phrase,
    pub edit: Edit,
    pub safety: Safety,
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// The rule's slug, such as `panel-depth`.
    pub rule: &'static str,
    pub severity: Severity,
    /// What it is about, in the order of the ids, without repeats.
    pub elements: Vec<ElementId>,
    pub title: Phrase,
    /// One plain sentence of why it matters.
    pub why: Phrase,
    pub measured: Option<Quantity>,
    pub required: Option<Quantity>,
    pub citation: Citation,
    /// Assumed facts that it rests on, in words; never empty for a `Verify` that is so for that reason.
    pub assumed: Vec<String>,
    pub places: Vec<Place>,
    /// The user's reason, where it has been set aside.
    pub set_aside: Option<String>,
}

impl Place {
    /// The place on a plan as a point, a span, an area or a breach; nothing where what names it doesn't stand.
    pub fn on(&self, facts: &Facts) -> Option<Cow<'_, Place>> {
        let place = match self {
            Place::Point(_) | Place::Span(..) | Place::Area(_) | Place::Breach { .. } => {
                return Some(Cow::Borrowed(self));
            }
            Place::Of(id) => Place::Point(middle(facts, *id)?),
            Place::Along(id) => {
                let line = line(facts, *id)?;
                Place::Span(line.a, line.b)
            }
            Place::Under(id) => Place::Area(corners(facts, *id)?),
            Place::Label(room) => Place::Point(facts.rooms.get(room.0)?.label_at),
            Place::Floor(room) => Place::Area(facts.rooms.get(room.0)?.shape.outer.clone()),
        };
        Some(Cow::Owned(place))
    }

    /// Its points on a plan: one, the ends of a span, the corners of an area, or those of a keep-clear box and then of
    /// each part that is breached.
    pub fn rings(&self, facts: &Facts) -> Vec<Ring> {
        match self.on(facts).map(Cow::into_owned) {
            Some(Place::Point(p)) => vec![vec![p]],
            Some(Place::Span(a, b)) => vec![vec![a, b]],
            Some(Place::Area(ring)) => vec![ring],
            Some(Place::Breach { keep_clear, overlap }) => {
                std::iter::once(keep_clear).chain(overlap).collect()
            }
            _ => Vec::new(),
        }
    }
}

/// The line of a wall or an opening.
fn line(facts: &Facts, id: ElementId) -> Option<Seg> {
    facts.opening(id).map(|o| o.line).or_else(|| facts.wall(id).map(|w| w.line))
}

fn corners(facts: &Facts, id: ElementId) -> Option<Ring> {
    let placed = match &facts.plan.get(id)?.body {
        Body::Service(s) => s.placed(),
        Body::Furnishing(f) => f.placed(),
        Body::Stair(s) => s.placed(),
        _ => return None,
    };
    Some(placed.corners().to_vec())
}

fn middle(facts: &Facts, id: ElementId) -> Option<Pt> {
    Some(match &facts.plan.get(id)?.body {
        Body::Opening(_) | Body::Shell(_) | Body::Partition(_) | Body::Furring(_) => {
            let line = line(facts, id)?;
            line.a.midway(line.b)
        }
        Body::Service(s) => s.placed().centre(),
        Body::Furnishing(f) => f.placed().centre(),
        Body::Stair(s) => s.foot,
        body => *body.points().first()?,
    })
}

impl Severity {
    pub const ALL: [Severity; 3] = [Severity::Correction, Severity::Verify, Severity::Advice];

    pub fn word(self) -> &'static str {
        match self {
            Severity::Correction => "correction",
            Severity::Verify => "verify",
            Severity::Advice => "advice",
        }
    }
}

impl Confidence {
    /// What is said beside a figure; empty for one that was seen in the code.
    pub fn mark(self) -> &'static str {
        match self {
            Confidence::Seen => "",
            Confidence::SecondHand => "seen second-hand",
            Confidence::FromMemory => "from memory",
            Confidence::Derived => "our own reading",
            Confidence::Practice => "common practice",
            Confidence::Stated => "as the user states",
        }
    }
}

impl Citation {
    /// The citation with its mark where the limit was not seen in the code: `2018 IRC M1305.1 (from memory)`.
    pub fn marked(&self) -> String {
        match self.confidence.mark() {
            "" => self.text.clone(),
            mark => format!("{} ({mark})", self.text),
        }
    }
}

impl Quantity {
    /// The quantity in a unit system; a length in inches or millimetres, rounded as `precision` says.
    pub fn say(&self, system: System, precision: Precision) -> String {
        match self {
            Quantity::Len(l) => system.inches(*l, precision),
            Quantity::Area(a) => system.area(*a),
            Quantity::Count(n) => n.to_string(),
            Quantity::Words(s) => s.clone(),
        }
    }
}

impl Finding {
    /// A finding without figures and places. `elements` are put in the order of their ids, once each.
    pub fn new(
        severity: Severity,
        citation: Citation,
        rule: &'static str,
        mut elements: Vec<ElementId>,
        title: Phrase,
        why: &str,
    ) -> Finding {
        elements.sort_unstable();
        elements.dedup();
        Finding {
            rule,
            severity,
            elements,
            title,
            why: Phrase::text(why),
            measured: None,
            required: None,
            citation,
            assumed: Vec::new(),
            places: Vec::new(),
            set_aside: None,
        }
    }

    /// What was measured and what is required.
    pub fn figures(mut self, measured: Quantity, required: Quantity) -> Finding {
        self.measured = Some(measured);
        self.required = Some(required);
        self
    }

    /// The places on a plan, as points, spans, areas and breaches.
    pub fn places_on<'a>(&'a self, facts: &'a Facts) -> impl Iterator<Item = Cow<'a, Place>> {
        self.places.iter().filter_map(|place| place.on(facts))
    }

    /// A place to paint.
    pub fn at(mut self, place: Place) -> Finding {
        self.places.push(place);
        self
    }

    /// It rests on an assumed fact: a correction becomes a verify.
    pub fn assuming(mut self, fact: impl Into<String>) -> Finding {
        self.assumed.push(fact.into());
        self.severity = self.severity.max(Severity::Verify);
        self
    }

    /// What was measured, in words. A length that is too short is rounded down and one that is too long is
    /// rounded up, so that a shown figure never seems to meet the limit.
    pub fn measured_text(&self, system: System) -> Option<String> {
        let measured = self.measured.as_ref()?;
        let precision = match (measured, &self.required) {
            (Quantity::Len(m), Some(Quantity::Len(r))) if m > r => Precision::Ceil,
            _ => Precision::Floor,
        };
        Some(measured.say(system, precision))
    }

    /// What is required, in words.
    pub fn required_text(&self, system: System) -> Option<String> {
        let required = self.required.as_ref()?;
        Some(required.say(system, Precision::Tape))
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::{Sample, at};

    #[test]
    fn a_place_that_is_named_by_what_stands_there_moves_along() {
        let sample = Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .tag(at(40.0, 80.0), "", plan::element::RoomUse::Office);
        let facts = sample.facts();
        let panel = facts.standing(&[plan::element::BodyKind::Service]).next().expect("a panel").id;
        let wall = facts.walls[0].id;
        let on = |place: Place| place.on(&facts).map(Cow::into_owned);
        let Some(Place::Area(ring)) = on(Place::Under(panel)) else { panic!("an area") };
        let middle = geometry::Bounds::of(&ring).centre();
        assert_eq!(on(Place::Of(panel)), Some(Place::Point(middle)));
        let line = facts.walls[0].line;
        assert_eq!(on(Place::Along(wall)), Some(Place::Span(line.a, line.b)));
        assert_eq!(on(Place::Of(wall)), Some(Place::Point(line.a.midway(line.b))));
        let room = &facts.rooms[0];
        assert_eq!(on(Place::Label(room.index)), Some(Place::Point(room.label_at)));
        assert_eq!(on(Place::Floor(room.index)), Some(Place::Area(room.shape.outer.clone())));
        let span = Place::Span(line.a, line.b);
        assert_eq!(on(span.clone()), Some(span));
        let nobody = ElementId(999);
        let gone = [
            Place::Of(nobody),
            Place::Along(panel),
            Place::Under(wall),
            Place::Label(RoomIndex(99)),
        ];
        assert!(gone.into_iter().all(|place| on(place).is_none()));
    }
}
