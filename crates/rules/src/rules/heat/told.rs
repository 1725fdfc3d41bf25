//! Demands on what is stated of an element: a rule that rests on nothing else is a list of them.

use measure::System;
use plan::detail::heat::FUEL;
use plan::detail::{Detail, Value};
use plan::element::ServiceKind;
use plan::{Body, Element, ElementId};

use crate::answer::{Answer, state};
use crate::book::Figure;
use crate::rules::access::judge::unless_existing;
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::is_new;
use crate::{Confidence, Finding, Phrase, Place, Quantity, Remedy, Severity, Sheet};

/// What is asked of a detail; a figure is the one of the limit.
pub(super) enum Good {
    Yes,
    No,
    /// One of these words, the best first.
    Words(&'static [&'static str]),
    AtLeast,
    AtMost,
}

/// A demand on a detail of some elements. One that is common practice gives advice.
pub(super) struct Demand {
    pub rule: &'static str,
    pub limit: &'static str,
    pub detail: &'static Detail,
    pub good: Good,
    /// What is said of an element that fails: `stands in no pan`.
    pub fails: &'static str,
    pub why: &'static str,
    /// Whether it is asked for where it is neither stated nor assumed.
    pub asks: bool,
}

impl Demand {
    fn is_met(&self, sheet: &Sheet<'_>, value: Value) -> bool {
        match (&self.good, value, self.figure(sheet)) {
            (Good::Yes, Value::Yes, _) | (Good::No, Value::No, _) => true,
            (Good::Words(words), Value::Word(word), _) => words.contains(&word),
            (Good::AtLeast, Value::Length(len), Figure::Len(limit)) => len >= limit,
            (Good::AtMost, Value::Length(len), Figure::Len(limit)) => len <= limit,
            (Good::AtLeast, Value::Number(n), Figure::Count(limit)) => n >= limit,
            (Good::AtMost, Value::Number(n), Figure::Count(limit)) => n <= limit,
            _ => false,
        }
    }

    fn figure(&self, sheet: &Sheet<'_>) -> Figure {
        sheet.book.entry(self.limit).map_or(Figure::None, |(_, clause)| clause.figure)
    }

    /// The value that meets it just.
    fn best(&self, sheet: &Sheet<'_>) -> Option<Value> {
        Some(match (&self.good, self.figure(sheet)) {
            (Good::Yes, _) => Value::Yes,
            (Good::No, _) => Value::No,
            (Good::Words(words), _) => Value::Word(words.first()?),
            (_, Figure::Len(limit)) => Value::Length(limit),
            (_, Figure::Count(limit)) => Value::Number(limit),
            _ => return None,
        })
    }

    fn required(&self, sheet: &Sheet<'_>) -> Quantity {
        match self.best(sheet) {
            Some(Value::Length(len)) => Quantity::Len(len),
            Some(value) => Quantity::Words(self.detail.say(value, System::Imperial)),
            None => Quantity::Words(self.detail.word.to_lowercase()),
        }
    }

    fn finding(&self, sheet: &Sheet<'_>, ids: Vec<ElementId>, title: String) -> Finding {
        let citation = sheet.book.cite(self.limit);
        let severity = match citation.confidence {
            Confidence::Practice => Severity::Advice,
            _ => Severity::Correction,
        };
        Finding::new(severity, citation, self.rule, ids, Phrase::text(title), self.why)
    }

    fn failed(
        &self,
        sheet: &Sheet<'_>,
        element: &Element,
        value: Value,
        answer: &Answer,
    ) -> Finding {
        let title = format!("{} {}", capital(&called(sheet, element.id)), self.fails);
        let measured = match value {
            Value::Length(len) => Quantity::Len(len),
            value => Quantity::Words(format!(
                "{}: {}",
                self.detail.word.to_lowercase(),
                self.detail.say(value, System::Imperial)
            )),
        };
        let finding = self
            .finding(sheet, vec![element.id], title)
            .figures(measured, self.required(sheet))
            .resting_on(answer);
        at(unless_existing(sheet, finding), element)
    }

    /// One finding for all elements of which it is not stated.
    fn asked(&self, sheet: &Sheet<'_>, unstated: &[&Element], answer: &Answer) -> Finding {
        let ids: Vec<ElementId> = unstated.iter().map(|e| e.id).collect();
        let names: Vec<String> = ids.iter().map(|id| called(sheet, *id)).collect();
        let title = format!("{}: {}", capital(&names.join(", ")), self.detail.asks);
        let finding = self
            .finding(sheet, ids, title)
            .figures(Quantity::Words("not stated".to_owned()), self.required(sheet))
            .resting_on(answer);
        unstated.iter().fold(finding, |finding, element| at(finding, element))
    }
}

fn at(finding: Finding, element: &Element) -> Finding {
    match &element.body {
        Body::Service(_) => finding.at(Place::Under(element.id)),
        Body::RoomTag(_) => finding.at(Place::Of(element.id)),
        _ => finding,
    }
}

/// Judges elements by a demand: a finding for each that fails it, and one for all of which it is not stated.
pub(super) fn check<'a>(
    sheet: &Sheet<'_>,
    out: &mut Vec<Finding>,
    demand: &Demand,
    elements: impl Iterator<Item = &'a Element>,
) {
    let mut unstated: Option<(Vec<&Element>, Answer)> = None;
    for element in elements {
        let answer = sheet.ask(element, demand.detail);
        match answer.value {
            Some(value) if demand.is_met(sheet, value) => {}
            Some(value) => out.push(demand.failed(sheet, element, value, &answer)),
            None if demand.asks && is_new(sheet, element) => {
                unstated.get_or_insert_with(|| (Vec::new(), answer)).0.push(element);
            }
            None => {}
        }
    }
    if let Some((elements, answer)) = unstated {
        out.push(demand.asked(sheet, &elements, &answer));
    }
}

/// States what the demands ask for.
pub(super) fn remedies(finding: &Finding, sheet: &Sheet<'_>, demands: &[Demand]) -> Vec<Remedy> {
    let plan = sheet.plan();
    let fits = |d: &&Demand| {
        let mut elements = finding.elements.iter().filter_map(|id| plan.get(*id));
        elements.any(|e| {
            d.detail.fits(&e.body) && {
                let value = sheet.ask(e, d.detail).value;
                value.is_none_or(|value| !d.is_met(sheet, value))
            }
        })
    };
    let stated = |d: &Demand| Some(state(sheet, &finding.elements, d.detail, d.best(sheet)?));
    demands.iter().filter(fits).filter_map(stated).collect()
}

/// The standing service points of a kind.
pub(super) fn of_kind<'a>(
    sheet: &Sheet<'a>,
    kind: ServiceKind,
) -> impl Iterator<Item = &'a Element> + use<'a> {
    sheet.services().filter(move |(_, s)| s.kind == kind).map(|(element, _)| element)
}

/// The standing furnaces and water heaters.
pub(super) fn appliances<'a>(sheet: &Sheet<'a>) -> impl Iterator<Item = &'a Element> + use<'a> {
    let kinds = |k| matches!(k, ServiceKind::Furnace | ServiceKind::WaterHeater);
    sheet.services().filter(move |(_, s)| kinds(s.kind)).map(|(element, _)| element)
}

/// The standing furnaces, water heaters and dryers that are stated to run on gas.
pub(super) fn on_gas<'s>(sheet: &'s Sheet<'_>) -> impl Iterator<Item = &'s Element> {
    let burns = |k| {
        matches!(k, ServiceKind::Furnace | ServiceKind::WaterHeater | ServiceKind::ClothesDryer)
    };
    sheet
        .services()
        .filter(move |(_, s)| burns(s.kind))
        .map(|(element, _)| element)
        .filter(|e| sheet.ask(e, &FUEL).is(&["natural gas", "propane"]))
}
