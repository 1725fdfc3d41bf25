//! Sample plans for the tests of this family.

use measure::Len;
use plan::ElementId;
use plan::element::{ClearOpening, DoorOperation, RoomUse, Well, Window, WindowOperation};

use crate::testing::{Sample, at, inch};

/// The south wall of [`Sample::room`].
pub fn south(sample: &Sample) -> ElementId {
    sample.facts().plan.elements().iter().next().expect("a shell wall").id
}

/// A bedroom of 12 x 10 ft that is the whole basement, without a window.
pub fn bare_bedroom() -> Sample {
    Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Guest room", RoomUse::Bedroom)
}

/// A bedroom with one window.
pub fn bedroom(window: Window) -> Sample {
    with_window(bare_bedroom(), window)
}

/// One window more in the south wall.
pub fn with_window(sample: Sample, window: Window) -> Sample {
    let host = south(&sample);
    let others = sample.facts().openings.len();
    sample.window(host, 6.0 + 60.0 * others as f64, window)
}

/// A bedroom whose only outside opening is a door.
pub fn bedroom_with_door(operation: DoorOperation, width: f64) -> Sample {
    let sample = bare_bedroom();
    let host = south(&sample);
    sample.opening(host, 12.0, operation, width)
}

/// A casement with a clear opening from the maker's sheet, its bottom 40 in above the slab and at the outside
/// ground.
pub fn window(width: f64, height: f64) -> Window {
    Window {
        operation: WindowOperation::Casement,
        frame_width: inch(width + 4.0),
        frame_height: inch(height + 4.0),
        clear: ClearOpening::Sheet { width: inch(width), height: inch(height) },
        sill: Len::inches(40),
        grade: Len::inches(40),
        well: None,
    }
}

/// A window that meets every demand.
pub fn good_window() -> Window {
    window(30.0, 42.0)
}

/// A window that meets every demand, its bottom 30 in below the ground, in a well of these clear sizes in
/// inches without a ladder.
pub fn window_in_well(width: f64, projection: f64, depth: f64) -> Window {
    Window {
        grade: Len::inches(70),
        well: Some(Well {
            width: inch(width),
            projection: inch(projection),
            depth: inch(depth),
            ladder: false,
            ladder_projection: Len::ZERO,
        }),
        ..good_window()
    }
}

/// The window with a ladder in its well that takes this many inches.
pub fn with_ladder(mut window: Window, takes: f64) -> Window {
    if let Some(well) = &mut window.well {
        well.ladder = true;
        well.ladder_projection = inch(takes);
    }
    window
}
