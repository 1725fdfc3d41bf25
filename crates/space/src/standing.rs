//! The standing elements by what they are.

use plan::element::BodyKind;
use plan::{Element, ElementId, Plan};

use crate::Facts;

/// Positions in the plan's list of elements, in rising order, for each kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Standing([Vec<u32>; BodyKind::COUNT]);

impl Standing {
    pub fn new(plan: &Plan) -> Standing {
        let mut kinds: [Vec<u32>; BodyKind::COUNT] = Default::default();
        for (i, element) in plan.elements().iter().enumerate().filter(|(_, e)| e.stands()) {
            kinds[element.body.kind() as usize].push(i as u32);
        }
        Standing(kinds)
    }

    /// The standing elements of some kinds, by id.
    pub fn of<'a>(
        &'a self,
        plan: &'a Plan,
        kinds: &[BodyKind],
    ) -> impl Iterator<Item = &'a Element> + use<'a> {
        let of = |kind: &BodyKind| self.0[*kind as usize].as_slice();
        let (one, several) = match kinds {
            [kind] => (of(kind), Vec::new()),
            _ => {
                let mut all: Vec<u32> = kinds.iter().flat_map(of).copied().collect();
                // A few runs in order.
                all.sort();
                ([].as_slice(), all)
            }
        };
        let elements = plan.elements().shared();
        one.iter().copied().chain(several).map(|i| &*elements[i as usize])
    }

    /// The standing openings with their hosts, by host.
    pub fn hosted(&self, plan: &Plan) -> Vec<(ElementId, u32)> {
        let of = |kind: BodyKind| self.0[kind as usize].iter().copied();
        let host = |i: u32| Some((plan.elements().shared()[i as usize].body.host()?, i));
        let openings = of(BodyKind::Door).chain(of(BodyKind::Window));
        let mut hosted: Vec<_> = openings.filter_map(host).collect();
        hosted.sort_unstable();
        hosted
    }
}

impl Facts {
    /// Whether the plan has anything that is torn out.
    pub fn anything_removed(&self) -> bool {
        self.standing.0.iter().map(Vec::len).sum::<usize>() < self.plan.elements().len()
    }

    /// Where the standing elements of a kind stand in the plan's list, in rising order.
    pub fn places(&self, kind: BodyKind) -> &[u32] {
        &self.standing.0[kind as usize]
    }

    /// The element at a place of the plan's list.
    pub fn element_at(&self, place: u32) -> &Element {
        &self.plan.elements().shared()[place as usize]
    }

    /// The standing elements of some kinds, by id.
    pub fn standing(&self, kinds: &[BodyKind]) -> impl Iterator<Item = &Element> + use<'_> {
        self.standing.of(&self.plan, kinds)
    }
}
