//! Of the openings that could serve a need, the one that comes nearest: the findings are about it.

use std::cmp::Reverse;

use plan::ElementId;

use super::candidate::{Candidate, candidates};
use super::need::Need;
use super::{
    escape_area, escape_bars, escape_bulkhead, escape_door_operation, escape_height,
    escape_kept_window, escape_keyed_lock, escape_leads_out, escape_operation, escape_path_width,
    escape_replacement, escape_sill, escape_size_estimated, escape_under_deck, escape_width,
    well_area, well_ladder, well_ladder_encroachment, well_missing, well_projection,
    well_sash_strikes, well_width,
};
use crate::rules::rooms::words::{called, capital, room_called};
use crate::{Citation, Finding, Phrase, Place, Severity, Sheet};

/// Whether an opening falls short of one demand, and how gravely.
pub(super) type Judge = fn(&Sheet<'_>, &Candidate<'_>) -> Option<Severity>;

/// Every demand on an escape opening, one for each rule.
const JUDGES: &[Judge] = &[
    escape_operation::judge,
    escape_door_operation::judge,
    escape_size_estimated::judge,
    escape_area::judge,
    escape_height::judge,
    escape_width::judge,
    escape_sill::judge,
    well_missing::judge,
    well_area::judge,
    well_projection::judge,
    well_width::judge,
    well_ladder::judge,
    well_ladder_encroachment::judge,
    well_sash_strikes::judge,
    escape_keyed_lock::judge,
    escape_bars::judge,
    escape_leads_out::judge,
    escape_under_deck::judge,
    escape_path_width::judge,
    escape_replacement::judge,
    escape_kept_window::judge,
    escape_bulkhead::judge,
];

/// How many demands an opening falls short of, and of how many it may.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Verdict {
    pub corrections: usize,
    pub verifies: usize,
}

pub(super) fn verdict(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Verdict {
    let mut verdict = Verdict { corrections: 0, verifies: 0 };
    for judge in JUDGES {
        match judge(sheet, candidate) {
            Some(Severity::Correction) => verdict.corrections += 1,
            Some(Severity::Verify) => verdict.verifies += 1,
            Some(Severity::Advice) | None => {}
        }
    }
    verdict
}

/// The opening that a need rests on.
pub(super) struct Choice<'a> {
    pub need: Need,
    pub candidate: Candidate<'a>,
}

/// The opening of a room (or of the basement) that comes nearest: the fewest corrections, then a known
/// size, then the fewest doubts, then the largest clear area, then the lowest id.
pub(crate) fn nearest<'a>(
    sheet: &Sheet<'a>,
    room: Option<space::RoomIndex>,
) -> Option<(Candidate<'a>, Verdict)> {
    candidates(sheet.facts, room)
        .into_iter()
        .filter(|c| c.could_serve(sheet))
        .map(|c| (c, verdict(sheet, &c)))
        .min_by_key(|(c, verdict)| {
            (verdict.corrections, !c.sized(), verdict.verifies, Reverse(c.area()), c.facts.id)
        })
}

/// The openings that needs rest on and that a demand finds fault with.
pub(super) fn faulty<'a>(sheet: &Sheet<'a>, judge: Judge) -> Vec<(Choice<'a>, Severity)> {
    let mut found = Vec::new();
    for need in sheet.needs_with_openings().iter().copied() {
        // Most openings meet most demands, so which one is nearest is seldom asked.
        let all = candidates(sheet.facts, need.room);
        if all.iter().all(|candidate| judge(sheet, candidate).is_none()) {
            continue;
        }
        let Some((candidate, _)) = nearest(sheet, need.room) else { continue };
        if let Some(severity) = judge(sheet, &candidate) {
            found.push((Choice { need, candidate }, severity));
        }
    }
    found
}

impl Choice<'_> {
    /// A finding about the opening; `fault` ends the title: `is too narrow`.
    pub fn finding(
        &self,
        sheet: &Sheet<'_>,
        rule: &'static str,
        severity: Severity,
        citation: Citation,
        fault: &str,
        why: &str,
    ) -> Finding {
        let id = self.candidate.facts.id;
        let title = format!(
            "{}, the way out of {}, {fault}",
            capital(&called(sheet, id)),
            whose(sheet, self.need),
        );
        let elements = self.elements(sheet);
        let severity = severity.max(self.need.gravest);
        let mut finding =
            Finding::new(severity, citation, rule, elements, Phrase::text(title), why)
                .at(Place::Area(self.candidate.facts.quad.to_vec()));
        if self.need.gravest > Severity::Correction {
            finding = finding.assuming(WAS_A_BEDROOM);
        }
        finding
    }

    /// As [`Choice::finding`], about the clear size: says so where that is estimated.
    pub fn size_finding(
        &self,
        sheet: &Sheet<'_>,
        rule: &'static str,
        severity: Severity,
        citation: Citation,
        fault: &str,
        why: &str,
    ) -> Finding {
        let finding = self.finding(sheet, rule, severity, citation, fault, why);
        if self.candidate.facts.clear_estimated {
            finding.assuming(estimate(sheet, &self.candidate))
        } else {
            finding
        }
    }

    fn elements(&self, sheet: &Sheet<'_>) -> Vec<ElementId> {
        let tag = self.need.room.and_then(|room| sheet.facts.room(room).tag);
        std::iter::once(self.candidate.facts.id).chain(tag).collect()
    }
}

/// What a finding rests on where a bedroom was there before.
pub(super) const WAS_A_BEDROOM: &str =
    "the room was a bedroom before the work, which the building department may let be";

/// What a finding rests on where the clear size is estimated.
pub(super) fn estimate(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> String {
    let name = called(sheet, candidate.facts.id);
    match candidate.window() {
        Some(_) => {
            format!(
                "the clear size of {name} is estimated from its frame: enter the maker's figures"
            )
        }
        None => format!("the clear size of {name} is worked out from its leaf: measure it"),
    }
}

/// `the basement`, or the name of the room.
pub(super) fn whose(sheet: &Sheet<'_>, need: Need) -> String {
    match need.room {
        Some(room) => room_called(sheet.facts.room(room)),
        None => "the basement".to_owned(),
    }
}
