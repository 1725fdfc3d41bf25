//! Time to make the picture of a plan: the target is 1.5 ms at 300 elements and 8 ms at 2,000.

#[path = "../tests/sample/mod.rs"]
mod sample;

use depict::{Poche, Scene, View, picture};
use divan::Bencher;
use geometry::Bounds;

fn main() {
    divan::main();
}

#[divan::bench(args = [50, 300, 2_000])]
fn whole_plan(bencher: Bencher<'_, '_>, elements: usize) {
    at_zoom(bencher, elements, 1.0);
}

#[divan::bench(args = [50, 300, 2_000])]
fn near(bencher: Bencher<'_, '_>, elements: usize) {
    at_zoom(bencher, elements, 8.0);
}

fn at_zoom(bencher: Bencher<'_, '_>, elements: usize, zoom: f64) {
    let facts = space::derive(&sample::bays(elements));
    let all = Bounds::of(facts.walls.iter().flat_map(|w| w.outline.iter()));
    let view = View::fit(all, (1_400.0, 900.0), 40.0);
    let view = view.zoomed(drawing::P::new(700.0, 450.0), zoom);
    let poche = Poche::of(&facts);
    let mut scene = Scene::new(&facts);
    scene.poche = Some(&poche);
    bencher.bench_local(|| picture(&view, &scene));
}

/// What a drag frame adds: the joined walls of the changed plan.
#[divan::bench(args = [50, 300, 2_000])]
fn joined_walls(bencher: Bencher<'_, '_>, elements: usize) {
    let facts = space::derive(&sample::bays(elements));
    bencher.bench_local(|| Poche::of(&facts));
}
