//! The clear width of a door.
//!
//! Codes measure it between the face of the door and the stop, with the door open 90°. What is taken
//! off the leaf is common practice, no source, except for hinged doors, where our fact sheet derives
//! "about slab - 2 in". A measured width always wins over these.

use measure::Len;
use plan::element::{Door, DoorOperation};

/// Off a hinged leaf: its thickness (1 3/8 in) and the stop (derived: clear is about the slab - 2 in).
const HINGED: Len = Len::inches(2);

/// Off a bifold: the folded pair of 1 3/8 in panels with its pivot (common practice, no source).
const BIFOLD: Len = Len::inches(4);

/// The clear width of a door or cased opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DoorClear {
    pub width: Len,
    /// Whether an allowance was taken off, or none was known to take off.
    pub estimated: bool,
}

/// The clear width by operation: hinged, leaf - 2 in; bifold, leaf - 4 in; pocket, the leaf; sliding
/// (a pair of which one passes the other), half of the leaves; cased, the finished width.
pub fn door_clear(door: &Door) -> DoorClear {
    let width = match door.operation {
        DoorOperation::Hinged => door.leaf_width - HINGED,
        DoorOperation::Bifold => door.leaf_width - BIFOLD,
        DoorOperation::Sliding => door.leaf_width / 2,
        DoorOperation::Pocket | DoorOperation::Cased => door.leaf_width,
    };
    DoorClear { width: width.max(Len::ZERO), estimated: door.operation != DoorOperation::Cased }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plan::element::{End, Side};

    fn clear(operation: DoorOperation, inches: i32) -> DoorClear {
        door_clear(&Door {
            operation,
            leaf_width: Len::inches(inches),
            leaf_height: Len::inches(80),
            hinge: End::Start,
            swing: Side::Left,
        })
    }

    /// Fact sheet `clear-vs-slab`: a 34 in slab gives 32 in clear.
    #[test]
    fn a_hinged_door_of_34_gives_32() {
        let c = clear(DoorOperation::Hinged, 34);
        assert_eq!((c.width, c.estimated), (Len::inches(32), true));
    }

    #[test]
    fn other_operations() {
        assert_eq!(clear(DoorOperation::Sliding, 60).width, Len::inches(30));
        assert_eq!(clear(DoorOperation::Pocket, 30).width, Len::inches(30));
        assert_eq!(clear(DoorOperation::Bifold, 48).width, Len::inches(44));
        let cased = clear(DoorOperation::Cased, 36);
        assert_eq!((cased.width, cased.estimated), (Len::inches(36), false));
        assert_eq!(clear(DoorOperation::Hinged, 1).width, Len::ZERO);
    }
}
