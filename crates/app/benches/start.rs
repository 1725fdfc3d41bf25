//! From the start of the program to its end after the first frame, beside an empty window that is built with the
//! same features and ends the same way. The two take turns. Needs a display.
#![allow(clippy::disallowed_methods, reason = "a bench starts programs and measures time")]

use std::io::Write;
use std::process::Command;
use std::time::{Duration, Instant};

const ROUNDS: usize = 25;
const EMPTY: &str = "--empty-window";

/// A window with an empty panel, which closes itself at its first frame.
struct Empty;

impl eframe::App for Empty {
    fn ui(&mut self, ui: &mut egui::Ui, _frame: &mut eframe::Frame) {
        egui::CentralPanel::default().show(ui, |_| {});
        ui.send_viewport_cmd(egui::ViewportCommand::Close);
    }
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    if std::env::args().any(|a| a == EMPTY) {
        let options = eframe::NativeOptions {
            viewport: egui::ViewportBuilder::default().with_inner_size([1240.0, 740.0]),
            renderer: eframe::Renderer::Glow,
            multisampling: 0,
            ..eframe::NativeOptions::default()
        };
        eframe::run_native("empty", options, Box::new(|_| Ok(Box::new(Empty))))?;
        return Ok(());
    }
    let mut out = std::io::stdout().lock();
    if ["DISPLAY", "WAYLAND_DISPLAY"].iter().all(|name| std::env::var_os(name).is_none()) {
        writeln!(out, "No display: nothing was measured.")?;
        return Ok(());
    }
    let state = tempfile::tempdir()?;
    let plan = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-plans/passes.ron");
    let (mut ours, mut empty) = (Vec::new(), Vec::new());
    for round in 0..=ROUNDS {
        let a = run(Command::new(env!("CARGO_BIN_EXE_cellarwright"))
            .args(["--quit-after-first-frame", plan])
            .env("CELLARWRIGHT_STATE", state.path()))?;
        let b = run(Command::new(std::env::current_exe()?).arg(EMPTY))?;
        // The first round reads the programs from the disk.
        if round > 0 {
            ours.push(a);
            empty.push(b);
        }
    }
    let (ours, empty) = (median(ours), median(empty));
    writeln!(out, "start to end after the first frame, median of {ROUNDS}")?;
    writeln!(out, "empty window  {empty:.1?}")?;
    writeln!(
        out,
        "with a plan   {ours:.1?}   ratio {:.2}",
        ours.as_secs_f64() / empty.as_secs_f64()
    )?;
    Ok(())
}

fn run(command: &mut Command) -> Result<Duration, Box<dyn std::error::Error>> {
    let began = Instant::now();
    let status = command.status()?;
    if !status.success() {
        return Err(format!("{command:?} ended with {status}").into());
    }
    Ok(began.elapsed())
}

fn median(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times[times.len() / 2]
}
