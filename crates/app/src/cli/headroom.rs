//! `headroom`: the clear heights of each room and the floor at or above those that the code names
//! (docs/headroom-json.md).

use std::io::{self, Write};

use measure::{Area, Len, System};
use serde::Serialize;
use space::Facts;

use super::args::HeadroomArgs;
use super::exit;
use crate::height_words;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report {
    schema: u32,
    title: String,
    rooms: Vec<Room>,
    caution: &'static str,
}

#[derive(Serialize)]
struct Room {
    name: String,
    tag: Option<String>,
    /// In square feet.
    area: f64,
    area_text: String,
    lowest_text: String,
    lowest_at: Option<[f64; 2]>,
    heights: Vec<Height>,
    named: Vec<Named>,
}

#[derive(Serialize)]
struct Height {
    /// In inches.
    clear: f64,
    area: f64,
    under: Vec<String>,
}

#[derive(Serialize)]
struct Named {
    height: f64,
    height_text: String,
    of: &'static str,
    source: String,
    area: f64,
    area_text: String,
    percent: f64,
}

pub fn run(args: &HeadroomArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let facts = space::derive(&plan);
    let system = if args.metric { System::Metric } else { System::Imperial };
    let report = report(&facts, system);
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
    } else {
        write_text(&report, out)?;
    }
    Ok(exit::OK)
}

fn square_feet(area: Area) -> f64 {
    let foot = Area::square_feet(1).square_units() as f64;
    area.square_units() as f64 / foot
}

fn report(facts: &Facts, system: System) -> Report {
    let plan = &facts.plan;
    let name = |id: plan::ElementId| plan.get(id).map_or_else(String::new, |e| e.name());
    let rooms = height_words::of(facts);
    let one = |room: &depict::RoomHeights| {
        let facts_of = facts.room(room.room);
        let middle = room.regions.first().and_then(space::HeightRegion::middle);
        Room {
            name: facts_of.name.clone(),
            tag: facts_of.tag.map(name),
            area: square_feet(facts_of.area),
            area_text: system.area(facts_of.area),
            lowest_text: height_words::lowest(plan, room, system),
            lowest_at: middle.map(|p| [p.x, p.y].map(|c| Len::from_units(c).to_inches())),
            heights: room
                .regions
                .iter()
                .map(|region| Height {
                    clear: region.clear.to_inches(),
                    area: square_feet(region.area()),
                    under: region.under.iter().copied().map(name).collect(),
                })
                .collect(),
            named: room
                .named
                .iter()
                .map(|named| {
                    let (area, tenths) = height_words::share(facts, room, named.height);
                    Named {
                        height: named.height.to_inches(),
                        height_text: system.inches(named.height, measure::Precision::Tape),
                        of: named.of,
                        source: named.citation.marked(),
                        area: square_feet(area),
                        area_text: system.area(area),
                        percent: tenths as f64 / 10.0,
                    }
                })
                .collect(),
        }
    };
    Report {
        schema: SCHEMA,
        title: plan.site.title.clone(),
        rooms: rooms.iter().map(one).collect(),
        caution: super::CAUTION,
    }
}

fn write_text(report: &Report, out: &mut dyn Write) -> io::Result<()> {
    let title = if report.title.is_empty() { "Plan" } else { &report.title };
    writeln!(out, "{title}: headroom")?;
    if report.rooms.is_empty() {
        writeln!(out, "  No room is closed off yet.")?;
    }
    for room in &report.rooms {
        writeln!(out, "  {}, {}: lowest {}", room.name, room.area_text, room.lowest_text)?;
        if room.named.is_empty() {
            writeln!(out, "    no height is asked for")?;
        }
        for named in &room.named {
            let Named { height_text, of, source, area_text, percent, .. } = named;
            writeln!(
                out,
                "    {percent} % ({area_text}) at {height_text} or more, {of}; {source}"
            )?;
        }
    }
    writeln!(out, "\n{}", report.caution)
}
