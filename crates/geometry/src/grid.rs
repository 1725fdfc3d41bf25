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
    /// The side of a cell: 48 in times a power of two.
    side: u32,
    /// The column and the row of the first cell that each box meets.
    firsts: Vec<(u32, u32)>,
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
        let side = Grid::CELL.units().unsigned_abs();
        let mut grid = Grid { boxes, all, side, ..Grid::default() };
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
            grid.side *= 2;
        }
        grid.fill();
        grid
    }

    fn fill(&mut self) {
        let mut starts = vec![0u32; self.columns * self.rows + 1];
        let mut firsts = vec![(0, 0); self.boxes.len()];
        for (index, &b) in self.boxes.iter().enumerate().filter(|(_, b)| !b.is_empty()) {
            let span = self.span(b);
            firsts[index] = (span.0 as u32, span.2 as u32);
            self.cells(span).for_each(|cell| starts[cell + 1] += 1);
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
        (self.starts, self.items, self.firsts) = (starts, items, firsts);
    }

    /// The indices of the boxes that meet `within` (touching counts), in rising order, each once.
    pub fn query(&self, within: Bounds) -> Vec<usize> {
        let mut found: Vec<usize> = Vec::new();
        self.each_near(within, |i| found.push(i));
        found.sort_unstable();
        found
    }

    /// The indices of the boxes that hold a point (an edge counts), in rising order.
    pub fn at(&self, p: Pt) -> impl Iterator<Item = usize> {
        let point = Bounds { min: p, max: p };
        let inside = self.all.contains(p).then(|| self.cells(self.span(point)));
        let items = inside.into_iter().flatten().flat_map(|cell| self.cell(cell));
        items.filter(move |&i| self.boxes[i].contains(p))
    }

    /// Gives the indices of the boxes that meet `within` (touching counts), each once, in any order.
    pub fn each_near(&self, within: Bounds, mut each: impl FnMut(usize)) {
        if within.is_empty() || !within.meets(self.all) {
            return;
        }
        let (left, right, low, high) = self.span(within);
        for row in low..=high {
            for column in left..=right {
                for i in self.cell(row * self.columns + column) {
                    // It is given in the first of the cells that both boxes meet.
                    let (first_column, first_row) = self.firsts[i];
                    let first = column == left.max(first_column as usize)
                        && row == low.max(first_row as usize);
                    if first && self.boxes[i].meets(within) {
                        each(i);
                    }
                }
            }
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
            self.each_near(b.grow(by), |j| {
                if i < j {
                    each(i, j);
                }
            });
        }
    }

    /// How many boxes there are.
    pub fn len(&self) -> usize {
        self.boxes.len()
    }

    pub fn is_empty(&self) -> bool {
        self.boxes.is_empty()
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
        let cell = |at: i32, from: i32| (at.max(from).abs_diff(from) / self.side) as usize;
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
