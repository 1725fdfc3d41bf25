//! Sections through every type of new wall, from the slab to the joists.

use drawing::{Marks, P, Slope, Stroke, Tone, hatch};
use measure::{Len, Precision};
use plan::detail::Value;
use plan::element::{Layer, Material};
use plan::{CeilingBuild, ElementId};

use super::{Context, Kind, Made};
use crate::dimension::between;
use crate::fabric::{Frame, JOIST, SLAB, concrete};
use crate::leaders::leaders;
use crate::paper::Area;
use crate::plan_view::caption;
use crate::scale::{Of, Scale};
use crate::wall_types::{self, WallType, r_value};

pub(crate) const KIND: Kind =
    Kind { slug: "wall-sections", title: "Wall sections", discipline: "A", first: 301, make };

/// Width that a section takes with its words, by the sheet's.
fn cell_width(area: Area) -> f32 {
    (area.width() / 4.0).clamp(236.0, 420.0)
}

const PLATE: Len = Len::sixty_fourths(96);

fn make(context: &Context<'_>) -> Made {
    let types = wall_types::of(context.source.facts);
    if types.is_empty() {
        return Made::Nothing("no new wall is drawn".to_owned());
    }
    let area = context.area;
    let height = context.source.plan().site.joist_underside + SLAB + JOIST + Len::inches(6);
    let cell = cell_width(area);
    let room = (cell * 0.42, area.height() - 60.0);
    let scale = Scale::of(Of::Section, context.system, (Len::inches(20), height), room);
    let columns = ((area.width() / cell).floor() as usize).max(1);
    let mut pages = Vec::new();
    for group in types.chunks(columns) {
        let mut marks = Marks::new();
        for (i, t) in group.iter().enumerate() {
            let left = area.left + cell * i as f32;
            let cell = Area { left, right: left + cell, ..area };
            marks.group(format!("section {}", t.name), |m| section(context, t, scale, cell, m));
        }
        pages.push((marks, Some(scale.word)));
    }
    Made::Drawn(pages)
}

fn section(context: &Context<'_>, t: &WallType, scale: Scale, cell: Area, m: &mut Marks) {
    let site = &context.source.plan().site;
    let (joists, zero) = (site.joist_underside, Len::ZERO);
    let high = joists + SLAB + JOIST + Len::inches(6);
    let bottom = (cell.top + 14.0 + scale.points(high)).min(cell.bottom - 40.0);
    let origin = P::new(cell.left + 22.0, bottom - scale.points(SLAB) - 6.0);
    let f = Frame { origin, scale, start: Len::ZERO };
    let thin = Stroke::solid(Tone::Ink, 0.5);
    let start = concrete_behind(context, t);
    let wide = start + t.thickness();
    let reach = wide + Len::inches(12);
    let mut words: Vec<(P, String)> = Vec::new();

    // The slab under all, the concrete wall behind furring.
    concrete(f.ring((zero - Len::inches(2), reach), (zero - SLAB, zero)), f.origin, m);
    words.push((
        f.at(reach - Len::inches(3), zero - Len::inches(2)),
        "concrete slab, existing (thickness not measured)".to_owned(),
    ));
    if t.furring {
        concrete(f.ring((zero, start), (zero, joists)), f.origin, m);
        words.push((
            f.at(start / 2, joists - Len::inches(10)),
            "foundation wall, existing".to_owned(),
        ));
    }
    // Joists above, the finished ceiling and the floor inside.
    let joist = f.ring((zero - Len::inches(2), reach), (joists, joists + JOIST));
    m.outline(joist, thin);
    words.push((
        f.at(reach - Len::inches(3), joists + Len::inches(5)),
        "floor joists, existing (depth not measured)".to_owned(),
    ));
    let ceiling = joists - site.ceiling.drop();
    if site.ceiling.drop() > zero {
        m.outline(
            f.ring((wide, reach), (ceiling, joists.min(ceiling + Len::sixty_fourths(40)))),
            thin,
        );
        let word = match site.ceiling {
            CeilingBuild::Open => String::new(),
            CeilingBuild::Board(t) => {
                format!("{} gypsum board ceiling", context.system.inches(t, Precision::Tape))
            }
            CeilingBuild::LayIn(_) => "lay-in ceiling".to_owned(),
        };
        words.push((f.at(reach - Len::inches(5), ceiling), word));
    }
    if site.floor_build > zero {
        m.outline(f.ring((wide, reach), (zero, site.floor_build)), thin);
        let word = format!(
            "finished floor, {} build-up",
            context.system.inches(site.floor_build, Precision::Tape)
        );
        words.push((f.at(reach - Len::inches(5), site.floor_build), word));
    }
    layers(context, t, &f, start, joists, m, &mut words);
    // The clear height, finished floor to ceiling, beside the section.
    let (low, high) =
        (f.at(reach, site.floor_build).by(12.0, 0.0), f.at(reach, ceiling).by(12.0, 0.0));
    let clear = context.system.len(ceiling - site.floor_build, Precision::Floor);
    between(low, high, &clear, m);
    leaders(
        &mut words,
        f.at(reach, zero).x + 30.0,
        Area { top: cell.top + 8.0, bottom, ..cell },
        m,
    );
    let name = format!("Type {}: {}", t.name, t.what());
    caption(m, &name, Some(scale), P::new(f32::midpoint(cell.left, cell.right), bottom + 14.0));
}

/// How thick the foundation is behind the first wall of a type; zero for a partition.
fn concrete_behind(context: &Context<'_>, t: &WallType) -> Len {
    let walls = &context.source.facts.walls;
    let of = |id: ElementId| walls.iter().find(|w| w.id == id);
    let host = t.walls.first().and_then(|id| of(*id)?.host).and_then(of);
    host.map_or(Len::ZERO, |w| w.thickness)
}

fn layers(
    context: &Context<'_>,
    t: &WallType,
    f: &Frame,
    start: Len,
    joists: Len,
    m: &mut Marks,
    words: &mut Vec<(P, String)>,
) {
    let (mut x, count) = (start, t.layers.len());
    let thin = Stroke::solid(Tone::Ink, 0.5);
    for (i, layer) in t.layers.iter().enumerate() {
        let to = x + layer.thickness;
        let ring = f.ring((x, to), (Len::ZERO, joists));
        // Words point to different heights, so that their leaders don't cross.
        let part = joists * (2 + i as i32) / (count as i32 + 4);
        let at = f.at(x + layer.thickness / 2, part);
        match layer.material {
            Material::Stud => {
                for up in [
                    (Len::ZERO, PLATE),
                    (joists - PLATE * 2, joists - PLATE),
                    (joists - PLATE, joists),
                ] {
                    let plate = f.ring((x, to), up);
                    m.segments(vec![(plate[0], plate[2]), (plate[1], plate[3])], thin);
                    m.outline(plate, thin);
                }
                m.outline(ring, Stroke::solid(Tone::Ink, 0.8));
                words.push((at, stud(context, t, layer)));
                let plate = match t.plate {
                    Some(value) => format!("bottom plate: {}", value.say(context.system)),
                    None => "bottom plate on concrete: preservative-treated".to_owned(),
                };
                words.push((f.at(x + layer.thickness / 2, PLATE / 2), plate));
                words.push((
                    f.at(x + layer.thickness / 2, joists - PLATE),
                    "double top plate: fireblocks the wall at the ceiling".to_owned(),
                ));
            }
            Material::Foam => {
                for slope in [Slope::Rising, Slope::Falling] {
                    m.segments(
                        hatch(&[&ring], slope, 4.0, f.origin),
                        Stroke::solid(Tone::SoftInk, 0.35),
                    );
                }
                m.outline(ring, thin);
                words.push((at, format!("{}, {}", text(context, layer), r_value(t.foam_r))));
            }
            _ => {
                m.outline(ring, thin);
                words.push((at, text(context, layer)));
            }
        }
        x = to;
    }
    if t.furring {
        let blocked = match t.blocked {
            Some(Value::Yes) => "fireblocking: at the top, and along the wall at most every 10 ft",
            _ => "fireblocking at the top and along the wall: to be shown by the builder",
        };
        words.push((f.at(start, joists - Len::inches(4)), blocked.to_owned()));
    }
    if let Some(value) = t.retarder {
        words
            .push((f.at(x, joists / 2), format!("vapour retarder: {}", value.say(context.system))));
    }
}

fn text(context: &Context<'_>, layer: &Layer) -> String {
    format!("{} {}", context.system.inches(layer.thickness, Precision::Tape), layer.material.word())
}

fn stud(context: &Context<'_>, t: &WallType, layer: &Layer) -> String {
    let inches = |len| context.system.inches(len, Precision::Tape);
    let mut text = format!("{} studs at {}", inches(layer.thickness), inches(t.spacing));
    match t.cavity_r {
        Some(Value::Number(0)) => text.push_str(", cavity empty"),
        Some(_) => text.push_str(&format!(", cavity {}", r_value(t.cavity_r))),
        None if t.furring => text.push_str(", cavity R not stated"),
        None => {}
    }
    text
}
