//! Findings on the plan: badges, breached keep-clears, and the places of those that are lit.

use drawing::{Marks, P, Slope, Stroke, TextMark, Tone, hatch, size};
use geometry::{Pt, Seg};
use measure::Precision;
use plan::Body;
use rules::{Finding, Place, Quantity, Severity};

use crate::badge::badge;
use crate::labels::{NOBODY, Placer, overlap, square};
use crate::outlines::{middle, outline};
use crate::picture::Canvas;
use crate::services;

/// Height of a badge in points.
const BADGE: f32 = 17.0;

/// The tone of a severity.
pub(crate) fn tone(severity: Severity) -> Tone {
    match severity {
        Severity::Correction => Tone::Stop,
        Severity::Verify => Tone::Verify,
        Severity::Advice => Tone::Advice,
    }
}

/// The tint of a severity.
pub(crate) fn fill(severity: Severity) -> Tone {
    match severity {
        Severity::Correction => Tone::StopFill,
        Severity::Verify => Tone::VerifyFill,
        Severity::Advice => Tone::AdviceFill,
    }
}

/// A finding's origin: `finding panel-depth S3 W14`.
pub(crate) fn origin(canvas: &Canvas<'_>, finding: &Finding) -> String {
    let mut origin = format!("finding {}", finding.rule);
    for id in &finding.elements {
        origin.push(' ');
        origin.push_str(&canvas.name(*id));
    }
    origin
}

/// Where the badges stand, in the order of the findings. Worked out before words are placed.
pub(crate) fn badges(canvas: &Canvas<'_>, placer: &mut Placer) -> Vec<(usize, P)> {
    if !canvas.scene.show.findings {
        return Vec::new();
    }
    let mut placed: Vec<(usize, P)> = Vec::new();
    let step = BADGE + 2.0;
    for (index, finding) in canvas.scene.findings.iter().enumerate() {
        let lit = canvas.scene.lit.contains(&index);
        if finding.set_aside.is_some() && !lit {
            continue;
        }
        let Some(at) = anchor(canvas, finding) else { continue };
        let (w, h) = canvas.view.size;
        if at.x < -BADGE || at.y < -BADGE || at.x > w + BADGE || at.y > h + BADGE {
            continue;
        }
        // Badges at one place stand in a row, then in further rows.
        let free = |p: &P| placed.iter().all(|(_, q)| !overlap(&badge_box(*p), &badge_box(*q)));
        let rows = (0..12)
            .flat_map(|row| [0.0, 1.0, -1.0, 2.0, -2.0, 3.0, -3.0].map(move |n| (n, row as f32)));
        let at = rows.map(|(n, row)| at.by(n * step, row * step)).find(free).unwrap_or(at);
        placer.block(badge_box(at), NOBODY);
        placed.push((index, at));
    }
    placed
}

/// The box that a badge takes.
pub(crate) fn badge_box(at: P) -> [P; 4] {
    square(at, BADGE / 2.0 + 1.0)
}

/// The place of a finding's badge: its first place, else its first element.
fn anchor(canvas: &Canvas<'_>, finding: &Finding) -> Option<P> {
    let facts = canvas.scene.facts;
    let at = match finding.places.first().and_then(|place| place.on(facts)).as_deref() {
        Some(Place::Point(p)) => Some(*p),
        Some(Place::Span(a, b)) => Some(a.midway(*b)),
        Some(Place::Area(ring)) => middle(ring),
        Some(Place::Breach { keep_clear, overlap }) => {
            overlap.first().and_then(|r| middle(r)).or_else(|| middle(keep_clear))
        }
        _ => None,
    };
    at.map(|p| canvas.view.screen_from_plan(p)).or_else(|| {
        let element = finding.elements.iter().find_map(|id| facts.plan.get(*id))?;
        match &element.body {
            Body::Service(s) => Some(services::anchor(canvas, s)),
            body => middle(&outline(facts, element))
                .or_else(|| body.points().first().copied())
                .map(|p| canvas.view.screen_from_plan(p)),
        }
    })
}

/// The places: what is breached always, the rest when lit.
pub(crate) fn places(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    if !canvas.scene.show.findings {
        return;
    }
    for (index, finding) in canvas.scene.findings.iter().enumerate() {
        let lit = canvas.scene.lit.contains(&index);
        if finding.set_aside.is_some() && !lit {
            continue;
        }
        marks.group(origin(canvas, finding), |m| {
            for place in finding.places_on(canvas.scene.facts) {
                one(canvas, finding, &place, lit, placer, m);
            }
        });
    }
}

fn one(
    canvas: &Canvas<'_>,
    finding: &Finding,
    place: &Place,
    lit: bool,
    placer: &mut Placer,
    m: &mut Marks,
) {
    let tone = tone(finding.severity);
    let strong = Stroke::solid(tone, 2.0);
    match place {
        Place::Point(p) if lit && canvas.sees(&[*p]) => {
            m.circle(canvas.view.screen_from_plan(*p), BADGE * 0.85, None, Some(strong));
        }
        Place::Span(a, b) if lit && canvas.sees(&[*a, *b]) => {
            span(canvas, finding, *a, *b, placer, m)
        }
        Place::Area(ring) if lit && canvas.sees(ring) => area(canvas, ring, finding.severity, m),
        Place::Breach { keep_clear, overlap } if canvas.sees(keep_clear) => {
            for part in overlap {
                let ring = canvas.view.ring(part);
                if !canvas.scene.hatched {
                    m.tint(ring.clone(), fill(finding.severity), 0.8);
                }
                let lines = hatch(&[&ring], Slope::Rising, 2.5, canvas.phase());
                m.segments(lines, Stroke::solid(tone, 0.9));
                if let Ok(quad) = <[P; 4]>::try_from(ring.clone()) {
                    placer.avoid(quad, NOBODY);
                }
                m.outline(ring, Stroke::solid(tone, 1.4));
            }
            if lit {
                m.outline(canvas.view.ring(keep_clear), strong);
            }
        }
        _ => {}
    }
}

fn area(canvas: &Canvas<'_>, ring: &[Pt], severity: Severity, m: &mut Marks) {
    let tone = tone(severity);
    let ring = canvas.view.ring(ring);
    if canvas.scene.hatched {
        let lines = hatch(&[&ring], Slope::Falling, 7.0, canvas.phase());
        m.segments(lines, Stroke::solid(tone, 0.5));
    } else {
        m.tint(ring.clone(), fill(severity), 0.45);
    }
    m.outline(ring, Stroke::solid(tone, 2.0));
}

/// A double arrow across a gap with its width.
fn span(canvas: &Canvas<'_>, finding: &Finding, a: Pt, b: Pt, placer: &mut Placer, m: &mut Marks) {
    let tone = tone(finding.severity);
    let (p, q) = (canvas.view.screen_from_plan(a), canvas.view.screen_from_plan(b));
    let length = p.distance(q);
    m.line([p, q], Stroke::solid(tone, 2.0));
    if length > 1.0 {
        let (ux, uy) = ((q.x - p.x) / length, (q.y - p.y) / length);
        let reach = 8.0f32.min(length / 2.0);
        for (tip, s) in [(p, 1.0), (q, -1.0)] {
            let base = tip.by(ux * reach * s, uy * reach * s);
            let half = reach * 0.45;
            let wings = [tip, base.by(-uy * half, ux * half), base.by(uy * half, -ux * half)];
            m.fill(wings, tone);
        }
    }
    let width = match &finding.measured {
        Some(Quantity::Len(len)) => *len,
        _ => Seg::new(a, b).len(),
    };
    let figure = canvas.scene.system.inches(width, Precision::Floor);
    let middle = p.towards(q, 0.5);
    let text =
        |at: P| TextMark::new(at, figure.clone(), size::BODY, tone).bold().plate(Tone::Paper);
    // Beside the badge, which stands on the middle.
    let reach = text(middle).width() / 2.0 + BADGE / 2.0 + 8.0;
    let up = BADGE / 2.0 + 14.0;
    let places = [
        (reach, 0.0),
        (-reach, 0.0),
        (0.0, -up),
        (0.0, up),
        (reach, up),
        (-reach, -up),
        (reach * 1.6, 0.0),
        (-reach * 1.6, 0.0),
        (0.0, -up * 2.0),
        (0.0, up * 2.0),
    ];
    let places = places.map(|(dx, dy)| text(middle.by(dx, dy)));
    // Where nothing is free the pane still tells the figure.
    if let Some(text) = places.into_iter().find(|t| placer.take(t.plate_corners(), NOBODY)) {
        m.outline(text.plate_corners(), Stroke::solid(tone, 1.0));
        m.text(text);
    }
}

pub(crate) fn draw_badges(canvas: &Canvas<'_>, placed: &[(usize, P)], marks: &mut Marks) {
    for (index, at) in placed {
        let finding = &canvas.scene.findings[*index];
        let lit = canvas.scene.lit.contains(index);
        marks.group(origin(canvas, finding), |m| {
            if lit {
                let ring = Stroke::solid(tone(finding.severity), 1.5);
                m.circle(*at, BADGE * 0.82, Some(Tone::Paper), Some(ring));
            }
            m.append(badge(finding.severity, *at, BADGE));
        });
    }
}
