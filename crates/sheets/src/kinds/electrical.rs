//! Electrical plan.

use std::collections::BTreeSet;

use measure::{Len, Precision};
use plan::Body;
use plan::detail::site::SERVICE_RATING;
use plan::element::ServiceKind::{self, *};
use space::Facts;

use super::plans::{Trade, of_trade};
use super::{Context, Kind, Made};

pub(crate) const KIND: Kind =
    Kind { slug: "electrical-plan", title: "Electrical plan", discipline: "E", first: 101, make };

pub(super) const TRADE: Trade = Trade {
    kinds: &[
        Receptacle,
        Switch,
        Light,
        SmokeAlarm,
        CoAlarm,
        Panel,
        Disconnect,
        JunctionBox,
        ExhaustFan,
    ],
    with: |_| false,
    caption: "Receptacles, lights, switches, alarms and the panel",
    nothing: "no receptacle, light, switch, alarm or panel is drawn",
    remarks: |context, facts| {
        vec![
            service(context, facts),
            "Smoke and carbon monoxide alarms: wired, with battery, sounding together, unless stated otherwise.".to_owned() + &heights(context, facts),
            "Circuits, sizes of wire and protection are the electrician's plan under the electrical permit.".to_owned(),
    ]
    },
};

fn make(context: &Context<'_>) -> Made {
    if context.join.trades {
        return Made::NotAsked;
    }
    of_trade(context, &TRADE)
}

/// The rating of the service, as stated of the site.
fn service(context: &Context<'_>, facts: &Facts) -> String {
    let stated = facts.plan.site.details.get(&SERVICE_RATING);
    let rating = stated.map_or("not stated".to_owned(), |v| SERVICE_RATING.say(v, context.system));
    format!("Rating of the service: {rating}.")
}

/// How high outlets and switches are above the finished floor.
fn heights(context: &Context<'_>, facts: &Facts) -> String {
    let floor = facts.plan.site.floor_build;
    let of = |kind: ServiceKind, word: &str| {
        let points = facts.plan.elements().iter().filter_map(|e| match &e.body {
            Body::Service(s) if s.kind == kind => Some(s.bottom - floor),
            _ => None,
        });
        let heights: BTreeSet<Len> = points.collect();
        let heights: Vec<String> =
            heights.iter().map(|h| context.system.inches(*h, Precision::Tape)).collect();
        match heights.is_empty() {
            true => String::new(),
            false => format!(" Bottom of {word} above the finished floor: {}.", heights.join(", ")),
        }
    };
    of(ServiceKind::Receptacle, "receptacles") + &of(ServiceKind::Switch, "switches")
}
