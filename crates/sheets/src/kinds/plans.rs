//! What all sheets with a plan have in common: the drawing left, legend, north and a graphic bar right.

use depict::Show;
use drawing::{Marks, P, Stroke, Style, TextMark, Tone};
use measure::{Len, System};
use plan::element::ServiceKind;
use plan::{Body, State};
use space::Facts;

use super::{Context, Made};
use crate::legend::{self, Entry, Sample};
use crate::paper::Area;
use crate::plan_view::{self, Wanted};
use crate::scale::Scale;
use crate::type_set::{HEAD, SMALL};

/// Width of the column beside the drawing.
const COLUMN: f32 = 148.0;

/// Height of the graphic bar and the north arrow.
const FOOT: f32 = 112.0;

/// The plan of one trade: its services and what goes with them, on the walls.
pub(super) struct Trade {
    pub kinds: &'static [ServiceKind],
    /// Whether an overhead or a furnishing belongs to it.
    pub with: fn(&Body) -> bool,
    pub caption: &'static str,
    /// Why there is no sheet where nothing of it is drawn.
    pub nothing: &'static str,
    /// Remarks for the facts that are drawn.
    pub remarks: fn(&Context<'_>, &Facts) -> Vec<String>,
}

/// The sheet of a trade.
pub(super) fn of_trade(context: &Context<'_>, trade: &Trade) -> Made {
    of_trades(context, &[trade], trade.caption)
}

/// The plan of one or several trades.
pub(super) fn of_trades(context: &Context<'_>, trades: &[&Trade], caption: &str) -> Made {
    let plan = context.source.plan();
    let is_kind = |kind: ServiceKind| trades.iter().any(|t| t.kinds.contains(&kind));
    let own = |body: &Body| match body {
        Body::Service(s) => is_kind(s.kind),
        Body::Overhead(_) | Body::Furnishing(_) => trades.iter().any(|t| (t.with)(body)),
        _ => false,
    };
    if !plan.elements().iter().any(|e| e.stands() && own(&e.body)) {
        let nothing: Vec<&str> = trades.iter().map(|t| t.nothing).collect();
        return Made::Nothing(nothing.join("; "));
    }
    let others = |body: &Body| {
        let kind = matches!(
            body,
            Body::Service(_)
                | Body::Overhead(_)
                | Body::Furnishing(_)
                | Body::Note(_)
                | Body::Section(_)
        );
        kind && !own(body)
    };
    let facts = plan_view::without(plan, |e| e.state == State::Removed || others(&e.body));
    let of_kind = |id| match facts.plan.get(id).map(|e| &e.body) {
        Some(Body::Service(s)) => is_kind(s.kind),
        _ => false,
    };
    let mut keep_clears = rules::keep_clears(context.source.facts, context.source.book);
    keep_clears.retain(|k| of_kind(k.service));
    let mut legend = legend::of(&facts);
    if !keep_clears.is_empty() {
        legend.push((Sample::KeepClear, "space that stays clear".to_owned()));
    }
    let wanted = Wanted {
        facts: &facts,
        named: &[],
        show: Show::default(),
        untouched: false,
        keep_clears: &keep_clears,
        strings: false,
        system: context.system,
        caption,
    };
    let remarks: Vec<String> = trades.iter().flat_map(|t| (t.remarks)(context, &facts)).collect();
    draw(context, &[&wanted], &legend, &remarks)
}

/// Plans with one legend: several at one scale, side by side or below each other. What of the legend has no room beside
/// them goes to a page of its own.
pub(super) fn draw(
    context: &Context<'_>,
    plans: &[&Wanted<'_>],
    legend: &[Entry],
    remarks: &[String],
) -> Made {
    let area = context.area;
    let room = area.cut(0.0, 0.0, COLUMN + 10.0, 0.0);
    let n = plans.len().max(1) as f32;
    let beside = |i: usize| {
        let left = room.left + room.width() / n * i as f32;
        Area { left, right: left + room.width() / n, ..room }
    };
    let below = |i: usize| {
        let top = room.top + room.height() / n * i as f32;
        Area { top, bottom: top + room.height() / n, ..room }
    };
    let scale_in = |split: &dyn Fn(usize) -> Area| {
        let scales = plans.iter().enumerate().map(|(i, p)| plan_view::scale(p, split(i)));
        scales.reduce(|a, b| if a.points_per_inch <= b.points_per_inch { a } else { b })
    };
    let (Some(level), Some(upright)) = (scale_in(&beside), scale_in(&below)) else {
        return Made::Nothing("there is no plan".to_owned());
    };
    let side_by_side = level.points_per_inch >= upright.points_per_inch;
    let scale = if side_by_side { level } else { upright };
    let mut marks = Marks::new();
    for (i, plan) in plans.iter().enumerate() {
        let part = if side_by_side { beside(i) } else { below(i) };
        marks.append(plan_view::draw(plan, part, scale));
    }
    let column = Area { left: area.right - COLUMN, ..area };
    let remarks = remarks.iter().map(|text| (Sample::None, text.clone()));
    let gap = std::iter::once((Sample::None, String::new()));
    let entries: Vec<Entry> = legend.iter().cloned().chain(gap).chain(remarks).collect();
    // The graphic bar and the north arrow stand below.
    let beside = Area { bottom: column.bottom - FOOT, ..column };
    let mut done = legend::column("Legend", &entries, beside, &mut marks);
    let north = context.source.plan().site.papers.north;
    bar(context.system, scale, P::new(column.left + 4.0, column.bottom - 20.0), &mut marks);
    arrow(north, P::new(column.right - 40.0, column.bottom - 62.0), &mut marks);
    let mut pages = vec![(marks, Some(scale.word))];
    while done < entries.len() {
        let mut page = Marks::new();
        let mut left = area.left;
        let before = done;
        while left + COLUMN <= area.right && done < entries.len() {
            let column = Area { left, right: left + COLUMN, ..area };
            let title = if left > area.left { "" } else { "Legend, continued" };
            done += legend::column(title, &entries[done..], column, &mut page);
            left += COLUMN + 20.0;
        }
        if done == before {
            break;
        }
        pages.push((page, None));
    }
    Made::Drawn(pages)
}

/// A graphic bar: it tells the scale also of a copy that was made smaller.
pub(super) fn bar(system: System, scale: Scale, at: P, m: &mut Marks) {
    let (unit, word, steps) = match system {
        System::Imperial => (Len::feet_inches(1, 0), "ft", [2, 4, 10, 20, 100]),
        System::Metric => (Len::from_units(320_000), "m", [1, 2, 5, 10, 50]),
    };
    // Three fields, long enough to measure on.
    let long = |step: &&usize| scale.points(unit) * **step as f32 >= 24.0;
    let step = steps.iter().find(long).copied().unwrap_or(steps[steps.len() - 1]);
    let fields = if scale.points(unit) * (3 * step) as f32 > 120.0 { 2 } else { 3 };
    let most = fields * step;
    m.group("graphic bar", |m| {
        for i in (0..most).step_by(step) {
            let x = |n: usize| at.x + scale.points(unit) * n as f32;
            let (top, bottom) = (at.y, at.y + 4.0);
            let ring = Area { left: x(i), top, right: x(i + step), bottom }.ring();
            if (i / step) % 2 == 0 {
                m.fill(ring, Tone::Ink);
            }
            m.outline(ring, Stroke::solid(Tone::Ink, 0.6));
        }
        let x = at.x + scale.points(unit) * most as f32;
        m.text(TextMark::new(P::new(at.x, at.y + 10.0), "0", SMALL, Tone::Ink));
        m.text(TextMark::new(P::new(x, at.y + 10.0), format!("{most} {word}"), SMALL, Tone::Ink));
    });
}

/// A north arrow turned clockwise from up; without a known direction a circle to fill in.
pub(super) fn arrow(north: Option<u32>, at: P, m: &mut Marks) {
    m.group("north", |m| {
        m.circle(at, 15.0, None, Some(Stroke::solid(Tone::Ink, 0.7)));
        let Some(degrees) = north else {
            m.text(TextMark::new(at.by(0.0, 21.0), "north: draw in", SMALL, Tone::Ink));
            return;
        };
        let (sin, cos) = libm::sincosf((degrees as f32).to_radians());
        let turn = |x: f32, y: f32| at.by(x * cos + y * sin, x * sin - y * cos);
        m.fill([turn(0.0, 14.0), turn(-5.0, -9.0), turn(0.0, -5.0)], Tone::Ink);
        m.outline(
            [turn(0.0, 14.0), turn(5.0, -9.0), turn(0.0, -5.0)],
            Stroke::solid(Tone::Ink, 0.7),
        );
        let text = TextMark::new(turn(0.0, 22.0), "N", HEAD, Tone::Ink);
        m.text(TextMark { style: Style::Bold, ..text });
    });
}
