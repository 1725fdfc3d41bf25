//! Reads the lists that are part of the program.

use std::sync::OnceLock;

use serde::Deserialize;

use super::Department;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Demand {
    pub id: String,
    /// Its row in the count; only kept in step with the file.
    #[allow(dead_code, reason = "the number is for people who read the file")]
    pub number: u32,
    pub group: Group,
    pub kind: Kind,
    pub words: String,
    pub asked_by: Vec<String>,
    #[allow(dead_code, reason = "who states a rule only in words does not change what answers it")]
    pub rule_only: Vec<String>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
pub(super) enum Kind {
    Drawing,
    Rule,
    Admin,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
pub(super) enum Group {
    FloorPlan,
    Egress,
    Format,
    Alarms,
    Admin,
    WallSection,
    Mechanical,
    Structure,
    Plumbing,
    Rooms,
    Electrical,
    Stairs,
}

impl Group {
    pub fn word(self) -> &'static str {
        match self {
            Group::FloorPlan => "floor plan",
            Group::Egress => "egress",
            Group::Format => "format",
            Group::Alarms => "alarms",
            Group::Admin => "papers and permits",
            Group::WallSection => "wall section",
            Group::Mechanical => "mechanical",
            Group::Structure => "structure",
            Group::Plumbing => "plumbing",
            Group::Rooms => "rooms",
            Group::Electrical => "electrical",
            Group::Stairs => "stairs",
        }
    }
}

#[derive(Deserialize)]
struct DemandFile {
    demands: Vec<Demand>,
}

#[derive(Deserialize)]
struct DepartmentFile {
    departments: Vec<Department>,
}

#[derive(Debug)]
pub(super) struct Lists {
    pub demands: Vec<Demand>,
    pub departments: Vec<Department>,
}

pub(super) fn lists() -> &'static Lists {
    static LISTS: OnceLock<Lists> = OnceLock::new();
    LISTS.get_or_init(|| match read() {
        Ok(lists) => lists,
        Err(e) => unreachable!("the built-in lists are read by a test: {e}"),
    })
}

fn read() -> Result<Lists, ron::error::SpannedError> {
    let demands: DemandFile = ron::from_str(include_str!("../../../../assets/desk/demands.ron"))?;
    let departments: DepartmentFile =
        ron::from_str(include_str!("../../../../assets/desk/departments.ron"))?;
    let mut departments = departments.departments;
    departments.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(Lists { demands: demands.demands, departments })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::paper::Paper;

    #[test]
    fn the_lists_read_and_agree_with_each_other() {
        let lists = read().unwrap_or_else(|e| panic!("{e}"));
        assert_eq!(lists.demands.len(), 117);
        assert_eq!(lists.departments.len(), 73);
        let codes: BTreeSet<&str> = lists.departments.iter().map(|d| d.code.as_str()).collect();
        assert_eq!(codes.len(), 73);
        let ids: BTreeSet<&str> = lists.demands.iter().map(|d| d.id.as_str()).collect();
        assert_eq!(ids.len(), 117);
        for (i, demand) in lists.demands.iter().enumerate() {
            assert_eq!(demand.number as usize, i + 1);
            assert!(demand.asked_by.iter().all(|c| codes.contains(c.as_str())), "{}", demand.id);
            assert!(demand.rule_only.iter().all(|c| demand.asked_by.contains(c)), "{}", demand.id);
        }
        for paper in lists.departments.iter().flat_map(|d| &d.papers) {
            assert!(Paper::from_word(paper).is_some(), "{paper}");
        }
    }
}
