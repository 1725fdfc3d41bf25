//! The whole picture, in the order of painting.

use drawing::{Marks, P, Slope, Stroke, Tone, hatch};
use geometry::{Bounds, Pt};
use measure::Len;
use plan::{Body, ElementId};

use crate::blade::FigureBox;
use crate::labels::{NOBODY, Placer, Rank, holds};
use crate::poche::Poche;
use crate::rulers::RULER;
use crate::{
    Scene, View, blade, caught, columns, dimensions, findings, furnishings, grid, heights,
    highlight, keep_clears, moving, openings, overheads, rooms, rulers, section_lines, services,
    stairs, walls, ways,
};

/// What a view of a scene looks like.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Picture {
    pub marks: Marks,
    /// Painted above everything else of the canvas.
    pub rulers: Marks,
    /// Where the figures of the live measurements stand.
    pub figures: Vec<FigureBox>,
    /// Where the badges of findings stand: the index of the finding, and the badge's centre.
    pub badges: Vec<(usize, P)>,
}

/// A scene in a view: what every part of the picture needs to know.
pub(crate) struct Canvas<'a> {
    pub view: &'a View,
    pub scene: &'a Scene<'a>,
    seen: Bounds,
    /// The slabs that the shell encloses, on the screen.
    inside: Vec<Vec<P>>,
}

/// Things this near the edge of the screen, in points, are still drawn: line widths, badges.
const MARGIN: f32 = 24.0;

impl<'a> Canvas<'a> {
    pub fn new(view: &'a View, scene: &'a Scene<'a>, poche: &Poche) -> Canvas<'a> {
        let inside = poche.slab.iter().map(|ring| view.ring(ring)).collect();
        Canvas { view, scene, seen: view.bounds().grow(view.len(MARGIN)), inside }
    }

    /// The slab that a point of the screen lies on: a word for what stands there is not put outside the house.
    pub fn slab_at(&self, at: P) -> Option<Vec<P>> {
        self.inside.iter().find(|ring| holds(ring, at)).cloned()
    }

    /// Whether the box round some points meets the screen.
    pub fn sees(&self, points: &[Pt]) -> bool {
        Bounds::of(points).meets(self.seen)
    }

    /// The same for a thing that reaches beyond its points.
    pub fn sees_near(&self, points: &[Pt], reach: Len) -> bool {
        Bounds::of(points).grow(reach).meets(self.seen)
    }

    /// The short name of an element: `W14`.
    pub fn name(&self, id: ElementId) -> String {
        self.scene.facts.plan.get(id).map_or_else(|| format!("?{}", id.0), plan::Element::name)
    }

    /// Where hatches are anchored, so that they move with the plan.
    pub fn phase(&self) -> P {
        self.view.screen_from_plan(Pt::new(0, 0))
    }

    /// Whether the toggles show a kind of element.
    pub fn shows(&self, body: &Body) -> bool {
        let show = &self.scene.show;
        match body {
            Body::Overhead(_) => show.overheads,
            Body::Service(_) => show.services,
            Body::Furnishing(_) => show.furnishings,
            Body::Note(_) | Body::Section(_) => show.notes,
            Body::Shell(_)
            | Body::Partition(_)
            | Body::Furring(_)
            | Body::Opening(_)
            | Body::Column(_)
            | Body::Stair(_)
            | Body::RoomTag(_) => true,
        }
    }
}

/// From line to line of the hatch of a floor that stays as it is, in points.
const UNTOUCHED: f32 = 22.0;

/// Draws a scene.
pub fn picture(view: &View, scene: &Scene<'_>) -> Picture {
    let mut made = None;
    let poche = scene.poche.unwrap_or_else(|| made.insert(Poche::of(scene.facts)));
    let canvas = Canvas::new(view, scene, poche);
    let mut placer = Placer::new(view.size);
    if scene.show.rulers {
        let (w, h) = view.size;
        let band =
            |x: f32, y: f32| [P::new(0.0, 0.0), P::new(x, 0.0), P::new(x, y), P::new(0.0, y)];
        placer.block(band(w, RULER), NOBODY);
        placer.block(band(RULER, h), NOBODY);
    }
    let mut marks = Marks::new();
    let mut labels = Vec::new();
    slab(&canvas, poche, &mut marks);

    // From the floor up; what is drawn later lies above.
    keep_clears::draw(&canvas, &mut placer, &mut labels, &mut marks);
    furnishings::draw(&canvas, &mut placer, &mut labels, &mut marks);
    stairs::draw(&canvas, &mut placer, &mut labels, &mut marks);
    walls::draw(&canvas, poche, &mut placer, &mut marks);
    walls::names(&canvas, &mut labels);
    openings::draw(&canvas, &mut placer, &mut labels, &mut marks);
    columns::draw(&canvas, &mut placer, &mut marks);
    services::draw(&canvas, &mut placer, &mut labels, &mut marks);
    overheads::draw(&canvas, &mut placer, &mut labels, &mut marks);
    rooms::labels(&canvas, &mut labels);
    rooms::notes(&canvas, &mut placer, &mut labels, &mut marks);
    section_lines::draw(&canvas, &mut placer, &mut marks);

    // What has to stand where it stands comes before words that can give way.
    let badges = findings::badges(&canvas, &mut placer);
    let signs: Vec<[P; 4]> = badges.iter().map(|(_, at)| findings::badge_box(*at)).collect();
    let mut tape = Marks::new();
    let figures = blade::draw(view, scene.system, scene.blades, &signs, &mut placer, &mut tape);
    caught::draw(view, scene, &mut placer, &mut tape);
    highlight::draw(&canvas, &mut marks);
    heights::draw(&canvas, &mut placer, &mut marks);
    ways::draw(&canvas, &mut placer, &mut marks);
    moving::draw(&canvas, &mut placer, &mut marks);
    findings::places(&canvas, &mut placer, &mut marks);

    dimensions::shell(&canvas, &mut placer, &mut marks);
    let (first, rest): (Vec<_>, Vec<_>) = labels.into_iter().partition(|l| l.rank <= Rank::Room);
    placer.write(first, &mut marks);
    if scene.show.dimensions {
        for room in scene.facts.rooms.iter().filter(|r| canvas.sees(&r.shape.outer)) {
            dimensions::room(&canvas, room, &mut placer, &mut marks);
        }
    }
    placer.write(rest, &mut marks);

    // A badge is never hidden, not by the tape of the wall that is being moved.
    marks.append(tape);
    findings::draw_badges(&canvas, &badges, &mut marks);
    let mut ruler_marks = Marks::new();
    if scene.show.rulers {
        rulers::draw(view, scene, &mut ruler_marks);
    }
    Picture { marks, rulers: ruler_marks, figures, badges }
}

fn slab(canvas: &Canvas<'_>, poche: &Poche, marks: &mut Marks) {
    let (w, h) = canvas.view.size;
    marks.group("ground", |m| {
        m.fill([P::new(0.0, 0.0), P::new(w, 0.0), P::new(w, h), P::new(0.0, h)], Tone::Ground);
    });
    marks.group("slab", |m| {
        for ring in poche.slab.iter().filter(|r| canvas.sees(r)) {
            m.fill(canvas.view.ring(ring), Tone::Slab);
        }
    });
    marks.group("untouched floor", |m| {
        for room in canvas.scene.untouched {
            let shape = &canvas.scene.facts.room(*room).shape;
            let rings: Vec<Vec<P>> = [&shape.outer]
                .into_iter()
                .chain(&shape.holes)
                .map(|r| canvas.view.ring(r))
                .collect();
            let rings: Vec<&[P]> = rings.iter().map(Vec::as_slice).collect();
            let lines = hatch(&rings, Slope::Falling, UNTOUCHED, canvas.phase());
            m.segments(lines, Stroke::solid(Tone::SoftInk, 0.25));
        }
    });
    if canvas.scene.show.grid {
        grid::draw(canvas.view, canvas.scene.system, marks);
    }
}
