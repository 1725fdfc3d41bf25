//! `room-to-move`: how far an element may go before something breaks (docs/room-to-move-json.md).

use std::io::{self, Write};

use measure::{Len, System};
use plan::{ElementId, Plan};
use rules::Book;
use rules::room_to_move::{Break, Course, Fault, RoomToMove, Scan};
use serde::Serialize;

use super::args::RoomToMoveArgs;
use super::exit;
use crate::move_words;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report {
    schema: u32,
    title: String,
    element: String,
    courses: Vec<CourseEntry>,
    caution: &'static str,
}

#[derive(Serialize)]
struct CourseEntry {
    direction_text: &'static str,
    /// The unit vector of higher offsets.
    direction: [f64; 2],
    /// In inches, as all offsets.
    looked: [f64; 2],
    safe: [f64; 2],
    low: Option<BreakEntry>,
    high: Option<BreakEntry>,
    all: Vec<[f64; 2]>,
    rules: Vec<RuleEntry>,
    #[serde(skip)]
    text: Vec<String>,
}

#[derive(Serialize)]
struct BreakEntry {
    at: f64,
    text: String,
    rule: &'static str,
    elements: Vec<String>,
}

#[derive(Serialize)]
struct RuleEntry {
    rule: &'static str,
    severity: &'static str,
    title: String,
    elements: Vec<String>,
    now: bool,
    holds: Vec<[f64; 2]>,
}

pub fn run(args: &RoomToMoveArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let Some(id) = named(&plan, &args.element) else {
        let file = args.plan.display();
        writeln!(
            err,
            "{file}: there is no element {}. Names stand in the plan's labels and in `cellarwright check`, such as W14.",
            args.element
        )?;
        return Ok(exit::USAGE);
    };
    let courses = Course::of(&plan, id);
    if courses.is_empty() {
        writeln!(
            err,
            "{} does not move by itself: give a standing wall, opening or thing.",
            args.element
        )?;
        return Ok(exit::USAGE);
    }
    let book = Book::of(&plan.site);
    let system = if args.metric { System::Metric } else { System::Imperial };
    let found = courses.into_iter().map(|course| Scan::new(&plan, &book, course).run());
    let report = Report {
        schema: SCHEMA,
        title: plan.site.title.clone(),
        element: args.element.clone(),
        courses: found.map(|found| course_entry(&plan, &found, system)).collect(),
        caution: super::CAUTION,
    };
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
    } else {
        write_text(&plan, id, &report, out)?;
    }
    Ok(exit::OK)
}

fn named(plan: &Plan, name: &str) -> Option<ElementId> {
    plan.elements().iter().find(|e| e.name().eq_ignore_ascii_case(name)).map(|e| e.id)
}

fn pair((from, to): (Len, Len)) -> [f64; 2] {
    [from.to_inches(), to.to_inches()]
}

fn names(plan: &Plan, fault: &Fault) -> Vec<String> {
    fault.elements.iter().filter_map(|id| plan.get(*id)).map(plan::Element::name).collect()
}

fn course_entry(plan: &Plan, found: &RoomToMove, system: System) -> CourseEntry {
    let facing = found.course.facing(plan).unwrap_or_default();
    let vector = facing.step(Len::feet_inches(100, 0));
    let length = vector.norm().max(1.0);
    let [low, high] = found.breaks();
    let entry = |b: Break<'_>| BreakEntry {
        at: b.at.to_inches(),
        text: move_words::side(plan, found, b.at <= Len::ZERO && Some(b) == low, system),
        rule: b.fault.rule,
        elements: names(plan, b.fault),
    };
    CourseEntry {
        direction_text: move_words::direction(plan, found.course, true),
        direction: [vector.x as f64 / length, vector.y as f64 / length],
        looked: pair(found.looked),
        safe: pair(found.safe()),
        low: low.map(entry),
        high: high.map(entry),
        all: found.all().into_iter().map(pair).collect(),
        rules: found
            .holds
            .iter()
            .map(|h| RuleEntry {
                rule: h.fault.rule,
                severity: h.fault.severity.word(),
                title: h.fault.title.clone(),
                elements: names(plan, &h.fault),
                now: h.now,
                holds: h.free.iter().copied().map(pair).collect(),
            })
            .collect(),
        text: [true, false].map(|low| move_words::side(plan, found, low, system)).to_vec(),
    }
}

fn write_text(plan: &Plan, id: ElementId, report: &Report, out: &mut dyn Write) -> io::Result<()> {
    let word = plan.get(id).map_or("element", |e| e.body.word());
    writeln!(out, "Room to move of {word} {}", report.element)?;
    for line in report.courses.iter().flat_map(|course| &course.text) {
        writeln!(out, "  {line}")?;
    }
    writeln!(out, "\n{}", report.caution)
}
