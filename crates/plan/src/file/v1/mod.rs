//! Schema 1 of the plan file, apart from the model.

mod from_record;
mod parts;
mod record;
mod to_record;
mod words;

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use crate::{Amendment, CeilingBuild, EditError, Element, ElementId, Papers, Plan, SetAside, Site};

use super::length::L;
use crate::detail::Details;
use words::{Edition, House};

pub(crate) use record::Record;

/// A whole file of schema 1.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "Plan")]
pub(super) struct File {
    pub schema: u32,
    pub next_id: u32,
    pub site: SiteFacts,
    #[serde(default)]
    pub amendments: Vec<Amended>,
    /// In the order of the ids.
    pub elements: Vec<Record>,
    #[serde(default)]
    pub set_aside: Vec<Aside>,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "Site")]
pub(super) struct SiteFacts {
    title: String,
    edition: Edition,
    house: House,
    joist_underside: L,
    ceiling: Ceiling,
    floor_build: L,
    sprinklers: bool,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    place: String,
    #[serde(default, skip_serializing_if = "Details::is_empty")]
    details: Details,
    #[serde(default, skip_serializing_if = "Papers::is_empty")]
    papers: Papers,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "Amendment")]
pub(super) struct Amended {
    limit: String,
    figure: String,
    reason: String,
}

#[derive(Debug, Serialize, Deserialize)]
enum Ceiling {
    Open,
    Board(L),
    LayIn(L),
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename = "SetAside")]
pub(super) struct Aside {
    rule: String,
    elements: Vec<u32>,
    reason: String,
}

/// Something wrong in a file that is sound RON.
#[derive(Debug)]
pub(super) struct Fault {
    pub what: String,
    /// The list and the entry of it that is wrong, counted from zero.
    pub entry: Option<(&'static str, usize)>,
}

impl From<&Plan> for File {
    fn from(plan: &Plan) -> File {
        File {
            schema: 1,
            next_id: plan.next_id,
            site: (&plan.site).into(),
            amendments: plan.site.amendments.iter().map(Amended::from).collect(),
            elements: plan.elements.iter().map(Record::from).collect(),
            set_aside: plan.set_aside.iter().map(Aside::from).collect(),
        }
    }
}

impl TryFrom<File> for Plan {
    type Error = Fault;

    fn try_from(file: File) -> Result<Plan, Fault> {
        let mut plan = Plan { site: file.site.into(), next_id: file.next_id, ..Plan::default() };
        for (i, amended) in file.amendments.into_iter().enumerate() {
            let entry = Some(("amendments", i));
            plan.site.amendments.push(amended.into());
            crate::validate::amendments(&plan.site.amendments)
                .map_err(|e| Fault { what: e.to_string(), entry })?;
        }
        let most = crate::bounds::ELEMENTS.most;
        if file.elements.len() > most as usize {
            let what = EditError::PlanFull { most }.to_string();
            return Err(Fault { what, entry: Some(("elements", most as usize)) });
        }
        let mut elements = Vec::with_capacity(file.elements.len());
        let mut index = BTreeMap::new();
        for (i, record) in file.elements.into_iter().enumerate() {
            let element = Element::from(record);
            let id = element.id;
            let fault = |what| Fault { what, entry: Some(("elements", i)) };
            if id.0 >= plan.next_id {
                let next = plan.next_id;
                return Err(fault(format!(
                    "element {} has a number that is not below next_id, which is {next}; give next_id \
                     a larger number than every id",
                    id.0
                )));
            }
            if index.insert(id, i).is_some() {
                return Err(fault(format!(
                    "element number {} is used twice; each element needs its own",
                    id.0
                )));
            }
            elements.push(Arc::new(element));
        }
        plan.elements = elements.into();
        for (i, aside) in file.set_aside.into_iter().enumerate() {
            let entry = Some(("set_aside", i));
            plan.put_set_aside(&aside.into()).map_err(|e| Fault { what: e.to_string(), entry })?;
        }
        match crate::validate::whole(&plan).into_iter().next() {
            None => Ok(plan),
            Some((id, problem)) => {
                let entry = id.and_then(|id| index.get(&id)).map(|i| ("elements", *i));
                Err(Fault { what: problem.to_string(), entry })
            }
        }
    }
}

impl From<&Site> for SiteFacts {
    fn from(s: &Site) -> SiteFacts {
        SiteFacts {
            title: s.title.clone(),
            edition: s.edition.into(),
            house: s.house.into(),
            joist_underside: L(s.joist_underside),
            ceiling: match s.ceiling {
                CeilingBuild::Open => Ceiling::Open,
                CeilingBuild::Board(t) => Ceiling::Board(L(t)),
                CeilingBuild::LayIn(t) => Ceiling::LayIn(L(t)),
            },
            floor_build: L(s.floor_build),
            sprinklers: s.sprinklers,
            place: s.place.clone(),
            details: s.details.clone(),
            papers: s.papers.clone(),
        }
    }
}

impl From<SiteFacts> for Site {
    fn from(s: SiteFacts) -> Site {
        Site {
            title: s.title,
            edition: s.edition.into(),
            house: s.house.into(),
            joist_underside: s.joist_underside.0,
            ceiling: match s.ceiling {
                Ceiling::Open => CeilingBuild::Open,
                Ceiling::Board(t) => CeilingBuild::Board(t.0),
                Ceiling::LayIn(t) => CeilingBuild::LayIn(t.0),
            },
            floor_build: s.floor_build.0,
            sprinklers: s.sprinklers,
            place: s.place,
            amendments: Vec::new(),
            details: s.details,
            papers: s.papers,
        }
    }
}

impl From<&Amendment> for Amended {
    fn from(a: &Amendment) -> Amended {
        let a = a.clone();
        Amended { limit: a.limit, figure: a.figure, reason: a.reason }
    }
}

impl From<Amended> for Amendment {
    fn from(a: Amended) -> Amendment {
        Amendment { limit: a.limit, figure: a.figure, reason: a.reason }
    }
}

impl From<&SetAside> for Aside {
    fn from(s: &SetAside) -> Aside {
        Aside {
            rule: s.rule.clone(),
            elements: s.elements.iter().map(|id| id.0).collect(),
            reason: s.reason.clone(),
        }
    }
}

impl From<Aside> for SetAside {
    fn from(a: Aside) -> SetAside {
        let elements = a.elements.into_iter().map(ElementId).collect();
        SetAside { rule: a.rule, elements, reason: a.reason }
    }
}
