//! Details stated at random.

use measure::Len;

use crate::detail::{Detail, Details, Kind, Value, fitting};
use crate::element::Body;

/// Details of an element, chosen by a number: about half of those that fit are stated.
pub(super) fn some_details(body: &Body, seed: usize) -> Details {
    pick(fitting(body), seed)
}

/// Details of the site, chosen by a number.
pub(super) fn some_site_details(seed: usize) -> Details {
    pick(crate::detail::of_site(), seed)
}

fn pick(details: impl Iterator<Item = &'static Detail>, seed: usize) -> Details {
    let mut all = Details::default();
    for (i, detail) in details.enumerate() {
        let seed = (seed / 7 + i * 31) ^ (seed >> (i % 11));
        if seed.is_multiple_of(2) {
            all.set(detail, Some(value(detail.kind, seed / 2)));
        }
    }
    all
}

fn value(kind: Kind, seed: usize) -> Value {
    let within = |least: i32, most: i32| {
        let span = usize::try_from(most.abs_diff(least)).unwrap_or(0).saturating_add(1);
        least.saturating_add(i32::try_from(seed % span).unwrap_or(0))
    };
    match kind {
        Kind::YesNo => [Value::Yes, Value::No][seed % 2],
        Kind::Choice(words) => Value::Word(words[seed % words.len()]),
        Kind::Length(bound) => {
            Value::Length(Len::from_units(within(bound.least.units(), bound.most.units())))
        }
        Kind::Number(bound, _) => {
            let span = (bound.most - bound.least) as usize + 1;
            Value::Number(bound.least + u32::try_from(seed % span).unwrap_or(0))
        }
    }
}
