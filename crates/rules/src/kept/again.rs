//! What is to be judged again after a change.

use std::collections::BTreeSet;

use measure::Len;
use plan::element::BodyKind;
use space::{Changes, Near, RoomIndex};

use super::store::News;
use crate::rule::CheckRoom;
use crate::rules::electrical::devices;
use crate::rules::{self, KEEP};
use crate::{Check, Reach, Rule, Sheet};

pub(super) struct Again {
    changes: Changes,
    near: Near,
    rooms_and_open: BTreeSet<RoomIndex>,
    /// How far the spaces before service points reach.
    keeps: Len,
}

impl Again {
    /// `farthest` is the farthest that a rule looks.
    pub fn new(sheet: &Sheet<'_>, changes: Changes, farthest: Len) -> Again {
        let keeps = Reach::greatest(KEEP, sheet.book);
        Again {
            near: changes.near(sheet.facts, farthest.max(keeps)),
            rooms_and_open: changes.rooms_and_open(sheet.facts),
            changes,
            keeps,
        }
    }

    /// Brings the measures that were taken of the plan before up to this one.
    pub fn measure(&self, sheet: &mut Sheet<'_>) {
        // What needs an escape opening, and what things are called, is as it was.
        let services = self.changes.services();
        if !services.is_empty()
            && let Some(mut devices) = sheet.measures.devices.take()
        {
            devices.update(sheet, services);
            sheet.measures.devices = devices.into();
        }
        let Some(mut keeps) = sheet.measures.keeps.take() else { return };
        for place in self.near.things(BodyKind::Service, self.keeps) {
            let element = sheet.facts.element_at(place);
            let Ok(at) = keeps.binary_search_by_key(&element.id, |keep| keep.service) else {
                continue;
            };
            if let Some(keep) = rules::keep(sheet, element) {
                keeps[at] = keep;
            }
        }
        sheet.measures.keeps = keeps.into();
    }

    /// What a rule that looks so far says about that of which something has changed.
    pub fn judge(&self, sheet: &Sheet<'_>, rule: &Rule, reach: Len) -> News {
        let (facts, mut news) = (sheet.facts, News::default());
        match rule.check {
            Check::Plan(on, check) => {
                if self.changes.touch(on) {
                    news.judge(0, |out| check(sheet, out));
                }
            }
            Check::Room(check) => rooms(sheet, self.changes.rooms(), check, &mut news),
            Check::Rooms(check) => rooms(sheet, &self.rooms_and_open, check, &mut news),
            Check::Openings(_, check) => {
                for i in self.near.openings(reach) {
                    news.judge(i, |out| check(sheet, &facts.openings[i], out));
                }
            }
            Check::Things(kinds, _, check) => {
                for place in kinds.iter().flat_map(|kind| self.near.things(*kind, reach)) {
                    news.judge(place as usize, |out| check(sheet, facts.element_at(place), out));
                }
            }
            Check::Services(kinds, _, check) => {
                for place in self.near.services(kinds, reach) {
                    if let Some((element, service)) = devices::service_at(sheet, place) {
                        news.judge(place as usize, |out| check(sheet, element, service, out));
                    }
                }
            }
        }
        news
    }
}

fn rooms(sheet: &Sheet<'_>, again: &BTreeSet<RoomIndex>, check: CheckRoom, news: &mut News) {
    for room in again {
        news.judge(room.0, |out| check(sheet, sheet.facts.room(*room), out));
    }
}

/// What a rule says about everything that it is about.
pub(super) fn everything(sheet: &Sheet<'_>, rule: &Rule) -> News {
    let mut news = News::default();
    rule.check.each(sheet, |subject, judge| news.judge(subject, judge));
    news
}
