//! The window, driven by the names of what is in it.
#![allow(clippy::disallowed_methods, reason = "tests write plan files")]

use std::path::PathBuf;

use cellarwright::window::{App, Start};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Pos2, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use geometry::{Facing, Pt};
use measure::{Len, System};
use plan::detail::{Value, heat::FUEL, ways::ARRIVAL};
use plan::element::{
    Column, ColumnShape, Note, Partition, RoomTag, RoomUse, ServiceKind, ServicePoint, ShellWall,
};
use plan::{Body, Draft, Edit, Plan, State};

/// A shell of 20 ft by 16 ft with a panel on its east wall and a partition 33 in before it.
fn cellar() -> Plan {
    let corners = [(0, 0), (240, 0), (240, 192), (0, 192)].map(|(x, y)| Pt::inches(x, y));
    let shell = (0..4).map(|i| {
        let wall = ShellWall {
            a: corners[i],
            b: corners[(i + 1) % 4],
            thickness: Len::inches(8),
            height: Len::inches(93),
        };
        Edit::Add(Draft::new(State::Existing, Body::Shell(wall)))
    });
    let panel = ServicePoint::usual(ServiceKind::Panel, Pt::inches(240, 96), Facing::WEST);
    // The right face lies 34 in from the wall: 30 in from the panel's front, 36 in are required.
    let wall = Partition::two_by_four(
        Pt::at(Len::inches(206) - Len::sixty_fourths(144), Len::inches(48)),
        Pt::at(Len::inches(206) - Len::sixty_fourths(144), Len::inches(144)),
    );
    let rest = [
        Draft::new(State::Existing, Body::Service(panel)),
        Draft::new(State::New, Body::Partition(wall)),
    ];
    let edits: Vec<Edit> = shell.chain(rest.map(Edit::Add)).collect();
    Plan::default().with(&Edit::Batch(edits)).expect("the plan is sound")
}

struct Desk {
    harness: Harness<'static, App>,
    _dir: tempfile::TempDir,
    path: PathBuf,
}

/// A window of 1280 by 800 with a plan open.
fn desk(plan: &Plan) -> Desk {
    let dir = tempfile::tempdir().expect("a folder for the plan");
    let path = dir.path().join("cellar.ron");
    std::fs::write(&path, plan::file::write(plan)).expect("the plan is written");
    let start = Start { plan: Some(path.clone()), ..Start::default() };
    let mut harness = Harness::builder()
        .with_size([1280.0, 800.0])
        .with_max_steps(30)
        .with_theme(egui::Theme::Light)
        .build_eframe(move |cc| App::new(&cc.egui_ctx, start));
    harness.run();
    Desk { harness, _dir: dir, path }
}

impl Desk {
    fn plan(&self) -> &Plan {
        self.harness.state().session().plan()
    }

    fn elements(&self) -> usize {
        self.plan().elements().len()
    }

    fn click(&mut self, label: &str) {
        self.harness.get_by_label(label).click();
        self.harness.run();
    }

    fn button(&mut self, label: &str) {
        self.harness.get_by_role_and_label(Role::Button, label).click();
        self.harness.run();
    }

    fn click_at(&mut self, pos: Pos2) {
        self.harness.hover_at(pos);
        self.harness.run();
        self.harness.drag_at(pos);
        self.harness.drop_at(pos);
        self.harness.run();
    }

    fn key(&mut self, key: Key) {
        self.harness.key_press(key);
        self.harness.run();
    }

    fn type_text(&mut self, text: &str) {
        self.harness.event(egui::Event::Text(text.to_owned()));
        self.harness.run();
    }

    /// Selects an element by a part of its name in the accessibility tree.
    fn select(&mut self, part: &str) {
        let center = self.harness.get_by(|n| {
            n.role() == Role::GraphicsObject && n.label().is_some_and(|l| l.contains(part))
        });
        center.click_accesskit();
        self.harness.run();
    }

    /// Replaces what a field holds, and presses Enter.
    fn fill(&mut self, label: &str, text: &str) {
        let field = self.harness.get_by_role_and_label(Role::TextInput, label);
        field.focus();
        self.harness.run();
        self.harness.key_press_modifiers(Modifiers::COMMAND, Key::A);
        self.harness.run();
        self.type_text(text);
        self.key(Key::Enter);
    }

    /// Everything that is written, for the message of a failed test.
    fn words(&self) -> Vec<String> {
        let nodes = self.harness.get_all_by(|n| n.value().is_some() || n.label().is_some());
        nodes.filter_map(|n| n.accesskit_node().label().or(n.value())).collect()
    }

    fn says(&self, text: &str) -> bool {
        self.harness.query_all_by_label_contains(text).next().is_some()
    }

    /// A place on the plan, as a share of the canvas.
    fn spot(&self, x: f32, y: f32) -> Pos2 {
        let canvas = self.harness.get_by_role_and_label(Role::Canvas, "Plan").rect();
        canvas.min + Vec2::new(canvas.width() * x, canvas.height() * y)
    }
}

#[test]
fn a_wall_is_drawn_by_mouse_and_undone_from_the_menu() {
    let mut desk = desk(&cellar());
    let before = desk.elements();
    desk.button("Partition");
    let (from, to) = (desk.spot(0.4, 0.35), desk.spot(0.4, 0.6));
    desk.click_at(from);
    desk.click_at(to);
    desk.key(Key::Escape);
    assert_eq!(desk.elements(), before + 1);
    desk.click("Edit");
    let undo = desk.harness.get_by_label_contains("Undo: ");
    undo.click();
    desk.harness.run();
    assert_eq!(desk.elements(), before);
    desk.harness.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    desk.harness.run();
    assert_eq!(desk.elements(), before + 1, "redo brings it back");
}

#[test]
fn a_typed_length_fixes_the_wall_being_drawn() {
    let mut desk = desk(&cellar());
    desk.button("Partition");
    desk.click_at(desk.spot(0.3, 0.4));
    desk.harness.hover_at(desk.spot(0.45, 0.4));
    desk.harness.run();
    desk.type_text("4' 6\"");
    desk.key(Key::Enter);
    desk.key(Key::Escape);
    let longest = desk.plan().elements().iter().last().and_then(|e| match &e.body {
        Body::Partition(w) => Some(w.line().len()),
        _ => None,
    });
    assert_eq!(longest, Some(Len::feet_inches(4, 6)));
}

#[test]
fn a_length_field_takes_feet_and_refuses_nonsense() {
    let mut desk = desk(&cellar());
    desk.select("foundation wall F1");
    let thickness = |desk: &Desk| match &desk.plan().elements().iter().next().unwrap().body {
        Body::Shell(w) => w.thickness,
        other => panic!("{other:?}"),
    };
    desk.fill("Thickness", "10 1/2\"");
    assert_eq!(thickness(&desk), Len::sixty_fourths(10 * 64 + 32));
    desk.fill("Thickness", "12 6");
    assert_eq!(thickness(&desk), Len::sixty_fourths(10 * 64 + 32), "the old value stays");
    desk.fill("Thickness", "20 ft");
    assert_eq!(thickness(&desk), Len::sixty_fourths(10 * 64 + 32), "the old value stays");
    assert!(desk.says("out of range"), "and the range is said: {:?}", desk.words());
}

#[test]
fn the_panel_finding_is_shown_and_set_aside_with_a_reason() {
    let mut desk = desk(&cellar());
    assert!(desk.says("Findings"));
    let aside = |desk: &Desk| desk.plan().set_aside().len();
    let open = desk.harness.query_all_by_label_contains("Set aside: ").count();
    assert!(open > 0, "the partition is too near the panel");
    desk.harness.get_all_by_label_contains("Set aside: ").next().unwrap().click();
    desk.harness.run();
    assert!(desk.says("Set this finding aside"));
    let reason = desk.harness.get_by_role_and_label(Role::MultilineTextInput, "Reason");
    reason.focus();
    desk.harness.run();
    desk.type_text("The inspector agreed on site.");
    // Left by a wrong key, what was written is there when the dialog comes again.
    desk.key(Key::Escape);
    desk.key(Key::Escape);
    assert!(!desk.says("Set this finding aside"));
    desk.harness.get_all_by_label_contains("Set aside: ").next().unwrap().click();
    desk.harness.run();
    desk.button("Set aside");
    assert_eq!(aside(&desk), 1);
    assert!(desk.says("Reason: The inspector agreed on site."));
    desk.harness.get_by_label_contains("Take up again: ").click_accesskit();
    desk.harness.run();
    assert_eq!(aside(&desk), 0);
}

#[test]
fn units_switch_everywhere() {
    let mut desk = desk(&cellar());
    assert_eq!(desk.harness.state().session().system(), System::Imperial);
    desk.click("Units: feet and inches");
    assert_eq!(desk.harness.state().session().system(), System::Metric);
    desk.select("foundation wall F1");
    let field = desk.harness.get_by_role_and_label(Role::TextInput, "Thickness");
    assert_eq!(field.value().as_deref(), Some("203.2"));
}

#[test]
fn the_lights_go_off_and_on() {
    let mut desk = desk(&cellar());
    let dark = |desk: &Desk| desk.harness.ctx.global_style().visuals.dark_mode;
    assert!(!dark(&desk));
    desk.click("View");
    desk.harness.get_by_label_contains("Lights off").click();
    desk.harness.run();
    assert!(dark(&desk));
}

#[test]
fn unsaved_work_is_asked_about_and_saved() {
    let mut desk = desk(&cellar());
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::A);
    desk.harness.run();
    desk.key(Key::Delete);
    assert_eq!(desk.elements(), 0);
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::N);
    desk.harness.run();
    assert!(desk.says("Save the changes to cellar.ron?"));
    desk.button("Cancel");
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::S);
    desk.harness.run();
    let saved = plan::file::read(&std::fs::read_to_string(&desk.path).unwrap()).unwrap();
    assert!(saved.elements().is_empty());
    let backup = desk.path.with_file_name("cellar.ron.bak");
    let backup = plan::file::read(&std::fs::read_to_string(backup).unwrap()).unwrap();
    assert_eq!(backup.elements().len(), 6, "the version before is kept");
}

#[test]
fn a_broken_file_is_explained_and_the_open_plan_stays() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("broken.ron");
    std::fs::write(&path, "(schema: 1, plan: (").unwrap();
    let start = Start { plan: Some(path), ..Start::default() };
    let mut harness = Harness::builder()
        .with_size([1000.0, 700.0])
        .with_max_steps(30)
        .with_theme(egui::Theme::Light)
        .build_eframe(move |cc| App::new(&cc.egui_ctx, start));
    harness.run();
    assert!(harness.query_by_label_contains("The plan could not be opened").is_some());
    let said: Vec<String> =
        harness.get_all_by(|n| n.value().is_some()).filter_map(|n| n.value()).collect();
    assert!(
        said.iter().any(|t| t.contains("broken.ron") && t.contains("line 1, column 20")),
        "file, line, column: {said:?}"
    );
}

#[test]
fn a_remedy_is_shown_first_and_then_applied() {
    let mut desk = desk(&cellar());
    let line = |desk: &Desk| match &desk.plan().elements().iter().last().unwrap().body {
        Body::Partition(w) => w.line(),
        other => panic!("{other:?}"),
    };
    let before = line(&desk);
    desk.harness.get_by_label_contains("Move W6 by").click();
    desk.harness.run();
    assert_eq!(line(&desk), before, "shown, not done");
    desk.button("Leave it");
    desk.harness.get_by_label_contains("Move W6 by").click();
    desk.harness.run();
    desk.harness.get_by_label_contains("Apply: Move W6 by").click();
    desk.harness.run();
    assert_eq!(before.a.x - line(&desk).a.x, Len::inches(6).units(), "30 in become 36 in");
    assert!(!desk.says("Too little depth"), "and the finding is gone");
}

#[test]
fn a_figure_on_the_tape_is_typed_over() {
    let mut desk = desk(&cellar());
    desk.select("partition W6");
    // The length of the wall rides on it: Tab goes to the figures of the tape.
    let canvas = desk.harness.get_by_role_and_label(Role::Canvas, "Plan");
    canvas.focus();
    desk.harness.run();
    desk.key(Key::Tab);
    desk.type_text("9'");
    desk.key(Key::Enter);
    let changed = desk.harness.state().session().can_undo().map(str::to_owned);
    assert!(changed.is_some(), "typing made a step");
}

#[test]
fn the_room_tag_tells_what_the_use_needs() {
    let mut desk = desk(&cellar());
    desk.button("Room use");
    desk.click_at(desk.spot(0.4, 0.5));
    desk.key(Key::Escape);
    assert_eq!(desk.elements(), 7);
    desk.select("room tag");
    assert!(desk.says("Net area"));
    assert!(desk.says("What an office needs"));
}

#[test]
fn a_place_and_an_amendment_are_chosen_in_the_site_facts() {
    let mut desk = desk(&cellar());
    desk.click("2021 code · existing house");
    desk.harness.get_by_role_and_label(Role::ComboBox, "Place").click();
    desk.harness.run();
    desk.click("Fargo, North Dakota");
    assert!(desk.says("escape-sill: 48\", instead of 44\""), "{:?}", desk.words());
    let reason = desk.harness.get_by_role_and_label(Role::TextInput, "Reason");
    reason.focus();
    reason.type_text("Handout 7");
    desk.harness.run();
    desk.button("Add");
    desk.button("Keep");
    let site = &desk.plan().site;
    assert_eq!((site.place.as_str(), site.amendments.len()), ("fargo-nd", 1));
    assert_eq!(site.amendments[0].reason, "Handout 7");
    let code = "2021 code, Fargo, North Dakota, amended in the plan · existing house";
    assert!(desk.says(code), "{:?}", desk.words());
}

#[test]
fn two_uses_are_compared_and_one_is_chosen_in_one_step() {
    let tag =
        RoomTag { at: Pt::inches(100, 96), room_use: RoomUse::Office, name: "Study".to_owned() };
    let edit = Edit::Add(Draft::new(State::New, Body::RoomTag(tag)));
    let mut desk = desk(&cellar().with(&edit).expect("the plan is sound"));
    desk.select("room tag R7");
    desk.button("Compare two uses…");
    assert!(desk.says("Study in two uses"), "{:?}", desk.words());
    assert!(desk.says("Escape opening of its own"), "{:?}", desk.words());
    assert!(desk.says("What it would take"));
    desk.button("Make it: bedroom");
    let room_use = |desk: &Desk| match &desk.plan().elements().iter().last().map(|e| &e.body) {
        Some(Body::RoomTag(tag)) => tag.room_use,
        other => panic!("{other:?}"),
    };
    assert_eq!(room_use(&desk), RoomUse::Bedroom);
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    desk.harness.run();
    assert_eq!(room_use(&desk), RoomUse::Office);
}

#[test]
fn details_are_stated_of_one_element_and_of_several_at_once() {
    let fuels = [(60, 0), (120, 0)].map(|(x, y)| {
        let heater = ServicePoint::usual(ServiceKind::WaterHeater, Pt::inches(x, y), Facing::NORTH);
        Edit::Add(Draft::new(State::Existing, Body::Service(heater)))
    });
    let plan = Plan::default().with(&Edit::Batch(fuels.to_vec())).expect("the plan is sound");
    let mut desk = desk(&plan);
    let stated = |desk: &Desk| -> Vec<Option<Value>> {
        desk.plan().elements().iter().map(|e| e.stated(&FUEL)).collect()
    };
    let choose = |desk: &mut Desk, fuel: &str| {
        let fuels = desk.harness.get_by_role_and_label(Role::ComboBox, "Fuel");
        fuels.click_accesskit();
        desk.harness.run();
        desk.click(fuel);
    };
    desk.select("water heater S1");
    assert!(desk.says("Details: 0 of"), "{:?}", desk.words());
    choose(&mut desk, "propane");
    assert_eq!(stated(&desk), [Some(Value::Word("propane")), None]);
    desk.harness.get_by_role_and_label(Role::Canvas, "Plan").focus();
    desk.harness.run();
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::A);
    desk.harness.run();
    assert!(desk.says("2 elements"), "{:?}", desk.words());
    choose(&mut desk, "electric");
    assert_eq!(stated(&desk), [Some(Value::Word("electric")); 2]);
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    desk.harness.run();
    assert_eq!(stated(&desk), [Some(Value::Word("propane")), None], "one step");
}

#[test]
fn ways_in_are_listed_and_their_pinch_is_shown() {
    let tag = RoomTag { at: Pt::inches(100, 96), room_use: RoomUse::Hall, name: "Hall".to_owned() };
    let edit = Edit::Add(Draft::new(State::New, Body::RoomTag(tag)));
    let mut desk = desk(&cellar().with(&edit).expect("the plan is sound"));
    desk.button("Ways in");
    assert!(desk.says("No stair and no outside door is drawn"), "{:?}", desk.words());
    assert!(desk.says("Electrical panel S5: no way"), "{:?}", desk.words());
    // People are said to come in at the hall; the partition then leaves 30 in before the panel.
    let hall = desk.plan().elements().iter().last().expect("a tag").clone();
    let details = hall.details.clone().with(&ARRIVAL, Value::Yes);
    let edit = Edit::Replace(plan::Element { details, ..hall });
    let mut desk = self::desk(&desk.plan().with(&edit).expect("the plan is sound"));
    desk.button("Ways in");
    assert!(desk.says("Electrical panel S5: 30\""), "{:?}", desk.words());
    desk.harness.get_by_role_and_label(Role::ListItem, "Electrical panel S5: 30\"").click();
    desk.harness.run();
    assert!(desk.says("Electrical panel S5"), "it is selected: {:?}", desk.words());
    desk.harness.get_by_label_contains("Findings (").click();
    desk.harness.run();
    assert!(desk.says("Too little depth"), "{:?}", desk.words());
}

#[test]
fn a_rule_is_explained_from_its_finding_with_an_example() {
    let mut desk = desk(&cellar());
    let explain = "Explain: Too little depth in front of electrical panel S5";
    desk.harness.get_by_label(explain).click();
    desk.harness.run();
    for words in ["panel-depth", "An invented example.", "How it is measured", "Cannot see"] {
        assert!(desk.says(words), "{words}: {:?}", desk.words());
    }
    desk.harness.get_by_role_and_label(Role::TextInput, "Find a rule").focus();
    desk.harness.run();
    desk.type_text("ladder");
    desk.button("Ladder of a deep well");
    assert!(desk.says("well-ladder"), "{:?}", desk.words());
    desk.button("Close");
    assert!(!desk.says("Find a rule"));
}

/// Also a place where a lock of the window's context taken twice would be found.
#[test]
fn every_kind_of_element_shows_its_values() {
    let at = Pt::inches(100, 96);
    let bodies = [
        Body::Column(Column {
            at,
            shape: ColumnShape::Round { diameter: Len::inches(4) },
            facing: Facing::WEST,
        }),
        Body::Note(Note { at, text: "Paint tested".to_owned() }),
        Body::RoomTag(RoomTag { at, room_use: RoomUse::Mechanical, name: String::new() }),
    ];
    let edits = bodies.map(|body| Edit::Add(Draft::new(State::New, body)));
    let plan = cellar().with(&Edit::Batch(edits.to_vec())).expect("the plan is sound");
    let mut desk = desk(&plan);
    let headings = ["Foundation wall F4", "Electrical panel S5", "Partition W6", "Column C7"];
    let all = headings.into_iter().chain(["Note X8", "Room tag R9"]);
    for (i, heading) in all.enumerate() {
        for _ in 0..if i == 0 { 4 } else { 1 } {
            desk.key(Key::PageDown);
        }
        assert!(desk.says(heading), "{heading}: {:?}", desk.words());
    }
    assert!(desk.says("What a mechanical room needs"), "{:?}", desk.words());
}

impl Desk {
    /// Runs frames until something is written that a thread has to find first.
    fn wait_for(&mut self, text: &str) {
        for _ in 0..400 {
            self.harness.step();
            if self.says(text) {
                return;
            }
            std::thread::sleep(std::time::Duration::from_millis(25));
        }
        panic!("no {text}: {:?}", self.words());
    }
}

#[test]
fn a_wall_goes_to_its_limit_without_a_drag() {
    let mut desk = desk(&cellar());
    desk.select("partition W6");
    desk.wait_for("Room to move");
    desk.wait_for("Move to limit, right");
    let before = desk.plan().clone();
    desk.wait_for("and more");
    // Its row may be below the fold.
    desk.harness.get_by_role_and_label(Role::Button, "Move to limit, right").click_accesskit();
    desk.harness.run();
    assert_ne!(desk.plan(), &before, "{:?}", desk.words());
    desk.harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    desk.harness.run();
    assert_eq!(desk.plan(), &before, "one undo step");
}

#[test]
fn the_smallest_move_is_offered_for_a_picked_finding() {
    // A valve 80 in from its heater, both on the south wall; 72 in are allowed.
    let heater = ServicePoint::usual(ServiceKind::WaterHeater, Pt::inches(20, 0), Facing::NORTH);
    let mut valve = ServicePoint::usual(ServiceKind::GasValve, Pt::inches(0, 0), Facing::NORTH);
    valve.at =
        Pt::at(Len::inches(20) + (heater.width + valve.width) / 2 + Len::inches(80), Len::ZERO);
    let both = [
        Draft::new(State::Existing, Body::Service(heater)),
        Draft::new(State::New, Body::Service(valve)),
    ];
    let plan = cellar().with(&Edit::Batch(both.map(Edit::Add).to_vec())).expect("sound");
    let mut desk = desk(&plan);
    let card = desk.harness.get_by(|n| {
        n.role() == Role::ListItem && n.label().is_some_and(|l| l.contains("too far from"))
    });
    card.click_accesskit();
    desk.harness.run();
    desk.wait_for("Move gas valve S8 by 8\" to the left");
}

#[test]
fn the_headroom_of_each_room_is_listed() {
    let tag = RoomTag { at: Pt::inches(60, 60), name: "Den".into(), room_use: RoomUse::Den };
    let duct = plan::element::Overhead {
        kind: plan::element::OverheadKind::Duct,
        shape: plan::element::OverheadShape::Run {
            a: Pt::inches(0, 150),
            b: Pt::inches(240, 150),
            width: Len::inches(20),
        },
        underside: Len::inches(75),
    };
    let both = [
        Draft::new(State::Existing, Body::RoomTag(tag)),
        Draft::new(State::Existing, Body::Overhead(duct)),
    ];
    let plan = cellar().with(&Edit::Batch(both.map(Edit::Add).to_vec())).expect("sound");
    let mut desk = desk(&plan);
    desk.button("Headroom");
    assert!(desk.says("Lowest: 6' 2 1/2\" under duct H8"), "{:?}", desk.words());
    // A strip of 20 in of the 192 in that the room is deep is too low.
    assert!(desk.says("89.5 % (") && desk.says("under beams and ducts"), "{:?}", desk.words());
}

#[test]
fn a_thing_is_carried_in() {
    let stair = plan::element::Stair {
        foot: Pt::inches(60, 0),
        up: Facing::SOUTH,
        width: Len::inches(36),
        risers: 13,
        rise: Len::inches(7),
        run: Len::inches(10),
        headroom: Len::inches(80),
    };
    let edit = Edit::Add(Draft::new(State::Existing, Body::Stair(stair)));
    let mut desk = desk(&cellar().with(&edit).expect("sound"));
    desk.button("Plan");
    desk.button("Carry a thing in…");
    desk.wait_for("fits, held with");
    assert!(desk.says("measure them"), "{:?}", desk.words());
    desk.button("desk");
    desk.wait_for("fits, held with");
    desk.button("Close");
}

#[test]
fn the_permit_sheets_are_looked_at_and_written() {
    let mut desk = desk(&cellar());
    desk.button("Sheets");
    desk.wait_for("A-101  Proposed basement plan");
    // What is missing stands first, with where it is entered.
    assert!(
        desk.says("missing: the address or the parcel. Enter it in the title block."),
        "{:?}",
        desk.words()
    );
    let row = desk.harness.get_by(|n| {
        n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("A-101  Proposed"))
    });
    row.click_accesskit();
    desk.harness.run();
    desk.button("Sheet A-101, Proposed basement plan");
    desk.button("Actual size");
    desk.button("Next");
    desk.button("Close");
    desk.button("Title block…");
    // Enter in a field keeps what is entered.
    desk.fill("Address", "5 Fallow Street");
    assert_eq!(desk.plan().site.papers.address, "5 Fallow Street");
    desk.button("Export…");
    desk.button("Write");
    desk.wait_for("Written:");
    desk.button("Close");
    let written = desk.path.with_file_name("cellar-sheets").join("cellar.pdf");
    assert!(written.is_file(), "{}", written.display());
}

#[test]
fn the_sheets_are_drawn_together_or_apart() {
    let mut desk = desk(&cellar());
    let tick = |desk: &mut Desk, label: &str| {
        desk.harness.get_by_role_and_label(Role::CheckBox, label).click();
        desk.harness.run();
    };
    desk.button("Sheets");
    desk.wait_for("A-100  Existing basement plan");
    desk.harness.get_by_label("Together or apart").click();
    desk.harness.run();
    tick(&mut desk, "Everything on one sheet");
    desk.wait_for("Not everything fits on one sheet of this paper");
    tick(&mut desk, "Existing and proposed plan on one sheet");
    for _ in 0..400 {
        desk.harness.step();
        if !desk.says("A-100  Existing basement plan") {
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(25));
    }
    panic!("the existing plan has a sheet of its own still: {:?}", desk.words());
}
