//! Random plans of every kind that the tests of ways ask about.

use geometry::passage::Obstacles;
use geometry::{Bounds, Pt, Ring, convex_hull};

/// Numbers from a seed: the same in every run (G. Marsaglia, "Xorshift RNGs", 2003).
pub struct Random(u64);

impl Random {
    pub fn new(seed: u64) -> Random {
        Random(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1)
    }

    /// From 0 up to but without `below`.
    pub fn below(&mut self, below: i32) -> i32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        ((self.0 >> 20) % below as u64) as i32
    }

    pub fn point(&mut self, side: i32, step: i32) -> Pt {
        let steps = side / step + 1;
        Pt::new(self.below(steps) * step, self.below(steps) * step)
    }
}

/// What a plan is made of.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// Axis-parallel boxes on a coarse grid: many touch, many gaps are equal.
    Boxes,
    /// Turned walls.
    Skew,
    /// Triangles and other convex pieces, thin screens and posts.
    Mixed,
    /// Posts alone.
    Posts,
}

pub const KINDS: [Kind; 4] = [Kind::Boxes, Kind::Skew, Kind::Mixed, Kind::Posts];

/// The pieces with some places on the floor.
#[derive(Clone, Debug)]
pub struct SamplePlan {
    pub rings: Vec<Ring>,
    pub arrivals: Vec<Pt>,
    pub targets: Vec<Pt>,
}

/// The side of the square that a sample plan fills.
pub const SIDE: i32 = 600;

fn piece(random: &mut Random, kind: Kind) -> Ring {
    match kind {
        Kind::Boxes => {
            let at = random.point(SIDE - 40, 20);
            let (long, short) = (20 * (1 + random.below(18)), 20 * (1 + random.below(2)));
            let (w, h) = if random.below(2) == 0 { (long, short) } else { (short, long) };
            vec![at, Pt::new(at.x + w, at.y), Pt::new(at.x + w, at.y + h), Pt::new(at.x, at.y + h)]
        }
        Kind::Skew => {
            let at = random.point(SIDE, 1);
            let (dx, dy) = (random.below(501) - 250, random.below(501) - 250);
            let (tx, ty) = (-dy / 20, dx / 20);
            let to = |x: i32, y: i32| Pt::new(at.x + x, at.y + y);
            convex_hull(&[at, to(dx, dy), to(dx + tx, dy + ty), to(tx, ty)])
        }
        Kind::Mixed => {
            let at = random.point(SIDE - 100, 1);
            let corners = 1 + random.below(6);
            let corner = |random: &mut Random| {
                let p = random.point(170, 1);
                Pt::new(at.x + p.x, at.y + p.y)
            };
            let corners: Ring = (0..corners).map(|_| corner(random)).collect();
            convex_hull(&corners)
        }
        Kind::Posts => vec![random.point(SIDE, 5)],
    }
}

/// A plan with a few pieces, half of them within a frame of four walls.
pub fn plan(random: &mut Random, kind: Kind) -> SamplePlan {
    let most = if matches!(kind, Kind::Posts) { 60 } else { 24 };
    let count = most / 8 + random.below(most);
    let mut rings: Vec<Ring> = (0..count).map(|_| piece(random, kind)).collect();
    if random.below(2) == 0 {
        let wall = |x: i32, y: i32, w: i32, h: i32| {
            vec![Pt::new(x, y), Pt::new(x + w, y), Pt::new(x + w, y + h), Pt::new(x, y + h)]
        };
        let long = SIDE + 80;
        rings.extend([wall(-40, -40, long, 20), wall(-40, SIDE + 20, long, 20)]);
        rings.extend([wall(-40, -40, 20, long), wall(SIDE + 20, -40, 20, long)]);
    }
    let arrivals = (0..1 + random.below(2)).map(|_| place(random, &rings, 0)).collect();
    let targets = vec![place(random, &rings, SIDE / 2)];
    SamplePlan { rings, arrivals, targets }
}

/// Anywhere in a half of the plan, or more often where there is room: of 40 points the one that is farthest from the boxes
/// round the pieces, so that the way, not the place, is what is narrow.
fn place(random: &mut Random, rings: &[Ring], from: i32) -> Pt {
    let points = if random.below(6) == 0 { 1 } else { 40 };
    let point = |random: &mut Random| {
        let p = random.point(SIDE / 2, 5);
        Pt::new(p.x + from, 2 * p.y)
    };
    let room = |p: &Pt| {
        let away = |b: Bounds| {
            let out = |at: i32, low: i32, high: i32| (low - at).max(at - high).max(0);
            let (x, y) = (out(p.x, b.min.x, b.max.x), out(p.y, b.min.y, b.max.y));
            i64::from(x) * i64::from(x) + i64::from(y) * i64::from(y)
        };
        rings.iter().map(|ring| away(Bounds::of(ring))).min()
    };
    (0..points).map(|_| point(random)).max_by_key(room).unwrap_or_default()
}

pub fn obstacles(rings: &[Ring]) -> Obstacles {
    Obstacles::new(rings.iter().enumerate().map(|(i, ring)| (ring.as_slice(), i)))
}
