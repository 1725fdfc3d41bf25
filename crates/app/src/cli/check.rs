//! `check`: the findings of a plan.

use std::io::{self, Write};
use std::sync::Arc;

use measure::System;
use plan::Site;
use rules::Book;

use super::args::CheckArgs;
use super::{exit, report};
use crate::store;

pub fn run(args: &CheckArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let site = Site {
        edition: args.edition.unwrap_or(plan.site.edition),
        place: args.place.clone().unwrap_or_else(|| plan.site.place.clone()),
        ..plan.site.clone()
    };
    for fault in rules::faults(&site) {
        writeln!(err, "Amendment of the plan not applied, the model code holds: {fault}.")?;
    }
    let mut book = Book::of(&site);
    if let Some(file) = &args.amendments {
        match store::amendments(file) {
            Ok(layer) => book = book.amended(Arc::new(layer)),
            Err(why) => {
                writeln!(err, "Amendments not read: {why}")?;
                return Ok(exit::FILE);
            }
        }
    }
    let facts = space::derive(&plan);
    let findings = rules::check(&facts, &book);
    let system = if args.metric { System::Metric } else { System::Imperial };
    let report = report::Report::new(&facts, &book, &findings, system);
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
    } else {
        report.write_text(out)?;
    }
    Ok(if report.corrections() > 0 { exit::CORRECTIONS } else { exit::OK })
}
