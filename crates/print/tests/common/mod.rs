//! What the tests share: a drawing with every kind of mark, and a reader of content streams.
#![allow(dead_code, reason = "every test file uses a part of it")]

use drawing::{Anchor, Mark, Marks, Origin, P, Stroke, TextMark, Tone};
use lopdf::content::{Content, Operation};
use lopdf::{Document, Object};

/// Every kind of mark with every part of it, on 500 by 500 points.
pub fn all_kinds() -> Marks {
    let mut m = Marks::new();
    let ring = |a: f32, b: f32| vec![P::new(a, a), P::new(b, a), P::new(b, b), P::new(a, b)];
    m.0.push(Mark::Begin(Origin("kinds".to_owned())));
    let rings = vec![ring(20.0, 120.0), ring(50.0, 90.0)];
    m.0.push(Mark::Fill { rings, tone: Tone::Ink, alpha: 1.0 });
    m.0.push(Mark::Fill { rings: vec![ring(130.0, 160.0)], tone: Tone::Ink, alpha: 0.5 });
    let points = vec![P::new(200.0, 20.0), P::new(300.0, 20.0), P::new(300.0, 100.0)];
    m.0.push(Mark::Line { points, closed: false, stroke: Stroke::solid(Tone::Ink, 4.0) });
    let points = ring(320.0, 400.0);
    let stroke = Stroke::dashed(Tone::Ink, 4.0, 20.0, 10.0);
    m.0.push(Mark::Line { points, closed: true, stroke });
    let pairs = (0..5)
        .map(|i| (P::new(20.0, 200.0 + 20.0 * i as f32), P::new(120.0, 200.0 + 20.0 * i as f32)))
        .collect();
    m.0.push(Mark::Segments { pairs, stroke: Stroke::solid(Tone::Ink, 4.0) });
    let stroke = Some(Stroke::solid(Tone::Grid, 6.0));
    let (centre, radius) = (P::new(200.0, 250.0), 30.0);
    m.0.push(Mark::Circle { centre, radius, fill: Some(Tone::Ink), stroke });
    let text = TextMark::new(P::new(200.0, 400.0), "HHHH 12′ 6½″", 20.0, Tone::Ink);
    m.0.push(Mark::Text(text.clone().plate(Tone::Grid)));
    m.0.push(Mark::Text(text.bold().anchor(Anchor::End).angle(90.0)));
    m.0.push(Mark::End);
    m
}

/// Six numbers of a PDF matrix: `a b c d e f`.
#[derive(Clone, Copy, Debug)]
pub struct Matrix([f32; 6]);

/// The matrix that changes nothing.
pub const SAME: Matrix = Matrix([1.0, 0.0, 0.0, 1.0, 0.0, 0.0]);

impl Matrix {
    /// First this one, then `next`.
    pub fn then(self, next: Matrix) -> Matrix {
        let ([a, b, c, d, e, f], [p, q, r, s, t, u]) = (self.0, next.0);
        Matrix([
            a * p + b * r,
            a * q + b * s,
            c * p + d * r,
            c * q + d * s,
            e * p + f * r + t,
            e * q + f * s + u,
        ])
    }

    pub fn apply(self, x: f32, y: f32) -> (f32, f32) {
        let [a, b, c, d, e, f] = self.0;
        (a * x + c * y + e, b * x + d * y + f)
    }

    /// How many times larger an area gets.
    pub fn area(self) -> f32 {
        let [a, b, c, d, ..] = self.0;
        (a * d - b * c).abs()
    }
}

pub fn matrix(numbers: &[f32]) -> Matrix {
    Matrix(numbers.try_into().expect("six numbers"))
}

/// The numbers among the objects.
pub fn reals(objects: &[Object]) -> Vec<f32> {
    objects.iter().filter_map(|o| o.as_float().ok()).collect()
}

/// The operations of a page, each with the transformation that is current for it.
pub fn operations(file: &Document, page: u32) -> Vec<(Matrix, Operation)> {
    let bytes = file.get_page_content(file.get_pages()[&page]);
    let (mut now, mut stack, mut out) = (SAME, Vec::new(), Vec::new());
    for op in Content::decode(&bytes).unwrap().operations {
        match op.operator.as_str() {
            "q" => stack.push(now),
            "Q" => now = stack.pop().expect("a saved state"),
            "cm" => now = matrix(&reals(&op.operands)).then(now),
            _ => {}
        }
        out.push((now, op));
    }
    assert!(stack.is_empty(), "every saved state is restored");
    out
}
