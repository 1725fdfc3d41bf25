//! What a session promises to the window.

use std::sync::Arc;
use std::time::Duration;

use editor::{EditorKey, Gesture, Hidden, Mods, Session, ToolKind, script};
use geometry::Pt;
use measure::Len;
use plan::{Edit, ElementId, Plan};

/// A session after a script.
fn after(text: &str) -> Session {
    let report = script::run(text, Session::new(Plan::default()), || Duration::ZERO);
    assert!(report.problem.is_none(), "{report}");
    report.session
}

const ROOM: &str = "
tool shell
enter 0, 0
enter 20', 0
enter 20', 10'
enter 0, 10'
enter 0, 0
tool partition
enter 8', 0
enter 8', 10'
key escape
tool furnishing
enter 14', 5'
tool select
";

fn press(at: Pt) -> Gesture {
    Gesture::Press { at, reach: Len::inches(2), mods: Mods::default() }
}

fn slide(at: Pt) -> Gesture {
    Gesture::Move { at, reach: Len::inches(2), mods: Mods::default() }
}

fn release(at: Pt) -> Gesture {
    Gesture::Release { at, reach: Len::inches(2), mods: Mods::default() }
}

#[test]
fn facts_and_findings_are_derived_only_when_the_plan_has_changed() {
    let mut session = after(ROOM);
    let before = session.checked();
    assert!(Arc::ptr_eq(&before.facts, &session.checked().facts));
    session.feed(&slide(Pt::inches(30, 30)));
    assert!(Arc::ptr_eq(&before.findings, &session.checked().findings));

    session.feed(&press(Pt::inches(96, 60)));
    session.feed(&slide(Pt::inches(108, 60)));
    let moved = session.checked();
    assert!(!Arc::ptr_eq(&before.facts, &moved.facts));
    assert!(Arc::ptr_eq(&moved.facts.plan, session.shown()));
    // Both plans are remembered: dropping the drag costs nothing.
    session.feed(&Gesture::Key { key: EditorKey::Escape, mods: Mods::default() });
    assert!(Arc::ptr_eq(&before.facts, &session.checked().facts));
    assert!(Arc::ptr_eq(&before.keep_clears, &session.checked().keep_clears));
}

#[test]
fn one_gesture_is_one_step() {
    let mut session = after(ROOM);
    let undo_all = |session: &mut Session| std::iter::from_fn(|| session.undo()).count();
    let before = undo_all(&mut after(ROOM));
    session.feed(&press(Pt::inches(96, 60)));
    for x in 100..120 {
        session.feed(&slide(Pt::inches(x, 60)));
    }
    session.feed(&release(Pt::inches(120, 60)));
    assert_eq!(session.can_undo(), Some("Move W5 by 2' 0\""));
    assert_eq!(undo_all(&mut session), before + 1);
}

#[test]
fn an_edit_from_a_pane_drops_the_running_gesture_and_is_refused_in_words() {
    let mut session = after(ROOM);
    session.feed(&press(Pt::inches(96, 60)));
    session.feed(&slide(Pt::inches(108, 60)));
    assert!(session.busy());
    let gone = Edit::Remove(vec![ElementId(99)]);
    let error = session.apply("Delete", &gone).expect_err("there is no such element");
    assert!(error.to_string().contains("99"), "{error}");
    assert!(!session.busy());
    assert!(Arc::ptr_eq(session.plan(), session.shown()));

    session.apply("Delete W5", &Edit::Remove(vec![ElementId(5)])).expect("it is there");
    assert!(session.selection().is_empty(), "what is gone is not selected");
    assert_eq!(session.can_undo(), Some("Delete W5"));
}

#[test]
fn text_that_is_not_elements_is_refused_and_changes_nothing() {
    let mut session = after(ROOM);
    let before = Arc::clone(session.plan());
    for text in ["", "hello", "(fragment: 99, elements: [])", "(fragment: 1, elements: [(]"] {
        let error = session.paste(text).expect_err("not elements");
        assert!(!error.is_empty());
        assert!(Arc::ptr_eq(&before, session.plan()), "{text}");
    }
    assert_eq!(session.copy_selected().is_some(), !session.selection().is_empty());
    session.select([]);
    assert_eq!(session.copy_selected(), None);
}

#[test]
fn what_the_view_hides_is_not_picked() {
    let mut session = after(ROOM);
    let desk = Pt::inches(168, 50);
    session.feed(&slide(desk));
    assert_eq!(session.hovered(), Some(ElementId(6)));
    session.set_hidden(Hidden { furnishings: true, ..Hidden::default() });
    session.feed(&slide(desk));
    assert_eq!(session.hovered(), None);
}

#[test]
fn a_refusal_stays_while_the_pointer_moves_on() {
    let mut session = after(ROOM);
    session.set_tool(ToolKind::Furring);
    session.feed(&press(Pt::inches(150, 60)));
    let why = session.status().refused.clone().expect("there is no wall");
    session.feed(&release(Pt::inches(150, 60)));
    session.feed(&slide(Pt::inches(151, 60)));
    assert_eq!(session.status().refused.as_ref(), Some(&why));
    session.feed(&press(Pt::inches(150, 0)));
    assert_eq!(session.status().refused, None);
}

#[test]
fn select_leaves_out_what_is_not_there() {
    let mut session = after(ROOM);
    session.select([ElementId(5), ElementId(77)]);
    assert_eq!(session.selection().iter().copied().collect::<Vec<_>>(), [ElementId(5)]);
}
