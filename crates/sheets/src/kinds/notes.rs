//! Notes: the code, what the plan rests on, findings that are set aside, questions to the official.

use measure::Precision;
use plan::House;
use rules::{Figure, Finding, Severity};

use super::{Context, Kind, Made};
use crate::flow::{self, Piece};

pub(crate) const KIND: Kind =
    Kind { slug: "notes", title: "Code notes and questions", discipline: "G", first: 101, make };

/// Ceilings, by whether the house stands already.
const CEILINGS: [&str; 2] = ["ceiling-habitable", "ceiling-wet"];
const CEILINGS_EXISTING: [&str; 2] = ["ceiling-existing-habitable", "ceiling-existing-wet"];

/// What else a drawing of a basement room is read against, in the order of an inspection.
const LIMITS: &[&str] = &[
    "projection",
    "escape-area",
    "escape-width",
    "escape-height",
    "escape-sill",
    "well-area",
    "well-projection",
    "room-area",
    "room-dimension",
    "hall-width",
    "stair-width",
    "stair-riser",
    "stair-tread",
    "stair-headroom",
    "panel-depth",
    "panel-width",
    "co-alarm",
    "bedroom-alarms",
    "receptacle-reach",
];

fn make(context: &Context<'_>) -> Made {
    let mut pieces = Vec::new();
    code(context, &mut pieces);
    let findings = context.source.findings;
    let findings = || findings.iter().map(|f| &**f);
    let aside: Vec<&Finding> = findings().filter(|f| f.set_aside.is_some()).collect();
    list(&mut pieces, "Set aside, with the reason", &aside, |f| {
        format!("{} Reason: {}", about(context, f), f.set_aside.as_deref().unwrap_or_default())
    });
    let open = |severity| {
        findings()
            .filter(move |f| f.severity == severity && f.set_aside.is_none())
            .collect::<Vec<_>>()
    };
    list(
        &mut pieces,
        "Known departures, not settled in this drawing",
        &open(Severity::Correction),
        |f| about(context, f),
    );
    list(&mut pieces, "Questions to the official", &open(Severity::Verify), |f| {
        let assumed = match f.assumed.is_empty() {
            true => String::new(),
            false => format!(" Assumed: {}.", f.assumed.join(", ")),
        };
        format!("{}{assumed} Is it accepted so?", about(context, f))
    });
    cautions(&mut pieces);
    let columns = match context.area.width() {
        w if w > 1_300.0 => 4,
        w if w > 900.0 => 3,
        _ => 2,
    };
    let pages = flow::pages(&pieces, context.area, columns);
    Made::Drawn(pages.into_iter().map(|marks| (marks, None)).collect())
}

fn code(context: &Context<'_>, pieces: &mut Vec<Piece>) {
    let (book, system) = (context.source.book, context.system);
    pieces.push(Piece::Head("Code".to_owned()));
    pieces.push(Piece::Text(format!("{}.", context.source.code())));
    for own in &context.source.plan().site.amendments {
        let what = book.entry(&own.limit).map_or(own.limit.as_str(), |(entry, _)| &entry.what);
        let text = format!("Amended for this plan: {what}: {}. Reason: {}", own.figure, own.reason);
        pieces.push(Piece::Point(text));
    }
    let ceilings = match context.source.plan().site.house {
        House::New => CEILINGS,
        House::Existing => CEILINGS_EXISTING,
    };
    for slug in ceilings.iter().chain(LIMITS) {
        let Some((entry, clause)) = book.entry(slug) else { continue };
        let figure = match clause.figure {
            Figure::None => String::new(),
            Figure::Len(len) => format!(": {}", system.inches(len, Precision::Tape)),
            Figure::Area(area) => format!(": {}", system.area(area)),
            Figure::Count(n) => format!(": {n}"),
        };
        let mark = match clause.confidence.mark() {
            "" => String::new(),
            mark => format!(" ({mark})"),
        };
        pieces.push(Piece::Point(format!("{}{figure}. {}{mark}", entry.what, clause.text)));
    }
    pieces.push(Piece::Gap);
}

fn list(
    pieces: &mut Vec<Piece>,
    head: &str,
    findings: &[&Finding],
    say: impl Fn(&Finding) -> String,
) {
    if findings.is_empty() {
        return;
    }
    pieces.push(Piece::Head(head.to_owned()));
    pieces.extend(findings.iter().map(|f| Piece::Point(say(f))));
    pieces.push(Piece::Gap);
}

/// The finding with its figures and its section.
fn about(context: &Context<'_>, f: &Finding) -> String {
    let names: Vec<String> = f
        .elements
        .iter()
        .filter_map(|id| context.source.plan().get(*id))
        .map(plan::Element::name)
        .take(6)
        .collect();
    let names = if names.is_empty() { String::new() } else { format!(" [{}]", names.join(", ")) };
    let figures = match (f.measured_text(context.system), f.required_text(context.system)) {
        (Some(m), Some(r)) => format!(": {m}, required {r}"),
        (Some(m), None) => format!(": {m}"),
        _ => String::new(),
    };
    format!("{}{names}{figures}. {}.", f.title.say(context.system), f.citation.marked())
}

fn cautions(pieces: &mut Vec<Piece>) {
    pieces.push(Piece::Head("Cautions".to_owned()));
    for text in [
        "Figures of the model code differ by place and edition; the building department decides.",
        "Structure, gas, service equipment, radon systems, asbestos and lead are work for licensed people.",
        "Call the utilities' locating service before any digging for a window well.",
        "In a house built before 1978 assume lead paint; in an old one suspect asbestos in tiles, pipe wrap and ducts: have both tested before anything is torn out.",
        "Written dimensions count. Do not measure the drawing; measure the house before cutting or ordering.",
    ] {
        pieces.push(Piece::Point(text.to_owned()));
    }
}
