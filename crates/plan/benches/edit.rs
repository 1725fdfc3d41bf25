//! What one edit costs in plans of 50, 300 and 2,000 elements.

use divan::Bencher;
use divan::counter::ItemsCount;
use geometry::Vec2;
use measure::Len;
use plan::element::Body;
use plan::{Edit, ElementId, Plan, file, ops, sample};

const SIZES: [usize; 3] = [50, 300, 2000];

fn main() {
    divan::main();
}

fn find(plan: &Plan, wanted: impl Fn(&Body) -> bool) -> ElementId {
    let found = plan.elements().iter().rev().find(|e| wanted(&e.body));
    found.map_or(ElementId(0), |e| e.id)
}

#[divan::bench(args = SIZES)]
fn move_a_desk(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let id = find(&plan, |b| matches!(b, Body::Furnishing(_)));
    let edit = ops::translate(&plan, &[id], Vec2::new(8128, 0)).expect("a desk moves");
    bencher.bench(|| plan.with(divan::black_box(&edit)));
}

#[divan::bench(args = SIZES)]
fn slide_a_door(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let id = find(&plan, |b| matches!(b, Body::Opening(_)));
    let edit = ops::slide_opening(&plan, id, Len::inches(30)).expect("a door slides");
    bencher.bench(|| plan.with(divan::black_box(&edit)));
}

/// A whole step of a drag: find what follows, work out the edit, make it.
#[divan::bench(args = SIZES)]
fn drag_a_partition(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let id = find(&plan, |b| matches!(b, Body::Partition(_)));
    bencher.bench(|| {
        let edit = ops::move_wall(&plan, id, divan::black_box(Len::inches(3)))?;
        plan.with(&edit)
    });
}

#[divan::bench(args = SIZES)]
fn room_to_move_a_partition(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let id = find(&plan, |b| matches!(b, Body::Partition(_)));
    bencher.bench(|| ops::move_wall_range(&plan, divan::black_box(id)));
}

#[divan::bench(args = SIZES)]
fn move_everything(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let ids: Vec<ElementId> = plan.elements().iter().map(|e| e.id).collect();
    bencher.bench(|| {
        let edit = ops::translate(&plan, &ids, divan::black_box(Vec2::new(8128, 0)))?;
        plan.with(&edit)
    });
}

#[divan::bench(args = SIZES)]
fn delete_a_foundation_wall(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    let edit = Edit::Remove(vec![ElementId(1)]);
    bencher.bench(|| plan.with(divan::black_box(&edit)));
}

#[divan::bench(args = SIZES)]
fn write_the_file(bencher: Bencher, size: usize) {
    let plan = sample::basement(size);
    bencher.counter(ItemsCount::new(size)).bench(|| file::write(divan::black_box(&plan)));
}

#[divan::bench(args = SIZES)]
fn read_the_file(bencher: Bencher, size: usize) {
    let text = file::write(&sample::basement(size));
    bencher.counter(ItemsCount::new(size)).bench(|| file::read(divan::black_box(&text)));
}
