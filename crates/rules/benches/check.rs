//! A check from scratch in basements of 50 to 20,000 elements with 64 service points: the parts of deriving the facts,
//! every rule by itself, and all together.

#[path = "basement/mod.rs"]
mod basement;
#[path = "basement/report.rs"]
mod report;

use std::collections::BTreeMap;
use std::sync::Arc;
use std::time::Duration;

use basement::SIZES;
use plan::Edition;
use report::{clock, line, percentile, time};
use rules::{Book, RULES, Sheet};

const ROUNDS: usize = 5;

fn main() -> std::io::Result<()> {
    let mut rows: BTreeMap<&str, Vec<Duration>> = BTreeMap::new();
    let mut rules: BTreeMap<&str, Vec<Duration>> = BTreeMap::new();
    let book = Book::model(Edition::E2021);
    let median = |measure: &dyn Fn() -> Duration| {
        let times: Vec<Duration> = (0..ROUNDS).map(|_| measure()).collect();
        percentile(&times, 50)
    };
    for n in SIZES {
        let plan = Arc::new(basement::of(n).0);
        let facts = space::derive(&plan);
        let mut parts: BTreeMap<&str, Duration> = BTreeMap::new();
        let mut last = clock();
        space::derive_in_parts(&plan, &mut |part| {
            let now = clock();
            parts.insert(part, now.saturating_sub(last));
            last = now;
        });
        for (part, time) in parts {
            rows.entry(part).or_default().push(time);
        }
        let derive = median(&|| time(|| space::derive(&plan)));
        let check = median(&|| time(|| rules::check_with_keep_clears(&facts, &book)));
        let keeps = median(&|| time(|| rules::keep_clears(&facts, &book)));
        for rule in RULES {
            // Measures that several rules ask for are taken by each.
            let alone = median(&|| {
                let sheet = Sheet::new(&facts, &book);
                time(|| rule.judge(&sheet, &mut Vec::new()))
            });
            rules.entry(rule.slug).or_default().push(alone);
        }
        rows.entry("= derive").or_default().push(derive);
        rows.entry("= check with keep-clears").or_default().push(check);
        rows.entry("keep-clears alone").or_default().push(keeps);
    }
    let mut out = std::io::stdout().lock();
    report::heads(&mut out, "ms, from scratch, elements:")?;
    for (name, times) in &rows {
        line(&mut out, name, times)?;
    }
    let mut rules: Vec<_> = rules.into_iter().collect();
    rules.sort_by_key(|(_, times)| std::cmp::Reverse(times.last().copied()));
    report::heads(&mut out, "each rule alone, the dearest first")?;
    for (slug, times) in rules {
        line(&mut out, slug, &times)?;
    }
    Ok(())
}
