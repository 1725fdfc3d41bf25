//! Line glyphs of service points, drawn for this project in the manner of drafting symbols.
//!
//! Every glyph lives in the square from -1 to 1; y points to the service side.

use drawing::{Marks, P, Stroke, Tone};
use plan::element::ServiceKind;

use Part::{Dot, Line, Loop, Ring, Solid};

/// A piece of a glyph.
enum Part {
    Line(&'static [(f32, f32)]),
    Loop(&'static [(f32, f32)]),
    Solid(&'static [(f32, f32)]),
    /// Centre and radius of a circle that is stroked.
    Ring(f32, f32, f32),
    /// One that is filled.
    Dot(f32, f32, f32),
}

/// Two triangles that touch: the body of a valve.
const BOW: Part = Loop(&[(-1.0, -0.6), (-1.0, 0.6), (1.0, -0.6), (1.0, 0.6)]);
const BOX: Part = Loop(&[(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]);

fn parts(kind: ServiceKind) -> &'static [Part] {
    match kind {
        // A wheel valve, one half filled: the main.
        ServiceKind::MainWaterValve => &[
            BOW,
            Solid(&[(-1.0, -0.6), (-1.0, 0.6), (0.0, 0.0)]),
            Line(&[(0.0, 0.0), (0.0, 0.95)]),
            Line(&[(-0.55, 0.95), (0.55, 0.95)]),
        ],
        ServiceKind::FixtureValve => {
            &[BOW, Line(&[(0.0, 0.0), (0.0, 0.8)]), Line(&[(-0.3, 0.8), (0.3, 0.8)])]
        }
        // A plug valve: the plug in the middle.
        ServiceKind::GasValve => &[BOW, Dot(0.0, 0.0, 0.34)],
        // A blade on its shaft in a duct, with the lever outside.
        ServiceKind::Damper => &[
            Loop(&[(-1.0, -0.7), (1.0, -0.7), (1.0, 0.7), (-1.0, 0.7)]),
            Line(&[(-0.85, -0.5), (0.85, 0.5)]),
            Dot(0.0, 0.0, 0.17),
            Line(&[(0.0, 0.7), (0.0, 1.0), (0.4, 1.0)]),
        ],
        // A round plug with its square nut.
        ServiceKind::Cleanout => {
            &[Ring(0.0, 0.0, 0.95), Loop(&[(-0.4, -0.4), (0.4, -0.4), (0.4, 0.4), (-0.4, 0.4)])]
        }
        // A square frame with a round grate.
        ServiceKind::FloorDrain => &[
            BOX,
            Ring(0.0, 0.0, 0.72),
            Line(&[(-0.51, -0.51), (0.51, 0.51)]),
            Line(&[(-0.51, 0.51), (0.51, -0.51)]),
        ],
        // A pit with a pump that lifts.
        ServiceKind::Sump => &[
            Ring(0.0, 0.0, 1.0),
            Ring(0.0, 0.0, 0.66),
            Line(&[(0.0, -0.42), (0.0, 0.38)]),
            Line(&[(-0.24, 0.12), (0.0, 0.4), (0.24, 0.12)]),
        ],
        // A sealed lid with its bolts and the pipe through it.
        ServiceKind::Ejector => &[
            Ring(0.0, 0.0, 1.0),
            Ring(0.0, 0.0, 0.26),
            Dot(0.5, 0.5, 0.13),
            Dot(-0.5, 0.5, 0.13),
            Dot(0.5, -0.5, 0.13),
            Dot(-0.5, -0.5, 0.13),
        ],
        // An eight-sided box with its cables.
        ServiceKind::JunctionBox => &[
            Loop(&[
                (0.38, -0.92),
                (0.92, -0.38),
                (0.92, 0.38),
                (0.38, 0.92),
                (-0.38, 0.92),
                (-0.92, 0.38),
                (-0.92, -0.38),
                (-0.38, -0.92),
            ]),
            Dot(0.0, 0.0, 0.28),
            Line(&[(-0.92, 0.0), (0.92, 0.0)]),
        ],
        // A cabinet, half filled along its diagonal.
        ServiceKind::Panel => &[BOX, Solid(&[(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0)])],
        // An open knife blade between two contacts.
        ServiceKind::Disconnect => &[
            BOX,
            Dot(-0.55, -0.35, 0.17),
            Dot(0.55, -0.35, 0.17),
            Line(&[(-0.55, -0.35), (0.4, 0.55)]),
        ],
        // A cabinet with a flame; the double line is the service side.
        ServiceKind::Furnace => &[
            BOX,
            Line(&[(-1.0, 0.84), (1.0, 0.84)]),
            Loop(&[
                (0.02, 0.55),
                (-0.2, 0.2),
                (-0.38, -0.1),
                (-0.3, -0.42),
                (0.0, -0.55),
                (0.3, -0.42),
                (0.38, -0.1),
                (0.3, 0.12),
                (0.14, 0.02),
            ]),
        ],
        // A tank with its flue, its two pipes and the burner door.
        ServiceKind::WaterHeater => &[
            Ring(0.0, 0.0, 1.0),
            Ring(0.0, 0.0, 0.28),
            Dot(-0.58, 0.0, 0.12),
            Dot(0.58, 0.0, 0.12),
            Line(&[(-0.4, 0.72), (0.4, 0.72)]),
        ],
        // A dial in a pipe.
        ServiceKind::WaterMeter => &[
            Ring(0.0, 0.0, 0.68),
            Line(&[(-1.0, 0.0), (-0.68, 0.0)]),
            Line(&[(0.68, 0.0), (1.0, 0.0)]),
            Line(&[(0.0, -0.3), (0.28, 0.34)]),
            Dot(0.0, -0.3, 0.12),
        ],
        // A case with two dials, hung from two pipes.
        ServiceKind::GasMeter => &[
            Loop(&[(-0.95, -0.55), (0.95, -0.55), (0.95, 0.9), (-0.95, 0.9)]),
            Ring(-0.42, 0.2, 0.26),
            Ring(0.42, 0.2, 0.26),
            Line(&[(-0.5, -0.55), (-0.5, -1.0)]),
            Line(&[(0.5, -0.55), (0.5, -1.0)]),
        ],
        // A pipe through the slab; three dots stand for the gas.
        ServiceKind::RadonPipe => &[
            Ring(0.0, 0.0, 1.0),
            Dot(0.0, 0.48, 0.2),
            Dot(-0.42, -0.26, 0.2),
            Dot(0.42, -0.26, 0.2),
        ],
        // Pleats in a frame.
        ServiceKind::AirFilter => &[
            BOX,
            Line(&[
                (-1.0, -0.8),
                (-0.67, 0.8),
                (-0.33, -0.8),
                (0.0, 0.8),
                (0.33, -0.8),
                (0.67, 0.8),
                (1.0, -0.8),
            ]),
        ],
        // Half a valve and a spout.
        ServiceKind::HoseBibValve => &[
            Loop(&[(-0.95, -0.55), (-0.95, 0.55), (0.0, 0.0)]),
            Line(&[(0.0, 0.0), (0.6, 0.0), (0.85, 0.25), (0.85, 0.8)]),
            Line(&[(0.6, 0.8), (1.0, 0.8)]),
            Line(&[(-0.45, 0.0), (-0.45, -0.9)]),
            Line(&[(-0.75, -0.9), (-0.15, -0.9)]),
        ],
        // A circle with two bars, as electricians draw it.
        ServiceKind::Receptacle => &[
            Ring(0.0, 0.2, 0.62),
            Line(&[(-0.22, -1.0), (-0.22, 1.0)]),
            Line(&[(0.22, -1.0), (0.22, 1.0)]),
        ],
        // A lever on a dot.
        ServiceKind::Switch => &[
            Dot(0.0, -0.6, 0.22),
            Line(&[(0.0, -0.6), (0.0, 0.9), (0.55, 0.9)]),
            Line(&[(-0.5, -1.0), (0.5, -1.0)]),
        ],
        // A circle with four rays.
        ServiceKind::Light => &[
            Ring(0.0, 0.0, 0.55),
            Line(&[(-1.0, 0.0), (-0.55, 0.0)]),
            Line(&[(0.55, 0.0), (1.0, 0.0)]),
            Line(&[(0.0, -1.0), (0.0, -0.55)]),
            Line(&[(0.0, 0.55), (0.0, 1.0)]),
        ],
        // A disc that sounds: rings round a dot.
        ServiceKind::SmokeAlarm => &[Ring(0.0, 0.0, 1.0), Ring(0.0, 0.0, 0.6), Dot(0.0, 0.0, 0.24)],
        // The same with the two atoms of the gas.
        ServiceKind::CoAlarm => &[Ring(0.0, 0.0, 1.0), Dot(-0.3, 0.0, 0.26), Dot(0.36, 0.0, 0.34)],
        // Four blades in a frame.
        ServiceKind::ExhaustFan => &[
            BOX,
            Line(&[(0.0, 0.0), (0.75, 0.3), (0.3, 0.75), (0.0, 0.0)]),
            Line(&[(0.0, 0.0), (-0.75, -0.3), (-0.3, -0.75), (0.0, 0.0)]),
            Line(&[(0.0, 0.0), (-0.3, 0.75), (-0.75, 0.3), (0.0, 0.0)]),
            Line(&[(0.0, 0.0), (0.3, -0.75), (0.75, -0.3), (0.0, 0.0)]),
        ],
        // A valve whose seat is set by a spring: the bent stem.
        ServiceKind::PressureReducer => &[
            BOW,
            Line(&[(0.0, 0.0), (0.0, 0.35), (-0.3, 0.5), (0.3, 0.7), (0.0, 0.85), (0.0, 1.0)]),
        ],
        // Two flaps one after the other.
        ServiceKind::BackflowPreventer => &[
            Loop(&[(-1.0, -0.5), (1.0, -0.5), (1.0, 0.5), (-1.0, 0.5)]),
            Line(&[(-0.7, -0.5), (-0.1, 0.5)]),
            Line(&[(0.1, -0.5), (0.7, 0.5)]),
        ],
        // A cap on a vent, with an arrow of air that goes in.
        ServiceKind::AirAdmittanceValve => &[
            Line(&[(-0.6, 1.0), (-0.6, 0.2), (0.6, 0.2), (0.6, 1.0)]),
            Line(&[(0.0, 0.9), (0.0, -0.8)]),
            Line(&[(-0.3, -0.4), (0.0, -0.8), (0.3, -0.4)]),
        ],
        // A flap that hangs in a pipe under its cover.
        ServiceKind::BackwaterValve => &[
            BOX,
            Line(&[(-0.8, 0.0), (0.8, 0.0)]),
            Line(&[(0.2, -0.6), (-0.25, 0.6)]),
            Dot(0.2, -0.6, 0.16),
        ],
        // A hose that hangs into a pipe.
        ServiceKind::Standpipe => {
            &[Ring(0.0, -0.3, 0.6), Line(&[(0.0, -0.3), (0.0, 0.7), (0.3, 0.95), (0.8, 0.95)])]
        }
        // Blades across a frame, air out of it.
        ServiceKind::SupplyRegister => &[
            Loop(&[(-1.0, -0.6), (1.0, -0.6), (1.0, 0.2), (-1.0, 0.2)]),
            Line(&[(-0.5, -0.6), (-0.5, 0.2)]),
            Line(&[(0.0, -0.6), (0.0, 0.9)]),
            Line(&[(0.5, -0.6), (0.5, 0.2)]),
            Line(&[(-0.25, 0.6), (0.0, 0.9), (0.25, 0.6)]),
        ],
        // The same with a diagonal for the air that goes back.
        ServiceKind::ReturnGrille => &[
            Loop(&[(-1.0, -0.5), (1.0, -0.5), (1.0, 0.5), (-1.0, 0.5)]),
            Line(&[(-1.0, -0.5), (1.0, 0.5)]),
        ],
        // A drum and its door.
        ServiceKind::ClothesDryer => {
            &[BOX, Ring(0.0, 0.0, 0.7), Ring(0.0, 0.0, 0.4), Line(&[(-1.0, 0.84), (1.0, 0.84)])]
        }
    }
}

/// Whether the glyph is the thing's own outline, drawn at its true size.
pub(crate) fn is_true_size(kind: ServiceKind) -> bool {
    matches!(
        kind,
        ServiceKind::Panel
            | ServiceKind::Furnace
            | ServiceKind::WaterHeater
            | ServiceKind::Sump
            | ServiceKind::Ejector
            | ServiceKind::AirFilter
            | ServiceKind::FloorDrain
            | ServiceKind::GasMeter
            | ServiceKind::Disconnect
            | ServiceKind::BackwaterValve
            | ServiceKind::ClothesDryer
    )
}

/// Where a glyph stands: its centre, half its width and depth in points, and the unit vectors on the
/// screen to its right and to its service side.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Pose {
    pub centre: P,
    pub half: (f32, f32),
    pub right: (f32, f32),
    pub out: (f32, f32),
}

impl Pose {
    fn at(&self, (x, y): (f32, f32)) -> P {
        let (u, v) = (x * self.half.0, y * self.half.1);
        self.centre.by(self.right.0 * u + self.out.0 * v, self.right.1 * u + self.out.1 * v)
    }

    pub fn corners(&self) -> [P; 4] {
        [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|c| self.at(c))
    }
}

/// Draws a glyph in a pose.
pub(crate) fn put(kind: ServiceKind, pose: &Pose, tone: Tone, weight: f32, marks: &mut Marks) {
    let stroke = Stroke::solid(tone, weight);
    let reach = pose.half.0.min(pose.half.1);
    for part in parts(kind) {
        let map = |points: &[(f32, f32)]| points.iter().map(|p| pose.at(*p)).collect::<Vec<_>>();
        match part {
            Line(points) => marks.line(map(points), stroke),
            Loop(points) => marks.outline(map(points), stroke),
            Solid(points) => marks.fill(map(points), tone),
            Ring(x, y, r) => marks.circle(pose.at((*x, *y)), r * reach, None, Some(stroke)),
            Dot(x, y, r) => marks.circle(pose.at((*x, *y)), (r * reach).max(0.8), Some(tone), None),
        }
    }
}

/// A kind's glyph upright, `size` points wide, for panes and legends.
pub fn glyph(kind: ServiceKind, centre: P, size: f32) -> Marks {
    let half = if kind == ServiceKind::Panel { 0.4 } else { 1.0 } * size / 2.0;
    let pose = Pose { centre, half: (size / 2.0, half), right: (1.0, 0.0), out: (0.0, -1.0) };
    let mut marks = Marks::new();
    put(kind, &pose, Tone::Ink, 1.2, &mut marks);
    marks
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use drawing::dump;

    use super::*;

    #[test]
    fn every_kind_has_a_glyph_of_its_own_that_stays_in_its_square() {
        let mut seen = BTreeSet::new();
        for kind in ServiceKind::ALL {
            let text = dump(&glyph(kind, P::default(), 20.0));
            assert!(text.lines().count() >= 2, "{kind:?}");
            assert!(seen.insert(text), "{kind:?} looks like another");
            let inside = |(x, y): (f32, f32), r: f32| x.abs() + r <= 1.01 && y.abs() + r <= 1.01;
            for part in parts(kind) {
                match part {
                    Line(points) | Loop(points) | Solid(points) => {
                        assert!(points.iter().all(|p| inside(*p, 0.0)), "{kind:?}");
                    }
                    Ring(x, y, r) | Dot(x, y, r) => assert!(inside((*x, *y), *r), "{kind:?}"),
                }
            }
        }
    }
}
