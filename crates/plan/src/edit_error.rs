//! Why an edit can't be made.

use measure::{Len, System};

use crate::ElementId;
use crate::bounds::{Bound, CountBound, TextBound, both};
use crate::detail::{Detail, Value};

/// Why an edit can't be made. `Display` says what, where and what to do.
///
/// `who` names the element as the user sees it, such as `W14`, or `New partition` for one that the
/// edit itself adds.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum EditError {
    #[error("There is no element {} in the plan; it may have been deleted.", .id.0)]
    Missing { id: ElementId },
    #[error("{who}: the {} of {} is out of range; it must be {bound}.", .bound.what, both(*.value))]
    OutOfRange { who: String, bound: Bound, value: Len },
    #[error("{who}: the {} is {value}; it must be {bound}.", .bound.what)]
    CountOutOfRange { who: String, bound: CountBound, value: usize },
    #[error("{who}: the {} is {length} characters long; at most {} are accepted.", .bound.what, .bound.most)]
    TextTooLong { who: String, bound: TextBound, length: usize },
    #[error("{who}: the {} is missing; type at least one character.", .bound.what)]
    TextMissing { who: String, bound: TextBound },
    #[error("{who}: the {} holds a character that can't be shown; take out line breaks, tabs and other control characters.", .bound.what)]
    TextControl { who: String, bound: TextBound },
    #[error(
        "{who} would lie too far out; keep every point within {} of the origin.",
        both(Len::COORD_LIMIT)
    )]
    TooFarOut { who: String },
    #[error("{who} faces no direction; turn it so that it faces one.")]
    NoFacing { who: String },
    #[error(
        "{who}: the outline crosses or touches itself; move its points so that the edges meet at the corners only."
    )]
    OutlineCrosses { who: String },
    #[error("{who} is fixed to element {}, which is not in the plan; place it on a wall.", .host.0)]
    HostMissing { who: String, host: ElementId },
    #[error("{who} is fixed to {host}, which is not {needed}; place it on one.")]
    HostKind { who: String, host: String, needed: &'static str },
    #[error("{who} does not fit {host}: it needs {} to {} along the wall, which is {} long. Make it narrower, slide it, or keep the wall longer.", both(*.from), both(*.to), both(*.length))]
    OffHost { who: String, host: String, from: Len, to: Len, length: Len },
    #[error("{who} and {other} overlap in {host}; slide one of them or make it narrower.")]
    OpeningsOverlap { who: String, other: String, host: String },
    #[error("{who} would have no length: it runs from {} to {} along its wall; make the second larger.", both(*.from), both(*.to))]
    FurringEmpty { who: String, from: Len, to: Len },
    #[error("{who} serves element {}, which is not a service point of the plan; choose one or none.", .serves.0)]
    ServesMissing { who: String, serves: ElementId },
    #[error("{wall} can't move so far: {follower} would turn inside out or lose an opening. Looking from its start to its end, it may move {} to the right and {} to the left.", both(-*.least), both(*.most))]
    FollowerInverts { wall: String, follower: String, least: Len, most: Len },
    #[error("{who} is not {needed}.")]
    WrongKind { who: String, needed: &'static str },
    #[error("{who} can't be turned by itself; it is fixed to a wall.")]
    FixedToWall { who: String },
    #[error(
        "There is no room left on {host} for another opening of this width; choose another wall."
    )]
    NoRoomOnHost { host: String },
    #[error("The finding \"{rule}\" is not set aside.")]
    NotSetAside { rule: String },
    #[error("{who}: the detail \"{detail}\" does not belong there; take it out.")]
    DetailMisfit { who: String, detail: &'static str },
    #[error("{who}: the detail \"{}\" can't be {}. {}", .detail.slug, .detail.say(*.value, System::Imperial), .detail.accepted(System::Imperial))]
    DetailValue { who: String, detail: &'static Detail, value: Value },
    #[error("There are more amendments than the {most} that a plan can hold.")]
    TooManyAmendments { most: u32 },
    #[error("The limit \"{limit}\" is amended twice; keep one of the two.")]
    AmendedTwice { limit: String },
    #[error("The plan is full: it can hold {most} elements. Delete some first.")]
    PlanFull { most: u32 },
}
