//! Tells a test what is on the screen and where, from the same tree that a screen reader gets.

use std::path::PathBuf;

use egui::{Context, FullOutput, Id, Pos2, Ui};
use serde_json::{Value, json};

/// Writes a JSON file whenever what it holds has changed: the plan's place on the screen, and every
/// named thing with its role, value and rectangle in points.
#[derive(Debug)]
pub struct Told {
    file: PathBuf,
    last: Value,
}

impl Told {
    pub fn new(file: PathBuf) -> Told {
        Told { file, last: Value::Null }
    }
}

fn place_id() -> Id {
    Id::unique("told place")
}

/// Notes where the plan lies: the screen position of its origin, and points per inch.
pub fn place(ctx: &Context, corner: Pos2, camera: &depict::View) {
    let zero = camera.screen_from_plan(geometry::Pt::default());
    let scale = (camera.scale * f64::from(measure::Len::PER_INCH)) as f32;
    let place = (corner.x + zero.x, corner.y + zero.y, scale);
    ctx.data_mut(|data| data.insert_temp(place_id(), place));
}

impl egui::Plugin for Told {
    fn debug_name(&self) -> &'static str {
        "told"
    }

    fn on_begin_pass(&mut self, ui: &mut Ui) {
        ui.ctx().enable_accesskit();
    }

    fn output_hook(&mut self, ctx: &Context, output: &mut FullOutput) {
        let Some(update) = &output.platform_output.accesskit_update else { return };
        let (x, y, scale) =
            ctx.data(|data| data.get_temp::<(f32, f32, f32)>(place_id())).unwrap_or_default();
        let label = |id| update.nodes.iter().find(|(n, _)| *n == id).and_then(|(_, n)| n.label());
        let things: Vec<Value> = update
            .nodes
            .iter()
            .filter_map(|(_, node)| {
                let named =
                    node.label().or_else(|| node.labelled_by().first().copied().and_then(label));
                // A text on the screen is the value of its node.
                let named = named.or_else(|| node.value());
                let b = node.bounds()?;
                Some(json!({
                    "role": format!("{:?}", node.role()),
                    "name": named?,
                    "value": node.value(),
                    "rect": [b.x0, b.y0, b.x1, b.y1],
                }))
            })
            .collect();
        let now = json!({ "origin": [x, y], "per_inch": scale, "things": things });
        if now != self.last {
            // A test that reads a half-written file reads again.
            if let Err(e) = std::fs::write(&self.file, now.to_string()) {
                log::error!("{}: {e}", self.file.display());
            }
            self.last = now;
        }
    }
}
