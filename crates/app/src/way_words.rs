//! Ways in, in words: the same in the pane and on the command line.

use measure::{Len, Precision, System};
use plan::{ElementId, Plan};
use space::Facts;
use space::ways::{Gap, Hindrance, Target, WIDEST, Walked, WayIn};

/// What an element is called: `electrical panel S5`.
pub fn element(plan: &Plan, id: ElementId) -> String {
    match plan.get(id) {
        Some(element) => format!("{} {}", element.body.word(), element.name()),
        None => format!("element {}", id.0),
    }
}

/// What a target is called: the service point, or the room.
pub fn target(facts: &Facts, target: Target) -> String {
    match target {
        Target::Service(id) => element(&facts.plan, id),
        Target::Room(index) => match facts.room(index).name.trim() {
            "" => facts.room(index).room_use.word().to_owned(),
            name => name.to_owned(),
        },
    }
}

/// How wide the way is: `28"`, `60" or more`, `no way`.
pub fn width(way: &WayIn, system: System) -> String {
    match &way.hindrance {
        Hindrance::Open => format!("{} or more", system.inches(WIDEST, Precision::Floor)),
        Hindrance::Pinch(_) | Hindrance::Standing(_) => system.inches(way.width, Precision::Floor),
        Hindrance::Walled(_) | Hindrance::Buried(_) | Hindrance::NoArrival => "no way".to_owned(),
    }
}

/// What keeps it from being wider, as a clause.
pub fn hindrance(plan: &Plan, way: &WayIn) -> String {
    match &way.hindrance {
        Hindrance::Open => "nothing pinches".to_owned(),
        Hindrance::Pinch(gap) => format!("pinches {}", place(plan, gap)),
        Hindrance::Standing(gap) => {
            format!("room to stand beside {}", element(plan, gap.between[0]))
        }
        Hindrance::Walled(gap) => format!("closed off {}", place(plan, gap)),
        Hindrance::Buried(id) => format!("{} stands where one would stand", element(plan, *id)),
        Hindrance::NoArrival => {
            "there is no stair, no outside door and no stated arrival".to_owned()
        }
    }
}

/// How far one walks, through what and under what: `24' 3" on foot, through hinged door D5, under 6' 8"`.
pub fn walk(plan: &Plan, walked: &Walked, system: System) -> String {
    let mut said =
        format!("{} on foot", system.len(walked.length.round_to(Len::inches(1)), Precision::Tape));
    if !walked.doors.is_empty() {
        let doors: Vec<String> = walked.doors.iter().map(|id| element(plan, *id)).collect();
        said += &format!(", through {}", doors.join(", "));
    }
    let height = system.len(walked.lowest, Precision::Floor);
    match walked.under {
        Some(id) => said + &format!(", {height} high under {}", element(plan, id)),
        None => said + &format!(", {height} high"),
    }
}

fn place(plan: &Plan, gap: &Gap) -> String {
    let [a, b] = gap.between;
    match gap.opening {
        Some(opening) => format!("in {}", element(plan, opening)),
        None if a == b => format!("at {}", element(plan, a)),
        None => format!("between {} and {}", element(plan, a), element(plan, b)),
    }
}
