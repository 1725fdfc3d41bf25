//! `explain`: a rule's page, or the list of all rules.

use std::io::{self, Write};

use measure::System;
use rules::{RULES, Rule};

use super::args::ExplainArgs;
use super::exit;

pub fn run(args: &ExplainArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(slug) = &args.rule else {
        list(out)?;
        return Ok(exit::OK);
    };
    match rules::rule(slug) {
        Some(rule) => {
            writeln!(out, "{}", rules::explain(rule, System::Imperial).trim_end())?;
            Ok(exit::OK)
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
