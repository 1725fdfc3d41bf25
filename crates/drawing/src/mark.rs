//! Marks and lists of marks.

use crate::Tone;

/// A point of the target: screen points or 1/72 in; y down.
#[derive(Clone, Copy, Debug, PartialEq)]
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
    /// A box of this tone is put behind it.
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
