//! The net clear opening of a window.
//!
//! The code gives no formula, only "the result of normal operation from the inside"; the maker's sheet
//! always wins. Without one, the opening is worked out from the frame. The allowances are common
//! practice, no source; the forms (side-hung: frame less offsets; slider: just under half the width;
//! hung: just under half the height; awning and hopper: the sash stands in the way) are those of the
//! fact sheet on escape openings, section 1.3.

use measure::{Area, Len};
use plan::element::{ClearOpening, Window, WindowOperation};

/// Off both sizes of a casement: hinge offset, open sash, stops.
const CASEMENT: Len = Len::inches(4);
/// Off half the sliding direction: half the meeting stile and the jamb.
const HALF: Len = Len::inches(2);
/// Off the other direction of a slider or hung window: frame and stops.
const FRAME: Len = Len::inches(3);

/// What is left clear with the window open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NetClear {
    pub width: Len,
    pub height: Len,
    /// Worked out from the frame, not taken from the maker's sheet.
    pub estimated: bool,
}

impl NetClear {
    pub fn area(self) -> Area {
        Area::of_rect(self.width, self.height)
    }
}

/// The net clear opening from the maker's sheet, or by operation: casement, frame - 4 in both ways;
/// slider, half the width - 2 in by the height - 3 in; hung, the width - 3 in by half the height - 2 in;
/// awning, hopper and fixed: none.
pub fn net_clear(window: &Window) -> NetClear {
    if let ClearOpening::Sheet { width, height } = window.clear {
        return NetClear { width, height, estimated: false };
    }
    let (w, h) = (window.frame_width, window.frame_height);
    let (width, height) = match window.operation {
        WindowOperation::Casement => (w - CASEMENT, h - CASEMENT),
        WindowOperation::Slider => (w / 2 - HALF, h - FRAME),
        WindowOperation::Hung => (w - FRAME, h / 2 - HALF),
        WindowOperation::Awning | WindowOperation::Hopper | WindowOperation::Fixed => {
            (Len::ZERO, Len::ZERO)
        }
    };
    // A frame too small to leave anything leaves nothing either way.
    let open = width > Len::ZERO && height > Len::ZERO;
    let (width, height) = if open { (width, height) } else { (Len::ZERO, Len::ZERO) };
    NetClear { width, height, estimated: window.operation != WindowOperation::Fixed }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn clear(operation: WindowOperation, w: i32, h: i32) -> NetClear {
        net_clear(&window(operation, w, h, ClearOpening::Estimated))
    }

    fn window(operation: WindowOperation, w: i32, h: i32, clear: ClearOpening) -> Window {
        Window {
            operation,
            frame_width: Len::inches(w),
            frame_height: Len::inches(h),
            clear,
            sill: Len::inches(40),
            grade: Len::inches(60),
            well: None,
        }
    }

    /// Fact sheet 1.3: a slider of about 4 ft x 4 ft is what reaches 5.7 sq ft and 20 in.
    #[test]
    fn a_four_foot_slider_reaches_the_escape_size() {
        let c = clear(WindowOperation::Slider, 48, 48);
        assert!(c.width >= Len::inches(20) && c.area() >= Area::square_foot_tenths(57));
        assert!(c.width < Len::inches(24), "just under half");
        assert!(clear(WindowOperation::Slider, 36, 36).area() < Area::square_foot_tenths(57));
    }

    /// Fact sheet 1.3: a hung window must be about 4 ft 9 in to 5 ft high to open 24 in.
    #[test]
    fn a_hung_window_needs_nearly_five_feet() {
        assert!(clear(WindowOperation::Hung, 36, 57).height >= Len::inches(24));
        assert!(clear(WindowOperation::Hung, 36, 48).height < Len::inches(24));
    }

    #[test]
    fn a_casement_is_the_smallest_unit() {
        let c = clear(WindowOperation::Casement, 32, 36);
        assert_eq!((c.width, c.height, c.estimated), (Len::inches(28), Len::inches(32), true));
        assert!(c.area() >= Area::square_foot_tenths(57));
    }

    #[test]
    fn awning_and_hopper_give_nothing_without_a_sheet() {
        for operation in [WindowOperation::Awning, WindowOperation::Hopper] {
            let c = clear(operation, 44, 44);
            assert_eq!((c.area(), c.estimated), (Area::ZERO, true));
        }
        let sheet = ClearOpening::Sheet { width: Len::inches(30), height: Len::inches(28) };
        let c = net_clear(&window(WindowOperation::Awning, 44, 44, sheet));
        assert_eq!((c.width, c.height, c.estimated), (Len::inches(30), Len::inches(28), false));
    }

    #[test]
    fn a_fixed_window_gives_nothing_for_sure() {
        let c = clear(WindowOperation::Fixed, 60, 60);
        assert_eq!((c.area(), c.estimated), (Area::ZERO, false));
    }

    #[test]
    fn a_tiny_frame_leaves_nothing() {
        assert_eq!(clear(WindowOperation::Slider, 3, 40).area(), Area::ZERO);
        assert_eq!(clear(WindowOperation::Slider, 3, 40).height, Len::ZERO);
    }
}
