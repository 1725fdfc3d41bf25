//! What a rule hears when it asks for a detail: what is stated, else what is assumed, else nothing.

use measure::{Len, System};
use plan::detail::{Detail, Value};
use plan::{Edit, Element, ElementId};

use crate::{Finding, Phrase, Remedy, Safety, Sheet};

/// The answer to a detail that was asked for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Answer {
    pub detail: &'static Detail,
    /// Nothing where it is neither stated nor assumed.
    pub value: Option<Value>,
    pub stated: bool,
}

impl Answer {
    fn new(detail: &'static Detail, stated: Option<Value>) -> Answer {
        Answer { detail, value: stated.or(detail.assumed), stated: stated.is_some() }
    }

    pub fn yes(&self) -> Option<bool> {
        self.value?.yes()
    }

    pub fn len(&self) -> Option<Len> {
        self.value?.len()
    }

    pub fn number(&self) -> Option<u32> {
        self.value?.number()
    }

    pub fn word(&self) -> Option<&'static str> {
        self.value?.word()
    }

    /// Whether it is one of some words.
    pub fn is(&self, words: &[&str]) -> bool {
        self.word().is_some_and(|word| words.contains(&word))
    }

    /// What is taken for true without being stated, in words.
    fn assumption(&self) -> Option<String> {
        if self.stated {
            return None;
        }
        let word = self.detail.word;
        Some(match self.value {
            None => format!("“{word}” is not stated"),
            Some(Value::Length(len)) => {
                let [imperial, metric] = [System::Imperial, System::Metric]
                    .map(|system| self.detail.say(Value::Length(len), system));
                format!("“{word}” is {imperial} ({metric})")
            }
            Some(value) => format!("“{word}” is {}", self.detail.say(value, System::Imperial)),
        })
    }
}

impl Sheet<'_> {
    /// Asks for a detail of an element.
    pub(crate) fn ask(&self, element: &Element, detail: &'static Detail) -> Answer {
        Answer::new(detail, element.stated(detail))
    }

    /// Asks for a detail of the house or its site.
    pub(crate) fn ask_site(&self, detail: &'static Detail) -> Answer {
        Answer::new(detail, self.plan().site.details.get(detail))
    }
}

impl Finding {
    /// It rests on an answer: where that was not stated, a correction becomes a verify and the assumption is said.
    pub(crate) fn resting_on(self, answer: &Answer) -> Finding {
        match answer.assumption() {
            Some(assumption) => self.assuming(assumption),
            None => self,
        }
    }
}

/// The remedy that states a detail of some elements. It is asked first: only the user knows whether it is so.
pub(crate) fn state(
    sheet: &Sheet<'_>,
    ids: &[ElementId],
    detail: &'static Detail,
    value: Value,
) -> Remedy {
    let stated = |e: &Element| {
        let details = e.details.clone().with(detail, value);
        Edit::Replace(Element { details, ..e.clone() })
    };
    let whole = ids.iter().filter_map(|id| sheet.plan().get(*id));
    let names = match ids {
        [id] => sheet.plan().get(*id).map_or_else(String::new, Element::name),
        many => format!("{} elements", many.len()),
    };
    let said = format!("{}: {}", detail.word, detail.say(value, System::Imperial));
    Remedy {
        label: Phrase::text(format!("State of {names} “{said}”")),
        edit: Edit::Batch(whole.map(stated).collect()),
        safety: Safety::Ask,
    }
}

/// The remedy that states a detail of the site.
pub(crate) fn state_site(sheet: &Sheet<'_>, detail: &'static Detail, value: Value) -> Remedy {
    let mut site = sheet.plan().site.clone();
    site.details.set(detail, Some(value));
    let said = format!("{}: {}", detail.word, detail.say(value, System::Imperial));
    Remedy {
        label: Phrase::text(format!("State of the site “{said}”")),
        edit: Edit::Site(Box::new(site)),
        safety: Safety::Ask,
    }
}
