//! Facts of the site: which code, which house, how the ceiling and the floor are built up.

use measure::Len;
use serde::{Deserialize, Serialize};

use crate::Papers;
use crate::detail::Details;

/// Edition of the residential code.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
pub enum Edition {
    E2018,
    #[default]
    E2021,
    E2024,
}

/// Whether the house is being built or stands already.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum House {
    New,
    #[default]
    Existing,
}

/// How the finished ceiling hangs under the joists.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum CeilingBuild {
    /// Joists left open.
    Open,
    /// Board fixed to the joists: its thickness.
    Board(Len),
    /// Lay-in tiles in a grid: the drop from the joist underside to the tile's face.
    LayIn(Len),
}

/// Facts that hold for the whole plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Site {
    /// The project's name, for the window title and the sheets.
    pub title: String,
    pub edition: Edition,
    pub house: House,
    /// From the slab to the underside of the joists.
    pub joist_underside: Len,
    pub ceiling: CeilingBuild,
    /// From the slab to the finished floor.
    pub floor_build: Len,
    /// An automatic sprinkler system in the house.
    pub sprinklers: bool,
    /// Key of the place whose amendments to the model code hold; empty for the model code alone.
    pub place: String,
    /// Amendments of the user's own, on top of the place's. One limit is amended at most once.
    pub amendments: Vec<Amendment>,
    /// What is stated of the house and its site.
    pub details: Details,
    /// What the sheets say about the project.
    pub papers: Papers,
}

/// A limit of the model code that is another one here. The code book knows the limits and their units;
/// the plan keeps what the user wrote.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Amendment {
    /// Name of the limit in the code book: `escape-sill`.
    pub limit: String,
    /// As it was written: `48 in`, `5.0 sq ft`, `6`.
    pub figure: String,
    /// Who says so, and where.
    pub reason: String,
}

impl Default for Site {
    fn default() -> Site {
        Site {
            title: String::new(),
            edition: Edition::default(),
            house: House::default(),
            joist_underside: Len::inches(93),
            ceiling: CeilingBuild::Board(Len::sixty_fourths(32)),
            floor_build: Len::sixty_fourths(32),
            sprinklers: false,
            place: String::new(),
            amendments: Vec::new(),
            details: Details::default(),
            papers: Papers::default(),
        }
    }
}

impl Edition {
    pub const ALL: [Edition; 3] = [Edition::E2018, Edition::E2021, Edition::E2024];

    pub fn year(self) -> u16 {
        match self {
            Edition::E2018 => 2018,
            Edition::E2021 => 2021,
            Edition::E2024 => 2024,
        }
    }

    pub fn from_year(year: u16) -> Option<Edition> {
        Edition::ALL.into_iter().find(|e| e.year() == year)
    }
}

impl CeilingBuild {
    /// How far the ceiling's face hangs below the joists.
    pub fn drop(self) -> Len {
        match self {
            CeilingBuild::Open => Len::ZERO,
            CeilingBuild::Board(t) | CeilingBuild::LayIn(t) => t,
        }
    }
}

impl Site {
    /// Finished floor to finished ceiling where no overhead is.
    pub fn ceiling_height(&self) -> Len {
        self.joist_underside - self.ceiling.drop() - self.floor_build
    }
}
