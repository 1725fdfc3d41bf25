//! Plumbing plan.

use plan::Body;
use plan::element::OverheadKind;
use plan::element::ServiceKind::*;

use super::plans::{Trade, of_trade};
use super::{Context, Kind, Made};

pub(crate) const KIND: Kind =
    Kind { slug: "plumbing-plan", title: "Plumbing plan", discipline: "P", first: 101, make };

pub(super) const TRADE: Trade = Trade {
    kinds: &[
        MainWaterValve,
        FixtureValve,
        HoseBibValve,
        Cleanout,
        FloorDrain,
        Sump,
        Ejector,
        WaterMeter,
        WaterHeater,
        PressureReducer,
        BackflowPreventer,
        AirAdmittanceValve,
        BackwaterValve,
        Standpipe,
    ],
    with: |body| match body {
        Body::Overhead(o) => o.kind == OverheadKind::Pipe,
        Body::Furnishing(f) => rules::is_fixture(f),
        _ => false,
    },
    caption: "Fixtures, valves, cleanouts, drains, pumps",
    nothing: "no fixture, valve, cleanout, drain or pump is drawn",
    remarks: |_, _| {
        vec![
            "Frames of dashes are openings for access. Pipes, traps and vents are the plumber's."
                .to_owned(),
        ]
    },
};

fn make(context: &Context<'_>) -> Made {
    if context.join.trades {
        return Made::NotAsked;
    }
    of_trade(context, &TRADE)
}
