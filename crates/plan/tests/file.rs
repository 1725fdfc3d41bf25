//! The plan file: exact both ways, kind to a reader, and never a panic.

use geometry::Facing;
use plan::element::{Body, Note};
use plan::file::{self, FileErrorKind, Place};
use plan::sample::{any_plan, basement, mutations, room};
use plan::{Edit, ElementId, Plan, SetAside, State, fragment, sample};
use proptest::prelude::*;

/// A small plan with most kinds of element, to spoil.
fn spoilable() -> Plan {
    let mut plan = basement(25);
    let note =
        Note { at: geometry::Pt::inches(1, 2), text: "a \"quoted\"\nremark \\ é, ]".into() };
    sample::add(&mut plan, State::New, Body::Note(note));
    let aside = SetAside {
        rule: "panel-depth".into(),
        elements: vec![ElementId(1), ElementId(2)],
        reason: "seen by the inspector".into(),
    };
    plan.with(&Edit::SetAside(aside)).expect("set aside")
}

fn error(text: &str) -> (FileErrorKind, Option<(usize, usize)>, String) {
    let e = file::read(text).expect_err("must be refused");
    (e.kind, e.place.map(|Place { line, column }| (line, column)), e.to_string())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn write_then_read_is_the_identity(plan in any_plan()) {
        let text = file::write(&plan);
        prop_assert_eq!(file::read(&text).map_err(|e| e.to_string()), Ok(plan.clone()), "{}", text);
        prop_assert_eq!(file::read_bytes(text.as_bytes()), Ok(plan));
    }

    #[test]
    fn a_fragment_reads_back(plan in any_plan()) {
        let ids: Vec<ElementId> = plan.elements().iter().map(|e| e.id).collect();
        let text = fragment::write(&plan, &ids);
        prop_assert_eq!(fragment::read(&text), Ok(fragment::pieces(&plan, &ids)));
    }

    /// Whatever has happened to a file: a sound plan, or an error that says something.
    #[test]
    fn spoilt_files_never_panic(text in mutations(file::write(&spoilable()))) {
        match file::read(&text) {
            Ok(plan) => prop_assert_eq!(plan.validate(), vec![]),
            Err(e) => prop_assert!(!e.what.is_empty() && e.to_string().ends_with('.'), "{}", e),
        }
        let _ = fragment::read(&text);
    }

    #[test]
    fn spoilt_fragments_never_panic(text in mutations(fragment::write(&spoilable(), &[ElementId(1), ElementId(5), ElementId(6)]))) {
        if let Ok(pieces) = fragment::read(&text) {
            let plan = room();
            if let Ok(pasted) = fragment::paste(&plan, &pieces, geometry::Vec2::new(0, 0)) {
                let _ = plan.with(&pasted.edit);
            }
        }
    }

    #[test]
    fn any_bytes_never_panic(bytes in proptest::collection::vec(any::<u8>(), 0..200), head in any::<bool>()) {
        let mut all = if head { b"(schema: 1, ".to_vec() } else { Vec::new() };
        all.extend(bytes);
        prop_assert!(file::read_bytes(&all).is_err());
    }
}

#[test]
fn a_plan_of_schema_1_opens_for_ever() {
    let text = include_str!("fixtures/v1/basement.ron");
    let plan = file::read(text).expect("the fixture opens");
    let letters: std::collections::BTreeSet<_> =
        plan.elements().iter().map(|e| e.body.letter()).collect();
    assert_eq!(letters.into_iter().collect::<String>(), "BCDFHNRSTUWX");
    assert_eq!(plan.site.title, "Larch Row 12, basement");
    assert_eq!(plan.set_aside().len(), 1);
    assert_eq!(plan.next_ids(1).next(), Some(ElementId(40)));
    assert_eq!(file::read(&file::write(&plan)), Ok(plan));
}

#[test]
fn one_element_stands_on_one_line_in_the_order_of_the_numbers() {
    let mut plan = spoilable();
    let text = file::write(&plan);
    let lines = |start: &str| text.lines().filter(|l| l.trim_start().starts_with(start)).count();
    let elements = plan.elements().len();
    assert_eq!(text.lines().filter(|l| l.contains("(id: ")).count(), elements);
    assert_eq!(lines("Shell("), 4);
    // A change of one element is a change of one line.
    let desk = sample::desk((77, 33), Facing::NORTH);
    sample::add(&mut plan, State::New, desk);
    let other = file::write(&plan);
    let added: Vec<&str> = other.lines().filter(|l| !text.contains(l)).collect();
    assert_eq!(
        added,
        [
            "    next_id: 28,",
            "        Furnishing(id: 27, state: New, name: \"desk\", at: (\"6ft 5in\", \"2ft 9in\"), \
             facing: North, width: \"5ft\", depth: \"2ft 6in\", height: \"2ft 5in\", fixed: false),",
        ]
    );
}

#[test]
fn what_is_no_plan_is_told_apart() {
    let png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\x02\0\0\0\x02\0\x08\x06\0\0\0";
    let e = file::read_bytes(png).expect_err("a picture");
    assert_eq!(e.kind, FileErrorKind::Foreign);
    assert_eq!(
        e.to_string(),
        "this is not a plan of this program. Choose a file that this program has saved."
    );
    for foreign in ["{\"schema\": 1}", "<svg/>", "hello", "[1, 2]", "\u{0}", "schema: 1"] {
        assert_eq!(error(foreign).0, FileErrorKind::Foreign, "{foreign:?}");
    }
    for empty in ["", " \n\t", "\u{feff}", "// only a remark", "// a\n  // b\n"] {
        let (kind, place, text) = error(empty);
        assert_eq!((kind, place), (FileErrorKind::Empty, None), "{empty:?}");
        assert!(text.starts_with("the file is empty. "), "{text}");
    }
    let (_, place, text) = error("(plan: 1)");
    assert_eq!(place, Some((1, 9)));
    assert!(
        text.starts_with("line 1, column 9: the field `schema` is missing in Plan. "),
        "{text}"
    );
}

#[test]
fn a_text_that_is_too_large_is_not_parsed() {
    let mut text = file::write(&room());
    let missing = file::LARGEST - text.len();
    text += &" ".repeat(missing);
    assert!(file::read(&text).is_ok());
    text.push(' ');
    let (kind, _, message) = error(&text);
    assert_eq!(kind, FileErrorKind::TooLarge);
    assert_eq!(
        message,
        "the file has 33 MiB; the largest plan that is read has 32 MiB. Choose another file; this is no plan."
    );
    assert_eq!(file::read_bytes(text.as_bytes()).map_err(|e| e.kind), Err(FileErrorKind::TooLarge));
}

#[test]
fn a_newer_file_is_refused_with_its_number_whatever_else_it_says() {
    let newer = "(schema: 7, cellar: [(a: 1, b: Some({\"x\": 2.5}))], next_id: \"x\")";
    assert_eq!(
        error(newer),
        (
            FileErrorKind::Newer,
            None,
            "this file was saved by a newer version (schema 7; this program reads up to 1). Open it with \
             that version or a later one."
                .into()
        )
    );
    assert_eq!(error("(schema: 0)").0, FileErrorKind::Content);
    assert_eq!(error("(schema: -1)").0, FileErrorKind::Content);
}

#[test]
fn a_file_cut_short_at_any_place_is_refused() {
    let text = file::write(&spoilable());
    let whole = text.trim_end().len();
    for end in (0..whole).step_by(7).filter(|&i| text.is_char_boundary(i)) {
        let (kind, ..) = error(&text[..end]);
        assert!(
            matches!(
                kind,
                FileErrorKind::Empty
                    | FileErrorKind::Truncated
                    | FileErrorKind::Notation
                    | FileErrorKind::Foreign
                    | FileErrorKind::Content
            ),
            "{end}: {kind:?}"
        );
    }
    let (kind, place, message) = error(&text[..whole - 1]);
    assert_eq!(kind, FileErrorKind::Truncated);
    // Cut off is the last bracket, which stands alone on the last line.
    assert_eq!(place, Some((text.lines().count(), 1)));
    assert!(message.ends_with("open the backup beside it."), "{message}");
}

#[test]
fn faults_are_shown_at_their_line_and_column() {
    let mut plan = room();
    let wall = sample::partition(&mut plan, (100, 0), (100, 120));
    sample::add(&mut plan, State::New, sample::door(wall, 12, 32));
    let text = file::write(&plan);
    let line = |start: &str| {
        let found = text.lines().position(|l| l.trim_start().starts_with(start));
        found.expect("there") + 1
    };
    let door = line("Door(");
    let partition = line("Partition(");
    for (from, to, kind, place, message) in [
        (
            "host: 5",
            "host: 3000",
            FileErrorKind::Content,
            (door, 9),
            "D6 is fixed to element 3000, which is not in the plan; place it on a wall",
        ),
        (
            "\"2ft 8in\"",
            "\"200ft\"",
            FileErrorKind::Content,
            (door, 9),
            "D6: the leaf width of 200' 0\" (60960 mm) is out of range",
        ),
        (
            "Door(id: 6",
            "Door(id: 5",
            FileErrorKind::Content,
            (door, 9),
            "element number 5 is used twice",
        ),
        (
            "next_id: 7",
            "next_id: 6",
            FileErrorKind::Content,
            (door, 9),
            "element 6 has a number that is not below next_id, which is 6",
        ),
        (
            "Hinged",
            "Hunged",
            FileErrorKind::Content,
            (door, 0),
            "`Hunged` is not known here; accepted are",
        ),
        (
            "swing: Left",
            "swing: Left, bell: true",
            FileErrorKind::Content,
            (door, 0),
            "there is no field `bell`",
        ),
        (
            "justify: Centre, ",
            "",
            FileErrorKind::Content,
            (partition, 0),
            "the field `justify` is missing",
        ),
        (
            "\"1ft 4in\"",
            "\"1.5ft\"",
            FileErrorKind::Content,
            (partition, 0),
            "expected a length in quotes",
        ),
        ("\"1ft 4in\"", "NaN", FileErrorKind::Notation, (partition, 0), "expected string"),
        (
            "Partition(id: 5,",
            "Partition(id: 5",
            FileErrorKind::Notation,
            (partition, 0),
            "expected comma",
        ),
        (
            "host: 5",
            "host: -5",
            FileErrorKind::Content,
            (door, 0),
            "the number is too large or below zero",
        ),
    ] {
        let spoilt = text.replacen(from, to, 1);
        assert_ne!(spoilt, text, "{from}");
        let (found_kind, found_place, found_message) = error(&spoilt);
        let (found_line, found_column) = found_place.expect("a place");
        let words = found_message.split_once(": ").map_or("", |(_, words)| words);
        assert!(words.starts_with(message), "{found_message}");
        assert_eq!((found_kind, found_line), (kind, place.0), "{found_message}");
        assert!(place.1 == 0 || found_column == place.1, "{found_message}");
    }
}

#[test]
fn elements_out_of_order_and_other_spacing_are_read() {
    let text = file::write(&room());
    let mut lines: Vec<&str> = text.lines().collect();
    let first = lines.iter().position(|l| l.contains("Shell(id: 1")).expect("there");
    lines.swap(first, first + 2);
    assert_ne!(lines.join("\n"), text.trim_end());
    assert_eq!(file::read(&lines.join("\r\n")), Ok(room()));
    assert_eq!(file::read(&format!("\u{feff}{text}")).map_err(|e| e.to_string()), Ok(room()));
}

#[test]
fn nested_brackets_without_end_and_endless_lists_are_refused() {
    let deep = format!("(schema: 1, x: {}", "[".repeat(200_000));
    assert!(file::read(&deep).is_err());
    let many = "Note(id: 1, state: New, at: (\"0in\", \"0in\"), text: \"\"),".repeat(30_000);
    let site = file::write(&room());
    let site = site.lines().find(|l| l.contains("site:")).expect("there");
    let many = format!("(schema: 1, next_id: 2, {site} elements: [{many}])");
    assert_eq!(error(&many).0, FileErrorKind::Content);
}

#[test]
fn a_fragment_is_no_plan_and_a_plan_no_fragment() {
    let plan = room();
    let text = fragment::write(&plan, &[ElementId(1)]);
    assert!(file::read(&text).is_err());
    let e = fragment::read(&file::write(&plan)).expect_err("a plan");
    assert!(e.to_string().ends_with("Copy elements in a plan first, then paste."), "{e}");
    let newer = fragment::read("(fragment: 2, x: 1)").expect_err("newer");
    assert_eq!(newer.kind, FileErrorKind::Newer);
    assert!(fragment::read("12' 6\"").is_err());
}
