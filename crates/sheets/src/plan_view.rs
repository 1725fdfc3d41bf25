//! A plan to scale on a sheet: what is left of the plan for this sheet, drawn by the hand that draws the screen.

use std::sync::Arc;

use depict::{Scene, Show, View};
use drawing::{Anchor, Marks, P, Style, TextMark, Tone};
use geometry::{Bounds, Pt};
use measure::{Len, System};
use plan::element::RoomUse;
use plan::{Edit, Element, ElementId, Plan, State};
use rules::KeepClear;
use space::{Facts, Room, RoomIndex};

use crate::paper::Area;
use crate::scale::{Of, Scale};
use crate::strings::{self, DimensionString};
use crate::type_set::{BODY, HEAD};

/// The screen's type is too large for paper: the picture is made this much larger and printed smaller.
const FINER: f32 = 1.4;

/// Room for the caption below the drawing.
const CAPTION: f32 = 22.0;

/// What of a plan is drawn.
pub(crate) struct Wanted<'a> {
    pub facts: &'a Facts,
    /// Names that a table explains.
    pub named: &'a [(ElementId, String)],
    pub show: Show,
    /// Hatch the floors of rooms in which nothing is done.
    pub untouched: bool,
    /// Space that nothing may enter.
    pub keep_clears: &'a [KeepClear],
    /// Dimension strings outside and clear sizes inside.
    pub strings: bool,
    pub system: System,
    pub caption: &'a str,
}

/// Where a plan lies on paper.
#[derive(Clone, Copy, Debug)]
pub(crate) struct OnPaper {
    view: View,
    corner: P,
}

impl OnPaper {
    /// The place of a plan point on the sheet.
    pub fn at(&self, p: Pt) -> P {
        let p = self.view.screen_from_plan(p);
        P::new(p.x / FINER + self.corner.x, p.y / FINER + self.corner.y)
    }
}

/// The plan without some of its elements; openings and furring go with their walls.
pub(crate) fn without(plan: &Plan, drop: impl Fn(&Element) -> bool) -> Arc<Facts> {
    let gone: Vec<ElementId> = plan.elements().iter().filter(|e| drop(e)).map(|e| e.id).collect();
    // Taking elements away can't be refused but where one is missing, and these are all there.
    let left = plan.with(&Edit::Remove(gone)).unwrap_or_else(|_| plan.clone());
    Arc::new(space::derive(&Arc::new(left)))
}

/// The rooms in which nothing is done: those that stay unfinished, and those that were finished before.
pub(crate) fn untouched(facts: &Facts) -> Vec<RoomIndex> {
    let before = |room: &Room| {
        let tag = room.tag.and_then(|id| facts.plan.get(id));
        tag.is_some_and(|tag| tag.state == State::Existing || room.room_use == RoomUse::Unfinished)
    };
    facts.rooms.iter().filter(|r| before(r)).map(|r| r.index).collect()
}

/// The strings round a plan, the room that they take, and the size of the plan.
fn measures(wanted: &Wanted<'_>) -> (Vec<DimensionString>, [f32; 4], Bounds, (Len, Len)) {
    let bounds = depict::extent(wanted.facts);
    let strings = match wanted.strings {
        true => strings::strings(wanted.facts, wanted.system),
        false => Vec::new(),
    };
    let (w, h) =
        (bounds.max.x.saturating_sub(bounds.min.x), bounds.max.y.saturating_sub(bounds.min.y));
    let size = match bounds.is_empty() {
        true => (Len::UNIT, Len::UNIT),
        false => (Len::from_units(w), Len::from_units(h)),
    };
    let depths = strings::depths(&strings);
    (strings, depths, bounds, size)
}

/// The largest usual scale at which it fits a box.
pub(crate) fn scale(wanted: &Wanted<'_>, area: Area) -> Scale {
    let (_, [left, top, right, bottom], _, size) = measures(wanted);
    let room = area.cut(left, top, right, bottom + CAPTION);
    Scale::of(Of::Plan, wanted.system, size, (room.width(), room.height()))
}

/// Draws it in the middle of a box, at a scale at which it fits.
pub(crate) fn draw(wanted: &Wanted<'_>, area: Area, scale: Scale) -> Marks {
    let (strings, [left, top, right, bottom], bounds, size) = measures(wanted);
    let per_unit = f64::from(scale.points_per_inch) / f64::from(Len::PER_INCH);
    // The picture is as large as the plan with its strings, in the middle of the box.
    let (w, h) = (scale.points(size.0) + left + right, scale.points(size.1) + top + bottom);
    let corner = P::new(
        (area.left + area.right - w) / 2.0,
        area.top + ((area.height() - CAPTION - h) / 2.0).max(0.0),
    );
    let out = |points: f32| f64::from(points) / per_unit;
    let view = View {
        scale: per_unit * f64::from(FINER),
        origin: (f64::from(bounds.min.x) - out(left), f64::from(bounds.max.y) + out(top)),
        size: (w * FINER, h * FINER),
    };
    let show = Show {
        keep_clears: true,
        dimensions: false,
        grid: false,
        findings: false,
        rulers: false,
        ..wanted.show
    };
    let untouched = if wanted.untouched { untouched(wanted.facts) } else { Vec::new() };
    let scene = Scene {
        untouched: &untouched,
        show,
        system: wanted.system,
        hatched: true,
        named: wanted.named,
        keep_clears: wanted.keep_clears,
        ..Scene::new(wanted.facts)
    };
    let picture = depict::picture(&view, &scene);
    let mut marks = picture.marks.placed(1.0 / FINER, corner);
    let on_paper = OnPaper { view, corner };
    let written = strings::draw(wanted.facts, &strings, wanted.system, &on_paper, &mut marks);
    let name = match written {
        true => wanted.caption.to_owned(),
        false => format!("{} (some dimensions fit on larger paper only)", wanted.caption),
    };
    caption(
        &mut marks,
        &name,
        Some(scale),
        P::new((area.left + area.right) / 2.0, corner.y + h + 5.0),
    );
    marks
}

/// The name of a drawing with its scale under it.
pub(crate) fn caption(marks: &mut Marks, name: &str, scale: Option<Scale>, at: P) {
    let name = TextMark { style: Style::Bold, ..TextMark::new(at, name, HEAD, Tone::Ink) };
    marks.text(name.anchor(Anchor::Middle));
    if let Some(scale) = scale {
        let text = format!("Scale {}", scale.word);
        marks.text(TextMark::new(at.by(0.0, 12.0), text, BODY, Tone::Ink));
    }
}
