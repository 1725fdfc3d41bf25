//! Stairs from the side: rise, run, headroom.

use drawing::{Marks, P, Slope, Stroke, Style, Tone, hatch};
use measure::{Len, Precision};
use plan::detail::Detail;
use plan::detail::stair::{
    GUARD_HEIGHT, HANDRAIL, HEAD_LANDING, NOSING, RAIL_HEIGHT, UNDERSIDE_LINED,
};
use plan::element::Stair;
use plan::{Body, Element};

use super::{Context, Kind, Made};
use crate::dimension::between;
use crate::paper::Area;
use crate::plan_view::caption;
use crate::scale::{Of, Scale};
use crate::type_set::{BODY, LEADING, write};

pub(crate) const KIND: Kind =
    Kind { slug: "stair-section", title: "Stair section", discipline: "A", first: 302, make };

/// Room for the words beside a section.
const WORDS: f32 = 190.0;

fn make(context: &Context<'_>) -> Made {
    let elements = context.source.plan().elements();
    let stairs = elements.iter().filter(|e| e.stands()).filter_map(|e| match &e.body {
        Body::Stair(s) => Some((e, s)),
        _ => None,
    });
    let pages: Vec<_> = stairs.map(|(e, s)| one(context, e, s)).collect();
    if pages.is_empty() {
        return Made::Nothing("no stair is drawn".to_owned());
    }
    Made::Drawn(pages)
}

fn one(context: &Context<'_>, element: &Element, stair: &Stair) -> (Marks, Option<&'static str>) {
    let area = context.area;
    let rise = stair.rise * i32::try_from(stair.risers).unwrap_or(i32::MAX);
    let size = (stair.length() + Len::inches(60), rise + stair.headroom + Len::inches(12));
    let room = (area.width() - WORDS - 40.0, area.height() - 60.0);
    let scale = Scale::of(Of::Section, context.system, size, room);
    let mut marks = Marks::new();
    let origin = P::new(area.left + 40.0, area.bottom - 48.0);
    marks.group(element.name(), |m| profile(context, stair, scale, origin, rise, m));
    words(context, element, stair, Area { left: area.right - WORDS, ..area }, &mut marks);
    let middle = origin.x + scale.points(size.0) / 2.0;
    let name = format!("Stair {}", element.name());
    caption(&mut marks, &name, Some(scale), P::new(middle, area.bottom - 20.0));
    (marks, Some(scale.word))
}

fn profile(context: &Context<'_>, s: &Stair, scale: Scale, origin: P, rise: Len, m: &mut Marks) {
    let at = |x: Len, up: Len| origin.by(scale.points(x + Len::inches(36)), -scale.points(up));
    let (ink, thin) = (Stroke::solid(Tone::Ink, 1.0), Stroke::solid(Tone::Ink, 0.5));
    let slab = vec![
        at(-Len::inches(36), Len::ZERO),
        at(s.length() + Len::inches(20), Len::ZERO),
        at(s.length() + Len::inches(20), -Len::inches(4)),
        at(-Len::inches(36), -Len::inches(4)),
    ];
    m.segments(hatch(&[&slab], Slope::Falling, 5.0, origin), Stroke::solid(Tone::SoftInk, 0.4));
    m.outline(slab, thin);
    // Riser after riser; the last one ends at the floor above.
    let mut steps = vec![at(Len::ZERO, Len::ZERO)];
    let count = i32::try_from(s.risers).unwrap_or(0).min(200);
    for i in 1..=count {
        steps.push(at(s.run * (i - 1), s.rise * i));
        let to = if i == count { s.run * (i - 1) + Len::inches(24) } else { s.run * i };
        steps.push(at(to, s.rise * i));
    }
    m.line(steps, ink);
    // The line of the nosings, and the headroom above it.
    let last = s.run * (count - 1).max(0);
    let (low, high) = (at(Len::ZERO, s.rise), at(last, s.rise * count));
    m.line(vec![low, high], Stroke::dashed(Tone::SoftInk, 0.6, 5.0, 3.0));
    let up = scale.points(s.headroom);
    m.line(
        vec![low.by(0.0, -up), high.by(0.0, -up)],
        Stroke::dashed(Tone::Overhead, 0.8, 6.0, 3.0),
    );
    let middle = low.towards(high, 0.5);
    let headroom = format!("headroom {}", context.system.inches(s.headroom, Precision::Tape));
    between(middle, middle.by(0.0, -up), &headroom, m);
    // One rise and one run near the foot, the whole rise at the head.
    let inches = |l| context.system.inches(l, Precision::Fine);
    let x = at(Len::ZERO, Len::ZERO).by(-10.0, 0.0);
    between(x, x.by(0.0, -scale.points(s.rise)), &inches(s.rise), m);
    let run = (at(Len::ZERO, s.rise).by(0.0, -9.0), at(s.run, s.rise).by(0.0, -9.0));
    between(run.0, run.1, &inches(s.run), m);
    let end = at(s.length() + Len::inches(12), Len::ZERO);
    let whole = context.system.len(rise, Precision::Fine);
    between(end, end.by(0.0, -scale.points(rise)), &whole, m);
}

fn words(context: &Context<'_>, element: &Element, s: &Stair, area: Area, m: &mut Marks) {
    let system = context.system;
    let inches = |l| system.inches(l, Precision::Fine);
    let stated = |detail: &'static Detail| {
        element.stated(detail).map_or("not stated".to_owned(), |v| v.say(system))
    };
    let rows = [
        ("Risers", format!("{} of {}", s.risers, inches(s.rise))),
        ("Treads", format!("{} of {}", s.risers.saturating_sub(1), inches(s.run))),
        ("Width", inches(s.width)),
        ("Length in plan", system.len(s.length(), Precision::Tape)),
        ("Headroom", inches(s.headroom)),
        ("Handrail", stated(&HANDRAIL)),
        ("Height of the rail", stated(&RAIL_HEIGHT)),
        ("Nosing", stated(&NOSING)),
        ("Guard", stated(&GUARD_HEIGHT)),
        ("Landing at the head", stated(&HEAD_LANDING)),
        ("Underside lined", stated(&UNDERSIDE_LINED)),
    ];
    let mut y = area.top + 8.0;
    for (word, value) in rows {
        write(m, P::new(area.left, y), word, BODY, Style::Plain);
        write(m, P::new(area.left + 92.0, y), &value, BODY, Style::Bold);
        y += BODY * LEADING + 2.0;
    }
}
