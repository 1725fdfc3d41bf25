//! A sketch of the lot, where an opening to the outside is new.

use drawing::{Marks, P, Stroke, Style, Tone};
use geometry::{Bounds, Pt};
use measure::{Len, Precision};
use plan::detail::Detail;
use plan::detail::site::{LOT_BOTTOM, LOT_LEFT, LOT_RIGHT, LOT_TOP};
use plan::element::{Opening, Side};
use plan::{Body, Element, State};
use space::{OpeningFacts, WallKind};

use super::plans::{arrow, bar};
use super::{Context, Kind, Made};
use crate::dimension::{LINE, slashes};
use crate::labels::Labels;
use crate::paper::Area;
use crate::plan_view::caption;
use crate::scale::{Of, Scale};
use crate::strings;
use crate::type_set::{BODY, SMALL, wrap, write_lines};

pub(crate) const KIND: Kind = Kind {
    slug: "site-sketch",
    title: "Site sketch with the new openings",
    discipline: "C",
    first: 101,
    make,
};

/// Left or right of a lot that nobody measured.
const AROUND: Len = Len::feet_inches(12, 0);
/// Width of the column for words, height for the caption.
const COLUMN: f32 = 170.0;
const CAPTION: f32 = 40.0;

/// The sides of the drawing: how far out the lot line is stated to be, its word.
const SIDES: [(&Detail, &str); 4] =
    [(&LOT_LEFT, "left"), (&LOT_RIGHT, "right"), (&LOT_TOP, "top"), (&LOT_BOTTOM, "bottom")];

fn make(context: &Context<'_>) -> Made {
    let facts = context.source.facts;
    let shell = || facts.walls.iter().filter(|w| w.kind == WallKind::Shell);
    let house = strings::house(facts);
    let openings = new_openings(context);
    if openings.is_empty() {
        return Made::Nothing("no opening to the outside is new".to_owned());
    }
    let stated = SIDES.map(|(detail, _)| facts.plan.site.details.get(detail).and_then(|v| v.len()));
    let out = stated.map(|lot| lot.unwrap_or(AROUND));
    let size = (house.width() + out[0] + out[1], house.height() + out[2] + out[3]);
    let area = context.area;
    let room = area.cut(30.0, 30.0, COLUMN + 30.0, CAPTION + 40.0);
    let scale = Scale::of(Of::Lot, context.system, size, (room.width(), room.height()));
    let (w, h) = (scale.points(size.0), scale.points(size.1));
    let corner = P::new(
        (room.left + room.right - w) / 2.0 + scale.points(out[0]),
        (room.top + room.bottom - h) / 2.0 + scale.points(out[2]),
    );
    let at = |p: Pt| {
        let along = |v: i32| scale.points(Len::from_units(v));
        corner.by(along(p.x.saturating_sub(house.min.x)), along(house.max.y.saturating_sub(p.y)))
    };
    let sketch = Sketch { context, scale, house, stated };
    let mut m = Marks::new();
    m.group("house", |m| {
        for wall in shell() {
            m.fill(wall.outline.iter().map(|p| at(*p)).collect::<Vec<_>>(), Tone::Shell);
        }
    });
    let mut labels = Labels::default();
    let (low, high) = (at(house.min), at(house.max));
    m.group("openings", |m| {
        for (element, opening, of) in &openings {
            sketch.opening(&at, element, opening, of, &mut labels, m);
        }
    });
    m.group("lot", |m| sketch.lot(&at, &mut labels, m));
    m.group("size of the house", |m| {
        let (a, b) = (P::new(low.x, low.y - 14.0), P::new(high.x, low.y - 14.0));
        sketch.measured(a, b, house.width(), &mut labels, m);
        let (a, b) = (P::new(low.x + 14.0, low.y), P::new(low.x + 14.0, high.y));
        sketch.measured(a, b, house.height(), &mut labels, m);
    });
    sketch.words(&openings, Area { left: area.right - COLUMN, ..area }, &mut m);
    let middle = (room.left + room.right) / 2.0;
    caption(&mut m, "Site sketch", Some(scale), P::new(middle, area.bottom - CAPTION + 8.0));
    bar(context.system, scale, P::new(area.right - COLUMN + 4.0, area.bottom - 20.0), &mut m);
    let north = facts.plan.site.papers.north;
    arrow(north, P::new(area.right - 40.0, area.bottom - 62.0), &mut m);
    Made::Drawn(vec![(m, Some(scale.word))])
}

/// The new doors and windows in the foundation.
fn new_openings<'a>(context: &Context<'a>) -> Vec<(&'a Element, &'a Opening, &'a OpeningFacts)> {
    let facts = context.source.facts;
    let outside = facts.openings.iter().filter_map(|of| {
        let element = facts.plan.get(of.id).filter(|e| e.state == State::New)?;
        let Body::Opening(opening) = &element.body else { return None };
        let shell = facts.wall(of.host).is_some_and(|w| w.kind == WallKind::Shell);
        (shell && of.outside).then_some((element, opening, of))
    });
    outside.collect()
}

struct Sketch<'a, 'b> {
    context: &'b Context<'a>,
    scale: Scale,
    house: Bounds,
    /// Left, right, top, bottom.
    stated: [Option<Len>; 4],
}

impl Sketch<'_, '_> {
    fn say(&self, len: Len) -> String {
        self.context.system.len(len, Precision::Tape)
    }

    /// A dimension, its figure where there is room beside the line.
    fn measured(&self, a: P, b: P, len: Len, labels: &mut Labels, m: &mut Marks) {
        m.line(vec![a, b], LINE);
        slashes(&[a, b], m);
        let middle = a.towards(b, 0.5);
        let aside = if (a.x - b.x).abs() < (a.y - b.y).abs() { 22.0 } else { 0.0 };
        let spots = (0..12).flat_map(|i| {
            let step = i as f32 * 7.0;
            [
                middle.by(aside, -7.0 - step),
                middle.by(-aside, 7.0 + step),
                middle.by(aside + step, 7.0),
            ]
        });
        labels.write(&[(self.say(len), SMALL, Style::Plain)], middle, spots, m);
    }

    /// The lot lines that are stated, each with its distance from the house.
    fn lot(&self, at: &impl Fn(Pt) -> P, labels: &mut Labels, m: &mut Marks) {
        let (low, high) = (at(self.house.min), at(self.house.max));
        let out = |i: usize| self.scale.points(self.stated[i].unwrap_or(AROUND));
        let (left, right) = (low.x - out(0), high.x + out(1));
        let (top, bottom) = (high.y - out(2), low.y + out(3));
        let line = Stroke::dashed(Tone::Ink, 1.0, 18.0, 4.0);
        let (middle_x, middle_y) = (f32::midpoint(low.x, high.x), f32::midpoint(low.y, high.y));
        let sides = [
            (
                P::new(left, top),
                P::new(left, bottom),
                P::new(left, middle_y),
                P::new(low.x, middle_y),
            ),
            (
                P::new(right, top),
                P::new(right, bottom),
                P::new(high.x, middle_y),
                P::new(right, middle_y),
            ),
            (
                P::new(left, top),
                P::new(right, top),
                P::new(middle_x, top),
                P::new(middle_x, high.y),
            ),
            (
                P::new(left, bottom),
                P::new(right, bottom),
                P::new(middle_x, low.y),
                P::new(middle_x, bottom),
            ),
        ];
        for (i, (a, b, from, to)) in sides.into_iter().enumerate() {
            let Some(lot) = self.stated[i] else { continue };
            m.line(vec![a, b], line);
            // Beside the middle where the well of an opening might stand.
            let shift = |p: P| if i < 2 { p.by(0.0, 18.0) } else { p.by(26.0, 0.0) };
            if lot > Len::ZERO {
                self.measured(shift(from), shift(to), lot, labels, m);
            }
        }
    }

    fn opening(
        &self,
        at: &impl Fn(Pt) -> P,
        element: &Element,
        opening: &Opening,
        of: &OpeningFacts,
        labels: &mut Labels,
        m: &mut Marks,
    ) {
        let quad: Vec<P> = of.quad.iter().map(|p| at(*p)).collect();
        m.fill(quad.clone(), Tone::Paper);
        m.outline(quad, Stroke::solid(Tone::Ink, 1.0));
        let face = of.face(Side::Right);
        let mut out = at(face.a).towards(at(face.b), 0.5);
        if let Some(well) = opening.window().and_then(|w| w.well) {
            let ring = of.well_ring(&well).map(at);
            m.line(ring.to_vec(), Stroke::solid(Tone::Ink, 1.2));
            out = ring[1].towards(ring[2], 0.5);
        }
        let inner = of.face(Side::Left);
        let inside = at(inner.a).towards(at(inner.b), 0.5);
        let away = inside.towards(out, 1.0 + 14.0 / inside.distance(out).max(0.1));
        let name = vec![(element.name(), BODY, Style::Bold)];
        let spots = (0..10).flat_map(|i| {
            let step = i as f32 * 9.0;
            [away.by(0.0, step), away.by(0.0, -step), away.by(step, 0.0), away.by(-step, 0.0)]
        });
        labels.write(&name, away, spots, m);
    }

    /// What each opening is, and what the sketch rests on.
    fn words(&self, openings: &[(&Element, &Opening, &OpeningFacts)], column: Area, m: &mut Marks) {
        let mut text: Vec<(String, Style)> = vec![("New openings".to_owned(), Style::Bold)];
        for (element, opening, of) in openings {
            text.push((self.describe(element, opening, of), Style::Plain));
        }
        let missing: Vec<&str> = SIDES
            .iter()
            .zip(&self.stated)
            .filter(|(_, lot)| lot.is_none())
            .map(|((_, word), _)| *word)
            .collect();
        text.push(("Lot".to_owned(), Style::Bold));
        text.push((
            "A sketch, not a survey: lot lines are drawn where their distance from the house is stated.".to_owned(),
            Style::Plain,
        ));
        if !missing.is_empty() {
            let word = missing.join(", ");
            text.push((
                format!("Not stated: the lot line {word}. Write it in, or add the survey."),
                Style::Plain,
            ));
        }
        let mut y = column.top + 8.0;
        for (words, style) in text {
            let size = if style == Style::Bold { BODY + 1.0 } else { BODY };
            let lines = wrap(&words, size, style, column.width());
            y += write_lines(m, P::new(column.left, y), lines, size, style) + 5.0;
            if y > column.bottom - 130.0 {
                let more = "More openings are in the tables.".to_owned();
                write_lines(m, P::new(column.left, y), [more], SMALL, Style::Plain);
                break;
            }
        }
    }

    fn describe(&self, element: &Element, opening: &Opening, of: &OpeningFacts) -> String {
        let inches = |len| self.context.system.inches(len, Precision::Tape);
        let (what, height) = match (opening.door(), opening.window()) {
            (Some(door), _) => (door.operation.word(), door.leaf_height),
            (_, Some(window)) => ("window", window.frame_height),
            (None, None) => ("opening", Len::ZERO),
        };
        let mut text =
            format!("{}: {what} {} x {}", element.name(), inches(opening.width()), inches(height));
        let well = opening.window().and_then(|w| w.well);
        if let Some(well) = well {
            text.push_str(&format!(
                ", well {} x {} and {} deep",
                inches(well.width),
                inches(well.projection),
                inches(well.depth)
            ));
        }
        if let Some(host) = self.context.source.facts.wall(of.host) {
            // From the nearer end of the wall's inner face.
            let before = opening.at;
            let after = host.line.len() - opening.at - opening.width();
            let corner = self.say(before.min(after));
            text.push_str(&format!("; {corner} from the inner corner of the wall"));
        }
        if let Some(free) = self.to_lot_line(of, well.map_or(Len::ZERO, |w| w.projection)) {
            let from = if well.is_some() { "the well" } else { "it" };
            text.push_str(&format!("; {} from {from} to the lot line", self.say(free)));
        }
        text + "."
    }

    /// From the outside of an opening, or of its well, to the lot line that it faces.
    fn to_lot_line(&self, of: &OpeningFacts, well: Len) -> Option<Len> {
        let face = of.face(Side::Right);
        let out = -face.dir().left();
        let (side, to_box) = match (out.x.signum(), out.y.signum()) {
            (-1, 0) => (0, face.a.x - self.house.min.x),
            (1, 0) => (1, self.house.max.x - face.a.x),
            (0, 1) => (2, self.house.max.y - face.a.y),
            (0, -1) => (3, face.a.y - self.house.min.y),
            _ => return None,
        };
        Some(self.stated[side]? + Len::from_units(to_box) - well)
    }
}
