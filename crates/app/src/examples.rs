//! An example of every rule: a demo plan in which it finds something.

use std::sync::{Arc, OnceLock};

use rules::{Book, Finding, Rule};
use space::Facts;

/// The demo plans in trouble; together they set off every rule.
const PLANS: &[&str] = &[
    include_str!("../../../demo-plans/trouble.ron"),
    include_str!("../../../demo-plans/trouble-no-bedroom.ron"),
    include_str!("../../../demo-plans/trouble-sprinklers.ron"),
    include_str!("../../../demo-plans/trouble-outlets.ron"),
    include_str!("../../../demo-plans/trouble-services.ron"),
    include_str!("../../../demo-plans/trouble-stated.ron"),
    include_str!("../../../demo-plans/trouble-exceptions.ron"),
];

/// A demo plan and what is found in it.
struct Checked {
    facts: Facts,
    findings: Vec<Arc<Finding>>,
}

/// The demo plans are read and checked once, when the first example is asked for.
fn checked() -> &'static [Checked] {
    static CHECKED: OnceLock<Vec<Checked>> = OnceLock::new();
    CHECKED.get_or_init(|| {
        let sound = PLANS.iter().filter_map(|text| plan::file::read(text).ok());
        sound
            .map(|plan| {
                let book = Book::of(&plan.site);
                let facts = space::derive(&Arc::new(plan));
                let findings = rules::check(&facts, &book);
                Checked { facts, findings }
            })
            .collect()
    })
}

/// A finding of a rule, with the facts of the plan that it is found in. The one with most figures to show.
pub fn example(rule: &Rule) -> Option<(&'static Facts, &'static Finding)> {
    let all = checked().iter().flat_map(|c| c.findings.iter().map(move |f| (&c.facts, &**f)));
    let telling =
        |f: &Finding| (f.measured.is_some() && !f.places.is_empty(), f.places.len().min(1));
    all.filter(|(_, f)| f.rule == rule.slug)
        .max_by_key(|(_, f)| (telling(f), std::cmp::Reverse(f.severity)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_demo_plan_can_be_read_and_every_rule_has_an_example() {
        assert_eq!(checked().len(), PLANS.len());
        let without: Vec<&str> =
            rules::RULES.iter().filter(|r| example(r).is_none()).map(|r| r.slug).collect();
        assert_eq!(without, [""; 0]);
    }

    #[test]
    fn the_figure_of_every_rule_shows_its_finding() {
        for rule in rules::RULES {
            let (facts, finding) = example(rule).expect("an example");
            let picture = depict::figure(facts, finding, (420.0, 240.0), measure::System::Imperial);
            assert_eq!(picture.badges.len(), 1, "{}", rule.slug);
        }
    }
}
