//! Ways while some pieces move and the rest stays.

use measure::Len;

use super::batch::{Batch, Edge};
use super::contraction::Contraction;
use super::obstacles::Obstacles;
use super::scene::{Pair, Scene};
use super::search::Search;
use super::way::Way;
use crate::Pt;

/// The pieces that stay, the places, and the pairs of the pieces that stay that can matter whatever
/// else is put in.
///
/// Those pairs are a spanning forest with the pairs that parted places: a pair that closes no new
/// loop among nearer ones closes none when further pieces come in between either. So they are at
/// most as many as pieces and places; they are kept so that a step of a drag looks only at those near
/// the moving pieces ([`Contraction`]), however large the plan. The places stay: when one of them
/// moves, prepare again.
#[derive(Clone, Debug)]
pub struct Held {
    fixed: Obstacles,
    search: Search,
    /// Pairs that are farther apart than this do not matter: no way is as wide.
    reach: Len,
    batches: Vec<Batch>,
    /// For every batch.
    kept: Vec<Kept>,
}

#[derive(Clone, Debug)]
struct Kept {
    mattered: Vec<Edge>,
    contraction: Contraction,
}

impl Held {
    /// Prepares. `fixed` are the pieces that stay; the rest as for [`super::ways`].
    pub fn new(fixed: Obstacles, arrivals: &[Pt], targets: &[Pt], most: Len) -> Held {
        let none = Obstacles::default();
        let scene = Scene { fixed: &fixed, moving: &none };
        let search = Search::new(scene, arrivals, targets, most);
        let mut batches = Batch::all(arrivals, targets, scene.len());
        let mattered = search.run(scene, &mut batches);
        let widest = search.ways(scene, &batches).iter().map(|way| way.width).max();
        let reach = widest.unwrap_or_default() + Len::UNIT;
        let keep = |mattered: Vec<Edge>| Kept {
            contraction: Contraction::new(fixed.len(), &mattered),
            mattered,
        };
        let kept = mattered.into_iter().map(keep).collect();
        Held { fixed, search, reach, batches, kept }
    }

    /// The ways with the moving pieces where they are now; the same, to the bit, as
    /// [`super::ways`] gives for the fixed pieces followed by the moving ones.
    pub fn ways(&mut self, moving: &Obstacles) -> Vec<Way> {
        let scene = Scene { fixed: &self.fixed, moving };
        let search = self.search.with_moving(scene);
        let mut pairs = Vec::new();
        scene.moving_pairs(self.reach, &mut pairs);
        let order = scene.order(&pairs);
        let sorted: Vec<&Pair> = order.iter().map(|&i| &pairs[i as usize]).collect();
        let touched = || pairs.iter().map(|p| p.a).filter(|&a| (a as usize) < self.fixed.len());
        let mut steps = Vec::new();
        for (batch, kept) in self.batches.iter_mut().zip(&self.kept) {
            batch.reset(scene.len());
            kept.contraction.steps(touched(), &mut steps);
            search.merge(scene, batch, (&kept.mattered, &steps), &sorted);
        }
        search.ways(scene, &self.batches)
    }
}
