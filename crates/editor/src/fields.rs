//! The figures, choices and texts of an element by name, as a person reads and writes them. The rehearse
//! script sets and expects them; one table serves reading and writing.

mod elements;
mod options;
mod slot;

use measure::{Precision, System};
use plan::element::{Opening, OpeningKind};
use plan::{Body, Element, Site, detail};

use crate::ToolOptions;
use slot::{Slot, names, slot};

/// The names of an element's fields, in the order of its table. The details that fit it, by their own names, are
/// fields as well.
pub fn names_of(element: &Element) -> Vec<&'static str> {
    let mut all = vec!["state"];
    all.extend(match &element.body {
        Body::Shell(_) => names::<plan::element::ShellWall>(),
        Body::Partition(_) => names::<plan::element::Partition>(),
        Body::Furring(_) => names::<plan::element::Furring>(),
        Body::Opening(opening) => {
            let mut all = names::<Opening>();
            all.extend(match &opening.kind {
                OpeningKind::Door(_) => names::<plan::element::Door>(),
                OpeningKind::Window(_) => names::<plan::element::Window>(),
            });
            all
        }
        Body::Column(_) => names::<plan::element::Column>(),
        Body::Stair(_) => names::<plan::element::Stair>(),
        Body::Overhead(_) => names::<plan::element::Overhead>(),
        Body::Service(_) => names::<plan::element::ServicePoint>(),
        Body::Furnishing(_) => names::<plan::element::Furnishing>(),
        Body::RoomTag(_) => names::<plan::element::RoomTag>(),
        Body::Note(_) => names::<plan::element::Note>(),
        Body::Section(_) => names::<plan::element::SectionLine>(),
    });
    all
}

fn of<'a>(element: &'a mut Element, field: &str) -> Result<Slot<'a>, String> {
    if field == "state" {
        return slot(&mut element.state, field);
    }
    if let Some(detail) = detail::named(field).filter(|detail| detail.fits(&element.body)) {
        return Ok(Slot::Detail(&mut element.details, detail));
    }
    match &mut element.body {
        Body::Shell(x) => slot(x, field),
        Body::Partition(x) => slot(x, field),
        Body::Furring(x) => slot(x, field),
        Body::Opening(x) => {
            if names::<Opening>().contains(&field) {
                return slot(x, field);
            }
            match &mut x.kind {
                OpeningKind::Door(x) => slot(x, field),
                OpeningKind::Window(x) => slot(x, field),
            }
        }
        Body::Column(x) => slot(x, field),
        Body::Stair(x) => slot(x, field),
        Body::Overhead(x) => slot(x, field),
        Body::Service(x) => slot(x, field),
        Body::Furnishing(x) => slot(x, field),
        Body::RoomTag(x) => slot(x, field),
        Body::Note(x) => slot(x, field),
        Body::Section(x) => slot(x, field),
    }
}

/// The value of a field of an element, written out. The error names the fields there are.
pub fn get(element: &Element, field: &str, system: System) -> Result<String, String> {
    let mut element = element.clone();
    Ok(of(&mut element, field)?.write(system, Precision::Fine))
}

/// The element with a field set to a written value. The error says what is accepted.
pub fn set(element: &Element, field: &str, value: &str, system: System) -> Result<Element, String> {
    let mut element = element.clone();
    of(&mut element, field)?.read(value, system)?;
    Ok(element)
}

/// Whether a field of an element holds a written value.
pub fn holds(element: &Element, field: &str, value: &str, system: System) -> Result<bool, String> {
    let mut element = element.clone();
    of(&mut element, field)?.equals(value, system)
}

fn of_site<'a>(site: &'a mut Site, field: &str) -> Result<Slot<'a>, String> {
    match detail::named(field).filter(|detail| detail.of_site()) {
        Some(detail) => Ok(Slot::Detail(&mut site.details, detail)),
        None => slot(site, field),
    }
}

/// The site with a field set to a written value.
pub fn set_site(site: &Site, field: &str, value: &str, system: System) -> Result<Site, String> {
    let mut site = site.clone();
    of_site(&mut site, field)?.read(value, system)?;
    Ok(site)
}

/// Whether a field of the site holds a written value.
pub fn site_holds(site: &Site, field: &str, value: &str, system: System) -> Result<bool, String> {
    let mut site = site.clone();
    of_site(&mut site, field)?.equals(value, system)
}

/// Sets a field of the tool options to a written value.
pub fn set_option(
    options: &mut ToolOptions,
    field: &str,
    value: &str,
    system: System,
) -> Result<(), String> {
    match field.split_once('-') {
        Some(("door", field)) => slot(&mut options.door, field)?.read(value, system),
        Some(("window", field)) => slot(&mut options.window, field)?.read(value, system),
        Some(("furnishing", field)) if ToolOptions::slotless(field) => {
            slot(&mut options.furnishing, field)?.read(value, system)
        }
        _ => slot(options, field)?.read(value, system),
    }
}

impl ToolOptions {
    /// The fields of the next furnishing: its place is not one of them.
    fn slotless(field: &str) -> bool {
        !["x", "y"].contains(&field)
    }

    /// The names of the options.
    pub fn names() -> Vec<String> {
        let mut all: Vec<String> = names::<ToolOptions>().into_iter().map(str::to_owned).collect();
        let with = |word: &str, names: Vec<&'static str>| -> Vec<String> {
            names.into_iter().map(|name| format!("{word}-{name}")).collect()
        };
        all.extend(with("door", names::<plan::element::Door>()));
        all.extend(with("window", names::<plan::element::Window>()));
        let own = names::<plan::element::Furnishing>();
        all.extend(with("furnishing", own.into_iter().filter(|n| Self::slotless(n)).collect()));
        all
    }
}
