//! Pairs by rising distance, until every target is parted from every arrival or can be no wider.

use measure::Len;

use super::batch::{Batch, Change, Edge};
use super::contraction::Step;
use super::scene::{Pair, Scene};
use super::way::{Limit, Pinch, Standing, Way};
use crate::reach::Reach;
use crate::{Pt, gap};

/// Pairs up to this distance are sought first, then up to twice as far, and so on.
const FIRST: Len = Len::inches(36);

/// A place with the piece nearest to it, within the limits of a search.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stand {
    place: Pt,
    /// The nearest piece and the square of twice its distance; `None` where that is the limit or more.
    near: Option<(usize, Reach)>,
}

impl Stand {
    /// With one more piece, if it is nearer; of two that are as near, the first by its corners.
    fn with(self, scene: Scene, piece: Option<(usize, Reach)>, most: Len) -> Stand {
        let twice = piece.map(|(piece, reach)| (piece, reach.doubled()));
        let nearer = twice.filter(|new| match &self.near {
            None => new.1 < Reach::of_len(most),
            Some(old) => {
                let order = new.1.cmp(&old.1);
                order.then_with(|| scene.ring(new.0).cmp(scene.ring(old.0))).is_lt()
            }
        });
        Stand { near: nearer.or(self.near), ..self }
    }

    /// The width of the widest person who can stand there, or the limit.
    pub fn width(&self, most: Len) -> Reach {
        self.near.map_or(Reach::of_len(most), |near| near.1)
    }
}

/// What is asked: how wide, from where and to where.
#[derive(Clone, Debug)]
pub(super) struct Search {
    arrivals: Vec<Stand>,
    targets: Vec<Stand>,
    most: Len,
}

impl Search {
    pub fn new(scene: Scene, arrivals: &[Pt], targets: &[Pt], most: Len) -> Search {
        let most = most.clamp(Len::UNIT, Len::COORD_LIMIT);
        let stand = |&place: &Pt| {
            let near = scene.fixed.nearest(place, most / 2 + Len::UNIT);
            Stand { place, near: None }.with(scene, near, most)
        };
        let all = |places: &[Pt]| places.iter().map(stand).collect();
        Search { arrivals: all(arrivals), targets: all(targets), most }
    }

    /// The same question with the pieces that move as well.
    pub fn with_moving(&self, scene: Scene) -> Search {
        let nearer = |stand: &Stand| {
            let near = scene.nearest_moving(stand.place, self.most / 2 + Len::UNIT);
            stand.with(scene, near, self.most)
        };
        let all = |stands: &[Stand]| stands.iter().map(nearer).collect();
        Search { arrivals: all(&self.arrivals), targets: all(&self.targets), most: self.most }
    }

    /// Adds the steps of what stays together with pairs of pieces that move, both in order.
    pub fn merge(
        &self,
        scene: Scene,
        batch: &mut Batch,
        (mattered, steps): (&[Edge], &[Step]),
        moving: &[&Pair],
    ) {
        let mut open = batch.open(&self.arrivals, &self.targets, self.most);
        let kept = steps.iter().map(|step| (&mattered[step.pair as usize].pair, step));
        let (mut kept, mut moving) = (kept.peekable(), moving.iter().peekable());
        while let Some(limit) = open {
            let first = match (kept.peek(), moving.peek()) {
                (Some((pair, _)), Some(other)) => scene.cmp(pair, other).is_lt(),
                (kept, _) => kept.is_some(),
            };
            let next = match first {
                true => kept.next().map(|(pair, step)| (pair, step.ends, step.label)),
                false => moving.next().map(|pair| {
                    let edge = batch.edge(pair, scene);
                    (*pair, [pair.a, pair.b], edge.label)
                }),
            };
            let Some((pair, ends, label)) = next.filter(|(pair, ..)| pair.reach < limit) else {
                break;
            };
            if batch.join(pair, ends, label) == Change::Parted {
                open = batch.open(&self.arrivals, &self.targets, self.most);
            }
        }
    }

    /// Adds the pairs of the pieces that stay. Gives, for every batch, the pairs that mattered.
    pub fn run(&self, scene: Scene, batches: &mut [Batch]) -> Vec<Vec<Edge>> {
        let mut mattered: Vec<Vec<Edge>> = vec![Vec::new(); batches.len()];
        let (mut done, mut radius) = (Len::ZERO, FIRST.min(self.most));
        let mut pairs: Vec<Pair> = Vec::new();
        while radius > done {
            scene.fixed_pairs(done, radius, &mut pairs);
            let later = pairs.extract_if(.., |pair| !pair.reach.is_below(radius)).collect();
            let order = scene.order(&pairs);
            let sorted = || order.iter().map(|&i| &pairs[i as usize]);
            let mut widest: Option<Reach> = None;
            for (batch, mattered) in batches.iter_mut().zip(&mut mattered) {
                let open = self.feed(scene, batch, sorted(), mattered);
                widest = widest.max(open);
            }
            (pairs, done) = (later, radius);
            if widest.is_some_and(|widest| !widest.is_below(radius)) {
                radius = radius.checked_add(radius).unwrap_or(self.most).min(self.most);
            }
        }
        mattered
    }

    /// Adds pairs to a batch as long as one can be in question. Gives the widest width that is left.
    fn feed<'a>(
        &self,
        scene: Scene,
        batch: &mut Batch,
        pairs: impl Iterator<Item = &'a Pair>,
        mattered: &mut Vec<Edge>,
    ) -> Option<Reach> {
        let mut open = batch.open(&self.arrivals, &self.targets, self.most);
        for pair in pairs {
            if open.is_none_or(|open| pair.reach >= open) {
                break;
            }
            let edge = batch.edge(pair, scene);
            match batch.add(&edge) {
                Change::Nothing => continue,
                Change::Joined => {}
                Change::Parted => open = batch.open(&self.arrivals, &self.targets, self.most),
            }
            mattered.push(edge);
        }
        open
    }

    /// The ways to all targets, from what the batches have found.
    pub fn ways(&self, scene: Scene, batches: &[Batch]) -> Vec<Way> {
        let nothing = (Reach::ZERO, None, Bound::Nowhere);
        let mut best = vec![nothing; self.targets.len()];
        for batch in batches {
            for (t, target) in batch.targets.clone().enumerate() {
                for (s, arrival) in batch.arrivals.clone().enumerate() {
                    let (width, bound) = self.bound(batch.parted_by(s, t), arrival, target);
                    // A walled or buried way is still better than none.
                    if best[target].1.is_none() || width > best[target].0 {
                        best[target] = (width, Some(arrival), bound);
                    }
                }
            }
        }
        let way =
            |(target, &(width, arrival, bound)): (usize, &(Reach, Option<usize>, Bound))| Way {
                width: width.len(),
                arrival,
                limit: self.limit(scene, bound, width, arrival, target),
            };
        best.iter().enumerate().map(way).collect()
    }

    /// The least of the widths that a pair and the two places allow.
    fn bound(&self, pair: Option<&Pair>, arrival: usize, target: usize) -> (Reach, Bound) {
        let mut least = (Reach::of_len(self.most), Bound::Open);
        // Where a place is as near as the gap is wide, the label of the gap says nothing about it:
        // so the places come first.
        if let Some((piece, width)) = self.targets[target].near {
            least = (width, Bound::Target(piece));
        }
        if let Some((piece, width)) = self.arrivals[arrival].near.filter(|n| n.1 < least.0) {
            least = (width, Bound::Arrival(piece));
        }
        match pair {
            Some(pair) if pair.reach < least.0 => (pair.reach, Bound::Pair(pair.a, pair.b)),
            _ => least,
        }
    }

    fn limit(
        &self,
        scene: Scene,
        bound: Bound,
        width: Reach,
        arrival: Option<usize>,
        target: usize,
    ) -> Limit {
        let standing = |at_arrival: bool, place: Pt, piece: usize| {
            let nearest = scene.foot(place, piece);
            let standing =
                Standing { at_arrival, place, nearest, piece, owner: scene.owner(piece) };
            if width.is_zero() { Limit::Buried(standing) } else { Limit::Standing(standing) }
        };
        match (bound, arrival) {
            (Bound::Open, _) => Limit::Open,
            (Bound::Target(piece), _) => standing(false, self.targets[target].place, piece),
            (Bound::Arrival(piece), Some(arrival)) => {
                standing(true, self.arrivals[arrival].place, piece)
            }
            (Bound::Pair(a, b), _) if width.is_zero() => Limit::Walled(pinch(scene, a, b)),
            (Bound::Pair(a, b), _) => Limit::Pinch(pinch(scene, a, b)),
            (Bound::Nowhere | Bound::Arrival(_), _) => Limit::NoArrival,
        }
    }
}

/// What bounds a width.
#[derive(Clone, Copy, Debug)]
enum Bound {
    Nowhere,
    Open,
    Target(usize),
    Arrival(usize),
    Pair(u32, u32),
}

fn pinch(scene: Scene, a: u32, b: u32) -> Pinch {
    let (a, b) = (a as usize, b as usize);
    // The same whichever piece comes first in the plan.
    let (a, b) = if (scene.ring(a), a) <= (scene.ring(b), b) { (a, b) } else { (b, a) };
    let gap = gap(scene.ring(a), scene.ring(b));
    let (from, to, pieces) =
        if gap.from <= gap.to { (gap.from, gap.to, [a, b]) } else { (gap.to, gap.from, [b, a]) };
    Pinch { from, to, pieces, owners: pieces.map(|piece| scene.owner(piece)) }
}
