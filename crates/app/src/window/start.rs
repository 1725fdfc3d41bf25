//! Opening the window, and saying in one sentence why none can be opened.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};

use egui::ViewportBuilder;

use super::app::{App, Start};
use super::autosave;
use crate::cli::WindowArgs;

/// No window can be opened here.
const ENVIRONMENT: u8 = 3;
/// The program stopped unexpectedly.
const BROKEN: u8 = 101;

/// Whether the window has come up: before that a panic is a missing library, after it a fault of ours.
static UP: AtomicBool = AtomicBool::new(false);

/// The packages of the libraries that are loaded when the window opens.
const PACKAGES: &str = "Debian and Ubuntu: libx11-6 libx11-xcb1 libxcursor1 libxi6 libxkbcommon0 \
    libxkbcommon-x11-0 libgl1 libegl1 libgl1-mesa-dri; Fedora: libX11 libX11-xcb libXcursor libXi \
    libxkbcommon libxkbcommon-x11 mesa-libGL mesa-libEGL mesa-dri-drivers";

/// Opens the window and stays until it is closed; gives the exit code.
pub fn run(args: WindowArgs) -> u8 {
    let display = match Display::find(|name| std::env::var(name).ok(), socket_answers) {
        Ok(display) => display,
        Err(why) => return refuse(&why),
    };
    install_panic_hook();
    editor::set_self_check(args.self_check);
    let outcome = catch_unwind(AssertUnwindSafe(|| {
        eframe::run_native(
            "cellarwright",
            options(display),
            Box::new(move |cc| {
                UP.store(true, Ordering::SeqCst);
                let start = Start {
                    plan: args.plan,
                    quit_after_first_frame: args.quit_after_first_frame,
                    timing: args.timing,
                    tell: args.tell,
                    autosave: true,
                };
                Ok(Box::new(App::new(&cc.egui_ctx, start)))
            }),
        )
    }));
    match outcome {
        Ok(Ok(())) => 0,
        Ok(Err(error)) => {
            // The error's own text names source files of the build machine, so it goes to the log alone.
            log::info!("{error}");
            refuse("the display or a library it needs does not answer")
        }
        Err(_) if UP.load(Ordering::SeqCst) => BROKEN,
        Err(_) => refuse("a library that the window needs is missing"),
    }
}

fn refuse(why: &str) -> u8 {
    eprintln!(
        "cellarwright: no window can be opened, because {why}. Start it in a graphical session, or \
         install what it needs ({PACKAGES}); without a window, `cellarwright check PLAN` lists the \
         findings of a plan."
    );
    ENVIRONMENT
}

fn options(display: Display) -> eframe::NativeOptions {
    eframe::NativeOptions {
        viewport: ViewportBuilder::default()
            .with_app_id("cellarwright")
            .with_title("Cellarwright")
            .with_inner_size([1240.0, 740.0])
            .with_min_inner_size([900.0, 560.0])
            .with_icon(egui::IconData::default()),
        renderer: eframe::Renderer::Glow,
        multisampling: 0,
        event_loop_builder: (display == Display::OnlyX11).then(only_x11),
        centered: true,
        ..Default::default()
    }
}

#[cfg(target_os = "linux")]
fn only_x11() -> eframe::EventLoopBuilderHook {
    use winit::platform::x11::EventLoopBuilderExtX11;
    Box::new(|builder| {
        builder.with_x11();
    })
}

#[cfg(not(target_os = "linux"))]
fn only_x11() -> eframe::EventLoopBuilderHook {
    Box::new(|_| {})
}

/// Which display to use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Display {
    /// Whatever the system offers.
    Any,
    /// The Wayland socket is dead but there is an X display; winit would not fall back by itself.
    OnlyX11,
}

impl Display {
    fn find(
        variable: impl Fn(&str) -> Option<String>,
        answers: impl Fn(&std::path::Path) -> bool,
    ) -> Result<Display, String> {
        if !cfg!(target_os = "linux") {
            return Ok(Display::Any);
        }
        let set = |name: &str| variable(name).filter(|v| !v.is_empty());
        let x = set("DISPLAY").is_some();
        if set("WAYLAND_SOCKET").is_some() {
            return Ok(Display::Any);
        }
        let Some(wayland) = set("WAYLAND_DISPLAY") else {
            return match x {
                true => Ok(Display::Any),
                false => {
                    Err("there is no display (neither DISPLAY nor WAYLAND_DISPLAY is set)".into())
                }
            };
        };
        let folder = set("XDG_RUNTIME_DIR").map(PathBuf::from).unwrap_or_default();
        match (answers(&folder.join(&wayland)), x) {
            (true, _) => Ok(Display::Any),
            (false, true) => Ok(Display::OnlyX11),
            (false, false) => Err(format!("the display {wayland} does not answer")),
        }
    }
}

#[cfg(unix)]
fn socket_answers(path: &std::path::Path) -> bool {
    std::os::unix::net::UnixStream::connect(path).is_ok()
}

#[cfg(not(unix))]
fn socket_answers(_path: &std::path::Path) -> bool {
    true
}

/// Before the window is up a panic is silent (`run` says what is missing); after that the recovery copy
/// is written first.
fn install_panic_hook() {
    let before = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |info| {
        if !UP.load(Ordering::SeqCst) {
            log::info!("{info}");
            return;
        }
        let copy = autosave::write_in_panic();
        before(info);
        match copy {
            Some(path) => eprintln!(
                "cellarwright stopped unexpectedly. Your work was copied to {}; it is offered at the next start.",
                path.display()
            ),
            None => eprintln!("cellarwright stopped unexpectedly. Nothing was unsaved."),
        }
    }));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn find(set: &[(&str, &str)], alive: bool) -> Result<Display, String> {
        Display::find(
            |name| set.iter().find(|(n, _)| *n == name).map(|(_, v)| (*v).to_owned()),
            |_| alive,
        )
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn displays_are_tried_before_the_window_is() {
        let wayland = ("WAYLAND_DISPLAY", "wayland-0");
        let x = ("DISPLAY", ":0");
        assert!(find(&[], true).unwrap_err().contains("no display"));
        assert!(find(&[("DISPLAY", ""), ("WAYLAND_DISPLAY", "")], true).is_err());
        assert_eq!(find(&[x], false), Ok(Display::Any));
        assert_eq!(find(&[wayland], true), Ok(Display::Any));
        assert_eq!(find(&[wayland, x], false), Ok(Display::OnlyX11));
        assert!(find(&[wayland], false).unwrap_err().contains("wayland-0"));
    }
}
