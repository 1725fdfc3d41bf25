//! Details of the ways into the basement.

use super::{Subject, yes_no};
use crate::detail::Detail;
use crate::element::{Body, BodyKind, Opening, OpeningKind};

const WAY_IN: Subject =
    Subject::Element(&[BodyKind::Stair, BodyKind::RoomTag, BodyKind::Door], |body| {
        matches!(
            body,
            Body::Stair(_)
                | Body::RoomTag(_)
                | Body::Opening(Opening { kind: OpeningKind::Door(_), .. })
        )
    });

pub const ARRIVAL: Detail = yes_no(
    "arrival",
    WAY_IN,
    "People come in here",
    "Do ways into the basement begin here? Without an answer they begin at stairs and outside doors.",
    None,
);

pub(super) const ALL: &[&Detail] = &[&ARRIVAL];
