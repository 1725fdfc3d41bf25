//! Demands on what is stated of an escape opening: they weigh when the opening is chosen, and are found at the one that
//! a need rests on, not at every window.

use plan::detail::Detail;

use super::candidate::Candidate;
use super::choice::{Judge, faulty};
use crate::answer::Answer;
use crate::{Citation, Finding, Quantity, Severity, Sheet};

/// A demand on a detail of the opening.
pub(super) struct Told {
    pub rule: &'static str,
    pub detail: &'static Detail,
    /// Ends the title: `opens with a key only`.
    pub fault: &'static str,
    pub why: &'static str,
}

impl Told {
    /// What is stated, where it does not meet the demand. What is assumed always does.
    fn wrong(
        &self,
        sheet: &Sheet<'_>,
        candidate: &Candidate<'_>,
        good: impl Fn(&Answer) -> bool,
    ) -> Option<Answer> {
        let element = sheet.plan().get(candidate.facts.id)?;
        if !self.detail.is_asked(&element.body, &element.details) {
            return None;
        }
        Some(sheet.ask(element, self.detail)).filter(|answer| answer.stated && !good(answer))
    }

    pub fn judge(
        &self,
        sheet: &Sheet<'_>,
        candidate: &Candidate<'_>,
        good: impl Fn(&Answer) -> bool,
    ) -> Option<Severity> {
        self.wrong(sheet, candidate, good).map(|_| Severity::Correction)
    }

    /// Finds fault with the openings that needs rest on; `judge` is that of the rule.
    pub fn check(
        &self,
        sheet: &Sheet<'_>,
        out: &mut Vec<Finding>,
        citation: &Citation,
        required: &Quantity,
        judge: Judge,
    ) {
        for (choice, severity) in faulty(sheet, judge) {
            let Some(element) = sheet.plan().get(choice.candidate.facts.id) else { continue };
            let answer = sheet.ask(element, self.detail);
            let measured = match answer.len() {
                Some(len) => Quantity::Len(len),
                None => Quantity::Words(answer.value.map_or_else(String::new, |value| {
                    self.detail.say(value, measure::System::Imperial)
                })),
            };
            let finding = choice
                .finding(sheet, self.rule, severity, citation.clone(), self.fault, self.why)
                .figures(measured, required.clone())
                .resting_on(&answer);
            // A remedy states the detail of the elements that a finding is about: of the opening alone.
            out.push(finding);
        }
    }
}
