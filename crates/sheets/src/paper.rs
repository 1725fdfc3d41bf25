//! Sizes of paper, laid on their long side.

use drawing::P;

/// A size of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Paper {
    /// 11 x 8 1/2 in.
    Letter,
    /// 17 x 11 in.
    #[default]
    Tabloid,
    /// 24 x 18 in.
    ArchC,
    /// 36 x 24 in.
    ArchD,
    /// 297 x 210 mm.
    A4,
    /// 420 x 297 mm.
    A3,
}

/// Points in an inch.
pub const INCH: f32 = 72.0;

impl Paper {
    pub const ALL: [Paper; 6] =
        [Paper::Letter, Paper::Tabloid, Paper::ArchC, Paper::ArchD, Paper::A4, Paper::A3];

    /// The word on the command line and in the lists of departments.
    pub fn word(self) -> &'static str {
        match self {
            Paper::Letter => "letter",
            Paper::Tabloid => "tabloid",
            Paper::ArchC => "arch-c",
            Paper::ArchD => "arch-d",
            Paper::A4 => "a4",
            Paper::A3 => "a3",
        }
    }

    /// What stands on the sheet.
    pub fn name(self) -> &'static str {
        match self {
            Paper::Letter => "letter, 11 x 8 1/2 in",
            Paper::Tabloid => "tabloid, 17 x 11 in",
            Paper::ArchC => "24 x 18 in",
            Paper::ArchD => "36 x 24 in",
            Paper::A4 => "A4, 297 x 210 mm",
            Paper::A3 => "A3, 420 x 297 mm",
        }
    }

    pub fn from_word(word: &str) -> Option<Paper> {
        Paper::ALL.into_iter().find(|p| p.word() == word)
    }

    /// Width and height in points.
    pub fn size(self) -> (f32, f32) {
        let mm = |w: f32, h: f32| (w / 25.4 * INCH, h / 25.4 * INCH);
        match self {
            Paper::Letter => (11.0 * INCH, 8.5 * INCH),
            Paper::Tabloid => (17.0 * INCH, 11.0 * INCH),
            Paper::ArchC => (24.0 * INCH, 18.0 * INCH),
            Paper::ArchD => (36.0 * INCH, 24.0 * INCH),
            Paper::A4 => mm(297.0, 210.0),
            Paper::A3 => mm(420.0, 297.0),
        }
    }
}

/// A level box on a sheet, in points; y down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Area {
    pub left: f32,
    pub top: f32,
    pub right: f32,
    pub bottom: f32,
}

impl Area {
    pub fn width(self) -> f32 {
        self.right - self.left
    }

    pub fn height(self) -> f32 {
        self.bottom - self.top
    }

    /// Its corners, clockwise from the left top.
    pub fn ring(self) -> [P; 4] {
        let Area { left, top, right, bottom } = self;
        [P::new(left, top), P::new(right, top), P::new(right, bottom), P::new(left, bottom)]
    }

    /// What is left when strips are cut off: left, top, right, bottom.
    pub fn cut(self, left: f32, top: f32, right: f32, bottom: f32) -> Area {
        Area {
            left: self.left + left,
            top: self.top + top,
            right: self.right - right,
            bottom: self.bottom - bottom,
        }
    }
}
