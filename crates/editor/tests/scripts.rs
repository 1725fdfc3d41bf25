//! Plays every script of `tests/scripts`: a story each, ending in expectations.

use std::path::Path;
use std::time::Duration;

use editor::{Session, script};
use plan::Plan;

fn play(name: &str, text: &str) {
    let report = script::run(text, Session::new(Plan::default()), || Duration::ZERO);
    let met = text.lines().filter(|line| line.trim_start().starts_with("expect")).count();
    assert!(met > 0, "{name} expects nothing");
    assert!(report.problem.is_none(), "{name}\n{report}");
    let problems = report.session.plan().validate();
    assert!(problems.is_empty(), "{name}: {problems:?}");
}

/// One test for each script, and one that no script is forgotten.
macro_rules! scripts {
    ($($test:ident)*) => {
        $(
            #[test]
            fn $test() {
                let name = concat!(stringify!($test), ".txt");
                play(name, include_str!(concat!("scripts/", stringify!($test), ".txt")));
            }
        )*

        #[test]
        fn every_script_is_played() {
            let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/scripts");
            let mut found: Vec<String> = std::fs::read_dir(folder)
                .expect("the folder can be read")
                .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
                .collect();
            found.sort();
            let mut played = vec![$(concat!(stringify!($test), ".txt")),*];
            played.sort_unstable();
            assert_eq!(found, played);
        }
    };
}

scripts! {
    column
    door
    escape
    furnishing
    furring
    keyboard
    note
    overhead
    partition
    room
    select
    service
    shell
    snapping
    stair
    story
    tape
    typed
    window
}
