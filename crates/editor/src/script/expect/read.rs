//! Reading an expectation.

use measure::System;

use super::{Expect, Wanted};
use crate::entry::read_signed;
use crate::script::names::{DIMENSIONS, TOOLS, look_up};
use crate::script::parse::{pair, split_word};

/// Every expectation with its form, as help and errors list them.
pub const FORMS: [&str; 21] = [
    "elements N [WORD]",
    "finding RULE [correction|verify|advice] [on ELEMENT] [measured FIGURE] [required FIGURE]",
    "no finding [RULE] [on ELEMENT]",
    "no corrections",
    "length ELEMENT LENGTH",
    "status TEXT",
    "caught WORD | nothing",
    "rooms N",
    "room NAME area FIGURE",
    "room NAME use WORD",
    "undo \"LABEL\" | nothing",
    "redo \"LABEL\" | nothing",
    "value ELEMENT FIELD VALUE",
    "site KEY VALUE",
    "refused TEXT | nothing",
    "selection NAME… | nothing",
    "dimension NAME LENGTH | nothing",
    "entry TEXT | nothing",
    "tool NAME",
    "plan as WORD",
    "ready",
];

/// Reads what stands after `expect`.
pub(in crate::script) fn parse(rest: &str, system: System) -> Result<Expect, String> {
    let (word, rest) = split_word(rest);
    Ok(match word {
        "elements" => {
            let (count, word) = split_word(rest);
            let word = (!word.is_empty()).then(|| word.to_owned());
            Expect::Elements { count: number(count)?, word }
        }
        "finding" => Expect::Finding(wanted(rest)?),
        "no" => match split_word(rest) {
            ("finding", rest) => Expect::NoFinding(wanted(rest)?),
            ("corrections", "") => Expect::NoFinding(Wanted {
                severity: Some("correction".to_owned()),
                ..Wanted::default()
            }),
            _ => return Err(unknown(rest)),
        },
        "length" => {
            let (name, len) = pair(word, rest)?;
            Expect::Length { name, len: read_signed(&len, system)? }
        }
        "status" => Expect::Status(rest.to_owned()),
        "caught" => Expect::Caught(or_nothing(rest)),
        "rooms" => Expect::Rooms(number(rest)?),
        "room" => room(rest)?,
        "undo" => Expect::Undo(or_nothing(rest)),
        "redo" => Expect::Redo(or_nothing(rest)),
        "value" => {
            let (name, rest) = pair(word, rest)?;
            let (field, value) = pair(word, &rest)?;
            Expect::Value { name, field, value }
        }
        "site" => {
            let (key, value) = pair(word, rest)?;
            Expect::Site { key, value }
        }
        "refused" => Expect::Refused(or_nothing(rest)),
        "selection" => Expect::Selection(match rest {
            "nothing" => Vec::new(),
            names => names.split_whitespace().map(str::to_owned).collect(),
        }),
        "dimension" => {
            let (name, value) = pair(word, rest)?;
            let id = look_up("dimension", &name, &DIMENSIONS)?;
            let value = match value.as_str() {
                "nothing" => None,
                value => Some(read_signed(value, system)?),
            };
            Expect::Dimension { id, value }
        }
        "entry" => Expect::Entry(or_nothing(rest)),
        "tool" => Expect::Tool(look_up("tool", rest, &TOOLS)?),
        "plan" => match split_word(rest) {
            ("as", mark) if !mark.is_empty() => Expect::Plan { mark: mark.to_owned() },
            _ => return Err("written: expect plan as WORD".to_owned()),
        },
        "ready" if rest.is_empty() => Expect::Ready,
        _ => return Err(unknown(word)),
    })
}

fn unknown(word: &str) -> String {
    format!("there is no expectation {word:?}; known: {}", FORMS.join("; "))
}

fn number(text: &str) -> Result<usize, String> {
    text.parse().map_err(|_| format!("{text:?} is not a whole number"))
}

/// A text, which may stand in double quotes; `None` for `nothing`.
fn or_nothing(text: &str) -> Option<String> {
    if text == "nothing" {
        return None;
    }
    let inner = text.strip_prefix('"').and_then(|t| t.strip_suffix('"'));
    Some(inner.unwrap_or(text).to_owned())
}

/// `NAME area FIGURE` or `NAME use WORD`; the name may have spaces.
fn room(rest: &str) -> Result<Expect, String> {
    if let Some((name, figure)) = rest.split_once(" area ") {
        return Ok(Expect::RoomArea { name: name.to_owned(), figure: figure.trim().to_owned() });
    }
    if let Some((name, word)) = rest.split_once(" use ") {
        return Ok(Expect::RoomUse { name: name.to_owned(), word: word.trim().to_owned() });
    }
    Err("written: expect room NAME area FIGURE, or expect room NAME use WORD".to_owned())
}

/// `[RULE] [SEVERITY] [on ELEMENT] [measured FIGURE] [required FIGURE]`
fn wanted(rest: &str) -> Result<Wanted, String> {
    let (rest, required) = cut(rest, "required");
    let (rest, measured) = cut(rest, "measured");
    let (rest, on) = cut(rest, "on");
    let mut wanted = Wanted { on, measured, required, ..Wanted::default() };
    for word in rest.split_whitespace() {
        match word {
            "correction" | "verify" | "advice" => wanted.severity = Some(word.to_owned()),
            _ if wanted.rule.is_none() => wanted.rule = Some(word.to_owned()),
            _ => return Err(format!("{word:?} is too much; {}", FORMS[1])),
        }
    }
    if let Some(rule) = &wanted.rule
        && !rules::RULES.iter().any(|known| known.slug == rule)
    {
        let known: Vec<&str> = rules::RULES.iter().map(|rule| rule.slug).collect();
        return Err(format!("there is no rule {rule}; known: {}", known.join(", ")));
    }
    Ok(wanted)
}

/// Cuts ` WORD REST` off the end.
fn cut<'t>(text: &'t str, word: &str) -> (&'t str, Option<String>) {
    let key = format!(" {word} ");
    match text.split_once(&key) {
        Some((before, after)) => (before, Some(after.trim().to_owned())),
        None => match text.strip_prefix(&key[1..]) {
            Some(after) => ("", Some(after.trim().to_owned())),
            None => (text, None),
        },
    }
}
