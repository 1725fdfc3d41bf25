//! Arbitrary edits and plans. A [`Wish`] is an edit before it is known which ids a plan has.

use geometry::Vec2;
use measure::Len;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};

use crate::element::{Body, End};
use crate::{
    Amendment, CeilingBuild, Draft, Edit, EditError, Edition, Element, ElementId, House, Papers,
    Plan, SetAside, Site, State, ops,
};

use super::details::{some_details, some_site_details};
use super::{any_body, any_text};

/// How many choices of details there are.
const SEEDS: usize = 1 << 20;

/// What a person might do to a plan.
#[derive(Clone, Debug)]
pub enum Wish {
    Add(State, Box<Body>, Index),
    Replace(Index, State, Box<Body>, Index),
    Remove(Vec<Index>),
    Site(Box<Site>),
    SetAside(String, Vec<Index>),
    TakeUp(Index),
    Translate(Vec<Index>, Vec2),
    MoveWall(Index, Len),
    WallLength(Index, Len, End),
    Turn(Vec<Index>),
    Duplicate(Vec<Index>, Vec2),
    Both(Box<Wish>, Box<Wish>),
}

impl Wish {
    /// The edit for a plan, where the wish can be put into one.
    pub fn edit(&self, plan: &Plan) -> Result<Edit, EditError> {
        let id = |i: &Index| any_id(plan, *i);
        let ids = |list: &[Index]| list.iter().map(id).collect::<Vec<_>>();
        match self {
            Wish::Add(state, body, host) => {
                let body = fitted(plan, body, *host);
                let details = some_details(&body, host.index(SEEDS));
                Ok(Edit::Add(Draft { state: *state, body, details }))
            }
            Wish::Replace(i, state, body, host) => {
                let body = fitted(plan, body, *host);
                let details = some_details(&body, host.index(SEEDS));
                Ok(Edit::Replace(Element { id: id(i), state: *state, body, details }))
            }
            Wish::Remove(list) => Ok(Edit::Remove(ids(list))),
            Wish::Site(site) => Ok(Edit::Site(site.clone())),
            Wish::SetAside(reason, list) => Ok(Edit::SetAside(SetAside {
                rule: "panel-depth".to_owned(),
                elements: ids(list),
                reason: reason.clone(),
            })),
            Wish::TakeUp(i) => {
                let rule = "panel-depth".to_owned();
                let aside = plan.set_aside().get(i.index(plan.set_aside().len().max(1)));
                Ok(Edit::TakeUp { rule, elements: aside.map_or(vec![], |s| s.elements.clone()) })
            }
            Wish::Translate(list, by) => ops::translate(plan, &ids(list), *by),
            Wish::MoveWall(i, by) => ops::move_wall(plan, wall_id(plan, *i), *by),
            Wish::WallLength(i, len, keep) => {
                ops::set_wall_length(plan, wall_id(plan, *i), *len, *keep)
            }
            Wish::Turn(list) => ops::turn(plan, &ids(list)),
            Wish::Duplicate(list, by) => ops::duplicate(plan, &ids(list), *by),
            Wish::Both(first, second) => {
                Ok(Edit::Batch(vec![first.edit(plan)?, second.edit(plan)?]))
            }
        }
    }
}

/// Makes every wish that the plan accepts, from a blank plan.
pub fn build(wishes: &[Wish]) -> Plan {
    wishes.iter().fold(Plan::default(), |plan, wish| {
        let next = wish.edit(&plan).and_then(|edit| plan.with(&edit));
        next.unwrap_or(plan)
    })
}

/// Any sound plan of up to about 40 elements.
pub fn any_plan() -> impl Strategy<Value = Plan> {
    let adds = vec(add(), 0..40);
    (adds, wishes(0..8)).prop_map(|(adds, others)| build(&[adds, others].concat()))
}

/// Wishes, half of them for new elements.
pub fn wishes(count: std::ops::Range<usize>) -> impl Strategy<Value = Vec<Wish>> {
    vec(prop_oneof![add(), other(), (add(), other()).prop_map(both)], count)
}

fn both((first, second): (Wish, Wish)) -> Wish {
    Wish::Both(Box::new(first), Box::new(second))
}

fn state() -> impl Strategy<Value = State> {
    select(vec![State::Existing, State::New, State::New, State::Removed])
}

fn add() -> impl Strategy<Value = Wish> {
    (state(), any_body(), any::<Index>())
        .prop_map(|(state, body, host)| Wish::Add(state, Box::new(body), host))
}

fn step() -> impl Strategy<Value = Len> {
    prop_oneof![
        6 => (-60..60).prop_map(Len::inches),
        3 => (-500_000..500_000).prop_map(Len::from_units),
        1 => any::<i32>().prop_map(Len::from_units),
    ]
}

fn vector() -> impl Strategy<Value = Vec2> {
    let wild = (any::<i64>(), any::<i64>()).prop_map(|(x, y)| Vec2::new(x, y));
    let tame =
        (step(), step()).prop_map(|(x, y)| Vec2::new(i64::from(x.units()), i64::from(y.units())));
    prop_oneof![9 => tame, 1 => wild]
}

fn site() -> impl Strategy<Value = Site> {
    let ceiling = prop_oneof![
        Just(CeilingBuild::Open),
        step().prop_map(CeilingBuild::Board),
        step().prop_map(CeilingBuild::LayIn),
    ];
    let facts = (select(Edition::ALL.to_vec()), any::<bool>(), any::<bool>());
    (any_text(), facts, 60..110i32, ceiling, step()).prop_map(
        |(title, (edition, new, sprinklers), joists, ceiling, floor_build)| Site {
            title,
            edition,
            house: if new { House::New } else { House::Existing },
            joist_underside: Len::inches(joists),
            ceiling,
            floor_build,
            sprinklers,
            details: some_site_details(floor_build.units().unsigned_abs() as usize),
            place: if new { "somewhere".to_owned() } else { String::new() },
            papers: Papers {
                address: if sprinklers { "3 Quarrystone Lane".to_owned() } else { String::new() },
                north: sprinklers.then_some(270),
                ..Papers::default()
            },
            amendments: (0..u8::from(sprinklers))
                .map(|_| Amendment {
                    limit: "escape-sill".to_owned(),
                    figure: "48 in".to_owned(),
                    reason: "the \"handout\", p. 2".to_owned(),
                })
                .collect(),
        },
    )
}

fn other() -> impl Strategy<Value = Wish> {
    let some = || vec(any::<Index>(), 0..4);
    let end = select(vec![End::Start, End::Finish]);
    prop_oneof![
        (any::<Index>(), state(), any_body(), any::<Index>())
            .prop_map(|(i, state, body, host)| Wish::Replace(i, state, Box::new(body), host)),
        some().prop_map(Wish::Remove),
        site().prop_map(|site| Wish::Site(Box::new(site))),
        (any_text(), some()).prop_map(|(reason, list)| Wish::SetAside(reason, list)),
        any::<Index>().prop_map(Wish::TakeUp),
        (some(), vector()).prop_map(|(list, by)| Wish::Translate(list, by)),
        (any::<Index>(), step()).prop_map(|(i, by)| Wish::MoveWall(i, by)),
        (any::<Index>(), step(), end).prop_map(|(i, len, keep)| Wish::WallLength(i, len, keep)),
        some().prop_map(Wish::Turn),
        (some(), vector()).prop_map(|(list, by)| Wish::Duplicate(list, by)),
    ]
}

/// An id of the plan, or in one case of eight one that it may not have.
fn any_id(plan: &Plan, i: Index) -> ElementId {
    let n = plan.elements().len();
    let pick = i.index(n + n / 8 + 1);
    plan.elements().iter().nth(pick).map_or(ElementId(pick as u32), |e| e.id)
}

fn wall_id(plan: &Plan, i: Index) -> ElementId {
    let walls: Vec<_> = plan.elements().iter().filter(|e| e.body.wall_line().is_some()).collect();
    if walls.is_empty() { any_id(plan, i) } else { walls[i.index(walls.len())].id }
}

/// The body with its host, its place on it and what it serves fitted to the plan, mostly.
fn fitted(plan: &Plan, body: &Body, i: Index) -> Body {
    let mut body = body.clone();
    let is_shell = |e: &&Element| matches!(e.body, Body::Shell(_));
    let is_wall = |e: &&Element| e.body.wall_line().is_some();
    match &mut body {
        Body::Opening(o) => {
            let hosts: Vec<_> = plan.elements().iter().filter(is_wall).collect();
            if let Some(host) = hosts.get(i.index(hosts.len() + 1)) {
                o.host = host.id;
                let length = host.body.wall_line().map_or(Len::ZERO, |line| line.len());
                o.at = Len::from_units(o.at.units().checked_rem(length.units()).unwrap_or(0));
            }
        }
        Body::Furring(f) => {
            let hosts: Vec<_> = plan.elements().iter().filter(is_shell).collect();
            if let Some(host) = hosts.get(i.index(hosts.len() + 1)) {
                f.host = host.id;
            }
        }
        Body::Service(s) => {
            let is_service = |e: &&Element| matches!(e.body, Body::Service(_));
            let others: Vec<_> = plan.elements().iter().filter(is_service).collect();
            if s.serves.is_some() {
                s.serves = others.get(i.index(others.len() + 1)).map(|e| e.id);
            }
        }
        _ => {}
    }
    body
}
