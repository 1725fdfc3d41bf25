//! One frame of the window's own code on the large demo plan (300 elements, all in view) while a partition is
//! dragged, while the pointer moves over the plan, and on a plan of one wall, which is what the panes cost.
//! Prints the percentiles first, then what divan measures. No graphics card is involved: the time ends where the
//! window's code ends, before the shapes are cut into triangles.
#![allow(clippy::disallowed_methods, reason = "a bench reads the demo plan and measures time")]

use std::io::Write;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use cellarwright::window::{App, Start};
use divan::{Bencher, black_box};
use eframe::App as _;
use egui::{
    Context, Event, Key, Modifiers, PointerButton, Pos2, RawInput, Rect, Vec2, ViewportId, pos2,
};

const FRAMES: usize = 1_000;
const SIZE: Vec2 = Vec2::new(1600.0, 1000.0);

fn main() {
    percentiles().expect("standard output can be written to");
    divan::main();
}

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo-plans").join(name)
}

/// A window without a screen.
struct Window {
    ctx: Context,
    app: App,
    frame: eframe::Frame,
    at: Pos2,
    clock: f64,
}

impl Window {
    fn open(plan: &str) -> Window {
        let ctx = Context::default();
        let app = App::new(&ctx, Start { plan: Some(demo(plan)), ..Start::default() });
        let frame = eframe::Frame::_new_kittest();
        let mut window = Window { ctx, app, frame, at: SIZE.to_pos2() / 2.0, clock: 0.0 };
        for _ in 0..5 {
            window.step(Vec::new());
        }
        window
    }

    /// One frame with these events. Gives the time of the window's own code.
    fn step(&mut self, events: Vec<Event>) -> Duration {
        self.clock += 1.0 / 60.0;
        let mut input = RawInput {
            screen_rect: Some(Rect::from_min_size(Pos2::ZERO, SIZE)),
            time: Some(self.clock),
            events,
            ..RawInput::default()
        };
        input.viewports.entry(ViewportId::ROOT).or_default().focused = Some(true);
        self.app.raw_input_hook(&self.ctx, &mut input);
        let mut took = Duration::ZERO;
        let (app, frame) = (&mut self.app, &mut self.frame);
        black_box(self.ctx.run_ui(input, |ui| {
            let began = Instant::now();
            app.ui(ui, frame);
            took += began.elapsed();
        }));
        took
    }

    fn to(&mut self, at: Pos2) -> Duration {
        self.at = at;
        self.step(vec![Event::PointerMoved(at)])
    }

    fn button(&mut self, pressed: bool) {
        let event = Event::PointerButton {
            pos: self.at,
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        };
        self.step(vec![event]);
    }

    /// Finds a partition by pressing along a line, and leaves the button down on it.
    fn grab_partition(&mut self) {
        for x in 0..400 {
            self.to(pos2(360.0 + x as f32 * 2.0, 640.0));
            self.button(true);
            let session = self.app.session();
            let wall = session.selection().iter().any(|id| {
                let element = session.plan().get(*id);
                element.is_some_and(|e| matches!(e.body, plan::Body::Partition(_)))
            });
            if wall {
                return;
            }
            self.button(false);
            self.step(vec![key(Key::Escape)]);
        }
        panic!("no partition lies on the line");
    }
}

fn key(key: Key) -> Event {
    let modifiers = Modifiers::NONE;
    Event::Key { key, physical_key: None, pressed: true, repeat: false, modifiers }
}

/// Where the pointer stands in a frame: to and fro.
fn sway(from: Pos2, i: usize) -> Pos2 {
    let phase = i % 40;
    from + Vec2::new(5.0 + phase.min(40 - phase) as f32, 0.0)
}

fn dragging(plan: &str) -> (Window, Pos2) {
    let mut window = Window::open(plan);
    window.grab_partition();
    let from = window.at;
    window.to(sway(from, 0));
    (window, from)
}

fn percentiles() -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    writeln!(out, "the window's own code per frame, ms (p50 / p99 of {FRAMES})")?;
    let mut line = |name: &str, mut times: Vec<Duration>| {
        times.sort_unstable();
        let at = |k: usize| times[(times.len() - 1) * k / 100].as_secs_f64() * 1000.0;
        writeln!(out, "{name:<30} {:>6.2} / {:.2}", at(50), at(99))
    };
    let (mut window, from) = dragging("large.ron");
    assert!(window.app.session().busy(), "the wall is being dragged");
    line("large plan, wall dragged", (0..FRAMES).map(|i| window.to(sway(from, i))).collect())?;
    let mut window = Window::open("large.ron");
    line("large plan, pointer moves", (0..FRAMES).map(|i| window.to(sway(from, i))).collect())?;
    line("large plan, nothing moves", (0..FRAMES).map(|_| window.step(Vec::new())).collect())?;
    let mut window = Window::open("passes.ron");
    line("passing plan, pointer moves", (0..FRAMES).map(|i| window.to(sway(from, i))).collect())
}

#[divan::bench]
fn wall_dragged(bencher: Bencher<'_, '_>) {
    let (mut window, from) = dragging("large.ron");
    let mut i = 0;
    bencher.bench_local(|| {
        i += 1;
        window.to(sway(from, i))
    });
}

#[divan::bench]
fn nothing_moves(bencher: Bencher<'_, '_>) {
    let mut window = Window::open("large.ron");
    bencher.bench_local(|| window.step(Vec::new()));
}
