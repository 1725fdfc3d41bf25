//! The build-ups of new walls, each with a short name that plan, table and section share.

use measure::{Len, Precision, System};
use plan::detail::wall::{CAVITY_R, FIREBLOCKED, FOAM_R, TREATED_PLATE, VAPOUR_RETARDER};
use plan::detail::{Detail, Value};
use plan::element::{Layer, Material};
use plan::{Body, Element, ElementId, State};
use space::Facts;

/// One build-up.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct WallType {
    /// `P1` for a partition, `U1` for furring against concrete.
    pub name: String,
    pub furring: bool,
    /// For furring from the concrete inwards.
    pub layers: Vec<Layer>,
    pub spacing: Len,
    /// R of foam and of the cavity, the retarder, the bottom plate, fireblocking: as stated of the first such wall.
    pub foam_r: Option<Value>,
    pub cavity_r: Option<Value>,
    pub retarder: Option<Value>,
    pub plate: Option<Value>,
    pub blocked: Option<Value>,
    pub walls: Vec<ElementId>,
}

/// The types of the new walls, partitions first, in the order of the lowest id.
pub(crate) fn of(facts: &Facts) -> Vec<WallType> {
    let mut types: Vec<WallType> = Vec::new();
    for element in facts.plan.elements().iter().filter(|e| e.state == State::New) {
        let (furring, layers, spacing) = match &element.body {
            Body::Partition(p) => (false, &p.layers, p.spacing),
            Body::Furring(f) => (true, &f.layers, f.spacing),
            _ => continue,
        };
        let new = wall_type(element, furring, layers, spacing);
        let same = |t: &&mut WallType| {
            WallType { name: String::new(), walls: Vec::new(), ..(**t).clone() } == new
        };
        match types.iter_mut().find(same) {
            Some(known) => known.walls.push(element.id),
            None => types.push(WallType { walls: vec![element.id], ..new }),
        }
    }
    types.sort_by_key(|t| t.furring);
    let (mut partitions, mut furrings) = (0, 0);
    for t in &mut types {
        let (letter, count) = if t.furring { ("U", &mut furrings) } else { ("P", &mut partitions) };
        *count += 1;
        t.name = format!("{letter}{count}");
    }
    types
}

fn wall_type(element: &Element, furring: bool, layers: &[Layer], spacing: Len) -> WallType {
    let stated = |detail: &'static Detail| element.stated(detail);
    // Two faces the same way round or the other are one build-up of a partition.
    let turned: Vec<Layer> = layers.iter().rev().cloned().collect();
    let order =
        |l: &[Layer]| l.iter().map(|l| (l.material.word(), l.thickness)).collect::<Vec<_>>();
    let layers = if !furring && order(&turned) < order(layers) { turned } else { layers.to_vec() };
    WallType {
        name: String::new(),
        furring,
        layers,
        spacing,
        foam_r: stated(&FOAM_R),
        cavity_r: stated(&CAVITY_R),
        retarder: stated(&VAPOUR_RETARDER),
        plate: stated(&TREATED_PLATE),
        blocked: stated(&FIREBLOCKED),
        walls: Vec::new(),
    }
}

impl WallType {
    /// Short names for the plan.
    pub fn names(types: &[WallType]) -> Vec<(ElementId, String)> {
        types.iter().flat_map(|t| t.walls.iter().map(|id| (*id, t.name.clone()))).collect()
    }

    pub fn thickness(&self) -> Len {
        self.layers.iter().fold(Len::ZERO, |all, l| all + l.thickness)
    }

    pub fn what(&self) -> &'static str {
        if self.furring { "furring against concrete" } else { "partition" }
    }

    pub fn has(&self, material: Material) -> bool {
        self.layers.iter().any(|l| l.material == material)
    }

    /// `1/2" gypsum board, 3 1/2" stud at 16", 1/2" gypsum board`.
    pub fn build_up(&self, system: System) -> String {
        let inches = |len| system.inches(len, Precision::Tape);
        let one = |l: &Layer| match l.material {
            Material::Stud => format!("{} stud at {}", inches(l.thickness), inches(self.spacing)),
            material => format!("{} {}", inches(l.thickness), material.word()),
        };
        self.layers.iter().map(one).collect::<Vec<_>>().join(", ")
    }

    /// What is stated of its insulation; a dash where the layer is missing, `not stated` where the figure is.
    pub fn insulation(&self) -> String {
        let mut parts = Vec::new();
        if self.has(Material::Foam) {
            parts.push(format!("foam {}", r_value(self.foam_r)));
        }
        if self.has(Material::Stud) && (self.furring || self.cavity_r.is_some()) {
            match self.cavity_r {
                Some(Value::Number(0)) => parts.push("cavity empty".to_owned()),
                value => parts.push(format!("cavity {}", r_value(value))),
            }
        }
        if parts.is_empty() { "none".to_owned() } else { parts.join(", ") }
    }
}

/// `R-10`, or that it is not stated.
pub(crate) fn r_value(value: Option<Value>) -> String {
    match value {
        Some(Value::Number(n)) => format!("R-{n}"),
        _ => "R not stated".to_owned(),
    }
}
