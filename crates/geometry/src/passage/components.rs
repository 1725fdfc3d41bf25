//! Pieces that hang together, and round which places their loops go.

/// A union-find whose links carry labels: sums (exclusive or) of the labels on the way.
#[derive(Clone, Debug, Default)]
pub(super) struct Components {
    /// The parent of each piece and the label of the way to it; a root is its own parent.
    up: Vec<(u32, u64)>,
    size: Vec<u32>,
}

impl Components {
    /// All pieces alone.
    pub fn new(count: usize) -> Components {
        let mut all = Components::default();
        all.reset(count);
        all
    }

    /// All pieces alone again.
    pub fn reset(&mut self, count: usize) {
        self.up.clear();
        self.up.extend((0..count as u32).map(|i| (i, 0)));
        self.size.clear();
        self.size.resize(count, 1);
    }

    /// Joins two pieces by a way with a label. When they hung together already, the label of the loop
    /// that is closed.
    pub fn join(&mut self, a: usize, b: usize, label: u64) -> Option<u64> {
        let ((root_a, to_a), (root_b, to_b)) = (self.root(a), self.root(b));
        let across = to_a ^ label ^ to_b;
        if root_a == root_b {
            return Some(across);
        }
        let (child, parent) =
            if self.size[root_a] < self.size[root_b] { (root_a, root_b) } else { (root_b, root_a) };
        self.up[child] = (parent as u32, across);
        self.size[parent] += self.size[child];
        None
    }

    /// The root of a piece and the label of the way to it. Halves the way for the next time.
    fn root(&mut self, piece: usize) -> (usize, u64) {
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
