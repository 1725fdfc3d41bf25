//! Electrical, mechanical and plumbing in one plan, where it is asked for.

use super::plans::of_trades;
use super::{Context, Kind, Made, electrical, mechanical, plumbing};

pub(crate) const KIND: Kind = Kind {
    slug: "services-plan",
    title: "Electrical, mechanical and plumbing plan",
    discipline: "E",
    first: 101,
    make,
};

fn make(context: &Context<'_>) -> Made {
    if !context.join.trades {
        return Made::NotAsked;
    }
    let trades = [&electrical::TRADE, &mechanical::TRADE, &plumbing::TRADE];
    of_trades(context, &trades, "Outlets, lights, alarms, heating, air, water, drains")
}
