//! Lines along which the building is cut for a section.

use geometry::{Pt, Seg, Vec2};
use serde::{Deserialize, Serialize};

/// A section line: the building is drawn as if cut along it. The section shows what lies at the line and is looked at
/// with `a` on the left and `b` on the right.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SectionLine {
    pub a: Pt,
    pub b: Pt,
}

impl SectionLine {
    pub fn line(&self) -> Seg {
        Seg::new(self.a, self.b)
    }

    /// The way the section looks: to the left of the line from `a` to `b`, so that `a` is at the left hand.
    pub fn looks(&self) -> Vec2 {
        self.line().dir().left()
    }

    /// The same line, looked at from the other side.
    pub fn turned(&self) -> SectionLine {
        SectionLine { a: self.b, b: self.a }
    }
}

/// The letter of the section, counted from 0: A to Z, then AA.
pub(crate) fn mark(n: usize) -> String {
    let letter = |i: usize| char::from(b'A' + (i % 26) as u8);
    match n / 26 {
        0 => letter(n).to_string(),
        more => format!("{}{}", mark(more - 1), letter(n)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_go_on_after_z() {
        assert_eq!([0, 25, 26, 51, 52, 702].map(mark), ["A", "Z", "AA", "AZ", "BA", "AAA"]);
    }

    #[test]
    fn a_section_looks_with_its_start_at_the_left_hand() {
        let east = SectionLine { a: Pt::inches(0, 0), b: Pt::inches(10, 0) };
        assert!(east.looks().y > 0 && east.looks().x == 0);
        assert!(east.turned().looks().y < 0);
    }
}
