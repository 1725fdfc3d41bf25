//! Boxes by their index, and which of them meet a box.

use geometry::Bounds;

use crate::List;

/// How many boxes have a box round them all. Elements that were drawn together mostly stand together, so most of these
/// boxes are passed by with all that is in them.
const GROUP: usize = 16;

/// Boxes by their index, shared between versions as a [`List`] is.
#[derive(Clone, Debug, Default)]
pub(crate) struct Boxes {
    each: List<Bounds>,
    groups: List<Bounds>,
}

impl Boxes {
    /// The indices of the boxes that meet a box, in order.
    pub fn near(&self, bounds: Bounds) -> impl Iterator<Item = usize> {
        let meets = move |(i, b): (usize, &Bounds)| b.meets(bounds).then_some(i);
        self.groups.iter().enumerate().filter_map(meets).flat_map(move |group| {
            let members = self.members(group);
            members.enumerate().filter_map(meets).map(move |i| group * GROUP + i)
        })
    }

    pub fn put(&mut self, index: usize, bounds: Bounds) {
        if self.each[index] != bounds {
            self.each.put(index, bounds);
            let group = index / GROUP;
            self.groups.put(group, union(self.members(group)));
        }
    }

    pub fn push(&mut self, bounds: Bounds) {
        if self.each.len().is_multiple_of(GROUP) {
            self.groups.push(bounds);
        } else {
            let last = self.groups.len() - 1;
            self.groups.put(last, self.groups[last].union(bounds));
        }
        self.each.push(bounds);
    }

    fn members(&self, group: usize) -> impl Iterator<Item = &Bounds> {
        let start = group * GROUP;
        self.each.range(start, (start + GROUP).min(self.each.len()))
    }
}

impl From<Vec<Bounds>> for Boxes {
    fn from(all: Vec<Bounds>) -> Boxes {
        let groups: Vec<Bounds> = all.chunks(GROUP).map(union).collect();
        Boxes { each: all.into(), groups: groups.into() }
    }
}

fn union<'a>(boxes: impl IntoIterator<Item = &'a Bounds>) -> Bounds {
    boxes.into_iter().fold(Bounds::EMPTY, |all, b| all.union(*b))
}

#[cfg(test)]
mod tests {
    use geometry::Pt;
    use proptest::prelude::*;

    use super::*;

    fn any_box() -> impl Strategy<Value = Bounds> {
        let point = || (-40..40i32, -40..40i32).prop_map(Pt::from);
        proptest::collection::vec(point(), 0..3).prop_map(Bounds::of)
    }

    proptest! {
        /// What is near is what a scan finds, whether the boxes came at once, one by one, or in place of others.
        #[test]
        fn near_is_what_a_scan_finds(
            mut all in proptest::collection::vec(any_box(), 0..60),
            puts in proptest::collection::vec((any::<prop::sample::Index>(), any_box()), 0..9),
            wanted in any_box(),
        ) {
            let mut boxes = Boxes::from(all.clone());
            let mut pushed = Boxes::default();
            all.iter().for_each(|b| pushed.push(*b));
            let puts = if all.is_empty() { Vec::new() } else { puts };
            for (i, b) in puts {
                let i = i.index(all.len());
                all[i] = b;
                boxes.put(i, b);
                pushed.put(i, b);
            }
            let scanned: Vec<usize> = (0..all.len()).filter(|i| all[*i].meets(wanted)).collect();
            prop_assert_eq!(boxes.near(wanted).collect::<Vec<_>>(), &scanned[..]);
            prop_assert_eq!(pushed.near(wanted).collect::<Vec<_>>(), scanned);
        }
    }
}
