//! A row of bedrooms along the north wall, each with another fault in its way out.

use measure::Len;
use plan::State;
use plan::element::*;

use super::super::build::{Build, escape_window, inches, sheet};
use super::Shell;

const WIDE: i32 = 108;

pub fn add(b: &mut Build, shell: &Shell) {
    let front = b.partition((0, 336), (WIDE * 8, 336));
    for i in 0..8 {
        b.partition((WIDE * (i + 1), 480), (WIDE * (i + 1), 336));
        b.door(front, WIDE * i + 60, 32, End::Start, Side::Left);
    }
    let windows: [Option<Window>; 6] = [
        None,
        Some(no_well()),
        Some(too_small()),
        Some(awning()),
        Some(tight_well()),
        Some(near_limit()),
    ];
    for (i, window) in (0..).zip(windows) {
        b.tag((WIDE * i + 40, 400), &format!("Bedroom {}", i + 1), RoomUse::Bedroom);
        if let Some(window) = window {
            b.window(State::New, shell.north, 960 - WIDE * i - 84, window);
        }
    }
    b.tag((WIDE * 6 + 40, 400), "Bedroom 7", RoomUse::Bedroom);
    b.window(State::New, shell.north, 960 - WIDE * 6 - 84, ladder_in_the_way());
    b.tag((WIDE * 7 + 40, 400), "Bedroom 8", RoomUse::Bedroom);
    b.leaf(shell.north, 960 - WIDE * 7 - 84, 48, DoorOperation::Bifold, End::Start, Side::Left);
}

/// Below grade with no well, its clear size only estimated.
fn no_well() -> Window {
    Window { well: None, clear: ClearOpening::Estimated, ..escape_window() }
}

fn too_small() -> Window {
    Window { clear: sheet(18, 22), sill: inches(50), ..escape_window() }
}

fn awning() -> Window {
    Window { operation: WindowOperation::Awning, clear: ClearOpening::Estimated, ..escape_window() }
}

fn well(width: i32, projection: i32, depth: i32, ladder: i32) -> Option<Well> {
    Some(Well {
        width: inches(width),
        projection: inches(projection),
        depth: inches(depth),
        ladder: ladder > 0,
        ladder_projection: Len::inches(ladder),
    })
}

fn tight_well() -> Window {
    Window { well: well(30, 24, 50, 0), ..escape_window() }
}

fn near_limit() -> Window {
    Window { well: well(48, 48, 43, 0), ..escape_window() }
}

fn ladder_in_the_way() -> Window {
    Window { well: well(48, 38, 60, 9), ..escape_window() }
}
