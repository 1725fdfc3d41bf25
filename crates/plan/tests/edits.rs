//! What an edit does, what it takes along, and why it is refused.

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::*;
use plan::{
    Draft, Edit, EditError, Element, ElementId, History, Plan, SetAside, Site, State, sample,
};

const SOUTH: ElementId = ElementId(1);

fn add(body: Body) -> Edit {
    Edit::Add(Draft::new(State::New, body))
}

fn refusal(plan: &Plan, edit: &Edit) -> String {
    plan.with(edit).expect_err("must be refused").to_string()
}

fn changed(plan: &Plan, id: ElementId, change: impl FnOnce(&mut Element)) -> Edit {
    let mut e = plan.get(id).expect("there").clone();
    change(&mut e);
    Edit::Replace(e)
}

fn shell_to(plan: &Plan, id: ElementId, b: Pt) -> Edit {
    changed(plan, id, |e| {
        let Body::Shell(w) = &mut e.body else { unreachable!() };
        w.b = b;
    })
}

#[test]
fn the_first_element_is_number_1_and_numbers_rise() {
    let plan = sample::room();
    let ids: Vec<u32> = plan.elements().iter().map(|e| e.id.0).collect();
    assert_eq!(ids, [1, 2, 3, 4]);
    assert_eq!(plan.next_ids(2).collect::<Vec<_>>(), [ElementId(5), ElementId(6)]);
}

#[test]
fn deleting_a_wall_takes_along_what_is_fixed_to_it() {
    let mut plan = sample::room();
    let window = sample::add(&mut plan, State::Existing, sample::window(SOUTH, 20, 32));
    let furring = Furring {
        host: SOUTH,
        from: Len::ZERO,
        to: Len::inches(240),
        layers: vec![Layer::new(Material::Foam, Len::inches(2))],
        spacing: Len::inches(16),
    };
    let furring = sample::add(&mut plan, State::New, Body::Furring(furring));
    let other = sample::add(&mut plan, State::Existing, sample::window(ElementId(3), 20, 32));
    let next = plan.with(&Edit::Remove(vec![SOUTH])).expect("deleted");
    assert!([SOUTH, window, furring].iter().all(|&id| next.get(id).is_none()));
    assert!(next.get(other).is_some());
    assert_eq!(next.validate(), vec![]);
    // The wall and its window together, in any order, are the same.
    assert_eq!(plan.with(&Edit::Remove(vec![window, SOUTH])).expect("deleted"), next);
}

#[test]
fn deleting_an_appliance_frees_its_valve_and_drops_its_set_asides() {
    let mut plan = sample::room();
    let heater = sample::service(ServiceKind::WaterHeater, (30, 30), Facing::NORTH);
    let heater = sample::add(&mut plan, State::Existing, heater);
    let mut valve = ServicePoint::usual(ServiceKind::GasValve, Pt::inches(60, 0), Facing::NORTH);
    valve.serves = Some(heater);
    let valve = sample::add(&mut plan, State::Existing, Body::Service(valve));
    let aside = |elements: &[ElementId]| SetAside {
        rule: "gas-valve".into(),
        elements: elements.to_vec(),
        reason: "seen by the gas fitter".into(),
    };
    plan = plan.with(&Edit::SetAside(aside(&[valve, heater]))).expect("set aside");
    plan = plan.with(&Edit::SetAside(aside(&[valve]))).expect("set aside");
    let next = plan.with(&Edit::Remove(vec![heater])).expect("deleted");
    let Some(Body::Service(s)) = next.get(valve).map(|e| &e.body) else { panic!("no valve") };
    assert_eq!(s.serves, None);
    assert_eq!(next.set_aside(), [aside(&[valve])]);
}

#[test]
fn a_finding_is_set_aside_once_and_taken_up_again() {
    let plan = sample::room();
    let aside = |ids: &[u32], reason: &str| {
        let elements = ids.iter().map(|&id| ElementId(id)).collect();
        SetAside { rule: "room-area".into(), elements, reason: reason.into() }
    };
    let plan = plan.with(&Edit::SetAside(aside(&[3, 1, 3], "a"))).expect("set aside");
    let plan = plan.with(&Edit::SetAside(aside(&[1, 3], "b"))).expect("reason changed");
    assert_eq!(plan.set_aside(), [aside(&[1, 3], "b")]);
    let take_up = |ids: &[u32]| {
        let elements = ids.iter().map(|&id| ElementId(id)).collect();
        Edit::TakeUp { rule: "room-area".into(), elements }
    };
    assert_eq!(refusal(&plan, &take_up(&[1])), "The finding \"room-area\" is not set aside.");
    assert!(plan.with(&take_up(&[3, 1])).expect("taken up").set_aside().is_empty());
    assert_eq!(
        refusal(&plan, &Edit::SetAside(aside(&[1], " "))),
        "Set aside: the reason is missing; type at least one character."
    );
    assert_eq!(
        refusal(&plan, &Edit::SetAside(aside(&[9], "x"))),
        "There is no element 9 in the plan; it may have been deleted."
    );
}

#[test]
fn a_batch_is_all_or_nothing_and_judged_at_its_end() {
    let mut plan = sample::room();
    let wall = sample::partition(&mut plan, (100, 0), (100, 120));
    let door = sample::add(&mut plan, State::New, sample::door(wall, 80, 32));
    let shorter = changed(&plan, wall, |e| {
        let Body::Partition(w) = &mut e.body else { unreachable!() };
        w.b = Pt::inches(100, 60);
    });
    let slid = changed(&plan, door, |e| {
        let Body::Opening(o) = &mut e.body else { unreachable!() };
        o.at = Len::inches(20);
    });
    assert!(plan.with(&shorter).is_err());
    let both = plan.with(&Edit::Batch(vec![shorter.clone(), slid])).expect("fits in the end");
    assert_eq!(both.validate(), vec![]);
    let before = plan.clone();
    let half = Edit::Batch(vec![add(sample::desk((10, 10), Facing::NORTH)), shorter]);
    assert!(plan.with(&half).is_err());
    assert_eq!(plan, before);
    // An opening may be added in the same batch as its wall.
    let new_wall = plan.next_ids(1).next().expect("an id");
    let wall = Partition::two_by_four(Pt::inches(10, 10), Pt::inches(90, 10));
    let pair = Edit::Batch(vec![add(Body::Partition(wall)), add(sample::door(new_wall, 10, 30))]);
    assert!(plan.with(&pair).is_ok());
}

#[test]
fn refusals_say_what_where_and_what_to_do() {
    let mut plan = sample::room();
    let window = sample::add(&mut plan, State::Existing, sample::window(SOUTH, 200, 32));
    let column = Column {
        at: Pt::inches(50, 50),
        shape: ColumnShape::Round { diameter: Len::inches(4) },
        facing: Facing::NORTH,
    };
    let post = sample::add(&mut plan, State::Existing, Body::Column(column));
    let wall = sample::partition(&mut plan, (100, 0), (100, 120));
    assert_eq!((window.0, post.0, wall.0), (5, 6, 7));
    let flat = Partition::two_by_four(Pt::inches(5, 5), Pt::inches(5, 5));
    let furring = |host, from, to| {
        let (from, to) = (Len::inches(from), Len::inches(to));
        let layers = vec![Layer::new(Material::Foam, Len::inches(2))];
        add(Body::Furring(Furring { host, from, to, layers, spacing: Len::inches(16) }))
    };
    let bow = OverheadShape::Outline(
        [(0, 0), (9, 9), (9, 0), (0, 9)].map(|(x, y)| Pt::inches(x, y)).to_vec(),
    );
    let bow = Overhead { kind: OverheadKind::Soffit, shape: bow, underside: Len::inches(80) };
    let mut valve = ServicePoint::usual(ServiceKind::GasValve, Pt::inches(60, 0), Facing::NORTH);
    valve.serves = Some(post);

    for (edit, text) in [
        (
            add(Body::Partition(flat)),
            "New partition: the length of 0\" (0 mm) is out of range; it must be from 1/64\" (0.4 mm) to \
             1000' 0\" (304800 mm).",
        ),
        (
            changed(&plan, wall, |e| {
                let Body::Partition(w) = &mut e.body else { unreachable!() };
                w.layers[1].thickness = Len::inches(60);
            }),
            "W7: the thickness of a layer of 5' 0\" (1524 mm) is out of range; it must be from 1/64\" (0.4 mm) \
             to 4' 0\" (1219.2 mm).",
        ),
        (
            shell_to(&plan, SOUTH, Pt::inches(231, 0)),
            "N5 does not fit F1: it needs 16' 8\" (5080 mm) to 19' 4\" (5892.8 mm) along the wall, which is \
             19' 3\" (5867.4 mm) long. Make it narrower, slide it, or keep the wall longer.",
        ),
        (
            add(sample::door(SOUTH, 180, 32)),
            "N5 and New hinged door overlap in F1; slide one of them or make it narrower.",
        ),
        (
            add(sample::door(post, 10, 32)),
            "New hinged door is fixed to C6, which is not a foundation wall or a partition; place it on one.",
        ),
        (
            add(sample::door(ElementId(99), 10, 32)),
            "New hinged door is fixed to element 99, which is not in the plan; place it on a wall.",
        ),
        (
            furring(wall, 0, 50),
            "New furring is fixed to W7, which is not a foundation wall; place it on one.",
        ),
        (
            furring(SOUTH, 50, 50),
            "New furring would have no length: it runs from 4' 2\" (1270 mm) to 4' 2\" (1270 mm) along its \
             wall; make the second larger.",
        ),
        (
            add(Body::Overhead(bow)),
            "New soffit: the outline crosses or touches itself; move its points so that the edges meet at \
             the corners only.",
        ),
        (
            add(Body::Service(valve)),
            "New gas valve serves element 6, which is not a service point of the plan; choose one or none.",
        ),
        (
            Edit::Remove(vec![SOUTH, ElementId(42)]),
            "There is no element 42 in the plan; it may have been deleted.",
        ),
        (
            changed(&plan, SOUTH, |e| e.body = plan.get(post).expect("there").body.clone()),
            "N5 is fixed to C1, which is not a foundation wall or a partition; place it on one.",
        ),
    ] {
        assert_eq!(refusal(&plan, &edit), text);
    }
}

#[test]
fn an_opening_fits_exactly_and_not_one_unit_less() {
    let mut plan = sample::room();
    sample::add(&mut plan, State::New, sample::door(SOUTH, 208, 32));
    let wall_to = |x| shell_to(&plan, SOUTH, Pt::at(x, Len::ZERO));
    assert!(plan.with(&wall_to(Len::inches(240))).is_ok());
    assert!(plan.with(&wall_to(Len::inches(240) - Len::UNIT)).is_err());
}

#[test]
fn openings_may_touch_but_not_overlap_unless_one_is_torn_out() {
    let mut plan = sample::room();
    let old = sample::add(&mut plan, State::Existing, sample::window(SOUTH, 50, 32));
    assert!(plan.with(&add(sample::window(SOUTH, 82, 40))).is_ok());
    let over = |at| {
        let Body::Opening(o) = sample::window(SOUTH, 0, 40) else { unreachable!() };
        add(Body::Opening(Opening { at, ..o }))
    };
    assert!(plan.with(&over(Len::inches(82) - Len::UNIT)).is_err());
    let torn_out = changed(&plan, old, |e| e.state = State::Removed);
    let plan = plan.with(&torn_out).expect("state changed");
    let plan = plan.with(&over(Len::inches(45))).expect("a larger one takes its place");
    let back = changed(&plan, old, |e| e.state = State::Existing);
    assert!(plan.with(&back).is_err());
}

#[test]
fn an_appliance_that_is_served_can_not_become_something_else() {
    let mut plan = sample::room();
    let heater = sample::service(ServiceKind::WaterHeater, (30, 30), Facing::NORTH);
    let heater = sample::add(&mut plan, State::Existing, heater);
    let mut valve = ServicePoint::usual(ServiceKind::GasValve, Pt::inches(60, 0), Facing::NORTH);
    valve.serves = Some(heater);
    sample::add(&mut plan, State::Existing, Body::Service(valve));
    let desk = changed(&plan, heater, |e| e.body = sample::desk((30, 30), Facing::NORTH));
    assert!(matches!(plan.with(&desk), Err(EditError::ServesMissing { .. })));
}

#[test]
fn an_edit_shares_what_it_does_not_touch() {
    let plan = sample::basement(300);
    let id = plan.elements().iter().last().expect("there").id;
    let next = plan.with(&changed(&plan, id, |e| e.state = State::Removed)).expect("changed");
    let shared = plan.elements().shared().iter().zip(next.elements().shared());
    let apart = shared.filter(|(a, b)| !std::sync::Arc::ptr_eq(a, b)).count();
    assert_eq!((apart, plan.elements().len()), (1, 300));
}

#[test]
fn an_id_is_not_given_again_after_undo_nor_after_save_and_open() {
    let mut history = History::new(sample::room());
    let desk = || add(sample::desk((50, 50), Facing::NORTH));
    history.commit("Place desk", &desk()).expect("placed");
    assert_eq!(history.undo().as_deref(), Some("Place desk"));
    history.commit("Place desk again", &desk()).expect("placed");
    assert!(history.now().get(ElementId(5)).is_none());
    assert!(history.now().get(ElementId(6)).is_some());
    history.undo();
    let opened = plan::file::read(&plan::file::write(history.now())).expect("opens");
    assert_eq!(opened.next_ids(1).next(), Some(ElementId(7)));
}

#[test]
fn the_history_forgets_the_oldest_of_more_than_500_steps() {
    let mut history = History::new(Plan::default());
    let title = |i: usize| Edit::Site(Box::new(Site { title: i.to_string(), ..Site::default() }));
    for i in 0..510 {
        history.commit(format!("step {i}"), &title(i)).expect("done");
    }
    let mut undone = 0;
    while history.undo().is_some() {
        undone += 1;
    }
    assert_eq!(undone, 500);
    assert_eq!(history.now().site.title, "9");
    assert_eq!(history.can_redo(), Some("step 10"));
}

#[test]
fn an_edit_that_changes_nothing_leaves_no_step() {
    let mut history = History::new(sample::room());
    history.commit("Delete nothing", &Edit::Remove(vec![])).expect("done");
    let same = Edit::Replace(history.now().get(SOUTH).expect("there").clone());
    history.commit("Same", &same).expect("done");
    assert_eq!(history.can_undo(), None);
}

#[test]
fn a_new_step_drops_what_could_be_done_again() {
    let mut history = History::new(Plan::default());
    let title = |t: &str| Edit::Site(Box::new(Site { title: t.into(), ..Site::default() }));
    history.commit("a", &title("a")).expect("done");
    history.undo();
    history.commit("b", &title("b")).expect("done");
    assert_eq!((history.can_undo(), history.can_redo()), (Some("b"), None));
    assert_eq!(history.redo(), None);
}

#[test]
fn a_plan_has_a_greatest_number_of_elements() {
    let plan = sample::basement(200);
    let most = plan::bounds::ELEMENTS.most as usize;
    let fill = |n| Edit::Batch(vec![add(sample::desk((0, 0), Facing::NORTH)); n]);
    assert!(plan.with(&fill(most - 200)).is_ok());
    assert!(matches!(plan.with(&fill(most - 199)), Err(EditError::PlanFull { .. })));
}
