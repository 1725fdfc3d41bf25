//! The placing itself.
//!
//! Greedy: labels are taken by rank, each tries its spots in order, the rich form before the terse one.
//! What finds no place is left out. The result depends on nothing but the input order.

use drawing::{Marks, P, TextMark};

use super::cells::{Cells, Obstacle};
use super::{Label, NOBODY, Spot, block_corners, block_size, holds};

/// Space kept round a label, in points.
const AIR: f32 = 2.0;

/// Where words may not go.
#[derive(Clone, Debug)]
pub(crate) struct Placer {
    hard: Cells,
    soft: Cells,
    size: (f32, f32),
}

impl Placer {
    pub fn new(size: (f32, f32)) -> Placer {
        Placer { hard: Cells::new(size), soft: Cells::new(size), size }
    }

    /// Nothing may be written here (except by the owner).
    pub fn block(&mut self, quad: [P; 4], owner: u32) {
        self.hard.put(Obstacle::new(quad, owner));
    }

    /// Better not to write here.
    pub fn avoid(&mut self, quad: [P; 4], owner: u32) {
        self.soft.put(Obstacle::new(quad, owner));
    }

    /// Whether nothing blocks a region; then it is taken.
    pub fn take(&mut self, quad: [P; 4], owner: u32) -> bool {
        let free = self.hard.free(&quad, owner);
        if free {
            self.block(quad, NOBODY);
        }
        free
    }

    /// The same, and nothing says that it would better be left free.
    pub fn take_clear(&mut self, quad: [P; 4], owner: u32) -> bool {
        self.soft.free(&quad, owner) && self.take(quad, owner)
    }

    /// Whether nothing blocks a region; it is not taken.
    pub fn is_free(&self, quad: &[P; 4], owner: u32) -> bool {
        self.hard.free(quad, owner)
    }

    /// Places labels by rank and writes those that found a place.
    pub fn write(&mut self, mut labels: Vec<Label>, marks: &mut Marks) {
        labels.sort_by_key(|label| label.rank);
        for label in &labels {
            if let Some((form, spot)) = self.find(label) {
                let quad = block_corners(&form.size, &spot, AIR);
                self.block(quad, NOBODY);
                marks.group(label.origin.as_str(), |m| form.write(label, &spot, m));
            }
        }
    }

    fn find(&self, label: &Label) -> Option<(Form, Spot)> {
        // A form that crosses something it should avoid waits for a terser one that does not.
        let mut second_best = None;
        for (index, lines) in label.forms.iter().enumerate() {
            let form = Form { index, size: block_size(lines) };
            if form.size.0 > label.most.0 || form.size.1 > label.most.1 {
                continue;
            }
            for spot in &label.spots {
                let quad = block_corners(&form.size, spot, 0.0);
                let on_screen = quad
                    .iter()
                    .all(|p| p.x >= 0.0 && p.y >= 0.0 && p.x <= self.size.0 && p.y <= self.size.1);
                if !on_screen || !self.hard.free(&quad, label.owner) {
                    continue;
                }
                let inside = label.within.as_ref().is_none_or(|ring| {
                    block_corners(&form.size, spot, AIR).iter().all(|p| holds(ring, *p))
                });
                if !inside {
                    continue;
                }
                if self.soft.free(&quad, label.owner) {
                    return Some((form, *spot));
                }
                second_best.get_or_insert((form, *spot));
            }
        }
        second_best
    }
}

/// One of a label's forms with its width and height.
#[derive(Clone, Copy)]
struct Form {
    index: usize,
    size: (f32, f32),
}

impl Form {
    fn write(&self, label: &Label, spot: &Spot, marks: &mut Marks) {
        let (sin, cos) = libm::sincosf(-spot.angle.to_radians());
        let mut y = -self.size.1 / 2.0;
        for line in &label.forms[self.index] {
            let height = line.size * TextMark::LINE;
            let middle = y + height / 2.0;
            y += height;
            let at = spot.at.by(-middle * sin, middle * cos);
            let mut text =
                TextMark::new(at, line.text.clone(), line.size, line.tone).anchor(spot.anchor);
            text.style = line.style;
            text.angle = spot.angle;
            text.plate = label.plate;
            marks.text(text);
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use drawing::{Anchor, Tone};

    use super::super::{ANY_SIZE, Line, Rank, beside, overlap, square};
    use super::*;

    fn label(text: &str, rank: Rank, x: f32, y: f32) -> Label {
        Label {
            origin: text.into(),
            rank,
            owner: NOBODY,
            forms: vec![vec![Line::plain(text, 10.0, Tone::Ink)]],
            spots: beside(P::new(x, y), 4.0),
            within: None,
            most: ANY_SIZE,
            plate: None,
        }
    }

    #[test]
    fn the_more_important_word_keeps_its_first_spot() {
        let mut placer = Placer::new((400.0, 300.0));
        let mut marks = Marks::new();
        let labels = vec![
            label("opening", Rank::Opening, 100.0, 100.0),
            label("room", Rank::Room, 100.0, 100.0),
        ];
        placer.write(labels, &mut marks);
        let texts: Vec<_> = marks.texts().map(|t| (t.text.as_str(), t.anchor)).collect();
        assert_eq!(texts, [("room", Anchor::Start), ("opening", Anchor::End)]);
    }

    #[test]
    fn a_word_without_a_place_is_left_out_or_said_shorter() {
        let mut placer = Placer::new((400.0, 300.0));
        placer.block(square(P::new(100.0, 100.0), 60.0), 7);
        let mut marks = Marks::new();
        let mut own = label("own", Rank::Service, 100.0, 100.0);
        own.owner = 7;
        placer.write(vec![label("foreign", Rank::Room, 100.0, 100.0), own], &mut marks);
        assert_eq!(marks.origins().collect::<Vec<_>>(), ["own"]);

        let mut terse = label("a very long name of a room", Rank::Room, 350.0, 200.0);
        terse.spots.truncate(1);
        terse.forms.push(vec![Line::plain("a", 10.0, Tone::Ink)]);
        let mut marks = Marks::new();
        placer.write(vec![terse], &mut marks);
        assert_eq!(marks.texts().next().map(|t| t.text.as_str()), Some("a"));
    }

    proptest! {
        #[test]
        fn no_two_words_overlap(
            at in proptest::collection::vec((0f32..600.0, 0f32..400.0, 0f32..180.0), 1..120),
        ) {
            let mut placer = Placer::new((600.0, 400.0));
            let labels = at.iter().enumerate().map(|(i, (x, y, angle))| {
                let mut l = label(&"word ".repeat(1 + i % 4), Rank::Service, *x, *y);
                for spot in &mut l.spots {
                    spot.angle = *angle;
                }
                l
            });
            let mut marks = Marks::new();
            placer.write(labels.collect(), &mut marks);
            let boxes: Vec<_> = marks.texts().map(TextMark::corners).collect();
            prop_assert!(!boxes.is_empty() || at.len() < 4);
            for (i, a) in boxes.iter().enumerate() {
                for b in &boxes[..i] {
                    prop_assert!(!overlap(a, b));
                }
            }
        }
    }
}
