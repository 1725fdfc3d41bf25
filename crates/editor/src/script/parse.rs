//! Reading one line of a script.

use geometry::Pt;
use measure::{Len, System};

use super::command::{Chosen, Command, FORMS, Times};
use super::expect::{self, Expect};
use super::names::{DIMENSIONS, KEYS, TOOLS, look_up};
use crate::Mods;
use crate::entry::{read_point, read_signed};

/// Reads a line; `None` for an empty one or a comment. Bare numbers mean the unit of `system`.
pub(super) fn line(text: &str, system: System) -> Result<Option<Command>, String> {
    let text = without_comment(text).trim();
    if text.is_empty() {
        return Ok(None);
    }
    let (word, rest) = split_word(text);
    Ok(Some(command(word, rest, system)?))
}

/// The line without a comment: a `#` at its start or after a space.
pub(super) fn without_comment(text: &str) -> &str {
    let start = text
        .char_indices()
        .find(|(i, c)| *c == '#' && text[..*i].chars().next_back().is_none_or(char::is_whitespace));
    start.map_or(text, |(i, _)| &text[..i])
}

/// The first word and what comes after it.
pub(super) fn split_word(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    match text.split_once(char::is_whitespace) {
        Some((word, rest)) => (word, rest.trim()),
        None => (text, ""),
    }
}

fn command(word: &str, rest: &str, system: System) -> Result<Command, String> {
    let pointed = || pointed(rest, system);
    Ok(match word {
        "tool" => Command::Tool(look_up("tool", rest, &TOOLS)?),
        "option" => {
            let (key, value) = pair(word, rest)?;
            Command::Option { key, value }
        }
        "press" => pointed().map(|(at, mods)| Command::Press(at, mods))?,
        "move" => pointed().map(|(at, mods)| Command::Move(at, mods))?,
        "release" => {
            let (place, mods) = mods(rest);
            let at = if place.is_empty() { None } else { Some(read_point(place, system)?) };
            Command::Release(at, mods)
        }
        "click" => pointed().map(|(at, mods)| Command::Click(at, mods))?,
        "doubleclick" => pointed().map(|(at, mods)| Command::DoubleClick(at, mods))?,
        "drag" => {
            let (places, mods) = mods(rest);
            let (from, to) = places
                .split_once(" to ")
                .ok_or_else(|| format!("a drag is written: drag X,Y to X,Y; {rest:?} is not"))?;
            Command::Drag(read_point(from, system)?, read_point(to, system)?, mods)
        }
        "type" => Command::Type(some(word, rest)?),
        "enter" => Command::Enter(some(word, rest)?),
        "key" => {
            let (key, mods) = mods(rest);
            Command::Key(look_up("key", key, &KEYS)?, mods)
        }
        "select" => Command::Select(chosen(rest)?),
        "dimension" => {
            let (name, value) = pair(word, rest)?;
            Command::Dimension(
                look_up("dimension", &name, &DIMENSIONS)?,
                read_signed(&value, system)?,
            )
        }
        "set" => {
            let (name, rest) = pair(word, rest)?;
            let (field, value) = pair(word, &rest)?;
            Command::Set { name, field, value }
        }
        "site" => {
            let (key, value) = pair(word, rest)?;
            Command::Site { key, value }
        }
        "apply" => apply(rest)?,
        "set-aside" => set_aside(rest)?,
        "undo" => Command::Undo(times(rest)?),
        "redo" => Command::Redo(times(rest)?),
        "delete" => alone(word, rest, Command::Delete)?,
        "duplicate" => alone(word, rest, Command::Duplicate)?,
        "copy" => alone(word, rest, Command::Copy)?,
        "paste" => alone(word, rest, Command::Paste)?,
        "mark" => Command::Mark(some(word, rest)?),
        "units" => Command::Units(look_up(
            "unit system",
            rest,
            &[("imperial", System::Imperial), ("metric", System::Metric)],
        )?),
        "reach" => Command::Reach(reach(rest, system)?),
        "check" => alone(word, rest, Command::Check)?,
        "expect" => Command::Expect(expectation(rest, system)?),
        _ => {
            return Err(format!("there is no command {word:?}; known: {}", FORMS.join("; ")));
        }
    })
}

fn expectation(rest: &str, system: System) -> Result<Expect, String> {
    expect::parse(rest, system)
}

/// What comes after a word that needs something after it.
fn some(word: &str, rest: &str) -> Result<String, String> {
    if rest.is_empty() {
        return Err(format!("{word} needs something after it"));
    }
    Ok(rest.to_owned())
}

fn alone(word: &str, rest: &str, command: Command) -> Result<Command, String> {
    if rest.is_empty() {
        Ok(command)
    } else {
        Err(format!("{word} stands alone; {rest:?} is too much"))
    }
}

/// A word and what comes after it.
pub(super) fn pair(word: &str, rest: &str) -> Result<(String, String), String> {
    let (first, second) = split_word(rest);
    if second.is_empty() {
        return Err(format!("{word} needs a name and a value after it; {rest:?} is not enough"));
    }
    Ok((first.to_owned(), second.to_owned()))
}

/// Takes the modifier keys off the end of a line.
fn mods(rest: &str) -> (&str, Mods) {
    let mut rest = rest.trim();
    let mut mods = Mods::default();
    loop {
        let (before, last) = rest.rsplit_once(char::is_whitespace).unwrap_or(("", rest));
        match last {
            "shift" => mods.shift = true,
            "ctrl" => mods.command = true,
            "alt" => mods.alt = true,
            _ => return (rest, mods),
        }
        rest = before.trim_end();
    }
}

fn pointed(rest: &str, system: System) -> Result<(Pt, Mods), String> {
    let (place, mods) = mods(rest);
    Ok((read_point(place, system)?, mods))
}

fn chosen(rest: &str) -> Result<Chosen, String> {
    Ok(match rest {
        "" => return Err("select needs names, all, nothing, next or previous".to_owned()),
        "all" => Chosen::All,
        "nothing" => Chosen::Nothing,
        "next" => Chosen::Next,
        "previous" => Chosen::Previous,
        names => Chosen::Names(names.split_whitespace().map(str::to_owned).collect()),
    })
}

fn times(rest: &str) -> Result<Times, String> {
    match rest {
        "" => Ok(Times::N(1)),
        "all" => Ok(Times::All),
        n => {
            n.parse().map(Times::N).map_err(|_| format!("{n:?} is neither a whole number nor all"))
        }
    }
}

fn reach(rest: &str, system: System) -> Result<Len, String> {
    let reach = read_signed(rest, system)?;
    if reach < Len::ZERO { Err("a reach is zero or more".to_owned()) } else { Ok(reach) }
}

/// `RULE [on ELEMENT] [N]`
fn apply(rest: &str) -> Result<Command, String> {
    let (rule, rest) = split_word(rest);
    let (on, rest) = on(rest);
    let nth = if rest.is_empty() { Ok(1) } else { rest.parse() };
    match nth {
        Ok(nth) if nth > 0 && !rule.is_empty() => {
            Ok(Command::Apply { rule: rule.to_owned(), on, nth })
        }
        _ => Err("a remedy is applied by: apply RULE [on ELEMENT] [N]".to_owned()),
    }
}

/// `RULE [on ELEMENT] because REASON`
fn set_aside(rest: &str) -> Result<Command, String> {
    let form = || "written: set-aside RULE [on ELEMENT] because REASON".to_owned();
    let (what, reason) = rest.split_once(" because ").ok_or_else(form)?;
    let (rule, rest) = split_word(what);
    let (on, rest) = on(rest);
    if rule.is_empty() || !rest.is_empty() {
        return Err(form());
    }
    Ok(Command::SetAside { rule: rule.to_owned(), on, reason: reason.trim().to_owned() })
}

/// Takes `on ELEMENT` off the start.
pub(super) fn on(rest: &str) -> (Option<String>, &str) {
    match split_word(rest) {
        ("on", after) => {
            let (name, rest) = split_word(after);
            (Some(name.to_owned()), rest)
        }
        _ => (None, rest),
    }
}
