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
    details
    door
    escape
    furnishing
    furring
    keyboard
    note
    overhead
    partition
    remedy
    room
    section
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

const PAGE: &str = include_str!("../../../docs/rehearse.md");

#[test]
fn the_example_of_the_page_is_played() {
    let (_, rest) = PAGE.split_once("```rehearse\n").expect("the page has an example");
    let (example, _) = rest.split_once("```").expect("the example ends");
    play("docs/rehearse.md", example);
}

#[test]
fn the_page_holds_every_command_expectation_and_option() {
    let forms = script::COMMANDS.iter().chain(&script::EXPECTATIONS);
    for form in forms {
        // In a table a bar is written with a backslash.
        let written = format!("| `{}` |", form.replace('|', "\\|"));
        assert!(PAGE.contains(&written), "{written}");
    }
    for option in editor::ToolOptions::names() {
        assert!(PAGE.contains(&format!("`{option}`")), "{option}");
    }
}

#[test]
fn the_page_holds_every_figure_of_every_kind() {
    let story = include_str!("scripts/keyboard.txt");
    let report = script::run(story, Session::new(Plan::default()), || Duration::ZERO);
    for element in report.session.plan().elements().iter() {
        for field in editor::fields::names_of(element) {
            assert!(PAGE.contains(&format!("`{field}`")), "{field} of {}", element.body.word());
        }
    }
}

/// What a script that goes wrong says.
fn problem(text: &str) -> script::Problem {
    let report = script::run(text, Session::new(Plan::default()), || Duration::ZERO);
    report.problem.expect("the script goes wrong")
}

#[test]
fn problems_say_the_line_what_is_wrong_and_what_is_known() {
    let cases = [
        ("tool shell\ndance", 2, "there is no command \"dance\"; known: tool NAME;"),
        ("tool pencil", 1, "there is no tool \"pencil\"; known: select, tape,"),
        ("click 3'", 1, "a point is written x, y"),
        ("click 3', x", 1, "is not a length"),
        ("# nothing\n\nselect W3", 3, "there is no element W3; the plan is empty"),
        ("option door-colour red", 1, "there is no field colour; there are: operation, width"),
        ("option door-operation folding", 1, "folding is not one of: hinged door, sliding door"),
        ("expect finding no-such-rule", 1, "there is no rule no-such-rule; known: "),
        ("expect weather", 1, "there is no expectation \"weather\"; known: elements N"),
        ("undo 2", 1, "there is nothing to undo"),
        ("undo twice", 1, "\"twice\" is neither a whole number nor all"),
        ("paste", 1, "nothing has been copied"),
        ("tool note\nclick 0, 0\nset X1 text", 3, "needs a name and a value"),
        ("tool note\nclick 0, 0\nset X1 size 3", 3, "there is no field size; there are: text"),
        ("key f13", 1, "there is no key \"f13\"; known: enter"),
        ("delete all", 1, "delete stands alone"),
    ];
    for (text, line, what) in cases {
        let problem = problem(text);
        assert_eq!(problem.line, line, "{text}");
        assert!(problem.what.contains(what), "{text}: {}", problem.what);
        assert!(!problem.unmet, "{text}");
    }
}

#[test]
fn expectations_that_are_not_met_say_what_is_so() {
    let cases = [
        ("expect elements 1", "there are 0"),
        ("expect rooms 2", "there are 0"),
        ("expect tool tape", "the tool is Select"),
        ("expect undo \"Draw\"", "the step to undo is nothing"),
        ("expect finding panel-depth", "there are no findings"),
        (
            "tool partition\ndrag 0, 0 to 5', 0\nexpect length W1 5' 1/64\"",
            "it is 5' 0\" (-127 units",
        ),
        ("tool partition\nclick 0, 0\nexpect ready", "a gesture is running"),
        ("tool note\nclick 0, 0\nexpect value X1 text Other", "it is Note"),
        ("mark a\ntool note\nclick 0, 0\nexpect plan as a", "the plan is not the one marked a"),
    ];
    for (text, what) in cases {
        let problem = problem(text);
        assert!(problem.unmet, "{text}");
        assert!(problem.what.contains(what), "{text}: {}", problem.what);
    }
}

#[test]
fn steps_carry_times_of_the_clock() {
    use std::sync::atomic::{AtomicU64, Ordering};
    static NOW: AtomicU64 = AtomicU64::new(0);
    let clock = || Duration::from_millis(NOW.fetch_add(1, Ordering::Relaxed));
    let text = "tool partition\ndrag 0, 0 to 5', 0\nexpect elements 1";
    let report = script::run(text, Session::new(Plan::default()), clock);
    assert_eq!(report.steps.len(), 3);
    let work = report.steps[1].work;
    let least = Duration::from_millis(1);
    assert!(work.edit >= least && work.derive >= least && work.check >= least, "{work:?}");
    assert_eq!(report.steps[2].work.total(), Duration::ZERO);
    assert!(report.to_string().contains("drag 0, 0 to 5', 0  [edit "), "{report}");
}
