//! Which places are still together, and what parted them.

use super::rays::Label;

/// The places in classes; a class is parted once, by an event, into two.
#[derive(Clone, Debug)]
pub(super) struct Partition {
    /// The classes in the order in which they came up; parents before children.
    classes: Vec<Class>,
    /// The places with their class now.
    of: Vec<usize>,
    /// The classes of two places or more that are not parted.
    open: Vec<usize>,
}

#[derive(Clone, Copy, Debug)]
struct Class {
    parent: usize,
    parted_by: Option<usize>,
    members: Label,
}

impl Partition {
    /// All of up to [`Label::BITS`] places together.
    pub fn new(count: usize) -> Partition {
        let members = if count >= Label::BITS as usize { Label::MAX } else { (1 << count) - 1 };
        let all = Class { parent: 0, parted_by: None, members };
        let open = if count > 1 { vec![0] } else { vec![] };
        Partition { classes: vec![all], of: vec![0; count], open }
    }

    /// A loop that goes round the places with a bit in `label` and not round the others. Whether it
    /// parted any; `event` is then what [`Partition::parted_by`] gives for them.
    pub fn part(&mut self, label: Label, event: usize) -> bool {
        let known = self.classes.len();
        for class in std::mem::take(&mut self.open) {
            let members = self.classes[class].members;
            let (round, others) = (members & label, members & !label);
            if round == 0 || others == 0 {
                self.open.push(class);
                continue;
            }
            self.classes[class].parted_by = Some(event);
            self.add(class, round);
            self.add(class, others);
        }
        self.classes.len() > known
    }

    fn add(&mut self, parent: usize, members: Label) {
        let child = self.classes.len();
        self.classes.push(Class { parent, parted_by: None, members });
        for (place, of) in self.of.iter_mut().enumerate() {
            if members >> place & 1 == 1 {
                *of = child;
            }
        }
        if members.count_ones() > 1 {
            self.open.push(child);
        }
    }

    /// Whether no two places are together.
    pub fn is_finest(&self) -> bool {
        self.open.is_empty()
    }

    /// Whether nothing has parted two places yet.
    pub fn are_together(&self, a: usize, b: usize) -> bool {
        self.of[a] == self.of[b]
    }

    /// The event that parted two places; `None` while they are together.
    pub fn parted_by(&self, a: usize, b: usize) -> Option<usize> {
        if self.are_together(a, b) {
            return None;
        }
        let (mut a, mut b) = (self.of[a], self.of[b]);
        while a != b {
            if a > b {
                a = self.classes[a].parent;
            } else {
                b = self.classes[b].parent;
            }
        }
        self.classes[a].parted_by
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// By looking for the first label that differs.
        #[test]
        fn places_are_parted_by_the_first_label_that_differs(
            count in 0..=128usize, labels in prop::collection::vec(any::<Label>().prop_map(|l| l & l >> 7 & l >> 13), 0..40),
        ) {
            let mut partition = Partition::new(count);
            for (event, &label) in labels.iter().enumerate() {
                let before: Vec<Option<usize>> =
                    (0..count).map(|b| partition.parted_by(0, b)).collect();
                let parted = partition.part(label, event);
                let changed = (0..count).any(|b| partition.parted_by(0, b) != before[b]);
                prop_assert!(parted || !changed);
            }
            let mut finest = true;
            for a in 0..count {
                for b in 0..a {
                    let first = labels.iter().position(|l| (l >> a ^ l >> b) & 1 == 1);
                    prop_assert_eq!(partition.parted_by(a, b), first);
                    finest &= first.is_some();
                }
            }
            prop_assert_eq!(partition.is_finest(), finest);
        }
    }
}
