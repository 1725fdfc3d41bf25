//! Amendments: what a place, or the user, demands instead of the model code.
//!
//! An amendment names a limit of the model code and gives it another figure. The kind of figure (a length, an
//! area, a count) is the model's own, so that a file can't make a length out of an area.

use measure::{BareUnit, Len, read_len_in};
use plan::{Amendment, Edition};
use serde::{Deserialize, Serialize};

use super::figure::{Figure, area};
use super::layer::{BookError, Clause, Entry, Layer, line_of, with_year};
use crate::Confidence;

/// The longest length that an amendment may demand.
const LONGEST: Len = Len::feet_inches(100, 0);

/// One place's file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PlaceText {
    /// Name of the place: `Fargo, North Dakota`.
    place: String,
    /// What the file leaves out, and who is to be asked.
    #[serde(default)]
    note: String,
    amendments: Vec<AmendmentText>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AmendmentText {
    limit: String,
    figure: String,
    reason: String,
    /// Where it stands; left out, the reason is cited.
    #[serde(default)]
    section: String,
    /// Key of the list of sources.
    #[serde(default)]
    source: String,
    #[serde(default = "stated")]
    confidence: Confidence,
    /// Left out: every edition.
    #[serde(default)]
    editions: Vec<u16>,
}

/// A list as the program writes it: what isn't stated is left out.
#[derive(Serialize)]
struct Written<'a> {
    place: &'a str,
    amendments: Vec<WrittenAmendment<'a>>,
}

#[derive(Serialize)]
struct WrittenAmendment<'a> {
    limit: &'a str,
    figure: &'a str,
    reason: &'a str,
}

/// The text of a list that [`super::read_amendments`] reads, one amendment on a line.
pub fn write_amendments(place: &str, list: &[Amendment]) -> String {
    let amendments = list.iter().map(|Amendment { limit, figure, reason }| WrittenAmendment {
        limit,
        figure,
        reason,
    });
    let text = Written { place, amendments: amendments.collect() };
    let pretty = ron::ser::PrettyConfig::new().depth_limit(2).compact_structs(false);
    // Texts and lists alone: nothing that can't be written.
    ron::Options::default().to_string_pretty(&text, pretty).unwrap_or_default() + "\n"
}

fn stated() -> Confidence {
    Confidence::Stated
}

impl Layer {
    /// Reads a place's file. On an error nothing of the file counts.
    pub(super) fn amendments(model: &Layer, file: &str, text: &str) -> Result<Layer, BookError> {
        let error = |line, reason| BookError { file: file.to_owned(), line, reason };
        let options = ron::Options::default();
        let place: PlaceText =
            options.from_str(text).map_err(|e| error(e.span.start.line, e.code.to_string()))?;
        if place.place.trim().is_empty() {
            return Err(error(1, "the place has no name".to_owned()));
        }
        let mut layer = Layer::empty(&place.place);
        layer.note = place.note;
        for a in place.amendments {
            let line = line_of(text, &a.limit);
            let limit = a.limit.clone();
            let entry = a.entry(model, &layer.place).map_err(|reason| error(line, reason))?;
            if !layer.put(entry) {
                return Err(error(line, format!("\"{limit}\" is amended a second time")));
            }
        }
        Ok(layer)
    }

    /// The user's own amendments in a plan, and what is wrong with those that can't be used.
    pub(super) fn of_plan(model: &Layer, place: &str, own: &[Amendment]) -> (Layer, Vec<String>) {
        let mut layer = Layer::empty(place);
        let mut faults = Vec::new();
        for amendment in own {
            let text = AmendmentText {
                limit: amendment.limit.clone(),
                figure: amendment.figure.clone(),
                reason: amendment.reason.clone(),
                section: String::new(),
                source: String::new(),
                confidence: Confidence::Stated,
                editions: Vec::new(),
            };
            match text.entry(model, "amended") {
                Ok(entry) => {
                    layer.put(entry);
                }
                Err(fault) => faults.push(fault),
            }
        }
        (layer, faults)
    }
}

impl AmendmentText {
    fn entry(self, model: &Layer, place: &str) -> Result<Entry, String> {
        let slug = self.limit;
        if self.reason.trim().is_empty() {
            return Err(format!("\"{slug}\" has no reason: say who demands it, and where"));
        }
        let old = model.entry(&slug).ok_or_else(|| no_limit(model, &slug))?;
        let years = match self.editions.as_slice() {
            [] => Edition::ALL.to_vec(),
            years => years
                .iter()
                .map(|year| {
                    Edition::from_year(*year)
                        .ok_or_else(|| format!("\"{slug}\": {year} is no edition of the code book"))
                })
                .collect::<Result<_, _>>()?,
        };
        let mut entry = Entry { slug: slug.clone(), ..old.clone() };
        entry.clauses.clear();
        for edition in years {
            let Some(clause) = old.clause(edition) else { continue };
            let figure = read_figure(clause.figure, &self.figure)
                .map_err(|reason| format!("\"{slug}\": {reason}"))?;
            let said = if self.section.is_empty() { &self.reason } else { &self.section };
            let text = format!("{place}: {}", with_year(said, edition));
            let source = self.source.clone();
            let confidence = self.confidence;
            entry.clauses.insert(edition, Clause { figure, text, source, confidence });
        }
        Ok(entry)
    }
}

/// Says which limits there are that look like the one that was written.
fn no_limit(model: &Layer, slug: &str) -> String {
    let stem = slug.split('-').next().unwrap_or(slug);
    let near: Vec<&str> = model
        .entries()
        .filter(|e| e.slug.starts_with(stem) && e.amendable())
        .map(|e| e.slug.as_str())
        .collect();
    match near.as_slice() {
        [] => format!("the code book has no limit \"{slug}\""),
        near => format!("the code book has no limit \"{slug}\"; it has {}", near.join(", ")),
    }
}

/// Reads a figure of the same kind as the model's.
pub(super) fn read_figure(kind: Figure, text: &str) -> Result<Figure, String> {
    let text = text.trim();
    match kind {
        Figure::None => Err("it has no figure that could be amended".to_owned()),
        Figure::Len(_) => read_len_in(text, BareUnit::Inches, Len::ZERO, LONGEST)
            .map(Figure::Len)
            .map_err(|e| e.to_string()),
        Figure::Count(_) => {
            text.parse().map(Figure::Count).map_err(|_| format!("\"{text}\" is no whole number"))
        }
        Figure::Area(_) => match text.strip_suffix("sq in").map(str::trim) {
            Some(inches) => area(inches, Len::PER_INCH),
            None => match text.strip_suffix("sq ft").map(str::trim) {
                Some(feet) => area(feet, Len::PER_FOOT),
                None => Err(format!("\"{text}\" is no area such as 5.7 sq ft or 820.8 sq in")),
            },
        },
    }
}

#[cfg(test)]
mod tests {
    use measure::Area;

    use super::*;

    #[test]
    fn a_written_list_reads_back() {
        let list = vec![
            Amendment {
                limit: "escape-sill".to_owned(),
                figure: "4' 0\"".to_owned(),
                reason: "Handout \"7\", (b): p. 2".to_owned(),
            },
            Amendment {
                limit: "escape-area".to_owned(),
                figure: "5 sq ft".to_owned(),
                reason: "by letter".to_owned(),
            },
        ];
        let text = write_amendments("Our town", &list);
        let layer = super::super::read_amendments("file", &text).expect("it reads");
        assert_eq!(layer.place, "Our town");
        let slugs: Vec<&str> = layer.entries().map(|e| e.slug.as_str()).collect();
        assert_eq!(slugs.len(), 2, "{text}");
        for entry in layer.entries() {
            let clause = entry.clause(Edition::E2021).expect("every edition");
            assert!(clause.text.starts_with("Our town: "), "{}", clause.text);
        }
    }

    #[test]
    fn a_figure_is_read_as_the_kind_that_the_model_has() {
        let length = Figure::Len(Len::ZERO);
        assert_eq!(read_figure(length, "48"), Ok(Figure::Len(Len::inches(48))));
        assert_eq!(read_figure(length, " 4' 0\" "), Ok(Figure::Len(Len::inches(48))));
        assert_eq!(read_figure(length, "1118 mm"), Ok(Figure::Len(Len::from_units(1118 * 320))));
        assert!(read_figure(length, "-1").is_err());
        assert!(read_figure(length, "5 sq ft").is_err());
        let size = Figure::Area(Area::ZERO);
        let feet = Figure::Area(Area::of_rect(Len::inches(12), Len::inches(60)));
        assert_eq!(read_figure(size, "5.0 sq ft"), Ok(feet));
        assert_eq!(read_figure(size, "720 sq in"), Ok(feet));
        assert_eq!(read_figure(size, "0 sq ft"), Ok(Figure::Area(Area::ZERO)));
        assert!(read_figure(size, "5").unwrap_err().contains("sq ft"));
        assert_eq!(read_figure(Figure::Count(0), "6"), Ok(Figure::Count(6)));
        assert!(read_figure(Figure::Count(0), "6.5").is_err());
        assert!(read_figure(Figure::None, "1").is_err());
    }
}
