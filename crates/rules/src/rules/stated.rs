//! Rules that judge what is stated of elements: one finding for those that are stated wrong, one for those of which
//! the answer is assumed or missing, however many they are.

use plan::detail::{Detail, Value};
use plan::{Element, House, State};

use crate::answer::{Answer, state};
use crate::rules::rooms::words::called;
use crate::{Citation, Finding, Phrase, Place, Quantity, Remedy, Severity, Sheet};

/// A demand on a detail.
pub(crate) struct Demand {
    /// The rule's slug.
    pub rule: &'static str,
    pub detail: &'static Detail,
    /// What is wrong, as the title begins: `No shock protection`.
    pub fault: &'static str,
    /// What several such elements are called: `receptacles`.
    pub many: &'static str,
    pub why: &'static str,
    /// What is asked for: the words or the figure beside *required*.
    pub required: Quantity,
    /// A fault is worth no more than advice.
    pub advice: bool,
}

/// Judges the elements. `good` says whether an answer meets the demand; an answer that is missing never does.
pub(crate) fn judge<'e>(
    sheet: &Sheet<'_>,
    out: &mut Vec<Finding>,
    citation: &Citation,
    demand: &Demand,
    elements: impl Iterator<Item = &'e Element>,
    good: impl Fn(&Answer) -> bool,
) {
    let mut wrong: Vec<(&Element, Answer)> = Vec::new();
    let mut open: Vec<(&Element, Answer)> = Vec::new();
    for element in elements {
        let answer = sheet.ask(element, demand.detail);
        if answer.value.is_some() && good(&answer) {
            continue;
        }
        if answer.stated { wrong.push((element, answer)) } else { open.push((element, answer)) }
    }
    for group in [wrong, open] {
        if let Some(finding) = finding(sheet, citation, demand, &group) {
            out.push(finding);
        }
    }
}

fn finding(
    sheet: &Sheet<'_>,
    citation: &Citation,
    demand: &Demand,
    group: &[(&Element, Answer)],
) -> Option<Finding> {
    let (first, answer) = group.first()?;
    let who = match group {
        [(one, _)] => called(sheet, one.id),
        many => format!("{} {}", many.len(), demand.many),
    };
    let title = match answer.value {
        None => format!("{} not stated: {who}", demand.detail.word),
        Some(_) => format!("{}: {who}", demand.fault),
    };
    let severity = if demand.advice { Severity::Advice } else { Severity::Correction };
    let ids = group.iter().map(|(e, _)| e.id).collect();
    let mut finding =
        Finding::new(severity, citation.clone(), demand.rule, ids, Phrase::text(title), demand.why)
            .figures(measured(first, answer), demand.required.clone())
            .resting_on(answer);
    finding.places = group.iter().map(|(element, _)| Place::Of(element.id)).collect();
    Some(finding)
}

fn measured(_: &Element, answer: &Answer) -> Quantity {
    match answer.value {
        None => Quantity::Words("not stated".to_owned()),
        Some(Value::Length(len)) => Quantity::Len(len),
        Some(value) => Quantity::Words(answer.detail.say(value, measure::System::Imperial)),
    }
}

/// The remedy that states a value of everything that a finding is about.
pub(crate) fn state_all(
    finding: &Finding,
    sheet: &Sheet<'_>,
    detail: &'static Detail,
    value: Value,
) -> Vec<Remedy> {
    vec![state(sheet, &finding.elements, detail, value)]
}

/// Whether something is new work: it is new, or the house is.
pub(crate) fn is_new(sheet: &Sheet<'_>, element: &Element) -> bool {
    element.state == State::New || sheet.plan().site.house == House::New
}

/// The standing elements of a plan of which a detail is asked, by id.
pub(crate) fn fitting<'a>(
    sheet: &Sheet<'a>,
    detail: &'static Detail,
) -> impl Iterator<Item = &'a Element> + use<'a> {
    let elements = sheet.facts.standing(detail.kinds());
    elements.filter(move |e| detail.is_asked(&e.body, &e.details))
}

/// Those of them that are new work.
pub(crate) fn new_work<'s, 'a>(
    sheet: &'s Sheet<'a>,
    detail: &'static Detail,
) -> impl Iterator<Item = &'a Element> + use<'s, 'a> {
    fitting(sheet, detail).filter(move |e| is_new(sheet, e))
}
