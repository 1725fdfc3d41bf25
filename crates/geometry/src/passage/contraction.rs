//! The pairs of the pieces that stay, so that a step of a drag looks only at what the moving pieces touch.
//!
//! The forest of the pairs that joined pieces is hung anew: joining by size, each root hangs below the other
//! root, so that no piece is deeper than the logarithm of their number. A link keeps the pair that made it and
//! the label of the way between the two roots. Which pieces hang together at any distance, and by ways of which
//! labels, is the same as in the forest; and of the hung tree only what lies above the touched pieces matters: a
//! part that nothing moving touches joins the rest as it did without it. (Contracting what stays to what can
//! change: Eppstein 1994, offline minimum spanning trees; that hanging by size gives it is derived.) The pairs
//! that parted places are loops: their labels count, wherever they hang.

use super::batch::Edge;
use super::rays::Label;

/// A pair by its place among the pairs that mattered, and what it does when its turn comes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    /// Place among the pairs that mattered, which are in order.
    pub pair: u32,
    /// The two ends; the same twice for a loop.
    pub ends: [u32; 2],
    pub label: Label,
}

/// Where a piece hangs: by which step; none at a root.
type Hung = Option<u32>;

#[derive(Clone, Debug)]
pub(super) struct Contraction {
    hung: Vec<Hung>,
    /// The links, then nothing else: `hung` points here.
    links: Vec<Step>,
    loops: Vec<Step>,
}

impl Contraction {
    /// Of the pairs that mattered, in their order, with whether each joined two parts.
    pub fn new(pieces: usize, mattered: &[Edge]) -> Contraction {
        let mut new =
            Contraction { hung: vec![None; pieces], links: Vec::new(), loops: Vec::new() };
        let mut size = vec![1u32; pieces];
        for (pair, edge) in (0u32..).zip(mattered) {
            let ((a, to_a), (b, to_b)) = (new.root(edge.pair.a), new.root(edge.pair.b));
            let label = to_a ^ edge.label ^ to_b;
            if a == b {
                new.loops.push(Step { pair, ends: [a, a], label });
                continue;
            }
            let (below, above) = if size[a as usize] < size[b as usize] { (a, b) } else { (b, a) };
            size[above as usize] += size[below as usize];
            new.hung[below as usize] = u32::try_from(new.links.len()).ok();
            new.links.push(Step { pair, ends: [below, above], label });
        }
        new
    }

    /// The root of a piece and the label of the way to it.
    fn root(&self, piece: u32) -> (u32, Label) {
        let (mut at, mut label) = (piece, 0);
        while let Some(link) = self.above(at) {
            (at, label) = (link.ends[1], label ^ link.label);
        }
        (at, label)
    }

    fn above(&self, piece: u32) -> Option<&Step> {
        self.hung[piece as usize].map(|link| &self.links[link as usize])
    }

    /// The steps that matter when something comes to touch these pieces, in order.
    pub fn steps(&self, touched: impl Iterator<Item = u32>, steps: &mut Vec<Step>) {
        steps.clear();
        for piece in touched {
            let mut at = piece;
            while let Some(link) = self.above(at) {
                steps.push(*link);
                at = link.ends[1];
            }
        }
        steps.extend(&self.loops);
        steps.sort_unstable_by_key(|step| step.pair);
        steps.dedup_by_key(|step| step.pair);
    }
}
