//! Foam that nothing separates from the room.

use measure::Len;
use plan::detail::wall::FOAM_COVER;
use plan::element::{BodyKind, Layer, Material};
use plan::{Body, Element};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::is_new;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "foam-barrier",
    group: Group::Build,
    title: "Board over foam",
    page: "\
What
Foam is separated from the room by gypsum board of at least 1/2 in, wood panel of 23/32 in, or a barrier
tested for 15 minutes.

Why
Bare foam burns fast, and its smoke kills before the flame does.

Source
IRC R316.4 (2018, 2021), R303.4 (2024, from memory).

How it is measured
By the layers of new furring and partitions: after the last foam layer, seen from the concrete, the thickest board.

Foam that is stated to be approved to stay bare, or to have a tested barrier, is let be; until that is stated the finding is to be
verified.

Cannot see
The approval itself.

Exceptions
Foam at the rim up to 3 1/4 in of given density and flame spread. Foam with a special approval.

Remedies
Add 1/2 in board to the assembly.
",
    cites: &["foam-barrier"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Bare foam burns fast, and its smoke kills before the flame does.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    sheet
        .facts
        .standing(&[BodyKind::Partition, BodyKind::Furring])
        .for_each(|element| one(sheet, element, out));
}

fn one(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let board = match &element.body {
        Body::Furring(furring) => board_over_foam(&furring.layers),
        Body::Partition(partition) => {
            // Both sides are rooms: the thinner cover counts.
            let mut back = partition.layers.clone();
            back.reverse();
            [&partition.layers, &back].into_iter().filter_map(|l| board_over_foam(l)).min()
        }
        _ => None,
    };
    let Some(board) = board.filter(|_| is_new(sheet, element)) else { return };
    let limit = sheet.book.len("foam-barrier");
    let Some(wall) = sheet.facts.wall(element.id).filter(|_| board < limit.value) else { return };
    let cover = sheet.ask(element, &FOAM_COVER);
    if cover.is(&["a tested barrier", "foam approved to stay bare"]) {
        return;
    }
    let title =
        format!("{} has foam with too little board over it", capital(&called(sheet, wall.id)));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation.clone(),
        RULE.slug,
        vec![wall.id],
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(board), Quantity::Len(limit.value))
    .at(Place::Along(wall.id));
    out.push(if cover.stated {
        finding
    } else {
        finding.assuming("the foam is not approved to stay bare")
    });
}

/// The thickest board between the last foam and the room at the end; `None` where there is no foam.
fn board_over_foam(layers: &[Layer]) -> Option<Len> {
    let last = layers.iter().rposition(|l| l.material == Material::Foam)?;
    let over = &layers[last..];
    // 23/32 in of wood panel is as good as board.
    if over.iter().any(|l| l.material == Material::Panel && l.thickness >= Len::sixty_fourths(46)) {
        return None;
    }
    let boards = over.iter().filter(|l| l.material == Material::Board);
    Some(boards.map(|l| l.thickness).max().unwrap_or(Len::ZERO))
}

#[cfg(test)]
mod tests {
    use plan::detail::Value;
    use plan::element::Partition;
    use plan::{Edition, State};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "foam-barrier";

    fn wall(layers: Vec<Layer>) -> Sample {
        let wall = Partition { layers, ..Partition::two_by_four(at(60.0, 0.0), at(60.0, 120.0)) };
        Sample::room(144.0, 120.0).add(State::New, Body::Partition(wall))
    }

    fn foam(board: Len) -> Vec<Layer> {
        let mut layers = vec![
            Layer::new(Material::Board, Len::sixty_fourths(32)),
            Layer::new(Material::Foam, Len::inches(2)),
        ];
        if board > Len::ZERO {
            layers.push(Layer::new(Material::Board, board));
        }
        layers
    }

    #[test]
    fn clear_pass() {
        wall(foam(Len::sixty_fourths(40))).expect_none(SLUG);
    }

    #[test]
    fn by_what_is_stated() {
        let stated = |word| wall(foam(Len::ZERO)).state(&FOAM_COVER, Value::Word(word));
        stated("a tested barrier").expect_none(SLUG);
        stated("foam approved to stay bare").expect_none(SLUG);
        stated("nothing else").expect(SLUG, &["correction, measured 0\", required 1/2\""]);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bare = wall(foam(Len::ZERO)).edition(edition);
            bare.expect(SLUG, &["verify, measured 0\", required 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        wall(foam(Len::sixty_fourths(32))).expect_none(SLUG);
        assert_eq!(wall(foam(Len::sixty_fourths(32) - Len::UNIT)).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_thick_wood_panel_stands_in_for_board() {
        let mut layers = foam(Len::ZERO);
        layers.push(Layer::new(Material::Panel, Len::sixty_fourths(46)));
        wall(layers.clone()).expect_none(SLUG);
        layers[2].thickness = Len::sixty_fourths(46) - Len::UNIT;
        assert_eq!(wall(layers).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        wall(vec![Layer::new(Material::Stud, Len::inches(3))]).expect_none(SLUG);
        wall(foam(Len::ZERO)).existing().expect_none(SLUG);
    }
}
