//! `ways`: how wide the way to each service point and room is, and where it pinches (docs/ways-json.md).

use std::io::{self, Write};

use measure::{Len, System};
use serde::Serialize;
use space::Facts;
use space::ways::{Hindrance, Walked, WayIn, Ways};

use super::args::WaysArgs;
use super::exit;
use crate::way_words;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report {
    schema: u32,
    title: String,
    arrivals: Vec<Arrival>,
    ways: Vec<Entry>,
    caution: &'static str,
}

#[derive(Serialize)]
struct Arrival {
    element: String,
    at: [f64; 2],
}

#[derive(Serialize)]
struct Entry {
    target: String,
    element: Option<String>,
    at: [f64; 2],
    reached: bool,
    /// In inches; absent where nothing limits it.
    width: Option<f64>,
    width_text: String,
    hindrance: &'static str,
    hindrance_text: String,
    /// The ends of the gap in inches.
    pinch: Option<[[f64; 2]; 2]>,
    between: Vec<String>,
    opening: Option<String>,
    arrival: Option<String>,
    walk: Option<WalkEntry>,
}

#[derive(Serialize)]
struct WalkEntry {
    text: String,
    /// In inches.
    length: f64,
    width: f64,
    lowest: f64,
    under: Option<String>,
    doors: Vec<Door>,
    line: Vec<[f64; 2]>,
}

#[derive(Serialize)]
struct Door {
    element: String,
    clear_width: f64,
    clear_height: f64,
}

pub fn run(args: &WaysArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let facts = space::derive(&plan);
    let ways = space::ways::ways(&facts);
    let system = if args.metric { System::Metric } else { System::Imperial };
    let report = report(&facts, &ways, system);
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
        return Ok(exit::OK);
    }
    write_text(&report, out)?;
    Ok(exit::OK)
}

fn inches(p: geometry::Pt) -> [f64; 2] {
    [p.x, p.y].map(|c| Len::from_units(c).to_inches())
}

fn report(facts: &Facts, ways: &Ways, system: System) -> Report {
    let plan = &facts.plan;
    let name = |id: plan::ElementId| plan.get(id).map_or_else(String::new, |e| e.name());
    let arrivals = ways.arrivals.iter();
    let arrivals = arrivals.map(|a| Arrival { element: name(a.element), at: inches(a.at) });
    let mut sorted: Vec<&WayIn> = ways.ways.iter().collect();
    sorted.sort_by_key(|way| way.width);
    let entry = |way: &&WayIn| {
        let gap = way.gap();
        Entry {
            target: way_words::target(facts, way.target),
            element: match way.target {
                space::ways::Target::Service(id) => Some(name(id)),
                space::ways::Target::Room(index) => facts.room(index).tag.map(name),
            },
            at: inches(way.place),
            reached: way.reached(),
            width: (way.hindrance != Hindrance::Open).then(|| way.width.to_inches()),
            width_text: way_words::width(way, system),
            hindrance: word(&way.hindrance),
            hindrance_text: way_words::hindrance(plan, way),
            pinch: gap.map(|gap| [inches(gap.from), inches(gap.to)]),
            between: gap.map_or_else(Vec::new, |gap| gap.between.map(name).to_vec()),
            opening: gap.and_then(|gap| gap.opening).map(name),
            arrival: way.arrival.map(|i| name(ways.arrivals[i].element)),
            walk: ways.walk(facts, way).map(|walked| walk_entry(facts, &walked, system)),
        }
    };
    Report {
        schema: SCHEMA,
        title: plan.site.title.clone(),
        arrivals: arrivals.collect(),
        ways: sorted.iter().map(entry).collect(),
        caution: super::CAUTION,
    }
}

fn walk_entry(facts: &Facts, walked: &Walked, system: System) -> WalkEntry {
    let name = |id: plan::ElementId| facts.plan.get(id).map_or_else(String::new, |e| e.name());
    let doors = walked.doors.iter().filter_map(|id| facts.opening(*id));
    WalkEntry {
        text: way_words::walk(&facts.plan, walked, system),
        length: walked.length.to_inches(),
        width: walked.width.to_inches(),
        lowest: walked.lowest.to_inches(),
        under: walked.under.map(name),
        doors: doors
            .map(|o| Door {
                element: name(o.id),
                clear_width: o.clear_width.to_inches(),
                clear_height: o.clear_height.to_inches(),
            })
            .collect(),
        line: walked.line.iter().map(|p| inches(*p)).collect(),
    }
}

fn word(hindrance: &Hindrance) -> &'static str {
    match hindrance {
        Hindrance::Open => "open",
        Hindrance::Pinch(_) => "pinch",
        Hindrance::Standing(_) => "standing",
        Hindrance::Walled(_) => "walled",
        Hindrance::Buried(_) => "buried",
        Hindrance::NoArrival => "no arrival",
    }
}

fn write_text(report: &Report, out: &mut dyn Write) -> io::Result<()> {
    let title = if report.title.is_empty() { "Plan" } else { &report.title };
    writeln!(out, "{title}: ways in, the narrowest first")?;
    let arrivals: Vec<&str> = report.arrivals.iter().map(|a| a.element.as_str()).collect();
    match arrivals.as_slice() {
        [] => writeln!(out, "No stair, no outside door, no stated arrival.")?,
        all => writeln!(out, "People come in at {}.", all.join(", "))?,
    }
    let longest = |text: fn(&Entry) -> &str| {
        report.ways.iter().map(|e| text(e).chars().count()).max().unwrap_or(0)
    };
    let (targets, widths) = (longest(|e| &e.target), longest(|e| &e.width_text));
    for entry in &report.ways {
        let Entry { target, width_text, hindrance_text, .. } = entry;
        write!(out, "  {target:targets$}  {width_text:>widths$}  {hindrance_text}")?;
        match &entry.walk {
            Some(walk) => writeln!(out, "; {}", walk.text)?,
            None => writeln!(out)?,
        }
    }
    writeln!(out, "\n{}", report.caution)
}
