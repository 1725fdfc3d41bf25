//! The layers of a wall: presets, and each layer with its material and thickness.

use egui::{CollapsingHeader, RichText, Ui};
use measure::{Len, Precision};
use plan::bounds;
use plan::element::{Layer, Material};

use super::super::form::{Form, row};

/// A usual assembly.
struct Preset {
    name: &'static str,
    layers: &'static [Layer],
}

const HALF: Len = Len::sixty_fourths(32);
const FIVE_EIGHTHS: Len = Len::sixty_fourths(40);
/// Dressed sizes of framing lumber. Source: American Softwood Lumber Standard, PS 20 (from memory).
const TWO_BY_TWO: Len = Len::sixty_fourths(96);
const TWO_BY_FOUR: Len = Len::sixty_fourths(224);
const TWO_BY_SIX: Len = Len::sixty_fourths(352);

const BOARD: Layer = Layer::new(Material::Board, HALF);
const HEAVY_BOARD: Layer = Layer::new(Material::Board, FIVE_EIGHTHS);

/// Usual partitions (common practice, no source).
const PARTITIONS: &[Preset] = &[
    Preset {
        name: "2x4, 1/2 in board both sides",
        layers: &[BOARD, Layer::new(Material::Stud, TWO_BY_FOUR), BOARD],
    },
    Preset {
        name: "2x4, board on one side",
        layers: &[BOARD, Layer::new(Material::Stud, TWO_BY_FOUR)],
    },
    Preset {
        name: "2x4, 5/8 in board both sides",
        layers: &[HEAVY_BOARD, Layer::new(Material::Stud, TWO_BY_FOUR), HEAVY_BOARD],
    },
    Preset {
        name: "2x6, 1/2 in board both sides",
        layers: &[BOARD, Layer::new(Material::Stud, TWO_BY_SIX), BOARD],
    },
    Preset {
        name: "2x2, 1/2 in board both sides",
        layers: &[BOARD, Layer::new(Material::Stud, TWO_BY_TWO), BOARD],
    },
    Preset { name: "2x4 studs, no board", layers: &[Layer::new(Material::Stud, TWO_BY_FOUR)] },
];

/// Usual furring, from the concrete inwards (common practice, no source).
const FURRINGS: &[Preset] = &[
    Preset {
        name: "2 in foam, 2x4, 1/2 in board",
        layers: &[
            Layer::new(Material::Foam, Len::inches(2)),
            Layer::new(Material::Stud, TWO_BY_FOUR),
            BOARD,
        ],
    },
    Preset {
        name: "1 in gap, 2x4, 1/2 in board",
        layers: &[
            Layer::new(Material::Gap, Len::inches(1)),
            Layer::new(Material::Stud, TWO_BY_FOUR),
            BOARD,
        ],
    },
    Preset {
        name: "2 in foam, 2x2, 1/2 in board",
        layers: &[
            Layer::new(Material::Foam, Len::inches(2)),
            Layer::new(Material::Stud, TWO_BY_TWO),
            BOARD,
        ],
    },
    Preset {
        name: "2 in foam, 1x3 strips, 1/2 in board",
        layers: &[
            Layer::new(Material::Foam, Len::inches(2)),
            Layer::new(Material::Stud, Len::sixty_fourths(48)),
            BOARD,
        ],
    },
];

/// Which assemblies are offered, and how the sides are called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    Partition,
    Furring,
}

/// Edits the layers of a wall.
pub fn edit(ui: &mut Ui, form: &mut Form, layers: &mut Vec<Layer>, of: Of) {
    let presets = match of {
        Of::Partition => PARTITIONS,
        Of::Furring => FURRINGS,
    };
    let choices: Vec<(Vec<Layer>, &str)> =
        presets.iter().map(|p| (p.layers.to_vec(), p.name)).collect();
    form.choice(ui, "Assembly", layers, &choices);
    let total: Len = layers.iter().map(|l| l.thickness).sum();
    let total = form.system().len(total, Precision::Fine);
    form.fact(ui, "In all", RichText::new(total).strong());
    let title = match of {
        Of::Partition => "Layers, from the left face",
        Of::Furring => "Layers, from the concrete",
    };
    CollapsingHeader::new(title).id_salt("layers").show_unindented(ui, |ui| {
        list(ui, form, layers, of);
    });
}

/// Each layer with its material and thickness.
fn list(ui: &mut Ui, form: &mut Form, layers: &mut Vec<Layer>, of: Of) {
    let bound = if of == Of::Furring { bounds::FURRING_THICKNESS } else { bounds::WALL_THICKNESS };
    let fits = |layers: &[Layer]| bound.holds(layers.iter().map(|l| l.thickness).sum());
    let mut removed = None;
    let count = layers.len();
    for i in 0..count {
        ui.push_id(("layer", i), |ui| {
            let before = layers[i];
            let materials = Material::ALL.map(|m| (m, m.word()));
            form.choice(ui, &format!("Layer {}", i + 1), &mut layers[i].material, &materials);
            let word = format!("Thickness {}", i + 1);
            form.len(ui, &word, &mut layers[i].thickness, bounds::LAYER_THICKNESS);
            if !fits(layers) {
                layers[i] = before;
            }
            if count > 1 {
                row(ui, "", |ui| {
                    let button = ui.button("Remove this layer");
                    if button.accessible_name(format!("Remove layer {}", i + 1)).clicked() {
                        removed = Some(i);
                    }
                });
            }
        });
    }
    if let Some(i) = removed {
        let layer = layers.remove(i);
        match fits(layers) {
            true => form.touch("layers"),
            false => layers.insert(i, layer),
        }
    }
    let help = match of {
        Of::Partition => "Adds a board at the right face.",
        Of::Furring => "Adds a board at the room.",
    };
    if bounds::LAYERS.holds(count + 1) && ui.button("Add a layer").on_hover_text(help).clicked() {
        layers.push(BOARD);
        form.touch("layers");
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn presets_are_accepted_and_told_apart() {
        for (presets, bound) in
            [(PARTITIONS, bounds::WALL_THICKNESS), (FURRINGS, bounds::FURRING_THICKNESS)]
        {
            for (i, preset) in presets.iter().enumerate() {
                assert!(bound.holds(preset.layers.iter().map(|l| l.thickness).sum()));
                assert!(presets[i + 1..].iter().all(|p| p.layers != preset.layers));
            }
        }
    }

    #[test]
    fn the_first_partition_is_the_usual_one() {
        // 3 1/2 in stud and two 1/2 in boards.
        let total: Len = PARTITIONS[0].layers.iter().map(|l| l.thickness).sum();
        assert_eq!(total, Len::sixty_fourths(4 * 64 + 32));
    }
}
