//! `sheets`: the permit set as files, and what a permit desk will find (docs/sheets-json.md).

use std::io::{self, Write};
use std::path::PathBuf;

use measure::System;
use plan::Plan;
use rules::Book;
use serde::Serialize;
use sheets::{Answer, Join, Options, Set, Source};

use super::args::SheetsArgs;
use super::exit;
use crate::export;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report {
    schema: u32,
    title: String,
    code: String,
    paper: &'static str,
    sheets: Vec<Sheet>,
    crowded: bool,
    left_out: Vec<LeftOut>,
    files: Vec<String>,
    list: String,
    demands: Vec<Demand>,
    gaps: usize,
    caution: &'static str,
}

#[derive(Serialize)]
struct Sheet {
    number: String,
    kind: &'static str,
    title: String,
    scale: Option<&'static str>,
}

#[derive(Serialize)]
struct LeftOut {
    title: &'static str,
    why: String,
}

#[derive(Serialize)]
struct Demand {
    id: &'static str,
    group: &'static str,
    words: &'static str,
    /// `shown`, `held`, `open`, `missing`, `nothing such`, `elsewhere` or `reminder`.
    answer: &'static str,
    text: String,
    sheet: Option<String>,
    /// How many of the lists ask for it.
    asked_by: usize,
}

pub fn run(args: &SheetsArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let book = Book::of(&plan.site);
    let facts = space::derive(&plan);
    let findings = rules::check(&facts, &book);
    let source = Source { facts: &facts, findings: &findings, book: &book };
    let system = if args.metric { System::Metric } else { System::Imperial };
    let options = Options {
        paper: args.paper,
        system,
        list: args.list.clone(),
        join: Join { plans: args.both_plans, trades: args.together },
        one_sheet: args.one_sheet,
    };
    let set = sheets::set(&source, &options);
    let stem = args.plan.file_stem().map_or("plan".into(), |s| s.to_string_lossy().into_owned());
    let written = export::write(&set, &plan.site, (&args.out, &stem), &args.format, &mut || ());
    let files = match written {
        Ok(files) => files,
        Err(e) => {
            writeln!(err, "{e}")?;
            return Ok(exit::FILE);
        }
    };
    let report = report(args, &plan, &book, &set, &files);
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
    } else {
        write_text(&report, out)?;
    }
    Ok(exit::OK)
}

fn report(args: &SheetsArgs, plan: &Plan, book: &Book, set: &Set, files: &[PathBuf]) -> Report {
    let sheet = |s: &sheets::Sheet| Sheet {
        number: s.number.clone(),
        kind: s.kind,
        title: s.title.clone(),
        scale: s.scale,
    };
    let demands = set.desk.answers.iter().map(|a| Demand {
        id: a.id,
        group: a.group,
        words: a.words,
        answer: word(&a.answer),
        text: a.answer.say(),
        sheet: match &a.answer {
            Answer::Shown(sheet) => Some(sheet.clone()),
            _ => None,
        },
        asked_by: a.asked_by,
    });
    Report {
        schema: SCHEMA,
        title: plan.site.title.clone(),
        code: format!("{}, {}", book.edition().year(), book.place()),
        paper: args.paper.word(),
        sheets: set.sheets.iter().map(sheet).collect(),
        crowded: set.crowded,
        left_out: set
            .left_out
            .iter()
            .map(|l| LeftOut { title: l.title, why: l.why.clone() })
            .collect(),
        files: files.iter().map(|f| f.display().to_string()).collect(),
        list: set.desk.department.map_or("general".to_owned(), |d| d.name.clone()),
        demands: demands.collect(),
        gaps: set.desk.gaps(),
        caution: super::CAUTION,
    }
}

fn word(answer: &Answer) -> &'static str {
    match answer {
        Answer::Shown(_) => "shown",
        Answer::Held => "held",
        Answer::Open { .. } => "open",
        Answer::Missing { .. } => "missing",
        Answer::NothingSuch(_) => "nothing such",
        Answer::Elsewhere(_) => "elsewhere",
        Answer::Reminder => "reminder",
    }
}

fn write_text(report: &Report, out: &mut dyn Write) -> io::Result<()> {
    writeln!(out, "{}, {}", report.title, report.code)?;
    for sheet in &report.sheets {
        let scale = sheet.scale.map_or(String::new(), |s| format!(", {s}"));
        writeln!(out, "{:<6} {}{scale}", sheet.number, sheet.title)?;
    }
    if report.crowded {
        writeln!(out, "       {}", sheets::CROWDED)?;
    }
    for left in &report.left_out {
        writeln!(out, "       no sheet \"{}\": {}", left.title, left.why)?;
    }
    writeln!(out, "\nWritten:")?;
    for file in &report.files {
        writeln!(out, "  {file}")?;
    }
    writeln!(out, "\nWhat a permit desk asks ({} list):", report.list)?;
    let mut group = "";
    for demand in report.demands.iter().filter(|d| d.answer != "reminder") {
        if demand.group != group {
            group = demand.group;
            writeln!(out, "{group}")?;
        }
        writeln!(out, "  {}: {}", demand.words, demand.text)?;
    }
    let reminders: Vec<&str> =
        report.demands.iter().filter(|d| d.answer == "reminder").map(|d| d.words).collect();
    if !reminders.is_empty() {
        writeln!(out, "reminders")?;
        for words in reminders {
            writeln!(out, "  {words}")?;
        }
    }
    writeln!(
        out,
        "\n{} of {} demands have something left to do.",
        report.gaps,
        report.demands.len()
    )?;
    writeln!(out, "\n{}", report.caution)
}
