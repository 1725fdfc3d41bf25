//! The `cellarwright` program: a window, and commands that work without one.

use std::process::ExitCode;

use cellarwright::{cli, window};

fn main() -> ExitCode {
    env_logger::Builder::from_env(env_logger::Env::default().default_filter_or("error"))
        .target(env_logger::Target::Stderr)
        .init();
    let (mut out, mut err) = (std::io::stdout().lock(), std::io::stderr());
    match cli::run(std::env::args_os(), &mut out, &mut err) {
        cli::Invocation::Done(code) => ExitCode::from(code),
        cli::Invocation::Window(args) => {
            drop(out);
            ExitCode::from(window::run(args))
        }
    }
}
