//! Sections of the ceiling: as it hangs everywhere, and at each beam, duct, pipe and soffit below it.

use drawing::{Marks, P, Stroke, Tone};
use measure::{Len, Precision};
use plan::detail::Value;
use plan::detail::overhead::{DUCT_MADE_OF, SOFFIT_FIREBLOCKED};
use plan::element::OverheadKind;
use plan::{CeilingBuild, Element};
use rules::capital;
use space::OverheadFacts;

use super::tables::state;
use super::{Context, Kind, Made};
use crate::dimension::between;
use crate::fabric::{Frame, JOIST};
use crate::leaders::leaders;
use crate::paper::Area;
use crate::plan_view::caption;
use crate::scale::{Of, Scale};

pub(crate) const KIND: Kind = Kind {
    slug: "ceiling-sections",
    title: "Ceiling and soffit sections",
    discipline: "A",
    first: 311,
    make,
};

/// What one section shows.
struct Drop<'a> {
    name: String,
    /// Others that look the same.
    alike: Vec<String>,
    /// Nothing but the ceiling where there is none.
    over: Option<(&'a Element, &'a OverheadFacts, Len)>,
}

fn make(context: &Context<'_>) -> Made {
    let facts = context.source.facts;
    let site = &facts.plan.site;
    if facts.rooms.is_empty() {
        return Made::Nothing("no room is enclosed".to_owned());
    }
    let mut drops = vec![Drop { name: "Ceiling".to_owned(), alike: Vec::new(), over: None }];
    // Equal ones are drawn once.
    let mut known: Vec<(OverheadKind, Len, Len, Option<Value>)> = Vec::new();
    for over in &facts.overheads {
        let Some(element) = facts.plan.get(over.id) else { continue };
        if over.clear >= site.ceiling_height() {
            continue;
        }
        let width = narrow(over);
        let detail = match over.kind {
            OverheadKind::Soffit => element.stated(&SOFFIT_FIREBLOCKED),
            OverheadKind::Duct => element.stated(&DUCT_MADE_OF),
            _ => None,
        };
        let key = (over.kind, over.underside, width, detail);
        match known.iter().position(|k| *k == key) {
            Some(i) => drops[i + 1].alike.push(element.name()),
            None => {
                known.push(key);
                let name = format!("{} {}", capital(over.kind.word()), element.name());
                drops.push(Drop { name, alike: Vec::new(), over: Some((element, over, width)) });
            }
        }
    }
    let area = context.area;
    let wide = if area.width() < 700.0 { 240.0 } else { 330.0 };
    let most = ((area.width() / wide).floor() as usize).max(1);
    // As many beside each other as there are, up to what leaves room for words; the rest below.
    let columns = most.min(drops.len());
    let rows = drops.len().div_ceil(columns).min(((area.height() / 160.0) as usize).max(1));
    let (cell, height) = (area.width() / columns as f32, area.height() / rows as f32);
    let widest = drops.iter().filter_map(|d| d.over.map(|o| o.2)).max().unwrap_or(Len::ZERO);
    let lowest = drops.iter().filter_map(|d| d.over.map(|o| o.1.underside)).min();
    let low = lowest.unwrap_or(site.joist_underside).min(ceiling(context));
    let size = (widest + ASIDE * 2, site.joist_underside + JOIST - low);
    let room = ((cell - WORDS).max(cell * 0.4), height - 90.0);
    let mut scale = Scale::of(Of::Section, context.system, size, room);
    if !scale.fits(size, room) {
        scale = Scale::of(Of::Building, context.system, size, room);
    }
    let pages = drops.chunks(columns * rows).map(|page| {
        let mut marks = Marks::new();
        for (i, drop) in page.iter().enumerate() {
            let left = area.left + cell * (i % columns) as f32;
            let top = area.top + height * (i / columns) as f32;
            let slot = Area { left, top, right: left + cell, bottom: top + height };
            marks.group(format!("ceiling {}", drop.name), |m| {
                section(context, drop, scale, size.0, slot, m);
            });
        }
        (marks, Some(scale.word))
    });
    Made::Drawn(pages.collect())
}

/// Room for words beside a section, in points.
const WORDS: f32 = 170.0;

/// How much of the ceiling is drawn on either side.
const ASIDE: Len = Len::inches(16);

/// The underside of the ceiling's face above the slab.
fn ceiling(context: &Context<'_>) -> Len {
    let site = &context.source.plan().site;
    site.joist_underside - site.ceiling.drop()
}

/// The lesser side of the box round an overhead: across a straight run its width.
fn narrow(over: &OverheadFacts) -> Len {
    if let [a, b, c, d] = over.ring[..] {
        let side = |p, q| geometry::Seg::new(p, q).len();
        return side(a, b).min(side(b, c)).max(side(c, d).min(side(d, a)));
    }
    let b = geometry::Bounds::of(&over.ring);
    Len::from_units((b.max.x - b.min.x).min(b.max.y - b.min.y))
}

fn section(
    context: &Context<'_>,
    drop: &Drop<'_>,
    scale: Scale,
    width: Len,
    slot: Area,
    m: &mut Marks,
) {
    let site = &context.source.plan().site;
    let (joists, face) = (site.joist_underside, ceiling(context));
    let top = joists + JOIST;
    let free =
        slot.height() - 110.0 - scale.points(top - drop.over.map_or(face, |o| o.1.underside));
    let origin = P::new(slot.left + 22.0, slot.top + 12.0 + (free / 3.0).max(0.0));
    let f = Frame { origin: origin.by(0.0, scale.points(top)), scale, start: Len::ZERO };
    let at = |x: Len, up: Len| f.at(x, up);
    let ring = |x: (Len, Len), up: (Len, Len)| f.ring(x, up);
    let (ink, thin) = (Stroke::solid(Tone::Ink, 0.9), Stroke::solid(Tone::Ink, 0.5));
    let mut words = Vec::new();
    m.outline(ring((Len::ZERO, width), (joists, top)), thin);
    words.push((
        at(width - Len::inches(2), joists + JOIST / 2),
        "floor joists, existing (depth not measured)".to_owned(),
    ));
    let inches = |len| context.system.inches(len, Precision::Tape);
    let part = drop.over.map_or(Len::ZERO, |(_, _, wide)| wide);
    let (from, to) = ((width - part) / 2, (width + part) / 2);
    // The ceiling on both sides, and under the joists where it is all there is.
    let word = match site.ceiling {
        CeilingBuild::Open => "joists left open: no ceiling".to_owned(),
        CeilingBuild::Board(t) => format!("{} gypsum board on the joists", inches(t)),
        CeilingBuild::LayIn(t) => format!("lay-in ceiling, {} below the joists", inches(t)),
    };
    if site.ceiling.drop() > Len::ZERO {
        let board = Len::sixty_fourths(32).min(site.ceiling.drop());
        let sides = if part == Len::ZERO {
            vec![(Len::ZERO, width)]
        } else {
            vec![(Len::ZERO, from), (to, width)]
        };
        for side in sides {
            m.outline(ring(side, (face, face + board)), thin);
        }
    }
    let say = |len| context.system.len(len, Precision::Floor);
    let up = say(face - site.floor_build);
    words
        .push((at(width - Len::inches(4), face), format!("{word}, {up} above the finished floor")));
    let mut low = face;
    if let Some((element, over, wide)) = drop.over {
        low = over.underside;
        let body = ring((from, to), (over.underside, joists));
        match over.kind {
            OverheadKind::Soffit => {
                m.outline(body.clone(), ink);
                let board = Len::sixty_fourths(32);
                let inner = ring((from + board, to - board), (over.underside + board, joists));
                m.outline(inner, thin);
            }
            _ => {
                m.segments(vec![(body[0], body[2]), (body[1], body[3])], thin);
                m.outline(body, ink);
            }
        }
        let middle = at(width / 2, over.underside + (joists - over.underside) / 2);
        let mut text = describe(context, element, over, wide);
        if !drop.alike.is_empty() {
            text.push_str(&format!("; {} the same", drop.alike.join(", ")));
        }
        words.push((middle, text));
        if over.kind == OverheadKind::Soffit {
            let text = match element.stated(&SOFFIT_FIREBLOCKED).and_then(|v| v.yes()) {
                Some(true) => "closed against the stud spaces behind: fireblocked",
                Some(false) => "open to the stud spaces behind: to be fireblocked",
                None => "fireblocking between wall and soffit: not stated",
            };
            words.push((at(from, joists - Len::inches(1)), text.to_owned()));
        }
    }
    // How far the drop comes down.
    if low < face {
        words.push((
            at(width / 2, low),
            format!("underside {} above the finished floor", say(low - site.floor_build)),
        ));
        let x = at(from, face).by(-8.0, 0.0);
        between(P::new(x.x, at(from, low).y), x, &inches(face - low), m);
    }
    let bottom = at(Len::ZERO, low).y + 12.0;
    let words_left = at(width, top).x + 22.0;
    let most = slot.bottom - 34.0;
    leaders(&mut words, words_left, Area { top: origin.y, bottom: most, ..slot }, m);
    let middle = f32::midpoint(slot.left, at(width, top).x);
    caption(m, &drop.name, Some(scale), P::new(middle.max(slot.left + 60.0), bottom + 18.0));
}

fn describe(context: &Context<'_>, element: &Element, over: &OverheadFacts, wide: Len) -> String {
    let width = context.system.inches(wide, Precision::Tape);
    let state = state(element);
    match over.kind {
        OverheadKind::Soffit => format!("soffit, {state}, {width} wide, its board included"),
        OverheadKind::Duct => match element.stated(&DUCT_MADE_OF) {
            Some(made) => format!("duct, {state}, {width} wide, {}", made.say(context.system)),
            None => format!("duct, {state}, {width} wide"),
        },
        kind => format!("{}, {state}, {width} wide", kind.word()),
    }
}
