//! The painter backend of the drawing: one match, no layout decisions.

use drawing::{
    Anchor, Mark, Marks, P, Palette, Stroke, Style, TextMark, Tone, fonts::BASELINE_DROP,
};
use egui::epaint::{CircleShape, Mesh, PathShape, TextShape};
use egui::{Color32, FontFamily, FontId, Painter, Pos2, Rect, Shape, Vec2, pos2};
use sheets::Sheet;

use super::theme::{bold, colour};

/// From the top of a line of DejaVu Sans to its baseline, in multiples of the size (its `hhea` ascent).
const ASCENT: f32 = 0.928;

/// Paints marks whose origin lies at `origin` on the screen.
pub fn marks(painter: &Painter, marks: &Marks, palette: Palette, origin: Pos2) {
    let clip = painter.clip_rect();
    let mut pen = Pen { painter, palette, origin: origin.to_vec2(), clip, shapes: Vec::new() };
    pen.shapes.reserve(marks.0.len());
    for mark in &marks.0 {
        match mark {
            Mark::Fill { rings, tone, alpha } => pen.fill(rings, *tone, *alpha),
            Mark::Line { points, closed, stroke } => pen.line(points, *closed, *stroke),
            Mark::Segments { pairs, stroke } => {
                for (a, b) in pairs {
                    pen.segment(*a, *b, *stroke);
                }
            }
            Mark::Circle { centre, radius, fill, stroke } => {
                pen.circle(*centre, *radius, *fill, *stroke);
            }
            Mark::Text(text) => pen.write(text),
            Mark::Begin(_) | Mark::End => {}
        }
    }
    painter.extend(pen.shapes);
}

/// Paints a sheet of paper as it is printed, as large as a box that has its proportions.
pub fn sheet(painter: &Painter, sheet: &Sheet, rect: Rect) {
    painter.rect_filled(rect, 0.0, Color32::WHITE);
    let scale = rect.width() / sheet.size.0;
    let printed = sheet.marks.clone().placed(scale, P::default());
    marks(painter, &printed, Palette::Print, rect.min);
}

/// Turns marks into egui's shapes.
struct Pen<'a> {
    painter: &'a Painter,
    palette: Palette,
    origin: Vec2,
    clip: Rect,
    shapes: Vec<Shape>,
}

impl Pen<'_> {
    fn at(&self, p: P) -> Pos2 {
        pos2(p.x, p.y) + self.origin
    }

    fn stroke(&self, stroke: Stroke) -> egui::Stroke {
        egui::Stroke::new(stroke.width, colour(self.palette, stroke.tone))
    }

    fn fill(&mut self, rings: &[Vec<P>], tone: Tone, alpha: f32) {
        let colour = colour(self.palette, tone).gamma_multiply(alpha);
        match rings {
            [ring] if is_convex(ring) => {
                let points: Vec<Pos2> = ring.iter().map(|p| self.at(*p)).collect();
                if self.clip.intersects(Rect::from_points(&points)) {
                    let path = PathShape::convex_polygon(points, colour, egui::Stroke::NONE);
                    self.shapes.push(Shape::Path(path));
                }
            }
            _ => {
                let mesh = mesh(rings, self.origin, colour);
                if !mesh.is_empty() {
                    self.shapes.push(Shape::mesh(mesh));
                }
            }
        }
    }

    fn circle(&mut self, centre: P, radius: f32, fill: Option<Tone>, stroke: Option<Stroke>) {
        let center = self.at(centre);
        if !self.clip.intersects(Rect::from_center_size(center, Vec2::splat(radius * 2.0 + 8.0))) {
            return;
        }
        let fill = fill.map_or(Color32::TRANSPARENT, |tone| colour(self.palette, tone));
        let stroke = stroke.map_or(egui::Stroke::NONE, |s| self.stroke(s));
        self.shapes.push(Shape::Circle(CircleShape { center, radius, fill, stroke }));
    }

    fn line(&mut self, points: &[P], closed: bool, stroke: Stroke) {
        let mut path: Vec<Pos2> = points.iter().map(|p| self.at(*p)).collect();
        let near = self.clip.expand(stroke.width + 2.0);
        if !near.intersects(Rect::from_points(&path)) {
            return;
        }
        match stroke.dash {
            None if closed => self.shapes.push(Shape::closed_line(path, self.stroke(stroke))),
            None => self.shapes.push(Shape::line(path, self.stroke(stroke))),
            Some((on, off)) => {
                if closed && let Some(first) = path.first().copied() {
                    path.push(first);
                }
                let pen = self.stroke(stroke);
                dashes(&mut self.shapes, &path, on, off, pen, near);
            }
        }
    }

    fn segment(&mut self, a: P, b: P, stroke: Stroke) {
        if stroke.dash.is_some() {
            self.line(&[a, b], false, stroke);
            return;
        }
        let near = self.clip.expand(stroke.width + 2.0);
        let (a, b) = (self.at(a), self.at(b));
        let Some((from, to)) = inside(a, b - a, near) else { return };
        let (mut a, mut b) = (a.lerp(b, from), a.lerp(b, to));
        // Thin level and upright lines fall on whole pixels, so that a grid is even.
        if stroke.width <= 1.0 {
            if a.x == b.x {
                let x = self.painter.round_to_pixel_center(a.x);
                (a.x, b.x) = (x, x);
            }
            if a.y == b.y {
                let y = self.painter.round_to_pixel_center(a.y);
                (a.y, b.y) = (y, y);
            }
        }
        self.shapes.push(Shape::line_segment([a, b], self.stroke(stroke)));
    }

    fn write(&mut self, text: &TextMark) {
        let plate = text.plate_corners().map(|p| self.at(p));
        if !self.clip.intersects(Rect::from_points(&plate)) {
            return;
        }
        if let Some(tone) = text.plate {
            let fill = colour(self.palette, tone);
            let path = PathShape::convex_polygon(plate.to_vec(), fill, egui::Stroke::NONE);
            self.shapes.push(Shape::Path(path));
        }
        let font = match text.style {
            Style::Plain => FontId::new(text.size, FontFamily::Proportional),
            Style::Bold => bold(text.size),
        };
        let ink = colour(self.palette, text.tone);
        let galley = self.painter.layout_no_wrap(text.text.clone(), font, ink);
        let left = match text.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -galley.size().x / 2.0,
            Anchor::End => -galley.size().x,
        };
        let top = (BASELINE_DROP - ASCENT) * text.size;
        // The screen's y points down, so a counter-clockwise angle is a negative one.
        let angle = -text.angle.to_radians();
        let offset = egui::emath::Rot2::from_angle(angle) * Vec2::new(left, top);
        let mut pos = self.at(text.at) + offset;
        if text.angle == 0.0 {
            let pixels = self.painter.pixels_per_point();
            pos = pos2((pos.x * pixels).round() / pixels, (pos.y * pixels).round() / pixels);
        }
        self.shapes.push(Shape::Text(TextShape::new(pos, galley, ink).with_angle(angle)));
    }
}

/// A region with any corners and holes as triangles.
fn mesh(rings: &[Vec<P>], origin: Vec2, colour: Color32) -> Mesh {
    let rings: Vec<Vec<[f64; 2]>> = rings
        .iter()
        .map(|ring| ring.iter().map(|p| [f64::from(p.x), f64::from(p.y)]).collect())
        .collect();
    let (corners, triangles) = geometry::triangulate(&rings);
    let mut mesh = Mesh::default();
    for [x, y] in corners {
        mesh.colored_vertex(pos2(x as f32, y as f32) + origin, colour);
    }
    for [a, b, c] in triangles {
        mesh.add_triangle(a, b, c);
    }
    mesh
}

/// Whether a ring turns one way only. Rings that wind more than once are not drawn by this program.
fn is_convex(ring: &[P]) -> bool {
    let (mut left, mut right) = (false, false);
    for i in 0..ring.len() {
        let [a, b, c] = [0, 1, 2].map(|k| ring[(i + k) % ring.len()]);
        let cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
        left |= cross > 1e-3;
        right |= cross < -1e-3;
    }
    !(left && right)
}

/// Dashes along a path; those out of sight are counted but not drawn.
fn dashes(
    shapes: &mut Vec<Shape>,
    path: &[Pos2],
    on: f32,
    off: f32,
    pen: egui::Stroke,
    near: Rect,
) {
    let period = on + off;
    if period <= 0.0 {
        return;
    }
    let mut walked = 0.0;
    for pair in path.windows(2) {
        let (a, along) = (pair[0], pair[1] - pair[0]);
        let length = along.length();
        if let Some((from, to)) = inside(a, along, near) {
            let seen_from = walked + from * length;
            let seen_to = walked + to * length;
            let mut dash = (seen_from / period).floor() * period;
            while dash < seen_to {
                let start = (dash.max(seen_from) - walked) / length;
                let end = ((dash + on).min(seen_to) - walked) / length;
                if end > start {
                    shapes.push(Shape::line_segment([a + along * start, a + along * end], pen));
                }
                dash += period;
            }
        }
        walked += length;
    }
}

/// The stretch of a segment inside a box, as fractions of its length (Liang and Barsky, 1984).
fn inside(a: Pos2, along: Vec2, clip: Rect) -> Option<(f32, f32)> {
    let (mut from, mut to) = (0.0f32, 1.0f32);
    for (start, step, low, high) in
        [(a.x, along.x, clip.min.x, clip.max.x), (a.y, along.y, clip.min.y, clip.max.y)]
    {
        if step == 0.0 {
            if start < low || start > high {
                return None;
            }
            continue;
        }
        let (t0, t1) = ((low - start) / step, (high - start) / step);
        from = from.max(t0.min(t1));
        to = to.min(t0.max(t1));
    }
    (from < to).then_some((from, to))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_segment_is_cut_to_what_is_seen() {
        let clip = Rect::from_min_max(pos2(0.0, 0.0), pos2(10.0, 10.0));
        let cut = inside(pos2(-10.0, 5.0), Vec2::new(40.0, 0.0), clip);
        assert_eq!(cut, Some((0.25, 0.5)));
        assert_eq!(inside(pos2(-10.0, 20.0), Vec2::new(40.0, 0.0), clip), None);
        assert_eq!(inside(pos2(2.0, 2.0), Vec2::new(3.0, 4.0), clip), Some((0.0, 1.0)));
    }

    #[test]
    fn dashes_keep_their_places_whatever_is_seen() {
        let path = [pos2(0.0, 0.0), pos2(1e6, 0.0)];
        let pen = egui::Stroke::new(1.0, Color32::BLACK);
        let seen = |from: f32, to: f32| {
            let clip = Rect::from_min_max(pos2(from, -1.0), pos2(to, 1.0));
            let mut shapes = Vec::new();
            dashes(&mut shapes, &path, 6.0, 4.0, pen, clip);
            shapes
        };
        assert_eq!(seen(0.0, 100.0).len(), 10);
        // A dash begins at every whole ten, so the stretch from 503 to 511 shows two.
        let shapes = seen(503.0, 511.0);
        let ends: Vec<(f32, f32)> = shapes
            .iter()
            .map(|s| match s {
                Shape::LineSegment { points, .. } => (points[0].x, points[1].x),
                _ => panic!("a dash is a segment"),
            })
            .collect();
        assert_eq!(ends.len(), 2);
        assert!((ends[0].0 - 503.0).abs() < 0.1 && (ends[0].1 - 506.0).abs() < 0.1, "{ends:?}");
        assert!((ends[1].0 - 510.0).abs() < 0.1 && (ends[1].1 - 511.0).abs() < 0.1, "{ends:?}");
    }

    #[test]
    fn only_convex_rings_are_filled_in_one_go() {
        let ring =
            |points: &[(f32, f32)]| points.iter().map(|&(x, y)| P::new(x, y)).collect::<Vec<_>>();
        assert!(is_convex(&ring(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)])));
        let l = ring(&[(0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (1.0, 1.0), (1.0, 4.0), (0.0, 4.0)]);
        assert!(!is_convex(&l));
        let mesh = mesh(&[l], Vec2::ZERO, Color32::BLACK);
        let area: f32 = mesh
            .triangles()
            .map(|t| t.map(|i| mesh.vertices[i as usize].pos))
            .map(|[a, b, c]| {
                let (u, v) = (b - a, c - a);
                (u.x * v.y - u.y * v.x).abs() / 2.0
            })
            .sum();
        assert!((area - 7.0).abs() < 0.01, "{area}");
    }
}
