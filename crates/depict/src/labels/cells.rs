//! Obstacles by square cells of the screen, and the test whether two regions overlap.

use drawing::P;

use super::NOBODY;

/// A convex quadrilateral with its owner.
#[derive(Clone, Copy, Debug)]
pub(super) struct Obstacle {
    quad: [P; 4],
    /// The level box round it: a quick test before the exact one.
    low: P,
    high: P,
    /// It is that box.
    level: bool,
    owner: u32,
}

impl Obstacle {
    pub fn new(quad: [P; 4], owner: u32) -> Obstacle {
        let (low, high) = level_box(&quad);
        Obstacle { quad, low, high, level: is_level(&quad), owner }
    }
}

/// Whether every side is level or upright.
fn is_level(quad: &[P; 4]) -> bool {
    (0..4).all(|i| {
        let (p, q) = (quad[i], quad[(i + 1) % 4]);
        p.x == q.x || p.y == q.y
    })
}

fn level_box(quad: &[P; 4]) -> (P, P) {
    let (mut low, mut high) = (quad[0], quad[0]);
    for p in &quad[1..] {
        low = P::new(low.x.min(p.x), low.y.min(p.y));
        high = P::new(high.x.max(p.x), high.y.max(p.y));
    }
    (low, high)
}

/// Obstacles by square cells of the screen. Each cell is a chain through `entries`, the newest first: a picture
/// is made for every frame, and thousands of small lists would cost more than what they hold.
#[derive(Clone, Debug)]
pub(super) struct Cells {
    all: Vec<Obstacle>,
    /// The first entry of each cell.
    heads: Vec<u32>,
    entries: Vec<Entry>,
    columns: usize,
    rows: usize,
}

/// An obstacle in a cell; the box is kept here since most tests end with it.
#[derive(Clone, Copy, Debug)]
struct Entry {
    low: P,
    high: P,
    index: u32,
    /// The next entry of the cell.
    next: u32,
}

/// The end of a chain.
const END: u32 = u32::MAX;

/// Side of a cell in points.
const CELL: f32 = 24.0;

impl Cells {
    pub fn new(size: (f32, f32)) -> Cells {
        let count = |v: f32| ((v / CELL).ceil().clamp(1.0, 256.0)) as usize;
        let (columns, rows) = (count(size.0), count(size.1));
        let heads = vec![END; columns * rows];
        Cells { all: Vec::new(), heads, entries: Vec::new(), columns, rows }
    }

    /// The cells that the box round a region meets; what lies off the screen counts for the border cells.
    fn reach(&self, low: P, high: P) -> impl Iterator<Item = usize> + use<> {
        let cell = |v: f32, n: usize| ((v / CELL).clamp(0.0, (n - 1) as f32)) as usize;
        let columns = self.columns;
        let (c0, c1) = (cell(low.x, columns), cell(high.x, columns));
        let (r0, r1) = (cell(low.y, self.rows), cell(high.y, self.rows));
        (r0..=r1).flat_map(move |r| (c0..=c1).map(move |c| r * columns + c))
    }

    pub fn put(&mut self, obstacle: Obstacle) {
        if obstacle.quad.iter().any(|p| !(p.x.is_finite() && p.y.is_finite())) {
            return;
        }
        let index = self.all.len() as u32;
        for cell in self.reach(obstacle.low, obstacle.high) {
            let next = std::mem::replace(&mut self.heads[cell], self.entries.len() as u32);
            self.entries.push(Entry { low: obstacle.low, high: obstacle.high, index, next });
        }
        self.all.push(obstacle);
    }

    pub fn free(&self, quad: &[P; 4], owner: u32) -> bool {
        let (low, high) = level_box(quad);
        let level = is_level(quad);
        let meets = |entry: &Entry| {
            let apart = entry.high.x <= low.x + HAIR
                || entry.low.x >= high.x - HAIR
                || entry.high.y <= low.y + HAIR
                || entry.low.y >= high.y - HAIR;
            !apart && {
                let other = &self.all[entry.index as usize];
                let own = other.owner == owner && owner != NOBODY;
                !own && ((level && other.level) || overlap(quad, &other.quad))
            }
        };
        for cell in self.reach(low, high) {
            let mut at = self.heads[cell];
            while let Some(entry) = self.entries.get(at as usize) {
                if meets(entry) {
                    return false;
                }
                at = entry.next;
            }
        }
        true
    }
}

/// Regions that share no more than this, in points, only touch.
const HAIR: f32 = 0.02;

/// Whether two convex quadrilaterals have more than a hair in common: a separating axis is sought among
/// the normals of their edges.
pub(crate) fn overlap(a: &[P; 4], b: &[P; 4]) -> bool {
    let separated_by = |of: &[P; 4]| {
        (0..4).any(|i| {
            let (p, q) = (of[i], of[(i + 1) % 4]);
            let (nx, ny) = (q.y - p.y, p.x - q.x);
            if nx == 0.0 && ny == 0.0 {
                return false;
            }
            let reach = |ring: &[P; 4]| {
                ring.iter()
                    .map(|p| p.x * nx + p.y * ny)
                    .fold((f32::INFINITY, f32::NEG_INFINITY), |(low, high), d| {
                        (low.min(d), high.max(d))
                    })
            };
            let ((a0, a1), (b0, b1)) = (reach(a), reach(b));
            let hair = HAIR * (nx * nx + ny * ny).sqrt();
            a1 <= b0 + hair || b1 <= a0 + hair
        })
    };
    !separated_by(a) && !separated_by(b)
}
