//! The heights that the code names for a room, for a map of the headroom.

use measure::Len;
use space::{Facts, RoomIndex};

use crate::rules::headroom::{ceiling_limit, projection_limit};
use crate::{Book, Citation, Sheet};

/// A height that the code asks for somewhere in a room.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedHeight {
    pub height: Len,
    /// `ceiling` or `under beams and ducts`.
    pub of: &'static str,
    pub citation: Citation,
}

/// What is asked for in a room by its use, the edition, the place and whether the house stands already: the lower
/// height first. Empty where nothing is asked.
pub fn named_heights(facts: &Facts, book: &Book, room: RoomIndex) -> Vec<NamedHeight> {
    let sheet = Sheet::new(facts, book);
    let room_use = facts.room(room).room_use;
    let named = [
        (projection_limit(&sheet, room_use), "under beams and ducts"),
        (ceiling_limit(&sheet, room_use), "ceiling"),
    ];
    let mut heights: Vec<NamedHeight> = named
        .into_iter()
        .filter_map(|(limit, of)| {
            let limit = limit?.limit;
            Some(NamedHeight { height: limit.value, of, citation: limit.citation })
        })
        .collect();
    heights.sort_by_key(|h| h.height);
    heights
}

#[cfg(test)]
mod tests {
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, inch};

    fn heights(sample: &Sample) -> Vec<(Len, &'static str)> {
        let named = named_heights(&sample.facts(), &sample.book(), RoomIndex(0));
        named.into_iter().map(|h| (h.height, h.of)).collect()
    }

    #[test]
    fn by_use_and_house() {
        let den = Sample::with_room(RoomUse::Den);
        assert_eq!(
            heights(&den.new_house()),
            [(inch(76.0), "under beams and ducts"), (inch(84.0), "ceiling")]
        );
        assert!(heights(&Sample::with_room(RoomUse::Unfinished)).is_empty());
    }
}
