//! `carry`: whether a thing gets from where people come in to each room (docs/carry-json.md).

use std::io::{self, Write};

use measure::{Len, System};
use serde::Serialize;
use space::carry::{Carried, Verdict};

use super::args::CarryArgs;
use super::exit;
use crate::carry_words;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

#[derive(Serialize)]
struct Report {
    schema: u32,
    title: String,
    /// In inches.
    size: [f64; 3],
    rooms: Vec<Room>,
    method: &'static str,
    caution: &'static str,
}

#[derive(Serialize)]
struct Room {
    room: String,
    verdict: &'static str,
    text: String,
    pose: Option<[f64; 3]>,
    at: Option<[f64; 2]>,
    near: Option<String>,
}

pub fn run(args: &CarryArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let Some(plan) = super::open(&args.plan, err)? else { return Ok(exit::FILE) };
    let facts = space::derive(&plan);
    let size = args.size.or(args.thing).unwrap_or_default();
    let system = if args.metric { System::Metric } else { System::Imperial };
    let carried = space::carry::carry(&facts, size);
    let name = |id: plan::ElementId| plan.get(id).map_or_else(String::new, |e| e.name());
    let one = |carried: &Carried| Room {
        room: carry_words::room(&facts, carried).to_owned(),
        verdict: carry_words::word(carried.verdict),
        text: carry_words::verdict(&plan, carried, system),
        pose: match carried.verdict {
            Verdict::Fits(pose) => Some([pose.length, pose.width, pose.height].map(Len::to_inches)),
            _ => None,
        },
        at: match carried.verdict {
            Verdict::Sticks(at) | Verdict::Verify(at) => {
                Some([at.x, at.y].map(|c| Len::from_units(c).to_inches()))
            }
            _ => None,
        },
        near: carried.near.map(name),
    };
    let report = Report {
        schema: SCHEMA,
        title: plan.site.title.clone(),
        size: size.map(Len::to_inches),
        rooms: carried.iter().map(one).collect(),
        method: carry_words::CAUTION,
        caution: super::CAUTION,
    };
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &report)?;
        writeln!(out)?;
        return Ok(exit::OK);
    }
    let say = |len: Len| system.inches(len, measure::Precision::Tape);
    let [a, b, c] = size.map(say);
    writeln!(out, "A thing of {a} x {b} x {c}, carried to")?;
    if report.rooms.is_empty() {
        writeln!(out, "  no room: none is closed off yet")?;
    }
    for room in &report.rooms {
        writeln!(out, "  {}: {}", room.room, room.text)?;
    }
    writeln!(out, "\n{}\n\n{}", report.method, report.caution)?;
    Ok(exit::OK)
}

/// Reads `84" x 36" x 34"`: three lengths with an x between; a bare number means inches.
pub fn read_size(text: &str) -> Result<[Len; 3], String> {
    let parts: Vec<&str> = text.split(['x', 'X', '×']).map(str::trim).collect();
    let [a, b, c] = parts.as_slice() else {
        return Err("a size is three lengths with an x between, such as 84x36x34".to_owned());
    };
    let read = |part: &str| {
        let len = measure::read_len(part, measure::BareUnit::Inches).map_err(|e| e.to_string())?;
        match len {
            len if len < Len::sixty_fourths(8) => Err(format!("{part}: a side is at least 1/8 in")),
            len if len > Len::feet_inches(20, 0) => Err(format!("{part}: a side is at most 20 ft")),
            len => Ok(len),
        }
    };
    Ok([read(a)?, read(b)?, read(c)?])
}

/// The sizes of a common thing by its key.
pub fn thing(key: &str) -> Result<[Len; 3], String> {
    let things = carry_words::THINGS;
    things.iter().find(|t| t.key == key).map(|t| t.size).ok_or_else(|| {
        let keys: Vec<&str> = things.iter().map(|t| t.key).collect();
        format!("the things are {}; give the size of any other with --size", keys.join(", "))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_read_or_refused_with_a_reason() {
        let inches = |n| Len::inches(n);
        assert_eq!(read_size("84x36x34"), Ok([84, 36, 34].map(inches)));
        assert_eq!(read_size("7' x 3' x 34\""), Ok([84, 36, 34].map(inches)));
        assert!(read_size("84x36").unwrap_err().contains("three lengths"));
        assert!(read_size("84x36x0").unwrap_err().contains("at least"));
        assert!(read_size("84x36x900").unwrap_err().contains("at most"));
        assert!(read_size("84xaxb").is_err());
        assert!(thing("piano").unwrap_err().contains("sofa"));
    }
}
