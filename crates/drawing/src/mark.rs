//! Marks and lists of marks.

use crate::{Tone, text_width};

/// A point of the target: screen points or 1/72 in; y down.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct P {
    pub x: f32,
    pub y: f32,
}

/// A line style: width in points, and on-off lengths in points when dashed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    pub tone: Tone,
    pub width: f32,
    pub dash: Option<(f32, f32)>,
}

/// Which point of the text stands at its position.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// Weight of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    Plain,
    Bold,
}

/// A line of text.
#[derive(Clone, Debug, PartialEq)]
pub struct TextMark {
    /// On the baseline's middle height: the text is centred vertically on this point.
    pub at: P,
    pub text: String,
    /// Size in points.
    pub size: f32,
    pub style: Style,
    pub anchor: Anchor,
    /// Counter-clockwise, degrees.
    pub angle: f32,
    pub tone: Tone,
    /// A box of this tone is put behind it: [`TextMark::plate_corners`].
    pub plate: Option<Tone>,
}

/// What a run of marks shows, so that a click, a test or a finding can find it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Origin(pub String);

/// One mark.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A filled region: outer rings and holes by the even-odd rule; `alpha` 0 to 1.
    Fill {
        rings: Vec<Vec<P>>,
        tone: Tone,
        alpha: f32,
    },
    /// An open or closed line.
    Line {
        points: Vec<P>,
        closed: bool,
        stroke: Stroke,
    },
    /// Many separate straight lines in one style: a grid, a hatch, the ticks of a tape.
    Segments {
        pairs: Vec<(P, P)>,
        stroke: Stroke,
    },
    /// A full circle, stroked and filled as given.
    Circle {
        centre: P,
        radius: f32,
        fill: Option<Tone>,
        stroke: Option<Stroke>,
    },
    Text(TextMark),
    /// The marks up to the matching `End` show this.
    Begin(Origin),
    End,
}

/// A list of marks, painted in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks(pub Vec<Mark>);

impl P {
    pub const fn new(x: f32, y: f32) -> P {
        P { x, y }
    }

    /// The point moved by `dx`, `dy`.
    pub fn by(self, dx: f32, dy: f32) -> P {
        P { x: self.x + dx, y: self.y + dy }
    }

    /// The point `t` of the way to `other`: 0 gives `self`, 1 gives `other`.
    pub fn towards(self, other: P, t: f32) -> P {
        P { x: self.x + (other.x - self.x) * t, y: self.y + (other.y - self.y) * t }
    }

    pub fn distance(self, other: P) -> f32 {
        let (dx, dy) = (other.x - self.x, other.y - self.y);
        (dx * dx + dy * dy).sqrt()
    }
}

impl Stroke {
    /// An unbroken line.
    pub const fn solid(tone: Tone, width: f32) -> Stroke {
        Stroke { tone, width, dash: None }
    }

    /// A broken line: `on` points drawn, `off` points left.
    pub const fn dashed(tone: Tone, width: f32, on: f32, off: f32) -> Stroke {
        Stroke { tone, width, dash: Some((on, off)) }
    }
}

impl TextMark {
    /// Height of the box of a line of text, in multiples of its size.
    pub const LINE: f32 = 1.2;
    /// How far a plate stands out beyond the text's box, across and up, in points.
    pub const PLATE_PAD: (f32, f32) = (3.0, 0.5);

    /// Plain, level text centred on `at`.
    pub fn new(at: P, text: impl Into<String>, size: f32, tone: Tone) -> TextMark {
        TextMark {
            at,
            text: text.into(),
            size,
            style: Style::Plain,
            anchor: Anchor::Middle,
            angle: 0.0,
            tone,
            plate: None,
        }
    }

    pub fn bold(self) -> TextMark {
        TextMark { style: Style::Bold, ..self }
    }

    pub fn anchor(self, anchor: Anchor) -> TextMark {
        TextMark { anchor, ..self }
    }

    /// Turned counter-clockwise by `degrees`.
    pub fn angle(self, degrees: f32) -> TextMark {
        TextMark { angle: degrees, ..self }
    }

    pub fn plate(self, tone: Tone) -> TextMark {
        TextMark { plate: Some(tone), ..self }
    }

    /// Width of the text in points.
    pub fn width(&self) -> f32 {
        text_width(&self.text, self.size, self.style)
    }

    /// The corners of the text's box: left top, right top, right bottom, left bottom as one reads it.
    pub fn corners(&self) -> [P; 4] {
        self.padded(0.0, 0.0)
    }

    /// The corners of the plate behind the text.
    pub fn plate_corners(&self) -> [P; 4] {
        self.padded(Self::PLATE_PAD.0, Self::PLATE_PAD.1)
    }

    fn padded(&self, across: f32, up: f32) -> [P; 4] {
        let width = self.width();
        let left = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -width / 2.0,
            Anchor::End => -width,
        };
        let half = self.size * Self::LINE / 2.0 + up;
        // The target's y points down, so a counter-clockwise turn has the sine's sign reversed.
        let (sin, cos) = libm::sincosf(-self.angle.to_radians());
        [
            (left - across, -half),
            (left + width + across, -half),
            (left + width + across, half),
            (left - across, half),
        ]
        .map(|(x, y)| self.at.by(x * cos - y * sin, x * sin + y * cos))
    }
}
