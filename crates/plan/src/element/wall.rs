//! Walls: the foundation shell, partitions, and furring against the shell.

use geometry::{Pt, Seg};
use measure::Len;
use serde::{Deserialize, Serialize};

use super::ElementId;

/// A foundation wall, drawn by the inner face that the tape touches. Standing at `a` and looking
/// towards `b`, the room is on the left and the wall's thickness on the right (a shell drawn
/// counter-clockwise encloses its room).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ShellWall {
    pub a: Pt,
    pub b: Pt,
    pub thickness: Len,
    /// From the slab to the top of the wall.
    pub height: Len,
}

/// Where the drawn line of a partition lies in its thickness, looking from `a` to `b`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Justify {
    #[default]
    Centre,
    /// The line is the left face.
    LeftFace,
    /// The line is the right face.
    RightFace,
}

/// What a layer is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Material {
    /// Gypsum board.
    Board,
    /// Stud framing with its cavity.
    Stud,
    /// Foam against the concrete.
    Foam,
    /// An air gap.
    Gap,
    /// Wood or panel sheathing.
    Panel,
    /// Brick, block or concrete.
    Masonry,
}

/// One layer of an assembly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Layer {
    pub material: Material,
    pub thickness: Len,
}

impl Layer {
    pub const fn new(material: Material, thickness: Len) -> Layer {
        Layer { material, thickness }
    }
}

/// A new framed wall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Partition {
    pub a: Pt,
    pub b: Pt,
    pub justify: Justify,
    /// From the left face to the right face, looking from `a` to `b`; the sum is the thickness.
    pub layers: Vec<Layer>,
    /// Spacing of the studs, centre to centre.
    pub spacing: Len,
}

/// Framing against a foundation wall: it moves the net face in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Furring {
    /// The foundation wall.
    pub host: ElementId,
    /// Along the host from its `a`.
    pub from: Len,
    /// Along the host from its `a`; more than `from`. The whole wall when it reaches or passes its end.
    pub to: Len,
    /// From the concrete inwards.
    pub layers: Vec<Layer>,
    pub spacing: Len,
}

impl ShellWall {
    pub fn line(&self) -> Seg {
        Seg::new(self.a, self.b)
    }
}

impl Partition {
    /// A 2x4 wall with 1/2 in board on both sides: 4 1/2 in.
    pub fn two_by_four(a: Pt, b: Pt) -> Partition {
        Partition {
            a,
            b,
            justify: Justify::Centre,
            layers: vec![
                Layer::new(Material::Board, Len::sixty_fourths(32)),
                Layer::new(Material::Stud, Len::sixty_fourths(224)),
                Layer::new(Material::Board, Len::sixty_fourths(32)),
            ],
            spacing: Len::inches(16),
        }
    }

    pub fn line(&self) -> Seg {
        Seg::new(self.a, self.b)
    }

    pub fn thickness(&self) -> Len {
        self.layers.iter().map(|l| l.thickness).sum()
    }

    /// Distance from the drawn line to the left face and to the right face; their sum is the thickness.
    pub fn sides(&self) -> (Len, Len) {
        let t = self.thickness();
        match self.justify {
            Justify::Centre => (t / 2, t - t / 2),
            Justify::LeftFace => (Len::ZERO, t),
            Justify::RightFace => (t, Len::ZERO),
        }
    }
}

impl Furring {
    pub fn thickness(&self) -> Len {
        self.layers.iter().map(|l| l.thickness).sum()
    }
}

impl Material {
    pub fn word(self) -> &'static str {
        match self {
            Material::Board => "gypsum board",
            Material::Stud => "stud",
            Material::Foam => "foam",
            Material::Gap => "air gap",
            Material::Panel => "wood panel",
            Material::Masonry => "masonry",
        }
    }

    /// Every material, in the order offered.
    pub const ALL: [Material; 6] = [
        Material::Board,
        Material::Stud,
        Material::Foam,
        Material::Gap,
        Material::Panel,
        Material::Masonry,
    ];
}
