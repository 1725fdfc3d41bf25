//! Time to derive all facts of a basement from scratch.

#[path = "../tests/common/mod.rs"]
mod common;

use std::sync::Arc;

use common::basement;
use divan::{Bencher, black_box};
use space::{derive, intrusions};

fn main() {
    divan::main();
}

/// Targets, release build: 0.2 ms at 50 elements, 0.8 ms at 300, 4 ms at 2,000.
#[divan::bench(args = [50, 300, 2000])]
fn everything(bencher: Bencher<'_, '_>, elements: usize) {
    let plan = Arc::new(basement(elements));
    let facts = derive(&plan);
    assert!(facts.rooms.len() >= elements / 10, "the basement has its rooms");
    assert!(facts.loose_tags.is_empty(), "every tag stands in a room");
    bencher.bench(|| derive(black_box(&plan)));
}

/// One keep-clear box of 30 in x 36 in before every service point.
#[divan::bench(args = [50, 300, 2000])]
fn boxes(bencher: Bencher<'_, '_>, elements: usize) {
    use measure::Len;
    let plan = Arc::new(basement(elements));
    let facts = derive(&plan);
    let zones: Vec<_> = plan
        .elements()
        .iter()
        .filter_map(|e| match &e.body {
            plan::Body::Service(s) => {
                let size = (Len::inches(30), Len::inches(36));
                Some((e.id, space::front_box(s, size.0, size.1, Len::ZERO, Len::inches(78))))
            }
            _ => None,
        })
        .collect();
    bencher.bench(|| {
        zones
            .iter()
            .map(|(id, z)| intrusions(&facts, &z.ring, z.bottom, z.top, &[*id]).len())
            .sum::<usize>()
    });
}
