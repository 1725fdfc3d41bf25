//! Mechanical plan.

use plan::Body;
use plan::element::OverheadKind;
use plan::element::ServiceKind::*;

use super::plans::{Trade, of_trade};
use super::{Context, Kind, Made};

pub(crate) const KIND: Kind =
    Kind { slug: "mechanical-plan", title: "Mechanical plan", discipline: "M", first: 101, make };

const TRADE: Trade = Trade {
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
    remarks: |_, _| {
        vec![
            "Clearances of appliances: by their labels. Heat loss, sizes of ducts and the gas diagram are the contractor's.".to_owned(),
    ]
    },
};

fn make(context: &Context<'_>) -> Made {
    of_trade(context, &TRADE)
}
