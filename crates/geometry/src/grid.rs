//! Which boxes are near a box: a uniform grid of cells.
//!
//! The cells are 48 in square, or larger by a power of two where the boxes are spread so thinly that
//! 48 in would make more than a few cells per box. The lists of all cells lie in one array, filled
//! by counting sort: `items[starts[c] .. starts[c + 1]]` are the boxes that meet cell `c`.

use measure::Len;

use crate::{Bounds, Pt};

/// Boxes by place. Built once, then asked; to move a box, build again.
#[derive(Clone, Debug, Default)]
pub struct Grid {
    boxes: Vec<Bounds>,
    all: Bounds,
    /// Cells are `2^shift` times 48 in.
    shift: u32,
    columns: usize,
    rows: usize,
    starts: Vec<u32>,
    items: Vec<u32>,
}

/// The cells that a box meets: columns from, to; rows from, to.
type Span = (usize, usize, usize, usize);

impl Grid {
    /// The side of the smallest cell.
    pub const CELL: Len = Len::inches(48);

    /// A grid over boxes; they are known by their index. Empty boxes are never found.
    pub fn new(boxes: Vec<Bounds>) -> Grid {
        let all = boxes
            .iter()
            .fold(Bounds::EMPTY, |all, &b| if b.is_empty() { all } else { all.union(b) });
        let mut grid = Grid { boxes, all, ..Grid::default() };
        if all.is_empty() {
            return grid;
        }
        let most = 4 * grid.boxes.len() + 64;
        loop {
            let (_, column, _, row) = grid.span(all);
            (grid.columns, grid.rows) = (column + 1, row + 1);
            if grid.columns.saturating_mul(grid.rows) <= most {
                break;
            }
            grid.shift += 1;
        }
        grid.fill();
        grid
    }

    fn fill(&mut self) {
        let mut starts = vec![0u32; self.columns * self.rows + 1];
        for &b in self.boxes.iter().filter(|b| !b.is_empty()) {
            self.cells(self.span(b)).for_each(|cell| starts[cell + 1] += 1);
        }
        for cell in 1..starts.len() {
            starts[cell] += starts[cell - 1];
        }
        let mut next = starts.clone();
        let mut items = vec![0u32; starts[starts.len() - 1] as usize];
        for (index, &b) in self.boxes.iter().enumerate().filter(|(_, b)| !b.is_empty()) {
            for cell in self.cells(self.span(b)) {
                items[next[cell] as usize] = index as u32;
                next[cell] += 1;
            }
        }
        (self.starts, self.items) = (starts, items);
    }

    /// The indices of the boxes that meet `within` (touching counts), in rising order, each once.
    pub fn query(&self, within: Bounds) -> Vec<usize> {
        let mut found: Vec<usize> = Vec::new();
        self.each_near(within, |i| found.push(i));
        found.sort_unstable();
        found.dedup();
        found
    }

    /// The indices of the boxes that hold a point (an edge counts), in rising order.
    pub fn at(&self, p: Pt) -> impl Iterator<Item = usize> {
        let point = Bounds { min: p, max: p };
        let inside = self.all.contains(p).then(|| self.cells(self.span(point)));
        let items = inside.into_iter().flatten().flat_map(|cell| self.cell(cell));
        items.filter(move |&i| self.boxes[i].contains(p))
    }

    /// Gives the indices of the boxes that meet `within` (touching counts), in any order, and some of them several times.
    pub fn each_near(&self, within: Bounds, mut each: impl FnMut(usize)) {
        if !within.is_empty() && within.meets(self.all) {
            let items = self.cells(self.span(within)).flat_map(|cell| self.cell(cell));
            items.filter(|&i| self.boxes[i].meets(within)).for_each(&mut each);
        }
    }

    fn cell(&self, cell: usize) -> impl Iterator<Item = usize> + '_ {
        let (from, to) = (self.starts[cell] as usize, self.starts[cell + 1] as usize);
        self.items[from..to].iter().map(|&i| i as usize)
    }

    /// Gives every pair of boxes that are at most `by` apart both along x and along y, each pair once,
    /// the lower index first, in rising order of it. `by` is not negative.
    pub fn near_pairs(&self, by: Len, mut each: impl FnMut(usize, usize)) {
        for (i, b) in self.boxes.iter().enumerate().filter(|(_, b)| !b.is_empty()) {
            let grown = b.grow(by);
            for cell in self.cells(self.span(grown)) {
                for j in self.cell(cell) {
                    // Both boxes meet the cell of the lowest leftmost point that they share.
                    if i < j && self.boxes[j].meets(grown) && cell == self.shared(grown, j) {
                        each(i, j);
                    }
                }
            }
        }
    }

    /// The cell of the lowest leftmost point that box `j` shares with `other`, which it meets.
    fn shared(&self, other: Bounds, j: usize) -> usize {
        let (a, b) = (other.min, self.boxes[j].min);
        let p = Pt::new(a.x.max(b.x), a.y.max(b.y));
        let (column, _, row, _) = self.span(Bounds { min: p, max: p });
        row * self.columns + column
    }

    /// The box round all boxes.
    pub fn all(&self) -> Bounds {
        self.all
    }

    /// The box with an index.
    pub fn bounds(&self, index: usize) -> Bounds {
        self.boxes[index]
    }

    /// The cells that the part of a box inside the grid meets.
    fn span(&self, b: Bounds) -> Span {
        let cell = |at: i32, from: i32| {
            let at = (i64::from(at) - i64::from(from)).max(0);
            (at / (i64::from(Grid::CELL.units()) << self.shift)) as usize
        };
        let (min, last) = (self.all.min, self.all.max);
        (
            cell(b.min.x, min.x),
            cell(b.max.x.min(last.x), min.x),
            cell(b.min.y, min.y),
            cell(b.max.y.min(last.y), min.y),
        )
    }

    fn cells(&self, (left, right, low, high): Span) -> impl Iterator<Item = usize> {
        let columns = self.columns;
        (low..=high).flat_map(move |row| (left..=right).map(move |column| row * columns + column))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{FAR, point};
    use proptest::prelude::*;

    fn boxes(limit: i32) -> impl Strategy<Value = Vec<Bounds>> {
        prop::collection::vec((point(limit), point(limit)), 0..40)
            .prop_map(|pairs| pairs.into_iter().map(|(p, q)| Bounds::of([p, q])).collect())
    }

    /// A few cells, a plan, and the whole range.
    fn any_boxes() -> impl Strategy<Value = (Vec<Bounds>, Bounds)> {
        prop_oneof![
            Just(300),
            Just(3 * Grid::CELL.units()),
            Just(20 * Grid::CELL.units()),
            Just(FAR)
        ]
        .prop_flat_map(|limit| {
            let ask = (point(limit), point(limit)).prop_map(|(p, q)| Bounds::of([p, q]));
            (boxes(limit), ask)
        })
    }

    fn by_loop(boxes: &[Bounds], ask: Bounds) -> Vec<usize> {
        (0..boxes.len()).filter(|&i| boxes[i].meets(ask)).collect()
    }

    #[test]
    fn nothing_and_empty_boxes_are_never_found() {
        let everywhere = Bounds::of([Pt::new(-FAR, -FAR), Pt::new(FAR, FAR)]);
        assert_eq!(Grid::new(vec![]).query(everywhere), []);
        assert_eq!(Grid::new(vec![Bounds::EMPTY]).query(everywhere), []);
        let one = Bounds::of([Pt::new(5, 5)]);
        let grid = Grid::new(vec![Bounds::EMPTY, one]);
        assert_eq!(grid.query(everywhere), [1]);
        assert_eq!(grid.query(Bounds::EMPTY), []);
        assert_eq!(grid.bounds(1), one);
    }

    #[test]
    fn far_apart_boxes_do_not_make_many_cells() {
        let corner = |x: i32, y: i32| Bounds::of([Pt::new(x, y)]);
        let grid = Grid::new(vec![corner(-FAR, -FAR), corner(FAR, FAR), corner(0, 0)]);
        assert!(grid.columns * grid.rows <= 4 * 3 + 64);
        assert_eq!(grid.query(corner(0, 0)), [2]);
    }

    #[test]
    fn boxes_that_end_on_the_border_of_a_cell_are_found_from_both_sides() {
        let cell = Grid::CELL.units();
        let at = |x: i32| Bounds::of([Pt::new(x, 0), Pt::new(x + cell, cell)]);
        let boxes: Vec<Bounds> = (0..6).map(|i| at(i * cell)).collect();
        let grid = Grid::new(boxes.clone());
        for i in 0..=6 {
            let ask = Bounds::of([Pt::new(i * cell, cell)]);
            assert_eq!(grid.query(ask), by_loop(&boxes, ask));
        }
        assert_eq!(grid.query(at(2 * cell)), [1, 2, 3]);
    }

    proptest! {
        #[test]
        fn finds_what_a_loop_finds((boxes, ask) in any_boxes()) {
            prop_assert_eq!(Grid::new(boxes.clone()).query(ask), by_loop(&boxes, ask));
        }

        #[test]
        fn near_pairs_are_what_a_loop_over_all_pairs_finds(
            (boxes, _) in any_boxes(), by in 0..3 * Grid::CELL.units(),
        ) {
            let by = Len::from_units(by);
            let mut found = Vec::new();
            Grid::new(boxes.clone()).near_pairs(by, |i, j| found.push((i, j)));
            prop_assert!(found.is_sorted_by_key(|&(i, _)| i));
            found.sort_unstable();
            let mut expected = Vec::new();
            for (i, b) in boxes.iter().enumerate() {
                let near = (i + 1..boxes.len()).filter(|&j| b.grow(by).meets(boxes[j]));
                expected.extend(near.map(|j| (i, j)));
            }
            prop_assert_eq!(found, expected);
        }

        #[test]
        fn finds_every_box_by_itself((boxes, _) in any_boxes()) {
            let grid = Grid::new(boxes.clone());
            for (i, &b) in boxes.iter().enumerate() {
                prop_assert!(grid.query(b).contains(&i));
            }
        }
    }
}
