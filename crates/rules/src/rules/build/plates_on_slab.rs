//! Bottom plates on the slab.

use plan::element::Material;
use plan::{Body, ElementId, State};

use crate::{Finding, Group, Phrase, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "plates-on-slab",
    group: Group::Build,
    title: "Bottom plates on the slab",
    page: "\
What
Plates and sleepers on a slab on the ground are treated or of a durable wood.

Why
The slab is as damp as the ground below it; the plate is what rots first and is the hardest to change.

Source
IRC R317.1 item 3 (2018, 2021), R304.1 (2024).

How it is measured
New partitions and furring with studs: one line of advice for the whole plan.

Cannot see
The wood, and a barrier below it.

Exceptions
Where an impervious moisture barrier separates wood and slab.

Remedies
Treated plates, with fasteners that treated wood does not eat.
",
    cites: &["plates-on-slab"],
    check,
    remedies: None,
};

const WHY: &str = "The slab is as damp as the ground below it; the plate rots first and is the hardest to change.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let framed: Vec<ElementId> = sheet
        .facts
        .walls
        .iter()
        .filter_map(|wall| sheet.plan().get(wall.id))
        .filter(|e| e.state == State::New)
        .filter(|e| match &e.body {
            Body::Partition(p) => p.layers.iter().any(|l| l.material == Material::Stud),
            Body::Furring(f) => f.layers.iter().any(|l| l.material == Material::Stud),
            _ => false,
        })
        .map(|e| e.id)
        .collect();
    if framed.is_empty() {
        return;
    }
    let walls = match framed.len() {
        1 => "1 new wall".to_owned(),
        n => format!("{n} new walls"),
    };
    out.push(
        Finding::new(
            Severity::Advice,
            sheet.book.cite("plates-on-slab"),
            RULE.slug,
            framed,
            Phrase::text("New walls need treated bottom plates"),
            WHY,
        )
        .figures(
            Quantity::Words(walls),
            Quantity::Words("treated plates, or a barrier below them".to_owned()),
        ),
    );
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use crate::testing::{Sample, at};

    const SLUG: &str = "plates-on-slab";

    fn one() -> Sample {
        Sample::room(144.0, 120.0).partition(at(60.0, 0.0), at(60.0, 120.0))
    }

    #[test]
    fn clear_pass() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let advice =
                "advice, measured 1 new wall, required treated plates, or a barrier below them";
            one().edition(edition).expect(SLUG, &[advice]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One line for all walls.
        let two = one().partition(at(100.0, 0.0), at(100.0, 120.0));
        two.expect(
            SLUG,
            &["advice, measured 2 new walls, required treated plates, or a barrier below them"],
        );
    }

    #[test]
    fn does_not_apply() {
        one().existing().expect_none(SLUG);
    }
}
