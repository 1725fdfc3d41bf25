//! Plans that a method could hate: each has its own line, cold and in a step of a drag.

use geometry::{Pt, Ring, Seg};
use measure::Len;

/// A name, pieces, an arrival, targets.
pub struct Adverse {
    pub name: &'static str,
    pub rings: Vec<Ring>,
    pub from: Pt,
    pub to: Vec<Pt>,
}

fn rect(x: Len, y: Len, width: Len, depth: Len) -> Ring {
    let corner = |dx: Len, dy: Len| Pt::at(x + dx, y + dy);
    vec![
        corner(Len::ZERO, Len::ZERO),
        corner(width, Len::ZERO),
        corner(width, depth),
        corner(Len::ZERO, depth),
    ]
}

fn wall(line: Seg, thick: Len) -> Ring {
    let (left, right) = (line.offset_left(thick / 2), line.offset_left(-(thick / 2)));
    vec![right.a, right.b, left.b, left.a]
}

pub fn all(count: i32) -> Vec<Adverse> {
    let inch = Len::inches;
    let side = f64::from(count).sqrt().ceil() as i32;
    let at = |x: Len, y: Len| Pt::at(x, y);
    let outside = at(-inch(200), -inch(200));
    let tiles = |pitch: Len, size: Len| -> Vec<Ring> {
        (0..count).map(|i| rect(pitch * (i % side), pitch * (i / side), size, size)).collect()
    };
    let middle = |pitch: Len| pitch * (side / 2) - pitch / 2;
    let hair = Seg::new(at(Len::ZERO, Len::ZERO), Pt::new(Len::feet_inches(20, 0).units(), 3));
    vec![
        Adverse {
            name: "all in one cell of 48 in",
            // Posts of 64 units on a pitch of a hundred: every two are near.
            rings: tiles(Len::from_units(100), Len::from_units(64)),
            from: outside,
            to: vec![at(inch(60), inch(60))],
        },
        Adverse {
            name: "gaps of one unit",
            rings: tiles(inch(12) + Len::UNIT, inch(12)),
            from: outside,
            to: vec![outside + (at(inch(1), inch(1)) - Pt::default())],
        },
        Adverse {
            name: "gaps that are all 30 in",
            rings: tiles(inch(42), inch(12)),
            from: outside,
            to: (0..63).map(|i| at(inch(27) + inch(42) * (i % side), middle(inch(42)))).collect(),
        },
        Adverse {
            name: "a long diagonal comb",
            rings: (0..count)
                .map(|i| {
                    let start = at(inch(40) * i, Len::ZERO);
                    let end = start + Seg::new(Pt::default(), at(inch(300), inch(300))).dir();
                    wall(Seg::new(start, end), inch(4))
                })
                .collect(),
            from: outside,
            to: vec![at(inch(40) * (count / 2) + inch(170), inch(150))],
        },
        Adverse {
            name: "parallel but for 0.002 degrees",
            rings: (0..count)
                .map(|i| {
                    let up = at(Len::ZERO, inch(34) * i) - Pt::default();
                    let tilt = i % 3;
                    let end = Pt::new(hair.b.x, hair.b.y * tilt);
                    wall(Seg::new(hair.a + up, end + up), inch(4))
                })
                .collect(),
            from: outside,
            to: vec![at(inch(100), inch(34) * (count / 2) + inch(17))],
        },
        Adverse {
            name: "a wall of 200 ft through it",
            rings: std::iter::once(rect(-inch(12), -inch(12), Len::feet_inches(200, 0), inch(4)))
                .chain(tiles(inch(40), inch(8)).into_iter().skip(1))
                .collect(),
            from: outside,
            to: vec![at(middle(inch(40)), middle(inch(40)))],
        },
        Adverse {
            name: "columns that touch walls at a point",
            rings: (0..count / 2)
                .flat_map(|i| {
                    let (x, y) = (inch(60) * (i % side), inch(60) * (i / side));
                    let tip = at(x + inch(4), y + inch(20));
                    let post = vec![
                        tip,
                        at(x + inch(10), y + inch(14)),
                        at(x + inch(16), y + inch(20)),
                        at(x + inch(10), y + inch(26)),
                    ];
                    [rect(x, y, inch(4), inch(40)), post]
                })
                .collect(),
            from: outside,
            to: vec![at(middle(inch(60)), middle(inch(60)))],
        },
    ]
}
