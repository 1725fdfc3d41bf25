//! Helpers that put marks on a list.

use crate::{Mark, Marks, Origin, P, Stroke, TextMark, Tone};

impl Mark {
    /// Points that span what it covers, line widths aside; none for the begin and the end of a group.
    pub fn points(&self) -> Vec<P> {
        match self {
            Mark::Fill { rings, .. } => rings.concat(),
            Mark::Line { points, .. } => points.clone(),
            Mark::Segments { pairs, .. } => pairs.iter().flat_map(|(a, b)| [*a, *b]).collect(),
            Mark::Circle { centre, radius, .. } => {
                vec![centre.by(-radius, -radius), centre.by(*radius, *radius)]
            }
            Mark::Text(text) => text.corners().to_vec(),
            Mark::Begin(_) | Mark::End => Vec::new(),
        }
    }
}

impl Marks {
    pub fn new() -> Marks {
        Marks::default()
    }

    /// A filled region of one ring.
    pub fn fill(&mut self, ring: impl Into<Vec<P>>, tone: Tone) {
        self.fill_rings(vec![ring.into()], tone, 1.0);
    }

    /// A tinted region of one ring; `alpha` 0 to 1.
    pub fn tint(&mut self, ring: impl Into<Vec<P>>, tone: Tone, alpha: f32) {
        self.fill_rings(vec![ring.into()], tone, alpha);
    }

    /// A filled region with holes, by the even-odd rule.
    pub fn fill_rings(&mut self, rings: Vec<Vec<P>>, tone: Tone, alpha: f32) {
        self.0.push(Mark::Fill { rings, tone, alpha });
    }

    /// An open line.
    pub fn line(&mut self, points: impl Into<Vec<P>>, stroke: Stroke) {
        self.0.push(Mark::Line { points: points.into(), closed: false, stroke });
    }

    /// A closed line.
    pub fn outline(&mut self, points: impl Into<Vec<P>>, stroke: Stroke) {
        self.0.push(Mark::Line { points: points.into(), closed: true, stroke });
    }

    /// Many straight lines in one style; nothing when there are none.
    pub fn segments(&mut self, pairs: Vec<(P, P)>, stroke: Stroke) {
        if !pairs.is_empty() {
            self.0.push(Mark::Segments { pairs, stroke });
        }
    }

    /// A circle.
    pub fn circle(&mut self, centre: P, radius: f32, fill: Option<Tone>, stroke: Option<Stroke>) {
        self.0.push(Mark::Circle { centre, radius, fill, stroke });
    }

    pub fn text(&mut self, text: TextMark) {
        self.0.push(Mark::Text(text));
    }

    /// The marks that `draw` makes, under an origin; nothing when it makes none.
    pub fn group(&mut self, origin: impl Into<String>, draw: impl FnOnce(&mut Marks)) {
        self.0.push(Mark::Begin(Origin(origin.into())));
        let start = self.0.len();
        draw(self);
        if self.0.len() == start {
            self.0.pop();
        } else {
            self.0.push(Mark::End);
        }
    }

    /// Puts another list on top.
    pub fn append(&mut self, other: Marks) {
        self.0.extend(other.0);
    }

    /// The list drawn `scale` times as large, type and line widths too, then moved.
    #[must_use]
    pub fn placed(mut self, scale: f32, by: P) -> Marks {
        let put = |p: &mut P| *p = P::new(p.x * scale + by.x, p.y * scale + by.y);
        let thin = |s: &mut Stroke| {
            s.width *= scale;
            s.dash = s.dash.map(|(on, off)| (on * scale, off * scale));
        };
        for mark in &mut self.0 {
            match mark {
                Mark::Fill { rings, .. } => rings.iter_mut().flatten().for_each(put),
                Mark::Line { points, stroke, .. } => {
                    points.iter_mut().for_each(put);
                    thin(stroke);
                }
                Mark::Segments { pairs, stroke } => {
                    for (a, b) in pairs {
                        put(a);
                        put(b);
                    }
                    thin(stroke);
                }
                Mark::Circle { centre, radius, stroke, .. } => {
                    put(centre);
                    *radius *= scale;
                    stroke.iter_mut().for_each(thin);
                }
                Mark::Text(text) => {
                    put(&mut text.at);
                    text.size *= scale;
                }
                Mark::Begin(_) | Mark::End => {}
            }
        }
        self
    }

    /// The origins of the list in order, also those inside others.
    pub fn origins(&self) -> impl Iterator<Item = &str> {
        self.0.iter().filter_map(|mark| match mark {
            Mark::Begin(origin) => Some(origin.0.as_str()),
            _ => None,
        })
    }

    /// The texts of the list in order.
    pub fn texts(&self) -> impl Iterator<Item = &TextMark> {
        self.0.iter().filter_map(|mark| match mark {
            Mark::Text(text) => Some(text),
            _ => None,
        })
    }

    /// The marks under every group of this origin, without its own `Begin` and `End`.
    pub fn under(&self, origin: &str) -> Marks {
        let mut found = Marks::new();
        let mut depth = 0usize;
        for mark in &self.0 {
            match mark {
                Mark::Begin(o) if depth > 0 || o.0 == origin => {
                    depth += 1;
                    if depth > 1 {
                        found.0.push(mark.clone());
                    }
                }
                Mark::End if depth > 0 => {
                    depth -= 1;
                    if depth > 0 {
                        found.0.push(mark.clone());
                    }
                }
                _ if depth > 0 => found.0.push(mark.clone()),
                _ => {}
            }
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_group_leaves_nothing() {
        let mut marks = Marks::new();
        marks.group("W1", |_| {});
        assert!(marks.0.is_empty());
    }

    #[test]
    fn marks_are_found_by_their_origin() {
        let mut marks = Marks::new();
        marks.group("W1", |m| {
            m.circle(P::new(1.0, 2.0), 3.0, Some(Tone::Ink), None);
            m.group("inner", |m| m.text(TextMark::new(P::default(), "a", 10.0, Tone::Ink)));
        });
        marks.group("W2", |m| m.fill([P::default(); 3], Tone::New));
        assert_eq!(marks.origins().collect::<Vec<_>>(), ["W1", "inner", "W2"]);
        assert_eq!(marks.under("W1").0.len(), 4);
        assert_eq!(marks.under("inner").texts().count(), 1);
        assert_eq!(marks.under("W3"), Marks::new());
    }
}
