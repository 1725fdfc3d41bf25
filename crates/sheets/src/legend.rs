//! A legend: samples of what is drawn, each with its word.

use std::collections::BTreeSet;

use drawing::{Marks, P, Slope, Stroke, Style, Tone, hatch};
use plan::element::ServiceKind;
use plan::{Body, State};
use space::Facts;

use crate::paper::Area;
use crate::type_set::{BODY, HEAD, LEADING, wrap, write, write_lines};

/// A sample.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sample {
    Foundation,
    Existing,
    New,
    Removed,
    Overhead,
    Column,
    Glyph(ServiceKind),
    KeepClear,
    Untouched,
    /// A word alone: an abbreviation.
    None,
}

/// A sample with its word.
pub(crate) type Entry = (Sample, String);

/// What a drawing of these facts shows, each kind once.
pub(crate) fn of(facts: &Facts) -> Vec<Entry> {
    let elements = || facts.plan.elements().iter();
    let mut all: Vec<Entry> = Vec::new();
    let wall = |b: &Body| matches!(b, Body::Partition(_) | Body::Furring(_));
    let any = |test: &dyn Fn(&plan::Element) -> bool| elements().any(test);
    if any(&|e| matches!(e.body, Body::Shell(_))) {
        all.push((Sample::Foundation, "foundation wall, existing".to_owned()));
    }
    if any(&|e| e.state == State::Existing && wall(&e.body)) {
        all.push((Sample::Existing, "existing framed wall".to_owned()));
    }
    if any(&|e| e.state == State::New && wall(&e.body)) {
        all.push((Sample::New, "new framed wall".to_owned()));
    }
    if any(&|e| e.state == State::Removed) {
        all.push((Sample::Removed, "to be removed".to_owned()));
    }
    if any(&|e| matches!(e.body, Body::Column(_))) {
        all.push((Sample::Column, "post or column".to_owned()));
    }
    let overheads: BTreeSet<&str> = elements()
        .filter(|e| e.stands())
        .filter_map(|e| match &e.body {
            Body::Overhead(o) => Some(o.kind.word()),
            _ => None,
        })
        .collect();
    if !overheads.is_empty() {
        let words = overheads.into_iter().collect::<Vec<_>>().join(", ");
        all.push((Sample::Overhead, format!("overhead: {words}")));
    }
    let stands =
        |kind| any(&|e| e.stands() && matches!(&e.body, Body::Service(s) if s.kind == kind));
    let mut kinds: Vec<ServiceKind> = ServiceKind::ALL.into_iter().filter(|k| stands(*k)).collect();
    kinds.sort_by_key(|kind| kind.word());
    all.extend(kinds.into_iter().map(|kind| (Sample::Glyph(kind), kind.word().to_owned())));
    all
}

/// How high an entry is in a column of a width.
fn height(entry: &Entry, width: f32) -> f32 {
    (lines(entry, width).len() as f32 * BODY * LEADING).max(15.0)
}

/// From the left of the column to the words of an entry.
fn indent(sample: Sample) -> f32 {
    if sample == Sample::None { 0.0 } else { 34.0 }
}

fn lines((sample, word): &Entry, width: f32) -> Vec<String> {
    wrap(word, BODY, Style::Plain, width - indent(*sample))
}

/// Draws entries down a column as far as they fit; gives how many did.
pub(crate) fn column(title: &str, entries: &[Entry], area: Area, marks: &mut Marks) -> usize {
    let mut y = area.top + HEAD / 2.0;
    let mut drawn = 0;
    marks.group("legend", |m| {
        if !title.is_empty() {
            write(m, P::new(area.left, y), title, HEAD, Style::Bold);
            y += HEAD * LEADING + 3.0;
        }
        for entry in entries {
            let high = height(entry, area.width());
            if y + high > area.bottom {
                break;
            }
            draw_sample(entry.0, P::new(area.left + 13.0, y + 2.0), m);
            let at = P::new(area.left + indent(entry.0), y + 2.0);
            write_lines(m, at, lines(entry, area.width()), BODY, Style::Plain);
            y += high;
            drawn += 1;
        }
    });
    drawn
}

fn draw_sample(sample: Sample, at: P, m: &mut Marks) {
    let ring =
        |h: f32| [at.by(-13.0, -h), at.by(13.0, -h), at.by(13.0, h), at.by(-13.0, h)].to_vec();
    match sample {
        Sample::Foundation => m.fill(ring(4.0), Tone::Shell),
        Sample::Existing => m.outline(ring(3.0), Stroke::solid(Tone::Existing, 0.9)),
        Sample::New => {
            let ring = ring(3.0);
            m.segments(hatch(&[&ring], Slope::Rising, 2.5, at), Stroke::solid(Tone::New, 0.4));
            m.outline(ring, Stroke::solid(Tone::New, 1.0));
        }
        Sample::Removed => m.outline(ring(3.0), Stroke::dashed(Tone::Removed, 0.8, 4.0, 2.5)),
        Sample::Overhead => m.outline(ring(4.0), Stroke::dashed(Tone::Overhead, 0.8, 6.0, 3.0)),
        Sample::Column => {
            let ring = [at.by(-3.0, -3.0), at.by(3.0, -3.0), at.by(3.0, 3.0), at.by(-3.0, 3.0)];
            m.fill(ring, Tone::Shell);
        }
        Sample::Untouched => {
            let lines = hatch(&[&ring(5.0)], Slope::Falling, 7.0, at);
            m.segments(lines, Stroke::solid(Tone::SoftInk, 0.25));
        }
        Sample::KeepClear => {
            let ring = ring(4.0);
            let lines = hatch(&[&ring], Slope::Falling, 5.0, at);
            m.segments(lines, Stroke::solid(Tone::KeepClear, 0.3));
            m.outline(ring, Stroke::dashed(Tone::KeepClear, 0.7, 3.0, 2.0));
        }
        Sample::Glyph(kind) => m.append(depict::glyph(kind, at, 11.0)),
        Sample::None => {}
    }
}
