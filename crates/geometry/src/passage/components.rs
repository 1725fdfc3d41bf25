//! Pieces that hang together, and round which places their loops go.

use super::rays::Label;

/// A union-find whose links carry labels: sums (exclusive or) of the labels on the way.
#[derive(Clone, Debug, Default)]
pub(super) struct Components {
    /// The parent of each piece and the label of the way to it; a root is its own parent.
    up: Vec<(u32, Label)>,
    size: Vec<u32>,
    /// The pieces that were joined since the last start.
    joined: Vec<u32>,
}

impl Components {
    /// All pieces alone.
    pub fn new(count: usize) -> Components {
        let mut all = Components::default();
        all.reset(count);
        all
    }

    /// All pieces alone again. Takes as long as there were joins, not pieces.
    pub fn reset(&mut self, count: usize) {
        for i in self.joined.drain(..) {
            self.up[i as usize] = (i, 0);
            self.size[i as usize] = 1;
        }
        self.up.truncate(count);
        self.up.extend((self.up.len() as u32..count as u32).map(|i| (i, 0)));
        self.size.resize(count, 1);
    }

    /// Joins two pieces by a way with a label. When they hung together already, the label of the loop
    /// that is closed.
    pub fn join(&mut self, a: usize, b: usize, label: Label) -> Option<Label> {
        let ((root_a, to_a), (root_b, to_b)) = (self.root(a), self.root(b));
        let across = to_a ^ label ^ to_b;
        if root_a == root_b {
            return Some(across);
        }
        let (child, parent) =
            if self.size[root_a] < self.size[root_b] { (root_a, root_b) } else { (root_b, root_a) };
        self.joined.extend([child as u32, parent as u32]);
        self.up[child] = (parent as u32, across);
        self.size[parent] += self.size[child];
        None
    }

    /// The root of a piece and the label of the way to it. Halves the way for the next time.
    fn root(&mut self, piece: usize) -> (usize, Label) {
        let (mut at, mut label) = (piece, 0);
        loop {
            let (parent, step) = self.up[at];
            let (above, further) = self.up[parent as usize];
            // A root's own label is zero, so this holds at the root and below it too.
            self.up[at] = (above, step ^ further);
            label ^= step ^ further;
            if parent == above {
                return (above as usize, label);
            }
            at = above as usize;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The label of a way between two pieces, by walking over the joined pairs.
    fn by_walking(pairs: &[(usize, usize, Label)], from: usize, to: usize) -> Option<Label> {
        let mut known = vec![(from, 0)];
        let mut next = 0;
        while let Some(&(at, label)) = known.get(next) {
            next += 1;
            for &(a, b, step) in pairs {
                for (a, b) in [(a, b), (b, a)] {
                    if a == at && known.iter().all(|k| k.0 != b) {
                        known.push((b, label ^ step));
                    }
                }
            }
        }
        known.iter().find(|k| k.0 == to).map(|k| k.1)
    }

    proptest! {
        #[test]
        fn starting_again_is_as_new(
            pairs in prop::collection::vec((0..9usize, 0..9usize, any::<Label>()), 0..30),
            counts in prop::collection::vec(1..9usize, 1..4),
        ) {
            let mut again = Components::new(9);
            for &count in &counts {
                again.reset(count);
                let mut new = Components::new(count);
                for &(a, b, label) in pairs.iter().filter(|p| p.0 < count && p.1 < count) {
                    prop_assert_eq!(again.join(a, b, label), new.join(a, b, label));
                }
            }
        }

        #[test]
        fn loops_have_the_label_that_walking_finds(
            pairs in prop::collection::vec((0..9usize, 0..9usize, any::<Label>()), 0..30),
        ) {
            let mut components = Components::new(9);
            let mut joined = Vec::new();
            for &(a, b, label) in &pairs {
                let way = by_walking(&joined, a, b);
                let round = components.join(a, b, label);
                prop_assert_eq!(round, way.map(|way| way ^ label));
                if round.is_none() {
                    joined.push((a, b, label));
                }
            }
        }
    }
}
