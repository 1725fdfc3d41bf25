//! Mechanical plan.

use plan::detail::Detail;
use plan::detail::heat::{AIR_FROM, FUEL, INPUT, VENT};
use plan::element::OverheadKind;
use plan::element::ServiceKind::*;
use plan::{Body, Element};
use rules::capital;
use space::Facts;

use super::plans::{Trade, of_trade};
use super::{Context, Kind, Made};

pub(crate) const KIND: Kind =
    Kind { slug: "mechanical-plan", title: "Mechanical plan", discipline: "M", first: 101, make };

pub(super) const TRADE: Trade = Trade {
    kinds: &[
        Furnace,
        WaterHeater,
        Damper,
        AirFilter,
        SupplyRegister,
        ReturnGrille,
        ExhaustFan,
        ClothesDryer,
        GasValve,
        GasMeter,
        RadonPipe,
    ],
    with: |body| matches!(body, Body::Overhead(o) if o.kind == OverheadKind::Duct),
    caption: "Furnace, ducts, registers, grilles, fans, gas",
    nothing: "no furnace, duct, register, grille, fan or gas valve is drawn",
    remarks: |context, facts| {
        let mut remarks = appliances(context, facts);
        remarks.push(
            "Clearances of appliances: by their labels, where they ask for more than is drawn. Heat loss, sizes of ducts and the gas diagram are the contractor's.".to_owned(),
        );
        remarks
    },
};

/// What each appliance burns and where its air comes from, as stated.
fn appliances(context: &Context<'_>, facts: &Facts) -> Vec<String> {
    let own = facts.plan.elements().iter().filter(|e| {
        matches!(&e.body, Body::Service(s) if matches!(s.kind, Furnace | WaterHeater | ClothesDryer))
    });
    own.map(|e| {
        let say = |detail: &'static Detail| e.stated(detail).map(|v| detail.say(v, context.system));
        let stated: Vec<String> = [&FUEL, &INPUT, &VENT].into_iter().filter_map(say).collect();
        let stated = match stated.is_empty() {
            true => "fuel and input not stated".to_owned(),
            false => stated.join(", "),
        };
        let word = capital(e.body.word());
        let air =
            air(context, facts, e).map_or(String::new(), |air| format!(" Combustion air: {air}."));
        format!("{word}: {stated}.{air}")
    })
    .collect()
}

/// Where the room of an appliance that burns takes its air from, as stated of its tag.
fn air(context: &Context<'_>, facts: &Facts, appliance: &Element) -> Option<String> {
    if appliance.stated(&FUEL)?.word() == Some("electric") {
        return None;
    }
    let at = appliance.body.points().first().copied()?;
    let room = facts.room(facts.room_at(at)?);
    let tag = room.tag.and_then(|id| facts.plan.get(id));
    let stated = tag.and_then(|tag| tag.stated(&AIR_FROM)).map(|v| v.say(context.system));
    Some(stated.unwrap_or_else(|| "not stated".to_owned()))
}

fn make(context: &Context<'_>) -> Made {
    if context.join.trades {
        return Made::NotAsked;
    }
    of_trade(context, &TRADE)
}
