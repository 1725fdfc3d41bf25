//! Which boxes are near a box, when few of them move.

use std::sync::Arc;

use geometry::{Bounds, Grid, Pt};

/// More moved boxes than this, and the grid is built anew.
const MOST_MOVED: usize = 64;

/// A grid over boxes, shared by those that were made from one another, and the boxes that have moved since it was built.
#[derive(Clone, Debug, Default)]
pub(crate) struct Places {
    grid: Arc<Grid>,
    /// By index.
    moved: Vec<(usize, Bounds)>,
}

impl Places {
    /// The indices of the boxes that meet `within` (touching counts), in rising order, each once.
    pub fn query(&self, within: Bounds) -> Vec<usize> {
        let mut found = Vec::new();
        self.each_near(within, |i| found.push(i));
        found.sort_unstable();
        found
    }

    /// The first box that holds a point (an edge counts) and of which something else holds too.
    pub fn first_at(&self, p: Pt, holds: impl Fn(usize) -> bool) -> Option<usize> {
        let stays = |i: &usize| self.moved.binary_search_by_key(i, |m| m.0).is_err();
        let stayed = self.grid.at(p).filter(stays).find(|i| holds(*i));
        let mut moved = self.moved.iter().filter(|(_, b)| b.contains(p)).map(|(i, _)| *i);
        stayed.into_iter().chain(moved.find(|i| holds(*i))).min()
    }

    /// Gives the indices of the boxes that meet `within` (touching counts), each once, in any order.
    pub fn each_near(&self, within: Bounds, mut each: impl FnMut(usize)) {
        let stays = |i: usize| self.moved.binary_search_by_key(&i, |m| m.0).is_err();
        self.grid.each_near(within, |i| {
            if stays(i) {
                each(i);
            }
        });
        let meets = |b: &Bounds| !b.is_empty() && !within.is_empty() && b.meets(within);
        self.moved.iter().filter(|(_, b)| meets(b)).for_each(|(i, _)| each(*i));
    }

    pub fn get(&self, index: usize) -> Bounds {
        match self.moved.binary_search_by_key(&index, |m| m.0) {
            Ok(at) => self.moved[at].1,
            Err(_) => self.grid.bounds(index),
        }
    }

    /// Moves a box.
    pub fn put(&mut self, index: usize, bounds: Bounds) {
        let stays = self.grid.bounds(index) == bounds;
        match self.moved.binary_search_by_key(&index, |m| m.0) {
            Ok(at) if stays => drop(self.moved.remove(at)),
            Ok(at) => self.moved[at].1 = bounds,
            Err(_) if stays => {}
            Err(at) => self.moved.insert(at, (index, bounds)),
        }
        if self.moved.len() > MOST_MOVED {
            let boxes = (0..self.grid.len()).map(|i| self.get(i)).collect();
            *self = Places::from(Grid::new(boxes));
        }
    }
}

impl From<Grid> for Places {
    fn from(grid: Grid) -> Places {
        Places { grid: Arc::new(grid), moved: Vec::new() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn bounds() -> impl Strategy<Value = Bounds> {
        let at = || -4_000_000..4_000_000;
        (at(), at(), 0..900_000, 0..900_000)
            .prop_map(|(x, y, w, h)| Bounds::of([Pt::new(x, y), Pt::new(x + w, y + h)]))
    }

    proptest! {
        /// Boxes that were moved are found as in a grid that is built anew.
        #[test]
        fn moved_boxes_are_found_where_they_are(
            mut boxes in prop::collection::vec(bounds(), 1..90),
            moves in prop::collection::vec((0usize..90, bounds()), 0..150),
            asked in bounds(),
        ) {
            let mut places = Places::from(Grid::new(boxes.clone()));
            for (i, to) in moves {
                if i < boxes.len() {
                    places.put(i, to);
                    boxes[i] = to;
                }
            }
            let grid = Grid::new(boxes);
            prop_assert_eq!(places.query(asked), grid.query(asked));
            let odd = |i: &usize| i % 2 == 1;
            for p in [asked.min, asked.max, grid.bounds(0).min] {
                let found = grid.query(Bounds { min: p, max: p });
                prop_assert!(grid.at(p).eq(found.iter().copied()));
                prop_assert_eq!(places.first_at(p, |i| odd(&i)), found.into_iter().find(odd));
            }
        }
    }
}
