//! Whatever a person does: nothing panics, every plan is sound, Escape leaves no trace, and undo and redo lead
//! back and forth exactly.

use std::sync::{Arc, OnceLock};
use std::time::Duration;

use editor::{EditorKey, Gesture, Mods, Session, ToolKind, script};
use geometry::Pt;
use measure::{Len, System};
use plan::Plan;
use proptest::prelude::*;

/// Something done to a session.
#[derive(Clone, Debug)]
enum Act {
    Tool(ToolKind),
    Feed(Gesture),
    Type(&'static str),
    Delete,
    Duplicate,
    CopyPaste,
    SelectAll,
    SelectNext(bool),
    Undo,
    Redo,
    Metric(bool),
}

/// The basement of the story, so that there is something to catch, drag and delete.
fn basement() -> Plan {
    static PLAN: OnceLock<Plan> = OnceLock::new();
    let play = || {
        let story = include_str!("scripts/story.txt");
        let report = script::run(story, Session::new(Plan::default()), || Duration::ZERO);
        Plan::clone(report.session.plan())
    };
    PLAN.get_or_init(play).clone()
}

fn point() -> impl Strategy<Value = Pt> {
    let inch = Len::PER_INCH;
    prop_oneof![
        // Anywhere in and about the basement.
        8 => (-24 * inch..360 * inch, -24 * inch..456 * inch).prop_map(|(x, y)| Pt::new(x, y)),
        // On whole feet, where ends and corners are.
        8 => (0..=28i32, 0..=36i32).prop_map(|(x, y)| Pt::inches(12 * x, 12 * y)),
        1 => any::<(i32, i32)>().prop_map(|(x, y)| Pt::new(x, y)),
    ]
}

fn reach() -> impl Strategy<Value = Len> {
    prop_oneof![
        8 => (0..12i32).prop_map(Len::inches),
        1 => any::<i32>().prop_map(Len::from_units),
    ]
}

fn mods() -> impl Strategy<Value = Mods> {
    (prop::bool::weighted(0.2), prop::bool::weighted(0.2)).prop_map(|(shift, command)| Mods {
        shift,
        command,
        alt: false,
    })
}

fn key() -> impl Strategy<Value = EditorKey> {
    prop::sample::select(vec![
        EditorKey::Enter,
        EditorKey::Escape,
        EditorKey::Tab,
        EditorKey::Backspace,
        EditorKey::Left,
        EditorKey::Right,
        EditorKey::Up,
        EditorKey::Down,
        EditorKey::FlipHinge,
        EditorKey::FlipSwing,
        EditorKey::Turn,
    ])
}

fn gesture() -> impl Strategy<Value = Gesture> {
    prop_oneof![
        4 => (point(), reach(), mods()).prop_map(|(at, reach, mods)| Gesture::Press { at, reach, mods }),
        6 => (point(), reach(), mods()).prop_map(|(at, reach, mods)| Gesture::Move { at, reach, mods }),
        4 => (point(), reach(), mods()).prop_map(|(at, reach, mods)| Gesture::Release { at, reach, mods }),
        1 => (point(), reach(), mods())
            .prop_map(|(at, reach, mods)| Gesture::DoubleClick { at, reach, mods }),
        3 => (key(), mods()).prop_map(|(key, mods)| Gesture::Key { key, mods }),
        1 => any::<char>().prop_map(Gesture::Char),
    ]
}

fn act() -> impl Strategy<Value = Act> {
    let texts = vec![
        "3'",
        "12' 6 1/2\"",
        "0",
        "-4",
        "x",
        "9999999999",
        "5', 7'",
        "12', -3'",
        ",",
        "1/0",
        "36",
        "2'",
    ];
    prop_oneof![
        4 => prop::sample::select(ToolKind::ALL.to_vec()).prop_map(Act::Tool),
        30 => gesture().prop_map(Act::Feed),
        5 => prop::sample::select(texts).prop_map(Act::Type),
        1 => Just(Act::Delete),
        1 => Just(Act::Duplicate),
        1 => Just(Act::CopyPaste),
        1 => Just(Act::SelectAll),
        2 => any::<bool>().prop_map(Act::SelectNext),
        1 => Just(Act::Undo),
        1 => Just(Act::Redo),
        1 => any::<bool>().prop_map(Act::Metric),
    ]
}

fn feed_key(session: &mut Session, key: EditorKey) {
    session.feed(&Gesture::Key { key, mods: Mods::default() });
}

fn perform(session: &mut Session, act: &Act) {
    match act {
        Act::Tool(tool) => session.set_tool(*tool),
        Act::Feed(gesture) => session.feed(gesture),
        Act::Type(text) => {
            for c in text.chars() {
                session.feed(&Gesture::Char(c));
            }
            feed_key(session, EditorKey::Enter);
        }
        Act::Delete => session.delete_selected(),
        Act::Duplicate => session.duplicate_selected(),
        Act::CopyPaste => {
            if let Some(text) = session.copy_selected() {
                // A paste that has no place says so; both are fine.
                let _ = session.paste(&text);
            }
        }
        Act::SelectAll => session.select_all(),
        Act::SelectNext(back) => session.select_next(*back),
        Act::Undo => drop(session.undo()),
        Act::Redo => drop(session.redo()),
        Act::Metric(metric) => {
            session.set_system(if *metric { System::Metric } else { System::Imperial });
        }
    }
}

fn started(blank: bool) -> Session {
    Session::new(if blank { Plan::default() } else { basement() })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, ..ProptestConfig::default() })]

    #[test]
    fn nothing_panics_and_every_plan_is_sound(
        blank in any::<bool>(),
        acts in prop::collection::vec(act(), 1..60),
    ) {
        let mut session = started(blank);
        for act in &acts {
            perform(&mut session, act);
            let selected: Vec<_> = session.selection().iter().copied().collect();
            prop_assert!(selected.iter().all(|id| session.plan().get(*id).is_some()), "{act:?}");
            session.dimensions();
        }
        session.checked();
        prop_assert_eq!(session.plan().validate(), vec![]);
        prop_assert_eq!(session.shown().validate(), vec![]);
    }

    #[test]
    fn escape_leaves_no_trace(
        blank in any::<bool>(),
        acts in prop::collection::vec(act(), 1..40),
        tool in prop::sample::select(ToolKind::ALL.to_vec()),
        last in prop::collection::vec(gesture(), 1..4),
    ) {
        let mut session = started(blank);
        for act in &acts {
            perform(&mut session, act);
        }
        session.set_tool(tool);
        let steps = session.can_undo().map(str::to_owned);
        let before = Arc::clone(session.plan());
        let selected = session.selection().clone();
        for gesture in &last {
            session.feed(gesture);
        }
        // Only what those gestures left running is dropped, not what they made.
        let made = !Arc::ptr_eq(&before, session.plan());
        let running = session.busy();
        let committed = Arc::clone(session.plan());
        feed_key(&mut session, EditorKey::Escape);
        prop_assert!(Arc::ptr_eq(session.plan(), &committed));
        prop_assert!(Arc::ptr_eq(session.shown(), &committed));
        prop_assert!(!session.busy());
        prop_assert!(session.entry().is_none());
        prop_assert!(session.status().refused.is_none());
        if !made {
            prop_assert_eq!(session.can_undo().map(str::to_owned), steps);
        }
        let one_press = last.len() == 1 && matches!(last[0], Gesture::Press { .. });
        if running && one_press {
            prop_assert_eq!(session.selection(), &selected);
        }
    }

    #[test]
    fn undo_all_and_redo_all_lead_back(
        blank in any::<bool>(),
        acts in prop::collection::vec(act(), 1..60),
    ) {
        let mut session = started(blank);
        let start = Plan::clone(session.plan());
        for act in &acts {
            perform(&mut session, act);
        }
        while session.redo().is_some() {}
        let end = Plan::clone(session.plan());
        let mut labels = Vec::new();
        while let Some(label) = session.undo() {
            prop_assert!(!label.is_empty());
            labels.push(label);
        }
        prop_assert!(session.plan().says_the_same(&start));
        let mut again = Vec::new();
        while let Some(label) = session.redo() {
            again.push(label);
        }
        again.reverse();
        prop_assert_eq!(labels, again);
        prop_assert!(session.plan().says_the_same(&end));
    }
}
