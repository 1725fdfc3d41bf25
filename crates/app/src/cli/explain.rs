//! `explain`: a rule's page, or the list of all rules.

use std::io::{self, Write};
use std::path::Path;

use drawing::Palette;
use measure::System;
use rules::{RULES, Rule};

use super::args::ExplainArgs;
use super::exit;
use crate::examples;

/// Width and height of an example in points.
const FIGURE: (f32, f32) = (560.0, 320.0);

pub fn run(args: &ExplainArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(slug) = &args.rule else {
        list(out)?;
        return Ok(exit::OK);
    };
    match rules::rule(slug) {
        Some(rule) => {
            writeln!(out, "{}", rules::explain(rule, System::Imperial).trim_end())?;
            match &args.figure {
                None => Ok(exit::OK),
                Some(path) => write_figure(rule, path, err),
            }
        }
        None => {
            write!(err, "There is no rule {slug:?}.")?;
            match nearest(slug) {
                Some(rule) => writeln!(err, " Did you mean {}?", rule.slug)?,
                None => writeln!(err, " `cellarwright explain --list` lists them all.")?,
            }
            Ok(exit::USAGE)
        }
    }
}

/// Draws the example of a rule into an SVG file.
fn write_figure(rule: &Rule, path: &Path, err: &mut dyn Write) -> io::Result<u8> {
    let Some((facts, finding)) = examples::example(rule) else {
        writeln!(err, "There is no example of {}.", rule.slug)?;
        return Ok(exit::USAGE);
    };
    let marks = depict::figure(facts, finding, FIGURE, System::Imperial).marks;
    let svg = drawing::svg::write(&marks, FIGURE, Palette::Light);
    match std::fs::write(path, svg) {
        Ok(()) => Ok(exit::OK),
        Err(e) => {
            writeln!(err, "The figure can't be written to {}: {e}.", path.display())?;
            Ok(exit::FILE)
        }
    }
}

fn list(out: &mut dyn Write) -> io::Result<()> {
    let width = RULES.iter().map(|r| r.slug.len()).max().unwrap_or(0);
    let mut last = None;
    for rule in RULES {
        if last.replace(rule.group) != Some(rule.group) {
            writeln!(out, "{}", rule.group.word())?;
        }
        writeln!(out, "  {:width$}  {}", rule.slug, rule.title)?;
    }
    Ok(())
}

/// The rule whose name shares most parts with what was typed.
fn nearest(slug: &str) -> Option<&'static Rule> {
    let parts: Vec<&str> = slug.split(['-', '_', ' ']).collect();
    RULES
        .iter()
        .map(|r| (r.slug.split('-').filter(|p| parts.contains(p)).count(), r))
        .filter(|(shared, _)| *shared > 0)
        .max_by_key(|(shared, r)| (*shared, std::cmp::Reverse(r.slug)))
        .map(|(_, r)| r)
}
